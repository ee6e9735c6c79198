using System;

namespace Refinish.Jobs;

/// <summary>Whole minutes: work and least waits round up, most waits round down, so that every window is kept.</summary>
internal static class Minutes
{
    // A product of doubles may miss a whole minute by its last digit.
    private const long Slack = TimeSpan.TicksPerMillisecond;

    public static TimeSpan Up(TimeSpan time) => TimeSpan.FromTicks((time.Ticks + TimeSpan.TicksPerMinute - 1 - Slack) / TimeSpan.TicksPerMinute * TimeSpan.TicksPerMinute);

    public static TimeSpan Down(TimeSpan time) => TimeSpan.FromTicks((time.Ticks + Slack) / TimeSpan.TicksPerMinute * TimeSpan.TicksPerMinute);
}
