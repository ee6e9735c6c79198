using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Turns the work on a site into arrays: lags, what may not overlap in a room, people and tools.</summary>
internal sealed class SiteCompiler
{
    private readonly SiteWork work;
    private readonly SiteStep[] steps;
    private readonly Dictionary<string, int> index;

    // Numbers of the tools of each step, and how many there are of each.
    private readonly int[][] tools;
    private readonly List<int> counts = [];

    /// <exception cref="ArgumentException">Ids, lags, people or tools do not fit each other.</exception>
    public SiteCompiler(SiteWork work, Openings openings)
    {
        this.work = work;
        Openings = openings;
        steps = [.. work.Steps];
        index = SiteCheck.Index(work);
        tools = Numbered();
    }

    public Openings Openings { get; }

    public int IndexOf(string id) => index[id];

    /// <summary>The model of all steps.</summary>
    public StepModel Model() => Model(work.Lags, null);

    /// <summary>
    /// The model of some steps, in the order of the indices; of all when none are given. Lags of other steps are left out.
    /// </summary>
    public StepModel Model(IReadOnlyList<StepLag> lags, IReadOnlyList<int>? indices)
    {
        int count = indices?.Count ?? steps.Length;
        int[]? place = indices is null ? null : Places(indices);
        List<StepEdge> edges = new(indices is null ? lags.Count : 2 * count);
        for (int k = 0; k < lags.Count; k++)
        {
            StepLag lag = lags[k];
            (int before, int after) = (index[lag.Before], index[lag.After]);
            (before, after) = place is null ? (before, after) : (place[before], place[after]);
            if (before >= 0 && after >= 0)
            {
                edges.Add(new StepEdge(before, after, lag));
            }
        }

        StepModel model = new(count, Openings, edges);
        int At(int i) => indices is null ? i : indices[i];
        for (int i = 0; i < count; i++)
        {
            SiteStep step = steps[At(i)];
            model.Duration[i] = step.Duration.Ticks;
            model.Attended[i] = step.IsAttended;
            model.Interruptible[i] = step.IsAttended && step.IsInterruptible;
            model.Sprays[i] = step.Sprays;
            model.Hours[i] = step.IsAttended ? Openings.Without(step.Unavailable) : null;
            model.Blocked[i] = step.IsAttended || step.Unavailable.Count == 0 ? null : TimeInterval.Merged(step.Unavailable);
        }

        model.Means.AddRange(Means(count, At));
        if (work.Crew > 1)
        {
            model.Rooms.AddRange(Enumerable.Range(0, count).Where(i => steps[At(i)].Room is not null).GroupBy(i => steps[At(i)].Room)
                .Select(room => room.ToArray()));
        }

        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                if (i != j && GapBetween(At(i), At(j)) is long gap and >= 0)
                {
                    model.Apart(i, j, gap);
                }
            }
        }

        return model;
    }

    /// <summary>How long the second step has to wait after the first when both may not overlap; none (below zero) when they may.</summary>
    public long GapBetween(int first, int second)
    {
        SiteStep a = steps[first];
        SiteStep b = steps[second];
        long gap = (a.People > 0 && b.People > 0 && a.People + b.People > work.Crew) || ShareTool(first, second) ? 0 : StepModel.None;
        if (a.Room is null || !string.Equals(a.Room, b.Room, StringComparison.Ordinal))
        {
            return gap;
        }

        if ((a.Sprays && b.IsAttended) || (b.Sprays && a.IsAttended))
        {
            // Who sprays wears supplied air and need not wait until the room is clear.
            gap = Math.Max(gap, a.Sprays && b.IsAttended && !b.Sprays ? a.Clearing.Ticks : 0);
        }

        if (a.RaisesDust && (b.Sprays || b.DustFree > TimeSpan.Zero))
        {
            gap = Math.Max(gap, 0);
        }

        return b.RaisesDust && (a.Sprays || a.DustFree > TimeSpan.Zero) ? Math.Max(gap, a.DustFree.Ticks) : gap;
    }

    /// <summary>Shared means of all steps, in the order of every model: the crew, then tools of which there is more than one.</summary>
    public List<SharedMean> Means() => Means(steps.Length, i => i);

    /// <summary>
    /// Steps that hang together by lags or by their room, in the order of their first step: usually one group a bathroom.
    /// </summary>
    public List<List<int>> Groups()
    {
        int[] root = new int[steps.Length];
        Dictionary<string, int> rooms = new(StringComparer.Ordinal);
        for (int i = 0; i < root.Length; i++)
        {
            root[i] = i;
            if (steps[i].Room is string room)
            {
                if (rooms.TryGetValue(room, out int other))
                {
                    Join(root, i, other);
                }
                else
                {
                    rooms.Add(room, i);
                }
            }
        }

        for (int k = 0; k < work.Lags.Count; k++)
        {
            Join(root, index[work.Lags[k].Before], index[work.Lags[k].After]);
        }

        List<List<int>> groups = [];
        int[] number = new int[root.Length];
        for (int i = 0; i < root.Length; i++)
        {
            int leader = Leader(root, i);
            if (leader == i)
            {
                number[i] = groups.Count;
                groups.Add([]);
            }

            groups[number[leader]].Add(i);
        }

        return groups;
    }

    private static int Leader(int[] root, int i)
    {
        while (root[i] != i)
        {
            root[i] = root[root[i]];
            i = root[i];
        }

        return i;
    }

    private static void Join(int[] root, int a, int b)
    {
        (int first, int second) = (Leader(root, a), Leader(root, b));
        root[Math.Max(first, second)] = Math.Min(first, second);
    }

    private int[][] Numbered()
    {
        Dictionary<string, int> listed = new(StringComparer.Ordinal);
        for (int k = 0; k < work.Tools.Count; k++)
        {
            SiteTool tool = work.Tools[k];
            listed.Add(tool.Name, listed.Count);
            counts.Add(tool.Count);
        }

        int[][] numbers = new int[steps.Length][];
        for (int i = 0; i < numbers.Length; i++)
        {
            IReadOnlyList<string> names = steps[i].Tools;
            numbers[i] = names.Count == 0 ? [] : new int[names.Count];
            for (int k = 0; k < names.Count; k++)
            {
                if (!listed.TryGetValue(names[k], out int number))
                {
                    number = listed.Count;
                    listed.Add(names[k], number);
                    counts.Add(1);
                }

                numbers[i][k] = number;
            }
        }

        return numbers;
    }

    private bool ShareTool(int first, int second)
    {
        foreach (int tool in tools[first])
        {
            if (counts[tool] == 1 && Array.IndexOf(tools[second], tool) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    private List<SharedMean> Means(int count, Func<int, int> at)
    {
        List<SharedMean> means = [new SharedMean(work.Crew, Needs(count, at, -1))];
        for (int tool = 0; tool < counts.Count; tool++)
        {
            if (counts[tool] > 1)
            {
                means.Add(new SharedMean(counts[tool], Needs(count, at, tool)));
            }
        }

        return means;
    }

    private int[] Needs(int count, Func<int, int> at, int tool) =>
    [
        .. Enumerable.Range(0, count).Select(i =>
            tool < 0 ? steps[at(i)].People : Array.IndexOf(tools[at(i)], tool) >= 0 ? 1 : 0),
    ];

    private int[] Places(IReadOnlyList<int> indices)
    {
        int[] place = Enumerable.Repeat(-1, steps.Length).ToArray();
        for (int i = 0; i < indices.Count; i++)
        {
            place[indices[i]] = i;
        }

        return place;
    }
}
