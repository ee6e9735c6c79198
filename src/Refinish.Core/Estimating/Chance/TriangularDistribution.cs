using System;

namespace Refinish.Estimating;

/// <summary>A density that rises in a straight line to the most likely value and falls in a straight line from it.</summary>
/// <remarks>
/// Mean (a + m + b)/3, variance ((m − a)² + (m − a)(b − m) + (b − m)²)/18; below the mode F = (x − a)²/((b − a)(m − a)),
/// above it F = 1 − (b − x)²/((b − a)(b − m)).
/// </remarks>
/// <example><code>
/// double late = new TriangularDistribution(2, 4, 9).Quantile(Ratio.FromPercent(90));   // 7.129
/// </code></example>
public sealed record TriangularDistribution : Distribution
{
    /// <summary>Makes the distribution.</summary>
    /// <param name="minimum">Least value a, −10¹⁵ to 10¹⁵.</param>
    /// <param name="mode">Most likely value m, from <paramref name="minimum"/> upwards.</param>
    /// <param name="maximum">Greatest value b, from <paramref name="mode"/> upwards and more than <paramref name="minimum"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public TriangularDistribution(double minimum, double mode, double maximum)
    {
        Points = new ThreePoint(minimum, mode, maximum);
        Guard.Rule(maximum > minimum, nameof(maximum), maximum, Measure.Number, "more than minimum, ", minimum);
    }

    /// <summary>Least, most likely and greatest value.</summary>
    public ThreePoint Points { get; }

    /// <inheritdoc/>
    public override double Mean => Points.TriangularMean;

    /// <inheritdoc/>
    public override double StandardDeviation => Math.Sqrt(Points.TriangularVariance);

    /// <inheritdoc/>
    public override Workings Workings() => Trace.Of(
        Text(),
        t => Centre(t, ThreePoint.Triangle, Points.TriangularCentre(t)),
        t => Spread(t, ThreePoint.Triangle, Num.Sqrt(Points.TriangularSquare(t))));

    internal override double At(double u)
    {
        double range = Points.Maximum - Points.Minimum;
        double left = Points.Mode - Points.Minimum;
        double right = Points.Maximum - Points.Mode;
        return u * range < left ? Points.Minimum + Math.Sqrt(u * range * left) : Points.Maximum - Math.Sqrt((1 - u) * range * right);
    }

    internal override double CumulatedAt(double value)
    {
        double range = Points.Maximum - Points.Minimum;
        return value <= Points.Minimum ? 0
            : value >= Points.Maximum ? 1
            : value < Points.Mode ? (value - Points.Minimum) * (value - Points.Minimum) / (range * (Points.Mode - Points.Minimum))
            : 1 - ((Points.Maximum - value) * (Points.Maximum - value) / (range * (Points.Maximum - Points.Mode)));
    }

    private protected override string Text() => "triangular " + Points;
}
