using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>From cost to what is paid: margin, minimum charge, discount, tax and coins, each written once.</summary>
internal sealed class PriceChain(PricedCosts costs, PriceBook book, EstimateRequest request)
{
    private static readonly Source Sums = Source.Derived("sum of the rounded lines");
    private static readonly Source RoundedUp = Source.Derived("margin is a share of the price; rounded up to the currency");
    private static readonly Source Share = Source.Derived("margin is a share of the price");
    private static readonly Source Before = Source.Derived("the discount D_m is rounded to the currency");
    private static readonly Source Book = Source.Supplied("price book");
    private static readonly Source Agreed = Source.Supplied("discount agreed");
    private static readonly Source After = Source.Derived("subtotal less discount");
    private static readonly Source LessCost = Source.Derived("net price less cost");
    private static readonly Source OfPrice = Source.Derived("definition of margin");
    private static readonly Source OfCost = Source.Derived("definition of markup");
    private static readonly Source Division =
        Source.Derived("in proportion to cost, cut to the currency, what is left to the largest remainders");

    private readonly Currency currency = book.Currency;
    private readonly Measure money = Measure.Money(book.Currency);

    /// <summary>All of the derivation after the lines of cost.</summary>
    /// <param name="t">The derivation.</param>
    /// <param name="lines">The lines of cost as noted.</param>
    /// <param name="sold">Every line as sold, those of cost first.</param>
    /// <param name="taxes">Those of tax.</param>
    public void Note(Trace t, IReadOnlyList<Amount> lines, IReadOnlyList<EstimateLine> sold, IReadOnlyList<EstimateLine> taxes)
    {
        Amount cost = 0;
        foreach (Amount line in lines)
        {
            cost += line;
        }

        t.Step("cost", "C", money, Sums, cost);
        Amount carried = Subtotal(t) - FixedPrice(t);
        for (int i = 0; i < costs.Direct.Count && costs.DirectCost > 0; i++)
        {
            Amount part = carried * (lines[i] / t.Money("C_d", costs.DirectCost, money));
            t.Step(sold[i].Code + " " + sold[i].Description + ", as sold", "p_" + Figures.Fixed(i + 1, 0), money, Division,
                part + t.Money("δ", sold[i].Price - part.Value, money));
        }

        Payable(taxes, t);
        Profit(t);
        RealisedMargin(t);
        RealisedMarkup(t);
    }

    /// <summary>With everything at its fixed price, before minimum charge and discount.</summary>
    public Amount AtMargin(Trace? t = null) => request.HoldMargin
        ? t.Step("price before the discount that leaves this after it, at least the fixed prices", "P", money, Before,
            Amount.Max(FixedPrice(t), Held(t) + t.Money("D_m", HeldDiscount(), money)))
        : t.Step("price at the target margin, with fixed prices", "P", money, Share,
            Margin.PriceFor(t.Money("C_m", costs.MarkedUp, money), Target(t), currency) + FixedPrice(t));

    public Amount Subtotal(Trace? t = null) =>
        t.Step("subtotal, at least the minimum charge", "S", money, Book, Amount.Max(AtMargin(t), Minimum(t)));

    /// <summary>What was asked for, before the minimum charge cuts it.</summary>
    public Amount Asked(Trace? t = null) => request.Discount?.Amount is decimal amount
        ? t.Money("D_a", amount, money)
        : Amount.Round(Subtotal(t) * t.Money("d", request.Discount?.Fraction ?? 0, Measure.Percent), currency);

    public Amount Given(Trace? t = null) => t.Step("discount that is given", "D", money, Agreed,
        request.Discount is null or { MayUndercutMinimum: true }
            ? Asked(t) : Amount.Min(Asked(t), Amount.Max(t.Money("0", 0, money), Subtotal(t) - Minimum(t))));

    public Amount Net(Trace? t = null) => t.Step("net price after discount", "N", money, After, Subtotal(t) - Given(t));

    public Amount Total(IReadOnlyList<EstimateLine> taxes, Trace? t = null)
    {
        Amount total = Net(t);
        for (int i = 0; i < taxes.Count; i++)
        {
            total += taxes[i].Rounded(t, "X_", i, Book);
        }

        return t.Step("total with tax", "T", money, Sums, total);
    }

    public Amount Payable(IReadOnlyList<EstimateLine> taxes, Trace? t = null) => book.CashStep > 0
        ? t.Step("payable, to the cash step", "T_s", money, Book, Money.ToCoin(Total(taxes, t), t.Money("s", book.CashStep, money)))
        : Total(taxes, t);

    public Amount Profit(Trace? t = null) => t.Step("profit", "G", money, LessCost, Net(t) - Cost(t));

    public Num? RealisedMargin(Trace? t = null) => Net().Value > 0
        ? t.Step("realised margin, a share of the price", "m_r", Measure.Percent, OfPrice, Profit(t).ToNum() / Net(t).ToNum())
        : null;

    public Num? RealisedMarkup(Trace? t = null) => costs.Cost > 0
        ? t.Step("realised markup, a share of the cost", "u_r", Measure.Percent, OfCost, Profit(t).ToNum() / Cost(t).ToNum())
        : null;

    private Amount Held(Trace? t = null) => t.Step("least net price that leaves the margin", "N_m", money, RoundedUp,
        Amount.Ceiling(Cost(t) / (1 - Target(t)) / currency.SmallestAmount) * currency.SmallestAmount);

    private decimal HeldDiscount()
    {
        decimal net = Held().Value;
        return request.Discount is not Discount discount ? 0
            : discount.Amount ?? (net > Money.Largest * (1 - discount.Fraction)
                ? Money.Largest : currency.Before(discount.Fraction, net) - net);
    }

    private Amount Cost(Trace? t) => t.Money("C", costs.Cost, money);

    private Amount FixedPrice(Trace? t) => t.Money("P_o", costs.FixedPrice, money);

    private Amount Target(Trace? t) => t.Money("m", book.TargetMargin.Fraction, Measure.Percent);

    private Amount Minimum(Trace? t) => t.Money("P_min", book.MinimumCharge, money);
}
