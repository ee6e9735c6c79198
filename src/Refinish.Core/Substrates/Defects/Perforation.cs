using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A hole right through the fixture. Filler does not mend it: a structural repair has to come first.</summary>
public sealed record Perforation : Defect
{
    private readonly double diameter;

    /// <summary>Records it.</summary>
    /// <param name="diameter">Across, more than 0 and at most 0.5 m.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="diameter"/> is outside its range.</exception>
    public Perforation(Length diameter)
        : base(DefectKind.Perforation, "perforation") => this.diameter = Guard.Within(diameter, Bounds.Positive(Measure.Length, 0.5));

    /// <summary>Across.</summary>
    public Length Diameter => Length.FromMeters(diameter);

    /// <summary>Least width of a structural patch that laps 50 mm all round.</summary>
    /// <remarks>The lap of 50 mm is from memory, unverified; it only applies where a structural repair is allowed at all.</remarks>
    public Length PatchWidth => Length.FromMeters(diameter + 0.1);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "perforation " + Mm(diameter, system) + " across";

    internal override double Size => diameter;

    internal override double FlatArea => System.Math.PI / 4 * diameter * diameter;
}
