using System.Linq;

namespace Refinish.Jobs;

/// <summary>The workings of a plan: those of its stages in their order, and the sum of areas that joins them.</summary>
internal static class PlanWorkings
{
    private static readonly Source OverFixtures = Source.Derived("sum over fixtures");

    public static Workings Of(JobPlan plan)
    {
        Workings[] runs = plan.Schedule is { IsPossible: true } schedule
            ? [.. schedule.Runs.Select(run => run.Workings()), schedule.Workings()]
            : [.. plan.Work?.Runs.Select(run => run.Workings()) ?? []];
        Workings?[] parts =
        [
            .. plan.Procedures.Select(procedure => procedure.Workings()), .. runs, .. plan.Air.Select(room => room.Workings()),
            plan.Costs?.Workings(), plan.Comparison?.Workings(), plan.Handover?.Workings(),
        ];
        return plan.Planned.Count == 0 ? Trace.Of(plan.Job.Name, parts) : Trace.Of(plan.Job.Name, parts, t => t.Step(
            "area of all planned fixtures", "A", Measure.Area, OverFixtures,
                Num.Sum(plan.Planned.Select((procedure, i) =>
                t.Given("A_" + Figures.Fixed(i + 1, 0), procedure.SquareMeters, Measure.Area)))));
    }
}
