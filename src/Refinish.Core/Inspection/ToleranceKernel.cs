using System;
using Refinish.Numerics;

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

    /// <summary>The least factor that reaches the confidence.</summary>
    public static double Factor(int n, double coverage, double confidence, bool bothSides) =>
        Roots.Enclose(
            new Given<(int N, double Coverage, double Confidence, bool BothSides)>(
                (n, coverage, confidence, bothSides),
                static (given, k) =>
                    (given.BothSides ? TwoSided(given.N, given.Coverage, k) : OneSided(given.N, given.Coverage, k)) - given.Confidence),
            Least,
            Most).Upper;

    /// <summary>Confidence of the factor k: the mean lies z/√n off, then s has to exceed (z_p − z/√n)/k. The same as a quantile of the noncentral t.</summary>
    public static double OneSided(int n, double coverage, double k)
    {
        double quantile = Quantile(coverage);
        double edge = quantile * Math.Sqrt(n);
        return NormalScore.ChanceOf(-edge) + Quadrature.GaussLegendre(
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

    public static double Quantile(double probability) => NormalScore.Of(probability);

    public static double Density(double z) => Math.Exp(-(z * z) / 2) / Math.Sqrt(2 * Math.PI);

    public static double Exceeds(int freedom, double x) => x <= 0 ? 1 : Special.UpperGamma(freedom / 2.0, x / 2);

    /// <summary>r with Φ(x + r) − Φ(x − r) = p.</summary>
    public static double HalfWidth(double x, double coverage) =>
        Newton.Rising(new Held(x, coverage), 0, x + 9, Math.Min(x + 9, Quantile((1 + coverage) / 2) + (x / 2)), 0, 1e-15);

    private readonly struct Held(double x, double coverage) : ISlopedFunction
    {
        public double At(double r, out double slope)
        {
            slope = Density(x + r) + Density(x - r);
            return NormalScore.ChanceOf(x + r) - NormalScore.ChanceOf(x - r) - coverage;
        }
    }
}
