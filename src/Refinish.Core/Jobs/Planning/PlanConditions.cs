using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Conditions of a plan: those of its fixtures, and films that would run or not level where the product's sheet tells.</summary>
internal static class PlanConditions
{
    private static readonly Source MixedAir = Source.Derived("well-mixed air of the room");
    private static readonly Source Unmasking = Source.CommonPractice("masking comes off the same day where the film allows it");
    private static readonly Source StartAndCalendar = Source.Supplied("start of the job and calendar of the shop");
    private static readonly Source ChangedList = Source.Supplied("a change of the list");

    public static IEnumerable<PlanCondition> Of(JobPlan plan)
    {
        foreach (Procedure procedure in plan.Planned)
        {
            foreach (PlanCondition condition in procedure.Conditions)
            {
                yield return condition;
            }
        }

        foreach (IGrouping<string,
            Doubt> about in plan.Doubts.Where(doubt => doubt.IsUnitMixUp).GroupBy(doubt => doubt.About, StringComparer.Ordinal))
        {
            Doubt[] doubts = [.. about];
            yield return new PlanCondition(
                about.Key, "measure-again", system => string.Join("; ", doubts.Select(doubt => doubt.Sentence(system))),
                "measure again before the price is told: in another unit everything would have another price", doubts[0].Source);
        }

        foreach (RuleChange change in plan.Job.Shop.Survey.RuleChanges.Where(change => change.Rule.ProtectsPeople && change.IsSofter))
        {
            yield return new PlanCondition(
                plan.Job.Id, "rule-" + change.Code, _ =>
                    "rule " + change.Rule + ", which protects people, was " + change.Words + " for all work of this shop",
                change.Rule.Remedy, change.Source, Audience.Crew | Audience.Customer | Audience.Occupant);
        }

        if (Clock(plan.Job) is PlanCondition clock)
        {
            yield return clock;
        }

        foreach (PlanCondition condition in plan.Planned.SelectMany(Readings))
        {
            yield return condition;
        }

        foreach (PlanCondition condition in plan.Schedule is { IsPossible: true } schedule ? Guns(schedule).Concat(ReEntries(plan)) : [])
        {
            yield return condition;
        }

        foreach (PlanCondition condition in plan.Schedule is { IsPossible: true } timed ? Nights(timed) : [])
        {
            yield return condition;
        }

        foreach (PlanCondition condition in LimitConditions.Of(plan).Concat(FixtureConditions.Of(plan)))
        {
            yield return condition;
        }

        foreach (Operation struck in plan.Work?.Struck ?? [])
        {
            yield return new PlanCondition(
                struck.Id, "struck", _ => "'" + struck.Name + "' was taken out of the list: it is in no time and in no price",
                "see that it is done all the same, or that nothing needs it; its place: " + WorkOrder.Of(struck.Kind).Reason, ChangedList);
        }

        if (plan.Work is { Runs.Count: > 0, Shop.StandsBy: false })
        {
            yield return new PlanCondition(
                plan.Job.Id, "stand-by", _ => "nobody of the crew stands by while coats are sprayed or solvent is at work",
                "before the first can is opened, agree with somebody who stays outside the room, sees or hears who works in it and can call for help",
                Cautions.NeverAlone.Source, Audience.Crew);
        }

        foreach (Operation warm in plan.Operations.Where(operation => operation.Kind == WorkKind.Warm))
        {
            yield return new PlanCondition(
                warm.Id, "stays-warm", _ => warm.Name + " is counted on for every coat and for the cure",
                "leave the heat on until the fixture has cured, and read its surface before each coat", warm.Source, Audience.Crew);
        }

        foreach (CoatRun run in plan.Work?.Runs ?? [])
        {
            IReadOnlyList<string> ids = plan.Work!.Operations.First(operation => operation.Id == run.Id).Fixtures;
            FixtureJob[] coated = [.. plan.Planned.Select(procedure => procedure.Fixture).Where(fixture => ids.Contains(fixture.Id))];
            if (coated.Any(CoatedSlopes.Hang))
            {
                yield return new PlanCondition(
                    run.Id, "drip", run.Hanging.Sentence, run.Hanging.Remedy!, run.Hanging.Source, Audience.Crew);
            }

            if (run.Layer.Product.Flow is null)
            {
                continue;
            }

            Angle steepest = Angle.FromRadians(coated.Select(CoatedSlopes.Steepest).DefaultIfEmpty().Max());
            foreach (LimitComparison beyond in run.Flow(steepest).Where(comparison => comparison.Outcome == ComparisonOutcome.Beyond))
            {
                yield return new PlanCondition(
                    run.Id, beyond.Sense == LimitSense.AtMost ? "sag" : "level", beyond.Sentence, beyond.Remedy ?? string.Empty,
                    beyond.Source, Audience.Crew);
            }
        }
    }

