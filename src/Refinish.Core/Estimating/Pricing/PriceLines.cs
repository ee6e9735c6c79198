using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>From cost to price: margin, minimum charge, discount and tax, and what part of it each line carries.</summary>
internal sealed class PriceLines
{
    // A coin changes what is paid by next to nothing; more than this is no coin.
    private const decimal MostRounding = 0.01m;

    private readonly PricedCosts costs;
    private readonly PriceBook book;
    private readonly EstimateRequest request;
    private readonly Currency currency;
    private readonly List<EstimateLine> sold = [];
    private readonly List<EstimateLine> rest = [];
    private readonly List<TaxAmount> taxes = [];

    public PriceLines(PricedCosts costs, PriceBook book, EstimateRequest request)
    {
        this.costs = costs;
        this.book = book;
        this.request = request;
        currency = book.Currency;
        Check();
        if (costs.Gaps.Count > 0)
        {
            return;
        }

        SetPrice();
        if (costs.Gaps.Count > 0)
        {
            return;
        }

        Subtotal = Math.Max(AtMargin + costs.FixedPrice, book.MinimumCharge);
        SetDiscount();
        if (costs.Gaps.Count > 0)
        {
            return;
        }

        Net = Subtotal - DiscountGiven;
        Divide();
        AddTaxes();
        Total = Net + Tax;
        Payable = Currency.Round(Total, book.CashStep);
        if (Math.Abs(Payable - Total) > Total * MostRounding)
        {
            costs.Gaps.Add(new PriceGap(
                "cash-step", "cash-step", "cash step of " + currency.Text(book.CashStep),
                    "it would round the total of " + currency.Text(Total) + " by more than 1 %"));
        }
    }

    /// <summary>What is charged for everything without a fixed price, before the minimum charge.</summary>
    public decimal AtMargin { get; private set; }

    /// <summary>The least net price that leaves the target margin over every cost; for a request that holds the margin.</summary>
    public decimal HeldNet { get; private set; }

    public decimal Subtotal { get; }

    public decimal DiscountAsked { get; private set; }

    public decimal DiscountGiven { get; private set; }

    public decimal Net { get; }

    public IReadOnlyList<TaxAmount> Taxes => taxes;

    public decimal Tax { get; private set; }

    public decimal Total { get; }

    public decimal Payable { get; }

    /// <summary>Every line: those of the work with their prices, what they carry, discount and taxes.</summary>
    public ValueList<EstimateLine> Lines => costs.Gaps.Count > 0
        ? new([.. costs.Direct, .. costs.Fixed, .. costs.Spread])
        : new([.. sold, .. costs.Spread, .. rest]);

    private void Check()
    {
        IsWhole(book.MinimumCharge, "minimum-charge", "minimum charge");
        IsWhole(book.CashStep, "cash-step", "cash step");
        if (request.Discount?.Amount is decimal amount)
        {
            IsWhole(amount, "discount", "discount");
        }

        foreach (string code in request.Exemption?.Codes ?? [])
        {
            if (book.FindTax(code) is null)
            {
                costs.Gaps.Add(new PriceGap("tax/" + code, code, "exemption", "no such tax rate in the price book"));
            }
        }
    }

    private void IsWhole(decimal amount, string id, string what)
    {
        if (!currency.Fits(amount))
        {
            costs.Gaps.Add(PriceGap.Decimals(id, id, what, amount, currency));
        }
    }

    // To hold the margin after a discount, the least net price is cost / (1 − margin) rounded up.
    private void SetPrice()
    {
        decimal share = request.Discount?.Fraction ?? 0;
        if (request.HoldMargin && share == 1)
        {
            costs.Gaps.Add(new PriceGap("discount", "discount", "discount", "a discount of 100 % leaves nothing to hold a margin with"));
            return;
        }

        if (request.HoldMargin)
        {
            HeldNet = currency.RoundUp(costs.Cost / (1 - book.TargetMargin.Fraction));
            decimal subtotal = HeldNet > Money.Largest
                ? HeldNet
                : request.Discount?.Amount is decimal amount
                    ? HeldNet + amount
                    : currency.Before(share, HeldNet);
            AtMargin = Math.Max(0, subtotal - costs.FixedPrice);
        }
        else
        {
            AtMargin = book.TargetMargin.PriceFor(costs.MarkedUp, currency);
        }

        if (AtMargin + costs.FixedPrice > Money.Largest)
        {
            string margin = book.TargetMargin.Fraction > 0 ? " at a " + book.TargetMargin : string.Empty;
            costs.Gaps.Add(new PriceGap("price", "price", "price of the job" + margin, PricedCosts.TooMuch));
        }
    }

