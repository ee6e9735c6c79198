using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of the hand-over and of what stands in the way, and all of it together.</summary>
internal static class PlanResults
{
    private static readonly FieldsShape<FixtureHandover> FixtureHandover = new Fields<FixtureHandover>("fixtureHandover")
        .Show("id", Scalars.Text, fixture => fixture.Procedure.Fixture.Id)
        .Show("begun", Times.Instant, fixture => fixture.Begun)
        .Show("waterFrom", Times.Instant.OrNull(), fixture => fixture.WaterFrom)
        .Show("daysOutOfUse", Scalars.Count.OrNull(), fixture => fixture.DaysOutOfUse)
        .Show("coatingReady", Times.Instant.OrNull(), fixture => fixture.CoatingReady)
        .Show("caulkReady", Times.Instant, fixture => fixture.CaulkReady)
        .Show("drainTrimReady", Times.Instant, fixture => fixture.DrainTrimReady)
        .Show("surface", Results.Temperature.OrNull(), fixture => fixture.Surface?.Kelvins)
        .Show("fullCure", Times.Instant.OrNull(), fixture => fixture.FullCure)
        .Show("handedOver", Times.Instant, fixture => fixture.HandedOver)
        .Show("warrantyUntil", Times.Instant, fixture => fixture.WarrantyUntil)
        .Show("leastFilm", Results.Film, fixture => fixture.Film.Minimum.Meters)
        .Show("greatestFilm", Results.Film, fixture => fixture.Film.Maximum.Meters)
        .Show("spots", Scalars.Count, fixture => fixture.Spots)
        .AsResults();

    private static readonly FieldsShape<Handover> Handover = new Fields<Handover>("handover")
        .Show("fixtures", CommonShapes.List(FixtureHandover), handover => handover.Fixtures)
        .Show("begun", Times.Instant, handover => handover.Begun)
        .Show("waterFrom", Times.Instant.OrNull(), handover => handover.WaterFrom)
        .Show("daysOutOfUse", Scalars.Count.OrNull(), handover => handover.DaysOutOfUse)
        .Show("fullCure", Times.Instant.OrNull(), handover => handover.FullCure)
        .Show("handedOver", Times.Instant, handover => handover.HandedOver)
        .Show("warrantyUntil", Times.Instant, handover => handover.WarrantyUntil)
        .Show("spots", Scalars.Count, handover => handover.Spots)
        .Show("careLimits", Results.Sentences, handover => handover.CareLimits)
        .Show("covers", Results.Sentences, handover => handover.Covers)
        .Show("exclusions", Results.Sentences, handover => handover.Exclusions)
        .Show("record", Results.Sentences, handover => handover.Record)
        .Show("cautions", Results.CautionCodes, handover => handover.Cautions)
        .AsResults();

    private static readonly FieldsShape<PlanObjection> Objection = new Fields<PlanObjection>("planObjection")
        .Show("id", Scalars.Text, objection => objection.Id)
        .Show("kind", new WordShape<ObjectionKind>(), objection => objection.Kind)
        .Show("about", Scalars.Text, objection => objection.About)
        .Show("sentence", Results.Sentence, objection => objection.Sentence)
        .Show("comparison", Results.Comparison.OrNull(), objection => objection.Comparison)
        .AsResults();

    private static readonly FieldsShape<PlanCondition> Condition = new Fields<PlanCondition>("planCondition")
        .Show("id", Scalars.Text, condition => condition.Id)
        .Show("about", Scalars.Text, condition => condition.About)
        .Show("sentence", Results.Sentence, condition => condition.Sentence)
        .Show("remedy", Scalars.Text, condition => condition.Remedy)
        .Show("reason", ProcedureResults.Reason.OrNull(), condition => condition.Reason)
        .Show("source", CommonShapes.Source, condition => condition.Source)
        .Show("concerns", CommonShapes.Audiences, condition => CommonShapes.Concerned(condition.Concerns))
        .AsResults();

    private static readonly FieldsShape<LikelySlip> Slip = new Fields<LikelySlip>("likelySlip")
        .Show("slip", new WordShape<ReadingSlip>(), slip => slip.Slip)
        .Show("isUnitMixUp", Scalars.YesNo, slip => slip.IsUnitMixUp)
        .Show("meant", Results.Amount, slip => new MeasuredAmount(slip.Meant.Meters, Measure.Length))
        .AsResults();

    private static readonly FieldsShape<Doubt> Doubt = new Fields<Doubt>("doubt")
        .Show("id", Scalars.Text, doubt => doubt.Id)
        .Show("kind", new WordShape<DoubtKind>(), doubt => doubt.Kind)
        .Show("about", Scalars.Text, doubt => doubt.About)
        .Show("reading", Scalars.Text.OrNull(), doubt => doubt.Reading)
        .Show("subject", Scalars.Text, doubt => doubt.Subject)
        .Show("value", Results.Amount.OrNull(), doubt => Results.Of(doubt.Value, doubt.Measure))
        .Show("least", Results.Amount.OrNull(), doubt => Results.Of(doubt.Least, doubt.Measure))
        .Show("greatest", Results.Amount.OrNull(), doubt => Results.Of(doubt.Greatest, doubt.Measure))
        .Show("slips", CommonShapes.List(Slip), doubt => doubt.Slips)
        .Show("isUnitMixUp", Scalars.YesNo, doubt => doubt.IsUnitMixUp)
        .Show("sentence", Results.Sentence, doubt => doubt.Sentence)
        .Show("remedy", Scalars.Text, doubt => doubt.Remedy)
        .Show("source", CommonShapes.Source, doubt => doubt.Source)
        .AsResults();

