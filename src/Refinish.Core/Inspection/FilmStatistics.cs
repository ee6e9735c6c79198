using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Films;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>What a handful of film readings says: mean, spread, extremes, and how well the mean is known (Student's t).</summary>
/// <remarks>
/// s = √(Σ(d − d̄)² / (n − 1)); confidence interval of the mean d̄ ± t s/√n with n − 1 degrees of freedom; NIST/SEMATECH e-Handbook 1.3.5.2
/// (section from memory, the formula is general). It speaks of the mean, never of the thinnest place: for that see the tolerance interval,
/// <see cref="FilmTolerance"/>. Readings have to be taken at random: five readings within one circle are one spot.
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

    /// <summary>Takes the readings; the interval for the mean has 95 % confidence.</summary>
    /// <param name="films">Readings or spot means, at least one, each from 0 to 10 mm.</param>
    /// <exception cref="ArgumentException">No reading is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmStatistics(IEnumerable<Length> films)
        : this(films, Ratio.FromDecimalFractions(0.95))
    {
    }

    /// <summary>Takes the readings.</summary>
    /// <param name="films">Readings or spot means, at least one, each from 0 to 10 mm.</param>
    /// <param name="confidence">Confidence of the interval for the mean, 50 to 99.9 %.</param>
    /// <exception cref="ArgumentException">No reading is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmStatistics(IEnumerable<Length> films, Ratio confidence)
    {
        Values = new(Guard.List(films, 1).Select(film => Guard.Within(film, Bounds.NotNegative(Measure.Film, 10e-3), nameof(films))));
        Confidence = Guard.Checked(confidence, Bounds.Between(0.5, 0.999, Measure.Percent));
    }

    /// <summary>The readings.</summary>
    public IReadOnlyList<Length> Films => [.. Values.Select(film => Length.FromMeters(film))];

    /// <summary>How many readings.</summary>
    public int Count => Values.Count;

    /// <summary>Confidence of the interval for the mean.</summary>
    public Ratio Confidence { get; }

    /// <summary>Mean.</summary>
    public Length Mean => Length.FromMeters(MeanOf().Value);

    /// <summary>Thinnest reading.</summary>
    public Length Minimum => Length.FromMeters(Thinnest().Value);

    /// <summary>Thickest reading.</summary>
    public Length Maximum => Length.FromMeters(Thickest().Value);

    /// <summary>Standard deviation (n − 1); <see langword="null"/> for a single reading.</summary>
    public Length? StandardDeviation => Count < 2 ? null : Length.FromMeters(Deviation().Value);

    /// <summary>Standard deviation per mean; <see langword="null"/> for a single reading or a mean of zero.</summary>
    public Ratio? CoefficientOfVariation => Count < 2 || !(MeanOf().Value > 0) ? null : Ratio.FromDecimalFractions(Varying().Value);

    /// <summary>Standard deviation of the mean, s/√n; <see langword="null"/> for a single reading.</summary>
    public Length? StandardError => Count < 2 ? null : Length.FromMeters(Error().Value);

    /// <summary>
    /// Between which films the true mean lies with the confidence asked for; <see langword="null"/> for a single reading.
    /// </summary>
    public FilmInterval? MeanInterval => Count < 2 ? null : new(AtLeast().Value, AtMost().Value);

    internal ValueList<double> Values { get; }

    /// <summary>How the statistics follow from the readings.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Film statistics",
        [
            MeanOf, Thinnest, Thickest,
            .. Trace.When(Count >= 2, Deviation, Error),
            .. Trace.When(CoefficientOfVariation is not null, Varying),
            .. Trace.When(Count >= 2, AtLeast, AtMost),
        ]);

    /// <summary>The statistics in one line, in metric units.</summary>
    /// <returns>Text such as <c>5 readings: mean 129 µm, standard deviation 16.8 µm, 107 µm to 152 µm</c>.</returns>
    public override string ToString() =>
        Figures.Fixed(Count, 0) + (Count == 1 ? " reading" : " readings") + ": mean " + Measure.Film.Format(Mean.Meters, DisplayUnits.Si, 3)
        + (Count < 2 ? string.Empty : ", standard deviation " + Measure.Film.Format(Deviation().Value, DisplayUnits.Si, 3))
        + ", " + Measure.Film.Format(Minimum.Meters, DisplayUnits.Si, 3) + " to " + Measure.Film.Format(Maximum.Meters, DisplayUnits.Si, 3);

    private Num MeanOf(Trace? t = null) =>
        t.Step("mean", "d_m", Measure.Film, Statistics, StatisticsKernel.Mean(Values, t, "d_", Measure.Film));

    private Num Thinnest(Trace? t = null) => t.Step("thinnest", "d_min", Measure.Film, Statistics, Letters(t).Aggregate(Num.Min));

    private Num Thickest(Trace? t = null) => t.Step("thickest", "d_max", Measure.Film, Statistics, Letters(t).Aggregate(Num.Max));

    private Num Deviation(Trace? t = null) =>
        t.Step("standard deviation", "s", Measure.Film, Statistics, StatisticsKernel.Deviation(Values, MeanOf(t), t, "d_", Measure.Film));

    private Num Error(Trace? t = null) => t.Step("standard error of the mean", "s_m", Measure.Film, Statistics,
        Deviation(t) / Num.Sqrt(t.Given("n", Values.Count, Measure.Number)));

    private Num Varying(Trace? t = null) => t.Step("coefficient of variation", "CV", Measure.Percent, Statistics, Deviation(t) / MeanOf(t));

    private Num AtLeast(Trace? t = null) =>
        t.Step("mean, at least", "d_1", Measure.Film, StudentSource, MeanOf(t) - (Student(t) * Error(t)));

    private Num AtMost(Trace? t = null) => t.Step("mean, at most", "d_2", Measure.Film, StudentSource, MeanOf(t) + (Student(t) * Error(t)));

    private Num Student(Trace? t) => t.Given("t", StudentT.Quantile(Confidence.DecimalFractions, Values.Count - 1), Measure.Number);

    private IEnumerable<Num> Letters(Trace? t) => StatisticsKernel.Letters(Values, t, "d_", Measure.Film);
}
