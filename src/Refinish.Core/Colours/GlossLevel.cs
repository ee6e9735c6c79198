using System;

namespace Refinish.Colours;

/// <summary>A named level of gloss: a band at 60° and, for the lower levels, one at 85°.</summary>
public sealed record GlossLevel
{
    private static readonly Bounds Units = Bounds.Between(0, 200, Measure.Gloss);

    /// <summary>Name of the level.</summary>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Least gloss at 60°, 0 to 200 GU; <see langword="null"/> for none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? Least60 { get; init => field = value is double v ? Guard.Within(v, Units, nameof(Least60)) : null; }

    /// <summary>Whether the least gloss itself belongs to the level below.</summary>
    public bool AboveLeast60 { get; init; }

    /// <summary>Most gloss at 60°, 0 to 200 GU; <see langword="null"/> for none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? Most60 { get; init => field = value is double v ? Guard.Within(v, Units, nameof(Most60)) : null; }

    /// <summary>Least gloss at 85°, 0 to 200 GU; <see langword="null"/> for none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? Least85 { get; init => field = value is double v ? Guard.Within(v, Units, nameof(Least85)) : null; }

    /// <summary>Most gloss at 85°, 0 to 200 GU; <see langword="null"/> for none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? Most85 { get; init => field = value is double v ? Guard.Within(v, Units, nameof(Most85)) : null; }

    /// <summary>Where the bands come from.</summary>
    /// <exception cref="ArgumentNullException">No source is given.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>Whether a reading belongs to the level.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>
    /// Within, beyond, or not to be judged when a reading that the level needs is missing and the others do not rule it out.
    /// </returns>
    public ComparisonOutcome Judge(GlossReading reading)
    {
        Guard.NotNull(reading);
        ComparisonOutcome at60 = Held(reading.At60, Least60, Most60, AboveLeast60);
        ComparisonOutcome at85 = Held(reading.At85, Least85, Most85, false);
        return at60 == ComparisonOutcome.Beyond || at85 == ComparisonOutcome.Beyond ? ComparisonOutcome.Beyond
            : at60 == ComparisonOutcome.CannotBeJudged || at85 == ComparisonOutcome.CannotBeJudged ? ComparisonOutcome.CannotBeJudged
            : ComparisonOutcome.Within;
    }

    /// <summary>The level in one line.</summary>
    /// <returns>Text such as <c>level 4, satin: 60° 20 to 35, 85° 35 or more</c>.</returns>
    public override string ToString() =>
        Name + ": 60° " + Band(Least60, Most60) + (Least85 is null && Most85 is null ? string.Empty : ", 85° " + Band(Least85, Most85));

    private static ComparisonOutcome Held(double? gloss, double? least, double? most, bool aboveLeast) =>
        least is null && most is null ? ComparisonOutcome.Within
        : gloss is null ? ComparisonOutcome.CannotBeJudged
        : gloss < least || gloss > most || (aboveLeast && gloss == least) ? ComparisonOutcome.Beyond
        : ComparisonOutcome.Within;

    private string Band(double? least, double? most) => (least, most) switch
    {
        (double low, double high) => Figures.Significant(low) + " to " + Figures.Significant(high),
        (double low, null) => (AboveLeast60 && low == Least60 ? "more than " : string.Empty) + Figures.Significant(low) + (AboveLeast60 && low == Least60 ? string.Empty : " or more"),
        (null, double high) => "up to " + Figures.Significant(high),
        _ => "any",
    };
}
