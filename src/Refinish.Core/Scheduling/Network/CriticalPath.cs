using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// Early and late dates of steps with least and most times between them, when people, rooms and hours are no limit: what the work itself
/// asks for.
/// </summary>
/// <remarks>
/// The critical-path method as a special case of the <see cref="TemporalNetwork"/>: a start and an end point a step, joined by its
/// duration, and
/// the end of the whole held at its earliest. Source: Kelley and Walker, Critical-path planning and scheduling (1959), with minimum and
/// maximum
/// time lags as in Dechter, Meiri and Pearl (1991).
/// </remarks>
/// <example><code>
/// CriticalPath path = new(
///     [new SiteStep { Id = "prime", Duration = TimeSpan.FromHours(1) }, new SiteStep { Id = "topcoat", Duration = TimeSpan.FromHours(1)
/// }],
///     [new StepLag("prime", "topcoat", TimeSpan.FromHours(2), TimeSpan.FromHours(24), "recoat window of the primer")]);
/// TimeSpan length = path.Length;   // 4 h
/// </code></example>
public sealed record CriticalPath
{
    // No step can be called so: the points of a step begin with "start of" and "end of".
    private const string Begin = "the start";
    private const string Done = "the end";

    private const long Longest = 3650 * TimeSpan.TicksPerDay;

    private readonly TemporalNetwork network;

    /// <summary>Works out the dates.</summary>
    /// <param name="steps">The steps, with unique ids; at least one. Of each only its id, name and duration count, and whether it may be
    /// interrupted.</param>
    /// <param name="lags">Times to keep between steps, in any order, counted in elapsed time.</param>
    /// <exception cref="ArgumentException">
    /// No step is given, an id stands twice, a lag refers to an unknown step or to one step twice, or it has a <see
    /// cref="StepLag.Clock"/>: how long that
    /// takes depends on the day, which is not known here.
    /// </exception>
    public CriticalPath(IEnumerable<SiteStep> steps, IEnumerable<StepLag> lags)
    {
        ValueList<SiteStep> listed = Guard.List(steps, 1);
        Lags = Guard.List(lags);
        Check(listed, Lags);
        TemporalNetwork open = NetworkOf(listed, Lags, null);
        Conflict = open.Conflict;
        network = open.IsPossible ? open.EndingEarly(Done) : open;
        Steps = open.IsPossible
            ? new ValueList<ActivityTime>(listed.Select((step, i) =>
                new ActivityTime(step, network.Times[(2 * i) + 1].Earliest!.Value, network.Times[(2 * i) + 1].Latest!.Value)))
            : ValueList<ActivityTime>.Empty;
        Critical = new ValueList<ActivityTime>(
            Steps.Where(step => step.IsCritical).OrderBy(step => step.EarliestStart).ThenBy(step => step.EarliestFinish));
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
    public IReadOnlyList<ActivityTime> Critical { get; }

    /// <summary>How every early and late date follows, as longest paths.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => network.Workings();

    /// <summary>The length and the critical steps, or the contradiction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Conflict?.ToString() ?? TimeConstraint.Hours(Length) + ": " + string.Join(" → ", Critical.Select(step => step.Step.Name));

    /// <summary>
    /// A start point and an end point for each step, between the start and the end of the whole, called by the names of the steps. A lag
    /// on a clock
    /// counts with the least and the most real time that its record can make of it. The constraints made of lags are added to the list, if
    /// one is given.
    /// </summary>
    internal static TemporalNetwork NetworkOf(
        IReadOnlyList<SiteStep> steps, IEnumerable<StepLag> lags, Dictionary<TimeConstraint, StepLag>? made)
    {
        Dictionary<string, string> names = Labels(steps);
        List<string> points = [Begin];
        List<TimeConstraint> bounds = [];
        foreach (SiteStep step in steps)
        {
            string name = names[step.Id];
            (string start, string end) = (StartOf(name), EndOf(name));
            points.Add(start);
            points.Add(end);
            bounds.Add(new TimeConstraint(Begin, start, TimeSpan.Zero, null, "nothing comes before the start of the work"));
            bounds.Add(new TimeConstraint(start, end, step.Duration, step.IsAttended && step.IsInterruptible ? null : step.Duration,
                "duration of '" + name + "'"));
            bounds.Add(new TimeConstraint(end, Done, TimeSpan.Zero, null, "done when '" + name + "' is"));
        }

        points.Add(Done);
        foreach (StepLag lag in lags)
        {
            StepEdge real = new(0, 0, lag);
            TimeConstraint constraint = new(
                EndOf(names[lag.Before]),
                StartOf(names[lag.After]),
                TimeSpan.FromTicks(Math.Min(real.Minimum, Longest)),
                real.Maximum <= Longest ? TimeSpan.FromTicks(real.Maximum) : null,
                lag.Reason + (lag.Clock is null ? string.Empty : ", in real time at the extremes of the record"));
            bounds.Add(constraint);
            made?[constraint] = lag;
        }

        return new TemporalNetwork(points, bounds);
    }

    // Names, told apart by the id where several steps have the same.
    private static Dictionary<string, string> Labels(IReadOnlyList<SiteStep> steps)
    {
        ILookup<string, SiteStep> uses = steps.ToLookup(step => step.Name, StringComparer.Ordinal);
        Dictionary<string, string> labels = new(StringComparer.Ordinal);
        HashSet<string> taken = new(StringComparer.Ordinal);
        foreach (SiteStep step in steps)
        {
            string label = uses[step.Name].Count() == 1 ? step.Name : step.Name + " (" + step.Id + ")";
            while (!taken.Add(label))
            {
                label += " (" + step.Id + ")";
            }

            labels.Add(step.Id, label);
        }

        return labels;
    }

    private static void Check(ValueList<SiteStep> steps, IReadOnlyList<StepLag> lags)
    {
        Dictionary<string, int> index = SiteStep.Indexed(steps, nameof(steps));
        foreach (StepLag lag in lags)
        {
            lag.CheckEnds(index, nameof(lags));
            if (lag.Clock is not null)
            {
                throw new ArgumentException("The lag '" + lag.Reason
                    + "' is counted on a clock that follows temperature; allowed: elapsed time.", nameof(lags));
            }
        }
    }

    private static string StartOf(string step) => "start of " + step;

    private static string EndOf(string step) => "end of " + step;
}
