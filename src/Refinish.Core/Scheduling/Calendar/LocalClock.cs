using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// The clock on the wall of the site: how far it runs from universal time at each instant. It is always given by the caller, as an
/// offset, as offsets by date, or as a time zone; this library reads neither the machine's clock nor its zone.
/// </summary>
/// <remarks>
/// Durations are counted in universal time, so that the night on which clocks change is 23 or 25 hours long for a film that cures. Only
/// working hours are read from the wall. A wall time that a change skips stands for the instant of the change; one that comes twice
/// stands for the first. Changes have to be more than two days apart.
/// </remarks>
/// <example><code>
/// LocalClock clock = LocalClock.WithChanges(
///     TimeSpan.FromHours(1), [new ClockChange(new DateTimeOffset(2027, 3, 28, 1, 0, 0, TimeSpan.Zero), TimeSpan.FromHours(2))]);
/// TimeSpan offset = clock.OffsetAt(new DateTimeOffset(2027, 4, 1, 0, 0, 0, TimeSpan.Zero));   // 2 h
/// </code></example>
public sealed record LocalClock
{
    private LocalClock(TimeSpan offset, ValueList<ClockChange> changes, TimeZoneInfo? zone)
    {
        Offset = offset;
        Changes = changes;
        Zone = zone;
    }

    /// <summary>
    /// Local time less universal time before the first of <see cref="Changes"/>; zero for a clock that follows a <see cref="Zone"/>.
    /// </summary>
    public TimeSpan Offset { get; }

    /// <summary>The known changes, first to last; none for a clock that never changes or that follows a <see cref="Zone"/>.</summary>
    public IReadOnlyList<ClockChange> Changes { get; }

    /// <summary>The time zone that the clock follows; <see langword="null"/> for a clock given by its offset.</summary>
    public TimeZoneInfo? Zone { get; }

    /// <summary>A clock that never changes.</summary>
    /// <param name="offset">Local time less universal time, −14 to 14 h in whole minutes.</param>
    /// <returns>The clock.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="offset"/> is outside its range.</exception>
    public static LocalClock Fixed(TimeSpan offset) => new(Checked(offset, nameof(offset)), ValueList<ClockChange>.Empty, null);

    /// <summary>A clock with known changes.</summary>
    /// <param name="offset">Local time less universal time before the first change, −14 to 14 h in whole minutes.</param>
    /// <param name="changes">The changes, more than two days apart, in any order.</param>
    /// <returns>The clock.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="offset"/> is outside its range, or two changes are too close.
    /// </exception>
    public static LocalClock WithChanges(TimeSpan offset, IEnumerable<ClockChange> changes)
    {
        ValueList<ClockChange> sorted = new(Guard.List(changes).OrderBy(change => change.Instant));
        for (int i = 1; i < sorted.Count; i++)
        {
            TimeSpan apart = sorted[i].Instant - sorted[i - 1].Instant;
            Guard.Rule(apart > TimeSpan.FromDays(2), nameof(changes), apart.TotalSeconds, Measure.Hours, "more than two days from one change to the next");
        }

        return new LocalClock(Checked(offset, nameof(offset)), sorted, null);
    }

    /// <summary>The clock of a time zone that the caller looked up or made.</summary>
    /// <param name="zone">The zone.</param>
    /// <returns>The clock.</returns>
    /// <exception cref="ArgumentNullException">No zone is given.</exception>
    public static LocalClock Of(TimeZoneInfo zone) => new(TimeSpan.Zero, ValueList<ClockChange>.Empty, Guard.NotNull(zone));

    /// <summary>Local time less universal time at an instant.</summary>
    /// <param name="instant">The instant; its own offset does not matter.</param>
    /// <returns>The offset.</returns>
    public TimeSpan OffsetAt(DateTimeOffset instant)
    {
        if (Zone is not null)
        {
            return Zone.GetUtcOffset(instant);
        }

        TimeSpan found = Offset;
        foreach (ClockChange change in Changes)
        {
            if (change.Instant > instant)
            {
                break;
            }

            found = change.Offset;
        }

        return found;
    }

    /// <summary>The same instant as the clock on site shows it.</summary>
    /// <param name="instant">The instant.</param>
    /// <returns>The instant with the local offset.</returns>
    public DateTimeOffset OnSite(DateTimeOffset instant) => instant.ToOffset(OffsetAt(instant));

    /// <summary>The instant at which the clock on site shows a wall time.</summary>
    /// <param name="wall">The wall time; its kind does not matter.</param>
    /// <returns>
    /// The instant with the local offset; the instant of the change for a skipped time, the first of two for one that comes twice.
    /// </returns>
    public DateTimeOffset WhenShowing(DateTime wall)
    {
        DateTimeOffset asUniversal = new(DateTime.SpecifyKind(wall, DateTimeKind.Unspecified), TimeSpan.Zero);
        TimeSpan before = OffsetAt(asUniversal.AddDays(-1));
        TimeSpan after = OffsetAt(asUniversal.AddDays(1));
        DateTimeOffset early = asUniversal - before;
        if (before == after || OffsetAt(early) == before)
        {
            return OnSite(early);
        }

        DateTimeOffset late = asUniversal - after;
        if (OffsetAt(late) == after)
        {
            return OnSite(late);
        }

        // Skipped: the change lies after the time by the later offset and not after the time by the earlier one.
        long low = late.Ticks;
        long high = early.Ticks;
        while (high - low > 1)
        {
            long middle = low + ((high - low) / 2);
            (low, high) = OffsetAt(new DateTimeOffset(middle, TimeSpan.Zero)) == before ? (middle, high) : (low, middle);
        }

        return OnSite(new DateTimeOffset(high, TimeSpan.Zero));
    }

    /// <summary>The zone, or the offset and the number of its changes.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Zone?.Id ?? "UTC + " + TimeConstraint.Hours(Offset) + (Changes.Count == 0 ? string.Empty : ", then " + string.Join("; ", Changes));

    internal static TimeSpan Checked(TimeSpan offset, string name)
    {
        Guard.Within(offset, Bounds.Between(-14 * 3600, 14 * 3600, Measure.Hours), name);
        Guard.Rule(offset.Ticks % TimeSpan.TicksPerMinute == 0, name, offset.TotalSeconds, Measure.Hours, "whole minutes");
        return offset;
    }
}
