using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A Weibull lifetime fitted by maximum likelihood to a shop's own records, failed jobs and jobs still good alike.</summary>
/// <remarks>
/// The shape solves Σ t^b ln t / Σ t^b − 1/b = mean ln t of the failures, sums over all jobs; η = (Σ t^b / r)^(1/b). Intervals are from
/// the observed Fisher information on the logarithms, or, for the shape, from the likelihood ratio, which leans less on large numbers.
/// Maximum likelihood puts the shape too high when failures are few. Jobs that were never heard of again count as good only up to the
/// day of the last contact. Formulas: from memory of any reliability textbook; held to published examples by tests.
/// </remarks>
/// <example><code>
/// WeibullFit fit = new([new LifeRecord(1.2, true), new LifeRecord(3.4, true), new LifeRecord(4.8, true), new LifeRecord(5, false, 120)]);
/// WeibullLife? life = fit.Life;
/// </code></example>
public sealed record WeibullFit
{
    private static readonly Source Inverse = Source.Derived("inverse of the observed information in ln b and ln η");
    private static readonly Source TwoParameters = Source.FromMemory("Akaike 1974, two parameters");

    private readonly WeibullLikelihood? likelihood;
    private readonly double shapeVariance;
    private readonly double scaleVariance;
    private readonly double covariance;

    /// <summary>Fits a lifetime.</summary>
    /// <param name="records">The records, at least one.</param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    public WeibullFit(IReadOnlyList<LifeRecord> records)
    {
        Records = Guard.List(records, 1);
        WeibullLikelihood found = new(Records);
        WhyNone = Reason(found);
        if (WhyNone is not null)
        {
            return;
        }

        likelihood = found;
        double shape = ShapeOf(found);
        Life = new WeibullLife(shape, found.Scale(shape).Value);
        LogLikelihood = Log().Value;
        shapeVariance = ShapeVariance().Value;
        scaleVariance = ScaleVariance().Value;
        covariance = (Num.Square(Shape()) * First() / Determinant()).Value;
    }

    /// <summary>The records.</summary>
    public IReadOnlyList<LifeRecord> Records { get; }

    /// <summary>Jobs that failed.</summary>
    public int Failures => Records.Where(record => record.Failed).Sum(record => record.Count);

    /// <summary>Jobs still good when last heard of.</summary>
    public int Survivors => Records.Where(record => !record.Failed).Sum(record => record.Count);

    /// <summary>The likeliest lifetime; <see langword="null"/> when the records do not give one, see <see cref="WhyNone"/>.</summary>
    public WeibullLife? Life { get; }

    /// <summary>Why there is no lifetime; <see langword="null"/> when there is one.</summary>
    public string? WhyNone { get; }

    /// <summary>Natural logarithm of the likelihood at the fit; <see langword="null"/> without one.</summary>
    public double? LogLikelihood { get; }

    /// <summary>Akaike's criterion, 2 · 2 − 2 ln L; <see langword="null"/> without a fit.</summary>
    public double? Akaike => LogLikelihood is double log ? Criterion(log).Value : null;

    /// <summary>Standard error of ln b; <see langword="null"/> without a fit.</summary>
    public double? LogShapeError => Life is null ? null : Math.Sqrt(shapeVariance);

    /// <summary>Standard error of ln η; <see langword="null"/> without a fit.</summary>
    public double? LogScaleError => Life is null ? null : Math.Sqrt(scaleVariance);

    /// <summary>Two-sided interval of the shape from the Fisher information.</summary>
    /// <param name="confidence">Confidence, more than 0 and less than 100 %.</param>
    /// <returns>b e^(∓z s); <see langword="null"/> without a fit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public ConfidenceInterval? ShapeInterval(Ratio confidence) => Around(Life?.Shape, shapeVariance, Score(confidence));

    /// <summary>Two-sided interval of the scale in years from the Fisher information.</summary>
    /// <param name="confidence">Confidence, more than 0 and less than 100 %.</param>
    /// <returns>η e^(∓z s); <see langword="null"/> without a fit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public ConfidenceInterval? ScaleInterval(Ratio confidence) => Around(Life?.ScaleYears, scaleVariance, Score(confidence));

    /// <summary>
    /// Two-sided interval of the shape from the likelihood ratio: all shapes whose best ln L is at most z²/2 below the greatest.
    /// </summary>
    /// <param name="confidence">Confidence, more than 0 and less than 100 %.</param>
    /// <returns>The interval; <see langword="null"/> without a fit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside its range.</exception>
    public ConfidenceInterval? ShapeIntervalByLikelihood(Ratio confidence)
    {
        double z = Score(confidence);
        if (Life is null)
        {
            return null;
        }

        double least = LogLikelihood!.Value - (z * z / 2);
        double Profile(double b) => likelihood!.LogLikelihood(b, likelihood.Scale(b)).Value - least;
        return new ConfidenceInterval(
            Root(Profile, WeibullLikelihood.LeastShape, Life.Shape),
            Root(b => -Profile(b), Life.Shape, WeibullLikelihood.GreatestShape));
    }

