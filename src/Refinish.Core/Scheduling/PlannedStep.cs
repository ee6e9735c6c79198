using System;
using System.Collections.Generic;
using System.Globalization;

namespace Refinish.Scheduling;

/// <summary>A step of a <see cref="SiteSchedule"/> with its clock times, and what let it start no sooner.</summary>
public sealed record PlannedStep
{
    internal PlannedStep(SiteStep step, IReadOnlyList<WorkPiece> pieces, DateTimeOffset roomClear, ChainLink driver)
    {
        Step = step;
        Pieces = pieces;
        RoomClear = roomClear;
        Driver = driver;
    }

    /// <summary>The step.</summary>
    public SiteStep Step { get; }

    /// <summary>When it starts, by the clock of the site.</summary>
    public DateTimeOffset Start => Pieces[0].Start;

    /// <summary>When it ends, nights and days off that cut it included.</summary>
    public DateTimeOffset End => Pieces[Pieces.Count - 1].End;

    /// <summary>The stretches of work; more than one only for an interruptible step.</summary>
    public IReadOnlyList<WorkPiece> Pieces { get; }

    /// <summary>Until when its room stays empty: the end, with the time to clear when it sprays.</summary>
    public DateTimeOffset RoomClear { get; }

    /// <summary>What let it start no sooner.</summary>
    public ChainLink Driver { get; }

    /// <summary>The times and the name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Start.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " to " + End.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + " " + Step.Name;
}
