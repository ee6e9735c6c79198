using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace Refinish.Scheduling;

/// <summary>
/// Places groups of steps one after the other, each as early as it can end in the time that the earlier ones leave free, in several orders; keeps
/// the best. Each group alone, and the load of the crew, give a time before which the whole cannot end.
/// </summary>
internal sealed class SiteGroups(
    SiteWork work, List<List<int>> groups, SearchEffort effort, Openings openings, long start, long horizon, Action<double> tell, CancellationToken cancellation)
{
    private readonly StepModel[] models = [.. groups.Select(group => SiteCompiler.Model(work, work.Lags, group))];
    private readonly (string Name, int Capacity, int[] Need)[] means = [.. Shared(work)];

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
            SiteSearch search = new(models[g], openings, start, null, cancellation);
            search.Run(horizon, effort.NodesPerGroup);
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
        StepModel all = new(work.Steps.Count);
        Dictionary<string, int> place = new(StringComparer.Ordinal);
        for (int i = 0; i < all.Count; i++)
        {
            place.Add(work.Steps[i].Name, i);
            all.Duration[i] = work.Steps[i].Duration.Ticks;
            all.Attended[i] = work.Steps[i].IsAttended;
            all.Interruptible[i] = work.Steps[i].IsAttended && work.Steps[i].IsInterruptible;
        }

        for (int k = 0; k < work.Lags.Count; k++)
        {
            all.Lag(place[work.Lags[k].Before], place[work.Lags[k].After], work.Lags[k].Minimum.Ticks, work.Lags[k].Maximum?.Ticks, k);
        }

        all.Means.Add(means[0]);
        long[] starts = new long[all.Count];
        long[] ends = new long[all.Count];
        return new EarliestTimes(all, openings).Solve(start, horizon, starts, ends) >= 0 ? start : Math.Max(ends.Max(), new LoadBound(all, openings).Of(starts, thorough: true));
    }

    // Groups placed two or three together mesh better; a few orders in which one placed alone may end sooner; then, from the best, one group moved.
    private IEnumerable<(int[] Order, int Together)> OrdersOf(long[] alone)
    {
        int[] listed = [.. Enumerable.Range(0, groups.Count)];
        int[] longestFirst = [.. listed.OrderByDescending(g => alone[g]).ThenBy(g => g)];
        int given = 0;
        foreach ((int[] order, int together) in new[] { (listed, 2), (listed, 1), (listed, 3), (longestFirst, 2), (longestFirst, 1), (longestFirst, 3) })
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
            StepModel model = batch.Length == 1 ? models[batch[0]] : SiteCompiler.Model(work, work.Lags, steps);
            SiteSearch search = new(model, openings, start, [.. steps.Select(i => Taken(i, done, starts, ends))], cancellation, Used(done, starts, ends));
            search.Run(Math.Min(horizon, BestEnd - 1), effort.NodesPerGroup);
            Nodes += search.Nodes;
            if (search.Best is null)
            {
                return;
            }

            long[] placed = SiteSolver.Ends(model, openings, search.Best);
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

    /// <summary>What the steps already placed take of that of which there is more than one.</summary>
    private Dictionary<string, List<(long From, long Until, int Need)>> Used(List<int> done, long[] starts, long[] ends) => means
        .Where(one => one.Capacity > 1)
        .ToDictionary(one => one.Name, one => done.Where(i => one.Need[i] > 0).Select(i => (starts[i], ends[i], one.Need[i])).ToList(), StringComparer.Ordinal);

    /// <summary>What a step has to keep clear of, in order and without touching: steps beside which it may not be, and times when too little is left of what it needs.</summary>
    private List<(long From, long Until)> Taken(int step, List<int> done, long[] starts, long[] ends)
    {
        List<(long From, long Until)> stretches = [];
        foreach (int other in done)
        {
            if (SiteCompiler.GapBetween(work, other, step) is long gap)
            {
                stretches.Add((starts[other] - (SiteCompiler.GapBetween(work, step, other) ?? 0), ends[other] + gap));
            }
        }

        foreach ((_, int capacity, int[] need) in means)
        {
            if (need[step] > 0 && capacity > 1)
            {
                stretches.AddRange(Crowded(capacity - need[step], need, done, starts, ends));
            }
        }

        stretches.Sort();
        List<(long From, long Until)> merged = [];
        foreach ((long from, long until) in stretches)
        {
            if (merged.Count > 0 && from <= merged[merged.Count - 1].Until)
            {
                merged[merged.Count - 1] = (merged[merged.Count - 1].From, Math.Max(merged[merged.Count - 1].Until, until));
            }
            else if (until > from)
            {
                merged.Add((from, until));
            }
        }

        return merged;
    }

    private static IEnumerable<(long From, long Until)> Crowded(int most, int[] need, List<int> done, long[] starts, long[] ends)
    {
        List<(long Time, int Change)> changes = [];
        foreach (int i in done.Where(i => need[i] > 0 && ends[i] > starts[i]))
        {
            changes.Add((starts[i], need[i]));
            changes.Add((ends[i], -need[i]));
        }

        changes.Sort();
        int used = 0;
        for (int k = 0; k < changes.Count; k++)
        {
            used += changes[k].Change;
            if (used > most && k + 1 < changes.Count && changes[k + 1].Time > changes[k].Time)
            {
                yield return (changes[k].Time, changes[k + 1].Time);
            }
        }
    }

    private static IEnumerable<(string Name, int Capacity, int[] Need)> Shared(SiteWork work)
    {
        yield return ("the crew", work.Crew, [.. work.Steps.Select(step => step.People)]);
        foreach (string tool in work.Steps.SelectMany(step => step.Tools).Distinct(StringComparer.Ordinal))
        {
            int count = work.Tools.FirstOrDefault(one => one.Name == tool)?.Count ?? 1;
            yield return (tool, count, [.. work.Steps.Select(step => step.Tools.Contains(tool) ? 1 : 0)]);
        }
    }
}
