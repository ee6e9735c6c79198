using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>The workings of a plan: those of its parts in the order of the job, and the few sums that join them.</summary>
internal static class PlanWorkings
{
    public static Workings Of(BathroomPlan plan)
    {
        List<Workings> parts = [.. plan.Fixtures.Select(fixture => fixture.Workings())];
        List<WorkingStep> joined = [];
        FixturePlan[] planned = [.. plan.Fixtures.Where(fixture => fixture.IsPlanned)];
        if (planned.Length > 0)
        {
            Expression areas = Expression.Sum(planned.Select((fixture, i) =>
                Expression.Quantity("A_" + Figures.Fixed(i + 1, 0), fixture.CoatedArea.SquareMeters, Measure.Area)));
            if (plan.Reserve is not null)
            {
                Expression each = Expression.Quantity("R_1", (double)plan.Reserve.Reserve, Measure.Money(plan.Job.Prices.Currency));
                joined.Add(new("warranty reserve of all planned fixtures", "R", each * Expression.Quantity("n", planned.Length, Measure.Number), (double)plan.ReserveForAll, Measure.Money(plan.Job.Prices.Currency), Source.Derived("every fixture carries its own risk")));
            }

            joined.Add(new("area of all planned fixtures", "A", areas, plan.CoatedArea.SquareMeters, Measure.Area, Source.Derived("sum over fixtures")));
        }

        parts.AddRange(plan.Promoters.Select(wipe => wipe.Workings()));
        parts.AddRange(plan.Coats.Select(coat => coat.Workings()));
        if (plan.Handover is Handover handover)
        {
            parts.Add(handover.Workings());
        }

        if (plan.Air is not null)
        {
            parts.Add(plan.Air.Workings());
        }

        parts.AddRange(plan.IsocyanateScreens.Select(screen => screen.Workings()));
        if (plan.Reserve is not null)
        {
            parts.Add(plan.Reserve.Workings(plan.Job.Prices.Currency));
        }

        if (plan.Price is not null)
        {
            parts.Add(plan.Price.Request.Labour.Workings());
            parts.Add(plan.Price.Workings());
        }

        if (plan.NetByFixture is not null)
        {
            parts.Add(plan.NetByFixture.Workings(plan.Job.Prices.Currency));
        }

        if (plan.Comparison is not null)
        {
            parts.Add(plan.Comparison.Workings());
        }

        return new Workings(plan.Job.Name, joined, parts);
    }
}
