using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>An operation beside its times and people, where there is a schedule.</summary>
internal sealed record OperationResult(Operation Operation, ScheduledOperation? Scheduled);

/// <summary>What a plan says of the work: operations, waits, times, people, visits and paid hours.</summary>
internal static class ScheduleResults
{
    private static readonly FieldsShape<TimeInterval> Piece = new Fields<TimeInterval>("workPiece")
        .Show("start", Times.Instant, it => it.Start)
        .Show("end", Times.Instant, it => it.End)
        .AsResults();

    private static readonly FieldsShape<FixtureInstruction> Instruction = new Fields<FixtureInstruction>("fixtureInstruction")
        .Show("id", Text, it => it.Fixture)
        .Show("instruction", Text, it => it.Instruction)
        .Show("coarsestGrit", Count.OrNull(), it => it.CoarsestGrit)
        .Show("finestGrit", Count.OrNull(), it => it.FinestGrit)
        .AsResults();

    private static readonly FieldsShape<LabourTask> Task = new Fields<LabourTask>("labourHours")
        .Show("standard", Text, it => it.Standard.Code)
        .Show("area", Results.Area, it => it.Area?.SquareMeters ?? 0)
        .Show("units", Results.Number, it => it.Units ?? 0)
        .Show("times", Count, it => it.Times)
        .Show("hours", Results.Hours, it => it.Hours.Mean * 3600)
        .AsResults();

    private static readonly FieldsShape<MaterialNeed> Need = new Fields<MaterialNeed>("neededMaterial")
        .Show("item", Text, it => it.Item)
        .Show("name", Text, it => it.Name)
        .Show("amount", Results.Amount, it => MaterialAmountShape.Result(it.Amount))
        .Show("density", Results.Amount.OrNull(), it => Results.Of(it.Density?.KilogramsPerCubicMeter, Measure.Density))
        .AsResults();

    private static readonly FieldsShape<SolventShare> Share = new Fields<SolventShare>("evaporatedShare")
        .Show("solvent", Text, it => it.Solvent.CasNumber)
        .Show("massFraction", Results.Percent, it => it.MassFraction.DecimalFractions)
        .AsResults();

    private static readonly FieldsShape<Evaporation> Vapour = new Fields<Evaporation>("vapour")
        .Show("name", Text, it => it.Name)
        .Show("mass", Results.Mass, it => it.Mass.Kilograms)
        .Show("solvents", List(Share), it => it.Solvents)
        .Show("timeConstant", Results.Minutes, it => it.TimeConstant.TotalSeconds)
        .Show("takenOffAfter", Results.Minutes.OrNull(), it => it.TakenOffAfter?.TotalSeconds)
        .AsResults();

    private static readonly FieldsShape<ScheduledOperation> Scheduled = new Fields<ScheduledOperation>("scheduledOperation")
        .Show("start", Times.Instant, it => it.Start)
        .Show("end", Times.Instant, it => it.End)
        .Show("pieces", List(Piece), it => it.Pieces)
        .Show("people", Results.Sentences, it => it.People)
        .AsResults();

    private static readonly FieldsShape<ScheduledWindow> Window = new Fields<ScheduledWindow>("scheduledWindow")
        .Show("operation", Text, it => it.Operation.Operation.Id)
        .Show("kind", new WordShape<ScheduledWindowKind>(), it => it.Kind)
        .Show("name", Text, it => it.Name)
        .Show("next", Results.Sentences, it => it.Next)
        .Show("firstStroke", Times.Instant, it => it.FirstStroke)
        .Show("lastStroke", Times.Instant, it => it.LastStroke)
        .Show("opens", Times.Instant.OrNull(), it => it.Opens)
        .Show("closes", Times.Instant.OrNull(), it => it.Closes)
        .Show("isOpenEnded", YesNo, it => it.IsOpenEnded)
        .AsResults();

    private static readonly FieldsShape<CrewTurn> Turn = new Fields<CrewTurn>("crewTurn")
        .Show("operation", Text, it => it.Step.Id)
        .Show("start", Times.Instant, it => it.Piece.Start)
        .Show("end", Times.Instant, it => it.Piece.End)
        .AsResults();

    private static readonly FieldsShape<PersonVisit> Visit = new Fields<PersonVisit>("personVisit")
        .Show("worker", Text, it => it.Worker)
        .Show("arrives", Times.Instant, it => it.Arrives)
        .Show("leaves", Times.Instant, it => it.Leaves)
        .Show("turns", List(Turn), it => it.Turns)
        .Show("worked", Results.Hours, it => it.Worked.TotalSeconds)
        .Show("onSite", Results.Hours, it => it.OnSite.TotalSeconds)
        .Show("waiting", Results.Hours, it => it.Waiting.TotalSeconds)
        .Show("halfDays", Results.Hours, it => it.HalfDays.TotalSeconds)
        .Show("paid", Results.Hours, it => it.Paid.TotalSeconds)
        .AsResults();

