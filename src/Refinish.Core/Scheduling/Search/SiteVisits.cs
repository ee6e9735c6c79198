using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// As few visits as can be among schedules that end by a limit, and of those the earliest end. For each number of days from the least that
/// could do,
/// and for each last day, the earlier days are chosen one after the other. A choice is given up when not even all days between its last
/// day and
/// the last day of all let the steps be done, which settles every choice that begins with it; what is left is searched on just these days.
/// </summary>
internal sealed class SiteVisits(StepModel model, SiteSearch search, int mostNodes)
{
    private List<WorkDay> days = [];
    private long needed;
    private long limit;
    private long found;
    private bool isProved;
    private int lastNode;

    /// <summary>Starts of the best schedule that was found; <see langword="null"/> when none has fewer visits than it was to.</summary>
    public long[]? Starts { get; private set; }

    /// <summary>The days of that schedule.</summary>
    public DaySet Days { get; private set; }

    /// <summary>Its number of visits.</summary>
    public int Visits { get; private set; }

    /// <summary>Whether it was proved that no schedule with as few visits ends sooner.</summary>
    public bool IsEarliest { get; private set; }

    /// <summary>No schedule that ends by the limit has fewer visits.</summary>
    public int Bound { get; private set; }

    /// <summary>Looks for schedules with fewer visits than a known one has.</summary>
    public void Improve(List<WorkDay> window, int least, int visits, long latest)
    {
        (days, limit, Visits, Bound) = (window, latest, visits, least);
        if (window.Count == 0 || window[window.Count - 1].Day >= DaySet.Most)
        {
            return;
        }

        needed = VisitBound.Needed(model);
        lastNode = search.Nodes + mostNodes;
        bool everything = true;
        for (int number = least; number < visits && Starts is null; number++)
        {
            isProved = true;
            found = limit + 1;
            Try(number);
            everything &= isProved;
            if (Starts is not null)
            {
                (Visits, IsEarliest) = (number, isProved);
            }
            else
            {
                Bound = everything ? number + 1 : Bound;
            }
        }

        search.Days = DaySet.All;
    }

    private void Try(int number)
    {
        ulong until = 0;
        long work = 0;
        for (int last = 0; last < days.Count; last++)
        {
            // Whoever works on this day ends after it has opened.
            if (days[last].Open >= found)
            {
                return;
            }

            until |= 1UL << days[last].Day;
            work = Math.Max(work, days[last].Work);
            if (last + 1 >= number && MayHold(until))
            {
                Choose(1UL << days[last].Day, days[last].Work, 0, last, number - 1, work);
            }
        }
    }

    // The earlier days in order; chosen holds those before the next one and the last day.
    private void Choose(ulong chosen, long hours, int next, int last, int left, long most)
    {
        if (left == 0)
        {
            Search(chosen);
            return;
        }

        for (int day = next; day + left <= last; day++)
        {
            ulong more = chosen | (1UL << days[day].Day);
            long with = hours + days[day].Work;
            if (with + ((left - 1) * most) < needed)
            {
                continue;
            }

            ulong all = more;
            for (int later = day + 1; later < last && left > 1; later++)
            {
                all |= 1UL << days[later].Day;
            }

            if (left == 1 || MayHold(all))
            {
                Choose(more, with, day + 1, last, left - 1, most);
            }
        }
    }

    private bool MayHold(ulong set)
    {
        if (search.Nodes >= lastNode)
        {
            isProved = false;
            return false;
        }

        search.Days = DaySet.Of(set);
        return search.MayHold(found - 1);
    }

    private void Search(ulong set)
    {
        if (search.Nodes >= lastNode)
        {
            isProved = false;
            return;
        }

        search.Days = DaySet.Of(set);
        search.Run(found - 1, lastNode - search.Nodes, first: false);
        isProved &= search.IsComplete;
        if (search.Best is not null)
        {
            (Starts, Days, found) = (search.Best, search.Days, search.BestEnd);
        }
    }

    /// <summary>The number of days on which a schedule has somebody on site.</summary>
    public static int Count(StepModel model, long[] starts, DaySet set)
    {
        HashSet<int> days = [];
        for (int i = 0; i < model.Count; i++)
        {
            if (model.Attended[i] && model.Interruptible[i] && model.Duration[i] > 0)
            {
                foreach ((long from, long until) in model.Hours[i]!.Cut(starts[i], model.Duration[i], set))
                {
                    days.Add(model.Openings.DayOf(from, until - from));
                }
            }
            else if (model.Attended[i])
            {
                days.Add(model.Openings.DayOf(starts[i], model.Duration[i]));
            }
        }

        return days.Count;
    }
}
