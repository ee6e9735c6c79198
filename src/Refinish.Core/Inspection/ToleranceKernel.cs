using System;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Refinish.Inspection;

/// <summary>
/// Exact factors of normal tolerance intervals: k such that mean ± k s, from n values, holds a part p of the population with confidence γ.
/// Q_ν(x) is the probability that chi-square of ν = n − 1 exceeds x, φ and Φ density and distribution of the standard normal.
/// </summary>
internal static class ToleranceKernel
{
    public const double Least = 1e-3;
    public const double Most = 1e4;

    /// <summary>Beyond this many standard deviations of the mean nothing counts: Φ(−7) is 1.3e-12.</summary>
    public const double Reach = 7;

    public static double Factor(int n, double coverage, double confidence, bool bothSides)
    {
        double low = Least;
        double high = Most;
        while (true)
        {
            double middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                return high;
            }

            if ((bothSides ? TwoSided(n, coverage, middle) : OneSided(n, coverage, middle)) < confidence)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }
    }

    /// <summary>Confidence of the factor k: the mean lies z/√n off, then s has to exceed (z_p − z/√n)/k. The same as a quantile of the noncentral t.</summary>
    public static double OneSided(int n, double coverage, double k)
    {
        double quantile = Quantile(coverage);
        double edge = quantile * Math.Sqrt(n);
        return Normal.CDF(0, 1, -edge) + Quadrature.GaussLegendre(
            (n, quantile, k),
            static (state, z) =>
            {
                double x = (state.quantile - (z / Math.Sqrt(state.n))) / state.k;
                return Density(z) * Exceeds(state.n - 1, (state.n - 1) * x * x);
            },
            -Reach,
            Math.Min(edge, Reach));
    }

    /// <summary>Confidence of the factor k: with the mean z/√n off, k s has to exceed the r that holds p around there.</summary>
    public static double TwoSided(int n, double coverage, double k) => 2 * Quadrature.GaussLegendre(
        (n, coverage, k),
        static (state, z) =>
        {
            double r = HalfWidth(z / Math.Sqrt(state.n), state.coverage) / state.k;
            return Density(z) * Exceeds(state.n - 1, (state.n - 1) * r * r);
        },
        0,
        Reach);

    public static double Quantile(double probability) => Normal.InvCDF(0, 1, probability);

    public static double Density(double z) => Math.Exp(-(z * z) / 2) / Math.Sqrt(2 * Math.PI);

    public static double Exceeds(int freedom, double x) => x <= 0 ? 1 : SpecialFunctions.GammaUpperRegularized(freedom / 2.0, x / 2);

    /// <summary>r with Φ(x + r) − Φ(x − r) = p, by Newton's method kept inside a bracket.</summary>
    public static double HalfWidth(double x, double coverage)
    {
        double low = 0;
        double high = x + 9;
        double r = Math.Min(high, Quantile((1 + coverage) / 2) + (x / 2));
        for (int i = 0; i < 100; i++)
        {
            double miss = Normal.CDF(0, 1, x + r) - Normal.CDF(0, 1, x - r) - coverage;
            if (miss > 0)
            {
                high = r;
            }
            else
            {
                low = r;
            }

            double next = r - (miss / (Density(x + r) + Density(x - r)));
            if (!(next > low && next < high))
            {
                next = (low + high) / 2;
            }

            if (Math.Abs(next - r) <= 1e-15 * r)
            {
                return next;
            }

            r = next;
        }

        return r;
    }
}
