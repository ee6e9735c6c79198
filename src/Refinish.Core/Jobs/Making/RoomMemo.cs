using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coverage;

namespace Refinish.Jobs;

/// <summary>
/// What was reckoned of one room while a list was made, for the lists that follow from it: what comes before the coats, which no later need
/// changes, runs of coating and clearing times by what they were reckoned from. It grows while its list is made and never after.
/// </summary>
internal sealed class RoomMemo
{
    private readonly List<(Procedure[] Group, ApplicationLosses Losses, double Surface, CoatRun Run)> runs = [];
    private readonly List<((object Source, TimeSpan End, TimeSpan Duration)[] Placed, TimeSpan? Clear)> clearings = [];

    /// <param name="before">What was reckoned for the list before; <see langword="null"/> for the first.</param>
    public RoomMemo(RoomMemo? before)
    {
        if (before is not null)
        {
            runs.AddRange(before.runs);
            clearings.AddRange(before.clearings);
            Preparation = before.Preparation;
        }
    }

    /// <summary>
    /// Everything before the first coat, and the temperature of each fixture's surface; <see langword="null"/> until it is made.
    /// </summary>
    public (RoomPart Part, Dictionary<string, double> Surfaces)? Preparation { get; set; }

    /// <summary>A run of the same fixtures with the same losses on a surface as cold; made unless it is there.</summary>
    public CoatRun Run(string id, List<Procedure> group, ApplicationLosses losses, double surface, Func<CoatRun> make)
    {
        foreach ((Procedure[] other, ApplicationLosses lost, double kelvins, CoatRun made) in runs)
        {
            if (made.Id == id && kelvins == surface && lost.Equals(losses) && other.SequenceEqual(group))
            {
                return made;
            }
        }

        CoatRun run = make();
        runs.Add(([.. group], losses, surface, run));
        return run;
    }

    /// <summary>The clearing time after the same sources at the same times; studied unless it is there.</summary>
    public TimeSpan? Clearing((object Source, TimeSpan End, TimeSpan Duration)[] placed, Func<TimeSpan?> study)
    {
        foreach (((object, TimeSpan, TimeSpan)[] other, TimeSpan? known) in clearings)
        {
            if (IsSame(placed, other))
            {
                return known;
            }
        }

        TimeSpan? clear = study();
        clearings.Add((placed, clear));
        return clear;
    }

    private static bool IsSame(
        (object Source, TimeSpan End, TimeSpan Duration)[] one, (object Source, TimeSpan End, TimeSpan Duration)[] other)
    {
        return one.Length == other.Length && one.Zip(other, (a, b) =>
            ReferenceEquals(a.Source, b.Source) && a.End == b.End && a.Duration == b.Duration).All(same => same);
    }
}
