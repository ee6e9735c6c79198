using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Tests.Scheduling;
using UnitsNet;

namespace Refinish.Tests.Jobs;

/// <summary>What holds for every whole job. Each rule gives what breaks it, or nothing.</summary>
internal static partial class JobRules
{
    /// <summary>There is a plan, whatever the job, and all of it can be read in words and steps.</summary>
    public static string? Throws(Job job) => Thrown(() =>
    {
        JobPlan plan = job.Plan();
        return plan.Conditions.Count + plan.Cautions.Count + plan.Workings().AllSteps().Count() + plan.ToString().Length
            + (plan.Costs?.ByFixture?.Parts.Count ?? 0)
            + (plan.Handover?.ToText(DisplayUnits.UsCustomary).Length ?? 0)
            + plan.Objections.Sum(objection => objection.Sentence(DisplayUnits.UsCustomary).Length) + plan.Conditions.Sum(condition =>
                condition.Sentence(DisplayUnits.UsCustomary).Length) + plan.Doubts.Sum(doubt => doubt.Sentence(DisplayUnits.UsCustomary).Length);
    });

    /// <summary>What people breathe can be asked for, whatever the job.</summary>
    public static string? ThrowsForBreathing(Job job) => Thrown(() =>
    {
        JobPlan plan = job.Plan();
        return plan.Exposure.Count + plan.Protection.Count;
    });

    public static string? RepeatsAnId(Job job)
    {
        JobPlan plan = job.Plan();
        return Repeated("operation", plan.Operations.Select(operation => operation.Id))
            ?? Repeated("run", plan.Work?.Runs.Select(run => run.Id) ?? [])
            ?? Repeated("objection", plan.Objections.Select(objection => objection.Id))
            ?? Repeated("condition", plan.Conditions.Select(condition => condition.Id))
            ?? Repeated("doubt", plan.Doubts.Select(doubt => doubt.Id))
            ?? Repeated("line", plan.Price?.Lines.Select(line => line.Id) ?? []);
    }

    /// <summary>Lines add up to net, tax and total; fixtures add up to net; kits hold the need; cups hold every coat.</summary>
    public static string? DoesNotAddUp(Job job)
    {
        JobPlan plan = job.Plan();
        foreach (ScheduledRun run in plan.Runs)
        {
            if (!run.Cups.IsPossible)
            {
                return plan.Objections.Any(one => one.Kind == ObjectionKind.Batch && one.About == run.Run.Id) ? null : run.Run.Id + " has no cups and no objection";
            }

            if (run.Cups.Delivered.CubicMeters + run.FromBefore.CubicMeters < run.Run.Demand.Total.CubicMeters * (1 - 1e-9))
            {
                return run.Run.Id + " has too little in its cups";
            }

            if (Math.Abs(run.Mixes.Sum(mix => mix.Total.CubicMeters) - run.Cups.Mixed.CubicMeters) > 1e-9)
            {
                return "the cards of " + run.Run.Id + " do not add up";
            }
        }

        if (plan.Price is not { Total: decimal total } price)
        {
            return null;
        }

        decimal lines = price.Lines.Sum(line => line.Price);
        return lines != total ? "lines are " + lines + ", the total is " + total
            : price.Lines.Sum(line => line.Cost) != price.Cost ? "the lines cost " + price.Lines.Sum(line => line.Cost)
                + ", the cost is " + price.Cost
            : price.Lines.Where(line => line.Category is not LineCategory.Tax).Sum(line => line.Price) != price.Net ? "lines before tax are not the net"
            : plan.Costs!.ByFixture is { } fixtures && fixtures.Parts.Sum(part => part.Amount) != price.Net ? "fixtures are "
                + fixtures.Parts.Sum(part => part.Amount) + ", the net is " + price.Net
            : price.Purchases.FirstOrDefault(kit => kit.Bought.In(LineUnit.Litre) < kit.Need.In(LineUnit.Litre) - 1e-6) is { } few ? few.Item
                + " is bought too little"
            : null;
    }

    /// <summary>Rooms, wet film, dust, hours, people, tools and waits, read by a verifier that shares no code with the search.</summary>
    public static string? BreaksTheSite(Job job)
    {
        if (job.Plan().Schedule is not { IsPossible: true } schedule)
        {
            return null;
        }

        List<string> breaches = [.. SiteVerifier.Breaches(schedule.Found), .. SiteVerifier.PeopleBreaches(schedule.Found),
            .. Waits(schedule), .. Presence(schedule)];
        return breaches.Count == 0 ? null : string.Join("; ", breaches.Take(4));
    }

    /// <summary>Coats that are planned outside the window of what is under them, to the minute to which windows are rounded.</summary>
    public static string? MissesAWindow(Job job)
    {
        JobPlan plan = job.Plan();
        if (plan.Schedule is not { IsPossible: true } schedule || plan.Objections.Any(one => one.Kind == ObjectionKind.Schedule))
        {
            return null;
        }

        foreach (ScheduledWindow window in schedule.Windows)
        {
            foreach (ScheduledRun next in schedule.Runs.Where(run => window.Next.Contains(run.Run.Id)))
            {
                if (next.Start.AddMinutes(1) <= window.Opens || next.End.AddMinutes(-1) >= window.Closes)
                {
                    return next.Run.Id + " is planned " + next.Start.ToString("ddd HH:mm:ss", null) + " to " + next.End.ToString("ddd HH:mm:ss", null)
                        + " outside of " + window;
                }
            }
        }

        return null;
    }

