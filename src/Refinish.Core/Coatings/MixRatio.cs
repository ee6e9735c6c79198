using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>Parts by volume of base (A) and hardener (B), and what the same ratio is on a scale.</summary>
/// <remarks>
/// By weight the ratio is a·ρ_A : b·ρ_B (definition of density). Reading a volume ratio on a scale puts the mix off by the ratio
/// of the densities, which is the commonest mixing fault.
/// </remarks>
/// <example><code>
/// MixRatio ratio = new(4, 1);
/// double grams = ratio.HardenerPer100Base(Density.FromGramsPerMilliliter(1.20), Density.FromGramsPerMilliliter(1.05));   // 21.875, not 25
/// </code></example>
public readonly record struct MixRatio
{
    private const double LargestPart = 1e6;

    // Zero in a default ratio, which then means "one part, nothing added", so that no instance divides by zero.
    private readonly double baseParts;
    private readonly double hardener;

    /// <summary>Makes a ratio by volume.</summary>
    /// <param name="baseParts">Parts of base by volume, more than 0 and at most 1 000 000.</param>
    /// <param name="hardenerParts">Parts of hardener by volume, more than 0 and at most 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A part is zero, negative, NaN or too large.</exception>
    public MixRatio(double baseParts, double hardenerParts)
    {
        this.baseParts = Guard.Within(baseParts, Bounds.Positive(Measure.Number, LargestPart), nameof(baseParts));
        hardener = Guard.Within(hardenerParts, Bounds.Positive(Measure.Number, LargestPart), nameof(hardenerParts));
    }

    /// <summary>A product that comes in one part.</summary>
    public static MixRatio OnePart { get; }

    /// <summary>Parts of base by volume.</summary>
    public double BaseParts => baseParts == 0 ? 1 : baseParts;

    /// <summary>Parts of hardener by volume; zero for a one-part product.</summary>
    public double HardenerParts => hardener;

    /// <summary>The base's part of the mixed volume.</summary>
    public Ratio BaseFraction => Ratio.FromDecimalFractions(BaseParts / (BaseParts + hardener));

    /// <summary>The hardener's part of the mixed volume.</summary>
    public Ratio HardenerFraction => Ratio.FromDecimalFractions(hardener / (BaseParts + hardener));

    /// <summary>The ratio of a stated weight ratio, by volume.</summary>
    /// <param name="baseParts">Parts of base by weight, more than 0 and at most 1 000 000.</param>
    /// <param name="hardenerParts">Parts of hardener by weight, more than 0 and at most 1 000 000.</param>
    /// <param name="baseDensity">Density of the base, 0.5 to 5 g/mL.</param>
    /// <param name="hardenerDensity">Density of the hardener, 0.5 to 5 g/mL.</param>
    /// <returns>The ratio by volume, scaled so that the hardener is one part.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static MixRatio FromWeight(double baseParts, double hardenerParts, Density baseDensity, Density hardenerDensity)
    {
        Guard.Within(baseParts, Bounds.Positive(Measure.Number, LargestPart), nameof(baseParts));
        Guard.Within(hardenerParts, Bounds.Positive(Measure.Number, LargestPart), nameof(hardenerParts));
        double baseVolume = baseParts / Guard.Within(baseDensity, CoatingComponent.Densities, nameof(baseDensity));
        double hardenerVolume = hardenerParts / Guard.Within(hardenerDensity, CoatingComponent.Densities, nameof(hardenerDensity));
        return new MixRatio(baseVolume / hardenerVolume, 1);
    }

    /// <summary>Parts of hardener by weight to 100 parts of base by weight.</summary>
    /// <param name="baseDensity">Density of the base, 0.5 to 5 g/mL.</param>
    /// <param name="hardenerDensity">Density of the hardener, 0.5 to 5 g/mL.</param>
    /// <returns>Parts by weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A density is outside its range.</exception>
    public double HardenerPer100Base(Density baseDensity, Density hardenerDensity) =>
        100 * hardener * Guard.Within(hardenerDensity, CoatingComponent.Densities, nameof(hardenerDensity))
        / (BaseParts * Guard.Within(baseDensity, CoatingComponent.Densities, nameof(baseDensity)));

    /// <summary>The ratio by volume.</summary>
    /// <returns>Text such as <c>4 : 1</c>.</returns>
    public override string ToString() =>
        hardener == 0 ? "one part" : Figures.Significant(BaseParts, 4) + " : " + Figures.Significant(hardener, 4);
}
