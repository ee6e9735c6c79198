using System;
using System.Globalization;
using System.Linq;
using System.Xml.Linq;
using Refinish.Estimating;
using Refinish.Samples.BathroomJob;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class PricePictureTests
{
    private static readonly PriceBook Book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m,
        ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };

    private static readonly EstimateRequest Job = new() { Labour = new([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }]), Materials = [],
        Fixtures = 1 };

    // Bars in the order of their rows: where each begins and ends, in money, by the two outermost tick labels.
    private static (double From, double To)[] Bars(SvgFile file)
    {
        SvgText[] ticks = [.. file.Texts.Where(text => text.Anchor == "middle" && double.TryParse(text.Words, NumberStyles.Float,
            CultureInfo.InvariantCulture, out _))];
        Func<double, double> money = SvgFile.Scale(ticks[0].X, Number(ticks[0]), ticks[^1].X, Number(ticks[^1]));
        return [.. file.Elements("rect").Where(element => (string?)element.Attribute("fill") == "none"
            && element.Attribute("stroke") is not null)
            .Select(element => (SvgText.Number(element, "x"), SvgText.Number(element, "width")))
            .Select(bar => (money(bar.Item1), money(bar.Item1 + bar.Item2)))];
    }

    private static double Number(SvgText text) => double.Parse(text.Words, CultureInfo.InvariantCulture);

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void Bars_add_up_to_the_published_example(int width)
    {
        // (20 + 4 × 27 + 45) / 6 min = 0.481 h × 30.00 = 14.43; + 35 + 25 + 10 = 84.43; 84.43 / 0.55 = 153.51.
        SvgFile file = new(new PricePicture(new PriceEstimate(Book, Job)).ToSvg(new PictureStyle { Theme = PictureTheme.Light,
            Width = width }));
        (double From, double To)[] bars = Bars(file);
        (double, double)[] expected = [(0, 14.43), (14.43, 49.43), (49.43, 74.43), (74.43, 84.43), (0, 84.43), (84.43, 153.51),
            (0, 153.51), (0, 153.51)];
        Assert.Equal(expected.Length, bars.Length);
        for (int i = 0; i < bars.Length; i++)
        {
            Assert.Equal(expected[i].Item1, bars[i].From, 0.35);
            Assert.Equal(expected[i].Item2, bars[i].To, 0.35);
        }

        foreach (string amount in (string[])["14.43", "+35.00", "+25.00", "+10.00", "84.43", "+69.08", "153.51"])
        {
            Assert.Contains(file.Texts, text => text.Words == amount);
        }
    }

    [Fact]
    public void Every_step_begins_where_the_last_one_ended_and_the_last_is_the_total()
    {
        PriceEstimate estimate = Plans.Rooms.Price!;
        SvgFile file = new(new PricePicture(Plans.Rooms).ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = 1600 }));
        (double From, double To)[] bars = Bars(file);
        double at = 0;
        foreach ((double from, double to) in bars)
        {
            Assert.True(Math.Abs(from - at) < 3 || (Math.Abs(from) < 3 && Math.Abs(to - at) < 3), "a bar from " + from + " to " + to
                + " after " + at);
            at = to;
        }

        Assert.Equal((double)estimate.Total!.Value, at, 3.0);

        // The written amounts add up to the cent: what is added, sums left out.
        decimal added = file.Texts.Where(text => text.Words.StartsWith('+') || text.Words.StartsWith('-'))
            .Sum(text => decimal.Parse(text.Words, CultureInfo.InvariantCulture));
        decimal first = decimal.Parse(file.Texts.First(text => text.Words.Contains('.', StringComparison.Ordinal)
            && decimal.TryParse(text.Words, NumberStyles.Float, CultureInfo.InvariantCulture, out _) && !text.Words.StartsWith('+')).Words,
            CultureInfo.InvariantCulture);
        Assert.Equal(estimate.Total, first + added);
    }

    [Fact]
    public void Labour_and_materials_are_the_sums_of_their_lines()
    {
        PriceEstimate price = Plans.Rooms.Price!;
        string words = new PricePicture(Plans.Rooms).Describe(DisplayUnits.Si);
        Assert.Contains("labour " + Sum("labour/", "paid-time/", "overtime"), words, StringComparison.Ordinal);
        Assert.Contains("materials " + Sum("material/"), words, StringComparison.Ordinal);
        Assert.Contains("overhead " + Sum("overhead/"), words, StringComparison.Ordinal);
        string tax = (price.Total - price.Net)!.Value.ToString("0.00", CultureInfo.InvariantCulture);
        Assert.Contains("tax " + tax, words, StringComparison.Ordinal);

        // By what the items are called, where the picture goes by category.
        string Sum(params string[] items) => price.Lines
            .Where(line => Array.Exists(items, item => line.Item.StartsWith(item, StringComparison.Ordinal)))
            .Sum(line => Math.Round(line.Quantity * line.Rate, 2, MidpointRounding.AwayFromZero))
            .ToString("0.00", CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_discount_below_cost_is_a_loss_and_goes_back()
    {
        SvgFile file = new(new PricePicture(new PriceEstimate(Book, Job with { Discount = Discount.Of(Ratio.FromPercent(60)) }))
            .ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        (double From, double To)[] bars = Bars(file);

        // 60 % of 153.51 is 92.11, which leaves 61.40, 23.03 below the cost of 84.43.
        Assert.Contains(file.Texts, text => text.Words == "-92.11");
        Assert.Contains("a loss of 23.03", file.AllWords, StringComparison.Ordinal);
        Assert.Contains(bars, bar => Math.Abs(bar.From - 61.40) < 0.4 && Math.Abs(bar.To - 153.51) < 0.4);
    }

    [Fact]
    public void A_minimum_charge_and_the_rounding_of_the_total_are_told()
    {
        PriceEstimate estimate = new(Book with { MinimumCharge = 250m, Taxes = [new() { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(7.3) }], CashStep = 0.05m }, Job);
        SvgFile file = new(new PricePicture(estimate).ToSvg());

        // 7.3 % of 250 is 18.25; 268.25 needs no rounding to five cents, so the step is not there.
        Assert.Contains("up to minimum charge", file.AllWords, StringComparison.Ordinal);
        Assert.Contains(file.Texts, text => text.Words == "268.25");
        Assert.DoesNotContain("rounding", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_coins_take_or_give_stands_after_the_total()
    {
        TaxRate sales = new() { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(7.31) };
        PriceEstimate estimate = new(Book with { MinimumCharge = 250m, Taxes = [sales], CashStep = 0.05m }, Job);
        SvgFile file = new(new PricePicture(estimate).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));

        // 7.31 % of 250 is 18.275, rounded 18.28; 268.28 is paid with 268.30.
        foreach (string words in (string[])["+18.28", "268.28", "+0.02", "268.30", "payable"])
        {
            Assert.Contains(file.Texts, text => text.Words == words);
        }
    }

    [Fact]
    public void Other_trades_and_extras_at_a_fixed_price_are_costs_of_their_own_kind()
    {
        ExtraItem plumber = new() { Id = "plumber", Category = LineCategory.Subcontract, Description = "plumber (invented)", Quantity = 2, Unit = LineUnit.Hour, Rate = 40m, UnitPrice = 60m };
        PriceEstimate estimate = new(Book, Job with { Extras = [plumber] });
        SvgFile file = new(new PricePicture(estimate).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));

        // 84.43 + 80 = 164.43 cost; 153.51 at margin + 2 × 60 = 273.51, so 109.08 is earned.
        foreach (string words in (string[])["subcontract", "+80.00", "164.43", "+109.08", "273.51"])
        {
            Assert.Contains(file.Texts, text => text.Words == words);
        }
    }

    [Fact]
    public void A_gap_in_the_price_book_is_told_instead_of_a_price()
    {
        PriceEstimate estimate = new(new PriceBook { Currency = Currency.Of("USD"), LabourRate = 30m, TargetMargin = new(Ratio.FromPercent(45)) }, Job);
        Assert.False(estimate.IsComplete);
        SvgFile file = new(new PricePicture(estimate).ToSvg());
        Assert.Contains("There is no price.", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("ConsumablesPerFixture is not given", file.AllWords, StringComparison.Ordinal);
        Assert.StartsWith("There is no price.", file.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_without_a_price_says_what_stands_in_the_way()
    {
        SvgFile file = new(new PricePicture(Plans.Refused).ToSvg());
        Assert.Contains("There is no price.", file.AllWords, StringComparison.Ordinal);
        Assert.All(Plans.Refused.Objections, objection => Assert.Contains(objection.Sentence(DisplayUnits.Si), file.AllWords,
            StringComparison.Ordinal));
    }
}
