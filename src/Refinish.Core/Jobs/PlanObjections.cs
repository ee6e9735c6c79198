using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>What stands in the way of a plan, gathered from its parts.</summary>
internal static class PlanObjections
{
    public static IEnumerable<PlanObjection> Of(BathroomPlan plan, JobSteps? steps) =>
        plan.Fixtures.Where(fixture => !fixture.IsPlanned).Select(LeftOut)
            .Concat(plan.Coats.GroupBy(coat => coat.Layer).SelectMany(layer => OfCoat(layer.First())))
            .Concat((steps?.Impossible ?? []).Concat(plan.Schedule?.Conflicts ?? ValueList<string>.Empty).Select(text => new PlanObjection(ObjectionKind.Schedule, plan.Job.Name, text)))
            .Concat((steps?.Missing ?? []).Select(text => new PlanObjection(ObjectionKind.Labour, plan.Job.Name, text)))
            .Concat(OfAir(plan))
            .Concat((plan.Price?.Gaps ?? ValueList<PriceGap>.Empty).Select(gap => new PlanObjection(ObjectionKind.Price, gap.What, "No price: " + gap + ".")));

    private static PlanObjection LeftOut(FixturePlan fixture)
    {
        IEnumerable<string> reasons = fixture.Verdict.MayBePlanned
            ? fixture.SystemObjections
            : fixture.Verdict.Reasons.Where(reason => reason.Effect == Suitability.NotSuitable).Select(reason => reason.Sentence + "; " + reason.Remedy + ".");
        return new PlanObjection(ObjectionKind.FixtureLeftOut, fixture.Job.Name, fixture.Job.Name + " is left out: " + string.Join(" ", reasons));
    }

    private static IEnumerable<PlanObjection> OfCoat(CoatPlan coat)
    {
        string product = coat.Layer.Product.Name;
        IEnumerable<PlanObjection> window = coat.Window.Checks.Where(IsOff).Select(check => new PlanObjection(ObjectionKind.SprayWindow, product, check));
        IEnumerable<PlanObjection> times = coat.OnSurface.Checks.Concat(coat.AtWarmest.Checks).Where(IsOff).Distinct()
            .Select(check => new PlanObjection(ObjectionKind.CureTemperature, product, check));
        IEnumerable<PlanObjection> batches = (coat.Batches?.Objections ?? ValueList<string>.Empty)
            .Select(text => new PlanObjection(ObjectionKind.Batch, coat.Name, coat.Name + ": " + text));
        return window.Concat(times).Concat(batches);
    }

    private static IEnumerable<PlanObjection> OfAir(BathroomPlan plan) =>
        new[] { plan.Air?.FlammableLimit, plan.FlammableAirflow }.OfType<LimitComparison>().Where(IsOff)
            .Select(comparison => new PlanObjection(ObjectionKind.Flammability, "air of the room", comparison));

    private static bool IsOff(LimitComparison comparison) => comparison.Outcome != ComparisonOutcome.Within;
}
