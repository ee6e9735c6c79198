using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Json.Shapes;

/// <summary>An operation beside its times and people, where there is a schedule.</summary>
internal sealed record OperationResult(Operation Operation, ScheduledOperation? Scheduled);

/// <summary>What a plan says of the work: operations, waits, times, people, visits and paid hours.</summary>
internal static class ScheduleResults
{
    private static readonly FieldsShape<TimeInterval> Piece = new Fields<TimeInterval>("workPiece")
        .Show("start", Times.Instant, piece => piece.Start)
        .Show("end", Times.Instant, piece => piece.End)
        .AsResults();

    private static readonly FieldsShape<FixtureInstruction> Instruction = new Fields<FixtureInstruction>("fixtureInstruction")
        .Show("id", Scalars.Text, instruction => instruction.Fixture)
        .Show("instruction", Scalars.Text, instruction => instruction.Instruction)
        .Show("coarsestGrit", Scalars.Count.OrNull(), instruction => instruction.CoarsestGrit)
        .Show("finestGrit", Scalars.Count.OrNull(), instruction => instruction.FinestGrit)
        .AsResults();

    private static readonly FieldsShape<LabourTask> Task = new Fields<LabourTask>("labourHours")
        .Show("standard", Scalars.Text, task => task.Standard.Code)
        .Show("area", Results.Area, task => task.Area.SquareMeters)
        .Show("units", Results.Number, task => task.Units)
        .Show("times", Scalars.Count, task => task.Times)
        .Show("hours", Results.Hours, task => task.Hours.Mean * 3600)
        .AsResults();

    private static readonly FieldsShape<MaterialNeed> Need = new Fields<MaterialNeed>("neededMaterial")
        .Show("item", Scalars.Text, need => need.Item)
        .Show("name", Scalars.Text, need => need.Name)
        .Show("amount", Results.Amount, need => MaterialAmountShape.Result(need.Amount))
        .Show("density", Results.Amount.OrNull(), need => Results.Of(need.Density?.KilogramsPerCubicMeter, Measure.Density))
        .AsResults();

    private static readonly FieldsShape<SolventShare> Share = new Fields<SolventShare>("evaporatedShare")
        .Show("solvent", Scalars.Text, share => share.Solvent.CasNumber)
        .Show("massFraction", Results.Percent, share => share.MassFraction.DecimalFractions)
        .AsResults();

    private static readonly FieldsShape<Evaporation> Vapour = new Fields<Evaporation>("vapour")
        .Show("name", Scalars.Text, vapour => vapour.Name)
        .Show("mass", Results.Mass, vapour => vapour.Mass.Kilograms)
        .Show("solvents", CommonShapes.List(Share), vapour => vapour.Solvents)
        .Show("timeConstant", Results.Minutes, vapour => vapour.TimeConstant.TotalSeconds)
        .Show("takenOffAfter", Results.Minutes.OrNull(), vapour => vapour.TakenOffAfter?.TotalSeconds)
        .AsResults();

    private static readonly FieldsShape<ScheduledOperation> Scheduled = new Fields<ScheduledOperation>("scheduledOperation")
        .Show("start", Times.Instant, operation => operation.Start)
        .Show("end", Times.Instant, operation => operation.End)
        .Show("pieces", CommonShapes.List(Piece), operation => operation.Pieces)
        .Show("people", Results.Sentences, operation => operation.People)
        .AsResults();

    private static readonly FieldsShape<ScheduledWindow> Window = new Fields<ScheduledWindow>("scheduledWindow")
        .Show("operation", Scalars.Text, window => window.Operation.Operation.Id)
        .Show("kind", new WordShape<ScheduledWindowKind>(), window => window.Kind)
        .Show("name", Scalars.Text, window => window.Name)
        .Show("next", Results.Sentences, window => window.Next)
        .Show("firstStroke", Times.Instant, window => window.FirstStroke)
        .Show("lastStroke", Times.Instant, window => window.LastStroke)
        .Show("opens", Times.Instant.OrNull(), window => window.Opens)
        .Show("closes", Times.Instant.OrNull(), window => window.Closes)
        .Show("isOpenEnded", Scalars.YesNo, window => window.IsOpenEnded)
        .AsResults();

    private static readonly FieldsShape<CrewTurn> Turn = new Fields<CrewTurn>("crewTurn")
        .Show("operation", Scalars.Text, turn => turn.Step.Id)
        .Show("start", Times.Instant, turn => turn.Piece.Start)
        .Show("end", Times.Instant, turn => turn.Piece.End)
        .AsResults();

    private static readonly FieldsShape<PersonVisit> Visit = new Fields<PersonVisit>("personVisit")
        .Show("worker", Scalars.Text, visit => visit.Worker)
        .Show("arrives", Times.Instant, visit => visit.Arrives)
        .Show("leaves", Times.Instant, visit => visit.Leaves)
        .Show("turns", CommonShapes.List(Turn), visit => visit.Turns)
        .Show("worked", Results.Hours, visit => visit.Worked.TotalSeconds)
        .Show("onSite", Results.Hours, visit => visit.OnSite.TotalSeconds)
        .Show("waiting", Results.Hours, visit => visit.Waiting.TotalSeconds)
        .Show("halfDays", Results.Hours, visit => visit.HalfDays.TotalSeconds)
        .Show("paid", Results.Hours, visit => visit.Paid.TotalSeconds)
        .AsResults();

