using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// Profit as a share of the cost: markup = (price − cost) / cost. Not the same as a <see cref="Margin"/>, which is a share of the price.
/// </summary>
/// <remarks>price = cost (1 + markup); margin = markup / (1 + markup). Definitions. A default markup is zero.</remarks>
/// <example><code>
/// Markup markup = new(Ratio.FromPercent(50));
/// decimal price = markup.PriceFor(300m, Currency.Of("USD"));   // 450.00
/// Ratio margin = markup.ToMargin().OfPrice;          // 33.3 %
/// </code></example>
public readonly record struct Markup
{
    private readonly decimal ofCost;

    /// <summary>Makes a markup.</summary>
    /// <param name="ofCost">Profit as a share of the cost, 0 to 100 000 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Markup(Ratio ofCost) => this.ofCost = Money.Fraction(ofCost, Bounds.NotNegative(Measure.Percent, 1000), nameof(ofCost));

    private Markup(decimal ofCost) => this.ofCost = ofCost;

    /// <summary>Profit as a share of the cost.</summary>
    public Ratio OfCost => Ratio.FromDecimalFractions((double)ofCost);

    /// <summary>The price that this markup makes, rounded once to the currency, halves away from zero.</summary>
    /// <param name="cost">The cost, at least 0.</param>
    /// <param name="currency">The currency.</param>
    /// <returns>cost × (1 + markup).</returns>
    /// <exception cref="ArgumentNullException"><paramref name="currency"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cost"/> is negative.</exception>
    public decimal PriceFor(decimal cost, Currency currency) => Guard.NotNull(currency).Round(Guard.Money(cost) * (1 + ofCost));

    /// <summary>The same profit as a share of the price.</summary>
    /// <returns>markup / (1 + markup).</returns>
    public Margin ToMargin() => Margin.FromFraction(ofCost / (1 + ofCost));

    /// <summary>The share in per cent.</summary>
    /// <returns>Text such as <c>markup of 50 % on the cost</c>.</returns>
    public override string ToString() => "markup of " + Measure.Percent.Format((double)ofCost) + " on the cost";

    internal static Markup FromFraction(decimal fraction) => new(fraction);
}
