using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>Dry films held against a specification by a rule of acceptance.</summary>
/// <remarks>
/// A rule says what it wants counted, spots or readings: this takes values and trusts the caller for that. With <see cref="CoatedArea"/> it
/// says how many the rule's plan asks for and whether so many were measured. A rule of spots means the mean of one area of 10 m²: judge
/// each area of a large surface by itself too. The base reading has to be taken off before (<see cref="GaugeAdjustment"/>).
/// </remarks>
/// <example><code>
/// FilmSpecification range = new(Length.FromMicrometers(100), Length.FromMicrometers(300), Source.Supplied("job specification"));
/// Length[] readings = [Length.FromMicrometers(120), Length.FromMicrometers(110), Length.FromMicrometers(105), Length.FromMicrometers(100), Length.FromMicrometers(80)];
/// FilmJudgement result = new(FilmAcceptanceRules.NominalWithFifthBelow, range, readings);
/// bool accepted = result.IsAccepted;           // true: one of five may lie below, and none below 80 µm
/// </code></example>
public sealed record FilmJudgement
{
    /// <summary>Judges films without saying how large an area they stand for.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="specification">The least and most film.</param>
    /// <param name="films">What the rule counts, see <see cref="FilmAcceptanceRule.FilmsOf"/>: at least one, each from 0 to 10 mm.</param>
    /// <exception cref="ArgumentException">No film is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A film is outside its range.</exception>
    public FilmJudgement(FilmAcceptanceRule rule, FilmSpecification specification, IEnumerable<Length> films)
        : this(rule, specification, films, null)
    {
    }

    /// <summary>Judges the films of an area.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="specification">The least and most film.</param>
    /// <param name="films">What the rule counts, see <see cref="FilmAcceptanceRule.FilmsOf"/>: at least one, each from 0 to 10 mm.</param>
    /// <param name="coatedArea">
    /// The coated area that they stand for, more than 0 and at most 10 000 m²; without it nobody knows whether they are enough.
    /// </param>
    /// <exception cref="ArgumentException">No film is given.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A film or the area is outside its range.</exception>
    public FilmJudgement(FilmAcceptanceRule rule, FilmSpecification specification, IEnumerable<Length> films, Area? coatedArea)
    {
        Rule = Guard.NotNull(rule);
        Specification = Guard.NotNull(specification);
        Statistics = new FilmStatistics(films);
        CoatedArea = coatedArea is Area coated
            ? Guard.Checked(coated, Bounds.Positive(Measure.Area, 10e3), nameof(coatedArea)) : null;
        Comparisons = new ValueList<LimitComparison>(Compare());
    }

    /// <summary>The rule.</summary>
    public FilmAcceptanceRule Rule { get; }

    /// <summary>The least and most film.</summary>
    public FilmSpecification Specification { get; }

    /// <summary>The values and their statistics.</summary>
    public FilmStatistics Statistics { get; }

    /// <summary>Part of the values at or above the specified least.</summary>
    public Ratio ShareAtLeast => Ratio.FromDecimalFractions(Share().Value);

    /// <summary>Every part of the rule, each against its limit.</summary>
    public IReadOnlyList<LimitComparison> Comparisons { get; }

    /// <summary>
    /// The coated area that the values stand for, more than 0 and at most 10 000 m²; <see langword="null"/> when not given.
    /// </summary>
    public Area? CoatedArea { get; }

    /// <summary>
    /// How many were measured against how many the rule's plan asks for; it cannot be judged when the rule has no plan,
    /// <see langword="null"/> without a <see cref="CoatedArea"/>.
    /// </summary>
    public LimitComparison? Sampling => CoatedArea is Area coated
        ? new(One + "s measured", Statistics.Count, Rule.Plan?.CountFor(coated), LimitSense.AtLeast, Measure.Number,
            Rule.Plan?.Source ?? Rule.Source, "measure more")
        : null;

    /// <summary>
    /// Whether every part of the rule is kept and no fewer were measured than its plan asks for; a rule without parts accepts nothing.
    /// </summary>
    public bool IsAccepted => Comparisons.Count > 0 && Sampling?.Outcome != ComparisonOutcome.Beyond
        && Comparisons.All(comparison => comparison.Outcome == ComparisonOutcome.Within);

    /// <summary>How the numbers that the rule looks at follow.</summary>
    /// <returns>The derivation; the statistics are its part.</returns>
    public Workings Workings() => Trace.Of("Films against " + Rule.Name, [Statistics.Workings()], Share);

    /// <summary>The outcome in one line, in metric units.</summary>
    /// <returns>Text such as <c>not accepted by nominal film, a fifth may be below (80/20): 15 readings, mean 102 µm</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} by {1}: {2} {3}{5}, mean {4}",
        IsAccepted ? "accepted" : "not accepted", Rule.Name, Statistics.Count, One + (Statistics.Count == 1 ? string.Empty : "s"),
        Measure.Film.Format(Statistics.Mean.Meters, DisplayUnits.Si, 3),
        Sampling is not LimitComparison sampling ? string.Empty
            : sampling.Limit is { Si: double asked } ? " of the " + Figures.Fixed(asked, 0) + " asked for" : ", no plan says how many");

    private string One => Rule.Sample == FilmSample.Spot ? "spot" : "reading";

    private Num Share(Trace? t = null) => t.Step("part at or above the least", "r", Measure.Percent, Rule.Source,
        t.Given("n_ok", Statistics.Values.Count(film => film >= Specification.Minimum.Meters), Measure.Number)
            / t.Given("n", Statistics.Count, Measure.Number));

    private IEnumerable<LimitComparison> Compare()
    {
        double mean = Statistics.Mean.Meters;
        const LimitSense Least = LimitSense.AtLeast;
        const LimitSense Most = LimitSense.AtMost;
        LimitComparison?[] parts =
        [
            Film("mean film against the least", mean, Rule.MeanAtLeast, Specification.Minimum, Least,
                "another coat within the recoat window"),
            Film("mean film against the most", mean, Rule.MeanAtMost, Specification.Maximum, Most, "sand back"),
            Film("thinnest " + One, Statistics.Minimum.Meters, Rule.EachAtLeast, Specification.Minimum, Least, "another coat there"),
            Film("thickest " + One, Statistics.Maximum.Meters, Rule.EachAtMost, Specification.Maximum, Most, "sand back there"),
            Rule.ShareAtLeast is Ratio share
                ? new("part of the " + One + "s at or above the least", Share().Value, share.DecimalFractions, Least, Measure.Percent,
                    Rule.Source, "another coat on the thin places")
                : null,
        ];
        return parts.OfType<LimitComparison>();

        LimitComparison? Film(string name, double film, Ratio? part, Length limit, LimitSense sense, string remedy) => part is Ratio given
            ? new(name, film, given.DecimalFractions * limit.Meters, sense, Measure.Film, Rule.Source, remedy)
            : null;
    }
}
