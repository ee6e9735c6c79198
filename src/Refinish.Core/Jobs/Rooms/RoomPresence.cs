using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>One stay of one person in one room.</summary>
internal readonly record struct RoomPresence(int Person, string Room, DateTimeOffset From, DateTimeOffset Until)
{
    /// <summary>
    /// All stays of a schedule. Of two people at a coat the first sprays and the other stands by outside, as the last does at other
    /// work that is watched.
    /// </summary>
    public static IEnumerable<RoomPresence> Of(CrewSchedule schedule)
    {
        HashSet<string> watched = new(schedule.Work.Operations.Select(operation => operation.Beside).OfType<string>(), StringComparer.Ordinal);
        HashSet<string> sprayed = new(schedule.Work.Operations.Where(operation => operation.Sprays).Select(operation => operation.Id), StringComparer.Ordinal);
        foreach (PlannedStep step in schedule.Found.Steps)
        {
            if (step.Step.Room is not string room)
            {
                continue;
            }

            int inside = sprayed.Contains(step.Step.Id) ? Math.Min(1, step.People.Count) : step.People.Count - (watched.Contains(step.Step.Id) ? 1 : 0);
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
