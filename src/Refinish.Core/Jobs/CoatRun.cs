using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Curing;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// One coat that is sprayed in one go over one or several fixtures of a room: demand with each loss, cups to mix, spray window, times,
/// solvent, flow and volatile organic compounds.
/// </summary>
/// <example><code>
/// CoatRun run = new(
///     "bath/epoxy-primer/1", [new CoatedSurface("tub", Area.FromSquareMeters(2.57))], new CoatingLayer(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10)),
///     Shop.Generic.Gun, ApplicationLosses.Generic, CupRules.Generic, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)), Temperature.FromDegreesCelsius(20));
/// int cups = run.Cups.Batches.Count;   // 1
/// </code></example>
public sealed class CoatRun
{
    private static readonly Source Underside = Source.Published(
        "P.-T. Brun and others, Rayleigh-Taylor instability under an inclined plane, Physics of Fluids",
        "abstract: drops form in a thin film under a plane, and none beyond a critical tilt; no limit for a drying coat is known to us");

    private static readonly Source Clock = Source.Derived("one cup after the other");
    private static readonly Source Blend = Source.Derived("volume through the gun times what a volume as applied gives off");

    private readonly double liquid;
    private readonly double volatiles;

    /// <summary>Reckons a run.</summary>
    /// <param name="id">Identifier of the operation.</param>
    /// <param name="surfaces">What gets coated, at least one surface.</param>
    /// <param name="layer">Product, film of one coat and reducer; a run is one coat, however many the layer counts.</param>
    /// <param name="gun">The gun as it is set.</param>
    /// <param name="losses">What is lost apart from the gun's transfer efficiency.</param>
    /// <param name="cups">Cups and mixing.</param>
    /// <param name="air">The air in the cup and in the room, at its warmest when it varies.</param>
    /// <param name="surface">The coldest of the surfaces, −20 to 60 °C.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside what its calculation takes.</exception>
    public CoatRun(
        string id, IReadOnlyList<CoatedSurface> surfaces, CoatingLayer layer, SprayGun gun, ApplicationLosses losses, CupRules cups,
        MoistAir air, Temperature surface)
    {
        Id = Guard.Named(id);
        Layer = Guard.NotNull(layer);
        Air = Guard.NotNull(air);
        Demand = new CoatDemand(surfaces, layer.OneCoat(), gun, losses);
        CoatingProduct product = layer.Product;
        Window = new SprayWindow(air, surface, product.SprayLimits);
        Temperature warmest = air.DryBulb > surface ? air.DryBulb : surface;
        InCup = new CureForecast(product.CureNear(air.DryBulb), air.DryBulb);
        OnSurface = new CureForecast(product.CureNear(surface), surface);
        AtWarmest = new CureForecast(product.CureNear(warmest), warmest);
        Cups = new CupPlan(Demand.Total, gun.MeanRate, InCup, cups);
        Coating = new MixedCoating(product, layer.Reducer);
        liquid = Demand.Sprayed.CubicMeters * Coating.SolventContent.KilogramsPerCubicMeter;
        volatiles = SolventOff().Value;
        Duration = Durations.FromSeconds(TimeTaken().Value);
    }

    /// <summary>Identifier of the operation.</summary>
    public string Id { get; }

    /// <summary>The layer that this is a coat of.</summary>
    public CoatingLayer Layer { get; }

    /// <summary>How much the one coat takes, loss by loss.</summary>
    public CoatDemand Demand { get; }

    /// <summary>The cups to mix, before leftovers of the run before it are used.</summary>
    public CupPlan Cups { get; }

    /// <summary>The air in which it is mixed and sprayed.</summary>
    public MoistAir Air { get; }

    /// <summary>Air and surface against the product's limits.</summary>
    public SprayWindow Window { get; }

    /// <summary>The product's times at the temperature of the air: stand-in time and pot life in the cup.</summary>
    public CureForecast InCup { get; }

    /// <summary>The product's times at the temperature of the coldest surface: drying, opening of the recoat window, water.</summary>
    public CureForecast OnSurface { get; }

    /// <summary>The product's times at the warmer of air and surface, where the recoat window closes first.</summary>
    public CureForecast AtWarmest { get; }

    /// <summary>Mixing cards, one for each size of batch, in the order of the batches.</summary>
    public IReadOnlyList<PouredMix> Mixes => field ??= MixesOf(Cups);

    /// <summary>Time at the gun.</summary>
    public TimeSpan SprayTime => Demand.SprayTime;

    /// <summary>Clock time from opening the cans to the last stroke: stand-in time, mixing each cup, spraying.</summary>
    public TimeSpan Duration { get; }

    /// <summary>The product as it is applied.</summary>
    internal MixedCoating Coating { get; }

    /// <summary>Solvent that the sprayed coating gives off; neither its water is among it nor what is not volatile.</summary>
    public Mass VolatileMass => Mass.FromKilograms(volatiles);

    /// <summary>Water that the sprayed coating gives off to the air of the room.</summary>
    public Mass WaterMass => Mass.FromKilograms(WaterOff().Value);

