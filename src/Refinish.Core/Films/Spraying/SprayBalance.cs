using UnitsNet;

namespace Refinish.Films;

/// <summary>Where the sprayed coating went: landed, lost on transfer, or passed by what was to be coated.</summary>
/// <remarks>
/// The transfer efficiency of the gun counts what stays of the coating that meets a surface; what the fan throws past the edges is
/// counted apart. Landed is the sum of film times area over the triangles, passed by is the rest. Volatile matter is not taken off: the
/// film is as wet as the coating in the cup.
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

    internal SprayBalance(double rate, double efficiency, double trigger, double landed)
    {
        this.rate = rate;
        this.efficiency = efficiency;
        this.trigger = trigger;
        Landed = Volume.FromCubicMeters(landed);
    }

    /// <summary>Coating through the gun.</summary>
    public Volume Sprayed => Volume.FromCubicMeters(Gun().Value);

    /// <summary>Coating that is wet film on the triangles.</summary>
    public Volume Landed { get; }

    /// <summary>Coating that bounced or drifted off although it was aimed at a surface.</summary>
    public Volume NotTransferred => Volume.FromCubicMeters(Lost().Value);

    /// <summary>Coating that was aimed past the fixture, at its back, or into the shadow of another part of it.</summary>
    public Volume PassedBy => Volume.FromCubicMeters(Passed().Value);

    /// <summary>All that did not land: lost on transfer and passed by.</summary>
    public Volume Overspray => Volume.FromCubicMeters(Over().Value);

    /// <summary>Landed over sprayed.</summary>
    public Ratio OverallEfficiency => Ratio.FromDecimalFractions(Overall().Value);

    /// <summary>How the volumes follow.</summary>
    /// <returns>The derivation; the landed volume is the sum over the triangles.</returns>
    public Workings Workings() => Trace.Of("Where the coating went", Film, Gun, Lost, Passed, Over, Overall);

    /// <summary>The volumes in one line, in metric units.</summary>
    /// <returns>Text such as <c>300 mL sprayed: 150 mL landed, 105 mL lost on transfer, 45 mL passed by</c>.</returns>
    public override string ToString() =>
        Liquid(Gun()) + " sprayed: " + Liquid(Landed.CubicMeters) + " landed, " + Liquid(Lost()) + " lost on transfer, "
        + Liquid(Passed()) + " passed by";

    private static string Liquid(Num volume) => Measure.Liquid.Format(volume.Value, DisplayUnits.Si, 3);

    private Num Film(Trace? t = null) =>
        t.Step("coating on the triangles", "V_film", Measure.Liquid, Conservation, t.Given("Σ WFT A", Landed.CubicMeters, Measure.Liquid));

    private Num Gun(Trace? t = null) => t.Step("coating through the gun", "V_gun", Measure.Liquid, Conservation, Aimed(t));

    private Num Lost(Trace? t = null) =>
        t.Step("coating lost on transfer", "V_loss", Measure.Liquid, Transfer, Aimed(t) * (1 - Efficiency(t)));

    private Num Passed(Trace? t = null) =>
        t.Step("coating that passed by", "V_by", Measure.Liquid, Conservation, (Aimed(t) * Efficiency(t)) - Film(t));

    private Num Over(Trace? t = null) => t.Step("overspray", "V_over", Measure.Liquid, Conservation, Aimed(t) - Film(t));

    private Num Overall(Trace? t = null) => t.Step("landed over sprayed", "E", Measure.Percent, Conservation, Film(t) / Gun(t));

    private Num Aimed(Trace? t) => t.Given("Q", rate, Measure.FluidRate) * t.Given("t", trigger, Measure.Minutes);

    private Num Efficiency(Trace? t) => t.Given("TE", efficiency, Measure.Percent);
}
