using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// What one coat over a set of surfaces takes, with each loss by itself, and how long it takes to spray; the film and the losses add up to
/// what is mixed. All figures are of one coat, except <see cref="TotalOfAllCoats"/>.
/// </summary>
/// <remarks>
/// V_film = ΣA·WFT; dead volume of the roughness p·f is filled first, V_dead = ΣA·p·f·(1 + R)/VS; V_aim = Σ A·(WFT + p·f·(1 +
/// R)/VS)/TE; V_gun = V_aim/(1 − o); V_fill = V_gun + H; V_pour = V_fill/(1 − w); V_all = V_pour/(1 − u); t = V_gun/(Q·d). Volumes
/// additive.
/// </remarks>
/// <example><code>
/// CoatingLayer layer = new(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), coats: 1, Ratio.FromPercent(10));
/// SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60) };
/// CoatDemand coat = new(Area.FromSquareMeters(2.57), layer, gun, new ApplicationLosses { Residue = Ratio.FromPercent(8) });
/// double millilitres = coat.Total.Milliliters;      // 341.43 = 2.57 m² × 30 µm × 1.1 / 0.45 / 0.60 / 0.92
/// double minutes = coat.SprayTime.TotalMinutes;     // 1.963 = 2.57 m² × 30 µm × 1.1 / 0.45 / 0.60 / 160 mL/min
/// </code></example>
public sealed record CoatDemand
{
    private const double LongestCoat = 100 * 86400;

    private static readonly Source Balance = Source.Derived("volume balance from film to pot, volumes additive");
    private static readonly Source Efficiency =
        Source.Published("South Coast air district, Spray equipment transfer efficiency", "definition");
    private static readonly Source Rate = Source.Derived("volume through the gun over its mean rate");

    // Read by many, and sums over the surfaces: kept.
    private readonly double area;
    private readonly double aimed;
    private readonly double all;

    /// <summary>Calculates the demand of one surface.</summary>
    /// <param name="area">Area to coat, more than 0 and at most 1000 m².</param>
    /// <param name="layer">Product, film of one coat and reducer.</param>
    /// <param name="gun">The gun, with its transfer efficiency.</param>
    /// <param name="losses">The losses; the roughness counts once, so give it for the first coat only.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="area"/> is outside its range, or the gun is so slow that the coat takes more than 100 days.
    /// </exception>
    public CoatDemand(Area area, CoatingLayer layer, SprayGun gun, ApplicationLosses losses)
        : this([new CoatedSurface("surface", area)], layer, gun, losses)
    {
    }

    /// <summary>Calculates the demand of several surfaces.</summary>
    /// <param name="surfaces">The surfaces, at least one.</param>
    /// <param name="layer">Product, film of one coat and reducer.</param>
    /// <param name="gun">The gun; its transfer efficiency holds for every surface that has none of its own.</param>
    /// <param name="losses">The losses; the roughness counts once, so give it for the first coat only.</param>
    /// <exception cref="ArgumentException">No surface, or an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The gun is so slow that the coat takes more than 100 days.</exception>
    public CoatDemand(IEnumerable<CoatedSurface> surfaces, CoatingLayer layer, SprayGun gun, ApplicationLosses losses)
    {
        ValueList<CoatedSurface> list = Guard.List(surfaces, 1);
        Surfaces = list;
        Layer = Guard.NotNull(layer);
        Gun = Guard.NotNull(gun);
        Losses = Guard.NotNull(losses);
        WetFilm = new WetFilm(layer.DryFilmPerCoat, layer.Product.VolumeSolids, layer.Reducer);
        area = Whole().Value;
        aimed = Aimed().Value;
        all = All().Value;
        double seconds = Spraying().Value;
        Guard.Rule(seconds <= LongestCoat, nameof(gun), seconds, Measure.Hours, "a gun that sprays this coat in at most 2400 h (100 days)");
    }

    /// <summary>The surfaces.</summary>
    public IReadOnlyList<CoatedSurface> Surfaces { get; }

    /// <summary>Product, film of one coat and reducer.</summary>
    public CoatingLayer Layer { get; }

    /// <summary>The gun.</summary>
    public SprayGun Gun { get; }

    /// <summary>The losses.</summary>
    public ApplicationLosses Losses { get; }

    /// <summary>The wet film of the coat.</summary>
    public WetFilm WetFilm { get; }

    /// <summary>All surfaces together.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Reduced coating that becomes film.</summary>
    public Volume Film => Volume.FromCubicMeters(OnSurface().Value);

    /// <summary>Reduced coating that fills the roughness.</summary>
    public Volume DeadVolume => Volume.FromCubicMeters(Filling().Value);

