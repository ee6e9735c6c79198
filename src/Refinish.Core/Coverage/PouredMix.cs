using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One cup of a product: base, hardener and reducer by volume and by weight, and the running totals on a scale in pouring order.</summary>
/// <remarks>
/// V_A = V·f_A/(1 + R), V_B = V·f_B/(1 + R), V_R = V·R/(1 + R); masses by density. Volumes are taken as additive: no contraction on mixing.
/// </remarks>
/// <example><code>
/// PouredMix cup = new(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(550), Ratio.FromPercent(10));
/// double a = cup.BaseVolume.Milliliters;      // 400
/// double onScale = cup.ScaleAfterHardener.Grams;   // 585 = 400 × 1.20 + 100 × 1.05
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
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the product's data contradict each other.</exception>
    public PouredMix(CoatingProduct product, Volume total, Ratio reducer)
    {
        Product = Guard.NotNull(product, nameof(product));
        product.CheckConsistency();
        this.total = Guard.Within(total, Bounds.Positive(Measure.Liquid, 0.1), nameof(total));
        this.reducer = Guard.Within(reducer, Bounds.Between(product.MinimumReducer.DecimalFractions, product.MaximumReducer.DecimalFractions, Measure.Percent), nameof(reducer));
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Reduced volume in the cup; its last fill line.</summary>
    public Volume Total => Volume.FromCubicMeters(total);

    /// <summary>Reducer per volume of mixed product.</summary>
    public Ratio Reducer => Ratio.FromDecimalFractions(reducer);

    /// <summary>Component A by volume; the first fill line.</summary>
    public Volume BaseVolume => Volume.FromCubicMeters(A);

    /// <summary>Component B by volume.</summary>
    public Volume HardenerVolume => Volume.FromCubicMeters(B);

    /// <summary>The second fill line: base and hardener.</summary>
    public Volume LineAfterHardener => Volume.FromCubicMeters(A + B);

    /// <summary>Reducer by volume.</summary>
    public Volume ReducerVolume => Volume.FromCubicMeters(R);

    /// <summary>Component A by weight; the first reading on the scale.</summary>
    public Mass BaseMass => Mass.FromKilograms(A * DensityA);

    /// <summary>Component B by weight.</summary>
    public Mass HardenerMass => Mass.FromKilograms(B * DensityB);

    /// <summary>Reducer by weight.</summary>
    public Mass ReducerMass => Mass.FromKilograms(R * DensityR);

    /// <summary>The second reading on the scale, without taring.</summary>
    public Mass ScaleAfterHardener => Mass.FromKilograms((A * DensityA) + (B * DensityB));

    /// <summary>The last reading on the scale, without taring.</summary>
    public Mass ScaleAfterReducer => Mass.FromKilograms((A * DensityA) + (B * DensityB) + (R * DensityR));

    /// <summary>Parts of hardener by weight to 100 of base; zero for a one-part product.</summary>
    public double HardenerPer100Base => Product.Hardener is null ? 0 : Product.MixRatio.HardenerPer100Base(Product.Base.Density, Product.Hardener.Density);

    private double A => total * Product.MixRatio.BaseFraction.DecimalFractions / (1 + reducer);

    private double B => total * Product.MixRatio.HardenerFraction.DecimalFractions / (1 + reducer);

    private double R => total * reducer / (1 + reducer);

    private double DensityA => Product.Base.Density.KilogramsPerCubicMeter;

    private double DensityB => Product.Hardener?.Density.KilogramsPerCubicMeter ?? 0;

    private double DensityR => Product.Reducer?.Density.KilogramsPerCubicMeter ?? 0;

    /// <summary>How the cup is divided.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression v = Expression.Quantity("V", total, Measure.Liquid);
        Expression r = Expression.Quantity("R", reducer, Measure.Percent);
        Expression a = Expression.Quantity("a", Product.MixRatio.BaseParts, Measure.Number);
        Expression b = Expression.Quantity("b", Product.MixRatio.HardenerParts, Measure.Number);
        WorkingStep baseVolume = new("base", "V_A", v * a / (a + b) / (1 + r), A, Measure.Liquid, Balance);
        WorkingStep hardener = new("hardener", "V_B", v * b / (a + b) / (1 + r), B, Measure.Liquid, Balance);
        WorkingStep thinner = new("reducer", "V_R", v * r / (1 + r), R, Measure.Liquid, Balance);
        Expression rhoA = Expression.Quantity("ρ_A", DensityA, Measure.Density);
        Expression rhoB = Expression.Quantity("ρ_B", DensityB, Measure.Density);
        Expression rhoR = Expression.Quantity("ρ_R", DensityR, Measure.Density);
        WorkingStep first = new("scale after base", "m_A", baseVolume.Result() * rhoA, BaseMass.Kilograms, Measure.Mass, Weighing);
        WorkingStep line = new("fill line after hardener", "V_AB", baseVolume.Result() + hardener.Result(), A + B, Measure.Liquid, Balance);
        WorkingStep massB = new("hardener by weight", "m_B", hardener.Result() * rhoB, HardenerMass.Kilograms, Measure.Mass, Weighing);
        WorkingStep massR = new("reducer by weight", "m_R", thinner.Result() * rhoR, ReducerMass.Kilograms, Measure.Mass, Weighing);
        WorkingStep second = new("scale after hardener", "m_AB", first.Result() + massB.Result(), ScaleAfterHardener.Kilograms, Measure.Mass, Weighing);
        WorkingStep third = new("scale after reducer", "m_ABR", second.Result() + massR.Result(), ScaleAfterReducer.Kilograms, Measure.Mass, Weighing);
        WorkingStep weight = new("hardener by weight to 100 of base", "phr", 100 * b * rhoB / (a * rhoA), HardenerPer100Base, Measure.Number, Weighing);
        return new Workings("Cup of " + Product.Name, [baseVolume, hardener, thinner, line, first, massB, massR, second, third, weight]);
    }

    /// <summary>The cup in one line, in metric units.</summary>
    /// <returns>Text such as <c>400 mL A + 100 mL B + 50 mL reducer</c>.</returns>
    public override string ToString() =>
        Measure.Liquid.Format(A, DisplayUnits.Si, 4) + " A + " + Measure.Liquid.Format(B, DisplayUnits.Si, 4) + " B + "
        + Measure.Liquid.Format(R, DisplayUnits.Si, 4) + " reducer";
}
