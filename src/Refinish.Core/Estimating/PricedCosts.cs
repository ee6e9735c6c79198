using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>The cost lines of a job and what the price book lacks for them.</summary>
internal sealed class PricedCosts
{
    private readonly PriceBook book;
    private readonly List<EstimateLine> direct = [];
    private readonly List<EstimateLine> spread = [];
    private readonly List<EstimateLine> fixedCosts = [];
    private readonly List<EstimateLine> fixedPrices = [];
    private decimal labourHours;

    public PricedCosts(PriceBook book, EstimateRequest request)
    {
        this.book = book;
        BurdenedRate = book.LabourRate is decimal wage ? Money.Round(wage * (1 + book.BurdenFraction)) : null;
        AddLabour(request.Labour);
        AddMaterials(request.Materials);
        AddCounted("C-01", "consumables", request.Fixtures, "fixture", book.ConsumablesPerFixture, nameof(book.ConsumablesPerFixture));
        AddCounted("T-01", "travel", request.Trips, "trip", book.TravelPerTrip, nameof(book.TravelPerTrip));
        AddCounted("D-01", "waste disposal", 1, "job", book.DisposalPerJob, nameof(book.DisposalPerJob));
        AddOptions(request.Options);
        AddOverhead(request.WarrantyReserve);
        if (request.HoldMargin && request.DiscountFraction == 1)
        {
            Gaps.Add(new PriceGap("A-03", "discount", "a discount of 100 % leaves nothing to hold a margin with"));
        }
    }

    public decimal? BurdenedRate { get; }

    public List<PriceGap> Gaps { get; } = [];

    public List<KitPurchase> Purchases { get; } = [];

    /// <summary>Every cost line: direct, options at a fixed price, then what is spread over the customer's lines.</summary>
    public IEnumerable<EstimateLine> Lines => direct.Concat(fixedCosts).Concat(spread);

    /// <summary>Cost lines that the customer sees at a higher rate.</summary>
    public IReadOnlyList<EstimateLine> Direct => direct;

    /// <summary>Overhead and warranty.</summary>
    public IReadOnlyList<EstimateLine> Spread => spread;

    /// <summary>Options as sold at their fixed price.</summary>
    public IReadOnlyList<EstimateLine> FixedPrices => fixedPrices;

    public decimal DirectCost => direct.Sum(line => line.Amount);

    /// <summary>Cost that the target margin is put on.</summary>
    public decimal MarkedUp => DirectCost + spread.Sum(line => line.Amount);

    /// <summary>Cost of options at a fixed price and warranty: what neither hours nor materials change.</summary>
    public decimal FixedCost => fixedCosts.Sum(line => line.Amount) + spread.Where(line => line.Code == "W-01").Sum(line => line.Amount);

    public decimal FixedPrice => fixedPrices.Sum(line => line.Amount);

    /// <summary>
    /// What is charged for everything without a fixed price. To hold the margin after discount, with amounts in cents: the least net price n is
    /// cost / (1 − margin) rounded up, and the least subtotal s with s − round(s d) = n is ⌊(n − ½)/(1 − d)⌋ + 1.
    /// </summary>
    public decimal AtMargin(EstimateRequest request)
    {
        if (!request.HoldMargin)
        {
            return book.TargetMargin.PriceFor(MarkedUp);
        }

        decimal subtotal = (Math.Floor(((HeldNet * 100) - 0.5m) / (1 - request.DiscountFraction)) + 1) / 100;
        return Math.Max(0, subtotal - FixedPrice);
    }

    /// <summary>The least net price that leaves the target margin over every cost.</summary>
    public decimal HeldNet => Math.Ceiling(Lines.Sum(line => line.Amount) / (1 - book.TargetMargin.Fraction) * 100) / 100;

    private void AddLabour(LabourEstimate labour)
    {
        foreach (LabourLine line in labour.Lines)
        {
            // Hours are shown, and paid, in hundredths.
            decimal hours = Money.Round(line.HourRange.Mean);
            labourHours += hours;
            if (BurdenedRate is decimal rate)
            {
                direct.Add(new EstimateLine(line.Code, line.Description, hours, "h", rate));
            }
            else
            {
                Gaps.Add(new PriceGap(line.Code, line.Description, "no labour rate in the price book (LabourRate)"));
            }
        }
    }

    private void AddMaterials(IReadOnlyList<MaterialNeed> needs)
    {
        int number = 0;
        foreach (IGrouping<string, MaterialNeed> item in needs.GroupBy(need => need.Item, StringComparer.Ordinal))
        {
            number++;
            string code = "M-" + Figures.Fixed(number, 0).PadLeft(2, '0');
            double volume = item.Sum(need => need.Volume.CubicMeters);
            MaterialPrice[] prices = [.. book.Materials.Where(price => price.Item == item.Key)];
            if (prices.Length == 0)
            {
                Gaps.Add(new PriceGap(code, item.Key, "no kit of it in the price book"));
                continue;
            }

            KitPurchase purchase = new(Volume.FromCubicMeters(volume), prices);
            Purchases.Add(purchase);
            direct.AddRange(purchase.Kits.Select(kit => new EstimateLine(
                code,
                item.Key + ", kit of " + Measure.Capacity.Format(kit.Kit.Size.CubicMeters, DisplayUnits.Si, 4),
                kit.Count,
                "kit",
                kit.Kit.Price)));
        }
    }

    private void AddCounted(string code, string what, int count, string unit, decimal? rate, string property)
    {
        if (count == 0)
        {
            return;
        }

        if (rate is decimal known)
        {
            direct.Add(new EstimateLine(code, what, count, unit, known));
        }
        else
        {
            Gaps.Add(new PriceGap(code, what, property + " is not given in the price book; 0 if it costs nothing"));
        }
    }

    private void AddOptions(IReadOnlyList<OptionOrder> orders)
    {
        foreach (OptionOrder order in orders)
        {
            OptionPrice? option = book.Options.FirstOrDefault(entry => entry.Code == order.Code);
            if (option is null)
            {
                Gaps.Add(new PriceGap(order.Code, "option", "no such option in the price book"));
                continue;
            }

            EstimateLine cost = new(option.Code, option.Description, order.Quantity, option.Unit, option.Cost);
            if (option.Price is decimal price)
            {
                fixedCosts.Add(cost);
                fixedPrices.Add(new EstimateLine(option.Code, option.Description, order.Quantity, option.Unit, price));
            }
            else
            {
                direct.Add(cost);
            }
        }
    }

    private void AddOverhead(decimal reserve)
    {
        if (book.OverheadPerHour > 0)
        {
            spread.Add(new EstimateLine("O-01", "overhead by labour hours", labourHours, "h", book.OverheadPerHour));
        }

        if (book.OverheadFraction > 0)
        {
            spread.Add(new EstimateLine("O-02", "overhead on direct cost", DirectCost, book.Currency, book.OverheadFraction));
        }

        if (reserve > 0)
        {
            spread.Add(new EstimateLine("W-01", "warranty reserve", 1, "job", reserve));
        }
    }
}
