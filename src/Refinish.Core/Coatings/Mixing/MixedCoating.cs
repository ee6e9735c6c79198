using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A product as it is applied, mixed and reduced: density, solids by volume and by mass, volatile organic compounds.</summary>
/// <remarks>
/// <para>Volumes are taken as additive. Masses come from the cans when every part states solids by mass; otherwise from the product's
/// volume solids, the water of the parts and the density of its solvent blend, which fills what solids and water leave. A reducer that
/// states no solids counts as volatile throughout. Water is volatile and no solvent: it leaves the film and is no volatile organic
/// compound.</para>
/// <para>Water is taken at 8.33 lb/US gal (paint and coatings resource centre, March 2004).</para>
/// </remarks>
/// <example><code>
/// MixedCoating coat = new(GenericCatalogue.AcrylicUrethaneTopcoat, Ratio.FromPercent(10));
/// double solids = coat.VolumeSolids.Percent;                      // 43.6 = 48 / 1.1
/// LimitComparison voc = coat.Compare(VocLimits.SouthCoast1113);
/// </code></example>
public sealed record MixedCoating
{
    internal const double WaterDensity = 998.15;

    private static readonly Source Additive = Source.Derived("parts by volume, volumes additive");

    private readonly ValueList<(CoatingComponent Component, double Volume)> cans;

    // Sums over the cans, read for each coat and slope: kept.
    private readonly double? mass;
    private readonly double? moist;
    private readonly double? gone;
    private readonly double reducer;
    private readonly double waterOfParts;
    private readonly double exempt;
    private readonly double exemptOfParts;
    private readonly double? exemptVolume;

    /// <summary>Mixes a product.</summary>
    /// <param name="product">The product.</param>
    /// <param name="reducer">Reducer per volume of mixed product, from the product's minimum to its maximum.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="reducer"/> is outside its range, or the product's data contradict each other.
    /// </exception>
    public MixedCoating(CoatingProduct product, Ratio reducer)
    {
        Product = Guard.NotNull(product);
        product.CheckConsistency();
        this.reducer = Guard.Within(
            reducer, Bounds.Between(product.MinimumReducer.DecimalFractions, product.MaximumReducer.DecimalFractions, Measure.Percent));
        IsFromCans = product.Parts.All(part => part.Component.MassSolids is not null);
        List<(CoatingComponent Component, double Volume)> mixed = [.. product.Parts.Select((part, i) => (part.Component, product.ShareOf(i)))];
        if (product.Reducer is not null && this.reducer > 0)
        {
            mixed.Add((product.Reducer, this.reducer));
        }

        cans = new(mixed);
        exemptVolume = 0;
        foreach ((CoatingComponent can, double volume) in cans)
        {
            double part = CanMass(can, volume).Value * (can.ExemptCompounds?.DecimalFractions ?? 0);
            exempt += part;
            exemptVolume += part == 0 ? 0 : part / can.ExemptDensity?.KilogramsPerCubicMeter;
            if (!ReferenceEquals(can, product.Reducer))
            {
                waterOfParts += CanMass(can, volume).Value * (can.Water?.DecimalFractions ?? 0);
                exemptOfParts += part;
            }
        }

        mass = Total().Value;
        moist = Moist().Value;
        gone = Gone().Value;
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Reducer per volume of mixed product.</summary>
    public Ratio Reducer => Ratio.FromDecimalFractions(reducer);

    /// <summary>Whether masses come from what the cans state, rather than from the product's volume solids and solvents.</summary>
    public bool IsFromCans { get; }

    /// <summary>Density as applied.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(Applied().Value);

    /// <summary>Solids by volume as applied: those of the mixed product, thinned.</summary>
    public Ratio VolumeSolids => Ratio.FromDecimalFractions(SolidsByVolume().Value);

    /// <summary>Solids by mass as applied.</summary>
    public Ratio MassSolids => Ratio.FromDecimalFractions(SolidsByMass().Value);

    /// <summary>
    /// Volatile organic compounds of 1 L as applied; <see langword="null"/> when a can states exempt compounds without their density, or
    /// when nothing but those and water is in it, and then nothing is judged.
    /// </summary>
    public VocContent? Voc => exemptVolume is not double ec || ec + (Moist().Value / WaterDensity) >= 1 + reducer ? null : new VocContent
    {
        Volume = Volume.FromLiters(1),
        Volatiles = Mass.FromKilograms(1e-3 * Gone().Value / (1 + reducer)),
        Water = Mass.FromKilograms(1e-3 * Moist().Value / (1 + reducer)),
        WaterVolume = Volume.FromCubicMeters(1e-3 * Moist().Value / WaterDensity / (1 + reducer)),
        Exempt = Mass.FromKilograms(1e-3 * exempt / (1 + reducer)),
        ExemptVolume = Volume.FromCubicMeters(1e-3 * ec / (1 + reducer)),
    };

    /// <summary>
    /// Solvent that a volume as applied gives off, exempt compounds among it and water not: what the air of a room is studied with. Of a
    /// waterborne product whose cans state solids by mass it is what solids and water leave of the mass; of all others what they leave of
    /// the volume, at the density of the blend.
    /// </summary>
    public MassConcentration SolventContent => MassConcentration.FromKilogramsPerCubicMeter(SolventGiven().Value);

    /// <summary>Water that a volume as applied gives off.</summary>
    public MassConcentration WaterContent => MassConcentration.FromKilogramsPerCubicMeter(WaterGiven().Value);

    /// <summary>What a content does not say, and what product and hardener hold.</summary>
    public IReadOnlyList<Caution> Cautions =>
        new ValueList<Caution>([Refinish.Cautions.ContentIsNotAir, .. SystemCautions.OfMixing(Product), .. Product.Cautions]);

    /// <summary>The product with as much reducer as its data sheet allows: what rules on volatile organic compounds look at.</summary>
    /// <param name="product">The product.</param>
    /// <returns>The coating at its maximum of reducer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The product's data contradict each other.</exception>
    public static MixedCoating AtMaximumReducer(CoatingProduct product) => new(product, Guard.NotNull(product).MaximumReducer);

    /// <summary>Holds the content that a limit counts against it.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>The comparison; it cannot be judged when <see cref="Voc"/> is missing.</returns>
    public LimitComparison Compare(VocLimit limit) => Guard.NotNull(limit).Compare(Voc);

    /// <summary>How density, solids and volatile organic compounds follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        Product.Name + " as applied", Voc is VocContent voc ? [voc.Workings()] : [],
        Total, Moist, Gone, Applied, SolidsByVolume, SolidsByMass, SolventGiven, WaterGiven);

