using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>The cost lines of a job and why some have no price.</summary>
internal sealed class PricedCosts
{
    private const string TooMuch = "more than 1000000000, the largest amount that is reckoned with";

    private readonly PriceBook book;
    private readonly List<EstimateLine> fixedCosts = [];
    private decimal labourHours;
    private decimal spreadCost;

    public PricedCosts(PriceBook book, EstimateRequest request)
    {
        this.book = book;
        Direct = new(request.Labour.Lines.Count + request.PaidTime.Count + request.Materials.Count + request.Options.Count + 3);
        AddLabour(request);
        AddMaterials(request.Materials);
        AddCounted("consumables", LineCategory.Consumables, "C-01", request.Fixtures, "fixture", book.ConsumablesPerFixture);
        AddCounted("travel", LineCategory.Travel, "T-01", request.Trips, "trip", book.TravelPerTrip);
        AddCounted("waste", LineCategory.Waste, "D-01", 1, "job", book.DisposalPerJob);
        AddOptions(request.Options);
        AddOverhead(request.WarrantyReserve);
        Cost = DirectCost + OptionCost + spreadCost;
        if (Cost > Money.Largest)
        {
            Gaps.Add(new PriceGap("cost", "A-06", "cost of the job", TooMuch));
        }

        SetPrice(request);
    }

    public List<PriceGap> Gaps { get; } = [];

    public List<KitPurchase> Purchases { get; } = [];

    /// <summary>Cost lines that the customer sees at a higher rate.</summary>
    public List<EstimateLine> Direct { get; }

    /// <summary>Overhead and warranty.</summary>
    public List<EstimateLine> Spread { get; } = [];

    /// <summary>Options as sold at their fixed price.</summary>
    public List<EstimateLine> FixedPrices { get; } = [];

    public decimal DirectCost { get; private set; }

    /// <summary>Every cost line together.</summary>
    public decimal Cost { get; }

    /// <summary>Cost that the target margin is put on.</summary>
    public decimal MarkedUp => DirectCost + spreadCost;

    /// <summary>Cost of options at a fixed price and warranty: what neither hours nor materials change.</summary>
    public decimal FixedCost => OptionCost + Warranty;

    public decimal FixedPrice { get; private set; }

    /// <summary>What is charged for everything without a fixed price.</summary>
    public decimal AtMargin { get; private set; }

    /// <summary>The least net price that leaves the target margin over every cost; for a request that holds the margin.</summary>
    public decimal HeldNet { get; private set; }

    private decimal OptionCost { get; set; }

    private decimal Warranty { get; set; }

    /// <summary>What an hour at a wage costs the shop.</summary>
    public static decimal Burdened(PriceBook book, decimal wage) => Money.Round(wage * (1 + book.BurdenFraction));

    /// <summary>Every cost line: direct, options at a fixed price, then what is spread over the customer's lines.</summary>
    public ValueList<EstimateLine> Lines() => new([.. Direct, .. fixedCosts, .. Spread]);

    private void AddLabour(EstimateRequest request)
    {
        foreach (PricedLabour labour in PricedLabour.Of(request.Labour.Lines))
        {
            labourHours += labour.Hours;
            AddHours(labour.Id, labour.Code, labour.Description, labour.Hours, labour.Wage);
        }

        for (int i = 0; i < request.PaidTime.Count; i++)
        {
            PaidTime paid = request.PaidTime[i];
            labourHours += paid.IsPremium ? 0 : Money.Round(paid.Hours);
            AddHours("paid-time/" + paid.Id + (paid.Worker is null ? string.Empty : "/" + paid.Worker), Numbered("P-", i + 1), paid.Description, Money.Round(paid.Hours), paid.Wage);
        }
    }

    private void AddHours(string id, string code, string description, decimal hours, decimal? wage)
    {
        if ((wage ?? book.LabourRate) is decimal known)
        {
            AddDirect(Line(id, LineCategory.Labour, code, description, hours, "h", Burdened(book, known)));
        }
        else
        {
            Gaps.Add(new PriceGap(id, code, description, "no labour rate in the price book (LabourRate)"));
        }
    }

    private void AddMaterials(IReadOnlyList<MaterialNeed> needs)
    {
        List<MaterialNeed> items = MaterialNeed.Joined(needs);
        for (int i = 0; i < items.Count; i++)
        {
            AddMaterial(items, i, Numbered("M-", i + 1));
        }
    }

    private void AddMaterial(List<MaterialNeed> needs, int at, string code)
    {
        MaterialNeed need = needs[at];
        List<MaterialPrice> prices = [];
        for (int i = 0; i < book.Materials.Count; i++)
        {
            if (book.Materials[i].Item == need.Item)
            {
                prices.Add(book.Materials[i]);
            }
        }

        string id = "material/" + need.Item;
        KitOffer offer = new(prices, need.Amount.Dimension, need.KilogramsPerCubicMeter);
        if ((prices.Count == 0 ? "no price of it in the price book" : offer.Refusal(need.Amount.Si)) is string missing)
        {
            // An item that is needed by several dimensions may lack a price for one of them.
            bool again = needs.FindIndex(other => other.Item == need.Item) < at;
            string dimension = again ? "/" + need.Amount.Dimension.ToString("G").ToLowerInvariant() : string.Empty;
            Gaps.Add(new PriceGap(id + dimension, code, need.Name, missing));
            return;
        }

        KitPurchase purchase = new(need.Amount.Si, new ValueList<MaterialPrice>(prices), offer, need);
        Purchases.Add(purchase);
        foreach (PurchaseLine line in purchase.Lines)
        {
            string unit = line.Unit.Symbol();
            AddDirect(Line(id + "/" + line.Key, LineCategory.Material, code, line.Description, line.Quantity, unit, line.Rate));
        }
    }

