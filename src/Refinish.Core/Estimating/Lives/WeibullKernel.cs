using System;
using Refinish.Numerics;

namespace Refinish.Estimating;

/// <summary>Weibull arithmetic. Symbols: b shape, η scale, t age, W term (years); δ = ln(1 + r) the force of interest per year.</summary>
internal static class WeibullKernel
{
    // Beyond this the share still good is below one in 10¹⁷.
    private const double LargestCumulated = 40;

    /// <summary>(t/η)^b.</summary>
    public static Num Cumulated(Num t, Num b, Num eta) => Num.Power(t / eta, b);

    /// <summary>
    /// ∫ f(t) e^(−δt) dt from 0 to W, with t = T z^k: the power takes the corner out of the integrand at t = 0, whatever the shape.
    /// </summary>
    public static Num Discounted(double term, Num b, Num eta, Num delta, Trace? t = null)
    {
        double end = Math.Min(term, eta.Value * Math.Pow(LargestCumulated, 1 / b.Value));
        double k = Math.Max(1, Math.Ceiling(9 / b.Value));
        Num last = t.Given("T", end, Measure.Years);
        Num u = Cumulated(last, b, eta);

        // One panel holds the usual warranty to the last digits; steep integrands are cut into eight.
        int panels = u.Value <= 1 && delta.Value * end <= 2 ? 1 : 8;
        return Num.Sum(panels, (u, b, k, delta, last, panels), static (of, i) => Num.Integral(
            "z",
            (double)i / of.panels,
            (double)(i + 1) / of.panels,
            of,
            static (in at, z) => at.u * at.b * at.k * Num.Power(z, (at.b * at.k) - 1)
                * Num.Exp(-(at.u * Num.Power(z, at.b * at.k)) - (at.delta * at.last * Num.Power(z, at.k)))));
    }

    /// <summary>
    /// Renewals until t: M = Σ (−1)^(k−1) A_k u^k / Γ(1 + k b) with u = (t/η)^b, A_k = γ_k − Σ γ_j A_(k−j), γ_k = Γ(1 + k b)/k!
    /// (Smith and Leadbetter, Technometrics 5, 1963). Kept as c_k = A_k / Γ(1 + k b), so that nothing overflows.
    /// </summary>
    public static double Renewals(double t, double b, double eta)
    {
        const int MostTerms = 120;
        double u = Cumulated(t, b, eta).Value;
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
}
