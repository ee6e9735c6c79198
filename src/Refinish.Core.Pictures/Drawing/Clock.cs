using System;
using System.Globalization;

namespace Refinish.Pictures.Drawing;

/// <summary>Times as a shop writes them: in English, by the 24-hour clock, whatever the culture of the thread.</summary>
internal static class Clock
{
    public static string Day(DateTime day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    public static string ShortDay(DateTime day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    public static string Time(DateTimeOffset instant) => instant.ToString("HH:mm", CultureInfo.InvariantCulture);

    public static string Moment(DateTimeOffset instant) => instant.ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A length of time in minutes, hours or days, as long as it is: 25 min, 1 h 25, 41 h, 7 d. It is never broken at the end of a line.</summary>
    public static string Span(TimeSpan time) => Minutes((long)Math.Round(time.TotalMinutes));

    /// <summary>The same for a time that has to be waited for: a part of a minute counts as a whole one.</summary>
    public static string AtLeast(TimeSpan time) => Minutes((long)Math.Ceiling(time.TotalMinutes - 1e-9));

    /// <summary>The same for a time within which something has to be done: a part of a minute does not count.</summary>
    public static string AtMost(TimeSpan time) => Minutes((long)Math.Floor(time.TotalMinutes + 1e-9));

    private static string Minutes(long minutes)
    {
        if (minutes < 60)
        {
            return minutes.ToString(CultureInfo.InvariantCulture) + "\u00A0min";
        }

        long hours = minutes / 60;
        long rest = minutes % 60;
        if (hours >= 72)
        {
            return Figures.Fixed(minutes / 1440.0, 1).TrimEnd('0').TrimEnd('.') + "\u00A0d";
        }

        return hours.ToString(CultureInfo.InvariantCulture) + "\u00A0h" + (rest == 0 ? string.Empty : "\u00A0" + rest.ToString("00", CultureInfo.InvariantCulture));
    }
}
