using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coverage;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What the work of a plan gives off into the room, and what breathing protection has to cover.</summary>
internal static class PlanAir
{
    // A working day may be given as longer than anyone is in the room.
    private static readonly TimeSpan LongestShift = TimeSpan.FromHours(16);

    /// <summary>The air over the promoter's wipe and the coats; null when nothing evaporates.</summary>
    public static AirStudy? Study(BathroomPlan plan)
    {
        BathroomJob job = plan.Job;
        (DateTimeOffset Start, Func<TimeSpan, Emission> Of)[] sources = [.. Wipes(plan).Concat(Coats(plan))];
        if (sources.Length == 0)
        {
            return null;
        }

        DateTimeOffset first = sources.Min(source => source.Start);
        return new AirStudy(
            job.Site.Room with { AirTemperature = job.Site.Room.AirTemperature ?? job.Site.Air.DryBulb },
            job.Site.Exhaust,
            [.. sources.Select(source => source.Of(source.Start - first))],
            job.Hours.Length < LongestShift ? job.Hours.Length : LongestShift);
    }

    public static IEnumerable<IsocyanateScreen> Screens(BathroomPlan plan)
    {
        BathroomJob job = plan.Job;
        if (job.Site.AirborneFraction is not Ratio airborne)
        {
            yield break;
        }

        foreach (CoatPlan coat in plan.Coats.Where(HasIsocyanate))
        {
            yield return new IsocyanateScreen
            {
                Room = job.Site.Room,
                Exhaust = job.Site.Exhaust,
                CoatingMass = Mass.FromKilograms(
                    coat.Quantity.SprayedVolume.CubicMeters / (1 + coat.Layer.Reducer.DecimalFractions) * coat.Layer.Product.MixedDensity.KilogramsPerCubicMeter),
                SprayTime = coat.Quantity.SprayTime,
                IsocyanateFraction = coat.Layer.Product.IsocyanateFraction,
                TransferEfficiency = job.Gun.TransferEfficiency,
                AirborneFraction = airborne,
                Limit = job.Site.IsocyanateLimit,
                LimitSource = job.Site.IsocyanateLimitSource,
            };
        }
    }

    public static IEnumerable<LimitComparison> Protection(BathroomPlan plan)
    {
        SiteConditions site = plan.Job.Site;
        IEnumerable<LimitComparison> vapour = plan.Air is null ? [] : plan.Air.Exposure.Select(exposure => exposure.Comparison)
            .Concat([plan.Air.AdditiveLimit, plan.Air.StrictestLimit, plan.Air.ShortTermLimit]);
        IEnumerable<LimitComparison> unstated = plan.Promoters.Where(wipe => wipe.Promoter.Solvents.Count == 0).Select(wipe =>
            new LimitComparison("vapour of " + wipe.Promoter.Name + " while it is wiped on", null, null, LimitSense.AtMost, Measure.MassConcentration, wipe.Promoter.Source));
        IEnumerable<LimitComparison> mist = site.AirborneFraction is null && plan.Coats.Any(HasIsocyanate)
            ? [new LimitComparison("polyisocyanate mist while spraying", null, site.IsocyanateLimit?.KilogramsPerCubicMeter, LimitSense.AtMost, Measure.MassConcentration, site.IsocyanateLimitSource)]
            : plan.IsocyanateScreens.Select(screen => screen.Comparison).Distinct();
        return mist.Concat(vapour).Concat(unstated).Where(comparison => comparison.Outcome != ComparisonOutcome.Within)
            .OrderBy(comparison => comparison.Outcome == ComparisonOutcome.Beyond ? 0 : 1);
    }

    private static bool HasIsocyanate(CoatPlan coat) => coat.Layer.Product.IsocyanateFraction.DecimalFractions > 0;

    // Wiping fills its step; without a standard it has no step, and then there is an objection and no price.
    private static IEnumerable<(DateTimeOffset Start, Func<TimeSpan, Emission> Of)> Wipes(BathroomPlan plan)
    {
        if (plan.Schedule!.Steps.FirstOrDefault(step => step.Step.Name == JobSteps.Wipe) is not ScheduledStep wiping)
        {
            yield break;
        }

        foreach (PromoterQuantity wipe in plan.Promoters.Where(wipe => wipe.Promoter.Solvents.Count > 0))
        {
            yield return (wiping.Start, start => new WipeEmission
            {
                Name = wipe.Promoter.Name,
                Start = start,
                WipeTime = wiping.Step.Duration,
                VolatileMass = WipeEmission.VolatileMassOf(wipe.Area, Length.FromMeters(wipe.Volume.CubicMeters / wipe.Area.SquareMeters), Volume.Zero, wipe.Promoter.Solvents),
                Solvents = wipe.Promoter.Solvents,
                EvaporationTime = WipeEmission.AssumedEvaporationTime,
            });
        }
    }

    // Spraying comes last within a coat, after stand-in time and mixing.
    private static IEnumerable<(DateTimeOffset Start, Func<TimeSpan, Emission> Of)> Coats(BathroomPlan plan) =>
        plan.Coats.Where(coat => coat.Layer.Product.Solvents.Count > 0).Select(coat => (plan.TimeOf(coat.Name).End - coat.Quantity.SprayTime, (Func<TimeSpan, Emission>)(start => new SolventEmission
        {
            Name = coat.Name,
            Start = start,
            SprayTime = coat.Quantity.SprayTime,
            VolatileMass = coat.VolatileMass,
            Solvents = coat.Layer.Product.Solvents,
            FlashFraction = Ratio.FromDecimalFractions(1 - plan.Job.Gun.TransferEfficiency.DecimalFractions),
            FilmTimeConstant = plan.Job.Site.FilmTimeConstant,
        })));
}
