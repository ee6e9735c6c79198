using System;
using System.Linq;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Samples.BathroomJob;

/// <summary>Day by day, a ruler of quarter hours beside each step.</summary>
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
        foreach (IGrouping<DateTime, ScheduledStep> day in schedule.Steps.GroupBy(step => step.Start.Date))
        {
            paper.Line(Paper.Day(day.First().Start));
            foreach (ScheduledStep step in day)
            {
                paper.Line("  " + Paper.Clock(step.Start) + "–" + Paper.Clock(step.End) + "  " + step.Step.Name.PadRight(longest) + "  " + Ruler(schedule.Hours, step));
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

    private static string Ruler(WorkingHours hours, ScheduledStep step)
    {
        int cells = (int)Math.Ceiling(hours.Length.TotalMinutes / CellMinutes);
        double from = (step.Start.TimeOfDay - hours.From).TotalMinutes / CellMinutes;
        double to = from + (step.Step.Duration.TotalMinutes / CellMinutes);
        return string.Concat(Enumerable.Range(0, cells).Select(cell => to > cell && from < cell + 1 ? '▆' : cell % 4 == 0 ? '┊' : '·'));
    }
}
