using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// How sure an estimate is: cost and hours of a priced job as distributions, the chance of a loss, and the price for a chosen chance of
/// profit.
/// </summary>
/// <remarks>
/// Hours are drawn from the three points of the labour standards, read as <see cref="EstimateUncertainty.Hours"/> says; kits stay whole, so
/// the cost of materials jumps when the need passes what a purchase holds. Hours and amounts of a trial are not rounded. Tasks are not
/// independent: one slow helper or a crowded room slows them all, and <see cref="SimulationOptions.Correlation"/> joins them; without it
/// the spread is a lower bound. The risk is that of cost; that the customer pays is taken for granted.
/// </remarks>
/// <example><code>
/// PriceBook book = new()
/// {
///     Currency = Currency.Of("USD"),
///     LabourRate = 30m,
///     TravelPerTrip = 25m,
///     DisposalPerJob = 10m,
///     ConsumablesPerFixture = 35m,
///     TargetMargin = new(Ratio.FromPercent(45)),
/// };
/// EstimateRequest job = new() { Labour = new([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }]), Materials = [],
///     Fixtures = 1 };
/// EstimateRange range = EstimateRange.Of(new PriceEstimate(book, job));
/// decimal careful = range.PriceForChanceOfProfit(Ratio.FromPercent(90));
/// </code></example>
public sealed class EstimateRange
{
    private readonly EstimateModel model;

    private EstimateRange(PriceEstimate estimate, EstimateUncertainty doubts, EstimateModel model, double[] cost, double[] hours, SimulationOptions options)
    {
        Estimate = estimate;
        Uncertainty = doubts;
        this.model = model;
        Cost = new SimulationResult(cost, options);
        Hours = new SimulationResult(hours, options);
    }

    /// <summary>The estimate.</summary>
    public PriceEstimate Estimate { get; }

    /// <summary>What was taken as uncertain.</summary>
    public EstimateUncertainty Uncertainty { get; }

    /// <summary>Cost of the job in the currency of the price book.</summary>
    public SimulationResult Cost { get; }

    /// <summary>Hours of one person, worked and otherwise paid.</summary>
    public SimulationResult Hours { get; }

    /// <summary>Every uncertain input with its distribution, in the order in which it is drawn.</summary>
    public IReadOnlyList<UncertainInput> Inputs => model.Inputs;

    /// <summary>Which variance stands behind the spread of the hours, in words.</summary>
    public string HourVariance => Uncertainty.Hours switch
    {
        ThreePointReading.Pert => "beta-PERT, (µ − a)(b − µ)/7",
        ThreePointReading.Triangular => "triangular",
        ThreePointReading.LognormalBetaPert => "lognormal with the beta-PERT variance (µ − a)(b − µ)/7",
        ThreePointReading.LognormalClassicPert => "lognormal with the classic PERT variance ((b − a)/6)²",
        _ => "normal with the classic PERT variance ((b − a)/6)²",
    } + (Cost.Options.CorrelationFraction == 0
        ? ", tasks independent (a lower bound)"
        : ", tasks correlated by " + Measure.Percent.Format(Cost.Options.CorrelationFraction, figures: 3));

    /// <summary>The chance that the cost is more than the net price of the estimate.</summary>
    public Ratio ChanceOfLoss => ChanceOfLossAt(Estimate.Net ?? 0);

    /// <summary>Runs the trials with uncertain hours and the usual options.</summary>
    /// <param name="estimate">A complete estimate.</param>
    /// <returns>What came out.</returns>
    /// <exception cref="ArgumentException"><paramref name="estimate"/> is missing, or has gaps,
    ///     so that there is no cost to vary.</exception>
    public static EstimateRange Of(PriceEstimate estimate) => Of(estimate, EstimateUncertainty.HoursOnly);

    /// <summary>Runs the trials with the usual options.</summary>
    /// <param name="estimate">A complete estimate.</param>
    /// <param name="uncertainty">What is uncertain.</param>
    /// <returns>What came out.</returns>
    /// <exception cref="ArgumentException">An argument is missing, or the estimate has gaps, so that there is no cost to vary.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A factor drives a material need beyond what can be bought.</exception>
    public static EstimateRange Of(PriceEstimate estimate, EstimateUncertainty uncertainty) =>
        Of(estimate, uncertainty, new SimulationOptions());

