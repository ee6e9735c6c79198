using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>What came out of a simulation: quantiles, mean, spread and the chance of anything above a value.</summary>
/// <remarks>
/// Quantiles are read from the sorted trials by straight lines between neighbours (Hyndman and Fan, The American Statistician 50, 1996,
/// type 7). These are estimates from a finite number of trials; the standard deviation over the root of their number says how close the
/// mean is when they are drawn at random.
/// </remarks>
public sealed class SimulationResult
{
    // Equal to none, so that a search ends where the first trial above a value stands.
    private static readonly Comparer<double> Above = Comparer<double>.Create(static (trial, value) => trial > value ? 1 : -1);

    private readonly double[] sorted;

    internal SimulationResult(double[] trials, SimulationOptions options)
    {
        Options = options;

        // In the order of the trials, before sorting, so that the sums are the same in every run.
        Mean = Sum(trials, 0, false) / trials.Length;
        StandardDeviation = Math.Sqrt(Math.Max(0, Sum(trials, Mean, true) / (trials.Length - 1)));
        sorted = trials;
        Array.Sort(sorted);
    }

    /// <summary>How it was run.</summary>
    public SimulationOptions Options { get; }

    /// <summary>The mean of the trials.</summary>
    public double Mean { get; }

    /// <summary>The standard deviation of the trials, with n − 1.</summary>
    public double StandardDeviation { get; }

    /// <summary>The least trial.</summary>
    public double Minimum => sorted[0];

    /// <summary>The greatest trial.</summary>
    public double Maximum => sorted[sorted.Length - 1];

    /// <summary>Not exceeded in one trial of ten.</summary>
    public double P10 => At(0.1);

    /// <summary>Not exceeded in every other trial.</summary>
    public double P50 => At(0.5);

    /// <summary>Not exceeded in four trials of five.</summary>
    public double P80 => At(0.8);

    /// <summary>Not exceeded in nine trials of ten.</summary>
    public double P90 => At(0.9);

    /// <summary>The value that is not exceeded with a given chance.</summary>
    /// <param name="chance">The chance, 0 to 100 %.</param>
    /// <returns>The quantile.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="chance"/> is outside its range.</exception>
    public double Quantile(Ratio chance) => At(Guard.Within(chance, Bounds.NotNegative(Measure.Percent, 1)));

    /// <summary>The chance of more than a value: with costs in the trials and a net price as the value, the chance of a loss.</summary>
    /// <param name="value">The value, any finite number.</param>
    /// <returns>Share of the trials above it.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="value"/> is not finite.</exception>
    public Ratio ChanceAbove(double value)
    {
        Guard.Within(value, Bounds.Between(double.MinValue, double.MaxValue, Measure.Number), nameof(value), nameof(value));
        int low = ~Array.BinarySearch(sorted, value, Above);
        return Ratio.FromDecimalFractions((double)(sorted.Length - low) / sorted.Length);
    }

    /// <summary>The usual quantiles.</summary>
    /// <returns>Text such as <c>P10 410, P50 433, P80 452, P90 463</c>.</returns>
    public override string ToString() =>
        "P10 " + Figures.Significant(P10, 4) + ", P50 " + Figures.Significant(P50, 4) + ", P80 " + Figures.Significant(P80, 4) + ", P90 " + Figures.Significant(P90, 4);

    private double At(double chance)
    {
        double place = chance * (sorted.Length - 1);
        int i = Math.Min((int)place, sorted.Length - 2);
        double t = place - i;
        return t == 0 ? sorted[i] : sorted[i] + (t * (sorted[i + 1] - sorted[i]));
    }

    // Neumaier's compensated sum, of the values or of the squares of their distances from a centre.
    private static double Sum(double[] values, double centre, bool squares)
    {
        double sum = 0;
        double lost = 0;
        foreach (double value in values)
        {
            double term = squares ? (value - centre) * (value - centre) : value;
            double next = sum + term;
            lost += Math.Abs(sum) >= Math.Abs(term) ? sum - next + term : term - next + sum;
            sum = next;
        }

        return sum + lost;
    }
}
