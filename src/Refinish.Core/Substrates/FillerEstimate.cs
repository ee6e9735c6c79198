using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>All the filler that a fixture takes: volume, and resin and hardener by mass.</summary>
/// <remarks>
/// m = V_mix ρ; resin = m / (1 + r), hardener = m r / (1 + r), with r the mass of hardener per mass of resin. Definitions.
/// </remarks>
/// <example><code>
/// FillerEstimate filler = new([new Chip(Length.FromMillimeters(20), Length.FromMillimeters(2))], FillerPolicy.Generic);
/// Mass hardener = filler.HardenerMass;   // 0.0178 g
/// </code></example>
public sealed record FillerEstimate
{
    private static readonly Source Summed = Source.Derived("sum over the defects");
    private static readonly Source Definition = Source.Derived("definitions of density and of a ratio by mass");
    private static readonly Source Largest = Source.Derived("largest of the parts");

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
        Policy = Guard.NotNull(policy);
        Items = Guard.List(Guard.List(defects).Select(defect => new FillerVolume(defect, policy)).Where(item => item.IsFilled),
            name: nameof(defects));
        NotFilled = Guard.List(defects.Where(defect => defect.CavityUnder(policy) is null), name: nameof(defects));
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
    public Mass Mass => Mass.FromKilograms(MixMass().Value);

    /// <summary>Resin to weigh out.</summary>
    public Mass ResinMass => Mass.FromKilograms(Resin().Value);

    /// <summary>Hardener to weigh out.</summary>
    public Mass HardenerMass => Mass.FromKilograms(Hardener().Value);

    /// <summary>The most lifts that any place takes: each has to cure before the next.</summary>
    public int Lifts => Items.Count == 0 ? 0 : Items.Max(item => item.Lifts);

    /// <summary>What can hurt while filling.</summary>
    public IReadOnlyList<Caution> Cautions => Items.Count == 0 ? [] : SurveyCautions.Filler(Policy.Product.Chemistry);

    /// <summary>How the amounts follow.</summary>
    /// <returns>The derivation with one part for each defect.</returns>
    public Workings Workings() => Trace.Of("Filler", Items.Select(item => item.Workings()), Total, MixMass, Resin, Hardener, t => t.Step(
        "most lifts of any place", "n_max", Measure.Number, Largest,
        Items.Aggregate(t.Number(0), (most, item) => Num.Max(most, t.Given("n", item.Lifts, Measure.Number)))));

    /// <summary>Volume and mass in one line, in metric units.</summary>
    /// <returns>Text such as <c>0.5034 mL (0.90611 g) of polyester filler</c>.</returns>
    public override string ToString() =>
        Measure.Liquid.Format(volume) + " (" + Measure.Mass.Format(Mass.Kilograms) + ") of " + Policy.Product.Name;

    private Num Total(Trace? t) => t is null ? volume : t.Step("filler to mix in all", "V_mix", Measure.Liquid, Summed,
        Items.Total(t, static (t, item, i) => t.Given("V_", i + 1, item.Mixed.CubicMeters, Measure.Liquid)));

    private Num MixMass(Trace? t = null) =>
        t.Step("mass of the mix", "m", Measure.Mass, Definition, Total(t) * t.Given("ρ", density, Measure.Density));

    private Num Resin(Trace? t = null) => t.Step("resin", "m_r", Measure.Mass, Definition, MixMass(t) / (1 + Hardening(t)));

    private Num Hardener(Trace? t = null) =>
        t.Step("hardener", "m_h", Measure.Mass, Definition, MixMass(t) * Hardening(t) / (1 + Hardening(t)));

    private Num Hardening(Trace? t) => t.Given("r", ratio, Measure.Percent);
}
