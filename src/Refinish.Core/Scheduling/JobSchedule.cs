using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// The earliest times for steps that one person does in the listed order within working hours, with least and most times between steps.
/// When no times hold together, it says which rules cannot be kept and what would do.
/// </summary>
/// <remarks>
/// Every rule can only push a step later: work waits for the step before it, for its least lag and for the next working day, and a step
/// whose follower would come too late moves later itself. Pushing until nothing moves gives the earliest schedule there is
/// (least fixed point of monotone rules; for lags alone this is the longest-path solution of a simple temporal network, Dechter, Meiri
/// and Pearl, Artificial Intelligence 49 (1991)). A step that is pushed beyond sixty days shows that the rules contradict each other.
/// Where the order of work is to be found as well, see <see cref="SiteWork"/>, which searches orders and settles each in this way.
/// </remarks>
/// <example><code>
/// DateTimeOffset start = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));
/// ScheduleStep[] steps = [new("prepare", TimeSpan.FromHours(7)), new("prime", TimeSpan.FromHours(1)), new("topcoat", TimeSpan.FromHours(1))];
/// StepLag[] lags = [new("prime", "topcoat", TimeSpan.FromHours(1), TimeSpan.FromHours(3), "recoat window of the primer")];
/// JobSchedule schedule = new(start, new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), steps, lags);
/// TimeSpan wait = schedule.Steps[1].Start - schedule.Steps[0].End;   // 17 h: priming at once would let the window close overnight
/// </code></example>
public sealed record JobSchedule
{
    private static readonly TimeSpan Horizon = TimeSpan.FromDays(60);

    /// <summary>Finds the earliest times with the same hours on every day.</summary>
    /// <param name="start">Nothing starts before this instant; its offset is the clock of the working hours.</param>
    /// <param name="hours">Working hours of attended steps.</param>
    /// <param name="steps">The steps in order of work, with unique names; at least one.</param>
    /// <param name="lags">Times to keep between steps; each names two listed steps, the earlier one first.</param>
    /// <exception cref="ArgumentException">A name stands twice, or a lag names an unknown step or steps in the wrong order.</exception>
    public JobSchedule(DateTimeOffset start, WorkingHours hours, IEnumerable<ScheduleStep> steps, IEnumerable<StepLag> lags)
        : this(start, WorkCalendar.EveryDay(Guard.NotNull(hours, nameof(hours)), LocalClock.Fixed(start.Offset)), steps, lags)
    {
    }

    /// <summary>Finds the earliest times in a calendar.</summary>
    /// <param name="start">Nothing starts before this instant.</param>
    /// <param name="calendar">When someone is on site, by the clock of the site.</param>
    /// <param name="steps">The steps in order of work, with unique names; at least one.</param>
    /// <param name="lags">Times to keep between steps; each names two listed steps, the earlier one first.</param>
    /// <exception cref="ArgumentException">A name stands twice, or a lag names an unknown step or steps in the wrong order.</exception>
    public JobSchedule(DateTimeOffset start, WorkCalendar calendar, IEnumerable<ScheduleStep> steps, IEnumerable<StepLag> lags)
    {
        Start = start;
        Calendar = Guard.NotNull(calendar, nameof(calendar));
        Hours = new WorkingHours(calendar.Shifts.Min(shift => shift.Hours.From), calendar.Shifts.Max(shift => shift.Hours.Until));
        ValueList<ScheduleStep> listed = Guard.List(steps, nameof(steps), 1);
        Lags = Guard.List(lags, nameof(lags));
        Dictionary<string, int> index = Index(listed);
        foreach (StepLag lag in Lags)
        {
            Check(lag, index, listed);
        }

        List<string> conflicts = [];
        foreach (ScheduleStep step in listed)
        {
            if (step.IsAttended && !step.IsInterruptible && step.Duration > calendar.LongestShift)
            {
                conflicts.Add(step.Name + " takes " + Measure.Hours.Format(step.Duration.TotalSeconds, DisplayUnits.Si, 3)
                    + " and the working day has " + Measure.Hours.Format(calendar.LongestShift.TotalSeconds, DisplayUnits.Si, 3) + ". Split the step or lengthen the day.");
            }
        }

        Openings openings = new(calendar, start, null, (int)Horizon.TotalDays + 30);
        long[] starts = new long[listed.Count];
        if (conflicts.Count == 0 && !Settles(Lags, starts))
        {
            conflicts.Add(Explain(lags => Settles(lags, new long[listed.Count])));
        }

        Conflicts = new ValueList<string>(conflicts);
        Steps = conflicts.Count > 0
            ? ValueList<ScheduledStep>.Empty
            : new ValueList<ScheduledStep>(listed.Select((step, i) => new ScheduledStep(step, step.IsInterruptible
                ? calendar.Pieces(openings, starts[i], step.Duration.Ticks)
                : new ValueList<WorkPiece>([new WorkPiece(calendar.At(starts[i]), calendar.At(starts[i] + step.Duration.Ticks))]))));

        bool Settles(IReadOnlyList<StepLag> kept, long[] found)
        {
            StepModel model = ModelOf(listed, kept, index);
            return new EarliestTimes(model, openings).Solve(start.UtcTicks, start.UtcTicks + Horizon.Ticks, found, new long[listed.Count]) < 0;
        }
    }

