using System;

namespace Refinish.Estimating;

/// <summary>Interest arithmetic. Symbols: r interest per year, n years, P whole cost, A yearly cost.</summary>
internal static class EconomyKernel
{
    /// <summary>A/P = r / (1 − (1 + r)^(−n)); 1/n without interest.</summary>
    public static double CapitalRecovery(double r, double n) => r == 0 ? 1 / n : r / (1 - Math.Pow(1 + r, -n));

    /// <summary>n = −ln(1 − P r / A) / ln(1 + r); P / A without interest; none when the interest on P alone is more than A.</summary>
    public static double? BreakEven(double p, double a, double r)
    {
        if (r == 0)
        {
            return p / a;
        }

        double left = 1 - (p * r / a);
        return left > 0 ? -(Math.Log(left) / Math.Log(1 + r)) : null;
    }
}
