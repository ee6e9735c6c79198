using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Each kind of objection by a small job: its id, what it is about, how far off, what helps.</summary>
public class ObjectionTests
{
    private static readonly Job Job = InventedJobs.OccupiedHouse();

    private static readonly Dictionary<ObjectionKind, (Func<Job> Make, string Id, string About, string Says)> Small = new()
    {
        [ObjectionKind.Input] = (() => With(fixture => fixture with { Room = "attic" }), "Input/tub/room", "tub", "Its rooms are bath."),
        [ObjectionKind.FixtureLeftOut] = (
            () => With(fixture => fixture with { Survey = fixture.Survey with { Defects = [new Perforation(Length.FromMillimeters(12))] } }),
            "FixtureLeftOut/tub", "tub", "structural repair first"),
        [ObjectionKind.Payment] = (
            () => Job with
            {
                Terms = new QuoteTerms
                {
                    Payments = [PaymentStage.OfAmount("deposit", PaymentDue.OnAcceptance, 99_999m), PaymentStage.OfRest("rest", PaymentDue.OnCompletion)],
                },
            },
            "Payment/deposit", "deposit", "99999 USD; allowed: at most "),
        [ObjectionKind.Order] = (() => Job with { Changes = [OperationChange.Move("bath/mask", "bath/set-up")] },
            "Order/bath/mask/bath/clear", "bath/mask", "Move it behind them."),
        [ObjectionKind.SprayWindow] = (
            () => Climate(new Refinish.Climate.MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(82)), 22),
                "SprayWindow/bath/epoxy-primer/humidity", "bath/epoxy-primer", "82 %; limit at most 80 %; 2 % beyond"),
        [ObjectionKind.CureTemperature] = (
            () => Climate(Job.Premises.Rooms[0].Climate.Air, 10, FixtureMaterial.SolidSurface),
                "CureTemperature/bath/epoxy-primer/cure-cold", "bath/epoxy-primer",
                    "10 °C; limit at least 13 °C; 3 K beyond. Warm to 13 °C"),
        [ObjectionKind.Batch] = (
            () => Job with { Shop = Job.Shop with { Cups = Job.Shop.Cups with { PotLifeShare = Ratio.FromPercent(6) } } },
                "Batch/bath/coat/1/epoxy-primer", "bath/coat/1/epoxy-primer", "No time is left to spray"),
        [ObjectionKind.Hiding] = (ShowsThrough, "Hiding/tub", "tub", "Take more coats, or a primer tinted towards the topcoat."),
        [ObjectionKind.Voc] = (() => Job with { Shop = Job.Shop with { Limits = LimitSets.Default with { Voc = [VocLimits.SouthCoast1113] } } }, "Voc/epoxy-primer",
            "epoxy-primer", "limit at most"),
        [ObjectionKind.StandBy] = (() => Job with { Shop = Job.Shop with { Crew = [new Worker { Id = "ada" }] } }, "StandBy/ada", "ada",
            "Bring a second person"),
        [ObjectionKind.Schedule] = (() => Job with { Days = [new DayRequest([new DateTime(2027, 3, 3)], ["bath/paint"])] },
            "Schedule/bath/paint/request", "bath/paint", "which is not in the plan"),
        [ObjectionKind.Labour] = (
            () => Job with { Shop = Job.Shop with { Labour = [.. LabourStandards.Generic.Where(standard =>
                standard.Work != WorkKind.Demask)] } }, "Labour/tub/demask", "tub",
                    "There is no labour standard for the kind of work Demask"),
        [ObjectionKind.Flammability] = (NoFan, "Flammability/bath/peak", "bath", "lower flammable limit"),
        [ObjectionKind.Price] = (
            () => Job with { Shop = Job.Shop with { Prices = Job.Shop.Prices with { Materials = [.. Job.Shop.Prices.Materials.Where(price =>
                price.Item != "epoxy-filler")] } } },
            "Price/material/epoxy-filler", "material/epoxy-filler", "no price of it in the price book"),
        [ObjectionKind.OutOfRange] = (
            () => Job with
            {
                Fixtures = [Job.Fixtures[0] with { Fixture = new GrownFixture(Job.Fixtures[0].Fixture, 300), Options = [] }],
                Shop = Job.Shop with { Gun = Job.Shop.Gun with { FluidRate = VolumeFlow.FromMillilitersPerMinute(0.1) } },
            },
            "OutOfRange/occupied/work", "occupied", "allowed: "),
    };

    public static TheoryData<ObjectionKind> Kinds => [.. Enum.GetValues<ObjectionKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    [Evidence(Basis.Contract, "every kind of objection is reached by a job that differs in one thing from one without any; it says what "
        + "it is about, how far off it is and what helps")]
    public void Every_kind_is_reached(ObjectionKind kind)
    {
        Assert.Empty(Job.Plan().Objections);
        (Func<Job> make, string id, string about, string says) = Small[kind];
        JobPlan plan = make().Plan();
        PlanObjection objection = plan.Objections.FirstOrDefault(one => one.Id == id) ?? throw new Xunit.Sdk.XunitException(id
            + " is not among " + string.Join("\n", plan.Objections.Select(one => one.Id)));
        Assert.Equal(kind, objection.Kind);
        Assert.Equal(about, objection.About);
        Assert.Contains(says, objection.ToString(), StringComparison.Ordinal);
        Assert.False(plan.IsPossible);
        Assert.Null(plan.Handover);
        Numbers.CanBeWritten(plan.Workings().AllSteps().Any() ? plan.Workings() : Job.Plan().Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "objections in US units; two jobs that differ in one reading have the same ids")]
    public void Objections_speak_the_reader_s_units_and_keep_their_ids()
    {
        JobPlan cold = Climate(Job.Premises.Rooms[0].Climate.Air, 10, FixtureMaterial.SolidSurface).Plan();
        JobPlan colder = Climate(Job.Premises.Rooms[0].Climate.Air, 9, FixtureMaterial.SolidSurface).Plan();
        Assert.Equal(cold.Objections.Select(one => one.Id), colder.Objections.Select(one => one.Id));
        PlanObjection cure = cold.Objections.Single(one => one.Id == "CureTemperature/bath/epoxy-primer/cure-cold");
        Assert.Contains("50 °F; limit at least 55.4 °F; 5.4 Δ°F beyond", cure.Sentence(DisplayUnits.UsCustomary), StringComparison.Ordinal);
        Assert.Null(cold.Schedule);
        Assert.Empty(cold.Air);
        Assert.Null(cold.Price);
    }

    [Fact]
    [Evidence(Basis.Contract, "in one room a cold fixture is objected to beside one that can be warmed, in whichever order they are "
        + "listed")]
    public void A_cold_run_is_objected_to_beside_a_warmed_one()
    {
        FixtureJob iron = new() { Id = "iron", Room = "bath", Fixture = RandomJobs.Panel(1, 1),
            Survey = new Survey { Material = FixtureMaterial.EnamelledSteel, Defects = [], YearBuilt = 1995 } };
        FixtureJob top = new() { Id = "top", Room = "bath", Fixture = RandomJobs.Panel(3, 1.6),
            Survey = new Survey { Material = FixtureMaterial.Laminate, Defects = [], YearBuilt = 1995 } };
        Job cold = Climate(Job.Premises.Rooms[0].Climate.Air, 10);
        string[] one = [.. (cold with { Fixtures = [iron, top] }).Plan().Objections.Select(objection =>
            objection.Id).Order(StringComparer.Ordinal)];
        string[] other = [.. (cold with { Fixtures = [top, iron] }).Plan().Objections.Select(objection =>
            objection.Id).Order(StringComparer.Ordinal)];
        Assert.Contains("CureTemperature/bath/epoxy-primer/cure-cold", other);
        Assert.Equal(other, one);
    }

    [Fact]
    [Evidence(Basis.Contract, "a room that never is within the product's limits in working hours gets no schedule, however the day swings")]
    public void A_room_that_is_never_warm_at_work_is_not_scheduled()
    {
        RoomClimate night = RoomClimate.Daily(
            new Refinish.Climate.MoistAir(Temperature.FromDegreesCelsius(12.25), Ratio.FromPercent(67)),
                Temperature.FromDegreesCelsius(13), TemperatureDelta.FromKelvins(4.6), TimeSpan.FromHours(23));
        JobPlan plan = Room(room => room with { Climate = night }).Plan();
        Assert.False(plan.IsPossible);
        Assert.Empty(plan.Runs);
    }

    [Fact]
    [Evidence(Basis.Contract, "two findings of one rule are two conditions with an id each: a patch that peels at 2B, and the whole old "
        + "coat at 2B")]
    public void Two_findings_of_one_rule_have_two_ids()
    {
        Survey peeling = new()
        {
            Material = FixtureMaterial.EnamelledSteel, Defects = [new PeelingCoat(Area.FromSquareMeters(0.2), AdhesionGrade.Grade2B)],
                PreviouslyRefinished = true,
            OldCoatAdhesion = AdhesionGrade.Grade2B, YearBuilt = 1995,
        };
        string[] ids = [.. With(fixture => fixture with { Survey = peeling }).Plan().Conditions.Select(condition => condition.Id)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Fact]
    [Evidence(Basis.Contract, "two people of different wages, both waiting, are priced")]
    public void Two_wages_are_priced()
    {
        Job waged = Job with { Shop = Job.Shop with { Crew = [new Worker { Id = "ada", Wage = 32m }, new Worker { Id = "ben", Wage = 24m }] } };
        JobPlan plan = waged.Plan();
        Assert.Empty(plan.Objections);
        Assert.NotNull(plan.Price!.Total);
    }

    private static Job With(Func<FixtureJob, FixtureJob> change) => Job with { Fixtures = [.. Job.Fixtures.Select(change)] };

    private static Job Room(Func<SiteRoom, SiteRoom> change) =>
        Job with { Premises = Job.Premises with { Rooms = [.. Job.Premises.Rooms.Select(change)] } };

    private static Job Climate(Refinish.Climate.MoistAir air, double surface, FixtureMaterial? material = null)
    {
        Job job = Room(room => room with { Climate = RoomClimate.Held(air, Temperature.FromDegreesCelsius(surface)) });
        return material is null ? job : job with { Fixtures = [.. job.Fixtures.Select(fixture => fixture with { Options = [],
            Survey = new Survey { Material = material, Defects = [], YearBuilt = 1995 } })] };
    }

    private static Job NoFan() => Room(room => room with { Exhaust = new Exhaust { LabelFlow = VolumeFlow.Zero } });

    private static Job ShowsThrough()
    {
        Job cold = InventedJobs.ColdHouse();
        return cold with { Shop = cold.Shop with { HidingTolerance = 0.1 } };
    }
}
