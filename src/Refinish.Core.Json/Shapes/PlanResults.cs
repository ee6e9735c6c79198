using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of the days, of the hand-over and of what stands in the way, and all of it together.</summary>
internal static class PlanResults
{
    private static readonly FieldsShape<WorkPiece> Piece = new Fields<WorkPiece>("workPiece")
        .Show("start", Times.Instant, piece => piece.Start)
        .Show("end", Times.Instant, piece => piece.End)
        .AsResults();

    private static readonly FieldsShape<ScheduledStep> Step = new Fields<ScheduledStep>("scheduledStep")
        .Show("name", Scalars.Text, step => step.Step.Name)
        .Show("isAttended", Scalars.YesNo, step => step.Step.IsAttended)
        .Show("duration", Results.Minutes, step => step.Step.Duration.TotalSeconds)
        .Show("start", Times.Instant, step => step.Start)
        .Show("end", Times.Instant, step => step.End)
        .Show("pieces", CommonShapes.List(Piece), step => step.Pieces)
        .AsResults();

    private static readonly FieldsShape<JobSchedule> Schedule = new Fields<JobSchedule>("jobSchedule")
        .Show("isPossible", Scalars.YesNo, schedule => schedule.IsPossible)
        .Show("conflicts", Results.Sentences, schedule => schedule.Conflicts)
        .Show("steps", CommonShapes.List(Step), schedule => schedule.Steps)
        .AsResults();

    private static readonly FieldsShape<Handover> Handover = new Fields<Handover>("handover")
        .Show("waterFrom", Times.Instant, handover => handover.WaterFrom)
        .Show("coatingReady", Times.Instant, handover => handover.CoatingReady)
        .Show("caulkReady", Times.Instant, handover => handover.CaulkReady)
        .Show("drainTrimReady", Times.Instant, handover => handover.DrainTrimReady)
        .Show("heldAt", Results.Temperature, handover => handover.HeldAt.Kelvins)
        .Show("fullCure", Times.Instant, handover => handover.FullCure)
        .Show("handedOver", Times.Instant, handover => handover.HandedOver)
        .Show("warrantyUntil", Times.Instant, handover => handover.WarrantyUntil)
        .Show("leastFilm", Results.Film, handover => handover.Film.Minimum.Meters)
        .Show("greatestFilm", Results.Film, handover => handover.Film.Maximum.Meters)
        .Show("spots", Scalars.Count, handover => handover.Spots)
        .Show("careLimits", Results.Sentences, handover => handover.CareLimits)
        .Show("covers", Results.Sentences, handover => handover.Covers)
        .Show("exclusions", Results.Sentences, handover => handover.Exclusions)
        .Show("record", Results.Sentences, handover => handover.Record)
        .Show("cautions", Results.Cautions, handover => handover.Cautions)
        .AsResults();

    private static readonly FieldsShape<PlanObjection> Objection = new Fields<PlanObjection>("planObjection")
        .Show("kind", new WordShape<ObjectionKind>(), objection => objection.Kind)
        .Show("subject", Scalars.Text, objection => objection.Subject)
        .Show("sentence", Scalars.Text, objection => objection.Sentence(DisplayUnits.Si))
        .Show("comparison", Results.Comparison.OrNull(), objection => objection.Comparison)
        .AsResults();

    public static FieldsShape<BathroomPlan> Plan { get; } = new Fields<BathroomPlan>("bathroomPlan")
        .Show("isPossible", Scalars.YesNo, plan => plan.IsPossible)
        .Show("objections", CommonShapes.List(Objection), plan => plan.Objections)
        .Show("conditions", CommonShapes.List(FixtureResults.Reason), plan => plan.Conditions)
        .Show("protection", Results.Comparisons, plan => plan.Protection)
        .Show("cautions", Results.Cautions, plan => plan.Cautions)
        .Show("assumptions", Results.Sentences, plan => plan.Assumptions)
        .Show("coatedArea", Results.Area, plan => plan.CoatedArea.SquareMeters)
        .Show("fixtures", CommonShapes.List(FixtureResults.Fixture), plan => plan.Fixtures)
        .Show("promoters", CommonShapes.List(CoatResults.Promoter), plan => plan.Promoters)
        .Show("coats", CommonShapes.List(CoatResults.Coat), plan => plan.Coats)
        .Show("schedule", Schedule.OrNull(), plan => plan.Schedule)
        .Show("air", AirResults.Air.OrNull(), plan => plan.Air)
        .Show("flammableAirflow", Results.Comparison.OrNull(), plan => plan.FlammableAirflow)
        .Show("isocyanateScreens", CommonShapes.List(AirResults.Isocyanate), plan => plan.IsocyanateScreens)
        .Show("price", PriceResults.Price.OrNull(), plan => plan.Price)
        .Show("netByFixture", PriceResults.ByFixture.OrNull(), plan => plan.NetByFixture)
        .Show("comparison", PriceResults.Comparison.OrNull(), plan => plan.Comparison)
        .Show("reserve", PriceResults.Reserve.OrNull(), plan => plan.Reserve)
        .Show("reserveForAll", Scalars.Money, plan => plan.ReserveForAll)
        .Show("handover", Handover.OrNull(), plan => plan.Handover)
        .AsResults();
}
