using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A product as it is applied, mixed and reduced: density, solids by volume and by mass, volatile organic compounds.</summary>
/// <remarks>
/// <para>Volumes are taken as additive. Masses come from the cans when every part states solids by mass; otherwise from the product's
/// volume solids, the water of the parts and the density of its solvent blend, which fills what solids and water leave. A reducer that states
/// no solids counts as volatile throughout. Water is volatile and no solvent: it leaves the film and is no volatile organic compound.</para>
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

    private readonly double reducer;
    private readonly double mass;
    private readonly double volatiles;
    private readonly double water;
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
        Product = Guard.NotNull(product, nameof(product));
        product.CheckConsistency();
        this.reducer = Guard.Within(
            reducer, Bounds.Between(product.MinimumReducer.DecimalFractions, product.MaximumReducer.DecimalFractions, Measure.Percent), nameof(reducer));
        mass = Cans().Sum(can => can.Volume * can.Component.Density.KilogramsPerCubicMeter);
        IsFromCans = product.Parts.All(part => part.Component.MassSolids is not null);
        exemptVolume = 0;
        double ofParts = 0;
        foreach ((CoatingComponent can, double volume) in Cans())
        {
            double m = volume * can.Density.KilogramsPerCubicMeter;
            bool isReducer = ReferenceEquals(can, product.Reducer);
            double wet = m * (can.Water?.DecimalFractions ?? 0);
            double part = m * (can.ExemptCompounds?.DecimalFractions ?? 0);
            volatiles += IsFromCans || isReducer ? m * (1 - (can.MassSolids?.DecimalFractions ?? 0)) : 0;
            water += wet;
            exempt += part;
            exemptVolume += part == 0 ? 0 : part / can.ExemptDensity?.KilogramsPerCubicMeter;
            ofParts += isReducer ? 0 : wet;
            exemptOfParts += isReducer ? 0 : part;
        }

        waterOfParts = ofParts;
        if (!IsFromCans)
        {
            volatiles += Math.Max(Blend, exemptOfParts) + waterOfParts;
        }
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Reducer per volume of mixed product.</summary>
    public Ratio Reducer => Ratio.FromDecimalFractions(reducer);

    /// <summary>Whether masses come from what the cans state, rather than from the product's volume solids and solvents.</summary>
    public bool IsFromCans { get; }

    /// <summary>Density as applied.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(mass / (1 + reducer));

    /// <summary>Solids by volume as applied: those of the mixed product, thinned.</summary>
    public Ratio VolumeSolids => Ratio.FromDecimalFractions(Product.VolumeSolids.DecimalFractions / (1 + reducer));

    /// <summary>Solids by mass as applied.</summary>
    public Ratio MassSolids => Ratio.FromDecimalFractions((mass - volatiles) / mass);

    /// <summary>
    /// Volatile organic compounds of 1 L as applied; <see langword="null"/> when a can states exempt compounds without their density, or
    /// when nothing but those and water is in it, and then nothing is judged.
    /// </summary>
    public VocContent? Voc => exemptVolume is not double ec || ec + (water / WaterDensity) >= 1 + reducer ? null : new VocContent
    {
        Volume = Volume.FromLiters(1),
        Volatiles = Mass.FromKilograms(1e-3 * volatiles / (1 + reducer)),
        Water = Mass.FromKilograms(1e-3 * water / (1 + reducer)),
        WaterVolume = Volume.FromCubicMeters(1e-3 * water / WaterDensity / (1 + reducer)),
        Exempt = Mass.FromKilograms(1e-3 * exempt / (1 + reducer)),
        ExemptVolume = Volume.FromCubicMeters(1e-3 * ec / (1 + reducer)),
    };

    /// <summary>
    /// Solvent that a volume as applied gives off, exempt compounds among it and water not: what the air of a room is studied with. Of a
    /// waterborne product whose cans state solids by mass it is what solids and water leave of the mass; of all others what they leave of
    /// the volume, at the density of the blend.
    /// </summary>
    public MassConcentration SolventContent => MassConcentration.FromKilogramsPerCubicMeter(Solvent / (1 + reducer));

    /// <summary>Water that a volume as applied gives off.</summary>
    public MassConcentration WaterContent => MassConcentration.FromKilogramsPerCubicMeter(water / (1 + reducer));

    /// <summary>What a content does not say, and what product and hardener hold.</summary>
    public IReadOnlyList<Caution> Cautions =>
        new ValueList<Caution>([Refinish.Cautions.ContentIsNotAir, .. SystemCautions.OfMixing(Product), .. Product.Cautions]);

    /// <summary>The product with as much reducer as its data sheet allows: what rules on volatile organic compounds look at.</summary>
    /// <param name="product">The product.</param>
    /// <returns>The coating at its maximum of reducer.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The product's data contradict each other.</exception>
    public static MixedCoating AtMaximumReducer(CoatingProduct product) => new(product, Guard.NotNull(product, nameof(product)).MaximumReducer);

    /// <summary>Holds the content that a limit counts against it.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>The comparison; it cannot be judged when <see cref="Voc"/> is missing.</returns>
    public LimitComparison Compare(VocLimit limit) => Guard.NotNull(limit, nameof(limit)).Compare(Voc);

    /// <summary>How density, solids and volatile organic compounds follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression r = Expression.Quantity("R", reducer, Measure.Percent);
        Expression sum = Expression.Sum(Cans().Select(can =>
            Expression.Quantity("v", can.Volume, Measure.Number) * Expression.Quantity("ρ", can.Component.Density.KilogramsPerCubicMeter, Measure.Density)));
        WorkingStep total = new("mass for a volume of mixed product", "m", sum, mass, Measure.Density, Additive);
        Expression evaporating = Expression.Sum(Cans()
            .Where(can => IsFromCans || ReferenceEquals(can.Component, Product.Reducer))
            .Select(can => Expression.Quantity("v", can.Volume, Measure.Number) * Expression.Quantity("ρ", can.Component.Density.KilogramsPerCubicMeter, Measure.Density)
                * (1 - Expression.Quantity("w_s", can.Component.MassSolids?.DecimalFractions ?? 0, Measure.Percent))));
        Expression wet = Expression.Sum(Cans().Where(can => can.Component.Water is not null).Select(Water));
        WorkingStep moist = new("of which water", "m_w", wet, water, Measure.Density, Additive);
        Expression rest = 1 - Expression.Quantity("VS", Product.VolumeSolids.DecimalFractions, Measure.Percent);
        Expression blend = Expression.Quantity("ρ_v", BlendDensity(Product.Solvents), Measure.Density);
        Expression rho = Expression.Quantity("ρ_w", WaterDensity, Measure.Density);
        if (!IsFromCans)
        {
            Expression ofParts = Expression.Quantity("m_w,parts", waterOfParts, Measure.Density);
            evaporating += Expression.Max(Expression.Max(0, rest - (ofParts / rho)) * blend,
                Expression.Quantity("m_ec", exemptOfParts, Measure.Density)) + ofParts;
        }

        WorkingStep gone = new("of which evaporates", "m_v", evaporating, volatiles, Measure.Density, Additive);
        Expression solvent = Product.Solvents.Count == 0 ? Expression.Quantity("m_s", 0, Measure.Density)
            : IsByMass ? Expression.Max(0, gone.Result() - moist.Result())
            : Expression.Max(0, rest + r - (moist.Result() / rho)) * blend;
        return new Workings(
            Product.Name + " as applied",
            [
                total,
                moist,
                gone,
                new("density as applied", "ρ", total.Result() / (1 + r), mass / (1 + reducer), Measure.Density, Additive),
                new("solids by volume as applied", "VS′", Expression.Quantity("VS", Product.VolumeSolids.DecimalFractions, Measure.Percent) / (1 + r), VolumeSolids.DecimalFractions, Measure.Percent, Additive),
                new("solids by mass as applied", "w_s", (total.Result() - gone.Result()) / total.Result(), (mass - volatiles) / mass, Measure.Percent, Additive),
                new("solvent given off by a volume as applied", "c_s", solvent / (1 + r), Solvent / (1 + reducer), Measure.Density,
                    Additive),
                new("water given off by a volume as applied", "c_w", moist.Result() / (1 + r), water / (1 + reducer), Measure.Density,
                    Additive),
            ],
            Voc is VocContent voc ? [voc.Workings()] : []);

        static Expression Water((CoatingComponent Component, double Volume) can) =>
            Expression.Quantity("v", can.Volume, Measure.Number) * Expression.Quantity("ρ", can.Component.Density.KilogramsPerCubicMeter,
                Measure.Density)
            * Expression.Quantity("w_w", can.Component.Water!.Value.DecimalFractions, Measure.Percent);
    }

    /// <summary>Density, solids and content in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Product.Name + ": " + Measure.Density.Format(mass / (1 + reducer), DisplayUnits.Si, 4) + ", " + Measure.Percent.Format(VolumeSolids.DecimalFractions, DisplayUnits.Si, 3)
        + " solids by volume; VOC " + (Voc?.ToString() ?? "not known");

    /// <summary>Density of a solvent blend by mass shares, volumes additive; zero for none.</summary>
    internal static double BlendDensity(IReadOnlyList<SolventShare> solvents) =>
        solvents.Count == 0 ? 0 : 1 / solvents.Sum(share => share.MassFraction.DecimalFractions / share.Solvent.Density.KilogramsPerCubicMeter);

    private bool IsByMass => IsFromCans && Product.IsWaterborne;

    // What solids and water of the parts leave, at the density of the blend.
    private double Blend =>
        Math.Max(0, 1 - Product.VolumeSolids.DecimalFractions - (waterOfParts / WaterDensity)) * BlendDensity(Product.Solvents);

    private double Solvent => Product.Solvents.Count == 0 ? 0
        : IsByMass ? Math.Max(0, volatiles - water)
        : Math.Max(0, 1 + reducer - Product.VolumeSolids.DecimalFractions - (water / WaterDensity)) * BlendDensity(Product.Solvents);

    private IEnumerable<(CoatingComponent Component, double Volume)> Cans()
    {
        for (int i = 0; i < Product.Parts.Count; i++)
        {
            yield return (Product.Parts[i].Component, Product.ShareOf(i));
        }

        if (Product.Reducer is not null && reducer > 0)
        {
            yield return (Product.Reducer, reducer);
        }
    }
}
