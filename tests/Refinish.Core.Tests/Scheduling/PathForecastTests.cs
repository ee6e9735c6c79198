using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Scheduling;

public class PathForecastTests
{
    [Fact]
    [Evidence(Basis.Cited, "flylib.com, Introduction to Management Science, example problem of chapter 8: activities 1, 3, 5 and 7 (5, 8, 17; 3, 5, 7; 4, 6, 8; 3, 4, 5 weeks) are the critical path, 24 weeks; P(x ≤ 28) = .9633 from z 1.79 of a table, two digits of z")]
    public void A_path_of_four_activities()
    {
        PathForecast work = Days("1 5 8 17, 3 3 5 7, 5 4 6 8, 7 3 4 5", "1-3 3-5 5-7");
        Assert.Equal(TimeSpan.FromDays(24), work.Mean);
        Numbers.Near(5, Math.Pow(work.Deviation!.Value.TotalDays, 2), 1e-9);
        Numbers.Near(0.9633, work.ChanceBy(TimeSpan.FromDays(28))!.Value.DecimalFractions, 0.0002);
        Numbers.CanBeWritten(work.WorkingsOfChance(TimeSpan.FromDays(28)));
    }

    [Fact]
    [Evidence(Basis.Cited, "worked question (wizedu.com 717873), 14 activities: means and deviations to two decimals, early and late dates; critical A C E H I K M N with 50.83 days; its chance by 55 days recomputed: σ² = 11.19, Φ(1.245)")]
    public void A_network_of_fourteen_activities()
    {
        PathForecast work = Days(
            "A 5 5 7, B 1 2 5, C 5 5 5, D 4 8 13, E 1 10 17, F 1 5 7, G 2 6 9, "
                + "H 4 4 6, I 2 7 10, J 2 4 7, K 6 10 13, L 2 6 6, M 2 2 3, N 7 7 12",
            "A-C A-D B-E C-E D-F D-G E-H F-H G-I H-I I-J I-K J-L K-M L-N M-N");
        (string Id, double Mean, double Deviation)[] printed =
        [
            ("A", 5.33, 0.33), ("B", 2.33, 0.67), ("C", 5.00, 0.00), ("D", 8.17, 1.50), ("E", 9.67, 2.67), ("F", 4.67, 1.00),
            ("G", 5.83, 1.17), ("H", 4.33, 0.33), ("I", 6.67, 1.33), ("J", 4.17, 0.83), ("K", 9.83, 1.17), ("L", 5.33, 0.67),
            ("M", 2.17, 0.17), ("N", 7.83, 0.83),
        ];
        foreach ((UncertainStep step, (string id, double mean, double deviation)) in work.Steps.Zip(printed, (step, row) => (step, row)))
        {
            Assert.Equal(id, step.Id);
            Numbers.Near(mean, step.Mean.TotalDays, 0.005);
            Numbers.Near(deviation, step.Deviation.TotalDays, 0.005);
        }

        (string Id, double Early, double Slack)[] dates =
        [
            ("B", 0, 8), ("C", 5.33, 0), ("D", 5.33, 1.83), ("E", 10.33, 0), ("F", 13.5, 1.83),
        ];
        foreach ((string id, double early, double slack) in dates)
        {
            ActivityTime time = work.Path.Steps.First(one => one.Step.Id == id);
            Numbers.Near(early, time.EarliestStart.TotalDays, 0.005);
            Numbers.Near(slack, time.Slack.TotalDays, 0.005);
        }

        Assert.Equal("A C E H I K M N", string.Join(" ", work.Governing.Select(step => step.Id)));
        Numbers.Near(50.83, work.Mean!.Value.TotalDays, 0.005);
        Numbers.Near(11.19, Math.Pow(work.Deviation!.Value.TotalDays, 2), 0.007);
        Numbers.Near(0.8936, work.ChanceBy(TimeSpan.FromDays(55))!.Value.DecimalFractions, 0.0005);
        Assert.Contains(work.MayTakeOver, time => time.Step.Id == "D");
        Assert.DoesNotContain(work.MayTakeOver, time => time.Step.Id == "B");
        Numbers.CanBeWritten(work.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "Milwaukee Paper with the three-point estimates from memory: σ² 3.1111, P(≤ 16) .7146 (printed .7157 from z .57); Reliable Construction likewise: 44 weeks, σ² 9, P(≤ 47) .8413")]
    public void Two_networks_from_memory()
    {
        PathForecast paper = Days(
            "A 1 2 3, B 2 3 4, C 1 2 3, D 2 4 6, E 1 4 7, F 1 2 9, G 3 4 11, H 1 2 3", "A-C A-D B-D C-E C-F D-G E-G F-H G-H");
        Assert.Equal(TimeSpan.FromDays(15), paper.Mean);
        Numbers.Near(3.1111, Math.Pow(paper.Deviation!.Value.TotalDays, 2), 0.00005);
        Numbers.Near(0.7146, paper.ChanceBy(TimeSpan.FromDays(16))!.Value.DecimalFractions, 0.00005);
        PathForecast building = Days(
            "A 1 2 3, B 2 3.5 8, C 6 9 18, D 4 5.5 10, E 1 4.5 5, F 4 4 10, G 5 6.5 11, "
                + "H 5 8 17, I 3 7.5 9, J 3 9 9, K 4 4 4, L 1 5.5 7, M 1 2 3, N 5 5.5 9",
            "A-B B-C C-D C-E E-F D-G E-H G-H C-I F-J I-J J-K J-L H-M K-N L-N");
        Assert.Equal(TimeSpan.FromDays(44), building.Mean);
        Numbers.Near(9, Math.Pow(building.Deviation!.Value.TotalDays, 2), 1e-9);
        Numbers.Near(0.8413, building.ChanceBy(TimeSpan.FromDays(47))!.Value.DecimalFractions, 0.00005);
        Numbers.Near(47, building.TimeFor(Ratio.FromPercent(84.13447461))!.Value.TotalDays, 1e-6);
    }

