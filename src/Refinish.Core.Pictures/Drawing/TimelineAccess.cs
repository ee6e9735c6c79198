using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Pictures.Drawing;

/// <summary>When others stay out of a room on a day, and from when its water may run.</summary>
internal sealed class TimelineAccess
{
    private readonly DateTime day;

    public TimelineAccess(Timeline timeline, TimelineName room, DateTime day)
    {
        this.day = day;
        Closed = [.. timeline.Closed(room).Where(one => one.Start.DateTime.Date <= day && one.End.DateTime > day)];
        Water = timeline.Water.TryGetValue(room.Id, out DateTimeOffset from) && from.DateTime.Date <= day ? from : null;
    }

    public IReadOnlyList<TimeInterval> Closed { get; }

    public DateTimeOffset? Water { get; }

    public bool IsTold => Closed.Count > 0 || Water is not null;

    public string Words => string.Join("; ", Parts());

    private IEnumerable<string> Parts()
    {
        if (Closed.Count > 0)
        {
            yield return "closed to others " + string.Join(", ", Closed.Select(one => At(one.Start) + "–" + At(one.End)));
        }

        if (Water is DateTimeOffset water)
        {
            yield return "water from " + At(water);
        }
    }

    private string At(DateTimeOffset instant) => instant.DateTime.Date == day ? Clock.Time(instant) : Clock.Moment(instant);
}
