using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;
using static Refinish.Tests.Scheduling.SiteWorks;

namespace Refinish.Tests.Scheduling;

public class SiteCrewTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: from Monday 15:00 the earliest end is 2 h on Monday and 7 h on Tuesday; one visit on Tuesday 8–17 ends the same day, so it is preferred; with half an hour more no day holds both")]
    public void A_visit_is_worth_more_than_hours()
    {
        SiteWork work = new() { Start = Monday.AddHours(7), Calendar = Week, Steps = [Step("a", 2, null), Step("b", 7, null)],
            Lags = [new("a", "b", TimeSpan.Zero, null, "order")] };
        SiteSchedule few = work.Solve();
        Assert.Equal([Monday.AddDays(1)], few.Visits.Select(visit => visit.Arrives));
        Assert.Equal(Monday.AddDays(1).AddHours(9), few.Finish);
        Assert.True(few.HasFewestVisits && few.IsEarliest);
        Assert.Equal(Monday.AddDays(8).AddHours(9), few.LatestEnd);
        Assert.Single((work with { VisitSlack = TimeSpan.Zero }).Solve().Visits);
        SiteSchedule early = (work with { Prefers = SchedulePreference.EarliestEnd }).Solve();
        Assert.Equal(Monday.AddDays(1).AddHours(7), early.Finish);
        Assert.Equal(2, early.Visits.Count);
        Assert.Null(early.LatestEnd);
        SiteSchedule two = (work with { Steps = [work.Steps[0], Step("b", 7.5, null)] }).Solve();
        Assert.Equal(2, two.Visits.Count);
        Assert.True(two.HasFewestVisits);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: refitting is 29 h after the coat at 9:00, so Tuesday 14–15; demasking may be at 8:00 but needs only half an hour, so nobody comes before 13:30")]
    public void Nobody_comes_early_to_wait()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Steps = [Step("coat", 1, "bath"), Step("demask", 0.5, "bath"), Step("refit", 1, "bath")],
            Lags = [new("coat", "demask", TimeSpan.FromHours(10), null, "dry"),
                new("coat", "refit", TimeSpan.FromHours(29), null, "cure"), new("demask", "refit", TimeSpan.Zero, null, "demasked first")],
        };
        foreach (SchedulePreference prefers in new[] { SchedulePreference.FewestVisits, SchedulePreference.EarliestEnd })
        {
            SiteSchedule schedule = (work with { Prefers = prefers }).Solve();
            Assert.Equal(Monday.AddDays(1).AddHours(5.5), schedule.Visits[1].Arrives);
            Assert.Equal(Monday.AddDays(1).AddHours(7), schedule.Finish);
            ChainLink link = schedule.Find("demask").Driver;
            Assert.Equal((TimeSpan.FromHours(18.5), TimeSpan.FromHours(5.5)), (link.Wait, link.Held));
            Assert.Equal("demask: 10 h after coat (dry), then 13 h for working hours, then 5.5 h so as not to come early and wait",
                link.ToString());
            Assert.Empty(SiteVerifier.Breaches(schedule));
            Numbers.CanBeWritten(schedule.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: coats at 8–9 and 9:30–10:30 half an hour apart although the room clears 2 h; refitting waits until 12:30, two hours after the second")]
    public void A_coat_does_not_wait_until_the_room_is_clear_of_the_one_before()
    {
        SiteStep coat = Step("first", 1, "bath") with { Sprays = true, Clearing = TimeSpan.FromHours(2) };
        SiteSchedule schedule = new SiteWork
        {
            Start = Monday,
            Calendar = Week,
            Steps = [coat, coat with { Id = "second" }, Step("refit", 1, "bath")],
            Lags = [new("first", "second", TimeSpan.FromHours(0.5), null, "flash-off"),
                new("second", "refit", TimeSpan.Zero, null, "coats first")],
        }.Solve();
        Assert.Equal([Monday, Monday.AddHours(1.5), Monday.AddHours(4.5)], schedule.Steps.Select(step => step.Start));
        Assert.Equal(ChainLinkKind.Room, schedule.Find("refit").Driver.Kind);
        Assert.Empty(SiteVerifier.Breaches(schedule));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: A and B are masked at 8 by the first and the second person; at 9 B is sprayed by the second, who is in B, although it is listed before A's polish, which the first goes on with; both lift at 10")]
    public void Who_is_in_the_room_goes_on_there()
    {
        SiteSchedule schedule = new SiteWork
        {
            Start = Monday,
            Calendar = Week,
            Crew = 2,
            Steps = [Step("A mask", 1, "A"), Step("B mask", 1, "B"), Step("B spray", 1, "B"), Step("A polish", 1, "A"),
                Step("lift", 0.5, null) with { People = 2 }, Step("wait", 1, null) with { People = 0 }],
            Lags =
            [
                new("A mask", "A polish", TimeSpan.Zero, null, "order"), new("B mask", "B spray", TimeSpan.Zero, null, "order"),
                    new("A polish", "lift", TimeSpan.Zero, null, "order"),
                new("B spray", "lift", TimeSpan.Zero, null, "order"),
            ],
        }.Solve();
        Assert.Equal([[0], [1], [1], [0], [0, 1], []], schedule.Steps.Select(step => step.People.ToArray()));
        Assert.Equal([(0, 2.5), (1, 2.5)], schedule.PersonDays.Select(day => (day.Person, day.Worked.TotalHours)));
        Assert.Equal(["A mask", "A polish", "lift"], schedule.PersonDays[0].Turns.Select(turn => turn.Step.Id));
        Assert.Equal((Monday, Monday.AddHours(2.5), Monday.Date),
            (schedule.PersonDays[0].Arrives, schedule.PersonDays[0].Leaves, schedule.PersonDays[0].Date));
        Assert.Equal("person 1: 2027-03-01 08:00 to 10:30, 2.5 h worked", schedule.PersonDays[0].ToString());
        Assert.Empty(SiteVerifier.PeopleBreaches(schedule));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand, one person and an order of steps: 7 + 1 h and a window of 1 to 3 h that would close after hours move priming to the next morning; a wait of 30 h runs through the night; 20 h in days of 9 h are 2 + 9 + 9 h")]
    public void Steps_in_an_order_are_lags_of_no_time()
    {
        SiteSchedule window = Ordered([Step("prepare", 7, null), Step("prime", 1, null), Step("topcoat", 1, null)],
            new StepLag("prime", "topcoat", TimeSpan.FromHours(1), TimeSpan.FromHours(3), "recoat window of the primer"));
        Assert.Equal([Monday, Monday.AddDays(1), Monday.AddDays(1).AddHours(2)], window.Steps.Select(step => step.Start));
        SiteSchedule wait = Ordered(
            [Step("spray", 4, null), Step("cure", 30, null) with { People = 0 }, Step("refit", 1, null)],
                new StepLag("spray", "cure", TimeSpan.Zero, TimeSpan.Zero, "cure starts at once"));
        Assert.Equal([Monday.AddHours(34), Monday.AddDays(2).AddHours(1)], wait.Steps.Skip(1).Select(step => step.End));
        SiteSchedule nights = Ordered([Step("mask", 7, null), Step("sand", 20, null) with { IsInterruptible = true },
            Step("prime", 1, null)]);
        Assert.Equal(
            [(Monday.AddHours(7), Monday.AddHours(9)), (Monday.AddDays(1), Monday.AddDays(1).AddHours(9)),
                (Monday.AddDays(2), Monday.AddDays(2).AddHours(9))],
            nights.Find("sand").Pieces.Select(piece => (piece.Start, piece.End)));
        Assert.Equal(Monday.AddDays(3), nights.Find("prime").Start);
        foreach (double hour in new[] { 9.0, 12.0 })
        {
            SiteWork late = new() { Start = Monday.AddHours(hour), Calendar = Week,
                Steps = [Step("mask", 1, null) with { IsInterruptible = true }] };
            Assert.Equal(Monday.AddDays(1), late.Solve().Steps[0].Start);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "legal input never throws: a calendar closed for 57 days, waits and windows of 40 and 60 days, steps called like the ends of the work, waits only, no time at all, a clock that stands still")]
    public void Legal_input_gets_an_answer()
    {
        WorkCalendar closed = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock,
            Enumerable.Range(0, 57).Select(day => Monday.Date.AddDays(day)));
        SiteWork work = new() { Start = Monday, Calendar = closed, Steps = [Step("a", 1, "bath"), Step("b", 1, "bath")],
            Lags = [new("a", "b", TimeSpan.FromDays(40), TimeSpan.FromDays(60), "long")] };
        Assert.Equal(Monday.AddDays(57), work.Solve().Find("a").Start);
        Assert.True((work with { Steps = [work.Steps[0], Step("wait", 40 * 24, null) with { People = 0 }, work.Steps[1]],
            Start = Monday.AddYears(6000) }).Solve().IsPossible);
        SiteWork circle = work with { Steps = [Step("start of the work", 1, null), Step("the end", 1, null) with { Name = "the start" },
            Step("x", 1, null) with { Name = "the start" }],
            Lags = [new("the end", "x", TimeSpan.Zero, null, "one"), new("x", "the end", TimeSpan.Zero, null, "two")] };
        Assert.Equal(["one", "two"], circle.Solve().Conflict!.Lags.Select(lag => lag.Reason).Order(StringComparer.Ordinal));
        Assert.Contains("the start (x)", circle.Solve().ToString(), StringComparison.Ordinal);
        SiteSchedule waits = (work with { Steps = [Step("a", 0, null) with { People = 0 }], Lags = [] }).Solve();
        Assert.Equal(Monday, waits.Finish);
        Assert.Empty(waits.Visits);
        Assert.Equal(0, waits.VisitsBound);
        SiteSchedule nothing = (work with { Steps = [Step("a", 0, null), Step("b", 0, null) with { Sprays = true }], Lags = [] }).Solve();
        Assert.True(nothing.IsPossible);
        SiteSchedule tight = (work with { Calendar = Week, Steps = [Step("a", 9, null), Step("b", 9, null)],
            Lags = [new("a", "b", TimeSpan.FromDays(60), TimeSpan.FromDays(60), "sixty days")] }).Solve();
        Assert.NotEqual(string.Empty, tight.ToString());
        Assert.True(SearchEffort.Quick.Nodes < SearchEffort.Standard.Nodes);
        Assert.Equal(work.Solve(), work.Solve(SearchEffort.Quick));
        Numbers.Refuses("Start", () => _ = work with { Start = DateTimeOffset.MaxValue });
        Numbers.Refuses("VisitSlack", () => _ = work with { VisitSlack = TimeSpan.FromDays(61) });
        Numbers.Refuses("Prefers", () => _ = work with { Prefers = (SchedulePreference)9 });
    }

    private static SiteSchedule Ordered(IReadOnlyList<SiteStep> steps, params StepLag[] lags) => new SiteWork
    {
        Start = Monday,
        Calendar = WorkCalendar.EveryDay(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock),
        Steps = steps,
        Lags = [.. lags, .. steps.Skip(1).Select((step, i) => new StepLag(steps[i].Id, step.Id, TimeSpan.Zero, null, "order"))],
        Prefers = SchedulePreference.EarliestEnd,
    }.Solve();
}