    /// <summary>Two-sided interval of the share that has failed by an age, from the Fisher information on ln(−ln(1 − F)).</summary>
    /// <param name="years">Age, more than 0 and at most 10⁶ years.</param>
    /// <param name="confidence">Confidence, more than 0 and less than 100 %.</param>
    /// <returns>Shares between 0 and 1; <see langword="null"/> without a fit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ConfidenceInterval? FailedInterval(double years, Ratio confidence)
    {
        Guard.Within(years, Bounds.Positive(Measure.Years, 1e6));
        double z = Score(confidence);
        if (Life is null)
        {
            return null;
        }

        double w = Life.Shape * Math.Log(years / Life.ScaleYears);
        double b = Life.Shape;
        double error = Math.Sqrt((w * w * shapeVariance) + (b * b * scaleVariance) - (2 * w * b * covariance));
        return new ConfidenceInterval(1 - Math.Exp(-Math.Exp(w - (z * error))), 1 - Math.Exp(-Math.Exp(w + (z * error))));
    }

    /// <summary>How shape, scale, likelihood and errors follow.</summary>
    /// <returns>The derivation; without steps when there is no fit.</returns>
    public Workings Workings() => Life is null
        ? new Workings("No lifetime: " + WhyNone, [])
        : Trace.Of(
            "Weibull fit",
            likelihood!.MeanOfLogs,
            Shape,
            Scale,
            Log,
            t => t.Step("Akaike's criterion", "AIC", Measure.Number, TwoParameters, Criterion(Log(t))),
            First,
            Second,
            t => t.Step("standard error of ln b", "s_b", Measure.Number, Inverse, Num.Sqrt(ShapeVariance(t))),
            t => t.Step("standard error of ln η", "s_η", Measure.Number, Inverse, Num.Sqrt(ScaleVariance(t))));

    /// <summary>The lifetime and on how many failures it rests, or why there is none.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Life is null
            ? "no lifetime: " + WhyNone
            : Life + ", from " + Figures.Fixed(Failures, 0) + " failures and " + Figures.Fixed(Survivors, 0) + " jobs still good";

    /// <summary>Whether the records are the same, in the same order; everything else follows from them.</summary>
    /// <param name="other">The fit to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(WeibullFit? other) => other is not null && Records.Equals(other.Records);

    /// <inheritdoc/>
    public override int GetHashCode() => Records.GetHashCode();

    private static string? Reason(WeibullLikelihood found) => found.Failures < 2
        ? "fewer than two failures are on record"
        : found.MeanLog == 0
        ? "every failure is at the greatest age on record, so that no shape is likeliest"
        : found.Score(0.3).Value > 0 || found.Score(20).Value < 0
        ? "the likeliest shape is outside 0.3 to 20; check the ages"
        : found.Scale(ShapeOf(found)).Value > 1e6 ? "the likeliest scale is more than 10⁶ years; check the ages" : null;

    private static double ShapeOf(WeibullLikelihood found) =>
        Root(b => found.Score(b).Value, WeibullLikelihood.LeastShape, WeibullLikelihood.GreatestShape);

    // An end that the function does not pass zero before is the answer.
    private static double Root(Func<double, double> rising, double low, double high) => rising(low) >= 0 ? low
        : rising(high) <= 0 ? high
        : Roots.Rising(rising, static (function, x) => function(x), low, high);

    private static Num Criterion(Num log) => 4 - (2 * log);

    private Num Shape(Trace? t = null) => t.Step("shape", "b", Measure.Number, WeibullLikelihood.Source,
        Num.Solution(Life!.Shape, "b", b => likelihood!.Score(b, t), t.Number(0)));

    private Num Scale(Trace? t = null) => t.Step("scale", "η", Measure.Years, WeibullLikelihood.Source, likelihood!.Scale(Shape(t), t));

    private Num Log(Trace? t = null) =>
        t.Step("logarithm of the likelihood", "ln L", Measure.Number, WeibullLikelihood.Source,
            likelihood!.LogLikelihood(Shape(t), Scale(t), t));

    private Num First(Trace? t = null) =>
        t.Step("first sum", "S_1", Measure.Number, WeibullLikelihood.Source, likelihood!.Curvature(Shape(t), Scale(t), 1, t));

    private Num Second(Trace? t = null) =>
        t.Step("second sum", "S_2", Measure.Number, WeibullLikelihood.Source, likelihood!.Curvature(Shape(t), Scale(t), 2, t));

    // Observed information in (ln b, ln η), r + b² S₂ and b² r beside −b² S₁, and its inverse.
    private Num ShapeVariance(Trace? t = null) => Num.Square(Shape(t)) * likelihood!.R(t) / Determinant(t);

    private Num ScaleVariance(Trace? t = null) => OfShape(t) / Determinant(t);

    private Num OfShape(Trace? t) => likelihood!.R(t) + (Num.Square(Shape(t)) * Second(t));

    private Num Determinant(Trace? t = null) =>
        (OfShape(t) * (Num.Square(Shape(t)) * likelihood!.R(t))) - Num.Square(Num.Square(Shape(t)) * First(t));

    private static double Score(Ratio confidence) => Distribution.ScoreOf((1 + Distribution.Chance(confidence, nameof(confidence))) / 2);

    private static ConfidenceInterval? Around(double? value, double variance, double z) =>
        value is double centre ? new ConfidenceInterval(centre * Math.Exp(-z * Math.Sqrt(variance)), centre * Math.Exp(z * Math.Sqrt(variance))) : null;
}
