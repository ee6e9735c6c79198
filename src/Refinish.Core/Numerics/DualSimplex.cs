using System;
using System.Collections.Generic;

namespace Refinish.Numerics;

/// <summary>
/// Least cost under "at least" rules: minimise c·y with y ≥ 0 and rows a·y ≥ b, c &gt; 0, by the dual simplex method in dictionary form.
/// Rows are added as they turn out to be broken; most triangles never get a say. Ties go to the lower index, so that the answer is always
/// the same.
/// </summary>
internal sealed class DualSimplex
{
    private const double Zero = 1e-11;

    private readonly int columns;
    private readonly List<double[]> rows = [];
    private readonly List<int> basic = [];
    private readonly int[] free;
    private readonly double[] cost;
    private int slacks;

    public DualSimplex(double[] costs)
    {
        columns = costs.Length;
        cost = (double[])costs.Clone();
        free = new int[columns];
        for (int k = 0; k < columns; k++)
        {
            free[k] = k;
        }
    }

    /// <summary>Adds a·y ≥ b. A variable below <see cref="columns"/> is one of y, any other a slack.</summary>
    public void Add(double[] a, double b)
    {
        // The last place of a row is its constant; the others go with the free variables.
        double[] row = new double[columns + 1];
        row[columns] = -b;
        for (int k = 0; k < columns; k++)
        {
            int place = Array.IndexOf(free, k);
            if (place >= 0)
            {
                row[place] += a[k];
            }
            else
            {
                double[] other = rows[basic.IndexOf(k)];
                for (int j = 0; j <= columns; j++)
                {
                    row[j] += a[k] * other[j];
                }
            }
        }

        rows.Add(row);
        basic.Add(columns + slacks++);
    }

    /// <summary>Restores all rows at least cost; <see langword="false"/> when they contradict each other.</summary>
    public bool Solve()
    {
        for (int turn = 0; turn < 10_000; turn++)
        {
            int leaving = -1;
            double worst = -1e-9;
            for (int i = 0; i < rows.Count; i++)
            {
                double scaled = rows[i][columns];
                if (scaled < worst)
                {
                    worst = scaled;
                    leaving = i;
                }
            }

            if (leaving < 0)
            {
                return true;
            }

            int entering = -1;
            double least = double.MaxValue;
            for (int j = 0; j < columns; j++)
            {
                double rate = rows[leaving][j];
                if (rate > Zero && cost[j] / rate < least)
                {
                    least = cost[j] / rate;
                    entering = j;
                }
            }

            if (entering < 0)
            {
                return false;
            }

            Exchange(leaving, entering);
        }

        return false;
    }

    public double[] Values()
    {
        double[] y = new double[columns];
        for (int i = 0; i < rows.Count; i++)
        {
            if (basic[i] < columns)
            {
                y[basic[i]] = Math.Max(0, rows[i][columns]);
            }
        }

        return y;
    }

    private void Exchange(int leaving, int entering)
    {
        double[] pivot = rows[leaving];
        double rate = pivot[entering];
        for (int j = 0; j <= columns; j++)
        {
            pivot[j] = j == entering ? 1 / rate : -pivot[j] / rate;
        }

        for (int i = 0; i < rows.Count; i++)
        {
            if (i != leaving)
            {
                Put(rows[i], rows[i][entering]);
            }
        }

        double price = cost[entering];
        for (int j = 0; j < columns; j++)
        {
            cost[j] = j == entering ? price * pivot[j] : cost[j] + (price * pivot[j]);
        }

        (basic[leaving], free[entering]) = (free[entering], basic[leaving]);

        void Put(double[] row, double times)
        {
            if (times == 0)
            {
                return;
            }

            for (int j = 0; j <= columns; j++)
            {
                row[j] = j == entering ? times * pivot[j] : row[j] + (times * pivot[j]);
            }
        }
    }
}
