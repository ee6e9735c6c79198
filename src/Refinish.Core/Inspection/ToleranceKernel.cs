using System;
using System.Collections.Generic;
using Refinish.Numerics;

namespace Refinish.Inspection;

/// <summary>
/// Exact factors of normal tolerance intervals: k such that mean ± k s, from n values, holds a part p of the population with confidence γ.
/// Q_ν(x) is the probability that chi-square of ν = n − 1 exceeds x, φ and Φ density and distribution of the standard normal.
/// </summary>
internal static class ToleranceKernel
{
    private const double Most = 1e4;

    /// <summary>Beyond this many standard deviations of the mean nothing counts: Φ(−7) is 1.3e-12.</summary>
    private const double Reach = 7;

    /// <summary>
    /// Farther than this from its middle √ν no chi counts: its standard deviation is at most 0.71, and beyond √ν + 6 lies less than 3e-12.
    /// </summary>
    private const double ChiReach = 6;

    /// <summary>The least factor that reaches the confidence.</summary>
    public static double Factor(int n, double coverage, double confidence, bool bothSides)
    {
        if (!bothSides && coverage == 0.5)
        {
            return StudentT.Quantile((2 * confidence) - 1, n - 1) / Math.Sqrt(n);
        }

        // The widths do not depend on the factor: looked for once, not at each try.
        Dictionary<double, double> widths = [];
        Func<double, double> halfWidth = x =>
        {
            if (!widths.TryGetValue(x, out double width))
            {
                width = HalfWidth(x, coverage);
                widths.Add(x, width);
            }

            return width;
        };
        Given<(int N, double Coverage, double Confidence, Func<double, double>? HalfWidth)> beyond = new(
            (n, coverage, confidence, bothSides ? halfWidth : null),
            static (given, k) => Confidence(given.N, given.Coverage, given.HalfWidth, k, null).Value - given.Confidence);

        // From below, since most factors are small and the confidence hardly rises where it is nearly reached.
        (double low, double high) = (Quantile(coverage), Math.Max(2 * Quantile(coverage), 0.1));
        while (high < Most && beyond.At(high) < 0)
        {
            (low, high) = (high, 2 * high);
        }

        return Roots.Enclose(beyond, low, Math.Min(high, Most), Roots.Sharp).Upper;
    }

    /// <summary>
    /// Confidence of the factor k. The mean lies z/√n off; then k s has to exceed z_p − z/√n, the same as a quantile of the noncentral t,
    /// or for both sides the r that holds p around there.
    /// </summary>
    public static Num Confidence(int n, double coverage, bool bothSides, Num k, Trace? t) =>
        Confidence(n, coverage, bothSides ? x => HalfWidth(x, coverage) : null, k, t);

    private static Num Confidence(int n, double coverage, Func<double, double>? halfWidth, Num k, Trace? t)
    {
        // Made once, not at each point of the integral.
        Func<double, double> exceeds = x => Exceeds(n - 1, x);
        Num root = Num.Sqrt(t.Given("n", n, Measure.Number));
        Num freedom = t.Given("ν", n - 1, Measure.Number);
        if (halfWidth is not null)
        {
            return 2 * Num.Integral("z", 0, Reach, z => Held(z, Num.Function("r", "r", halfWidth, z / root)));
        }

        Num quantile = t.Given("z_p", Quantile(coverage), Measure.Number);
        Num top = quantile * root;
        double bottom = -Reach;
        if (!k.IsTraced)
        {
            // Q is 1 down to the chi below which there is nothing, and 0 from the chi on beyond which there is nothing. With a small k that
            // is a narrow step, which the points of the integral have to lie in.
            double middle = Math.Sqrt(n - 1);
            double slope = k.Value * root.Value / middle;
            bottom = Math.Max(bottom, top.Value - (slope * (middle + ChiReach)));
            top = Math.Min(Reach, top.Value - (slope * Math.Max(0, middle - ChiReach)));
        }

        return Num.Function("Φ", "\\Phi", NormalScore.ChanceOf, -top)
            + Num.Integral("z", Math.Min(bottom, top.Value), Math.Min(top.Value, Reach), z => Held(z, quantile - (z / root)));

        Num Held(Num z, Num off) =>
            Num.Function("φ", "\\varphi", Density, z) * Num.Function("Q_ν", "Q_\\nu", exceeds, freedom * Num.Square(off / k));
    }

    private static double Quantile(double probability) => NormalScore.Of(probability);

    private static double Density(double z) => Math.Exp(-(z * z) / 2) / Math.Sqrt(2 * Math.PI);

    private static double Exceeds(int freedom, double x) => x <= 0 ? 1 : Special.UpperGamma(freedom / 2.0, x / 2);

    /// <summary>r with Φ(x + r) − Φ(x − r) = p.</summary>
    private static double HalfWidth(double x, double coverage) =>
        Newton.Rising(new Around(x, coverage), 0, x + 9, Math.Min(x + 9, Quantile((1 + coverage) / 2) + (x / 2)), 0, 1e-15);

    private readonly struct Around(double x, double coverage) : ISlopedFunction
    {
        public double At(double r, out double slope)
        {
            slope = Density(x + r) + Density(x - r);
            return NormalScore.ChanceOf(x + r) - NormalScore.ChanceOf(x - r) - coverage;
        }
    }
}
