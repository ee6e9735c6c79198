using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class EstimateRangeTests
{
    // Invented for the test.
    private static readonly PriceBook Book = new()
    {
        Currency = Currency.Of("USD"),
        LabourRate = 30m,
        Burden = Ratio.FromPercent(22),
        OverheadPerHour = 9m,
        OverheadOfDirectCost = Ratio.FromPercent(5),
        TravelPerTrip = 25m,
        DisposalPerJob = 10m,
        ConsumablesPerFixture = 35m,
        Materials = [new("topcoat", Volume.FromMilliliters(1183), 78m), new("topcoat", Volume.FromMilliliters(4732), 240m), new("primer", Volume.FromMilliliters(946), 52.35m)],
        Options = [new() { Code = "X-10", Description = "slip-resistant floor", Unit = LineUnit.Each, Cost = 6m, Price = 75m }, new() { Code = "X-20", Description = "colour change", Unit = LineUnit.Each, Cost = 40m }],
        TargetMargin = new Margin(Ratio.FromPercent(45)),
    };

    private static readonly SimulationOptions Few = new() { Trials = 20_000 };

    private static EstimateRequest Job(IReadOnlyList<LabourTask>? tasks = null) => new()
    {
        Labour = new LabourEstimate(tasks ?? [.. LabourStandards.Generic.Where(standard => standard.Repairs is null).Select(standard => new LabourTask { Standard = standard, Area = Area.FromSquareMeters(2.6), Units = 1 })], 1.1, 1),
        Materials = [new("topcoat", "topcoat", Volume.FromMilliliters(2490)), new("primer", "primer", Volume.FromMilliliters(327))],
        Fixtures = 1,
        Options = [new OptionOrder { Code = "X-10" }, new OptionOrder { Code = "X-20" }],
        WarrantyReserve = 20.73m,
    };

    private static PriceEstimate Estimate() => new(Book, Job());

    private static Ratio Percent(double percent) => Ratio.FromPercent(percent);

    [Fact]
    [Evidence(Basis.Independent, "with hours that are exact to hundredths nothing varies, and the cost is that of the estimate to the rounding of its lines")]
    public void Without_doubt_the_cost_is_that_of_the_estimate()
    {
        LabourStandard exact = LabourStandards.SetUp with { PerUnit = ThreePoint.Exactly(2.5) };
        PriceEstimate estimate = new(Book, Job([new LabourTask { Standard = exact, Units = 1 }]) with { Labour = new LabourEstimate([new LabourTask { Standard = exact, Units = 1 }]) });
        EstimateRange range = EstimateRange.Of(estimate, EstimateUncertainty.HoursOnly, Few);
        Numbers.Near((double)estimate.Cost!.Value, range.Cost.Mean, 0.02);
        Numbers.Near(0, range.Cost.StandardDeviation, 1e-9);
        Assert.Equal(0, range.ChanceOfLoss.DecimalFractions);
        Assert.Empty(range.Tornado());
    }

    [Fact]
    [Evidence(Basis.Independent, "cost is linear in hours: its mean is that of the estimate, its deviation (rate × 1.05 + overhead per hour) times that of the hours, which add up in squares")]
    public void Hours_alone_make_a_linear_cost()
    {
        PriceEstimate estimate = Estimate();
        EstimateRange range = EstimateRange.Of(estimate);
        double rate = (36.6 * 1.05) + 9;
        Numbers.Near((double)estimate.Cost!.Value, range.Cost.Mean, 0.005 * 18 * rate);
        Numbers.Close(estimate.Request.Labour.BetaPertDeviation.TotalHours, range.Hours.StandardDeviation, 0.01);
        Numbers.Close(rate * range.Hours.StandardDeviation, range.Cost.StandardDeviation, 1e-6);
        Numbers.Close(estimate.Request.Labour.Hours.TotalHours, range.Hours.Mean, 1e-4);
        Assert.Equal("beta-PERT, (µ − a)(b − µ)/7, tasks independent (a lower bound)", range.HourVariance);
    }

    [Fact]
    [Evidence(Basis.Independent, "lognormal readings with correlation: deviation by √(Σσ² + ρ((Σσ)² − Σσ²)) of normal scores, near enough for small spreads")]
    public void Correlation_widens_the_range()
    {
        EstimateUncertainty doubts = new() { Hours = ThreePointReading.LognormalClassicPert };
        EstimateRange range = EstimateRange.Of(Estimate(), doubts, new SimulationOptions { Correlation = Percent(50) });
        Numbers.Close(Estimate().Request.Labour.Deviation(ThreePointReading.LognormalClassicPert, Percent(50)).TotalHours, range.Hours.StandardDeviation, 0.02);
        Assert.Equal("lognormal with the classic PERT variance ((b − a)/6)², tasks correlated by 50 %", range.HourVariance);
        Assert.True(range.Cost.P90 > EstimateRange.Of(Estimate(), doubts).Cost.P90);
    }

    [Fact]
    [Evidence(Basis.Independent, "2490 mL × uniform .9 to 1.1: three kits of 1183 mL (234) hold up to 3549 mL, two (156) up to 2366 mL, so a chance of (2366/2490 − .9)/.2 = 25.1 % of saving 78 with overhead of 5 %")]
    public void Kits_stay_whole()
    {
        LabourStandard exact = LabourStandards.SetUp with { PerUnit = ThreePoint.Exactly(2.5) };
        PriceEstimate estimate = new(Book, Job() with { Labour = new LabourEstimate([new LabourTask { Standard = exact, Units = 1 }]) });
        EstimateUncertainty doubts = new() { Quantities = [new QuantityFactor { Name = "area", Distribution = new UniformDistribution(0.9, 1.1), Items = ["topcoat"] }] };
        EstimateRange range = EstimateRange.Of(estimate, doubts);
        Numbers.Near(78 * 1.05, range.Cost.Maximum - range.Cost.Minimum, 1e-9);
        double share = ((2366 / 2490.0) - 0.9) / 0.2;
        Numbers.Near(1 - share, range.Cost.ChanceAbove((range.Cost.Minimum + range.Cost.Maximum) / 2).DecimalFractions, 1e-4);
    }

    [Property]
    [Evidence(Basis.Independent, "the staircase of kit costs agrees with a purchase made for each need")]
    public void The_staircase_is_the_purchase(PositiveInt number)
    {
        KitStaircase staircase = new(new KitPurchase(Volume.FromLiters(1), [.. Book.Materials.Take(2)]), 0.5e-3, 12e-3);
        double need = number.Get % 15_000 / 1e6;
        Assert.Equal((double)new KitPurchase(Volume.FromCubicMeters(need), [.. Book.Materials.Take(2)]).Cost, staircase.CostOf(need));
    }

    [Fact]
    [Evidence(Basis.Independent, "60 % assumed, 50 % real: a fifth more is sprayed; hours by area follow the area and no others")]
    public void Factors_act_where_they_say()
    {
        QuantityFactor gun = QuantityFactor.Transfer(Percent(60), new ExactValue(0.5), ["topcoat"]);
        Numbers.Close(1.2, gun.Of(0.5), 1e-15);
        Assert.True(gun.Multiplies("topcoat") && !gun.Multiplies("primer"));
        EstimateUncertainty larger = new() { Quantities = [new QuantityFactor { Name = "area", Distribution = new ExactValue(1.1), ScalesAreaLabour = true }] };
        LabourEstimate labour = Estimate().Request.Labour;
        double byArea = labour.Lines.Sum(line => line.Task.Standard.PerSquareMeter.Mean * 2.6 * 1.1);
        Numbers.Near(labour.Hours.TotalHours + (0.1 * byArea), EstimateRange.Of(Estimate(), larger, Few).Hours.Mean, 1e-3);
        Numbers.Refuses("real", () => QuantityFactor.Transfer(Percent(60), new NormalDistribution(0.5, 0.2), ["topcoat"]));
    }

    [Property(MaxTest = 10)]
    [Evidence(Basis.Identity, "a dearer price loses less often; the price for a chance of profit loses with what is left of it; a margin on top is more")]
    public void Prices_and_chances_agree(PositiveInt number)
    {
        EstimateUncertainty doubts = new()
        {
            KitPrices = new TriangularDistribution(0.95, 1, 1.2),
            LabourRate = new UniformDistribution(0.97, 1.05),
            Extras = [new UncertainInput { Name = "second visit", Distribution = new UniformDistribution(0, 60) }],
        };
        EstimateRange range = EstimateRange.Of(Estimate(), doubts, Few with { Seed = (ulong)number.Get, Correlation = Percent(30) });
        double p = 1 + (number.Get % 98);
        decimal price = range.PriceForChanceOfProfit(Percent(p));
        Numbers.Near((100 - p) / 100, range.ChanceOfLossAt(price).DecimalFractions, 1e-3);
        Assert.True(range.ChanceOfLossAt(price + 5) <= range.ChanceOfLossAt(price));
        Assert.True(range.PriceForMargin(new Margin(Percent(45)), Percent(p)) >= (price - 0.01m) / 0.55m);
        Assert.True(range.PriceForChanceOfProfit(Percent(p + 1)) >= price);
    }

    [Fact]
    [Evidence(Basis.Contract, "one seed gives one result whatever the number of threads; text, tornado and refusals")]
    public void Behaves()
    {
        SimulationOptions options = Few with { Threads = 1, Correlation = Percent(40) };
        EstimateRange one = EstimateRange.Of(Estimate(), EstimateUncertainty.HoursOnly, options);
        EstimateRange many = EstimateRange.Of(Estimate(), EstimateUncertainty.HoursOnly, options with { Threads = 4 });
        Assert.Equal(one.Cost.P90, many.Cost.P90);
        Assert.Equal(one.Cost.Mean, many.Cost.Mean);
        Numbers.CanBeWritten(one.Workings());
        Assert.StartsWith("cost P10 ", one.ToString(), StringComparison.Ordinal);
        IReadOnlyList<TornadoBar> bars = one.Tornado();
        Assert.Equal(bars.OrderByDescending(bar => bar.Swing).Select(bar => bar.Name), bars.Select(bar => bar.Name));
        Assert.Contains(bars, bar => bar.Name.StartsWith("L-21", StringComparison.Ordinal));
        Assert.Throws<ArgumentException>(() => EstimateRange.Of(new PriceEstimate(Book with { LabourRate = null }, Job())));
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => EstimateRange.Of(Estimate(), EstimateUncertainty.HoursOnly, Few, null, stop.Token));
        EstimateUncertainty absurd = new() { Quantities = [new QuantityFactor { Name = "area", Distribution = new UniformDistribution(1, 1e6) }] };
        Assert.Throws<ArgumentOutOfRangeException>(() => EstimateRange.Of(Estimate(), absurd, Few));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 2.5 h at 40 × 1.22 and 1.5 h waiting at 30 × 1.22 = 176.90, × 1.05, + 4 h × 9; the wages vary by a factor of exactly 2")]
    public void Wages_and_paid_time_count()
    {
        LabourStandard exact = LabourStandards.SetUp with { PerUnit = ThreePoint.Exactly(2.5) };
        EstimateRequest job = new()
        {
            Labour = new LabourEstimate([new LabourTask { Standard = exact, Units = 1, Worker = "anna", Wage = 40m }]),
            PaidTime = [new PaidTime { Id = "wait", Description = "waiting on site", Time = TimeSpan.FromHours(1.5) }],
            Materials = [],
            Fixtures = 0,
            Trips = 0,
        };
        PriceEstimate estimate = new(Book with { DisposalPerJob = 0m }, job);
        Assert.Equal(122m + 54.90m + 8.85m + 36m, estimate.Cost);
        EstimateRange range = EstimateRange.Of(estimate, EstimateUncertainty.HoursOnly, Few);
        Numbers.Near((176.90 * 1.05) + 36, range.Cost.Mean, 1e-9);
        Numbers.Near(4, range.Hours.Mean, 1e-12);
        EstimateRange twice = EstimateRange.Of(estimate, new EstimateUncertainty { LabourRate = new ExactValue(2) }, Few);
        Numbers.Near((176.90 * 2 * 1.05) + 36, twice.Cost.Mean, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "overhead by hours counts labour by whatever code")]
    public void Overhead_does_not_depend_on_codes()
    {
        LabourStandard own = LabourStandards.SetUp with { Code = "mask" };
        PriceEstimate estimate = new(Book, Job() with { Labour = new LabourEstimate([new LabourTask { Standard = own, Units = 1 }]) });
        Assert.Equal(0.481m, estimate.Lines.Single(line => line.Id == "overhead/hours").Quantity);
    }
}
