using UnitsNet;

namespace Refinish.Substrates;

/// <summary>An earlier refinishing coat that peels, with the grade of a tape test on what still holds.</summary>
public sealed record PeelingCoat : Defect
{
    private readonly double area;

    /// <summary>Records it.</summary>
    /// <param name="area">Area of the old coat that has to be judged, more than 0 and at most 100 m².</param>
    /// <param name="adhesion">Worst grade found by a cross-cut tape test; <see langword="null"/> when not tested.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">
    /// <paramref name="area"/> is outside its range or <paramref name="adhesion"/> is not a named value.
    /// </exception>
    public PeelingCoat(Area area, AdhesionGrade? adhesion) : base(DefectKind.PeelingCoat, "peeling coat")
    {
        this.area = Guard.Within(area, Bounds.Positive(Measure.Area, 100));
        Adhesion = adhesion is AdhesionGrade grade ? Guard.Defined(grade, nameof(adhesion)) : null;
    }

    /// <summary>Area of the old coat that has to be judged.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Worst grade found by a cross-cut tape test; <see langword="null"/> when not tested.</summary>
    public AdhesionGrade? Adhesion { get; }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) =>
        "old coat peels over " + Measure.Area.Format(area, system, 3) + ", adhesion " + (Adhesion is AdhesionGrade grade ? GradeName(grade) : "not tested");

    internal override double FlatArea => area;

    internal static string GradeName(AdhesionGrade grade) => grade switch
    {
        AdhesionGrade.Grade0B => "0B",
        AdhesionGrade.Grade1B => "1B",
        AdhesionGrade.Grade2B => "2B", AdhesionGrade.Grade3B => "3B", AdhesionGrade.Grade4B => "4B", _ => "5B", };

    internal override double Units => area;

    internal override double MendedArea(double fixtureArea) => area;
}
