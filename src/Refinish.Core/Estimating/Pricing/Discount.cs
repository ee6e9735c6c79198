using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A discount before tax, as a share of the price or as an amount.</summary>
/// <example><code>
/// Discount friend = Discount.Of(Ratio.FromPercent(10));
/// Discount goodwill = Discount.Of(50m) with { MayUndercutMinimum = true };
/// </code></example>
public sealed record Discount
{
    private readonly decimal share;

    private Discount(decimal share, decimal? amount)
    {
        this.share = share;
        Amount = amount;
    }

    /// <summary>Share of the price; 0 for a discount by amount.</summary>
    public Ratio Share => Ratio.FromDecimalFractions((double)share);

    /// <summary>Amount before tax; <see langword="null"/> for a discount by share.</summary>
    public decimal? Amount { get; }

    /// <summary>
    /// Whether the price after the discount may be less than the minimum charge; when left out it may not, and the discount is cut so that
    /// the minimum charge is left.
    /// </summary>
    public bool MayUndercutMinimum { get; init; }

    /// <summary>Why it is given, as the customer reads it; "discount" when left out.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Reason { get; init => field = Guard.Named(value); } = "discount";

    /// <summary>A discount by share.</summary>
    /// <param name="share">Share of the price before discount, 0 to 100 %.</param>
    /// <returns>The discount.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="share"/> is outside its range.</exception>
    public static Discount Of(Ratio share) => new(Money.Fraction(share, Bounds.NotNegative(Measure.Percent, 1), nameof(share)), null);

    /// <summary>A discount by amount.</summary>
    /// <param name="amount">Amount before tax, 0 to 10¹². More than the price is a <see cref="PriceGap"/>.</param>
    /// <returns>The discount.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="amount"/> is outside its range.</exception>
    public static Discount Of(decimal amount) => new(0, Money.Amount(amount, nameof(amount)));

    internal decimal Fraction => share;

    /// <summary>Share or amount.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Reason + ": " + (Amount is decimal amount
            ? amount.ToString(System.Globalization.CultureInfo.InvariantCulture) : Measure.Percent.Format((double)share));
}
