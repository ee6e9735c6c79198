using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>Where the sprayed coating went: landed, lost on transfer, or passed by what was to be coated.</summary>
/// <remarks>
/// The transfer efficiency of the gun counts what stays of the coating that meets a surface; what the fan throws past the edges is counted apart.
/// Landed is the sum of film times area over the triangles, passed by is the rest. Volatile matter is not taken off: the film is as wet as the coating in the cup.
/// </remarks>
/// <example><code>
/// SprayBalance balance = map.Balance;               // the map of StrokePlan
/// double share = balance.Landed.Milliliters / balance.Sprayed.Milliliters;
/// </code></example>
public sealed record SprayBalance
{
    private static readonly Source Conservation = Source.Derived("conservation of volume");
    private static readonly Source Transfer = Source.Published("South Coast air district, Spray equipment transfer efficiency", "definition");

    private readonly double rate;
    private readonly double efficiency;
    private readonly double trigger;
    private readonly double landed;

    internal SprayBalance(double rate, double efficiency, double trigger, double landed)
    {
        this.rate = rate;
        this.efficiency = efficiency;
        this.trigger = trigger;
        this.landed = landed;
    }

    /// <summary>Coating through the gun.</summary>
    public Volume Sprayed => Volume.FromCubicMeters(rate * trigger);

    /// <summary>Coating that is wet film on the triangles.</summary>
    public Volume Landed => Volume.FromCubicMeters(landed);

    /// <summary>Coating that bounced or drifted off although it was aimed at a surface.</summary>
    public Volume NotTransferred => Volume.FromCubicMeters(rate * trigger * (1 - efficiency));

    /// <summary>Coating that was aimed past the fixture, at its back, or into the shadow of another part of it.</summary>
    public Volume PassedBy => Volume.FromCubicMeters((rate * trigger * efficiency) - landed);

    /// <summary>All that did not land: lost on transfer and passed by.</summary>
    public Volume Overspray => Volume.FromCubicMeters((rate * trigger) - landed);

    /// <summary>Landed over sprayed.</summary>
    public Ratio OverallEfficiency => Ratio.FromDecimalFractions(landed / (rate * trigger));

    /// <summary>How the volumes follow.</summary>
    /// <returns>The derivation; the landed volume is the sum over the triangles.</returns>
    public Workings Workings()
    {
        Expression q = Expression.Quantity("Q", rate, Measure.FluidRate);
        Expression te = Expression.Quantity("TE", efficiency, Measure.Percent);
        Expression t = Expression.Quantity("t", trigger, Measure.Minutes);
        WorkingStep film = new("coating on the triangles", "V_film", Expression.Quantity("Σ WFT A", landed, Measure.Liquid), landed, Measure.Liquid, Conservation);
        WorkingStep sprayed = new("coating through the gun", "V_gun", q * t, rate * trigger, Measure.Liquid, Conservation);
        WorkingStep lost = new("coating lost on transfer", "V_loss", q * t * (1 - te), rate * trigger * (1 - efficiency), Measure.Liquid, Transfer);
        WorkingStep passed = new("coating that passed by", "V_by", (q * t * te) - film.Result(), PassedBy.CubicMeters, Measure.Liquid, Conservation);
        WorkingStep over = new("overspray", "V_over", (q * t) - film.Result(), Overspray.CubicMeters, Measure.Liquid, Conservation);
        WorkingStep overall = new("landed over sprayed", "E", film.Result() / sprayed.Result(), OverallEfficiency.DecimalFractions, Measure.Percent, Conservation);
        return new Workings("Where the coating went", [film, sprayed, lost, passed, over, overall]);
    }

    /// <summary>The volumes in one line, in metric units.</summary>
    /// <returns>Text such as <c>300 mL sprayed: 150 mL landed, 105 mL lost on transfer, 45 mL passed by</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} sprayed: {1} landed, {2} lost on transfer, {3} passed by",
        Measure.Liquid.Format(Sprayed.CubicMeters, DisplayUnits.Si, 3),
        Measure.Liquid.Format(landed, DisplayUnits.Si, 3),
        Measure.Liquid.Format(NotTransferred.CubicMeters, DisplayUnits.Si, 3),
        Measure.Liquid.Format(PassedBy.CubicMeters, DisplayUnits.Si, 3));
}
