using System;
using System.Collections.Generic;
using System.Threading;

namespace Refinish.Scheduling;

/// <summary>
/// Branch and bound over the order of steps that may not overlap. A node is a set of demands "this one first"; its earliest times are a
/// least fixed point; where two steps still overlap, or too many share what is scarce, one child a possible order follows. Without overlap
/// the earliest times are a schedule, and no schedule under the same demands ends sooner. One object searches the same steps on one set of
/// days after another.
/// </summary>
/// <remarks>
/// The scheme is that of De Reyck and Herroelen for projects with generalized precedence relations (European Journal of Operational
/// Research 111 (1998)), with the linear propagation replaced by one that also keeps working hours. Bound: the earliest times themselves,
/// and for every set of steps that start not before a time, their work packed into working hours from then on plus the least time that has
/// to follow.
/// </remarks>
internal sealed class SiteSearch
{
    private const long FirstMargin = 4 * TimeSpan.TicksPerDay;

    private readonly StepModel model;
    private readonly long start;
    private readonly long[]?[]? taken;
    private readonly EarliestTimes earliest;
    private readonly CancellationToken cancellation;
    private readonly StepOverlaps overlaps;
    private readonly List<(long[] Starts, long[] Ends)> pool = [];
    private LongestPaths? paths;
    private LoadBound? load;
    private ListedOrder? listed;
    private long limit;
    private long open;
    private int mostNodes;
    private bool stopAtFirst;

    public SiteSearch(StepModel model, long start, CancellationToken cancellation) : this(model, start, null, null, cancellation)
    {
    }

    /// <param name="model">The steps.</param>
    /// <param name="start">Nothing starts before.</param>
    /// <param name="taken">Stretches that each step has to keep clear of; those of the model unless given.</param>
    /// <param name="others">What steps of other groups take of each shared mean.</param>
    /// <param name="cancellation">Stops the search.</param>
    public SiteSearch(StepModel model, long start, long[]?[]? taken, List<(long From, long Until, int Need)>[]? others,
        CancellationToken cancellation)
    {
        this.model = model;
        this.start = start;
        this.taken = taken;
        this.cancellation = cancellation;
        earliest = new EarliestTimes(model, taken);
        overlaps = new StepOverlaps(model, others);
    }

    /// <summary>The days on which may be worked.</summary>
    public DaySet Days
    {
        get => earliest.Days;
        set => earliest.Days = value;
    }

    /// <summary>The best start of each step; <see langword="null"/> while none is known.</summary>
    public long[]? Best { get; private set; }

    /// <summary>When the best schedule ends.</summary>
    public long BestEnd { get; private set; } = long.MaxValue;

    /// <summary>No schedule within the limit ends sooner.</summary>
    public long Bound { get; private set; }

    /// <summary>
    /// Whether everything was looked at: the best is then the best there is, and without one there is none within the limit.
    /// </summary>
    public bool IsComplete { get; private set; }

    /// <summary>Nodes looked at in all runs.</summary>
    public int Nodes { get; private set; }

    /// <summary>
    /// Whether the rules can be kept by the limit when the crew and the rooms are no limit: a quick test that only a "no" of proves
    /// something.
    /// </summary>
    public bool MayHold(long latest)
    {
        (long[] starts, long[] ends) = Rented(0);
        earliest.GaveUp = false;
        Nodes++;
        return earliest.Solve(start, latest, starts, ends) < 0 || earliest.GaveUp;
    }

    /// <summary>Searches schedules that end by the limit; when asked for the first, stops at any.</summary>
    public void Run(long latest, int nodes, bool first)
    {
        (Best, BestEnd, Bound, IsComplete, stopAtFirst) = (null, long.MaxValue, long.MaxValue, true, first);
        (long[] starts, long[] ends) = Rented(0);
        earliest.GaveUp = false;
        limit = latest;
        Nodes++;
        cancellation.ThrowIfCancellationRequested();
        if (Root(starts, ends))
        {
            if (overlaps.First(starts, ends).Length == 0)
            {
                Keep(starts, ends);
                Bound = BestEnd;
            }
            else if (IsPrepared() || Root(starts, ends))
            {
                Branch(latest, nodes, starts, ends);
            }
        }

        IsComplete &= !earliest.GaveUp;
    }

    private bool Root(long[] starts, long[] ends) => earliest.Solve(start, limit, starts, ends) < 0;

