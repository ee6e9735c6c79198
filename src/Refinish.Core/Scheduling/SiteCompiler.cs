using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Turns the work on a site into arrays: lags, what may not overlap in a room, people and tools. Checks that names and numbers fit each other.</summary>
internal static class SiteCompiler
{
    /// <summary>The model of all steps, or of some of them, in the order of the indices.</summary>
    public static StepModel Model(SiteWork work, IReadOnlyList<StepLag> lags, IReadOnlyList<int> indices)
    {
        StepModel model = new(indices.Count);
        Dictionary<string, int> place = new(StringComparer.Ordinal);
        for (int i = 0; i < indices.Count; i++)
        {
            SiteStep step = work.Steps[indices[i]];
            place.Add(step.Name, i);
            model.Duration[i] = step.Duration.Ticks;
            model.Attended[i] = step.IsAttended;
            model.Interruptible[i] = step.IsAttended && step.IsInterruptible;
            model.Clears[i] = step.Sprays ? step.Clearing.Ticks : StepModel.None;
        }

        for (int k = 0; k < lags.Count; k++)
        {
            if (place.TryGetValue(lags[k].Before, out int before) && place.TryGetValue(lags[k].After, out int after))
            {
                model.Lag(before, after, lags[k].Minimum.Ticks, lags[k].Maximum?.Ticks, k);
            }
        }

        model.Rooms.AddRange(Enumerable.Range(0, indices.Count).Where(i => work.Steps[indices[i]].Room is not null).GroupBy(i => work.Steps[indices[i]].Room).Select(room => room.ToArray()));
        AddMeans(work, model, indices);
        for (int i = 0; i < indices.Count; i++)
        {
            for (int j = 0; j < indices.Count; j++)
            {
                if (i != j && GapBetween(work, indices[i], indices[j]) is long gap)
                {
                    model.Apart(i, j, gap);
                }
            }
        }

        return model;
    }

    /// <summary>How long the second step has to wait after the first when both may not overlap; <see langword="null"/> when they may.</summary>
    public static long? GapBetween(SiteWork work, int first, int second)
    {
        SiteStep a = work.Steps[first];
        SiteStep b = work.Steps[second];
        long? gap = null;
        if ((a.People > 0 && b.People > 0 && a.People + b.People > work.Crew) || a.Tools.Any(tool => b.Tools.Contains(tool) && Count(work, tool) == 1))
        {
            gap = 0;
        }

        if (a.Room is not null && a.Room == b.Room)
        {
            if ((a.Sprays && b.IsAttended) || (b.Sprays && a.IsAttended))
            {
                gap = Math.Max(gap ?? 0, a.Sprays && b.IsAttended ? a.Clearing.Ticks : 0);
            }

            if (a.RaisesDust && (b.Sprays || b.DustFree > TimeSpan.Zero))
            {
                gap ??= 0;
            }

            if (b.RaisesDust && (a.Sprays || a.DustFree > TimeSpan.Zero))
            {
                gap = Math.Max(gap ?? 0, a.DustFree.Ticks);
            }
        }

        return gap;
    }

    /// <summary>Refuses what does not fit together.</summary>
    public static void Check(SiteWork work)
    {
        Dictionary<string, SiteStep> steps = new(StringComparer.Ordinal);
        foreach (SiteStep step in work.Steps)
        {
            if (steps.ContainsKey(step.Name))
            {
                throw new ArgumentException("The step '" + step.Name + "' is listed twice.", nameof(work));
            }

            steps.Add(step.Name, step);
            if (step.People > work.Crew)
            {
                throw new ArgumentException(
                    "'" + step.Name + "' takes " + Figures.Fixed(step.People, 0) + " people; allowed: at most the crew, " + Figures.Fixed(work.Crew, 0) + ".", nameof(work));
            }
        }

        foreach (StepLag lag in work.Lags)
        {
            if (!steps.TryGetValue(lag.Before, out SiteStep? before) || !steps.ContainsKey(lag.After) || lag.Before == lag.After)
            {
                throw new ArgumentException("The lag '" + lag.Reason + "' runs from '" + lag.Before + "' to '" + lag.After + "'; allowed: two listed steps.", nameof(work));
            }

            if (lag.Maximum is not null && before.IsAttended && before.IsInterruptible)
            {
                throw new ArgumentException(
                    "The lag '" + lag.Reason + "' has a maximum after '" + lag.Before + "', which may be interrupted; allowed: a maximum only after steps done in one go.", nameof(work));
            }
        }

        if (work.Tools.Select(tool => tool.Name).Distinct(StringComparer.Ordinal).Count() != work.Tools.Count)
        {
            throw new ArgumentException("A tool is listed twice.", nameof(work));
        }
    }

    /// <summary>Steps that hang together by lags or by their room, in the order of their first step: usually one group a bathroom.</summary>
    public static List<List<int>> Groups(SiteWork work)
    {
        int[] root = [.. Enumerable.Range(0, work.Steps.Count)];
        int Find(int i)
        {
            while (root[i] != i)
            {
                root[i] = root[root[i]];
                i = root[i];
            }

            return i;
        }

        void Join(int a, int b)
        {
            (int low, int high) = (Math.Min(Find(a), Find(b)), Math.Max(Find(a), Find(b)));
            root[high] = low;
        }

        Dictionary<string, int> steps = new(StringComparer.Ordinal);
        Dictionary<string, int> rooms = new(StringComparer.Ordinal);
        for (int i = 0; i < work.Steps.Count; i++)
        {
            steps.Add(work.Steps[i].Name, i);
            if (work.Steps[i].Room is string room)
            {
                if (rooms.TryGetValue(room, out int other))
                {
                    Join(i, other);
                }
                else
                {
                    rooms.Add(room, i);
                }
            }
        }

        foreach (StepLag lag in work.Lags)
        {
            Join(steps[lag.Before], steps[lag.After]);
        }

        return [.. Enumerable.Range(0, work.Steps.Count).GroupBy(Find).Select(group => group.ToList())];
    }

    private static void AddMeans(SiteWork work, StepModel model, IReadOnlyList<int> indices)
    {
        model.Means.Add(("the crew", work.Crew, [.. indices.Select(i => work.Steps[i].People)]));
        foreach (string tool in indices.SelectMany(i => work.Steps[i].Tools).Distinct(StringComparer.Ordinal))
        {
            model.Means.Add((tool, Count(work, tool), [.. indices.Select(i => work.Steps[i].Tools.Contains(tool) ? 1 : 0)]));
        }
    }

    private static int Count(SiteWork work, string tool) => work.Tools.FirstOrDefault(one => one.Name == tool)?.Count ?? 1;
}
