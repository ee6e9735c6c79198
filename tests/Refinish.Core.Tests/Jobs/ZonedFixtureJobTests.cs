using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>A fixture without a type of its own, through the whole door.</summary>
public class ZonedFixtureJobTests
{
    private static readonly ZonedFixture Ceiling = new(
        "ceiling over the shower (invented)", [new ZonePart("ceiling", FixtureZoneKind.Outside, Area.FromSquareMeters(1.3), Angle.FromDegrees(180))], Length.FromMeters(4.6));

    [Fact]
    [Evidence(Basis.Identity, "a tub by its tape and a fixture of the same zones: the same demand of every coat, the same hours, the same price")]
    public void A_fixture_of_zones_is_planned_like_the_one_it_was_taken_from()
    {
        Job job = InventedJobs.OccupiedHouse();
        FixtureJob tub = job.Fixtures.First(entry => entry.Fixture is RecessedBathtub);
        ZonedFixture zones = new(
            "tub by zones", tub.Fixture.Zones.Select(zone => new ZonePart(zone.Kind.ToString(), zone.Kind, zone.Area, zone.SlopeFromHorizontal)), tub.Fixture.MaskedEdge)
        {
            WaterCapacity = tub.Fixture.WaterCapacity,
        };
        JobPlan one = (job with { Fixtures = [tub] }).Plan();
        JobPlan other = (job with { Fixtures = [tub with { Fixture = zones }] }).Plan();
        Assert.True(one.IsPossible);
        Assert.Equal(one.Objections.Select(objection => objection.ToString()), other.Objections.Select(objection => objection.ToString()));
        Numbers.Close(one.CoatedArea.SquareMeters, other.CoatedArea.SquareMeters);
        Assert.Equal(one.Operations.Select(operation => operation.Id), other.Operations.Select(operation => operation.Id));
        Numbers.Close(one.Work!.Runs.Sum(run => run.Demand.Total.Liters), other.Work!.Runs.Sum(run => run.Demand.Total.Liters));
        Numbers.Close((double)one.Price!.Total!.Value, (double)other.Price!.Total!.Value, 1e-9);
        Assert.Equal(one.Conditions.Select(condition => condition.Id), other.Conditions.Select(condition => condition.Id));
        Assert.Empty(other.Doubts);
        Numbers.CanBeWritten(other.Planned.Single().Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "what looks down brings the caution of overhead work to everything that is done on it, and is never judged as to dripping")]
    public void A_ceiling_is_overhead_work()
    {
        JobPlan plan = PlanOf(Ceiling);
        PlannedCaution overhead = plan.Cautions.Single(caution => caution.Caution.Code == "overhead-work");
        Assert.Equal(["shower"], overhead.Fixtures);
        Refinish.Jobs.Operation[] own = [.. plan.Operations.Where(operation => operation.Fixtures.Contains("shower") && operation.Kind is not (WorkKind.SetUp or WorkKind.Inspect or WorkKind.CleanGun))];
        Assert.True(own.Length > 6);
        Assert.All(own, operation => Assert.Contains(operation.Id, overhead.Operations));
        PlanCondition[] drips = [.. plan.Conditions.Where(condition => condition.Id == condition.About + "/drip")];
        Assert.Equal(plan.Work!.Runs.Select(run => run.Id), drips.Select(condition => condition.About));
        Assert.All(drips, condition => Assert.EndsWith("cannot be judged", condition.Sentence(DisplayUnits.Si), StringComparison.Ordinal));
        Assert.DoesNotContain(plan.Conditions, condition => condition.Id == condition.About + "/sag");
    }

    [Theory]
    [InlineData(90, false)]
    [InlineData(90.5, false)]
    [InlineData(92, true)]
    [InlineData(135, true)]
    [Evidence(Basis.Contract, "overhead by slope alone: what is upright within a degree is a wall")]
    public void Slope_alone_tells(double degrees, bool overhead)
    {
        JobPlan plan = PlanOf(new ZonedFixture("panel", [new ZonePart("panel", FixtureZoneKind.Outside, Area.FromSquareMeters(1.3), Angle.FromDegrees(degrees))], Length.FromMeters(4.6)));
        Assert.Equal(overhead, plan.Cautions.Any(caution => caution.Caution.Code == "overhead-work"));
        Assert.Equal(overhead, plan.Conditions.Any(condition => condition.Id == condition.About + "/drip"));
    }

    [Fact]
    [Evidence(Basis.Contract, "parts of one zone do not hide each other: a soffit beside a level top has a mean slope of 90°, and hangs")]
    public void A_mean_slope_hides_nothing()
    {
        ZonedFixture shelf = new(
            "shelf (invented)",
            [
                new ZonePart("top", FixtureZoneKind.Top, Area.FromSquareMeters(0.4), Angle.Zero),
                new ZonePart("underside", FixtureZoneKind.Top, Area.FromSquareMeters(0.4), Angle.FromDegrees(180)),
            ],
            Length.FromMeters(2));
        Numbers.Close(90, shelf.Zones.Single().SlopeFromHorizontal.Degrees);
        Assert.Contains(PlanOf(shelf).Conditions, condition => condition.Id == condition.About + "/drip");
        Assert.DoesNotContain(PlanOf(shelf, FixtureZoneKind.Floor).Conditions, condition => condition.Id == condition.About + "/drip");
    }

