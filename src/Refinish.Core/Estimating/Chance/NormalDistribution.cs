using System;

namespace Refinish.Estimating;

/// <summary>
/// The bell curve, for what is a sum of many small things. It has no lower end: for hours and money a
/// <see cref="LognormalDistribution"/> is often better.
/// </summary>
/// <example><code>
/// double late = new NormalDistribution(10, 2).Quantile(Ratio.FromPercent(90));   // 12.563
/// </code></example>
public sealed record NormalDistribution : Distribution
{
    private static readonly Source Given = Source.Supplied("mean and standard deviation");

    /// <summary>Makes the distribution.</summary>
    /// <param name="mean">Mean, −10¹² to 10¹².</param>
    /// <param name="standardDeviation">Standard deviation, more than 0 and at most 10¹².</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public NormalDistribution(double mean, double standardDeviation)
    {
        Mean = Guard.Within(mean, Bounds.Between(-1e12, 1e12, Measure.Number));
        StandardDeviation = Guard.Within(standardDeviation, Bounds.Positive(Measure.Number, 1e12));
    }

    /// <inheritdoc/>
    public override double Mean { get; }

    /// <inheritdoc/>
    public override double StandardDeviation { get; }

    /// <inheritdoc/>
    public override Workings Workings() => Trace.Of(
        Text(),
        t => Centre(t, Given, t.Given("µ", Mean, Measure.Number)),
        t => Spread(t, Given, t.Given("σ", StandardDeviation, Measure.Number)));

    internal override double AtScore(double z) => Mean + (StandardDeviation * z);

    internal override double CumulatedAt(double value) => ChanceOf((value - Mean) / StandardDeviation);

    private protected override string Text() => "normal, mean " + Figures.Significant(Mean) + ", standard deviation " + Figures.Significant(StandardDeviation);
}
