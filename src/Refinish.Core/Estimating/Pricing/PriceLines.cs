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
        Chain = new PriceChain(costs, book, request);
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

        Subtotal = Chain.Subtotal().Value;
        SetDiscount();
        if (costs.Gaps.Count > 0)
        {
            return;
        }

        Net = Chain.Net().Value;
        Divide();
        AddTaxes();
        Total = Chain.Total(TaxLines).Value;
        if (Total > Money.Largest)
        {
            costs.Gaps.Add(new PriceGap("total", "total", "price of the job with tax", PricedCosts.TooMuch));
            return;
        }

        Payable = Chain.Payable(TaxLines).Value;
        if (Math.Abs(Payable - Total) > Total * MostRounding)
        {
            costs.Gaps.Add(new PriceGap(
                "cash-step", "cash-step", "cash step of " + currency.Text(book.CashStep),
                    "it would round the total of " + currency.Text(Total) + " by more than 1 %"));
        }
    }

    /// <summary>How the amounts follow from the costs.</summary>
    public PriceChain Chain { get; }

    /// <summary>The lines of tax.</summary>
    public List<EstimateLine> TaxLines { get; } = [];

    /// <summary>With everything at its fixed price, before the minimum charge.</summary>
    public decimal AtMargin { get; private set; }

    public decimal Subtotal { get; }

    public decimal DiscountAsked { get; private set; }

    public decimal DiscountGiven { get; private set; }

    public decimal Net { get; }

    public IReadOnlyList<TaxAmount> Taxes => costs.Gaps.Count > 0 ? [] : taxes;

    public decimal Tax { get; private set; }

    public decimal Total { get; }

    public decimal Payable { get; }

    /// <summary>Every line: those of the work with their prices, what they carry, discount and taxes.</summary>
    public ValueList<EstimateLine> Lines => costs.Gaps.Count > 0
        ? new([.. costs.Direct, .. costs.Fixed, .. costs.Spread])
        : new([.. sold, .. costs.Spread, .. rest, .. TaxLines]);

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

    private void SetPrice()
    {
        if (request is { HoldMargin: true, Discount.Fraction: 1 })
        {
            costs.Gaps.Add(new PriceGap("discount", "discount", "discount", "a discount of 100 % leaves nothing to hold a margin with"));
            return;
        }

        // Asked before it is reckoned: a decimal does not hold what a margin near 100 % can make of a cost.
        bool beyond = (request.HoldMargin ? costs.Cost : costs.MarkedUp) > Money.Largest * (1 - book.TargetMargin.Fraction);
        AtMargin = beyond ? 0 : Chain.AtMargin().Value;
        if (beyond || AtMargin > Money.Largest)
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

        DiscountAsked = Chain.Asked().Value;
        if (DiscountAsked > Subtotal)
        {
            costs.Gaps.Add(new PriceGap(
                "discount", "discount", "discount of " + currency.Text(DiscountAsked),
                    "it is more than the price before it, " + currency.Text(Subtotal)));
            return;
        }

        DiscountGiven = Chain.Given().Value;
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
            TaxLines.Add(line);
        }

        return line.Price;
    }
}
