using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;

namespace Refinish.Jobs;

/// <summary>The cautions of a plan's parts, each said once, what kills fastest first; those of spraying stand even when the air could not be studied.</summary>
internal static class PlanCautions
{
    private static readonly Hazard[] Order =
    [
        Hazard.FireAndExplosion, Hazard.SolventVapour, Hazard.Isocyanate, Hazard.Stripper, Hazard.Acid, Hazard.Lead, Hazard.Dust,
        Hazard.Occupants, Hazard.Electricity, Hazard.Structure, Hazard.SkinAndEyes, Hazard.Slip,
    ];

    public static IEnumerable<Caution> Of(JobPlan plan) =>
        plan.Procedures.SelectMany(procedure => procedure.Cautions)
            .Concat(AirCautions.ForPreparation)
            .Concat(AirCautions.ForSpraying)
            .Concat(plan.Operations.SelectMany(operation => operation.Cautions))
            .Concat(plan.Work?.Runs.SelectMany(run => run.Window.Cautions.Concat(run.OnSurface.Cautions)) ?? [])
            .Concat(plan.Air.SelectMany(room => room.Cautions))
            .Concat(plan.Price?.Cautions ?? [])
            .Concat([JobCautions.AcidAndBleach, JobCautions.WetElectricity, JobCautions.Slip])
            .Distinct()
            .OrderBy(caution => Array.IndexOf(Order, caution.Hazard));
}
