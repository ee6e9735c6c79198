using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// Less waiting within a visit: how late the first work of each day can begin when the last end of the day, the day of every step and the
/// end of the whole stay, found as a greatest fixed point (every rule can only pull a step earlier). Days that become shorter then begin so
/// late, and everything else is as early as it can be from there. Steps that exclude each other, or do not share what is scarce, keep their
/// order, so every rule is kept.
/// </summary>
internal sealed class LatestTimes
{
    private readonly StepModel model;
    private readonly DaySet days;
    private readonly long[] starts;
    private readonly long[] ends;
    private readonly int[] firstDay;
    private readonly bool[] isFixed;

    // From the step that starts last to the first, so that one pass tells a step of all that follows it.
    private readonly int[] fromLast;
    private readonly long[] latest;
    private readonly long end;
    private readonly bool keepsDays;
    private List<(int First, int Second, long Gap)>? orders;

    private LatestTimes(StepModel model, DaySet days, long[] starts, long[] ends, bool keepsDays)
    {
        this.keepsDays = keepsDays;
        (this.model, this.days, this.starts, this.ends) = (model, days, starts, ends);
        firstDay = new int[model.Count];
        isFixed = new bool[model.Count];
        latest = new long[model.Count];
        fromLast = new int[model.Count];
        end = SiteSearch.Last(ends);
        for (int i = 0; i < model.Count; i++)
        {
            fromLast[i] = i;
            firstDay[i] = model.Attended[i] ? model.Openings.DayOf(starts[i], model.Duration[i]) : -1;

            // Within their days work over several shifts, and always waits that have to keep clear of something, stay where they are.
            isFixed[i] = model.Attended[i] ? keepsDays && ends[i] - starts[i] != model.Duration[i] : model.Blocked[i] is not null;
        }

        Array.Sort(fromLast, (a, b) => starts[a] != starts[b] ? starts[b].CompareTo(starts[a]) : b.CompareTo(a));
    }

    private List<(int First, int Second, long Gap)> Orders => orders ??= Ordered();

    /// <summary>The starts with less waiting; the given ones when no day can be shortened.</summary>
    public static long[] LessWaiting(StepModel model, DaySet days, long[] starts, long[] ends)
    {
        LatestTimes times = new(model, days, starts, ends, keepsDays: true);
        return times.HasGap() && times.Moved() is long[] moved ? moved : starts;
    }

    /// <summary>
    /// The starts when every step is on the latest day on which it may be without a later end of the whole, in the order of now, and as
    /// early as it can be on that day; <see langword="null"/> when no step may be on a later day than now.
    /// </summary>
    public static long[]? OnLaterDays(StepModel model, DaySet days, long[] starts, long[] ends)
    {
        LatestTimes times = new(model, days, starts, ends, keepsDays: false);
        times.Relax();
        return times.Later();
    }

    private long[]? Later()
    {
        EarliestTimes? earliest = null;
        (long[] laterStarts, long[] laterEnds) = ((long[])starts.Clone(), (long[])ends.Clone());
        for (int i = 0; i < model.Count; i++)
        {
            if (firstDay[i] < 0 || latest[i] <= starts[i] || model.Openings.DayOf(latest[i], model.Duration[i]) == firstDay[i])
            {
                continue;
            }

            if (earliest is null)
            {
                earliest = new EarliestTimes(model, null) { Days = days };
                AddOrders(earliest);
            }

            List<WorkDay> between = model.Openings.Days(starts[i], latest[i] + 1);
            if (!earliest.Hold(i, between[between.Count - 1].Open, end, laterStarts, laterEnds))
            {
                return null;
            }
        }

        return earliest is null ? null : laterStarts;
    }

    // Whether there is a day with time between its first and its last work in which nobody works.
    private bool HasGap()
    {
        for (int i = 0; i < model.Count; i++)
        {
            if (!model.Attended[i])
            {
                continue;
            }

            bool isLast = true;
            bool followed = false;
            for (int j = 0; j < model.Count; j++)
            {
                if (j != i && model.Attended[j] && ends[j] > ends[i] && firstDay[j] == firstDay[i])
                {
                    isLast = false;
                    followed |= starts[j] <= ends[i];
                }
            }

            if (!isLast && !followed)
            {
                return true;
            }
        }

        return false;
    }

    private long[]? Moved()
    {
        Relax();
        EarliestTimes earliest = new(model, null) { Days = days };
        bool shorter = false;
        (long[] movedStarts, long[] movedEnds) = ((long[])starts.Clone(), (long[])ends.Clone());
        AddOrders(earliest);
        for (int i = 0; i < model.Count; i++)
        {
            long begin = firstDay[i] < 0 ? 0 : Begin(firstDay[i], latest);
            if (firstDay[i] >= 0 && begin > Begin(firstDay[i], starts))
            {
                shorter = true;
                if (!earliest.Hold(i, begin, end, movedStarts, movedEnds))
                {
                    return null;
                }
            }
        }

        return shorter && SiteVisits.Count(model, movedStarts, days) == SiteVisits.Count(model, starts, days) ? movedStarts : null;
    }

