using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Why there is no schedule: what cannot hold together, and what alone would cure it.</summary>
public sealed record ScheduleConflict
{
    private readonly string text;

    internal ScheduleConflict(bool isProved, string text)
    {
        IsProved = isProved;
        this.text = text;
    }

    /// <summary>
    /// Times between steps that contradict each other whatever the hours, the crew and the rooms; <see langword="null"/> when they do not.
    /// </summary>
    public TemporalConflict? Times { get; internal init; }

    /// <summary>Steps that may not be interrupted and are longer than any shift.</summary>
    public IReadOnlyList<SiteStep> TooLong { get; internal init; } = ValueList<SiteStep>.Empty;

    /// <summary>
    /// Steps that alone, without any lag, fit nowhere: the calendar has no opening for them outside the times when they cannot be done.
    /// </summary>
    public IReadOnlyList<SiteStep> Unplaced { get; internal init; } = ValueList<SiteStep>.Empty;

    /// <summary>
    /// Lags that cannot all be kept with the working hours, the crew and the rooms as they are, or that take part in <see cref="Times"/>.
    /// Leaving out
    /// any one of them lets the others be kept. Empty when the contradiction is of another kind.
    /// </summary>
    public IReadOnlyList<StepLag> Lags { get; internal init; } = ValueList<StepLag>.Empty;

    /// <summary>
    /// Lags on a clock whose record of temperatures begins too late or ends too soon; with a longer record there would be a schedule.
    /// </summary>
    public IReadOnlyList<StepLag> ShortRecords { get; internal init; } = ValueList<StepLag>.Empty;

    /// <summary>Changes of which each alone would let the whole be scheduled.</summary>
    public IReadOnlyList<LagRelief> Reliefs { get; internal init; } = ValueList<LagRelief>.Empty;

    /// <summary>
    /// Until when hours were looked at, at least two months after the start; <see langword="null"/> where it did not come to that, since
    /// no hours would do.
    /// </summary>
    public DateTimeOffset? LookedUntil { get; internal init; }

    /// <summary>Whether it was proved that there is no schedule; otherwise none was found as far as was searched.</summary>
    public bool IsProved { get; }

    /// <summary>The contradiction and its cures in words.</summary>
    /// <returns>A few sentences.</returns>
    public override string ToString() => text;

    internal static ScheduleConflict Unknown() =>
        new(false, "No schedule was found as far as was searched; it was not proved that there is none.");

    internal static ScheduleConflict OfLength(IReadOnlyList<SiteStep> steps, TimeSpan longestShift) => new(
        true,
        string.Join(" ", steps.Select(step =>
            step.Name + " takes " + TimeConstraint.Hours(step.Duration) + " and the longest shift has "
            + TimeConstraint.Hours(longestShift) + "."))
            + " Split the step or lengthen the day.")
    {
        TooLong = new ValueList<SiteStep>(steps),
    };

    internal static ScheduleConflict OfPlace(IReadOnlyList<SiteStep> steps) => new(
        true,
        string.Join(", ", steps.Select(step => step.Name + " takes " + TimeConstraint.Hours(step.Duration)))
            + (steps.Count == 1
                ? " and fits into no working hours outside the times when it cannot be done."
                : ": each fits into no working hours outside the times when it cannot be done.")
            + " Open other hours, shorten or split the step, or change what keeps it from being done then.")
    {
        Unplaced = new ValueList<SiteStep>(steps),
    };

    internal static ScheduleConflict OfTimes(TemporalConflict times, IEnumerable<StepLag> lags) =>
        new(true, times.ToString()) { Times = times, Lags = new ValueList<StepLag>(lags) };

    internal static ScheduleConflict OfRecords(IReadOnlyList<StepLag> lags, bool late, Func<StepLag, string> sentence) => new(
        true,
        "The temperature record is too short: it " + (late ? "begins after the start of the work" : "ends before the time is reached")
            + " for "
            + string.Join("; ", lags.Select(sentence)) + ". Give temperatures for a longer time"
                + (late ? "." : ", or let the last one hold on."))
    {
        ShortRecords = new ValueList<StepLag>(lags),
        Lags = new ValueList<StepLag>(lags),
    };

    internal static ScheduleConflict OfLags(
        IReadOnlyList<StepLag> lags, IReadOnlyList<LagRelief> reliefs, Func<StepLag, string> sentence) => new(
        true,
        (lags.Count == 0
            ? "The steps cannot be done with these working hours, this crew and these rooms."
            : "With these working hours, this crew and these rooms these cannot be kept together: "
                + string.Join("; ", lags.Select(sentence)) + ".")
            + (reliefs.Count == 0 ? string.Empty : " Any one of these would do: " + string.Join("; ", reliefs) + ".")
            + " Otherwise start at another time of day, lengthen the day, or abrade and wipe again where a window has closed.")
    {
        Lags = new ValueList<StepLag>(lags),
        Reliefs = new ValueList<LagRelief>(reliefs),
    };
}
