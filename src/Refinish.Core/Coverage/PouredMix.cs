using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// One cup of a product: its parts and the reducer by volume and by weight, and the running totals on a scale in pouring order.
/// </summary>
/// <remarks>
/// V_i = V·f_i/(1 + R), V_R = V·R/(1 + R), f the share of a part in the mixed volume; masses by density. Volumes are taken as additive: no
/// contraction on mixing.
/// </remarks>
/// <example><code>
/// PouredMix cup = new(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(550), Ratio.FromPercent(10));
/// double a = cup.Parts[0].Volume.Milliliters;   // 400
/// double onScale = cup.Parts[1].Scale.Grams;    // 585 = 400 × 1.20 + 100 × 1.05
/// </code></example>
public sealed record PouredMix
{
    private static readonly Source Balance = Source.Derived("parts by volume of the data sheet, volumes additive");
    private static readonly Source Weighing = Source.Derived("definition of density");

    private readonly double total;
    private readonly double reducer;

    /// <summary>Divides a cup into its components.</summary>
    /// <param name="product">The product.</param>
    /// <param name="total">Reduced volume in the cup, more than 0 and at most 100 L.</param>
    /// <param name="reducer">Reducer per volume of mixed product, from the product's minimum to its maximum.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the product's data contradict each other.
    /// </exception>
    public PouredMix(CoatingProduct product, Volume total, Ratio reducer)
    {
        Product = Guard.NotNull(product, nameof(product));
        product.CheckConsistency();
        this.total = Guard.Within(total, Bounds.Positive(Measure.Liquid, 0.1), nameof(total));
        this.reducer = Guard.Within(reducer, Bounds.Between(product.MinimumReducer.DecimalFractions, product.MaximumReducer.DecimalFractions, Measure.Percent), nameof(reducer));
        Parts = ValueList<PouredPart>.Owning(Pour());
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Reduced volume in the cup; its last fill line.</summary>
    public Volume Total => Volume.FromCubicMeters(total);

    /// <summary>Reducer per volume of mixed product.</summary>
    public Ratio Reducer => Ratio.FromDecimalFractions(reducer);

    /// <summary>What is poured, in order: the parts of the product, and the reducer last where there is any.</summary>
    public IReadOnlyList<PouredPart> Parts { get; }

    /// <summary>How the cup is divided.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression v = Expression.Quantity("V", total, Measure.Liquid);
        Expression r = Expression.Quantity("R", reducer, Measure.Percent);
        Expression all = Expression.Sum(Product.Parts.Select((part, i) => PartsOf(i)));
        List<WorkingStep> steps = [];
        WorkingStep? line = null;
        WorkingStep? scale = null;
        for (int i = 0; i < Parts.Count; i++)
        {
            PouredPart part = Parts[i];
            bool last = i == Product.Parts.Count;
            string letter = last ? "R" : ReactiveGroups.Letter(i);
            Expression share = last ? v * r / (1 + r) : v * PartsOf(i) / all / (1 + r);
            WorkingStep volume = new(part.Component.Name, "V_" + letter, share, part.Volume.CubicMeters, Measure.Liquid, Balance);
            Expression density = Expression.Quantity("ρ_" + letter, part.Component.Density.KilogramsPerCubicMeter, Measure.Density);
            WorkingStep mass = new(part.Component.Name + " by weight", "m_" + letter, volume.Result() * density, part.Mass.Kilograms,
                Measure.Mass, Weighing);
            line = new(
                "fill line after " + part.Component.Name, "L_" + letter, line is null ? volume.Result() : line.Result() + volume.Result(),
                part.FillLine.CubicMeters, Measure.Liquid, Balance);
            scale = new(
                "scale after " + part.Component.Name, "S_" + letter, scale is null ? mass.Result() : scale.Result() + mass.Result(),
                part.Scale.Kilograms, Measure.Mass, Weighing);
            steps.AddRange([volume, mass, line, scale]);
        }

        return new Workings("Cup of " + Product.Name, steps);
    }

    /// <summary>The cup in one line, in metric units.</summary>
    /// <returns>Text such as <c>400 mL topcoat base + 100 mL isocyanate hardener + 50 mL urethane reducer</c>.</returns>
    public override string ToString() => string.Join(" + ", Parts);

    private Expression PartsOf(int part) =>
        Expression.Quantity("p_" + ReactiveGroups.Letter(part), Product.Parts[part].Parts, Measure.Number);

    private PouredPart[] Pour()
    {
        bool reduced = Product.Reducer is not null && reducer > 0;
        PouredPart[] poured = new PouredPart[Product.Parts.Count + (reduced ? 1 : 0)];
        for (int i = 0; i < Product.Parts.Count; i++)
        {
            poured[i] = new PouredPart(Product.Parts[i].Component, total * Product.ShareOf(i) / (1 + reducer), i == 0
                ? null : poured[i - 1]);
        }

        if (reduced)
        {
            poured[poured.Length - 1] = new PouredPart(Product.Reducer!, total * reducer / (1 + reducer), poured[poured.Length - 2]);
        }

        return poured;
    }
}
