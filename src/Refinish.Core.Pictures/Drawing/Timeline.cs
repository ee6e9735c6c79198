using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// A schedule as a timeline draws it, whether it is the bare site search or the schedule of a crew. Everything is joined by identifiers.
/// </summary>
internal sealed class Timeline
{
    private static readonly TimelineName NoRoom = new(string.Empty, "outside the rooms");

    private Timeline(
        WorkCalendar calendar,
        IEnumerable<TimelineEntry> entries,
        IEnumerable<StepLag> lags,
        IReadOnlyList<ScheduledWindow> windows,
        IEnumerable<TimelineName> rooms,
        IReadOnlyList<TimelineName> people,
        IReadOnlyList<TimelineVisit> visits)
    {
        Calendar = calendar;
        Entries = [.. entries.OrderBy(entry => entry.Start)];

        // A window says more than the lags that keep it; a plain order of the work, without a time to keep, is seen from the bars
        // themselves.
        HashSet<(string, string)> told = [.. windows.SelectMany(window => window.Next.Select(next => (window.Operation.Operation.Id, next)))];
        Holds = windows.SelectMany(TimelineHold.Of)
            .Concat(lags.Where(lag => (lag.Minimum > TimeSpan.Zero || lag.Maximum is not null) && !told.Contains((lag.Before, lag.After)))
                .Select(lag => (Lag: lag, Before: Find(lag.Before))).Where(pair => pair.Before is not null)
                .Select(pair => TimelineHold.Of(pair.Lag, pair.Before!.End)))
            .ToLookup(hold => hold.After, StringComparer.Ordinal);
        TimelineName[] used = [.. rooms.Where(room => Entries.Any(entry => entry.Room == room.Id))];
        Rooms = used.Length != 1 && Entries.Any(entry => entry.Room is null && entry.Kind != TimelineKind.StandBy) ? [.. used, NoRoom]
            : used;
        People = people;
        Visits = visits;
        TimeInterval[] pieces = [.. Entries.Where(entry => entry.Kind != TimelineKind.Wait).SelectMany(entry => entry.Pieces)];
        Days = [.. pieces.Select(piece => piece.Start.DateTime.Date).Distinct().OrderBy(day => day)];
        FirstHour = Math.Max(0, Math.Floor(calendar.Shifts.Select(shift => shift.Hours.From.TotalHours)
            .Concat(pieces.Select(piece => piece.Start.TimeOfDay.TotalHours)).Min() - 0.5));
        LastHour = Math.Min(24, Math.Ceiling(calendar.Shifts.Select(shift => shift.Hours.Until.TotalHours).Concat(pieces.Select(EndHour))
            .Max() + 0.5));
    }

    public WorkCalendar Calendar { get; }

    /// <summary>What is done, by start.</summary>
    public IReadOnlyList<TimelineEntry> Entries { get; }

    /// <summary>The waits and windows before an entry, by its identifier.</summary>
    public ILookup<string, TimelineHold> Holds { get; }

    /// <summary>
    /// The rooms in which anything is done, in the order of the premises, and at the end what is done outside them; with a single room that
    /// is told there.
    /// </summary>
    public IReadOnlyList<TimelineName> Rooms { get; }

    public IReadOnlyList<TimelineName> People { get; }

    public IReadOnlyList<TimelineVisit> Visits { get; }

    /// <summary>The days on which anybody is on site.</summary>
    public IReadOnlyList<DateTime> Days { get; }

    /// <summary>The hour at which the picture of each day begins.</summary>
    public double FirstHour { get; }

    /// <summary>The hour at which it ends.</summary>
    public double LastHour { get; }

    public DateTimeOffset Start => Entries[0].Start;

    public DateTimeOffset End => Entries.Max(entry => entry.End);

    /// <summary>No water in a room before this instant, by its identifier.</summary>
    public IReadOnlyDictionary<string, DateTimeOffset> Water { get; private init; } =
        new Dictionary<string, DateTimeOffset>(StringComparer.Ordinal);

    /// <summary>First water after the last day on site, with the rooms that get it then.</summary>
    public IEnumerable<(DateTimeOffset From, IReadOnlyList<TimelineName> Rooms)> WaterAfterwards =>
        Rooms.Where(room => Water.TryGetValue(room.Id, out DateTimeOffset from) && from.DateTime.Date > Days[Days.Count - 1])
            .GroupBy(room => Water[room.Id]).OrderBy(water => water.Key)
            .Select(water => (water.Key, (IReadOnlyList<TimelineName>)[.. water]));

    public static Timeline Of(SiteSchedule schedule)
    {
        SiteWork work = schedule.Work;
        TimelineName[] people = [.. Enumerable.Range(0, work.Crew).Select(person => new TimelineName(Number(person), "person "
            + Number(person + 1)))];
        return new Timeline(
            work.Calendar,
            schedule.Steps.Select(step => new TimelineEntry(
                step.Step.Id, step.Step.Name, step.Step.Room, KindOf(step.Step.IsAttended, step.Step.Sprays), step.Pieces,
                    [.. step.People.Select(Number)], step.RoomClear)
            {
                KeepsOthersOut = step.Step.Sprays,
            }),
            work.Lags,
            [],
            work.Steps.Select(step => step.Room).OfType<string>().Distinct().Select(room => new TimelineName(room, room)),
            people,
            [.. schedule.PersonDays.Select(day => new TimelineVisit(Number(day.Person), day.Arrives, day.Leaves,
                day.Leaves - day.Arrives - day.Worked))]);
    }

