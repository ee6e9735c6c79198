using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>One day on which the crew comes: what it does, in order.</summary>
public sealed record CrewVisit
{
    internal CrewVisit(IEnumerable<CrewTurn> turns)
    {
        Turns = new ValueList<CrewTurn>(turns);
        Leaves = Turns.Max(turn => turn.Piece.End);
        Worked = TimeSpan.FromTicks(Turns.Sum(turn => turn.Piece.Length.Ticks * turn.Step.People));
    }

    /// <summary>What is done, by start.</summary>
    public IReadOnlyList<CrewTurn> Turns { get; }

    /// <summary>When the first turn starts.</summary>
    public DateTimeOffset Arrives => Turns[0].Piece.Start;

    /// <summary>When the last turn ends.</summary>
    public DateTimeOffset Leaves { get; }

    /// <summary>Working time of all people together.</summary>
    public TimeSpan Worked { get; }

    /// <summary>The day and its hours.</summary>
    /// <returns>Text such as <c>2027-03-01 08:00 to 15:30, 6 h worked</c>.</returns>
    public override string ToString() => TimeInterval.Stay(Arrives, Leaves, Worked);
}
