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
    private static readonly string WithinThermometer = "a swing that stays within " + TemperatureShift.Thermometer;

    private readonly ValueList<TemperatureSegment> segments;

    // Ticks from the start to the end of each stretch.
    private readonly ValueList<long> ends;

    // The temperatures side by side, for the loops that run over a long log.
    private readonly ValueList<double> kelvins;

    /// <summary>Makes a history.</summary>
    /// <param name="start">When it begins.</param>
    /// <param name="segments">The stretches in order, at least one.</param>
    /// <exception cref="ArgumentException"><paramref name="segments"/> is empty or has an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stretches reach beyond the end of the calendar (year 9999).</exception>
    public TemperatureHistory(DateTimeOffset start, IEnumerable<TemperatureSegment> segments)
        : this(start, segments, false)
    {
    }

    /// <summary>Makes a history.</summary>
    /// <param name="start">When it begins.</param>
    /// <param name="segments">The stretches in order, at least one.</param>
    /// <param name="lastHoldsOn">Whether the last temperature goes on for ever; otherwise nothing is known after the last stretch.</param>
    /// <exception cref="ArgumentException"><paramref name="segments"/> is empty or has an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The stretches reach beyond the end of the calendar (year 9999).</exception>
    public TemperatureHistory(DateTimeOffset start, IEnumerable<TemperatureSegment> segments, bool lastHoldsOn)
    {
        Start = start;
        this.segments = Guard.List(segments, 1);
        LastHoldsOn = lastHoldsOn;
        long room = DateTime.MaxValue.Ticks - start.UtcTicks;
        long[] elapsed = new long[this.segments.Count];
        double[] temperatures = new double[elapsed.Length];
        long end = 0;
        for (int i = 0; i < elapsed.Length; i++)
        {
            end += this.segments[i].Duration.Ticks;
            elapsed[i] = end;
            temperatures[i] = this.segments[i].Kelvins;
            Guard.Rule(end <= room, nameof(segments), end / (double)TimeSpan.TicksPerSecond, Measure.Hours, "stretches that end before the year 10000");
        }

        ends = new ValueList<long>(elapsed);
        kelvins = new ValueList<double>(temperatures);
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

    internal ValueList<double> Kelvins => kelvins;

    internal long KnownTicks => ends[ends.Count - 1];

    /// <summary>One temperature from an instant on, for ever.</summary>
    /// <param name="start">When it begins.</param>
    /// <param name="temperature">The temperature, −20 to 60 °C.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static TemperatureHistory Constant(DateTimeOffset start, Temperature temperature) =>
        new(start, [new TemperatureSegment(TimeSpan.FromHours(1), temperature)], true);

    /// <summary>
    /// A temperature that swings about a mean once in 24 hours, T = mean + amplitude cos(2π (t − t_warmest) / 24 h), cut into stretches
    /// at the temperature of their middle.
    /// </summary>
    /// <remarks>
    /// Over whole days the stretches give the age of the smooth curve to the last digits, as equal steps do for anything periodic.
    /// </remarks>
    /// <param name="start">When it begins.</param>
    /// <param name="duration">How long, a whole number of steps, at most 366 days.</param>
    /// <param name="mean">The mean temperature.</param>
    /// <param name="amplitude">How far it swings to either side, 0 to 40 K; mean and swing have to stay within −20 to 60 °C.</param>
    /// <param name="warmest">An instant at which it is warmest, of any day.</param>
    /// <returns>The history, which ends after the last stretch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static TemperatureHistory Diurnal(
        DateTimeOffset start, TimeSpan duration, Temperature mean, TemperatureDelta amplitude, DateTimeOffset warmest) =>
        Diurnal(start, duration, mean, amplitude, warmest, TimeSpan.FromTicks(15 * TimeSpan.TicksPerMinute));

    /// <summary>
    /// A temperature that swings about a mean once in 24 hours, T = mean + amplitude cos(2π (t − t_warmest) / 24 h), cut into stretches
    /// at the temperature of their middle.
    /// </summary>
    /// <remarks>
    /// Over whole days the stretches give the age of the smooth curve to the last digits, as equal steps do for anything periodic.
    /// </remarks>
    /// <param name="start">When it begins.</param>
    /// <param name="duration">How long, a whole number of steps, at most 366 days.</param>
    /// <param name="mean">The mean temperature.</param>
    /// <param name="amplitude">How far it swings to either side, 0 to 40 K; mean and swing have to stay within −20 to 60 °C.</param>
    /// <param name="warmest">An instant at which it is warmest, of any day.</param>
    /// <param name="step">Length of a stretch, 1 minute to 6 hours.</param>
    /// <returns>The history, which ends after the last stretch.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <example><code>
    /// DateTimeOffset start = new(2026, 3, 3, 17, 0, 0, TimeSpan.FromHours(-5));
    /// TemperatureHistory spring = TemperatureHistory.Diurnal(
    ///     start, TimeSpan.FromDays(7), Temperature.FromDegreesCelsius(16), TemperatureDelta.FromKelvins(4), start.AddHours(-2));
    /// </code></example>
    public static TemperatureHistory Diurnal(
        DateTimeOffset start, TimeSpan duration, Temperature mean, TemperatureDelta amplitude, DateTimeOffset warmest, TimeSpan step)
    {
        double middle = Guard.Within(mean, TemperatureShift.Thermometer);
        double swing = Guard.Within(amplitude, Bounds.NotNegative(Measure.TemperatureDifference, 40));
        Guard.Rule(
            middle - swing >= TemperatureShift.Thermometer.Minimum && middle + swing <= TemperatureShift.Thermometer.Maximum,
            nameof(amplitude), swing, Measure.TemperatureDifference, WithinThermometer);
        Guard.Within(step, Bounds.Between(60, 6 * 3600, Measure.Hours));
        Guard.Within(duration, Bounds.Positive(Measure.Hours, 366.0 * 24 * 3600));
        Guard.Rule(duration.Ticks % step.Ticks == 0, nameof(duration), duration.TotalSeconds, Measure.Hours, "a whole number of steps");
        double phase = (start.UtcTicks - warmest.UtcTicks) % TimeSpan.TicksPerDay / (double)TimeSpan.TicksPerDay;
        double part = step.Ticks / (double)TimeSpan.TicksPerDay;
        TemperatureSegment[] stretches = new TemperatureSegment[duration.Ticks / step.Ticks];
        for (int i = 0; i < stretches.Length; i++)
        {
            stretches[i] = new TemperatureSegment(
                step, Temperature.FromKelvins(middle + (swing * Math.Cos(2 * Math.PI * (phase + ((i + 0.5) * part))))));
        }

        return new TemperatureHistory(start, stretches);
    }

    /// <summary>The temperature at an instant; at a change, that of the stretch that begins.</summary>
    /// <param name="instant">From the start to the end of the history; the end itself belongs to the last stretch.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Before the start or after the end.</exception>
    public Temperature At(DateTimeOffset instant)
    {
        return segments[SegmentAt(TicksOf(instant, nameof(instant)))].Temperature;
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
        if (ticks < 0 || (!LastHoldsOn && ticks > KnownTicks))
        {
            string allowed = LastHoldsOn
                ? "at least 0 h after the start of the history"
                : "0 h to " + Measure.Hours.Format(KnownTicks / (double)TimeSpan.TicksPerSecond) + " after the start of the history";
            Guard.Rule(false, name, ticks / (double)TimeSpan.TicksPerSecond, Measure.Hours, allowed);
        }

        return ticks;
    }

    /// <summary>The stretch that holds a tick; at a change the one that begins, and the last one from its beginning on.</summary>
    internal int SegmentAt(long ticks)
    {
        int low = 0;
        int high = ends.Count - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (ends[middle] <= ticks)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    internal long BeginOf(int segment) => segment == 0 ? 0 : ends[segment - 1];

    /// <summary>The last stretch of a history that holds on never ends.</summary>
    internal long EndOf(int segment) => segment == ends.Count - 1 && LastHoldsOn ? long.MaxValue : ends[segment];
}
