using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Curing;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>One coat over all planned fixtures: the film, the quantity, the cups to mix, the window to spray in and the times that follow.</summary>
public sealed record CoatPlan
{
    internal CoatPlan(string name, CoatingLayer layer, Area area, BathroomJob job)
    {
        Name = name;
        Layer = layer;
        Quantity = new CoatQuantity(area, layer, job.Gun, job.Residue);
        Window = new SprayWindow(job.Site.Air, job.Site.Surface, layer.Product.SprayLimits);
        Temperature warmest = job.Site.Air.DryBulb > job.Site.Surface ? job.Site.Air.DryBulb : job.Site.Surface;
        InCup = new CureForecast(layer.Product.CureNear(job.Site.Air.DryBulb), job.Site.Air.DryBulb);
        OnSurface = new CureForecast(layer.Product.CureNear(job.Site.Surface), job.Site.Surface);
        AtWarmest = new CureForecast(layer.Product.CureNear(warmest), warmest);
        Batches = InCup.IsAvailable
            ? new BatchPlan(Quantity.PouredVolume, job.Gun.MeanRate, InCup.PotLife, InCup.Induction ?? TimeSpan.Zero, job.Batches)
            : null;
        Cups = new ValueList<PouredMix>(Batches is null ? [] : Batches.Batches.Select(batch => new PouredMix(layer.Product, batch, layer.Reducer)));
    }

    /// <summary>What the coat is called on the timeline.</summary>
    public string Name { get; }

    /// <summary>Product, film and reducer.</summary>
    public CoatingLayer Layer { get; }

    /// <summary>How much it takes.</summary>
    public CoatQuantity Quantity { get; }

    /// <summary>The air and the surface held against the product's limits.</summary>
    public SprayWindow Window { get; }

    /// <summary>The product's times at the temperature of the air: stand-in time and pot life in the cup.</summary>
    public CureForecast InCup { get; }

    /// <summary>The product's times at the temperature of the coldest surface: drying, opening of the recoat window, water.</summary>
    public CureForecast OnSurface { get; }

    /// <summary>The product's times at the warmer of air and surface, where the recoat window closes first.</summary>
    public CureForecast AtWarmest { get; }

    /// <summary>The batches; <see langword="null"/> when the product gives no times at this temperature.</summary>
    public BatchPlan? Batches { get; }

    /// <summary>The mixing card: one cup after the other.</summary>
    public IReadOnlyList<PouredMix> Cups { get; }

    /// <summary>Clock time from opening the cans to the last stroke: stand-in time, mixing each cup, spraying.</summary>
    public TimeSpan Duration => (InCup.Induction ?? TimeSpan.Zero) + TimeSpan.FromTicks(MixingTime.Ticks * Math.Max(1, Cups.Count)) + Quantity.SprayTime;

    /// <summary>Solvent that the sprayed coating gives off.</summary>
    public Mass VolatileMass => Layer.Product.Solvents.Count == 0
        ? Mass.Zero
        : SolventEmission.VolatileMassOf(Quantity.SprayedVolume, Quantity.WetFilm.ReducedSolids, Layer.Product.Solvents);

    private TimeSpan MixingTime => Batches?.Rules.MixingTime ?? TimeSpan.Zero;

    /// <summary>How film, quantity, cups, window, times and solvent follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<Workings> parts = [Quantity.Workings()];
        if (Batches is not null)
        {
            parts.Add(Batches.Workings());
        }

        parts.AddRange(Cups.Distinct().Select(cup => cup.Workings()));
        parts.Add(Window.Workings());
        parts.Add(InCup.Workings());
        parts.Add(OnSurface.Workings());
        parts.Add(AtWarmest.Workings());
        Expression induction = Expression.Quantity("t_ind", (InCup.Induction ?? TimeSpan.Zero).TotalSeconds, Measure.Minutes);
        Expression mixing = Expression.Quantity("t_mix", MixingTime.TotalSeconds, Measure.Minutes);
        Expression cups = Expression.Quantity("n", Math.Max(1, Cups.Count), Measure.Number);
        Expression spraying = Expression.Quantity("t_spray", Quantity.SprayTime.TotalSeconds, Measure.Minutes);
        Source clock = Source.Derived("one cup after the other");
        List<WorkingStep> steps = [new("time for the coat", "t_coat", induction + (cups * mixing) + spraying, Duration.TotalSeconds, Measure.Minutes, clock)];
        if (Layer.Product.Solvents.Count > 0)
        {
            Expression volume = Expression.Quantity("V_gun", Quantity.SprayedVolume.CubicMeters, Measure.Liquid);
            Expression solids = Expression.Quantity("VS′", Quantity.WetFilm.ReducedSolids.DecimalFractions, Measure.Percent);
            Expression specific = Expression.Sum(Layer.Product.Solvents.Select((share, i) =>
                Expression.Quantity("w_" + Figures.Fixed(i + 1, 0), share.MassFraction.DecimalFractions, Measure.Percent)
                / Expression.Quantity("ρ_" + Figures.Fixed(i + 1, 0), share.Solvent.Density.KilogramsPerCubicMeter, Measure.Density)));
            steps.Add(new("solvent given off", "M", volume * (1 - solids) / specific, VolatileMass.Kilograms, Measure.Mass, Source.Derived("volatile volume times the density of the blend, volumes additive")));
        }

        return new Workings(Name, steps, parts);
    }

    /// <summary>Name and quantity in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + Quantity;
}
