using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;
using Refinish.Scheduling;

namespace Refinish.Pictures;

/// <summary>The job by the clock: the whole from the first hour to the first water in one strip, then each day with its steps, waits and windows.</summary>
/// <remarks>
/// Hours in which nobody is on site are shaded. A wait is dotted until its least time is over; from then on a band is drawn as long as the window stays open.
/// A schedule that cannot be kept, or a plan without one, gives a picture that says why.
/// </remarks>
/// <example><code>
/// DateTimeOffset start = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));
/// JobSchedule schedule = new(start, new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), [new ScheduleStep("prepare", TimeSpan.FromHours(7))], []);
/// string svg = new TimelinePicture(schedule).ToSvg();
/// </code></example>
public sealed class TimelinePicture : Picture
{
    private readonly JobSchedule? schedule;
    private readonly BathroomPlan? plan;
    private readonly DateTimeOffset? waterFrom;
    private readonly HashSet<string> coats = new(StringComparer.Ordinal);

    /// <summary>Pictures a schedule.</summary>
    /// <param name="schedule">The schedule; when it is impossible, the picture says why.</param>
    /// <param name="waterFrom">No water before this instant; not shown when left out.</param>
    /// <param name="title">What the picture is of.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is empty.</exception>
    public TimelinePicture(JobSchedule schedule, DateTimeOffset? waterFrom = null, string title = "The job by the clock")
        : base(title)
    {
        this.schedule = Given.NotNull(schedule, nameof(schedule));
        this.waterFrom = waterFrom;
    }

    /// <summary>Pictures the timeline of a plan, its coats marked, with the first water of its hand-over.</summary>
    /// <param name="plan">The plan; without a schedule, the picture says what stands in the way.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public TimelinePicture(BathroomPlan plan)
        : base("The job by the clock", Given.NotNull(plan, nameof(plan)).Job.Name)
    {
        this.plan = plan;
        schedule = plan.Schedule;
        waterFrom = plan.Handover?.WaterFrom;
        coats.UnionWith(plan.Coats.Select(coat => coat.Name));
    }

    private DateTimeOffset LastEnd => schedule!.Steps.Max(step => step.End);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units)
    {
        if (schedule is not { IsPossible: true })
        {
            return "There is no timeline. " + string.Join(" ", InTheWay(units));
        }

        return "Each step with its start and end. "
            + string.Join("; ", schedule.Steps.Select(step => step.Step.Name + " " + Clock.Moment(step.Start) + " to " + (step.End.Date == step.Start.Date ? Clock.Time(step.End) : Clock.Moment(step.End))))
            + "." + (waterFrom is DateTimeOffset water ? " No water before " + Clock.Moment(water) + "." : string.Empty)
            + string.Concat(InTheWay(units).Select(line => " " + line));
    }

    private protected override void Draw(Page page)
    {
        if (schedule is not { IsPossible: true })
        {
            page.Paragraph("There is no timeline.");
            foreach (string line in InTheWay(page.Units))
            {
                page.Warning(line);
            }

            return;
        }

        int days = schedule.Steps.SelectMany(step => step.Pieces).Select(piece => piece.Start.Date).Distinct().Count();
        page.Paragraph(
            Clock.Moment(schedule.Steps[0].Start) + " to " + Clock.Moment(LastEnd) + ", on site on " + Figures.Fixed(days, 0) + (days == 1 ? " day." : " days.")
            + (waterFrom is DateTimeOffset water ? " No water before " + Clock.Moment(water) + "." : string.Empty));
        foreach (string line in InTheWay(page.Units))
        {
            page.Warning(line);
        }

        TimelineStrip.Draw(page, schedule, coats, waterFrom);
        TimelineDays.Draw(page, schedule, coats);
    }

    private IReadOnlyList<string> InTheWay(DisplayUnits units) =>
        schedule is { IsPossible: false } && plan is null ? schedule.Conflicts : Objections.Of(plan, units, schedule is { IsPossible: true });
}
