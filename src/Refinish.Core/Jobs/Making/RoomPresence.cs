using System;
using System.Collections.Generic;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>One stay of one person in one room.</summary>
internal readonly struct RoomPresence(int person, string room, DateTimeOffset from, DateTimeOffset until)
{
    public int Person { get; } = person;

    public string Room { get; } = room;

    public DateTimeOffset From { get; } = from;

    public DateTimeOffset Until { get; } = until;

    /// <summary>All stays of a schedule. Of two people at a coat the first sprays and the other stands by outside.</summary>
    public static IEnumerable<RoomPresence> Of(CrewSchedule schedule)
    {
        foreach (PlannedStep step in schedule.Found.Steps)
        {
            if (step.Step.Room is not string room)
            {
                continue;
            }

            int inside = step.Step.Sprays ? Math.Min(1, step.People.Count) : step.People.Count;
            for (int i = 0; i < inside; i++)
            {
                foreach (TimeInterval piece in step.Pieces)
                {
                    if (piece.End > piece.Start)
                    {
                        yield return new RoomPresence(step.People[i], room, piece.Start, piece.End);
                    }
                }
            }
        }
    }
}
