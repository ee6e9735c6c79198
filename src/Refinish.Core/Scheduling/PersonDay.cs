using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>What one person of the crew does on one day: when they come and go, and their own turns.</summary>
public sealed record PersonDay
{
    internal PersonDay(int person, DateTime date, IReadOnlyList<CrewTurn> turns)
    {
        Person = person;
        Date = date;
        Turns = turns;
        Leaves = turns.Max(turn => turn.Piece.End);
        Worked = TimeSpan.FromTicks(turns.Sum(turn => turn.Piece.Length.Ticks));
    }

    /// <summary>Number of the person within the crew, from 0.</summary>
    public int Person { get; }

    /// <summary>The date by the clock of the site.</summary>
    public DateTime Date { get; }

    /// <summary>When their first turn starts.</summary>
    public DateTimeOffset Arrives => Turns[0].Piece.Start;

    /// <summary>When their last turn ends.</summary>
    public DateTimeOffset Leaves { get; }

    /// <summary>Sum of their own turns; the rest of the time from arriving to leaving is waiting.</summary>
    public TimeSpan Worked { get; }

    /// <summary>Their turns, by start.</summary>
    public IReadOnlyList<CrewTurn> Turns { get; }

    /// <summary>The person, the day and its hours.</summary>
    /// <returns>Text such as <c>person 1: 2027-03-01 08:00 to 15:30, 6 h worked</c>.</returns>
    public override string ToString() =>
        "person " + Figures.Fixed(Person + 1, 0) + ": " + TimeInterval.Stay(Arrives, Leaves, Worked);
}
