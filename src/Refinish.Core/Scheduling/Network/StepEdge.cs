using System;
using Refinish.Curing;

namespace Refinish.Scheduling;

/// <summary>
/// A lag between two steps of a <see cref="StepModel"/>. On a clock that follows temperature, <see cref="Minimum"/> and <see
/// cref="Maximum"/> are the
/// least and the greatest real time that the record can make of them: good for bounds; the true times are walked on the clock.
/// </summary>
internal readonly struct StepEdge
{
    // Seconds on the clock by which a most time may be missed, so that the rounding of instants to ticks contradicts no least time that is
    // as long.
    private const double Rounding = 1e-5;

    private readonly EquivalentAge? clock;

    public StepEdge(int from, int to, StepLag lag)
    {
        (From, To, Lag, clock) = (from, to, lag, lag.Clock);
        Minimum = lag.Minimum.Ticks;
        Maximum = lag.Maximum?.Ticks ?? Openings.Never;
        if (clock is not null)
        {
            (double greatest, double least) = clock.Rates();
            Minimum = greatest > 0 ? (long)Math.Floor(lag.Minimum.Ticks / greatest * (1 - 1e-12)) : Minimum;
            double most = lag.Maximum is TimeSpan maximum && least > 0 ? Math.Ceiling(maximum.Ticks / least * (1 + 1e-12)) : Openings.Never;
            Maximum = most < Openings.Never ? (long)most + TimeSpan.TicksPerSecond : Openings.Never;
        }
    }

    public int From { get; }

    public int To { get; }

    public StepLag Lag { get; }

    /// <summary>Least real time between the two.</summary>
    public long Minimum { get; }

    /// <summary>Most real time; never when there is no limit.</summary>
    public long Maximum { get; }

    /// <summary>
    /// The earliest start of the later step after an end of the earlier one; never when the record of temperatures does not tell.
    /// </summary>
    public long Start(long end) => clock is null ? end + Minimum
        : end >= Openings.Never ? Openings.Never
        : Math.Min(clock.TicksOf(end, Lag.Minimum.TotalSeconds), Openings.Never);

    /// <summary>
    /// The earliest end of the earlier step for which the later one does not start too late; never when the record does not tell.
    /// </summary>
    public long End(long start) => clock is null ? start - Maximum
        : start >= Openings.Never ? Openings.Never
        : Bounded(clock.TicksUntil(start, Lag.Maximum!.Value.TotalSeconds + Rounding));

    /// <summary>The latest end of the earlier step that leaves the minimum before a start of the later one.</summary>
    public long LatestEnd(long start)
    {
        if (clock is null)
        {
            return start - Minimum;
        }

        // From a tick earlier at least the minimum is gained, but for the rounding of ticks.
        long end = clock.TicksUntil(start, Lag.Minimum.TotalSeconds);
        return end is long.MinValue or long.MaxValue ? -Openings.Never : Start(end) <= start ? end : Start(end - 1) <= start ? end - 1
            : -Openings.Never;
    }

    /// <summary>The latest start of the later step that keeps the maximum after an end of the earlier one.</summary>
    public long LatestStart(long end)
    {
        if (clock is null)
        {
            return end + Maximum;
        }

        long start = clock.TicksOf(end, Lag.Maximum!.Value.TotalSeconds);
        return start == long.MaxValue ? Openings.Never : start;
    }

    // Far enough from overflow to be added to.
    private static long Bounded(long time) => Math.Max(-Openings.Never, Math.Min(time, Openings.Never));
}
