using System;

namespace Refinish.Estimating;

/// <summary>Interest arithmetic. Symbols: r interest per year, n years, P whole cost, A yearly cost, δ = ln(1 + r), x = n δ.</summary>
internal static class EconomyKernel
{
    // Below this the series of ln(1 + r) is exact to the last digit, and the plain forms of it and of 1 − exp(−x) lose digits.
    private const double Small = 1e-5;

    // Interest below this does not show in sixteen figures.
    private const double None = 1e-18;

    /// <summary>A/P = r / (1 − (1 + r)^(−n)); 1/n without interest.</summary>
    public static double CapitalRecovery(double r, double n)
    {
        if (r < None)
        {
            return 1 / n;
        }

        double x = n * Force(r);
        return x < Small ? r / (x * PhiFunctions.Phi1(-x)) : r / (1 - Math.Exp(-x));
    }

    /// <summary>The same as an expression.</summary>
    public static Expression CapitalRecoveryFormula(Expression r, double rate, Expression n, double years)
    {
        if (rate < None)
        {
            return 1 / n;
        }

        if (rate >= Small && years * Force(rate) >= Small)
        {
            return r / (1 - Expression.Power(1 + r, -n));
        }

        Expression x = n * ForceFormula(r, rate);
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
        return left > 0 ? -(LogOfOneLess(p * r / a) / Force(r)) : null;
    }

    /// <summary>The same as an expression, where there is a number.</summary>
    public static Expression BreakEvenFormula(Expression p, Expression a, double share, Expression r, double rate)
    {
        if (rate < None)
        {
            return p / a;
        }

        Expression y = p * r / a;
        Expression log = share < Small ? -(y + (y * y / 2) + (y * y * y / 3)) : Expression.Ln(1 - y);
        return -(log / ForceFormula(r, rate));
    }

    private static double Force(double r) => r < Small ? r - (r * r / 2) + (r * r * r / 3) : Math.Log(1 + r);

    private static Expression ForceFormula(Expression r, double rate) =>
        rate < Small ? r - (r * r / 2) + (r * r * r / 3) : Expression.Ln(1 + r);

    private static double LogOfOneLess(double y) => y < Small ? -(y + (y * y / 2) + (y * y * y / 3)) : Math.Log(1 - y);
}
