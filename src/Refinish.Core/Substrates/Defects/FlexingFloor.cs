using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A floor that gives under a standing person of about 80 kg (the load is common practice, no source).</summary>
public sealed record FlexingFloor : Defect
{
    private readonly double deflection;

    /// <summary>Records it.</summary>
    /// <param name="deflection">How far the floor goes down, more than 0 and at most 100 mm.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="deflection"/> is outside its range.</exception>
    public FlexingFloor(Length deflection)
        : base(DefectKind.FlexingFloor, "flexing floor") =>
        this.deflection = Guard.Within(deflection, Bounds.Positive(Measure.Length, 0.1));

    /// <summary>How far the floor goes down.</summary>
    public Length Deflection => Length.FromMeters(deflection);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "floor gives by " + Mm(deflection, system);
}
