using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>What stands in the way of a plan, gathered from its parts.</summary>
internal static class PlanObjections
{
    public static IEnumerable<string> Of(BathroomPlan plan, JobSteps? steps)
    {
        foreach (FixturePlan fixture in plan.Fixtures.Where(fixture => !fixture.IsPlanned))
        {
            yield return fixture.Job.Name + " is left out: " + (fixture.Verdict.MayBePlanned ? string.Join(" ", fixture.SystemObjections) : fixture.Verdict.ToString());
        }

        foreach (CoatPlan coat in plan.Coats.GroupBy(coat => coat.Layer).Select(group => group.First()))
        {
            foreach (LimitComparison check in coat.Window.Checks.Where(check => check.Outcome != ComparisonOutcome.Within))
            {
                yield return coat.Layer.Product.Name + ": " + check + "." + (check.Remedy is null ? string.Empty : " " + check.Remedy);
            }

            foreach (LimitComparison check in coat.OnSurface.Checks.Concat(coat.InCup.Checks).Where(check => check.Outcome != ComparisonOutcome.Within).Distinct())
            {
                yield return coat.Layer.Product.Name + " gives no times: " + check + ".";
            }

            foreach (string objection in coat.Batches?.Objections ?? ValueList<string>.Empty)
            {
                yield return coat.Name + ": " + objection;
            }
        }

        foreach (string objection in (steps?.Impossible ?? []).Concat(steps?.Missing ?? []).Concat(plan.Schedule?.Conflicts ?? ValueList<string>.Empty))
        {
            yield return objection;
        }

        foreach (LimitComparison comparison in FireComparisons(plan).Where(comparison => comparison.Outcome != ComparisonOutcome.Within))
        {
            yield return comparison + "." + (comparison.Remedy is null ? string.Empty : " " + comparison.Remedy);
        }

        if (plan.Job.Site.AirborneFraction is null && plan.Coats.Any(coat => coat.Layer.Product.IsocyanateFraction.DecimalFractions > 0))
        {
            yield return "The isocyanate mist cannot be judged: the site gives no airborne fraction of the overspray. Supplied air is what the cautions ask for either way.";
        }

        foreach (PriceGap gap in plan.Price?.Gaps ?? ValueList<PriceGap>.Empty)
        {
            yield return "No price: " + gap + ".";
        }
    }

    private static IEnumerable<LimitComparison> FireComparisons(BathroomPlan plan)
    {
        if (plan.Air is not null)
        {
            yield return plan.Air.FlammableLimit;
        }
    }
}
