using System;
using System.Collections.Generic;
using System.Linq;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Refinish.Jobs;
using Refinish.Scheduling;
using Calendar = Ical.Net.Calendar;

namespace Refinish.Samples.CalendarExport;

/// <summary>
/// A schedule as an iCalendar file (RFC 5545): one event for each stretch of work, one for each time a room stays empty. All times are
/// written in universal time, so that no reader has to know the zone. An event is identified by job and operation: sent again after a
/// change of plan, it moves.
/// </summary>
internal static class CalendarFile
{
    /// <param name="job">The job, for identity.</param>
    /// <param name="schedule">Its schedule.</param>
    /// <param name="stamp">When the file is made; given, because the file should be the same for the same schedule.</param>
    public static string Write(Job job, CrewSchedule schedule, DateTimeOffset stamp)
    {
        Calendar calendar = new() { ProductId = "-//Refinish.Core//CalendarExport sample//EN" };
        calendar.Events.AddRange(schedule.Operations.SelectMany(operation => Events(job, schedule, operation, stamp)));
        return new CalendarSerializer().SerializeToString(calendar)
            ?? throw new InvalidOperationException("The calendar could not be written.");
    }

    /// <summary>Reads the file back with the library's parser and compares every event: identities and times survive the file.</summary>
    public static bool HoldsAgainst(string text, Job job, CrewSchedule schedule, DateTimeOffset stamp)
    {
        Calendar read = Calendar.Load(text) ?? throw new FormatException("The calendar could not be read.");
        CalendarEvent[] written = [.. schedule.Operations.SelectMany(operation => Events(job, schedule, operation, stamp))];
        return written.Select(one => one.Uid).Distinct().Count() == written.Length
            && written.Select(Line).Order().SequenceEqual(read.Events.Select(Line).Order());
    }

    private static string Line(CalendarEvent one) => one.Uid + " " + one.Start!.AsUtc.ToString("O", null) + " "
        + one.End!.AsUtc.ToString("O", null);

    private static IEnumerable<CalendarEvent> Events(Job job, CrewSchedule schedule, ScheduledOperation planned, DateTimeOffset stamp)
    {
        Operation operation = planned.Operation;
        string id = job.Id + "/" + operation.Id;
        string? room = job.Premises.Rooms.FirstOrDefault(one => one.Id == operation.Room)?.Name;
        PlannedStep step = schedule.Found.Find(operation.Beside ?? operation.Id);
        string what = operation.Instruction + "\n" + step.Driver + string.Concat(operation.Cautions.Select(caution => "\n! " + caution));
        for (int i = 0; i < planned.Pieces.Count; i++)
        {
            string part = planned.Pieces.Count > 1 ? " (" + (i + 1) + " of " + planned.Pieces.Count + ")" : string.Empty;
            string who = planned.People.Count > 0 ? string.Join(", ", planned.People) + ": " : string.Empty;
            yield return Event(id + "/" + (i + 1), who + operation.Name + part, room, what, planned.Pieces[i].Start, planned.Pieces[i].End,
                stamp);
        }

        if (operation.Beside is null && step.RoomClear > step.End)
        {
            yield return Event(id + "/clear", room + " stays empty", room, "The room clears after " + operation.Name + ".", step.End,
                step.RoomClear, stamp);
        }
    }

    private static CalendarEvent Event(string id, string summary, string? room, string what, DateTimeOffset start, DateTimeOffset end,
        DateTimeOffset stamp) => new()
    {
        Uid = id + "@refinish-core.invalid",
        Summary = summary,
        Location = room,
        Description = what,
        DtStamp = new CalDateTime(stamp.UtcDateTime, "UTC"),
        Start = new CalDateTime(start.UtcDateTime, "UTC"),
        End = new CalDateTime(end.UtcDateTime, "UTC"),
    };
}
