using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// A calendar unrolled from a first day onwards into shifts in ticks of universal time, as far as they are asked for: where each shift opens and
/// closes, and how much working time lies before it.
/// </summary>
internal sealed class Openings
{
    /// <summary>Later than every time of a schedule, and far enough from overflow to be added to.</summary>
    public const long Never = long.MaxValue / 4;

    private readonly WorkCalendar calendar;
    private readonly HashSet<DateTime> daysOff;
    private readonly Func<DateTime, bool>? allowed;
    private readonly DateTime firstDay;
    private readonly long origin;
    private readonly int mostDays;
    private readonly long longer;
    private readonly List<long> opens = [];
    private readonly List<long> closes = [];
    private readonly List<long> before = [];
    private int days;

    /// <param name="calendar">The calendar.</param>
    /// <param name="from">Shifts that close before this instant's day are left out.</param>
    /// <param name="allowed">Which dates may be worked at all; every date when omitted.</param>
    /// <param name="mostDays">How many days are unrolled at most.</param>
    public Openings(WorkCalendar calendar, DateTimeOffset from, Func<DateTime, bool>? allowed = null, int mostDays = 3650)
    {
        this.calendar = calendar;
        this.allowed = allowed;
        origin = from.UtcTicks;
        daysOff = [.. calendar.DaysOff];
        firstDay = calendar.Clock.OnSite(from).Date;
        this.mostDays = mostDays;
    }

    private Openings(Openings of, long longer)
        : this(of.calendar, of.calendar.At(of.origin), of.allowed, of.mostDays) => this.longer = longer;

    /// <summary>The same shifts, each closing so much later, but not after the next opens.</summary>
    public Openings Longer(long by) => new(this, by);

    public long FirstOpen(long time)
    {
        int k = After(time);
        return k < 0 ? Never : Math.Max(time, opens[k]);
    }

    public long FirstFit(long time, long duration)
    {
        // Work of no length may stand at the very end of a shift.
        int k = duration == 0 ? After(time - 1) : After(time);
        for (; k >= 0; k = Grown(k + 1))
        {
            long start = Math.Max(time, opens[k]);
            if (start + duration <= closes[k])
            {
                return start;
            }
        }

        return Never;
    }

    /// <summary>When interruptible work ends that starts within a shift.</summary>
    public long End(long start, long duration)
    {
        if (duration == 0 || start >= Never)
        {
            return start;
        }

        return AfterWork(start, duration);
    }

    /// <summary>The earliest instant by which so much working time has passed.</summary>
    public long AfterWork(long start, long work)
    {
        if (work <= 0)
        {
            return start;
        }

        int k = After(start);
        if (k < 0)
        {
            return Never;
        }

        long target = before[k] + Math.Max(0, start - opens[k]) + work;
        while (before[before.Count - 1] + closes[closes.Count - 1] - opens[opens.Count - 1] < target)
        {
            if (Grown(closes.Count) < 0)
            {
                return Never;
            }
        }

        int low = k;
        int high = closes.Count - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = before[middle] + closes[middle] - opens[middle] >= target ? (low, middle) : (middle + 1, high);
        }

        return opens[low] + target - before[low];
    }

    public long WorkBetween(long from, long until)
    {
        long sum = 0;
        for (int k = After(from); k >= 0 && opens[k] < until; k = Grown(k + 1))
        {
            sum += Math.Min(until, closes[k]) - Math.Max(from, opens[k]);
        }

        return sum;
    }

    public IEnumerable<(long From, long Until)> Cut(long start, long duration)
    {
        long left = duration;
        long from = start;
        while (true)
        {
            int k = After(from);
            if (left == 0 || k < 0)
            {
                yield return (from, from);
                yield break;
            }

            long here = Math.Min(closes[k] - from, left);
            yield return (from, from + here);
            left -= here;
            if (left == 0)
            {
                yield break;
            }

            from = opens[Grown(k + 1)];
        }
    }

    /// <summary>The dates with working time between two instants, with that time.</summary>
    public IEnumerable<(DateTime Day, long Work)> Days(long from, long until)
    {
        List<(DateTime Day, long Work)> found = [];
        for (int k = After(from); k >= 0 && opens[k] < until; k = Grown(k + 1))
        {
            found.Add((calendar.At(opens[k]).Date, Math.Min(until, closes[k]) - Math.Max(from, opens[k])));
        }

        return found.GroupBy(one => one.Day).Select(day => (day.Key, day.Sum(one => one.Work)));
    }

    /// <summary>The first shift that closes after an instant; −1 when there is none.</summary>
    private int After(long time)
    {
        while (closes.Count == 0 || closes[closes.Count - 1] <= time)
        {
            if (Grown(closes.Count) < 0)
            {
                return -1;
            }
        }

        int low = 0;
        int high = closes.Count - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = closes[middle] > time ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    /// <summary>Unrolls until shift k is there; −1 when the calendar has none within the days to be unrolled.</summary>
    private int Grown(int k)
    {
        while (closes.Count <= k && days < mostDays)
        {
            DateTime day = firstDay.AddDays(days);
            days++;
            if (daysOff.Contains(day) || (allowed is not null && !allowed(day)))
            {
                continue;
            }

            foreach (WorkShift shift in calendar.Shifts)
            {
                if (shift.Day == day.DayOfWeek)
                {
                    Add(calendar.Clock.WhenShowing(day + shift.Hours.From).UtcTicks, calendar.Clock.WhenShowing(day + shift.Hours.Until).UtcTicks);
                }
            }
        }

        return closes.Count > k ? k : -1;
    }

    private void Add(long open, long close)
    {
        // A change of clocks can swallow a shift.
        if (close > open)
        {
            if (opens.Count > 0 && closes[closes.Count - 1] > open)
            {
                closes[closes.Count - 1] = open;
            }

            before.Add(before.Count == 0 ? 0 : before[before.Count - 1] + closes[closes.Count - 1] - opens[opens.Count - 1]);
            opens.Add(open);
            closes.Add(close + longer);
        }
    }
}
