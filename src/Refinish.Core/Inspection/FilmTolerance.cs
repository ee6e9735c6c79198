using System;
using System.Collections.Generic;
using Refinish.Films;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>
/// A plain test for the few readings that a small fixture allows: between which films does at least a given part of the surface lie,
/// with a given confidence, and is that within the specification?
/// </summary>
/// <remarks>
/// <para>Normal tolerance interval, mean ± k s. k is exact, not Howe's approximation: one-sided k = t′/√n with t′ the γ quantile of the
/// noncentral t with n − 1 degrees of freedom and noncentrality z_p √n, two-sided by its integral (ISO 16269-6, and Krishnamoorthy and
/// Mathew, Statistical Tolerance Regions, 2009; both from memory). It asks for much: with five readings the film has to keep five
/// standard deviations off its limits. That is what five readings are worth.</para>
/// <para>It assumes readings taken at random and films spread like a normal distribution. A basin with a thin rim and a thick floor is
/// neither: judge zones apart.</para>
/// </remarks>
/// <example><code>
/// FilmSpecification range = new(Length.FromMils(4), Length.FromMils(6.5), Source.Supplied("job specification"));
/// Length[] spots = [Length.FromMils(4.8), Length.FromMils(5.3), Length.FromMils(4.2), Length.FromMils(5.0), Length.FromMils(6.0)];
/// FilmTolerance test = new(range, spots, Ratio.FromPercent(90), Ratio.FromPercent(95), ToleranceSide.Both);
/// double k = test.Factor!.Value;               // 4.29
/// </code></example>
public sealed record FilmTolerance
{
    private static readonly Source Exact = Source.FromMemory("exact normal tolerance factors, ISO 16269-6; Krishnamoorthy and Mathew, Statistical Tolerance Regions, 2009");

    /// <summary>Tests the films: 90 % of the surface within both limits, with 95 % confidence.</summary>
    /// <param name="specification">The least and most film.</param>
    /// <param name="films">Readings or spots taken at random, at least one, each from 0 to 10 mm.</param>
    /// <exception cref="ArgumentException">No value is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmTolerance(FilmSpecification specification, IEnumerable<Length> films)
        : this(specification, films, Ratio.FromDecimalFractions(0.9), Ratio.FromDecimalFractions(0.95), ToleranceSide.Both)
    {
    }

    /// <summary>Tests the films.</summary>
    /// <param name="specification">The least and most film.</param>
    /// <param name="films">Readings or spots taken at random, at least one, each from 0 to 10 mm.</param>
    /// <param name="coverage">Part of the surface to be held, 50 to 99.9 %.</param>
    /// <param name="confidence">Confidence, 50 to 99.9 %.</param>
    /// <param name="side">Both limits, or only the lower or the upper one.</param>
    /// <exception cref="ArgumentException">No value is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmTolerance(FilmSpecification specification, IEnumerable<Length> films, Ratio coverage, Ratio confidence, ToleranceSide side)
    {
        Specification = Guard.NotNull(specification);
        Statistics = new FilmStatistics(films);
        Bounds bounds = Bounds.Between(0.5, 0.999, Measure.Percent);
        Coverage = Guard.Checked(coverage, bounds);
        Confidence = Guard.Checked(confidence, bounds);
        Side = Guard.Defined(side);
        Factor = Statistics.Count < 2
            ? null : ToleranceKernel.Factor(
                Statistics.Count, Coverage.DecimalFractions, Confidence.DecimalFractions, side == ToleranceSide.Both);
        Comparisons = new ValueList<LimitComparison>(Compare());
    }

    /// <summary>The least and most film.</summary>
    public FilmSpecification Specification { get; }

    /// <summary>The values and their statistics.</summary>
    public FilmStatistics Statistics { get; }

    /// <summary>Part of the surface to be held.</summary>
    public Ratio Coverage { get; }

    /// <summary>Confidence.</summary>
    public Ratio Confidence { get; }

    /// <summary>Which limits count.</summary>
    public ToleranceSide Side { get; }

    /// <summary>k; <see langword="null"/> for a single value, of which nothing can be said.</summary>
    public double? Factor { get; }

