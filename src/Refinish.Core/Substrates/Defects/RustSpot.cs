using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A spot of rust, ground to bright metal with a margin; margin and depth of the grinding come from the <see cref="FillerPolicy"/>.</summary>
public sealed record RustSpot : Defect
{
    private readonly double diameter;

    /// <summary>Records it.</summary>
    /// <param name="diameter">Across, more than 0 and at most 0.5 m.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="diameter"/> is outside its range.</exception>
    public RustSpot(Length diameter)
        : base(DefectKind.RustSpot, "rust spot") =>
        this.diameter = Guard.Within(diameter, Bounds.Positive(Measure.Length, 0.5), nameof(diameter));

    /// <summary>Across.</summary>
    public Length Diameter => Length.FromMeters(diameter);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "rust spot " + Mm(diameter, system) + " across";

    internal override double Size => diameter;

    internal override double FlatArea => System.Math.PI / 4 * diameter * diameter;

    internal override Cavity? CavityUnder(FillerPolicy policy)
    {
        double margin = policy.RustGrindingMargin.Meters;
        double depth = policy.RustGrindingDepth.Meters;
        Expression d = Expression.Quantity("d", diameter, Measure.Length);
        Expression m = Expression.Quantity("m", margin, Measure.Length);
        Expression h = Expression.Quantity("h", depth, Measure.Length);
        return new Cavity(
            SubstratesKernel.GroundOut(diameter, margin, depth),
            depth,
            Expression.Pi() * Expression.Square((d / 2) + m) * h,
            Source.Derived("disc cut out with a margin; margin and depth are the filler policy's"));
    }
}
