using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// Finds a smallest core of lags that cannot be kept, by leaving out one after the other, and the least change of each that cures the
/// whole,
/// by halving. What it is given has to say for certain whether a set of lags can be kept.
/// </summary>
internal sealed class ConflictFinder(Func<IReadOnlyList<StepLag>, bool> canBeKept)
{
    /// <summary>The longest lag there is.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromDays(60);

    /// <summary>Lags of which all are needed for the contradiction.</summary>
    public List<StepLag> Core(IReadOnlyList<StepLag> lags)
    {
        List<StepLag> core = [.. lags];
        for (int i = core.Count - 1; i >= 0; i--)
        {
            List<StepLag> less = [.. core.Where((_, k) => k != i)];
            if (!canBeKept(less))
            {
                core = less;
            }
        }

        return core;
    }

    /// <summary>The least changes, each alone, after which all lags can be kept.</summary>
    public IEnumerable<LagRelief> Reliefs(IReadOnlyList<StepLag> all, IEnumerable<StepLag> core)
    {
        foreach (StepLag lag in core)
        {
            if (lag.Maximum is TimeSpan most && Least(most, Longest, needed => With(all, lag, lag.Minimum, needed)) is TimeSpan more)
            {
                yield return new LagRelief(lag, true, more);
            }

            // Counted downwards from the minimum.
            if (lag.Minimum > TimeSpan.Zero
                && Least(TimeSpan.Zero, lag.Minimum, less => With(all, lag, lag.Minimum - less, lag.Maximum)) is TimeSpan by)
            {
                yield return new LagRelief(lag, false, lag.Minimum - by);
            }
        }
    }

    private TimeSpan? Least(TimeSpan fails, TimeSpan most, Func<TimeSpan, List<StepLag>> with)
    {
        if (most <= fails || !canBeKept(with(most)))
        {
            return null;
        }

        long low = 0;
        long high = (long)Math.Ceiling((most - fails).TotalMinutes);
        TimeSpan At(long minutes) => fails + TimeSpan.FromTicks(Math.Min((most - fails).Ticks, minutes * TimeSpan.TicksPerMinute));
        while (high - low > 1)
        {
            long middle = low + ((high - low) / 2);
            (low, high) = canBeKept(with(At(middle))) ? (low, middle) : (middle, high);
        }

        return At(high);
    }

    private static List<StepLag> With(IReadOnlyList<StepLag> all, StepLag changed, TimeSpan minimum, TimeSpan? maximum) =>
        [.. all.Select(lag => ReferenceEquals(lag, changed) ? lag.With(minimum, maximum) : lag)];
}
