using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>The sources behind a plan: of what it says, and of what it was fed.</summary>
internal static class PlanSources
{
    public static IEnumerable<Source> Of(JobPlan plan) => plan.Workings().AllSteps().Select(step => step.Source)
        .Concat(Said(plan)).Concat(plan.Procedures.SelectMany(Fed)).Concat(Work(plan)).Concat(plan.Runs.SelectMany(Coat));

    private static IEnumerable<Source> Said(JobPlan plan) =>
    [
        .. plan.Procedures.SelectMany(procedure => procedure.Verdict.Reasons).Select(reason => reason.Source),
        .. plan.Conditions.Select(condition => condition.Source),
        .. plan.Doubts.Select(doubt => doubt.Source),
        .. plan.Cautions.Select(planned => planned.Caution.Source),
        .. plan.Objections.Select(objection => objection.Comparison?.Source).OfType<Source>(),
        .. plan.Voc.Values.Select(comparison => comparison.Source),
        .. plan.Protection.Select(need => need.Comparison.Source),
        .. plan.Air.SelectMany(room => room.Study?.Exposure ?? []).Select(exposure => exposure.Comparison.Source),
        .. plan.Noise.SelectMany(day => day.Doses).Select(dose => dose.Limit.Source),
    ];

    private static IEnumerable<Source> Fed(Procedure procedure)
    {
        IEnumerable<Source?> sources =
        [
            procedure.System.Source, .. procedure.System.Steps.Select(step => step.Source), procedure.Promoter?.Source,
            procedure.Filler.Items.Count > 0 ? procedure.Filler.Policy.Product.Source : null,
        ];
        return sources.OfType<Source>();
    }

    private static IEnumerable<Source> Work(JobPlan plan) => plan.Operations.SelectMany(operation => operation.Labour
        .Select(task => task.Standard.Source)
        .Concat(operation.Vapours.SelectMany(vapour => vapour.Solvents).Select(share => share.Solvent.Source))
        .Append(operation.Source));

    private static IEnumerable<Source> Coat(ScheduledRun run)
    {
        CoatingProduct product = run.Run.Layer.Product;
        return [product.Source, product.Cure.Source, .. product.Solvents.Select(share => share.Solvent.Source)];
    }
}
