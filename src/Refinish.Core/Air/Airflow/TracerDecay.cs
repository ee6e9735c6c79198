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
/// TracerDecay decay = new(
/// [
///     new(TimeSpan.Zero, Ratio.FromPartsPerMillion(2400)),
///     new(TimeSpan.FromMinutes(5), Ratio.FromPartsPerMillion(1610)),
///     new(TimeSpan.FromMinutes(10), Ratio.FromPartsPerMillion(1160)),
///     new(TimeSpan.FromMinutes(15), Ratio.FromPartsPerMillion(880)),
/// ])
/// {
///     Background = Ratio.FromPartsPerMillion(420),
///     RoomVolume = Volume.FromCubicMeters(9),
/// };
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
    private readonly double confidence = 0.95;
    private readonly double? volume;

    /// <summary>Fits the line through readings of the decay.</summary>
    /// <param name="readings">At least two, at two times or more, in any order; several at one time are allowed.</param>
    /// <exception cref="ArgumentException">There are fewer than two.</exception>
    /// <exception cref="ArgumentOutOfRangeException">All are of one time.</exception>
    public TracerDecay(IReadOnlyList<TracerReading> readings)
    {
        this.readings = Guard.List(readings, nameof(readings), 2);
        double span = this.readings.Max(reading => reading.Seconds) - this.readings.Min(reading => reading.Seconds);
        Guard.Rule(span >= 1, nameof(readings), span, Measure.Minutes, "readings that lie at least 1 s apart");
    }

    /// <summary>Concentrations with their times, in the order given.</summary>
    public IReadOnlyList<TracerReading> Readings => readings;

    /// <summary>
    /// What there is of the gas in the fresh air, from 0 to less than every reading; 0 unless given. Outdoor air holds carbon dioxide:
    /// measure it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Background
    {
        get => Ratio.FromDecimalFractions(background);
        init => background =
            Guard.Within(value, Bounds.Below(0, readings.Min(reading => reading.Fraction), Measure.PartsPerMillion), nameof(Background));
    }

    /// <summary>Confidence of the interval, 50 to 99.9 %; 95 % unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Confidence
    {
        get => Ratio.FromDecimalFractions(confidence);
        init => confidence = Guard.Within(value, Bounds.Between(0.5, 0.999 + 1e-12, Measure.Percent), nameof(Confidence));
    }

    /// <summary>Volume of the room's air, 2 to 500 m³, for the airflow; <see langword="null"/> unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume? RoomVolume
    {
        get => volume is double room ? Volume.FromCubicMeters(room) : null;
        init => volume = value is Volume room ? Guard.Within(room, Bounds.Between(2, 500, Measure.RoomVolume), nameof(RoomVolume)) : null;
    }

    /// <summary>
    /// Air changes per hour; <see langword="null"/> when the concentration does not fall, and then something still gives the gas off.
    /// </summary>
    public double? AirChangesPerHour => Line.Slope < 0 ? -Line.Slope * 3600 : null;

    /// <summary>Standard error of the air changes per hour; <see langword="null"/> for two readings.</summary>
    public double? StandardError => Line.SlopeError * 3600;

    /// <summary>
    /// The least that the air changes per hour are with the confidence asked for; 0 or less when the readings do not tell them from none.
    /// <see langword="null"/> for two readings or when the concentration does not fall.
    /// </summary>
    public double? LeastAirChangesPerHour => AirChangesPerHour - HalfWidth;

    /// <summary>The most that they are; <see langword="null"/> for two readings or when the concentration does not fall.</summary>
    public double? MostAirChangesPerHour => AirChangesPerHour + HalfWidth;

    /// <summary>
    /// Fresh air that counts: air changes times volume; <see langword="null"/> without a volume or when the concentration does not fall.
    /// </summary>
    public VolumeFlow? Airflow => Flow(AirChangesPerHour);

    /// <summary>
    /// The least that it is with the confidence asked for, the figure to design with; 0 when the readings do not tell it from none,
    /// <see langword="null"/> where it is not known.
    /// </summary>
    public VolumeFlow? LeastAirflow => Flow(LeastAirChangesPerHour is double least ? Math.Max(least, 0) : null);

    /// <summary>What to warn of.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.ClearingCountsNoSource]);

    private LineFit Line => LineFit.Through([.. readings.Select(reading => reading.Seconds)], [.. readings.Select(Logarithm)]);

    private double? HalfWidth => StandardError * Student;

    private double? Student => readings.Count > 2 ? StudentT.Quantile(confidence, readings.Count - 2) : null;

    /// <summary>How the rate, its error and the airflow follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        LineFit line = Line;
        List<WorkingStep> steps = [];
        Expression[] times = [.. readings.Select((reading, i) => Expression.Quantity("t" + Mark(i), reading.Seconds, Measure.Minutes))];
        Expression[] logs = [.. readings.Select((reading, i) => Log(reading, i, steps))];
        WorkingStep t = new("mean time", "t_m", Expression.Sum(times) / times.Length, line.MeanX, Measure.Minutes, LeastSquares);
        WorkingStep y = new("mean logarithm", "y_m", Expression.Sum(logs) / logs.Length, line.MeanY, Measure.Number, LeastSquares);
        Expression squares = Expression.Sum(times.Select(time => Expression.Square(time - t.Result())));
        Expression products = Expression.Sum(times.Select((time, i) => (time - t.Result()) * (logs[i] - y.Result())));
        WorkingStep slope = new("slope", "b", products / squares, line.Slope, Measure.Rate, LeastSquares);
        WorkingStep rate = new("air changes", "λ", -slope.Result(), -line.Slope, Measure.AirChanges, Decay);
        steps.AddRange([t, y, slope, rate]);
        AddInterval(steps, line, times, logs, squares);
        if (line.Slope < 0 && volume is double room)
        {
            steps.Add(new("fresh air that counts", "F", rate.Result() * Expression.Quantity("V", room, Measure.RoomVolume),
                -line.Slope * room, Measure.Airflow, Decay));
        }

        return new Workings("Decay of a tracer gas", steps);
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

    private static string Mark(int index) => "_" + (index + 1).ToString(CultureInfo.InvariantCulture);

    private double Logarithm(TracerReading reading) => Math.Log(reading.Fraction - background);

    private Expression Log(TracerReading reading, int index, List<WorkingStep> steps)
    {
        Expression rise = Expression.Quantity("C" + Mark(index), reading.Fraction, Measure.PartsPerMillion)
            - Expression.Quantity("C_b", background, Measure.PartsPerMillion);
        WorkingStep step = new("logarithm of reading " + (index + 1).ToString(CultureInfo.InvariantCulture), "y" + Mark(index),
            Expression.Ln(rise), Logarithm(reading), Measure.Number, Decay);
        steps.Add(step);
        return step.Result();
    }

    private void AddInterval(List<WorkingStep> steps, LineFit line, Expression[] times, Expression[] logs, Expression squares)
    {
        if (line.SlopeError is not double error || Student is not double quantile)
        {
            return;
        }

        WorkingStep rate = steps[steps.Count - 1];
        Expression b = steps[steps.Count - 2].Result();
        Expression y = steps[steps.Count - 3].Result();
        Expression t = steps[steps.Count - 4].Result();
        WorkingStep residual = new(
            "residual standard deviation",
            "s",
            Expression.Sqrt(Expression.Sum(times.Select((time, i) =>
                Expression.Square(logs[i] - y - (b * (time - t))))) / (times.Length - 2)),
            line.ResidualDeviation!.Value,
            Measure.Number,
            LeastSquares);
        WorkingStep deviation =
            new("standard error of the air changes", "s_λ", residual.Result() / Expression.Sqrt(squares), error, Measure.AirChanges,
            LeastSquares);
        Expression half = Expression.Quantity("t_n", quantile, Measure.Number) * deviation.Result();
        steps.AddRange(
        [
            residual,
            deviation,
            new("air changes, at least", "λ_1", rate.Result() - half, rate.Value - (quantile * error), Measure.AirChanges, Decay),
            new("air changes, at most", "λ_2", rate.Result() + half, rate.Value + (quantile * error), Measure.AirChanges, Decay),
        ]);
    }

    private VolumeFlow? Flow(double? changesPerHour) =>
        changesPerHour * volume is double perHour ? VolumeFlow.FromCubicMetersPerHour(perHour) : null;
}
