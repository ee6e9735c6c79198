using System;
using System.Globalization;
using System.Linq;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

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

    [Fact]
    [Evidence(Basis.Identity, "the first 1024 points of any two neighbouring dimensions of the first eight: in 32 × 32 cells each, the star discrepancy at their corners is far below that of chance, 1/√n")]
    public void Sobol_points_are_even_in_the_plane()
    {
        for (int dimension = 0; dimension < 7; dimension++)
        {
            double[] x = [.. Enumerable.Range(0, 1024).Select(i => Sobol.At(dimension, (uint)i) / 4294967296.0)];
            double[] y = [.. Enumerable.Range(0, 1024).Select(i => Sobol.At(dimension + 1, (uint)i) / 4294967296.0)];
            double worst = 0;
            for (int i = 1; i <= 32; i++)
            {
                for (int j = 1; j <= 32; j++)
                {
                    int held = 0;
                    for (int k = 0; k < 1024; k++)
                    {
                        held += x[k] < i / 32.0 && y[k] < j / 32.0 ? 1 : 0;
                    }

                    worst = Math.Max(worst, Math.Abs((held / 1024.0) - (i * j / 1024.0)));
                }
            }

            Assert.InRange(worst, 0, 0.01);
        }
    }

    private static uint[] Words(string hex) => [.. hex.Split(' ').Select(word => uint.Parse(word, NumberStyles.HexNumber, CultureInfo.InvariantCulture))];
}