    /// <summary>Aimed at the piece and blown off it.</summary>
    public Volume Overspray => Volume.FromCubicMeters(BlownOff().Value);

    /// <summary>Sprayed past the edges.</summary>
    public Volume EdgeLoss => Volume.FromCubicMeters(PastEdges().Value);

    /// <summary>Left in hose and gun.</summary>
    public Volume HoldUp => Losses.HoldUp;

    /// <summary>Clinging to cups, sticks and filter.</summary>
    public Volume ResidueLoss => Volume.FromCubicMeters(Clinging().Value);

    /// <summary>Mixed and thrown away unused.</summary>
    public Volume UnusedLoss => Volume.FromCubicMeters(Unused().Value);

    /// <summary>Reduced coating through the gun.</summary>
    public Volume Sprayed => Volume.FromCubicMeters(ThroughGun().Value);

    /// <summary>Clock time to spray the coat: what goes through the gun over its mean rate, pauses of the trigger included.</summary>
    public TimeSpan SprayTime => Durations.FromSeconds(Spraying().Value);

    /// <summary>Reduced coating to mix, all losses in.</summary>
    public Volume Total => Volume.FromCubicMeters(all);

    /// <summary>
    /// Reduced coating to mix for all coats of the layer, each with these losses; the roughness is filled by the first alone.
    /// </summary>
    public Volume TotalOfAllCoats => Volume.FromCubicMeters(AllCoats().Value);

    /// <summary>All parts of the product in <see cref="Total"/>, the reducer left out.</summary>
    public Volume Mixed => Volume.FromCubicMeters(Parts().Value);

    /// <summary>Part of what is mixed that becomes film.</summary>
    public Ratio UsedShare => Ratio.FromDecimalFractions(Used().Value);

    /// <summary>Area covered per volume of reduced coating when nothing is lost.</summary>
    public SpreadingRate TheoreticalSpreadingRate => SpreadingRate.FromSquareMetersPerCubicMeter(Theoretical().Value);

    /// <summary>Area covered per volume of reduced coating mixed, all losses in.</summary>
    public SpreadingRate PracticalSpreadingRate => SpreadingRate.FromSquareMetersPerCubicMeter(Practical().Value);

