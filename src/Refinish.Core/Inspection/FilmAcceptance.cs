using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>
/// Spot readings of the dry film held against a specification: the mean of all spots within the range, and no single spot below 80 % of
/// the least or above 120 % of the most.
/// </summary>
/// <remarks>
/// A spot is the mean of at least three gauge readings within a circle of 4 cm (SSPC-PA 2, section 3), five spots an area of 10 m². The
/// mean is
/// that of one area: judge each area by itself. How many areas of a large surface are measured says <see cref="FilmAcceptanceRule.Plan"/>.
/// The 80 % and 120 % are the commonly used restriction of the same document (seen in training material, not in the standard). That
/// document is written for metal: on tile, plastic and vitreous china an ultrasonic gauge or a witness panel takes the magnetic gauge's place.
/// Enamel under the coating reads as coating on a magnetic gauge: measure the bare enamel first and take it off.
/// </remarks>
/// <example><code>
/// Length[] spots = [Length.FromMils(4.8), Length.FromMils(5.3), Length.FromMils(4.2), Length.FromMils(5.0), Length.FromMils(6.0)];
/// FilmAcceptance result = new(new FilmSpecification(Length.FromMils(4), Length.FromMils(6.5), Source.Supplied("job specification")), spots);
/// bool accepted = result.IsAccepted;      // true
/// Length mean = result.Mean;              // 5.06 mil
/// </code></example>
public sealed record FilmAcceptance
{
    private static readonly Source Rule = Source.Published("SSPC-PA 2 (2004 and later)", "section 3 for spots; 80 % and 120 % second-hand, from training material");

    private readonly ValueList<double> spots;

    /// <summary>Holds spots against a specification.</summary>
    /// <param name="specification">The range asked for.</param>
    /// <param name="spots">Spot means, at least one, each more than 0 and at most 5 mm; the base reading already taken off.</param>
    /// <exception cref="ArgumentException">No spot is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A spot is outside its range.</exception>
    public FilmAcceptance(FilmSpecification specification, IEnumerable<Length> spots)
    {
        Specification = Guard.NotNull(specification);
        this.spots = new ValueList<double>(Guard.List(spots, 1).Select(spot =>
            Guard.Within(spot, Bounds.Positive(Measure.Film, 5e-3), nameof(spots))));
        Comparisons = new ValueList<LimitComparison>(Compare());
    }

    /// <summary>The range asked for.</summary>
    public FilmSpecification Specification { get; }

    /// <summary>The spots.</summary>
    public IReadOnlyList<Length> Spots => [.. spots.Select(spot => Length.FromMeters(spot))];

    /// <summary>Mean of the spots.</summary>
    public Length Mean => Length.FromMeters(MeanOf().Value);

    /// <summary>Standard deviation of the spots (n − 1); <see langword="null"/> for a single spot.</summary>
    public Length? StandardDeviation => spots.Count < 2 ? null : Length.FromMeters(Deviation().Value);

    /// <summary>The mean and the lowest and highest spot, each against its limit.</summary>
    public IReadOnlyList<LimitComparison> Comparisons { get; }

    /// <summary>Whether every comparison is within its limit.</summary>
    public bool IsAccepted => Comparisons.All(comparison => comparison.Outcome == ComparisonOutcome.Within);

    /// <summary>How mean and deviation follow from the spots.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Dry film found", [MeanOf, .. spots.Count < 2 ? [] : (Func<Trace, Num>[])[Deviation]]);

    /// <summary>The outcome in one line, in metric units.</summary>
    /// <returns>Text such as <c>accepted: mean 128 µm</c>.</returns>
    public override string ToString() => (IsAccepted ? "accepted" : "not accepted") + ": mean " + Measure.Film.Format(Mean.Meters, DisplayUnits.Si, 3);

    private Num MeanOf(Trace? t = null) =>
        t.Step("mean of the spots", "d_m", Measure.Film, Rule, StatisticsKernel.Mean(spots, t, "d_", Measure.Film));

    private Num Deviation(Trace? t = null) =>
        t.Step("standard deviation", "s", Measure.Film, Rule, StatisticsKernel.Deviation(spots, MeanOf(t), t, "d_", Measure.Film));

    private IEnumerable<LimitComparison> Compare()
    {
        double mean = MeanOf().Value;
        double least = Specification.Minimum.Meters;
        double most = Specification.Maximum.Meters;
        yield return new("mean film against the least", mean, least, LimitSense.AtLeast, Measure.Film, Specification.Source, "another coat within the recoat window");
        yield return new("mean film against the most", mean, most, LimitSense.AtMost, Measure.Film, Specification.Source, "sand back");
        yield return new("thinnest spot against 80 % of the least", spots.Min(), 0.8 * least, LimitSense.AtLeast, Measure.Film, Rule, "another coat there");
        yield return new("thickest spot against 120 % of the most", spots.Max(), 1.2 * most, LimitSense.AtMost, Measure.Film, Rule, "sand back there");
    }
}
