using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>The sources behind a plan: of what it says, and of what it was fed.</summary>
internal static class PlanSources
{
    public static IEnumerable<Source> Of(JobPlan plan) => plan.Workings().AllSteps().Select(step => step.Source)
        .Concat(Said(plan)).Concat(Compared(plan).OfType<LimitComparison>().Select(comparison => comparison.Source))
        .Concat(plan.Procedures.SelectMany(Fed)).Concat(Work(plan)).Concat((plan.Work?.Runs ?? []).SelectMany(Coat));

    private static IEnumerable<Source> Said(JobPlan plan) =>
    [
        .. plan.Procedures.SelectMany(procedure => procedure.Verdict.Reasons).Select(reason => reason.Source),
        .. plan.Conditions.Select(condition => condition.Source),
        .. plan.Doubts.Select(doubt => doubt.Source),
        .. plan.Cautions.Select(planned => planned.Caution.Source),
        .. plan.Noise.SelectMany(day => day.Doses).Select(dose => dose.Limit.Source),
        .. plan.Protection.SelectMany(need => need.Respirators).Select(respirator => respirator.Source),
        .. plan.Handover?.Fixtures.SelectMany(fixture => fixture.SlipCriteria.Select(slip => slip.Source).Prepend(fixture.Film.Source)) ?? [],
    ];

    private static IEnumerable<LimitComparison?> Compared(JobPlan plan) =>
    [
        plan.Price?.NetAgainstCost,
        .. plan.Objections.Select(objection => objection.Comparison),
        .. plan.Voc.Values,
        .. plan.Procedures.SelectMany(procedure => procedure.SlipFloor?.Bands ?? []),
        .. plan.Air.SelectMany(Air),
        .. plan.Protection.SelectMany(need => need.Checks.Select(check => check.Comparison).Prepend(need.Comparison)),
        .. plan.Noise.SelectMany(day => day.Doses).Select(dose => dose.Loudest),
    ];

    private static IEnumerable<LimitComparison?> Air(RoomAirPlan room) =>
    [
        room.FlammableAirflow, room.Humidity, room.Study?.FlammableLimit, room.Study?.FlammableDesignLine, room.Study?.StrictestLimit,
        room.Study?.ShortTermLimit, .. room.Study?.Saturation ?? [], .. room.Study?.Exposure.Select(exposure => exposure.Comparison) ?? [],
        .. room.Unstated,
    ];

    private static IEnumerable<Source> Fed(Procedure procedure)
    {
        IEnumerable<Source?> sources =
        [
            procedure.System.Source, .. procedure.System.Steps.Select(step => step.Source), procedure.Promoter?.Source,
            procedure.Hiding?.Plan?.White.Source,
            procedure.Filler.Items.Count > 0 ? procedure.Filler.Policy.Product.Source : null,
        ];
        return sources.OfType<Source>();
    }

    private static IEnumerable<Source> Work(JobPlan plan) => plan.Operations.SelectMany(operation => operation.Labour
        .Select(task => task.Standard.Source)
        .Concat(operation.Vapours.SelectMany(vapour => vapour.Solvents).Select(share => share.Solvent.Source))
        .Append(operation.Source));

    private static IEnumerable<Source> Coat(CoatRun run)
    {
        CoatingProduct product = run.Layer.Product;
        return
        [
            product.Source, product.Cure.Source, .. (product.CureTable?.Rows ?? []).Select(row => row.Source),
            .. product.Solvents.Select(share => share.Solvent.Source),
        ];
    }
}
