using System;

namespace Refinish;

/// <summary>
/// Times to the careful side, as labels print them: what has to be waited for is rounded up, what has to be done by a time is rounded down.
/// Whole minutes below an hour, tenths of an hour from there on.
/// </summary>
internal static class CarefulTime
{
    // A product of doubles may miss a whole unit by its last digit.
    private const long Slack = TimeSpan.TicksPerMillisecond;
    private const long Tenth = TimeSpan.TicksPerHour / 10;

    /// <summary>Whole minutes, a part counted as a whole one: work, drying, the opening of a window, water.</summary>
    public static TimeSpan Up(TimeSpan time) => TimeSpan.FromTicks(Up(time.Ticks, TimeSpan.TicksPerMinute));

    /// <summary>Whole minutes, a part not counted: the closing of a window, an open time, a pot life.</summary>
    public static TimeSpan Down(TimeSpan time) => TimeSpan.FromTicks(Down(time.Ticks, TimeSpan.TicksPerMinute));

    /// <summary>The whole minute of a clock at which the instant is past.</summary>
    public static DateTimeOffset Up(DateTimeOffset instant) => new(Up(instant.Ticks, TimeSpan.TicksPerMinute), instant.Offset);

    /// <summary>The whole minute of a clock at which the instant is still to come.</summary>
    public static DateTimeOffset Down(DateTimeOffset instant) => new(Down(instant.Ticks, TimeSpan.TicksPerMinute), instant.Offset);

    /// <summary>A time to wait for: 3.04 h is 3.1 h, 24.2 min are 25 min.</summary>
    public static string AtLeast(TimeSpan time) =>
        Up(time) is { Ticks: < TimeSpan.TicksPerHour } minutes ? Minutes(minutes) : Hours(Up(time.Ticks, Tenth));

    /// <summary>A time within which something is done: 7.96 h are 7.9 h, 24.8 min are 24 min.</summary>
    public static string AtMost(TimeSpan time) => time.Ticks + Slack >= TimeSpan.TicksPerHour ? Hours(Down(time.Ticks, Tenth))
        : time.Ticks + Slack >= TimeSpan.TicksPerMinute ? Minutes(Down(time))
        : Figures.Fixed(Down(time.Ticks, TimeSpan.TicksPerSecond) / TimeSpan.TicksPerSecond, 0) + " s";

    private static long Up(long ticks, long unit) => (ticks + unit - 1 - Slack) / unit * unit;

    private static long Down(long ticks, long unit) => (ticks + Slack) / unit * unit;

    private static string Minutes(TimeSpan time) => Figures.Fixed(time.TotalMinutes, 0) + " min";

    private static string Hours(long ticks) => Figures.Significant((double)ticks / TimeSpan.TicksPerHour, 6) + " h";
}