    [Fact]
    [Evidence(Basis.Independent, "the drive along a surface is ρ g sin α: at 120° a film creeps as at 60°, at 180° not at all; dripping is never judged")]
    public void Flow_under_a_slope_creeps_and_may_drip()
    {
        CoatRun run = Flowing();
        IReadOnlyList<LimitComparison> upright = run.Flow(Angle.FromDegrees(60));
        IReadOnlyList<LimitComparison> under = run.Flow(Angle.FromDegrees(120));
        Assert.Equal(2, upright.Count);
        Assert.Equal(3, under.Count);
        Numbers.Close(upright[1].Limit!.Value.Si, under[1].Limit!.Value.Si, 1e-12);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, under[2].Outcome);
        Assert.Contains("dripping", under[2].Subject, StringComparison.Ordinal);
        IReadOnlyList<LimitComparison> ceiling = run.Flow(Angle.FromDegrees(180));
        Assert.Equal(ComparisonOutcome.CannotBeJudged, ceiling[ceiling.Count - 1].Outcome);
        Numbers.Refuses("slope", () => run.Flow(Angle.FromDegrees(181)));
        Numbers.Refuses("slope", () => run.Flow(Angle.FromDegrees(-1)));
    }

    [Fact]
    [Evidence(Basis.Contract, "the outside of a vessel sink hangs and may drip, but nobody stands under it")]
    public void The_outside_of_a_sink_is_not_overhead()
    {
        JobPlan plan = PlanOf(new CounterSink(Refinish.Tests.Fixtures.Tapes.Vessel()));
        Assert.Contains(plan.Conditions, condition => condition.Id == condition.About + "/drip");
        Assert.DoesNotContain(plan.Cautions, caution => caution.Caution.Code == "overhead-work");
    }

    [Theory]
    [InlineData(0, 3, 0)]
    [InlineData(0, 32.3, 1)]
    [InlineData(90, 20, 0)]
    [InlineData(90, 215, 1)]
    [Evidence(Basis.Contract, "an area in square feet typed as square metres is larger than the room: 3 m² of floor and 20 m² of walls are 32.3 and 215 ft²")]
    public void An_area_larger_than_its_room_is_doubted(double degrees, double area, int doubts)
    {
        JobPlan plan = PlanOf(new ZonedFixture("panel", [new ZonePart("panel", FixtureZoneKind.Top, Area.FromSquareMeters(area), Angle.FromDegrees(degrees))], Length.FromMeters(4.6)));
        Assert.Equal(doubts, plan.Doubts.Count);
        Assert.All(plan.Doubts, doubt => Assert.Equal((DoubtKind.Room, "Parts[0].Area"), (doubt.Kind, doubt.Reading)));
    }

    [Fact]
    [Evidence(Basis.Contract, "nobody looks for a drain in what holds no water, nor for caulk where no edge is taped")]
    public void Clearing_follows_from_what_the_fixture_is()
    {
        Assert.Contains("drain", Clearing(Ceiling with { WaterCapacity = Volume.FromLiters(20) }), StringComparison.Ordinal);
        Assert.DoesNotContain("drain", Clearing(Ceiling), StringComparison.Ordinal);
        Assert.Contains("caulk", Clearing(Ceiling), StringComparison.Ordinal);
        Assert.DoesNotContain("caulk", Clearing(new ZonedFixture("door", Ceiling.Parts, Length.Zero)), StringComparison.Ordinal);

        static string Clearing(ZonedFixture fixture) => PlanOf(fixture).Operations.Single(operation => operation.Kind == WorkKind.Clear).Instruction;
    }

    private static JobPlan PlanOf(IFixture fixture, FixtureZoneKind? beside = null)
    {
        Job job = InventedJobs.OccupiedHouse();
        FixtureJob entry = job.Fixtures[0] with
        {
            Id = "shower", Fixture = fixture, Options = [], Zones = null, Survey = new Survey { Material = FixtureMaterial.Gelcoat, Defects = [], YearBuilt = 1995 },
        };
        if (beside is FixtureZoneKind kind && fixture is ZonedFixture own)
        {
            // Only the part that looks up, in a zone of its own.
            ZonedFixture mixed = new(
                own.Name, [new ZonePart("floor", kind, Area.FromSquareMeters(0.5), Angle.Zero), .. own.Parts], own.MaskedEdge);
            entry = entry with { Fixture = mixed, Zones = [kind] };
        }

        return (job with { Fixtures = [entry] }).Plan();
    }

    private static CoatRun Flowing()
    {
        CoatingProduct product = GenericCatalogue.AcrylicUrethaneTopcoat with
        {
            Flow = new FlowFigures { Fluidity = 200, SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28), Source = Source.Invented("for a test") },
        };
        return new CoatRun(
            "shower/coat/1", [new CoatedSurface("shower", Area.FromSquareMeters(1.3))], new CoatingLayer(product, Length.FromMicrometers(30), 1),
            Shop.Generic.Gun, ApplicationLosses.Generic, CupRules.Generic,
            new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(48)), Temperature.FromDegreesCelsius(20));
    }
}
