using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Tests.Jobs;

/// <content>Rules between two jobs that differ in one thing.</content>
internal static partial class JobRules
{
    // Each line of hours is rounded to a thousandth of an hour, up to ninety lines at about 70 USD an hour sold: a few USD either way.
    private const decimal HourRounding = 4m;

    /// <summary>A fixture struck out or an option declined never costs more in total.</summary>
    public static string? CostsMoreWithLess(Job job)
    {
        if (Whole(job) is not decimal all)
        {
            return null;
        }

        foreach (FixtureJob fixture in job.Fixtures)
        {
            if (job.Fixtures.Count > 1 && Whole(job with { Fixtures = [.. job.Fixtures.Where(one =>
                one.Id != fixture.Id)] }) is decimal less && less > all + HourRounding)
            {
                return "without " + fixture.Id + " " + less + ", with it " + all;
            }

            foreach (FixtureOption option in fixture.Options)
            {
                FixtureJob without = fixture with { Options = [.. fixture.Options.Where(one => one.Code != option.Code)] };
                if (Whole(Replaced(job, without)) is decimal declined && declined > all + HourRounding)
                {
                    return "without " + option.Code + " of " + fixture.Id + " " + declined + ", with it " + all;
                }
            }
        }

        return null;
    }

    /// <summary>A fixture grown by a fifth never takes less coating.</summary>
    public static string? TakesLessForMore(Job job)
    {
        Dictionary<string, double> before = Coating(job.Plan());
        foreach (FixtureJob fixture in job.Fixtures)
        {
            JobPlan larger = Replaced(job, fixture with { Fixture = new GrownFixture(fixture.Fixture, 1.2) }).Plan();
            if (larger.Planned.Count == job.Plan().Planned.Count && larger.Work is not null)
            {
                Dictionary<string, double> after = Coating(larger);
                if (before.FirstOrDefault(one => (after.TryGetValue(one.Key, out double less) ? less : 0) < one.Value * (1 - 1e-12)) is { Key: string product })
                {
                    return fixture.Id + " grown takes " + (after.TryGetValue(product, out double taken) ? taken : 0) * 1e6 + " mL of " + product + ", before "
                        + before[product] * 1e6;
                }
            }
        }

        return null;
    }

    /// <summary>A fixture grown by a fifth never costs less.</summary>
    public static string? CostsLessForMore(Job job)
    {
        if (Whole(job) is not decimal before)
        {
            return null;
        }

        foreach (FixtureJob fixture in job.Fixtures)
        {
            if (Whole(Replaced(job, fixture with { Fixture = new GrownFixture(fixture.Fixture, 1.2) })) is decimal after
                && after < before - HourRounding)
            {
                return fixture.Id + " grown costs " + after + ", before " + before;
            }
        }

        return null;
    }

    /// <summary>Colder by 1.5 K in a held room, and nothing dries or cures sooner.</summary>
    public static string? CuresSoonerInTheCold(Job job)
    {
        if (job.Plan() is not { Work: not null } warm || job.Premises.Rooms.Any(room => room.Climate.Kind != RoomClimateKind.Held))
        {
            return null;
        }

        TemperatureDelta less = TemperatureDelta.FromKelvins(1.5);
        JobPlan cold = (job with
        {
            Premises = job.Premises with
            {
                Rooms = [.. job.Premises.Rooms.Select(room => room with { Climate = RoomClimate.Held(
                    new Refinish.Climate.MoistAir(room.Climate.Air.DryBulb - less, room.Climate.Air.RelativeHumidity,
                        room.Climate.Air.Pressure), room.Climate.Surface - less) })],
            },
            Fixtures = [.. job.Fixtures.Select(fixture => fixture.Surface is Temperature at ? fixture with { Surface = at - less }
                : fixture)],
        }).Plan();
        string[] timed = [.. (cold.Work?.Runs ?? []).Where(run => run.OnSurface.IsAvailable && run.InCup.IsAvailable).Select(run =>
            run.Id)];
        foreach (CoatRun run in (cold.Work?.Runs ?? []).Where(run => timed.Contains(run.Id)))
        {
            if (warm.Work.Runs.FirstOrDefault(one => one.Id == run.Id) is CoatRun same
                && (run.OnSurface.WaterService < same.OnSurface.WaterService || run.OnSurface.RecoatOpens < same.OnSurface.RecoatOpens
                    || run.OnSurface.FullCure < same.OnSurface.FullCure || run.InCup.PotLife < same.InCup.PotLife))
            {
                return run.Id + " cures sooner: water " + run.OnSurface.WaterService + " after " + same.OnSurface.WaterService;
            }
        }

        foreach (StepLag lag in (cold.Work?.Lags ?? []).Where(lag => timed.Contains(lag.Before)))
        {
            if (warm.Work.Lags.FirstOrDefault(one => one.Before == lag.Before && one.After == lag.After
                && one.Reason == lag.Reason) is StepLag same && lag.Minimum < same.Minimum)
            {
                return lag + " is shorter than " + same;
            }
        }

        return null;
    }

