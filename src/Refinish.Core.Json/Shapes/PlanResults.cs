using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Jobs;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of the hand-over and of what stands in the way, and all of it together.</summary>
internal static class PlanResults
{
    private static readonly FieldsShape<FixtureHandover> FixtureHandover = new Fields<FixtureHandover>("fixtureHandover")
        .Show("id", Text, it => it.Procedure.Fixture.Id)
        .Show("begun", Times.Instant, it => it.Begun)
        .Show("waterFrom", Times.Instant.OrNull(), it => it.WaterFrom)
        .Show("daysOutOfUse", Count.OrNull(), it => it.DaysOutOfUse)
        .Show("coatingReady", Times.Instant.OrNull(), it => it.CoatingReady)
        .Show("caulkReady", Times.Instant, it => it.CaulkReady)
        .Show("drainTrimReady", Times.Instant, it => it.DrainTrimReady)
        .Show("surface", Results.Temperature.OrNull(), it => it.Surface?.Kelvins)
        .Show("fullCure", Times.Instant.OrNull(), it => it.FullCure)
        .Show("handedOver", Times.Instant, it => it.HandedOver)
        .Show("warrantyUntil", Times.Instant, it => it.WarrantyUntil)
        .Show("leastFilm", Results.Film, it => it.Film.Minimum.Meters)
        .Show("greatestFilm", Results.Film, it => it.Film.Maximum.Meters)
        .Show("spots", Count, it => it.Spots)
        .AsResults();

    private static readonly FieldsShape<Handover> Handover = new Fields<Handover>("handover")
        .Show("fixtures", List(FixtureHandover), it => it.Fixtures)
        .Show("begun", Times.Instant, it => it.Begun)
        .Show("waterFrom", Times.Instant.OrNull(), it => it.WaterFrom)
        .Show("daysOutOfUse", Count.OrNull(), it => it.DaysOutOfUse)
        .Show("fullCure", Times.Instant.OrNull(), it => it.FullCure)
        .Show("handedOver", Times.Instant, it => it.HandedOver)
        .Show("warrantyUntil", Times.Instant, it => it.WarrantyUntil)
        .Show("spots", Count, it => it.Spots)
        .Show("careLimits", Results.Sentences, it => it.CareLimits)
        .Show("covers", Results.Sentences, it => it.Covers)
        .Show("exclusions", Results.Sentences, it => it.Exclusions)
        .Show("record", Results.Sentences, it => it.Record)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    private static readonly FieldsShape<PlanObjection> Objection = new Fields<PlanObjection>("planObjection")
        .Show("id", Text, it => it.Id)
        .Show("kind", new WordShape<ObjectionKind>(), it => it.Kind)
        .Show("about", Text, it => it.About)
        .Show("sentence", Results.Sentence, it => it.Sentence)
        .Show("comparison", Results.Comparison.OrNull(), it => it.Comparison)
        .AsResults();

    private static readonly FieldsShape<PlanCondition> Condition = new Fields<PlanCondition>("planCondition")
        .Show("id", Text, it => it.Id)
        .Show("about", Text, it => it.About)
        .Show("sentence", Results.Sentence, it => it.Sentence)
        .Show("remedy", Text, it => it.Remedy)
        .Show("reason", ProcedureResults.Reason.OrNull(), it => it.Reason)
        .Show("source", CommonShapes.Source, it => it.Source)
        .Show("concerns", Audiences, it => Concerned(it.Concerns))
        .AsResults();

    private static readonly FieldsShape<LikelySlip> Slip = new Fields<LikelySlip>("likelySlip")
        .Show("slip", new WordShape<ReadingSlip>(), it => it.Slip)
        .Show("isUnitMixUp", YesNo, it => it.IsUnitMixUp)
        .Show("meant", Results.Amount, it => new MeasuredAmount(it.Meant.Meters, Measure.Length))
        .AsResults();

    private static readonly FieldsShape<Doubt> Doubt = new Fields<Doubt>("doubt")
        .Show("id", Text, it => it.Id)
        .Show("kind", new WordShape<DoubtKind>(), it => it.Kind)
        .Show("about", Text, it => it.About)
        .Show("reading", Text.OrNull(), it => it.Reading)
        .Show("subject", Text, it => it.Subject)
        .Show("value", Results.Amount.OrNull(), it => Results.Of(it.Value, it.Measure))
        .Show("least", Results.Amount.OrNull(), it => Results.Of(it.Least, it.Measure))
        .Show("greatest", Results.Amount.OrNull(), it => Results.Of(it.Greatest, it.Measure))
        .Show("slips", List(Slip), it => it.Slips)
        .Show("isUnitMixUp", YesNo, it => it.IsUnitMixUp)
        .Show("sentence", Results.Sentence, it => it.Sentence)
        .Show("remedy", Text, it => it.Remedy)
        .Show("source", CommonShapes.Source, it => it.Source)
        .AsResults();

