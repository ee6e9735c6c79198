using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;
using Refinish.Scheduling;

namespace Refinish.Pictures;

/// <summary>
/// The job by the clock: the whole in one strip with a lane for each room and the nights folded, then each day with a row for each person,
/// a row for each room that is closed to others or has its water back, and, room by room, its operations, waits and windows.
/// </summary>
/// <remarks>
/// Hours outside the calendar are shaded. A wait is dotted until its least time is over; from then on a band is drawn as long as the window
/// stays open.
/// A room is closed to others while something in it is sprayed or wiped on that asks for it, and until the air is clear, which a dashed
/// line shows after the operation. A person's row shows work, coats, standing by and, dotted, waiting on site.
/// A schedule that cannot be kept, or a plan without one, gives a picture that says why.
/// </remarks>
/// <example><code>
/// SiteWork work = new()
/// {
///     Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)),
///     Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), LocalClock.Fixed(TimeSpan.FromHours(1))),
///     Steps = [new SiteStep { Id = "prepare", Duration = TimeSpan.FromHours(7), Room = "bathroom" }],
///     Lags = [],
/// };
/// string svg = new TimelinePicture(work.Solve()).ToSvg();
/// </code></example>
public sealed class TimelinePicture : Picture
{
    private const string Name = "The job by the clock";
    private readonly Timeline? timeline;
    private readonly Func<DisplayUnits, IReadOnlyList<string>> inTheWay;

    /// <summary>Pictures what a search on site found. Rooms are shown by their identifiers, people by their numbers.</summary>
    /// <param name="schedule">The schedule; when it is impossible, the picture says why.</param>
    /// <exception cref="ArgumentNullException"><paramref name="schedule"/> is missing.</exception>
    public TimelinePicture(SiteSchedule schedule)
        : base(Name)
    {
        Given.NotNull(schedule, nameof(schedule));
        timeline = schedule.Steps.Count > 0 ? Timeline.Of(schedule) : null;
        inTheWay = _ => schedule.Conflict is null ? [] : [schedule.Conflict.ToString()];
    }

    /// <summary>Pictures the schedule of a crew.</summary>
    /// <param name="schedule">The schedule; when there is none, the picture says why.</param>
    /// <exception cref="ArgumentNullException"><paramref name="schedule"/> is missing.</exception>
    public TimelinePicture(CrewSchedule schedule)
        : base(Name, Given.NotNull(schedule, nameof(schedule)).Work.Premises.Name)
    {
        timeline = schedule.Operations.Count > 0 ? Timeline.Of(schedule, null) : null;
        inTheWay = units => [.. schedule.Objections.Select(objection => objection.Sentence(units))];
    }

    /// <summary>Pictures the schedule of a plan with the first water of its handover.</summary>
    /// <param name="plan">The plan; without a schedule, the picture says what stands in the way.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public TimelinePicture(JobPlan plan)
        : base(Name, Given.NotNull(plan, nameof(plan)).Job.Name)
    {
        timeline = plan.Schedule is { Operations.Count: > 0 } schedule ? Timeline.Of(schedule, plan.IsPossible ? plan.Handover : null) : null;
        inTheWay = units => Objections.Of(plan, units, timeline is not null);
    }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units)
    {
        if (timeline is null)
        {
            return "There is no timeline. " + string.Join(" ", inTheWay(units));
        }

        bool several = timeline.Rooms.Count > 1;
        return "Each operation with its start and end. "
            + string.Join(" ", timeline.Rooms.Select(room => (several ? room.Name + ": " : string.Empty)
                + string.Join("; ", timeline.In(room).Select(Times)) + "." + Closed(room)))
            + Water(" ") + string.Concat(inTheWay(units).Select(line => " " + line));
    }

    private protected override void Draw(Page page)
    {
        if (timeline is null)
        {
            page.Paragraph("There is no timeline.");
        }
        else
        {
            int days = timeline.Days.Count;
            int people = timeline.Visits.Select(visit => visit.Person).Distinct().Count();
            page.Paragraph(
                Clock.Moment(timeline.Start) + " to " + Clock.Moment(timeline.End) + ", on site on " + Figures.Fixed(days, 0)
                    + (days == 1 ? " day" : " days")
                + (people > 1 ? ", " + Figures.Fixed(people, 0) + " people." : ".") + Water(" "));
        }

        page.Warnings(inTheWay(page.Units));

        if (timeline is not null)
        {
            TimelineStrip.Draw(page, timeline);
            TimelineDays.Draw(page, timeline);
        }
    }

    private string Times(TimelineEntry entry) =>
        entry.Name + " " + Clock.Moment(entry.Start) + " to " + (entry.End.Date == entry.Start.Date ? Clock.Time(entry.End)
            : Clock.Moment(entry.End))
        + (entry.StandingBy.Count == 0 ? string.Empty : ", " + timeline!.Names(entry.StandingBy) + " stands by");

    private string Closed(TimelineName room) => timeline!.Closed(room) is { Count: > 0 } closed
        ? " Closed to others: " + string.Join("; ", closed.Select(one => Clock.Moment(one.Start) + " to "
            + (one.End.Date == one.Start.Date ? Clock.Time(one.End) : Clock.Moment(one.End)))) + "."
        : string.Empty;

    private string Water(string before) => timeline!.Water.Count == 0 ? string.Empty
        : timeline.Rooms.Count == 1 ? before + "No water before " + Clock.Moment(timeline.Water.Values.Single()) + "."
        : before + "No water before: "
            + string.Join("; ", timeline.Rooms.Where(room => timeline.Water.ContainsKey(room.Id)).Select(room => room.Name + " "
                + Clock.Moment(timeline.Water[room.Id]))) + ".";
}
