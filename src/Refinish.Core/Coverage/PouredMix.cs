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

    /// <summary>Divides a cup into its components.</summary>
    /// <param name="product">The product.</param>
    /// <param name="total">Reduced volume in the cup, more than 0 and at most 100 L.</param>
    /// <param name="reducer">Reducer per volume of mixed product, from the product's minimum to its maximum.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the product's data contradict each other.
    /// </exception>
    public PouredMix(CoatingProduct product, Volume total, Ratio reducer)
    {
        Product = Guard.NotNull(product);
        product.CheckConsistency();
        Total = Guard.Checked(total, Bounds.Positive(Measure.Liquid, 0.1));
        Reducer = Guard.Checked(reducer,
            Bounds.Between(product.MinimumReducer.DecimalFractions, product.MaximumReducer.DecimalFractions, Measure.Percent));
        Parts = ValueList<PouredPart>.Owning(Pour());
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Reduced volume in the cup; its last fill line.</summary>
    public Volume Total { get; }

    /// <summary>Reducer per volume of mixed product.</summary>
    public Ratio Reducer { get; }

    /// <summary>What is poured, in order: the parts of the product, and the reducer last where there is any.</summary>
    public IReadOnlyList<PouredPart> Parts { get; }

    /// <summary>How the cup is divided.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Num line = 0;
        Num scale = 0;
        for (int i = 0; i < Parts.Count; i++)
        {
            string name = Parts[i].Component.Name;
            string letter = i == Product.Parts.Count ? "R" : ReactiveGroups.Letter(i);
            Num volume = t.Step(name, "V_" + letter, Measure.Liquid, Balance, VolumeOf(i, t));
            Num density = t.Given("ρ_" + letter, Parts[i].Component.Density.KilogramsPerCubicMeter, Measure.Density);
            Num mass = t.Step(name + " by weight", "m_" + letter, Measure.Mass, Weighing, volume * density);
            line = t.Step("fill line after " + name, "L_" + letter, Measure.Liquid, Balance, line + volume);
            scale = t.Step("scale after " + name, "S_" + letter, Measure.Mass, Weighing, scale + mass);
        }

        return t.Workings("Cup of " + Product.Name);
    }

    /// <summary>The cup in one line, in metric units.</summary>
    /// <returns>Text such as <c>400 mL topcoat base + 100 mL isocyanate hardener + 50 mL urethane reducer</c>.</returns>
    public override string ToString() => string.Join(" + ", Parts);

    private PouredPart[] Pour()
    {
        PouredPart[] poured = new PouredPart[Product.Parts.Count + (Product.Reducer is not null && Reducer.DecimalFractions > 0 ? 1 : 0)];
        for (int i = 0; i < poured.Length; i++)
        {
            poured[i] = new PouredPart(
                i < Product.Parts.Count ? Product.Parts[i].Component : Product.Reducer!, VolumeOf(i).Value, i == 0 ? null : poured[i - 1]);
        }

        return poured;
    }

    /// <summary>Of a part; of the reducer where the parts are at their end.</summary>
    private Num VolumeOf(int part, Trace? t = null)
    {
        Num reduced = t.Given("R", Reducer.DecimalFractions, Measure.Percent);
        Num all = t.Given("V", Total.CubicMeters, Measure.Liquid);
        if (part == Product.Parts.Count)
        {
            return all * reduced / (1 + reduced);
        }

        return t is null
            ? all * Product.ShareOf(part) / (1 + reduced)
            : all * PartsOf(part, t) / Num.Sum(Product.Parts.Count, (Mix: this, t), static (of, i) => of.Mix.PartsOf(i, of.t))
                / (1 + reduced);
    }

    private Num PartsOf(int part, Trace t) => t.Given("p_" + ReactiveGroups.Letter(part), Product.Parts[part].Parts, Measure.Number);
}
