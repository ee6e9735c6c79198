using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// A time before which the work cannot end, from what only one can have at a time. Steps that start not before a time, and after which at
/// least so much has to follow, are packed from that time on as if they could be cut anywhere: into the crew's hours by their work, and the
/// spraying of one room one coat after the other.
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
    private readonly long[] worked;

    public LoadBound(StepModel model)
    {
        this.model = model;
        starts = new long[model.Count];
        worked = new long[model.Count];
        FindSets();
        long[] tails = model.Tails();
        foreach ((int[] steps, Func<int, long> work) in sets)
        {
            whole.Add(new Load(steps, work, i => tails[i] - model.Duration[i], -1));
        }
    }

    /// <summary>The bound over every start time; when thorough, over every least that follows as well.</summary>
    /// <param name="times">The earliest start of each step.</param>
    /// <param name="days">The days on which may be worked.</param>
    /// <param name="thorough">Whether every least that follows counts.</param>
    /// <param name="known">A bound that is known already; only a later one is told.</param>
    public long Of(long[] times, DaySet days, bool thorough, long known)
    {
        long bound = known;
        foreach (Load load in whole)
        {
            bound = Over(load, times, days, thorough, bound);
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
    public (int Step, long Time) Gate(int k, long[] times, DaySet days) => 
        (gates[k].Target, Over(gates[k], times, days, thorough: true, times[gates[k].Target]));

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

    private long Over(Load load, long[] times, DaySet days, bool thorough, long known)
    {
        long bound = known;
        (int[] steps, long[] work, long[] following) = (load.Steps, load.Work, load.Following);
        Sort(times, steps, work, following);
        bool counted = days.IsAll && Count(steps.Length);
        foreach (long level in thorough ? load.Levels : Lowest)
        {
            bound = counted
                ? Counted(work, following, steps.Length, level, bound)
                : Packed(work, following, steps.Length, level, days, bound);
        }

        return bound;
    }

    private long Packed(long[] work, long[] following, int length, long level, DaySet days, long known)
    {
        (long bound, long sum, long after) = (known, 0, long.MaxValue);
        for (int k = length - 1; k >= 0; k--)
        {
            if (following[k] >= level)
            {
                sum += work[k];
                after = Math.Min(after, following[k]);
                bound = Math.Max(bound, model.Openings.AfterWork(starts[k], sum, days) + after);
            }
        }

        return bound;
    }

    // The same in working time: a load ends after an instant exactly when it comes to more than the working time until then, which saves
    // looking up an instant for each.
    private long Counted(long[] work, long[] following, int length, long level, long known)
    {
        (long bound, long sum, long after, long least) = (known, 0, long.MaxValue, 0);
        for (int k = length - 1; k >= 0; k--)
        {
            if (following[k] < level)
            {
                continue;
            }

            sum += work[k];
            if (following[k] < after)
            {
                after = following[k];
                least = model.Openings.WorkUntil(bound - after);
            }

            if (sum <= 0)
            {
                // No work ends where it starts, within a shift or not.
                if (starts[k] + after > bound)
                {
                    bound = starts[k] + after;
                    least = model.Openings.WorkUntil(bound - after);
                }
            }
            else if (least >= 0 && worked[k] + sum > least)
            {
                bound = model.Openings.WhenWorked(worked[k] + sum) + after;
                least = worked[k] + sum;
            }
        }

        return bound;
    }

    // Working time until each start; false when one lies beyond the calendar.
    private bool Count(int length)
    {
        for (int k = 0; k < length; k++)
        {
            worked[k] = model.Openings.WorkUntil(starts[k]);
            if (worked[k] < 0)
            {
                return false;
            }
        }

        return true;
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