    /// <summary>A gun that goes on to another product is cleaned in between; what is mixed does not stay in a gun beyond its pot
    /// life; the coat after a cleaning fills the hose again, wherever the gun was cleaned.</summary>
    public static string? LeavesTheGunDirty(Job job)
    {
        JobPlan plan = job.Plan();
        if (plan.Schedule is not { IsPossible: true } schedule || job.Shop.Guns != 1)
        {
            return null;
        }

        DateTimeOffset[] cleaned = [.. schedule.Operations.Where(operation =>
            operation.Operation.Kind == WorkKind.CleanGun).Select(operation => operation.Start)];
        for (int i = 0; i < schedule.Runs.Count; i++)
        {
            ScheduledRun run = schedule.Runs[i];
            ScheduledRun? next = i + 1 < schedule.Runs.Count ? schedule.Runs[i + 1] : null;
            DateTimeOffset? clean = cleaned.Where(start => start >= run.End).Select(start => (DateTimeOffset?)start).Min();
            bool first = clean is not null && (next is null || clean <= next.Start);
            if (next is not null && !first && next.Run.Layer.Product.Id != run.Run.Layer.Product.Id)
            {
                return next.Run.Id + " (" + next.Start.ToString("ddd HH:mm", null) + ") goes through the gun of " + run.Run.Id + " (ends "
                    + run.End.ToString("ddd HH:mm", null) + "), which was not cleaned";
            }

            if (next is not null && first && next.Run.Demand.HoldUp.Milliliters == 0 && plan.Planned.Any(procedure =>
                next.Operation.Operation.Fixtures.Contains(procedure.Fixture.Id) && procedure.Losses.HoldUp.Milliliters > 0))
            {
                return next.Run.Id + " finds the hose empty after the gun was cleaned, and nothing is mixed to fill it";
            }

            DateTimeOffset used = first ? clean!.Value : next?.Start ?? run.End;
            if (run.Run.InCup.PotLife is TimeSpan life && used - run.Start > life)
            {
                return run.Run.Id + " stays in the gun for " + (used - run.Start).TotalHours.ToString("0.0", null) + " h, its pot life is "
                    + life.TotalHours.ToString("0.0", null) + " h";
            }
        }

        return null;
    }

    private static string? Thrown(Func<int> read)
    {
        try
        {
            return read() >= 0 ? null : "nothing";
        }
        catch (Exception thrown) when (thrown is not OutOfMemoryException)
        {
            return thrown.GetType().Name + ": " + thrown.Message.Split('\n')[0];
        }
    }

    private static string? Repeated(string what, IEnumerable<string> ids) => ids.GroupBy(id => id).FirstOrDefault(same =>
        same.Count() > 1) is { } twice ? "two of the " + what + " ids are " + twice.Key : null;

    // The waits from the data sheets, read again from the runs, in rooms whose climate is held.
    private static IEnumerable<string> Waits(CrewSchedule schedule)
    {
        foreach (Procedure procedure in schedule.Work.Procedures)
        {
            if (schedule.Work.Premises.Rooms.Single(room => room.Id == procedure.Fixture.Room).Climate.Kind != RoomClimateKind.Held)
            {
                continue;
            }

            ScheduledRun[] runs = [.. schedule.Runs.Where(run => run.Operation.Operation.Fixtures.Contains(procedure.Fixture.Id))];
            if (runs.Length != procedure.Coats.Count || !runs.Select(run =>
                run.Run.Layer.Product.Id).SequenceEqual(procedure.Coats.Select(coat => coat.Layer.Product.Id)))
            {
                yield return procedure.Fixture.Id + " does not get its coats in their order";
            }

            for (int i = 1; i < runs.Length; i++)
            {
                if (runs[i].Start - runs[i - 1].End < runs[i - 1].Run.OnSurface.RecoatOpens)
                {
                    yield return runs[i].Run.Id + " before the coat below may be coated";
                }

                if (runs[i].End - (runs[i - 1].End - runs[i - 1].Run.SprayTime) > runs[i - 1].Run.AtWarmest.RecoatCloses)
                {
                    yield return runs[i].Run.Id + " after the recoat window";
                }
            }

            foreach (ScheduledOperation wipe in schedule.Operations.Where(operation => operation.Operation.Kind == WorkKind.Promote
                && operation.Operation.Fixtures.Contains(procedure.Fixture.Id)))
            {
                if (runs[0].Start - wipe.End < procedure.Promoter!.Flash || runs[0].End - wipe.End > procedure.Promoter.OpenTime)
                {
                    yield return runs[0].Run.Id + " outside the open time of " + procedure.Promoter.Id;
                }
            }
        }
    }

    // Nobody but the sprayer is in a room while it is sprayed; whoever stands by does nothing else.
    private static IEnumerable<string> Presence(CrewSchedule schedule)
    {
        foreach (ScheduledOperation guard in schedule.Operations.Where(operation => operation.Operation.Kind == WorkKind.StandBy))
        {
            if (schedule.Operations.Any(other => other != guard && other.Start < guard.End && guard.Start < other.End
                && other.People.Intersect(guard.People).Any()))
            {
                yield return string.Join(" ", guard.People) + " stands by " + guard.Operation.Beside + " and works";
            }
        }
    }
}
