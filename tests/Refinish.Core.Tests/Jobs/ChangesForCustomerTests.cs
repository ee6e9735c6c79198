using System;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>
/// Two revisions of a quote written down by hand, every number invented. The first: tub 1000, slip floor 85, walls 500, together 1585; 5 %
/// off is 79.25; 10 % of tax on 1505.75 is 150.58; total 1656.33. The second, without the floor: tub 990, walls 510, two metres of trim 40,
/// together 1540; 5 % off is 77; tax on 1463 is 146.30; total 1609.30.
/// </summary>
public class ChangesForCustomerTests
{
    private static readonly FixtureFigures[] Rooms = [new FixtureFigures { Id = "tub", Name = "bathtub" }, new FixtureFigures { Id = "walls", Name = "tile walls" }];

    private static readonly PlanFigures First = new()
    {
        Job = "q-77", Name = "7 Hill Street", Currency = "USD", Total = 1656.33m, Payable = 1656.33m, Cost = 900, Trips = 2, Fixtures = Rooms,
        Lines = [Line("labour/L-1", LineCategory.Labour, 1585m, 900), Line("discount", LineCategory.Discount, -79.25m, 0), Line("tax/vat", LineCategory.Tax, 150.58m, 0)],
        Quote = new QuoteFigures
        {
            Number = "Q-1042", Revision = "1", ValidUntil = new DateTime(2027, 3, 17),
            Items = [Item("fixture/tub", "bathtub", "tub", 1000, 1045), Item("option/slip-floor/tub", "slip-resistant floor", "tub", 85, 88.83m), Item("fixture/walls", "tile walls", "walls", 500, 522.50m)],
            Payments = [new PaymentFigures { Id = "deposit", When = "on acceptance", Amount = 165.63m }, new PaymentFigures { Id = "rest", When = "on completion", Amount = 1490.70m }],
            Cautions = ["C-1"],
        },
    };

    private static readonly PlanFigures Second = First with
    {
        Total = 1609.30m, Payable = 1609.30m, Cost = 880, Trips = 1,
        Lines = [Line("labour/L-1", LineCategory.Labour, 1540m, 880), Line("discount", LineCategory.Discount, -77m, 0), Line("tax/vat", LineCategory.Tax, 146.30m, 0)],
        Cautions = [new PlanRemark("C-1", string.Empty, "A new floor is slippery."), new PlanRemark("C-2", string.Empty, "Solvent burns.")],
        Quote = First.Quote! with
        {
            Revision = "2", ValidUntil = new DateTime(2027, 3, 24),
            Items =
            [
                Item("fixture/walls", "tile walls", "walls", 510, 532.95m), Item("fixture/tub", "bathtub", "tub", 990, 1034.55m),
                Item("extra/trim/tub", "trim", "tub", 40, 41.80m) with { Kind = QuoteItemKind.Extra, Quantity = 2, Unit = "m" },
            ],
            Payments = [new PaymentFigures { Id = "deposit", When = "on acceptance", Amount = 160.93m }, new PaymentFigures { Id = "rest", When = "on completion", Amount = 1448.37m }],
        },
    };

