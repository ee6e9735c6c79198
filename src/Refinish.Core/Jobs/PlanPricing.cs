using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What a plan takes in hours, trips and materials, as the price estimate wants it.</summary>
internal static class PlanPricing
{
    public static EstimateRequest Request(BathroomPlan plan, FixturePlan[] planned, JobSteps steps)
    {
        List<LabourTask> tasks = [];
        int trips = plan.Schedule!.Steps.Where(step => step.Step.IsAttended).SelectMany(step => step.Pieces).Select(piece => piece.Start.Date).Distinct().Count();
        if (JobSteps.Find(plan.Job, LabourStandards.Travel) is LabourStandard travel)
        {
            tasks.Add(new LabourTask(travel, units: trips));
        }

        tasks.AddRange(steps.TasksTogether());
        return new EstimateRequest
        {
            Labour = new LabourEstimate(tasks, plan.Job.Difficulty),
            Materials = MaterialsOf(plan, planned),
            Fixtures = planned.Length,
            Trips = trips,
            Options = plan.Job.Options,
            WarrantyReserve = plan.ReserveForAll,
        };
    }

    public static PriceByFixture? ByFixture(BathroomPlan plan, FixturePlan[] planned)
    {
        if (plan.Price is not { Net: decimal net, Cost: decimal cost } || cost <= 0)
        {
            return null;
        }

        decimal rate = plan.Price.BurdenedRate;
        FixtureCost[] own = [.. planned.Select(fixture =>
        {
            double hours = new LabourEstimate(LabourStandards.ForDefects(fixture.Job.Survey.Defects, plan.Job.Labour), plan.Job.Difficulty).Hours.TotalHours;
            decimal repairs = Math.Round((decimal)hours * rate, 2, MidpointRounding.AwayFromZero);
            return new FixtureCost(fixture.Job.Name, repairs + (plan.Job.Prices.ConsumablesPerFixture ?? 0), fixture.CoatedArea.SquareMeters);
        })];
        return new PriceByFixture(net, own, Math.Max(0, cost - own.Sum(fixture => fixture.OwnCost)));
    }

    private static List<MaterialNeed> MaterialsOf(BathroomPlan plan, FixturePlan[] planned)
    {
        List<MaterialNeed> needs = [];
        foreach (CoatPlan coat in plan.Coats)
        {
            double product = coat.Cups.Sum(cup => cup.LineAfterHardener.CubicMeters);
            needs.Add(new MaterialNeed(coat.Layer.Product.Name, Volume.FromCubicMeters(product)));
            if (coat.Layer.Product.Reducer is CoatingComponent reducer && coat.Layer.Reducer.DecimalFractions > 0)
            {
                needs.Add(new MaterialNeed(reducer.Name, Volume.FromCubicMeters(coat.Cups.Sum(cup => cup.ReducerVolume.CubicMeters))));
            }
        }

        needs.AddRange(plan.Promoters.Select(wipe => new MaterialNeed(wipe.Promoter.Name, wipe.Volume)));
        double filler = planned.Sum(fixture => fixture.Filler.Volume.CubicMeters);
        if (filler > 0)
        {
            needs.Add(new MaterialNeed(plan.Job.Filler.Product.Name, Volume.FromCubicMeters(filler)));
        }

        needs.AddRange(planned.SelectMany(fixture => DefectMaterials.For(fixture.Job.Survey.Defects, fixture.CoatedArea, plan.Job.DefectMaterials)));
        return needs;
    }
}
