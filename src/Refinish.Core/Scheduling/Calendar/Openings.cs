using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// A calendar unrolled from a first day onwards into shifts in ticks of universal time, as far as they are asked for: where each shift
/// opens and closes, and on which day. One made without certain times has these cut out of its shifts.
/// </summary>
internal sealed class Openings
{
    /// <summary>Later than every time of a schedule, and far enough from overflow to be added to.</summary>
    public const long Never = long.MaxValue / 4;

    private readonly WorkCalendar calendar;
    private readonly HashSet<DateTime>? daysOff;
    private readonly DateTime firstDay;
    private readonly Openings? parent;
    private readonly long[] closed;
    private Dictionary<IReadOnlyList<TimeInterval>, Openings>? without;
    private Shift[] shifts = new Shift[16];
    private int count;
    private int unrolled;
    private int mostDays;
    private int nextClosed;

    /// <param name="calendar">The calendar.</param>
    /// <param name="from">Shifts before this instant's day are left out.</param>
    /// <param name="mostDays">How many days are unrolled at most.</param>
    public Openings(WorkCalendar calendar, DateTimeOffset from, int mostDays = 3650)
    {
        this.calendar = calendar;
        daysOff = calendar.DaysOff.Count > 0 ? [.. calendar.DaysOff] : null;
        firstDay = calendar.Clock.OnSite(from).Date;
        this.mostDays = Math.Min(mostDays, Math.Max(0, (DateTime.MaxValue - firstDay).Days - 3));
        closed = [];
    }

    private Openings(Openings parent, long[] closed)
    {
        (calendar, this.parent, this.closed, firstDay) = (parent.calendar, parent, closed, parent.firstDay);
    }

    /// <summary>Unrolls no more than so many days.</summary>
    public void EndAfter(int days) => mostDays = Math.Min(mostDays, days);

    /// <summary>The same shifts without some times.</summary>
    public Openings Without(IReadOnlyList<TimeInterval> unavailable)
    {
        if (unavailable.Count == 0)
        {
            return this;
        }

        without ??= [];
        if (!without.TryGetValue(unavailable, out Openings? made))
        {
            made = new Openings(this, TimeInterval.Merged(unavailable));
            without.Add(unavailable, made);
        }

        return made;
    }

    public long FirstOpen(long time, DaySet set)
    {
        int k = Allowed(After(time), set);
        return k < 0 ? Never : Math.Max(time, shifts[k].Open);
    }

    public long FirstFit(long time, long duration, DaySet set)
    {
        // Work of no length may stand at the very end of a shift.
        int k = Allowed(duration == 0 ? After(time - 1) : After(time), set);
        for (; k >= 0; k = Allowed(Grown(k + 1), set))
        {
            long start = Math.Max(time, shifts[k].Open);
            if (start + duration <= shifts[k].Close)
            {
                return start;
            }
        }

        return Never;
    }

    /// <summary>
    /// The latest start, not after one time and not before another, of work that lies in one shift; −1 when there is none.
    /// </summary>
    public long LastFit(long latest, long earliest, long duration, DaySet set)
    {
        int k = After(latest);
        for (k = k < 0 ? count - 1 : k; k >= 0 && shifts[k].Close >= earliest; k--)
        {
            long start = Math.Min(latest, shifts[k].Close - duration);
            if (start >= shifts[k].Open && start >= earliest && set.Has(shifts[k].Day))
            {
                return start;
            }
        }

        return -1;
    }

    /// <summary>When interruptible work ends that starts within a shift.</summary>
    public long AfterWork(long start, long work, DaySet set)
    {
        if (work <= 0 || start >= Never)
        {
            return start;
        }

        int k = Allowed(After(start), set);
        if (k < 0)
        {
            return Never;
        }

        return set.IsAll
            ? WhenWorked(shifts[k].Before + Math.Max(0, start - shifts[k].Open) + work, k)
            : Walked(k, start, work, set);
    }

    /// <summary>Working time from the first shift to an instant; −1 when no shift closes after it.</summary>
    public long WorkUntil(long time)
    {
        int k = After(time);
        return k < 0 ? -1 : shifts[k].Before + Math.Max(0, time - shifts[k].Open);
    }

    /// <summary>The first instant until which so much working time, more than none, has passed since the first shift.</summary>
    public long WhenWorked(long worked) => WhenWorked(worked, 0);

    private long WhenWorked(long worked, int from)
    {
        while (count == 0 || shifts[count - 1].Until < worked)
        {
            if (Grown(count) < 0)
            {
                return Never;
            }
        }

        Shift shift = shifts[First(from, worked - 1, worked: true)];
        return shift.Open + worked - shift.Before;
    }

    public long WorkBetween(long from, long until)
    {
        long sum = 0;
        for (int k = After(from); k >= 0 && shifts[k].Open < until; k = Grown(k + 1))
        {
            sum += Math.Min(until, shifts[k].Close) - Math.Max(from, shifts[k].Open);
        }

        return sum;
    }

