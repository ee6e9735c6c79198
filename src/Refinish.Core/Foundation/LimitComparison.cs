using System;
using UnitsNet;

namespace Refinish;

/// <summary>
/// A value held against a limit: which limit, which way, how far off, and what would help. A missing value or a missing limit gives
/// <see cref="ComparisonOutcome.CannotBeJudged"/>, never a pass.
/// </summary>
/// <example><code>
/// LimitComparison spread = LimitComparison.AtLeast("surface above dew point",
///     TemperatureDelta.FromKelvins(4.2), TemperatureDelta.FromKelvins(3), Measure.TemperatureDifference, Source.Supplied("product data sheet"));
/// string margin = spread.Margin.ToString()!;                                         // "1.2 K"
/// double? fahrenheit = spread.Margin?.In(TemperatureDeltaUnit.DegreeFahrenheit);     // 2.16 on the allowed side
/// </code></example>
public sealed record LimitComparison
{
    internal LimitComparison(string subject, double? value, double? limit, LimitSense sense, Measure measure, Source source, string? remedy = null)
    {
        Subject = Guard.Named(subject);
        Measure = Guard.NotNull(measure);
        Bounds any = Bounds.Between(double.MinValue, double.MaxValue, measure);
        Value = value is double v ? new(Guard.Within(v, any, nameof(value), nameof(value)), measure) : null;
        Limit = limit is double l ? new(Guard.Within(l, any, nameof(limit)), measure) : null;
        Sense = Guard.Defined(sense);
        Source = Guard.NotNull(source);
        Remedy = remedy;
    }

    /// <summary>What is compared, in words.</summary>
    public string Subject { get; }

    /// <summary>The value; <see langword="null"/> when not known.</summary>
    public MeasuredAmount? Value { get; }

    /// <summary>The limit; <see langword="null"/> when there is none.</summary>
    public MeasuredAmount? Limit { get; }

    /// <summary>Which way the limit holds.</summary>
    public LimitSense Sense { get; }

    /// <summary>What kind of amount value and limit are.</summary>
    public Measure Measure { get; }

    /// <summary>Where the limit comes from.</summary>
    public Source Source { get; }

    /// <summary>What would bring the value within the limit; <see langword="null"/> when nothing is known or needed.</summary>
    public string? Remedy { get; init; }

    /// <summary>
    /// Whose limit it is, where it holds and as of when, with the set that it was chosen from where there is one; <see langword="null"/>
    /// where <see cref="Source"/> says it all.
    /// </summary>
    public string? Whose { get; init; }

    /// <summary>
    /// Significant figures with which the value is told, 2 to 15; 4 unless given. With fewer than 4 it is rounded to the careful side: a
    /// value that may not pass the limit up, one that has to reach it down; and the margin is the difference of the numbers that are told.
    /// </summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public int Digits { get; init => field = Guard.Count(value, 2, 15); }
    = 4;

    /// <summary>
    /// The factor within which the model behind the value is good, 1 to 10, where a value close to its limit has to be told as being about
    /// at it; <see langword="null"/> where it is not.
    /// </summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public double? GoodToFactor
    {
        get;
        init => field = value is double factor ? Guard.Within(factor, Bounds.Between(1, 10, Measure.Number), nameof(GoodToFactor)) : null;
    }

    /// <summary>
    /// Whether the value is within the limit and no further from it than the factor to which the model behind it is good.
    /// </summary>
    public bool IsAboutAtLimit => Outcome == ComparisonOutcome.Within && GoodToFactor is double factor
        && (Sense == LimitSense.AtLeast ? Value?.Si <= Limit?.Si * factor : Value?.Si >= Limit?.Si / factor);

    /// <summary>
    /// How far the value is on the allowed side of the limit: negative when beyond it, <see langword="null"/> when it cannot be judged. Of
    /// temperatures it is a difference.
    /// </summary>
    public MeasuredAmount? Margin => Distance is double distance
        ? new(distance, Measure.Equals(Measure.Temperature) ? Measure.TemperatureDifference : Measure)
        : null;

    /// <summary>
    /// The value over the limit, as 0.8 of it; <see langword="null"/> when it cannot be judged or the limit is not above 0.
    /// </summary>
    public double? OfLimit => Limit?.Si > 0 ? Value?.Si / Limit?.Si : null;

