using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// Where a set of times breaks a rule that only an order of steps can mend: two that exclude each other, or too many that share what is
/// scarce.
/// </summary>
internal sealed class StepOverlaps
{
    private readonly StepModel model;
    private readonly List<(long From, long Until, int Need)>[]? others;
    private (int First, int Second)[] pairs;

    /// <param name="model">The steps; all pairs of them that exclude each other are looked at.</param>
    /// <param name="others">What steps of other groups take of each shared mean.</param>
    public StepOverlaps(StepModel model, List<(long From, long Until, int Need)>[]? others)
    {
        this.model = model;
        this.others = others;
        int found = 0;
        for (int pass = 0; ; pass++)
        {
            pairs = new (int, int)[found];
            found = 0;
            for (int i = 0; i < model.Count; i++)
            {
                for (int j = i + 1; j < model.Count; j++)
                {
                    if (model.Gap(i, j) != StepModel.None)
                    {
                        if (pass == 1)
                        {
                            pairs[found] = (i, j);
                        }

                        found++;
                    }
                }
            }

            if (pass == 1)
            {
                break;
            }
        }
    }

    public List<(long From, long Until, int Need)>[]? Others => others;

    /// <summary>The pairs that are looked at; those whose order is settled may be left out.</summary>
    public IReadOnlyList<(int First, int Second)> Pairs
    {
        get => pairs;
        set => pairs = [.. value];
    }

    /// <summary>The orders that could resolve the first overlap in time; none when nothing overlaps.</summary>
    public (int First, int Second)[] First(long[] starts, long[] ends)
    {
        long when = long.MaxValue;
        (int I, int J) found = (-1, -1);
        foreach ((int i, int j) in pairs)
        {
            if (starts[j] < ends[i] + model.Gap(i, j) && starts[i] < ends[j] + model.Gap(j, i))
            {
                long later = starts[i] > starts[j] ? starts[i] : starts[j];
                if (later < when)
                {
                    when = later;
                    found = (i, j);
                }
            }
        }

        List<int>? crowd = Crowd(starts, ends, ref when);
        if (crowd is null)
        {
            return found.I < 0 ? [] : [found, (found.J, found.I)];
        }

        List<(int, int)> orders = [];
        foreach (int a in crowd)
        {
            foreach (int b in crowd)
            {
                if (a != b)
                {
                    orders.Add((a, b));
                }
            }
        }

        return [.. orders];
    }

    /// <summary>
    /// As few steps as are too many at the first time at which steps need more of something than there is; none when there is no such time.
    /// </summary>
    public List<int>? Crowd(long[] starts, long[] ends)
    {
        long when = long.MaxValue;
        return Crowd(starts, ends, ref when);
    }

    private List<int>? Crowd(long[] starts, long[] ends, ref long when)
    {
        List<int>? crowd = null;
        for (int m = 0; m < model.Means.Count; m++)
        {
            if (model.Means[m].Capacity <= 1)
            {
                continue;
            }

            for (int i = 0; i < model.Count; i++)
            {
                if (model.Means[m].Need[i] > 0)
                {
                    Look(m, starts[i], starts, ends, ref when, ref crowd);
                }
            }

            for (int k = 0; k < (others?[m].Count ?? 0); k++)
            {
                Look(m, others![m][k].From, starts, ends, ref when, ref crowd);
            }
        }

        return crowd;
    }

    private void Look(int mean, long time, long[] starts, long[] ends, ref long when, ref List<int>? crowd)
    {
        if (time >= when)
        {
            return;
        }

        int left = model.Means[mean].Capacity;
        for (int k = 0; k < (others?[mean].Count ?? 0); k++)
        {
            (long from, long until, int need) = others![mean][k];
            left -= from <= time && until > time ? need : 0;
        }

        if (TooMany(time, left, model.Means[mean].Need, starts, ends) is List<int> few)
        {
            crowd = few;
            when = time;
        }
    }

    // A single step that finds too little left has been kept clear of that time already.
    private List<int>? TooMany(long time, int left, int[] need, long[] starts, long[] ends)
    {
        int sum = 0;
        int number = 0;
        for (int j = 0; j < model.Count; j++)
        {
            if (need[j] > 0 && starts[j] <= time && ends[j] > time)
            {
                sum += need[j];
                number++;
            }
        }

        if (sum <= left || number < 2)
        {
            return null;
        }

        List<int> few = [];
        for (int j = 0; j < model.Count; j++)
        {
            if (need[j] > 0 && starts[j] <= time && ends[j] > time)
            {
                few.Add(j);
            }
        }

        few.Sort((a, b) => need[a] != need[b] ? need[b].CompareTo(need[a]) : a.CompareTo(b));
        sum = 0;
        for (int k = 0; k < few.Count; k++)
        {
            sum += need[few[k]];
            if (sum > left && k > 0)
            {
                few.RemoveRange(k + 1, few.Count - k - 1);
                return few;
            }
        }

        return null;
    }
}