    /// <summary>Nothing starts before this instant.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>When someone is on site.</summary>
    public WorkCalendar Calendar { get; }

    /// <summary>From the earliest start to the latest end of work on any day of the week.</summary>
    public WorkingHours Hours { get; }

    /// <summary>Times to keep between steps.</summary>
    public IReadOnlyList<StepLag> Lags { get; }

    /// <summary>Whether times could be found.</summary>
    public bool IsPossible => Conflicts.Count == 0;

    /// <summary>The rules that cannot be kept, in words; empty when possible.</summary>
    public IReadOnlyList<string> Conflicts { get; }

    /// <summary>The steps with their earliest times, in listed order; empty when impossible.</summary>
    public IReadOnlyList<ScheduledStep> Steps { get; }

    /// <summary>The schedule in one line.</summary>
    /// <returns>The first and the last time, or the conflicts.</returns>
    public override string ToString() => IsPossible ? Steps[0] + " … " + Steps[Steps.Count - 1] : string.Join(" ", Conflicts);

    private static Dictionary<string, int> Index(ValueList<ScheduleStep> steps)
    {
        Dictionary<string, int> index = new(StringComparer.Ordinal);
        for (int i = 0; i < steps.Count; i++)
        {
            if (index.ContainsKey(steps[i].Name))
            {
                throw new ArgumentException("The step '" + steps[i].Name + "' is listed twice.", nameof(steps));
            }

            index.Add(steps[i].Name, i);
        }

        return index;
    }

    private static void Check(StepLag lag, Dictionary<string, int> index, ValueList<ScheduleStep> steps)
    {
        if (!index.TryGetValue(lag.Before, out int before) || !index.TryGetValue(lag.After, out int after) || before >= after)
        {
            throw new ArgumentException(
                "The lag '" + lag.Reason + "' runs from '" + lag.Before + "' to '" + lag.After + "'; allowed: two listed steps, the earlier one first.", nameof(lag));
        }

        if (lag.Maximum is not null && steps[before].IsInterruptible)
        {
            throw new ArgumentException("The lag '" + lag.Reason + "' has a maximum after '" + lag.Before + "', which may be interrupted; allowed: a maximum only after steps done in one go.", nameof(lag));
        }
    }

    private static StepModel ModelOf(ValueList<ScheduleStep> steps, IReadOnlyList<StepLag> lags, Dictionary<string, int> index)
    {
        StepModel model = new(steps.Count);
        for (int i = 0, attended = -1; i < steps.Count; i++)
        {
            model.Duration[i] = steps[i].Duration.Ticks;
            model.Attended[i] = steps[i].IsAttended;
            model.Interruptible[i] = steps[i].IsInterruptible;
            if (steps[i].IsAttended)
            {
                if (attended >= 0)
                {
                    model.Lag(attended, i, 0, null, -1);
                }

                attended = i;
            }
        }

        for (int k = 0; k < lags.Count; k++)
        {
            model.Lag(index[lags[k].Before], index[lags[k].After], lags[k].Minimum.Ticks, lags[k].Maximum?.Ticks, k);
        }

        return model;
    }

    private string Explain(Func<IReadOnlyList<StepLag>, bool> settles)
    {
        ConflictFinder finder = new(settles);
        List<StepLag> core = finder.Core(Lags);
        StepLag window = core.Last(lag => lag.Maximum is not null);
        string others = string.Join("; ", core.Where(lag => lag != window));
        List<LagRelief> reliefs = [.. finder.Reliefs(Lags, core)];
        return window.Reason + ": '" + window.After + "' cannot start within " + Measure.Hours.Format(window.Maximum!.Value.TotalSeconds, DisplayUnits.Si, 3)
            + " of the end of '" + window.Before + "' together with the order of work, the working hours" + (others.Length > 0 ? " and " + others : string.Empty) + "."
            + (reliefs.Count > 0 ? " Any one of these would do: " + string.Join("; ", reliefs) + "." : string.Empty)
            + " Otherwise start earlier in the day, lengthen the day, or abrade and wipe again.";
    }
}
