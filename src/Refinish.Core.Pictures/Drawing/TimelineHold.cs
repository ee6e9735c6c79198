using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Pictures.Drawing;

/// <summary>What has to be waited for before an entry, or the window in which it has to be done, by the clock of the site.</summary>
internal sealed class TimelineHold
{
    private readonly Func<DisplayUnits, DateTime, string> words;

    private TimelineHold(string after, DateTimeOffset ended, Func<DisplayUnits, DateTime, string> words)
    {
        After = after;
        Ended = ended;
        this.words = words;
    }

    /// <summary>Identifier of the entry that is held.</summary>
    public string After { get; }

    /// <summary>End of the work from which it counts.</summary>
    public DateTimeOffset Ended { get; }

    /// <summary>When it opens, a whole minute, rounded up; missing when the record of temperatures does not tell.</summary>
    public DateTimeOffset? Opens { get; private init; }

    /// <summary>When it closes, a whole minute, rounded down.</summary>
    public DateTimeOffset? Closes { get; private init; }

    /// <summary>Whether it closes at all.</summary>
    public bool MayClose { get; private init; }

    /// <summary>The words under a day, other days named.</summary>
    public string Words(DisplayUnits units, DateTime day) => words(units, day);

    /// <summary>A lag between two steps, told by its own times and by the clock; for the start of the second step.</summary>
    public static TimelineHold Of(StepLag lag, DateTimeOffset ended)
    {
        DateTimeOffset? opens = Reached(lag, ended, lag.Minimum) is DateTimeOffset from ? CarefulTime.Up(from) : null;
        DateTimeOffset? closes = lag.Maximum is TimeSpan most && Reached(lag, ended, most) is DateTimeOffset to ? CarefulTime.Down(to) : null;
        return new TimelineHold(lag.After, ended, (units, day) => lag.Reason + ": " + Times(lag)
            + (lag.Clock is null ? string.Empty : " counted at " + Measure.Temperature.Format(lag.Clock.Reference.Kelvins, units, 3))
            + ByClock(lag, opens, closes, day))
        {
            Opens = opens,
            Closes = closes,
            MayClose = lag.Maximum is not null,
        };
    }

    /// <summary>A recoat window or an open time, before each coat that is planned in it.</summary>
    public static IEnumerable<TimelineHold> Of(ScheduledWindow window) => window.Next.Select(next =>
        new TimelineHold(next, window.LastStroke, (_, day) => window.Name + ": " + window.SentenceOn(day))
        {
            Opens = window.Opens,
            Closes = window.Closes,
            MayClose = !window.IsOpenEnded,
        });

    private static string Times(StepLag lag) => lag.Maximum is not TimeSpan most ? "at least " + Clock.AtLeast(lag.Minimum)
        : lag.Minimum == TimeSpan.Zero ? "within " + Clock.AtMost(most)
        : Clock.AtLeast(lag.Minimum) + " to " + Clock.AtMost(most);

    private static string ByClock(StepLag lag, DateTimeOffset? opens, DateTimeOffset? closes, DateTime day)
    {
        string from = opens is DateTimeOffset open && lag.Minimum > TimeSpan.Zero ? ", from " + When(open, day) : string.Empty;
        return closes is DateTimeOffset close ? from + (from.Length > 0 ? " to " : ", by ") + When(close, day) : from;
    }

    private static string When(DateTimeOffset instant, DateTime day) => instant.Date == day ? Clock.Time(instant)
        : Math.Abs((instant.Date - day).TotalDays) < 7 ? instant.ToString("ddd HH:mm", CultureInfo.InvariantCulture) : Clock.Moment(instant);

    private static DateTimeOffset? Reached(StepLag lag, DateTimeOffset from, TimeSpan time) => lag.Clock is null ? from + time
        : lag.Clock.InstantOf(from, time);
}
