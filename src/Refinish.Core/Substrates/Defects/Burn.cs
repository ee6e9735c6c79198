using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A burn, cut out to sound material; margin and depth of the cut come from the <see cref="FillerPolicy"/>.</summary>
public sealed record Burn : Defect
{
    private static readonly Source Cut = Source.Derived("disc cut out with a margin; margin and depth are the filler policy's");

    private readonly double diameter;

    /// <summary>Records it.</summary>
    /// <param name="diameter">Across, more than 0 and at most 0.5 m.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="diameter"/> is outside its range.</exception>
    public Burn(Length diameter)
        : base(DefectKind.Burn, "burn") =>
        this.diameter = Guard.Within(diameter, Bounds.Positive(Measure.Length, 0.5));

    /// <summary>Across.</summary>
    public Length Diameter => Length.FromMeters(diameter);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "burn " + Mm(diameter, system) + " across";

    internal override double Size => diameter;

    internal override double FlatArea => System.Math.PI / 4 * diameter * diameter;

    internal override Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) => new Cavity(
        SubstratesKernel.GroundOut(
            t.Given("d", diameter, Measure.Length), t.Given("m", policy.BurnCuttingMargin.Meters, Measure.Length),
            t.Given("h", policy.BurnCuttingDepth.Meters, Measure.Length)),
        policy.BurnCuttingDepth.Meters,
        Cut);
}
