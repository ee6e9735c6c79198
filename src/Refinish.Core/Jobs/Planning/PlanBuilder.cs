using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>Calls the stages of a plan one after the other and gathers what stands in the way.</summary>
internal sealed class PlanBuilder(Job job)
{
    // Flames and the way of the air are the room's, people who cannot leave are everybody's: what one survey found stops the others as
    // well.
    private static readonly (string Whole, Func<Survey, bool> IsFound, string What)[] Shared =
    [
        ("premises", survey => survey.SensitiveOccupantsCannotLeave, "people who must not breathe the vapour cannot leave"),
        ("room", survey => survey.FlameCannotBeShutOff, "an open flame or pilot cannot be shut off"),
        ("room", survey => survey.NoExhaustPath, "there is no way to lead exhaust air outdoors"),
    ];

    public List<PlanObjection> Objections { get; } = [];

    public List<Procedure> Procedures { get; } = [];

    public List<Procedure> Planned { get; } = [];

    public WorkList? Work { get; private set; }

    public CrewSchedule? Schedule { get; private set; }

    public List<RoomAirPlan> Air { get; } = [];

    public JobCosts? Costs { get; private set; }

    public RefinishOrReplace? Comparison { get; private set; }

    public Handover? Handover { get; private set; }

    public void Build()
    {
        foreach (FixtureJob fixture in job.Fixtures)
        {
            Judge(fixture);
        }

        Fit();
        FitRooms();
        if (Planned.Count == 0)
        {
            return;
        }

        Work = Stage.Try(Objections, job.Id, "work", () => new WorkList(Planned, job.Premises, job.Shop, job.Start, job.Changes));
        if (Work is null)
        {
            return;
        }

        Objections.AddRange(Work.Objections);
        if (Work.Operations.Count > 0 && !Objections.Exists(IsInTheWayOfTimes))
        {
            Schedule = Stage.Try(Objections, job.Id, "schedule", () => new CrewSchedule(Work, job.Days));
            Objections.AddRange(Schedule?.Objections ?? []);
            Work = Schedule?.Work ?? Work;
            Objections.AddRange(Work.Objections.Where(objection => !Objections.Exists(one => one.Id == objection.Id)).ToList());
        }

        if (Schedule is { IsPossible: true })
        {
            StudyAir(Work);
            PriceAndCompare();
            if (Objections.TrueForAll(objection => objection.Kind == ObjectionKind.FixtureLeftOut))
            {
                Handover = Stage.Try(Objections, job.Id, "handover", () => HandedOver);
                RecordsThatEnd();
            }
        }
    }

    // The comparison counts days by it, and the plan hands it out once nothing stands in the way.
    private Handover HandedOver => field ??= new Handover(Schedule!);

    private static bool IsInTheWayOfTimes(PlanObjection objection) =>
        objection.Kind is ObjectionKind.CureTemperature or ObjectionKind.Batch or ObjectionKind.Schedule or ObjectionKind.OutOfRange;

    // What names a fixture or a room of the job has to name one that is there.
    private void Fit()
    {
        foreach (ExtraItem extra in job.Extras)
        {
            if (extra.Fixture is string fixture && job.Fixtures.All(one => one.Id != fixture))
            {
                Objections.Add(new PlanObjection(ObjectionKind.Input, extra.Id, "extra-fixture",
                    "The extra '" + extra.Id + "' names the fixture '" + fixture + "', which the job does not have."));
            }

            if (extra.Room is string room && job.Premises.Rooms.All(one => one.Id != room))
            {
                Objections.Add(new PlanObjection(ObjectionKind.Input, extra.Id, "extra-room",
                    "The extra '" + extra.Id + "' names the room '" + room + "', which the premises do not have."));
            }
        }

        foreach (JobAlternative alternative in job.Alternatives)
        {
            Objections.AddRange(alternative.Misfits(job));
        }
    }