    /// <summary>Water that makes the air humid: that of a waterborne product, and not the trace in a reducer.</summary>
    internal Mass HumidMass => Coating.Product.IsWaterborne ? WaterMass : Mass.Zero;

    /// <summary>Whether solvent or water comes off it into the air.</summary>
    internal bool GivesOff => (VolatileMass + HumidMass).Kilograms > 0;

    /// <summary>The solvent given off and what is not volatile.</summary>
    internal Mass LiquidMass => Mass.FromKilograms(liquid);

    /// <summary>Coating that goes through the gun, without the reducer.</summary>
    public Mass SprayedMass => Mass.FromKilograms(Demand.Sprayed.CubicMeters / (1 + Layer.Reducer.DecimalFractions) * Layer.Product.MixedDensity.KilogramsPerCubicMeter);

    /// <summary>
    /// The wet film held against what levels and what sags on a slope; one comparison that cannot be judged when the product's sheet has no
    /// flow figures.
    /// </summary>
    /// <param name="slope">The slope that is coated, 0 (looks up) over 90° (upright) to 180° (looks down).</param>
    /// <returns>
    /// The comparisons. Beyond 90° the film creeps as at 180° less the slope, and one comparison more, on dripping, cannot be judged.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slope"/> is outside its range.</exception>
    public IReadOnlyList<LimitComparison> Flow(Angle slope)
    {
        double tilt = Guard.Within(slope, Bounds.Between(0, Math.PI, Measure.Angle));
        return new ValueList<LimitComparison>([.. OnTheSurface(Math.Min(tilt, Math.PI - tilt)), .. tilt > Math.PI / 2
            ? [Hanging] : (LimitComparison[])[]]);
    }

    // The drive along the surface is ρ g sin α on both sides of it; what pulls away from it, on the underside, is in no model here.
    internal LimitComparison Hanging => new(
        "wet film against dripping, where it hangs", Demand.WetFilm.Thickness.Meters, null, LimitSense.AtMost, Measure.Film, Underside,
        "try the coat on a board that hangs like the surface; thinner coats with a flash between");

    private IReadOnlyList<LimitComparison> OnTheSurface(double slope)
    {
        if (Layer.Product.Flow is not FlowFigures flow)
        {
            return new ValueList<LimitComparison>(
                [new("wet film against sagging and levelling", Demand.WetFilm.Thickness.Meters, null, LimitSense.AtMost, Measure.Film, Layer.Product.Source, "take flow figures from the product's sheet or from a sag test")]);
        }

        FlowWindow window = new()
        {
            Fluidity = flow.Fluidity,
            Slope = Angle.FromRadians(slope),
            Density = Coating.Density,
            SagAllowed = flow.SagAllowed,
            SurfaceTension = flow.SurfaceTension,
            Wavelength = flow.Wavelength,
            RippleLeft = flow.RippleLeft,
            YieldStress = flow.YieldStress,
        };
        return window.Judge(Demand.WetFilm.Thickness);
    }

    /// <summary>How film, quantity, cups, window, times and solvent follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        Id,
        [
            Demand.Workings(), Cups.Workings(), .. Mixes.Distinct().Select(mix => mix.Workings()), Window.Workings(), InCup.Workings(),
            OnSurface.Workings(), AtWarmest.Equals(OnSurface) ? null : AtWarmest.Workings(), Coating.Workings(),
        ],
        TimeTaken, SolventOff, WaterOff);

    /// <summary>Identifier and quantity in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Id + ": " + Demand;

    internal ValueList<PouredMix> MixesOf(CupPlan cups) =>
        new(cups.Batches.Select(batch => new PouredMix(Layer.Product, batch.Volume, Layer.Reducer)));

    private Num TimeTaken(Trace? t = null) => t.Step("time for the coat", "t_coat", Measure.Minutes, Clock,
        t.Given("t_ind", (InCup.Induction ?? TimeSpan.Zero).TotalSeconds, Measure.Minutes)
        + (t.Given("n", Math.Max(1, Cups.Batches.Count), Measure.Number) * t.Given("t_mix", Cups.Rules.MixingTime.TotalSeconds,
            Measure.Minutes))
        + t.Given("t_spray", SprayTime.TotalSeconds, Measure.Minutes));

    private Num SolventOff(Trace? t = null)
    {
        Num all = Sprayed(t) * t.Given("c_s", Coating.SolventContent.KilogramsPerCubicMeter, Measure.Density);
        return t.Step("solvent given off", "M", Measure.Mass, Blend, SolventShare.IsAllVolatile(Layer.Product.Solvents)
            ? all : all * t.Given("w_v", SolventShare.VolatilePart(Layer.Product.Solvents), Measure.Percent));
    }

    private Num WaterOff(Trace? t = null) => t.Step("water given off", "M_w", Measure.Mass, Blend,
        Sprayed(t) * t.Given("c_w", Coating.WaterContent.KilogramsPerCubicMeter, Measure.Density));

    private Num Sprayed(Trace? t) => t.Given("V_gun", Demand.Sprayed.CubicMeters, Measure.Liquid);
}
