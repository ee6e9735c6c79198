using System;
using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>The hours of a day in which someone is on site, by the clock of the site.</summary>
/// <example><code>
/// WorkingHours day = new(TimeSpan.FromHours(8), TimeSpan.FromHours(17));
/// </code></example>
public sealed record WorkingHours
{
    private static readonly Bounds Day = Bounds.Between(0, 24 * 3600, Measure.Hours);

    /// <summary>Makes working hours.</summary>
    /// <param name="from">Start of work after midnight, 0 to 24 h.</param>
    /// <param name="until">End of work after midnight, later than <paramref name="from"/> and at most 24 h.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the end is not after the start.</exception>
    public WorkingHours(TimeSpan from, TimeSpan until)
    {
        Guard.Within(from, Day);
        Guard.Within(until, Day);
        Guard.Rule(until > from, nameof(until), until.TotalSeconds, Measure.Hours, "later than the start of work, ", from.TotalSeconds);
        From = from;
        Until = until;
    }

    /// <summary>Start of work after midnight.</summary>
    public TimeSpan From { get; }

    /// <summary>End of work after midnight.</summary>
    public TimeSpan Until { get; }

    /// <summary>Length of the working day.</summary>
    public TimeSpan Length => Until - From;

    /// <summary>The hours in one line.</summary>
    /// <returns>Text such as <c>08:00–17:00</c>.</returns>
    public override string ToString() => Clock(From) + "–" + Clock(Until);

    private static string Clock(TimeSpan time) =>
        Figures.Fixed(Math.Floor(time.TotalHours), 0).PadLeft(2, '0') + ":" + Figures.Fixed(time.Minutes, 0).PadLeft(2, '0');
}
