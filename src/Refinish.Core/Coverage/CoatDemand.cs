using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>What one coat over a set of surfaces takes, with each loss by itself; the film and the losses add up to what is mixed.</summary>
/// <remarks>
/// V_film = ΣA·WFT; dead volume of the roughness p·f is filled first, V_dead = ΣA·p·f·(1 + R)/VS; V_aim = Σ A·(WFT + p·f·(1 + R)/VS)/TE; V_gun = V_aim/(1 − o);
/// V_fill = V_gun + H; V_pour = V_fill/(1 − w); V_all = V_pour/(1 − u). Volumes additive. With only TE and w it is the same as <see cref="CoatQuantity"/>.
/// </remarks>
/// <example><code>
/// CoatingLayer layer = new(GenericCatalogue.AcrylicUrethaneTopcoat, Length.FromMicrometers(30), 3, Ratio.FromPercent(10));
/// CoatDemand coat = new([new("tub", Area.FromSquareMeters(2.6)), new("sink", Area.FromSquareMeters(0.7), Ratio.FromPercent(45))], layer,
///     new ApplicationLosses { TransferEfficiency = Ratio.FromPercent(60), Residue = Ratio.FromPercent(8) });
/// double millilitres = coat.Total.Milliliters;
/// </code></example>
public sealed record CoatDemand
{
    private static readonly Source Balance = Source.Derived("volume balance from film to pot, volumes additive");

    private readonly double area;
    private readonly double film;
    private readonly double dead;
    private readonly double aimed;

    /// <summary>Calculates the demand.</summary>
    /// <param name="surfaces">The surfaces, at least one.</param>
    /// <param name="layer">Product, film of one coat and reducer.</param>
    /// <param name="losses">The losses; the roughness counts once, so give it for the first coat only.</param>
    /// <exception cref="ArgumentException">No surface, or an empty entry.</exception>
    public CoatDemand(IEnumerable<CoatedSurface> surfaces, CoatingLayer layer, ApplicationLosses losses)
    {
        Surfaces = Guard.List(surfaces, nameof(surfaces), 1);
        Layer = Guard.NotNull(layer, nameof(layer));
        Losses = Guard.NotNull(losses, nameof(losses));
        foreach (CoatedSurface surface in Surfaces)
        {
            double a = surface.Area.SquareMeters;
            area += a;
            film += CoverageKernel.FilmVolume(a, Wet);
            dead += CoverageKernel.FilmVolume(a, DeadWet);
            aimed += CoverageKernel.SprayedVolume(a * (Wet + DeadWet), EfficiencyOf(surface));
        }
    }

    /// <summary>The surfaces.</summary>
    public IReadOnlyList<CoatedSurface> Surfaces { get; }

    /// <summary>Product, film of one coat and reducer.</summary>
    public CoatingLayer Layer { get; }

    /// <summary>The losses.</summary>
    public ApplicationLosses Losses { get; }

    /// <summary>All surfaces together.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Reduced coating that becomes film.</summary>
    public Volume Film => Volume.FromCubicMeters(film);

    /// <summary>Reduced coating that fills the roughness.</summary>
    public Volume DeadVolume => Volume.FromCubicMeters(dead);

    /// <summary>Aimed at the piece and blown off it.</summary>
    public Volume Overspray => Volume.FromCubicMeters(aimed - film - dead);

    /// <summary>Sprayed past the edges.</summary>
    public Volume EdgeLoss => Volume.FromCubicMeters(Gun - aimed);

    /// <summary>Left in hose and gun.</summary>
    public Volume HoldUp => Losses.HoldUp;

    /// <summary>Clinging to cups, sticks and filter.</summary>
    public Volume ResidueLoss => Volume.FromCubicMeters(Poured - Filled);

    /// <summary>Mixed and thrown away unused.</summary>
    public Volume UnusedLoss => Volume.FromCubicMeters(All - Poured);

    /// <summary>Reduced coating through the gun.</summary>
    public Volume Sprayed => Volume.FromCubicMeters(Gun);

    /// <summary>Reduced coating to mix, all losses in.</summary>
    public Volume Total => Volume.FromCubicMeters(All);

    /// <summary>Base and hardener in it.</summary>
    public Volume Mixed => Volume.FromCubicMeters(CoverageKernel.MixedVolume(All, Layer.Reducer.DecimalFractions));

    /// <summary>Part of what is mixed that becomes film.</summary>
    public Ratio UsedShare => Ratio.FromDecimalFractions(film / All);

    /// <summary>Area covered per volume of reduced coating when nothing is lost.</summary>
    public SpreadingRate TheoreticalSpreadingRate => SpreadingRate.FromSquareMetersPerCubicMeter(1 / Wet);

    /// <summary>Area covered per volume of reduced coating mixed, all losses in.</summary>
    public SpreadingRate PracticalSpreadingRate => SpreadingRate.FromSquareMetersPerCubicMeter(area / All);

    private double Wet => FilmKernel.WetFilm(Layer.DryFilmPerCoat.Meters, Layer.Product.VolumeSolids.DecimalFractions, Layer.Reducer.DecimalFractions);