    private static readonly FieldsShape<PaidHours> Paid = new Fields<PaidHours>("paidHours")
        .Show("worked", Results.Hours, paid => paid.Worked.TotalSeconds)
        .Show("onSite", Results.Hours, paid => paid.OnSite.TotalSeconds)
        .Show("halfDays", Results.Hours, paid => paid.HalfDays.TotalSeconds)
        .Show("paid", Results.Hours, paid => paid.Paid.TotalSeconds)
        .Show("beyondWork", Results.Hours, paid => paid.BeyondWork.TotalSeconds)
        .AsResults();

    public static FieldsShape<OperationResult> Operation { get; } = new Fields<OperationResult>("plannedOperation")
        .Show("id", Scalars.Text, one => one.Operation.Id)
        .Show("kind", LabourShapes.Work, one => one.Operation.Kind)
        .Show("name", Scalars.Text, one => one.Operation.Name)
        .Show("instruction", Scalars.Text, one => one.Operation.Instruction)
        .Show("room", Scalars.Text.OrNull(), one => one.Operation.Room)
        .Show("fixtures", Results.Sentences, one => one.Operation.Fixtures)
        .Show("byFixture", CommonShapes.List(Instruction), one => one.Operation.ByFixture)
        .Show("people", Scalars.Count, one => one.Operation.People)
        .Show("time", Results.Hours.OrNull(), one => one.Operation.Time?.TotalSeconds)
        .Show("labour", CommonShapes.List(Task), one => one.Operation.Labour)
        .Show("beside", Scalars.Text.OrNull(), one => one.Operation.Beside)
        .Show("isInterruptible", Scalars.YesNo, one => one.Operation.IsInterruptible)
        .Show("sprays", Scalars.YesNo, one => one.Operation.Sprays)
        .Show("clearing", Results.Minutes, one => one.Operation.Clearing.TotalSeconds)
        .Show("raisesDust", Scalars.YesNo, one => one.Operation.RaisesDust)
        .Show("dustFree", Results.Minutes, one => one.Operation.DustFree.TotalSeconds)
        .Show("isLoud", Scalars.YesNo, one => one.Operation.IsLoud)
        .Show("soundLevel", Results.SoundLevel.OrNull(), one => one.Operation.SoundLevel?.Decibels)
        .Show("tools", Results.Sentences, one => one.Operation.Tools)
        .Show("materials", CommonShapes.List(Need), one => one.Operation.Materials)
        .Show("vapours", CommonShapes.List(Vapour), one => one.Operation.Vapours)
        .Show("cautions", Results.CautionCodes, one => one.Operation.Cautions)
        .Show("source", CommonShapes.Source, one => one.Operation.Source)
        .Show("scheduled", Scheduled.OrNull(), one => one.Scheduled)
        .AsResultsOf(typeof(Operation));

    /// <summary>Times to keep; on a clock that follows the temperature they count hours at its reference.</summary>
    public static FieldsShape<StepLag> Wait { get; } = new Fields<StepLag>("wait")
        .Show("before", Scalars.Text, lag => lag.Before)
        .Show("after", Scalars.Text, lag => lag.After)
        .Show("minimum", Results.Hours, lag => lag.Minimum.TotalSeconds)
        .Show("maximum", Results.Hours.OrNull(), lag => lag.Maximum?.TotalSeconds)
        .Show("reason", Scalars.Text, lag => lag.Reason)
        .Show("countedAt", Results.Temperature.OrNull(), lag => lag.Clock?.Reference.Kelvins)
        .AsResults();

    public static FieldsShape<CrewSchedule> Schedule { get; } = new Fields<CrewSchedule>("crewSchedule")
        .Show("isPossible", Scalars.YesNo, schedule => schedule.IsPossible)
        .Show("conflict", Scalars.Text.OrNull(), schedule => schedule.Found.Conflict?.ToString())
        .Show("finish", Times.Instant.OrNull(), schedule => schedule.Found.Finish)
        .Show("finishBound", Times.Instant.OrNull(), schedule => schedule.Found.FinishBound)
        .Show("isEarliest", Scalars.YesNo, schedule => schedule.Found.IsEarliest)
        .Show("trips", Scalars.Count, schedule => schedule.Trips)
        .Show("visitsBound", Scalars.Count, schedule => schedule.Found.VisitsBound)
        .Show("hasFewestVisits", Scalars.YesNo, schedule => schedule.Found.HasFewestVisits)
        .Show("windows", CommonShapes.List(Window), schedule => schedule.Windows)
        .Show("visits", CommonShapes.List(Visit), schedule => schedule.Visits)
        .Show("paid", Paid, schedule => schedule.Paid)
        .AsResults();
}
