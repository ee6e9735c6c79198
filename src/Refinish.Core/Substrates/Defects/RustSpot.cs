using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// A spot of rust, ground to bright metal with a margin; margin and depth of the grinding come from the <see cref="FillerPolicy"/>.
/// </summary>
public sealed record RustSpot : Defect
{
    private static readonly Source Cut = Source.Derived("disc cut out with a margin; margin and depth are the filler policy's");

    private readonly double diameter;

    /// <summary>Records it.</summary>
    /// <param name="diameter">Across, more than 0 and at most 0.5 m.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="diameter"/> is outside its range.</exception>
    public RustSpot(Length diameter)
        : base(DefectKind.RustSpot, "rust spot") => this.diameter = Guard.Within(diameter, Bounds.Positive(Measure.Length, 0.5));

    /// <summary>Across.</summary>
    public Length Diameter => Length.FromMeters(diameter);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "rust spot " + Mm(diameter, system) + " across";

    internal override double Size => diameter;

    internal override double FlatArea => System.Math.PI / 4 * diameter * diameter;

    internal override Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) => new Cavity(
        SubstratesKernel.GroundOut(
            t.Given("d", diameter, Measure.Length), t.Given("m", policy.RustGrindingMargin.Meters, Measure.Length),
            t.Given("h", policy.RustGrindingDepth.Meters, Measure.Length)),
        policy.RustGrindingDepth.Meters,
        Cut);

    internal override bool Contradicts(FixtureMaterial material) => !material.IsMagnetic;

    internal override double MendedArea(double fixtureArea) =>
        System.Math.PI * System.Math.Pow((diameter / 2) + FillerPolicy.Generic.RustGrindingMargin.Meters, 2);
}
