using System;
using System.Globalization;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Estimating;

public class RandomNumberTests
{
    [Theory]
    [InlineData("00000000 00000000 00000000 00000000", "00000000 00000000", "6627e8d5 e169c58d bc57ac4c 9b00dbd8")]
    [InlineData("ffffffff ffffffff ffffffff ffffffff", "ffffffff ffffffff", "408f276d 41c83b0e a20bc7c6 6d5451fd")]
    [InlineData("243f6a88 85a308d3 13198a2e 03707344", "a4093822 299f31d0", "d16cfe09 94fdcceb 5001e420 24126ea1")]
    [Evidence(Basis.Cited, "Random123, tests/kat_vectors, lines \"philox4x32 10\"; seen quoted alike in several projects")]
    public void Known_answers_of_the_authors(string counter, string key, string expected)
    {
        uint[] c = Words(counter);
        uint[] k = Words(key);
        Philox.Block(k[0] | ((ulong)k[1] << 32), ref c[0], ref c[1], ref c[2], ref c[3]);
        Assert.Equal(Words(expected), c);
    }

    [Fact]
    [Evidence(Basis.Independent, "scipy 1.10.1, scipy.stats.qmc.Sobol(64, scramble=False, bits=32), points 0 to 7 in dimensions 0 to 3, 20 and 63, and point 13")]
    public void Sobol_points()
    {
        int[] dimensions = [0, 1, 2, 3, 20, 63];
        double[][] expected =
        [
            [0, 0, 0, 0, 0, 0],
            [0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
            [0.75, 0.25, 0.25, 0.25, 0.25, 0.75],
            [0.25, 0.75, 0.75, 0.75, 0.75, 0.25],
            [0.375, 0.375, 0.625, 0.875, 0.125, 0.125],
            [0.875, 0.875, 0.125, 0.375, 0.625, 0.625],
            [0.625, 0.125, 0.875, 0.625, 0.375, 0.875],
            [0.125, 0.625, 0.375, 0.125, 0.875, 0.375],
        ];
        for (uint i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i], dimensions.Select(dimension => Sobol.At(dimension, i) / 4294967296.0));
        }

        int[] others = [0, 5, 10, 30, 40, 63];
        Assert.Equal([0.8125, 0.9375, 0.8125, 0.5625, 0.9375, 0.0625], others.Select(dimension => Sobol.At(dimension, 13) / 4294967296.0));
    }

    [Fact]
    [Evidence(Basis.Identity, "every dimension of a Sobol sequence puts its first 2^k points one into each of 2^k equal cells")]
    public void Every_Sobol_dimension_is_stratified()
    {
        for (int dimension = 0; dimension < Sobol.Dimensions; dimension++)
        {
            Assert.Equal(Enumerable.Range(0, 1024), Enumerable.Range(0, 1024).Select(i => (int)(Sobol.At(dimension, (uint)i) >> 22)).Order());
        }
    }

    [Theory]
    [InlineData(100)]
    [InlineData(1023)]
    [InlineData(1024)]
    [InlineData(1025)]
    [InlineData(100_000)]
    [Evidence(Basis.Identity, "an order of the slices is a permutation, whatever their number, and another key gives another one")]
    public void An_order_of_slices_is_a_permutation(int count)
    {
        Strata strata = new(count, 12345);
        int[] order = [.. Enumerable.Range(0, count).Select(i => (int)strata.Of((uint)i))];
        Assert.Equal(Enumerable.Range(0, count), order.Order());
        Strata other = new(count, 54321);
        Assert.True(order.Where((slice, i) => slice == other.Of((uint)i)).Count() < 12);

        // Rank correlation with the index: its spread is 1/√n for a random order.
        double middle = (count - 1) / 2.0;
        double correlation = order.Select((slice, i) => (slice - middle) * (i - middle)).Sum() / (count * ((count * (double)count) - 1) / 12);
        Assert.True(Math.Abs(correlation) < 4 / Math.Sqrt(count), correlation.ToString("R", CultureInfo.InvariantCulture));
    }

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
        double[] first = [.. Enumerable.Range(0, 100_000).Select(i => random.At(0, i))];
        double[] second = [.. Enumerable.Range(0, 100_000).Select(i => random.At(1, i))];
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
        double value = random.At(stream.Get, index.Get);
        Assert.InRange(value, double.Epsilon, 1 - 1e-16);
        Assert.Equal(value, new CounterRandom(seed).At(stream.Get, index.Get));
        Assert.NotEqual(value, random.At(stream.Get, index.Get + 1L));
        Assert.NotEqual(value, random.At(stream.Get + 1, index.Get));
        Assert.NotEqual(value, new CounterRandom(unchecked(seed + 1)).At(stream.Get, index.Get));
        Numbers.Refuses("stream", () => random.At(-1, 0));
        Numbers.Refuses("index", () => random.At(0, -1));
        Assert.Equal("random numbers of seed 5", new CounterRandom(5).ToString());
    }

    private static uint[] Words(string hex) => [.. hex.Split(' ').Select(word => uint.Parse(word, NumberStyles.HexNumber, CultureInfo.InvariantCulture))];
}
