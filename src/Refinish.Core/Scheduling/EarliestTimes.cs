using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// The least fixed point: every rule (a lag, an order, a window that pulls the earlier step along, working hours, time already taken) can only
/// push a step later, so pushing until nothing moves gives the earliest time of every step at once.
/// </summary>
internal sealed class EarliestTimes
{
    private readonly StepModel model;
    private readonly Openings openings;
    private readonly List<(long From, long Until)>[]? taken;
    private readonly List<(int Other, long Gap)>[] order;
    private readonly Queue<int> waiting = new();
    private readonly bool[] isWaiting;

    /// <param name="model">Steps and lags.</param>
    /// <param name="openings">Working hours.</param>
    /// <param name="taken">Stretches that each step has to keep clear of, in order; none when omitted.</param>
    public EarliestTimes(StepModel model, Openings openings, List<(long From, long Until)>[]? taken = null)
    {
        this.model = model;
        this.openings = openings;
        this.taken = taken;
        order = new List<(int, long)>[model.Count];
        for (int i = 0; i < model.Count; i++)
        {
            order[i] = [];
        }

        isWaiting = new bool[model.Count];
    }

    /// <summary>Demands that one step starts only so long after another has ended.</summary>
    public void Order(int first, int second, long gap) => order[first].Add((second, gap));

    /// <summary>Takes back the last demand on what follows a step.</summary>
    public void Forget(int first) => order[first].RemoveAt(order[first].Count - 1);

    /// <summary>Pushes every step from an instant onwards.</summary>
    /// <returns>−1 when all hold together by the limit; otherwise the step that could not.</returns>
    public int Solve(long start, long limit, long[] starts, long[] ends)
    {
        for (int i = 0; i < model.Count; i++)
        {
            starts[i] = Place(i, start);
            ends[i] = End(i, starts[i]);
            if (ends[i] > limit)
            {
                return i;
            }
        }

        for (int i = 0; i < model.Count; i++)
        {
            Wake(i);
        }

        return Settle(limit, starts, ends);
    }

    /// <summary>Pushes what follows from a new order of two steps; the times have to be settled but for it.</summary>
    /// <returns>−1 when all hold together by the limit; otherwise the step that could not.</returns>
    public int Push(int first, int second, long gap, long limit, long[] starts, long[] ends) =>
        Move(second, ends[first] + gap, limit, starts, ends) ? Settle(limit, starts, ends) : second;

    /// <summary>Pushes one step, and what follows from it; the times have to be settled.</summary>
    /// <returns>Whether all hold together by the limit.</returns>
    public bool Hold(int step, long notBefore, long limit, long[] starts, long[] ends) =>
        Move(step, notBefore, limit, starts, ends) && Settle(limit, starts, ends) < 0;

    private int Settle(long limit, long[] starts, long[] ends)
    {
        int failed = -1;
        while (waiting.Count > 0)
        {
            int i = waiting.Dequeue();
            isWaiting[i] = false;
            if (failed < 0)
            {
                failed = Spread(i, limit, starts, ends);
            }
        }

        return failed;
    }

    private int Spread(int i, long limit, long[] starts, long[] ends)
    {
        foreach ((int other, long minimum, _) in model.After[i])
        {
            if (!Move(other, ends[i] + minimum, limit, starts, ends))
            {
                return other;
            }
        }

        foreach ((int other, long gap) in order[i])
        {
            if (!Move(other, ends[i] + gap, limit, starts, ends))
            {
                return other;
            }
        }

        foreach ((int other, long maximum, _) in model.Holds[i])
        {
            // Its follower cannot come earlier, so this one has to come later.
            if (!Move(other, starts[i] - maximum - model.Duration[other], limit, starts, ends))
            {
                return other;
            }
        }

        return -1;
    }

    private bool Move(int i, long notBefore, long limit, long[] starts, long[] ends)
    {
        if (notBefore <= starts[i])
        {
            return true;
        }

        starts[i] = Place(i, notBefore);
        ends[i] = End(i, starts[i]);
        if (ends[i] > limit)
        {
            return false;
        }

        Wake(i);
        return true;
    }

    private void Wake(int i)
    {
        if (!isWaiting[i])
        {
            isWaiting[i] = true;
            waiting.Enqueue(i);
        }
    }

    private long Place(int i, long notBefore)
    {
        long time = notBefore;
        while (true)
        {
            time = !model.Attended[i] ? time : model.Interruptible[i] && model.Duration[i] > 0 ? openings.FirstOpen(time) : openings.FirstFit(time, model.Duration[i]);
            if (taken is null || time >= Openings.Never)
            {
                return time;
            }

            long clear = ClearOf(taken[i], time, End(i, time));
            if (clear == time)
            {
                return time;
            }

            time = clear;
        }
    }

    private long End(int i, long start) =>
        start >= Openings.Never ? start : model.Interruptible[i] ? openings.End(start, model.Duration[i]) : start + model.Duration[i];

    // The stretches are in order and apart from each other.
    private static long ClearOf(List<(long From, long Until)> stretches, long start, long end)
    {
        int low = 0;
        int high = stretches.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = stretches[middle].Until > start ? (low, middle) : (middle + 1, high);
        }

        return low < stretches.Count && stretches[low].From < end ? Math.Max(start, stretches[low].Until) : start;
    }
}
