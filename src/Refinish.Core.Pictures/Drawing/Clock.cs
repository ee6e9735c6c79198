using System;
using System.Globalization;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// Times as a shop writes them: in English, by the 24-hour clock, whatever the culture of the thread. A part of a minute counts as a
/// whole one, so that nothing is told to begin before it may; what closes is rounded down before it comes here.
/// </summary>
internal static class Clock
{
    public static string Day(DateTime day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    public static string ShortDay(DateTime day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    public static string Time(DateTimeOffset instant) => CarefulTime.Up(instant).ToString("HH:mm", CultureInfo.InvariantCulture);

    public static string Moment(DateTimeOffset instant) => CarefulTime.Up(instant).ToString("ddd d MMM, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>
    /// A length of time in minutes, hours or days, as long as it is: 25 min, 1 h 25, 41 h, 7 d. It is never broken at the end of a
    /// line.
    /// </summary>
    public static string Span(TimeSpan time) => Text(time, Math.Round);

    /// <summary>The same for a time that has to be waited for: a part of a minute, or of a tenth of a day, counts as a whole one.</summary>
    public static string AtLeast(TimeSpan time) => Text(CarefulTime.Up(time), value => Math.Ceiling(value - 1e-9));

    /// <summary>The same for a time within which something has to be done: a part does not count.</summary>
    public static string AtMost(TimeSpan time) => Text(CarefulTime.Down(time), value => Math.Floor(value + 1e-9));

    private static string Text(TimeSpan time, Func<double, double> whole)
    {
        if (time >= TimeSpan.FromHours(72))
        {
            return Figures.Significant(whole(time.TotalDays * 10) / 10, 6) + "\u00A0d";
        }

        long minutes = (long)whole(time.TotalMinutes);
        if (minutes < 60)
        {
            return minutes.ToString(CultureInfo.InvariantCulture) + "\u00A0min";
        }

        long rest = minutes % 60;
        return (minutes / 60).ToString(CultureInfo.InvariantCulture) + "\u00A0h" + (rest == 0 ? string.Empty : "\u00A0" + rest.ToString("00", CultureInfo.InvariantCulture));
    }
}
