using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>
/// What changed between two plans, or between stored figures and a plan of today: the inputs first, then what stands in the way, then
/// everything that moved money or time, the most first.
/// </summary>
/// <remarks>
/// Lists are held against each other by identity, never by place: a list in another order is no change. Lines that one thing moved make one
/// change: the kits of a material, the hours of one kind of work on one fixture, all lines of a fixture that came or went, all hours whose
/// rate moved alike. A line whose own figures stayed but that carries more or less of overhead, warranty and margin is counted in one change,
/// <see cref="ChangeSubject.SharedCosts"/>. So the prices of all changes add up to <see cref="Total"/> and their costs to <see cref="Cost"/>,
/// exactly. Operations are not listed by themselves: what they take is in the hours and the materials, and what they keep waiting is in the
/// dates. Dates that only move along with the start are not listed.
/// </remarks>
/// <example><code>
/// static string WhatChanged(Job before, Job after) =>
///     string.Join("\n", PlanChanges.Between(before.Plan(), after.Plan()).Sentences(DisplayUnits.UsCustomary));
/// </code></example>
public sealed class PlanChanges
{
    private PlanChanges(PlanFigures before, PlanFigures after, IReadOnlyList<ValueChange> inputs, IEnumerable<PlanChange> changes)
    {
        Before = before;
        After = after;
        Inputs = inputs;
        Changes = new ValueList<PlanChange>(Sorted(changes));
    }

    /// <summary>The figures before.</summary>
    public PlanFigures Before { get; }

    /// <summary>The figures after; without any where today's library refuses the input.</summary>
    public PlanFigures After { get; }

    /// <summary>The inputs that differ, in the order in which they were given.</summary>
    public IReadOnlyList<ValueChange> Inputs { get; }

    /// <summary>
    /// What came of it: refusals, a price or currency that came or went, objections and gaps first, then by size of the difference in price,
    /// in cost and in time; conditions and cautions last.
    /// </summary>
    public IReadOnlyList<PlanChange> Changes { get; }

    /// <summary>Whether nothing changed, neither in the inputs nor in what came of them.</summary>
    public bool IsEmpty => Inputs.Count == 0 && Changes.Count == 0;

    /// <summary>Code of the currency of both sides; <see langword="null"/> when they differ or one has no price.</summary>
    public string? Currency => Before.Currency == After.Currency ? Before.Currency : null;

    /// <summary>Total after less total before; <see langword="null"/> when they cannot be compared.</summary>
    public decimal? Total => Currency is null ? null : After.Total - Before.Total;

    /// <summary>Cost after less cost before; <see langword="null"/> when they cannot be compared.</summary>
    public decimal? Cost => Currency is null ? null : After.Cost - Before.Cost;

    /// <summary>Paid hours after less paid hours before; <see langword="null"/> without a schedule on both sides.</summary>
    public TimeSpan? Paid => After.Paid - Before.Paid;

    /// <summary>Visits after less visits before; <see langword="null"/> without a schedule on both sides.</summary>
    public int? Trips => After.Trips - Before.Trips;

    /// <summary>How much later the work starts; <see langword="null"/> without visits on both sides.</summary>
    public TimeSpan? Start => After.Start - Before.Start;

    /// <summary>How much later the last visit ends; <see langword="null"/> without visits on both sides.</summary>
    public TimeSpan? End => After.End - Before.End;

    /// <summary>How much later all fixtures may get water; <see langword="null"/> when it is not said on both sides.</summary>
    public TimeSpan? WaterFrom => After.WaterFrom - Before.WaterFrom;

    /// <summary>
    /// Compares two plans. The inputs are told part by part (a fixture's survey, the price book's materials); the companion for JSON tells them
    /// value by value.
    /// </summary>
    /// <param name="before">The plan before.</param>
    /// <param name="after">The plan after.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static PlanChanges Between(JobPlan before, JobPlan after) =>
        Between(PlanFigures.Of(before), PlanFigures.Of(after), JobInputs.Between(before.Job, after.Job));

