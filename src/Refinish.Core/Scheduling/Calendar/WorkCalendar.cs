using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>When someone is on site: shifts by day of the week, days off by date, read from the clock of the site.</summary>
/// <remarks>
/// A shift is read from the wall clock; its length in universal time is shorter or longer on a day on which clocks change within it.
/// Work that may not be interrupted lies within one shift.
/// </remarks>
/// <example><code>
/// WorkCalendar calendar = WorkCalendar.Weekdays(
///     new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), LocalClock.Fixed(TimeSpan.FromHours(1)), [new DateTime(2027, 3,
/// 29)]);
/// DateTimeOffset start = calendar.FirstOpen(new DateTimeOffset(2027, 3, 27, 12, 0, 0, TimeSpan.FromHours(1)));   // Tuesday 30 March, 8:00
/// </code></example>
public sealed record WorkCalendar
{
    private static readonly DayOfWeek[] Week = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday,
        DayOfWeek.Friday, DayOfWeek.Saturday, DayOfWeek.Sunday];

    /// <summary>Makes a calendar.</summary>
    /// <param name="clock">The clock of the site.</param>
    /// <param name="shifts">The shifts of a week, at least one; those of one day may not overlap.</param>
    /// <param name="daysOff">Dates without work; their time of day has to be midnight.</param>
    /// <exception cref="ArgumentException">No shift is given, two overlap, or a day off has a time of day.</exception>
    public WorkCalendar(LocalClock clock, IEnumerable<WorkShift> shifts, IEnumerable<DateTime> daysOff)
    {
        Clock = Guard.NotNull(clock);
        ValueList<WorkShift> sorted = new(Guard.List(shifts, 1).OrderBy(shift => Array.IndexOf(Week, shift.Day))
            .ThenBy(shift => shift.Hours.From));
        for (int i = 1; i < sorted.Count; i++)
        {
            if (sorted[i].Day == sorted[i - 1].Day && sorted[i].Hours.From < sorted[i - 1].Hours.Until)
            {
                throw new ArgumentException("The shifts " + sorted[i - 1] + " and " + sorted[i] + " overlap.", nameof(shifts));
            }
        }

        Shifts = sorted;
        DaysOff = new ValueList<DateTime>(Guard.NotNull(daysOff).Select(day => DateTime.SpecifyKind(day,
            DateTimeKind.Unspecified)).Distinct()
            .OrderBy(day => day));
        foreach (DateTime day in DaysOff)
        {
            if (day.TimeOfDay != TimeSpan.Zero)
            {
                throw new ArgumentException("A day off is given with the time of day " + Figures.Fixed(day.TimeOfDay.TotalHours, 2)
                    + " h; allowed: dates at midnight.", nameof(daysOff));
            }
        }
    }

    /// <summary>The clock of the site.</summary>
    public LocalClock Clock { get; }

    /// <summary>The shifts of a week, from Monday.</summary>
    public IReadOnlyList<WorkShift> Shifts { get; }

    /// <summary>Dates without work, in order.</summary>
    public IReadOnlyList<DateTime> DaysOff { get; }

    /// <summary>The longest shift: the longest piece of work that may not be interrupted.</summary>
    public TimeSpan LongestShift => Shifts.Max(shift => shift.Hours.Length);

    /// <summary>The same hours on all seven days.</summary>
    /// <param name="hours">The hours.</param>
    /// <param name="clock">The clock of the site.</param>
    /// <returns>The calendar.</returns>
    public static WorkCalendar EveryDay(WorkingHours hours, LocalClock clock) =>
        new(clock, Week.Select(day => new WorkShift(day, hours)), []);

    /// <summary>The same hours from Monday to Friday, all the year.</summary>
    /// <param name="hours">The hours.</param>
    /// <param name="clock">The clock of the site.</param>
    /// <returns>The calendar.</returns>
    public static WorkCalendar Weekdays(WorkingHours hours, LocalClock clock) => Weekdays(hours, clock, []);

    /// <summary>The same hours from Monday to Friday.</summary>
    /// <param name="hours">The hours.</param>
    /// <param name="clock">The clock of the site.</param>
    /// <param name="daysOff">Dates without work, such as public holidays; which days these are is for the caller to know.</param>
    /// <returns>The calendar.</returns>
    /// <exception cref="ArgumentException">A day off has a time of day.</exception>
    public static WorkCalendar Weekdays(WorkingHours hours, LocalClock clock, IEnumerable<DateTime> daysOff) =>
        new(clock, Week.Take(5).Select(day => new WorkShift(day, hours)), daysOff);

    /// <summary>The earliest instant, not before the one given, at which there is working time left.</summary>
    /// <param name="notBefore">The instant before which work cannot start.</param>
    /// <returns>The instant by the clock of the site.</returns>
    public DateTimeOffset FirstOpen(DateTimeOffset notBefore) =>
        At(new Openings(this, notBefore).FirstOpen(notBefore.UtcTicks, DaySet.All));

    /// <summary>The earliest instant, not before the one given, at which work of this length can start and end within one shift.</summary>
    /// <param name="notBefore">The instant before which it cannot start.</param>
    /// <param name="duration">Length of the work, at most <see cref="LongestShift"/>.</param>
    /// <returns>The instant by the clock of the site.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The work is longer than any shift, or negative.</exception>
    public DateTimeOffset FirstFit(DateTimeOffset notBefore, TimeSpan duration)
    {
        Guard.Within(duration, Bounds.NotNegative(Measure.Hours, LongestShift.TotalSeconds));
        return At(new Openings(this, notBefore).FirstFit(notBefore.UtcTicks, duration.Ticks, DaySet.All));
    }

    /// <summary>The pieces into which the end of each shift cuts a length of work.</summary>
    /// <param name="start">When the work starts; it waits for the first opening.</param>
    /// <param name="duration">Length of the work, 0 to 60 days of working time.</param>
    /// <returns>At least one piece; each lies within one shift, and together they have the length asked for.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The work is negative or longer than 60 days.</exception>
    public IReadOnlyList<TimeInterval> Cut(DateTimeOffset start, TimeSpan duration)
    {
        Guard.Within(duration, Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600));
        Openings openings = new(this, start);
        return Pieces(openings, openings.FirstOpen(start.UtcTicks, DaySet.All), duration.Ticks, DaySet.All);
    }

    /// <summary>Working time between two instants.</summary>
    /// <param name="from">The earlier instant.</param>
    /// <param name="until">The later instant, at most 3650 days later.</param>
    /// <returns>The time; zero when no shift lies between.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The second instant is before the first or too much later.</exception>
    public TimeSpan WorkingTime(DateTimeOffset from, DateTimeOffset until)
    {
        Guard.Within(until - from, Bounds.NotNegative(Measure.Hours, 3650.0 * 86400), nameof(until));
        return TimeSpan.FromTicks(new Openings(this, from).WorkBetween(from.UtcTicks, until.UtcTicks));
    }

    /// <summary>The shifts, the number of days off, and the clock.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => string.Join(", ", Shifts) + "; " + Figures.Fixed(DaysOff.Count, 0) + " days off; " + Clock;

    internal DateTimeOffset At(long ticks) => Clock.OnSite(new DateTimeOffset(ticks, TimeSpan.Zero));

    internal ValueList<TimeInterval> Pieces(Openings openings, long start, long duration, DaySet days) =>
        new(openings.Cut(start, duration, days).Select(piece => new TimeInterval(At(piece.From), At(piece.Until))));
}