    private void AddCounted(string id, LineCategory category, string code, int count, string unit, decimal? rate)
    {
        if (count == 0)
        {
            return;
        }

        if (rate is decimal known)
        {
            AddDirect(Line(id, category, code, What(category), count, unit, known));
        }
        else
        {
            string property = category switch
            {
                LineCategory.Consumables => nameof(book.ConsumablesPerFixture),
                LineCategory.Travel => nameof(book.TravelPerTrip),
                _ => nameof(book.DisposalPerJob),
            };
            Gaps.Add(new PriceGap(id, code, What(category), property + " is not given in the price book; 0 if it costs nothing"));
        }
    }

    private void AddOptions(IReadOnlyList<OptionOrder> orders)
    {
        foreach (OrderedOption order in OrderedOption.Of(orders))
        {
            OptionPrice? option = book.Find(order.Code);
            if (option is null)
            {
                Gaps.Add(new PriceGap(order.Id, order.Code, "option", "no such option in the price book"));
            }
            else if (option.Price is not decimal price)
            {
                AddDirect(Sold(order, option, option.Cost));
            }
            else if (Sold(order, option, option.Cost) is EstimateLine cost && Sold(order, option, price) is EstimateLine sold)
            {
                fixedCosts.Add(cost);
                FixedPrices.Add(sold);
                OptionCost += cost.Amount;
                FixedPrice += sold.Amount;
            }
        }
    }

    private void AddOverhead(decimal reserve)
    {
        if (book.OverheadPerHour > 0)
        {
            AddSpread("overhead/hours", LineCategory.Overhead, "O-01", "overhead by labour hours", labourHours, "h", book.OverheadPerHour);
        }

        if (book.OverheadFraction > 0)
        {
            decimal share = book.OverheadFraction;
            AddSpread("overhead/cost", LineCategory.Overhead, "O-02", "overhead on direct cost", DirectCost, book.Currency, share);
        }

        if (reserve > 0)
        {
            AddSpread("warranty", LineCategory.Warranty, "W-01", "warranty reserve", 1, "job", reserve);
            Warranty = reserve;
        }
    }

    private void AddDirect(EstimateLine? line)
    {
        if (line is not null)
        {
            Direct.Add(line);
            DirectCost += line.Amount;
        }
    }

    private void AddSpread(string id, LineCategory category, string code, string description, decimal quantity, string unit, decimal rate)
    {
        if (Line(id, category, code, description, quantity, unit, rate) is EstimateLine line)
        {
            Spread.Add(line);
            spreadCost += line.Amount;
        }
    }

    private EstimateLine? Sold(OrderedOption order, OptionPrice option, decimal rate)
    {
        EstimateLine? line = Line(order.Id, LineCategory.Option, option.Code, option.Description, order.Quantity, option.Unit, rate);
        return order.Fixture is null || line is null ? line : line with { Fixture = order.Fixture };
    }

    private EstimateLine? Line(
        string id, LineCategory category, string code, string description, decimal quantity, string unit, decimal rate)
    {
        if (quantity > Money.Largest || rate > Money.Largest)
        {
            Gaps.Add(new PriceGap(id, code, description, (quantity > Money.Largest ? "quantity of " : "rate of ") + TooMuch));
            return null;
        }

        return new EstimateLine(id, category, code, description, quantity, unit, rate);
    }

    // To hold the margin after discount, with amounts in cents: the least net price n is cost / (1 − margin) rounded up, and the least
    // subtotal s with s − round(s d) = n is ⌊(n − ½)/(1 − d)⌋ + 1.
    private void SetPrice(EstimateRequest request)
    {
        if (request.HoldMargin && request.DiscountFraction == 1)
        {
            Gaps.Add(new PriceGap("discount", "A-03", "discount", "a discount of 100 % leaves nothing to hold a margin with"));
        }

        if (Gaps.Count > 0)
        {
            return;
        }

        if (request.HoldMargin)
        {
            HeldNet = Math.Ceiling(Cost / (1 - book.TargetMargin.Fraction) * 100) / 100;
            decimal subtotal = HeldNet > Money.Largest
                ? HeldNet
                : (Math.Floor(((HeldNet * 100) - 0.5m) / (1 - request.DiscountFraction)) + 1) / 100;
            AtMargin = Math.Max(0, subtotal - FixedPrice);
        }
        else
        {
            AtMargin = book.TargetMargin.PriceFor(MarkedUp);
        }

        if (AtMargin + FixedPrice > Money.Largest)
        {
            string margin = book.TargetMargin.Fraction > 0 ? " at a " + book.TargetMargin : string.Empty;
            Gaps.Add(new PriceGap("price", "A-07", "price of the job" + margin, TooMuch));
        }
    }

    private static string What(LineCategory category) => category switch
    {
        LineCategory.Consumables => "consumables",
        LineCategory.Travel => "travel",
        _ => "waste disposal",
    };

    private static string Numbered(string prefix, int number) => prefix + Figures.Fixed(number, 0).PadLeft(2, '0');
}
