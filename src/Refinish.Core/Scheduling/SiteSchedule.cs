using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Scheduling;

/// <summary>
/// When each step of a <see cref="SiteWork"/> is done and by whom, what was proved about the end and about the number of visits, what
/// drives the end, and the days of the crew; or why there is no schedule.
/// </summary>
/// <example><code>
/// SiteWork work = new()
/// {
///     Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
///     Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
/// LocalClock.Fixed(TimeSpan.FromHours(1))),
///     Steps = [new SiteStep { Id = "prime", Duration = TimeSpan.FromHours(1), Room = "bathroom", Sprays = true }],
///     Lags = [],
/// };
/// SiteSchedule schedule = work.Solve();
/// foreach (ChainLink link in schedule.CriticalChain)
/// {
///     Console.WriteLine(link);
/// }
/// </code></example>
public sealed record SiteSchedule
{
    private readonly ValueList<PlannedStep> steps;
    private readonly Cache cache = new();

    internal SiteSchedule(SiteWork work, ScheduleConflict conflict, int nodes)
    {
        Work = work;
        Conflict = conflict;
        Nodes = nodes;
        steps = ValueList<PlannedStep>.Empty;
        Visits = ValueList<CrewVisit>.Empty;
    }

    internal SiteSchedule(SiteWork work, SiteTimes times, ScheduleProof proof, int nodes)
    {
        Work = work;
        Nodes = nodes;
        ChainFinder chain = new(times);
        ValueList<int>[] people = times.People;
        PlannedStep[] planned = new PlannedStep[people.Length];
        for (int i = 0; i < planned.Length; i++)
        {
            SiteStep step = work.Steps[i];
            (long start, long end) = (times.Starts[i], times.Ends[i]);
            DateTimeOffset until = work.Calendar.At(end);
            ValueList<TimeInterval> pieces = times.Model.Interruptible[i]
                ? work.Calendar.Pieces(times.Model.Hours[i]!, start, times.Model.Duration[i], times.Days)
                : new ValueList<TimeInterval>([new TimeInterval(work.Calendar.At(start), until)]);
            bool clears = step.Sprays && step.Clearing > TimeSpan.Zero;
            planned[i] = new PlannedStep(step, pieces, clears ? work.Calendar.At(end + step.Clearing.Ticks) : until, people[i], chain, i);
        }

        steps = new ValueList<PlannedStep>(planned);
        Finish = work.Calendar.At(SiteSearch.Last(times.Ends));
        FinishBound = work.Calendar.At(proof.Finish);
        LatestEnd = proof.LatestEnd is long latest ? work.Calendar.At(latest) : null;
        Visits = CrewDays.Visits(steps);
        VisitsBound = Math.Min(proof.Visits, Visits.Count);
    }

    /// <summary>The work that was asked for.</summary>
    public SiteWork Work { get; }

    /// <summary>Whether it was not searched, but fitted into a schedule found before.</summary>
    internal bool IsFitted { get; init; }

    /// <summary>Whether there is a schedule.</summary>
    public bool IsPossible => Conflict is null;

    /// <summary>Why there is none; <see langword="null"/> when there is one.</summary>
    public ScheduleConflict? Conflict { get; }

    /// <summary>The steps with their times, in the order of the work; empty when there is no schedule.</summary>
    public IReadOnlyList<PlannedStep> Steps => steps;

    /// <summary>When the last step ends; <see langword="null"/> when there is no schedule.</summary>
    public DateTimeOffset? Finish { get; }

    /// <summary>
    /// No schedule ends before this instant, or, when <see cref="SiteWork.Prefers"/> is <see cref="SchedulePreference.FewestVisits"/>, none
    /// with as few visits as this one; proved.
    /// </summary>
    public DateTimeOffset? FinishBound { get; }

    /// <summary>
    /// Whether it was proved that no schedule ends sooner; for <see cref="SchedulePreference.FewestVisits"/>, none with as few visits.
    /// </summary>
    public bool IsEarliest => Finish is not null && Finish == FinishBound;

    /// <summary>
    /// Until when a schedule was allowed to end for the sake of fewer visits: <see cref="SiteWork.VisitSlack"/> after the close of the
    /// working day of the earliest end that was found. <see langword="null"/> for <see cref="SchedulePreference.EarliestEnd"/> and without
    /// a schedule.
    /// </summary>
    public DateTimeOffset? LatestEnd { get; }

    /// <summary>By how much a schedule could at best end sooner; zero when <see cref="IsEarliest"/>.</summary>
    public TimeSpan? Gap => Finish - FinishBound;