    /// <summary>The ids and the total are the same however fixtures, rooms, people's prices and products are listed.</summary>
    public static string? DependsOnTheOrderOfIds(Job job)
    {
        JobPlan plan = job.Plan();
        JobPlan turned = Turned(job).Plan();
        return Differ("operations", plan.Operations.Select(one => one.Id), turned.Operations.Select(one => one.Id))
            ?? Differ("objections", plan.Objections.Select(one => one.Id), turned.Objections.Select(one => one.Id))
            ?? Differ("conditions", plan.Conditions.Select(one => one.Id), turned.Conditions.Select(one => one.Id))
            ?? Differ("doubts", plan.Doubts.Select(one => one.Id), turned.Doubts.Select(one => one.Id))
            ?? (job.Shop.Crew.Any(worker => worker.Wage is not null) ? null : Differ("lines", Lines(plan), Lines(turned)));
    }

    // With wages of their own the lines name whoever does the work, which the search decides.
    private static IEnumerable<string> Lines(JobPlan plan) =>
        plan.Price?.Lines.Where(line => line.Category != LineCategory.Rounding).Select(line => line.Id) ?? [];

    /// <summary>What can be done when the work starts a minute later can be done now: a minute earlier never adds a trip, nor a later one
    /// that nothing uses.</summary>
    public static string? AMinuteAddsATrip(Job job)
    {
        if (job.Plan().Schedule is not { IsPossible: true } now || job.Shop.Prefers != SchedulePreference.FewestVisits
            || (job with { Start = job.Start.AddMinutes(1) }).Plan().Schedule is not { IsPossible: true } later)
        {
            return null;
        }

        bool free = now.Operations[0].Start >= job.Start.AddMinutes(1);
        return now.Trips > later.Trips ? now.Trips + " trips, a minute later " + later.Trips
            : free && later.Trips > now.Trips ? later.Trips + " trips a minute later, " + now.Trips + " now"
            : null;
    }

    internal static Job Turned(Job job) => job with
    {
        Fixtures = [.. job.Fixtures.Reverse()],
        Premises = job.Premises with { Rooms = [.. job.Premises.Rooms.Reverse()] },
        Shop = job.Shop with { Prices = job.Shop.Prices with { Materials = [.. job.Shop.Prices.Materials.Reverse()],
            Options = [.. job.Shop.Prices.Options.Reverse()] } },
    };

    private static Job Replaced(Job job, FixtureJob fixture) => job with { Fixtures = [.. job.Fixtures.Select(one => one.Id == fixture.Id
        ? fixture : one)] };

    // Waiting, trips, who does what, when the gun is cleaned and its hose filled, whether a night asks for another wipe, and which leftover
    // reaches which coat follow from the schedule, which looks for few visits and an early end and not for the least price: a longer coat may
    // well fall on a day on which less is waited, or next to a coat whose leftover it takes. So work is counted at one wage and coating as it
    // is sprayed, and neither waiting nor trips nor whole kits.
    private static decimal? Whole(Job job) => job.Plan() is { IsPossible: true, Price: { } price } plan
        ? price.Lines.Where(line => line.Category is LineCategory.Consumables or LineCategory.Waste or LineCategory.Option)
            .Sum(line => line.Cost)
            + plan.Operations.SelectMany(operation => operation.Materials).Sum(need => By(job, need.Item, need.Amount.Volume!.Value))
            + plan.Runs.Sum(run => By(job, run.Run.Layer.Product.Id, run.Run.Demand.Sprayed))
            + (30m * (decimal)plan.Operations.Where(operation => operation.Kind is not (WorkKind.CleanGun or WorkKind.WipeAgain))
                .Sum(operation => operation.Labour.Sum(task => task.Hours.Mean)))
        : null;

    private static decimal By(Job job, string item, Volume volume)
    {
        MaterialPrice kit = job.Shop.Prices.Materials.Where(price => price.Item == item).OrderBy(price => price.Size.In(LineUnit.Litre)).First();
        return kit.Price * (decimal)(volume.Liters / kit.Size.In(LineUnit.Litre));
    }

    private static Dictionary<string, double> Coating(JobPlan plan) => (plan.Work?.Runs ?? [])
        .GroupBy(run => run.Layer.Product.Id).ToDictionary(product => product.Key, product => product.Sum(run =>
            run.Demand.Sprayed.CubicMeters));

    private static string? Differ(string what, IEnumerable<string> one, IEnumerable<string> other)
    {
        string[] only = [.. one.Except(other)];
        string[] others = [.. other.Except(one)];
        return only.Length + others.Length == 0 ? null : what + ": " + string.Join(", ", only) + " | " + string.Join(", ", others);
    }
}