    private static readonly FieldsShape<AreaRange> Range = new Fields<AreaRange>("areaRange")
        .Show("least", Results.Area, it => it.Least.SquareMeters)
        .Show("likely", Results.Area, it => it.Likely.SquareMeters)
        .Show("greatest", Results.Area, it => it.Greatest.SquareMeters)
        .AsResults();

    private static readonly FieldsShape<OpenReading> Open = new Fields<OpenReading>("openReading")
        .Show("name", Text, it => it.Name)
        .Show("isTaken", YesNo, it => it.IsTaken)
        .Show("areaAtLeast", Results.Area, it => it.AreaAtLeast.SquareMeters)
        .Show("areaAtGreatest", Results.Area, it => it.AreaAtGreatest.SquareMeters)
        .Show("narrowing", Results.Area, it => it.Narrowing.SquareMeters)
        .Show("source", CommonShapes.Source, it => it.Source)
        .AsResults();

    private static readonly FieldsShape<NextReading> Next = new Fields<NextReading>("nextReading")
        .Show("fixture", Text, it => it.Fixture)
        .Show("range", Range, it => it.Range)
        .Show("reading", Open, it => it.Reading)
        .AsResults();

    private static readonly FieldsShape<PlannedCaution> Caution = new Fields<PlannedCaution>("plannedCaution")
        .Show("code", Text, it => it.Caution.Code)
        .Show("hazard", new WordShape<Hazard>(), it => it.Caution.Hazard)
        .Show("sentence", Text, it => it.Caution.Sentence)
        .Show("decidedBy", Text, it => it.Caution.DecidedBy)
        .Show("source", CommonShapes.Source, it => it.Caution.Source)
        .Show("concerns", Audiences, it => Concerned(it.Caution))
        .Show("operations", List(Text), it => it.Operations)
        .Show("fixtures", List(Text), it => it.Fixtures)
        .Show("rooms", List(Text), it => it.Rooms)
        .Show("crew", List(Text), it => it.Crew)
        .AsResults();

    public static FieldsShape<JobPlan> Plan { get; } = new Fields<JobPlan>("jobPlan")
        .Show("isPossible", YesNo, it => it.IsPossible)
        .Show("objections", List(Objection), it => it.Objections)
        .Show("conditions", List(Condition), it => it.Conditions)
        .Show("doubts", List(Doubt), it => it.Doubts)
        .Show("nextReadings", List(Next), it => it.NextReadings)
        .Show("protection", List(AirResults.Protection), it => it.Protection)
        .Show("cautions", List(Caution), it => it.Cautions)
        .Show("assumptions", Results.Sentences, it => it.Assumptions)
        .Show("coatedArea", Results.Area, it => it.CoatedArea.SquareMeters)
        .Show("procedures", List(ProcedureResults.Procedure), it => it.Procedures)
        .Show("operations", List(ScheduleResults.Operation), Operations)
        .Show("waits", List(ScheduleResults.Wait), it => it.Work?.Lags ?? [])
        .Show("runs", List(RunResults.Run), Runs)
        .Show("schedule", ScheduleResults.Schedule.OrNull(), it => it.Schedule)
        .Show("air", List(AirResults.Room), it => it.Air)
        .Show("exposure", List(AirResults.Day), it => it.Exposure)
        .Show("noise", List(AirResults.Noise), it => it.Noise)
        .Show("price", PriceResults.Price.OrNull(), it => it.Price)
        .Show("draws", List(PriceResults.Draw), it => it.Costs?.Draws ?? [])
        .Show("reserve", PriceResults.Reserve.OrNull(), it => it.Costs?.Reserve)
        .Show("reserveForAll", Scalars.Money.OrNull(), it => it.Costs?.ReserveForAll)
        .Show("comparison", PriceResults.Comparison.OrNull(), it => it.Comparison)
        .Show("handover", Handover.OrNull(), it => it.Handover)
        .Show("quote", QuoteResults.Quote.OrNull(), it => it.Quote)
        .AsResults();

    private static List<OperationResult> Operations(JobPlan plan)
    {
        Dictionary<string, ScheduledOperation> times = new(StringComparer.Ordinal);
        foreach (ScheduledOperation operation in plan.Schedule?.Operations ?? [])
        {
            times.TryAdd(operation.Operation.Id, operation);
        }

        return [.. plan.Operations.Select(operation => new OperationResult(operation, times.GetValueOrDefault(operation.Id)))];
    }

    private static List<RunResult> Runs(JobPlan plan)
    {
        Dictionary<string, ScheduledRun> times = new(StringComparer.Ordinal);
        foreach (ScheduledRun run in plan.Runs)
        {
            times.TryAdd(run.Run.Id, run);
        }

        return
        [
            .. (plan.Work?.Runs ?? []).Select(run =>
                new RunResult(run, times.GetValueOrDefault(run.Id), plan.Voc[run.Layer.Product.Id])),
        ];
    }
}
