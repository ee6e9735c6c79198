using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// Early and late dates of steps with least and most times between them, when people, rooms and hours are no limit: what the work itself asks for.
/// </summary>
/// <remarks>
/// The critical-path method as a special case of the <see cref="TemporalNetwork"/>: a start and an end point a step, joined by its duration, and
/// the end of the whole held at its earliest. Source: Kelley and Walker, Critical-path planning and scheduling (1959), with minimum and maximum
/// time lags as in Dechter, Meiri and Pearl (1991).
/// </remarks>
/// <example><code>
/// CriticalPath path = new(
///     [new ScheduleStep("prime", TimeSpan.FromHours(1)), new ScheduleStep("topcoat", TimeSpan.FromHours(1))],
///     [new StepLag("prime", "topcoat", TimeSpan.FromHours(2), TimeSpan.FromHours(24), "recoat window of the primer")]);
/// TimeSpan length = path.Length;   // 4 h
/// </code></example>
public sealed record CriticalPath
{
    private const string Begin = "start of the work";
    private const string Done = "end of the work";

    private readonly TemporalNetwork network;

    /// <summary>Works out the dates.</summary>
    /// <param name="steps">The steps, with unique names; at least one. Whether they are attended or interruptible does not matter here.</param>
    /// <param name="lags">Times to keep between steps, in any order.</param>
    /// <exception cref="ArgumentException">No step is given, a name stands twice, or a lag names an unknown step or one step twice.</exception>
    public CriticalPath(IEnumerable<ScheduleStep> steps, IEnumerable<StepLag> lags)
    {
        ValueList<ScheduleStep> listed = Guard.List(steps, nameof(steps), 1);
        Lags = Guard.List(lags, nameof(lags));
        TemporalNetwork open = NetworkOf(listed, Lags);
        Conflict = open.Conflict;
        network = open.IsPossible ? open.EndingEarly(Done) : open;
        Steps = open.IsPossible
            ? new ValueList<ActivityTime>(listed.Select((step, i) => new ActivityTime(step, network.Times[(2 * i) + 1].Earliest!.Value, network.Times[(2 * i) + 1].Latest!.Value)))
            : ValueList<ActivityTime>.Empty;
    }

    /// <summary>Times to keep between steps.</summary>
    public IReadOnlyList<StepLag> Lags { get; }

    /// <summary>Whether the steps and the times between them can hold together.</summary>
    public bool IsPossible => Conflict is null;

    /// <summary>What contradicts what; <see langword="null"/> when all holds together.</summary>
    public TemporalConflict? Conflict { get; }

    /// <summary>The steps with their dates, in listed order; empty when impossible.</summary>
    public IReadOnlyList<ActivityTime> Steps { get; }

    /// <summary>The least time from the start of the first to the end of the last step; zero when impossible.</summary>
    public TimeSpan Length => Steps.Count == 0 ? TimeSpan.Zero : Steps.Max(step => step.EarliestFinish);

    /// <summary>The steps without slack, by early start; a delay of any of them delays the whole.</summary>
    public IReadOnlyList<ActivityTime> Critical => new ValueList<ActivityTime>(Steps.Where(step => step.IsCritical).OrderBy(step => step.EarliestStart).ThenBy(step => step.EarliestFinish));

    /// <summary>How every early and late date follows, as longest paths.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => network.Workings();

    /// <summary>The length and the critical steps, or the contradiction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Conflict?.ToString() ?? TimeConstraint.Hours(Length) + ": " + string.Join(" → ", Critical.Select(step => step.Step.Name));

    /// <summary>A start point and an end point for each step, between the start and the end of the whole.</summary>
    internal static TemporalNetwork NetworkOf(IReadOnlyList<ScheduleStep> steps, IEnumerable<StepLag> lags)
    {
        List<string> points = [Begin];
        List<TimeConstraint> bounds = [];
        foreach (ScheduleStep step in steps)
        {
            points.Add(StartOf(step.Name));
            points.Add(EndOf(step.Name));
            bounds.Add(new TimeConstraint(Begin, StartOf(step.Name), TimeSpan.Zero, null, "nothing comes before the start of the work"));
            bounds.Add(new TimeConstraint(StartOf(step.Name), EndOf(step.Name), step.Duration, step.IsInterruptible ? null : step.Duration, "duration of '" + step.Name + "'"));
            bounds.Add(new TimeConstraint(EndOf(step.Name), Done, TimeSpan.Zero, null, "done when '" + step.Name + "' is"));
        }

        points.Add(Done);
        HashSet<string> names = new(steps.Select(step => step.Name), StringComparer.Ordinal);
        foreach (StepLag lag in lags)
        {
            if (!names.Contains(lag.Before) || !names.Contains(lag.After) || lag.Before == lag.After)
            {
                throw new ArgumentException("The lag '" + lag.Reason + "' runs from '" + lag.Before + "' to '" + lag.After + "'; allowed: two listed steps.", nameof(lags));
            }

            bounds.Add(new TimeConstraint(EndOf(lag.Before), StartOf(lag.After), lag.Minimum, lag.Maximum, lag.Reason));
        }

        return new TemporalNetwork(points, bounds);
    }

    private static string StartOf(string step) => "start of " + step;

    private static string EndOf(string step) => "end of " + step;
}
