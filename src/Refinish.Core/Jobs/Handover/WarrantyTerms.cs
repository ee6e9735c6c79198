using System;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What is promised for how long, and how often a promise of this kind has to be kept.</summary>
/// <example><code>
/// WarrantyTerms terms = new() { Years = 5, Life = new WeibullLife(1.8, 14), CostPerClaim = 260m, ClaimProbability = Ratio.FromPercent(80) };
/// </code></example>
public sealed record WarrantyTerms
{
    private readonly double claimProbability;
    private readonly double discountRate;

    /// <summary>Term in whole years, 1 to 50.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int Years { get; init => field = Guard.Count(value, 1, 50); }

    /// <summary>How long the surface of one refinished fixture lasts; every planned fixture carries its own risk.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required WeibullLife Life { get; init => field = Guard.NotNull(value); }

    /// <summary>What one claim on one fixture costs the shop, 0 to 10¹².</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public required decimal CostPerClaim { get; init => field = Money.Amount(value, nameof(CostPerClaim)); }

    /// <summary>Chance that a failure within the term becomes a claim, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio ClaimProbability
    {
        get => Ratio.FromDecimalFractions(claimProbability);
        init => claimProbability = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>Interest per year at which later claims are discounted, 0 to 100 %; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio DiscountRate
    {
        get => Ratio.FromDecimalFractions(discountRate);
        init => discountRate = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>The term in one line.</summary>
    /// <returns>Text such as <c>5 years</c>.</returns>
    public override string ToString() => Figures.Fixed(Years, 0) + " years";
}
