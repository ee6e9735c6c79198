using System;
using MathNet.Numerics.Integration;

namespace Refinish.Numerics;

/// <summary>
/// Gauss–Legendre quadrature. Abscissae and weights are those of MathNet.Numerics; its own loop takes a delegate that would have to close
/// over the numbers of the integrand.
/// </summary>
internal static class Quadrature
{
    /// <summary>
    /// 32 points. Exact for polynomials up to degree 63; for the smooth integrands of this library the error is at rounding level.
    /// </summary>
    public static (double[] Abscissae, double[] Weights) Rule32 { get; } = Rule(32);

    /// <summary>The abscissae between −1 and 1 and their weights; exact for polynomials up to degree 2n − 1.</summary>
    public static (double[] Abscissae, double[] Weights) Rule(int points)
    {
        GaussLegendreRule rule = new(-1, 1, points);
        return (rule.Abscissas, rule.Weights);
    }

    /// <summary>By <see cref="Rule32"/>.</summary>
    public static double GaussLegendre(Func<double, double> integrand, double lower, double upper) =>
        GaussLegendre(integrand, static (in function, x) => function(x), lower, upper);

    /// <summary>The same for a kernel that carries its own numbers, so that no closure is made.</summary>
    public static double GaussLegendre<T>(in T state, Integrand<T, double> integrand, double lower, double upper)
    {
        (double[] abscissae, double[] weights) = Rule32;
        double half = (upper - lower) / 2;
        double middle = (upper + lower) / 2;
        double sum = 0;
        for (int i = 0; i < abscissae.Length; i++)
        {
            sum += weights[i] * integrand(in state, middle + (half * abscissae[i]));
        }

        return half * sum;
    }

    /// <summary>
    /// An integrand that is handed the numbers that it needs, by reference: they may be many, and it is called at each point.
    /// </summary>
    public delegate TNumber Integrand<TState, TNumber>(in TState state, TNumber x);
}
