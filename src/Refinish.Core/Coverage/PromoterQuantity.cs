using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>How much adhesion promoter a wipe over an area takes.</summary>
/// <remarks>V = A / SR, with the promoter's own spreading rate, cloth losses included.</remarks>
public sealed record PromoterQuantity
{
    private static readonly Source Definition = Source.Derived("definition of the spreading rate");

    /// <summary>Calculates the quantity.</summary>
    /// <param name="area">Area to wipe, more than 0 and at most 1000 m².</param>
    /// <param name="promoter">The wipe.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="area"/> is outside its range.</exception>
    public PromoterQuantity(Area area, AdhesionPromoter promoter)
    {
        Area = Guard.Checked(area, Bounds.Positive(Measure.Area, 1000));
        Promoter = Guard.NotNull(promoter);
    }

    /// <summary>Area to wipe.</summary>
    public Area Area { get; }

    /// <summary>The wipe.</summary>
    public AdhesionPromoter Promoter { get; }

    /// <summary>Volume to pour on cloths.</summary>
    public Volume Volume => Volume.FromCubicMeters(ToPour().Value);

    /// <summary>How the volume follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Wipe of " + Promoter.Name, ToPour);

    /// <summary>The quantity in one line, in metric units.</summary>
    /// <returns>Text such as <c>40 mL of silane adhesion promoter</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(Volume.CubicMeters, DisplayUnits.Si, 3) + " of " + Promoter.Name;

    private Num ToPour(Trace? t = null) => t.Step("promoter to pour", "V", Measure.Liquid, Definition,
        t.Given("A", Area.SquareMeters, Measure.Area)
        / t.Given("SR", Promoter.SpreadingRate.SquareMetersPerCubicMeter, Measure.SpreadingRate));
}
