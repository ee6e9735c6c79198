using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>All the filler that a fixture takes: volume, and resin and hardener by mass.</summary>
/// <remarks>m = V_mix ρ; resin = m / (1 + r), hardener = m r / (1 + r), with r the mass of hardener per mass of resin. Definitions.</remarks>
/// <example><code>
/// FillerEstimate filler = new([new Chip(Length.FromMillimeters(20), Length.FromMillimeters(2))], FillerPolicy.Generic);
/// Mass hardener = filler.HardenerMass;   // 0.0178 g
/// </code></example>
public sealed record FillerEstimate
{
    private readonly double volume;
    private readonly double density;
    private readonly double ratio;

    /// <summary>Calculates the filler.</summary>
    /// <param name="defects">What was found; entries that are not mended with filler are listed in <see cref="NotFilled"/>.</param>
    /// <param name="policy">With what and how generously.</param>
    /// <exception cref="ArgumentException">A defect is missing.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public FillerEstimate(IReadOnlyList<Defect> defects, FillerPolicy policy)
    {
        Policy = Guard.NotNull(policy, nameof(policy));
        Items = Guard.List(Guard.List(defects, nameof(defects)).Select(defect => new FillerVolume(defect, policy)).Where(item => item.IsFilled), nameof(defects));
        NotFilled = Guard.List(defects.Where(defect => defect.CavityUnder(policy) is null), nameof(defects));
        volume = Items.Sum(item => item.Mixed.CubicMeters);
        density = policy.Product.MixedDensity.KilogramsPerCubicMeter;
        ratio = policy.Product.HardenerByMass.DecimalFractions;
    }

    /// <summary>With what and how generously.</summary>
    public FillerPolicy Policy { get; }

    /// <summary>The filler of each defect that is filled, in the order of the survey.</summary>
    public IReadOnlyList<FillerVolume> Items { get; }

    /// <summary>Defects that filler does not mend.</summary>
    public IReadOnlyList<Defect> NotFilled { get; }

    /// <summary>Filler to mix in all.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    /// <summary>Its mass.</summary>
    public Mass Mass => Mass.FromKilograms(volume * density);

    /// <summary>Resin to weigh out.</summary>
    public Mass ResinMass => Mass.FromKilograms(volume * density / (1 + ratio));

    /// <summary>Hardener to weigh out.</summary>
    public Mass HardenerMass => Mass.FromKilograms(volume * density * ratio / (1 + ratio));

    /// <summary>The most lifts that any place takes: each has to cure before the next.</summary>
    public int Lifts => Items.Count == 0 ? 0 : Items.Max(item => item.Lifts);

    /// <summary>What can hurt while filling.</summary>
    public IReadOnlyList<Caution> Cautions => Items.Count == 0 ? [] : SurveyCautions.Filler(Policy.Product.Chemistry);

    /// <summary>How the amounts follow.</summary>
    /// <returns>The derivation with one part for each defect.</returns>
    public Workings Workings()
    {
        List<Workings> parts = [.. Items.Select(item => item.Workings())];
        WorkingStep total = new(
            "filler to mix in all",
            "V_mix",
            Expression.Sum(Items.Select((item, i) => Expression.Quantity("V_" + Figures.Fixed(i + 1, 0), item.Mixed.CubicMeters, Measure.Liquid))),
            volume,
            Measure.Liquid,
            Source.Derived("sum over the defects"));
        Expression rho = Expression.Quantity("ρ", density, Measure.Density);
        Expression r = Expression.Quantity("r", ratio, Measure.Percent);
        Source definition = Source.Derived("definitions of density and of a ratio by mass");
        WorkingStep mass = new("mass of the mix", "m", total.Result() * rho, Mass.Kilograms, Measure.Mass, definition);
        WorkingStep resin = new("resin", "m_r", mass.Result() / (1 + r), ResinMass.Kilograms, Measure.Mass, definition);
        WorkingStep hardener = new("hardener", "m_h", mass.Result() * r / (1 + r), HardenerMass.Kilograms, Measure.Mass, definition);
        Expression most = Items.Aggregate(
            Expression.Number(0),
            (all, item) => Expression.Max(all, Expression.Quantity("n", item.Lifts, Measure.Number)));
        WorkingStep lifts = new("most lifts of any place", "n_max", most, Lifts, Measure.Number, Source.Derived("largest of the parts"));
        return new Workings("Filler", [total, mass, resin, hardener, lifts], parts);
    }

    /// <summary>Volume and mass in one line, in metric units.</summary>
    /// <returns>Text such as <c>0.5034 mL (0.90611 g) of polyester filler</c>.</returns>
    public override string ToString() =>
        Measure.Liquid.Format(volume) + " (" + Measure.Mass.Format(Mass.Kilograms) + ") of " + Policy.Product.Name;
}
