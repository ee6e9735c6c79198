using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class PriceLineTests
{
    // Invented for the test.
    private static readonly PriceBook Book = new()
    {
        Currency = Currency.Of("USD"),
        LabourRate = 30m,
        OverheadPerHour = 10m,
        OverheadOfDirectCost = Ratio.FromPercent(5),
        TravelPerTrip = 25m,
        DisposalPerJob = 10m,
        ConsumablesPerFixture = 35m,
        Materials = [new("topcoat", Volume.FromUsQuarts(1), 78m), new("topcoat", Volume.FromUsGallons(1), 240m)],
        Options = [new() { Code = "X-10", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m }, new() { Code = "X-20", Description = "colour change", Unit = LineUnit.Fixture, Cost = 40m }],
        TargetMargin = new Margin(Ratio.FromPercent(45)),
        Taxes = [new() { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(7) }],
        CashStep = 0.05m,
    };

    private static LabourTask Hours(string code, double hours) => new() { Standard = new LabourStandard
    {
        Code = code,
        Description = "work " + code,
        Fixed = ThreePoint.Exactly(hours),
        Source = Source.Supplied("test"),
    } };

    private static EstimateRequest Job(params LabourTask[] tasks) => new()
    {
        Labour = new LabourEstimate(tasks),
        Materials = [new("topcoat", "white topcoat", Volume.FromMilliliters(4000))],
        Fixtures = 1,
    };

    [Fact]
    [Evidence(Basis.Contract, "each line's id is formed from ids and its category says what it is for")]
    public void Lines_have_ids()
    {
        PriceEstimate estimate = new(Book, Job(Hours("L-1", 1), Hours("L-2", 2) with { Worker = "anna", Wage = 40m }) with
        {
            PaidTime = [new PaidTime { Id = "wait-1", Description = "waiting on site", Time = TimeSpan.FromMinutes(30), Worker = "anna", Wage = 40m }],
            Options = [new() { Code = "X-10", Quantity = 1, Fixture = "tub-1" }, new() { Code = "X-20" }, new() { Code = "X-20", Quantity = 2 }],
            WarrantyReserve = 20m,
            Discount = Discount.Of(Ratio.FromPercent(5)),
        });
        string[] expected =
        [
            "labour/L-1", "labour/L-2", "paid-time/wait-1", "material/topcoat/946.352946", "material/topcoat/3785.411784",
            "consumables", "travel", "waste", "option/X-20", "option/X-10/tub-1", "overhead/hours", "overhead/cost", "warranty", "discount", "tax/sales",
        ];
        Assert.Equal(expected, estimate.Lines.Select(line => line.Id));
        Assert.Equal([30m, 40m, 40m], estimate.Lines.Take(3).Select(line => line.Rate));
        Assert.Equal([null, "anna", "anna"], estimate.Lines.Take(3).Select(line => line.Worker));
        Assert.Equal(3.5m, estimate.Lines.Single(line => line.Id == "overhead/hours").Quantity);
        Assert.Equal(3m, estimate.Lines.Single(line => line.Id == "option/X-20").Quantity);
        EstimateLine grains = estimate.Lines.Single(line => line.Id == "option/X-10/tub-1");
        Assert.Equal(("tub-1", "option/X-10", 75m), (grains.Fixture, grains.Item, grains.Price));
        Assert.Equal("white topcoat, kit of 3.785 L", estimate.Lines.Single(line => line.Id == "material/topcoat/3785.411784").Description);
        Assert.Equal(
            [
                LineCategory.Labour, LineCategory.Labour, LineCategory.Labour, LineCategory.Material, LineCategory.Material, LineCategory.Consumables,
                LineCategory.Travel, LineCategory.Waste, LineCategory.Option, LineCategory.Option, LineCategory.Overhead, LineCategory.Overhead,
                LineCategory.Warranty, LineCategory.Discount, LineCategory.Tax,
            ],
            estimate.Lines.Select(line => line.Category));
        Assert.All(estimate.Lines.Where(line => line.Category is LineCategory.Overhead or LineCategory.Warranty), line => Assert.Equal(0m, line.Price));
        Assert.Equal(["sales"], grains.Taxes);
        Numbers.CanBeWritten(estimate.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: three times 0.3333 h of one standard are 1.000 h and not three times 0.333")]
    public void Tasks_of_one_standard_are_one_line()
    {
        PriceEstimate estimate = new(Book, Job(Hours("L-1", 0.3333), Hours("L-2", 1), Hours("L-1", 0.3333), Hours("L-1", 0.3333)));
        Assert.Equal([1m, 1m], estimate.Lines.Where(line => line.Category == LineCategory.Labour).Select(line => line.Quantity));
    }

    [Fact]
    [Evidence(Basis.Contract, "one standard and worker at several wages: the wage joins the id, whatever the order of the tasks")]
    public void Several_wages_of_one_worker()
    {
        LabourTask[] tasks =
        [
            Hours("L-1", 1) with { Worker = "anna", Wage = 40m }, Hours("L-1", 2) with { Worker = "anna", Wage = 50.50m }, Hours("L-1", 4),
            Hours("L-1", 8) with { Worker = "anna", Wage = 40.0m }, Hours("L-1", 16) with { Wage = 35m }, Hours("L-1", 32) with { Worker = "ben" },
        ];
        static Dictionary<string, decimal> Ids(IEnumerable<LabourTask> tasks) => new PriceEstimate(Book, Job([.. tasks])).Lines
            .Where(line => line.Category == LineCategory.Labour)
            .ToDictionary(line => line.Id, line => line.Quantity);
        Dictionary<string, decimal> expected = new()
        {
            ["labour/L-1///anna/40"] = 9m,
            ["labour/L-1///anna/50.5"] = 2m,
            ["labour/L-1"] = 36m,
            ["labour/L-1////35"] = 16m,
        };
        Assert.Equal(expected, Ids(tasks));
        Assert.Equal(expected, Ids(Enumerable.Reverse(tasks)));
    }

    [Fact]
    [Evidence(Basis.Contract, "a line names the taxes that are charged, and none of those that its customer is exempt from")]
    public void An_exempt_line_is_not_taxable()
    {
        PriceBook book = Book with { Taxes = [new() { Code = "state", Name = "state", Rate = Ratio.FromPercent(6) }, new() { Code = "county", Name = "county", Rate = Ratio.FromPercent(1) }] };
        PriceEstimate partly = new(book, Job(Hours("L-1", 1)) with { Exemption = new TaxExemption { Reason = "resale, invented", Codes = ["county"] } });
        Assert.All(partly.Lines.Where(line => line.Price > 0 && line.Category != LineCategory.Tax), line => Assert.Equal(["state"], line.Taxes));
        PriceEstimate wholly = new(book, Job(Hours("L-1", 1)) with { Exemption = new TaxExemption { Reason = "resale, invented" } });
        Assert.DoesNotContain(wholly.Lines, line => line.IsTaxable);
        Assert.Equal(0m, wholly.Tax);
    }

    [Fact]
    [Evidence(Basis.Contract, "what would round the amount to be paid by more than a hundredth is no coin")]
    public void A_coin_beyond_the_price_is_a_gap()
    {
        PriceEstimate estimate = new(Book with { CashStep = 100_000m }, Job(Hours("L-1", 1)));
        Assert.Equal("cash-step", Assert.Single(estimate.Gaps).Id);
        Assert.Null(estimate.Payable);
    }

    [Fact]
    [Evidence(Basis.Contract, "gaps carry the ids of the lines that are missing; a wage of its own needs no rate in the book")]
    public void Gaps_have_ids()
    {
        PriceEstimate estimate = new(new PriceBook { Currency = Currency.Of("USD") }, Job(Hours("L-1", 1), Hours("L-1", 1), Hours("L-2", 1) with { Wage = 30m }) with
        {
            PaidTime = [new PaidTime { Id = "wait", Description = "waiting", Time = TimeSpan.Zero }],
            Options = [new() { Code = "X-9" }, new() { Code = "X-9" }, new() { Code = "X-9", Fixture = "tub" }],
        });
        Assert.Equal(
            ["labour/L-1", "paid-time/wait", "material/topcoat", "consumables", "travel", "waste", "option/X-9", "option/X-9/tub"],
            estimate.Gaps.Select(gap => gap.Id));
        Assert.Equal("labour/L-2", Assert.Single(estimate.Lines).Id);
    }

    [Fact]
    [Evidence(Basis.Contract, "legal amounts that lead beyond the largest are gaps with words and no exceptions")]
    public void Amounts_beyond_all_bounds_are_gaps()
    {
        static PriceGap Gap(PriceBook book, EstimateRequest job)
        {
            PriceEstimate estimate = new(book, job);
            Assert.Null(estimate.Total);
            Numbers.CanBeWritten(estimate.Workings());
            return estimate.Gaps[0];
        }

        EstimateRequest job = Job(Hours("L-1", 1));
        Margin near = new(Ratio.FromPercent(99.9999999999999));
        Assert.Equal("price", Gap(Book with { TargetMargin = near }, job).Id);
        Assert.Equal("price", Gap(Book with { TargetMargin = near }, job with { HoldMargin = true, Discount = Discount.Of(Ratio.FromPercent(99.9999999999999)) }).Id);
        Assert.Contains("more than 10¹²", Gap(Book with { TargetMargin = near }, job).ToString(), StringComparison.Ordinal);
        Assert.Equal("labour/L-1", Gap(Book with { LabourRate = 1e12m, Burden = Ratio.FromPercent(100) }, job).Id);
        Assert.Equal("cost", Gap(Book with { TravelPerTrip = 1e12m, OverheadOfDirectCost = Ratio.Zero }, job).Id);
        Assert.Equal("overhead/cost", Gap(Book with { TravelPerTrip = 1e12m }, job).Id);
        Assert.Equal("cost", Gap(Book with { Options = [new() { Code = "X-10", Description = "dear", Unit = LineUnit.Each, Cost = 1e12m, Price = 1e12m }] }, job with { Options = [new() { Code = "X-10", Quantity = 1e12m }] }).Id);
        MaterialNeed cubic = new("topcoat", "topcoat", Volume.FromCubicMeters(1));
        Assert.Equal("material/topcoat", Gap(Book, job with { Materials = [.. Enumerable.Repeat(cubic, 1001)] }).Id);
        Numbers.Refuses("ofPrice", () => _ = new Margin(Ratio.FromDecimalFractions(1 - 1e-16)));
        Numbers.Refuses("cost", () => _ = near.PriceFor(decimal.MaxValue, Currency.Of("USD")));
    }

    [Fact]
    [Evidence(Basis.Contract, "a cost of a cent carries the whole price; where nothing costs anything a line of its own does; the lines add up")]
    public void Tiny_direct_costs_carry_the_price()
    {
        PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 1m, DisposalPerJob = 0m, TargetMargin = new Margin(Ratio.FromPercent(10)) };
        EstimateRequest job = new()
        {
            Labour = new LabourEstimate([]),
            PaidTime = [new PaidTime { Id = "p", Description = "a moment", Time = TimeSpan.FromHours(0.01) }],
            Materials = [],
            Fixtures = 0,
            Trips = 0,
            WarrantyReserve = 8e8m,
        };
        PriceEstimate estimate = new(book, job);
        Assert.Equal(estimate.Total, estimate.Lines.Sum(line => line.Price));
        Assert.Equal(estimate.Total, estimate.Lines[0].Price);
        PriceEstimate nothing = new(book, job with { PaidTime = [] });
        Assert.Equal(["waste", "margin", "warranty"], nothing.Lines.Select(line => line.Id));
        Assert.Equal(nothing.Total, nothing.Lines[1].Price);
    }

    [Property(MaxTest = 300)]
    [Evidence(Basis.Identity, "whatever legal amounts: no exception; ids unique among lines and among gaps; lines add up or there is no price")]
    public void Nothing_legal_throws(int seed)
    {
        Random random = new(seed);
        decimal Amount() => random.Next(6) switch { 0 => 0m, 1 => 0.0001m, 2 => 1e12m, 3 => 999_999.999m, _ => random.Next(1, 10_000) / 100m };
        double Share() => random.Next(5) switch { 0 => 0, 1 => 99.9999999999999, 2 => 1e-12, _ => random.Next(0, 90) };
        string? Someone() => random.Next(3) switch { 0 => null, 1 => "anna", _ => "job" };
        decimal? Wage() => random.Next(3) switch { 0 => null, 1 => 30m, _ => Amount() };
        PriceBook book = new()
        {
            Currency = Currency.Of("USD"),
            LabourRate = Wage(),
            Burden = Ratio.FromPercent(Share()),
            OverheadPerHour = Amount(),
            OverheadOfDirectCost = Ratio.FromPercent(Share()),
            TravelPerTrip = Amount(),
            DisposalPerJob = Amount(),
            ConsumablesPerFixture = Amount(),
            Materials = [.. Enumerable.Range(0, random.Next(0, 12)).Select(i => new MaterialPrice("m" + (i % 3), Volume.FromMilliliters(random.Next(1, 50) * 100), Amount()))],
            Options = [new() { Code = "a", Description = "option", Unit = LineUnit.Each, Cost = Amount(), Price = random.Next(2) == 0 ? null : Math.Round(Amount(), 2) }, new() { Code = "b", Description = "option", Unit = LineUnit.Each, Cost = Amount() }],
            MinimumCharge = Math.Round(Amount(), 2),
            TargetMargin = new Margin(Ratio.FromPercent(Share())),
            Taxes = [new() { Code = "sales", Name = "sales tax", Rate = Ratio.FromPercent(Share()) }],
            CashStep = random.Next(3) == 0 ? 1e12m : 0.05m,
        };
        EstimateRequest job = new()
        {
            Labour = new LabourEstimate([.. Enumerable.Range(0, random.Next(0, 9)).Select(i => Hours("L-" + (i % 3), random.Next(1, 300) / 100.0) with { Worker = Someone(), Wage = Wage() })]),
            PaidTime = [.. Enumerable.Range(0, random.Next(0, 3)).Select(i => new PaidTime { Id = "p" + i, Description = "paid", Time = TimeSpan.FromHours(random.Next(0, 1000) * 1000), Wage = Wage() })],
            Materials = [.. Enumerable.Range(0, random.Next(0, 5)).Select(i => new MaterialNeed("m" + (i % 4), "material", Volume.FromMilliliters(random.Next(0, 1_000_000))))],
            Fixtures = random.Next(0, 3) * 50_000,
            Options = [.. Enumerable.Range(0, random.Next(0, 5)).Select(i => new OptionOrder { Code = i % 2 == 0 ? "a" : "b", Quantity = Math.Max(0.0001m, Amount()), Fixture = Someone() })],
            WarrantyReserve = Math.Round(Amount(), 2),
            Discount = Discount.Of(Ratio.FromPercent(Share())),
            HoldMargin = random.Next(2) == 0,
        };
        PriceEstimate estimate = new(book, job);
        Assert.Distinct(estimate.Lines.Select(line => line.Id));
        Assert.Distinct(estimate.Gaps.Select(gap => gap.Id));
        Assert.Equal(estimate.IsComplete, estimate.Total is not null);
        Assert.Equal(estimate.Total ?? 0, estimate.IsComplete ? estimate.Lines.Sum(line => line.Price) : 0);
        Assert.Equal(estimate.Cost ?? 0, estimate.IsComplete ? estimate.Lines.Sum(line => line.Cost) : 0);
        Assert.NotEmpty(estimate.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "ids cannot hold a slash; lists hold an id once; ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentException>(() => new MaterialPrice("a/b", Volume.FromLiters(1), 1m));
        Assert.Throws<ArgumentException>(() => new MaterialNeed(" a", "a", Volume.Zero));
        Assert.Throws<ArgumentException>(() => new OptionOrder { Code = "X-10", Fixture = string.Empty });
        Assert.Throws<ArgumentException>(() => Book with { Options = [Book.Options[0], Book.Options[0]] });
        PaidTime wait = new() { Id = "wait", Description = "waiting", Time = TimeSpan.FromHours(1) };
        Assert.Throws<ArgumentException>(() => Job() with { PaidTime = [wait, wait] });
        Numbers.Refuses("Time", () => _ = new PaidTime { Id = "wait", Description = "waiting", Time = TimeSpan.FromHours(-1) });
        Numbers.Refuses("Wage", () => _ = wait with { Wage = -1m });
        Numbers.Refuses("Wage", () => _ = Hours("L-1", 1) with { Wage = -1m });
        Assert.Throws<ArgumentException>(() => new TaxExemption { Reason = "reseller", Codes = [] });
        Assert.Throws<ArgumentException>(() => new TaxRate { Code = "a", Name = "a", Rate = Ratio.FromPercent(1), Categories = [] });
        Assert.Throws<ArgumentException>(() => new TaxRate { Code = "a", Name = "a", Rate = Ratio.FromPercent(1), Categories = [LineCategory.Overhead] });
        Assert.Throws<ArgumentException>(() => new HostCode("rubbish", "1"));
        Assert.Throws<ArgumentException>(() => new HostCode(" labour/L-1", "1"));
        Assert.Throws<ArgumentException>(() => new HostCode("labour/", "1"));
        Numbers.Refuses("Category", () => _ = new ExtraItem { Id = "a", Category = (LineCategory)99, Description = "b", Quantity = 1, Unit = LineUnit.Hour, Rate = 1 });
        Assert.Equal("waiting: 1 h", wait.ToString());
    }
}
