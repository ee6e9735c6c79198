using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>A quote made from an estimate alone. All figures invented; the amounts are worked by hand beside them.</summary>
public class CustomerQuoteTests
{
    private static readonly PriceBook Book = new()
    {
        Currency = Currency.Of("USD"),
        LabourRate = 30m,
        TravelPerTrip = 40m,
        DisposalPerJob = 20m,
        ConsumablesPerFixture = 30m,
        TargetMargin = new Margin(Ratio.FromPercent(50)),
        Options = [new() { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m }],
        Taxes =
        [
            new() { Code = "state", Name = "state sales tax", Rate = Ratio.FromPercent(6.25), Categories = [LineCategory.Material, LineCategory.Consumables] },
            new() { Code = "city", Name = "city tax", Rate = Ratio.FromPercent(2) },
        ],
        HostCodes = [new("option/slip-floor", "7-100")],
    };

    private static readonly QuoteTerms Terms = new()
    {
        Number = "Q-1",
        Discount = Discount.Of(Ratio.FromPercent(10)) with { Reason = "neighbours" },
        Payments =
        [
            PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(10)),
            PaymentStage.OfAmount("start", PaymentDue.AtStart, 200m),
            PaymentStage.OfRest("rest", PaymentDue.AfterCompletion) with { Days = 14 },
        ],
    };

    private static readonly FixtureWeight Tub = new("tub", "bathtub", 3);
    private static readonly FixtureWeight Sink = new("sink", "sink", 1);

    // Direct cost: labour of the tub 2 h, 60; shared 1 h, 30; consumables 60; travel 40; waste 20; plumber 100: 310, sold at 620.
    // At fixed prices: slip-resistant floor 75, hidden rust 60. Subtotal 755.
    private static readonly EstimateRequest Request = new()
    {
        Labour = new LabourEstimate([Hours("L-1", 2) with { Fixture = "tub" }, Hours("L-2", 1)]),
        Materials = [],
        Fixtures = 2,
        Options = [new OptionOrder { Code = "slip-floor", Fixture = "tub" }],
        Extras =
        [
            new ExtraItem { Id = "plumber", Category = LineCategory.Subcontract, Description = "plumber refits the waste", Quantity = 1, Unit = LineUnit.Job, Rate = 100m },
            new ExtraItem { Id = "rust", Category = LineCategory.Allowance, Description = "rust under the overflow", Quantity = 1, Unit = LineUnit.Job, Rate = 60m, UnitPrice = 60m },
        ],
        Discount = Terms.Discount,
    };

    private static LabourTask Hours(string code, double hours) => new() { Standard = new LabourStandard
    {
        Code = code,
        Description = "work " + code,
        Fixed = ThreePoint.Exactly(hours),
        Source = Source.Invented("test"),
    } };

    private static CustomerQuote Quote(PriceBook book, EstimateRequest request, QuoteTerms terms) => new(new PriceEstimate(book, request), [Tub, Sink], terms);

    private static void Balances(CustomerQuote quote)
    {
        Assert.Equal(quote.Subtotal, quote.Items.Sum(item => item.Price));
        Assert.Equal(quote.Discount, quote.Items.Sum(item => item.Discount));
        Assert.Equal(quote.Tax, quote.Items.Sum(item => item.Tax));
        Assert.Equal(quote.Total, quote.Items.Sum(item => item.WithTax));
        Assert.Equal(quote.Net, quote.Subtotal - quote.Discount);
        Assert.Equal(quote.Total, quote.Net + quote.Taxes.Sum(tax => tax.Amount));
        Assert.Equal(quote.Payable, quote.Total + quote.CashRounding);
        Assert.Equal(quote.Total, quote.Fixtures.Sum(fixture => fixture.WithTax) + quote.ForTheJob.Sum(item => item.WithTax));
        if (quote.Terms.Payments.Count > 0)
        {
            Assert.Equal(quote.Payable, quote.Payments.Sum(payment => payment.Amount));
        }

        Assert.Equal(quote.Items.Count(), quote.Items.Select(item => item.Id).Distinct().Count());
        Numbers.CanBeWritten(quote.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: work is sold at 620 - 200 = 420. Own cost of the tub 60 + 30, of the sink 30; shared 90, three parts to one by area: 157.50 and 52.50 of "
        + "210, so 315 and 105. 10 % off each. City 2 % of 679.50 = 13.59; state 6.25 % of consumables at 108 = 6.75, half each, 3.375: the odd cent to the first id, the sink")]
    public void Two_fixtures_an_option_two_extras_a_discount_and_two_taxes()
    {
        CustomerQuote quote = Quote(Book, Request, Terms);
        Assert.Equal((755m, 75.50m, 679.50m, 20.34m, 699.84m, 699.84m), (quote.Subtotal, quote.Discount, quote.Net, quote.Tax, quote.Total, quote.Payable));
        Assert.Equal(
            [
                ("fixture/tub", 315m, 31.50m, 3.37m + 5.67m), ("option/slip-floor/tub", 75m, 7.50m, 1.35m), ("fixture/sink", 105m, 10.50m, 3.38m + 1.89m),
                ("extra/plumber", 200m, 20m, 3.60m), ("extra/rust", 60m, 6m, 1.08m),
            ],
            quote.Items.Select(item => (item.Id, item.Price, item.Discount, item.Tax)));
        Assert.Equal([292.54m, 68.85m, 99.77m, 183.60m, 55.08m], quote.Items.Select(item => item.WithTax));
        Assert.Equal((390m, 361.39m, 10.39m), (quote.Fixtures[0].Price, quote.Fixtures[0].WithTax, quote.Fixtures[0].Tax));
        Assert.Equal("7-100", quote.Fixtures[0].Extras[0].HostCode);
        Assert.Equal([69.98m, 200m, 429.86m], quote.Payments.Select(payment => payment.Amount));
        Balances(quote);
    }

    [Fact]
    [Evidence(Basis.Contract, "the customer reads no hours, wages, materials, trips or costs, in text and items")]
    public void Nothing_of_the_shop_is_told()
    {
        CustomerQuote quote = Quote(Book, Request, Terms);
        string text = quote.ToText(DisplayUnits.Si);
        foreach (string word in (string[])["L-1", "work ", "consumables", "travel", "waste disposal", "margin", "overhead", "30.00", "310", " h "])
        {
            Assert.DoesNotContain(word, text, StringComparison.Ordinal);
        }

        Assert.Equal([QuoteItemKind.Fixture, QuoteItemKind.Option, QuoteItemKind.Fixture, QuoteItemKind.Extra, QuoteItemKind.Extra], quote.Items.Select(item => item.Kind));
        Assert.All(quote.Items, item => Assert.False(item.Id.StartsWith("labour", StringComparison.Ordinal) || item.Id.StartsWith("material", StringComparison.Ordinal)));
    }

    [Fact]
    [Evidence(Basis.Contract, "the text carries the amounts of the quote, net or with tax as agreed")]
    public void The_text_shows_prices_as_agreed()
    {
        string[] net = Quote(Book, Request, Terms).ToText(DisplayUnits.Si).Split('\n');
        Assert.Equal("Q-1", net[0]);
        Assert.Equal("amounts in USD; items before discount and tax", net[1]);
        Assert.Equal(["bathtub", "315.00"], net[2].Split("  ", StringSplitOptions.RemoveEmptyEntries).Select(part => part.Trim()));
        Assert.Contains(net, line => line.StartsWith("neighbours ", StringComparison.Ordinal) && line.EndsWith(" -75.50", StringComparison.Ordinal));
        Assert.Contains(net, line => line.StartsWith("city tax, 2 % ", StringComparison.Ordinal) && line.EndsWith(" 13.59", StringComparison.Ordinal));
        Assert.Contains(net, line => line.StartsWith("pay 14 days after completion: rest ", StringComparison.Ordinal) && line.EndsWith(" 429.86", StringComparison.Ordinal));
        string[] gross = Quote(Book, Request, Terms with { PricesShown = PricesShown.WithTax }).ToText(DisplayUnits.Si).Split('\n');
        Assert.Contains(gross, line => line.StartsWith("bathtub ", StringComparison.Ordinal) && line.EndsWith(" 292.54", StringComparison.Ordinal));
        Assert.Contains(gross, line => line.StartsWith("  state sales tax, 6.25 % in it ", StringComparison.Ordinal) && line.EndsWith(" 6.75", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "no tax: no word of it, no subtotal that only repeats the total; no number: no word of that")]
    public void What_is_not_there_is_not_said()
    {
        CustomerQuote quote = Quote(Book with { Taxes = [] }, Request with { Discount = null }, QuoteTerms.None);
        string[] text = quote.ToText(DisplayUnits.Si).Split('\n');
        Assert.Equal(["quote", "amounts in USD"], text.Take(2));
        Assert.Contains(text, line => line.StartsWith("total ", StringComparison.Ordinal) && line.EndsWith(" 755.00", StringComparison.Ordinal));
        Assert.DoesNotContain(text, line => line.Contains("tax") || line.Contains("subtotal") || line.Contains("number"));
        Assert.Equal("quote: 755.00 USD", quote.ToString());
        Assert.Equal("slip-resistant floor", quote.Fixtures[0].Extras[0].Label);
        Assert.Equal("slip-resistant floor, 3 each", Quote(Book, Request with { Options = [new() { Code = "slip-floor", Quantity = 3, Fixture = "tub" }] }, Terms).Fixtures[0].Extras[0].Label);
        Assert.Equal("revision 2", (QuoteTerms.None with { Revision = "2" }).ToString());
        Assert.Equal("amounts in USD; items before discount", Quote(Book with { Taxes = [] }, Request, Terms).ToText(DisplayUnits.Si).Split('\n')[1]);
        Assert.Equal("amounts in USD; each item with its tax", Quote(Book, Request with { Discount = null }, new QuoteTerms { PricesShown = PricesShown.WithTax }).ToText(DisplayUnits.Si).Split('\n')[1]);
    }

    [Fact]
    [Evidence(Basis.Contract, "long names go on below themselves; every amount ends in the same column, and no letter of a name is lost")]
    public void Long_names_leave_the_amounts_in_their_column()
    {
        const string Long = "bathtub of the guests on the second floor, enamelled, of the broad rim, mended a second time";
        string endless = new('q', 120);
        CustomerQuote quote = new(
            new PriceEstimate(Book with { Options = [new() { Code = "slip-floor", Description = endless, Unit = LineUnit.Each, Cost = 6m, Price = 75m }] }, Request),
            [new FixtureWeight("tub", Long, 3), Sink], Terms);
        string[] text = quote.ToText(DisplayUnits.Si).Split('\n');
        string[] amounts = [.. text.Skip(2).Where(line => line.Length > 3 && line[line.Length - 3] == '.' && char.IsDigit(line[line.Length - 1]))];

        // Five items; subtotal, discount, net, two taxes, total; three payments.
        Assert.Equal(14, amounts.Length);
        Assert.All(amounts, line => Assert.Equal(61, line.Length));
        Assert.All(text, line => Assert.True(line.Length <= 61, line));
        string[] tub = [.. text.SkipWhile(line => !line.StartsWith("bathtub", StringComparison.Ordinal)).TakeWhile(line => !line.StartsWith("  q", StringComparison.Ordinal))];
        Assert.Equal(Long, string.Join(" ", tub.Select(line => line.Length > 48 ? line.Substring(0, 48).Trim() : line.Trim())));
        Assert.Equal(120, text.Sum(line => line.Count(letter => letter == 'q')));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: of 755 the minimum charge of 700 leaves 55 to give away, 20.50 less than the 75.50 asked for; unless the terms let it yield")]
    public void The_minimum_charge_cuts_the_discount()
    {
        CustomerQuote cut = Quote(Book with { MinimumCharge = 700m }, Request, Terms);
        Assert.Equal((55m, 20.50m, 700m), (cut.Discount, cut.DiscountWithheld, cut.Net));
        Assert.Contains("The minimum charge takes 20.50 USD off the discount.", cut.ToText(DisplayUnits.Si), StringComparison.Ordinal);
        Balances(cut);
        Discount yields = Terms.Discount! with { MayUndercutMinimum = true };
        CustomerQuote whole = Quote(Book with { MinimumCharge = 700m }, Request with { Discount = yields }, Terms with { Discount = yields });
        Assert.Equal((75.50m, 0m), (whole.Discount, whole.DiscountWithheld));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a customer exempt from the state's tax pays the city's 13.59 only; the reason stands on the quote; and one exempt from all pays 679.50")]
    public void An_exempt_customer()
    {
        TaxExemption resale = new() { Reason = "resale certificate 12 (invented)", Codes = ["state"] };
        CustomerQuote quote = Quote(Book, Request with { Exemption = resale }, Terms with { Exemption = resale });
        Assert.Equal(693.09m, quote.Total);
        Assert.Equal([(0m, true), (13.59m, false)], quote.Taxes.Select(tax => (tax.Amount, tax.Exemption is not null)));
        Assert.Contains("state sales tax, 6.25 %: not charged, resale certificate 12 (invented)\n", quote.ToText(DisplayUnits.Si), StringComparison.Ordinal);
        Balances(quote);
        TaxExemption all = new() { Reason = "public body (invented)" };
        Assert.Equal(679.50m, Quote(Book, Request with { Exemption = all }, Terms with { Exemption = all }).Total);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand, in yen at a margin of a half: 310 of cost and 420 at fixed prices of 75 and 60 as above, all whole; 10 % of 755 is 75.5, rounded to 76; "
        + "consumption tax of 10 % of 679 is 67.9, rounded to 68: 747, paid as 750 with coins of 10")]
    public void Yen_with_coins_of_ten()
    {
        PriceBook yen = Book with { Currency = Currency.Of("JPY"), CashStep = 10m, Taxes = [new() { Code = "ct", Name = "consumption tax", Rate = Ratio.FromPercent(10) }] };
        CustomerQuote quote = Quote(yen, Request, Terms);
        Assert.Equal((76m, 679m, 68m, 747m, 3m, 750m), (quote.Discount, quote.Net, quote.Tax, quote.Total, quote.CashRounding, quote.Payable));
        Assert.Equal([70m, 200m, 480m], quote.Payments.Select(payment => payment.Amount));
        Balances(quote);
    }

    [Fact]
    [Evidence(Basis.Identity, "the order of fixtures, options and extras changes no key and no amount")]
    public void Order_changes_nothing()
    {
        CustomerQuote one = Quote(Book, Request, Terms);
        CustomerQuote other = new(
            new PriceEstimate(Book, Request with { Extras = [.. Enumerable.Reverse(Request.Extras)], Labour = new LabourEstimate([Hours("L-2", 1), Hours("L-1", 2) with { Fixture = "tub" }]) }), [Sink, Tub], Terms);
        Assert.Equal(["sink", "tub"], other.Fixtures.Select(fixture => fixture.Id));
        Assert.Equal(
            one.Items.OrderBy(item => item.Id, StringComparer.Ordinal).Select(item => (item.Id, item.Price, item.Discount, item.Tax)),
            other.Items.OrderBy(item => item.Id, StringComparer.Ordinal).Select(item => (item.Id, item.Price, item.Discount, item.Tax)));
    }

    [Fact]
    [Evidence(Basis.Contract, "what was made with other terms, is not complete, or names a fixture that is not listed is refused")]
    public void What_does_not_belong_together_is_refused()
    {
        PriceEstimate estimate = new(Book, Request);
        Assert.Equal("terms", Assert.Throws<ArgumentException>(() => _ = new CustomerQuote(estimate, [Tub, Sink], QuoteTerms.None)).ParamName);
        Assert.Equal("terms", Assert.Throws<ArgumentException>(() => _ = new CustomerQuote(estimate, [Tub, Sink], Terms with { HoldMargin = true })).ParamName);
        Assert.Equal("fixtures", Assert.Throws<ArgumentException>(() => _ = new CustomerQuote(estimate, [Sink], Terms)).ParamName);
        Assert.Equal("fixtures", Assert.Throws<ArgumentException>(() => _ = new CustomerQuote(estimate, [], Terms)).ParamName);
        Assert.Equal("fixtures", Assert.Throws<ArgumentException>(() => _ = new CustomerQuote(estimate, [Tub, Tub], Terms)).ParamName);
        PriceEstimate gap = new(Book with { LabourRate = null }, Request);
        Assert.Equal("price", Assert.Throws<ArgumentException>(() => _ = new CustomerQuote(gap, [Tub, Sink], Terms)).ParamName);
        QuoteTerms much = Terms with { Payments = [PaymentStage.OfAmount("a", PaymentDue.OnAcceptance, 700m), PaymentStage.OfRest("rest", PaymentDue.OnCompletion)] };
        ArgumentException error = Assert.Throws<ArgumentException>(() => _ = new CustomerQuote(estimate, [Tub, Sink], much));
        Assert.Contains("at most 699.84 USD", error.Message, StringComparison.Ordinal);
    }
}