    /// <summary>The gap as part of the whole time from start to end.</summary>
    public Ratio? RelativeGap =>
        Finish is DateTimeOffset finish && finish > Work.Start
        ? Ratio.FromDecimalFractions(Gap!.Value.TotalSeconds / (finish - Work.Start).TotalSeconds) : null;

    /// <summary>The days on which anybody of the crew comes, in order.</summary>
    public IReadOnlyList<CrewVisit> Visits { get; }

    /// <summary>
    /// The days of each person of the crew, by date and then by number; nobody is listed on a day without work of their own.
    /// </summary>
    public IReadOnlyList<PersonDay> PersonDays => cache.Days ??= CrewDays.Persons(steps);

    /// <summary>
    /// No schedule has fewer visits among those that end as early, or, for <see cref="SchedulePreference.FewestVisits"/>, by
    /// <see cref="LatestEnd"/>; proved.
    /// </summary>
    public int VisitsBound { get; }

    /// <summary>Whether it was proved that the visits are as few as <see cref="VisitsBound"/> says.</summary>
    public bool HasFewestVisits => IsPossible && Visits.Count == VisitsBound;

    /// <summary>
    /// What drives the end: from the start of the work to the step that ends last, each link driven by the one before it.
    /// </summary>
    public IReadOnlyList<ChainLink> CriticalChain => cache.Chain ??= Chain(steps);

    /// <summary>Nodes of the search that were looked at.</summary>
    public int Nodes { get; }

    /// <summary>The times of one step.</summary>
    /// <param name="id">Its <see cref="SiteStep.Id"/>.</param>
    /// <returns>The step with its times.</returns>
    /// <exception cref="ArgumentException">There is no such step, or no schedule.</exception>
    public PlannedStep Find(string id)
    {
        Guard.Named(id, nameof(id));
        for (int i = 0; i < steps.Count; i++)
        {
            if (string.Equals(steps[i].Step.Id, id, StringComparison.Ordinal))
            {
                return steps[i];
            }
        }

        throw new ArgumentException("'" + id + "' is not a step of this schedule.", nameof(id));
    }

    /// <summary>Whether work, steps and what was proved are equal.</summary>
    /// <param name="other">The schedule to compare with.</param>
    /// <returns><see langword="true"/> when they are.</returns>
    public bool Equals(SiteSchedule? other) =>
        other is not null && Work.Equals(other.Work) && steps.Equals(other.steps) && Equals(Conflict, other.Conflict)
            && FinishBound == other.FinishBound
        && VisitsBound == other.VisitsBound && LatestEnd == other.LatestEnd;

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Work.GetHashCode() * 31) + steps.GetHashCode());

    /// <summary>How every start and end follows from the step that drives it, in hours after the start of the work.</summary>
    /// <returns>The derivation; without steps when there is no schedule.</returns>
    public Workings Workings() => SiteWorkings.Of(this);

    /// <summary>The end and what was proved, or the contradiction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Conflict is not null
        ? Conflict.ToString()
        : "ends " + CarefulTime.Up(Finish!.Value).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)
            + (IsEarliest ? " (as early as can be)" : " (at best " + TimeConstraint.Hours(Gap!.Value) + " sooner)")
            + ", " + Figures.Fixed(Visits.Count, 0) + " visits"
                + (HasFewestVisits ? " (as few as can be)" : " (at least " + Figures.Fixed(VisitsBound, 0) + ")");

    private static ValueList<ChainLink> Chain(ValueList<PlannedStep> steps)
    {
        if (steps.Count == 0)
        {
            return ValueList<ChainLink>.Empty;
        }

        Dictionary<string, PlannedStep> byId = steps.ToDictionary(step => step.Step.Id, StringComparer.Ordinal);
        List<ChainLink> chain = [];
        HashSet<string> seen = new(StringComparer.Ordinal);
        PlannedStep? at = steps.OrderByDescending(step => step.End).First();
        while (at is not null && seen.Add(at.Step.Id))
        {
            chain.Add(at.Driver);
            at = at.Driver.Driver is string driver ? byId[driver] : null;
        }

        chain.Reverse();
        return new ValueList<ChainLink>(chain);
    }

    // Made when asked for; the same every time, so it does not matter who makes it first.
    private sealed class Cache
    {
        public ValueList<PersonDay>? Days { get; set; }

        public ValueList<ChainLink>? Chain { get; set; }
    }
}