    /// <summary>The pieces of work from a start within a shift.</summary>
    public List<(long From, long Until)> Cut(long start, long duration, DaySet set)
    {
        List<(long From, long Until)> pieces = [];
        long left = duration;
        for (int k = Allowed(After(start), set); left > 0 && k >= 0; k = Allowed(Grown(k + 1), set))
        {
            long from = Math.Max(start, shifts[k].Open);
            long here = Math.Min(shifts[k].Close - from, left);
            pieces.Add((from, from + here));
            left -= here;
        }

        if (pieces.Count == 0)
        {
            pieces.Add((start, start));
        }

        return pieces;
    }

    /// <summary>The day of work that starts at a time; work of no length may stand at the end of a shift.</summary>
    public int DayOf(long start, long duration)
    {
        int k = duration == 0 ? After(start - 1) : After(start);
        return k < 0 ? int.MaxValue : shifts[k].Day;
    }

    /// <summary>The days with working time between two instants, first to last.</summary>
    public List<WorkDay> Days(long from, long until)
    {
        List<WorkDay> found = [];
        for (int k = After(from); k >= 0 && shifts[k].Open < until; k = Grown(k + 1))
        {
            long open = Math.Max(from, shifts[k].Open);
            long close = Math.Min(until, shifts[k].Close);
            if (found.Count > 0 && found[found.Count - 1].Day == shifts[k].Day)
            {
                WorkDay same = found[found.Count - 1];
                found[found.Count - 1] = new WorkDay(same.Day, same.Open, close, same.Work + close - open);
            }
            else
            {
                found.Add(new WorkDay(shifts[k].Day, open, close, close - open));
            }
        }

        return found;
    }

    /// <summary>The close of the last shift that opens before an instant; the instant itself when there is none.</summary>
    public long LastClose(long time)
    {
        After(time);
        int k = count - 1;
        while (k >= 0 && shifts[k].Open >= time)
        {
            k--;
        }

        return k < 0 ? time : shifts[k].Close;
    }

    private long Walked(int k, long start, long work, DaySet set)
    {
        long left = work;
        for (; k >= 0; k = Allowed(Grown(k + 1), set))
        {
            long from = Math.Max(start, shifts[k].Open);
            if (shifts[k].Close - from >= left)
            {
                return from + left;
            }

            left -= shifts[k].Close - from;
        }

        return Never;
    }

    // The first shift from this one on that belongs to the set; −1 when there is none.
    private int Allowed(int k, DaySet set)
    {
        while (k >= 0 && !set.Has(shifts[k].Day))
        {
            k = set.IsPast(shifts[k].Day) ? -1 : Grown(k + 1);
        }

        return k;
    }

    /// <summary>The first shift that closes after an instant; −1 when there is none.</summary>
    private int After(long time)
    {
        while (count == 0 || shifts[count - 1].Close <= time)
        {
            if (time >= Never || Grown(count) < 0)
            {
                return -1;
            }
        }

        return First(0, time, worked: false);
    }

    // The first shift from one on whose end, or the working time until it, is more than so much. It is sought in steps that double, since
    // most work is done within days of where it begins.
    private int First(int from, long beyond, bool worked)
    {
        int low = from;
        int high = from;
        int step = 1;
        while (End(high, worked) <= beyond)
        {
            low = high + 1;
            high = Math.Min(count - 1, high + step);
            step *= 2;
        }

        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = End(middle, worked) > beyond ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    private long End(int k, bool worked) => worked ? shifts[k].Until : shifts[k].Close;

    private int Grown(int k)
    {
        while (count <= k)
        {
            if (parent is not null)
            {
                if (parent.Grown(unrolled) < 0)
                {
                    return -1;
                }

                Carve(parent.shifts[unrolled].Open, parent.shifts[unrolled].Close, parent.shifts[unrolled].Day);
                unrolled++;
            }
            else if (unrolled < mostDays)
            {
                Unroll(unrolled);
                unrolled++;
            }
            else
            {
                return -1;
            }
        }

        return k;
    }

    private void Unroll(int day)
    {
        DateTime date = firstDay.AddDays(day);
        if (daysOff?.Contains(date) == true)
        {
            return;
        }

        for (int i = 0; i < calendar.Shifts.Count; i++)
        {
            WorkShift shift = calendar.Shifts[i];
            if (shift.Day == date.DayOfWeek)
            {
                long open = calendar.Clock.WhenShowing(date + shift.Hours.From).UtcTicks;
                long close = calendar.Clock.WhenShowing(date + shift.Hours.Until).UtcTicks;
                Add(count > 0 ? Math.Max(open, shifts[count - 1].Close) : open, close, day);
            }
        }
    }

    private void Carve(long open, long close, int day)
    {
        while (nextClosed < closed.Length && closed[nextClosed + 1] <= open)
        {
            nextClosed += 2;
        }

        long from = open;
        for (int i = nextClosed; i < closed.Length && closed[i] < close; i += 2)
        {
            Add(from, closed[i], day);
            from = closed[i + 1];
        }

        Add(from, close, day);
    }

    private void Add(long open, long close, int day)
    {
        // A change of clocks can swallow a shift.
        if (close <= open)
        {
            return;
        }

        if (count == shifts.Length)
        {
            Array.Resize(ref shifts, 2 * count);
        }

        shifts[count] = new Shift(open, close, count == 0 ? 0 : shifts[count - 1].Until, day);
        count++;
    }

    // Working time before it, and until its end.
    private readonly record struct Shift(long Open, long Close, long Before, int Day)
    {
        public long Until => Before + Close - Open;
    }
}
