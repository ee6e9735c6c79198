using System;
using System.Collections.Generic;
using System.Globalization;

namespace Refinish.Scheduling;

/// <summary>A stretch of time without a break, from one instant to another.</summary>
/// <example><code>
/// TimeInterval night = new(new DateTimeOffset(2027, 3, 1, 22, 0, 0, TimeSpan.Zero), new DateTimeOffset(2027, 3, 2, 6, 0, 0,
/// TimeSpan.Zero));
/// TimeSpan length = night.Length;   // 8 h
/// </code></example>
public sealed record TimeInterval
{
    /// <summary>Makes an interval.</summary>
    /// <param name="start">When it starts.</param>
    /// <param name="end">When it ends, not before <paramref name="start"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="end"/> is before <paramref name="start"/>.</exception>
    public TimeInterval(DateTimeOffset start, DateTimeOffset end)
    {
        if (end < start)
        {
            Guard.Rule(false, nameof(end), (end - start).TotalSeconds, Measure.Hours, "at least 0 h after the start");
        }

        Start = start;
        End = end;
    }

    /// <summary>When it starts.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>When it ends.</summary>
    public DateTimeOffset End { get; }

    /// <summary>Elapsed time from start to end.</summary>
    public TimeSpan Length => End - Start;

    /// <summary>The two times.</summary>
    /// <returns>Text such as <c>2027-03-01 08:00 to 2027-03-01 10:30</c>.</returns>
    public override string ToString() => Minute(Start) + " to " + Minute(End);

    internal static string Minute(DateTimeOffset instant) => instant.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    /// <summary>From coming to going, both rounded up to the minute, and the time worked.</summary>
    internal static string Stay(DateTimeOffset arrives, DateTimeOffset leaves, TimeSpan worked) =>
        Minute(CarefulTime.Up(arrives)) + " to " + CarefulTime.Up(leaves).ToString("HH:mm", CultureInfo.InvariantCulture) + ", "
            + TimeConstraint.Hours(worked) + " worked";

    /// <summary>
    /// Begin and end in turn, in universal ticks: in order, joined where they touch or overlap, without those of no length.
    /// </summary>
    internal static long[] Merged(IReadOnlyList<TimeInterval> intervals)
    {
        List<(long From, long Until)> all = new(intervals.Count);
        for (int i = 0; i < intervals.Count; i++)
        {
            all.Add((intervals[i].Start.UtcTicks, intervals[i].End.UtcTicks));
        }

        return Merged(all);
    }

    /// <summary>The same from stretches in ticks, which are put in order and joined where they are.</summary>
    internal static long[] Merged(List<(long From, long Until)> stretches)
    {
        stretches.Sort();
        int kept = 0;
        for (int k = 0; k < stretches.Count; k++)
        {
            (long from, long until) = stretches[k];
            if (kept > 0 && from <= stretches[kept - 1].Until)
            {
                stretches[kept - 1] = (stretches[kept - 1].From, Math.Max(stretches[kept - 1].Until, until));
            }
            else if (until > from)
            {
                stretches[kept++] = (from, until);
            }
        }

        long[] merged = new long[2 * kept];
        for (int k = 0; k < kept; k++)
        {
            (merged[2 * k], merged[(2 * k) + 1]) = stretches[k];
        }

        return merged;
    }
}