    private static readonly FieldsShape<PaidHours> Paid = new Fields<PaidHours>("paidHours")
        .Show("worked", Results.Hours, it => it.Worked.TotalSeconds)
        .Show("onSite", Results.Hours, it => it.OnSite.TotalSeconds)
        .Show("halfDays", Results.Hours, it => it.HalfDays.TotalSeconds)
        .Show("paid", Results.Hours, it => it.Paid.TotalSeconds)
        .Show("beyondWork", Results.Hours, it => it.BeyondWork.TotalSeconds)
        .AsResults();

    public static FieldsShape<OperationResult> Operation { get; } = new Fields<OperationResult>("plannedOperation")
        .Show("id", Text, it => it.Operation.Id)
        .Show("kind", LabourShapes.Work, it => it.Operation.Kind)
        .Show("name", Text, it => it.Operation.Name)
        .Show("instruction", Text, it => it.Operation.Instruction)
        .Show("room", Text.OrNull(), it => it.Operation.Room)
        .Show("fixtures", Results.Sentences, it => it.Operation.Fixtures)
        .Show("byFixture", List(Instruction), it => it.Operation.ByFixture)
        .Show("people", Count, it => it.Operation.People)
        .Show("time", Results.Hours.OrNull(), it => it.Operation.Time?.TotalSeconds)
        .Show("labour", List(Task), it => it.Operation.Labour)
        .Show("beside", Text.OrNull(), it => it.Operation.Beside)
        .Show("isInterruptible", YesNo, it => it.Operation.IsInterruptible)
        .Show("sprays", YesNo, it => it.Operation.Sprays)
        .Show("clearing", Results.Minutes, it => it.Operation.Clearing.TotalSeconds)
        .Show("raisesDust", YesNo, it => it.Operation.RaisesDust)
        .Show("dustFree", Results.Minutes, it => it.Operation.DustFree.TotalSeconds)
        .Show("isLoud", YesNo, it => it.Operation.IsLoud)
        .Show("soundLevel", Results.SoundLevel.OrNull(), it => it.Operation.SoundLevel?.Decibels)
        .Show("tools", Results.Sentences, it => it.Operation.Tools)
        .Show("materials", List(Need), it => it.Operation.Materials)
        .Show("vapours", List(Vapour), it => it.Operation.Vapours)
        .Show("cautions", Results.CautionCodes, it => it.Operation.Cautions)
        .Show("source", CommonShapes.Source, it => it.Operation.Source)
        .Show("scheduled", Scheduled.OrNull(), it => it.Scheduled)
        .AsResultsOf(typeof(Operation));

    /// <summary>Times to keep; on a clock that follows the temperature they count hours at its reference.</summary>
    public static FieldsShape<StepLag> Wait { get; } = new Fields<StepLag>("wait")
        .Show("before", Text, it => it.Before)
        .Show("after", Text, it => it.After)
        .Show("minimum", Results.Hours, it => it.Minimum.TotalSeconds)
        .Show("maximum", Results.Hours.OrNull(), it => it.Maximum?.TotalSeconds)
        .Show("reason", Text, it => it.Reason)
        .Show("countedAt", Results.Temperature.OrNull(), it => it.Clock?.Reference.Kelvins)
        .AsResults();

    public static FieldsShape<CrewSchedule> Schedule { get; } = new Fields<CrewSchedule>("crewSchedule")
        .Show("isPossible", YesNo, it => it.IsPossible)
        .Show("conflict", Text.OrNull(), it => it.Found.Conflict?.ToString())
        .Show("finish", Times.Instant.OrNull(), it => it.Found.Finish)
        .Show("finishBound", Times.Instant.OrNull(), it => it.Found.FinishBound)
        .Show("isEarliest", YesNo, it => it.Found.IsEarliest)
        .Show("trips", Count, it => it.Trips)
        .Show("visitsBound", Count, it => it.Found.VisitsBound)
        .Show("hasFewestVisits", YesNo, it => it.Found.HasFewestVisits)
        .Show("windows", List(Window), it => it.Windows)
        .Show("visits", List(Visit), it => it.Visits)
        .Show("paid", Paid, it => it.Paid)
        .AsResults();
}
