using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>How a simulation is run. The result depends on every property but <see cref="Threads"/>.</summary>
/// <example><code>
/// SimulationOptions careful = new() { Trials = 1_000_000, Seed = 7, Correlation = Ratio.FromPercent(50) };
/// </code></example>
public sealed record SimulationOptions
{
    private readonly double correlation;

    /// <summary>Number of trials, 100 to 10 000 000; 100 000 unless given. Each takes eight bytes for each result that is kept.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Trials { get; init => field = Guard.Count(value, 100, 10_000_000); } = 100_000;

    /// <summary>The seed, any number; 1 unless given. One seed always gives one result.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>How the trials are spread; a Latin hypercube unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public SamplingMethod Sampling { get; init => field = Guard.Defined(value); } = SamplingMethod.LatinHypercube;

    /// <summary>
    /// Correlation between the normal scores of every two inputs of one <see cref="UncertainInput.Group"/>, 0 to 100 %; none unless given.
    /// Independence makes the spread of a sum a lower bound: a crowded bathroom slows every task at once.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Correlation
    {
        get => Ratio.FromDecimalFractions(correlation);
        init => correlation = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>
    /// Threads to use at most, 1 to 256; 0, as many as the machine offers, unless given. It changes the time and nothing else.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Threads { get; init => field = Guard.Count(value, 0, 256); }

    internal double CorrelationFraction => correlation;

    /// <summary>Trials, sampling, seed and correlation.</summary>
    /// <returns>Text such as <c>100000 trials, LatinHypercube, seed 1, correlation 0 %</c>.</returns>
    public override string ToString() =>
        Figures.Fixed(Trials, 0) + " trials, " + Sampling.ToString("G") + ", seed " + Seed.ToString(CultureInfo.InvariantCulture)
        + ", correlation " + Measure.Percent.Format(correlation);
}
