using System;
using System.Collections.Generic;
using System.Globalization;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>
/// When the next coat may go on, by the clock of the site and with the temperature at each hour: after a coat its recoat window, after a
/// promoter's wipe the time in which it is dry and still open.
/// </summary>
/// <remarks>
/// Both ends are whole minutes to the careful side: the opening is rounded up, the closing down. A recoat window opens after the last
/// stroke of the coat, where the surface is coldest, and closes after its first stroke, where air or surface is warmest, so that it holds
/// for every place. A promoter dries and stays open from the end of wiping, as data sheets count. By the closing the last stroke of the
/// next coat has to be on. Of a coat that an operation of its product cures, such as a pass of a lamp, that operation stands for the coat:
/// its beginning for the first stroke, its end for the last.
/// </remarks>
public sealed class ScheduledWindow
{
    private static readonly Source Careful = Source.Derived("openings are rounded up and closings down to the whole minute of the clock");

    private readonly DateTimeOffset? opening;
    private readonly DateTimeOffset? closing;

    internal ScheduledWindow(
        ScheduledWindowKind kind, ScheduledOperation operation, string name, LocalClock clock, DateTimeOffset? opening,
        DateTimeOffset? closing)
    {
        Kind = kind;
        Operation = operation;
        Name = name;
        this.opening = opening;
        this.closing = closing;
        Opens = opening is DateTimeOffset open ? CarefulTime.Up(clock.OnSite(open)) : null;
        Closes = closing is DateTimeOffset close ? CarefulTime.Down(clock.OnSite(close)) : null;
    }

    /// <summary>What it is for.</summary>
    public ScheduledWindowKind Kind { get; }

    /// <summary>The coat or the wipe that it follows, or the operation that cures the coat.</summary>
    public ScheduledOperation Operation { get; }

    /// <summary>Name of the product or promoter that was put on.</summary>
    public string Name { get; }

    /// <summary>Identifiers of the coats that are planned in it; empty after the last coat.</summary>
    public IReadOnlyList<string> Next { get; internal init; } = ValueList<string>.Empty;

    /// <summary>First stroke of the gun, or the beginning of wiping or of the operation that cures.</summary>
    public DateTimeOffset FirstStroke { get; internal init; }

    /// <summary>Last stroke of the gun, or the end of wiping or of the operation that cures.</summary>
    public DateTimeOffset LastStroke => Operation.End;

    /// <summary>The first stroke of the next coat may be here; <see langword="null"/> when the temperature record ends before.</summary>
    public DateTimeOffset? Opens { get; }

    /// <summary>
    /// The last stroke of the next coat has to be on by here, else abrade or wipe again; <see langword="null"/> when it stays open
    /// (<see cref="IsOpenEnded"/>) and when the temperature record ends before.
    /// </summary>
    public DateTimeOffset? Closes { get; }

    /// <summary>Whether the product's window never closes.</summary>
    public bool IsOpenEnded { get; internal init; }

    /// <summary>How opening and closing follow: the time that passes, and the whole minute of the clock to the careful side.</summary>
    /// <returns>The derivation; an end that is not known has no step.</returns>
    public Workings Workings()
    {
        Trace t = new();
        bool coat = Kind == ScheduledWindowKind.Recoat;
        if (opening is DateTimeOffset opens)
        {
            string name = coat ? "recoat window opens, after the last stroke" : "promoter dry, after the end of wiping";
            t.Step(name, "t_open", Measure.Hours, Careful, Whole(LastStroke, opens, true, t));
        }

        if (closing is DateTimeOffset closes)
        {
            string name = coat ? "recoat window closes, after the first stroke" : "open time ends, after the end of wiping";
            Num closed = t.Step(name, "t_close", Measure.Hours, Careful, Whole(coat ? FirstStroke : LastStroke, closes, false, t));
            if (!coat)
            {
                t.Step("open time ends, after the beginning of wiping", "t_first", Measure.Hours, Careful,
                    closed + t.Given("t_wipe", (LastStroke - FirstStroke).TotalSeconds, Measure.Hours));
            }
        }

        foreach (Workings part in Parts?.Invoke() ?? [])
        {
            t.Part(part);
        }

        return t.Workings("Window of " + Operation.Operation.Id);
    }

    /// <summary>The window as the crew reads it, the days named that differ from the given one.</summary>
    /// <param name="day">The day under which it is read; the time of day does not matter.</param>
    /// <returns>Text such as <c>recoat from 13:05 to Tue 09:40</c>.</returns>
    public string SentenceOn(DateTime day)
    {
        string what = Kind == ScheduledWindowKind.Recoat ? "recoat" : "first coat";
        if (Closes < Opens)
        {
            return what + " at no time: it would open " + Clock(Opens.Value, day) + " and closes " + Clock(Closes!.Value, day);
        }

        string from = " from " + (Opens is DateTimeOffset opens ? Clock(opens, day) : "an hour beyond the temperature record");
        return what + from + (IsOpenEnded ? " on"
            : Closes is not DateTimeOffset closes ? ", to an hour beyond the temperature record"
            : " to " + Clock(closes, day) + Both(closes));
    }

    /// <summary>Where, when and what was put on, and the window, the days named that differ from that of the last stroke.</summary>
    /// <returns>Text such as <c>bath/coat/1/epoxy-primer, Mon: white epoxy primer: recoat from 13:05 to Tue 09:40</c>.</returns>
    public override string ToString() =>
        Operation.Operation.Id + ", " + LastStroke.ToString("ddd", CultureInfo.InvariantCulture) + ": " + Name + ": "
            + SentenceOn(LastStroke.Date);

    /// <summary>How the times that pass follow from the temperatures.</summary>
    internal Func<IReadOnlyList<Workings>>? Parts { get; init; }

    // Counted from the full minute before the beginning; a hair of 1 ms keeps what misses a whole minute by the rounding of doubles.
    private static Num Whole(DateTimeOffset from, DateTimeOffset exact, bool up, Trace t)
    {
        Num into = t.Given("t_0", from.TimeOfDay.Ticks % TimeSpan.TicksPerMinute / (double)TimeSpan.TicksPerSecond, Measure.Seconds);
        Num minute = t.Given("t_1", 60, Measure.Seconds);
        Num hair = t.Given("ε", 0.001, Measure.Seconds);
        Num passed = t.Given("t", (exact - from).TotalSeconds, Measure.Hours);
        return ((up ? Num.Ceiling((into + passed - hair) / minute) : Num.Floor((into + passed + hair) / minute)) * minute) - into;
    }

    // The place wiped first is open for longer than the data sheet's time, by the time of wiping.
    private string Both(DateTimeOffset closes) => Kind == ScheduledWindowKind.Recoat ? string.Empty
        : ", " + CarefulTime.AtMost(closes - LastStroke) + " from the end of wiping, " + CarefulTime.AtLeast(closes - FirstStroke) + " from its beginning";

    // Within the week the day's name tells it, farther off the date.
    private static string Clock(DateTimeOffset instant, DateTime day)
    {
        double days = (instant.Date - day.Date).TotalDays;
        string form = days == 0 ? "HH:mm" : Math.Abs(days) < 7 ? "ddd HH:mm" : "ddd d MMM HH:mm";
        return instant.ToString(form, CultureInfo.InvariantCulture);
    }
}
