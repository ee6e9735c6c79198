using System;

namespace Refinish.Estimating;

/// <summary>
/// A number whose logarithm is normal: never negative, with a long upper tail, as hours and costs that are products of many factors.
/// </summary>
/// <remarks>
/// Quantiles exp(µ + z σ), median e^µ, mean exp(µ + σ²/2), variance (e^(σ²) − 1) e^(2µ + σ²). A product of independent lognormals is
/// lognormal: µ and σ² add up. From memory of any textbook; held against published and outside figures by tests.
/// </remarks>
/// <example><code>
/// LognormalDistribution hours = new(Math.Log(100), 0.3);
/// double late = hours.Quantile(Ratio.FromPercent(90));   // 146.88
/// </code></example>
public sealed record LognormalDistribution : Distribution
{
    private static readonly Source Moments = Source.Derived("moments of the lognormal distribution");

    /// <summary>Makes the distribution from the moments of the logarithm.</summary>
    /// <param name="logMean">Mean µ of the natural logarithm, −25 to 25.</param>
    /// <param name="logDeviation">Standard deviation σ of the natural logarithm, more than 0 and at most 3.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LognormalDistribution(double logMean, double logDeviation)
    {
        LogMean = Guard.Within(logMean, Bounds.Between(-25, 25, Measure.Number));
        LogDeviation = Guard.Within(logDeviation, Bounds.Positive(Measure.Number, 3));
    }

    /// <summary>Mean µ of the natural logarithm.</summary>
    public double LogMean { get; }

    /// <summary>Standard deviation σ of the natural logarithm.</summary>
    public double LogDeviation { get; }

    /// <summary>The value that is exceeded as often as not.</summary>
    public double Median => Middle().Value;

    /// <inheritdoc/>
    public override double Mean => Average().Value;

    /// <inheritdoc/>
    public override double StandardDeviation => Deviation().Value;

    /// <summary>The lognormal distribution with a given mean and standard deviation.</summary>
    /// <param name="mean">Mean, more than 10⁻¹⁰ and at most 10¹⁰.</param>
    /// <param name="standardDeviation">Standard deviation, more than 0 and at most 10 times the mean.</param>
    /// <returns>The distribution with σ² = ln(1 + (s/mean)²) and µ = ln mean − σ²/2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static LognormalDistribution FromMeanAndDeviation(double mean, double standardDeviation)
    {
        Guard.Within(mean, Bounds.Between(1e-10, 1e10, Measure.Number));
        Guard.Within(standardDeviation, Bounds.Positive(Measure.Number, 10 * mean));
        double variance = Math.Log(1 + (standardDeviation / mean * (standardDeviation / mean)));
        return new LognormalDistribution(Math.Log(mean) - (variance / 2), Math.Sqrt(variance));
    }

    /// <summary>
    /// The lognormal distribution through two quantiles, as people can state them: one chance in ten below, one in ten above.
    /// </summary>
    /// <param name="p10">Value not exceeded with a chance of 10 %, more than 10⁻¹⁰.</param>
    /// <param name="p90">Value not exceeded with a chance of 90 %, more than <paramref name="p10"/> and at most 10¹⁰.</param>
    /// <returns>The distribution.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static LognormalDistribution FromP10AndP90(double p10, double p90)
    {
        Guard.Within(p10, Bounds.Between(1e-10, 1e10, Measure.Number));
        Guard.Within(p90, Bounds.Above(p10, 1e10, Measure.Number));
        return new LognormalDistribution((Math.Log(p10) + Math.Log(p90)) / 2, (Math.Log(p90) - Math.Log(p10)) / (2 * ScoreOf(0.9)));
    }

    /// <summary>The product of two independent lognormal numbers, which is lognormal again.</summary>
    /// <param name="other">The other factor.</param>
    /// <returns>The distribution of the product.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="other"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The product is outside the range of this type.</exception>
    public LognormalDistribution Times(LognormalDistribution other)
    {
        Guard.NotNull(other);
        return new LognormalDistribution(
            LogMean + other.LogMean,
            Math.Sqrt((LogDeviation * LogDeviation) + (other.LogDeviation * other.LogDeviation)));
    }

    /// <inheritdoc/>
    public override Workings Workings() => Trace.Of(Text(), Middle, Average, Deviation);

    internal override double AtScore(double z) => Math.Exp(LogMean + (LogDeviation * z));

    internal override double CumulatedAt(double value) => value <= 0 ? 0 : ChanceOf((Math.Log(value) - LogMean) / LogDeviation);

    private Num Middle(Trace? t = null) => t.Step("median", "x_50", Measure.Number, Moments, Num.Exp(Mu(t)));

    private Num Average(Trace? t = null) => Centre(t, Moments, Num.Exp(Mu(t) + (Num.Square(Sigma(t)) / 2)));

    private Num Deviation(Trace? t = null) => Spread(t, Moments, Average(t) * Num.Sqrt(Num.Exp(Num.Square(Sigma(t))) - 1));

    private Num Mu(Trace? t) => t.Given("µ_ln", LogMean, Measure.Number);

    private Num Sigma(Trace? t) => t.Given("σ_ln", LogDeviation, Measure.Number);

    private protected override string Text() => "lognormal, median " + Figures.Significant(Median) + ", log deviation " + Figures.Significant(LogDeviation);
}
