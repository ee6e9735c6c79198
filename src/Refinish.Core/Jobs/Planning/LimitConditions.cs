using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;

namespace Refinish.Jobs;

/// <summary>
/// What a plan says about the limits it was held against: substances for which the set has none, noise, floors that are to grip.
/// </summary>
internal static class LimitConditions
{
    public static IEnumerable<PlanCondition> Of(JobPlan plan) => Elsewhere(plan).Concat(plan.Planned.SelectMany(Slip)).Concat(Noise(plan));

    // A limit of another set is told and never counted.
    private static IEnumerable<PlanCondition> Elsewhere(JobPlan plan)
    {
        LimitSet limits = plan.Job.Shop.Limits;
        IEnumerable<Solvent> missing = plan.Air.SelectMany(room => room.Study?.Exposure ?? [])
            .Where(one => one.Limit is null).Select(one => one.Solvent);
        foreach (Solvent solvent in missing.GroupBy(solvent => solvent.CasNumber, StringComparer.Ordinal).Select(same => same.First()))
        {
            ExposureLimit[] others = [.. PublishedLimits.For(solvent.CasNumber)
                .Where(limit => limit.Kind == ExposureLimitKind.Twa8h && !limits.Exposure.Contains(limit))];
            if (others.Length > 0)
            {
                yield return new PlanCondition(
                    plan.Job.Id, "no-limit/" + solvent.CasNumber,
                    _ => "no eight-hour limit for " + solvent.Name + " in " + limits.Name + "; known elsewhere, and not counted: "
                        + string.Join("; ", others.Select(Told)),
                    "take the limit from the safety data sheet, section 8, or fill the set from another by name", others[0].Source,
                        Audience.Crew);
            }
        }
    }

    private static string Told(ExposureLimit limit) => limit.Whose + " "
        + (limit.VolumeFraction is UnitsNet.Ratio fraction ? Measure.PartsPerMillion.Format(fraction.DecimalFractions)
            : Measure.MassConcentration.Format(limit.MassConcentration!.Value.KilogramsPerCubicMeter));

    private static IEnumerable<PlanCondition> Slip(Procedure procedure)
    {
        IReadOnlyList<SlipClass> classes = procedure.Shop.Limits.Slip;
        if (!procedure.Fixture.Options.Any(option => option.Kind == FixtureOptionKind.SlipResistantFloor))
        {
            yield break;
        }

        string asked = classes.Count == 0
            ? procedure.Shop.Limits.Name + " has no criterion for its floor"
            : "its floor is to be measured against "
                + string.Join("; ", classes.Select(one => one + " (" + (one.IsBarefoot ? "bare feet" : "shoes") + ")"));
        yield return new PlanCondition(
            procedure.Fixture.Id, "slip", _ => asked + "; no plan knows how it will grip, and none of these is a test of a tub",
            "agree on method and criterion with the owner, and measure the finished floor wet and soapy", Cautions.SlipGrains.Source);
    }

    // Of each person the day that keeps a limit least.
    private static IEnumerable<PlanCondition> Noise(JobPlan plan)
    {
        foreach (IGrouping<string, DayNoise> days in plan.Noise.GroupBy(day => day.Worker, StringComparer.Ordinal))
        {
            LimitComparison worst =
                days.SelectMany(day => day.Doses).Select(dose =>
                dose.Against("noise of the loudest day, dose by ")).OrderBy(LeastKept.Rank).First();
            LimitComparison loudest = days.SelectMany(day => day.Doses).Select(dose => dose.Loudest).OrderBy(LeastKept.Rank).First();
            if (loudest.Outcome == ComparisonOutcome.Beyond)
            {
                yield return new PlanCondition(days.Key, "loudest", loudest, Audience.Crew);
            }

            if (worst.Outcome != ComparisonOutcome.Within)
            {
                yield return new PlanCondition(days.Key, "noise", worst, Audience.Crew);
            }
        }
    }
}
