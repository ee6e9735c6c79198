using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// A time before which the work cannot end, from what only one can have at a time. Steps that start not before a time, and after which at least
/// so much has to follow, are packed from that time on as if they could be cut anywhere: into the crew's hours by their work, and into each room
/// by their work and the clearing after it, which may also run after hours.
/// </summary>
internal sealed class LoadBound
{
    // Invented limits: gates cost time at every node, and few steps before one seldom tell anything.
    private const int FewestBeforeGate = 4;
    private const int MostGates = 2;

    private static readonly long[] Lowest = [long.MinValue];

    private readonly List<Load> whole = [];
    private readonly List<Load> gates = [];
    private readonly StepModel model;
    private readonly Openings openings;
    private readonly List<(Openings Hours, int[] Steps, Func<int, long> Work, Func<int, long> Beyond)> sets = [];
    private readonly long[] starts;

    public LoadBound(StepModel model, Openings openings)
    {
        this.model = model;
        this.openings = openings;
        starts = new long[model.Count];
        FindSets();
        long[] tails = model.Tails();
        foreach ((Openings hours, int[] steps, Func<int, long> work, Func<int, long> beyond) in sets)
        {
            whole.Add(new Load(hours, steps, work, i => tails[i] - model.Duration[i] - beyond(i), -1));
        }
    }

    /// <summary>The bound over every start time; when thorough, over every least that follows as well.</summary>
    public long Of(long[] times, bool thorough)
    {
        long bound = 0;
        foreach (Load load in whole)
        {
            bound = Math.Max(bound, Over(load, times, thorough));
        }

        return bound;
    }

    /// <summary>Steps that many others have to precede: each cannot start before the load of those is done. Given the least time between starts.</summary>
    public void AddGates(long[][] distance)
    {
        bool Precedes(int i, int gate) => i != gate && distance[i][gate] != Openings.Never && distance[i][gate] >= model.Duration[i];
        foreach (int gate in Enumerable.Range(0, model.Count)
            .Where(gate => Enumerable.Range(0, model.Count).Count(i => Precedes(i, gate)) >= FewestBeforeGate)
            .OrderByDescending(gate => Enumerable.Range(0, model.Count).Count(i => Precedes(i, gate)))
            .Take(MostGates))
        {
            foreach ((Openings hours, int[] steps, Func<int, long> work, Func<int, long> beyond) in sets)
            {
                gates.Add(new Load(hours, [.. steps.Where(i => Precedes(i, gate))], work, i => distance[i][gate] - model.Duration[i] - beyond(i), gate));
            }
        }
    }

    /// <summary>The gates, with the time before which each cannot start.</summary>
    public IEnumerable<(int Gate, long Time)> Gates(long[] times)
    {
        foreach (Load load in gates)
        {
            yield return (load.Target, Over(load, times, thorough: true));
        }
    }

    private void FindSets()
    {
        (_, int capacity, int[] need) = model.Means[0];
        sets.Add((openings, [.. Enumerable.Range(0, model.Count).Where(i => need[i] > 0)], i => ((model.Duration[i] * need[i]) + capacity - 1) / capacity, _ => 0));
        foreach (int[] room in model.Rooms)
        {
            // With more people, work beside work in one room is possible; spraying still is alone.
            int[] alone = [.. room.Where(i => need[i] > 0 && (capacity == 1 || model.Clears[i] != StepModel.None))];
            long longest = alone.Length == 0 ? 0 : alone.Max(i => Math.Max(0, model.Clears[i]));
            if (longest > 0)
            {
                sets.Add((openings.Longer(longest), alone, i => model.Duration[i] + Math.Max(0, model.Clears[i]), i => Math.Max(0, model.Clears[i])));
            }
        }
    }

    private long Over(Load load, long[] times, bool thorough)
    {
        long bound = 0;
        (int[] steps, long[] work, long[] following) = (load.Steps, load.Work, load.Following);
        Sort(times, steps, work, following);
        foreach (long level in thorough ? load.Levels : Lowest)
        {
            long sum = 0;
            long after = long.MaxValue;
            for (int k = steps.Length - 1; k >= 0; k--)
            {
                if (following[k] >= level)
                {
                    sum += work[k];
                    after = Math.Min(after, following[k]);
                    bound = Math.Max(bound, load.Hours.AfterWork(times[steps[k]], sum) + after);
                }
            }
        }

        return bound;
    }

    // By start; nearly in order already, so insertion is quick.
    private void Sort(long[] times, int[] steps, long[] load, long[] following)
    {
        for (int k = 0; k < steps.Length; k++)
        {
            starts[k] = times[steps[k]];
        }

        for (int k = 1; k < steps.Length; k++)
        {
            (long time, int step, long work, long after) = (starts[k], steps[k], load[k], following[k]);
            int at = k;
            for (; at > 0 && starts[at - 1] > time; at--)
            {
                (starts[at], steps[at], load[at], following[at]) = (starts[at - 1], steps[at - 1], load[at - 1], following[at - 1]);
            }

            (starts[at], steps[at], load[at], following[at]) = (time, step, work, after);
        }
    }

    private sealed class Load(Openings hours, int[] steps, Func<int, long> work, Func<int, long> following, int target)
    {
        public Openings Hours { get; } = hours;

        public int[] Steps { get; } = [.. steps];

        public long[] Work { get; } = [.. steps.Select(work)];

        public long[] Following { get; } = [.. steps.Select(following)];

        /// <summary>Every least that follows; for a gate only the lowest and the one after the widest jump, such as from demasking to the last coat before a cure.</summary>
        public long[] Levels { get; } = target < 0 ? [.. Ascending(steps, following)] : Telling([.. Ascending(steps, following)]);

        public int Target { get; } = target;

        private static IEnumerable<long> Ascending(int[] steps, Func<int, long> following) => steps.Select(following).Distinct().OrderBy(level => level);

        private static long[] Telling(long[] levels) => levels.Length < 3
            ? levels
            : [levels[0], Enumerable.Range(1, levels.Length - 1).OrderByDescending(k => levels[k] - levels[k - 1]).Select(k => levels[k]).First()];
    }
}
