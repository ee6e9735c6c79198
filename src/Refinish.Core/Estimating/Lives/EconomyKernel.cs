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
    public static double CapitalRecovery(double r, double n)
    {
        if (r < None)
        {
            return 1 / n;
        }

        double x = n * LogOfOneMore(r);
        return r / (x * PhiFunctions.Phi1(-x));
    }

    /// <summary>The same as an expression.</summary>
    public static Expression CapitalRecoveryFormula(Expression r, double rate, Expression n, double years)
    {
        if (rate < None)
        {
            return 1 / n;
        }

        if (rate >= Small && years * LogOfOneMore(rate) >= Small)
        {
            return r / (1 - Expression.Power(1 + r, -n));
        }

        Expression x = n * LogOfOneMore(r, rate);
        return r / (x * Expression.Phi1(-x));
    }

    /// <summary>
    /// n = −ln(1 − P r / A) / ln(1 + r); P / A without interest; none when the interest on P alone is more than A, or when A is nothing.
    /// </summary>
    public static double? BreakEven(double p, double a, double r)
    {
        if (a <= 0)
        {
            return null;
        }

        if (r < None)
        {
            return p / a;
        }

        double left = 1 - (p * r / a);
        return left > 0 ? -(LogOfOneMore(-(p * r / a)) / LogOfOneMore(r)) : null;
    }

    /// <summary>The same as an expression, where there is a number.</summary>
    public static Expression BreakEvenFormula(Expression p, Expression a, double share, Expression r, double rate)
    {
        if (rate < None)
        {
            return p / a;
        }

        Expression log = share < Small ? LogOfOneMore(-(p * r / a), -share) : Expression.Ln(1 - (p * r / a));
        return -(log / LogOfOneMore(r, rate));
    }

    private static double LogOfOneMore(double y) => Math.Abs(y) < Small
        ? y * (1 - (y * (0.5 - (y * ((1.0 / 3) - (y * (0.25 - (y / 5))))))))
        : Math.Log(1 + y);

    private static Expression LogOfOneMore(Expression y, double value) => Math.Abs(value) < Small
        ? y * (1 - (y * (0.5 - (y * ((1 / Expression.Number(3)) - (y * (0.25 - (y / 5))))))))
        : Expression.Ln(1 + y);
}
