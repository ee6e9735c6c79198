using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class ZonedFixtureTests
{
    private static readonly ZoneRule[] Basin =
    [
        new(FixtureZoneKind.Floor, Angle.Zero, Angle.FromDegrees(45), Length.FromMeters(-1), Length.FromMeters(1)),
        new(FixtureZoneKind.Wall, Angle.FromDegrees(45), Angle.FromDegrees(90), Length.FromMeters(-1), Length.FromMeters(1)),
    ];

    [Fact]
    [Evidence(Basis.Independent, "by hand: 0.42 + 0.9 × 1.1 − 0.03 + 0.3 = 1.68 m²; walls (0.96 × 90° + 0.3 × 120°)/1.26 = 97.142857°")]
    public void Parts_add_up_by_zone()
    {
        ZonedFixture bench = Bench();
        Numbers.Close(1.68, bench.CoatedArea.SquareMeters);
        Assert.Equal(["Top", "Wall"], bench.Zones.Select(zone => zone.Kind.ToString()));
        Numbers.Close(1.26, bench.Zones[1].Area.SquareMeters);
        Numbers.Close(97.142857142857143, bench.Zones[1].SlopeFromHorizontal.Degrees);
        Assert.Equal(3.6, bench.MaskedEdge.Meters);
        Assert.Null(bench.WaterCapacity);
        Assert.Equal(["seat", "front", "rear"], bench.Patches.Select(patch => patch.Name));
        Numbers.Close(1.68, bench.Patches.Sum(patch => patch.CoatedArea.SquareMeters));
        Numbers.CanBeWritten((bench with { MeasuredArea = Area.FromSquareMeters(1.7), WaterCapacity = Volume.FromLiters(3) }).Workings());
        Assert.Equal("shower bench (invented): 1.68 m² coated", bench.ToString());
        Assert.Equal("shower bench (invented): 1.68 m² coated, holds 3 L", (bench with { WaterCapacity = Volume.FromLiters(3) }).ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "no mesh: squares of the parts' plain areas at their slopes, and nothing else is promised")]
    public void Without_a_mesh_areas_and_slopes_are_drawn()
    {
        TriangleMesh squares = Bench().Tessellate(Length.FromMillimeters(1));
        Numbers.Close(0.42 + 0.9 + 0.3, squares.Area.SquareMeters);
        IReadOnlyList<FixtureZone> zones = squares.Zones();
        Numbers.Close(1.2, zones.Single(zone => zone.Kind == FixtureZoneKind.Wall).Area.SquareMeters);
        Numbers.Near(97.5, zones.Single(zone => zone.Kind == FixtureZoneKind.Wall).SlopeFromHorizontal.Degrees, 1e-9);
        Numbers.Near(0, zones.Single(zone => zone.Kind == FixtureZoneKind.Top).SlopeFromHorizontal.Degrees, 1e-9);
        Numbers.Refuses("chordTolerance", () => Bench().Tessellate(Length.FromMeters(1)));
    }

    [Fact]
    [Evidence(Basis.Identity, "a hemisphere of radius R: 2 π R² in all; by the hat-box theorem the part flatter than 45° has 2 π R² (1 − cos 45°); its rim is 2 π R; the mean slope over a hemisphere is 1 rad")]
    public void A_bowl_that_was_scanned_becomes_a_fixture()
    {
        const double R = 0.25;
        TriangleMesh bowl = BowlMesh.Cap(R, R, R, 200, 200);
        ZonedFixture fixture = ZonedFixture.FromMesh("bowl (invented)", bowl, Basin);
        Numbers.Close(2 * Math.PI * R * R, fixture.CoatedArea.SquareMeters, 2e-4);
        Numbers.Close(2 * Math.PI * R * R * (1 - Math.Sqrt(0.5)), fixture.Zones[0].Area.SquareMeters, 2e-2);
        Numbers.Close(2 * Math.PI * R, fixture.MaskedEdge.Meters, 2e-4);
        Numbers.Close(1, fixture.Zones.Sum(zone => zone.Area.SquareMeters * zone.SlopeFromHorizontal.Radians) / fixture.CoatedArea.SquareMeters, 1e-3);
        Assert.Equal(["floor", "wall"], fixture.Parts.Select(part => part.Name));
        Assert.Equal(SourceKind.Derived, fixture.Parts[0].Source.Kind);
        Assert.Null(fixture.WaterCapacity);
        Assert.Same(fixture.Mesh, fixture.Tessellate(Length.FromMillimeters(1)));
        Numbers.CanBeWritten(fixture.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "areas by zone, edge and slopes of a recessed tub by its tape, against its own mesh written as an STL file and read back as a scan would be; tolerance 1 % of the inside where the cove meets corners (docs/fixtures.md)")]
    public void A_tub_read_from_a_file_is_the_tub_that_was_measured()
    {
        RecessedBathtub tub = new(Tapes.FiveFootTub());
        TriangleMesh mesh = tub.Tessellate(Length.FromMillimeters(0.5));
        double rim = mesh.Vertices.Max(point => point.Z);
        TriangleMesh scan = StlReader.Read(new MemoryStream(ScanFiles.BinaryStl(mesh)), Length.FromMillimeters(1)).Welded(Length.FromMillimeters(0.01));
        ZonedFixture fixture = ZonedFixture.FromMesh("tub from a scan (invented)", scan,
        [
            new(FixtureZoneKind.Rim, Angle.Zero, Angle.FromDegrees(20), Length.FromMeters(rim - 0.01), Length.FromMeters(rim)),
            new(FixtureZoneKind.Apron, Angle.FromDegrees(89.9), Angle.FromDegrees(90), Length.FromMeters(-1), Length.FromMeters(1)),
            .. Basin,
        ]);
        double plain = tub.Patches.Sum(patch => patch.Area.SquareMeters);
        Numbers.Close(plain, fixture.CoatedArea.SquareMeters, 1e-2);
        foreach (FixtureZoneKind kind in new[] { FixtureZoneKind.Rim, FixtureZoneKind.Apron })
        {
            double own = tub.Patches.Where(patch => patch.Zone == kind).Sum(patch => patch.Area.SquareMeters);
            Numbers.Close(own, fixture.Zones.Single(zone => zone.Kind == kind).Area.SquareMeters, 1e-3);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "what contradicts itself is refused, with both figures")]
    public void Two_measurements_of_one_thing_have_to_agree()
    {
        ZonedFixture bench = Bench();
        Assert.Equal(1.65, (bench with { MeasuredArea = Area.FromSquareMeters(1.65) }).MeasuredArea!.Value.SquareMeters);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => bench with { MeasuredArea = Area.FromSquareMeters(1.6) });
        Assert.StartsWith("MeasuredArea is 1.6 m²; allowed: within 2 % of the parts together, 1.68 m².", refused.Message, StringComparison.Ordinal);

        TriangleMesh mesh = BowlMesh.Box(1, 1, 0.5).Classified(Basin);
        ZonePart floor = new("floor", FixtureZoneKind.Floor, Area.FromSquareMeters(1), Angle.Zero);
        ZonePart wall = new("walls", FixtureZoneKind.Wall, Area.FromSquareMeters(2), Angle.FromDegrees(90));
        ZonedFixture Of(params ZonePart[] parts) => new("box", parts, Length.FromMeters(4)) { Mesh = mesh };
        Assert.Equal(3, Of(floor, wall).CoatedArea.SquareMeters);
        Numbers.Refuses("Mesh", () => Of(floor, new("walls", FixtureZoneKind.Wall, Area.FromSquareMeters(2.1), Angle.FromDegrees(90))));
        Numbers.Refuses("Mesh", () => Of(floor, new("walls", FixtureZoneKind.Wall, Area.FromSquareMeters(2), Angle.FromDegrees(80))));
        Numbers.Refuses("Mesh", () => Of(floor, wall, new("rim", FixtureZoneKind.Rim, Area.FromSquareMeters(0.1), Angle.Zero)));
        Numbers.Refuses("Mesh", () => Of(floor));
    }

    [Fact]
    [Evidence(Basis.Contract, "nothing of a mesh is dropped in silence: leftovers by number, area and place; turned and doubled triangles; a zone that looks both ways")]
    public void A_mesh_that_cannot_be_a_fixture_is_refused()
    {
        TriangleMesh box = BowlMesh.Box(1, 1, 0.5);
        string left = Assert.Throws<ArgumentException>(() => ZonedFixture.FromMesh("box", box, [Basin[0]])).Message;
        Assert.Contains("leave 8 triangles without a zone, 2 m² or 66.7 % of the mesh; the first at (0 mm, 0 mm, 0 mm), 90° from level", left, StringComparison.Ordinal);

        MeshTriangle first = box.Triangles[0];
        TriangleMesh turned = new(box.Vertices, [first with { B = first.C, C = first.B }, .. box.Triangles.Skip(1)]);
        Assert.Contains("face different ways", Assert.Throws<ArgumentException>(() => ZonedFixture.FromMesh("box", turned, Basin)).Message, StringComparison.Ordinal);
        TriangleMesh twice = new(box.Vertices, [first, .. box.Triangles]);
        Assert.Contains("stand twice", Assert.Throws<ArgumentException>(() => ZonedFixture.FromMesh("box", twice, Basin)).Message, StringComparison.Ordinal);

        TriangleMesh room = BowlMesh.Beside(BowlMesh.Box(1, 1, 0.5), BowlMesh.Box(1, 1, 0.5).Reversed(), 2);
        Assert.Contains("look up and", Assert.Throws<ArgumentException>(() => ZonedFixture.FromMesh("room", room, Basin)).Message, StringComparison.Ordinal);
        Numbers.Refuses("slopeFromHorizontal", () => ZonedFixture.FromMesh("box", box.Reversed(), Basin));
        Numbers.Refuses("mesh", () => ZonedFixture.FromMesh("nothing", new TriangleMesh([], []), Basin));
        Assert.Throws<ArgumentNullException>(() => ZonedFixture.FromMesh("nothing", null!, Basin));
        Assert.Throws<ArgumentException>(() => ZonedFixture.FromMesh("box", box, []));
        Assert.Contains("classify", Assert.Throws<ArgumentException>(() => Bench() with { Mesh = box }).Message, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Bad_parts_are_refused()
    {
        ZonePart part = Bench().Parts[0];
        Numbers.Refuses("area", () => _ = new ZonePart("a", FixtureZoneKind.Top, Area.Zero, Angle.Zero));
        Numbers.Refuses("slopeFromHorizontal", () => _ = new ZonePart("a", FixtureZoneKind.Top, Area.FromSquareMeters(1), Angle.FromDegrees(181)));
        Numbers.Refuses("kind", () => _ = new ZonePart("a", (FixtureZoneKind)99, Area.FromSquareMeters(1), Angle.Zero));
        Numbers.Refuses("DevelopedFactor", () => _ = part with { DevelopedFactor = 0.9 });
        Numbers.Refuses("OpeningArea", () => _ = part with { OpeningArea = Area.FromSquareMeters(-1) });
        Assert.Throws<ArgumentException>(() => _ = new ZonePart(" ", FixtureZoneKind.Top, Area.FromSquareMeters(1), Angle.Zero));
        Assert.Throws<ArgumentNullException>(() => _ = part with { Source = null! });
        Assert.Throws<ArgumentException>(() => _ = new ZonedFixture("a", [], Length.Zero));
        Assert.Throws<ArgumentException>(() => _ = new ZonedFixture("a", [part, part], Length.Zero));
        Numbers.Refuses("parts", () => _ = new ZonedFixture("a", [part with { OpeningArea = Area.FromSquareMeters(1) }], Length.Zero));
        Numbers.Refuses("parts", () => _ = new ZonedFixture("a", Enumerable.Range(0, 101).Select(i => new ZonePart("p" + i, part.Kind, part.Area, Angle.Zero)), Length.Zero));
        Numbers.Refuses("maskedEdge", () => _ = new ZonedFixture("a", [part], Length.FromMeters(-1)));
        Numbers.Refuses("WaterCapacity", () => _ = Bench() with { WaterCapacity = Volume.Zero });
    }

    [Fact]
    [Evidence(Basis.Contract, "fixtures are values: equal by what they are made of, the mesh included")]
    public void Equal_parts_make_equal_fixtures()
    {
        Assert.Equal(Bench(), Bench());
        Assert.Equal(Bench().GetHashCode(), Bench().GetHashCode());
        Assert.NotEqual(Bench(), Bench() with { WaterCapacity = Volume.FromLiters(1) });
        ZonedFixture box = ZonedFixture.FromMesh("box", BowlMesh.Box(1, 1, 0.5), Basin);
        Assert.Equal(box, ZonedFixture.FromMesh("box", BowlMesh.Box(1, 1, 0.5), Basin));
        Assert.NotEqual(box, box with { Mesh = null });
        ZonePart part = new("soffit", FixtureZoneKind.Outside, Area.FromSquareMeters(0.9), Angle.FromDegrees(180)) { OpeningArea = Area.FromSquareMeters(0.02) };
        Assert.Equal("soffit: 0.88 m² of Outside at 180°", part.ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "GUM 5.1.2 by hand: A = 2 L W with u = 3 mm/√3 on each: u_A = 2 √((W u)² + (L u)²)")]
    public void The_tape_of_a_calculation_of_ones_own_carries_its_uncertainty()
    {
        Sides measured = new(Length.FromMeters(1.2), Length.FromMeters(0.5));
        FixtureUncertainty spread = FixtureUncertainty.Of(measured, DoorOf,
        [
            new TapeReading<Sides>("Height", Length.FromMillimeters(3), ReadingSpread.Rectangular, tape => tape.Height, (tape, length) => tape with { Height = length }),
            new TapeReading<Sides>("Width", Length.FromMillimeters(3), ReadingSpread.Rectangular, tape => tape.Width, (tape, length) => tape with { Width = length }),
        ]);
        double u = 0.003 / Math.Sqrt(3);
        Numbers.Close(2 * u * Math.Sqrt((1.2 * 1.2) + (0.5 * 0.5)), spread.StandardUncertaintyOfArea.SquareMeters, 1e-6);

        static ZonedFixture DoorOf(Sides tape) => new("door",
        [
            new ZonePart("front", FixtureZoneKind.Outside, tape.Height * tape.Width, Angle.FromDegrees(90)),
            new ZonePart("back", FixtureZoneKind.Outside, tape.Height * tape.Width, Angle.FromDegrees(90)),
        ],
            Length.Zero);
    }

    internal static ZonedFixture Bench() => new(
        "shower bench (invented)",
        [
            new ZonePart("seat", FixtureZoneKind.Top, Area.FromSquareMeters(0.42), Angle.Zero),
            new ZonePart("front", FixtureZoneKind.Wall, Area.FromSquareMeters(0.9), Angle.FromDegrees(90)) { DevelopedFactor = 1.1, OpeningArea = Area.FromSquareMeters(0.03) },
            new ZonePart("rear", FixtureZoneKind.Wall, Area.FromSquareMeters(0.3), Angle.FromDegrees(120)),
        ],
        Length.FromMeters(3.6));

    private sealed record Sides(Length Height, Length Width);
}
