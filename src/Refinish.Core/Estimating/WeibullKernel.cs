using System;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>Weibull arithmetic. Symbols: b shape, η scale, t age, W term (years); δ = ln(1 + r) the force of interest per year.</summary>
internal static class WeibullKernel
{
    // Beyond this the share still good is below one in 10¹⁷.
    private const double LargestCumulated = 40;

    /// <summary>(t/η)^b.</summary>
    public static double Cumulated(double t, double b, double eta) => Math.Pow(t / eta, b);

    /// <summary>F = 1 − exp(−(t/η)^b).</summary>
    public static double Failed(double t, double b, double eta) => 1 - Math.Exp(-Cumulated(t, b, eta));

    /// <summary>
    /// ∫ f(t) e^(−δt) dt from 0 to W, with t = T z^k: the power takes the corner out of the integrand at t = 0, whatever the shape.
    /// </summary>
    public static double Discounted(double term, double b, double eta, double delta)
    {
        double end = End(term, b, eta);
        double k = Power(b);
        double u = Cumulated(end, b, eta);
        int panels = Panels(u, delta * end);
        double sum = 0;
        for (int i = 0; i < panels; i++)
        {
            sum += Quadrature.GaussLegendre(
                (b, k, u, end, delta),
                static (p, z) => p.u * p.b * p.k * Math.Pow(z, (p.b * p.k) - 1) * Math.Exp(-(p.u * Math.Pow(z, p.b * p.k)) - (p.delta * p.end * Math.Pow(z, p.k))),
                (double)i / panels,
                (double)(i + 1) / panels);
        }

        return sum;
    }

    /// <summary>The same as an expression.</summary>
    public static Expression DiscountedFormula(double term, double b, double eta, double delta)
    {
        double end = End(term, b, eta);
        Expression shape = Expression.Quantity("b", b, Measure.Number);
        Expression k = Expression.Number(Power(b));
        Expression u = Expression.Power(Expression.Quantity("T", end, Measure.Years) / Expression.Quantity("η", eta, Measure.Years), shape);
        Expression force = Expression.Quantity("δ", delta, Measure.Number);
        Expression last = Expression.Quantity("T", end, Measure.Years);
        int panels = Panels(Cumulated(end, b, eta), delta * end);
        return Expression.Sum(Enumerable.Range(0, panels).Select(i => Expression.Integral(
                "z",
                (double)i / panels,
                (double)(i + 1) / panels,
                z => u * shape * k * Expression.Power(z, (shape * k) - 1)
                    * Expression.Exp(-(u * Expression.Power(z, shape * k)) - (force * last * Expression.Power(z, k))))));
    }

    private static double End(double term, double b, double eta) => Math.Min(term, eta * Math.Pow(LargestCumulated, 1 / b));

    // One panel holds the usual warranty to the last digits; steep integrands are cut into eight.
    private static int Panels(double cumulated, double discount) => cumulated <= 1 && discount <= 2 ? 1 : 8;

    private static double Power(double b) => Math.Max(1, Math.Ceiling(9 / b));
}
