using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Scheduling;

public class JobScheduleTests
{
    private static readonly WorkingHours Day = new(TimeSpan.FromHours(8), TimeSpan.FromHours(17));
    private static readonly DateTimeOffset Monday = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));

    [Fact]
    [Evidence(Basis.Independent, "by hand: prepare 8–15, prime 15–16; the topcoat window of 1 to 3 h leaves 17–19, after hours, so priming waits for the next morning")]
    public void A_window_that_would_close_overnight_moves_the_coat_before_it()
    {
        JobSchedule schedule = new(
            Monday,
            Day,
            [new("prepare", TimeSpan.FromHours(7)), new("prime", TimeSpan.FromHours(1)), new("topcoat", TimeSpan.FromHours(1))],
            [new("prime", "topcoat", TimeSpan.FromHours(1), TimeSpan.FromHours(3), "recoat window of the primer")]);
        Assert.Equal(Monday, schedule.Steps[0].Start);
        Assert.Equal(Monday.AddDays(1), schedule.Steps[1].Start);
        Assert.Equal(Monday.AddDays(1).AddHours(2), schedule.Steps[2].Start);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: the wait of 30 h from 12:00 ends on the next day at 18:00 and needs nobody; the return visit waits for the morning after")]
    public void Waits_run_through_the_night_and_work_does_not()
    {
        JobSchedule schedule = new(
            Monday,
            Day,
            [new("spray", TimeSpan.FromHours(4)), new("cure", TimeSpan.FromHours(30), attended: false), new("refit", TimeSpan.FromHours(1))],
            [new("spray", "cure", TimeSpan.Zero, TimeSpan.Zero, "cure starts at once"), new("cure", "refit", TimeSpan.Zero, null, "after cure")]);
        Assert.Equal(Monday.AddHours(34), schedule.Steps[1].End);
        Assert.Equal(Monday.AddDays(2), schedule.Steps[2].Start);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 20 h from 15:00 in days of 9 h are 2 + 9 + 9 h, so it ends on the third day at 17:00 and the coat waits for the fourth")]
    public void Interruptible_work_goes_on_the_next_morning()
    {
        JobSchedule schedule = new(
            Monday,
            Day,
            [new("mask", TimeSpan.FromHours(7)), new("sand", TimeSpan.FromHours(20), interruptible: true), new("prime", TimeSpan.FromHours(1))],
            []);
        Assert.Equal(
            [(Monday.AddHours(7), Monday.AddHours(9)), (Monday.AddDays(1), Monday.AddDays(1).AddHours(9)), (Monday.AddDays(2), Monday.AddDays(2).AddHours(9))],
            schedule.Steps[1].Pieces.Select(piece => (piece.Start, piece.End)));
        Assert.Equal(Monday.AddDays(3), schedule.Steps[2].Start);
        Assert.Equal(TimeSpan.FromHours(20), TimeSpan.FromTicks(schedule.Steps[1].Pieces.Sum(piece => (piece.End - piece.Start).Ticks)));
        Assert.Throws<ArgumentException>(() => new JobSchedule(
            Monday, Day, [new("sand", TimeSpan.FromHours(1), interruptible: true), new("prime", TimeSpan.FromHours(1))], [new StepLag("sand", "prime", TimeSpan.Zero, TimeSpan.FromHours(1), "open time")]));
    }

    [Fact]
    [Evidence(Basis.Contract, "a job that starts at night or at the very end of a day begins the next morning")]
    public void A_late_start_waits_for_the_morning()
    {
        foreach (double hour in new[] { 9.0, 12.0 })
        {
            JobSchedule schedule = new(Monday.AddHours(hour), Day, [new("mask", TimeSpan.FromHours(1), interruptible: true)], []);
            Assert.Equal(Monday.AddDays(1), schedule.Steps[0].Start);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a contradiction is named in words, not thrown")]
    public void A_contradiction_is_named()
    {
        JobSchedule lag = new(
            Monday,
            Day,
            [new("prime", TimeSpan.FromHours(1)), new("topcoat", TimeSpan.FromHours(1))],
            [new("prime", "topcoat", TimeSpan.FromHours(10), TimeSpan.FromHours(12), "recoat window of the primer")]);
        Assert.False(lag.IsPossible);
        Assert.StartsWith("recoat window of the primer: 'topcoat' cannot start within 12 h of the end of 'prime'", lag.Conflicts[0], StringComparison.Ordinal);
        Assert.Empty(lag.Steps);
        JobSchedule length = new(Monday, Day, [new("strip", TimeSpan.FromHours(10))], []);
        Assert.StartsWith("strip takes 10 h and the working day has 9 h", length.Conflicts[0], StringComparison.Ordinal);
    }

    [Property(MaxTest = 300)]
    [Evidence(Basis.Independent, "random instances against a separate verifier of every rule, and against a search on an hourly grid for the earliest end")]
    public void No_rule_is_broken_and_no_time_is_wasted(byte a, byte b, byte c, byte low, byte spread)
    {
        TimeSpan[] hours = [TimeSpan.FromHours(1 + (a % 8)), TimeSpan.FromHours(1 + (b % 5)), TimeSpan.FromHours(1 + (c % 5))];
        StepLag[] lags =
        [
            new("s0", "s1", TimeSpan.FromHours(low % 4), TimeSpan.FromHours((low % 4) + (spread % 30)), "first window"),
            new("s1", "s2", TimeSpan.FromHours(spread % 5), TimeSpan.FromHours((spread % 5) + (low % 20)), "second window"),
        ];
        JobSchedule schedule = new(Monday, Day, hours.Select((time, i) => new ScheduleStep("s" + i, time)), lags);
        DateTimeOffset? best = SearchHourly(hours, lags);
        Assert.Equal(best is not null, schedule.IsPossible);
        if (!schedule.IsPossible)
        {
            return;
        }

        for (int i = 0; i < 3; i++)
        {
            ScheduledStep step = schedule.Steps[i];
            Assert.True(step.Start.TimeOfDay >= Day.From && step.Start.TimeOfDay + step.Step.Duration <= Day.Until);
            if (i > 0)
            {
                TimeSpan gap = step.Start - schedule.Steps[i - 1].End;
                Assert.True(gap >= lags[i - 1].Minimum && gap <= lags[i - 1].Maximum, schedule.ToString());
            }
        }

        Assert.Equal(best, schedule.Steps[2].End);
    }

    [Fact]
    [Evidence(Basis.Contract, "names, hours and lags that cannot be are refused")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("until", () => _ = new WorkingHours(TimeSpan.FromHours(17), TimeSpan.FromHours(8)));
        Numbers.Refuses("from", () => _ = new WorkingHours(TimeSpan.FromHours(-1), TimeSpan.FromHours(8)));
        Numbers.Refuses("duration", () => _ = new ScheduleStep("x", TimeSpan.FromHours(-1)));
        Numbers.Refuses("maximum", () => _ = new StepLag("a", "b", TimeSpan.FromHours(2), TimeSpan.FromHours(1), "window"));
        ScheduleStep[] steps = [new("a", TimeSpan.Zero), new("b", TimeSpan.Zero)];
        Assert.Throws<ArgumentException>(() => new JobSchedule(Monday, Day, [steps[0], steps[0]], []));
        Assert.Throws<ArgumentException>(() => new JobSchedule(Monday, Day, steps, [new StepLag("b", "a", TimeSpan.Zero, null, "backwards")]));
        Assert.Throws<ArgumentException>(() => new JobSchedule(Monday, Day, steps, [new StepLag("a", "c", TimeSpan.Zero, null, "unknown")]));
    }

    /// <summary>Tries every start on whole hours within twelve days; every number of the property above is a whole hour.</summary>
    private static DateTimeOffset? SearchHourly(TimeSpan[] hours, StepLag[] lags)
    {
        List<DateTimeOffset> starts = [.. Enumerable.Range(0, 24 * 12).Select(hour => Monday.AddHours(hour))];
        bool Fits(DateTimeOffset start, int i) => start.TimeOfDay >= Day.From && start.TimeOfDay + hours[i] <= Day.Until;
        bool Follows(DateTimeOffset end, DateTimeOffset start, StepLag lag) => start - end >= lag.Minimum && start - end <= lag.Maximum;
        return starts.Where(first => Fits(first, 0))
            .SelectMany(first => starts.Where(second => second > first && second < first.AddDays(3) && Fits(second, 1) && Follows(first + hours[0], second, lags[0])))
            .SelectMany(second => starts.Where(third => third > second && third < second.AddDays(3) && Fits(third, 2) && Follows(second + hours[1], third, lags[1])))
            .Select(third => (DateTimeOffset?)(third + hours[2]))
            .Min();
    }
}