    private void Branch(long latest, int nodes, long[] starts, long[] ends)
    {
        if (!HoldGates(starts, ends))
        {
            return;
        }

        long bound = BoundOf(starts, ends, thorough: true);
        (long[] listedStarts, long[] listedEnds) = Rented(1);
        listed ??= new ListedOrder(model, overlaps, taken);
        if (listed.Run(start, latest, Days, listedStarts, listedEnds))
        {
            Keep(listedStarts, listedEnds);
        }

        long most = Best is null ? latest : BestEnd - 1;
        if (most < bound || (stopAtFirst && Best is not null))
        {
            IsComplete = most < bound;
            Bound = Math.Min(bound, BestEnd);
            return;
        }

        int allNodes = Nodes + nodes;
        for (long margin = FirstMargin; ; margin *= 4)
        {
            // Rules that contradict each other push each other up to the limit, so a near limit finds that out sooner.
            limit = Math.Min(most, bound + margin);
            long near = limit;
            IsComplete = true;
            open = long.MaxValue;
            mostNodes = limit == most ? allNodes : Math.Min(allNodes, Nodes + Math.Max(50, nodes / 8));
            if (bound <= limit)
            {
                Visit(0, bound);
            }

            if (near == most || (BestEnd <= near && (IsComplete || Nodes >= allNodes)))
            {
                break;
            }

            // Found before the near limit was looked through: the rest is still to be looked at.
            most = Math.Min(most, BestEnd - 1);
        }

        long least = Math.Min(BestEnd, open);
        Bound = earliest.GaveUp || least == long.MaxValue ? bound : Math.Max(bound, least);
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
        (int First, int Second)[] orders = overlaps.First(starts, ends);
        if (orders.Length == 0)
        {
            Keep(starts, ends);
            limit = BestEnd - 1;
            return;
        }

        Child[] children = new Child[orders.Length];
        int kept = 0;
        (long[] childStarts, long[] childEnds) = Rented(depth + 1);
        foreach ((int first, int second) in orders)
        {
            if (Descend(depth, first, second))
            {
                long childBound = BoundOf(childStarts, childEnds, thorough: false);
                if (childBound <= limit)
                {
                    children[kept++] = new Child(first, second, childBound, childStarts[second] - starts[second], kept);
                }
            }
        }

        Array.Sort(children, 0, kept);
        for (int k = 0; k < kept && children[k].Bound <= limit; k++)
        {
            (int first, int second) = (children[k].First, children[k].Second);
            long gap = model.GapOf(first, second);
            earliest.Order(first, second, gap);
            Copy(depth);
            int mark = paths?.Mark ?? 0;
            paths?.Add(first, second);
            if (earliest.Push(first, second, gap, limit, childStarts, childEnds) < 0 && HoldGates(childStarts, childEnds))
            {
                Visit(depth + 1, children[k].Bound);
            }

            paths?.Back(mark);
            earliest.Forget(first);
        }
    }

    // Leaves the child's times in the arrays of the next depth.
    private bool Descend(int depth, int first, int second)
    {
        if (paths?.CanPrecede(first, second) == false)
        {
            return false;
        }

        (long[] childStarts, long[] childEnds) = Rented(depth + 1);
        Copy(depth);
        long gap = model.GapOf(first, second);
        earliest.Order(first, second, gap);
        bool holds = earliest.Push(first, second, gap, limit, childStarts, childEnds) < 0 && HoldGates(childStarts, childEnds);
        earliest.Forget(first);
        return holds;
    }

    private void Keep(long[] starts, long[] ends)
    {
        Best = (long[])starts.Clone();
        BestEnd = Last(ends);
    }

    private bool HoldGates(long[] starts, long[] ends)
    {
        for (int k = 0; k < load!.Gates; k++)
        {
            (int gate, long time) = load.Gate(k, starts, Days);
            if (!earliest.Hold(gate, time, limit, starts, ends))
            {
                return false;
            }
        }

        return true;
    }

    private long BoundOf(long[] starts, long[] ends, bool thorough)
    {
        long bound = Last(ends);
        return bound > limit ? bound : load!.Of(starts, Days, thorough, bound);
    }

    /// <summary>
    /// Whether all that branching needs was there already; otherwise it is made, and orders that the lags force may have been added.
    /// </summary>
    private bool IsPrepared()
    {
        if (load is not null)
        {
            return true;
        }

        load = new LoadBound(model);
        paths = LongestPaths.Of(model);
        if (paths is null)
        {
            return true;
        }

        load.AddGates(paths);
        List<(int, int)> pairs = [];
        foreach ((int i, int j) in overlaps.Pairs)
        {
            // An order that the lags already force becomes a lag of its own, so that it is never branched on.
            bool forwards = paths.CanPrecede(i, j);
            if (paths.CanPrecede(j, i) == forwards)
            {
                pairs.Add((i, j));
                continue;
            }

            (int first, int second) = forwards ? (i, j) : (j, i);
            earliest.Order(first, second, model.Gap(first, second));
            paths.Add(first, second);
        }

        listed = new ListedOrder(model, new StepOverlaps(model, overlaps.Others), taken);
        overlaps.Pairs = pairs;
        return false;
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

    internal static long Last(long[] ends)
    {
        long last = ends[0];
        foreach (long end in ends)
        {
            last = Math.Max(last, end);
        }

        return last;
    }

    private readonly record struct Child(int First, int Second, long Bound, long Delay, int Number) : IComparable<Child>
    {
        public int CompareTo(Child other) => Bound != other.Bound ? Bound.CompareTo(other.Bound)
            : Delay != other.Delay ? Delay.CompareTo(other.Delay) : Number.CompareTo(other.Number);
    }
}
