namespace Refinish;

/// <summary>
/// A value held against a limit: which limit, which way, how far off, and what would help. A missing value or a missing limit gives
/// <see cref="ComparisonOutcome.CannotBeJudged"/>, never a pass.
/// </summary>
/// <example><code>
/// LimitComparison spread = new("surface above dew point", 4.2, 3.0, LimitSense.AtLeast, Measure.TemperatureDifference, Source.Supplied("product data sheet"));
/// double? margin = spread.Margin;   // 1.2 K on the allowed side
/// </code></example>
public sealed record LimitComparison
{
    /// <summary>Holds a value against a limit.</summary>
    /// <param name="subject">What is compared, in words.</param>
    /// <param name="value">
    /// The value in the SI base unit of <paramref name="measure"/>, or <see langword="null"/> when it is not known.
    /// </param>
    /// <param name="limit">The limit in the same unit, or <see langword="null"/> when there is none.</param>
    /// <param name="sense">Which way the limit holds.</param>
    /// <param name="measure">What kind of amount both are.</param>
    /// <param name="source">Where the limit comes from.</param>
    /// <param name="remedy">What would bring the value within the limit, where something would.</param>
    /// <exception cref="System.ArgumentException"><paramref name="subject"/> is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">
    /// A number is NaN or infinite, or <paramref name="sense"/> is not a named value.
    /// </exception>
    public LimitComparison(string subject, double? value, double? limit, LimitSense sense, Measure measure, Source source, string? remedy = null)
    {
        Subject = Guard.Named(subject);
        Measure = Guard.NotNull(measure);
        Bounds any = Bounds.Between(double.MinValue, double.MaxValue, measure);
        Value = value is double v ? Guard.Within(v, any, nameof(value), nameof(value)) : null;
        Limit = limit is double l ? Guard.Within(l, any, nameof(limit)) : null;
        Sense = Guard.Defined(sense);
        Source = Guard.NotNull(source);
        Remedy = remedy;
    }

    /// <summary>What is compared, in words.</summary>
    public string Subject { get; }

    /// <summary>The value in the SI base unit of <see cref="Measure"/>; <see langword="null"/> when not known.</summary>
    public double? Value { get; }

    /// <summary>The limit in the same unit; <see langword="null"/> when there is none.</summary>
    public double? Limit { get; }

    /// <summary>Which way the limit holds.</summary>
    public LimitSense Sense { get; }

    /// <summary>What kind of amount value and limit are.</summary>
    public Measure Measure { get; }

    /// <summary>Where the limit comes from.</summary>
    public Source Source { get; }

    /// <summary>What would bring the value within the limit; <see langword="null"/> when nothing is known or needed.</summary>
    public string? Remedy { get; }

    /// <summary>
    /// Whose limit it is, where it holds and as of when, with the set that it was chosen from where there is one; <see langword="null"/>
    /// where <see cref="Source"/> says it all.
    /// </summary>
    public string? Whose { get; init; }

    /// <summary>
    /// Significant figures with which the value is told, 2 to 15; 4 unless given. With fewer than 4 it is rounded towards the limit, never
    /// away from it.
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
        && (Sense == LimitSense.AtLeast ? Value <= Limit * factor : Value >= Limit / factor);

    /// <summary>
    /// How far the value is on the allowed side of the limit: negative when beyond it, <see langword="null"/> when it cannot be judged.
    /// </summary>
    public double? Margin => Sense == LimitSense.AtLeast ? Value - Limit : Limit - Value;

    /// <summary>How the comparison came out.</summary>
    public ComparisonOutcome Outcome => Margin switch
    {
        null => ComparisonOutcome.CannotBeJudged,
        >= 0 => ComparisonOutcome.Within,
        _ => ComparisonOutcome.Beyond,
    };

    /// <summary>The comparison as a sentence with its numbers.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>surface above dew point: 4.2 K; limit at least 3 K; 1.2 K within</c>.</returns>
    public string Sentence(DisplayUnits system)
    {
        bool least = Sense == LimitSense.AtLeast;
        string value = Value is double v ? Rounded(v, system, up: !least) : "not known";
        string limit = Limit is double l ? (least ? "at least " + Rounded(l, system, up: true) : "at most " + Measure.Format(l, system, 4)) : "none known";
        string verdict = Margin switch
        {
            null => "cannot be judged",
            >= 0 and double within => FormatDistance(within, system, up: false) + " within" + (IsAboutAtLimit ? ", which is about at the line: the model is good to a factor of " + Figures.Significant(GoodToFactor!.Value, 2) : string.Empty),
            double beyond => FormatDistance(-beyond, system, up: true) + " beyond",
        };
        return Subject + ": " + value + "; limit " + limit + "; " + verdict;
    }

    /// <summary>The comparison as a sentence in metric units.</summary>
    /// <returns>See <see cref="Sentence"/>.</returns>
    public override string ToString() => Sentence(DisplayUnits.Si);

    private string Rounded(double value, DisplayUnits system, bool up) =>
        Digits >= 4 ? Measure.Format(value, system, Digits) : up ? Measure.FormatAtLeast(value, system, Digits) : Measure.FormatAtMost(value, system, Digits);

    // The distance between two temperatures has no zero point.
    private string FormatDistance(double distance, DisplayUnits system, bool up)
    {
        Measure measure = Measure.Equals(Measure.Temperature) ? Measure.TemperatureDifference : Measure;
        return Digits >= 4 ? measure.Format(distance, system, 3) : up ? measure.FormatAtLeast(distance, system, Digits) : measure.FormatAtMost(distance, system, Digits);
    }
}
