using System;
using System.Globalization;
using System.Linq;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Refinish.Scheduling;
using Calendar = Ical.Net.Calendar;

namespace Refinish.Samples.CalendarExport;

/// <summary>
/// A schedule as an iCalendar file (RFC 5545): one event for each stretch of work, one for each time a room stays empty. All times are written in
/// universal time, so that no reader has to know the zone.
/// </summary>
internal static class CalendarFile
{
    /// <param name="schedule">A schedule.</param>
    /// <param name="stamp">When the file is made; given, because the file should be the same for the same schedule.</param>
    public static string Write(SiteSchedule schedule, DateTimeOffset stamp)
    {
        Calendar calendar = new() { ProductId = "-//Refinish.Core//CalendarExport sample//EN" };
        int number = 0;
        foreach (PlannedStep step in schedule.Steps)
        {
            for (int piece = 0; piece < step.Pieces.Count; piece++)
            {
                string part = step.Pieces.Count > 1 ? string.Create(CultureInfo.InvariantCulture, $" ({piece + 1} of {step.Pieces.Count})") : string.Empty;
                calendar.Events.Add(Event(++number, step.Step.Name + part, step.Step.Room, step.Driver.ToString(), step.Pieces[piece].Start, step.Pieces[piece].End, stamp));
            }

            if (step.RoomClear > step.End)
            {
                calendar.Events.Add(Event(++number, step.Step.Room + " stays empty", step.Step.Room, "The room clears after " + step.Step.Name + ".", step.End, step.RoomClear, stamp));
            }
        }

        return new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("The calendar could not be written.");
    }

    /// <summary>Reads the file back with the library's parser and compares every event: the times survive the file.</summary>
    public static bool HoldsAgainst(string text, SiteSchedule schedule)
    {
        Calendar read = Calendar.Load(text) ?? throw new FormatException("The calendar could not be read.");
        var written = schedule.Steps.SelectMany(step => step.Pieces.Select(piece => (piece.Start, piece.End)).Concat(step.RoomClear > step.End ? [(step.End, step.RoomClear)] : []));
        var found = read.Events.Select(one => (new DateTimeOffset(one.Start!.AsUtc, TimeSpan.Zero), new DateTimeOffset(one.End!.AsUtc, TimeSpan.Zero)));
        return written.Select(pair => (pair.Item1.UtcDateTime, pair.Item2.UtcDateTime)).Order().SequenceEqual(found.Select(pair => (pair.Item1.UtcDateTime, pair.Item2.UtcDateTime)).Order());
    }

    private static CalendarEvent Event(int number, string summary, string? room, string why, DateTimeOffset start, DateTimeOffset end, DateTimeOffset stamp) => new()
    {
        Uid = string.Create(CultureInfo.InvariantCulture, $"step-{number}@refinish-core.invalid"),
        Summary = summary,
        Location = room,
        Description = why,
        DtStamp = new CalDateTime(stamp.UtcDateTime, "UTC"),
        Start = new CalDateTime(start.UtcDateTime, "UTC"),
        End = new CalDateTime(end.UtcDateTime, "UTC"),
    };
}
