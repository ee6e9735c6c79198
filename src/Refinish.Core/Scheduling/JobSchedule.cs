using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// The earliest times for steps that one person does in the listed order within working hours, with least and most times between steps.
/// When no times hold together, it says which rule cannot be kept.
/// </summary>
/// <remarks>
/// Every rule can only push a step later: work waits for the step before it, for its least lag and for the next working day, and a step
/// whose follower would come too late moves later itself. Pushing until nothing moves gives the earliest schedule there is
/// (least fixed point of monotone rules; for lags alone this is the longest-path solution of a simple temporal network, Dechter, Meiri
/// and Pearl, Artificial Intelligence 49 (1991)). A step that is pushed beyond sixty days shows that the rules contradict each other.
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

    /// <summary>Finds the earliest times.</summary>
    /// <param name="start">Nothing starts before this instant; its offset is the clock of the working hours.</param>
    /// <param name="hours">Working hours of attended steps.</param>
    /// <param name="steps">The steps in order of work, with unique names; at least one.</param>
    /// <param name="lags">Times to keep between steps; each names two listed steps, the earlier one first.</param>
    /// <exception cref="ArgumentException">A name stands twice, or a lag names an unknown step or steps in the wrong order.</exception>
    public JobSchedule(DateTimeOffset start, WorkingHours hours, IEnumerable<ScheduleStep> steps, IEnumerable<StepLag> lags)
    {
        Start = start;
        Hours = Guard.NotNull(hours, nameof(hours));
        ValueList<ScheduleStep> listed = Guard.List(steps, nameof(steps), 1);
        Lags = Guard.List(lags, nameof(lags));
        Dictionary<string, int> index = Index(listed);
        List<(int Before, int After, StepLag Lag)> rules = [];
        foreach (StepLag lag in Lags)
        {
            if (!index.TryGetValue(lag.Before, out int before) || !index.TryGetValue(lag.After, out int after) || before >= after)
            {
                throw new ArgumentException(
                    "The lag '" + lag.Reason + "' runs from '" + lag.Before + "' to '" + lag.After + "'; allowed: two listed steps, the earlier one first.", nameof(lags));
            }

            if (lag.Maximum is not null && listed[before].IsInterruptible)
            {
                throw new ArgumentException("The lag '" + lag.Reason + "' has a maximum after '" + lag.Before + "', which may be interrupted; allowed: a maximum only after steps done in one go.", nameof(lags));
            }

            rules.Add((before, after, lag));
        }

        List<string> conflicts = [];
        foreach (ScheduleStep step in listed)
        {
            if (step.IsAttended && !step.IsInterruptible && step.Duration > hours.Length)
            {
                conflicts.Add(step.Name + " takes " + Measure.Hours.Format(step.Duration.TotalSeconds, DisplayUnits.Si, 3)
                    + " and the working day has " + Measure.Hours.Format(hours.Length.TotalSeconds, DisplayUnits.Si, 3) + ". Split the step or lengthen the day.");
            }
        }

        DateTimeOffset[]? times = conflicts.Count > 0 ? null : Solve(start, hours, listed, rules, conflicts);
        Conflicts = new ValueList<string>(conflicts);
        Steps = times is null ? ValueList<ScheduledStep>.Empty : new ValueList<ScheduledStep>(listed.Select((step, i) => new ScheduledStep(step, times[i], hours)));
    }

    /// <summary>Nothing starts before this instant.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>Working hours of attended steps.</summary>
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

    private static DateTimeOffset[]? Solve(
        DateTimeOffset start, WorkingHours hours, ValueList<ScheduleStep> steps, List<(int Before, int After, StepLag Lag)> rules, List<string> conflicts)
    {
        DateTimeOffset[] times = new DateTimeOffset[steps.Count];
        for (int i = 0; i < times.Length; i++)
        {
            times[i] = steps[i].IsAttended ? hours.FirstOpen(start) : start;
        }

        DateTimeOffset EndOf(int i)
        {
            if (!steps[i].IsInterruptible)
            {
                return times[i] + steps[i].Duration;
            }

            IReadOnlyList<WorkPiece> pieces = hours.Cut(times[i], steps[i].Duration);
            return pieces[pieces.Count - 1].End;
        }

        bool moved = true;
        while (moved)
        {
            moved = false;
            for (int i = 0, lastAttended = -1; i < times.Length; i++)
            {
                DateTimeOffset earliest = times[i];
                if (steps[i].IsAttended)
                {
                    if (lastAttended >= 0)
                    {
                        earliest = Later(earliest, EndOf(lastAttended));
                    }

                    lastAttended = i;
                }

                foreach ((int before, int after, StepLag lag) in rules)
                {
                    if (after == i)
                    {
                        earliest = Later(earliest, EndOf(before) + lag.Minimum);
                    }
                    else if (before == i && lag.Maximum is TimeSpan most)
                    {
                        // Its follower cannot come earlier, so this one has to come later.
                        DateTimeOffset held = times[after] - most - steps[i].Duration;
                        if (held > earliest)
                        {
                            earliest = held;
                            if (earliest - start > Horizon)
                            {
                                conflicts.Add(lag.Reason + ": '" + lag.After + "' cannot start within "
                                    + Measure.Hours.Format(most.TotalSeconds, DisplayUnits.Si, 3) + " of the end of '" + lag.Before
                                    + "' together with the other rules. Start earlier in the day, lengthen the day, or abrade and wipe again.");
                                return null;
                            }
                        }
                    }
                }

                if (steps[i].IsAttended)
                {
                    earliest = steps[i].IsInterruptible ? hours.FirstOpen(earliest) : hours.FirstFit(earliest, steps[i].Duration);
                }

                if (earliest > times[i])
                {
                    times[i] = earliest;
                    moved = true;
                }
            }
        }

        return times;
    }

    private static DateTimeOffset Later(DateTimeOffset a, DateTimeOffset b) => a > b ? a : b;
}
