using System;
using System.Collections.Generic;
using System.Globalization;

namespace Refinish.Scheduling;

/// <summary>A step with its clock times.</summary>
public sealed record ScheduledStep
{
    internal ScheduledStep(ScheduleStep step, IReadOnlyList<WorkPiece> pieces)
    {
        Step = step;
        Pieces = pieces;
    }

    /// <summary>The step.</summary>
    public ScheduleStep Step { get; }

    /// <summary>When it starts.</summary>
    public DateTimeOffset Start => Pieces[0].Start;

    /// <summary>When it ends, nights that cut an interruptible step included.</summary>
    public DateTimeOffset End => Pieces[Pieces.Count - 1].End;

    /// <summary>The stretches of work; more than one only for an interruptible step.</summary>
    public IReadOnlyList<WorkPiece> Pieces { get; }

    /// <summary>The times and the name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Start.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " to " + End.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " " + Step.Name;
}
