using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Of the longest chains of steps the one whose length is least certain.</summary>
internal sealed class GoverningPath
{
    private readonly Dictionary<string, int> indexes;
    private readonly IReadOnlyList<UncertainStep> steps;
    private readonly IReadOnlyList<ActivityTime> times;
    private readonly ILookup<string, StepLag> before;

    // Means are rounded to a tick each, so that chains of one length may differ by as many.
    private readonly long slop;

    private readonly double?[] variances;
    private readonly int[] previous;

    public GoverningPath(IReadOnlyList<UncertainStep> steps, CriticalPath path)
    {
        this.steps = steps;
        times = path.Steps;
        slop = steps.Count;
        before = path.Lags.ToLookup(lag => lag.After, StringComparer.Ordinal);
        indexes = steps.Select((step, i) => (step.Id, i)).ToDictionary(pair => pair.Id, pair => pair.i, StringComparer.Ordinal);
        variances = new double?[steps.Count];
        previous = new int[steps.Count];
        int last = Enumerable.Range(0, steps.Count)
            .Where(i => (path.Length - times[i].EarliestFinish).Ticks <= slop)
            .OrderByDescending(Variance)
            .ThenBy(i => i)
            .First();
        for (int i = last; i >= 0; i = previous[i])
        {
            Chain.Insert(0, i);
        }
    }

    /// <summary>Indexes of its steps in order of time.</summary>
    public List<int> Chain { get; } = [];

    /// <summary>Time to keep between a step of the chain and the next.</summary>
    public TimeSpan LagAfter(int place) => before[steps[Chain[place + 1]].Id]
        .Where(lag => lag.Before == steps[Chain[place]].Id).Max(lag => lag.Minimum);

    // The greatest variance of a longest chain that ends with a step. No step takes no time, so that the chain never comes back.
    private double Variance(int step)
    {
        if (variances[step] is double known)
        {
            return known;
        }

        double most = 0;
        previous[step] = -1;
        foreach (StepLag lag in before[steps[step].Id])
        {
            int earlier = indexes[lag.Before];
            TimeSpan wait = times[step].EarliestStart - times[earlier].EarliestFinish - lag.Minimum;
            if (wait.Ticks <= slop && (previous[step] < 0 || Variance(earlier) > most))
            {
                most = Variance(earlier);
                previous[step] = earlier;
            }
        }

        double own = steps[step].DeviationSeconds;
        variances[step] = most + (own * own);
        return most + (own * own);
    }
}
