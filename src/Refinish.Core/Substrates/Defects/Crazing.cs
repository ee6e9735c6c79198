using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A net of hairline cracks in enamel, glaze or gelcoat.</summary>
public sealed record Crazing : Defect
{
    private readonly double ofArea;

    /// <summary>Records it.</summary>
    /// <param name="ofArea">Share of the fixture's surface, more than 0 and at most 100 %.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="ofArea"/> is outside its range.</exception>
    public Crazing(Ratio ofArea)
        : base(DefectKind.Crazing, "crazing") => this.ofArea = Guard.Within(ofArea, Bounds.Positive(Measure.Percent, 1));

    /// <summary>Share of the fixture's surface.</summary>
    public Ratio OfArea => Ratio.FromDecimalFractions(ofArea);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "crazing over " + Measure.Percent.Format(ofArea, system, 3) + " of the surface";

    internal override double MendedArea(double fixtureArea) => ofArea * fixtureArea;
}
