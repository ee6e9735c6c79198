using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Curing;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Scheduling;

public class CriticalPathTests
{
    [Theory]
    [InlineData("taylor", "1-3 3-4 4-5 5-6")]
    [InlineData("milwaukee", "A C E G H")]
    [Evidence(Basis.Cited, "activity_networks.csv: Taylor, Introduction to Management Science, ch. 8, every slack; Heizer and Render, Milwaukee Paper, every ES, EF, LS, LF and slack")]
    public void Early_and_late_dates_are_as_printed(string set, string critical) => Compare(set, critical);

    [Fact]
    [Evidence(Basis.Independent, "Hillier and Lieberman, Reliable Construction, from memory: length 44 and slacks recomputed by hand with a forward and a backward pass")]
    public void A_larger_network_agrees_with_the_hand_passes() => Compare("reliable", "A B C E F J L N");

    [Fact]
    [Evidence(Basis.Independent, "by hand: a window of 2 to 3 h after prime, while filler that hardens 6 h holds the topcoat, pulls prime to start at 1 + 6 − 3 − 1 = 3 h")]
    public void A_most_time_pulls_the_earlier_step_later()
    {
        CriticalPath path = new(
            [Step("fill", 1), Step("prime", 1), Step("topcoat", 2)],
            [
                new("fill", "topcoat", TimeSpan.FromHours(6), null, "filler hard"),
                new("prime", "topcoat", TimeSpan.FromHours(2), TimeSpan.FromHours(3), "recoat window"),
            ]);
        Assert.Equal(TimeSpan.FromHours(3), path.Steps[1].EarliestStart);
        Assert.Equal(TimeSpan.FromHours(4), path.Steps[1].LatestStart);
        Assert.Equal(TimeSpan.FromHours(9), path.Length);
        Assert.Equal("9 h: fill → topcoat", path.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "a circle of steps is a contradiction in words; unknown steps are refused")]
    public void A_circle_is_named()
    {
        SiteStep[] steps = [Step("mask", 1), Step("spray", 1)];
        CriticalPath path = new(steps,
            [new("mask", "spray", TimeSpan.Zero, null, "masked first"), new("spray", "mask", TimeSpan.Zero, null, "dry first")]);
        Assert.False(path.IsPossible);
        Assert.Empty(path.Steps);
        Assert.Equal(TimeSpan.FromHours(2), path.Conflict!.Excess);
        Assert.Contains("masked first", path.ToString(), StringComparison.Ordinal);
        Numbers.CanBeWritten(path.Workings());
        Assert.Throws<ArgumentException>(() => new CriticalPath(steps, [new StepLag("mask", "polish", TimeSpan.Zero, null, "unknown")]));
        Assert.Throws<ArgumentException>(() => new CriticalPath(steps, [new StepLag("mask", "mask", TimeSpan.Zero, null, "itself")]));
        Assert.Throws<ArgumentException>(() => new CriticalPath([steps[0], steps[0]], []));
        EquivalentAge clock = new(TemperatureHistory.Constant(new DateTimeOffset(1970, 1, 1, 0, 0, 0, TimeSpan.Zero), Temperature.FromDegreesCelsius(20)),
            TemperatureShift.Doubling(2), Temperature.FromDegreesCelsius(25));
        Assert.Throws<ArgumentException>(() =>
            new CriticalPath(steps, [new StepLag("mask", "spray", TimeSpan.Zero, null, "on a clock", clock)]));
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Independent, "random precedences: the classic forward and backward passes over a topological order, written in the test")]
    public void Agrees_with_the_two_passes(byte[] durations, ushort[] arcs)
    {
        ArgumentNullException.ThrowIfNull(arcs);
        int[] hours = [.. (durations ?? []).Take(12).Select(d => d % 9), 1];
        List<(int A, int B, int Lag)> follow = [.. arcs.Select(arc => (A: arc % hours.Length, B: arc / 16 % hours.Length, Lag: arc % 3))
            .Where(arc => arc.A < arc.B)];
        CriticalPath path = new(
            hours.Select((time, i) => Step("s" + i, time)),
            follow.Select(arc => new StepLag("s" + arc.A, "s" + arc.B, TimeSpan.FromHours(arc.Lag), null, "after")));
        int[] early = new int[hours.Length];
        for (int i = 0; i < hours.Length; i++)
        {
            early[i] = follow.Where(arc => arc.B == i).Select(arc => early[arc.A] + hours[arc.A] + arc.Lag).Append(0).Max();
        }

        int length = hours.Select((time, i) => early[i] + time).Max();
        int[] late = new int[hours.Length];
        for (int i = hours.Length - 1; i >= 0; i--)
        {
            late[i] = follow.Where(arc => arc.A == i).Select(arc => late[arc.B] - arc.Lag).Append(length).Min() - hours[i];
        }

        Assert.Equal(early.Select(time => TimeSpan.FromHours(time)), path.Steps.Select(step => step.EarliestStart));
        Assert.Equal(late.Select(time => TimeSpan.FromHours(time)), path.Steps.Select(step => step.LatestStart));
    }

    private static SiteStep Step(string id, double hours) => new() { Id = id, Duration = TimeSpan.FromHours(hours) };

    private static void Compare(string set, string critical)
    {
        List<Table.Row> rows = [.. Table.Read("activity_networks.csv").Rows.Where(row => row["set"] == set)];
        CriticalPath path = new(
            rows.Select(row => Step(row["step"], row.Number("duration"))),
            rows.SelectMany(row =>
                row["after"].Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(before => new StepLag(before, row["step"], TimeSpan.Zero, null, before + " first"))));
        Assert.True(path.IsPossible);
        Assert.Equal(critical.Split(' '), path.Critical.Select(step => step.Step.Name));
        foreach ((Table.Row row, ActivityTime time) in rows.Zip(path.Steps))
        {
            Assert.Equal(TimeSpan.FromHours(row.Number("length")), path.Length);
            Assert.Equal(TimeSpan.FromHours(row.Number("slack")), time.Slack);
            foreach ((string column, TimeSpan value) in new[] { ("es", time.EarliestStart), ("ef", time.EarliestFinish),
                ("ls", time.LatestStart), ("lf", time.LatestFinish) })
            {
                if (row[column].Length > 0)
                {
                    Assert.Equal(TimeSpan.FromHours(row.Number(column)), value);
                }
            }
        }

        Numbers.CanBeWritten(path.Workings());
    }
}
