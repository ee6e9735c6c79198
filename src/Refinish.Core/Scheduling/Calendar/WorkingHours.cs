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

    /// <summary>The earliest instant, not before the one given, at which work of this length can start and end on the same day.</summary>
    /// <param name="notBefore">The instant before which it cannot start; its offset is the job's clock.</param>
    /// <param name="duration">Length of the work, at most <see cref="Length"/>.</param>
    /// <returns>The instant.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The work is longer than a working day, or negative.</exception>
    public DateTimeOffset FirstFit(DateTimeOffset notBefore, TimeSpan duration)
    {
        Guard.Within(duration, Bounds.NotNegative(Measure.Hours, Length.TotalSeconds));
        DateTimeOffset midnight = new(notBefore.Date, notBefore.Offset);
        DateTimeOffset start = notBefore > midnight + From ? notBefore : midnight + From;
        return start + duration <= midnight + Until ? start : midnight.AddDays(1) + From;
    }

    /// <summary>The earliest instant, not before the one given, at which there is working time left.</summary>
    /// <param name="notBefore">The instant before which work cannot start.</param>
    /// <returns>The instant.</returns>
    public DateTimeOffset FirstOpen(DateTimeOffset notBefore)
    {
        DateTimeOffset start = FirstFit(notBefore, TimeSpan.Zero);
        return start - new DateTimeOffset(start.Date, start.Offset) < Until ? start : FirstFit(start.AddTicks(1), TimeSpan.Zero);
    }

    /// <summary>The pieces into which the nights cut a length of work.</summary>
    /// <param name="start">Start of the work, within working hours.</param>
    /// <param name="duration">Length of the work, zero or more.</param>
    /// <returns>At least one piece; each lies within one working day, and together they have the length asked for.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The work is negative or longer than 60 days.</exception>
    public IReadOnlyList<TimeInterval> Cut(DateTimeOffset start, TimeSpan duration)
    {
        Guard.Within(duration, Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600));
        List<TimeInterval> pieces = [];
        DateTimeOffset from = start;
        TimeSpan left = duration;
        while (true)
        {
            DateTimeOffset close = new DateTimeOffset(from.Date, from.Offset) + Until;
            TimeSpan here = close - from < left ? close - from : left;
            pieces.Add(new TimeInterval(from, from + here));
            left -= here;
            if (left <= TimeSpan.Zero)
            {
                return new ValueList<TimeInterval>(pieces);
            }

            from = FirstOpen(close);
        }
    }

    /// <summary>The hours in one line.</summary>
    /// <returns>Text such as <c>08:00–17:00</c>.</returns>
    public override string ToString() => Clock(From) + "–" + Clock(Until);

    private static string Clock(TimeSpan time) =>
        Figures.Fixed(Math.Floor(time.TotalHours), 0).PadLeft(2, '0') + ":" + Figures.Fixed(time.Minutes, 0).PadLeft(2, '0');
}
