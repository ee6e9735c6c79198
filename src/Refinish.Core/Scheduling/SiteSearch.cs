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
    private const long FirstMargin = 4 * TimeSpan.TicksPerDay;

    private readonly StepModel model;
    private readonly Openings openings;
    private readonly long start;
    private readonly EarliestTimes earliest;
    private readonly CancellationToken cancellation;
    private readonly LoadBound load;
    private readonly LongestPaths? paths;
    private readonly StepOverlaps overlaps;
    private readonly List<(long[] Starts, long[] Ends)> pool = [];
    private long limit;
    private long open = long.MaxValue;
    private int mostNodes;
    private bool stopAtFirst;

    public SiteSearch(StepModel model, Openings openings, long start, List<(long From, long Until)>[]? taken, CancellationToken cancellation, Dictionary<string, List<(long From, long Until, int Need)>>? others = null)
    {
        this.model = model;
        this.openings = openings;
        this.start = start;
        this.cancellation = cancellation;
        earliest = new EarliestTimes(model, openings, taken);
        load = new LoadBound(model, openings);
        paths = LongestPaths.Of(model);
        if (paths is not null)
        {
            load.AddGates(paths[0]);
        }

        List<(int I, int J)> pairs = [];

        for (int i = 0; i < model.Count; i++)
        {
            for (int j = i + 1; j < model.Count; j++)
            {
                if (model.Gap[i][j] != StepModel.None)
                {
                    AddPair(pairs, i, j);
                }
            }
        }

        overlaps = new StepOverlaps(model, pairs, others);
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
        List<(int First, int Second)> children = overlaps.First(starts, ends);
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
                earliest.Order(first, second, model.GapOf(first, second));
                Copy(depth);
                paths?.Lengthen(depth, first, second);
                if (earliest.Push(first, second, model.GapOf(first, second), limit, childStarts, childEnds) < 0 && HoldGates(childStarts, childEnds))
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
        if (paths?.CanPrecede(depth, first, second) == false)
        {
            return false;
        }

        (long[] childStarts, long[] childEnds) = Rented(depth + 1);
        Copy(depth);
        earliest.Order(first, second, model.GapOf(first, second));
        bool holds = earliest.Push(first, second, model.GapOf(first, second), limit, childStarts, childEnds) < 0 && HoldGates(childStarts, childEnds);
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

    private long BoundOf(long[] starts, long[] ends, bool thorough = false)
    {
        long bound = ends.Max();
        return bound > limit ? bound : Math.Max(bound, load.Of(starts, thorough));
    }

    // An order that the lags already force becomes a lag of its own, so that it is never branched on.
    private void AddPair(List<(int I, int J)> pairs, int i, int j)
    {
        if (paths is not null && paths.CanPrecede(0, i, j) is bool forwards && paths.CanPrecede(0, j, i) != forwards)
        {
            (int first, int second) = forwards ? (i, j) : (j, i);
            earliest.Order(first, second, model.Gap[first][second]);
            paths.Impose(first, second);
        }
        else
        {
            pairs.Add((i, j));
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
}
