using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>The temperature of a coated surface over time, in stretches of constant temperature from a known instant on.</summary>
/// <remarks>
/// Time is elapsed time between instants: a change of the clocks overnight neither adds nor loses an hour. Two histories are equal
/// when they start at the same instant, whatever offset it is written with.
/// </remarks>
/// <example><code>
/// TemperatureHistory history = new(
///     new DateTimeOffset(2026, 3, 3, 17, 0, 0, TimeSpan.FromHours(-5)),
///     [
///         new TemperatureSegment(TimeSpan.FromHours(1), Temperature.FromDegreesCelsius(20)),
///         new TemperatureSegment(TimeSpan.FromHours(14), Temperature.FromDegreesCelsius(12)),
///         new TemperatureSegment(TimeSpan.FromHours(10), Temperature.FromDegreesCelsius(20)),
///     ],
///     lastHoldsOn: true);
/// </code></example>
public sealed record TemperatureHistory
{
    private readonly ValueList<TemperatureSegment> segments;

    /// <summary>Makes a history.</summary>
    /// <param name="start">When it begins.</param>
    /// <param name="segments">The stretches in order, at least one.</param>
    /// <param name="lastHoldsOn">Whether the last temperature goes on for ever; otherwise nothing is known after the last stretch.</param>
    /// <exception cref="ArgumentException"><paramref name="segments"/> is empty or has an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stretches reach beyond the end of the calendar (year 9999).</exception>
    public TemperatureHistory(DateTimeOffset start, IEnumerable<TemperatureSegment> segments, bool lastHoldsOn = false)
    {
        Start = start;
        this.segments = Guard.List(segments, nameof(segments), 1);
        LastHoldsOn = lastHoldsOn;
        long left = DateTime.MaxValue.Ticks - start.UtcTicks;
        foreach (TemperatureSegment segment in this.segments)
        {
            left -= segment.Duration.Ticks;
            Guard.Rule(left >= 0, nameof(segments), segment.Duration.TotalSeconds, Measure.Hours, "stretches that end before the year 10000");
        }
    }

    /// <summary>When it begins.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>The stretches in order.</summary>
    public IReadOnlyList<TemperatureSegment> Segments => segments;

    /// <summary>Whether the last temperature goes on for ever.</summary>
    public bool LastHoldsOn { get; }

    /// <summary>When the known stretches end, with the offset of the start; <see langword="null"/> when the last one holds on.</summary>
    public DateTimeOffset? End => LastHoldsOn ? null : Start.AddTicks(KnownTicks);

    internal ValueList<TemperatureSegment> List => segments;

    internal long KnownTicks
    {
        get
        {
            long ticks = 0;
            foreach (TemperatureSegment segment in segments)
            {
                ticks += segment.Duration.Ticks;
            }

            return ticks;
        }
    }

    /// <summary>One temperature from an instant on, for ever.</summary>
    /// <param name="start">When it begins.</param>
    /// <param name="temperature">The temperature, −20 to 60 °C.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static TemperatureHistory Constant(DateTimeOffset start, Temperature temperature) =>
        new(start, [new TemperatureSegment(TimeSpan.FromHours(1), temperature)], true);

    /// <summary>The temperature at an instant; at a change, that of the stretch that begins.</summary>
    /// <param name="instant">From the start to the end of the history; the end itself belongs to the last stretch.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Before the start or after the end.</exception>
    public Temperature At(DateTimeOffset instant)
    {
        long ticks = TicksOf(instant, nameof(instant));
        foreach (TemperatureSegment segment in segments)
        {
            ticks -= segment.Duration.Ticks;
            if (ticks < 0)
            {
                return segment.Temperature;
            }
        }

        return segments[segments.Count - 1].Temperature;
    }

    /// <summary>When it begins, how many stretches, and the first of them.</summary>
    /// <returns>One line of text, with the start in UTC.</returns>
    public override string ToString() =>
        "from " + Start.UtcDateTime.ToString("yyyy-MM-dd HH:mm'Z'", System.Globalization.CultureInfo.InvariantCulture) + ": "
        + string.Join(", ", segments) + (LastHoldsOn ? " and on" : string.Empty);

    /// <summary>Ticks since the start, refused before it and after the end.</summary>
    internal long TicksOf(DateTimeOffset instant, string name)
    {
        long ticks = instant.UtcTicks - Start.UtcTicks;
        long known = KnownTicks;
        Guard.Rule(
            ticks >= 0 && (LastHoldsOn || ticks <= known),
            name,
            ticks / (double)TimeSpan.TicksPerSecond,
            Measure.Hours,
            LastHoldsOn
                ? "at least 0 h after the start of the history"
                : "0 h to " + Measure.Hours.Format(known / (double)TimeSpan.TicksPerSecond) + " after the start of the history");
        return ticks;
    }
}
