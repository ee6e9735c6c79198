using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class PriceTests
{
    // Invented for the test.
    private static readonly PriceBook Book = new()
    {
        Currency = Currency.Of("USD"),
        LabourRate = 30m,
        Burden = Ratio.FromPercent(22),
        TravelPerTrip = 25m,
        DisposalPerJob = 10m,
        ConsumablesPerFixture = 35m,
        Materials = [new("topcoat", Volume.FromMilliliters(1183), 78m), new("topcoat", Volume.FromMilliliters(4732), 240m), new("primer", Volume.FromMilliliters(946), 52.35m)],
        Options = [new() { Code = "X-10", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m }, new() { Code = "X-20", Description = "colour change", Unit = LineUnit.Each, Cost = 40m }],
        TargetMargin = new Margin(Ratio.FromPercent(45)),
    };

    // Invented for the test: 0.79 h for each fixture.
    private static readonly LabourStandard SetUpAndMask = LabourStandards.SetUp with { PerUnit = new ThreePoint(0.5, 0.75, 1.25) };

    // And 0.46 h for three coats of 2.6 m².
    private static readonly LabourStandard Topcoat = LabourStandards.SprayTopcoat with { PerSquareMeter = new ThreePoint(0.12 / 2.6, 0.15 / 2.6, 0.2 / 2.6) };

    private static EstimateRequest Job(double chips = 4, int fixtures = 1) => new()
    {
        Labour = new LabourEstimate(
        [
            new LabourTask { Standard = SetUpAndMask, Units = fixtures },
            new LabourTask { Standard = Topcoat, Area = Area.FromSquareMeters(2.6), Units = 0, Times = 3 },
            new LabourTask { Standard = LabourStandards.Generic.Single(standard => standard.Code == "L-31"), Units = chips },
        ]),
        Materials =
        [
            new("topcoat", "white topcoat", Volume.FromMilliliters(1490)),
            new("primer", "epoxy primer", Volume.FromMilliliters(327)),
            new("topcoat", "white topcoat", Volume.FromMilliliters(1000)),
        ],
        Fixtures = fixtures,
    };

    [Theory]
    [InlineData(25, 20)]
    [InlineData(50, 33.333333333333336)]
    [InlineData(100, 50)]
    [InlineData(42.857142857142854, 30)]
    [InlineData(53.84615384615385, 35)]
    [Evidence(Basis.Independent, "margin = markup / (1 + markup), worked by hand; no published source")]
    public void Margin_and_markup_are_two_things(double markup, double margin)
    {
        Numbers.Close(margin, new Markup(Ratio.FromPercent(markup)).ToMargin().OfPrice.Percent, 1e-12);
        Numbers.Close(markup, new Margin(Ratio.FromPercent(margin)).ToMarkup().OfCost.Percent, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "300 at 45 % margin is 545.45 and not the 435.00 of a 45 % markup; worked by hand")]
    public void The_common_mistake_costs_a_fifth()
    {
        Assert.Equal(545.45m, new Margin(Ratio.FromPercent(45)).PriceFor(300m, Currency.Of("USD")));
        Assert.Equal(435.00m, new Markup(Ratio.FromPercent(45)).PriceFor(300m, Currency.Of("USD")));
        Numbers.Near(81.8, new Margin(Ratio.FromPercent(45)).ToMarkup().OfCost.Percent, 0.05);
        Assert.Equal(0, default(Margin).ToMarkup().OfCost.Percent);
    }

    [Fact]
    [Evidence(Basis.Independent, "added up by hand: 0.792, 0.46 and 0.353 h at 36.60; 3 × 78 and 52.35; 35 + 25 + 10; 58.75 + 286.35 + 70 = 415.10; / 0.55 = 754.73")]
    public void A_job_is_added_up()
    {
        PriceEstimate estimate = new(Book, Job());
        Assert.True(estimate.IsComplete);
        Assert.Equal([28.99m, 16.84m, 12.92m, 234m, 52.35m, 35m, 25m, 10m], estimate.Lines.Select(line => line.Cost));
        Assert.Equal(415.10m, estimate.Cost);
        Assert.Equal(754.73m, estimate.PriceAtMargin);
        Assert.Equal(754.73m, estimate.Total);
        Assert.Equal(0m, estimate.Tax);
        Numbers.Near(0.45, estimate.RealisedMargin!.Value.DecimalFractions, 1e-5);
        Assert.Equal("754.73 USD", estimate.ToString());
        Numbers.CanBeWritten(estimate.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand on the job above: options 75 at a fixed price and 40 of cost; overhead 8/h × 1.605 h and 10 % of 455.10; reserve 20.73; discount 5 %; tax 7.25 %; nearest 0.05")]
    public void Options_overhead_discount_tax_and_cash()
    {
        PriceBook book = Book with { OverheadPerHour = 8m, OverheadOfDirectCost = Ratio.FromPercent(10), Taxes = [new() { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(7.25) }], CashStep = 0.05m };
        EstimateRequest job = Job() with { Options = [new() { Code = "X-10" }, new() { Code = "X-20" }], WarrantyReserve = 20.73m, Discount = Discount.Of(Ratio.FromPercent(5)) };
        PriceEstimate estimate = new(book, job);

        // Marked up: 455.10 + 12.84 + 45.51 + 20.73 = 534.18, / 0.55 = 971.24; with the option 1046.24; less 52.31; tax 72.06.
        Assert.Equal(540.18m, estimate.Cost);
        Assert.Equal(1046.24m, estimate.PriceAtMargin);
        Assert.Equal(1046.24m, estimate.Subtotal);
        Assert.Equal(993.93m, estimate.Net);
        Assert.Equal(72.06m, estimate.Tax);
        Assert.Equal(1065.99m, estimate.Total);
        Assert.Equal(1066.00m, estimate.Payable);
        Assert.Equal(75m, estimate.Lines.Single(line => line.Code == "X-10").Price);
        Assert.Equal(453.75m, estimate.Profit);
        Numbers.CanBeWritten(estimate.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "total = sum of the prices, cost = sum of the costs, each cost = quantity × rate rounded once; margin hit to the cent; workings hold to the kernel")]
    public void Lines_are_the_total(int seed)
    {
        Random random = new(seed);
        PriceBook book = Book with
        {
            LabourRate = random.Next(1, 9000) / 100m,
            Burden = Ratio.FromPercent(random.Next(0, 60)),
            OverheadPerHour = random.Next(0, 3000) / 100m,
            TargetMargin = new Margin(Ratio.FromPercent(random.Next(0, 90))),
            MinimumCharge = random.Next(0, 1500),
            Taxes = [new() { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(random.Next(0, 2000) / 100.0) }],
            CashStep = new[] { 0m, 0.05m, 1m }[random.Next(3)],
        };
        EstimateRequest job = Job(random.Next(0, 30), random.Next(0, 5)) with
        {
            Options = random.Next(2) == 0 ? [] : [new() { Code = "X-10", Quantity = random.Next(1, 4) }, new() { Code = "X-20", Quantity = random.Next(1, 300) / 100m }],
            Discount = Discount.Of(Ratio.FromPercent(random.Next(0, 30))) with { MayUndercutMinimum = random.Next(2) == 0 },
            WarrantyReserve = random.Next(0, 5000) / 100m,
        };
        PriceEstimate estimate = new(book, job);
        Assert.Equal(estimate.Total, estimate.Lines.Sum(line => line.Price));
        Assert.Equal(estimate.Cost, estimate.Lines.Sum(line => line.Cost));
        Assert.All(
            estimate.Lines.Where(line => line.Category != LineCategory.Margin),
            line => Assert.Equal(
                Math.Round(line.Quantity * line.Rate, 2, MidpointRounding.AwayFromZero),
                line.Category is LineCategory.Tax or LineCategory.Discount ? line.Price : line.Cost));
        Assert.True(estimate.Subtotal >= book.MinimumCharge);
        Assert.True(job.Discount!.MayUndercutMinimum || estimate.Net >= book.MinimumCharge);
        Numbers.CanBeWritten(estimate.Workings());

        // Without options, floor and discount the margin is the target's, as near as cents allow.
        PriceEstimate plain = new(book with { MinimumCharge = 0 }, job with { Options = [], Discount = null });
        decimal margin = (decimal)book.TargetMargin.OfPrice.DecimalFractions;
        Assert.True(Math.Abs((plain.Net!.Value * (1 - margin)) - plain.Cost!.Value) <= 0.005m * (1 - margin) + 1e-9m);
    }

    [Property]
    [Evidence(Basis.Identity, "price rises with cost and with margin")]
    public void Price_is_monotone(PositiveInt chips, PositiveInt margin)
    {
        double m = margin.Get % 90;
        decimal? Price(double count, double percent) => new PriceEstimate(Book with { TargetMargin = new Margin(Ratio.FromPercent(percent)) }, Job(count)).Total;
        double n = chips.Get % 100;
        Assert.True(Price(n + 1, m) > Price(n, m));
        Assert.True(Price(n, m + 1) > Price(n, m));
    }

    [Fact]
    [Evidence(Basis.Contract, "what the price book does not have is named and never counted as nothing")]
    public void Gaps_are_named_and_give_no_price()
    {
        PriceEstimate estimate = new(
            new PriceBook { Currency = Currency.Of("USD") },
            Job() with { Options = [new() { Code = "X-99" }] });
        Assert.False(estimate.IsComplete);
        Assert.Null(estimate.Total);
        Assert.Null(estimate.Cost);
        Assert.Null(estimate.Profit);
        Assert.Null(estimate.RealisedMargin);
        Assert.Empty(estimate.Lines);
        Assert.Empty(estimate.Taxes);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, estimate.NetAgainstCost.Outcome);
        Assert.Equal(["L-10", "L-51", "L-31", "topcoat", "primer", "consumables", "travel", "waste", "X-99"], estimate.Gaps.Select(gap => gap.Code));
        Assert.Contains("L-51 spray topcoat, one coat: no labour rate in the price book", estimate.ToString(), StringComparison.Ordinal);

        PriceEstimate one = new(Book with { Materials = [Book.Materials[2]] }, Job());
        Assert.Equal("topcoat white topcoat: no price of it in the price book", Assert.Single(one.Gaps).ToString());
        Assert.Equal(7, one.Lines.Count);
        Assert.Null(one.Total);
        Numbers.CanBeWritten(one.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "the lines carry the price up to the minimum charge; a price below cost is shown as a loss")]
    public void Minimum_and_loss()
    {
        PriceEstimate floor = new(Book with { MinimumCharge = 900m }, Job());
        Assert.True(floor.MinimumChargeApplied);
        Assert.Equal(900m, floor.Total);
        Assert.Equal(900m, floor.Lines.Sum(line => line.Price));
        PriceEstimate loss = new(Book, Job() with { Discount = Discount.Of(Ratio.FromPercent(60)) });
        Assert.Equal(ComparisonOutcome.Beyond, loss.NetAgainstCost.Outcome);
        Assert.True(loss.Profit < 0);
        Assert.True(loss.RealisedMargin!.Value.DecimalFractions < 0);
    }

    [Fact]
    [Evidence(Basis.Contract, "halves away from zero, once a line; ranges of the docstrings; equality; no culture in the text")]
    public void Rounding_ranges_and_equality()
    {
        EstimateRequest half = new() { Labour = new([]), Materials = [], Fixtures = 0, Trips = 0, Extras = [new() { Id = "x", Category = LineCategory.Equipment, Description = "b", Quantity = 0.5m, Unit = LineUnit.Hour, Rate = 0.25m }] };
        Assert.Equal(0.13m, new PriceEstimate(Book, half).Lines.Single(line => line.Item == "extra/x").Cost);
        Numbers.Refuses("ofPrice", () => _ = new Margin(Ratio.FromPercent(100)));
        Numbers.Refuses("ofCost", () => _ = new Markup(Ratio.FromPercent(-1)));
        Assert.Equal("cash-step", new PriceEstimate(Book with { CashStep = 0.001m }, Job()).Gaps.Single().Id);
        Numbers.Refuses("Burden", () => _ = Book with { Burden = Ratio.FromPercent(-1) });
        Numbers.Refuses("LabourRate", () => _ = Book with { LabourRate = -1m });
        Numbers.Refuses("share", () => _ = Discount.Of(Ratio.FromPercent(101)));
        Numbers.Refuses("Quantity", () => _ = new OptionOrder { Code = "X-10", Quantity = 0 });
        Numbers.Refuses("cost", () => _ = new Margin(Ratio.Zero).PriceFor(-1, Currency.Of("USD")));
        Assert.Equal(new PriceEstimate(Book, Job()), new PriceEstimate(Book with { }, Job()));
        Assert.NotEqual(new PriceEstimate(Book, Job()), new PriceEstimate(Book, Job(5)));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("L-10 set up exhaust, protect the room: 0.792 h × 36.6 = 28.99, sold at 52.71", new PriceEstimate(Book, Job()).Lines[0].ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
