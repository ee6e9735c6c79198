using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// How much fresh air a room really gets, from the decay of a tracer gas in it: ln(C − C_b) falls along a straight line whose slope is the
/// air changes. The line by least squares, with the standard error of its slope and an interval by Student's t.
/// </summary>
/// <remarks>
/// The concentration-decay technique of ASTM E741, Standard test method for determining air change in a single zone by means of a tracer
/// gas dilution (scope seen; its data analysis from memory). The air has to be mixed, the tracer's release ended, the fan and the openings
/// as they will be at work. With carbon dioxide people, animals and flames stay out, since they give it off. What comes out is the fresh
/// air that counts, mixing included: compare with <see cref="AirStudy.FreshAirFlow"/>. Two readings give a rate and no idea of its error.
/// Never use the vapour of a coating as the tracer: a film goes on giving it off.
/// </remarks>
/// <example><code>
/// // readings invented for the example
/// TracerReading[] readings =
/// [
///     new(TimeSpan.Zero, Ratio.FromPartsPerMillion(2400)),
///     new(TimeSpan.FromMinutes(5), Ratio.FromPartsPerMillion(1610)),
///     new(TimeSpan.FromMinutes(10), Ratio.FromPartsPerMillion(1160)),
///     new(TimeSpan.FromMinutes(15), Ratio.FromPartsPerMillion(880)),
/// ];
/// TracerDecay decay = new(readings, Ratio.FromPartsPerMillion(420), Ratio.FromPercent(95), Volume.FromCubicMeters(9));
/// double? changes = decay.AirChangesPerHour;        // 5.825
/// double? atLeast = decay.LeastAirflow?.CubicMetersPerHour;      // 49.7
/// </code></example>
public sealed record TracerDecay
{
    private static readonly Source Decay =
        Source.FromMemory("ASTM E741, concentration decay: the slope of ln C over time is the air changes; regression with confidence limits");

    private static readonly Source LeastSquares = Source.Published(
        "NIST Statistical Reference Datasets, linear regression, Norris",
            "slope, its standard deviation and the residual standard deviation");

    private readonly ValueList<TracerReading> readings;
    private readonly double background;
    private readonly double confidence;
    private readonly double? volume;

    /// <summary>
    /// Fits the line through readings of the decay of a gas that fresh air does not hold, for air changes with 95 % confidence.
    /// </summary>
    /// <param name="readings">At least two, at two times or more, in any order; several at one time are allowed.</param>
    /// <exception cref="ArgumentException">There are fewer than two.</exception>
    /// <exception cref="ArgumentOutOfRangeException">All are of one time.</exception>
    public TracerDecay(IReadOnlyList<TracerReading> readings) : this(readings, Ratio.Zero, Ratio.FromPercent(95), null)
    {
    }

    /// <summary>Fits the line through readings of the decay.</summary>
    /// <param name="readings">At least two, at two times or more, in any order; several at one time are allowed.</param>
    /// <param name="background">
    /// What there is of the gas in the fresh air, from 0 to less than every reading. Outdoor air holds carbon dioxide: measure it.
    /// </param>
    /// <param name="confidence">Confidence of the interval, 50 to 99.9 %.</param>
    /// <param name="roomVolume">Volume of the room's air, 2 to 500 m³, for the airflow; <see langword="null"/> for none.</param>
    /// <exception cref="ArgumentException">There are fewer than two readings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">All readings are of one time, or another argument is outside its range.</exception>
    public TracerDecay(IReadOnlyList<TracerReading> readings, Ratio background, Ratio confidence, Volume? roomVolume)
    {
        this.readings = Guard.List(readings, 2);
        double span = this.readings.Max(reading => reading.Seconds) - this.readings.Min(reading => reading.Seconds);
        Guard.Rule(span >= 1, nameof(readings), span, Measure.Minutes, "readings that lie at least 1 s apart");
        double least = this.readings.Min(reading => reading.Fraction);
        this.background = Guard.Within(background, Bounds.Below(0, least, Measure.PartsPerMillion));
        this.confidence = Guard.Within(confidence, Bounds.Between(0.5, 0.999 + 1e-12, Measure.Percent));
        volume = roomVolume is Volume room
            ? Guard.Within(room, Bounds.Between(2, 500, Measure.RoomVolume), nameof(roomVolume)) : null;
    }

    /// <summary>Concentrations with their times, in the order given.</summary>
    public IReadOnlyList<TracerReading> Readings => readings;

    /// <summary>What there is of the gas in the fresh air.</summary>
    public Ratio Background => Ratio.FromDecimalFractions(background);

    /// <summary>Confidence of the interval.</summary>
    public Ratio Confidence => Ratio.FromDecimalFractions(confidence);

    /// <summary>Volume of the room's air; <see langword="null"/> unless given.</summary>
    public Volume? RoomVolume => volume is double room ? Volume.FromCubicMeters(room) : null;

    /// <summary>
    /// Air changes per hour; <see langword="null"/> when the concentration does not fall, and then something still gives the gas off.
    /// </summary>
    public double? AirChangesPerHour => Falls ? Rate().Value * 3600 : null;

    /// <summary>Standard error of the air changes per hour; <see langword="null"/> for two readings.</summary>
    public double? StandardError => readings.Count > 2 ? Deviation().Value * 3600 : null;

    /// <summary>
    /// The least that the air changes per hour are with the confidence asked for; 0 or less when the readings do not tell them from none.
    /// <see langword="null"/> for two readings or when the concentration does not fall.
    /// </summary>
    public double? LeastAirChangesPerHour => Falls && readings.Count > 2 ? Least().Value * 3600 : null;

