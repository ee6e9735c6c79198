using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>One person's day on the premises: from the first to the last operation, worked, waiting, and what is paid.</summary>
public sealed record PersonVisit
{
    internal PersonVisit(string worker, PersonDay day, Shop shop)
    {
        Worker = worker;
        Turns = day.Turns;
        Arrives = day.Arrives;
        Leaves = day.Leaves;
        Worked = day.Worked;
        OnSite = Leaves - Arrives - Breaks(shop.Calendar);
        long half = shop.HalfDay.Ticks;
        HalfDays = TimeSpan.FromTicks((OnSite.Ticks + half - 1) / half * half);
        Paid = PaidHours.By(shop.Paid, Worked, OnSite, HalfDays);
    }

    /// <summary>Identifier of the person.</summary>
    public string Worker { get; }

    /// <summary>What the person does, in order.</summary>
    public IReadOnlyList<CrewTurn> Turns { get; }

    /// <summary>Start of the first operation.</summary>
    public DateTimeOffset Arrives { get; }

    /// <summary>End of the last operation.</summary>
    public DateTimeOffset Leaves { get; }

    /// <summary>Hours of work and of standing by.</summary>
    public TimeSpan Worked { get; }

    /// <summary>From arriving to leaving, less the breaks that the calendar leaves open.</summary>
    public TimeSpan OnSite { get; }

    /// <summary>Time on site without work.</summary>
    public TimeSpan Waiting => OnSite - Worked;

    /// <summary>Time on site rounded up to half-days.</summary>
    public TimeSpan HalfDays { get; }

    /// <summary>What the shop's rule pays.</summary>
    public TimeSpan Paid { get; }

    /// <summary>Person and times.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Worker + " " + CarefulTime.Up(Arrives).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " to " + CarefulTime.Up(Leaves).ToString("HH:mm", CultureInfo.InvariantCulture);

    // What lies between two shifts of one day is a break.
    private TimeSpan Breaks(WorkCalendar calendar)
    {
        WorkShift[] today = Leaves.Date == Arrives.Date ? [.. calendar.Shifts.Where(shift => shift.Day == Arrives.DayOfWeek)] : [];
        long breaks = 0;
        for (int i = 1; i < today.Length; i++)
        {
            long from = Math.Max(today[i - 1].Hours.Until.Ticks, Arrives.TimeOfDay.Ticks);
            long until = Math.Min(today[i].Hours.From.Ticks, Leaves.TimeOfDay.Ticks);
            breaks += Math.Max(0, until - from);
        }

        return TimeSpan.FromTicks(breaks);
    }
}
