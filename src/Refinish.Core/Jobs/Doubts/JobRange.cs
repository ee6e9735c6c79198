using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Refinish.Estimating;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// How sure the price of a whole job is: the job is planned again and again with other readings of rough fixtures, other areas, another
/// gun, other hours and now and then a further visit, so that cups, kits, times, waiting and trips move as they would.
/// </summary>
/// <remarks>
/// The same job, uncertainty and options give the same range on every machine and on any number of threads. The open readings of a
/// <see cref="RoughFixture"/> are drawn from triangles over their three points, each on its own; readings that make no fixture are moved
/// halfway to the most likely ones until they do. The factor <see cref="JobUncertainty.Area"/> is drawn beside them: without it the last
/// reading taken would make the price less sure.
/// </remarks>
public sealed class JobRange
{
    private const int Outputs = 5;

    private JobRange(JobPlan plan, JobUncertainty uncertainty, SimulationOptions options, double[][] drawn, JobTrial trial)
    {
        Plan = plan;
        Uncertainty = uncertainty;
        int[] priced = [.. Enumerable.Range(0, options.Trials).Where(i => drawn[4][i] > 0)];
        WithoutPrice = options.Trials - priced.Length;
        if (priced.Length > 0)
        {
            Drivers = PriceDriver.Of(trial, [.. priced.Select(i => drawn[3][i])], input =>
                [.. priced.Select(i => drawn[Outputs + input][i])]);
            SimulationOptions counted = options with { Trials = priced.Length };
            Total = new SimulationResult([.. priced.Select(i => drawn[0][i])], counted);
            Cost = new SimulationResult([.. priced.Select(i => drawn[1][i])], counted);
            Hours = new SimulationResult([.. priced.Select(i => drawn[2][i])], counted);
            AtMargin = new SimulationResult([.. priced.Select(i => drawn[3][i])], counted);
        }
    }

    /// <summary>The plan as it stands, with what is known.</summary>
    public JobPlan Plan { get; }

    /// <summary>What is uncertain.</summary>
    public JobUncertainty Uncertainty { get; }

    /// <summary>
    /// Trials that gave no price, because no schedule was found or the price book lacks something; they are not counted in the results.
    /// </summary>
    public int WithoutPrice { get; }

    /// <summary>Total price with tax; <see langword="null"/> when no trial gave a price.</summary>
    public SimulationResult? Total { get; }

    /// <summary>Cost; <see langword="null"/> when no trial gave a price.</summary>
    public SimulationResult? Cost { get; }

    /// <summary>Paid hours on site, over all people; <see langword="null"/> when no trial gave a price.</summary>
    public SimulationResult? Hours { get; }

    /// <summary>
    /// Price at the target margin, before a minimum charge hides how wide it is; <see langword="null"/> when no trial gave a price.
    /// </summary>
    public SimulationResult? AtMargin { get; }

    /// <summary>
    /// What stands behind the spread of <see cref="AtMargin"/>: every uncertain input with its share, the largest first; empty when the
    /// price is the same in every trial or there is none.
    /// </summary>
    public IReadOnlyList<PriceDriver> Drivers { get; } = ValueList<PriceDriver>.Empty;

    /// <summary>
    /// The reading of a rough fixture that is worth taking next, by the spread of the price that goes with it; <see langword="null"/> when
    /// the trials tell none.
    /// </summary>
    public PriceDriver? NextReading => Drivers.FirstOrDefault(driver => driver.Reading is not null && driver.IsTold);

    /// <summary>Chance that the cost is above the net price of the plan as it stands; <see langword="null"/> without either.</summary>
    public Ratio? ChanceOfLoss => Plan.Price?.Net is decimal net ? Cost?.ChanceAbove((double)net) : null;

    /// <summary>Draws the range.</summary>
    /// <param name="job">The job.</param>
    /// <param name="uncertainty">What is uncertain.</param>
    /// <param name="options">Number of trials, seed and threads. A trial takes about as long as a plan.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static JobRange Of(Job job, JobUncertainty uncertainty, SimulationOptions options) =>
        Of(job, uncertainty, options, null, CancellationToken.None);

    /// <summary>Draws the range, telling how far it is.</summary>
    /// <param name="job">The job.</param>
    /// <param name="uncertainty">What is uncertain.</param>
    /// <param name="options">Number of trials, seed and threads. A trial takes about as long as a plan.</param>
    /// <param name="progress">Told the part that is done, from 0 to 1.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentNullException">
    /// <paramref name="job"/>, <paramref name="uncertainty"/> or <paramref name="options"/> is missing.
    /// </exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static JobRange Of(Job job, JobUncertainty uncertainty, SimulationOptions options, IProgress<double>? progress,
        CancellationToken cancellation)
    {
        Guard.NotNull(job);
        Guard.NotNull(uncertainty);
        Guard.NotNull(options);
        JobTrial trial = new(job, uncertainty);
        double[][] drawn = new SimulationEngine(trial.Inputs, options).Run(
            Outputs + trial.Inputs.Count,
            (inputs, outputs) =>
            {
                JobPlan plan = trial.With(inputs).Plan();
                outputs[0] = (double?)plan.Price?.Total ?? 0;
                outputs[1] = (double?)plan.Price?.Cost ?? 0;
                outputs[2] = plan.Schedule?.Paid.Paid.TotalHours ?? 0;
                outputs[3] = (double?)plan.Price?.PriceAtMargin ?? 0;
                outputs[4] = plan.Price is null ? 0 : 1;
                inputs.CopyTo(outputs, Outputs);
            },
            progress,
            cancellation);
        return new JobRange(job.Plan(), uncertainty, options, drawn, trial);
    }

    /// <summary>The tenth to the ninetieth percentile, and the median.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Total is null
        ? "no price in any trial"
        : Plan.Job.Shop.Prices.Currency.Text((decimal)Total.P10) + " to " + Plan.Job.Shop.Prices.Currency.Text((decimal)Total.P90)
            + ", median " + Plan.Job.Shop.Prices.Currency.Text((decimal)Total.P50);
}