    /// <summary>The most that they are; <see langword="null"/> for two readings or when the concentration does not fall.</summary>
    public double? MostAirChangesPerHour => Falls && readings.Count > 2 ? Most().Value * 3600 : null;

    /// <summary>
    /// Fresh air that counts: air changes times volume; <see langword="null"/> without a volume or when the concentration does not fall.
    /// </summary>
    public VolumeFlow? Airflow => Falls ? Flow(Rate()) : null;

    /// <summary>
    /// The least that it is with the confidence asked for, the figure to design with; 0 when the readings do not tell it from none,
    /// <see langword="null"/> where it is not known.
    /// </summary>
    public VolumeFlow? LeastAirflow => Falls && readings.Count > 2 ? Flow(Math.Max(Least().Value, 0)) : null;

    /// <summary>What to warn of.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.ClearingCountsNoSource]);

    private bool Falls => Slope().Value < 0;

    /// <summary>How the rate, its error and the airflow follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Slope(t);
        Rate(t);
        if (readings.Count > 2)
        {
            Least(t);
            Most(t);
        }

        if (Falls && volume is not null)
        {
            t.Step("fresh air that counts", "F", Measure.Airflow, Decay, Fresh(Rate(t), t));
        }

        return t.Workings("Decay of a tracer gas");
    }

    /// <summary>The air changes with their interval.</summary>
    /// <returns>Text such as <c>4 readings: 5.82 1/h, 5.52 to 6.13 1/h with 95 % confidence</c>.</returns>
    public override string ToString()
    {
        string count = readings.Count.ToString(CultureInfo.InvariantCulture) + " readings: ";
        return AirChangesPerHour is not double changes ? count + "the concentration does not fall"
            : LeastAirChangesPerHour is not double least ? count + Figures.Significant(changes, 3) + " 1/h, error not known"
            : count + Figures.Significant(changes, 3) + " 1/h, " + Figures.Significant(least, 3) + " to "
                + Figures.Significant(MostAirChangesPerHour!.Value, 3)
                + " 1/h with " + Measure.Percent.Format(confidence) + " confidence";
    }

    private Num Time(int i, Trace? t) => t.Given("t_", i + 1, readings[i].Seconds, Measure.Minutes);

    private Num Logarithm(int i, Trace? t)
    {
        Num logarithm = Num.Ln(
            t.Given("C_", i + 1, readings[i].Fraction, Measure.PartsPerMillion) - t.Given("C_b", background, Measure.PartsPerMillion));
        return t is null ? logarithm
            : t.Step("logarithm of reading " + Figures.Fixed(i + 1, 0), "y_" + Figures.Fixed(i + 1, 0), Measure.Number, Decay, logarithm);
    }

    private Num MeanLogarithm(Trace? t) => t.Step("mean logarithm", "y_m", Measure.Number, LeastSquares,
        Num.Sum(readings, (Decay: this, t), static (_, i, of) => of.Decay.Logarithm(i, of.t)) / readings.Count);

    private Num MeanTime(Trace? t) => t.Step("mean time", "t_m", Measure.Minutes, LeastSquares,
        Num.Sum(readings, (Decay: this, t), static (_, i, of) => of.Decay.Time(i, of.t)) / readings.Count);

    private Num Slope(Trace? t = null)
    {
        // The logarithms are shown first.
        for (int i = 0; t is not null && i < readings.Count; i++)
        {
            Logarithm(i, t);
        }

        Num time = MeanTime(t);
        Num logarithm = MeanLogarithm(t);
        return t.Step("slope", "b", Measure.Rate, LeastSquares, Num.Sum(readings, (Decay: this, time, logarithm, t), static (_, i, of) =>
            (of.Decay.Time(i, of.t) - of.time) * (of.Decay.Logarithm(i, of.t) - of.logarithm)) / Squares(t));
    }

    private Num Rate(Trace? t = null) => t.Step("air changes", "λ", Measure.AirChanges, Decay, -Slope(t));

    private Num Squares(Trace? t)
    {
        Num time = MeanTime(t);
        return Num.Sum(readings, (Decay: this, time, t), static (_, i, of) => Num.Square(of.Decay.Time(i, of.t) - of.time));
    }

    private Num Residual(Trace? t)
    {
        Num time = MeanTime(t);
        Num logarithm = MeanLogarithm(t);
        Num slope = Slope(t);
        return t.Step("residual standard deviation", "s", Measure.Number, LeastSquares, Num.Sqrt(
            Num.Sum(readings, (Decay: this, time, logarithm, slope, t), static (_, i, of) => Num.Square(
                of.Decay.Logarithm(i, of.t) - of.logarithm - (of.slope * (of.Decay.Time(i, of.t) - of.time)))) / (readings.Count - 2)));
    }

    private Num Deviation(Trace? t = null) =>
        t.Step("standard error of the air changes", "s_λ", Measure.AirChanges, LeastSquares, Residual(t) / Num.Sqrt(Squares(t)));

    private Num Least(Trace? t = null) => t.Step("air changes, at least", "λ_1", Measure.AirChanges, Decay, Rate(t) - HalfWidth(t));

    private Num Most(Trace? t = null) => t.Step("air changes, at most", "λ_2", Measure.AirChanges, Decay, Rate(t) + HalfWidth(t));

    private Num HalfWidth(Trace? t) => t.Given("t_n", StudentT.Quantile(confidence, readings.Count - 2), Measure.Number) * Deviation(t);

    private Num Fresh(Num rate, Trace? t = null) => rate * t.Given("V", volume!.Value, Measure.RoomVolume);

    private VolumeFlow? Flow(Num rate) => volume is null ? null : VolumeFlow.FromCubicMetersPerSecond(Fresh(rate).Value);
}
