using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;
using static Refinish.Tests.Scheduling.SiteWorks;

namespace Refinish.Tests.Scheduling;

public class SiteUnavailableTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: sanding is loud and not wanted before 10:00, so masking comes first at 8:00 although it is listed second; sanding 10–12")]
    public void Loud_work_waits_for_the_end_of_quiet_hours()
    {
        SiteSchedule schedule = Plan([Step("sand", 2, null) with { Unavailable = [Hours(-2, 3), Hours(0, 2)] }, Step("mask", 1, null)]);
        Assert.Equal(Monday.AddHours(2), schedule.Find("sand").Start);
        Assert.Equal(Monday.AddHours(1), schedule.Find("mask").Start);
        Assert.Equal(Monday.AddHours(4), schedule.Finish);
        Assert.True(schedule.IsEarliest);
        Assert.Empty(SiteVerifier.Breaches(schedule));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 3 h from 8:00 around 9–10 are 8–9 and 10–12 for work that may stop; work in one go waits for 13–16 when 10–13 and 16–17 are closed to it; a wait of 2 h that may not touch 9–10 starts at 10:00")]
    public void Interruptible_work_goes_around_and_work_in_one_go_does_not()
    {
        SiteSchedule mask = Plan([Step("mask", 3, null) with { IsInterruptible = true, Unavailable = [Hours(1, 1)] }]);
        Assert.Equal([new TimeInterval(Monday, Monday.AddHours(1)), new TimeInterval(Monday.AddHours(2), Monday.AddHours(4))],
            mask.Steps[0].Pieces);
        Assert.Equal(TimeSpan.FromHours(3), mask.Visits[0].Worked);
        Numbers.CanBeWritten(mask.Workings());
        SiteSchedule coat = Plan([Step("coat", 3, null) with { Unavailable = [Hours(8, 1), Hours(4, 1), Hours(2, 2), Hours(3, 2)] }]);
        Assert.Equal(Monday.AddHours(5), coat.Steps[0].Start);
        SiteSchedule wait = Plan([Step("wait", 2, null) with { People = 0, Unavailable = [Hours(1, 1)] }]);
        Assert.Equal(Monday.AddHours(2), wait.Steps[0].Start);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: while masking stops from 9 to 10, the one person does not break into it with other work, which waits until 12:00 or goes first")]
    public void Other_work_does_not_break_into_it()
    {
        SiteSchedule schedule = Plan(
            [Step("mask", 3, null) with { IsInterruptible = true, Unavailable = [Hours(1, 1)] }, Step("tack", 1, null)],
            new StepLag("mask", "tack", TimeSpan.Zero, null, "masked first"));
        Assert.Equal(Monday.AddHours(4), schedule.Find("tack").Start);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: Monday to Wednesday are not wanted, so a coat and its refit 16 h later are done on Thursday and Friday")]
    public void Days_that_are_not_wanted_are_left_out()
    {
        SiteSchedule schedule = Plan(
            [Step("coat", 1, null) with { Unavailable = [Hours(-8, 72)] }, Step("refit", 1, null) with { Unavailable = [Hours(-8, 72)] }],
            new StepLag("coat", "refit", TimeSpan.FromHours(16), null, "cure"));
        Assert.Equal([Monday.AddDays(3), Monday.AddDays(4)], schedule.Steps.Select(step => step.Start));
    }

    [Fact]
    [Evidence(Basis.Contract, "a step that fits nowhere is named, with what would help; nothing is thrown")]
    public void A_step_that_fits_nowhere_is_named()
    {
        SiteStep step = Step("loud", 5, null) with { Name = "grind out the grout",
            Unavailable = [.. Enumerable.Range(0, 12 * 366).Select(day => Hours((24 * day) + 4, 1))] };
        SiteSchedule schedule = Plan([step, Step("other", 1, null)]);
        Assert.False(schedule.IsPossible);
        Assert.True(schedule.Conflict!.IsProved);
        Assert.Equal(["loud"], schedule.Conflict.Unplaced.Select(one => one.Id));
        Assert.StartsWith("grind out the grout takes 5 h and fits into no working hours", schedule.ToString(), StringComparison.Ordinal);
        Assert.Empty(schedule.PersonDays);
        Assert.Empty(schedule.CriticalChain);
    }

    [Fact]
    [Evidence(Basis.Contract, "an interval ends no sooner than it starts; intervals of equal instants are equal")]
    public void An_interval_is_a_value()
    {
        Numbers.Refuses("end", () => _ = new TimeInterval(Monday, Monday.AddTicks(-1)));
        Assert.Equal(TimeSpan.FromHours(3), Hours(2, 3).Length);
        Assert.Equal(Hours(2, 3), new TimeInterval(Monday.AddHours(2), Monday.AddHours(5)));
        Assert.Equal("2027-03-01 10:00 to 2027-03-01 13:00", Hours(2, 3).ToString());
        Assert.Throws<ArgumentException>(() => Step("x", 1, null) with { Unavailable = [null!] });
    }

    private static SiteSchedule Plan(IReadOnlyList<SiteStep> steps, params StepLag[] lags) =>
        new SiteWork { Start = Monday, Calendar = Week, Steps = steps, Lags = lags }.Solve();
}
