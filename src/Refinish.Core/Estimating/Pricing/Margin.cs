using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// Profit as a share of the price: margin = (price − cost) / price. Not the same as a <see cref="Markup"/>, which is a share of the cost.
/// </summary>
/// <remarks>price = cost / (1 − margin); markup = margin / (1 − margin). Definitions. A default margin is zero.</remarks>
/// <example><code>
/// Margin margin = new(Ratio.FromPercent(45));
/// decimal price = margin.PriceFor(300m, Currency.Of("USD"));   // 545.45, not 435.00
/// Ratio markup = margin.ToMarkup().OfCost;          // 81.8 %
/// </code></example>
public readonly record struct Margin
{
    private readonly decimal ofPrice;

    /// <summary>Makes a margin.</summary>
    /// <param name="ofPrice">Profit as a share of the price, 0 to less than 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Margin(Ratio ofPrice)
    {
        this.ofPrice = Money.Fraction(ofPrice, Bounds.Below(0, 1, Measure.Percent), nameof(ofPrice));
        const string Allowed = "less than 100 % in its first fifteen figures";
        Guard.Rule(this.ofPrice < 1, nameof(ofPrice), (double)this.ofPrice, Measure.Percent, Allowed);
    }

    private Margin(decimal ofPrice) => this.ofPrice = ofPrice;

    /// <summary>Profit as a share of the price.</summary>
    public Ratio OfPrice => Ratio.FromDecimalFractions((double)ofPrice);

    internal decimal Fraction => ofPrice;

    /// <summary>The price that leaves this margin, rounded once to the currency, halves away from zero.</summary>
    /// <param name="cost">The cost, at least 0; the price may not pass 10²⁵.</param>
    /// <param name="currency">The currency.</param>
    /// <returns>cost / (1 − margin).</returns>
    /// <exception cref="ArgumentNullException"><paramref name="currency"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cost"/> is negative or makes too large a price.</exception>
    public decimal PriceFor(decimal cost, Currency currency)
    {
        Guard.NotNull(currency);
        Guard.Money(cost);
        Guard.Rule(cost <= 1e25m * (1 - ofPrice), nameof(cost), (double)cost, Measure.Number, "no more than makes a price of 10²⁵");
        return PriceFor(cost, ofPrice, currency).Value;
    }

    /// <summary>The same profit as a share of the cost.</summary>
    /// <returns>margin / (1 − margin).</returns>
    public Markup ToMarkup() => Markup.FromFraction(ofPrice / (1 - ofPrice));

    /// <summary>The share in per cent.</summary>
    /// <returns>Text such as <c>margin of 45 % of the price</c>.</returns>
    public override string ToString() =>
        "margin of " + Measure.Percent.Format((double)ofPrice, DisplayUnits.Si, ofPrice > 0.9999m ? 15 : 6) + " of the price";

    internal static Amount PriceFor(Amount cost, Amount ofPrice, Currency currency) => Amount.Round(cost / (1 - ofPrice), currency);

    internal static Margin FromFraction(decimal fraction) => new(fraction);
}
