using System;

namespace Refinish.Scheduling;

/// <summary>The early and late dates of one step of a <see cref="CriticalPath"/>, counted from the start of the work.</summary>
public sealed record ActivityTime
{
    internal ActivityTime(SiteStep step, TimeSpan earliestStart, TimeSpan latestStart)
    {
        Step = step;
        EarliestStart = earliestStart;
        LatestStart = latestStart;
    }

    /// <summary>The step.</summary>
    public SiteStep Step { get; }

    /// <summary>The earliest time at which it can start.</summary>
    public TimeSpan EarliestStart { get; }

    /// <summary>The earliest time at which it can end.</summary>
    public TimeSpan EarliestFinish => EarliestStart + Step.Duration;

    /// <summary>The latest time at which it can start without delaying the whole.</summary>
    public TimeSpan LatestStart { get; }

    /// <summary>The latest time at which it can end without delaying the whole.</summary>
    public TimeSpan LatestFinish => LatestStart + Step.Duration;

    /// <summary>By how much it can be late without delaying the whole.</summary>
    public TimeSpan Slack => LatestStart - EarliestStart;

    /// <summary>Whether any delay of it delays the whole.</summary>
    public bool IsCritical => Slack == TimeSpan.Zero;

    /// <summary>The step and its dates in one line.</summary>
    /// <returns>Text such as <c>prime: starts 3 h to 5 h</c>.</returns>
    public override string ToString() =>
        Step.Name + ": starts " + TimeConstraint.Hours(EarliestStart) + " to " + TimeConstraint.Hours(LatestStart);
}
