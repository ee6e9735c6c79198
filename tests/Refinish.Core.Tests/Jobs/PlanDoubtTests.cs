using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class PlanDoubtTests
{
    [Fact]
    [Evidence(Basis.Independent, "three invented jobs and the sample's two scenarios, measured as such fixtures are: no doubt about any of them")]
    public void Ordinary_jobs_are_in_no_doubt()
    {
        Job[] jobs = [InventedJobs.OccupiedHouse(), InventedJobs.ColdHouse(), InventedJobs.Rental(), Scenario.Guesthouse(),
            Scenario.OneBathroom()];
        Assert.All(jobs, job => Assert.Empty(job.Plan().Doubts.Select(doubt => doubt.ToString())));
    }

    [Fact]
    [Evidence(Basis.Contract, "a surround of 30, 60, 30 in by 60 in typed in centimetres is priced as before, with one doubt, and with one condition before the price is told")]
    public void A_surround_in_the_wrong_unit_is_told_before_its_price()
    {
        JobPlan plan = Cold(new TiledSurround(Tapes.Alcove(1 / 2.54))).Plan();
        Doubt doubt = Assert.Single(plan.Doubts);
        Assert.Equal("surround/unit", doubt.Id);
        Assert.Equal(ReadingSlip.InchesAsCentimetres, doubt.Slips[0].Slip);
        Assert.True(plan.IsPossible);
        Assert.NotNull(plan.Price!.Total);
        PlanCondition condition = Assert.Single(plan.Conditions, one => one.Id == "surround/measure-again");
        Assert.Equal(doubt.Sentence(DisplayUnits.UsCustomary), condition.Sentence(DisplayUnits.UsCustomary));
        Assert.StartsWith("measure again before the price is told", condition.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain(Cold(InventedJobs.Surround).Plan().Conditions, one =>
            one.Id.EndsWith("/measure-again", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Independent, "a back wall of 50 in on a tub of 60 in, by hand 10 in short; side walls of 20 in on a tub 30 in wide; walls that go round something else")]
    public void Walls_that_miss_their_tub_are_told()
    {
        Doubt back = Assert.Single(Cold(Walls(30, 50, 30)).Plan().Doubts);
        Assert.Equal("surround/walls/Walls[1].Length", back.Id);
        Numbers.Close(50 * 0.0254, back.Value!.Value);
        Numbers.Close((60 * 0.0254) - 0.05, back.Least!.Value);
        Assert.Equal("length of wall 2 beside the length of tub is 1270 mm; usual is 1474 mm to 1674 mm", back.Sentence(DisplayUnits.Si));
        Assert.Equal(
            ["surround/walls/Walls[0].Length", "surround/walls/Walls[2].Length"],
                Cold(Walls(20, 60, 20)).Plan().Doubts.Select(doubt => doubt.Id));

        // Listed with the back wall first, longer sides, a shelf at the end: all of it is met.
        Assert.Empty(Cold(Walls(60, 30, 30)).Plan().Doubts);
        Assert.Empty(Cold(Walls(36, 63, 40)).Plan().Doubts);

        // Round a pan of 36 by 40 in, walls of 32 and 84 in fit nowhere: they go round something that is not in the job.
        FixtureJob pan = Job("pan", new ShowerPan(Tapes.Pan()), FixtureMaterial.Gelcoat);
        Assert.Empty(In(pan, Job("walls", Walls(32, 84, 32), FixtureMaterial.CeramicTile)).Plan().Doubts);
        Assert.Equal("walls/walls/Walls[1].Length", Assert.Single(In(pan,
            Job("walls", Walls(40, 63, 40), FixtureMaterial.CeramicTile)).Plan().Doubts).Id);
    }

    [Fact]
    [Evidence(Basis.Independent, "defects against the tub of 27.7 ft² and 60 in, by hand: peeling over 30 ft², a crack of 2.5 m, caulk of 40 m, grout and tiles beyond what there are")]
    public void Defects_larger_than_their_fixture_are_told()
    {
        Doubt peeling = Of(new PeelingCoat(Area.FromSquareFeet(30), null));
        Assert.Equal("f/defect/PeelingCoat", peeling.Id);
        Numbers.Near(27.7, Area.FromSquareMeters(peeling.Greatest!.Value).SquareFeet, 0.05);
        Assert.Equal("f/defect/Crack", Of(new Crack(Length.FromMeters(2.5), Length.FromMillimeters(1), Length.FromMillimeters(1),
            false)).Id);
        Assert.Equal("f/defect/SiliconeResidue", Of(new SiliconeResidue(Length.FromMeters(40))).Id);

        // Each fits, together they do not.
        Doubt[] together = [.. With(InventedJobs.Tub, FixtureMaterial.EnamelledSteel, new PeelingCoat(Area.FromSquareFeet(20), null),
            new Pitting(Area.FromSquareFeet(15), Length.FromMillimeters(0.5), Ratio.FromPercent(10))).Plan().Doubts];
        Assert.Equal("f/defect/Defects", Assert.Single(together).Id);
        Numbers.Close(35, Area.FromSquareMeters(together[0].Value!.Value).SquareFeet);

        // 50 ft² of 4 1/4 in tile with joints of 1/8 in: 144 × 50 / 4.375² = 376.2, so 377 begun; joints (4.25 + 4.25 + 0.125) / 4.375²
        // in per in².
        TiledSurround walls = new(Tapes.Alcove());
        Doubt tiles = Assert.Single(With(walls, FixtureMaterial.CeramicTile, new LooseTiles(400)).Plan().Doubts);
        Assert.Equal(377, tiles.Greatest);
        Doubt grout = Assert.Single(With(walls, FixtureMaterial.CeramicTile, new GroutFailure(Length.FromMeters(90))).Plan().Doubts);
        Numbers.Close(50 * 144 * 8.625 / (4.375 * 4.375) * 0.0254, grout.Greatest!.Value);
        Assert.Equal(
            "a floor that gives, on a fixture without a floor is unusual",
            Assert.Single(With(walls, FixtureMaterial.CeramicTile,
                new FlexingFloor(Length.FromMillimeters(3))).Plan().Doubts).Sentence(DisplayUnits.Si));

        // What is smaller than the part that the entry speaks of is in no doubt; against a part it is.
        Job part = With(InventedJobs.Tub, FixtureMaterial.EnamelledSteel, new PeelingCoat(Area.FromSquareFeet(8), null));
        Assert.Empty(part.Plan().Doubts);
        Job floor = part with { Fixtures = [part.Fixtures[0] with { Zones = [FixtureZoneKind.Floor] }] };
        Assert.Equal("f/defect/PeelingCoat", Assert.Single(floor.Plan().Doubts).Id);

        static Doubt Of(Defect defect) => Assert.Single(With(InventedJobs.Tub, FixtureMaterial.EnamelledSteel, defect).Plan().Doubts);
    }

    [Fact]
    [Evidence(Basis.Independent, "shares by hand: 60 % and 50 % are 110 %; walls entered without the rest leave the floor out; two tubs alike in halves are two whole tubs")]
    public void Parts_that_are_not_one_whole_are_told()
    {
        Doubt over = Assert.Single(Parts(Share("a", 60), Share("b", 50)).Plan().Doubts);
        Assert.Equal(DoubtKind.Parts, over.Kind);
        Numbers.Close(1.1, over.Value!.Value);
        Assert.Contains("the entries a, b hold together is 110 %", over.Sentence(DisplayUnits.Si), StringComparison.Ordinal);
        FixtureJob tub = Job("a", InventedJobs.Tub, FixtureMaterial.EnamelledSteel);
        Doubt left = Assert.Single(Parts(tub with { Zones = [FixtureZoneKind.Wall] },
            tub with { Id = "b", Zones = [FixtureZoneKind.Rim, FixtureZoneKind.Apron] }).Plan().Doubts);
        Assert.Equal("a/parts/Floor", left.Id);
        Assert.Equal(0, left.Value);
        Assert.Empty(Parts(Share("a", 60), Share("b", 40)).Plan().Doubts);
        Assert.DoesNotContain(
            Parts(Share("a", 50), Share("b", 50), Share("c", 50), Share("d", 50)).Plan().Doubts, doubt => doubt.Kind == DoubtKind.Parts);
        Assert.Empty(Parts(Share("a", 30)).Plan().Doubts);

        // A reading of a fixture in parts is doubted once.
        RecessedBathtub deep = new(Tapes.FiveFootTub() with { OverallWidth = Length.FromInches(49) });
        FixtureJob half = Job("a", deep, FixtureMaterial.EnamelledSteel) with { Share = Ratio.FromPercent(50) };
        Assert.Equal(["a/reading/OverallWidth", "a/proportion/OverallWidth/RimWidth"],
            Parts(half, half with { Id = "b" }).Plan().Doubts.Select(doubt => doubt.Id));

        static FixtureJob Share(string id, double percent) =>
            Job(id, InventedJobs.Tub, FixtureMaterial.EnamelledSteel) with { Share = Ratio.FromPercent(percent) };

        static Job Parts(params FixtureJob[] parts) => In(parts);
    }

    [Fact]
    [Evidence(Basis.Independent, "a room of 8 by 5 ft holds a tub of 60 in and none of 72; two counters of 8 by 2 ft and a tub are more than its floor; feet typed as metres")]
    public void A_room_too_small_is_told()
    {
        Job wide = In(Job("tub", InventedJobs.Tub, FixtureMaterial.EnamelledSteel));
        Assert.Equal("tub/room/Length", Assert.Single(Sized(wide, 1.4, 1.2, 2.4).Plan().Doubts).Id);
        Doubt height = Assert.Single(Sized(wide, 8, 5, 8).Plan().Doubts);
        Assert.Equal("bath/reading/Room.Height", height.Id);
        LikelySlip slip = height.Slips[0];
        Assert.Equal(ReadingSlip.FeetAsMetres, slip.Slip);
        Numbers.Close(8 * 0.3048, slip.Meant.Meters);
        Assert.Contains(Sized(wide, 8, 5, 8).Plan().Conditions, condition => condition.Id == "bath/measure-again");

        FixtureJob counter = Job("c1", new FlatPanel(Tapes.Counter()), FixtureMaterial.Laminate);
        Doubt floor = Assert.Single(In(counter, counter with { Id = "c2" },
            Job("tub", InventedJobs.Tub, FixtureMaterial.EnamelledSteel)).Plan().Doubts);
        Assert.Equal("bath/room/Floor", floor.Id);
        Numbers.Close(((2 * 96 * 25.5) + (60 * 30)) / 144, Area.FromSquareMeters(floor.Value!.Value).SquareFeet);

        Assert.Equal("walls/room/Walls.Height", Assert.Single(In(Job("walls", Walls(30, 60, 30, 110),
            FixtureMaterial.CeramicTile)).Plan().Doubts).Id);
    }

    [Fact]
    [Evidence(Basis.Independent, "a rim of 20 by 17 in in a vanity top 17.5 in deep; a cut-out of 24 in for a rim of 20 in, through which the sink would fall")]
    public void A_sink_that_does_not_fit_its_counter_is_told()
    {
        FixtureJob sink = Job("sink", new CounterSink(Tapes.DropIn()), FixtureMaterial.VitreousChina);
        Assert.Equal("sink/cutout/Outline.Width", Assert.Single(In(sink, Top(48, 17.5, 17, 14)).Plan().Doubts).Id);
        Doubt through = Assert.Single(In(sink, Top(48, 22, 24, 16)).Plan().Doubts);
        Assert.Equal("sink/cutout/CutOuts", through.Id);
        Numbers.Close(20, Length.FromMeters(through.Greatest!.Value).Inches);
        Assert.Empty(In(sink, Top(48, 22, 18.5, 15.5)).Plan().Doubts);
        Assert.Empty(In(sink with { Fixture = new CounterSink(Tapes.Vessel()) }, Top(48, 22, 24, 16)).Plan().Doubts);

        static FixtureJob Top(double length, double depth, double hole, double across) => Job(
            "top",
            new FlatPanel(Tapes.Counter() with
            {
                Length = Length.FromInches(length), Width = Length.FromInches(depth), ExposedEdge = Length.FromInches(length),
                    BacksplashLength = Length.FromInches(length),
                CutOuts = [new RectangularOpening(Length.FromInches(hole), Length.FromInches(across))],
            }),
            FixtureMaterial.CulturedMarble);
    }

    [Fact]
    [Evidence(Basis.Contract, "tiled walls of cast iron and tubs of laminate are unusual, a counter of glass fibre is not; what is unknown is left to the verdict")]
    public void An_unusual_material_is_told()
    {
        Doubt iron = Assert.Single(With(new TiledSurround(Tapes.Alcove()), FixtureMaterial.EnamelledCastIron).Plan().Doubts);
        Assert.Equal("f/material", iron.Id);
        Assert.Equal("a tiled surround of enamelled cast iron is unusual", iron.Sentence(DisplayUnits.Si));
        Assert.Equal("an oval tub of high-pressure laminate is unusual",
            Assert.Single(With(new OvalTub(Tapes.Oval()), FixtureMaterial.Laminate).Plan().Doubts).Sentence(DisplayUnits.Si));
        Assert.Empty(With(new FlatPanel(Tapes.Counter()), FixtureMaterial.Gelcoat).Plan().Doubts);
        Assert.Empty(With(new TiledSurround(Tapes.Alcove()), FixtureMaterial.Unknown).Plan().Doubts);
    }

    [Fact]
    [Evidence(Basis.Identity, "random jobs: every number in doubt lies outside its limits, every slip named lies inside, sentences are there in both units, and no doubt is an objection")]
    public void Doubts_of_random_jobs_hold_their_own_numbers()
    {
        int seen = 0;
        for (int seed = 1; seed <= 60; seed++)
        {
            Job job = RandomJobs.Wild(seed);
            foreach (Doubt doubt in job.Plan().Doubts)
            {
                seen++;
                Assert.True(doubt.Value is not double value || value < doubt.Least || value > doubt.Greatest, doubt.ToString());
                Assert.All(doubt.Slips, slip => Assert.True(slip.Meant.Meters >= doubt.Least * (1 - 1e-9)
                    && slip.Meant.Meters <= doubt.Greatest * (1 + 1e-9), doubt.ToString()));
                Assert.True(doubt.Sentence(DisplayUnits.UsCustomary).Length > 20 && doubt.Remedy[doubt.Remedy.Length - 1] == '.');
                Assert.True(job.Fixtures.Any(one => one.Id == doubt.About) || job.Premises.Rooms.Any(one => one.Id == doubt.About),
                    doubt.Id);
            }
        }

        Assert.True(seen > 20, "few random jobs are in doubt");
    }

    [Fact]
    [Evidence(Basis.Contract, "a fixture of a caller's own type, and one in a room that is not there, are looked at as far as they can be, and nothing is thrown")]
    public void Strange_fixtures_are_looked_at_as_far_as_they_can_be()
    {
        GrownFixture own = new(InventedJobs.Tub, 1.2);
        Assert.Empty(With(own, FixtureMaterial.Laminate).Plan().Doubts);
        Assert.Equal("f/defect/PeelingCoat", Assert.Single(With(own, FixtureMaterial.Acrylic,
            new PeelingCoat(Area.FromSquareFeet(60), null)).Plan().Doubts).Id);
        Job lost = In(Job("f", new TiledSurround(Tapes.Alcove(1 / 2.54)), FixtureMaterial.CeramicTile) with { Room = "attic" });
        Assert.Equal("f/unit", Assert.Single(lost.Plan().Doubts).Id);
    }

    private static TiledSurround Walls(double left, double back, double right, double height = 60) => new(Tapes.Alcove() with
    {
        Walls = [.. new[] { left, back, right }.Select(wall => new WallRun(Length.FromInches(wall), Length.FromInches(height)))],
    });

    private static FixtureJob Job(string id, IFixture fixture, FixtureMaterial material, params Defect[] defects) =>
        new() { Id = id, Room = "bath", Fixture = fixture, Survey = new Survey { Material = material, Defects = defects,
            YearBuilt = 1995 } };

    private static Job In(params FixtureJob[] fixtures) => new()
    {
        Id = "job", Shop = InventedJobs.Shop, Start = InventedJobs.Monday,
            Premises = new Premises { Id = "house", Rooms = [InventedJobs.Bath("bath", 22, 20)] }, Fixtures = fixtures,
    };

    private static Job With(IFixture fixture, FixtureMaterial material, params Defect[] defects) =>
        In(Job("f", fixture, material, defects));

    private static Job Sized(Job job, double length, double width, double height) => job with
    {
        Premises = job.Premises with
        {
            Rooms = [job.Premises.Rooms[0] with { Room = new Room { Length = Length.FromMeters(length), Width = Length.FromMeters(width), Height = Length.FromMeters(height) } }],
        },
    };

    // The cold house with other walls: a tub of 60 by 30 in stands beside them.
    private static Job Cold(TiledSurround walls)
    {
        Job job = InventedJobs.ColdHouse();
        return job with { Fixtures = [.. job.Fixtures.Select(fixture => fixture.Id == "surround" ? fixture with { Fixture = walls }
            : fixture)] };
    }
}