    [Fact]
    [Evidence(Basis.Independent, "merge bias by hand: two independent equal paths that meet are both done by their mean with a chance of a quarter, where one path tells a half; the other step is named")]
    public void One_path_is_too_hopeful()
    {
        PathForecast two = Days("left 1 2 3, right 1 2 3, end 1 1 1", "left-end right-end");
        Numbers.Close(0.5, two.ChanceBy(TimeSpan.FromDays(3))!.Value.DecimalFractions, 1e-9);
        Random random = new(7);
        int done = 0;
        for (int i = 0; i < 40000; i++)
        {
            done += Normal(random) <= 0 && Normal(random) <= 0 ? 1 : 0;
        }

        Numbers.Near(0.25, done / 40000.0, 0.01);
        Assert.Equal("right", Assert.Single(two.MayTakeOver).Step.Id);
        Assert.EndsWith("longer when another path takes over by right", two.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: of two chains of 6 days the one with deviations 1 and 0 (σ 1) governs before the one with 0 and 1/3; a drying time of two days between steps is added and certain")]
    public void The_least_certain_of_equal_paths_governs()
    {
        PathForecast work = Days("a 1 4 7, b 2 2 2, c 3 3 3, d 2 3 4", "a-b c-d");
        Assert.Equal("a b", string.Join(" ", work.Governing.Select(step => step.Id)));
        Assert.Equal(TimeSpan.FromDays(1), work.Deviation);
        PathForecast drying = new(
            [Step("prime", 1, 1, 1), Step("coat", 1, 2, 3)], [new StepLag("prime", "coat", TimeSpan.FromDays(2), null, "drying")]);
        Assert.Equal(TimeSpan.FromDays(5), drying.Mean);
        Assert.Equal("120 h ± 8 h along prime → coat", drying.ToString());
        Numbers.CanBeWritten(drying.WorkingsOfChance(TimeSpan.FromDays(6)));
        PathForecast certain = Days("a 2 2 2", string.Empty);
        Assert.Equal(0, certain.ChanceBy(TimeSpan.FromDays(1.9))!.Value.Percent);
        Assert.Equal(100, certain.ChanceBy(TimeSpan.FromDays(2))!.Value.Percent);
        Assert.Equal(TimeSpan.FromDays(2), certain.TimeFor(Ratio.FromPercent(99)));
    }

    [Property]
    [Evidence(Basis.Identity, "mean and variance of a chain are the sums; the time for a chance has that chance; more time, more chance; workings hold")]
    public void A_chain_adds_up(byte[] times)
    {
        int[] hours = [.. (times ?? []).Take(6).Select(one => 1 + (one % 50)), 3, 4];
        UncertainStep[] steps = [.. hours.Select((time, i) => Step("s" + i, time, time + (i % 3), time + 5))];
        PathForecast work = new(steps, steps.Skip(1).Select((step, i) => new StepLag("s" + i, step.Id, TimeSpan.Zero, null, "after")));
        Numbers.Close(steps.Sum(step => step.Mean.TotalHours), work.Mean!.Value.TotalHours, 1e-9);
        Numbers.Close(steps.Sum(step => Math.Pow(step.Deviation.TotalHours, 2)), Math.Pow(work.Deviation!.Value.TotalHours, 2), 1e-9);
        Assert.Empty(work.MayTakeOver);
        Numbers.Close(0.9, work.ChanceBy(work.TimeFor(Ratio.FromPercent(90))!.Value)!.Value.DecimalFractions, 1e-9);
        Assert.True(work.ChanceBy(work.Mean.Value)!.Value < work.ChanceBy(work.Mean.Value + TimeSpan.FromHours(1))!.Value);
        Numbers.CanBeWritten(work.WorkingsOfChance(work.Mean.Value + TimeSpan.FromHours(1)));
    }

    [Fact]
    [Evidence(Basis.Contract, "a circle is a contradiction and no chance; maxima and clocks, unknown steps and times out of order are refused")]
    public void Refuses_what_cannot_be()
    {
        PathForecast circle = Days("a 1 2 3, b 1 2 3", "a-b b-a");
        Assert.False(circle.Path.IsPossible);
        Assert.Null(circle.Mean);
        Assert.Null(circle.Deviation);
        Assert.Null(circle.ChanceBy(TimeSpan.FromDays(1)));
        Assert.Null(circle.TimeFor(Ratio.FromPercent(50)));
        Assert.Empty(circle.Governing);
        Assert.Empty(circle.MayTakeOver);
        Numbers.CanBeWritten(circle.Workings());
        UncertainStep[] two = [Step("a", 1, 2, 3), Step("b", 1, 2, 3)];
        StepLag closing = new("a", "b", TimeSpan.Zero, TimeSpan.FromDays(1), "window");
        Assert.Throws<ArgumentException>(() => new PathForecast(two, [closing]));
        Assert.Throws<ArgumentException>(() => new PathForecast(two, [new StepLag("a", "c", TimeSpan.Zero, null, "unknown")]));
        Assert.Throws<ArgumentException>(() => new PathForecast([], []));
        Numbers.Refuses("likely", () => Step("a", 3, 2, 4));
        Numbers.Refuses("likely", () => Step("a", 0, 0, 4));
        Numbers.Refuses("most", () => Step("a", 1, 2, 1));
        Numbers.Refuses("most", () => Step("a", 1, 2, 61));
        Numbers.Refuses("least", () => Step("a", -1, 2, 3));
        Numbers.Refuses("time", () => Days("a 1 2 3", string.Empty).ChanceBy(TimeSpan.FromDays(-1)));
        Numbers.Refuses("chance", () => Days("a 1 2 3", string.Empty).TimeFor(Ratio.FromPercent(100)));
        Assert.Equal(Days("a 1 2 3", string.Empty), Days("a 1 2 3", string.Empty));
        Assert.NotEqual(Days("a 1 2 3", string.Empty), Days("a 1 2 4", string.Empty));
        Assert.Equal("a, 24 h – 48 h – 72 h", Step("a", 1, 2, 3).ToString());
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    private static UncertainStep Step(string id, double least, double likely, double most) =>
        new(id, TimeSpan.FromDays(least), TimeSpan.FromDays(likely), TimeSpan.FromDays(most));

    private static PathForecast Days(string steps, string follow)
    {
        IEnumerable<UncertainStep> listed = steps.Split(',').Select(text => text.Trim().Split(' '))
            .Select(row => Step(row[0], Number(row[1]), Number(row[2]), Number(row[3])));
        IEnumerable<StepLag> lags = follow.Split(' ').Where(text => text.Length > 0).Select(text => text.Split('-'))
            .Select(pair => new StepLag(pair[0], pair[1], TimeSpan.Zero, null, "order"));
        return new PathForecast(listed, lags);
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
