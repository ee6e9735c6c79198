using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Samples.BathroomJob;

/// <summary>Day by day, a ruler of quarter hours beside each piece of work.</summary>
internal static class Timeline
{
    private const int CellMinutes = 15;

    public static void Write(Paper paper, BathroomPlan plan)
    {
        paper.Heading("Timeline");
        if (plan.Schedule is not { IsPossible: true } schedule)
        {
            paper.Line("No timeline; see the job sheet.");
            return;
        }

        int longest = schedule.Steps.Max(step => step.Step.Name.Length);
        IEnumerable<(ScheduledStep Step, WorkPiece Piece)> pieces = schedule.Steps.SelectMany(step => step.Pieces.Select(piece => (step, piece)));
        foreach (IGrouping<DateTime, (ScheduledStep Step, WorkPiece Piece)> day in pieces.GroupBy(one => one.Piece.Start.Date))
        {
            paper.Line(Paper.Day(day.First().Piece.Start));
            foreach ((ScheduledStep step, WorkPiece piece) in day)
            {
                string goesOn = piece.End < step.End ? " →" : string.Empty;
                paper.Row("  " + Paper.Clock(piece.Start) + "–" + Paper.Clock(piece.End) + "  " + (step.Step.Name + goesOn).PadRight(longest + 2) + Ruler(schedule.Hours, piece));
            }
        }

        paper.Line();
        foreach (StepLag lag in schedule.Lags)
        {
            string range = lag.Maximum is { } most ? Paper.Span(lag.Minimum) + " to " + Paper.Span(most) : Paper.Span(lag.Minimum) + " or more";
            ScheduledStep before = schedule.Steps.First(step => step.Step.Name == lag.Before);
            ScheduledStep after = schedule.Steps.First(step => step.Step.Name == lag.After);
            paper.Line(lag.Reason + ": " + range + "; planned " + Paper.Span(after.Start - before.End), 2, "· ");
        }
    }

    private static string Ruler(WorkingHours hours, WorkPiece piece)
    {
        int cells = (int)Math.Ceiling(hours.Length.TotalMinutes / CellMinutes);
        double from = (piece.Start.TimeOfDay - hours.From).TotalMinutes / CellMinutes;
        double to = from + ((piece.End - piece.Start).TotalMinutes / CellMinutes);
        return string.Concat(Enumerable.Range(0, cells).Select(cell => to > cell && from < cell + 1 ? '▆' : cell % 4 == 0 ? '┊' : '·'));
    }
}
