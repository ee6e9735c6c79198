using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Scheduling;

public class WorkCalendarTests
{
    private static readonly WorkingHours Day = new(TimeSpan.FromHours(8), TimeSpan.FromHours(17));

    /// <summary>
    /// Central European rule: forward on the last Sunday of March at 2:00, back on the last Sunday of October at 3:00, wall time
    /// (Directive 2000/84/EC).
    /// </summary>
    private static readonly TimeZoneInfo Zone = TimeZoneInfo.CreateCustomTimeZone(
        "test", TimeSpan.FromHours(1), "test", "test", "test summer",
        [
            TimeZoneInfo.AdjustmentRule.CreateAdjustmentRule(
                DateTime.MinValue.Date, DateTime.MaxValue.Date, TimeSpan.FromHours(1),
                TimeZoneInfo.TransitionTime.CreateFloatingDateRule(new DateTime(1, 1, 1, 2, 0, 0), 3, 5, DayOfWeek.Sunday),
                TimeZoneInfo.TransitionTime.CreateFloatingDateRule(new DateTime(1, 1, 1, 3, 0, 0), 10, 5, DayOfWeek.Sunday)),
        ]);

    private static readonly LocalClock AsData = LocalClock.WithChanges(
        TimeSpan.FromHours(1),
        [new ClockChange(Utc(2027, 10, 31, 1), TimeSpan.FromHours(1)), new ClockChange(Utc(2027, 3, 28, 1), TimeSpan.FromHours(2))]);

    [Fact]
    [Evidence(Basis.Contract, "a clock tells what it was made of")]
    public void A_clock_tells_its_offset_its_changes_in_order_and_its_zone()
    {
        Assert.Equal(TimeSpan.FromHours(1), AsData.Offset);
        Assert.Equal([Utc(2027, 3, 28, 1), Utc(2027, 10, 31, 1)], AsData.Changes.Select(change => change.Instant));
        Assert.Null(AsData.Zone);
        Assert.Equal(TimeSpan.FromHours(-5), LocalClock.Fixed(TimeSpan.FromHours(-5)).Offset);
        Assert.Empty(LocalClock.Fixed(TimeSpan.Zero).Changes);
        Assert.Same(Zone, LocalClock.Of(Zone).Zone);
    }

