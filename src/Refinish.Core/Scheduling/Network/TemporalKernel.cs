using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// Shortest paths on the distance graph of a simple temporal network, in ticks, so that no sum is rounded.
/// An edge (u, v, w) stands for t(v) ≤ t(u) + w.
/// </summary>
internal sealed class TemporalKernel(int points, int[] from, int[] to, long[] weight)
{
    public const long Open = long.MaxValue;

    public int Edges => weight.Length;

    /// <summary>
    /// Bellman–Ford from one point, forwards along the edges or backwards; <paramref name="via"/> gets the last edge of each shortest
    /// path.
    /// </summary>
    public long[] Distances(int origin, bool backwards, int[]? via = null, int without = -1)
    {
        long[] distance = new long[points];
        for (int i = 0; i < points; i++)
        {
            distance[i] = Open;
            via?[i] = -1;
        }

        distance[origin] = 0;
        int[] tail = backwards ? to : from;
        int[] head = backwards ? from : to;
        bool moved = true;
        for (int round = 0; moved && round < points; round++)
        {
            moved = Relax(distance, tail, head, via, without);
        }

        return distance;
    }

    /// <summary>Whether the network holds: no negative cycle. All points start at zero, as if joined to one source.</summary>
    public bool Holds(int without = -1)
    {
        long[] distance = new long[points];
        for (int round = 0; round <= points; round++)
        {
            if (!Relax(distance, from, to, null, without))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// The negative cycle with the fewest edges. Among cycles of at most k edges the shortest walk from a point back to itself is
    /// looked for, for growing k; the first that is negative visits no point twice, because one of its parts would otherwise be a
    /// shorter one.
    /// </summary>
    public int[] ShortestNegativeCycle()
    {
        int[] best = [];
        int limit = points;
        for (int source = 0; source < points && limit > 1; source++)
        {
            int[]? cycle = CycleThrough(source, limit);
            if (cycle is not null)
            {
                best = cycle;
                limit = cycle.Length - 1;
            }
        }

        return best;
    }

    /// <summary>By how much edge e has to be loosened so that nothing contradicts it; the others have to hold without it.</summary>
    public long Relief(int e)
    {
        long back = Distances(to[e], backwards: false, via: null, without: e)[from[e]];
        return back == Open ? 0 : Math.Max(0, -back - weight[e]);
    }

    private bool Relax(long[] distance, int[] tail, int[] head, int[]? via, int without)
    {
        bool moved = false;
        for (int e = 0; e < weight.Length; e++)
        {
            if (e != without && distance[tail[e]] != Open && distance[tail[e]] + weight[e] < distance[head[e]])
            {
                distance[head[e]] = distance[tail[e]] + weight[e];
                via?[head[e]] = e;
                moved = true;
            }
        }

        return moved;
    }

    private int[]? CycleThrough(int source, int limit)
    {
        List<int[]> via = [];
        long[] before = Enumerable.Repeat(Open, points).ToArray();

        before[source] = 0;
        for (int length = 1; length <= limit; length++)
        {
            long[] after = (long[])before.Clone();
            int[] last = Enumerable.Repeat(-1, points).ToArray();

            bool moved = false;
            for (int e = 0; e < weight.Length; e++)
            {
                if (before[from[e]] != Open && before[from[e]] + weight[e] < after[to[e]])
                {
                    after[to[e]] = before[from[e]] + weight[e];
                    last[to[e]] = e;
                    moved = true;
                }
            }

            via.Add(last);
            if (after[source] < 0)
            {
                return Walk(source, via);
            }

            if (!moved)
            {
                return null;
            }

            before = after;
        }

        return null;
    }

    private int[] Walk(int source, List<int[]> via)
    {
        List<int> cycle = [];
        int point = source;
        for (int level = via.Count - 1; level >= 0; level--)
        {
            int e = via[level][point];
            if (e >= 0)
            {
                cycle.Add(e);
                point = from[e];
            }
        }

        cycle.Reverse();
        return [.. cycle];
    }
}
