using System;
using System.Linq;
using Refinish.Curing;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;
using static Refinish.Tests.Scheduling.SiteWorks;

namespace Refinish.Tests.Scheduling;

public class SiteClockTests
{
    [Theory]
    [InlineData(25, 2)]
    [InlineData(15, 4)]
    [InlineData(35, 1)]
    [Evidence(Basis.Independent, "by hand: 2 h at 25 °C are 4 h at 15 °C and 1 h at 35 °C when the rate doubles for ten kelvins")]
    public void A_least_time_follows_the_temperature(double celsius, double hours)
    {
        SiteSchedule schedule = Plan(Clock(true, (1000, celsius)), 2, null);
        Assert.Equal(TimeSpan.FromHours(hours), schedule.Find("topcoat").Start - schedule.Find("prime").End);
        Assert.Equal(TimeSpan.FromHours(hours), schedule.Find("topcoat").Driver.Between);
        Assert.Empty(SiteVerifier.Breaches(schedule));
        Numbers.CanBeWritten(schedule.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 4 h at 25 °C from 9:00, when it is 25 °C until 11:00 and 15 °C afterwards: 2 h, then 4 h for the other two, so 15:00")]
    public void A_change_of_temperature_is_counted() =>
        Assert.Equal(Monday.AddHours(7), Plan(Clock(true, (3, 25), (100, 15)), 4, null).Find("topcoat").Start);

    [Fact]
    [Evidence(Basis.Independent, "by hand: the topcoat, exactly 4 h at 25 °C later, cannot come before 16:00; 4 h before that, at 25 °C since 12:00 and 15 °C before, reach back to 12:00, so priming is 11–12; with 5 h they reach back to 10:00")]
    public void The_earlier_step_follows_a_late_one()
    {
        SiteSchedule Late(double age) => (Work(Clock(true, (4, 15), (100, 25)), age, age) is SiteWork work
            ? work with { Steps = [work.Steps[0], work.Steps[1] with { Unavailable = [Hours(0, 8)] }] } : null!).Solve();
        Assert.Equal(Monday.AddHours(3), Late(4).Find("prime").Start);
        Assert.Equal(Monday.AddHours(8), Late(4).Find("topcoat").Start);
        Assert.Equal(Monday.AddHours(2), Late(5).Find("prime").End);
        Assert.Equal(ChainLinkKind.Window, Late(4).Find("prime").Driver.Kind);
        Assert.Empty(SiteVerifier.Breaches(Late(4)));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: primed 15–16 with a window of 3 h at 25 °C, 8 °C from 17:00 to 8:00; when the film stops below 12 °C only 1 h is gained overnight and the topcoat is on at 8:00; without the limit the night gains 15 h × 2^−1.7 = 4.6 h and priming waits for the morning")]
    public void Below_its_least_temperature_a_window_stays_open()
    {
        EquivalentAge clock = Clock(true, (9, 25), (15, 8), (100, 25));
        SiteWork work = Work(new EquivalentAge(clock.History, clock.Shift, clock.Reference, Temperature.FromDegreesCelsius(12)), 0,
            3) with { Prefers = SchedulePreference.EarliestEnd };
        work = work with { Steps = [work.Steps[0] with { Unavailable = [Hours(0, 7)] },
            work.Steps[1] with { Unavailable = [Hours(0, 9)] }] };
        Assert.Equal([Monday.AddHours(7), Monday.AddHours(24)], work.Solve().Steps.Select(step => step.Start));
        SiteSchedule law = (work with { Lags = [work.Lags[0].With(clock)] }).Solve();
        Assert.Equal([Monday.AddHours(24), Monday.AddHours(25)], law.Steps.Select(step => step.Start));
    }

    [Fact]
    [Evidence(Basis.Contract, "a record that ends before the time is gained, or begins after the work, is named as too short; one that goes on lets the work be done")]
    public void A_short_record_is_named()
    {
        SiteSchedule schedule = Plan(Clock(false, (5, 25)), 6, null);
        Assert.Equal(["recoat"], schedule.Conflict!.ShortRecords.Select(lag => lag.Reason));
        Assert.StartsWith("The temperature record is too short: it ends before the time is reached for recoat: the primer → the topcoat, 6 h or more", schedule.ToString(), StringComparison.Ordinal);
        Assert.True(Plan(Clock(true, (5, 25)), 6, null).IsPossible);
        EquivalentAge late = new(TemperatureHistory.Constant(Monday.AddHours(1), Temperature.FromDegreesCelsius(25)),
            TemperatureShift.Doubling(2), Temperature.FromDegreesCelsius(25));
        Assert.StartsWith("The temperature record is too short: it begins after the start of the work", Plan(late, 1, null).ToString(),
            StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: at a steady 15 °C, 4 to 6 h at 25 °C are 8 to 12 h; no coat of a working day of 9 h with both of 1 h has the other 8 h later, and until 8:00 it is 15 h, 7.5 h on the clock; to finish by 17:00 from 9:00 takes at most 7 h, 3.5 h on the clock")]
    public void What_would_do_is_told_on_the_clock()
    {
        SiteWork work = Work(Clock(true, (1, 15)), 4, 6);
        ScheduleConflict conflict = (work with { Calendar = WorkCalendar.EveryDay(new WorkingHours(TimeSpan.FromHours(8),
            TimeSpan.FromHours(17)), SiteWorks.Clock) }).Solve().Conflict!;
        Assert.Equal([(true, TimeSpan.FromHours(7.5)), (false, TimeSpan.FromHours(3.5))],
            conflict.Reliefs.Select(relief => (relief.OfMaximum, relief.Needed)));
        Assert.Contains("at most 7.5 h instead of 6 h counted at 25 °C", conflict.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "two clocks of two laws that contradict each other by a hair end as a result, not in an endless search")]
    public void Two_clocks_that_contradict_each_other_end()
    {
        EquivalentAge clock = Clock(true, (4, 25), (4, 15), (4, 25), (4, 15));
        EquivalentAge other = new(clock.History, TemperatureShift.Doubling(2.0000001), clock.Reference);
        SiteWork work = Work(clock, 3, null);
        SiteSchedule schedule = (work with { Lags = [work.Lags[0],
            new StepLag("prime", "topcoat", TimeSpan.Zero, TimeSpan.FromHours(3), "closes", other)] }).Solve();
        Assert.True(!schedule.IsPossible || SiteVerifier.Breaches(schedule).Count == 0);
    }

    private static EquivalentAge Clock(bool on, params (double Hours, double Celsius)[] stretches) => new(
        new TemperatureHistory(Monday,
            stretches.Select(one => new TemperatureSegment(TimeSpan.FromHours(one.Hours), Temperature.FromDegreesCelsius(one.Celsius))),
            on),
        TemperatureShift.Doubling(2),
        Temperature.FromDegreesCelsius(25));

    private static SiteSchedule Plan(EquivalentAge clock, double least, double? most) => Work(clock, least, most).Solve();

    private static SiteWork Work(EquivalentAge clock, double least, double? most) => new()
    {
        Start = Monday,
        Calendar = Week,
        Steps = [Step("prime", 1, "bath") with { Name = "the primer" }, Step("topcoat", 1, "bath") with { Name = "the topcoat" }],
        Lags = [new StepLag("prime", "topcoat", TimeSpan.FromHours(least), most is double hours ? TimeSpan.FromHours(hours) : null,
            "recoat", clock)],
    };
}