    [Theory]
    [InlineData(3, 27, 16, 12, 3, 28, 5)]
    [InlineData(10, 30, 16, 12, 10, 31, 3)]
    [InlineData(6, 5, 16, 12, 6, 6, 4)]
    [Evidence(Basis.Independent, "by hand: 12 h of cure from 16:00 end at 4:00; in the night clocks go forward at 5:00, in the night they go back at 3:00, because the film knows no clocks")]
    public void A_cure_overnight_neither_gains_nor_loses_an_hour(int month, int day, int from, int hours, int endMonth, int endDay,
        int wall)
    {
        foreach (LocalClock clock in new[] { LocalClock.Of(Zone), AsData })
        {
            DateTimeOffset start = clock.WhenShowing(new DateTime(2027, month, day, from, 0, 0));
            SiteWork work = new()
            {
                Start = start,
                Calendar = WorkCalendar.EveryDay(Day, clock),
                Steps = [new SiteStep { Id = "cure", Duration = TimeSpan.FromHours(hours), People = 0 },
                    new SiteStep { Id = "refit", Duration = TimeSpan.FromHours(1) }],
                Lags = [new("cure", "refit", TimeSpan.Zero, null, "cured")],
            };
            SiteSchedule schedule = work.Solve();
            PlannedStep cure = schedule.Find("cure");
            Assert.Equal(TimeSpan.FromHours(hours), cure.End.UtcDateTime - cure.Start.UtcDateTime);
            Assert.Equal(new DateTime(2027, endMonth, endDay, wall, 0, 0), cure.End.DateTime);
            Assert.Equal(new DateTime(2027, endMonth, endDay, 8, 0, 0), schedule.Find("refit").Start.DateTime);
            Numbers.CanBeWritten(schedule.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a window of 15 h after 17:00 reaches 8:00 on an ordinary morning, 9:00 after clocks went forward and 7:00 after they went back, so that only then is there no schedule for the next morning")]
    public void A_window_overnight_closes_by_elapsed_time()
    {
        SiteSchedule Over(int month, int day) => new SiteWork
        {
            Start = AsData.WhenShowing(new DateTime(2027, month, day, 16, 0, 0)),
            Calendar = WorkCalendar.EveryDay(Day, AsData),
            Steps = [new SiteStep { Id = "prime", Duration = TimeSpan.FromHours(1) },
                new SiteStep { Id = "topcoat", Duration = TimeSpan.FromHours(1) }],
            Lags = [new("prime", "topcoat", TimeSpan.FromHours(10), TimeSpan.FromHours(15), "recoat window")],
            Prefers = SchedulePreference.EarliestEnd,
        }.Solve();
        Assert.Equal(new DateTime(2027, 6, 6, 8, 0, 0), Over(6, 5).Find("topcoat").Start.DateTime);
        Assert.Equal(new DateTime(2027, 3, 28, 8, 0, 0), Over(3, 27).Find("topcoat").Start.DateTime);
        Assert.Equal(TimeSpan.FromHours(14), Over(3, 27).Find("topcoat").Start - Over(3, 27).Find("prime").End);

        // With 16 h to 8:00 that night the window of Saturday has closed; priming waits for Sunday.
        Assert.Equal(new DateTime(2027, 10, 31, 16, 0, 0), Over(10, 30).Find("prime").Start.DateTime);
        Assert.Equal(new DateTime(2027, 11, 1, 8, 0, 0), Over(10, 30).Find("topcoat").Start.DateTime);
    }

    [Fact]
    [Evidence(Basis.Independent, "the platform's own TimeZoneInfo conversion, hour by hour over a year, against offsets given as data; skipped and doubled times by hand")]
    public void Clocks_agree_with_the_platform()
    {
        LocalClock zone = LocalClock.Of(Zone);
        for (DateTimeOffset time = Utc(2027, 1, 1, 0); time < Utc(2028, 1, 1, 0); time = time.AddMinutes(30))
        {
            DateTimeOffset expected = TimeZoneInfo.ConvertTime(time, Zone);
            Assert.Equal(expected, zone.OnSite(time));
            Assert.Equal(expected.Offset, AsData.OffsetAt(time));
            bool twice = Zone.IsAmbiguousTime(expected.DateTime);
            foreach (LocalClock clock in new[] { zone, AsData })
            {
                DateTimeOffset back = clock.WhenShowing(expected.DateTime);
                Assert.True(back == expected || (twice && back == expected.AddHours(-1)));
                Assert.Equal(expected.DateTime, back.DateTime);
            }
        }

        foreach (LocalClock clock in new[] { zone, AsData })
        {
            Assert.Equal(Utc(2027, 3, 28, 1), clock.WhenShowing(new DateTime(2027, 3, 28, 2, 30, 0)));
            Assert.Equal(new DateTimeOffset(2027, 10, 31, 2, 30, 0, TimeSpan.FromHours(2)),
                clock.WhenShowing(new DateTime(2027, 10, 31, 2, 30, 0)));
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: two shifts with a lunch hour, Saturday until noon, a day off; 5 h of uninterrupted work fit no shift of 4 h")]
    public void Shifts_breaks_and_days_off()
    {
        WorkCalendar calendar = new(
            LocalClock.Fixed(TimeSpan.Zero),
            [Shift(DayOfWeek.Friday, 13, 17), Shift(DayOfWeek.Friday, 8, 12), Shift(DayOfWeek.Saturday, 8, 12),
                Shift(DayOfWeek.Monday, 8, 12)],
            [new DateTime(2027, 3, 8)]);
        Assert.Equal(TimeSpan.FromHours(4), calendar.LongestShift);
        Assert.Equal(Utc(2027, 3, 5, 13), calendar.FirstOpen(Utc(2027, 3, 5, 12)));
        Assert.Equal(Utc(2027, 3, 5, 13), calendar.FirstFit(Utc(2027, 3, 5, 10), TimeSpan.FromHours(3)));
        Assert.Equal(Utc(2027, 3, 12, 8), calendar.FirstOpen(Utc(2027, 3, 6, 12)));
        Assert.Equal(
            [(Utc(2027, 3, 5, 11), Utc(2027, 3, 5, 12)), (Utc(2027, 3, 5, 13), Utc(2027, 3, 5, 17)),
                (Utc(2027, 3, 6, 8), Utc(2027, 3, 6, 9))],
            calendar.Cut(Utc(2027, 3, 5, 11), TimeSpan.FromHours(6)).Select(piece => (piece.Start, piece.End)));
        Assert.Equal(TimeSpan.FromHours(12), calendar.WorkingTime(Utc(2027, 3, 5, 0), Utc(2027, 3, 12, 8)));
        Numbers.Refuses("duration", () => calendar.FirstFit(Utc(2027, 3, 5, 8), TimeSpan.FromHours(5)));
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Independent, "random hours and instants around both changes of clocks: a walk minute by minute with the platform's zone finds the same first opening and the same working time")]
    public void Openings_agree_with_a_walk_by_the_minute(DoNotSize<int> seed)
    {
        uint s = unchecked((uint)seed.Item);
        double from = s % 20;
        WorkingHours hours = new(TimeSpan.FromHours(from), TimeSpan.FromHours(from + 1 + (s / 20 % (23 - (uint)from + 1))));
        WorkCalendar calendar = WorkCalendar.Weekdays(hours, LocalClock.Of(Zone), [new DateTime(2027, 3, 29)]);
        DateTimeOffset start = (s / 500 % 2 == 0 ? Utc(2027, 3, 26, 0) : Utc(2027, 10, 29, 0)).AddMinutes(s / 1000 % 5000);
        bool Open(DateTimeOffset time)
        {
            DateTime wall = TimeZoneInfo.ConvertTime(time, Zone).DateTime;
            return wall.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday) && wall.Date != new DateTime(2027, 3, 29)
                && wall.TimeOfDay >= hours.From && wall.TimeOfDay < hours.Until;
        }

        DateTimeOffset first = start;
        while (!Open(first))
        {
            first = first.AddMinutes(1);
        }

        Assert.Equal(first, calendar.FirstOpen(start));
        DateTimeOffset until = start.AddHours(100);
        int minutes = Enumerable.Range(0, 6000).Count(minute => Open(start.AddMinutes(minute)));
        Assert.Equal(TimeSpan.FromMinutes(minutes), calendar.WorkingTime(start, until));
    }

    [Fact]
    [Evidence(Basis.Contract, "calendars and clocks that cannot be are refused; equal ones are equal; text is invariant")]
    public void Refuses_what_cannot_be()
    {
        LocalClock clock = LocalClock.Fixed(TimeSpan.FromHours(1));
        Numbers.Refuses("offset", () => LocalClock.Fixed(TimeSpan.FromHours(15)));
        Numbers.Refuses("offset", () => LocalClock.Fixed(TimeSpan.FromSeconds(90)));
        Numbers.Refuses("changes", () =>
            LocalClock.WithChanges(TimeSpan.Zero, [new(Utc(2027, 3, 28, 1), TimeSpan.Zero), new(Utc(2027, 3, 29, 1), TimeSpan.Zero)]));
        Numbers.Refuses("day", () => _ = new WorkShift((DayOfWeek)7, Day));
        Assert.Throws<ArgumentException>(() => new WorkCalendar(clock, [], []));
        Assert.Throws<ArgumentException>(() => new WorkCalendar(clock, [Shift(DayOfWeek.Monday, 8, 12), Shift(DayOfWeek.Monday, 11, 13)], []));
        Assert.Throws<ArgumentException>(() => WorkCalendar.Weekdays(Day, clock, [new DateTime(2027, 3, 1, 1, 0, 0)]));
        Assert.Throws<ArgumentNullException>(() => LocalClock.Of(null!));
        Assert.Equal(WorkCalendar.Weekdays(Day, clock), WorkCalendar.Weekdays(Day, LocalClock.Fixed(TimeSpan.FromHours(1))));
        Assert.Equal("Monday 08:00–17:00", new WorkShift(DayOfWeek.Monday, Day).ToString());
        Assert.Equal("2027-03-28 01:00 UTC: 2 h", new ClockChange(Utc(2027, 3, 28, 1), TimeSpan.FromHours(2)).ToString());
    }

    private static WorkShift Shift(DayOfWeek day, double from, double until) =>
        new(day, new WorkingHours(TimeSpan.FromHours(from), TimeSpan.FromHours(until)));

    private static DateTimeOffset Utc(int year, int month, int day, int hour) => new(year, month, day, hour, 0, 0, TimeSpan.Zero);
}
