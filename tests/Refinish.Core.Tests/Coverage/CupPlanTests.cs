using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coverage;

public class CupPlanTests
{
    private static readonly VolumeFlow Rate = VolumeFlow.FromMillilitersPerMinute(60);

    [Fact]
    [Evidence(Basis.Independent, "by hand: 1234 mL out of 600 mL cups to 10 mL and 200 mL cups to 2 mL is exact with two large and one small, and not with two; as even as marks and cups allow, 520 + 520 + 194 and not 600 + 590 + 44")]
    public void A_fine_cup_takes_the_rest()
    {
        CupPlan plan = new(Volume.FromMilliliters(1234), Rate, TimeSpan.FromHours(2.5), TimeSpan.Zero, Two());
        Numbers.Near(0, plan.Excess.Milliliters, 1e-6);
        Assert.Equal(3, plan.Batches.Count);
        Numbers.Near(1234, plan.Mixed.Milliliters, 1e-6);
        Assert.Equal("520 mL + 520 mL + 194 mL", plan.ToString());
        Numbers.CanBeWritten(plan.Workings());
        Assert.NotEmpty(plan.Cautions);
    }

    [Property(MaxTest = 400)]
    [Evidence(Basis.Independent, "brute force over every set of batches of small cups: the same least total, then the same fewest batches; never less than the need, never beyond cup or pot life")]
    public void Least_waste_by_brute_force(byte needed, byte first, byte second, byte rate, byte sticks)
    {
        int[] graduations = [1 + (first % 4), 2 + (second % 5)];
        int[] capacities = [12 + (first % 9), 18 + (second % 13)];
        int[] smallest = [3 + (second % 4), 5 + (first % 6)];
        int residue = sticks % 3;
        int need = 1 + (needed % 70);
        double minutes = 0.7 * 20;
        double use = 1 + (rate % 30 / 10.0);
        CupRules rules = new()
        {
            Cups = [Cup(capacities[0], graduations[0], smallest[0]), Cup(capacities[1], graduations[1], smallest[1])],
            MixingTime = TimeSpan.Zero,
            Residue = Volume.FromMilliliters(residue),
        };
        CupPlan plan = new(Volume.FromMilliliters(need), VolumeFlow.FromMillilitersPerMinute(use), TimeSpan.FromMinutes(20), TimeSpan.Zero, rules);
        (int Total, int Count)? best = BruteForce(need, residue, graduations, capacities, smallest, use * minutes);
        Assert.Equal(best is not null, plan.IsPossible);
        Numbers.CanBeWritten(plan.Workings());
        if (best is null)
        {
            return;
        }

        Numbers.Near(best.Value.Total, plan.Mixed.Milliliters, 1e-6);
        Assert.Equal(best.Value.Count, plan.Batches.Count);
        Assert.True(plan.Delivered.Milliliters >= need - 1e-6);
        Assert.All(plan.Batches, batch => Assert.True(
            batch.Volume.Milliliters <= batch.Cup.Capacity.Milliliters + 1e-9 && batch.Volume.Milliliters >= batch.Cup.Smallest.Milliliters - 1e-9 && batch.Volume.Milliliters / use <= minutes + 1e-9, plan.ToString()));
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Identity, "millilitre cups beside fluid-ounce cups, which share no measure: whole graduations, enough, within every limit, and no worse than either sort alone")]
    public void Ounces_beside_millilitres(ushort needed, byte sticks)
    {
        Volume need = Volume.FromMilliliters(60 + (needed % 3000));
        MixingCup metric = Cup(600, 10, 100);
        MixingCup ounces = new(Volume.FromUsOunces(16), Volume.FromUsOunces(0.5), Volume.FromUsOunces(2));
        CupPlan both = Plan(need, sticks, metric, ounces);
        CupPlan one = Plan(need, sticks, metric);
        CupPlan other = Plan(need, sticks, ounces);
        Assert.True(both.IsPossible);
        Assert.True(both.Delivered.Milliliters >= need.Milliliters - 1e-5);
        Assert.True(both.Mixed.Milliliters <= Math.Min(one.Mixed.Milliliters, other.Mixed.Milliliters) + 1e-4);
        Assert.All(both.Batches, batch => Assert.True(batch.Volume.Milliliters <= batch.Cup.Capacity.Milliliters + 1e-6));
        Numbers.CanBeWritten(both.Workings());

        static CupPlan Plan(Volume need, byte sticks, params MixingCup[] cups) =>
            new(need, Rate, TimeSpan.FromHours(4), TimeSpan.Zero, new CupRules { Cups = cups, Residue = Volume.FromMilliliters(sticks % 20) });
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Identity, "spray time with induction and mixing never exceeds the share of the pot life at the site, whatever the temperature; volume is conserved through the split into cups")]
    public void Never_beyond_the_pot_life(byte warm, ushort needed, byte rate)
    {
        CureForecast inCup = new(GenericCatalogue.EpoxyPrimer.Cure, Temperature.FromDegreesCelsius(13 + (warm % 22)));
        double use = 5 + (rate / 2.0);
        CupPlan plan = new(Volume.FromMilliliters(50 + (needed % 5000)), VolumeFlow.FromMillilitersPerMinute(use), inCup, Two());
        Assert.True(plan.IsPossible);
        double share = 0.7 * inCup.PotLife!.Value.TotalMinutes;
        Assert.All(plan.Batches, batch => Assert.True((batch.Volume.Milliliters / use) + 5 + inCup.Induction!.Value.TotalMinutes <= share + 1e-6));
        double parts = plan.Batches.Select(batch => new PouredMix(GenericCatalogue.EpoxyPrimer, batch.Volume, Ratio.FromPercent(10)))
            .Sum(cup => cup.Parts.Sum(part => part.Volume.CubicMeters));
        Numbers.Close(plan.Mixed.CubicMeters, parts, 1e-12);
        Assert.True(plan.Mixed >= plan.Need || Math.Abs((plan.Mixed - plan.Need).Milliliters) < 1e-6);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 40 mL at 10 mL/min takes 4 min; 0.7 × 10 min − 5 min leaves 2 min: 20 mL/min, or 12.86 min of pot life, or 90 % of it, or 3 min of mixing would each do alone; 0.9/0.7 is the nearest together with the pot life")]
    public void Says_what_would_help()
    {
        CupPlan plan = new(Volume.FromMilliliters(200), VolumeFlow.FromMillilitersPerMinute(10), TimeSpan.FromMinutes(10), TimeSpan.Zero, new CupRules { Cups = [Cup(200, 2, 40)] });
        Assert.False(plan.IsPossible);
        Assert.Empty(plan.Batches);
        BatchRelaxation rate = plan.Relaxations.Single(one => one.Subject == "spraying rate");
        Numbers.Near(20, rate.To * 60e6, 1e-9);
        Numbers.Near(9 / 0.7, plan.Relaxations.Single(one => one.Subject.StartsWith("pot life", StringComparison.Ordinal)).To / 60, 1e-9);
        Numbers.Near(0.9, plan.Relaxations.Single(one => one.Subject.StartsWith("share", StringComparison.Ordinal)).To, 1e-12);
        Numbers.Near(3, plan.Relaxations.Single(one => one.Subject.StartsWith("time for mixing", StringComparison.Ordinal)).To / 60, 1e-9);
        Numbers.Near(20, plan.Relaxations.Single(one => one.Subject.StartsWith("smallest batch", StringComparison.Ordinal)).To * 1e6, 1e-9);
        Numbers.Near(Math.Log(0.9 / 0.7), plan.Relaxations[0].Effort, 1e-12);
        Assert.Contains("Nearest change that would do alone: ", plan.Objections[0], StringComparison.Ordinal);
        Numbers.CanBeWritten(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "each relaxation alone, taken up, makes the plan possible, and a hair less does not")]
    public void Each_relaxation_works()
    {
        CureTimes quick = GenericCatalogue.EpoxyPrimer.Cure with { PotLife = TimeSpan.FromMinutes(30), Induction = TimeSpan.FromMinutes(5) };
        CupRules rules = new() { Cups = [Cup(200, 2, 40)] };
        VolumeFlow slow = VolumeFlow.FromMillilitersPerMinute(10);
        CureForecast hot = new(quick, Temperature.FromDegreesCelsius(34));
        CupPlan plan = new(Volume.FromMilliliters(200), slow, hot, rules);
        Assert.False(plan.IsPossible);
        BatchRelaxation cooler = plan.Relaxations.Single(one => one.Subject == "temperature of the mix");
        Temperature to = Temperature.FromKelvins(cooler.To);
        Assert.True(new CupPlan(Volume.FromMilliliters(200), slow, new CureForecast(quick, to - TemperatureDelta.FromKelvins(0.001)), rules).IsPossible);
        Assert.False(new CupPlan(Volume.FromMilliliters(200), slow, new CureForecast(quick, to + TemperatureDelta.FromKelvins(0.1)), rules).IsPossible);
        BatchRelaxation faster = plan.Relaxations.Single(one => one.Subject == "spraying rate");
        Assert.True(new CupPlan(Volume.FromMilliliters(200), VolumeFlow.FromCubicMetersPerSecond(faster.To * 1.0001), hot, rules).IsPossible);
        BatchRelaxation share = plan.Relaxations.Single(one => one.Subject.StartsWith("share", StringComparison.Ordinal));
        Assert.True(new CupPlan(Volume.FromMilliliters(200), slow, hot, rules with { PotLifeShare = Ratio.FromDecimalFractions(share.To * 1.0001) }).IsPossible);
        Assert.False(new CupPlan(Volume.FromMilliliters(200), slow, hot, rules with { PotLifeShare = Ratio.FromDecimalFractions(share.To * 0.999) }).IsPossible);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: the last millilitre takes the fine cup, which holds 250; what is left, at least 39 621 mL, takes 20 of the large ones, so 21 in all")]
    public void A_large_need_is_exact_too()
    {
        CupPlan plan = new(Volume.FromMilliliters(39871), Rate, null, TimeSpan.Zero, new CupRules { Cups = [Cup(2000, 10, 300), Cup(600, 5, 50), Cup(250, 1, 25)] });
        Numbers.Near(39871, plan.Mixed.Milliliters, 1e-4);
        Assert.Equal(21, plan.Batches.Count);
        Assert.Empty(plan.Cautions);
        Numbers.CanBeWritten(plan.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "outside the product's temperatures there are no batches, and the plan says by how much")]
    public void No_times_no_batches()
    {
        CupPlan plan = new(Volume.FromMilliliters(500), Rate, new CureForecast(GenericCatalogue.EpoxyPrimer.Cure, Temperature.FromDegreesCelsius(5)), Two());
        Assert.False(plan.IsPossible);
        Assert.StartsWith("The product gives no times: lowest temperature for cure: 5 °C", plan.Objections[0], StringComparison.Ordinal);
        Assert.Equal(0, plan.Waste.CubicMeters);
    }

    [Fact]
    [Evidence(Basis.Contract, "cups and rules that cannot be are refused")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("graduation", () => _ = Cup(100, 200, 0));
        Numbers.Refuses("smallest", () => _ = Cup(100, 5, 101));
        Numbers.Refuses("Cups", () => _ = new CupRules { Cups = [.. Enumerable.Repeat(Cup(100, 5, 10), 9)] });
        Numbers.Refuses("need", () => _ = new CupPlan(Volume.Zero, Rate, null, TimeSpan.Zero, Two()));
        Numbers.Refuses("Residue", () => _ = Two() with { Residue = Volume.FromLiters(2) });
        Numbers.Refuses("graduation", () => _ = new MixingCup(Volume.FromMilliliters(600), Volume.FromMilliliters(5e-6), Volume.Zero));
        Numbers.Refuses("use", () => _ = new CupPlan(Volume.FromMilliliters(1), VolumeFlow.Zero, null, TimeSpan.Zero, Two()));
        Numbers.Refuses("potLife", () => _ = new CupPlan(Volume.FromMilliliters(1), Rate, TimeSpan.Zero, TimeSpan.Zero, Two()));
        Numbers.Refuses("induction", () => _ = new CupPlan(Volume.FromMilliliters(1), Rate, null, TimeSpan.FromMinutes(-1), Two()));
        Numbers.Refuses("PotLifeShare", () => _ = Two() with { PotLifeShare = Ratio.FromPercent(120) });
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 1300 mL in 600 mL cups is three; 260 graduations of 5 mL dealt out as 87, 87, 86; 0.7 × 150 min − 5 min leaves 100 min")]
    public void Three_cups_share_the_need()
    {
        CupPlan plan = new(Volume.FromMilliliters(1300), Rate, TimeSpan.FromHours(2.5), TimeSpan.Zero, CupRules.Generic);
        Assert.Equal([435, 435, 430], plan.Batches.Select(batch => Math.Round(batch.Volume.Milliliters, 9)));
        Numbers.Close(100, plan.TimeToUse!.Value.TotalMinutes);
        Assert.True(plan.IsLeast);
        Numbers.CanBeWritten(plan.Workings());
        Assert.Equal("600 mL cup, to 5 mL; within 70 % of the pot life", CupRules.Generic.ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 0.7 × 20 min − 5 min leaves 9 min; at 10 mL/min that is 90 mL, so 200 mL takes three")]
    public void A_short_pot_life_limits_the_cup()
    {
        VolumeFlow slow = VolumeFlow.FromMillilitersPerMinute(10);
        CupPlan plan = new(Volume.FromMilliliters(200), slow, TimeSpan.FromMinutes(20), TimeSpan.Zero, CupRules.Generic);
        Assert.Equal([70, 65, 65], plan.Batches.Select(batch => Math.Round(batch.Volume.Milliliters, 9)));
        CupPlan late = new(Volume.FromMilliliters(500), Rate, TimeSpan.FromMinutes(20), TimeSpan.FromMinutes(15), CupRules.Generic);
        Assert.StartsWith(
            "No time is left to spray: induction and mixing take 20 min of the 14 min",
            late.Objections[0], StringComparison.Ordinal);
        Assert.False(late.IsLeast);
        Assert.Equal(TimeSpan.Zero, late.TimeToUse);
    }

    [Property(MaxTest = 500)]
    [Evidence(Basis.Independent, "one cup: fewest batches by counting up, excess below one graduation unless the smallest batch rules, never above cup or pot life")]
    public void One_cup_covers_the_need_within_every_limit(ushort needed, byte rate, byte life, byte size, byte fine)
    {
        double need = 1 + (needed % 4000);
        double step = 1 + (fine % 25);
        CupRules rules = new() { Cups = [Cup(100 + (size * 4), step, 50)] };
        VolumeFlow use = VolumeFlow.FromMillilitersPerMinute(1 + (rate / 4.0));
        TimeSpan pot = TimeSpan.FromMinutes(5 + life);
        CupPlan plan = new(Volume.FromMilliliters(need), use, pot, TimeSpan.FromMinutes(2), rules);
        Numbers.CanBeWritten(plan.Workings());
        double limit = Math.Min(100 + (size * 4), use.MillilitersPerMinute * Math.Max(0, (0.7 * pot.TotalMinutes) - 7));
        double largest = step * Math.Floor((limit / step) + 1e-9);
        double smallest = step * Math.Ceiling((50 / step) - 1e-9);
        Assert.Equal(largest >= smallest, plan.IsPossible);
        if (!plan.IsPossible)
        {
            Assert.NotEmpty(plan.Objections);
            return;
        }

        Assert.All(plan.Batches, batch => Assert.InRange(batch.Volume.Milliliters, smallest - 1e-6, limit + 1e-6));
        Assert.True(plan.Mixed.Milliliters >= need - 1e-6);
        int fewest = 1;
        while (fewest * largest < need - 1e-6)
        {
            fewest++;
        }

        Assert.Equal(fewest, plan.Batches.Count);
        Assert.True(plan.Mixed.Milliliters < Math.Max(need + step, (fewest * smallest) + 1e-6), plan.ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 1005 mL in a 600 mL cup to 5 mL are two of 505 mL or three of 335 mL, which leaves nothing over; of 1000 mL two halves")]
    public void Equal_batches_are_equal()
    {
        CupRules rules = CupRules.Generic with { EqualBatches = true };
        Assert.Equal([335, 335, 335], Volumes(new(Volume.FromMilliliters(1005), Rate, null, TimeSpan.Zero, rules)));
        Assert.Equal([500, 500], Volumes(new(Volume.FromMilliliters(1000), Rate, null, TimeSpan.Zero, rules)));
        Assert.EndsWith("; equal batches", rules.ToString(), StringComparison.Ordinal);

        static double[] Volumes(CupPlan plan) => [.. plan.Batches.Select(batch => Math.Round(batch.Volume.Milliliters, 9))];
    }

    [Property(MaxTest = 400)]
    [Evidence(Basis.Independent, "brute force over every number and size of equal batches in each cup: the same least total, then the same fewest batches")]
    public void Equal_batches_by_brute_force(byte needed, byte first, byte second, byte sticks)
    {
        int[] graduations = [1 + (first % 4), 2 + (second % 5)];
        int[] capacities = [12 + (first % 9), 18 + (second % 13)];
        int[] smallest = [3 + (second % 4), 5 + (first % 6)];
        int residue = sticks % 3;
        int need = 1 + (needed % 200);
        CupRules rules = new()
        {
            Cups = [Cup(capacities[0], graduations[0], smallest[0]), Cup(capacities[1], graduations[1], smallest[1])],
            Residue = Volume.FromMilliliters(residue),
            EqualBatches = true,
        };
        CupPlan plan = new(Volume.FromMilliliters(need), Rate, null, TimeSpan.Zero, rules);
        (int Total, int Count) best = (int.MaxValue, 0);
        for (int c = 0; c < 2; c++)
        {
            for (int size = graduations[c]; size <= capacities[c]; size += graduations[c])
            {
                for (int n = 1; n <= 250 && size >= smallest[c]; n++)
                {
                    bool better = size * n < best.Total || (size * n == best.Total && n < best.Count);
                    if (n * (size - residue) >= need && better)
                    {
                        best = (size * n, n);
                    }
                }
            }
        }

        Assert.True(plan.IsPossible && plan.IsLeast);
        Numbers.Near(best.Total, plan.Mixed.Milliliters, 1e-6);
        Assert.Equal(best.Count, plan.Batches.Count);
        Assert.Single(plan.Batches.Distinct());
    }

    [Fact]
    [Evidence(Basis.Identity, "three graduations without a common measure: whole graduations, enough, within every cup, no worse than each cup alone; what is not proved the least says so")]
    public void Unlike_graduations_do_not_throw()
    {
        MixingCup[] odd = [Cup(600, Math.PI, 50), Cup(600, Math.E, 50), Cup(600, Math.Sqrt(2), 50)];
        CupPlan plan = new(Volume.FromLiters(2), Rate, null, TimeSpan.Zero, new CupRules { Cups = odd });
        Assert.True(plan.IsPossible);
        Assert.False(plan.IsLeast);
        Assert.True(plan.Delivered.Milliliters >= 2000 - 1e-5);
        Assert.All(plan.Batches, batch => Numbers.Close(batch.Graduations * batch.Cup.Graduation.Milliliters, batch.Volume.Milliliters));
        Assert.All(plan.Batches, batch => Assert.InRange(batch.Volume.Milliliters, 50 - 1e-9, 600 + 1e-9));
        Assert.All(
            odd,
            cup => Assert.True(plan.Mixed <= new CupPlan(Volume.FromLiters(2), Rate, null, TimeSpan.Zero, new CupRules { Cups = [cup] }).Mixed));
    }

    [Fact]
    [Evidence(Basis.Contract, "fine marks, and needs of more than 1000 batches, take neither gigabytes nor minutes: a plan, or an objection that says what would help")]
    public void Extreme_cups_are_bounded()
    {
        MixingCup fine = Cup(600, 0.001, 0);
        MixingCup odd = Cup(20000, Math.PI / 1000, 0);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Volume need = Volume.FromLiters(99.9999995);
        CupRules mixed = new() { Cups = [fine, odd, Cup(20000, Math.E, 100)], Residue = Volume.FromMilliliters(0.1) };
        CupRules alike = new() { Cups = [fine, odd], EqualBatches = true };
        CupPlan exact = new(need, Rate, null, TimeSpan.Zero, new CupRules { Cups = [fine] });
        CupPlan several = new(need, Rate, null, TimeSpan.Zero, mixed);
        CupPlan tiny = new(Volume.FromLiters(100), Rate, null, TimeSpan.Zero, new CupRules { Cups = [Cup(0.001, 0.0001, 0)] });
        CupPlan equal = new(need, Rate, null, TimeSpan.Zero, alike);
        long bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.Equal(167, exact.Batches.Count);
        Numbers.Near(100000, exact.Mixed.Milliliters, 0.002);
        Assert.True(several.Delivered.Milliliters >= 99999.999);
        Assert.True(equal.Delivered.Milliliters >= 99999.999 && equal.Batches.Distinct().Count() == 1);
        Assert.StartsWith(
            "The need takes more than 1000 batches, since none delivers more than 0.001 mL.",
            Assert.Single(tiny.Objections), StringComparison.Ordinal);
        Assert.True(bytes < 20_000_000, bytes.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    private static MixingCup Cup(double capacity, double graduation, double smallest) =>
        new(Volume.FromMilliliters(capacity), Volume.FromMilliliters(graduation), Volume.FromMilliliters(smallest));

    private static CupRules Two() => new() { Cups = [Cup(600, 10, 100), Cup(200, 2, 40)] };

    /// <summary>Grows sets of batches one by one and keeps, for each total, the fewest; stops once a total is dearer than the best that delivers.</summary>
    private static (int Total, int Count)? BruteForce(int need, int residue, int[] graduations, int[] capacities, int[] smallest, double limit)
    {
        List<int> sizes = [];
        for (int c = 0; c < graduations.Length; c++)
        {
            List<int> lines = [];
            for (int v = graduations[c]; v <= Math.Min(capacities[c], limit + 1e-9); v += graduations[c])
            {
                if (v >= smallest[c])
                {
                    lines.Add(v);
                }
            }

            // A cup that cannot give more than what sticks in it is no cup to plan with.
            if (lines.Count > 0 && lines.Max() > residue)
            {
                sizes.AddRange(lines);
            }
        }

        (int Total, int Count)? best = null;
        Dictionary<(int, int), bool> seen = [];
        void Grow(int total, int count)
        {
            if (best is { } known && (total > known.Total || (total == known.Total && count >= known.Count)))
            {
                return;
            }

            if (total - (residue * count) >= need)
            {
                best = (total, count);
                return;
            }

            if (count > need || total > 4 * (need + 40) || !seen.TryAdd((total, count), true))
            {
                return;
            }

            foreach (int size in sizes)
            {
                Grow(total + size, count + 1);
            }
        }

        if (sizes.Count > 0)
        {
            Grow(0, 0);
        }

        return best;
    }
}
