using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>The lines that the customer sees. Each is quantity × rate rounded once, and together they are the total to the cent.</summary>
internal sealed class CustomerLines
{
    private readonly List<EstimateLine> lines;

    public CustomerLines(PricedCosts costs, PriceBook book, EstimateRequest request)
    {
        lines = new(costs.Direct.Count + costs.FixedPrices.Count + 5);
        AddDirect(costs);
        bool isCarried = lines.Count > 0;
        Add(
            isCarried ? "rounding/lines" : "margin",
            isCarried ? LineCategory.Rounding : LineCategory.Margin,
            "A-01",
            isCarried ? "cents that rounding the lines leaves" : "overhead and profit",
            costs.AtMargin - Total);
        foreach (EstimateLine line in costs.FixedPrices)
        {
            Add(line);
        }

        decimal toMinimum = Math.Max(0, Money.Round(book.MinimumCharge) - Total);
        Add("minimum-charge", LineCategory.Margin, "A-02", "up to the minimum charge", toMinimum);
        Subtotal = Total;
        Add("discount", LineCategory.Discount, "A-03", "discount", -Money.Round(Subtotal * request.DiscountFraction));
        Net = Total;
        Tax = Money.Round(Net * book.TaxFraction);
        Add("tax", LineCategory.Tax, "A-04", "sales tax", Tax);
        Add("rounding/cash", LineCategory.Rounding, "A-05", "rounding of the total", Money.RoundTo(Total, book.CashStep) - Total);
    }

    public ValueList<EstimateLine> Lines => new(lines);

    public decimal Subtotal { get; }

    public decimal Net { get; }

    public decimal Tax { get; }

    public decimal Total { get; private set; }

    // Direct costs carry overhead and profit at one factor. Where they are nothing, or so little that a rate would pass all bounds, a line
    // of
    // its own carries them.
    private void AddDirect(PricedCosts costs)
    {
        if (costs.DirectCost == 0)
        {
            return;
        }

        decimal factor = costs.AtMargin / costs.DirectCost;
        foreach (EstimateLine line in costs.Direct)
        {
            decimal rate = Money.Round(line.Rate * factor);
            if (rate > Money.Largest)
            {
                lines.Clear();
                Total = 0;
                return;
            }

            EstimateLine sold = new(line.Id, line.Category, line.Code, line.Description, line.Quantity, line.Unit, rate);
            Add(line.Fixture is null ? sold : sold with { Fixture = line.Fixture });
        }
    }

    private void Add(string id, LineCategory category, string code, string description, decimal amount)
    {
        if (amount != 0)
        {
            Add(new EstimateLine(id, category, code, description, 1, "job", amount));
        }
    }

    private void Add(EstimateLine line)
    {
        lines.Add(line);
        Total += line.Amount;
    }
}
