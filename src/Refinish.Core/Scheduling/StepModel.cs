using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>Steps, lags and what may not overlap, as arrays of ticks: the form in which schedules are searched.</summary>
internal sealed class StepModel(int count)
{
    public const long None = -1;

    public int Count => count;

    /// <summary>Working or waiting time of each step.</summary>
    public long[] Duration { get; } = new long[count];

    /// <summary>Whether a step needs working hours.</summary>
    public bool[] Attended { get; } = new bool[count];

    /// <summary>Whether a step may stop at the end of a shift and go on in the next.</summary>
    public bool[] Interruptible { get; } = new bool[count];

    /// <summary>Lags by the step after which they count.</summary>
    public List<(int Other, long Minimum, int Index)>[] After { get; } = Lists<(int, long, int)>(count);

    /// <summary>Lags by the step before which they count.</summary>
    public List<(int Other, long Minimum, int Index)>[] Before { get; } = Lists<(int, long, int)>(count);

    /// <summary>Most times by the step that may not come too late.</summary>
    public List<(int Other, long Maximum, int Index)>[] Holds { get; } = Lists<(int, long, int)>(count);

    /// <summary>How long step j has to wait after step i when both may not overlap; none when they may.</summary>
    public long[][] Gap { get; } = Rows(count);

    /// <summary>Shared means with their capacity and what each step needs of them.</summary>
    public List<(string Name, int Capacity, int[] Need)> Means { get; } = [];

    /// <summary>Steps by room.</summary>
    public List<int[]> Rooms { get; } = [];

    /// <summary>How long the room stays empty after a step that sprays; none for other steps.</summary>
    public long[] Clears { get; } = new long[count];

    public void Lag(int before, int after, long minimum, long? maximum, int index)
    {
        After[before].Add((after, minimum, index));
        Before[after].Add((before, minimum, index));
        if (maximum is long most)
        {
            Holds[after].Add((before, most, index));
        }
    }

    /// <summary>The time to leave between two steps in this order; none where they may follow at once.</summary>
    public long GapOf(int first, int second) => Math.Max(0, Gap[first][second]);

    public void Apart(int first, int second, long gap) => Gap[first][second] = Math.Max(Gap[first][second], gap);

    /// <summary>The least time from the start of each step to the end of all, lags and durations alone; the lags have to be free of circles.</summary>
    public long[] Tails()
    {
        long[] tail = (long[])Duration.Clone();
        bool moved = true;
        for (int round = 0; moved && round <= count; round++)
        {
            moved = false;
            for (int i = 0; i < count; i++)
            {
                foreach ((int other, long minimum, _) in After[i])
                {
                    if (Duration[i] + minimum + tail[other] > tail[i])
                    {
                        tail[i] = Duration[i] + minimum + tail[other];
                        moved = true;
                    }
                }
            }
        }

        return tail;
    }

    private static List<T>[] Lists<T>(int count)
    {
        List<T>[] lists = new List<T>[count];
        for (int i = 0; i < count; i++)
        {
            lists[i] = [];
        }

        return lists;
    }

    private static long[][] Rows(int count)
    {
        long[][] rows = new long[count][];
        for (int i = 0; i < count; i++)
        {
            rows[i] = new long[count];
            for (int j = 0; j < count; j++)
            {
                rows[i][j] = None;
            }
        }

        return rows;
    }
}
