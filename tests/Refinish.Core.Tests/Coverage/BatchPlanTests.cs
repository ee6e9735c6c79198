using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Coverage;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coverage;

public class BatchPlanTests
{
    private static readonly BatchRules Rules = new() { CupVolume = Volume.FromMilliliters(600) };

    [Fact]
    [Evidence(Basis.Independent, "by hand: 1300 mL in 600 mL cups is three; 260 graduations of 5 mL dealt out as 87, 87, 86")]
    public void Three_cups_share_the_need()
    {
        BatchPlan plan = new(Volume.FromMilliliters(1300), VolumeFlow.FromMillilitersPerMinute(60), TimeSpan.FromHours(2.5), TimeSpan.Zero, Rules);
        Assert.Equal([435, 435, 430], plan.Batches.Select(batch => Math.Round(batch.Milliliters, 9)));
        Numbers.Close(100, plan.TimeToUse!.Value.TotalMinutes);
        Numbers.HoldsToKernel(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 0.7 × 20 min − 5 min leaves 9 min; at 10 mL/min that is 90 mL, so 200 mL takes three")]
    public void A_short_pot_life_limits_the_cup()
    {
        BatchPlan plan = new(Volume.FromMilliliters(200), VolumeFlow.FromMillilitersPerMinute(10), TimeSpan.FromMinutes(20), TimeSpan.Zero, Rules);
        Numbers.Close(90, plan.LargestBatch.Milliliters);
        Assert.Equal([70, 65, 65], plan.Batches.Select(batch => Math.Round(batch.Milliliters, 9)));
    }

    [Property(MaxTest = 500)]
    [Evidence(Basis.Identity, "never less than the need, never above cup or pot life, waste below one graduation unless the smallest batch rules; fewest batches by brute force")]
    public void Batches_cover_the_need_within_every_limit(ushort needed, byte rate, byte life, byte cup, byte fine)
    {
        double need = 1 + (needed % 4000);
        BatchRules rules = Rules with { CupVolume = Volume.FromMilliliters(100 + (cup * 4)), Graduation = Volume.FromMilliliters(1 + (fine % 25)) };
        VolumeFlow use = VolumeFlow.FromMillilitersPerMinute(1 + (rate / 4.0));
        TimeSpan pot = TimeSpan.FromMinutes(5 + life);
        BatchPlan plan = new(Volume.FromMilliliters(need), use, pot, TimeSpan.FromMinutes(2), rules);
        Numbers.HoldsToKernel(plan.Workings());
        double step = rules.Graduation.Milliliters;
        double limit = Math.Min(rules.CupVolume.Milliliters, use.MillilitersPerMinute * Math.Max(0, (0.7 * pot.TotalMinutes) - 7));
        double largest = step * Math.Floor((limit / step) + 1e-9);
        Assert.Equal(largest >= 50, plan.IsPossible);
        if (!plan.IsPossible)
        {
            Assert.Empty(plan.Batches);
            Assert.NotEmpty(plan.Objections);
            return;
        }

        Assert.All(plan.Batches, batch => Assert.True(batch.Milliliters <= limit + 1e-6 && batch.Milliliters >= 50 - 1e-6, plan.ToString()));
        Assert.True(plan.Mixed.Milliliters >= need - 1e-6);
        int fewest = 1;
        while (fewest * largest < need - 1e-6)
        {
            fewest++;
        }

        Assert.Equal(fewest, plan.Batches.Count);
        double smallest = step * Math.Ceiling((50 / step) - 1e-9);
        Assert.True(plan.Mixed.Milliliters < Math.Max(need + step, (fewest * smallest) + 1e-6), plan.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "when nothing fits the plan says why and what would help")]
    public void Says_why_nothing_fits()
    {
        BatchPlan late = new(Volume.FromMilliliters(500), VolumeFlow.FromMillilitersPerMinute(60), TimeSpan.FromMinutes(20), TimeSpan.FromMinutes(15), Rules);
        Assert.False(late.IsPossible);
        Assert.StartsWith("No time is left to spray: induction and mixing take 20 min of the 14 min", late.Objections[0], StringComparison.Ordinal);
        BatchPlan coarse = new(Volume.FromMilliliters(500), VolumeFlow.FromMillilitersPerMinute(60), null, TimeSpan.Zero, Rules with { CupVolume = Volume.FromMilliliters(40) });
        Assert.StartsWith("The largest batch that cup and pot life allow is 40 mL", coarse.Objections[0], StringComparison.Ordinal);
        Numbers.HoldsToKernel(late.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "quantities, times and rules that cannot be are refused")]
    public void Refuses_what_cannot_be()
    {
        VolumeFlow use = VolumeFlow.FromMillilitersPerMinute(60);
        Numbers.Refuses("need", () => _ = new BatchPlan(Volume.Zero, use, null, TimeSpan.Zero, Rules));
        Numbers.Refuses("use", () => _ = new BatchPlan(Volume.FromMilliliters(1), VolumeFlow.Zero, null, TimeSpan.Zero, Rules));
        Numbers.Refuses("potLife", () => _ = new BatchPlan(Volume.FromMilliliters(1), use, TimeSpan.Zero, TimeSpan.Zero, Rules));
        Numbers.Refuses("induction", () => _ = new BatchPlan(Volume.FromMilliliters(1), use, null, TimeSpan.FromMinutes(-1), Rules));
        Numbers.Refuses("CupVolume", () => _ = Rules with { CupVolume = Volume.Zero });
        Numbers.Refuses("PotLifeShare", () => _ = Rules with { PotLifeShare = Ratio.FromPercent(120) });
    }
}
