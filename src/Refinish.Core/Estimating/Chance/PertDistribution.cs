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
    private static readonly Source Moments = Source.Derived("moments of the beta distribution");

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
    public double Alpha => First().Value;

    /// <summary>Second shape of the beta distribution, 1 to 5.</summary>
    public double Beta => Second().Value;

    /// <inheritdoc/>
    public override double Mean => Points.Mean;

    /// <inheritdoc/>
    public override double StandardDeviation => Math.Sqrt(Points.BetaPertVariance);

    /// <inheritdoc/>
    public override Workings Workings() => Trace.Of(
        Text(), t => Centre(t, Moments, Points.Centre(t)), t => Spread(t, Moments, Num.Sqrt(Points.BetaSquare(t))), First, Second);

    internal override double At(double u) => Points.Minimum + ((Points.Maximum - Points.Minimum) * ShareAt(u, 0.5));

    internal override ScoreTable Table() => ScoreTable.Of(this);

    internal override double CumulatedAt(double value) =>
        value <= Points.Minimum
            ? 0 : value >= Points.Maximum ? 1 : Special.Beta(Alpha, Beta, (value - Points.Minimum) / (Points.Maximum - Points.Minimum));

    /// <summary>Where between the ends chance u lies.</summary>
    internal double ShareAt(double u, double start)
    {
        double alpha = Alpha;
        double beta = Beta;
        double norm = Math.Exp(Special.LogGamma(alpha + beta) - Special.LogGamma(alpha) - Special.LogGamma(beta));
        return Newton.Rising(new Below(alpha, beta, norm, u), 0, 1, start, 1e-15, 1e-14);
    }

    private Num First(Trace? t = null) => t.Step("first shape", "α", Measure.Number, Moments, Shape(Points.M(t) - Points.A(t), t));

    private Num Second(Trace? t = null) => t.Step("second shape", "β", Measure.Number, Moments, Shape(Points.B(t) - Points.M(t), t));

    private Num Shape(Num leg, Trace? t) => 1 + (4 * leg / (Points.B(t) - Points.A(t)));

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
