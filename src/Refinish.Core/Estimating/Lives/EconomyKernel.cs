using System;
using Refinish.Numerics;

namespace Refinish.Estimating;

/// <summary>Interest arithmetic. Symbols: r interest per year, n years, P whole cost, A yearly cost, δ = ln(1 + r), x = n δ.</summary>
internal static class EconomyKernel
{
    // Below this five terms of ln(1 + r) are exact to the last digit, and the plain forms of it and of 1 − exp(−x) lose digits.
    private const double Small = 1e-3;

    // Interest below this does not show in sixteen figures.
    private const double None = 1e-18;

    /// <summary>A/P = r / (1 − (1 + r)^(−n)); 1/n without interest.</summary>
    public static Num CapitalRecovery(Num r, Num n, Trace? t = null)
    {
        if (r.Value < None)
        {
            return 1 / n;
        }

        Num x = n * LogOfOneMore(r, t);
        return r.Value >= Small && x.Value >= Small ? r / (1 - Num.Power(1 + r, -n)) : r / (x * Num.Phi1(-x));
    }

    /// <summary>
    /// n = −ln(1 − P r / A) / ln(1 + r); P / A without interest; none when the interest on P alone is more than A, or when A is nothing.
    /// </summary>
    public static Num? BreakEven(Num p, Num a, Num r, Trace? t = null)
    {
        if (a.Value <= 0)
        {
            return null;
        }

        if (r.Value < None)
        {
            return p / a;
        }

        Num share = p * r / a;
        return share.Value < 1 ? -((share.Value < Small ? LogOfOneMore(-share, t) : Num.Ln(1 - share)) / LogOfOneMore(r, t)) : null;
    }

    private static Num LogOfOneMore(Num y, Trace? t) => Math.Abs(y.Value) < Small
        ? y * (1 - (y * (0.5 - (y * ((t.Number(1) / 3) - (y * (0.25 - (y / 5))))))))
        : Num.Ln(1 + y);
}
