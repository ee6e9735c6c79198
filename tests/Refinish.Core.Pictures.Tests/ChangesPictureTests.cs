using System;
using System.Globalization;
using System.Linq;
using System.Xml.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Xunit;

namespace Refinish.Pictures.Tests;

public class ChangesPictureTests
{
    // 100 + 60 - 20 + 2 - 1 is 141.
    private static readonly PlanChanges Few = Between(100, [("a", 10m, 70m), ("b", 50m, 30m), ("c", 40m, 42m), ("d", 0m, -1m)]);

    private static PlanChanges Between(decimal total, (string Id, decimal Before, decimal After)[] lines) => PlanChanges.Between(
        Figures(total, [.. lines.Select(line => (line.Id, line.Before))]),
        Figures(lines.Sum(line => line.After), [.. lines.Select(line => (line.Id, line.After))]), []);

    private static PlanFigures Figures(decimal total, (string Id, decimal Price)[] lines) => new()
    {
        Job = "quote",
        Currency = "USD",
        Total = total,
        Cost = 0,
        Lines = [.. lines.Select(line => new LineFigures { Id = line.Id, Category = LineCategory.Equipment, Description = "thing " + line.Id, Price = line.Price, Quantity = line.Price })],
    };

    private static (double From, double To)[] Bars(SvgFile file)
    {
        SvgText[] ticks = [.. file.Texts.Where(text => text.Anchor == "middle" && double.TryParse(text.Words, NumberStyles.Float, CultureInfo.InvariantCulture, out _))];
        Func<double, double> money = SvgFile.Scale(ticks[0].X, Number(ticks[0]), ticks[^1].X, Number(ticks[^1]));
        return [.. file.Elements("rect").Where(element => (string?)element.Attribute("fill") == "none" && element.Attribute("stroke") is not null)
            .Select(element => (SvgText.Number(element, "x"), SvgText.Number(element, "width"))).Select(bar => (money(bar.Item1), money(bar.Item1 + bar.Item2)))];

        static double Number(SvgText text) => double.Parse(text.Words, CultureInfo.InvariantCulture);
    }

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void Every_bar_begins_where_the_one_before_ended(int width)
    {
        SvgFile file = new(new ChangesPicture(Few).ToSvg(new PictureStyle { Theme = PictureTheme.Light, Width = width }));
        (double From, double To)[] bars = Bars(file);
        (double, double)[] expected = [(100, 160), (140, 160), (140, 142), (141, 142)];
        Assert.Equal(expected.Length, bars.Length);
        for (int i = 0; i < bars.Length; i++)
        {
            Assert.Equal(expected[i].Item1, bars[i].From, 0.35);
            Assert.Equal(expected[i].Item2, bars[i].To, 0.35);
        }

        foreach (string text in (string[])["100.00", "+60.00", "-20.00", "+2.00", "-1.00", "141.00", "thing a", "before", "after"])
        {
            Assert.Contains(file.Texts, one => one.Words == text);
        }

        Assert.Contains("the axis does not begin at zero", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("100.00 became 141.00 USD: +41.00", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_small_is_one_step_and_the_amounts_still_add_up()
    {
        // Ten changes of 10, 9, … 1: seven are shown, 3 + 2 + 1 is the rest.
        PlanChanges many = Between(0, [.. Enumerable.Range(1, 10).Select(i => ("n" + i, 0m, (decimal)i))]);
        SvgFile file = new(new ChangesPicture(many).ToSvg());
        Assert.Contains(file.Texts, text => text.Words == "all 3 others");
        Assert.Contains(file.Texts, text => text.Words == "+6.00");
        Assert.Equal(55m, file.Texts.Where(text => text.Words.StartsWith('+')).Sum(text => decimal.Parse(text.Words, CultureInfo.InvariantCulture)));
        Assert.DoesNotContain("does not begin at zero", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_two_prices_it_says_why()
    {
        PlanChanges refused = PlanChanges.Refused(Few.Before, [new PlanRemark("$.job", "$.job", "The job is of another version.")]);
        SvgFile file = new(new ChangesPicture(refused).ToSvg());
        Assert.Contains("There are no two prices to compare.", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("The job is of another version.", file.AllWords, StringComparison.Ordinal);
        Assert.StartsWith("There are no two prices to compare", file.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_quote_a_customer_sees_the_price_as_one_step()
    {
        SvgFile file = new(new ChangesPicture(Few.For(LineReader.Customer)).ToSvg());
        Assert.Contains(file.Texts, text => text.Words == "work and materials");
        Assert.DoesNotContain("thing", file.AllWords, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => new ChangesPicture(null!));
    }

    [Theory]
    [InlineData(720)]
    [InlineData(360)]
    public void A_customer_sees_the_items_of_the_quote_under_its_name_and_revisions(int width)
    {
        PlanFigures before = Quoted("1", ("fixture/tub", "bathtub", 100m), ("option/trim/tub", "new drain and overflow trim, the old one is taken along", 85m));
        PlanFigures after = Quoted("2", ("fixture/tub", "bathtub", 90m));
        SvgFile file = new(new ChangesPicture(PlanChanges.Between(before, after, []).For(LineReader.Customer)).ToSvg(
            new PictureStyle { Theme = PictureTheme.Light, Width = width }));
        Assert.Contains("7 Hill Street, Q-1042, revision 1 to revision 2", file.AllWords, StringComparison.Ordinal);
        Assert.Contains(file.Texts, text => text.Words == "-85.00");
        Assert.Contains(file.Texts, text => text.Words == "-10.00");
        Assert.DoesNotContain("…", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("new drain and overflow trim, the old one is taken along, bathtub: declined",
            string.Join(" ", file.Texts.Select(text => text.Words)), StringComparison.Ordinal);
        (double, double)[] bars = Bars(file);
        Assert.Equal(2, bars.Length);
    }

    private static PlanFigures Quoted(string revision, params (string Id, string Name, decimal Price)[] items) => new()
    {
        Job = "q-77", Name = "7 Hill Street", Currency = "USD", Total = items.Sum(item => item.Price), Cost = 0,
        Fixtures = [new FixtureFigures { Id = "tub", Name = "bathtub" }],
        Quote = new QuoteFigures
        {
            Number = "Q-1042", Revision = revision,
            Items = [.. items.Select(item => new ItemFigures
            {
                Id = item.Id, Kind = item.Id.StartsWith("option", StringComparison.Ordinal) ? QuoteItemKind.Option : QuoteItemKind.Fixture,
                Fixture = "tub", Description = item.Name, Price = item.Price, WithTax = item.Price,
            })],
        },
    };

    [Fact]
    public void Nothing_that_changed_is_two_marks()
    {
        SvgFile file = new(new ChangesPicture(PlanChanges.Between(Few.Before, Few.Before, [])).ToSvg());
        Assert.Empty(Bars(file));
        Assert.Contains("the total stays", file.AllWords, StringComparison.Ordinal);
    }
}
