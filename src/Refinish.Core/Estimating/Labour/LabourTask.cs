using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A labour standard put to a job: over how much area, for how many units, how many times.</summary>
public sealed record LabourTask
{
    private readonly double area;

    /// <summary>Makes a task that is done once by a standard of fixed hours alone.</summary>
    /// <param name="standard">The standard.</param>
    /// <exception cref="ArgumentException">
    /// <paramref name="standard"/> has hours by area or by unit, which would be lost, or none at all.
    /// </exception>
    /// <exception cref="ArgumentNullException"><paramref name="standard"/> is missing.</exception>
    public LabourTask(LabourStandard standard) : this(standard, default, 0, 1) => Uses(Standard, area: false, units: false);

    /// <summary>Makes a task that is done once over an area, by a standard without hours by unit.</summary>
    /// <param name="standard">The standard.</param>
    /// <param name="area">Area worked on, 0 to 10 000 m².</param>
    /// <exception cref="ArgumentException"><paramref name="standard"/> has hours by unit, which would be lost, or none at all.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="standard"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="area"/> is outside its range.</exception>
    public LabourTask(LabourStandard standard, Area area) : this(standard, area, 0, 1) => Uses(Standard, area: true, units: false);

    /// <summary>Makes a task that is done once for a number of units, by a standard without hours by area.</summary>
    /// <param name="standard">The standard.</param>
    /// <param name="units">Units: defects, metres of joint, trips, fixtures; 0 to 1 000 000.</param>
    /// <exception cref="ArgumentException"><paramref name="standard"/> has hours by area, which would be lost, or none at all.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="standard"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is outside its range.</exception>
    public LabourTask(LabourStandard standard, double units)
        : this(standard, default, units, 1) => Uses(Standard, area: false, units: true);

    /// <summary>Makes a task.</summary>
    /// <param name="standard">The standard.</param>
    /// <param name="area">Area worked on each time, 0 to 10 000 m².</param>
    /// <param name="units">Units each time: defects, metres of joint, trips, fixtures; 0 to 1 000 000.</param>
    /// <param name="times">How often it is done, such as coats; 1 to 10 000.</param>
    /// <exception cref="ArgumentException"><paramref name="standard"/> has no hours at all, or contradicts itself.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="standard"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public LabourTask(LabourStandard standard, Area area, double units, int times)
    {
        Standard = Guard.NotNull(standard);
        this.area = Guard.Within(area, Bounds.NotNegative(Measure.Area, 1e4));
        Units = Guard.Within(units, Bounds.NotNegative(Measure.Number, 1e6));
        Times = Guard.Count(times, 1, 10_000);
        if (standard.Contradiction() is string fault)
        {
            throw new ArgumentException("standard: " + standard.Code + " " + fault + ".", nameof(standard));
        }
    }

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

    /// <summary>The standard.</summary>
    public LabourStandard Standard { get; }

    /// <summary>Area worked on each time.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Units each time.</summary>
    public double Units { get; }

    /// <summary>How often it is done.</summary>
    public int Times { get; }

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
    public ThreePoint Hours
    {
        get
        {
            double total = Total;
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
        return (once + (perArea * t.Given("A", area, Measure.Area)) + (perUnit * PaidUnits(t)))
            * (Stretch == 1 ? repeated : repeated * t.Given("c", Stretch, Measure.Number));
    }

    // Of so many units all but the first of the visit leave out what is done once.
    private Num PaidUnits(Trace? t)
    {
        Num units = t.Given("n_u", Units, Measure.Number);
        if (Standard.OncePerVisitFraction == 0)
        {
            return units;
        }

        Num before = t.Given("n_b", UnitsBefore, Measure.Number);
        return UnitsBefore == 0 ? Paid(units, t) : Paid(before + units, t) - Paid(before, t);
    }

    private Num Paid(Num units, Trace? t) =>
        units.Value > 1 ? 1 + ((units - 1) * (1 - t.Given("q", Standard.OncePerVisitFraction, Measure.Percent))) : units;

    // A rate that the constructor has no number for would be no hours without a word.
    private static void Uses(LabourStandard standard, bool area, bool units)
    {
        if (!area && standard.PerSquareMeter.Maximum > 0)
        {
            throw new ArgumentException("standard: " + standard.Code + " has hours by area, and no area is given.", nameof(standard));
        }

        if (!units && standard.PerUnit.Maximum > 0)
        {
            throw new ArgumentException(
                "standard: " + standard.Code + " has hours by " + standard.Unit + ", and no number of units is given.", nameof(standard));
        }
    }
}