    /// <summary>When the first work of a day begins; work that goes on from an earlier day begins with the day.</summary>
    private long Begin(int day, long[] times)
    {
        long begin = long.MaxValue;
        for (int i = 0; i < model.Count; i++)
        {
            if (firstDay[i] == day)
            {
                begin = Math.Min(begin, times[i]);
            }
            else if (isFixed[i] && model.Attended[i] && starts[i] < begin && firstDay[i] < day
                && model.Openings.DayOf(ends[i] - 1, 1) >= day)
            {
                return 0;
            }
        }

        return begin;
    }

    private void Relax()
    {
        for (int i = 0; i < model.Count; i++)
        {
            latest[i] = isFixed[i] ? starts[i] : model.Attended[i] ? Fit(i, (keepsDays ? LastEnd(firstDay[i]) : end) - model.Duration[i])
                : end - model.Duration[i];
        }

        bool moved = true;
        for (int round = 0; moved && round < 50 * model.Count; round++)
        {
            moved = false;
            int next = 0;
            foreach (int i in fromLast)
            {
                for (int at = model.FirstEdge(i); at < model.FirstEdge(i + 1); at++)
                {
                    ref readonly StepEdge edge = ref model.Edges[at];
                    moved |= Pull(i, edge.LatestEnd(latest[edge.To]) - model.Duration[i]);
                    if (edge.Lag.Maximum is not null && !isFixed[edge.To])
                    {
                        moved |= Pull(edge.To, edge.LatestStart(latest[i] + model.Duration[i]));
                    }
                }

                for (; next < Orders.Count && Orders[next].First == i; next++)
                {
                    moved |= Pull(i, latest[Orders[next].Second] - Orders[next].Gap - model.Duration[i]);
                }
            }
        }

        if (moved)
        {
            Array.Copy(starts, latest, starts.Length);
        }
    }

    private bool Pull(int i, long time)
    {
        if (isFixed[i] || time >= latest[i])
        {
            return false;
        }

        long fit = model.Attended[i] ? Fit(i, time) : Math.Max(time, starts[i]);
        bool moved = fit < latest[i];
        latest[i] = Math.Min(latest[i], fit);
        return moved;
    }

    // Where it stands now every rule is kept, so no step has to be earlier than that.
    private long Fit(int i, long time) =>
        time <= starts[i] ? starts[i] : Math.Max(starts[i], model.Hours[i]!.LastFit(time, starts[i], model.Duration[i], days));

    private long LastEnd(int day)
    {
        long last = 0;
        for (int i = 0; i < model.Count; i++)
        {
            last = firstDay[i] == day && !isFixed[i] ? Math.Max(last, ends[i]) : last;
        }

        return last;
    }

    // The order that two steps have now, where they exclude each other or both need something that is shared.
    private bool IsBefore(int i, int j)
    {
        if (i == j || ends[i] > starts[j] || (ends[i] == starts[j] && starts[i] == ends[j] && i > j))
        {
            return false;
        }

        if (model.Gap(i, j) != StepModel.None)
        {
            return true;
        }

        for (int m = 0; m < model.Means.Count; m++)
        {
            if (model.Means[m].Capacity > 1 && model.Means[m].Need[i] > 0 && model.Means[m].Need[j] > 0)
            {
                return true;
            }
        }

        return false;
    }

    private void AddOrders(EarliestTimes earliest)
    {
        foreach ((int first, int second, long gap) in Orders)
        {
            earliest.Order(first, second, gap);
        }
    }

    // What follows from two orders after each other is left out.
    private List<(int First, int Second, long Gap)> Ordered()
    {
        List<(int First, int Second, long Gap)> found = new(4 * model.Count);
        foreach (int i in fromLast)
        {
            int own = found.Count;
            for (int k = fromLast.Length - 1; k >= 0; k--)
            {
                int j = fromLast[k];
                if (IsBefore(i, j) && !Follows(found, own, j, model.GapOf(i, j)))
                {
                    found.Add((i, j, model.GapOf(i, j)));
                }
            }
        }

        return found;
    }

    private bool Follows(List<(int First, int Second, long Gap)> found, int own, int later, long gap)
    {
        for (int k = own; k < found.Count; k++)
        {
            (_, int between, long before) = found[k];
            if (gap <= before + model.Duration[between] + model.GapOf(between, later) && IsBefore(between, later))
            {
                return true;
            }
        }

        return false;
    }
}
