using System;
using MathNet.Numerics.Integration;

namespace Refinish;

/// <summary>Gauss–Legendre quadrature with 32 points, from the abscissae of MathNet.Numerics, without allocation.</summary>
internal static class Quadrature
{
    private static readonly double[] Abscissae = new GaussLegendreRule(-1, 1, 32).Abscissas;
    private static readonly double[] Weights = new GaussLegendreRule(-1, 1, 32).Weights;

    /// <summary>Exact for polynomials up to degree 63; for the smooth integrands of this library the error is at rounding level.</summary>
    public static double GaussLegendre(Func<double, double> integrand, double lower, double upper)
    {
        double half = (upper - lower) / 2;
        double middle = (upper + lower) / 2;
        double sum = 0;
        for (int i = 0; i < Abscissae.Length; i++)
        {
            sum += Weights[i] * integrand(middle + (half * Abscissae[i]));
        }

        return half * sum;
    }

    /// <summary>The same for a kernel that carries its own numbers, so that no closure is made.</summary>
    public static double GaussLegendre<T>(T state, Func<T, double, double> integrand, double lower, double upper)
    {
        double half = (upper - lower) / 2;
        double middle = (upper + lower) / 2;
        double sum = 0;
        for (int i = 0; i < Abscissae.Length; i++)
        {
            sum += Weights[i] * integrand(state, middle + (half * Abscissae[i]));
        }

        return half * sum;
    }
}
