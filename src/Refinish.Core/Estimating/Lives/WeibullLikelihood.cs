using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The likelihood of a Weibull life for failed and censored ages. Symbols: n_i jobs of age t_i, x_i = t_i / t_max, r failures,
/// b shape, η scale; sums over all jobs unless they say failures.
/// </summary>
internal sealed class WeibullLikelihood
{
    public static readonly Source Source = Source.FromMemory("maximum likelihood for censored Weibull lives");

    public const double LeastShape = 0.01;
    public const double GreatestShape = 100;

    private readonly LifeRecord[] records;
    private readonly double largest;
    private readonly double meanLog;

    public WeibullLikelihood(IEnumerable<LifeRecord> records)
    {
        // In order of age, so that the last digit does not depend on the order of the books.
        this.records = [.. records.OrderBy(record => record.AgeYears).ThenBy(record => record.Failed).ThenBy(record => record.Count)];
        largest = this.records[this.records.Length - 1].AgeYears;
        Failures = this.records.Where(record => record.Failed).Sum(record => (double)record.Count);
        meanLog = Failures > 0 ? MeanOfLogs().Value : 0;
    }

    /// <summary>r.</summary>
    public double Failures { get; }

    /// <summary>Mean of ln x over the failures; 0 without any.</summary>
    public double MeanLog => meanLog;

    public Num MeanOfLogs(Trace? t = null) => t.Step("mean logarithm of the failures, x = t / t_max", "m", Measure.Number, Source,
        Num.Sum(records.Where(record => record.Failed).Select(record => Times(record, Num.Ln(X(record, t)), t))) / R(t));

    /// <summary>Σ x^b ln x / Σ x^b − 1/b − mean ln x of the failures: rises with b and is zero at the likeliest shape.</summary>
    public Num Score(Num b, Trace? t = null)
    {
        Num sum = 0;
        Num logs = 0;
        foreach (LifeRecord record in records)
        {
            Num power = Times(record, Num.Power(X(record, t), b), t);
            sum += power;
            logs += power * Num.Ln(X(record, t));
        }

        return (logs / sum) - (1 / b) - M(t);
    }

    /// <summary>The likeliest scale for a shape: t_max (Σ x^b / r)^(1/b).</summary>
    public Num Scale(Num b, Trace? t = null) => Largest(t)
        * Num.Power(Num.Sum(records.Select(record => Times(record, Num.Power(X(record, t), b), t))) / R(t), 1 / b);

    /// <summary>ln L = r ln b − r b ln η + (b − 1) Σ ln t of the failures − Σ (t/η)^b.</summary>
    public Num LogLikelihood(Num b, Num eta, Trace? t = null) =>
        (R(t) * Num.Ln(b)) - (R(t) * b * Num.Ln(eta)) + ((b - 1) * R(t) * (M(t) + Num.Ln(Largest(t))))
        - Num.Sum(records.Select(record => Times(record, Num.Power(T(record, t) / eta, b), t)));

    /// <summary>Σ (t/η)^b ln^k(t/η).</summary>
    public Num Curvature(Num b, Num eta, int k, Trace? t = null) => Num.Sum(records.Select(record =>
        Times(record, Num.Power(T(record, t) / eta, b), t) * Num.Power(Num.Ln(T(record, t) / eta), k)));

    public Num R(Trace? t) => t.Given("r", Failures, Measure.Number);

    private Num M(Trace? t) => t.Given("m", meanLog, Measure.Number);

    private Num Largest(Trace? t) => t.Given("t_max", largest, Measure.Years);

    private Num X(LifeRecord record, Trace? t) => t.Given("x", record.AgeYears / largest, Measure.Number);

    private static Num T(LifeRecord record, Trace? t) => t.Given("t", record.AgeYears, Measure.Years);

    private static Num Times(LifeRecord record, Num term, Trace? t) =>
        record.Count == 1 ? term : t.Given("n", record.Count, Measure.Number) * term;
}
