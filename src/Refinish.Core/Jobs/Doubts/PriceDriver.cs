using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>How much of the spread of a job's price stands behind one uncertain input, from the trials that were drawn.</summary>
/// <remarks>
/// The price of the trials is fitted by a plane in all inputs at once (least squares on values less their mean, over their deviation). An
/// effect b says by how many standard deviations the price moves with one of the input; b² is its share of the variance as long as inputs
/// go their own ways, and without the input the spread is √(1 − b²) of what it was. What the plane leaves (jumps of kits and trips) belongs
/// to nobody. Inputs of one group share a part when <see cref="SimulationOptions.Correlation"/> joins them. An effect is told from nothing
/// when it is so many standard errors away that among all inputs together one without effect gets there in one run of a hundred. With no
/// more than ten trials beyond the number of inputs there is no plane, and b is the correlation. Source: elementary statistics,
/// standardised regression coefficients.
/// </remarks>
public sealed record PriceDriver
{
    private PriceDriver(string input, (string Fixture, string Reading)? reading, double effect, double spread, bool isTold)
    {
        Input = input;
        Fixture = reading?.Fixture;
        Reading = reading?.Reading;
        Effect = effect;
        Narrowing = spread * (1 - Math.Sqrt(1 - Math.Min(1, effect * effect)));
        IsTold = isTold;
    }

    /// <summary>Name of the input.</summary>
    public string Input { get; }

    /// <summary>Identifier of the fixture whose reading it is; <see langword="null"/> for other inputs.</summary>
    public string? Fixture { get; }

    /// <summary>Name of the reading; <see langword="null"/> for other inputs.</summary>
    public string? Reading { get; }

    /// <summary>By how many standard deviations the price moves with one standard deviation of the input.</summary>
    public double Effect { get; }

    /// <summary>Share of the variance of the price that goes with this input.</summary>
    public Ratio ShareOfVariance => Ratio.FromDecimalFractions(Effect * Effect);

    /// <summary>
    /// By how much the price at the target margin narrows, between its tenth and its ninetieth percentile, when this input is known; in the
    /// currency of the job.
    /// </summary>
    public double Narrowing { get; }

    /// <summary>Whether the trials tell the effect from nothing.</summary>
    public bool IsTold { get; }

    /// <summary>Input, share and what knowing it is worth.</summary>
    /// <returns>Text such as <c>Depth of tub: 31.2 % of the variance, 24.1 narrower</c>.</returns>
    public override string ToString() => Input + ": " + Measure.Percent.Format(Effect * Effect, figures: 3) + " of the variance, "
        + Figures.Significant(Narrowing, 3) + " narrower" + (IsTold ? string.Empty : ", not told from nothing");

    internal static IReadOnlyList<PriceDriver> Of(JobTrial trial, double[] prices, Func<int, double[]> drawn)
    {
        if (prices.Length < 2 || Standardised(prices) is not double[] price)
        {
            return ValueList<PriceDriver>.Empty;
        }

        SimulationResult result = new((double[])prices.Clone(), new SimulationOptions());
        double spread = result.P90 - result.P10;
        (int Input, double[] Column)[] moved =
        [
            .. Enumerable.Range(0, trial.Inputs.Count).Select(i => (Input: i, Column: Standardised(drawn(i))!))
                .Where(one => one.Column is not null),
        ];
        if (moved.Length == 0)
        {
            return ValueList<PriceDriver>.Empty;
        }

        double far = Distribution.ScoreOf(1 - (0.005 / moved.Length));
        PlaneFit fit = new([.. moved.Select(one => one.Column)], price);
        return new ValueList<PriceDriver>(moved
            .Select((one, i) => new PriceDriver(
                trial.Inputs[one.Input].Name, trial.ReadingOf(one.Input), fit.Effects[i], spread, Math.Abs(fit.Effects[i]) > far * fit.Errors[i]))
            .OrderByDescending(driver => Math.Abs(driver.Effect))
            .ThenBy(driver => driver.Input, StringComparer.Ordinal));
    }

    // Less the mean, over the root of the mean square; null for what does not move.
    private static double[]? Standardised(double[] values)
    {
        double mean = values.Average();
        double deviation = Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / values.Length);
        return deviation <= 1e-9 * Math.Abs(mean) || deviation == 0 ? null : [.. values.Select(value => (value - mean) / deviation)];
    }
}
