using System;
using System.Linq;
using Refinish.Numerics;

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

    /// <summary>
    /// Renewals until t: M = Σ (−1)^(k−1) A_k u^k / Γ(1 + k b) with u = (t/η)^b, A_k = γ_k − Σ γ_j A_(k−j), γ_k = Γ(1 + k b)/k!
    /// (Smith and Leadbetter, Technometrics 5, 1963). Kept as c_k = A_k / Γ(1 + k b), so that nothing overflows.
    /// </summary>
    public static double Renewals(double t, double b, double eta)
    {
        const int MostTerms = 120;
        double u = Cumulated(t, b, eta);
        double[] c = new double[MostTerms + 1];
        double[] logs = new double[MostTerms + 1];
        double sum = 0;
        double power = -1;
        for (int k = 1; k <= MostTerms; k++)
        {
            logs[k] = Special.LogGamma(1 + (k * b));
            double term = Math.Exp(-Special.LogGamma(1 + k));
            for (int j = 1; j < k; j++)
            {
                term -= Math.Exp(logs[j] - Special.LogGamma(1 + j) + logs[k - j] - logs[k]) * c[k - j];
            }

            c[k] = term;
            power *= -u;
            sum += power * term;
            if (k > 5 && Math.Abs(power * term) <= 1e-17 * Math.Abs(sum))
            {
                break;
            }
        }

        return sum;
    }

    private static double End(double term, double b, double eta) => Math.Min(term, eta * Math.Pow(LargestCumulated, 1 / b));

    // One panel holds the usual warranty to the last digits; steep integrands are cut into eight.
    private static int Panels(double cumulated, double discount) => cumulated <= 1 && discount <= 2 ? 1 : 8;

    private static double Power(double b) => Math.Max(1, Math.Ceiling(9 / b));
}
