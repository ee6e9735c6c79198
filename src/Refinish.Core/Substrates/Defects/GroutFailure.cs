using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>Grout that has crumbled, cracked or fallen out.</summary>
public sealed record GroutFailure : Defect
{
    private readonly double joint;

    /// <summary>Records it.</summary>
    /// <param name="joint">Length of the joints concerned, more than 0 and at most 1000 m.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="joint"/> is outside its range.</exception>
    public GroutFailure(Length joint)
        : base(DefectKind.GroutFailure, "grout failure") => this.joint = Guard.Within(joint, Bounds.Positive(Measure.Distance, 1000));

    /// <summary>Length of the joints concerned.</summary>
    public Length Joint => Length.FromMeters(joint);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "grout failure along " + Measure.Distance.Format(joint, system, 4) + " of joint";

    internal override double Units => joint;

    internal override bool Contradicts(FixtureMaterial material) => !material.HasJoints;

    internal override double MendedArea(double fixtureArea) => joint * JointWidth;
}
