using System;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

/// <summary>All figures invented; the amounts are worked by hand beside them.</summary>
public class QuotePictureTests
{
    // 2 h × 30 + 30 + 40 + 20 = 150 of cost, sold at 300 with a margin of a half; an option at 75.
    private static readonly PriceBook Book = new()
    {
        Currency = Currency.Of("USD"), LabourRate = 30m, ConsumablesPerFixture = 30m, TravelPerTrip = 40m, DisposalPerJob = 20m,
        TargetMargin = new(Ratio.FromPercent(50)), Options = [new() { Code = "slip-floor", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m }],
        Taxes = [new() { Code = "vat", Name = "value added tax", Rate = Ratio.FromPercent(20) }],
    };

    private static readonly QuoteTerms Terms = new()
    {
        Discount = Discount.Of(Ratio.FromPercent(10)) with { Reason = "neighbours" },
        Payments = [PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(10)), PaymentStage.OfRest("rest", PaymentDue.OnCompletion)],
    };

    private static readonly EstimateRequest Request = new()
    {
        Labour = new([new LabourTask { Standard = new LabourStandard { Code = "L-1", Description = "work", Fixed = ThreePoint.Exactly(2), Source = Source.Invented("test") } }]),
        Materials = [], Fixtures = 1, Options = [new() { Code = "slip-floor", Fixture = "tub" }], Discount = Terms.Discount,
    };

    private static CustomerQuote Quote(QuoteTerms terms) => new(new PriceEstimate(Book, Request), [new FixtureWeight("tub", "bathtub", 3)], terms);

    private static SvgFile Drawn(CustomerQuote quote, int width) => new(new QuotePicture(quote).ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = width }));

    private static double Number(SvgText text) => double.Parse(text.Words, CultureInfo.InvariantCulture);

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void Bars_go_from_the_fixtures_to_the_total(int width)
    {
        // 300 + 75 = 375; less 37.50 leaves 337.50; 20 % is 67.50: 405.00.
        SvgFile file = Drawn(Quote(Terms), width);
        SvgText[] ticks = [.. file.Texts.Where(text => text.Anchor == "middle" && double.TryParse(text.Words, NumberStyles.Float, CultureInfo.InvariantCulture, out _))];
        Func<double, double> money = SvgFile.Scale(ticks[0].X, Number(ticks[0]), ticks[^1].X, Number(ticks[^1]));
        (double From, double To)[] bars = [.. file.Elements("rect").Where(element => (string?)element.Attribute("fill") == "none" && element.Attribute("stroke") is not null)
            .Select(element => (SvgText.Number(element, "x"), SvgText.Number(element, "width"))).Select(bar => (money(bar.Item1), money(bar.Item1 + bar.Item2)))];
        (double, double)[] expected = [(0, 300), (300, 375), (0, 375), (337.5, 375), (0, 337.5), (337.5, 405), (0, 405)];
        Assert.Equal(expected.Length, bars.Length);
        for (int i = 0; i < bars.Length; i++)
        {
            Assert.Equal(expected[i].Item1, bars[i].From, 1.0);
            Assert.Equal(expected[i].Item2, bars[i].To, 1.0);
        }

        foreach (string amount in (string[])["300.00", "+75.00", "375.00", "-37.50", "337.50", "+67.50", "405.00"])
        {
            Assert.Contains(file.Texts, text => text.Words == amount);
        }
    }

    [Fact]
    public void Prices_with_tax_add_up_to_the_total_and_name_the_tax_in_them()
    {
        // 300 - 30 + 54 = 324; 75 - 7.50 + 13.50 = 81.
        SvgFile file = Drawn(Quote(Terms with { PricesShown = PricesShown.WithTax }), 720);
        foreach (string amount in (string[])["324.00", "+81.00", "405.00"])
        {
            Assert.Contains(file.Texts, text => text.Words == amount);
        }

        Assert.Contains("In the total: value added tax, 20 %, 67.50 USD.", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("after the discount of 37.50 USD before tax", file.AllWords, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void Long_names_are_broken_not_cut_and_what_belongs_to_a_fixture_stands_in_under_it(int width)
    {
        const string Long = "bathtub of the guests on the second floor, enamelled, with the broad rim that was mended a second time";
        EstimateRequest request = Request with
        {
            Options = [new() { Code = "slip-floor", Quantity = 2, Fixture = "tub" }],
            Extras = [new ExtraItem { Id = "skip", Category = LineCategory.Allowance, Description = "clearing away what stood in the room", Quantity = 1, Unit = LineUnit.Job, Rate = 20m, UnitPrice = 40m }],
        };
        QuoteTerms terms = Terms with { Number = "Q-7", Revision = "3", Issued = new DateTimeOffset(2027, 2, 15, 9, 0, 0, TimeSpan.Zero), ValidFor = 30 };
        CustomerQuote quote = new(new PriceEstimate(Book, request), [new FixtureWeight("tub", Long, 3)], terms);
        SvgFile file = Drawn(quote, width);
        Assert.Contains("revision 3, holds until 2027-03-17", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("Q-7", file.AllWords, StringComparison.Ordinal);
        SvgText[] texts = [.. file.Texts];
        Assert.DoesNotContain(texts, text => text.Words.EndsWith('…'));
        SvgText first = texts.Single(text => text.Words.StartsWith("bathtub of", StringComparison.Ordinal));
        SvgText[] name = [.. texts.SkipWhile(text => !ReferenceEquals(text, first)).TakeWhile(text => text.X == first.X && Long.Contains(text.Words, StringComparison.Ordinal))];
        Assert.True(name.Length > 1);
        Assert.Equal(Long, string.Join(" ", name.Select(text => text.Words)));
        SvgText option = texts.Single(text => text.Words.StartsWith("slip-resistant", StringComparison.Ordinal));
        Assert.Contains("slip-resistant floor, 2 each", file.AllWords, StringComparison.Ordinal);
        Assert.True(option.X > first.X);
        SvgText job = texts.Single(text => text.Words.StartsWith("clearing", StringComparison.Ordinal));
        Assert.Equal(first.X, job.X, 0.1);
        Assert.All(texts, text => Assert.InRange(text.Y, 0, file.Height));
    }

    [Fact]
    public void The_customer_sees_no_costs_and_reads_what_to_pay_when()
    {
        SvgFile file = Drawn(Quote(Terms), 720);
        string words = file.AllWords + " " + file.Description;
        Assert.Contains("To pay on acceptance: 40.50 USD (deposit).", words, StringComparison.Ordinal);
        Assert.Contains("To pay on completion: 364.50 USD (rest).", words, StringComparison.Ordinal);
        foreach (string shop in (string[])["margin", "labour", "travel", "profit", "150.00", "156.00"])
        {
            Assert.DoesNotContain(shop, words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_plan_without_a_quote_says_what_stands_in_the_way()
    {
        SvgFile file = new(new QuotePicture(Plans.Refused).ToSvg());
        Assert.Contains("There is no quote.", file.AllWords, StringComparison.Ordinal);
        Assert.All(Plans.Refused.Objections, objection => Assert.Contains(objection.Sentence(DisplayUnits.Si), file.AllWords, StringComparison.Ordinal));
        Assert.StartsWith("There is no quote; ", file.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fixture_that_is_left_out_is_told()
    {
        CustomerQuote quote = Plans.Provisional.Quote!;
        SvgFile file = new(new QuotePicture(Plans.Provisional).ToSvg());
        Assert.NotEmpty(quote.LeftOut);
        Assert.All(quote.LeftOut, objection => Assert.Contains("Not in this price: " + objection.Sentence(DisplayUnits.Si), file.AllWords, StringComparison.Ordinal));
        Assert.Contains(file.Texts, text => text.Words == quote.Currency.Text(quote.Total).Split(' ')[0]);
    }
}
