using System;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Estimating;

public class RandomNumberTests
{
    [Theory]
    [InlineData(1000)]
    [InlineData(4096)]
    [InlineData(5000)]
    [Evidence(Basis.Identity, "the orders of 30 inputs are as little correlated with each other as random ones: 435 pairs with a spread of 1/√n, mean square 1/n, none beyond five spreads")]
    public void Orders_of_different_inputs_are_unrelated(int count)
    {
        CounterRandom random = new(1);
        double middle = (count - 1) / 2.0;
        double[][] orders = [.. Enumerable.Range(0, 30).Select(i => new Strata(count, random.Word(1, i)))
            .Select(strata => Enumerable.Range(0, count).Select(j => strata.Of((uint)j) - middle).ToArray())];
        double variance = count * ((count * (double)count) - 1) / 12;
        double[] correlations = [.. Enumerable.Range(0, 30).SelectMany(i => Enumerable.Range(0, i).Select(j => orders[i].Zip(orders[j], (a, b) => a * b).Sum() / variance))];
        Assert.True(correlations.Max(Math.Abs) < 5 / Math.Sqrt(count), correlations.Max(Math.Abs).ToString("R", CultureInfo.InvariantCulture));
        Assert.InRange(correlations.Average(c => c * c) * count, 0.7, 1.3);
    }

    [Fact]
    [Evidence(Basis.Identity, "mean 1/2, variance 1/12 and no correlation between streams or neighbours, within five standard errors of 100 000 numbers")]
    public void Numbers_are_evenly_spread()
    {
        CounterRandom random = new(2024);
        double[] first = [.. Enumerable.Range(0, 100_000).Select(i => At(random, 0, i))];
        double[] second = [.. Enumerable.Range(0, 100_000).Select(i => At(random, 1, i))];
        Numbers.Near(0.5, first.Average(), 5 * Math.Sqrt(1.0 / 12 / first.Length));
        Numbers.Near(1.0 / 12, first.Average(x => (x - 0.5) * (x - 0.5)), 5 * Math.Sqrt(1.0 / 180 / first.Length));
        Numbers.Near(0, first.Zip(second, (x, y) => (x - 0.5) * (y - 0.5)).Average(), 5 / 12.0 / Math.Sqrt(first.Length));
        Numbers.Near(0, first.Zip(first.Skip(1), (x, y) => (x - 0.5) * (y - 0.5)).Average(), 5 / 12.0 / Math.Sqrt(first.Length));
        double[] cells = [.. first.GroupBy(x => (int)(x * 100)).Select(cell => Math.Pow(cell.Count() - 1000, 2) / 1000)];
        Assert.True(cells.Length == 100 && cells.Sum() < 99 + (5 * Math.Sqrt(198)));
    }

    [Property]
    [Evidence(Basis.Contract, "a number depends on seed, stream and index only, and lies between 0 and 1")]
    public void A_function_of_its_three_arguments(ulong seed, PositiveInt stream, PositiveInt index)
    {
        CounterRandom random = new(seed);
        double value = At(random, stream.Get, index.Get);
        Assert.InRange(value, double.Epsilon, 1 - 1e-16);
        Assert.Equal(value, At(new CounterRandom(seed), stream.Get, index.Get));
        Assert.NotEqual(value, At(random, stream.Get, index.Get + 1L));
        Assert.NotEqual(value, At(random, stream.Get + 1, index.Get));
        Assert.NotEqual(value, At(new CounterRandom(unchecked(seed + 1)), stream.Get, index.Get));
    }

    // Two neighbouring streams share a block.
    private static double At(CounterRandom random, int stream, long index)
    {
        random.Pair(stream / 2, index, out double even, out double odd);
        return stream % 2 == 0 ? even : odd;
    }
}
