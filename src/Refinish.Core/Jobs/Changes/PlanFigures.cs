using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>
/// What a plan told people, in figures alone: price with its lines, visits, dates of each fixture, what stands in the way, cautions. It
/// needs no plan behind it, so that a stored quote stays readable when nobody can plan its job any more.
/// </summary>
/// <remarks>
/// <see cref="Of"/> takes them from a plan. The companion for JSON reads them from a stored one; a host with books of its own can fill them
/// in. What is not known is <see langword="null"/> or empty, never zero.
/// </remarks>
/// <example><code>
/// static string Told(JobPlan plan) => PlanFigures.Of(plan).Total + " " + PlanFigures.Of(plan).Currency;
/// </code></example>
public sealed record PlanFigures
{
    /// <summary>Identifier of the job.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Job { get; init => field = Guard.Named(value); }

    /// <summary>Name of the job for people; the identifier unless given.</summary>
    public string Name { get => field ?? Job; init; }

    /// <summary>The quote as the customer holds it; <see langword="null"/> when there is none.</summary>
    public QuoteFigures? Quote { get; init; }

    /// <summary>Code of the currency of all amounts; <see langword="null"/> without a price.</summary>
    public string? Currency { get; init; }

    /// <summary>What the customer pays, with tax; <see langword="null"/> without a price.</summary>
    public decimal? Total { get; init; }

    /// <summary>What is paid, the total rounded to coins in use; <see langword="null"/> without a price.</summary>
    public decimal? Payable { get; init; }

    /// <summary>What the job costs the shop; <see langword="null"/> without a price.</summary>
    public decimal? Cost { get; init; }

    /// <summary>Price after discount, before tax; <see langword="null"/> without a price.</summary>
    public decimal? Net { get; init; }

    /// <summary>Tax; <see langword="null"/> without a price.</summary>
    public decimal? Tax { get; init; }

    /// <summary>Whether the minimum charge made the price.</summary>
    public bool MinimumChargeApplied { get; init; }

    /// <summary>The lines of the price; their prices add up to <see cref="Total"/> and their costs to <see cref="Cost"/>.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<LineFigures> Lines { get; init => field = Guard.List(value); } = ValueList<LineFigures>.Empty;

    /// <summary>Days on which the shop comes; <see langword="null"/> without a schedule.</summary>
    public int? Trips { get; init; }

    /// <summary>Paid hours on site over all people; <see langword="null"/> without a schedule.</summary>
    public TimeSpan? Paid { get; init; }

    /// <summary>The days of each person on the premises.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<VisitFigures> Visits { get; init => field = Guard.List(value); } = ValueList<VisitFigures>.Empty;

    /// <summary>The fixtures that are planned, with their dates.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<FixtureFigures> Fixtures { get; init => field = Guard.List(value); } = ValueList<FixtureFigures>.Empty;

    /// <summary>What stands in the way.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<PlanRemark> Objections { get; init => field = Guard.List(value); } = ValueList<PlanRemark>.Empty;

    /// <summary>What the price book lacks.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<PlanRemark> Gaps { get; init => field = Guard.List(value); } = ValueList<PlanRemark>.Empty;

    /// <summary>What has to be done or found out before the plan holds.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<PlanRemark> Conditions { get; init => field = Guard.List(value); } = ValueList<PlanRemark>.Empty;

    /// <summary>What people are warned of, by the code of each caution.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<PlanRemark> Cautions { get; init => field = Guard.List(value); } = ValueList<PlanRemark>.Empty;

    /// <summary>The units in which stored sentences stand; <see langword="null"/> when they can be had in any.</summary>
    public DisplayUnits? Units { get; init; }

    /// <summary>When the first person arrives; <see langword="null"/> without visits.</summary>
    public DateTimeOffset? Start => Visits.Count == 0 ? null : Visits.Min(visit => visit.Arrives);

    /// <summary>When the last person leaves; <see langword="null"/> without visits.</summary>
    public DateTimeOffset? End => Visits.Count == 0 ? null : Visits.Max(visit => visit.Leaves);

    /// <summary>No water on any fixture before this instant; <see langword="null"/> when it is not said of one of them.</summary>
    public DateTimeOffset? WaterFrom =>
        Fixtures.Count == 0 || Fixtures.Any(fixture => fixture.WaterFrom is null) ? null : Fixtures.Max(fixture => fixture.WaterFrom);

    /// <summary>The figures of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>Its figures.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public static PlanFigures Of(JobPlan plan) => FiguresOfPlan.Of(Guard.NotNull(plan));

    /// <summary>The job and its total.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Job + ": " + (Total is decimal total ? ChangeText.Amount(total, Currency) : "no price");
}
