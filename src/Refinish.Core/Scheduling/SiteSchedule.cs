using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Scheduling;

/// <summary>
/// When each step of a <see cref="SiteWork"/> is done, what was proved about the end and about the number of visits, what drives the end, and the
/// days of the crew; or why there is no schedule.
/// </summary>
/// <example><code>
/// SiteWork work = new()
/// {
///     Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
///     Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), LocalClock.Fixed(TimeSpan.FromHours(1))),
///     Steps = [new SiteStep { Name = "prime", Duration = TimeSpan.FromHours(1), Room = "bathroom", Sprays = true }],
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
    internal SiteSchedule(SiteWork work, ScheduleConflict conflict, int nodes)
    {
        Work = work;
        Conflict = conflict;
        Nodes = nodes;
        Steps = ValueList<PlannedStep>.Empty;
        CriticalChain = ValueList<ChainLink>.Empty;
        Visits = ValueList<CrewVisit>.Empty;
    }

    internal SiteSchedule(SiteWork work, StepModel model, Openings openings, long[] starts, long[] ends, (long Finish, int Visits) bound, int nodes)
    {
        Work = work;
        Nodes = nodes;
        ChainLink[] links = new ChainFinder(work, model, openings, starts, ends).Links();
        Steps = new ValueList<PlannedStep>(work.Steps.Select((step, i) => new PlannedStep(
            step,
            step.IsAttended && step.IsInterruptible
                ? work.Calendar.Pieces(openings, starts[i], model.Duration[i])
                : new ValueList<WorkPiece>([new WorkPiece(work.Calendar.At(starts[i]), work.Calendar.At(ends[i]))]),
            work.Calendar.At(ends[i] + (step.Sprays ? step.Clearing.Ticks : 0)),
            links[i])));
        Finish = work.Calendar.At(ends.Max());
        FinishBound = work.Calendar.At(bound.Finish);
        Visits = new ValueList<CrewVisit>(Steps.Where(step => step.Step.IsAttended)
            .SelectMany(step => step.Pieces.Select(piece => new CrewTurn(step.Step, piece)))
            .OrderBy(turn => turn.Piece.Start).ThenBy(turn => turn.Piece.End)
            .GroupBy(turn => turn.Piece.Start.Date)
            .Select(day => new CrewVisit(day)));
        VisitsBound = bound.Visits;
        CriticalChain = Chain(Steps);
    }

    /// <summary>The work that was asked for.</summary>
    public SiteWork Work { get; }

    /// <summary>Whether there is a schedule.</summary>
    public bool IsPossible => Conflict is null;

    /// <summary>Why there is none; <see langword="null"/> when there is one.</summary>
    public ScheduleConflict? Conflict { get; }

    /// <summary>The steps with their times, in the order of the work; empty when there is no schedule.</summary>
    public IReadOnlyList<PlannedStep> Steps { get; }

    /// <summary>When the last step ends; <see langword="null"/> when there is no schedule.</summary>
    public DateTimeOffset? Finish { get; }

    /// <summary>No schedule ends before this instant; proved.</summary>
    public DateTimeOffset? FinishBound { get; }

    /// <summary>Whether it was proved that no schedule ends sooner.</summary>
    public bool IsEarliest => Finish is not null && Finish == FinishBound;

    /// <summary>By how much a schedule could at best end sooner; zero when this one is proved the earliest.</summary>
    public TimeSpan? Gap => Finish - FinishBound;

    /// <summary>The gap as part of the whole time from start to end.</summary>
    public Ratio? RelativeGap => Finish is DateTimeOffset finish && finish > Work.Start ? Ratio.FromDecimalFractions(Gap!.Value.TotalSeconds / (finish - Work.Start).TotalSeconds) : null;

    /// <summary>The days on which the crew comes, in order.</summary>
    public IReadOnlyList<CrewVisit> Visits { get; }

    /// <summary>No schedule that ends as early has fewer visits; proved.</summary>
    public int VisitsBound { get; }

    /// <summary>Whether it was proved that the visits are as few as can be for this end.</summary>
    public bool HasFewestVisits => IsPossible && Visits.Count == VisitsBound;

    /// <summary>What drives the end: from the start of the work to the step that ends last, each link driven by the one before it.</summary>
    public IReadOnlyList<ChainLink> CriticalChain { get; }

    /// <summary>Nodes of the search that were looked at.</summary>
    public int Nodes { get; }

    /// <summary>The times of one step.</summary>
    /// <param name="step">Its name.</param>
    /// <returns>The step with its times.</returns>
    /// <exception cref="ArgumentException">There is no such step, or no schedule.</exception>
    public PlannedStep Find(string step) =>
        Steps.FirstOrDefault(planned => planned.Step.Name == Guard.Named(step, nameof(step))) ?? throw new ArgumentException("'" + step + "' is not a step of this schedule.", nameof(step));

    /// <summary>How every start and end follows from the step that drives it, in hours after the start of the work.</summary>
    /// <returns>The derivation; without steps when there is no schedule.</returns>
    public Workings Workings() => SiteWorkings.Of(this);

    /// <summary>The end and what was proved, or the contradiction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Conflict is not null
        ? Conflict.ToString()
        : "ends " + Finish!.Value.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + (IsEarliest ? " (as early as can be)" : " (at best " + TimeConstraint.Hours(Gap!.Value) + " sooner)")
            + ", " + Figures.Fixed(Visits.Count, 0) + " visits" + (HasFewestVisits ? " (as few as can be)" : " (at least " + Figures.Fixed(VisitsBound, 0) + ")");

    private static ValueList<ChainLink> Chain(IReadOnlyList<PlannedStep> steps)
    {
        Dictionary<string, PlannedStep> byName = steps.ToDictionary(step => step.Step.Name, StringComparer.Ordinal);
        List<ChainLink> chain = [];
        HashSet<string> seen = new(StringComparer.Ordinal);
        PlannedStep? at = steps.OrderByDescending(step => step.End).First();
        while (at is not null && seen.Add(at.Step.Name))
        {
            chain.Add(at.Driver);
            at = at.Driver.Driver is string driver ? byName[driver] : null;
        }

        chain.Reverse();
        return new ValueList<ChainLink>(chain);
    }
}
