using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>What was really poured of a two-part product: how far the ratio is off, which groups are left over, and how that compares with what the data sheet allows.</summary>
/// <remarks>
/// Deviation: (V_B/V_A)/(b/a) − 1. The index scales with it, because both sides are proportional to what is poured. What a deviation does to a film is
/// told in words only: no general figure is published, and the data sheet's tolerance decides.
/// </remarks>
/// <example><code>
/// OffRatio poured = new(GenericCatalogue.AcrylicUrethaneTopcoat, Volume.FromMilliliters(400), Volume.FromMilliliters(110));
/// double off = poured.Deviation.Percent;   // 10: ten per cent too much hardener
/// </code></example>
public sealed record OffRatio
{
    private static readonly Source Definition = Source.Derived("ratio poured over ratio stated");

    private readonly double baseVolume;
    private readonly double hardenerVolume;

    /// <summary>Compares what was poured.</summary>
    /// <param name="product">A two-part product.</param>
    /// <param name="baseVolume">Base poured, more than 0 and at most 100 L.</param>
    /// <param name="hardenerVolume">Hardener poured, 0 to 100 L.</param>
    /// <exception cref="ArgumentException">The product comes in one part.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A volume is outside its range, or the product's data contradict each other.</exception>
    public OffRatio(CoatingProduct product, Volume baseVolume, Volume hardenerVolume)
    {
        Product = Guard.NotNull(product, nameof(product));
        product.CheckConsistency();
        if (product.Hardener is null)
        {
            throw new ArgumentException("product comes in one part; there is no ratio to be off.", nameof(product));
        }

        this.baseVolume = Guard.Within(baseVolume, Bounds.Positive(Measure.Liquid, 0.1), nameof(baseVolume));
        this.hardenerVolume = Guard.Within(hardenerVolume, Bounds.NotNegative(Measure.Liquid, 0.1), nameof(hardenerVolume));
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Base poured.</summary>
    public Volume BaseVolume => Volume.FromCubicMeters(baseVolume);

    /// <summary>Hardener poured.</summary>
    public Volume HardenerVolume => Volume.FromCubicMeters(hardenerVolume);

    /// <summary>How far the ratio of hardener to base is off; negative when hardener is short.</summary>
    public Ratio Deviation => Ratio.FromDecimalFractions(Off);

    /// <summary>Reactive groups of the hardener per group of the base at the stated ratio; <see langword="null"/> when the cans do not state their equivalents.</summary>
    public double? StatedIndex => IndexAtStatedRatio(Product);

    /// <summary>The same as poured.</summary>
    public double? PouredIndex => StatedIndex * (1 + Off);

    /// <summary>The size of the deviation against the data sheet's tolerance; it cannot be judged when none is stated.</summary>
    public LimitComparison Comparison => new(
        "ratio of hardener to base, deviation from the stated one",
        Math.Abs(Off),
        Product.RatioTolerance?.DecimalFractions,
        LimitSense.AtMost,
        Measure.Percent,
        Product.Source,
        Off == 0 ? null : "Do not spray it. Correct the cup by weight while it is fresh, or throw it away.");

    /// <summary>What is left over, in words.</summary>
    public string Meaning
    {
        get
        {
            if (Off == 0)
            {
                return "The ratio is the stated one.";
            }

            bool isUrethane = Product.Hardener!.IsocyanateContent is not null || Product.IsocyanateFraction.DecimalFractions > 0;
            string size = Measure.Percent.Format(Math.Abs(Off), DisplayUnits.Si, 3);
            return (Off < 0, isUrethane) switch
            {
                (true, true) => "Hardener is " + size + " short: hydroxyl of the resin stays free, and the film stays softer and takes up solvent and water.",
                (false, true) => "Hardener is " + size + " too much: isocyanate is left over, which goes on to react with the moisture of the air; the film cures more slowly and turns brittle.",
                (true, false) => "Hardener is " + size + " short: epoxide stays unreacted, and the film stays softer and takes up solvent.",
                _ => "Hardener is " + size + " too much: amine is left over, which may come to the surface as blush and hold the next coat off.",
            };
        }
    }

    /// <summary>What can hurt: what has not reacted.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.OffRatioMix]);

    private double Off => hardenerVolume / baseVolume * Product.MixRatio.BaseParts / Product.MixRatio.HardenerParts - 1;

    /// <summary>How the deviation and the index follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression a = Expression.Quantity("a", Product.MixRatio.BaseParts, Measure.Number);
        Expression b = Expression.Quantity("b", Product.MixRatio.HardenerParts, Measure.Number);
        Expression va = Expression.Quantity("V_A", baseVolume, Measure.Liquid);
        Expression vb = Expression.Quantity("V_B", hardenerVolume, Measure.Liquid);
        WorkingStep off = new("deviation of the ratio", "δ", (vb / va * a / b) - 1, Off, Measure.Percent, Definition);
        List<WorkingStep> steps = [off];
        if (StatedIndex is double index)
        {
            WorkingStep stated = IndexStep(Product, index);
            steps.Add(stated);
            steps.Add(new("index as poured", "I_p", stated.Result() * (1 + off.Result()), index * (1 + Off), Measure.Number, Definition));
        }

        return new Workings("Ratio as poured", steps);
    }

    /// <summary>The deviation in one line.</summary>
    /// <returns>Text such as <c>10 % off the stated 4 : 1</c>.</returns>
    public override string ToString() => Measure.Percent.Format(Off, DisplayUnits.Si, 3) + " off the stated " + Product.MixRatio;

    /// <summary>Groups of the hardener per group of the base at the stated ratio by volume; reducer left out.</summary>
    internal static double? IndexAtStatedRatio(CoatingProduct product)
    {
        if (product.Hardener is not CoatingComponent hardener)
        {
            return null;
        }

        return Equivalents(product.Base, hardener) is (double a, double b)
            ? product.MixRatio.HardenerPer100Base(product.Base.Density, hardener.Density) / 100 * a / b
            : null;
    }

    internal static WorkingStep IndexStep(CoatingProduct product, double index)
    {
        (double a, double b) = Equivalents(product.Base, product.Hardener!)!.Value;
        Expression phr = Expression.Quantity("phr", product.MixRatio.HardenerPer100Base(product.Base.Density, product.Hardener!.Density), Measure.Number);
        return new(
            "index at the stated ratio",
            "I",
            phr / 100 * Expression.Quantity("EW_A", a, Measure.EquivalentWeight) / Expression.Quantity("EW_B", b, Measure.EquivalentWeight),
            index,
            Measure.Number,
            Source.Derived("ratio of equivalents, both cans as supplied"));
    }

    /// <summary>Equivalent weights of base and hardener in kg/mol, epoxy or urethane.</summary>
    internal static (double Base, double Hardener)? Equivalents(CoatingComponent a, CoatingComponent b) => (a, b) switch
    {
        ({ EpoxideEquivalent: MolarMass eew }, { AmineHydrogenEquivalent: MolarMass ahew }) => (eew.KilogramsPerMole, ahew.KilogramsPerMole),
        ({ HydroxylNumber: double ohn }, { IsocyanateContent: Ratio nco }) =>
            (EquivalentWeights.OfHydroxyl(ohn).KilogramsPerMole, EquivalentWeights.OfIsocyanate(nco).KilogramsPerMole),
        _ => null,
    };
}