    /// <summary>Lower end of the interval; may be below zero; <see langword="null"/> for a single value or an upper interval.</summary>
    public Length? Lower => HasLow ? Length.FromMeters(Low().Value) : null;

    /// <summary>Upper end of the interval; <see langword="null"/> for a single value or a lower interval.</summary>
    public Length? Upper => HasHigh ? Length.FromMeters(High().Value) : null;

    /// <summary>The ends of the interval, each against its limit.</summary>
    public IReadOnlyList<LimitComparison> Comparisons { get; }

    private bool HasLow => Factor is not null && Side != ToleranceSide.Upper;

    private bool HasHigh => Factor is not null && Side != ToleranceSide.Lower;

    /// <summary>The factor for a number of readings, before any is taken.</summary>
    /// <param name="readings">How many, 2 to 1000.</param>
    /// <param name="coverage">Part to be held, 50 to 99.9 %.</param>
    /// <param name="confidence">Confidence, 50 to 99.9 %.</param>
    /// <param name="side">Both limits, or one.</param>
    /// <returns>k.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static double FactorFor(int readings, Ratio coverage, Ratio confidence, ToleranceSide side)
    {
        Bounds bounds = Bounds.Between(0.5, 0.999, Measure.Percent);
        return ToleranceKernel.Factor(
            Guard.Count(readings, 2, 1000),
            Guard.Within(coverage, bounds),
            Guard.Within(confidence, bounds),
            Guard.Defined(side) == ToleranceSide.Both);
    }

    /// <summary>How the interval follows.</summary>
    /// <returns>The derivation; the statistics are its part.</returns>
    public Workings Workings() => Trace.Of(
        "Tolerance interval",
        [Statistics.Workings()],
        [.. Trace.When(HasLow, Low), .. Trace.When(HasHigh, High)]);

    /// <summary>The interval in one line, in metric units.</summary>
    /// <returns>Text such as <c>90 % of the surface with 95 % confidence: 56.5 µm to 201 µm</c>.</returns>
    public override string ToString() =>
        Measure.Percent.Format(Coverage.DecimalFractions) + " of the surface with " + Measure.Percent.Format(Confidence.DecimalFractions)
            + " confidence: " + (Factor is null
            ? "not to be told from one value"
            : (HasLow ? Measure.Film.Format(Low().Value, DisplayUnits.Si, 3) + (HasHigh ? " to " : " or more") : "up to ")
                + (HasHigh ? Measure.Film.Format(High().Value, DisplayUnits.Si, 3) : string.Empty));

    private IEnumerable<LimitComparison> Compare()
    {
        if (Side != ToleranceSide.Upper)
        {
            yield return new(
                "lower end of the tolerance interval", Lower?.Meters, Specification.Minimum.Meters, LimitSense.AtLeast, Measure.Film,
                Specification.Source, "more readings, a thicker film or a more even one");
        }

        if (Side != ToleranceSide.Lower)
        {
            yield return new(
                "upper end of the tolerance interval", Upper?.Meters, Specification.Maximum.Meters, LimitSense.AtMost, Measure.Film,
                Specification.Source, "more readings, a thinner film or a more even one");
        }
    }

    private Num K(Trace? t) => t.Step("tolerance factor", "k", Measure.Number, Exact, Num.Solution(
        Factor!.Value,
        "k",
        k => ToleranceKernel.Confidence(Statistics.Count, Coverage.DecimalFractions, Side == ToleranceSide.Both, k, t),
        t.Given("γ", Confidence.DecimalFractions, Measure.Percent)));

    private Num Low(Trace? t = null) => t.Step("lower end", "d_low", Measure.Film, Exact, Mean(t) - (K(t) * Deviation(t)));

    private Num High(Trace? t = null) => t.Step("upper end", "d_high", Measure.Film, Exact, Mean(t) + (K(t) * Deviation(t)));

    private Num Mean(Trace? t) => t.Given("d_m", Statistics.Mean.Meters, Measure.Film);

    private Num Deviation(Trace? t) => t.Given("s", Statistics.StandardDeviation!.Value.Meters, Measure.Film);
}
