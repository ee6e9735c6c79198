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
/// V_film = ΣA·WFT; dead volume of the roughness p·f is filled first, V_dead = ΣA·p·f·(1 + R)/VS; V_aim = Σ A·(WFT + p·f·(1 + R)/VS)/TE; V_gun = V_aim/(1 − o);
/// V_fill = V_gun + H; V_pour = V_fill/(1 − w); V_all = V_pour/(1 − u); t = V_gun/(Q·d). Volumes additive.
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

    private readonly double area;
    private readonly double wet;
    private readonly double deadWet;
    private readonly double film;
    private readonly double dead;
    private readonly double aimed;
    private readonly double sprayed;
    private readonly double filled;
    private readonly double poured;
    private readonly double all;
    private readonly double further;
    private readonly double mixed;
    private readonly double seconds;

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
        ValueList<CoatedSurface> list = Guard.List(surfaces, nameof(surfaces), 1);
        Surfaces = list;
        Layer = Guard.NotNull(layer, nameof(layer));
        Gun = Guard.NotNull(gun, nameof(gun));
        Losses = Guard.NotNull(losses, nameof(losses));
        WetFilm = new WetFilm(layer.DryFilmPerCoat, layer.Product.VolumeSolids, layer.Reducer);
        double solids = layer.Product.VolumeSolids.DecimalFractions;
        double reducer = layer.Reducer.DecimalFractions;
        wet = FilmKernel.WetFilm(layer.DryFilmPerCoat.Meters, solids, reducer);
        deadWet = FilmKernel.WetFilm(losses.ProfileDepth.Meters * losses.ProfileFill.DecimalFractions, solids, reducer);
        double smooth = 0;
        for (int i = 0; i < list.Count; i++)
        {
            double a = list[i].Area.SquareMeters;
            area += a;
            film += CoverageKernel.FilmVolume(a, wet);
            dead += CoverageKernel.FilmVolume(a, deadWet);
            aimed += CoverageKernel.SprayedVolume(a * (wet + deadWet), EfficiencyOf(list[i]));
            smooth += CoverageKernel.SprayedVolume(a * wet, EfficiencyOf(list[i]));
        }

        (sprayed, filled, poured, all) = ToMix(aimed, losses);
        (_, _, _, further) = ToMix(smooth, losses);
        mixed = CoverageKernel.MixedVolume(all, reducer);
        seconds = sprayed / (gun.FluidRate.CubicMetersPerSecond * gun.TriggerFraction.DecimalFractions);
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
    public Volume Film => Volume.FromCubicMeters(film);

    /// <summary>Reduced coating that fills the roughness.</summary>
    public Volume DeadVolume => Volume.FromCubicMeters(dead);

    /// <summary>Aimed at the piece and blown off it.</summary>
    public Volume Overspray => Volume.FromCubicMeters(aimed - film - dead);

    /// <summary>Sprayed past the edges.</summary>
    public Volume EdgeLoss => Volume.FromCubicMeters(sprayed - aimed);

    /// <summary>Left in hose and gun.</summary>
    public Volume HoldUp => Losses.HoldUp;

    /// <summary>Clinging to cups, sticks and filter.</summary>
    public Volume ResidueLoss => Volume.FromCubicMeters(poured - filled);

    /// <summary>Mixed and thrown away unused.</summary>
    public Volume UnusedLoss => Volume.FromCubicMeters(all - poured);

    /// <summary>Reduced coating through the gun.</summary>
    public Volume Sprayed => Volume.FromCubicMeters(sprayed);

    /// <summary>Clock time to spray the coat: what goes through the gun over its mean rate, pauses of the trigger included.</summary>
    public TimeSpan SprayTime => Durations.FromSeconds(seconds);

    /// <summary>Reduced coating to mix, all losses in.</summary>
    public Volume Total => Volume.FromCubicMeters(all);

    /// <summary>
    /// Reduced coating to mix for all coats of the layer, each with these losses; the roughness is filled by the first alone.
    /// </summary>
    public Volume TotalOfAllCoats => Volume.FromCubicMeters(AllCoats);

    /// <summary>All parts of the product in <see cref="Total"/>, the reducer left out.</summary>
    public Volume Mixed => Volume.FromCubicMeters(mixed);

    /// <summary>Part of what is mixed that becomes film.</summary>
    public Ratio UsedShare => Ratio.FromDecimalFractions(film / all);

    /// <summary>Area covered per volume of reduced coating when nothing is lost.</summary>
    public SpreadingRate TheoreticalSpreadingRate => SpreadingRate.FromSquareMetersPerCubicMeter(1 / wet);

    /// <summary>Area covered per volume of reduced coating mixed, all losses in.</summary>
    public SpreadingRate PracticalSpreadingRate => SpreadingRate.FromSquareMetersPerCubicMeter(area / all);

    /// <summary>How the demand follows, loss by loss.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression r = Expression.Quantity("R", Layer.Reducer.DecimalFractions, Measure.Percent);
        Expression vs = Expression.Quantity("VS", Layer.Product.VolumeSolids.DecimalFractions, Measure.Percent);
        Expression areas = Expression.Sum(Surfaces.Select(one => Expression.Quantity("A", one.Area.SquareMeters, Measure.Area)));
        WorkingStep sum = new("all surfaces", "A", areas, area, Measure.Area, Balance);
        Expression dft = Expression.Quantity("DFT", Layer.DryFilmPerCoat.Meters, Measure.Film);
        WorkingStep wetFilm = new("wet film", "WFT", dft * (1 + r) / vs, wet, Measure.Film, Balance);
        Expression rough = Expression.Quantity("p", Losses.ProfileDepth.Meters, Measure.Film)
            * Expression.Quantity("f", Losses.ProfileFill.DecimalFractions, Measure.Percent);
        WorkingStep deadFilm = new("wet film in the roughness", "WFT_d", rough * (1 + r) / vs, deadWet, Measure.Film, Balance);
        WorkingStep onSurface = new("becomes film", "V_film", sum.Result() * wetFilm.Result(), film, Measure.Liquid, Balance);
        WorkingStep filling = new("fills the roughness", "V_dead", sum.Result() * deadFilm.Result(), dead, Measure.Liquid, Balance);
        Expression lands = Expression.Sum(Surfaces.Select(one =>
            Expression.Quantity("A", one.Area.SquareMeters, Measure.Area) * (wetFilm.Result() + deadFilm.Result())
            / Expression.Quantity("TE", EfficiencyOf(one), Measure.Percent)));
        WorkingStep aim = new("aimed at the surfaces", "V_aim", lands, aimed, Measure.Liquid, Efficiency);
        Expression lost = aim.Result() - onSurface.Result() - filling.Result();
        WorkingStep over = new("blown off", "V_over", lost, aimed - film - dead, Measure.Liquid, Balance);
        WorkingStep gun = new("through the gun", "V_gun", aim.Result() / Rest("o", Losses.EdgeOverspray), sprayed, Measure.Liquid, Balance);
        WorkingStep edge = new("past the edges", "V_edge", gun.Result() - aim.Result(), sprayed - aimed, Measure.Liquid, Balance);
        Expression hose = Expression.Quantity("H", Losses.HoldUp.CubicMeters, Measure.Liquid);
        WorkingStep fill = new("with hose and gun filled", "V_fill", gun.Result() + hose, filled, Measure.Liquid, Balance);
        WorkingStep pour = new("poured", "V_pour", fill.Result() / Rest("w", Losses.Residue), poured, Measure.Liquid, Balance);
        Expression clinging = pour.Result() - fill.Result();
        WorkingStep clings = new("clings to cups and filter", "V_cling", clinging, poured - filled, Measure.Liquid, Balance);
        WorkingStep total = new("to mix", "V_all", pour.Result() / Rest("u", Losses.UnusedPot), all, Measure.Liquid, Balance);
        WorkingStep unused = new("thrown away unused", "V_unused", total.Result() - pour.Result(), all - poured, Measure.Liquid, Balance);
        List<WorkingStep> steps =
        [
            sum, wetFilm, deadFilm, onSurface, filling, aim, over, gun, edge, fill, pour, clings, total, unused,
        ];
        if (Layer.Coats > 1)
        {
            AddAllCoats(steps, wetFilm, total, hose);
        }

        Expression mean = Expression.Quantity("Q_gun", Gun.FluidRate.CubicMetersPerSecond, Measure.FluidRate)
            * Expression.Quantity("d", Gun.TriggerFraction.DecimalFractions, Measure.Percent);
        return new Workings(
            "One coat of " + Layer.Product.Name + " over all surfaces",
            [
                .. steps,
                new("all parts, without the reducer", "V_mix", total.Result() / (1 + r), mixed, Measure.Liquid, Balance),
                new("part that becomes film", "η", onSurface.Result() / total.Result(), film / all, Measure.Percent, Balance),
                new("theoretical spreading rate", "SR_t", 1 / wetFilm.Result(), 1 / wet, Measure.SpreadingRate, Balance),
                new("practical spreading rate", "SR_p", sum.Result() / total.Result(), area / all, Measure.SpreadingRate, Balance),
                new("spraying time", "t_spray", gun.Result() / mean, seconds, Measure.Minutes, Rate),
            ]);
    }

    /// <summary>The demand in one line, in metric units: of one coat, and of all where the layer has several.</summary>
    /// <returns>
    /// Text such as <c>423 mL of two-part acrylic urethane topcoat for one coat on 3.3 m², 54 % of it film; 1270 mL for 3 coats</c>.
    /// </returns>
    public override string ToString() =>
        Measure.Liquid.Format(all, DisplayUnits.Si, 3) + " of " + Layer.Product.Name
        + " for one coat on " + Measure.Area.Format(area, DisplayUnits.Si, 3) + ", "
        + Measure.Percent.Format(film / all, DisplayUnits.Si, 2) + " of it film"
        + (Layer.Coats == 1 ? string.Empty
            : "; " + Measure.Liquid.Format(AllCoats, DisplayUnits.Si, 3) + " for " + Figures.Fixed(Layer.Coats, 0) + " coats");

    private double AllCoats => all + ((Layer.Coats - 1) * further);

    private static (double Sprayed, double Filled, double Poured, double All) ToMix(double aimed, ApplicationLosses losses)
    {
        double sprayed = CoverageKernel.PouredVolume(aimed, losses.EdgeOverspray.DecimalFractions);
        double filled = sprayed + losses.HoldUp.CubicMeters;
        double poured = CoverageKernel.PouredVolume(filled, losses.Residue.DecimalFractions);
        return (sprayed, filled, poured, CoverageKernel.PouredVolume(poured, losses.UnusedPot.DecimalFractions));
    }

    private void AddAllCoats(List<WorkingStep> steps, WorkingStep wetFilm, WorkingStep total, Expression hose)
    {
        Expression smooth = Expression.Sum(Surfaces.Select(one =>
            Expression.Quantity("A", one.Area.SquareMeters, Measure.Area) * wetFilm.Result() / Expression.Quantity("TE", EfficiencyOf(one),
                Measure.Percent)));
        Expression mix = ((smooth / Rest("o", Losses.EdgeOverspray)) + hose) / Rest("w", Losses.Residue) / Rest("u", Losses.UnusedPot);
        WorkingStep next = new("to mix for a further coat", "V_next", mix, further, Measure.Liquid, Balance);
        Expression coats = Expression.Quantity("n", Layer.Coats, Measure.Number);
        steps.AddRange([next,
            new("to mix for all coats", "V_coats", total.Result() + ((coats - 1) * next.Result()), AllCoats, Measure.Liquid, Balance)]);
    }

    private static Expression Rest(string symbol, Ratio lost) => 1 - Expression.Quantity(symbol, lost.DecimalFractions, Measure.Percent);

    private double EfficiencyOf(CoatedSurface surface) => (surface.TransferEfficiency ?? Gun.TransferEfficiency).DecimalFractions;
}
