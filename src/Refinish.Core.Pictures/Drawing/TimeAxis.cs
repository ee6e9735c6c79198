using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using OxyPlot.Axes;

namespace Refinish.Pictures.Drawing;

/// <summary>Hours from minutes to weeks on one axis, marked at the times that people name.</summary>
internal static class TimeAxis
{
    private static readonly (double Hours, string Label, bool OnNarrow)[] Named =
    [
        (1 / 60.0, "1 min", false), (5 / 60.0, "5 min", true), (0.25, "15 min", false), (0.5, "30 min", false), (1, "1 h", true),
            (2, "2 h", false), (4, "4 h", false), (8, "8 h", true),
        (24, "1 d", true), (72, "3 d", false), (168, "7 d", true), (336, "14 d", false), (720, "30 d", true), (2160, "90 d", false),
    ];

    /// <summary>
    /// Every so many whole hours by the clock between two times in hours from an instant, with the name of the day at midnight.
    /// The offset is that of the instant throughout.
    /// </summary>
    public static IEnumerable<(double At, string Label)> ByTheClock(DateTimeOffset zero, double from, double until, int step)
    {
        double start = zero.TimeOfDay.TotalHours;
        DateTimeOffset midnight = zero - zero.TimeOfDay;
        for (double hour = Math.Ceiling(((start + from) / step) - 1e-9) * step; hour - start <= until + 1e-9; hour += step)
        {
            DateTimeOffset instant = midnight.AddHours(hour);
            string label = hour % 24 == 0 ? instant.ToString("ddd d", CultureInfo.InvariantCulture) : Clock.Time(instant);
            yield return (hour - start, label);
        }
    }

    /// <summary>
    /// A logarithmic axis from the named time below the first to beyond the last, marked at as many named times as a width has room for.
    /// </summary>
    public static Axis Logarithmic(double first, double last, double width)
    {
        double from = Named.Select(tick => tick.Hours).Where(hours => hours <= first * 0.999).DefaultIfEmpty(first / 2).Max();
        double to = last * 1.6;
        List<(double Hours, string Label)> kept = [];
        foreach ((double hours, string label, _) in Named.Where(tick => tick.Hours >= from && tick.Hours <= to)
            .OrderBy(tick => !tick.OnNarrow))
        {
            if (kept.All(other => Math.Abs(X(other.Hours) - X(hours)) > ((TextWidths.Of(other.Label, Page.Small)
                + TextWidths.Of(label, Page.Small)) / 2) + 6))
            {
                kept.Add((hours, label));
            }
        }

        return Chart.Scale(from, to, kept.OrderBy(tick => tick.Hours), logarithmic: true);

        double X(double hours) => width * Math.Log(hours / from) / Math.Log(to / from);
    }
}
