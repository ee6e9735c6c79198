using System;

namespace Refinish;

/// <summary>
/// Seconds and hours as time spans. The platform's own conversion rounds to a millisecond on netstandard2.0; this one keeps every tick
/// everywhere.
/// </summary>
internal static class Durations
{
    public static TimeSpan FromSeconds(double seconds) => TimeSpan.FromTicks((long)Math.Round(seconds * TimeSpan.TicksPerSecond));

    public static TimeSpan FromHours(double hours) => TimeSpan.FromTicks((long)Math.Round(hours * TimeSpan.TicksPerHour));
}