    // A price from a telephone call is told as one.
    // A start in universal time is how instants are stored; one with another offset was meant for the clock on somebody's wall.
    private static PlanCondition? Clock(Job job)
    {
        TimeSpan clock = job.Shop.Calendar.Clock.OffsetAt(job.Start);
        return job.Start.Offset == clock || job.Start.Offset == TimeSpan.Zero ? null : new PlanCondition(
            job.Id,
            "clock",
            _ => string.Format(
                CultureInfo.InvariantCulture,
                "the start is given as {0:HH:mm} with an offset of {0:zzz}, and on the clock of the shop's calendar, {1:zzz}, that is {1:HH:mm}",
                job.Start, job.Start.ToOffset(clock)),
            "give the calendar the clock of the site, or the start by the calendar's clock: working hours, nights and dates are read on it",
            StartAndCalendar);
    }

    private static IEnumerable<PlanCondition> Readings(Procedure procedure)
    {
        if (procedure.Fixture.Fixture is not RoughFixture { IsMeasured: false } rough)
        {
            yield break;
        }

        AreaRange range = rough.AreaRangeOf(procedure.Fixture.Zones);
        string next = range.Next is OpenReading open ? "take " + open.Name + " next; then " : string.Empty;
        yield return new PlanCondition(
            procedure.Fixture.Id, "assumed-readings",
            system => Figures.Fixed(rough.Assumptions.Count, 0) + " of " + Figures.Fixed(rough.Kind.Readings.Count, 0)
                + " readings are assumed: its area is " + range.Sentence(system),
            next + "measure what is left on site before the price is promised", RoughKindBuilder.Guess);
        int number = 0;
        foreach (LimitComparison doubt in rough.UnusualReadings)
        {
            number++;
            yield return new PlanCondition(
                procedure.Fixture.Id, "unusual-reading" + (number > 1 ? "/" + Figures.Fixed(number, 0) : string.Empty), doubt.Sentence,
                    doubt.Remedy ?? string.Empty, doubt.Source);
        }
    }

    // Left where the schedule could not take a cleaning or a wipe in between.
    private static IEnumerable<PlanCondition> Guns(CrewSchedule schedule)
    {
        Dictionary<string, PlannedStep> times = schedule.Found.Steps.ToDictionary(step => step.Step.Id, StringComparer.Ordinal);
        foreach ((CoatRun run, CoatRun next) in ScheduleNeeds.Uncleaned(schedule.Work, times))
        {
            yield return new PlanCondition(
                run.Id, "gun", _ => run.Layer.Product.Name + " is in the gun when " + next.Layer.Product.Name + " is to be sprayed (" + next.Id + ")",
                "clean the gun in between, which the price does not hold, or move the coats together", WorkOrder.GunCleaning,
                Audience.Crew);
        }

        foreach (CoatRun run in ScheduleNeeds.AfterNights(schedule.Work, times))
        {
            yield return new PlanCondition(
                run.Id, "unwiped", _ => "a night falls between abrading and the first coat, and no second wipe fits into the schedule",
                "wipe again and repeat the water-break test before the promoter, which the price does not hold",
                    WorkRule.Of(WorkKind.WipeAgain).Source,
                Audience.Crew);
        }
    }

    // Masking that stays on over night keeps detectors covered and tears the film when it comes off late. It is the crew's to take off;
    // that
    // detectors are tested before anybody sleeps there, customer and occupants read in the caution that masking brings.
    private static IEnumerable<PlanCondition> Nights(CrewSchedule schedule)
    {
        foreach (ScheduledOperation demask in schedule.Operations.Where(operation => operation.Operation.Kind == WorkKind.Demask))
        {
            ScheduledRun? last = schedule.Runs.LastOrDefault(run => run.Operation.Operation.Room == demask.Operation.Room && run.End <= demask.Start);
            if (last is not null && last.End.Date < demask.Start.Date)
            {
                yield return new PlanCondition(
                    demask.Operation.Id, "night", _ => "masking stays on from " + Clock(last.End) + " to " + Clock(demask.Start),
                    "each evening uncover and test smoke and gas detectors before anybody sleeps there, and look that the fan runs; cut the film along the tape before it is pulled",
                    Unmasking, Audience.Crew);
            }
        }
    }

    private static string Clock(DateTimeOffset time) => time.ToString("ddd HH:mm", CultureInfo.InvariantCulture);

    // The study is of well-mixed air: it says when the lowest limit known is kept, not that the air is harmless.
    private static IEnumerable<PlanCondition> ReEntries(JobPlan plan)
    {
        foreach (RoomAirPlan air in plan.Air)
        {
            if (air.Study is not { } study || air.Protection.Count == 0)
            {
                continue;
            }

            TimeSpan? clear = study.TimeToReEntry(1);
            yield return new PlanCondition(
                air.Room.Id, "re-entry",
                system => clear is TimeSpan time
                    ? "after the last coat the air of " + air.Room.Name + " is above the lowest eight-hour limits known for " + Figures.Fixed(CarefulTime.Up(time).TotalMinutes, 0) + " min more"
                    : "how long the air of " + air.Room.Name + " is above exposure limits cannot be told: a limit is not known or nothing leaves the room",
                "keep out until the air was measured; who has work in there before wears breathing protection, and mist of isocyanates is "
                    + "not in that time",
                MixedAir, Audience.Crew | Audience.Customer | Audience.Occupant);
        }
    }
}
