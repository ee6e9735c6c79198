using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Where a set of times breaks a rule that only an order of steps can mend: two that exclude each other, or too many that share what is scarce.</summary>
internal sealed class StepOverlaps(StepModel model, List<(int I, int J)> pairs, Dictionary<string, List<(long From, long Until, int Need)>>? others)
{
    /// <summary>The orders that could resolve the first overlap in time; empty when nothing overlaps.</summary>
    public List<(int First, int Second)> First(long[] starts, long[] ends)
    {
        long when = long.MaxValue;
        (int I, int J) found = (-1, -1);
        foreach ((int i, int j) in pairs)
        {
            if (starts[j] < ends[i] + model.Gap[i][j] && starts[i] < ends[j] + model.Gap[j][i])
            {
                long later = Math.Max(starts[i], starts[j]);
                if (later < when)
                {
                    when = later;
                    found = (i, j);
                }
            }
        }

        List<int>? crowd = Crowd(starts, ends, ref when);
        if (crowd is not null)
        {
            return [.. crowd.SelectMany(a => crowd.Where(b => b != a).Select(b => (a, b)))];
        }

        return found.I < 0 ? [] : [(found.I, found.J), (found.J, found.I)];
    }

    /// <summary>The first time, before the one given, at which steps together need more than there is: as few of them as are too many.</summary>
    private List<int>? Crowd(long[] starts, long[] ends, ref long when)
    {
        List<int>? crowd = null;
        foreach ((string name, int capacity, int[] need) in model.Means)
        {
            if (capacity <= 1)
            {
                continue;
            }

            List<(long From, long Until, int Need)> used = others is not null && others.TryGetValue(name, out List<(long From, long Until, int Need)>? listed) ? listed : [];
            foreach (long time in starts.Where((_, i) => need[i] > 0).Concat(used.Select(one => one.From)))
            {
                if (time < when && TooMany(time, capacity - used.Where(one => one.From <= time && one.Until > time).Sum(one => one.Need), need, starts, ends) is List<int> few)
                {
                    crowd = few;
                    when = time;
                }
            }
        }

        return crowd;
    }

    // A single step that finds too little left has been kept clear of that time already.
    private List<int>? TooMany(long time, int left, int[] need, long[] starts, long[] ends)
    {
        int sum = 0;
        List<int> few = [];
        foreach (int j in Enumerable.Range(0, model.Count).Where(j => need[j] > 0 && starts[j] <= time && ends[j] > time).OrderByDescending(j => need[j]).ThenBy(j => j))
        {
            few.Add(j);
            sum += need[j];
            if (sum > left && few.Count > 1)
            {
                return few;
            }
        }

        return null;
    }
}