    /// <summary>Runs the trials.</summary>
    /// <param name="estimate">A complete estimate.</param>
    /// <param name="uncertainty">What is uncertain.</param>
    /// <param name="options">How the trials are run.</param>
    /// <returns>What came out.</returns>
    /// <exception cref="ArgumentException">An argument is missing, or the estimate has gaps, so that there is no cost to vary.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A factor drives a material need beyond what can be bought.</exception>
    public static EstimateRange Of(PriceEstimate estimate, EstimateUncertainty uncertainty, SimulationOptions options) =>
        Of(estimate, uncertainty, options, null, CancellationToken.None);

    /// <summary>Runs the trials.</summary>
    /// <param name="estimate">A complete estimate.</param>
    /// <param name="uncertainty">What is uncertain.</param>
    /// <param name="options">How the trials are run.</param>
    /// <param name="progress">Told the share that is done, rising from 0 to 1; <see langword="null"/> for nobody.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <returns>What came out.</returns>
    /// <exception cref="ArgumentException"><paramref name="estimate"/> has gaps, so that there is no cost to vary.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A factor drives a material need beyond what can be bought.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static EstimateRange Of(
        PriceEstimate estimate,
        EstimateUncertainty uncertainty,
        SimulationOptions options,
        IProgress<double>? progress,
        CancellationToken cancellation)
    {
        Guard.NotNull(estimate);
        Guard.NotNull(uncertainty);
        Guard.NotNull(options);
        if (!estimate.IsComplete)
        {
            throw new ArgumentException("The estimate has gaps and no cost: " + string.Join("; ", estimate.Gaps.Select(gap => gap.ToString())) + ".", nameof(estimate));
        }

        EstimateModel model = new(estimate, uncertainty);
        double[][] results = new SimulationEngine(model.Inputs, options).Run(
            2,
            (inputs, outputs) =>
            {
                outputs[0] = model.Cost(inputs, out double hours);
                outputs[1] = hours;
            },
            progress,
            cancellation);
        return new EstimateRange(estimate, uncertainty, model, results[0], results[1], options);
    }

    /// <summary>The chance that the cost is more than a net price.</summary>
    /// <param name="netPrice">Price after discount and before tax.</param>
    /// <returns>Share of the trials that lose money.</returns>
    public Ratio ChanceOfLossAt(decimal netPrice) => Cost.ChanceAbove((double)netPrice);

    /// <summary>The least net price, after discount and before tax, at which the cost is covered with a chosen chance.</summary>
    /// <param name="chance">The chance, 0 to 100 %; 100 % gives the dearest trial and no guarantee.</param>
    /// <returns>The price, rounded up to the currency.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="chance"/> is outside its range.</exception>
    public decimal PriceForChanceOfProfit(Ratio chance) => Estimate.Book.Currency.RoundUp((decimal)Cost.Quantile(chance));

    /// <summary>The least net price that leaves a margin with a chosen chance.</summary>
    /// <param name="margin">The margin to be left.</param>
    /// <param name="chance">The chance, 0 to 100 %.</param>
    /// <returns>Cost quantile / (1 − margin), rounded up to the currency.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="chance"/> is outside its range.</exception>
    public decimal PriceForMargin(Margin margin, Ratio chance) =>
        Estimate.Book.Currency.RoundUp((decimal)Cost.Quantile(chance) / (1 - margin.Fraction));

    /// <summary>
    /// How far each input alone moves the cost, from its P10 to its P90 with all others at their medians; the widest first.
    /// </summary>
    /// <returns>One bar for each input that is not exact.</returns>
    public IReadOnlyList<TornadoBar> Tornado() => TornadoBar.Of(model.Inputs, model.Cost);

    /// <summary>
    /// What the trials were drawn from: the estimate and the moments of every uncertain input. Quantiles and chances are counted over the
    /// trials and have no formula to write out; closed forms beside them are in the tests.
    /// </summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => new(
        "What the trials were drawn from",
        [],
        [Estimate.Workings(), .. model.Inputs.Where(input => input.Distribution is not ExactValue).Select(input => input.Distribution.Workings())]);

    /// <summary>Cost, chance of loss and which variance was used.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        "cost " + Cost + " " + Estimate.Book.Currency + "; chance of a loss " + Measure.Percent.Format(ChanceOfLoss.DecimalFractions, figures: 3) + "; hours " + HourVariance;
}
