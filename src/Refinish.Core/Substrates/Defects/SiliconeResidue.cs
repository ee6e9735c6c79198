using UnitsNet;

namespace Refinish.Substrates;

/// <summary>Silicone left by old caulk or cleaning products: coatings crawl on it.</summary>
public sealed record SiliconeResidue : Defect
{
    private readonly double joint;

    /// <summary>Records it.</summary>
    /// <param name="joint">Length of the joints concerned, more than 0 and at most 1000 m.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="joint"/> is outside its range.</exception>
    public SiliconeResidue(Length joint)
        : base(DefectKind.SiliconeResidue, "silicone residue") =>
        this.joint = Guard.Within(joint, Bounds.Positive(Measure.Distance, 1000));

    /// <summary>Length of the joints concerned.</summary>
    public Length Joint => Length.FromMeters(joint);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "silicone residue along " + Measure.Distance.Format(joint, system, 4) + " of joint";

    internal override double Units => joint;

    internal override double MendedArea(double fixtureArea) => joint * JointWidth;
}
