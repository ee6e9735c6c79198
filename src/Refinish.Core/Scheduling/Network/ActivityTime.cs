using System;

namespace Refinish.Scheduling;

/// <summary>The early and late dates of one step of a <see cref="CriticalPath"/>, counted from the start of the work.</summary>
/// <param name="Step">The step.</param>
/// <param name="EarliestStart">The earliest time at which it can start.</param>
/// <param name="LatestStart">The latest time at which it can start without delaying the whole.</param>
public sealed record ActivityTime(SiteStep Step, TimeSpan EarliestStart, TimeSpan LatestStart)
{
    /// <summary>The earliest time at which it can end.</summary>
    public TimeSpan EarliestFinish => EarliestStart + Step.Duration;

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
