using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class RepeatedWorkTests
{
    private static LearningCurve Wright(double slope) => new(LearningModel.CumulativeAverage, Ratio.FromPercent(slope));

    private static LearningCurve Crawford(double slope) => new(LearningModel.Unit, Ratio.FromPercent(slope));

    [Theory]
    [InlineData(1, 100, 100)]
    [InlineData(2, 80, 160)]
    [InlineData(4, 64, 256)]
    [InlineData(8, 51.2, 409.6)]
    [InlineData(16, 40.96, 655.36)]
    [Evidence(Basis.Cited, "a management-accounting text (flipbuilder.com bmcx/vksq, p. 330), 80 % with a first unit of 100 h: average and total. Its incremental total of units 9 to 16 is misprinted as 254.76; 655.36 − 409.60 is 245.76")]
    public void Cumulative_average(int count, double average, double total)
    {
        Numbers.Near(average, 100 * Wright(80).Average(count), 5e-3);
        Numbers.Near(total, 100 * Wright(80).Total(count), 5e-3);
        Numbers.CanBeWritten(Wright(80).Workings(count));
    }

    [Fact]
    [Evidence(Basis.Cited, "Wideman, comparative glossary appendix (maxwideman.com): two units average 80 % and the second alone takes 60 %: the cumulative-average model")]
    public void The_second_unit_alone()
    {
        Numbers.Near(0.60, Wright(80).Unit(2), 1e-12);
        Numbers.Near(0.80, Crawford(80).Unit(2), 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "recomputed outside: 80 % units 10 and totals of 2, 4, 8, 10, 16; 85 % from 250 h: unit 15 132.491 h, total 2465.264 h, by cumulative average 1987.370 h")]
    public void Unit_model()
    {
        Numbers.Near(0.4765099, Crawford(80).Unit(10), 5e-8);
        foreach ((int count, double total) in (ReadOnlySpan<(int, double)>)[(2, 180), (4, 314.210), (8, 534.591), (10, 631.537), (16, 892.014)])
        {
            Numbers.Near(total, 100 * Crawford(80).Total(count), 5e-4);
        }

        Numbers.Near(132.491, 250 * Crawford(85).Unit(15), 5e-4);
        Numbers.Near(2465.264, 250 * Crawford(85).Total(15), 5e-4);
        Numbers.Near(1987.370, 250 * Wright(85).Total(15), 5e-4);
        Numbers.CanBeWritten(Crawford(85).Workings(15));
        Numbers.CanBeWritten(Crawford(85).Workings(1000));
    }

    [Property]
    [Evidence(Basis.Identity, "units add up to totals; nobody gets slower; at 100 % nothing is learned; the unit model is the dearer one")]
    public void Learning_adds_up(PositiveInt number, PositiveInt slope)
    {
        int n = (number.Get % 300) + 2;
        double s = 50 + (slope.Get % 51);
        foreach (LearningCurve curve in (LearningCurve[])[Wright(s), Crawford(s)])
        {
            Numbers.Close(curve.Total(n), Enumerable.Range(1, n).Sum(curve.Unit), 1e-10);
            Assert.True(curve.Unit(n) <= curve.Unit(n - 1) + 1e-12);
            Assert.True(curve.Total(n) > curve.Total(n - 1));
        }

        Assert.True(Crawford(s).Total(n) >= Wright(s).Total(n) - 1e-9);
        Numbers.Close(n, Wright(100).Total(n), 1e-12);
        Numbers.Close(n, Crawford(100).Total(n), 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: setup .5 – .75 – 1.25 h, mean .7917; 20 tubs at 90 % cumulative average count as 20^0.848 = 12.684; with half done once per visit two units count 1.5")]
    public void A_hotel_floor()
    {
        LabourTask once = new() { Standard = LabourStandards.SetUp, Units = 1 };
        LabourTask floor = new() { Standard = LabourStandards.SetUp, Units = 1, Repeats = 20, Learning = Wright(90) };
        Numbers.Near(12.684, floor.Hours.Mean / once.Hours.Mean, 5e-4);
        Numbers.Close(20, new LabourTask { Standard = LabourStandards.SetUp, Units = 1, Repeats = 20 }.Hours.Mean / once.Hours.Mean, 1e-12);
        LabourStandard shared = LabourStandards.SetUp with { OncePerVisit = Ratio.FromPercent(50) };
        Numbers.Close(1.5 * once.Hours.Mean, new LabourTask { Standard = shared, Units = 2 }.Hours.Mean, 1e-12);
        Numbers.Close(0.5 * once.Hours.Mean, new LabourTask { Standard = shared, Units = 0.5 }.Hours.Mean, 1e-12);
        Numbers.CanBeWritten(new LabourEstimate([floor, new LabourTask { Standard = shared, Units = 3 }], 1.1, 1).Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "invented standards: from 25 mm a chip has a standard of its own; a caller's own sizes work alike, and the order of the list does not matter")]
    public void A_large_chip_takes_longer()
    {
        static LabourStandard Of(double mm) => LabourStandards.ForDefects([new Chip(Length.FromMillimeters(mm), Length.FromMillimeters(1))])[0].Standard;
        Assert.Equal("L-31", Of(24.9).Code);
        Assert.Equal("L-44", Of(25).Code);
        Assert.True(Of(25).PerUnit.Mean > Of(24.9).PerUnit.Mean);
        LabourStandard large = Of(30) with { Code = "own", FromSize = Length.FromMillimeters(60) };
        LabourStandard[] standards = [large, .. LabourStandards.Generic];
        Assert.Equal("own", LabourStandards.ForDefects([new Chip(Length.FromMillimeters(60), Length.FromMillimeters(1))], standards)[0].Standard.Code);
        Assert.Equal("L-44", LabourStandards.ForDefects([new Chip(Length.FromMillimeters(59), Length.FromMillimeters(1))], standards)[0].Standard.Code);
        Assert.Single(LabourStandards.WithoutStandard([new Chip(Length.FromMillimeters(59), Length.FromMillimeters(1))], [large]));
    }

    [Fact]
    [Evidence(Basis.Independent, "drawn on paper: 2 fixtures, 3 coats of 20 min, 30 min of drying: apart 2 × (60 + 60) = 240 min; in turn two rounds of 50 and one of 40 = 140 min, 20 min of waiting")]
    public void Two_fixtures_in_turn()
    {
        SharedDrying pair = new(2, 3, TimeSpan.FromMinutes(20), TimeSpan.FromMinutes(30));
        Assert.Equal(TimeSpan.FromMinutes(240), pair.OneAfterTheOther);
        Assert.Equal(TimeSpan.FromMinutes(140), pair.InTurn);
        Assert.Equal(TimeSpan.FromMinutes(100), pair.Saved);
        Assert.Equal(TimeSpan.FromMinutes(20), pair.Waiting);
        Numbers.CanBeWritten(pair.Workings());
        Assert.Equal("2.33 h in turn, 4 h one after the other", pair.ToString());
    }

    [Property]
    [Evidence(Basis.Independent, "a simulation of one person who always sprays the fixture whose turn it is, as soon as its last coat has dried")]
    public void Turns_as_simulated(PositiveInt a, PositiveInt b, PositiveInt c, PositiveInt d)
    {
        int fixtures = (a.Get % 6) + 1;
        int coats = (b.Get % 4) + 1;
        double coat = 5 + (c.Get % 40);
        double dry = d.Get % 200;
        double[] free = new double[fixtures];
        double clock = 0;
        for (int round = 0; round < coats; round++)
        {
            for (int fixture = 0; fixture < fixtures; fixture++)
            {
                clock = Math.Max(clock, free[fixture]) + coat;
                free[fixture] = clock + dry;
            }
        }

        SharedDrying shared = new(fixtures, coats, TimeSpan.FromMinutes(coat), TimeSpan.FromMinutes(dry));
        Numbers.Close(clock, shared.InTurn.TotalMinutes, 1e-9);
        Assert.True(shared.Saved >= TimeSpan.Zero && shared.Waiting >= TimeSpan.Zero);
    }

    [Fact]
    [Evidence(Basis.Independent, "variance of a sum with equal correlation, over three triples on paper; without correlation it is the sum of the variances")]
    public void Correlated_tasks_spread_wider()
    {
        LabourTask[] tasks = [new() { Standard = LabourStandards.SetUp, Units = 1 }, new() { Standard = LabourStandards.Clear, Units = 1 }, new() { Standard = LabourStandards.Caulk, Units = 1 }];
        LabourEstimate labour = new(tasks);
        Numbers.Close(labour.BetaPertDeviation.TotalHours, labour.Deviation(ThreePointReading.Pert, default).TotalHours, 1e-6);
        Numbers.Close(labour.ClassicDeviation.TotalHours, labour.Deviation(ThreePointReading.NormalClassicPert, default).TotalHours, 1e-6);

        // All together: (25 + 23 + 15 min)/6 by the classic rule.
        Numbers.Near(1.05 / 6, labour.Deviation(ThreePointReading.LognormalClassicPert, Ratio.FromPercent(100)).TotalHours, 1e-7);
        double squares = (625 + 529 + 225) / 3600.0 / 36;
        Numbers.Near(Math.Sqrt(squares + (0.5 * ((1.05 * 1.05 / 36) - squares))), labour.Deviation(ThreePointReading.NormalClassicPert, Ratio.FromPercent(50)).TotalHours, 1e-7);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("slope", () => _ = Wright(49));
        Numbers.Refuses("slope", () => _ = Crawford(101));
        Numbers.Refuses("model", () => _ = new LearningCurve((LearningModel)5, Ratio.FromPercent(90)));
        Numbers.Refuses("number", () => Wright(80).Unit(0));
        Numbers.Refuses("count", () => Wright(80).Total(10_001));
        Numbers.Refuses("Repeats", () => _ = new LabourTask { Standard = LabourStandards.SetUp, Units = 1, Repeats = 0 });
        Numbers.Refuses("OncePerVisit", () => _ = LabourStandards.SetUp with { OncePerVisit = Ratio.FromPercent(101) });
        Numbers.Refuses("FromSize", () => _ = LabourStandards.SetUp with { FromSize = Length.FromMeters(6) });
        Numbers.Refuses("fixtures", () => _ = new SharedDrying(0, 1, TimeSpan.FromMinutes(1), TimeSpan.Zero));
        Numbers.Refuses("perCoat", () => _ = new SharedDrying(1, 1, TimeSpan.Zero, TimeSpan.Zero));
        Assert.Equal("CumulativeAverage learning, 80 %", Wright(80).ToString());
    }
}
