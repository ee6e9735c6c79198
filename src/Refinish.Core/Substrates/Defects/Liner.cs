using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// A liner of acrylic or PVC that was glued over an old tub or wall. As a rule it is not refinished unless it is bonded all over and dry
/// behind (common practice, no source); otherwise it comes off and the tub below is judged, or the fixture is replaced.
/// </summary>
/// <remarks>
/// The material of the survey is what gets coated: that of the liner where it stays, that of the tub below where it comes off.
/// </remarks>
/// <example><code>
/// Liner loose = new(Area.FromSquareMeters(2.4), LinerState.Loose, comesOff: false);
/// Verdict verdict = new(new Survey { Material = FixtureMaterial.Acrylic, Defects = [loose], YearBuilt = 1995 });
/// string code = verdict.Reasons[0].RuleCode;   // "S-43"
/// </code></example>
public sealed record Liner : Defect
{
    private readonly double area;

    /// <summary>Records a liner as it was found.</summary>
    /// <param name="area">Area of the liner, more than 0 and at most 100 m².</param>
    /// <param name="state">How it sits.</param>
    /// <param name="comesOff">Whether it comes off as part of this work.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">
    /// <paramref name="area"/> is outside its range or <paramref name="state"/> is not a named value.
    /// </exception>
    public Liner(Area area, LinerState state, bool comesOff) : base(DefectKind.Liner, "liner")
    {
        this.area = Guard.Within(area, Bounds.Positive(Measure.Area, 100));
        State = Guard.Defined(state);
        ComesOff = comesOff;
    }

    /// <summary>Area of the liner.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>How it sits.</summary>
    public LinerState State { get; }

    /// <summary>Whether it comes off as part of this work.</summary>
    public bool ComesOff { get; }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "liner over " + Measure.Area.Format(area, system, 3) + ", " + (State switch
    {
        LinerState.WaterBehind => "water behind it",
        LinerState.Loose => "loose or flexing",
        LinerState.BondedAndDry => "bonded and dry",
        _ => "not tested for hold and water",
    }) + (ComesOff ? ", comes off" : string.Empty);

    internal override double FlatArea => area;

    internal override double Units => ComesOff ? area : 0;

    internal override bool Contradicts(FixtureMaterial material) => !ComesOff && material.Surface != MaterialSurface.Polymer;

    internal override double MendedArea(double fixtureArea) => area;
}
