using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// Volatile organic compounds of a mixture from the contents on the labels of its parts, and how much thinner a limit leaves room for.
/// </summary>
/// <remarks>
/// C = Σ(V·C)/ΣV over the parts that count, water and exempt solvent left out; volumes additive. Source: Metal Finishing guidebook
/// 2013, appendix B, pages 813 and 817.
/// </remarks>
/// <example><code>
/// static MassConcentration PoundsPerGallon(double value) => MassConcentration.FromPoundsPerUSGallon(value);
/// VocBlend thinned = new([
///     new("coating", Volume.FromUsGallons(1), PoundsPerGallon(2.5)),
///     new("thinner", Volume.FromUsGallons(0.25), PoundsPerGallon(6.8)),
/// ]);
/// double content = thinned.Content.PoundsPerUSGallon;   // 3.36
/// </code></example>
public sealed record VocBlend
{
    private static readonly Source Guidebook = Source.Published("Metal Finishing guidebook 2013", "appendix B, pages 813 and 817");

    /// <summary>Makes a blend.</summary>
    /// <param name="parts">The parts; at least one has to count.</param>
    /// <exception cref="ArgumentException">The list is empty, has an empty entry, or every part is left out.</exception>
    public VocBlend(IEnumerable<VocPart> parts)
    {
        Parts = Guard.List(parts, 1);
        if (Parts.All(part => part.IsIgnored))
        {
            throw new ArgumentException("parts holds nothing but water and exempt solvent.", nameof(parts));
        }
    }

    /// <summary>The parts.</summary>
    public IReadOnlyList<VocPart> Parts { get; }

    /// <summary>Content less water and exempt compounds.</summary>
    public MassConcentration Content => MassConcentration.FromKilogramsPerCubicMeter(Mixed().Value);

    /// <summary>How much more thinner the mixture takes until it stands at a limit.</summary>
    /// <param name="thinner">Content of the thinner, more than the limit and at most 2 kg/L.</param>
    /// <param name="limit">The limit, more than 0 and at most 2 kg/L.</param>
    /// <returns>Volume of thinner; <see langword="null"/> when the mixture is beyond the limit as it stands.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Volume? ThinnerUpTo(MassConcentration thinner, MassConcentration limit)
    {
        double most = Guard.Within(limit, Bounds.Positive(Measure.CoatingContent, 2000));
        double added = Guard.Within(thinner, Bounds.Above(most, 2000, Measure.CoatingContent));
        double room = (most * CountedVolume().Value) - Organic().Value;
        return room < 0 ? null : Volume.FromCubicMeters(room / (added - most));
    }

    /// <summary>How the content follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("VOC of a mixture", Mixed);

    /// <summary>The content in one line.</summary>
    /// <returns>Text such as <c>402.6 g/L less water and exempt compounds</c>.</returns>
    public override string ToString() =>
        Measure.CoatingContent.Format(Mixed().Value, DisplayUnits.Si, 4) + " less water and exempt compounds";

    private Num Organic(Trace? t = null) => t.Step("volatile organic compounds", "W", Measure.Mass, Guidebook, Num.Sum(Parts, t,
        static (part, _, t) => part.IsIgnored ? 0 : VolumeOf(part, t) * t.Given("C", part.Content.KilogramsPerCubicMeter, Measure.CoatingContent)));

    private Num CountedVolume(Trace? t = null) => t.Step(
        "volume that counts", "V_c", Measure.Capacity, Guidebook, Num.Sum(Parts, t, static (part, _, t) => part.IsIgnored ? 0 : VolumeOf(part, t)));

    private Num Mixed(Trace? t = null) =>
        t.Step("VOC less water and exempt compounds", "C_mix", Measure.CoatingContent, Guidebook, Organic(t) / CountedVolume(t));

    private static Num VolumeOf(VocPart part, Trace? t) => t.Given("V", part.Volume.CubicMeters, Measure.Capacity);
}
