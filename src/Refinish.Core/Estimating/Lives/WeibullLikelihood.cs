using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// The likelihood of a Weibull life for failed and censored ages. Symbols: n_i jobs of age t_i, x_i = t_i / t_max, r failures,
/// b shape, η scale; sums over all jobs unless they say failures.
/// </summary>
internal sealed class WeibullLikelihood
{
    public const double LeastShape = 0.01;
    public const double GreatestShape = 100;

    private readonly LifeRecord[] records;
    private readonly double meanLog;

    public WeibullLikelihood(IEnumerable<LifeRecord> records)
    {
        // In order of age, so that the last digit does not depend on the order of the books.
        this.records = [.. records.OrderBy(record => record.AgeYears).ThenBy(record => record.Failed).ThenBy(record => record.Count)];
        Largest = this.records[this.records.Length - 1].AgeYears;
        Failures = this.records.Where(record => record.Failed).Sum(record => (double)record.Count);
        meanLog = Failures > 0 ? this.records.Where(record => record.Failed).Sum(record => record.Count * Math.Log(record.AgeYears / Largest)) / Failures : 0;
    }

    /// <summary>t_max.</summary>
    public double Largest { get; }

    /// <summary>r.</summary>
    public double Failures { get; }

    /// <summary>Mean of ln x over the failures.</summary>
    public double MeanLog => meanLog;

    /// <summary>Σ x^b ln x / Σ x^b − 1/b − mean ln x of the failures: rises with b and is zero at the likeliest shape.</summary>
    public double Score(double b)
    {
        double sum = 0;
        double logs = 0;
        foreach (LifeRecord record in records)
        {
            double x = record.AgeYears / Largest;
            double power = record.Count * Math.Pow(x, b);
            sum += power;
            logs += power * Math.Log(x);
        }

        return (logs / sum) - (1 / b) - meanLog;
    }

    /// <summary>The likeliest scale for a shape: t_max (Σ x^b / r)^(1/b).</summary>
    public double Scale(double b) => Largest * Math.Pow(records.Sum(record => record.Count * Math.Pow(record.AgeYears / Largest, b)) / Failures, 1 / b);

    /// <summary>ln L = r ln b − r b ln η + (b − 1) Σ ln t of the failures − Σ (t/η)^b.</summary>
    public double LogLikelihood(double b, double eta) =>
        (Failures * Math.Log(b)) - (Failures * b * Math.Log(eta)) + ((b - 1) * Failures * (meanLog + Math.Log(Largest)))
        - records.Sum(record => record.Count * Math.Pow(record.AgeYears / eta, b));

    /// <summary>The greatest ln L that a shape can have, at its likeliest scale.</summary>
    public double Profile(double b) => LogLikelihood(b, Scale(b));

    /// <summary>Σ (t/η)^b ln(t/η) and Σ (t/η)^b ln²(t/η).</summary>
    public (double First, double Second) Curvature(double b, double eta)
    {
        double first = 0;
        double second = 0;
        foreach (LifeRecord record in records)
        {
            double log = Math.Log(record.AgeYears / eta);
            double power = record.Count * Math.Pow(record.AgeYears / eta, b);
            first += power * log;
            second += power * log * log;
        }

        return (first, second);
    }

    public Expression ScoreFormula(Expression b)
    {
        Expression sum = Expression.Sum(records.Select(record => Times(record, Expression.Power(X(record), b))));
        Expression logs = Expression.Sum(records.Select(record => Times(record, Expression.Power(X(record), b) * Expression.Ln(X(record)))));
        return (logs / sum) - (1 / b) - Expression.Quantity("m", meanLog, Measure.Number);
    }

    public Expression MeanLogFormula() =>
        Expression.Sum(records.Where(record => record.Failed).Select(record => Times(record, Expression.Ln(X(record))))) / Expression.Quantity("r", Failures, Measure.Number);

    public Expression ScaleFormula(Expression b) =>
        Expression.Quantity("t_max", Largest, Measure.Years)
        * Expression.Power(Expression.Sum(records.Select(record => Times(record, Expression.Power(X(record), b)))) / Expression.Quantity("r", Failures, Measure.Number), 1 / b);

    public Expression CurvatureFormula(Expression b, Expression eta, int power) =>
        Expression.Sum(records.Select(record => Times(record, Expression.Power(T(record) / eta, b) * Expression.Power(Expression.Ln(T(record) / eta), power))));

    public Expression LogLikelihoodFormula(Expression b, Expression eta)
    {
        Expression r = Expression.Quantity("r", Failures, Measure.Number);
        Expression logs = r * (Expression.Quantity("m", meanLog, Measure.Number) + Expression.Ln(Expression.Quantity("t_max", Largest, Measure.Years)));
        return (r * Expression.Ln(b)) - (r * b * Expression.Ln(eta)) + ((b - 1) * logs) - Expression.Sum(records.Select(record => Times(record, Expression.Power(T(record) / eta, b))));
    }

    private static Expression T(LifeRecord record) => Expression.Quantity("t", record.AgeYears, Measure.Years);

    private static Expression Times(LifeRecord record, Expression term) => record.Count == 1 ? term : Expression.Quantity("n", record.Count, Measure.Number) * term;

    private Expression X(LifeRecord record) => Expression.Quantity("x", record.AgeYears / Largest, Measure.Number);
}