    public static Timeline Of(CrewSchedule schedule, Handover? handover)
    {
        Dictionary<string, PlannedStep> steps = schedule.Found.Steps.ToDictionary(step => step.Step.Id, StringComparer.Ordinal);
        ILookup<string, ScheduledOperation> beside = schedule.Operations.Where(operation => operation.Operation.Beside is not null)
            .ToLookup(operation => operation.Operation.Beside!, StringComparer.Ordinal);
        Dictionary<string, DateTimeOffset> water = new(StringComparer.Ordinal);
        foreach (IGrouping<string, FixtureHandover> room in (handover?.Fixtures ?? []).GroupBy(fixture => fixture.Procedure.Fixture.Room,
            StringComparer.Ordinal))
        {
            if (room.All(fixture => fixture.WaterFrom is not null))
            {
                water.Add(room.Key, room.Max(fixture => fixture.WaterFrom!.Value));
            }
        }

        return new Timeline(
            schedule.Work.Shop.Calendar,
            schedule.Operations.Select(one => new TimelineEntry(
                one.Operation.Id,
                one.Operation.Name,
                one.Operation.Room,
                one.Operation.Beside is not null ? TimelineKind.StandBy : KindOf(one.People.Count > 0, one.Operation.Sprays),
                one.Pieces,
                one.People,
                steps.TryGetValue(one.Operation.Id, out PlannedStep? step) ? step.RoomClear : one.End)
            {
                // Whoever stands by does so because of what keeps others out.
                KeepsOthersOut = one.Operation.Beside is null && (one.Operation.Sprays || one.Operation.Clearing > TimeSpan.Zero
                    || one.Operation.Kind is WorkKind.LayOnStripper or WorkKind.Strip or WorkKind.Promote or WorkKind.Broadcast
                    || beside[one.Operation.Id].Any()),
                StandingBy = [.. beside[one.Operation.Id].SelectMany(other => other.People)],
            }),
            schedule.Work.Lags,
            schedule.Windows,
            schedule.Work.Premises.Rooms.Select(room => new TimelineName(room.Id, room.Name)),
            [.. schedule.Work.Shop.Crew.Select(worker => new TimelineName(worker.Id, worker.Name))],
            [.. schedule.Visits.Select(visit => new TimelineVisit(visit.Worker, visit.Arrives, visit.Leaves, visit.Waiting))])
        {
            Water = water,
        };
    }

    public TimelineEntry? Find(string id) => Entries.FirstOrDefault(entry => entry.Id == id);

    /// <summary>What is done in a room, without standing by, which its coat tells.</summary>
    public IEnumerable<TimelineEntry> In(TimelineName room) =>
        Entries.Where(entry => entry.Kind != TimelineKind.StandBy && RoomOf(entry) == room);

    /// <summary>Of several least times the one that is over last decides; windows that close are all told.</summary>
    public IEnumerable<TimelineHold> Deciding(TimelineEntry entry)
    {
        TimelineHold[] holds = [.. Holds[entry.Id]];
        TimelineHold? last = holds.Where(hold => !hold.MayClose).OrderByDescending(hold => hold.Opens ?? DateTimeOffset.MaxValue).FirstOrDefault();
        return holds.Where(hold => hold.MayClose || ReferenceEquals(hold, last));
    }

    /// <summary>
    /// When only those who do the work may be in a room: while it is sprayed or wiped on, until the air is clear; whole minutes,
    /// rounded to the careful side.
    /// </summary>
    public IReadOnlyList<TimeInterval> Closed(TimelineName room)
    {
        List<TimeInterval> closed = [];
        foreach (TimeInterval one in Entries.Where(entry => entry.KeepsOthersOut && RoomOf(entry) == room)
            .SelectMany(entry => entry.Pieces.Select(piece => new TimeInterval(
                CarefulTime.Down(piece.Start),
                CarefulTime.Up(piece.End == entry.End && entry.RoomClear > entry.End ? entry.RoomClear : piece.End))))
            .OrderBy(one => one.Start))
        {
            TimeInterval? before = closed.Count > 0 ? closed[closed.Count - 1] : null;
            if (before is not null && one.Start - before.End <= TimeSpan.FromMinutes(1))
            {
                closed[closed.Count - 1] = new TimeInterval(before.Start, one.End > before.End ? one.End : before.End);
            }
            else
            {
                closed.Add(one);
            }
        }

        return closed;
    }

    /// <summary>The letter under which a room stands on bars, where there are several; as in a spreadsheet after the 26th.</summary>
    public string Letter(TimelineName room)
    {
        int i = Rooms.ToList().IndexOf(room);
        return (i >= 26 ? ((char)('A' + (i / 26) - 1)).ToString() : string.Empty) + (char)('A' + (i % 26));
    }

    /// <summary>The letter of the room of an entry.</summary>
    public string Letter(TimelineEntry entry) => Letter(RoomOf(entry));

    /// <summary>Names of people by their identifiers.</summary>
    public string Names(IEnumerable<string> people) => string.Join(", ", people.Select(id => People.First(person => person.Id == id).Name));

    /// <summary>The shifts of a day; none on a day off.</summary>
    public IEnumerable<WorkingHours> Shifts(DateTime day) =>
        Calendar.DaysOff.Contains(day.Date) ? [] : Calendar.Shifts.Where(shift => shift.Day == day.DayOfWeek).Select(shift => shift.Hours)
            .OrderBy(hours => hours.From);

    private TimelineName RoomOf(TimelineEntry entry) => Rooms.FirstOrDefault(room => room.Id == entry.Room) ?? Rooms[Rooms.Count - 1];

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static TimelineKind KindOf(bool attended, bool sprays) => !attended ? TimelineKind.Wait : sprays ? TimelineKind.Coat
        : TimelineKind.Work;

    // Midnight ends a day rather than begins it.
    private static double EndHour(TimeInterval piece) => piece.End.DateTime.Date > piece.Start.DateTime.Date ? 24
        : piece.End.TimeOfDay.TotalHours;
}