    private double DeadWet => FilmKernel.WetFilm(Losses.ProfileDepth.Meters * Losses.ProfileFill.DecimalFractions, Layer.Product.VolumeSolids.DecimalFractions, Layer.Reducer.DecimalFractions);

    private double Gun => CoverageKernel.PouredVolume(aimed, Losses.EdgeOverspray.DecimalFractions);

    private double Filled => Gun + Losses.HoldUp.CubicMeters;

    private double Poured => CoverageKernel.PouredVolume(Filled, Losses.Residue.DecimalFractions);

    private double All => CoverageKernel.PouredVolume(Poured, Losses.UnusedPot.DecimalFractions);

    /// <summary>How the demand follows, loss by loss.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression r = Expression.Quantity("R", Layer.Reducer.DecimalFractions, Measure.Percent);
        Expression vs = Expression.Quantity("VS", Layer.Product.VolumeSolids.DecimalFractions, Measure.Percent);
        WorkingStep sum = new("all surfaces", "A", Expression.Sum(Surfaces.Select(one => Expression.Quantity("A", one.Area.SquareMeters, Measure.Area))), area, Measure.Area, Balance);
        WorkingStep wet = new("wet film", "WFT", Expression.Quantity("DFT", Layer.DryFilmPerCoat.Meters, Measure.Film) * (1 + r) / vs, Wet, Measure.Film, Balance);
        WorkingStep deadWet = new(
            "wet film in the roughness",
            "WFT_d",
            Expression.Quantity("p", Losses.ProfileDepth.Meters, Measure.Film) * Expression.Quantity("f", Losses.ProfileFill.DecimalFractions, Measure.Percent) * (1 + r) / vs,
            DeadWet,
            Measure.Film,
            Balance);
        WorkingStep onSurface = new("becomes film", "V_film", sum.Result() * wet.Result(), film, Measure.Liquid, Balance);
        WorkingStep rough = new("fills the roughness", "V_dead", sum.Result() * deadWet.Result(), dead, Measure.Liquid, Balance);
        Expression lands = Expression.Sum(Surfaces.Select(one =>
            Expression.Quantity("A", one.Area.SquareMeters, Measure.Area) * (wet.Result() + deadWet.Result()) / Expression.Quantity("TE", EfficiencyOf(one), Measure.Percent)));
        WorkingStep aim = new("aimed at the surfaces", "V_aim", lands, aimed, Measure.Liquid, Balance);
        WorkingStep over = new("blown off", "V_over", aim.Result() - onSurface.Result() - rough.Result(), aimed - film - dead, Measure.Liquid, Balance);
        WorkingStep gun = new("through the gun", "V_gun", aim.Result() / (1 - Expression.Quantity("o", Losses.EdgeOverspray.DecimalFractions, Measure.Percent)), Gun, Measure.Liquid, Balance);
        WorkingStep edge = new("past the edges", "V_edge", gun.Result() - aim.Result(), Gun - aimed, Measure.Liquid, Balance);
        WorkingStep fill = new("with hose and gun filled", "V_fill", gun.Result() + Expression.Quantity("H", Losses.HoldUp.CubicMeters, Measure.Liquid), Filled, Measure.Liquid, Balance);
        WorkingStep pour = new("poured", "V_pour", fill.Result() / (1 - Expression.Quantity("w", Losses.Residue.DecimalFractions, Measure.Percent)), Poured, Measure.Liquid, Balance);
        WorkingStep clings = new("clings to cups and filter", "V_cling", pour.Result() - fill.Result(), Poured - Filled, Measure.Liquid, Balance);
        WorkingStep total = new("to mix", "V_all", pour.Result() / (1 - Expression.Quantity("u", Losses.UnusedPot.DecimalFractions, Measure.Percent)), All, Measure.Liquid, Balance);
        WorkingStep unused = new("thrown away unused", "V_unused", total.Result() - pour.Result(), All - Poured, Measure.Liquid, Balance);
        return new Workings(
            "One coat of " + Layer.Product.Name + " over all surfaces",
            [
                sum, wet, deadWet, onSurface, rough, aim, over, gun, edge, fill, pour, clings, total, unused,
                new("base and hardener", "V_mix", total.Result() / (1 + r), Mixed.CubicMeters, Measure.Liquid, Balance),
                new("part that becomes film", "η", onSurface.Result() / total.Result(), film / All, Measure.Percent, Balance),
                new("theoretical spreading rate", "SR_t", 1 / wet.Result(), 1 / Wet, Measure.SpreadingRate, Balance),
                new("practical spreading rate", "SR_p", sum.Result() / total.Result(), area / All, Measure.SpreadingRate, Balance),
            ]);
    }

    /// <summary>The demand in one line, in metric units.</summary>
    /// <returns>Text such as <c>423 mL of two-part acrylic urethane topcoat for 3.3 m², 54 % of it film</c>.</returns>
    public override string ToString() =>
        Measure.Liquid.Format(All, DisplayUnits.Si, 3) + " of " + Layer.Product.Name + " for " + Measure.Area.Format(area, DisplayUnits.Si, 3) + ", "
        + Measure.Percent.Format(film / All, DisplayUnits.Si, 2) + " of it film";

    private double EfficiencyOf(CoatedSurface surface) => (surface.TransferEfficiency ?? Losses.TransferEfficiency).DecimalFractions;
}
