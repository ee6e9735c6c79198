using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Conditions of a plan: those of its fixtures, and films that would run or not level where the product's sheet tells.</summary>
internal static class PlanConditions
{
    public static IEnumerable<PlanCondition> Of(JobPlan plan)
    {
        foreach (Procedure procedure in plan.Planned)
        {
            foreach (PlanCondition condition in procedure.Conditions)
            {
                yield return condition;
            }
        }

        foreach (CoatRun run in plan.Work?.Runs ?? [])
        {
            if (run.Layer.Product.Flow is null)
            {
                continue;
            }

            Angle steepest = Angle.FromRadians(Steepest(plan, run));
            foreach (LimitComparison beyond in run.Flow(steepest).Where(comparison => comparison.Outcome == ComparisonOutcome.Beyond))
            {
                yield return new PlanCondition(
                    run.Id, beyond.Sense == LimitSense.AtMost ? "sag" : "level", beyond.Sentence, beyond.Remedy ?? string.Empty, beyond.Source);
            }
        }
    }

    private static double Steepest(JobPlan plan, CoatRun run)
    {
        IReadOnlyList<string> fixtures = plan.Work!.Operations.First(operation => operation.Id == run.Id).Fixtures;
        double steepest = 0;
        foreach (Procedure procedure in plan.Planned.Where(procedure => fixtures.Contains(procedure.Fixture.Id)))
        {
            foreach (FixtureZone zone in procedure.Fixture.Fixture.Zones)
            {
                if (procedure.Fixture.Zones is null || procedure.Fixture.Zones.Contains(zone.Kind))
                {
                    steepest = Math.Max(steepest, Math.Min(zone.SlopeFromHorizontal.Radians, Math.PI / 2));
                }
            }
        }

        return steepest;
    }
}
