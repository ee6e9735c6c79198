using System;
using System.Globalization;

namespace Refinish.Estimating;

/// <summary>The paid hours of one person on one day.</summary>
public sealed record PaidDay
{
    /// <summary>Makes a day.</summary>
    /// <param name="date">The day; its time of day does not count.</param>
    /// <param name="hours">Paid hours, 0 to 60 h: more than 24 where half-days are rounded up and a trip is added.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="hours"/> is outside its range.</exception>
    public PaidDay(DateTime date, TimeSpan hours)
    {
        Guard.Within(hours, Bounds.NotNegative(Measure.Hours, 60 * 3600));
        Date = date.Date;
        Hours = hours;
    }

    /// <summary>The day.</summary>
    public DateTime Date { get; }

    /// <summary>Paid hours.</summary>
    public TimeSpan Hours { get; }

    /// <summary>Day and hours.</summary>
    /// <returns>Text such as <c>2026-06-01: 9.5 h</c>.</returns>
    public override string ToString() =>
        Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + ": " + Measure.Hours.Format(Hours.TotalSeconds);
}