    /// <summary>How the demand follows, loss by loss.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "One coat of " + Layer.Product.Name + " over all surfaces",
        [
            Whole, Wet, DeadWet, OnSurface, Filling, Aimed, BlownOff, ThroughGun, PastEdges, Filled, Poured, Clinging, All, Unused,
            .. Trace.When(Layer.Coats > 1, AllCoats), Parts, Used, Theoretical, Practical, Spraying,
        ]);

    /// <summary>The demand in one line, in metric units: of one coat, and of all where the layer has several.</summary>
    /// <returns>
    /// Text such as <c>423 mL of two-part acrylic urethane topcoat for one coat on 3.3 m², 54 % of it film; 1270 mL for 3 coats</c>.
    /// </returns>
    public override string ToString() =>
        Measure.Liquid.Format(all, DisplayUnits.Si, 3) + " of " + Layer.Product.Name
        + " for one coat on " + Measure.Area.Format(area, DisplayUnits.Si, 3) + ", "
        + Measure.Percent.Format(Used().Value, DisplayUnits.Si, 2) + " of it film"
        + (Layer.Coats == 1 ? string.Empty
            : "; " + Measure.Liquid.Format(AllCoats().Value, DisplayUnits.Si, 3) + " for " + Figures.Fixed(Layer.Coats, 0) + " coats");

    private Num Whole(Trace? t = null)
    {
        if (t is null && area > 0)
        {
            return area;
        }

        Num sum = 0;
        foreach (CoatedSurface one in Surfaces)
        {
            sum += AreaOf(one, t);
        }

        return t.Step("all surfaces", "A", Measure.Area, Balance, sum);
    }

    private Num Wet(Trace? t = null) => t.Step("wet film", "WFT", Measure.Film, Balance, FilmKernel.WetFilm(
        t.Given("DFT", Layer.DryFilmPerCoat.Meters, Measure.Film), Solids(t), Reducer(t)));

    private Num DeadWet(Trace? t = null) => t.Step("wet film in the roughness", "WFT_d", Measure.Film, Balance, FilmKernel.WetFilm(
        t.Given("p", Losses.ProfileDepth.Meters, Measure.Film) * t.Given("f", Losses.ProfileFill.DecimalFractions, Measure.Percent),
        Solids(t), Reducer(t)));

    private Num OnSurface(Trace? t = null) => t.Step("becomes film", "V_film", Measure.Liquid, Balance, Whole(t) * Wet(t));

    private Num Filling(Trace? t = null) => t.Step("fills the roughness", "V_dead", Measure.Liquid, Balance, Whole(t) * DeadWet(t));

    private Num Aimed(Trace? t = null) => t is null && aimed > 0 ? aimed
        : t.Step("aimed at the surfaces", "V_aim", Measure.Liquid, Efficiency, Landing(Wet(t) + DeadWet(t), t));

    private Num BlownOff(Trace? t = null) => t.Step("blown off", "V_over", Measure.Liquid, Balance, Aimed(t) - OnSurface(t) - Filling(t));

    private Num ThroughGun(Trace? t = null) =>
        t.Step("through the gun", "V_gun", Measure.Liquid, Balance, Aimed(t) / Rest("o", Losses.EdgeOverspray, t));

    private Num PastEdges(Trace? t = null) => t.Step("past the edges", "V_edge", Measure.Liquid, Balance, ThroughGun(t) - Aimed(t));

    private Num Filled(Trace? t = null) => t.Step("with hose and gun filled", "V_fill", Measure.Liquid, Balance, ThroughGun(t) + Hose(t));

    private Num Poured(Trace? t = null) => t.Step("poured", "V_pour", Measure.Liquid, Balance, Filled(t) / Rest("w", Losses.Residue, t));

    private Num Clinging(Trace? t = null) => t.Step("clings to cups and filter", "V_cling", Measure.Liquid, Balance, Poured(t) - Filled(t));

    private Num All(Trace? t = null) =>
        t is null && all > 0 ? all : t.Step("to mix", "V_all", Measure.Liquid, Balance, Poured(t) / Rest("u", Losses.UnusedPot, t));

    private Num Unused(Trace? t = null) => t.Step("thrown away unused", "V_unused", Measure.Liquid, Balance, All(t) - Poured(t));

    /// <summary>A further coat finds the roughness filled.</summary>
    private Num Further(Trace? t) => t.Step("to mix for a further coat", "V_next", Measure.Liquid, Balance,
        ((Landing(Wet(t), t) / Rest("o", Losses.EdgeOverspray, t)) + Hose(t)) / Rest("w", Losses.Residue, t) / Rest("u", Losses.UnusedPot,
            t));

    private Num AllCoats(Trace? t = null) => t.Step("to mix for all coats", "V_coats", Measure.Liquid, Balance,
        All(t) + ((t.Given("n", Layer.Coats, Measure.Number) - 1) * Further(t)));

    private Num Parts(Trace? t = null) =>
        t.Step("all parts, without the reducer", "V_mix", Measure.Liquid, Balance, All(t) / (1 + Reducer(t)));

    private Num Used(Trace? t = null) => t.Step("part that becomes film", "η", Measure.Percent, Balance, OnSurface(t) / All(t));

    private Num Theoretical(Trace? t = null) => t.Step("theoretical spreading rate", "SR_t", Measure.SpreadingRate, Balance, 1 / Wet(t));

    private Num Practical(Trace? t = null) => t.Step("practical spreading rate", "SR_p", Measure.SpreadingRate, Balance, Whole(t) / All(t));

    private Num Spraying(Trace? t = null) => t.Step("spraying time", "t_spray", Measure.Minutes, Rate, ThroughGun(t)
        / (t.Given("Q_gun", Gun.FluidRate.CubicMetersPerSecond, Measure.FluidRate) * t.Given("d", Gun.TriggerFraction.DecimalFractions,
            Measure.Percent)));

    private Num Landing(Num film, Trace? t)
    {
        Num sum = 0;
        foreach (CoatedSurface one in Surfaces)
        {
            sum += AreaOf(one, t) * film / t.Given("TE", (one.TransferEfficiency ?? Gun.TransferEfficiency).DecimalFractions,
                Measure.Percent);
        }

        return sum;
    }

    private static Num AreaOf(CoatedSurface one, Trace? t) => t.Given("A", one.Area.SquareMeters, Measure.Area);

    private static Num Rest(string symbol, Ratio lost, Trace? t) => 1 - t.Given(symbol, lost.DecimalFractions, Measure.Percent);

    private Num Hose(Trace? t) => t.Given("H", Losses.HoldUp.CubicMeters, Measure.Liquid);

    private Num Solids(Trace? t) => t.Given("VS", Layer.Product.VolumeSolids.DecimalFractions, Measure.Percent);

    private Num Reducer(Trace? t) => t.Given("R", Layer.Reducer.DecimalFractions, Measure.Percent);
}
