using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// What an operation gives off into the air of its room. Left to evaporate, as a wipe is, all of it does, evenly while it is put on and
/// then within a time
/// constant. Taken off again, as a stripper is, it gives off mass over time constant for as long as it lies, and what is left then goes
/// with what is taken off.
/// </summary>
/// <example><code>
/// Evaporation wipe = new()
/// {
///     Name = "degreaser",
///     Mass = Mass.FromGrams(40),
///     Solvents = [new SolventShare(Solvents.Isopropanol, Ratio.FromPercent(100))],
/// };
/// </code></example>
public sealed record Evaporation
{
    /// <summary>The longest that something may lie before it is taken off.</summary>
    internal static readonly TimeSpan LongestLying = TimeSpan.FromDays(14);

    /// <summary>How fast what is put on may dry.</summary>
    internal static readonly Bounds Constants = Bounds.Between(1, 30 * 86400, Measure.Minutes);

    private static readonly Bounds Lying = Bounds.NotNegative(Measure.Hours, LongestLying.TotalSeconds);

    private readonly double mass;

    /// <summary>What evaporates.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>
    /// What <see cref="Solvents"/> make up in what is put on, more than 0 and at most 10 000 kg. All of it that is volatile is given off,
    /// unless it is taken off before.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass Mass
    {
        get => Mass.FromKilograms(mass);
        init => mass = Guard.Within(value, Bounds.Positive(Measure.Mass, 1e4));
    }

    /// <summary>The solvents by mass, together 100 % within 0.1 %.</summary>
    /// <exception cref="ArgumentException">No solvent is given, or one is methylene chloride.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The shares do not add up.</exception>
    public required IReadOnlyList<SolventShare> Solvents
    {
        get;
        init => field = PrepChemical.Permitted(SolventShare.Blend(Guard.List(value, 1), nameof(Solvents)));
    }

    /// <summary>Time constant with which what is wetted dries, 1 s to 30 days; 2 min unless given (invented).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan TimeConstant { get; init => field = Guard.Time(value, Constants); } = WipeEmission.AssumedEvaporationTime;

    /// <summary>
    /// How long after the end of the operation it is taken off, 0 to 14 days; <see langword="null"/> for what is left to evaporate. Until
    /// then its release is steady at
    /// the rate with which a film of that time constant begins: never less than such a film gives off.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan? TakenOffAfter { get; init => field = Guard.Time(value, Lying); }

    /// <summary>Name and mass.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Measure.Mass.Format(mass, DisplayUnits.Si, 3);
}
