using System;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// The least fixed point: every rule (a lag, an order, a window that pulls the earlier step along, working hours, time already taken) can
/// only
/// push a step later, so pushing until nothing moves gives the earliest time of every step at once. A lag on a clock that follows
/// temperature is
/// such a rule too: the later a step ends, the later its age is gained.
/// </summary>
internal sealed class EarliestTimes
{
    // Clocks of two laws can contradict each other by so little that pushing never ends. Invented: far above what a work that can be done
    // takes.
    private const int MostMovesPerStep = 2000;

    private readonly StepModel model;
    private readonly long[]?[] taken;

    // The demands on what follows a step, as a chained list; the newest stands first.
    private readonly int[] heads;
    private int[] next;
    private int[] seconds;
    private long[] gaps;
    private int orders;

    private readonly int[] waiting;
    private readonly bool[] isWaiting;
    private int firstWaiting;
    private int waitingCount;
    private int moves;

    /// <param name="model">Steps and lags.</param>
    /// <param name="taken">Stretches that each step has to keep clear of, begin and end in turn; those of the model unless given.</param>
    public EarliestTimes(StepModel model, long[]?[]? taken)
    {
        this.model = model;
        this.taken = taken ?? model.Blocked;
        heads = Enumerable.Repeat(-1, model.Count).ToArray();
        next = new int[2 * model.Count];
        seconds = new int[2 * model.Count];
        gaps = new long[2 * model.Count];
        waiting = new int[model.Count];
        isWaiting = new bool[model.Count];
    }

    /// <summary>The days on which may be worked.</summary>
    public DaySet Days { get; set; }

    /// <summary>Whether pushing was once given up, so that a failure proves nothing.</summary>
    public bool GaveUp { get; set; }

    /// <summary>Demands that one step starts only so long after another has ended.</summary>
    public void Order(int first, int second, long gap)
    {
        if (orders == next.Length)
        {
            Array.Resize(ref next, 2 * orders);
            Array.Resize(ref seconds, 2 * orders);
            Array.Resize(ref gaps, 2 * orders);
        }

        (next[orders], seconds[orders], gaps[orders]) = (heads[first], second, gap);
        heads[first] = orders;
        orders++;
    }

    /// <summary>Takes back the newest demand, which was one on what follows this step.</summary>
    public void Forget(int first)
    {
        orders--;
        heads[first] = next[orders];
    }

    /// <summary>Pushes every step from an instant onwards.</summary>
    /// <returns>−1 when all hold together by the limit; otherwise the step that could not.</returns>
    public int Solve(long start, long limit, long[] starts, long[] ends)
    {
        for (int i = 0; i < model.Count; i++)
        {
            starts[i] = Place(i, start);
            ends[i] = model.End(i, starts[i], Days);
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
        moves = 0;
        while (waitingCount > 0)
        {
            int i = waiting[firstWaiting];
            firstWaiting = firstWaiting + 1 == waiting.Length ? 0 : firstWaiting + 1;
            waitingCount--;
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
        int last = model.FirstEdge(i + 1);
        for (int at = model.FirstEdge(i); at < last; at++)
        {
            ref readonly StepEdge edge = ref model.Edges[at];
            if (!Move(edge.To, edge.Start(ends[i]), limit, starts, ends))
            {
                return edge.To;
            }
        }

        for (int at = heads[i]; at >= 0; at = next[at])
        {
            if (!Move(seconds[at], ends[i] + gaps[at], limit, starts, ends))
            {
                return seconds[at];
            }
        }

        last = model.FirstHeld(i + 1);
        for (int at = model.FirstHeld(i); at < last; at++)
        {
            // Its follower cannot come earlier, so this one has to come later.
            ref readonly StepEdge edge = ref model.Edges[model.Held(at)];
            if (!Move(edge.From, edge.End(starts[i]) - model.Duration[edge.From], limit, starts, ends))
            {
                return edge.From;
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
        ends[i] = model.End(i, starts[i], Days);
        if (ends[i] > limit)
        {
            return false;
        }

        if (++moves > MostMovesPerStep * model.Count)
        {
            GaveUp = true;
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
            int at = firstWaiting + waitingCount;
            waiting[at >= waiting.Length ? at - waiting.Length : at] = i;
            waitingCount++;
        }
    }

    private long Place(int i, long notBefore)
    {
        long[]? stretches = taken[i];
        long time = model.Place(i, notBefore, Days);
        while (stretches is not null && time < Openings.Never)
        {
            long clear = ClearOf(stretches, time, model.End(i, time, Days));
            if (clear == time)
            {
                break;
            }

            time = model.Place(i, clear, Days);
        }

        return time;
    }

    // The stretches are in order and apart from each other.
    private static long ClearOf(long[] stretches, long start, long end)
    {
        int low = 0;
        int high = stretches.Length / 2;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = stretches[(2 * middle) + 1] > start ? (low, middle) : (middle + 1, high);
        }

        return 2 * low < stretches.Length && stretches[2 * low] < end ? Math.Max(start, stretches[(2 * low) + 1]) : start;
    }
}
