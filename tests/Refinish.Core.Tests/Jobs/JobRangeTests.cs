using System;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class JobRangeTests
{
    private static readonly Job Job = InventedJobs.OccupiedHouse();
    private static readonly SimulationOptions Hundred = new() { Trials = 100, Seed = 7 };
    private static readonly JobUncertainty Sure = new() { Area = null, TransferEfficiency = null, ComesBack = Ratio.Zero };

    [Fact]
    [Evidence(Basis.Identity, "with nothing in doubt every trial is the plan: price, cost and paid hours")]
    public void Nothing_in_doubt_gives_the_plan()
    {
        Job exact = Job with
        {
            Shop = Job.Shop with
            {
                Labour = [.. Job.Shop.Labour.Select(standard => standard with
                {
                    Fixed = ThreePoint.Exactly(standard.Fixed.Mean),
                    PerSquareMeter = ThreePoint.Exactly(standard.PerSquareMeter.Mean),
                    PerUnit = ThreePoint.Exactly(standard.PerUnit.Mean),
                })],
            },
        };
        JobPlan plan = exact.Plan();
        JobRange range = JobRange.Of(exact, Sure, Hundred);
        Assert.Equal(0, range.WithoutPrice);
        Assert.Equal((double)plan.Price!.Total!.Value, range.Total!.P10, 6);
        Assert.Equal((double)plan.Price.Total!.Value, range.Total.P90, 6);
        Assert.Equal((double)plan.Price.Cost!.Value, range.Cost!.P50, 6);
        Assert.Equal(plan.Schedule!.Paid.Paid.TotalHours, range.Hours!.P50, 6);
    }

    [Fact]
    [Evidence(Basis.Contract, "a job without a price has a range without results: every trial is counted as one without price, nothing is thrown")]
    public void A_job_without_a_price_has_no_results()
    {
        Job attic = Job with { Fixtures = [.. Job.Fixtures.Select(fixture => fixture with { Room = "attic" })] };
        JobRange range = JobRange.Of(attic, new JobUncertainty(), Hundred);
        Assert.Equal(100, range.WithoutPrice);
        Assert.Null(range.Total);
        Assert.Null(range.Cost);
        Assert.Null(range.Hours);
        Assert.Null(range.ChanceOfLoss);
        Assert.Equal("no price in any trial", range.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "somebody who always comes back costs at least the hour of touching up at the wage of the shop")]
    public void Coming_back_costs_an_hour_and_more()
    {
        JobRange never = JobRange.Of(Job, Sure, Hundred);
        JobRange always = JobRange.Of(Job, Sure with { ComesBack = Ratio.FromPercent(100), TouchUp = TimeSpan.FromHours(1) }, Hundred);
        Assert.True(always.Hours!.P50 >= never.Hours!.P50 + 1);
        Assert.True(always.Cost!.P50 > never.Cost!.P50 + 30);
    }

    [Fact]
    [Evidence(Basis.Contract, "an area factor that is mostly below a tenth or above ten is refused by name")]
    public void Areas_that_are_no_areas_are_refused()
    {
        Numbers.Refuses("Area", () => _ = new JobUncertainty { Area = new TriangularDistribution(-2, -1.5, -1) });
        Numbers.Refuses("Area", () => _ = new JobUncertainty { Area = new TriangularDistribution(0.001, 1, 1000) });
    }
}
