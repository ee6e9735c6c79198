using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>The cost lines of a job and why some have no price.</summary>
internal sealed class PricedCosts
{
    public const string TooMuch = "more than " + Money.LargestInWords + ", the largest amount that is reckoned with";

    private static readonly Source Book = Source.Supplied("price book");

    private readonly PriceBook book;
    private readonly EstimateRequest request;
    private readonly Currency currency;
    private decimal labourHours;
    private decimal warranty;

    public PricedCosts(PriceBook book, EstimateRequest request)
    {
        this.book = book;
        this.request = request;
        currency = book.Currency;
        Direct = new(request.Labour.Lines.Count + request.PaidTime.Count + request.Materials.Count + request.Options.Count
            + request.Extras.Count + 3);
        AddLabour();
        AddMaterials();
        AddCounted("consumables", LineCategory.Consumables, "consumables", request.Fixtures, LineUnit.Fixture, book.ConsumablesPerFixture,
            nameof(book.ConsumablesPerFixture));
        AddCounted("travel", LineCategory.Travel, "travel", request.Trips, LineUnit.Trip, book.TravelPerTrip, nameof(book.TravelPerTrip));
        AddCounted("waste", LineCategory.Waste, "waste disposal", 1, LineUnit.Job, book.DisposalPerJob, nameof(book.DisposalPerJob));
        AddOptions();
        AddExtras();
        AddOverhead();
        Cost = DirectCost + FixedPriceCost + SpreadCost;
        if (Cost > Money.Largest)
        {
            Gaps.Add(new PriceGap("cost", "cost", "cost of the job", TooMuch));
        }
    }

    public List<PriceGap> Gaps { get; } = [];

    public List<KitPurchase> Purchases { get; } = [];

    /// <summary>Cost lines whose price follows from their cost.</summary>
    public List<EstimateLine> Direct { get; }

    /// <summary>Cost lines with a fixed price.</summary>
    public List<EstimateLine> Fixed { get; } = [];

    /// <summary>Overhead and warranty, whose price the direct lines carry.</summary>
    public List<EstimateLine> Spread { get; } = [];

    public decimal DirectCost { get; private set; }

    public decimal FixedPriceCost { get; private set; }

    public decimal SpreadCost { get; private set; }

    /// <summary>What is charged at fixed prices.</summary>
    public decimal FixedPrice { get; private set; }

    /// <summary>Every cost line together.</summary>
    public decimal Cost { get; }

    /// <summary>Cost that the target margin is put on.</summary>
    public decimal MarkedUp => DirectCost + SpreadCost;

    /// <summary>Cost of what has a fixed price, and warranty: what neither hours nor materials change.</summary>
    public decimal FixedCost => FixedPriceCost + warranty;

    /// <summary>What an hour at a wage costs the shop.</summary>
    public static decimal Burdened(PriceBook book, decimal wage) => Burdened(book, wage, null).Value;

    private static Amount Burdened(PriceBook book, Amount wage, Trace? t) =>
        Amount.Round(wage * (1 + t.Money("β", book.BurdenFraction, Measure.Percent)), book.Currency);

    /// <summary>Notes what an hour costs at the wage of the price book and at each other wage that is paid.</summary>
    public void NoteWages(Trace t)
    {
        Measure money = Measure.Money(currency);
        IEnumerable<decimal?> wages =
            [book.LabourRate, .. request.Labour.Lines.Select(line => line.Task.Wage), .. request.PaidTime.Select(paid => paid.Wage)];
        string symbol = "w_b";
        int number = 1;
        foreach (decimal wage in wages.OfType<decimal>().Distinct())
        {
            string name = number == 1 && book.LabourRate is not null
                ? "hourly cost of labour with burden"
                : "hourly cost with burden at a wage of " + money.Format((double)wage);
            t.Step(name, symbol, money, Book, Burdened(book, t.Money("w", wage, money), t));
            number++;
            symbol = "w_b" + Figures.Fixed(number, 0);
        }
    }

    private void AddLabour()
    {
        foreach (PricedLabour labour in PricedLabour.Of(request))
        {
            labourHours += labour.IsPremium ? 0 : labour.Hours;
            if ((labour.Wage ?? book.LabourRate) is decimal known)
            {
                decimal rate = Burdened(book, known);
                EstimateLine? line =
                    Line(labour.Key, LineCategory.Labour, labour.Code, labour.Description, labour.Hours, LineUnit.Hour, rate);
                AddDirect(line is null ? null : line with { Worker = labour.Worker });
            }
            else
            {
                Gaps.Add(new PriceGap(labour.Key.Id, labour.Code, labour.Description, "no labour rate in the price book (LabourRate)"));
            }
        }
    }

    private void AddMaterials()
    {
        List<MaterialNeed> items = MaterialNeed.Joined(request.Materials);
        for (int i = 0; i < items.Count; i++)
        {
            AddMaterial(items, i);
        }
    }

