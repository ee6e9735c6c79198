using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>A step of a <see cref="SiteSchedule"/> with its clock times, who does it, and what let it start no sooner.</summary>
public sealed record PlannedStep
{
    private readonly ChainFinder chain;
    private readonly int index;

    internal PlannedStep(SiteStep step, ValueList<TimeInterval> pieces, DateTimeOffset roomClear, ValueList<int> people,
        ChainFinder chain, int index)
    {
        Step = step;
        Pieces = pieces;
        RoomClear = roomClear;
        People = people;
        this.chain = chain;
        this.index = index;
    }

    /// <summary>The step.</summary>
    public SiteStep Step { get; }

    /// <summary>When it starts, by the clock of the site.</summary>
    public DateTimeOffset Start => Pieces[0].Start;

    /// <summary>When it ends, nights and days off that cut it included.</summary>
    public DateTimeOffset End => Pieces[Pieces.Count - 1].End;

    /// <summary>The stretches of work; more than one only for an interruptible step.</summary>
    public IReadOnlyList<TimeInterval> Pieces { get; }

    /// <summary>Until when its room stays empty: the end, with the time to clear when it sprays.</summary>
    public DateTimeOffset RoomClear { get; }

    /// <summary>
    /// Numbers of the crew who do it, from 0 and rising, as many as <see cref="SiteStep.People"/>; they stay with it from start to end.
    /// Taken first: whoever
    /// is in the room already, then whoever is on site on that day, then the lowest number.
    /// </summary>
    public IReadOnlyList<int> People { get; }

    /// <summary>What let it start no sooner.</summary>
    public ChainLink Driver => chain.Of(index);

    /// <summary>Whether step, times and people are equal.</summary>
    /// <param name="other">The planned step to compare with.</param>
    /// <returns><see langword="true"/> when they are.</returns>
    public bool Equals(PlannedStep? other) =>
        other is not null && Step.Equals(other.Step) && Pieces.Equals(other.Pieces) && People.Equals(other.People)
            && RoomClear == other.RoomClear;

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((Step.GetHashCode() * 31) + Pieces.GetHashCode());

    /// <summary>The times and the name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        TimeInterval.Minute(CarefulTime.Up(Start)) + " to " + TimeInterval.Minute(CarefulTime.Up(End)) + " " + Step.Name;
}
