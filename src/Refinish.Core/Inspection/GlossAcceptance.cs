using System;
using System.Collections.Generic;
using Refinish.Colours;

namespace Refinish.Inspection;

/// <summary>The gloss of a finish held against a wanted band at one angle.</summary>
/// <example><code>
/// GlossAcceptance test = new(new GlossReading { At60 = 92, At20 = 84 }, GlossAngle.Twenty, least: 80, most: null, Source.Supplied("job specification"));
/// </code></example>
public sealed record GlossAcceptance
{
    private static readonly Bounds Units = Bounds.Between(0, 2000, Measure.Gloss);

    /// <summary>Holds a reading against a band.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="angle">Angle at which the band is wanted.</param>
    /// <param name="least">Least gloss, 0 to 2000 GU; none when <see langword="null"/>.</param>
    /// <param name="most">Most gloss, not below the least; none when <see langword="null"/>.</param>
    /// <param name="source">Who wants it.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public GlossAcceptance(GlossReading reading, GlossAngle angle, double? least, double? most, Source source)
    {
        Reading = Guard.NotNull(reading);
        Angle = Guard.Defined(angle);
        Least = least is double low ? Guard.Within(low, Units, nameof(least)) : null;
        Most = most is double high ? Guard.Within(high, Units, nameof(most)) : null;
        Guard.Rule(!(Most < Least), nameof(most), Most ?? 0, Measure.Gloss, "at least the least gloss");
        Source = Guard.NotNull(source);
        Comparisons = new ValueList<LimitComparison>(Compare());
    }

    /// <summary>The reading.</summary>
    public GlossReading Reading { get; }

    /// <summary>Angle at which the band is wanted.</summary>
    public GlossAngle Angle { get; }

    /// <summary>Least gloss; <see langword="null"/> for none.</summary>
    public double? Least { get; }

    /// <summary>Most gloss; <see langword="null"/> for none.</summary>
    public double? Most { get; }

    /// <summary>Who wants it.</summary>
    public Source Source { get; }

    /// <summary>The gloss against each end of the band; not to be judged when it was not read at this angle.</summary>
    public IReadOnlyList<LimitComparison> Comparisons { get; }

    /// <summary>The reading and the angle in one line.</summary>
    /// <returns>Text such as <c>84 GU at 20°</c>.</returns>
    public override string ToString() => (Reading.At(Angle) is double gloss ? Measure.Gloss.Format(gloss) : "not read") + " at " + Degrees;

    private string Degrees => Figures.Significant(GlossKernel.Degrees(Angle)) + "°";

    private IEnumerable<LimitComparison> Compare()
    {
        double? gloss = Reading.At(Angle);
        if (Least is double low)
        {
            yield return new(
                "gloss at " + Degrees + " against the least", gloss, low, LimitSense.AtLeast, Measure.Gloss, Source,
                "polish, or look for dry spray and moisture in the coat");
        }

        if (Most is double high)
        {
            yield return new("gloss at " + Degrees + " against the most", gloss, high, LimitSense.AtMost, Measure.Gloss, Source, "another sheen of the coating");
        }
    }
}
