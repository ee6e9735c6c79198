using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>The lines that the customer sees. Each is quantity × rate rounded once, and together they are the total to the cent.</summary>
internal sealed class CustomerLines
{
    public CustomerLines(PricedCosts costs, PriceBook book, EstimateRequest request, decimal atMargin)
    {
        decimal direct = costs.DirectCost;
        if (direct > 0)
        {
            decimal factor = atMargin / direct;
            Lines.AddRange(costs.Direct.Select(line => new EstimateLine(line.Code, line.Description, line.Quantity, line.Unit, Money.Round(line.Rate * factor))));
        }

        Add("A-01", direct > 0 ? "cents that rounding the lines leaves" : "overhead and profit", atMargin - Sum);
        Lines.AddRange(costs.FixedPrices);
        Add("A-02", "up to the minimum charge", Math.Max(0, Money.Round(book.MinimumCharge) - Sum));
        Subtotal = Sum;
        Add("A-03", "discount", -Money.Round(Subtotal * request.DiscountFraction));
        Net = Sum;
        Tax = Money.Round(Net * book.TaxFraction);
        Add("A-04", "sales tax", Tax);
        Add("A-05", "rounding of the total", Money.RoundTo(Sum, book.CashStep) - Sum);
        Total = Sum;
    }

    public List<EstimateLine> Lines { get; } = [];

    public decimal Subtotal { get; }

    public decimal Net { get; }

    public decimal Tax { get; }

    public decimal Total { get; }

    private decimal Sum => Lines.Sum(line => line.Amount);

    private void Add(string code, string description, decimal amount)
    {
        if (amount != 0)
        {
            Lines.Add(new EstimateLine(code, description, 1, "job", amount));
        }
    }
}
