using System;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What it would take to tear the fixtures out and put new ones in, to hold the refinishing price against.</summary>
/// <remarks>
/// Give amounts as the customer pays them, sales tax included: the refinishing price is held against them with tax and with the options
/// chosen.
/// </remarks>
public sealed record ReplacementOffer
{
    private readonly double discountRate;

    /// <summary>The replacement with everything it costs, its life and its days out of use.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required RenewalOption Replacement { get; init => field = Guard.NotNull(value); }

    /// <summary>How long the refinished surfaces are expected to serve, 0.001 to 200 years.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double RefinishLifeYears { get; init => field = Guard.Within(value, RenewalOption.Lives); }

    /// <summary>Interest per year, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio DiscountRate
    {
        get => Ratio.FromDecimalFractions(discountRate);
        init => discountRate = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>What the care of the refinished surfaces costs every year, 0 to 10¹²; nothing unless given. That of the new ones is in
    /// <see cref="Replacement"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal RefinishYearlyCost { get; init => field = Money.Amount(value, nameof(RefinishYearlyCost)); }

    /// <summary>What a day without the bathroom costs, 0 to 10¹²; nothing unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or too large.</exception>
    public decimal CostPerDayOutOfUse { get; init => field = Money.Amount(value, nameof(CostPerDayOutOfUse)); }

    /// <summary>The replacement in one line.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Replacement.ToString();
}
