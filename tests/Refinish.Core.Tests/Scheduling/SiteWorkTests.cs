using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;
using static Refinish.Tests.Scheduling.SiteWorks;

namespace Refinish.Tests.Scheduling;

public class SiteWorkTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: mask both rooms 8–10, first coats 10–12, second coats 12–14, each an hour after its first; nobody waits for six hours of work, because a coat does not wait until the room is clear of the one before")]
    public void A_second_room_fills_the_time_in_which_the_first_dries()
    {
        SiteSchedule schedule = TwoRooms().Solve();
        Assert.Equal(Monday.AddHours(6), schedule.Finish);
        Assert.True(schedule.IsEarliest);
        Assert.Single(schedule.Visits);
        Assert.True(schedule.HasFewestVisits);
        Assert.Empty(SiteVerifier.Breaches(schedule));
        Assert.Equal(TimeSpan.FromHours(6), schedule.Visits[0].Worked);
        Numbers.CanBeWritten(schedule.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: nobody may be in the room while it clears, so the sink in the same bathroom waits from 9 to 11 although the crew is free")]
    public void Work_in_the_same_room_waits_until_it_is_clear()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Steps =
            [
                Step("spray tub", 1, "bath") with { Sprays = true, Clearing = TimeSpan.FromHours(2) },
                Step("refit sink", 1, "bath"),
            ],
            Lags = [new("spray tub", "refit sink", TimeSpan.Zero, null, "tub first")],
        };
        SiteSchedule schedule = work.Solve();
        Assert.Equal(Monday.AddHours(3), schedule.Find("refit sink").Start);
        Assert.Equal(ChainLinkKind.Room, schedule.Find("refit sink").Driver.Kind);
        Assert.Equal(Monday.AddHours(3), schedule.Find("spray tub").RoomClear);
        Assert.Equal(["spray tub", "refit sink"], schedule.CriticalChain.Select(link => link.Step));
        Assert.Equal("refit sink: the room is not clear of spray tub for 2 h", schedule.CriticalChain[1].ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: sanding the sink would fall on the wet tub until 14:00, so it is done before the tub is sprayed although the tub is listed first")]
    public void Dust_is_kept_from_wet_film()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Steps =
            [
                Step("spray tub", 1, "bath") with { Sprays = true, Clearing = TimeSpan.FromHours(1), DustFree = TimeSpan.FromHours(5) },
                Step("sand sink", 1, "bath") with { RaisesDust = true },
            ],
        };
        SiteSchedule schedule = work.Solve();
        Assert.Equal(Monday, schedule.Find("sand sink").Start);
        Assert.Equal(Monday.AddHours(2), schedule.Finish);
        Assert.Empty(SiteVerifier.Breaches(schedule));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 10 h of masking from Friday 8:00 goes on on Tuesday, because Monday is a day off; the coat follows at 9:00")]
    public void Weekends_and_days_off_are_kept()
    {
        SiteWork work = new()
        {
            Start = Monday.AddDays(4),
            Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock,
                [new DateTime(2027, 3, 8)]),
            Steps = [Step("mask", 10, "bath") with { IsInterruptible = true }, Step("prime", 1, "bath")],
            Lags = [new("mask", "prime", TimeSpan.Zero, null, "masked first")],
        };
        SiteSchedule schedule = work.Solve();
        Assert.Equal(Monday.AddDays(8).AddHours(2), schedule.Finish);
        Assert.Equal([Monday.AddDays(4), Monday.AddDays(8)], schedule.Visits.Select(visit => visit.Arrives));
        Assert.Equal(2, schedule.VisitsBound);
        Assert.Empty(SiteVerifier.Breaches(schedule));
        Numbers.CanBeWritten(schedule.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 40 h after Monday 9:00 is Wednesday 1:00, so refit 8 to 10 and stand until 15:00. Polish could be on Tuesday at 8, but on Wednesday at 10 it costs no third visit and no time")]
    public void Visits_are_as_few_as_the_end_allows()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Steps = [Step("coat", 1, "bath"), Step("polish", 1, "bath"), Step("refit", 2, "bath"),
                Step("caulk stands", 5, "bath") with { People = 0 }],
            Lags =
            [
                new("coat", "refit", TimeSpan.FromHours(40), null, "cure"),
                new("coat", "polish", TimeSpan.FromHours(12), null, "hard enough to polish"),
                new("refit", "caulk stands", TimeSpan.Zero, TimeSpan.Zero, "stands at once"),
            ],
        };
        SiteSchedule schedule = work.Solve();
        Assert.Equal(Monday.AddDays(2).AddHours(7), schedule.Finish);
        Assert.Equal([Monday, Monday.AddDays(2)], schedule.Visits.Select(visit => visit.Arrives));
        Assert.Equal(Monday.AddDays(2).AddHours(2), schedule.Find("polish").Start);
        Assert.True(schedule.IsEarliest);
        Assert.True(schedule.HasFewestVisits);
        Assert.Empty(SiteVerifier.Breaches(schedule));
        Assert.Equal(["coat", "refit", "caulk stands"], schedule.CriticalChain.Select(link => link.Step));
        Numbers.CanBeWritten(schedule.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: with two people two bathrooms of one-person steps run side by side; the gun is there once, so the second coat waits an hour; with two guns it does not")]
    public void People_and_tools_are_shared()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Crew = 2,
            Steps =
            [
                Step("A mask", 1, "A"), Step("A spray", 1, "A") with { Sprays = true, Tools = ["gun"] },
                Step("B mask", 1, "B"), Step("B spray", 1, "B") with { Sprays = true, Tools = ["gun"] },
            ],
            Lags = [new("A mask", "A spray", TimeSpan.Zero, null, "masked first"),
                new("B mask", "B spray", TimeSpan.Zero, null, "masked first")],
        };
        Assert.Equal(Monday.AddHours(3), work.Solve().Finish);
        Assert.Equal(Monday.AddHours(2), (work with { Tools = [new SiteTool("gun", 2)] }).Solve().Finish);
        Assert.Equal(Monday.AddHours(4), (work with { Crew = 1 }).Solve().Finish);
        Assert.Equal(ChainLinkKind.Tool, work.Solve().Steps.Single(step => step.Start == Monday.AddHours(2)).Driver.Kind);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 10 to 12 h after a coat that ends by 17:00 is night; after a coat that ends at 9:00 on the same day it is 19:00. To reach 8:00 the next morning from 17:00 takes 15 h; to finish by 17:00 from 9:00 takes at most 7 h")]
    public void A_window_that_lies_at_night_is_named_with_what_would_do()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = WorkCalendar.EveryDay(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock),
            Steps = [Step("prime", 1, "bath"), Step("topcoat", 1, "bath"), Step("mask", 1, "bath")],
            Lags = [new("prime", "topcoat", TimeSpan.FromHours(10), TimeSpan.FromHours(12), "recoat window of the primer"),
                new("mask", "prime", TimeSpan.Zero, null, "masked first")],
        };
        ScheduleConflict conflict = work.Solve().Conflict!;
        Assert.True(conflict.IsProved);
        Assert.Equal(["recoat window of the primer"], conflict.Lags.Select(lag => lag.Reason));
        Assert.Equal([(true, TimeSpan.FromHours(15)), (false, TimeSpan.FromHours(7))],
            conflict.Reliefs.Select(relief => (relief.OfMaximum, relief.Needed)));
        Assert.Contains("at most 15 h instead of 12 h", conflict.ToString(), StringComparison.Ordinal);
        foreach (LagRelief relief in conflict.Reliefs)
        {
            TimeSpan minute = TimeSpan.FromMinutes(1);
            Assert.True((work with { Lags = [Change(relief, TimeSpan.Zero), work.Lags[1]] }).Solve().IsPossible);
            Assert.False((work with { Lags = [Change(relief, relief.OfMaximum ? -minute : minute), work.Lags[1]] }).Solve().IsPossible);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "contradictions of every kind are results: a circle of lags, a step longer than a shift, two windows that the crew cannot both keep")]
    public void Contradictions_are_results()
    {
        SiteWork work = new() { Start = Monday, Calendar = Week, Steps = [Step("a", 1, null), Step("b", 1, null)],
            Lags = [new("a", "b", TimeSpan.Zero, null, "one"), new("b", "a", TimeSpan.Zero, null, "two")] };
        SiteSchedule circle = work.Solve();
        Assert.Equal(TimeSpan.FromHours(2), circle.Conflict!.Times!.Excess);
        Assert.Null(circle.Finish);
        Assert.Empty(circle.Workings().Steps);
        Assert.StartsWith("strip takes 10 h and the longest shift has 9 h", (work with { Steps = [Step("strip", 10, null)], Lags = [] })
            .Solve().ToString(), StringComparison.Ordinal);
        SiteSchedule crew = (work with
        {
            Steps = [Step("wipe", 1, null), Step("a", 2, null), Step("b", 2, null)],
            Lags = [new("wipe", "a", TimeSpan.Zero, TimeSpan.FromHours(1), "open time on a"),
                new("wipe", "b", TimeSpan.Zero, TimeSpan.FromHours(1), "open time on b")],
        }).Solve();
        Assert.Equal(["open time on a", "open time on b"], crew.Conflict!.Lags.Select(lag => lag.Reason).Order(StringComparer.Ordinal));
        Assert.Equal(TimeSpan.FromHours(2), crew.Conflict.Reliefs[0].Needed);
    }

    [Fact]
    [Evidence(Basis.Contract, "names, lags, people and tools that do not fit are refused; progress rises to one; a stopped search throws")]
    public void Refuses_what_cannot_be_and_can_be_stopped()
    {
        SiteWork work = TwoRooms();
        Assert.Throws<ArgumentException>(() => (work with { Steps = [work.Steps[0], work.Steps[0]], Lags = [] }).Solve());
        Assert.Throws<ArgumentException>(() => (work with { Lags = [new("A mask", "C", TimeSpan.Zero, null, "unknown")] }).Solve());
        Assert.Throws<ArgumentException>(() => (work with { Steps = [work.Steps[0] with { People = 2 }], Lags = [] }).Solve());
        Assert.Throws<ArgumentException>(() =>
            (work with { Steps = [work.Steps[0] with { IsInterruptible = true }, work.Steps[1]],
            Lags = [new("A mask", "A first", TimeSpan.Zero, TimeSpan.FromHours(1), "open")] }).Solve());
        Assert.Throws<ArgumentException>(() => (work with { Tools = [new("gun", 1), new("gun", 2)] }).Solve());
        Assert.Throws<ArgumentException>(() => Step("x", 1, null) with { Tools = ["gun", "gun"] });
        Numbers.Refuses("Duration", () => _ = Step("x", -1, null));
        Numbers.Refuses("People", () => _ = Step("x", 1, null) with { People = 21 });
        Numbers.Refuses("Clearing", () => _ = Step("x", 1, null) with { Clearing = TimeSpan.FromHours(-1) });
        Numbers.Refuses("Crew", () => _ = work with { Crew = 0 });
        Numbers.Refuses("count", () => _ = new SiteTool("gun", 0));
        Numbers.Refuses("Nodes", () => _ = SearchEffort.Standard with { Nodes = 0 });
        List<double> told = [];
        work.Solve(SearchEffort.Standard, new Telling(told), CancellationToken.None);
        Assert.Equal(told.Order(), told);
        Assert.Equal((0, 1), (told[0], told[^1]));
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => work.Solve(SearchEffort.Standard, null, stop.Token));
    }

    private static StepLag Change(LagRelief relief, TimeSpan by) => relief.OfMaximum
        ? new StepLag(relief.Lag.Before, relief.Lag.After, relief.Lag.Minimum, relief.Needed + by, relief.Lag.Reason)
        : new StepLag(relief.Lag.Before, relief.Lag.After, relief.Needed + by, relief.Lag.Maximum, relief.Lag.Reason);

    private static SiteWork TwoRooms()
    {
        List<SiteStep> steps = [];
        List<StepLag> lags = [];
        foreach (string room in new[] { "A", "B" })
        {
            SiteStep coat = Step(room + " first", 1, room) with { Sprays = true, Clearing = TimeSpan.FromHours(2) };
            steps.AddRange([Step(room + " mask", 1, room), coat, coat with { Id = room + " second" }]);
            lags.AddRange([new(room + " mask", room + " first", TimeSpan.Zero, null, "masked first"),
                new(room + " first", room + " second", TimeSpan.FromHours(1), TimeSpan.FromHours(8), "recoat window")]);
        }

        return new SiteWork { Start = Monday, Calendar = Week, Steps = steps, Lags = lags };
    }

    private sealed class Telling(List<double> told) : IProgress<double>
    {
        public void Report(double value) => told.Add(value);
    }
}
