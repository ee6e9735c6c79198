using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>
/// When each operation of premises is done and by whom: the site search over rooms, crew, gun, wet film, dust, hours and temperatures.
/// </summary>
/// <remarks>
/// Two things are known only once there is a schedule: that one gun goes from room to room or waits through a night, and that a night falls
/// between abrading and promoter. The list then gets a cleaning of the gun, what fills the hose of a cleaned gun again, or a wipe with a
/// new water-break test, and is scheduled again; <see cref="Work"/> holds them. The schedule before is kept where they fit in without a
/// later end, a further visit or longer waiting, so that the premises are searched anew only where they do not.
/// </remarks>
public sealed class CrewSchedule
{
    private const int Rounds = 4;

    /// <summary>Finds the schedule.</summary>
    /// <param name="work">The operations.</param>
    /// <exception cref="ArgumentNullException"><paramref name="work"/> is missing.</exception>
    public CrewSchedule(WorkList work) : this(work, ValueList<DayRequest>.Empty)
    {
    }

    /// <summary>Finds the schedule with work on given days.</summary>
    /// <param name="work">The operations.</param>
    /// <param name="days">What the customer wants on given days.</param>
    /// <exception cref="ArgumentNullException"><paramref name="work"/> is missing.</exception>
    /// <exception cref="ArgumentException">An entry of <paramref name="days"/> is missing.</exception>
    public CrewSchedule(WorkList work, IReadOnlyList<DayRequest> days)
    {
        Days = Guard.List(days);
        (int searches, int rounds) = (1, 1);
        Trial trial = Solve(Guard.NotNull(work), null);
        for (int i = 0; i < Rounds && trial.Found.IsPossible && trial.Work.Needs.With(trial.Work, trial.Found) is ScheduleNeeds needs; i++)
        {
            rounds++;
            Trial next = Solve(trial.Work.With(needs), trial.Found);
            searches += next.Found.IsFitted ? 0 : 1;
            if (!next.Found.IsPossible)
            {
                break;
            }

            trial = next;
        }

        Effort = (searches, rounds);
        Work = work = trial.Work;
        Site = trial.Site;
        Found = trial.Found;
        List<PlanObjection> objections = [.. trial.Objections];
        if (!Found.IsPossible)
        {
            objections.Add(new PlanObjection(
                ObjectionKind.Schedule, work.Premises.Id, "conflict", Found.Conflict + AsAsked(Found.Conflict!)));
        }

        Objections = new ValueList<PlanObjection>(objections);
        Operations = new ValueList<ScheduledOperation>(Found.IsPossible ? Scheduled() : []);
        Runs = new ValueList<ScheduledRun>(Found.IsPossible ? ScheduledRuns.Of(this) : []);
        Visits = new ValueList<PersonVisit>(Found.PersonDays.Select(day => new PersonVisit(work.Shop.Crew[day.Person].Id, day, work.Shop)));
        Paid = new PaidHours(Visits, work.Shop);
    }

    /// <summary>The operations that were scheduled: those given, and what their schedule showed to be needed.</summary>
    public WorkList Work { get; }

    /// <summary>What the customer wants on given days.</summary>
    public IReadOnlyList<DayRequest> Days { get; }

    /// <summary>The work as the search took it.</summary>
    public SiteWork Site { get; }

    /// <summary>What the search found and proved, or what contradicts what.</summary>
    public SiteSchedule Found { get; }

    /// <summary>Whether there is a schedule.</summary>
    public bool IsPossible => Found.IsPossible;

    /// <summary>The operations with their times and people, by start; empty when there is no schedule.</summary>
    public IReadOnlyList<ScheduledOperation> Operations { get; }

    /// <summary>The runs of coating with their times and cups, by start; empty when there is no schedule.</summary>
    public IReadOnlyList<ScheduledRun> Runs { get; }

    /// <summary>
    /// When the next coat may go on after each coat and each promoter's wipe, by the clock of the site, in order of their last strokes;
    /// empty when there is no schedule.
    /// </summary>
    public IReadOnlyList<ScheduledWindow> Windows => field ??= new ValueList<ScheduledWindow>(IsPossible ? ScheduledWindows.Of(this) : []);

    /// <summary>The days of each person on the premises, by date and person.</summary>
    public IReadOnlyList<PersonVisit> Visits { get; }

    /// <summary>How many times the premises were searched, and how many rounds it took.</summary>
    internal (int Searches, int Rounds) Effort { get; }

    /// <summary>Days on which anybody of the shop comes to the premises.</summary>
    public int Trips => Found.Visits.Count;

