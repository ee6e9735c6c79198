using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A labour standard put to a job: over how much area, for how many units, how many times.</summary>
public sealed record LabourTask
{
    internal static readonly Bounds Areas = Bounds.NotNegative(Measure.Area, 1e4);

    private readonly double? area;

    /// <summary>The standard.</summary>
    /// <exception cref="ArgumentException">A standard that has no hours at all, or contradicts itself.</exception>
    public required LabourStandard Standard
    {
        get;
        init => field = Guard.NotNull(value).Contradiction() is string fault
            ? throw new ArgumentException("Standard: " + value.Code + " " + fault + ".", nameof(Standard))
            : value;
    }

    /// <summary>
    /// Area worked on each time, 0 to 10 000 m²; <see langword="null"/> when left out, which a standard with hours by area does not allow.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Area? Area
    {
        get => area is double known ? UnitsNet.Area.FromSquareMeters(known) : null;
        init => area = value is Area given ? Guard.Within(given, Areas, nameof(Area)) : null;
    }

    /// <summary>
    /// Units each time: defects, metres of joint, trips, fixtures; 0 to 1 000 000; <see langword="null"/> when left out, which a standard
    /// with hours by unit does not allow.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? Units
    {
        get;
        init => field = value is double given ? Guard.Within(given, Bounds.NotNegative(Measure.Number, 1e6), nameof(Units)) : null;
    }

    /// <summary>How often it is done, such as coats, 1 to 10 000; 1 when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Times { get; init => field = Guard.Count(value, 1, 10_000); } = 1;

    /// <summary>Id of the operation that the task belongs to; <see langword="null"/> when left out.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string? Id { get; init => field = value is null ? null : Guard.Named(value); }

    /// <summary>Id of the fixture that it belongs to; <see langword="null"/>, none or several, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Fixture { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>Id of the room that it belongs to; <see langword="null"/>, none or several, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Room { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>Id of whoever does it; <see langword="null"/>, nobody in particular, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Worker { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>
    /// Wage of whoever does it for one hour, without burden; <see langword="null"/>, that of the price book, when left out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal? Wage { get; init => field = Money.Amount(value, nameof(Wage)); }

    /// <summary>Identical fixtures on which all of this is repeated, 1 to 10 000; 1 when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Repeats { get; init => field = Guard.Count(value, 1, LearningCurve.MostRepeats); } = 1;

    /// <summary>How the repeats get faster; <see langword="null"/>, not at all, when left out.</summary>
    public LearningCurve? Learning { get; init; }

    /// <summary>
    /// Hours of one person, without difficulty: (fixed + per area × area + per unit × units) × times × repeats; the parts of one task move
    /// together. Units beyond the first leave out what is <see cref="LabourStandard.OncePerVisit"/>; with <see cref="Learning"/> repeats
    /// count as its total. In the costs of a plan they are stretched to the minutes of the clock that are paid: an operation takes whole
    /// minutes, and a coat as long as mixing and gun need.
    /// </summary>
    /// <exception cref="InvalidOperationException">The standard has hours by area or by unit, and no such number is given.</exception>
    public ThreePoint Hours
    {
        get
        {
            double total = Lack() is string lack ? throw new InvalidOperationException(lack) : Total;
            return new(
                Work(Standard.Fixed.Minimum, Standard.PerSquareMeter.Minimum, Standard.PerUnit.Minimum, total).Value,
                Work(Standard.Fixed.Mode, Standard.PerSquareMeter.Mode, Standard.PerUnit.Mode, total).Value,
                Work(Standard.Fixed.Maximum, Standard.PerSquareMeter.Maximum, Standard.PerUnit.Maximum, total).Value);
        }
    }

    /// <summary>Paid minutes of the clock over the hours of the standards; 1 outside of plans.</summary>
    internal double Stretch { get; init; } = 1;

    /// <summary>Part of the mean hours that goes by area.</summary>
    internal double AreaShare => Hours.Mean is double mean && mean > 0 ? Work(0, Standard.PerSquareMeter.Mean, 0, Total).Value / mean : 0;

    /// <summary>Units of the same standard that stand before this task in its operation; they have done what is done once.</summary>
    internal double UnitsBefore { get; init; }

    /// <summary>The standard and the mean hours.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Standard + ": " + Measure.Hours.Format(Hours.Mean * 3600, figures: 3);

    /// <summary>What the standard has hours by and no number is given for: no hours without a word.</summary>
    internal string? Lack() =>
        area is null && Standard.PerSquareMeter.Maximum > 0 ? Standard.Code + " has hours by area, and no area is given."
        : Units is null && Standard.PerUnit.Maximum > 0
            ? Standard.Code + " has hours by " + Standard.Unit + ", and no number of units is given."
        : null;

    internal static ValueList<LabourTask> Whole(IEnumerable<LabourTask> tasks, string name)
    {
        ValueList<LabourTask> list = Guard.List(tasks, name: name);
        foreach (LabourTask task in list)
        {
            if (task.Lack() is string lack)
            {
                throw new ArgumentException(name + ": " + lack, name);
            }
        }

        return list;
    }

    /// <summary>Mean time.</summary>
    internal Num Mean(Num difficulty, Trace? t) =>
        Work(
            t.Given("t_0", Standard.Fixed.Mean * 3600, Measure.Hours),
            t.Given("t_A", Standard.PerSquareMeter.Mean * 3600, Measure.Hours),
            t.Given("t_u", Standard.PerUnit.Mean * 3600, Measure.Hours),
            Total,
            t)
        * (Standard.IsOnSite ? difficulty : 1);

    // Of many repeats the sum of as many powers: asked for once by each result.
    private double Total => Learning?.Total(Repeats) ?? Repeats;

    private Num Work(Num once, Num perArea, Num perUnit, double total, Trace? t = null)
    {
        Num times = t.Given("n", Times, Measure.Number);
        Num repeated = Repeats == 1 ? times : times * t.Given("T_n", total, Measure.Number);
        return (once + (perArea * t.Given("A", area ?? 0, Measure.Area)) + (perUnit * PaidUnits(t)))
            * (Stretch == 1 ? repeated : repeated * t.Given("c", Stretch, Measure.Number));
    }

    // Of so many units all but the first of the visit leave out what is done once.
    private Num PaidUnits(Trace? t)
    {
        Num units = t.Given("n_u", Units ?? 0, Measure.Number);
        if (Standard.OncePerVisitFraction == 0)
        {
            return units;
        }

        Num before = t.Given("n_b", UnitsBefore, Measure.Number);
        return UnitsBefore == 0 ? Paid(units, t) : Paid(before + units, t) - Paid(before, t);
    }

    private Num Paid(Num units, Trace? t) =>
        units.Value > 1 ? 1 + ((units - 1) * (1 - t.Given("q", Standard.OncePerVisitFraction, Measure.Percent))) : units;

}