    private static readonly PlanChanges Seen = PlanChanges.Between(First, Second, []).For(LineReader.Customer);

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: the customer lays two quotes side by side and finds each change, item by item, then discount, tax, total, payments")]
    public void Each_change_is_one_that_the_two_quotes_show()
    {
        Assert.Equal(
            [
                "Bathtub: 1000.00 USD became 990.00 USD; price -10.00 USD.",
                "Slip-resistant floor (bathtub): gone; price -85.00 USD.",
                "Trim (bathtub): new, 2 m; price +40.00 USD.",
                "Tile walls: 500.00 USD became 510.00 USD; price +10.00 USD.",
                "Two at once: -79.25 USD became -77.00 USD; price +2.25 USD.",
                "VAT: 150.58 USD became 146.30 USD; price -4.28 USD.",
                "Total with tax: 1656.33 USD became 1609.30 USD.",
                "Deposit on acceptance: 165.63 USD became 160.93 USD.",
                "Rest on completion: 1490.70 USD became 1448.37 USD.",
                "The quote holds until 2027-03-24; before, until 2027-03-17.",
                "Visits: 2 became 1.",
                "New caution: A new floor is slippery.",
            ],
            Seen.Sentences(DisplayUnits.Si));
        Assert.Equal(1609.30m - 1656.33m, Seen.Changes.Sum(change => change.Price));
        Assert.Equal(Seen.Total, Seen.Changes.Sum(change => change.Price));
        Assert.Equal("1656.33 USD became 1609.30 USD, 12 results changed", Seen.ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: where both quotes show prices with tax, the items with tax make the difference, and discount and tax are in them")]
    public void Prices_with_tax_are_compared_with_tax()
    {
        PlanFigures first = First with { Quote = First.Quote! with { PricesShown = PricesShown.WithTax } };
        PlanFigures second = Second with { Quote = Second.Quote! with { PricesShown = PricesShown.WithTax } };
        PlanChanges seen = PlanChanges.Between(first, second, []).For(LineReader.Customer);
        Assert.Equal([("fixture/tub", -10.45m), ("option/slip-floor/tub", -88.83m), ("extra/trim/tub", 41.80m), ("fixture/walls", 10.45m)],
            seen.Changes.Where(change => change.Price != 0).Select(change => (change.Key, change.Price)));
        Assert.Equal(-47.03m, seen.Changes.Sum(change => change.Price));
        Assert.Equal("VAT: 150.58 USD became 146.30 USD; it is in the prices.", seen.Changes.Single(change => change.Subject == ChangeSubject.Tax).ToString());
        Assert.Equal("fixture/tub, -10.00", PlanChanges.Between(first, Second, []).For(LineReader.Customer).Changes.Take(1)
            .Select(change => change.Key + ", " + change.Price.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture)).Single());
    }

    [Fact]
    [Evidence(Basis.Contract, "turned round, every amount changes its sign and every key stays")]
    public void Turned_round_it_is_the_other_way()
    {
        PlanChanges back = PlanChanges.Between(Second, First, []).For(LineReader.Customer);
        Assert.Equal(Seen.Changes.Select(change => (change.Key, change.Price)).OrderBy(change => change.Key, StringComparer.Ordinal),
            back.Changes.Select(change => (change.Key, -change.Price)).OrderBy(change => change.Key, StringComparer.Ordinal));
        Assert.Empty(PlanChanges.Between(First, First, []).For(LineReader.Customer).Changes);
    }

    [Fact]
    [Evidence(Basis.Contract, "an item that somebody changed in a stored quote leaves a difference that no item tells; it is told as such")]
    public void What_no_item_tells_is_told()
    {
        PlanFigures odd = Second with { Quote = Second.Quote! with { Items = [.. Second.Quote.Items.Skip(1)] } };
        PlanChange rest = Assert.Single(PlanChanges.Between(First, odd, []).For(LineReader.Customer).Changes, change => change.Subject == ChangeSubject.Remainder);
        Assert.Equal(510m, rest.Price);
    }

    [Fact]
    [Evidence(Basis.Contract, "two tubs of one name are told apart by their identifiers")]
    public void Two_fixtures_of_one_name_are_told_apart()
    {
        PlanFigures twins = First with { Fixtures = [Rooms[0], new FixtureFigures { Id = "walls", Name = "bathtub" }] };
        PlanChange gone = PlanChanges.Between(twins, twins with { Total = 1571.33m, Quote = twins.Quote! with { Items = [twins.Quote.Items[0], twins.Quote.Items[2]] } }, [])
            .For(LineReader.Customer).Changes[0];
        Assert.Equal("bathtub tub", gone.PlaceName);
    }

    [Fact]
    [Evidence(Basis.Contract, "figures of a quote refuse what they cannot be")]
    public void Bad_figures_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new ItemFigures { Id = string.Empty });
        Assert.Throws<ArgumentException>(() => new PaymentFigures { Id = " " });
        Assert.Throws<ArgumentOutOfRangeException>(() => new QuoteFigures { PricesShown = (PricesShown)9 });
        Assert.Throws<ArgumentException>(() => new QuoteFigures { Items = [null!] });
    }

    private static LineFigures Line(string id, LineCategory category, decimal price, decimal cost) => new()
    {
        Id = id, Category = category, Description = category == LineCategory.Tax ? "VAT" : category == LineCategory.Discount ? "two at once" : "work", Quantity = price, Rate = category == LineCategory.Tax ? 0.1m : 1, Cost = cost, Price = price,
    };

    private static ItemFigures Item(string id, string name, string fixture, decimal price, decimal withTax) => new()
    {
        Id = id, Kind = id.StartsWith("option", StringComparison.Ordinal) ? QuoteItemKind.Option : QuoteItemKind.Fixture, Fixture = fixture, Description = name, Price = price, WithTax = withTax,
    };
}
