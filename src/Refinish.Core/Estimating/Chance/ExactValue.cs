namespace Refinish.Estimating;

/// <summary>A number that is known: a distribution without spread.</summary>
/// <example><code>
/// Distribution rate = new ExactValue(36.6);
/// </code></example>
public sealed record ExactValue : Distribution
{
    private static readonly Source Known = Source.Derived("a number that is known");

    /// <summary>Makes the value.</summary>
    /// <param name="value">The number, −10¹⁵ to 10¹⁵.</param>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="value"/> is outside its range.</exception>
    public ExactValue(double value) => Value = Guard.Within(value, Any, nameof(value), nameof(value));

    /// <summary>The number.</summary>
    public double Value { get; }

    /// <inheritdoc/>
    public override double Mean => Value;

    /// <inheritdoc/>
    public override double StandardDeviation => 0;

    /// <inheritdoc/>
    public override Workings Workings() => Trace.Of(
        Text(), t => Centre(t, Known, t.Given("x", Value, Measure.Number)), t => Spread(t, Known, StandardDeviation));

    internal override double At(double u) => Value;

    internal override double AtScore(double z) => Value;

    internal override double CumulatedAt(double value) => value >= Value ? 1 : 0;

    private protected override string Text() => "exactly " + Figures.Significant(Value);
}
