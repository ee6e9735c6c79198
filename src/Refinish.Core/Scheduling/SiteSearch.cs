using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace Refinish.Scheduling;

/// <summary>
/// Branch and bound over the order of steps that may not overlap. A node is a set of demands "this one first"; its earliest times are a least
/// fixed point; where two steps still overlap, or too many share what is scarce, one child a possible order follows. Without overlap the earliest
/// times are a schedule, and no schedule under the same demands ends sooner.
/// </summary>
/// <remarks>
/// The scheme is that of De Reyck and Herroelen for projects with generalized precedence relations (European Journal of Operational Research 111
/// (1998)), with the linear propagation replaced by one that also keeps working hours. Bound: the earliest times themselves, and for every set of
/// steps that start not before a time, their work packed into working hours from then on plus the least time that has to follow.
/// </remarks>
internal sealed class SiteSearch
{
    private const int MostForDistances = 64;
    private const long FirstMargin = 4 * TimeSpan.TicksPerDay;

    private readonly StepModel model;
    private readonly Openings openings;
    private readonly long start;
    private readonly EarliestTimes earliest;
    private readonly CancellationToken cancellation;
    private readonly Dictionary<string, List<(long From, long Until, int Need)>>? others;
    private readonly List<(int I, int J)> pairs = [];
    private readonly LoadBound load;
    private readonly List<long[][]> distances = [];
    private readonly bool keepsDistances;
    private readonly List<(long[] Starts, long[] Ends)> pool = [];
    private long limit;
    private long open = long.MaxValue;
    private int mostNodes;
    private bool stopAtFirst;

    public SiteSearch(StepModel model, Openings openings, long start, List<(long From, long Until)>[]? taken, CancellationToken cancellation, Dictionary<string, List<(long From, long Until, int Need)>>? others = null)
    {
        this.others = others;
        this.model = model;
        this.openings = openings;
        this.start = start;
        this.cancellation = cancellation;
        earliest = new EarliestTimes(model, openings, taken);
        load = new LoadBound(model, openings);
        keepsDistances = model.Count <= MostForDistances;
        if (keepsDistances)
        {
            distances.Add(Distances(model));
            load.AddGates(distances[0]);
        }

        for (int i = 0; i < model.Count; i++)
        {
            for (int j = i + 1; j < model.Count; j++)
            {
                if (model.Gap[i][j] != StepModel.None)
                {
                    AddPair(i, j);
                }
            }
        }
    }

    /// <summary>The best start of each step; <see langword="null"/> while none is known.</summary>
    public long[]? Best { get; private set; }

    /// <summary>When the best schedule ends.</summary>
    public long BestEnd { get; private set; } = long.MaxValue;

    /// <summary>No schedule within the limit ends sooner.</summary>
    public long Bound { get; private set; }

    /// <summary>Whether everything was looked at: the best is then the best there is, and without one there is none within the limit.</summary>
    public bool IsComplete { get; private set; } = true;

    /// <summary>Nodes looked at.</summary>
    public int Nodes { get; private set; }

    /// <summary>Searches schedules that end by the limit.</summary>
    public void Run(long latest, int nodes, bool first = false)
    {
        stopAtFirst = first;
        (long[] starts, long[] ends) = Rented(0);
        limit = latest;
        if (earliest.Solve(start, latest, starts, ends) >= 0 || !HoldGates(starts, ends))
        {
            Bound = long.MaxValue;
            return;
        }

        long bound = BoundOf(starts, ends, thorough: true);
        for (long margin = FirstMargin; ; margin *= 4)
        {
            // Rules that contradict each other push each other up to the limit, so a near limit finds that out sooner.
            limit = Math.Min(latest, bound + margin);
            IsComplete = true;
            open = long.MaxValue;
            mostNodes = limit == latest ? nodes : Math.Min(nodes, Nodes + Math.Max(50, nodes / 8));
            if (bound <= limit)
            {
                Visit(0, bound);
            }

            if (Best is not null || limit == latest)
            {
                break;
            }
        }

        IsComplete &= Best is not null || limit == latest;
        Bound = Math.Max(bound, Math.Min(BestEnd, open) is long least && least < long.MaxValue ? least : bound);
    }