    private void AddMaterial(List<MaterialNeed> needs, int at)
    {
        MaterialNeed need = needs[at];
        ValueList<MaterialPrice> prices = new(book.Materials.Where(price => price.Item == need.Item));
        string id = "material/" + need.Item;
        KitOffer offer = new(prices, need.Amount.Dimension, need.KilogramsPerCubicMeter);
        if ((prices.Count == 0 ? "no price of it in the price book" : offer.Refusal(need.Amount.Si)) is string missing)
        {
            // An item that is needed by several dimensions may lack a price for one of them.
            bool again = needs.FindIndex(other => other.Item == need.Item) < at;
            string dimension = again ? "/" + need.Amount.Dimension.ToString("G").ToLowerInvariant() : string.Empty;
            Gaps.Add(new PriceGap(id + dimension, need.Item, need.Name, missing));
            return;
        }

        KitPurchase purchase = new(need.Amount.Si, prices, offer, need);
        Purchases.Add(purchase);
        foreach (PurchaseLine line in purchase.Lines)
        {
            AddDirect(Line(new(id + "/" + line.Key), LineCategory.Material, need.Item, line.Description, line.Quantity, line.Unit,
                line.Rate));
        }
    }

    private void AddCounted(string item, LineCategory category, string what, int count, LineUnit unit, decimal? rate, string property)
    {
        if (count == 0)
        {
            return;
        }

        if (rate is decimal known)
        {
            AddDirect(Line(new(item), category, item, what, count, unit, known));
        }
        else
        {
            Gaps.Add(new PriceGap(item, item, what, property + " is not given in the price book; 0 if it costs nothing"));
        }
    }

    private void AddOptions()
    {
        // All orders of one option for one fixture are one line.
        foreach (IGrouping<(string Code, string? Fixture), OptionOrder> order in request.Options.GroupBy(one => (one.Code, one.Fixture)))
        {
            LineKey key = new("option/" + order.Key.Code, order.Key.Fixture);
            if (book.Find(order.Key.Code) is OptionPrice option)
            {
                decimal quantity = order.Sum(one => one.Quantity);
                AddSold(Line(key, LineCategory.Option, option.Code, option.Description, quantity, option.Unit, option.Cost), option.Price);
            }
            else
            {
                Gaps.Add(new PriceGap(key.Id, order.Key.Code, "option", "no such option in the price book"));
            }
        }
    }

    private void AddExtras()
    {
        foreach (ExtraItem extra in request.Extras)
        {
            LineKey key = new("extra/" + extra.Id, extra.Fixture, extra.Room);
            AddSold(Line(key, extra.Category, extra.Id, extra.Description, extra.Quantity, extra.Unit, extra.Rate), extra.UnitPrice);
        }
    }

    private void AddSold(EstimateLine? line, decimal? unitPrice)
    {
        if (line is null || unitPrice is not decimal each)
        {
            AddDirect(line);
        }
        else if (IsWhole(each, line.Id, line.Code, "fixed price"))
        {
            line = line with { Price = currency.Round(line.Quantity * each), HasFixedPrice = true };
            Fixed.Add(line);
            FixedPriceCost += line.Cost;
            FixedPrice += line.Price;
        }
    }

    private void AddOverhead()
    {
        if (book.OverheadPerHour > 0)
        {
            AddSpread(Line(new("overhead/hours"), LineCategory.Overhead, "overhead", "overhead by labour hours", labourHours,
                LineUnit.Hour, book.OverheadPerHour));
        }

        if (book.OverheadFraction > 0)
        {
            AddSpread(Line(new("overhead/cost"), LineCategory.Overhead, "overhead", "overhead on direct cost", DirectCost, LineUnit.Money,
                book.OverheadFraction));
        }

        if (request.WarrantyReserve > 0 && IsWhole(request.WarrantyReserve, "warranty", "warranty", "warranty reserve"))
        {
            AddSpread(Line(new("warranty"), LineCategory.Warranty, "warranty", "warranty reserve", 1, LineUnit.Job,
                request.WarrantyReserve));
            warranty = request.WarrantyReserve;
        }
    }

    private void AddDirect(EstimateLine? line)
    {
        if (line is not null)
        {
            Direct.Add(line);
            DirectCost += line.Cost;
        }
    }

    private void AddSpread(EstimateLine? line)
    {
        if (line is not null)
        {
            Spread.Add(line);
            SpreadCost += line.Cost;
        }
    }

    private bool IsWhole(decimal amount, string id, string code, string what)
    {
        if (currency.Fits(amount))
        {
            return true;
        }

        Gaps.Add(PriceGap.Decimals(id, code, what, amount, currency));
        return false;
    }

    private EstimateLine? Line(LineKey key, LineCategory category, string code, string description, decimal quantity, LineUnit unit,
        decimal rate)
    {
        if (quantity > Money.Largest || rate > Money.Largest)
        {
            Gaps.Add(new PriceGap(key.Id, code, description, (quantity > Money.Largest ? "quantity of " : "rate of ") + TooMuch));
            return null;
        }

        return new EstimateLine(key, category, code, description, quantity, unit, rate, currency)
        {
            HostCode = book.HostCodeOf(key.Item),
            Taxes = book.TaxesOn(category, request.Exemption),
        };
    }
}
