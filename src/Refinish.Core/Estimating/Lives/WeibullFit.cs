using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A Weibull lifetime fitted by maximum likelihood to a shop's own records, failed jobs and jobs still good alike.</summary>
/// <remarks>
/// The shape solves Σ t^b ln t / Σ t^b − 1/b = mean ln t of the failures, sums over all jobs; η = (Σ t^b / r)^(1/b). Intervals are from the observed
/// Fisher information on the logarithms, or, for the shape, from the likelihood ratio, which leans less on large numbers. Maximum likelihood puts the
/// shape too high when failures are few. Jobs that were never heard of again count as good only up to the day of the last contact.
/// Formulas: from memory of any reliability textbook; held to published examples by tests.
/// </remarks>
/// <example><code>
/// WeibullFit fit = new([new LifeRecord(1.2, true), new LifeRecord(3.4, true), new LifeRecord(4.8, true), new LifeRecord(5, false, 120)]);
/// WeibullLife? life = fit.Life;
/// </code></example>
public sealed record WeibullFit
{
    private readonly WeibullLikelihood? likelihood;
    private readonly double shapeVariance;
    private readonly double scaleVariance;
    private readonly double covariance;

    /// <summary>Fits a lifetime.</summary>
    /// <param name="records">The records, at least one.</param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    public WeibullFit(IReadOnlyList<LifeRecord> records)
    {
        Records = Guard.List(records, nameof(records), 1);
        WeibullLikelihood found = new(Records);
        WhyNone = Reason(found);
        if (WhyNone is not null)
        {
            return;
        }

        likelihood = found;
        Life = new WeibullLife(Shape(found), found.Scale(Shape(found)));
        LogLikelihood = found.LogLikelihood(Life.Shape, Life.ScaleYears);
        (double first, double second) = found.Curvature(Life.Shape, Life.ScaleYears);

        // Observed information in (ln b, ln η); its inverse.
        double aa = found.Failures + (Life.Shape * Life.Shape * second);
        double ab = -Life.Shape * Life.Shape * first;
        double bb = Life.Shape * Life.Shape * found.Failures;
        double determinant = (aa * bb) - (ab * ab);
        shapeVariance = bb / determinant;
        scaleVariance = aa / determinant;
        covariance = -ab / determinant;
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
    public double? Akaike => 4 - (2 * LogLikelihood);

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

    /// <summary>Two-sided interval of the shape from the likelihood ratio: all shapes whose best ln L is at most z²/2 below the greatest.</summary>
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

        WeibullLikelihood of = likelihood!;
        double least = LogLikelihood!.Value - (z * z / 2);
        return new ConfidenceInterval(
            Roots.Rising((of, least), static (given, b) => given.of.Profile(b) - given.least, WeibullLikelihood.LeastShape, Life.Shape),
            Roots.Rising((of, least), static (given, b) => given.least - given.of.Profile(b), Life.Shape, WeibullLikelihood.GreatestShape));
    }

    /// <summary>Two-sided interval of the share that has failed by an age, from the Fisher information on ln(−ln(1 − F)).</summary>
    /// <param name="years">Age, more than 0 and at most 10⁶ years.</param>
    /// <param name="confidence">Confidence, more than 0 and less than 100 %.</param>
    /// <returns>Shares between 0 and 1; <see langword="null"/> without a fit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ConfidenceInterval? FailedInterval(double years, Ratio confidence)
    {
        Guard.Within(years, Bounds.Positive(Measure.Years, 1e6), nameof(years));
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
    public Workings Workings()
    {
        if (Life is null)
        {
            return new Workings("No lifetime: " + WhyNone, []);
        }

        Source source = Source.FromMemory("maximum likelihood for censored Weibull lives");
        Source inverse = Source.Derived("inverse of the observed information in ln b and ln η");
        (double first, double second) = likelihood!.Curvature(Life.Shape, Life.ScaleYears);
        WorkingStep mean = new("mean logarithm of the failures, x = t / t_max", "m", likelihood.MeanLogFormula(), likelihood.MeanLog, Measure.Number, source);
        Expression solution = Expression.Solution("b", WeibullLikelihood.LeastShape, WeibullLikelihood.GreatestShape, likelihood.ScoreFormula, 0);
        WorkingStep shape = new("shape", "b", solution, Life.Shape, Measure.Number, source);
        WorkingStep scale = new("scale", "η", likelihood.ScaleFormula(shape.Result()), Life.ScaleYears, Measure.Years, source);
        Expression b = shape.Result();
        Expression r = Expression.Quantity("r", likelihood.Failures, Measure.Number);
        WorkingStep log = new("logarithm of the likelihood", "ln L", likelihood.LogLikelihoodFormula(b, scale.Result()), LogLikelihood!.Value, Measure.Number, source);
        WorkingStep s1 = new("first sum", "S_1", likelihood.CurvatureFormula(b, scale.Result(), 1), first, Measure.Number, source);
        WorkingStep s2 = new("second sum", "S_2", likelihood.CurvatureFormula(b, scale.Result(), 2), second, Measure.Number, source);
        Expression aa = r + (Expression.Square(b) * s2.Result());
        Expression bb = Expression.Square(b) * r;
        Expression determinant = (aa * bb) - Expression.Square(Expression.Square(b) * s1.Result());
        return new Workings(
            "Weibull fit",
            [
                mean,
                shape,
                scale,
                log,
                new("Akaike's criterion", "AIC", 4 - (2 * log.Result()), Akaike!.Value, Measure.Number, Source.FromMemory("Akaike 1974, two parameters")),
                s1,
                s2,
                new("standard error of ln b", "s_b", Expression.Sqrt(bb / determinant), LogShapeError!.Value, Measure.Number, inverse),
                new("standard error of ln η", "s_η", Expression.Sqrt(aa / determinant), LogScaleError!.Value, Measure.Number, inverse),
            ]);
    }

    /// <summary>The lifetime and on how many failures it rests, or why there is none.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Life is null ? "no lifetime: " + WhyNone : Life + ", from " + Figures.Fixed(Failures, 0) + " failures and " + Figures.Fixed(Survivors, 0) + " jobs still good";

    /// <summary>Whether the records are the same, in the same order; everything else follows from them.</summary>
    /// <param name="other">The fit to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(WeibullFit? other) => other is not null && Records.Equals(other.Records);

    /// <inheritdoc/>
    public override int GetHashCode() => Records.GetHashCode();

    private static string? Reason(WeibullLikelihood found)
    {
        if (found.Failures < 2)
        {
            return "fewer than two failures are on record";
        }

        if (found.MeanLog == 0)
        {
            return "every failure is at the greatest age on record, so that no shape is likeliest";
        }

        if (found.Score(0.3) > 0 || found.Score(20) < 0)
        {
            return "the likeliest shape is outside 0.3 to 20; check the ages";
        }

        return found.Scale(Shape(found)) > 1e6 ? "the likeliest scale is more than 10⁶ years; check the ages" : null;
    }

    private static double Shape(WeibullLikelihood found) =>
        Roots.Rising(found, static (likelihood, b) => likelihood.Score(b), WeibullLikelihood.LeastShape, WeibullLikelihood.GreatestShape);

    private static double Score(Ratio confidence) => Distribution.ScoreOf((1 + Distribution.Chance(confidence, nameof(confidence))) / 2);

    private static ConfidenceInterval? Around(double? value, double variance, double z) =>
        value is double centre ? new ConfidenceInterval(centre * Math.Exp(-z * Math.Sqrt(variance)), centre * Math.Exp(z * Math.Sqrt(variance))) : null;
}