    /// <summary>Hours worked, on site, and by half-days, and which of them are paid.</summary>
    public PaidHours Paid { get; }

    /// <summary>
    /// What stands in the way: a contradiction with its cures, a request for an operation that is not there, more people than the crew has.
    /// </summary>
    public IReadOnlyList<PlanObjection> Objections { get; }

    /// <summary>The times of one operation.</summary>
    /// <param name="id">Its identifier.</param>
    /// <returns>The operation, or <see langword="null"/> when it is not in the schedule.</returns>
    public ScheduledOperation? TryFind(string id)
    {
        foreach (ScheduledOperation operation in Operations)
        {
            if (operation.Operation.Id == id)
            {
                return operation;
            }
        }

        return null;
    }

    /// <summary>How every start follows, when every window opens and closes, and the hours that are paid.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => new(
        "Times and paid hours", [], [Found.Workings(), .. Windows.Select(window => window.Workings()), Paid.Workings()]);

    /// <summary>The outcome of the search.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Found.ToString();

    private Trial Solve(WorkList work, SiteSchedule? earlier)
    {
        SiteSteps steps = new(work, Days);
        SiteWork site = new()
        {
            Start = work.Start,
            Calendar = work.Shop.Calendar,
            // Room by room in the order of their ids, so that the search does not depend on how rooms are listed.
            Steps = [.. steps.Make().OrderBy(step => step.Room ?? step.Id.Split('/')[0], StringComparer.Ordinal)],
            Lags = work.Lags,
            Crew = work.Shop.Crew.Count,
            Tools = [new SiteTool(CoatBuilder.SprayGunTool, work.Shop.Guns)],
            Prefers = work.Shop.Prefers,
            PaidBlock = work.Shop.Paid == PaidTimeRule.HalfDays ? work.Shop.HalfDay : TimeSpan.Zero,
        };
        return new Trial(work, site, earlier is null
            ? site.Solve(work.Shop.Effort) : site.SolveAfter(earlier, work.Shop.Effort), steps.Objections);
    }

    // The conflict knows of steps and hours, not of what the caller asked for and how far ahead that reaches.
    private string AsAsked(ScheduleConflict conflict)
    {
        List<string> told = [];
        if (Days.Count > 0)
        {
            told.Add(" Asked for: " + string.Join("; ", Days) + ".");
        }

        DateTimeOffset[] late =
        [
            .. Work.Premises.Closed.Select(closed => closed.End),
            .. Days.Select(request => Clock.WhenShowing(request.Days[request.Days.Count - 1])),
        ];
        if (late.Length > 0 && conflict.LookedUntil is DateTimeOffset until)
        {
            double days = (late.Max() - Work.Start).TotalDays;
            told.Add(" Hours were looked at until " + DayRequest.Text(Clock.OnSite(until).Date) + ".");
            if (days > RoomCourse.Days && Work.Premises.Rooms.Any(room => room.Climate.Kind == RoomClimateKind.Daily))
            {
                told.Add(" In rooms whose temperature swings by the day, coats are planned for " + Figures.Fixed(RoomCourse.Days, 0)
                    + " days from the start: start later, or hold the temperature.");
            }

            if (days > SiteSteps.QuietDays && Work.Premises.QuietHours.Count > 0)
            {
                told.Add(" With quiet hours, loud work is planned for " + Figures.Fixed(SiteSteps.QuietDays, 0)
                    + " days from the start: start later.");
            }
        }

        return string.Concat(told);
    }

    private LocalClock Clock => Work.Shop.Calendar.Clock;

    private List<ScheduledOperation> Scheduled()
    {
        Dictionary<string, PlannedStep> times = Found.Steps.ToDictionary(step => step.Step.Id, StringComparer.Ordinal);
        List<ScheduledOperation> scheduled = [];
        foreach (Operation operation in Work.Operations)
        {
            bool beside = operation.Beside is not null;
            if (times.TryGetValue(operation.Beside ?? operation.Id, out PlannedStep? step))
            {
                string[] people = [.. step.People.Select(person => Work.Shop.Crew[person].Id)];
                int own = beside ? Math.Min(1, people.Length) : Math.Min(operation.People, people.Length);
                scheduled.Add(new ScheduledOperation(operation, step.Pieces, [.. beside ? people.Skip(people.Length - own) : people.Take(own)]));
            }
        }

        return [.. scheduled.OrderBy(operation => operation.Start)];
    }

    private sealed record Trial(WorkList Work, SiteWork Site, SiteSchedule Found, List<PlanObjection> Objections);
}
