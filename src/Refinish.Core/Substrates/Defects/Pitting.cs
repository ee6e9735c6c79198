using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// Many small pits over an area, as acid cleaners and standing drips leave them: V = A s h, taken as flat-bottomed, which errs to more
/// filler.
/// </summary>
/// <example><code>
/// Pitting pits = new(Area.FromSquareCentimeters(300), Length.FromMillimeters(0.3), Ratio.FromPercent(20));
/// Volume hollow = pits.CavityVolume;   // 1800 mm³
/// </code></example>
public sealed record Pitting : Defect
{
    private static readonly Source Shape = Source.Derived("flat-bottomed pits over part of an area");

    private readonly double area;
    private readonly double depth;
    private readonly double share;

    /// <summary>Records it.</summary>
    /// <param name="area">Area over which there are pits, more than 0 and at most 10 m².</param>
    /// <param name="depth">Depth of the usual pit, at least 1 µm and at most 10 mm.</param>
    /// <param name="share">Part of that area that is pit, more than 0 and at most 100 %.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">A size is outside its range.</exception>
    public Pitting(Area area, Length depth, Ratio share) : base(DefectKind.Pitting, "pitting")
    {
        this.area = Guard.Within(area, Bounds.Positive(Measure.Area, 10));
        this.depth = Guard.Within(depth, Depths(0.01));
        this.share = Guard.Within(share, Bounds.Positive(Measure.Percent, 1));
    }

    /// <summary>Area over which there are pits.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Depth of the usual pit.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>Part of that area that is pit.</summary>
    public Ratio Share => Ratio.FromDecimalFractions(share);

    /// <summary>Volume of the pits.</summary>
    public Volume CavityVolume => Volume.FromCubicMeters(Pits(null).Value);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) =>
        "pitting over " + Measure.Area.Format(area, system, 3) + ", " + Mm(depth, system) + " deep, " + Measure.Percent.Format(share, system, 3) + " of it pits";

    internal override double FlatArea => area;

    internal override double? MeasuredDepth => depth;

    internal override Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) =>
        new Cavity(Pits(t), depth, Shape);

    private Num Pits(Trace? t) =>
        t.Given("A", area, Measure.Area) * t.Given("s", share, Measure.Percent) * t.Given("h", depth, Measure.Length);

    internal override double Units => area;

    internal override double MendedArea(double fixtureArea) => area;
}
