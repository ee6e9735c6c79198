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
        Windows(paper, plan, schedule);
    }

    public static string NameOf(JobPlan plan, string worker) => plan.Job.Shop.Crew.First(person => person.Id == worker).Name;

    // By the clock of the site: from when the next coat may go on, and by when its last stroke has to be on.
    private static void Windows(Paper paper, JobPlan plan, CrewSchedule schedule)
    {
        paper.Line("Windows by the clock, at the temperature of each hour; the next coat's last stroke is on before they close, or the "
            + "surface is abraded, or wiped again, first:");
        foreach (ScheduledWindow window in schedule.Windows)
        {
            string room = plan.Job.Premises.Rooms.FirstOrDefault(one => one.Id == window.Operation.Operation.Room)?.Name
                ?? "outside the rooms";
            ScheduledOperation[] next = [.. window.Next.Select(schedule.TryFind).OfType<ScheduledOperation>()];
            paper.Line(room + ", " + window.Operation.Operation.Name + ", done " + Paper.Moment(window.LastStroke) + ": "
                + window.SentenceOn(window.LastStroke.Date)
                + (next.Length == 0 ? "; no coat is planned on it" : "; planned "
                    + string.Join(" and ", next.Select(one => Paper.Moment(one.Start) + "–" + Paper.Clock(one.End)))), 2, "· ");
        }
    }

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
