using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// What changed between two plans, or between stored figures and a plan of today: the inputs first, then what stands in the way, then
/// everything that moved money or time, the most first.
/// </summary>
/// <remarks>
/// Lists are held against each other by identity, never by place: a list in another order is no change. Lines that one thing moved make one
/// change: the kits of a material, the hours of one kind of work on one fixture, all lines of a fixture that came or went, all hours whose
/// rate moved alike. A line whose own figures stayed but that carries more or less of overhead, warranty and margin is counted in one
/// change, <see cref="ChangeSubject.SharedCosts"/>. So the prices of all changes add up to <see cref="Total"/> and their costs to
/// <see cref="Cost"/>, exactly. Operations are not listed by themselves: what they take is in the hours and the materials, and what they
/// keep waiting is in the dates. Dates that only move along with the start are not listed.
/// </remarks>
/// <example><code>
/// static string WhatChanged(Job before, Job after) =>
///     string.Join("\n", PlanChanges.Between(before.Plan(), after.Plan()).Sentences(DisplayUnits.UsCustomary));
/// </code></example>
public sealed class PlanChanges
{
    private PlanChanges(
        PlanFigures before, PlanFigures after, IReadOnlyList<ValueChange> inputs, IEnumerable<PlanChange> changes,
        LineReader reader = LineReader.Shop)
    {
        Before = before;
        After = after;
        Inputs = inputs;
        Reader = reader;
        Dictionary<string, string> names = Names(before, after);
        changes = changes.Select(change => change.Place is string place
            ? change with { PlaceName = names.TryGetValue(place, out string? name) ? name : place } : change);
        Changes = new ValueList<PlanChange>(
            reader == LineReader.Shop ? Sorted(changes) : changes.OrderBy(change => RankForCustomer(change.Subject)));
    }

    /// <summary>Who reads it; the shop unless it was made with <see cref="For"/>.</summary>
    public LineReader Reader { get; }

    /// <summary>The figures before.</summary>
    public PlanFigures Before { get; }

    /// <summary>The figures after; without any where today's library refuses the input.</summary>
    public PlanFigures After { get; }

    /// <summary>The inputs that differ, in the order in which they were given.</summary>
    public IReadOnlyList<ValueChange> Inputs { get; }

    /// <summary>
    /// What came of it: refusals, a price or currency that came or went, objections and gaps first, then by size of the difference in
    /// price, in cost and in time; conditions and cautions last. For a customer in the order of the quote.
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
    /// Compares two plans. The inputs are told part by part (a fixture's survey, the price book's materials); the companion for JSON tells
    /// them value by value.
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
        Guard.NotNull(before);
        Guard.NotNull(after);
        return new PlanChanges(before, after, Guard.List(inputs), ChangesOfMoney.Of(before, after)
            .Concat(ChangesOfTime.Of(before, after)).Concat(ChangesOfRemarks.Of(before, after)));
    }

    /// <summary>
    /// Stored figures whose input today's library refuses: there is nothing to compare them with, and that is the change.
    /// </summary>
    /// <param name="before">The stored figures, which stay readable.</param>
    /// <param name="reasons">Why the input is refused, at least one.</param>
    /// <returns>One change for each reason.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">There is no reason, or an entry is missing.</exception>
    public static PlanChanges Refused(PlanFigures before, IReadOnlyList<PlanRemark> reasons)
    {
        Guard.NotNull(before);
        return new PlanChanges(before, new PlanFigures { Job = before.Job }, ValueList<ValueChange>.Empty, new Pairs<PlanRemark>(
            [], Guard.List(reasons, 1), reason => reason.Id).All.Select(pair =>
            new PlanChange("refusal/" + pair.Key, ChangeSubject.Refusal, ChangeKind.Added) { About = pair.After!.About,
                RemarkAfter = pair.After }));
    }

    /// <summary>
    /// The changes for one reader, in the same shape: sentences and pictures are made of it alike. The shop reads all of it. A customer
    /// reads what can be checked against the two quotes: their items by identity, discount, each tax, total, payments and validity, then
    /// visits, dates, conditions and the cautions of the quote; no inputs, hours, materials, rates and costs.
    /// </summary>
    /// <param name="reader">Who reads it. What was left out for a customer does not come back for the shop.</param>
    /// <returns>The changes; their prices still add up to <see cref="Total"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reader"/> is not a named value.</exception>
    public PlanChanges For(LineReader reader) => Guard.Defined(reader) == Reader || Reader == LineReader.Customer
        ? this
        : new PlanChanges(
            ChangesForCustomer.Seen(Before),
            ChangesForCustomer.Seen(After),
            ValueList<ValueChange>.Empty,
            ChangesForCustomer.Of(this),
            reader);

    /// <summary>All of it in words for its <see cref="Reader"/>, the inputs first.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>One sentence for each input and each change.</returns>
    public IReadOnlyList<string> Sentences(DisplayUnits system) => new ValueList<string>(
        Inputs.Select(input => input + ".").Concat(Changes.Select(change => change.Sentence(system, Reader))));

    /// <summary>The total before and after, and how many changes there are.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        IsEmpty ? "nothing changed" : ChangeText.Amount(Before) + " became " + ChangeText.Amount(After) + ", "
        + (Reader == LineReader.Shop ? ChangeText.Count(Inputs.Count, "input") + " and " : string.Empty)
        + ChangeText.Count(Changes.Count, "result") + " changed";

    private static IEnumerable<PlanChange> Sorted(IEnumerable<PlanChange> changes) => changes
        .OrderBy(change => Rank(change.Subject))
        .ThenByDescending(change => Math.Abs(change.Price))
        .ThenByDescending(change => Math.Abs(change.Cost))
        .ThenByDescending(change => change.Time.Duration())
        .ThenBy(change => change.Key, StringComparer.Ordinal);

    // Two fixtures of one name are told apart by their identifiers.
    private static Dictionary<string, string> Names(PlanFigures before, PlanFigures after)
    {
        Dictionary<string, string> names = before.Fixtures.Concat(after.Fixtures).GroupBy(fixture => fixture.Id, StringComparer.Ordinal)
            .ToDictionary(same => same.Key, same => same.Last().Name, StringComparer.Ordinal);

        foreach (string shared in names.GroupBy(name => name.Value).Where(same => same.Count() > 1)
            .SelectMany(same => same).Select(name => name.Key).ToList())
        {
            names[shared] += " " + shared;
        }

        return names;
    }

    private static int RankForCustomer(ChangeSubject subject) => subject switch
    {
        ChangeSubject.Refusal => 0,
        ChangeSubject.Price or ChangeSubject.Currency => 1,
        ChangeSubject.Objection => 2,
        ChangeSubject.Fixture or ChangeSubject.Option or ChangeSubject.OtherLine or ChangeSubject.Work or ChangeSubject.Remainder => 3,
        ChangeSubject.Discount => 4,
        ChangeSubject.Tax => 5,
        ChangeSubject.Total => 6,
        ChangeSubject.Payment => 7,
        ChangeSubject.Validity => 8,
        ChangeSubject.Condition => 10,
        ChangeSubject.Caution => 11,
        _ => 9,
    };

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
