using System;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// A low spot that is skimmed: filler over a rectangular patch that runs out to nothing around it, V = t (A + P f / 2 + π f² / 3),
/// with A area and P perimeter of the patch, t thickness and f width of the feathered edge.
/// </summary>
/// <remarks>Steiner's formula for the area around a convex patch, integrated over a linear taper; exact for any convex patch.</remarks>
/// <example><code>
/// LowSpot low = new(Length.FromMillimeters(300), Length.FromMillimeters(200), Length.FromMillimeters(0.6), Length.FromMillimeters(40));
/// Volume filler = low.CavityVolume;   // 49.01 mL
/// </code></example>
public sealed record LowSpot : Defect
{
    private static readonly Source Shape = Source.Derived("Steiner's formula, linear taper");

    private readonly double length;
    private readonly double width;
    private readonly double thickness;
    private readonly double feather;

    /// <summary>Records it.</summary>
    /// <param name="length">Longer side of the patch, more than 0 and at most 5 m.</param>
    /// <param name="width">Shorter side, more than 0 and at most <paramref name="length"/>.</param>
    /// <param name="thickness">Thickness of the cured skim over the patch, at least 1 µm and at most 20 mm.</param>
    /// <param name="feather">Width over which it runs out, 0 to 1 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public LowSpot(Length length, Length width, Length thickness, Length feather) : base(DefectKind.LowSpot, "low spot")
    {
        this.length = Guard.Within(length, Bounds.Positive(Measure.Length, 5));
        this.width = Guard.Within(width, Bounds.Positive(Measure.Length, 5));
        this.thickness = Guard.Within(thickness, Depths(0.02));
        this.feather = Guard.Within(feather, Bounds.NotNegative(Measure.Length, 1));
        Guard.Rule(this.width <= this.length, nameof(width), this.width, Measure.Length, "at most length, ", this.length);
    }

    /// <summary>Longer side of the patch.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Shorter side of the patch.</summary>
    public Length Width => Length.FromMeters(width);

    /// <summary>Thickness over the patch.</summary>
    public Length Thickness => Length.FromMeters(thickness);

    /// <summary>Width over which it runs out.</summary>
    public Length Feather => Length.FromMeters(feather);

    /// <summary>Volume of the cured skim; shrinkage, sanding and waste come on top.</summary>
    public Volume CavityVolume => Volume.FromCubicMeters(Skim(null).Value);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "low spot " + Mm(length, system) + " by " + Mm(width, system) + ", skimmed "
        + Mm(thickness, system) + " thick, feathered over " + Mm(feather, system);

    internal override double Size => length;

    // Steiner's formula for the whole of the skim, feathered edge included.
    internal override double FlatArea => (length * width) + (2 * (length + width) * feather) + (Math.PI * feather * feather);

    internal override Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) =>
        new Cavity(Skim(t), thickness, Shape);

    private Num Skim(Trace? t) => SubstratesKernel.FeatheredSkim(
        t.Given("l", length, Measure.Length), t.Given("w", width, Measure.Length),
        t.Given("t", thickness, Measure.Length), t.Given("f", feather, Measure.Length));

    internal override double MendedArea(double fixtureArea) => FlatArea;
}