    /// <summary>Compares figures, of plans or of stored documents.</summary>
    /// <param name="before">The figures before.</param>
    /// <param name="after">The figures after.</param>
    /// <param name="inputs">The inputs that differ, as far as they are known; empty when they are the same.</param>
    /// <returns>What changed.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">An entry of <paramref name="inputs"/> is missing.</exception>
    public static PlanChanges Between(PlanFigures before, PlanFigures after, IReadOnlyList<ValueChange> inputs)
    {
        Guard.NotNull(before, nameof(before));
        Guard.NotNull(after, nameof(after));
        return new PlanChanges(before, after, Guard.List(inputs, nameof(inputs)), ChangesOfMoney.Of(before, after)
            .Concat(ChangesOfTime.Of(before, after)).Concat(ChangesOfRemarks.Of(before, after)));
    }

    /// <summary>Stored figures whose input today's library refuses: there is nothing to compare them with, and that is the change.</summary>
    /// <param name="before">The stored figures, which stay readable.</param>
    /// <param name="reasons">Why the input is refused, at least one.</param>
    /// <returns>One change for each reason.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">There is no reason, or an entry is missing.</exception>
    public static PlanChanges Refused(PlanFigures before, IReadOnlyList<PlanRemark> reasons)
    {
        Guard.NotNull(before, nameof(before));
        return new PlanChanges(before, new PlanFigures { Job = before.Job }, ValueList<ValueChange>.Empty, new Pairs<PlanRemark>(
            [], Guard.List(reasons, nameof(reasons), 1), reason => reason.Id).All.Select(pair =>
            new PlanChange("refusal/" + pair.Key, ChangeSubject.Refusal, ChangeKind.Added) { About = pair.After!.About, RemarkAfter = pair.After }));
    }

    /// <summary>
    /// The changes as a customer may see them: hours, rates, kits, trips' costs and shared costs are one change, without their costs; fixtures,
    /// options, discount, tax, visits, dates, objections, conditions and cautions stay. The prices still add up to <see cref="Total"/>.
    /// </summary>
    /// <returns>The changes, in the same order.</returns>
    public IReadOnlyList<PlanChange> ForCustomer()
    {
        PlanChange[] work = [.. Changes.Where(change => change.Subject is ChangeSubject.Labour or ChangeSubject.LabourRate or ChangeSubject.Material
            or ChangeSubject.OtherLine or ChangeSubject.SharedCosts or ChangeSubject.Remainder)];
        List<PlanChange> seen = [.. Changes.Except(work).Select(change => change with
        {
            Cost = 0,
            Lines = ValueList<LineChange>.Empty,
            RateBefore = change.Subject == ChangeSubject.Tax ? change.RateBefore : null,
            RateAfter = change.Subject == ChangeSubject.Tax ? change.RateAfter : null,
        })];
        if (work.Length > 0)
        {
            seen.Add(new PlanChange("work", ChangeSubject.Work, ChangeKind.Changed)
            {
                Name = "work and materials",
                Price = work.Sum(change => change.Price),
                Time = Durations.FromHours(work.Sum(change => change.Time.TotalHours)),
                Currency = Currency,
            });
        }

        return new ValueList<PlanChange>(Sorted(seen.Where(change => change.Subject != ChangeSubject.Work || change.Price != 0)));
    }

    /// <summary>All of it in words, the inputs first; it tells costs and is not for a customer.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>One sentence for each input and each change.</returns>
    public IReadOnlyList<string> Sentences(DisplayUnits system) => new ValueList<string>(
        Inputs.Select(input => input + ".").Concat(Changes.Select(change => change.Sentence(system))));

    /// <summary>The total before and after, and how many changes there are.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => IsEmpty ? "nothing changed" : ChangeText.Amount(Before) + " became " + ChangeText.Amount(After) + ", "
        + Figures.Fixed(Inputs.Count, 0) + " inputs and " + Figures.Fixed(Changes.Count, 0) + " results changed";

    private static IEnumerable<PlanChange> Sorted(IEnumerable<PlanChange> changes) => changes
        .OrderBy(change => Rank(change.Subject))
        .ThenByDescending(change => Math.Abs(change.Price))
        .ThenByDescending(change => Math.Abs(change.Cost))
        .ThenByDescending(change => change.Time.Duration())
        .ThenBy(change => change.Key, StringComparer.Ordinal);

    private static int Rank(ChangeSubject subject) => subject switch
    {
        ChangeSubject.Refusal => 0,
        ChangeSubject.Price or ChangeSubject.Currency => 1,
        ChangeSubject.Objection or ChangeSubject.PriceGap => 2,
        ChangeSubject.Condition => 4,
        ChangeSubject.Caution => 5,
        _ => 3,
    };
}
