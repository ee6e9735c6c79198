using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>How much of the spread of a job's price stands behind one uncertain input, from the trials that were drawn.</summary>
/// <remarks>
/// With the correlation r of input and price over n trials, a straight line through them explains the share r² of the variance; without the input the spread is
/// √(1 − r²) of what it was. An input that has nothing to do with the price comes out within ± 3/√n three hundred times in three hundred and one; what lies
/// within is not told from nothing, and a few hundred trials tell only the largest. Inputs of one group share a part of each other's variance when
/// <see cref="SimulationOptions.Correlation"/> joins them. Source: elementary statistics.
/// </remarks>
public sealed record PriceDriver
{
    private readonly double correlation;

    private PriceDriver(string input, (string Fixture, string Reading)? reading, double correlation, double spread, int trials)
    {
        Input = input;
        Fixture = reading?.Fixture;
        Reading = reading?.Reading;
        this.correlation = correlation;
        Narrowing = spread * (1 - Math.Sqrt(1 - (correlation * correlation)));
        IsTold = Math.Abs(correlation) > 3 / Math.Sqrt(trials);
    }

    /// <summary>Name of the input.</summary>
    public string Input { get; }

    /// <summary>Identifier of the fixture whose reading it is; <see langword="null"/> for other inputs.</summary>
    public string? Fixture { get; }

    /// <summary>Name of the reading; <see langword="null"/> for other inputs.</summary>
    public string? Reading { get; }

    /// <summary>Correlation of input and price, −1 to 1.</summary>
    public double Correlation => correlation;

    /// <summary>Share of the variance of the price that a straight line in this input explains.</summary>
    public Ratio ShareOfVariance => Ratio.FromDecimalFractions(correlation * correlation);

    /// <summary>By how much the price at the target margin narrows, between its tenth and its ninetieth percentile, when this input is known; in the currency of the job.</summary>
    public double Narrowing { get; }

    /// <summary>Whether the trials tell the share from nothing.</summary>
    public bool IsTold { get; }

    /// <summary>Input, share and what knowing it is worth.</summary>
    /// <returns>Text such as <c>Depth of tub: 31.2 % of the variance, 24.1 narrower</c>.</returns>
    public override string ToString() => Input + ": " + Measure.Percent.Format(correlation * correlation, figures: 3) + " of the variance, " + Figures.Significant(Narrowing, 3)
        + " narrower" + (IsTold ? string.Empty : ", not told from nothing");

    internal static IReadOnlyList<PriceDriver> Of(JobTrial trial, double[] prices, Func<int, double[]> drawn)
    {
        (double mean, double deviation) = Moments(prices);
        if (deviation <= 1e-9 * Math.Abs(mean) || prices.Length < 2)
        {
            return ValueList<PriceDriver>.Empty;
        }

        SimulationResult result = new((double[])prices.Clone(), new SimulationOptions());
        double spread = result.P90 - result.P10;
        List<PriceDriver> drivers = [];
        for (int i = 0; i < trial.Inputs.Count; i++)
        {
            double[] values = drawn(i);
            (double middle, double width) = Moments(values);
            if (width <= 1e-12 * Math.Abs(middle))
            {
                continue;
            }

            double together = 0;
            for (int j = 0; j < values.Length; j++)
            {
                together += (values[j] - middle) / width * ((prices[j] - mean) / deviation);
            }

            drivers.Add(new PriceDriver(trial.Inputs[i].Name, trial.ReadingOf(i), Math.Max(-1, Math.Min(1, together / values.Length)), spread, prices.Length));
        }

        return new ValueList<PriceDriver>(drivers.OrderByDescending(driver => Math.Abs(driver.correlation)).ThenBy(driver => driver.Input, StringComparer.Ordinal));
    }

    // Mean and root of the mean square about it.
    private static (double Mean, double Deviation) Moments(double[] values)
    {
        double mean = values.Average();
        return (mean, Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / values.Length));
    }
}
