using System;

namespace Refinish.Scheduling;

/// <summary>
/// An instant from which clocks on site run at another distance from universal time, such as the start of daylight-saving time.
/// </summary>
/// <example><code>
/// ClockChange spring = new(new DateTimeOffset(2027, 3, 28, 1, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(2));
/// </code></example>
public sealed record ClockChange
{
    /// <summary>Makes a change.</summary>
    /// <param name="instant">When it happens; its own offset does not matter.</param>
    /// <param name="offset">Local time less universal time from then on, −14 to 14 h in whole minutes.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="offset"/> is outside its range.</exception>
    public ClockChange(DateTimeOffset instant, TimeSpan offset)
    {
        Instant = instant.ToUniversalTime();
        Offset = LocalClock.Checked(offset, nameof(offset));
    }

    /// <summary>When it happens, in universal time.</summary>
    public DateTimeOffset Instant { get; }

    /// <summary>Local time less universal time from then on.</summary>
    public TimeSpan Offset { get; }

    /// <summary>The instant and the offset.</summary>
    /// <returns>Text such as <c>2027-03-28 01:00 UTC: 2 h</c>.</returns>
    public override string ToString() => TimeInterval.Minute(Instant) + " UTC: " + TimeConstraint.Hours(Offset);
}
