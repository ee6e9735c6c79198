using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Samples.BathroomJob;

/// <summary>What each person does, day by day, with a ruler of quarter hours beside each piece of work.</summary>
internal static class CrewSheet
{
    private const int CellMinutes = 15;

    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Heading("Who does what when");
        if (plan.Schedule is not { IsPossible: true } schedule)
        {
            paper.Line("No times; see the job sheet.");
            return;
        }

        (ScheduledOperation Operation, TimeInterval Piece)[] pieces = [.. schedule.Operations.SelectMany(operation =>
            operation.Pieces.Select(piece => (operation, piece)))];
        int longest = schedule.Operations.Max(operation => Label(operation).Length) + 2;
        foreach (PersonVisit visit in schedule.Visits)
        {
            paper.Line(Paper.Day(visit.Arrives) + ", " + NameOf(plan, visit.Worker) + ": on site " + Paper.Span(visit.OnSite) + ", worked "
                + Paper.Span(visit.Worked)
                + ", waiting " + Paper.Span(visit.Waiting) + ", paid " + Paper.Span(visit.Paid));
            WorkingHours[] open = [.. plan.Job.Shop.Calendar.Shifts.Where(shift => shift.Day == visit.Arrives.DayOfWeek)
                .Select(shift => shift.Hours)];
            foreach ((ScheduledOperation operation, TimeInterval piece) in pieces
                .Where(one => one.Operation.People.Contains(visit.Worker) && one.Piece.Start.Date == visit.Arrives.Date)
                    .OrderBy(one => one.Piece.Start))
            {
                string label = Label(operation) + (piece.End < operation.End ? " →" : string.Empty);
                paper.Row("  " + Paper.Clock(piece.Start) + "–" + Paper.Clock(piece.End) + "  " + label.PadRight(longest)
                    + Ruler(open[0].From, open[^1].Until, piece));
            }

            paper.Line();
        }

        paper.Line("All together: " + schedule.Paid + "; " + schedule.Trips + " trips. " + schedule.Found + ".");
        paper.Line("Windows that close; a coat that misses its window has to be abraded first:");
        foreach (StepLag lag in schedule.Work.Lags.Where(lag => lag.Maximum is not null
            && (lag.Minimum > TimeSpan.Zero || lag.Clock is not null)))
        {
            if (schedule.TryFind(lag.Before) is { } before && schedule.TryFind(lag.After) is { } after)
            {
                string counted = lag.Clock is null ? string.Empty : " counted at "
                    + paper.Show(Measure.Temperature, lag.Clock.Reference.Kelvins);
                paper.Line(lag.Before + " → " + lag.After + ", " + lag.Reason + ": " + Paper.Span(lag.Minimum) + " to "
                    + Paper.Span(lag.Maximum!.Value) + counted
                    + "; planned " + Paper.Span(after.Start - before.End), 2, "· ");
            }
        }
    }

    public static string NameOf(JobPlan plan, string worker) => plan.Job.Shop.Crew.First(person => person.Id == worker).Name;

    private static string Label(ScheduledOperation operation) => (operation.Operation.Room is string room ? room + " " : string.Empty)
        + operation.Operation.Name;

    private static string Ruler(TimeSpan opens, TimeSpan closes, TimeInterval piece)
    {
        int cells = (int)Math.Ceiling((closes - opens).TotalMinutes / CellMinutes);
        double from = (piece.Start.TimeOfDay - opens).TotalMinutes / CellMinutes;
        double to = from + (piece.Length.TotalMinutes / CellMinutes);
        return string.Concat(Enumerable.Range(0, cells).Select(cell => to > cell && from < cell + 1 ? '▆' : cell % 4 == 0 ? '┊' : '·'));
    }
}