    private void SetDiscount()
    {
        if (request.Discount is not Discount discount)
        {
            return;
        }

        DiscountAsked = discount.Amount ?? currency.Round(Subtotal * discount.Fraction);
        if (DiscountAsked > Subtotal)
        {
            costs.Gaps.Add(new PriceGap(
                "discount", "discount", "discount of " + currency.Text(DiscountAsked),
                    "it is more than the price before it, " + currency.Text(Subtotal)));
            return;
        }

        DiscountGiven = discount.MayUndercutMinimum ? DiscountAsked : Math.Min(DiscountAsked, Math.Max(0, Subtotal - book.MinimumCharge));
        if (DiscountGiven > 0)
        {
            rest.Add(new EstimateLine(new("discount"), LineCategory.Discount, "discount", discount.Reason, 1, LineUnit.Job, -DiscountGiven,
                currency)
            {
                HostCode = book.HostCodeOf("discount"),
            });
        }
    }

    // Direct costs carry overhead, warranty, profit and the top-up to the minimum charge. Where nothing costs anything a line of its own
    // does.
    private void Divide()
    {
        decimal charged = Subtotal - costs.FixedPrice;
        if (costs.DirectCost > 0)
        {
            decimal[] parts = Apportionment.Of(charged, [.. costs.Direct.ConvertAll(line => line.Cost)], currency.SmallestAmount);
            for (int i = 0; i < parts.Length; i++)
            {
                sold.Add(costs.Direct[i] with { Price = parts[i] });
            }
        }
        else
        {
            sold.AddRange(costs.Direct);
            if (charged != 0)
            {
                sold.Add(new EstimateLine(new("margin"), LineCategory.Margin, "margin", "overhead and profit", 1, LineUnit.Job, 0, currency)
                {
                    Price = charged,
                    HostCode = book.HostCodeOf("margin"),
                    Taxes = book.TaxesOn(LineCategory.Margin, request.Exemption),
                });
            }
        }

        sold.AddRange(costs.Fixed);
    }

    // A discount lowers the taxed price of every line in proportion.
    private void AddTaxes()
    {
        if (book.Taxes.Count == 0)
        {
            return;
        }

        decimal[] net = [.. sold.ConvertAll(line => line.Price)];
        if (DiscountGiven > 0)
        {
            decimal[] taken = Apportionment.Of(DiscountGiven, net, currency.SmallestAmount);
            for (int i = 0; i < net.Length; i++)
            {
                net[i] -= taken[i];
            }
        }

        foreach (TaxRate rate in book.Taxes)
        {
            TaxExemption? exempt = request.Exemption is TaxExemption exemption && exemption.Covers(rate) ? exemption : null;
            decimal taxed = 0;
            decimal amount = 0;
            for (int i = 0; i < net.Length; i++)
            {
                if (rate.AppliesTo(sold[i].Category) && net[i] != 0)
                {
                    taxed += net[i];
                    if (book.TaxRounding == TaxRounding.PerLine && exempt is null)
                    {
                        amount += AddTax(rate, "tax/" + rate.Code, sold[i].Id, net[i]);
                    }
                }
            }

            if (book.TaxRounding == TaxRounding.OnSum && exempt is null)
            {
                amount = AddTax(rate, "tax/" + rate.Code, null, taxed);
            }

            taxes.Add(new TaxAmount(rate, taxed, amount, exempt, currency));
            Tax += amount;
        }
    }

    private decimal AddTax(TaxRate rate, string item, string? taxedLine, decimal taxed)
    {
        LineKey key = taxedLine is null ? new(item) : LineKey.Of(item, taxedLine);
        EstimateLine line = new(key, LineCategory.Tax, rate.Code, rate.Name, taxed, LineUnit.Money, rate.Fraction, currency)
        {
            HostCode = book.HostCodeOf(item),
        };
        if (line.Price != 0)
        {
            rest.Add(line);
        }

        return line.Price;
    }
}