    // As much as one labour task takes: far more than a room of 500 m³ has walls.
    private void FitRooms()
    {
        foreach (IGrouping<string, Procedure> room in Planned.GroupBy(procedure => procedure.Fixture.Room).ToList())
        {
            double area = room.Sum(procedure => procedure.SquareMeters);
            if (!LabourTask.Areas.Contains(area))
            {
                Objections.Add(new PlanObjection(
                    ObjectionKind.Input, room.Key, "area",
                    "The fixtures in the room '" + room.Key + "' have " + Measure.Area.Format(area)
                        + " to be coated; allowed in one room: at most "
                        + Measure.Area.Format(LabourTask.Areas.Maximum)
                        + ". They are left out: divide them into rooms, or into several jobs."));
                Planned.RemoveAll(procedure => procedure.Fixture.Room == room.Key);
            }
        }
    }

    private void Judge(FixtureJob fixture)
    {
        if (!job.Premises.Rooms.Any(room => room.Id == fixture.Room))
        {
            Objections.Add(new PlanObjection(
                ObjectionKind.Input, fixture.Id, "room",
                fixture.Name + " stands in the room '" + fixture.Room + "', which the premises do not have. Its rooms are " + string.Join(", ", job.Premises.Rooms.Select(room => room.Id)) + "."));
            return;
        }

        List<PlanObjection> refused = [];
        if (Stage.Try(refused, fixture.Id, "procedure", () => new Procedure(fixture, job.Shop)) is not Procedure procedure)
        {
            Objections.Add(new PlanObjection(
                ObjectionKind.FixtureLeftOut, fixture.Id, "range", fixture.Name + " is left out. " + refused[0].Sentence(DisplayUnits.Si)));
            return;
        }

        Procedures.Add(procedure);
        if (fixture.Survey.YearBuilt > job.Start.Year)
        {
            Objections.Add(new PlanObjection(
                ObjectionKind.Input, fixture.Id, "year",
                "YearBuilt of " + fixture.Name + " is " + Figures.Fixed(fixture.Survey.YearBuilt.Value, 0) + ", after the start of the work in " + Figures.Fixed(job.Start.Year, 0)
                    + ": lead and asbestos are judged by it. Leave it out when it is not known."));
        }

        PlanObjection? leftOut = !procedure.IsPlanned ? LeftOut(string.Empty, system => string.Join(" ", WhyNot(procedure, system)))
            : WhatHoldsForAll(fixture) is string shared ? LeftOut("shared", _ => shared)
            : Clash(procedure) is string clash ? LeftOut("identity", _ => clash)
            : null;
        if (leftOut is null)
        {
            Planned.Add(procedure);
        }
        else
        {
            Objections.Add(leftOut);
        }

        if (procedure.Hiding is { IsShort: true } hiding)
        {
            Objections.Add(new PlanObjection(
                ObjectionKind.Hiding, fixture.Id, string.Empty, fixture.Name + ": the old colour shows through the coats planned: " + hiding + ". Take more coats, or a primer tinted towards the topcoat."));
        }

        PlanObjection LeftOut(string code, Func<DisplayUnits, string> why) => new(
            ObjectionKind.FixtureLeftOut, fixture.Id, code, system => fixture.Name + " is left out: " + why(system));
    }

    // Things are bought, mixed and recorded by their identity.
    private string? Clash(Procedure procedure) =>
        procedure.System.Layers.Select(layer => layer.Product).FirstOrDefault(product => Planned.Exists(other =>
            other.System.Layers.Any(one => one.Product.Id == product.Id && !one.Product.Equals(product)))) is CoatingProduct twin
        ? "another product than " + twin.Name + " has the identity " + twin.Id + " on another fixture; give each its own." : null;

    private string? WhatHoldsForAll(FixtureJob fixture)
    {
        foreach ((string whole, Func<Survey, bool> isFound, string what) in Shared)
        {
            if (job.Fixtures.FirstOrDefault(one => isFound(one.Survey) && (whole != "room" || one.Room == fixture.Room)) is FixtureJob found)
            {
                return what + ", as the survey of " + found.Name + " says; that holds for the whole " + whole + ".";
            }
        }

        return null;
    }

    private static IEnumerable<string> WhyNot(Procedure procedure, DisplayUnits system) => procedure.Verdict.MayBePlanned
        ? procedure.SystemObjections.Concat(procedure.Refusals)
        : procedure.Verdict.Reasons.Where(reason => reason.Effect == Suitability.NotSuitable).Select(reason => reason.SentenceIn(system) + "; " + reason.Remedy + ".");

