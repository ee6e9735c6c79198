using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Films;

/// <summary>What a handful of film readings says: mean, spread, extremes, and how well the mean is known (Student's t).</summary>
/// <remarks>
/// s = √(Σ(d − d̄)² / (n − 1)); confidence interval of the mean d̄ ± t s/√n with n − 1 degrees of freedom; NIST/SEMATECH e-Handbook 1.3.5.2
/// (section from memory, the formula is general). It speaks of the mean, never of the thinnest place: for that see the tolerance interval of the inspection floor.
/// Readings have to be taken at random: five readings within one circle are one spot.
/// </remarks>
/// <example><code>
/// FilmStatistics spots = new([Length.FromMils(4.8), Length.FromMils(5.3), Length.FromMils(4.2), Length.FromMils(5.0), Length.FromMils(6.0)]);
/// FilmInterval? mean = spots.MeanInterval;           // 107.65 µm to 149.4 µm: the mean, with 95 % confidence
/// </code></example>
public sealed record FilmStatistics
{
    private static readonly Source Statistics = Source.Derived("definition of mean and standard deviation with n − 1");
    private static readonly Source StudentSource =
        Source.Published("NIST/SEMATECH e-Handbook of Statistical Methods",
        "1.3.5.2, confidence limits for the mean (section from memory)");

    private readonly ValueList<double> films;
    private readonly double confidence;

    /// <summary>Takes the readings.</summary>
    /// <param name="films">Readings or spot means, at least one, each from 0 to 10 mm.</param>
    /// <param name="confidence">Confidence of the interval for the mean, 50 to 99.9 %; 95 % when omitted.</param>
    /// <exception cref="ArgumentException">No reading is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmStatistics(IEnumerable<Length> films, Ratio? confidence = null)
    {
        this.films = new(Guard.List(films, nameof(films), 1).Select(film => Guard.Within(film, Bounds.NotNegative(Measure.Film, 10e-3), nameof(films))));
        this.confidence = confidence is Ratio given ? Guard.Within(given, Bounds.Between(0.5, 0.999, Measure.Percent), nameof(confidence)) : 0.95;
    }

    /// <summary>The readings.</summary>
    public IReadOnlyList<Length> Films => [.. films.Select(film => Length.FromMeters(film))];

    /// <summary>How many readings.</summary>
    public int Count => films.Count;

    /// <summary>Confidence of the interval for the mean.</summary>
    public Ratio Confidence => Ratio.FromDecimalFractions(confidence);

    /// <summary>Mean.</summary>
    public Length Mean => Length.FromMeters(StatisticsKernel.Mean(films));

    /// <summary>Thinnest reading.</summary>
    public Length Minimum => Length.FromMeters(films.Min());

    /// <summary>Thickest reading.</summary>
    public Length Maximum => Length.FromMeters(films.Max());

    /// <summary>Standard deviation (n − 1); <see langword="null"/> for a single reading.</summary>
    public Length? StandardDeviation => Deviation is double s ? Length.FromMeters(s) : null;

    /// <summary>Standard deviation per mean; <see langword="null"/> for a single reading or a mean of zero.</summary>
    public Ratio? CoefficientOfVariation => Deviation is double s && StatisticsKernel.Mean(films) > 0 ? Ratio.FromDecimalFractions(s / StatisticsKernel.Mean(films)) : null;

    /// <summary>Standard deviation of the mean, s/√n; <see langword="null"/> for a single reading.</summary>
    public Length? StandardError => Deviation is double s ? Length.FromMeters(s / Math.Sqrt(films.Count)) : null;

    /// <summary>Between which films the true mean lies with the confidence asked for; <see langword="null"/> for a single reading.</summary>
    public FilmInterval? MeanInterval
    {
        get
        {
            if (Deviation is not double s)
            {
                return null;
            }

            double mean = StatisticsKernel.Mean(films);
            double half = Student * s / Math.Sqrt(films.Count);
            return new(mean - half, mean + half);
        }
    }

    internal ValueList<double> Values => films;

    internal double? Deviation => films.Count < 2 ? null : StatisticsKernel.StandardDeviation(films);

    private double Student => StudentT.Quantile(confidence, films.Count - 1);

    /// <summary>How the statistics follow from the readings.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression n = Expression.Quantity("n", films.Count, Measure.Number);
        Expression[] readings = [.. films.Select((film, i) => Expression.Quantity("d_" + (i + 1).ToString(CultureInfo.InvariantCulture), film, Measure.Film))];
        WorkingStep mean = new("mean", "d_m", Expression.Sum(readings) / n, Mean.Meters, Measure.Film, Statistics);
        List<WorkingStep> steps =
        [
            mean,
            new("thinnest", "d_min", readings.Aggregate(Expression.Min), Minimum.Meters, Measure.Film, Statistics),
            new("thickest", "d_max", readings.Aggregate(Expression.Max), Maximum.Meters, Measure.Film, Statistics),
        ];
        if (Deviation is double deviation)
        {
            Expression squares = Expression.Sum(readings.Select(reading => Expression.Square(reading - mean.Result())));
            WorkingStep s = new("standard deviation", "s", Expression.Sqrt(squares / (n - 1)), deviation, Measure.Film, Statistics);
            WorkingStep error = new("standard error of the mean", "s_m", s.Result() / Expression.Sqrt(n), StandardError!.Value.Meters, Measure.Film, Statistics);
            FilmInterval interval = MeanInterval!;
            Expression t = Expression.Quantity("t", Student, Measure.Number);
            steps.Add(s);
            steps.Add(error);
            if (CoefficientOfVariation is Ratio variation)
            {
                steps.Add(new("coefficient of variation", "CV", s.Result() / mean.Result(), variation.DecimalFractions, Measure.Percent, Statistics));
            }

            steps.Add(new("mean, at least", "d_1", mean.Result() - (t * error.Result()), interval.LowerMeters, Measure.Film,
                StudentSource));
            steps.Add(new("mean, at most", "d_2", mean.Result() + (t * error.Result()), interval.UpperMeters!.Value, Measure.Film,
                StudentSource));
        }

        return new Workings("Film statistics", steps);
    }

    /// <summary>The statistics in one line, in metric units.</summary>
    /// <returns>Text such as <c>5 readings: mean 129 µm, standard deviation 16.8 µm, 107 µm to 152 µm</c>.</returns>
    public override string ToString() =>
        films.Count.ToString(CultureInfo.InvariantCulture) + (films.Count == 1 ? " reading" : " readings") + ": mean " + Measure.Film.Format(Mean.Meters, DisplayUnits.Si, 3)
        + (Deviation is double s ? ", standard deviation " + Measure.Film.Format(s, DisplayUnits.Si, 3) : string.Empty)
        + ", " + Measure.Film.Format(films.Min(), DisplayUnits.Si, 3) + " to " + Measure.Film.Format(films.Max(), DisplayUnits.Si, 3);
}
