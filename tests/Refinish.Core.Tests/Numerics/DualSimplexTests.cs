using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class DualSimplexTests
{
    [Fact]
    [Evidence(Basis.Independent, "small programmes by hand: min 2a + 3b with a + b ≥ 4, a + 3b ≥ 6 gives 3, 1; a contradiction is told")]
    public void Least_cost_by_hand()
    {
        DualSimplex least = new([2, 3]);
        least.Add([1, 1], 4);
        Assert.True(least.Solve());
        Assert.Equal([4.0, 0], least.Values());
        least.Add([1, 3], 6);
        Assert.True(least.Solve());
        Numbers.Close(3, least.Values()[0]);
        Numbers.Close(1, least.Values()[1]);
        least.Add([-1, 0], -1);
        Assert.True(least.Solve());
        Numbers.Close(1, least.Values()[0]);
        Numbers.Close(3, least.Values()[1]);
        least.Add([0, -1], -2);
        Assert.False(least.Solve());
    }

    [Fact]
    [Evidence(Basis.Identity, "random programmes: the answer obeys every row, and no corner of the region is cheaper (corners by brute force over pairs of rows)")]
    public void Least_cost_beats_every_corner()
    {
        Random random = new(11);
        for (int round = 0; round < 200; round++)
        {
            double[] cost = [0.1 + random.NextDouble(), 0.1 + random.NextDouble()];
            List<(double A, double B, double C)> rows = [(1, 0, 0), (0, 1, 0)];
            DualSimplex least = new(cost);
            for (int i = 0; i < 8; i++)
            {
                (double A, double B, double C) row = (0.05 + random.NextDouble(), 0.05 + random.NextDouble(), random.NextDouble());
                rows.Add(row);
                least.Add([row.A, row.B], row.C);
            }

            Assert.True(least.Solve());
            double[] y = least.Values();
            Assert.All(rows, row => Assert.True((row.A * y[0]) + (row.B * y[1]) >= row.C - 1e-8));
            double cheapest = double.MaxValue;
            foreach ((double a, double b, double c) in rows)
            {
                foreach ((double d, double e, double f) in rows)
                {
                    double determinant = (a * e) - (b * d);
                    if (Math.Abs(determinant) > 1e-9)
                    {
                        double p = ((c * e) - (b * f)) / determinant;
                        double q = ((a * f) - (c * d)) / determinant;
                        if (rows.All(row => (row.A * p) + (row.B * q) >= row.C - 1e-9))
                        {
                            cheapest = Math.Min(cheapest, (cost[0] * p) + (cost[1] * q));
                        }
                    }
                }
            }

            Numbers.Near(cheapest, (cost[0] * y[0]) + (cost[1] * y[1]), 1e-7);
        }
    }
}