    private static readonly FieldsShape<AreaRange> Range = new Fields<AreaRange>("areaRange")
        .Show("least", Results.Area, range => range.Least.SquareMeters)
        .Show("likely", Results.Area, range => range.Likely.SquareMeters)
        .Show("greatest", Results.Area, range => range.Greatest.SquareMeters)
        .AsResults();

    private static readonly FieldsShape<OpenReading> Open = new Fields<OpenReading>("openReading")
        .Show("name", Scalars.Text, reading => reading.Name)
        .Show("isTaken", Scalars.YesNo, reading => reading.IsTaken)
        .Show("areaAtLeast", Results.Area, reading => reading.AreaAtLeast.SquareMeters)
        .Show("areaAtGreatest", Results.Area, reading => reading.AreaAtGreatest.SquareMeters)
        .Show("narrowing", Results.Area, reading => reading.Narrowing.SquareMeters)
        .Show("source", CommonShapes.Source, reading => reading.Source)
        .AsResults();

    private static readonly FieldsShape<NextReading> Next = new Fields<NextReading>("nextReading")
        .Show("fixture", Scalars.Text, next => next.Fixture)
        .Show("range", Range, next => next.Range)
        .Show("reading", Open, next => next.Reading)
        .AsResults();

    private static readonly FieldsShape<PlannedCaution> Caution = new Fields<PlannedCaution>("plannedCaution")
        .Show("code", Scalars.Text, planned => planned.Caution.Code)
        .Show("hazard", new WordShape<Hazard>(), planned => planned.Caution.Hazard)
        .Show("sentence", Scalars.Text, planned => planned.Caution.Sentence)
        .Show("decidedBy", Scalars.Text, planned => planned.Caution.DecidedBy)
        .Show("source", CommonShapes.Source, planned => planned.Caution.Source)
        .Show("concerns", CommonShapes.Audiences, planned => CommonShapes.Concerned(planned.Caution))
        .Show("operations", CommonShapes.List(Scalars.Text), planned => planned.Operations)
        .Show("fixtures", CommonShapes.List(Scalars.Text), planned => planned.Fixtures)
        .Show("rooms", CommonShapes.List(Scalars.Text), planned => planned.Rooms)
        .Show("crew", CommonShapes.List(Scalars.Text), planned => planned.Crew)
        .AsResults();

    public static FieldsShape<JobPlan> Plan { get; } = new Fields<JobPlan>("jobPlan")
        .Show("isPossible", Scalars.YesNo, plan => plan.IsPossible)
        .Show("objections", CommonShapes.List(Objection), plan => plan.Objections)
        .Show("conditions", CommonShapes.List(Condition), plan => plan.Conditions)
        .Show("doubts", CommonShapes.List(Doubt), plan => plan.Doubts)
        .Show("nextReadings", CommonShapes.List(Next), plan => plan.NextReadings)
        .Show("protection", CommonShapes.List(AirResults.Protection), plan => plan.Protection)
        .Show("cautions", CommonShapes.List(Caution), plan => plan.Cautions)
        .Show("assumptions", Results.Sentences, plan => plan.Assumptions)
        .Show("coatedArea", Results.Area, plan => plan.CoatedArea.SquareMeters)
        .Show("procedures", CommonShapes.List(ProcedureResults.Procedure), plan => plan.Procedures)
        .Show("operations", CommonShapes.List(ScheduleResults.Operation), Operations)
        .Show("waits", CommonShapes.List(ScheduleResults.Wait), plan => plan.Work?.Lags ?? [])
        .Show("runs", CommonShapes.List(RunResults.Run), Runs)
        .Show("schedule", ScheduleResults.Schedule.OrNull(), plan => plan.Schedule)
        .Show("air", CommonShapes.List(AirResults.Room), plan => plan.Air)
        .Show("exposure", CommonShapes.List(AirResults.Day), plan => plan.Exposure)
        .Show("noise", CommonShapes.List(AirResults.Noise), plan => plan.Noise)
        .Show("price", PriceResults.Price.OrNull(), plan => plan.Price)
        .Show("draws", CommonShapes.List(PriceResults.Draw), plan => plan.Costs?.Draws ?? [])
        .Show("reserve", PriceResults.Reserve.OrNull(), plan => plan.Costs?.Reserve)
        .Show("reserveForAll", Scalars.Money.OrNull(), plan => plan.Costs?.ReserveForAll)
        .Show("comparison", PriceResults.Comparison.OrNull(), plan => plan.Comparison)
        .Show("handover", Handover.OrNull(), plan => plan.Handover)
        .Show("quote", QuoteResults.Quote.OrNull(), plan => plan.Quote)
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
