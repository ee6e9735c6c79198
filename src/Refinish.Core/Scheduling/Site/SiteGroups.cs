using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace Refinish.Scheduling;

/// <summary>
/// Places groups of steps one after the other, each as early as it can end in the time that the earlier ones leave free, in several orders;
/// keeps the best. Each group alone, and the load of the crew, give a time before which the whole cannot end.
/// </summary>
internal sealed class SiteGroups(
    SiteWork work, SiteCompiler compiler, StepModel whole, List<List<int>> groups, SearchEffort effort, long start, long horizon,
        Action<double> tell, CancellationToken cancellation)
{
    private readonly StepModel[] models = [.. groups.Select(group => compiler.Model(work.Lags, group))];
    private readonly List<SharedMean> means = compiler.Means();

    // Filled anew for each step that is placed, and kept, since works of many rooms have thousands of steps.
    private readonly List<(long From, long Until)> stretches = [];
    private readonly List<(long Time, int Change)> changes = [];
    private readonly Dictionary<(SharedMean Mean, int Need), long[]> crowded = [];

    private int[]? bestOrder;
    private int bestTogether;
    private int passes;

    public long[]? Best { get; private set; }

    public long BestEnd { get; private set; } = long.MaxValue;

    public long Bound { get; private set; }

    public int Nodes { get; private set; }

    /// <summary>A group that could not be placed even alone.</summary>
    public List<int>? Failed { get; private set; }

    public bool FailureIsProved { get; private set; }

    /// <summary>Places all groups; false when no order worked.</summary>
    public bool Run()
    {
        long[] alone = new long[groups.Count];
        for (int g = 0; g < groups.Count; g++)
        {
            SiteSearch search = new(models[g], start, cancellation);
            search.Run(horizon, effort.NodesPerGroup, first: false);
            Nodes += search.Nodes;
            if (search.Best is null)
            {
                Failed = groups[g];
                FailureIsProved = search.IsComplete;
                return false;
            }

            alone[g] = search.BestEnd;
            Bound = Math.Max(Bound, search.Bound);
            tell(0.2 * (g + 1) / groups.Count);
        }

        Bound = Math.Max(Bound, LoadOfAll());
        foreach ((int[] order, int together) in OrdersOf(alone))
        {
            Pass(order, together);
            if (BestEnd == Bound)
            {
                break;
            }
        }

        return Best is not null;
    }

    private long LoadOfAll()
    {
        long[] starts = new long[whole.Count];
        long[] ends = new long[whole.Count];
        return new EarliestTimes(whole, null).Solve(start, horizon, starts, ends) >= 0
            ? start
            : new LoadBound(whole).Of(starts, DaySet.All, thorough: true, SiteSearch.Last(ends));
    }

    // Groups placed two or three together mesh better; a few orders in which one placed alone may end sooner; then, from the best, one
    // group moved.
    private IEnumerable<(int[] Order, int Together)> OrdersOf(long[] alone)
    {
        int[] listed = [.. Enumerable.Range(0, groups.Count)];
        int[] longestFirst = [.. listed.OrderByDescending(g => alone[g]).ThenBy(g => g)];
        int given = 0;
        foreach ((int[] order, int together) in new[] { (listed, 2), (listed, 1), (listed, 3), (longestFirst, 2), (longestFirst, 1),
            (longestFirst, 3) })
        {
            if (given++ < effort.Orders)
            {
                yield return (order, together);
            }
        }

        // A fixed rule, so that the same work gives the same schedule.
        ulong seed = 1;
        int Next(int below)
        {
            seed = unchecked((seed * 6364136223846793005UL) + 1442695040888963407UL);
            return (int)((seed >> 33) % (ulong)below);
        }

        for (given = 6; given < effort.Orders && bestOrder is not null; given++)
        {
            List<int> order = [.. bestOrder];
            int moved = order[Next(order.Count)];
            order.Remove(moved);
            order.Insert(Next(order.Count + 1), moved);
            yield return ([.. order], bestTogether);
        }
    }

    private void Pass(int[] order, int together)
    {
        long[] starts = new long[work.Steps.Count];
        long[] ends = new long[work.Steps.Count];
        List<int> done = [];
        long end = 0;
        passes++;
        for (int k = 0; k < order.Length; k += together)
        {
            int[] batch = [.. order.Skip(k).Take(together)];
            List<int> steps = [.. batch.SelectMany(g => groups[g])];
            StepModel model = batch.Length == 1 ? models[batch[0]] : compiler.Model(work.Lags, steps);
            crowded.Clear();
            SiteSearch search = new(model, start, [.. steps.Select(i => Taken(i, done, starts, ends))], Used(done, starts, ends),
                cancellation);
            search.Run(Math.Min(horizon, BestEnd - 1), effort.NodesPerGroup, first: false);
            Nodes += search.Nodes;
            if (search.Best is null)
            {
                return;
            }

            long[] placed = model.Ends(search.Best, DaySet.All);
            for (int i = 0; i < placed.Length; i++)
            {
                starts[steps[i]] = search.Best[i];
                ends[steps[i]] = placed[i];
            }

            done.AddRange(steps);
            end = Math.Max(end, search.BestEnd);
            tell(0.2 + (0.8 * Math.Min(1, (passes - 1 + ((double)done.Count / work.Steps.Count)) / effort.Orders)));
        }

        (Best, BestEnd, bestOrder, bestTogether) = (starts, end, order, together);
    }

    /// <summary>What the steps already placed take of each shared mean.</summary>
    private List<(long From, long Until, int Need)>[] Used(List<int> done, long[] starts, long[] ends) =>
        [.. means.Select(mean =>
            mean.Capacity <= 1 ? [] : done.Where(i => mean.Need[i] > 0).Select(i => (starts[i], ends[i], mean.Need[i])).ToList())];

    /// <summary>
    /// What a step has to keep clear of: steps beside which it may not be, times when too little is left of what it needs, and its own.
    /// </summary>
    private long[]? Taken(int step, List<int> done, long[] starts, long[] ends)
    {
        stretches.Clear();
        foreach (int other in done)
        {
            long gap = compiler.GapBetween(other, step);
            if (gap != StepModel.None)
            {
                stretches.Add((starts[other] - Math.Max(0, compiler.GapBetween(step, other)), ends[other] + gap));
            }
        }

        Add(whole.Blocked[step] ?? []);
        bool isAlone = stretches.Count == 0;
        long[]? only = null;
        foreach (SharedMean mean in means)
        {
            if (mean.Need[step] > 0 && mean.Capacity > 1 && Crowded(mean, mean.Need[step], done, starts, ends) is { Length: > 0 } times)
            {
                isAlone &= only is null;
                only = times;
                Add(times);
            }
        }

        return isAlone ? only : TimeInterval.Merged(stretches);

        void Add(long[] times)
        {
            for (int k = 0; k < times.Length; k += 2)
            {
                stretches.Add((times[k], times[k + 1]));
            }
        }
    }

    /// <summary>When too little of a mean is left, begin and end in turn; the same for every step that needs as much.</summary>
    private long[] Crowded(SharedMean mean, int needed, List<int> done, long[] starts, long[] ends)
    {
        if (crowded.TryGetValue((mean, needed), out long[]? known))
        {
            return known;
        }

        changes.Clear();
        foreach (int i in done)
        {
            if (mean.Need[i] > 0 && ends[i] > starts[i])
            {
                changes.Add((starts[i], mean.Need[i]));
                changes.Add((ends[i], -mean.Need[i]));
            }
        }

        changes.Sort();
        List<(long From, long Until)> times = [];
        int used = 0;
        for (int k = 0; k < changes.Count; k++)
        {
            used += changes[k].Change;
            if (used > mean.Capacity - needed && k + 1 < changes.Count && changes[k + 1].Time > changes[k].Time)
            {
                times.Add((changes[k].Time, changes[k + 1].Time));
            }
        }

        return crowded[(mean, needed)] = TimeInterval.Merged(times);
    }
}
