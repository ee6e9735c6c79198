using System;

namespace Refinish.Scheduling;

/// <summary>Working hours of one day of the week; a day with a break has two.</summary>
/// <example><code>
/// WorkShift shift = new(DayOfWeek.Saturday, new WorkingHours(TimeSpan.FromHours(9), TimeSpan.FromHours(13)));
/// </code></example>
public sealed record WorkShift
{
    /// <summary>Makes a shift.</summary>
    /// <param name="day">The day of the week.</param>
    /// <param name="hours">Its hours.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="day"/> is not a day of the week.</exception>
    public WorkShift(DayOfWeek day, WorkingHours hours)
    {
        Day = Guard.Defined(day);
        Hours = Guard.NotNull(hours);
    }

    /// <summary>The day of the week.</summary>
    public DayOfWeek Day { get; }

    /// <summary>Its hours.</summary>
    public WorkingHours Hours { get; }

    /// <summary>The day and the hours.</summary>
    /// <returns>Text such as <c>Saturday 09:00–13:00</c>.</returns>
    public override string ToString() => Day + " " + Hours;
}
