using System;
using System.Linq;
using Refinish.Numerics;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Numerics;

public class ExponentialSumTests
{
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.25, 0.75)]
    [InlineData(0.2, 0.3, 0.9)]
    [InlineData(0.11, 0.12, 0.5, 0.95)]
    [Evidence(Basis.Identity, "with rates 0, 1, 2 … the sum is a polynomial in e^(−y): its coefficients are multiplied out from the roots, and all of them are found back")]
    public void All_zeros_are_found(params double[] roots)
    {
        // The product of (z − r) with z = e^(−y), lowest power first.
        double[] coefficients = [1];
        foreach (double root in roots)
        {
            double[] next = new double[coefficients.Length + 1];
            for (int i = 0; i < coefficients.Length; i++)
            {
                next[i] -= root * coefficients[i];
                next[i + 1] += coefficients[i];
            }

            coefficients = next;
        }

        double[] rates = [.. Enumerable.Range(0, coefficients.Length).Select(i => (double)i)];
        double[] zeros = new double[coefficients.Length];
        int count = ExponentialSum.Zeros(coefficients, rates, coefficients.Length, 5, zeros);
        double[] expected = [.. roots.Select(root => -Math.Log(root)).OrderBy(y => y)];
        Assert.Equal(expected.Length, count);
        for (int i = 0; i < count; i++)
        {
            Numbers.Close(expected[i], zeros[i], 1e-11);
        }

        // Those beyond the end are left out.
        Assert.Equal(expected.Count(y => y < 0.5), ExponentialSum.Zeros(coefficients, rates, coefficients.Length, 0.5, zeros));
    }
}
