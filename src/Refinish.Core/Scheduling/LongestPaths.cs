using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// The least time from the start of one step to the start of another that lags and chosen orders force, as longest paths between all pairs:
/// one table for every depth of a search, each the one above it and the paths through one more order.
/// </summary>
internal sealed class LongestPaths
{
    // Beyond this the tables cost more than the branches they save.
    private const int MostSteps = 64;

    private readonly StepModel model;
    private readonly int count;
    private readonly List<long[]> tables;
    private readonly int[] later;
    private readonly long[] least;

    private LongestPaths(StepModel model)
    {
        this.model = model;
        count = model.Count;
        tables = [FromLags(model)];
        later = new int[count];
        least = new long[count];
    }

    /// <summary>The tables; <see langword="null"/> when there are too many steps for them to pay.</summary>
    public static LongestPaths? Of(StepModel model) => model.Count <= MostSteps ? new(model) : null;

    /// <summary>
    /// The least time from the start of one step to that of another before any order is chosen; never when nothing forces any.
    /// </summary>
    public long Between(int first, int second) => tables[0][(first * count) + second];

    public bool CanPrecede(int depth, int first, int second) =>
        tables[depth][(second * count) + first] is long back
            && (back == Openings.Never || model.Duration[first] + model.GapOf(first, second) + back <= 0);

    /// <summary>An order that holds in every branch.</summary>
    public void Impose(int first, int second) => Lengthen(tables[0], tables[0], first, second);

    /// <summary>The table of the next depth: the paths of this one, and those through the new order.</summary>
    public void Lengthen(int depth, int first, int second)
    {
        if (tables.Count <= depth + 1)
        {
            tables.Add(new long[count * count]);
        }

        Lengthen(tables[depth], tables[depth + 1], first, second);
    }

    private void Lengthen(long[] from, long[] to, int first, int second)
    {
        if (!ReferenceEquals(from, to))
        {
            Array.Copy(from, to, to.Length);
        }

        long step = model.Duration[first] + model.GapOf(first, second);
        if (to[(first * count) + second] is long forced && forced != Openings.Never && forced >= step)
        {
            return;
        }

        int last = 0;
        for (int j = 0; j < count; j++)
        {
            if (to[(second * count) + j] is long onwards && onwards != Openings.Never)
            {
                (later[last], least[last]) = (j, step + onwards);
                last++;
            }
        }

        for (int i = 0; i < count; i++)
        {
            int row = i * count;
            long reach = to[row + first];
            for (int k = 0; k < last && reach != Openings.Never; k++)
            {
                ref long path = ref to[row + later[k]];
                path = path == Openings.Never || reach + least[k] > path ? reach + least[k] : path;
            }
        }
    }

    private static long[] FromLags(StepModel model)
    {
        int n = model.Count;
        long[] d = new long[n * n];
        for (int i = 0; i < d.Length; i++)
        {
            d[i] = Openings.Never;
        }

        for (int i = 0; i < n; i++)
        {
            d[(i * n) + i] = 0;
        }

        void Raise(int at, long least) => d[at] = d[at] == Openings.Never || least > d[at] ? least : d[at];
        foreach (StepEdge edge in model.Edges)
        {
            Raise((edge.From * n) + edge.To, model.Duration[edge.From] + edge.Minimum);
            if (edge.Maximum < Openings.Never)
            {
                Raise((edge.To * n) + edge.From, -edge.Maximum - model.Duration[edge.From]);
            }
        }

        for (int k = 0; k < n; k++)
        {
            for (int i = 0; i < n; i++)
            {
                long reach = d[(i * n) + k];
                for (int j = 0; j < n && reach != Openings.Never; j++)
                {
                    long onwards = d[(k * n) + j];
                    if (onwards != Openings.Never)
                    {
                        Raise((i * n) + j, reach + onwards);
                    }
                }
            }
        }

        return d;
    }
}
