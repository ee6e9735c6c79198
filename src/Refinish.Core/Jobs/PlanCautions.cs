using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;

namespace Refinish.Jobs;

/// <summary>The cautions of a plan's parts, each said once, what kills fastest first; those of spraying stand even when the air could not be studied.</summary>
internal static class PlanCautions
{
    private static readonly Hazard[] Order =
    [
        Hazard.FireAndExplosion, Hazard.SolventVapour, Hazard.Isocyanate, Hazard.Stripper, Hazard.Acid, Hazard.Lead, Hazard.Dust,
        Hazard.Occupants, Hazard.Electricity, Hazard.Structure, Hazard.SkinAndEyes, Hazard.Slip,
    ];

    public static IEnumerable<Caution> Of(BathroomPlan plan) =>
        plan.Fixtures.SelectMany(fixture => fixture.Verdict.Cautions.Concat(fixture.Preparation.Cautions).Concat(fixture.Filler.Cautions))
            .Concat(AirCautions.ForPreparation)
            .Concat(AirCautions.ForSpraying)
            .Concat(plan.Coats.Any(coat => coat.Layer.Product.IsocyanateFraction.DecimalFractions > 0) ? AirCautions.ForIsocyanates : [])
            .Concat(plan.Coats.SelectMany(coat => CoatingsCautions.OfMixing(coat.Layer.Product)))
            .Concat(plan.Coats.SelectMany(coat => coat.Window.Cautions.Concat(coat.OnSurface.Cautions)))
            .Concat(plan.Air?.Cautions ?? ValueList<Caution>.Empty)
            .Concat(plan.Price?.Cautions ?? ValueList<Caution>.Empty)
            .Concat(plan.IsocyanateScreens.SelectMany(screen => screen.Cautions))
            .Concat([JobCautions.AcidAndBleach, JobCautions.WetElectricity, JobCautions.Slip])
            .Distinct()
            .OrderBy(caution => System.Array.IndexOf(Order, caution.Hazard));
}
