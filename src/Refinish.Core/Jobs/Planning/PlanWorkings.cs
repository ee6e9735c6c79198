using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>The workings of a plan: those of its stages in their order, and the sum of areas that joins them.</summary>
internal static class PlanWorkings
{
    public static Workings Of(JobPlan plan)
    {
        List<Workings> parts = [.. plan.Procedures.Select(procedure => procedure.Workings())];
        List<WorkingStep> joined = [];
        if (plan.Planned.Count > 0)
        {
            joined.Add(new(
                "area of all planned fixtures", "A",
                Expression.Sum(plan.Planned.Select((procedure, i) => Expression.Quantity("A_" + Figures.Fixed(i + 1, 0), procedure.SquareMeters, Measure.Area))),
                plan.CoatedArea.SquareMeters, Measure.Area, Source.Derived("sum over fixtures")));
        }

        if (plan.Schedule is { IsPossible: true } schedule)
        {
            parts.AddRange(schedule.Runs.Select(run => run.Workings()));
            parts.Add(schedule.Workings());
        }
        else
        {
            parts.AddRange(plan.Work?.Runs.Select(run => run.Workings()) ?? []);
        }

        parts.AddRange(plan.Air.Select(room => room.Workings()));
        if (plan.Costs is not null)
        {
            parts.Add(plan.Costs.Workings());
        }

        if (plan.Comparison is not null)
        {
            parts.Add(plan.Comparison.Workings());
        }

        if (plan.Handover is not null)
        {
            parts.Add(plan.Handover.Workings());
        }

        return new Workings(plan.Job.Name, joined, parts);
    }
}
