using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Steps, lags and what may not overlap, as arrays of ticks: the form in which schedules are searched.</summary>
internal sealed class StepModel
{
    public const long None = -1;

    // The gap of each pair by its place among the different ones: a table of ticks would take four times the room, and grows with the
    // square of the steps.
    private readonly ushort[] gaps;
    private readonly List<long> differentGaps = [None];
    private readonly Dictionary<long, ushort> placeOfGap = [];
    private readonly int[] first;
    private readonly int[] heldFirst;
    private readonly int[] held;
    private (int First, int Second)[]? pairs;

    public StepModel(int count, Openings openings, List<StepEdge> edges)
    {
        Count = count;
        Openings = openings;
        Duration = new long[count];
        Attended = new bool[count];
        Interruptible = new bool[count];
        Sprays = new bool[count];
        Hours = new Openings?[count];
        Blocked = new long[]?[count];
        gaps = new ushort[count * count];

        // Sorting is stable, so that the lags of a step keep their order.
        Edges = [.. edges.OrderBy(edge => edge.From)];
        held = [.. Enumerable.Range(0, Edges.Length).Where(at => Edges[at].Lag.Maximum is not null).OrderBy(at => Edges[at].To)];
        first = new int[count + 1];
        heldFirst = new int[count + 1];
        foreach (StepEdge edge in edges)
        {
            first[edge.From + 1]++;
            heldFirst[edge.To + 1] += edge.Lag.Maximum is null ? 0 : 1;
        }

        for (int i = 0; i < count; i++)
        {
            first[i + 1] += first[i];
            heldFirst[i + 1] += heldFirst[i];
        }
    }

    public int Count { get; }

    /// <summary>The calendar's shifts.</summary>
    public Openings Openings { get; }

    /// <summary>Working or waiting time of each step.</summary>
    public long[] Duration { get; }

    /// <summary>Whether a step needs working hours.</summary>
    public bool[] Attended { get; }

    /// <summary>Whether a step may stop at the end of a shift and go on in the next.</summary>
    public bool[] Interruptible { get; }

    public bool[] Sprays { get; }

    /// <summary>The shifts of each attended step, without the times when it cannot be done.</summary>
    public Openings?[] Hours { get; }

    /// <summary>Times that each wait has to keep clear of: begin and end in turn.</summary>
    public long[]?[] Blocked { get; }

    /// <summary>Lags by the step after which they count.</summary>
    public StepEdge[] Edges { get; }

    /// <summary>
    /// Shared means of which there is more than one, with what each step needs of them; the crew first, also when it is one person.
    /// </summary>
    public List<SharedMean> Means { get; } = [];

    /// <summary>Steps by room.</summary>
    public List<int[]> Rooms { get; } = [];

    /// <summary>The first lag after a step; its last is before that of the next step.</summary>
    public int FirstEdge(int step) => first[step];

    public int FirstHeld(int step) => heldFirst[step];

    /// <summary>A lag with a most time, by the step that may not come too late.</summary>
    public int Held(int at) => held[at];

    /// <summary>How long step j has to wait after step i when both may not overlap; none when they may.</summary>
    public long Gap(int i, int j) => differentGaps[gaps[(i * Count) + j]];

    /// <summary>The time to leave between two steps in this order; none where they may follow at once.</summary>
    public long GapOf(int i, int j) => Math.Max(0, Gap(i, j));

    /// <summary>The pairs that exclude each other; found once, when all are set.</summary>
    public (int First, int Second)[] Pairs => pairs ??=
    [
        .. Enumerable.Range(0, Count).SelectMany(i =>
            Enumerable.Range(i + 1, Count - i - 1).Where(j => Gap(i, j) != None).Select(j => (i, j))),
    ];

    public void Apart(int i, int j, long gap)
    {
        if (gap <= Gap(i, j))
        {
            return;
        }

        if (!placeOfGap.TryGetValue(gap, out ushort place))
        {
            place = checked((ushort)differentGaps.Count);
            placeOfGap.Add(gap, place);
            differentGaps.Add(gap);
        }

        gaps[(i * Count) + j] = place;
    }

    /// <summary>
    /// The least time from the start of each step to the end of all, lags and durations alone; the lags have to be free of circles.
    /// </summary>
    public long[] Tails()
    {
        long[] tail = (long[])Duration.Clone();
        bool moved = true;
        for (int round = 0; moved && round <= Count; round++)
        {
            moved = false;
            for (int at = Edges.Length - 1; at >= 0; at--)
            {
                ref readonly StepEdge edge = ref Edges[at];
                long follows = Duration[edge.From] + edge.Minimum + tail[edge.To];
                if (follows > tail[edge.From])
                {
                    tail[edge.From] = follows;
                    moved = true;
                }
            }
        }

        return tail;
    }

    /// <summary>
    /// Whether durations and lags contradict each other whatever the hours: a path from a step to itself that takes time.
    /// </summary>
    public bool Contradicts()
    {
        long[] start = new long[Count];
        for (int round = 0; round <= 2 * Count; round++)
        {
            bool moved = false;
            for (int at = 0; at < Edges.Length; at++)
            {
                ref readonly StepEdge edge = ref Edges[at];
                long after = start[edge.From] + Duration[edge.From] + edge.Minimum;
                if (after > start[edge.To])
                {
                    start[edge.To] = after;
                    moved = true;
                }

                if (edge.Maximum < Openings.Never && start[edge.To] - edge.Maximum - Duration[edge.From] > start[edge.From])
                {
                    start[edge.From] = start[edge.To] - edge.Maximum - Duration[edge.From];
                    moved = true;
                }
            }

            if (!moved)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>When each step ends.</summary>
    public long[] Ends(long[] starts, DaySet days)
    {
        long[] ends = new long[Count];
        for (int i = 0; i < Count; i++)
        {
            ends[i] = End(i, starts[i], days);
        }

        return ends;
    }

    public long End(int i, long start, DaySet days) =>
        start >= Openings.Never ? start : Interruptible[i] ? Hours[i]!.AfterWork(start, Duration[i], days) : start + Duration[i];

    /// <summary>The first time from an instant on at which working hours let a step start.</summary>
    public long Place(int i, long time, DaySet days) =>
        !Attended[i] ? time : Interruptible[i] && Duration[i] > 0 ? Hours[i]!.FirstOpen(time, days)
            : Hours[i]!.FirstFit(time, Duration[i], days);
}
