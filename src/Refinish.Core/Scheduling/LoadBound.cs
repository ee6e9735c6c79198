using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// A time before which the work cannot end, from what only one can have at a time. Steps that start not before a time, and after which at
/// least
/// so much has to follow, are packed from that time on as if they could be cut anywhere: into the crew's hours by their work, and the
/// spraying of
/// one room one coat after the other.
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
    private readonly List<(int[] Steps, Func<int, long> Work)> sets = [];
    private readonly long[] starts;

    public LoadBound(StepModel model)
    {
        this.model = model;
        starts = new long[model.Count];
        FindSets();
        long[] tails = model.Tails();
        foreach ((int[] steps, Func<int, long> work) in sets)
        {
            whole.Add(new Load(steps, work, i => tails[i] - model.Duration[i], -1));
        }
    }

    /// <summary>The bound over every start time; when thorough, over every least that follows as well.</summary>
    public long Of(long[] times, DaySet days, bool thorough)
    {
        long bound = 0;
        foreach (Load load in whole)
        {
            bound = Math.Max(bound, Over(load, times, days, thorough));
        }

        return bound;
    }

    /// <summary>Steps that many others have to precede: each cannot start before the load of those is done.</summary>
    public void AddGates(LongestPaths paths)
    {
        bool Precedes(int i, int gate) =>
            i != gate && paths.Between(i, gate) != Openings.Never && paths.Between(i, gate) >= model.Duration[i];
        int Before(int gate) => Enumerable.Range(0, model.Count).Count(i => Precedes(i, gate));
        foreach (int gate in Enumerable.Range(0, model.Count).Where(gate => Before(gate) >= FewestBeforeGate).OrderByDescending(Before)
            .Take(MostGates))
        {
            foreach ((int[] steps, Func<int, long> work) in sets)
            {
                gates.Add(new Load([.. steps.Where(i => Precedes(i, gate))], work, i => paths.Between(i, gate) - model.Duration[i], gate));
            }
        }
    }

    public int Gates => gates.Count;

    /// <summary>The step that a gate holds, and the time before which it cannot start.</summary>
    public (int Step, long Time) Gate(int k, long[] times, DaySet days) => (gates[k].Target, Over(gates[k], times, days, thorough: true));

    private void FindSets()
    {
        (int capacity, int[] need) = (model.Means[0].Capacity, model.Means[0].Need);
        sets.Add(([.. Enumerable.Range(0, model.Count).Where(i => need[i] > 0)], i =>
            ((model.Duration[i] * need[i]) + capacity - 1) / capacity));
        foreach (int[] room in model.Rooms)
        {
            // With more people, work beside work in one room is possible; spraying still is alone.
            int[] alone = [.. room.Where(i => need[i] > 0 && model.Sprays[i])];
            if (capacity > 1 && alone.Length > 1)
            {
                sets.Add((alone, i => model.Duration[i]));
            }
        }
    }

    private long Over(Load load, long[] times, DaySet days, bool thorough)
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
                    bound = Math.Max(bound, model.Openings.AfterWork(times[steps[k]], sum, days) + after);
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

    private sealed class Load(int[] steps, Func<int, long> work, Func<int, long> following, int target)
    {
        public int[] Steps { get; } = [.. steps];

        public long[] Work { get; } = [.. steps.Select(work)];

        public long[] Following { get; } = [.. steps.Select(following)];

        /// <summary>
        /// Every least that follows; for a gate only the lowest and the one after the widest jump, such as from demasking to the last coat
        /// before a cure.
        /// </summary>
        public long[] Levels { get; } = target < 0 ? [.. Ascending(steps, following)] : Telling([.. Ascending(steps, following)]);

        public int Target { get; } = target;

        private static IEnumerable<long> Ascending(int[] steps, Func<int, long> following) =>
            steps.Select(following).Distinct().OrderBy(level => level);

        private static long[] Telling(long[] levels) => levels.Length < 3
            ? levels
            : [levels[0], Enumerable.Range(1, levels.Length - 1).OrderByDescending(k => levels[k] - levels[k - 1]).Select(k => levels[k])
                .First()];
    }
}
