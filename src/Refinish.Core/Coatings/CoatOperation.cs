using System;
using System.Collections.Generic;
using Refinish.Climate;

namespace Refinish.Coatings;

/// <summary>
/// Work that every coat of a product needs once it is on, such as a pass of a lamp: it rides on the product and stands after each of its
/// coats in the plan, with hours, price and place in the schedule.
/// </summary>
/// <remarks>
/// Time of one coat: <see cref="SetUp"/> + <see cref="PerSquareMeter"/> · A, A the area that the run coats. It is paid as clock time for
/// each of its people.
/// </remarks>
/// <example><code>
/// CoatOperation lamp = new()
/// {
///     Id = "lamp", Name = "cure under the lamp", Instruction = "pass the lamp over the coat at the distance that its maker states",
///     SetUp = TimeSpan.FromMinutes(10), PerSquareMeter = TimeSpan.FromMinutes(4), Cures = true,
///     Tools = ["uv-lamp"], Cautions = [Cautions.UltravioletLight], Source = Source.Invented("an example"),
/// };
/// double minutes = lamp.TimeFor(Area.FromSquareMeters(2.5)).TotalMinutes;   // 20
/// </code></example>
public sealed record CoatOperation
{
    private static readonly Bounds Times = Bounds.NotNegative(Measure.Hours, 7 * 86400);

    /// <summary>Identity within the product; it ends the identifier of the operation in a plan.</summary>
    /// <exception cref="ArgumentException">Not an identity.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Short label for timelines.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>What the crew reads.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Instruction { get; init => field = Guard.Named(value); }

    /// <summary>Time once for each coat, 0 to 7 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan SetUp { get; init => field = Guard.Time(value, Times); }

    /// <summary>Time for each square metre of the coat, 0 to 7 days; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan PerSquareMeter { get; init => field = Guard.Time(value, Times); }

    /// <summary>How many of the crew it takes, 0 to 20; 1 unless given, and with none it runs by itself.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int People { get; init => field = Guard.Count(value, 0, 20); }
    = 1;

    /// <summary>Least time from the last stroke, or from the end of the operation before it, until it begins; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 7 days.</exception>
    public TimeSpan Wait { get; init => field = Guard.Time(value, Times); }

    /// <summary>Most time from there until it begins; <see langword="null"/> when it may be later.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 7 days.</exception>
    public TimeSpan? Within { get; init => field = Guard.Time(value, Times); }

    /// <summary>
    /// Whether the coat hardens by it: touching, recoating and water then count from its end, and from its beginning where a window
    /// closes, instead of from the strokes of the gun.
    /// </summary>
    public bool Cures { get; init; }

    /// <summary>Tools that it occupies, one of each; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<string> Tools { get; init => field = Guard.List(value); }
    = ValueList<string>.Empty;

    /// <summary>What can hurt in it; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); }
    = ValueList<Caution>.Empty;

    /// <summary>In which air and on how warm a surface it may be done; <see langword="null"/> when its sheet does not say.</summary>
    public SprayLimits? Conditions { get; init; }

    /// <summary>Where it comes from.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>How long it takes for one coat.</summary>
    /// <param name="area">The area that is coated, more than 0 and at most 1000 m².</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan TimeFor(UnitsNet.Area area) => SetUp
        + Durations.FromSeconds(PerSquareMeter.TotalSeconds * Guard.Within(area, Bounds.Positive(Measure.Area, 1000)));

    /// <summary>The label.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;

    /// <summary>Rules between its figures, checked where its product is put to use.</summary>
    internal void CheckConsistency()
    {
        Guard.Rule(SetUp + PerSquareMeter > TimeSpan.Zero, nameof(SetUp), SetUp.TotalSeconds, Measure.Minutes,
            "more than 0 where PerSquareMeter is 0");
        Conditions?.CheckOrder();
        Guard.Rule(!(Within < Wait), nameof(Within), Within?.TotalSeconds ?? 0, Measure.Minutes, "at least Wait, ", Wait.TotalSeconds);
    }
}