    /// <summary>How the comparison came out.</summary>
    public ComparisonOutcome Outcome => Distance switch
    {
        null => ComparisonOutcome.CannotBeJudged,
        >= 0 => ComparisonOutcome.Within,
        _ => ComparisonOutcome.Beyond,
    };

    /// <summary>Holds a value against a limit that it has to reach.</summary>
    /// <param name="subject">What is compared, in words.</param>
    /// <param name="value">The value, or <see langword="null"/> when it is not known.</param>
    /// <param name="limit">The limit, or <see langword="null"/> when there is none.</param>
    /// <param name="measure">What kind of amount both are, and the units in which they are told.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="System.ArgumentException">
    /// <paramref name="subject"/> is empty, or a quantity is not of the kind of <paramref name="measure"/>.
    /// </exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A number is NaN or infinite.</exception>
    public static LimitComparison AtLeast(string subject, IQuantity? value, IQuantity? limit, Measure measure, Source source) =>
        Of(subject, value, limit, LimitSense.AtLeast, measure, source);

    /// <summary>Holds a value against a limit that it may not pass.</summary>
    /// <param name="subject">What is compared, in words.</param>
    /// <param name="value">The value, or <see langword="null"/> when it is not known.</param>
    /// <param name="limit">The limit, or <see langword="null"/> when there is none.</param>
    /// <param name="measure">What kind of amount both are, and the units in which they are told.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="System.ArgumentException">
    /// <paramref name="subject"/> is empty, or a quantity is not of the kind of <paramref name="measure"/>.
    /// </exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A number is NaN or infinite.</exception>
    public static LimitComparison AtMost(string subject, IQuantity? value, IQuantity? limit, Measure measure, Source source) =>
        Of(subject, value, limit, LimitSense.AtMost, measure, source);

    /// <summary>The comparison as a sentence with its numbers.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>surface above dew point: 4.2 K; limit at least 3 K; 1.2 K within</c>.</returns>
    public string Sentence(DisplayUnits system)
    {
        bool least = Sense == LimitSense.AtLeast;
        string value = Value is { Si: double v } ? Rounded(Measure, v, system, Digits, up: !least) : "not known";
        string limit = Limit is not { Si: double l } ? "none known"
            : least ? "at least " + Rounded(Measure, l, system, Digits, up: true)
            : "at most " + Measure.Format(l, system, 4);
        string verdict = Margin switch
        {
            null => "cannot be judged",
            { Si: >= 0 } => Difference(system) + " within" + (IsAboutAtLimit
                ? ", which is about at the line: the model is good to a factor of " + Figures.Significant(GoodToFactor!.Value, 2)
                : string.Empty),
            _ => Difference(system) + " beyond",
        };
        return Subject + ": " + value + "; limit " + limit + "; " + verdict;
    }

    /// <summary>The comparison as a sentence in metric units.</summary>
    /// <returns>See <see cref="Sentence"/>.</returns>
    public override string ToString() => Sentence(DisplayUnits.Si);

    private double? Distance => Sense == LimitSense.AtLeast ? Value?.Si - Limit?.Si : Limit?.Si - Value?.Si;

    private static LimitComparison Of(
        string subject, IQuantity? value, IQuantity? limit, LimitSense sense, Measure measure, Source source) =>
        new(subject, value is null ? null : Guard.NotNull(measure).Si(value, nameof(value)),
            limit is null ? null : Guard.NotNull(measure).Si(limit, nameof(limit)), sense, measure, source);

    // What is told adds up: with few digits the margin is that between the value and the limit as they are told.
    private string Difference(DisplayUnits system)
    {
        (Measure of, double margin) = (Margin!.Value.Measure, Margin.Value.Si);
        if (Digits >= 4)
        {
            return of.Format(Math.Abs(margin), system, 3);
        }

        bool least = Sense == LimitSense.AtLeast;
        double value = Figures.Careful(Measure.Shown(Value!.Value.Si, system), Digits, up: !least);
        double limit = Measure.Shown(Limit!.Value.Si, system);
        limit = least ? Figures.Careful(limit, Digits, up: true) : limit;
        return of.Joined(Math.Max(0, (least ? value - limit : limit - value) * Math.Sign(margin)), system);
    }

    private string Rounded(Measure measure, double si, DisplayUnits system, int figures, bool up) =>
        Digits >= 4 ? measure.Format(si, system, figures)
        : up ? measure.FormatAtLeast(si, system, Digits)
        : measure.FormatAtMost(si, system, Digits);
}
