using System;
using System.Collections.Generic;
using Refinish.Scheduling;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Working hours, days and the clock on the wall.</summary>
internal static class CalendarShapes
{
    public static ObjectShape<WorkingHours> Hours { get; } = new Fields<WorkingHours>("workingHours")
        .With("from", Times.Clock, it => it.From, out Slot<TimeSpan> from)
        .With("until", Times.Clock, it => it.Until, out Slot<TimeSpan> until)
        .MakingTogether(() => new WorkingHours(TimeSpan.Zero, TimeSpan.FromHours(24)), v => new WorkingHours(from(v), until(v)));

    public static ObjectShape<ClockChange> Change { get; } = new Fields<ClockChange>("clockChange")
        .With("instant", Times.Instant, it => it.Instant, out Slot<DateTimeOffset> instant)
        .With("offset", Times.Offset, it => it.Offset, out Slot<TimeSpan> offset)
        .Making(v => new ClockChange(instant(v), offset(v)));

    public static OneOfShape<LocalClock> Clock { get; } = new OneOfShape<LocalClock>("localClock")
        .Or("zone", Zone(), clock => clock.Zone is not null)
        .Or("fixed", Fixed(), clock => clock.Changes.Count == 0)
        .Or("withChanges", WithChanges());

    public static ObjectShape<WorkShift> Shift { get; } = new Fields<WorkShift>("workShift")
        .With("day", new WordShape<DayOfWeek>(), it => it.Day, out Slot<DayOfWeek> day)
        .With("hours", Hours, it => it.Hours, out Slot<WorkingHours> hours)
        .Making(v => new WorkShift(day(v), hours(v)));

    public static ObjectShape<WorkCalendar> Calendar { get; } = new Fields<WorkCalendar>("workCalendar")
        .With("clock", Clock, it => it.Clock, out Slot<LocalClock> clock)
        .With("shifts", List(Shift), it => it.Shifts, out Slot<IReadOnlyList<WorkShift>> shifts)
        .WithOr("daysOff", List(Times.Day), it => it.DaysOff, [], out Slot<IReadOnlyList<DateTime>> daysOff)
        .Making(v => new WorkCalendar(clock(v), shifts(v), daysOff(v)));

    public static ObjectShape<TimeInterval> Interval { get; } = new Fields<TimeInterval>("timeInterval")
        .With("start", Times.Instant, it => it.Start, out Slot<DateTimeOffset> start)
        .With("end", Times.Instant, it => it.End, out Slot<DateTimeOffset> end)
        .MakingTogether(
            () => new TimeInterval(new DateTimeOffset(2000, 1, 3, 8, 0, 0, TimeSpan.Zero),
                new DateTimeOffset(2000, 1, 3, 9, 0, 0, TimeSpan.Zero)),
            v => new TimeInterval(start(v), end(v)));

    private static ObjectShape<LocalClock> Fixed() => new Fields<LocalClock>("fixedClock")
        .With("offset", Times.Offset, it => it.Offset, out Slot<TimeSpan> offset)
        .Making(v => LocalClock.Fixed(offset(v)));

    private static ObjectShape<LocalClock> WithChanges() => new Fields<LocalClock>("clockWithChanges")
        .With("offset", Times.Offset, it => it.Offset, out Slot<TimeSpan> offset)
        .With("changes", List(Change), it => it.Changes, out Slot<IReadOnlyList<ClockChange>> changes)
        .Making(v => LocalClock.WithChanges(offset(v), changes(v)));

    private static ObjectShape<LocalClock> Zone() => new Fields<LocalClock>("zoneClock")
        .With("zone", Text, it => Known(it.Zone!), out Slot<string> zone)
        .Making(v => LocalClock.Of(Found(zone(v))));

    private static TimeZoneInfo Found(string zone) => TimeZoneInfo.TryFindSystemTimeZoneById(zone, out TimeZoneInfo? found)
        ? found
        : throw new ArgumentOutOfRangeException(nameof(zone), "zone is \"" + zone
            + "\", which this machine does not know; give the clock's offset and changes instead.");

    // A zone that someone made up has rules that its name does not tell.
    private static string Known(TimeZoneInfo zone) =>
        TimeZoneInfo.TryFindSystemTimeZoneById(zone.Id, out TimeZoneInfo? found) && found.Equals(zone)
        ? zone.Id
        : throw new NotSupportedException("The time zone \"" + zone.Id
            + "\" is not one that this machine finds by name; give the clock by its offset and changes instead.");
}
