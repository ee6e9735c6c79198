using System;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// An uncertain number as a value. The kinds are the sealed records of this namespace; a number that is known is an
/// <see cref="ExactValue"/>.
/// </summary>
/// <remarks>
/// The number has no unit of its own: hours, money or a factor, as whoever uses it says. Shapes are chosen by the caller; none of them is
/// a law of the trade.
/// </remarks>
/// <example><code>
/// Distribution hours = new TriangularDistribution(2, 4, 9);
/// double late = hours.Quantile(Ratio.FromPercent(90));   // 7.129 h
/// </code></example>
public abstract record Distribution
{
    internal static readonly Bounds Any = Bounds.Between(-1e15, 1e15, Measure.Number);

    // Closed on purpose: every sampler knows every kind.
    private protected Distribution()
    {
    }

    /// <summary>The mean.</summary>
    public abstract double Mean { get; }

    /// <summary>The standard deviation.</summary>
    public abstract double StandardDeviation { get; }

    /// <summary>The value that is not exceeded with a given chance.</summary>
    /// <param name="chance">The chance, more than 0 and less than 100 %.</param>
    /// <returns>The quantile.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="chance"/> is outside its range.</exception>
    public double Quantile(Ratio chance) => At(Chance(chance, nameof(chance)));

    /// <summary>The chance that the number is at most a given value.</summary>
    /// <param name="value">The value, −10¹⁵ to 10¹⁵.</param>
    /// <returns>The cumulated chance.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is outside its range.</exception>
    public Ratio ChanceAtMost(double value) =>
        Ratio.FromDecimalFractions(CumulatedAt(Guard.Within(value, Any, nameof(value), nameof(value))));

    /// <summary>How mean and standard deviation follow.</summary>
    /// <returns>The derivation.</returns>
    public abstract Workings Workings();

    /// <summary>The kind with its numbers.</summary>
    /// <returns>One line of text.</returns>
    public sealed override string ToString() => Text();

    /// <summary>The score of the standard normal distribution that is not exceeded with chance u.</summary>
    internal static double ScoreOf(double u) => NormalScore.Of(u);

    /// <summary>The chance of at most z under the standard normal distribution.</summary>
    internal static double ChanceOf(double z) => NormalScore.ChanceOf(z);

    internal static double Chance(Ratio chance, string name)
    {
        double p = Guard.Within(chance, Bounds.Below(0, 1, Measure.Percent), name);
        Guard.Rule(p > 0, name, p, Measure.Percent, "more than 0 % and less than 100 %");
        return p;
    }

    /// <summary>The value at chance u, 0 &lt; u &lt; 1.</summary>
    internal virtual double At(double u) => AtScore(ScoreOf(u));

    /// <summary>The value at the score z of a standard normal number, by which correlated inputs are joined.</summary>
    internal virtual double AtScore(double z) => At(ChanceOf(z));

    /// <summary>The same distribution prepared for many draws.</summary>
    internal virtual ScoreTable? Table() => null;

    internal abstract double CumulatedAt(double value);

    private protected abstract string Text();

    /// <summary>Notes the mean.</summary>
    private protected static Num Centre(Trace? t, Source source, Num formula) => t.Step("mean", "µ", Measure.Number, source, formula);

    /// <summary>Notes the standard deviation.</summary>
    private protected static Num Spread(Trace? t, Source source, Num formula) =>
        t.Step("standard deviation", "σ", Measure.Number, source, formula);
}
