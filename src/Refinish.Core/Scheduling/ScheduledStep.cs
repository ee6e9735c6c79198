using System;
using System.Globalization;

namespace Refinish.Scheduling;

/// <summary>A step with its clock times.</summary>
public sealed record ScheduledStep
{
    internal ScheduledStep(ScheduleStep step, DateTimeOffset start)
    {
        Step = step;
        Start = start;
    }

    /// <summary>The step.</summary>
    public ScheduleStep Step { get; }

    /// <summary>When it starts.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>When it ends.</summary>
    public DateTimeOffset End => Start + Step.Duration;

    /// <summary>The times and the name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Start.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " to " + End.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " " + Step.Name;
}
