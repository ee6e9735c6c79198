using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// A time before which the work cannot end, from the crew alone: steps that start not before a time, and after which at least so much has to
/// follow, are packed into the working hours from that time on as if they could be cut anywhere.
/// </summary>
internal sealed class LoadBound
{
    private readonly StepModel model;
    private readonly Openings openings;
    private readonly long[] following;
    private readonly int[] byStart;

    public LoadBound(StepModel model, Openings openings)
    {
        this.model = model;
        this.openings = openings;
        following = [.. model.Tails().Select((tail, i) => tail - model.Duration[i])];
        byStart = [.. Enumerable.Range(0, model.Count)];
    }

    /// <summary>The bound over every start time, with the least that follows any of the steps from then on.</summary>
    public long Of(long[] starts) => Over(starts, 0);

    /// <summary>The bound over every start time and every least that follows: stronger, and slower.</summary>
    public long Thorough(long[] starts) => following.Distinct().Max(least => Over(starts, least));

    private long Over(long[] starts, long least)
    {
        // Nearly in order already, so insertion is quick.
        for (int k = 1; k < byStart.Length; k++)
        {
            int moved = byStart[k];
            int at = k;
            for (; at > 0 && starts[byStart[at - 1]] > starts[moved]; at--)
            {
                byStart[at] = byStart[at - 1];
            }

            byStart[at] = moved;
        }

        (_, int capacity, int[] need) = model.Means[0];
        long bound = 0;
        long work = 0;
        long after = long.MaxValue;
        for (int k = byStart.Length - 1; k >= 0; k--)
        {
            int i = byStart[k];
            if (need[i] > 0 && following[i] >= least)
            {
                work += model.Duration[i] * need[i];
                after = Math.Min(after, following[i]);
                bound = Math.Max(bound, openings.AfterWork(starts[i], (work + capacity - 1) / capacity) + after);
            }
        }

        return bound;
    }
}