    private void Visit(int depth, long bound)
    {
        if (stopAtFirst && Best is not null)
        {
            IsComplete = false;
            return;
        }

        if (Nodes >= mostNodes)
        {
            IsComplete = false;
            open = Math.Min(open, bound);
            return;
        }

        Nodes++;
        cancellation.ThrowIfCancellationRequested();
        (long[] starts, long[] ends) = Rented(depth);
        List<(int First, int Second)> children = Overlap(starts, ends);
        if (children.Count == 0)
        {
            BestEnd = ends.Max();
            Best = (long[])starts.Clone();
            limit = BestEnd - 1;
            return;
        }

        List<(int First, int Second, long Bound, long Delay)> kept = [];
        (long[] childStarts, long[] childEnds) = Rented(depth + 1);
        foreach ((int first, int second) in children)
        {
            if (Descend(depth, first, second))
            {
                long childBound = BoundOf(childStarts, childEnds);
                if (childBound <= limit)
                {
                    kept.Add((first, second, childBound, childStarts[second] - starts[second]));
                }
            }
        }

        foreach ((int first, int second, long childBound, _) in kept.OrderBy(child => child.Bound).ThenBy(child => child.Delay))
        {
            if (childBound <= limit)
            {
                earliest.Order(first, second, Gap(first, second));
                Copy(depth);
                Lengthen(depth, first, second);
                if (earliest.Push(first, second, Gap(first, second), limit, childStarts, childEnds) < 0 && HoldGates(childStarts, childEnds))
                {
                    Visit(depth + 1, childBound);
                }

                earliest.Forget(first);
            }
        }
    }

    // Leaves the child's times in the arrays of the next depth.
    private bool Descend(int depth, int first, int second)
    {
        if (keepsDistances && !CanPrecede(distances[depth], first, second))
        {
            return false;
        }

        (long[] childStarts, long[] childEnds) = Rented(depth + 1);
        Copy(depth);
        earliest.Order(first, second, Gap(first, second));
        bool holds = earliest.Push(first, second, Gap(first, second), limit, childStarts, childEnds) < 0 && HoldGates(childStarts, childEnds);
        earliest.Forget(first);
        return holds;
    }

    private bool HoldGates(long[] starts, long[] ends)
    {
        foreach ((int gate, long time) in load.Gates(starts))
        {
            if (!earliest.Hold(gate, time, limit, starts, ends))
            {
                return false;
            }
        }

        return true;
    }

    private long Gap(int first, int second) => Math.Max(0, model.Gap[first][second]);

    /// <summary>The orders that could resolve the first overlap in time; empty when nothing overlaps.</summary>
    private List<(int First, int Second)> Overlap(long[] starts, long[] ends)
    {
        long when = long.MaxValue;
        (int I, int J) found = (-1, -1);
        foreach ((int i, int j) in pairs)
        {
            if (starts[j] < ends[i] + model.Gap[i][j] && starts[i] < ends[j] + model.Gap[j][i])
            {
                long later = Math.Max(starts[i], starts[j]);
                if (later < when)
                {
                    when = later;
                    found = (i, j);
                }
            }
        }

        List<int>? crowd = Crowd(starts, ends, ref when);
        if (crowd is not null)
        {
            return [.. crowd.SelectMany(a => crowd.Where(b => b != a).Select(b => (a, b)))];
        }

        return found.I < 0 ? [] : [(found.I, found.J), (found.J, found.I)];
    }

    /// <summary>The first time, before the one given, at which steps together need more than there is: as few of them as are too many.</summary>
    private List<int>? Crowd(long[] starts, long[] ends, ref long when)
    {
        List<int>? crowd = null;
        foreach ((string name, int capacity, int[] need) in model.Means)
        {
            if (capacity <= 1)
            {
                continue;
            }

            List<(long From, long Until, int Need)> used = others is not null && others.TryGetValue(name, out List<(long From, long Until, int Need)>? listed) ? listed : [];
            foreach (long time in starts.Where((_, i) => need[i] > 0).Concat(used.Select(one => one.From)))
            {
                if (time < when && TooMany(time, capacity - used.Where(one => one.From <= time && one.Until > time).Sum(one => one.Need), need, starts, ends) is List<int> few)
                {
                    crowd = few;
                    when = time;
                }
            }
        }

        return crowd;
    }

