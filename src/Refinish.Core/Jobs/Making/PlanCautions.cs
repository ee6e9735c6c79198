using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;

namespace Refinish.Jobs;

/// <summary>The cautions of a plan's parts, each said once, what kills fastest first; those of spraying stand even when the air could not be studied.</summary>
internal static class PlanCautions
{
    public static IEnumerable<Caution> Of(JobPlan plan) =>
        plan.Procedures.SelectMany(procedure => procedure.Cautions)
            .Concat(Cautions.ForSpraying)
            .Concat(plan.Operations.SelectMany(operation => operation.Cautions))
            .Concat(plan.Work?.Runs.SelectMany(run => run.Window.Cautions.Concat(run.OnSurface.Cautions)) ?? [])
            .Concat(plan.Air.SelectMany(room => room.Cautions))
            .Concat(plan.Price?.Cautions ?? [])
            .Concat([Cautions.AcidAndBleach, Cautions.WetElectricity, Cautions.NewCoatSlip, Cautions.WetSheeting])
            .Distinct()
            .OrderBy(caution => caution.Hazard);
}
