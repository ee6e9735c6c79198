using System;
using System.Collections.Generic;

namespace Refinish.Estimating;

/// <summary>Paid hours of one standard at one place, of one worker at one wage, to be one line of an estimate.</summary>
internal sealed class PricedLabour
{
    private double hours;

    private PricedLabour(LabourTask task)
    {
        Task = task;
        Key = new("labour/" + task.Standard.Code, task.Fixture, task.Room, task.Wage is null ? null : task.Worker);
    }

    public LineKey Key { get; private set; }

    /// <summary>The first of the tasks.</summary>
    public LabourTask Task { get; }

    /// <summary>Hours are shown, and paid, in thousandths, rounded once: finer than anybody books, so that many short lines still add up.</summary>
    public decimal Hours => Math.Round((decimal)hours, 3, MidpointRounding.AwayFromZero);

    /// <summary>The lines of some labour, in the order in which each first appears.</summary>
    public static List<PricedLabour> Of(IReadOnlyList<LabourLine> lines)
    {
        List<PricedLabour> all = new(lines.Count);
        Dictionary<string, List<PricedLabour>> byId = new(lines.Count, StringComparer.Ordinal);
        for (int i = 0; i < lines.Count; i++)
        {
            PricedLabour one = new(lines[i].Task);
            if (!byId.TryGetValue(one.Key.Id, out List<PricedLabour>? same))
            {
                byId.Add(one.Key.Id, same = []);
            }

            int at = same.FindIndex(other => other.Task.Wage == one.Task.Wage);
            if (at < 0)
            {
                same.Add(one);
                all.Add(one);
                at = same.Count - 1;
            }

            same[at].hours += lines[i].HourRange.Mean;
        }

        // One worker at several wages, which is rare: the wage then joins the key.
        foreach (List<PricedLabour> same in byId.Values)
        {
            for (int i = 0; i < same.Count && same.Count > 1; i++)
            {
                LineKey key = same[i].Key;
                same[i].Key = new(key.Item, key.Fixture, key.Room, key.Worker, same[i].Task.Wage);
            }
        }

        return all;
    }
}
