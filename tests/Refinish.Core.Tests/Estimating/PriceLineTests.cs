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
        Currency = "USD",
        LabourRate = 30m,
        OverheadPerHour = 10m,
        OverheadOfDirectCost = Ratio.FromPercent(5),
        TravelPerTrip = 25m,
        DisposalPerJob = 10m,
        ConsumablesPerFixture = 35m,
        Materials = [new("topcoat", Volume.FromUsQuarts(1), 78m), new("topcoat", Volume.FromUsGallons(1), 240m)],
        Options = [new("X-10", "slip-resistant floor", "each", 6m, 75m), new("X-20", "colour change", "fixture", 40m)],
        TargetMargin = new Margin(Ratio.FromPercent(45)),
        SalesTax = Ratio.FromPercent(7),
        CashStep = 0.05m,
    };

    private static LabourTask Hours(string code, double hours) => new(new LabourStandard
    {
        Code = code,
        Description = "work " + code,
        Fixed = ThreePoint.Exactly(hours),
        Source = Source.Supplied("test"),
    });

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
            PaidTime = [new PaidTime("wait-1", "waiting on site", TimeSpan.FromMinutes(30)) { Worker = "anna", Wage = 40m }],
            Options = [new("X-10", 1) { Fixture = "tub-1" }, new("X-20"), new("X-20", 2)],
            WarrantyReserve = 20m,
            Discount = Ratio.FromPercent(5),
        });
        string[] expected =
        [
            "labour/L-1", "labour/L-2/anna", "paid-time/wait-1/anna", "material/topcoat/946.352946", "material/topcoat/3785.411784",
            "consumables", "travel", "waste", "option/job/X-20", "option/tub-1/X-10", "overhead/hours", "overhead/cost", "warranty",
        ];
        Assert.Equal(expected, estimate.CostLines.Select(line => line.Id));
        Assert.Equal([30m, 40m, 40m], estimate.CostLines.Take(3).Select(line => line.Rate));
        Assert.Equal(3.5m, estimate.CostLines.Single(line => line.Id == "overhead/hours").Quantity);
        Assert.Equal(3m, estimate.CostLines.Single(line => line.Id == "option/job/X-20").Quantity);
        Assert.Equal("tub-1", estimate.Lines.Single(line => line.Id == "option/tub-1/X-10").Fixture);
        Assert.Equal("white topcoat, kit of 3.785 L", estimate.CostLines.Single(line => line.Id == "material/topcoat/3785.411784").Description);
        Assert.Equal(
            [
                LineCategory.Labour, LineCategory.Labour, LineCategory.Labour, LineCategory.Material, LineCategory.Material, LineCategory.Consumables,
                LineCategory.Travel, LineCategory.Waste, LineCategory.Option, LineCategory.Rounding, LineCategory.Option, LineCategory.Discount,
                LineCategory.Tax, LineCategory.Rounding,
            ],
            estimate.Lines.Select(line => line.Category));
        Assert.Equal(["rounding/lines", "discount", "tax", "rounding/cash"], estimate.Lines.Select(line => line.Id).Where(id => !expected.Contains(id)));
        Numbers.HoldsToKernel(estimate.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: three times 0.333 h of one standard are 1.00 h and not three times 0.33")]
    public void Tasks_of_one_standard_are_one_line()
    {
        PriceEstimate estimate = new(Book, Job(Hours("L-1", 0.333), Hours("L-2", 1), Hours("L-1", 0.333), Hours("L-1", 0.333)));
        Assert.Equal([1m, 1m], estimate.CostLines.Where(line => line.Category == LineCategory.Labour).Select(line => line.Quantity));
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
        static Dictionary<string, decimal> Ids(IEnumerable<LabourTask> tasks) => new PriceEstimate(Book, Job([.. tasks])).CostLines
            .Where(line => line.Category == LineCategory.Labour)
            .ToDictionary(line => line.Id, line => line.Quantity);
        Dictionary<string, decimal> expected = new()
        {
            ["labour/L-1/anna/40"] = 9m,
            ["labour/L-1/anna/50.5"] = 2m,
            ["labour/L-1"] = 36m,
            ["labour/L-1//35"] = 16m,
        };
        Assert.Equal(expected, Ids(tasks));
        Assert.Equal(expected, Ids(Enumerable.Reverse(tasks)));
    }

    [Fact]
    [Evidence(Basis.Contract, "gaps carry the ids of the lines that are missing; a wage of its own needs no rate in the book")]
    public void Gaps_have_ids()
    {
        PriceEstimate estimate = new(new PriceBook { Currency = "USD" }, Job(Hours("L-1", 1), Hours("L-1", 1), Hours("L-2", 1) with { Wage = 30m }) with
        {
            PaidTime = [new PaidTime("wait", "waiting", TimeSpan.Zero)],
            Options = [new("X-9"), new("X-9"), new("X-9") { Fixture = "tub" }],
        });
        Assert.Equal(
            ["labour/L-1", "paid-time/wait", "material/topcoat", "consumables", "travel", "waste", "option/job/X-9", "option/tub/X-9"],
            estimate.Gaps.Select(gap => gap.Id));
        Assert.Equal("labour/L-2", Assert.Single(estimate.CostLines).Id);
    }

    [Fact]
    [Evidence(Basis.Contract, "legal amounts that lead beyond the largest are gaps with words and no exceptions")]
    public void Amounts_beyond_all_bounds_are_gaps()
    {
        static PriceGap Gap(PriceBook book, EstimateRequest job)
        {
            PriceEstimate estimate = new(book, job);
            Assert.Null(estimate.Total);
            Numbers.HoldsToKernel(estimate.Workings());
            return estimate.Gaps[0];
        }

        EstimateRequest job = Job(Hours("L-1", 1));
        Margin near = new(Ratio.FromPercent(99.9999999999999));
        Assert.Equal("price", Gap(Book with { TargetMargin = near }, job).Id);
        Assert.Equal("price", Gap(Book with { TargetMargin = near }, job with { HoldMargin = true, Discount = Ratio.FromPercent(99.9999999999999) }).Id);
        Assert.Contains("more than 1000000000", Gap(Book with { TargetMargin = near }, job).ToString(), StringComparison.Ordinal);
        Assert.Equal("labour/L-1", Gap(Book with { LabourRate = 1e9m, Burden = Ratio.FromPercent(100) }, job).Id);
        Assert.Equal("cost", Gap(Book with { TravelPerTrip = 1e9m, OverheadOfDirectCost = Ratio.Zero }, job).Id);
        Assert.Equal("overhead/cost", Gap(Book with { TravelPerTrip = 1e9m }, job).Id);
        Assert.Equal("cost", Gap(Book with { Options = [new("X-10", "dear", "each", 1e9m, 1e9m)] }, job with { Options = [new("X-10", 1e9m)] }).Id);
        MaterialNeed cubic = new("topcoat", "topcoat", Volume.FromCubicMeters(1));
        Assert.Equal("material/topcoat", Gap(Book, job with { Materials = [.. Enumerable.Repeat(cubic, 1001)] }).Id);
        Numbers.Refuses("ofPrice", () => _ = new Margin(Ratio.FromDecimalFractions(1 - 1e-16)));
        Numbers.Refuses("cost", () => _ = near.PriceFor(decimal.MaxValue));
    }

    [Fact]
    [Evidence(Basis.Contract, "where direct costs are too small to carry the price, a line of its own does; the lines still add up")]
    public void Tiny_direct_costs_do_not_carry_the_price()
    {
        PriceBook book = new() { Currency = "USD", LabourRate = 1e8m, DisposalPerJob = 0m, TargetMargin = new Margin(Ratio.FromPercent(10)) };
        EstimateRequest job = new()
        {
            Labour = new LabourEstimate([]),
            PaidTime = [new PaidTime("p", "a moment", TimeSpan.FromHours(0.01))],
            Materials = [],
            Fixtures = 0,
            Trips = 0,
            WarrantyReserve = 8e8m,
        };
        PriceEstimate estimate = new(book with { LabourRate = 1e6m }, job);
        Assert.Equal(estimate.Total, estimate.Lines.Sum(line => line.Amount));
        Assert.Equal("margin", Assert.Single(estimate.Lines).Id);
        Assert.Equal(["paid-time/p", "waste", "warranty"], estimate.CostLines.Select(line => line.Id));
    }

    [Property(MaxTest = 300)]
    [Evidence(Basis.Identity, "whatever legal amounts: no exception; ids unique among lines and among gaps; lines add up or there is no price")]
    public void Nothing_legal_throws(int seed)
    {
        Random random = new(seed);
        decimal Amount() => random.Next(6) switch { 0 => 0m, 1 => 0.0001m, 2 => 1e9m, 3 => 999_999.999m, _ => random.Next(1, 10_000) / 100m };
        double Share() => random.Next(5) switch { 0 => 0, 1 => 99.9999999999999, 2 => 1e-12, _ => random.Next(0, 90) };
        string? Someone() => random.Next(3) switch { 0 => null, 1 => "anna", _ => "job" };
        decimal? Wage() => random.Next(3) switch { 0 => null, 1 => 30m, _ => Amount() };
        PriceBook book = new()
        {
            Currency = "USD",
            LabourRate = Wage(),
            Burden = Ratio.FromPercent(Share()),
            OverheadPerHour = Amount(),
            OverheadOfDirectCost = Ratio.FromPercent(Share()),
            TravelPerTrip = Amount(),
            DisposalPerJob = Amount(),
            ConsumablesPerFixture = Amount(),
            Materials = [.. Enumerable.Range(0, random.Next(0, 12)).Select(i => new MaterialPrice("m" + (i % 3), Volume.FromMilliliters(random.Next(1, 50) * 100), Amount()))],
            Options = [new("a", "option", "each", Amount(), random.Next(2) == 0 ? null : Amount()), new("b", "option", "each", Amount())],
            MinimumCharge = Amount(),
            TargetMargin = new Margin(Ratio.FromPercent(Share())),
            SalesTax = Ratio.FromPercent(Share()),
            CashStep = random.Next(3) == 0 ? 1e9m : 0.05m,
        };
        EstimateRequest job = new()
        {
            Labour = new LabourEstimate([.. Enumerable.Range(0, random.Next(0, 9)).Select(i => Hours("L-" + (i % 3), random.Next(1, 300) / 100.0) with { Worker = Someone(), Wage = Wage() })]),
            PaidTime = [.. Enumerable.Range(0, random.Next(0, 3)).Select(i => new PaidTime("p" + i, "paid", TimeSpan.FromHours(random.Next(0, 1000) * 1000)) { Wage = Wage() })],
            Materials = [.. Enumerable.Range(0, random.Next(0, 5)).Select(i => new MaterialNeed("m" + (i % 4), "material", Volume.FromMilliliters(random.Next(0, 1_000_000))))],
            Fixtures = random.Next(0, 3) * 50_000,
            Options = [.. Enumerable.Range(0, random.Next(0, 5)).Select(i => new OptionOrder(i % 2 == 0 ? "a" : "b", Math.Max(0.0001m, Amount())) { Fixture = Someone() })],
            WarrantyReserve = Amount(),
            Discount = Ratio.FromPercent(Share()),
            HoldMargin = random.Next(2) == 0,
        };
        PriceEstimate estimate = new(book, job);
        Assert.Distinct(estimate.CostLines.Select(line => line.Id));
        Assert.Distinct(estimate.Lines.Select(line => line.Id));
        Assert.Distinct(estimate.Gaps.Select(gap => gap.Id));
        Assert.Equal(estimate.IsComplete, estimate.Total is not null);
        Assert.Equal(estimate.Total ?? 0, estimate.Lines.Sum(line => line.Amount));
        Assert.Equal(estimate.Cost ?? 0, estimate.IsComplete ? estimate.CostLines.Sum(line => line.Amount) : 0);
        Assert.NotEmpty(estimate.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "ids cannot hold a slash; lists hold an id once; ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentException>(() => new MaterialPrice("a/b", Volume.FromLiters(1), 1m));
        Assert.Throws<ArgumentException>(() => new MaterialNeed(" a", "a", Volume.Zero));
        Assert.Throws<ArgumentException>(() => new OptionOrder("X-10") { Fixture = string.Empty });
        Assert.Throws<ArgumentException>(() => Book with { Options = [Book.Options[0], Book.Options[0]] });
        PaidTime wait = new("wait", "waiting", TimeSpan.FromHours(1));
        Assert.Throws<ArgumentException>(() => Job() with { PaidTime = [wait, wait] });
        Numbers.Refuses("time", () => _ = new PaidTime("wait", "waiting", TimeSpan.FromHours(-1)));
        Numbers.Refuses("Wage", () => _ = wait with { Wage = -1m });
        Numbers.Refuses("Wage", () => _ = Hours("L-1", 1) with { Wage = -1m });
        Numbers.Refuses("category", () => _ = new EstimateLine("a", (LineCategory)99, "a", "b", 1, "h", 1));
        Assert.Equal("waiting: 1 h", wait.ToString());
    }
}
