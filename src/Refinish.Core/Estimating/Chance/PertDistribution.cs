using System;
using Refinish.Numerics;

namespace Refinish.Estimating;

/// <summary>
/// The beta distribution between a least and a greatest value whose mean is (a + 4m + b)/6: shapes α = 1 + 4(m − a)/(b − a) and β = 6 − α.
/// </summary>
/// <remarks>
/// Its variance is (µ − a)(b − µ)/7, not the classic PERT rule of thumb ((b − a)/6)², which is smaller unless the triple is very lopsided.
/// Moments of the beta distribution: from memory of any textbook, and held against its density by a test.
/// </remarks>
/// <example><code>
/// PertDistribution hours = new(2, 4, 9);
/// double spread = hours.StandardDeviation;   // 1.268; the classic rule says 1.167
/// </code></example>
public sealed record PertDistribution : Distribution
{
    /// <summary>Makes the distribution.</summary>
    /// <param name="minimum">Least value a, −10¹⁵ to 10¹⁵.</param>
    /// <param name="mode">Most likely value m, from <paramref name="minimum"/> upwards.</param>
    /// <param name="maximum">Greatest value b, from <paramref name="mode"/> upwards and more than <paramref name="minimum"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public PertDistribution(double minimum, double mode, double maximum)
    {
        Points = new ThreePoint(minimum, mode, maximum);
        Guard.Rule(maximum > minimum, nameof(maximum), maximum, Measure.Number, "more than minimum, ", minimum);
    }

    /// <summary>Least, most likely and greatest value.</summary>
    public ThreePoint Points { get; }

    /// <summary>First shape of the beta distribution, 1 to 5.</summary>
    public double Alpha => 1 + (4 * (Points.Mode - Points.Minimum) / (Points.Maximum - Points.Minimum));

    /// <summary>Second shape of the beta distribution, 1 to 5.</summary>
    public double Beta => 1 + (4 * (Points.Maximum - Points.Mode) / (Points.Maximum - Points.Minimum));

    /// <inheritdoc/>
    public override double Mean => Points.Mean;

    /// <inheritdoc/>
    public override double StandardDeviation => Math.Sqrt(Points.BetaPertVariance);

    /// <inheritdoc/>
    public override Workings Workings()
    {
        Expression a = Expression.Quantity("a", Points.Minimum, Measure.Number);
        Expression m = Expression.Quantity("m", Points.Mode, Measure.Number);
        Expression b = Expression.Quantity("b", Points.Maximum, Measure.Number);
        Source source = Source.Derived("moments of the beta distribution");
        WorkingStep mean = new("mean", "µ", (a + (4 * m) + b) / 6, Mean, Measure.Number, source);
        return new Workings(
            Text(),
            [
                mean,
                new("standard deviation", "σ", Expression.Sqrt((mean.Result() - a) * (b - mean.Result()) / 7), StandardDeviation, Measure.Number, source),
                new("first shape", "α", 1 + (4 * (m - a) / (b - a)), Alpha, Measure.Number, source),
                new("second shape", "β", 1 + (4 * (b - m) / (b - a)), Beta, Measure.Number, source),
            ]);
    }

    internal override double At(double u) => Points.Minimum + ((Points.Maximum - Points.Minimum) * ShareAt(u, 0.5));

    internal override ScoreTable Table() => ScoreTable.Of(this);

    internal override double CumulatedAt(double value) =>
        value <= Points.Minimum ? 0 : value >= Points.Maximum ? 1 : Special.Beta(Alpha, Beta, (value - Points.Minimum) / (Points.Maximum - Points.Minimum));

    /// <summary>Where between the ends chance u lies.</summary>
    internal double ShareAt(double u, double start)
    {
        double alpha = Alpha;
        double beta = Beta;
        double norm = Math.Exp(Special.LogGamma(alpha + beta) - Special.LogGamma(alpha) - Special.LogGamma(beta));
        return Newton.Rising(new Below(alpha, beta, norm, u), 0, 1, start, 1e-15, 1e-14);
    }

    private protected override string Text() => "PERT " + Points;

    // The chance of less than x, less u; its slope is the density.
    private readonly struct Below(double alpha, double beta, double norm, double u) : ISlopedFunction
    {
        public double At(double x, out double slope)
        {
            slope = norm * Math.Pow(x, alpha - 1) * Math.Pow(1 - x, beta - 1);
            return Special.Beta(alpha, beta, x) - u;
        }
    }
}
