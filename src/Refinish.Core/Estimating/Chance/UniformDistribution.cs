using System;

namespace Refinish.Estimating;

/// <summary>Every value between two ends is equally likely: mean (a + b)/2, standard deviation (b − a)/√12.</summary>
/// <example><code>
/// double mean = new UniformDistribution(2, 6).Mean;   // 4
/// </code></example>
public sealed record UniformDistribution : Distribution
{
    private static readonly Source Moments = Source.Derived("moments of the uniform distribution");

    /// <summary>Makes the distribution.</summary>
    /// <param name="minimum">Lower end a, −10¹⁵ to 10¹⁵.</param>
    /// <param name="maximum">Upper end b, more than <paramref name="minimum"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public UniformDistribution(double minimum, double maximum)
    {
        Minimum = Guard.Within(minimum, Any);
        Maximum = Guard.Within(maximum, Any);
        Guard.Rule(maximum > minimum, nameof(maximum), maximum, Measure.Number, "more than minimum, ", minimum);
    }

    /// <summary>Lower end a.</summary>
    public double Minimum { get; }

    /// <summary>Upper end b.</summary>
    public double Maximum { get; }

    /// <inheritdoc/>
    public override double Mean => Middle().Value;

    /// <inheritdoc/>
    public override double StandardDeviation => Deviation().Value;

    /// <inheritdoc/>
    public override Workings Workings() => Trace.Of(Text(), Middle, Deviation);

    internal override double At(double u) => Minimum + (u * (Maximum - Minimum));

    internal override double CumulatedAt(double value) => Math.Min(1, Math.Max(0, (value - Minimum) / (Maximum - Minimum)));

    private Num Middle(Trace? t = null) => Centre(t, Moments, (A(t) + B(t)) / 2);

    private Num Deviation(Trace? t = null) => Spread(t, Moments, (B(t) - A(t)) / Num.Sqrt(t.Number(12)));

    private Num A(Trace? t) => t.Given("a", Minimum, Measure.Number);

    private Num B(Trace? t) => t.Given("b", Maximum, Measure.Number);

    private protected override string Text() => "uniform from " + Figures.Significant(Minimum) + " to " + Figures.Significant(Maximum);
}