    private void StudyAir(WorkList work)
    {
        foreach (string room in work.Courses.Keys)
        {
            if (Stage.Try(Objections, room, "air", () => Studied(room)) is RoomAirPlan air)
            {
                Air.Add(air);
            }
        }
    }

    private RoomAirPlan Studied(string room)
    {
        RoomAirPlan air = new(Schedule!, room);
        AddUnlessKept(room, "peak", air.Study?.FlammableLimit);
        AddUnlessKept(room, "steady", air.FlammableAirflow);
        return air;
    }

    private void AddUnlessKept(string room, string code, LimitComparison? comparison)
    {
        if (comparison is { Outcome: not ComparisonOutcome.Within })
        {
            Objections.Add(new PlanObjection(ObjectionKind.Flammability, room, code, comparison));
        }
    }

    private void PriceAndCompare()
    {
        if (Objections.Exists(objection => objection.Kind == ObjectionKind.Labour))
        {
            return;
        }

        Costs = Stage.Try(Objections, job.Id, "price", () =>
            new JobCosts(Schedule!, job.Stock, [.. job.Extras.Where(IsPlanned)], job.Terms));
        foreach (PriceGap gap in Costs?.Price.Gaps ?? [])
        {
            Objections.Add(new PlanObjection(ObjectionKind.Price, gap.Id, string.Empty, "No price: " + Sentences.Closed(gap.ToString())));
        }

        Objections.AddRange(Stage.Try(Objections, job.Id, "payments", () => PaymentsThatDoNotFit(Costs?.Price)) ?? []);
        if (job.Replacement is ReplacementOffer offer && !Objections.Exists(objection => objection.Kind == ObjectionKind.Order) && Costs?.Price.Total is decimal total && total > 0)
        {
            Comparison = Stage.Try(Objections, job.Id, "comparison", () => Compare(offer, total));
        }
    }

    // What is added for a fixture goes with it when it is left out.
    private bool IsPlanned(ExtraItem extra) => extra.Fixture is null || Planned.Exists(procedure => procedure.Fixture.Id == extra.Fixture);

    private List<PlanObjection> PaymentsThatDoNotFit(PriceEstimate? price)
    {
        if (price?.Total is not decimal total)
        {
            return [];
        }

        PaymentPlan payments = new(price.Book.Currency, total, price.Book.CashStep, job.Terms.Payments);
        List<PlanObjection> objections = [.. payments.Faults.GroupBy(fault => fault.Stage, StringComparer.Ordinal)
            .Select(faults => new PlanObjection(ObjectionKind.Payment, faults.Key, string.Empty,
                string.Join(" ", faults.Select(fault => fault.Sentence))))];
        if (job.Shop.DepositLimit is DepositLimit limit && payments.Payments.Count > 0
            && payments.Against(limit) is { Outcome: not ComparisonOutcome.Within } beyond)
        {
            objections.Add(new PlanObjection(ObjectionKind.Payment, job.Id, "deposit", beyond));
        }

        return objections;
    }

    private RefinishOrReplace Compare(ReplacementOffer offer, decimal total)
    {
        int days = HandedOver.DaysOutOfUse ?? 0;
        return new RefinishOrReplace(
            new RenewalOption
            {
                Name = "refinishing",
                Parts = [new CostPart("refinishing, as quoted", total)],
                LifeYears = offer.RefinishLifeYears,
                DaysOutOfUse = days,
                YearlyCost = offer.RefinishYearlyCost,
            },
            offer.Replacement, offer.DiscountRate, job.Shop.Prices.Currency, offer.CostPerDayOutOfUse);
    }

    private void RecordsThatEnd()
    {
        foreach (FixtureHandover fixture in Handover?.Fixtures ?? [])
        {
            if (fixture.WaterFrom is null || fixture.FullCure is null)
            {
                Objections.Add(new PlanObjection(
                    ObjectionKind.CureTemperature, fixture.Procedure.Fixture.Id, "record",
                    "The temperature record of the room ends, or stays below what the product needs, before " + fixture.Procedure.Fixture.Name + " has hardened. Give temperatures for a longer time, or heat the room."));
            }
        }

        if (Objections.Exists(objection => objection.Kind != ObjectionKind.FixtureLeftOut))
        {
            Handover = null;
        }
    }
}