    /// <summary>Density, solids and content in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Product.Name + ": " + Measure.Density.Format(Applied().Value, DisplayUnits.Si, 4) + ", "
        + Measure.Percent.Format(VolumeSolids.DecimalFractions, DisplayUnits.Si, 3)
        + " solids by volume; VOC " + (Voc?.ToString() ?? "not known");

    /// <summary>Density of a solvent blend by mass shares, volumes additive; zero for none.</summary>
    internal static double BlendDensity(IReadOnlyList<SolventShare> solvents) =>
        solvents.Count == 0 ? 0
            : 1 / solvents.Sum(share => share.MassFraction.DecimalFractions / share.Solvent.Density.KilogramsPerCubicMeter);

    private bool IsByMass => IsFromCans && Product.IsWaterborne;

    private static Num CanMass(CoatingComponent can, double volume, Trace? t = null) =>
        t.Given("v", volume, Measure.Number) * t.Given("ρ", can.Density.KilogramsPerCubicMeter, Measure.Density);

    private Num Total(Trace? t = null) => t is null && mass is double known ? known : TotalOf(t);

    private Num TotalOf(Trace? t) => t.Step(
        "mass for a volume of mixed product", "m", Measure.Density, Additive,
        Num.Sum(cans, t, static (can, _, t) => CanMass(can.Component, can.Volume, t)));

    private Num Moist(Trace? t = null) => t is null && moist is double known ? known : MoistOf(t);

    private Num MoistOf(Trace? t) => t.Step(
        "of which water", "m_w", Measure.Density, Additive,
        Num.Sum(cans, t, static (can, _, t) => can.Component.Water is Ratio water
            ? CanMass(can.Component, can.Volume, t) * t.Given("w_w", water.DecimalFractions, Measure.Percent) : 0));

    private Num Gone(Trace? t = null) => t is null && gone is double known ? known : GoneOf(t);

    private Num GoneOf(Trace? t)
    {
        Num left = Num.Sum(cans, (Mix: this, t), static (can, _, of) =>
            of.Mix.IsFromCans || ReferenceEquals(can.Component, of.Mix.Product.Reducer)
                ? CanMass(can.Component, can.Volume, of.t)
                    * (1 - of.t.Given("w_s", can.Component.MassSolids?.DecimalFractions ?? 0, Measure.Percent))
                : 0);
        if (!IsFromCans)
        {
            // What solids and water of the parts leave, at the density of the blend.
            Num ofParts = t.Given("m_w,parts", waterOfParts, Measure.Density);
            Num solvents = Num.Max(0, NoSolids(t) - (ofParts / WaterIn(t))) * Blend(t);
            left += Num.Max(solvents, t.Given("m_ec", exemptOfParts, Measure.Density)) + ofParts;
        }

        return t.Step("of which evaporates", "m_v", Measure.Density, Additive, left);
    }

    private Num Applied(Trace? t = null) => t.Step("density as applied", "ρ", Measure.Density, Additive, Total(t) / Thinned(t));

    private Num SolidsByVolume(Trace? t = null) =>
        t.Step("solids by volume as applied", "VS′", Measure.Percent, Additive, Solids(t) / Thinned(t));

    private Num SolidsByMass(Trace? t = null) =>
        t.Step("solids by mass as applied", "w_s", Measure.Percent, Additive, (Total(t) - Gone(t)) / Total(t));

    private Num SolventGiven(Trace? t = null) => t.Step(
        "solvent given off by a volume as applied", "c_s", Measure.Density, Additive,
        (Product.Solvents.Count == 0 ? t.Given("m_s", 0, Measure.Density)
            : IsByMass ? Num.Max(0, Gone(t) - Moist(t))
            : Num.Max(0, NoSolids(t) + Share(t) - (Moist(t) / WaterIn(t))) * Blend(t)) / Thinned(t));

    private Num WaterGiven(Trace? t = null) =>
        t.Step("water given off by a volume as applied", "c_w", Measure.Density, Additive, Moist(t) / Thinned(t));

    private Num Share(Trace? t) => t.Given("R", reducer, Measure.Percent);

    private Num Thinned(Trace? t) => 1 + Share(t);

    private Num Solids(Trace? t) => t.Given("VS", Product.VolumeSolids.DecimalFractions, Measure.Percent);

    private Num NoSolids(Trace? t) => 1 - Solids(t);

    private Num Blend(Trace? t) => t.Given("ρ_v", BlendDensity(Product.Solvents), Measure.Density);

    private static Num WaterIn(Trace? t) => t.Given("ρ_w", WaterDensity, Measure.Density);
}
