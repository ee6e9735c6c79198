using System;
using System.Collections.Generic;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>The place of a job: its rooms, the hours in which it must be quiet or stays closed, and how hard it is to work there.</summary>
public sealed record Premises
{

    /// <summary>Identifier of the premises.</summary>
    /// <exception cref="ArgumentException">Empty, longer than 100 characters, or with a slash.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Name for job sheets; the identifier unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => field ?? Id; init => field = Guard.Named(value); }

    /// <summary>The rooms, at least one, with unique identifiers.</summary>
    /// <exception cref="ArgumentException">None is given, an entry is missing, or two have one identifier.</exception>
    public required IReadOnlyList<SiteRoom> Rooms { get; init => field = Unique.Ids(Guard.List(value, 1), room => room.Id, nameof(Rooms)); }

    /// <summary>
    /// Hours of the week in which no loud work is done, by the clock of the site; none unless given. Quiet work may go on.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<WorkShift> QuietHours { get; init => field = Guard.List(value); } = ValueList<WorkShift>.Empty;

    /// <summary>Stretches of time in which nobody of the shop may be on the premises; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<TimeInterval> Closed { get; init => field = Guard.List(value); } = ValueList<TimeInterval>.Empty;

    /// <summary>Factor on all labour on site for an occupied home, stairs or no window, 0.5 to 3; 1 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Difficulty { get; init => field = Guard.Within(value, Bounds.Between(0.5, 3, Measure.Number)); } = 1;

    /// <summary>Name and number of rooms.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Figures.Fixed(Rooms.Count, 0) + (Rooms.Count == 1 ? " room" : " rooms");
}
