using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// Where a set of times breaks a rule that only an order of steps can mend: two that exclude each other, or too many that share what is
/// scarce.
/// </summary>
internal sealed class StepOverlaps
{
    private readonly StepModel model;
    private readonly List<(long From, long Until, int Need)>[]? others;

    // The steps that need a mean of which there is more than one, in the order of their starts when they were last looked at, since times
    // change little from one look to the next.
    private readonly int[][] users;
    private readonly int[] active;
    private readonly List<(long Time, int Left)>[]? left;
    private (int First, int Second)[] pairs;

    /// <param name="model">The steps; all pairs of them that exclude each other are looked at.</param>
    /// <param name="others">What steps of other groups take of each shared mean.</param>
    public StepOverlaps(StepModel model, List<(long From, long Until, int Need)>[]? others)
    {
        this.model = model;
        this.others = others;
        pairs = model.Pairs;
        active = new int[model.Count];
        left = Lefts();
        users = new int[model.Means.Count][];
        for (int m = 0; m < users.Length; m++)
        {
            users[m] = model.Means[m].Capacity > 1 ? model.Means[m].Users() : [];
        }
    }

    public List<(long From, long Until, int Need)>[]? Others => others;

    /// <summary>The pairs that are looked at; those whose order is settled may be left out.</summary>
    public IReadOnlyList<(int First, int Second)> Pairs
    {
        get => pairs;
        set => pairs = [.. value];
    }

    /// <summary>The orders that could resolve the first overlap in time; none when nothing overlaps.</summary>
    public (int First, int Second)[] First(long[] starts, long[] ends)
    {
        long when = long.MaxValue;
        (int I, int J) found = (-1, -1);
        foreach ((int i, int j) in pairs)
        {
            long later = starts[i] > starts[j] ? starts[i] : starts[j];
            if (later < when && starts[j] < ends[i] + model.Gap(i, j) && starts[i] < ends[j] + model.Gap(j, i))
            {
                when = later;
                found = (i, j);
            }
        }

        List<int>? crowd = Crowd(starts, ends, ref when);
        if (crowd is null)
        {
            return found.I < 0 ? [] : [found, (found.J, found.I)];
        }

        List<(int, int)> orders = [];
        foreach (int a in crowd)
        {
            foreach (int b in crowd)
            {
                if (a != b)
                {
                    orders.Add((a, b));
                }
            }
        }

        return [.. orders];
    }

    /// <summary>
    /// As few steps as are too many at the first time at which steps need more of something than there is; none when there is no such time.
    /// </summary>
    public List<int>? Crowd(long[] starts, long[] ends)
    {
        long when = long.MaxValue;
        return Crowd(starts, ends, ref when);
    }

    private List<int>? Crowd(long[] starts, long[] ends, ref long when)
    {
        List<int>? crowd = null;
        for (int m = 0; m < users.Length; m++)
        {
            if (users[m].Length > 0 && Sweep(m, starts, ends, when) is long time and >= 0
                && TooMany(time, Left(m, time), model.Means[m].Need, starts, ends) is List<int> few)
            {
                (when, crowd) = (time, few);
            }
        }

        return crowd;
    }

    // The first time, before an instant, at which steps need too much of a mean together; −1 when there is none. More may be needed
    // where a step starts, and less be left where one of another group does.
    private long Sweep(int mean, long[] starts, long[] ends, long before)
    {
        (int[] order, int[] need) = (users[mean], model.Means[mean].Need);
        List<(long Time, int Left)>? lefts = left?[mean];
        Sort(order, starts);
        (int number, int sum, int at, int next) = (0, 0, 0, 0);
        int now = model.Means[mean].Capacity;
        while (at < order.Length || (lefts is not null && next < lefts.Count && number > 1))
        {
            long time = at < order.Length ? starts[order[at]] : long.MaxValue;
            time = lefts is not null && next < lefts.Count && lefts[next].Time < time ? lefts[next].Time : time;
            if (time >= before)
            {
                return -1;
            }

            int kept = 0;
            for (int a = 0; a < number; a++)
            {
                if (ends[active[a]] > time)
                {
                    active[kept++] = active[a];
                }
                else
                {
                    sum -= need[active[a]];
                }
            }

            number = kept;
            for (; at < order.Length && starts[order[at]] == time; at++)
            {
                if (ends[order[at]] > time)
                {
                    active[number++] = order[at];
                    sum += need[order[at]];
                }
            }

            for (; lefts is not null && next < lefts.Count && lefts[next].Time <= time; next++)
            {
                now = lefts[next].Left;
            }

            if (number > 1 && sum > now)
            {
                return time;
            }
        }

        return -1;
    }

    // How much other groups leave of each mean, by the time from which on.
    private List<(long Time, int Left)>[]? Lefts()
    {
        if (others is null)
        {
            return null;
        }

        List<(long Time, int Left)>[] lefts = new List<(long, int)>[others.Length];
        for (int m = 0; m < lefts.Length; m++)
        {
            List<(long Time, int Change)> changes = new(2 * others[m].Count);
            foreach ((long from, long until, int need) in others[m])
            {
                if (until > from)
                {
                    changes.Add((from, -need));
                    changes.Add((until, need));
                }
            }

            changes.Sort();
            lefts[m] = new(changes.Count);
            int now = model.Means[m].Capacity;
            for (int k = 0; k < changes.Count; k++)
            {
                now += changes[k].Change;
                if (k + 1 == changes.Count || changes[k + 1].Time != changes[k].Time)
                {
                    lefts[m].Add((changes[k].Time, now));
                }
            }
        }

        return lefts;
    }

    private int Left(int mean, long time)
    {
        int now = model.Means[mean].Capacity;
        foreach ((long from, int rest) in left?[mean] ?? [])
        {
            if (from > time)
            {
                break;
            }

            now = rest;
        }

        return now;
    }

    // By start; nearly in order already, so insertion is quick.
    private static void Sort(int[] order, long[] starts)
    {
        for (int k = 1; k < order.Length; k++)
        {
            int step = order[k];
            long time = starts[step];
            int at = k;
            for (; at > 0 && starts[order[at - 1]] > time; at--)
            {
                order[at] = order[at - 1];
            }

            order[at] = step;
        }
    }

    // A single step that finds too little left has been kept clear of that time already.
    private List<int>? TooMany(long time, int left, int[] need, long[] starts, long[] ends)
    {
        int sum = 0;
        List<int> few = [];
        for (int j = 0; j < model.Count; j++)
        {
            if (need[j] > 0 && starts[j] <= time && ends[j] > time)
            {
                sum += need[j];
                few.Add(j);
            }
        }

        if (sum <= left || few.Count < 2)
        {
            return null;
        }

        few.Sort((a, b) => need[a] != need[b] ? need[b].CompareTo(need[a]) : a.CompareTo(b));
        sum = 0;
        for (int k = 0; k < few.Count; k++)
        {
            sum += need[few[k]];
            if (sum > left && k > 0)
            {
                few.RemoveRange(k + 1, few.Count - k - 1);
                return few;
            }
        }

        return null;
    }
}
