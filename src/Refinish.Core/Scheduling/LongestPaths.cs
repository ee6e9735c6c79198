using System;
using System.Collections.Generic;
using System.Linq;

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
    private readonly List<long[][]> tables;

    private LongestPaths(StepModel model)
    {
        this.model = model;
        tables = [FromLags(model)];
    }

    public long[][] this[int depth] => tables[depth];

    /// <summary>The tables; <see langword="null"/> when there are too many steps for them to pay.</summary>
    public static LongestPaths? Of(StepModel model) => model.Count <= MostSteps ? new(model) : null;

    public bool CanPrecede(int depth, int first, int second) =>
        tables[depth][second][first] is long back && (back == Openings.Never || model.Duration[first] + model.GapOf(first, second) + back <= 0);

    /// <summary>An order that holds in every branch.</summary>
    public void Impose(int first, int second) => Lengthen(tables[0], tables[0], first, second);

    /// <summary>The table of the next depth: the paths of this one, and those through the new order.</summary>
    public void Lengthen(int depth, int first, int second)
    {
        if (tables.Count <= depth + 1)
        {
            tables.Add([.. tables[depth].Select(row => (long[])row.Clone())]);
        }

        Lengthen(tables[depth], tables[depth + 1], first, second);
    }

    private void Lengthen(long[][] from, long[][] to, int first, int second)
    {
        long step = model.Duration[first] + model.GapOf(first, second);
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

    private static long[][] FromLags(StepModel model)
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
