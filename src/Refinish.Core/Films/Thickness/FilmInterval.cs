using UnitsNet;

namespace Refinish.Films;

/// <summary>Between which thicknesses a film lies; the upper end may be open.</summary>
/// <example><code>
/// FilmInterval wet = new NotchGauge([Length.FromMils(2), Length.FromMils(3), Length.FromMils(4)]).Read(2).Wet;   // 76.2 µm to 101.6 µm
/// </code></example>
public sealed record FilmInterval
{
    internal FilmInterval(double lower, double? upper)
    {
        LowerMeters = lower;
        UpperMeters = upper;
    }

    /// <summary>The lower end; below zero only where a wide confidence interval reaches there.</summary>
    public Length Lower => Length.FromMeters(LowerMeters);

    /// <summary>The upper end; <see langword="null"/> when it is open.</summary>
    public Length? Upper => UpperMeters is double u ? Length.FromMeters(u) : null;

    /// <summary>Half the width; <see langword="null"/> when the upper end is open.</summary>
    public Length? HalfWidth => UpperMeters is double u ? Length.FromMeters((u - LowerMeters) / 2) : null;

    internal double LowerMeters { get; }

    internal double? UpperMeters { get; }

    /// <summary>The interval against a least and a most film. An interval that a limit cuts through cannot be judged.</summary>
    /// <param name="least">Least film, more than 0 and at most 5 mm.</param>
    /// <param name="most">Most film, not below the least and at most 5 mm.</param>
    /// <param name="source">Where the limits come from.</param>
    /// <returns>Two comparisons.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">A limit is outside its range.</exception>
    public System.Collections.Generic.IReadOnlyList<LimitComparison> Against(Length least, Length most, Source source)
    {
        double low = Guard.Within(least, Bounds.Positive(Measure.Film, 5e-3));
        double high = Guard.Within(most, Bounds.Positive(Measure.Film, 5e-3));
        Guard.Rule(high >= low, nameof(most), high, Measure.Film, "at least the least film, ", low);
        double? forLeast = LowerMeters >= low ? LowerMeters : UpperMeters < low ? UpperMeters : null;
        double? forMost = UpperMeters <= high ? UpperMeters : LowerMeters > high ? LowerMeters : null;
        return new ValueList<LimitComparison>(
        [
            new("film against the least", forLeast, low, LimitSense.AtLeast, Measure.Film, source, forLeast is null ? "a gauge whose teeth part at the limit" : null),
            new("film against the most", forMost, high, LimitSense.AtMost, Measure.Film, source, forMost is null ? "a gauge whose teeth part at the limit" : null),
        ]);
    }

    /// <summary>The interval in one line, in metric units.</summary>
    /// <returns>Text such as <c>76.2 µm to 101.6 µm</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(LowerMeters) + (UpperMeters is double u ? " to " + Measure.Film.Format(u) : " or more");
}