    // A single step that finds too little left has been kept clear of that time already.
    private List<int>? TooMany(long time, int left, int[] need, long[] starts, long[] ends)
    {
        int sum = 0;
        List<int> few = [];
        foreach (int j in Enumerable.Range(0, model.Count).Where(j => need[j] > 0 && starts[j] <= time && ends[j] > time).OrderByDescending(j => need[j]).ThenBy(j => j))
        {
            few.Add(j);
            sum += need[j];
            if (sum > left && few.Count > 1)
            {
                return few;
            }
        }

        return null;
    }

    private long BoundOf(long[] starts, long[] ends, bool thorough = false)
    {
        long bound = ends.Max();
        return bound > limit ? bound : Math.Max(bound, load.Of(starts, thorough));
    }

    // An order that the lags already force becomes a lag of its own, so that it is never branched on.
    private void AddPair(int i, int j)
    {
        bool forwards = !keepsDistances || CanPrecede(distances[0], i, j);
        bool backwards = !keepsDistances || CanPrecede(distances[0], j, i);
        if (forwards != backwards)
        {
            (int first, int second) = forwards ? (i, j) : (j, i);
            earliest.Order(first, second, model.Gap[first][second]);
            Lengthen(distances[0], distances[0], first, second);
        }
        else
        {
            pairs.Add((i, j));
        }
    }

    private bool CanPrecede(long[][] d, int first, int second) =>
        d[second][first] == Openings.Never || model.Duration[first] + Gap(first, second) + d[second][first] <= 0;

    // The longest paths of the next depth: those of this one, and those through the new order.
    private void Lengthen(int depth, int first, int second)
    {
        if (!keepsDistances)
        {
            return;
        }

        if (distances.Count <= depth + 1)
        {
            distances.Add([.. distances[depth].Select(row => (long[])row.Clone())]);
        }

        Lengthen(distances[depth], distances[depth + 1], first, second);
    }

    private void Lengthen(long[][] from, long[][] to, int first, int second)
    {
        long step = model.Duration[first] + Gap(first, second);
        long[] onwards = (long[])from[second].Clone();
        for (int i = 0; i < from.Length; i++)
        {
            long[] row = from[i];
            long[] next = to[i];
            Array.Copy(row, next, row.Length);
            if (row[first] == Openings.Never)
            {
                continue;
            }

            long reach = row[first] + step;
            for (int j = 0; j < next.Length; j++)
            {
                if (onwards[j] != Openings.Never && (next[j] == Openings.Never || reach + onwards[j] > next[j]))
                {
                    next[j] = reach + onwards[j];
                }
            }
        }
    }

    private (long[] Starts, long[] Ends) Rented(int depth)
    {
        while (pool.Count <= depth)
        {
            pool.Add((new long[model.Count], new long[model.Count]));
        }

        return pool[depth];
    }

    private void Copy(int depth)
    {
        (long[] starts, long[] ends) = Rented(depth);
        (long[] childStarts, long[] childEnds) = Rented(depth + 1);
        Array.Copy(starts, childStarts, model.Count);
        Array.Copy(ends, childEnds, model.Count);
    }

    /// <summary>The least time from the start of one step to the start of another that the lags force, as longest paths between all pairs.</summary>
    private static long[][] Distances(StepModel model)
    {
        int n = model.Count;
        long[][] d = new long[n][];
        for (int i = 0; i < n; i++)
        {
            d[i] = new long[n];
            for (int j = 0; j < n; j++)
            {
                d[i][j] = i == j ? 0 : Openings.Never;
            }
        }

        void Raise(int i, int j, long least)
        {
            if (d[i][j] == Openings.Never || least > d[i][j])
            {
                d[i][j] = least;
            }
        }

        for (int i = 0; i < n; i++)
        {
            foreach ((int other, long minimum, _) in model.After[i])
            {
                Raise(i, other, model.Duration[i] + minimum);
            }

            foreach ((int other, long maximum, _) in model.Holds[i])
            {
                Raise(i, other, -maximum - model.Duration[other]);
            }
        }

        for (int k = 0; k < n; k++)
        {
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n && d[i][k] != Openings.Never; j++)
                {
                    if (d[k][j] != Openings.Never)
                    {
                        Raise(i, j, d[i][k] + d[k][j]);
                    }
                }
            }
        }

        return d;
    }
}
