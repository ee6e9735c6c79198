using System;
using System.Collections.Generic;
using Refinish.Scheduling;

namespace Refinish.Pictures.Drawing;

/// <summary>One operation or step as a timeline shows it.</summary>
internal sealed record TimelineEntry(
    string Id,
    string Name,
    string? Room,
    TimelineKind Kind,
    IReadOnlyList<TimeInterval> Pieces,
    IReadOnlyList<string> People,
    DateTimeOffset RoomClear)
{
    public DateTimeOffset Start => Pieces[0].Start;

    public DateTimeOffset End => Pieces[Pieces.Count - 1].End;

    /// <summary>Whether only those who do it are in the room from its start until the room is clear.</summary>
    public bool KeepsOthersOut { get; init; }

    /// <summary>Who stands by while it lasts.</summary>
    public IReadOnlyList<string> StandingBy { get; init; } = [];
}
