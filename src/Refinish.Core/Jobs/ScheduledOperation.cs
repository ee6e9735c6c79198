using System;
using System.Collections.Generic;
using System.Globalization;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>An operation with its clock times and the people who do it.</summary>
public sealed record ScheduledOperation
{
    internal ScheduledOperation(Operation operation, IReadOnlyList<TimeInterval> pieces, IReadOnlyList<string> people)
    {
        Operation = operation;
        Pieces = pieces;
        People = new ValueList<string>(people);
    }

    /// <summary>The operation.</summary>
    public Operation Operation { get; }

    /// <summary>When it starts, by the clock of the site.</summary>
    public DateTimeOffset Start => Pieces[0].Start;

    /// <summary>When it ends, nights that cut an interruptible operation included.</summary>
    public DateTimeOffset End => Pieces[Pieces.Count - 1].End;

    /// <summary>The stretches of work; more than one only for an interruptible operation.</summary>
    public IReadOnlyList<TimeInterval> Pieces { get; }

    /// <summary>Identifiers of the people who do it; empty for a wait.</summary>
    public IReadOnlyList<string> People { get; }

    /// <summary>The times, a part of a minute counted as a whole one, and the label.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        CarefulTime.Up(Start).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " to " + CarefulTime.Up(End).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " " + Operation.Name;
}
