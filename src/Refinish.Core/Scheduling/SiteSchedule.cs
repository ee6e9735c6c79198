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
    private static readonly Source DaysWithWork = Source.Derived("count of days with work");
    private static readonly Source OverTurns = Source.Derived("sum over the turns of the day");
    private static readonly Source Quotient = Source.Derived("quotient");
    private static readonly Source Difference = Source.Derived("difference");
    private static readonly Source LongestPath = Source.Derived(
        "longest path: a step starts when the last of the rules that hold it back is fulfilled; "
        + "W waits for working hours and so as not to come early, N nights and days off within interruptible work");

    private static readonly Source Search = Source.Published(
        "De Reyck and Herroelen, European Journal of Operational Research 111 (1998)",
            "branch and bound on precedence; bound proved by search");

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
        int i = IndexOf(Guard.Named(id));
        return i < steps.Count ? steps[i] : throw new ArgumentException("'" + id + "' is not a step of this schedule.", nameof(id));
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
    public Workings Workings()
    {
        Trace t = new();
        for (int i = 0; i < steps.Count; i++)
        {
            NoteStep(i, t);
        }

        if (IsPossible)
        {
            NoteEnd(t);
            NoteVisits(t);
        }

        return t.Workings("Schedule");
    }

    /// <summary>The end and what was proved, or the contradiction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Conflict is not null
        ? Conflict.ToString()
        : "ends " + CarefulTime.Up(Finish!.Value).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)
            + (IsEarliest ? " (as early as can be)" : " (at best " + TimeConstraint.Hours(Gap!.Value) + " sooner)")
            + ", " + Figures.Fixed(Visits.Count, 0) + " visits"
                + (HasFewestVisits ? " (as few as can be)" : " (at least " + Figures.Fixed(VisitsBound, 0) + ")");

    // S start and E end of each step in hours after the start of the work, each from the step that drives it.
    private void NoteStep(int i, Trace t)
    {
        PlannedStep step = steps[i];
        TimeSpan nights = step.End - step.Start - step.Step.Duration;
        Num end = t.Step("start: " + step.Driver, Symbol("S_", i), Measure.Hours, LongestPath, StartOf(i, t))
            + Hours(t, Symbol("d_", i), step.Step.Duration);
        end = t.Step("end: " + step.Step.Name, Symbol("E_", i), Measure.Hours, LongestPath,
            nights > TimeSpan.Zero ? end + Hours(t, Symbol("N_", i), nights) : end);
        if (step.RoomClear > step.End)
        {
            t.Step("room clear: " + step.Step.Name, Symbol("C_", i), Measure.Hours, LongestPath,
                end + Hours(t, Symbol("c_", i), step.Step.Clearing));
        }
    }

    private Num StartOf(int i, Trace t)
    {
        ChainLink link = steps[i].Driver;
        Num start = t.Number(0);
        if (link.Driver is string driver)
        {
            int at = IndexOf(driver);
            start = link.Kind == ChainLinkKind.Window
                ? Hours(t, Symbol("S_", at), steps[at].Start - Work.Start) - Hours(t, "max", link.Between)
                    - Hours(t, Symbol("d_", i), steps[i].Step.Duration)
                : Hours(t, Symbol("E_", at), steps[at].End - Work.Start) + Hours(t, "min", link.Between);
        }

        return link.Wait > TimeSpan.Zero ? start + Hours(t, "W", link.Wait) : start;
    }

    private void NoteEnd(Trace t)
    {
        int last = Enumerable.Range(0, steps.Count).Last(i => steps[i].End == Finish);
        Num finish = t.Step("end of the work: the last of all ends", "F", Measure.Hours, LongestPath,
            Hours(t, Symbol("E_", last), steps[last].End - Work.Start));
        Num bound = t.Step("no such schedule ends sooner", "LB", Measure.Hours, Search, Hours(t, "LB", FinishBound!.Value - Work.Start));
        Num gap = t.Step("gap", "G", Measure.Hours, Difference, finish - bound);
        if (RelativeGap is not null)
        {
            t.Step("gap as part of the whole", "g", Measure.Percent, Quotient, gap / finish);
        }
    }

    private void NoteVisits(Trace t)
    {
        for (int day = 0; day < Visits.Count; day++)
        {
            string number = Figures.Fixed(day + 1, 0);
            t.Step("worked on visit " + number, "A_" + number, Measure.Hours, OverTurns,
                Num.Sum(Visits[day].Turns.Select(turn => WorkedIn(turn, t))));
        }

        t.Step("visits", "V", Measure.Number, DaysWithWork, t.Number(Visits.Count));
        t.Step("no such schedule has fewer visits", "V_min", Measure.Number, Search, t.Number(VisitsBound));
    }

    private Num WorkedIn(CrewTurn turn, Trace t)
    {
        Num length = Hours(t, Symbol("t_", IndexOf(turn.Step.Id)), turn.Piece.End - turn.Piece.Start);
        return turn.Step.People == 1 ? length : length * turn.Step.People;
    }

    private int IndexOf(string id)
    {
        int i = 0;
        while (i < steps.Count && !string.Equals(steps[i].Step.Id, id, StringComparison.Ordinal))
        {
            i++;
        }

        return i;
    }

    private static string Symbol(string letter, int i) => letter + Figures.Fixed(i + 1, 0);

    private static Num Hours(Trace t, string symbol, TimeSpan time) => t.Given(symbol, time.TotalSeconds, Measure.Hours);

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
