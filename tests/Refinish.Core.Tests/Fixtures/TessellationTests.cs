using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class TessellationTests
{
    [Fact]
    [Evidence(Basis.Identity, "what the patches coat adds up to the coated area; the mesh of every fixture tends to the sum of the plain areas, in every zone, and faces one way")]
    public void Every_fixture_is_its_patches_and_its_mesh()
    {
        foreach (IFixture fixture in Tapes.Every())
        {
            Numbers.Close(fixture.CoatedArea.SquareMeters, fixture.Patches.Sum(patch => patch.CoatedArea.SquareMeters));
            Assert.All(fixture.Patches, patch => Assert.InRange(patch.ErrorBound.SquareMeters, 0, 1e-8 * Math.Abs(patch.Area.SquareMeters)));
            TriangleMesh coarse = fixture.Tessellate(Length.FromMillimeters(2));
            TriangleMesh fine = fixture.Tessellate(Length.FromMillimeters(0.05));
            double cove = fixture is RecessedBathtub tub ? tub.CoveOverestimate.SquareMeters : fixture is FreestandingTub free ? free.CoveOverestimate.SquareMeters : 0;
            double plain = fixture.Patches.Sum(patch => patch.Area.SquareMeters) - cove;
            Assert.True(Math.Abs(fine.Area.SquareMeters - plain) <= 4e-4 * plain, $"{fixture.Description}: patches {plain:R}, mesh {fine.Area.SquareMeters:R}, cove {cove:R}");
            Numbers.Close(plain, coarse.Area.SquareMeters, 0.015);
            Assert.Equal(0, fine.Topology.MisorientedEdges);
            Assert.Equal(0, fine.Topology.NonManifoldEdges);
            Assert.Equal(0, fine.Topology.DegenerateTriangles);
            foreach (IGrouping<FixtureZoneKind, SurfacePatch> zone in fixture.Patches.GroupBy(patch => patch.Zone))
            {
                Numbers.Close(zone.Sum(patch => patch.Area.SquareMeters), fine.AreaOf(zone.Key).SquareMeters, cove > 0 ? 1e-2 : 1e-3);
            }
        }
    }

    [Property(MaxTest = 25)]
    [Evidence(Basis.Identity, "second order: with the tolerance divided by 16 twice the mesh is four times finer each time, and the error of the area falls 16-fold")]
    public void The_mesh_converges_with_order_two(int seed)
    {
        RecessedBathtub tub = new(Tapes.AnyTub(seed) with { CoveRadius = Length.Zero });
        double plain = tub.Patches.Sum(patch => patch.Area.SquareMeters);
        double[] missing = [.. new[] { 4e-3, 4e-3 / 16, 4e-3 / 256 }.Select(tolerance => plain - tub.Tessellate(Length.FromMeters(tolerance)).Area.SquareMeters)];

        // A corner that is ruled like a saddle is over-read by its triangles, others are under-read, so the sign is open and the coarse errors may cancel.
        double coarse = Math.Max(Math.Abs(missing[0]), 16 * Math.Abs(missing[1]));
        Assert.True(Math.Abs(missing[2]) <= (4 * coarse / 256) + 1e-9, "the error has to fall with the tolerance: " + string.Join(" ", missing));
        Assert.True(Math.Abs(missing[2]) <= 1e-4 * plain, "a tolerance of 16 µm has to be enough for a ten-thousandth");
    }

    [Theory]
    [InlineData(3)]
    [InlineData(0)]
    [Evidence(Basis.Identity, "a ball rolled along a conical basin: the mesh tends to the area less the stated over-reading, exactly (Pappus); its water to the capacity")]
    public void A_coved_cone_is_met_exactly(double cove)
    {
        RecessedBathtubMeasurements tape = Tapes.FiveFootTub() with
        {
            RimLength = In(40), RimWidth = In(40), RimCornerRadius = In(20), FloorLength = In(28), FloorWidth = In(28), FloorCornerRadius = In(14),
            Depth = In(10), HeadRun = In(6), FootRun = In(6), CoveRadius = In(cove), OverallLength = In(80), OverallWidth = In(60),
        };
        RecessedBathtub tub = new(tape);
        TriangleMesh mesh = tub.Tessellate(Length.FromMillimeters(0.02));
        double inside = mesh.AreaOf(FixtureZoneKind.Floor).SquareMeters + mesh.AreaOf(FixtureZoneKind.Wall).SquareMeters;
        Numbers.Close(tub.InteriorArea.SquareMeters - tub.CoveOverestimate.SquareMeters, inside, 1e-4);
        Numbers.Close(Water(mesh, tape.Depth.Meters), tub.WaterCapacity!.Value.CubicMeters, cove == 0 ? 2e-4 : 2e-3);
    }

    [Property(MaxTest = 25)]
    [Evidence(Basis.Independent, "triangulation of random coved tubs beside the closed form less its stated over-reading: 2 % where the cove is as large as the corner may be (a ball need not fit it), 0.1 % for a quarter of that")]
    public void Any_cove_is_met_to_the_stated_order(int seed)
    {
        RecessedBathtubMeasurements tape = Tapes.AnyTub(seed);
        foreach ((double share, double tolerance) in new[] { (1, 0.02), (0.25, 1e-3) })
        {
            RecessedBathtub tub = new(tape with { CoveRadius = tape.CoveRadius * share });
            TriangleMesh mesh = tub.Tessellate(Length.FromMillimeters(0.2));
            double inside = mesh.AreaOf(FixtureZoneKind.Floor).SquareMeters + mesh.AreaOf(FixtureZoneKind.Wall).SquareMeters;
            Numbers.Close(tub.InteriorArea.SquareMeters - tub.CoveOverestimate.SquareMeters, inside, tolerance);
        }
    }

    [Property(MaxTest = 25)]
    [Evidence(Basis.Independent, "volume of the mesh below the mouth by the divergence theorem, coded in this test, beside the prismoidal capacity; the cove to second order")]
    public void The_mesh_holds_the_same_water(int seed)
    {
        RecessedBathtubMeasurements tape = Tapes.AnyTub(seed) with { CoveRadius = Length.Zero };
        Numbers.Close(Water(new RecessedBathtub(tape).Tessellate(Length.FromMillimeters(0.1)), tape.Depth.Meters), new RecessedBathtub(tape).WaterCapacity!.Value.CubicMeters, 3e-3);
        RecessedBathtubMeasurements five = Tapes.FiveFootTub();
        RecessedBathtub shifted = new(five with { FloorShift = In(1.5) });
        Numbers.Close(Water(shifted.Tessellate(Length.FromMillimeters(0.1)), five.Depth.Meters), shifted.WaterCapacity!.Value.CubicMeters, 3e-3);
    }

    [Fact]
    [Evidence(Basis.Independent, "triangulation against the closed forms: a floor shifted across by 1.5 in makes one side 0.5 in and the other 3.5 in of run")]
    public void A_shifted_floor_has_two_slopes()
    {
        RecessedBathtubMeasurements tape = Tapes.FiveFootTub() with { FloorShift = In(1.5) };
        RecessedBathtub tub = new(tape);
        double both = (41 + 34) / 2.0 * (Math.Sqrt((13.25 * 13.25) + 0.25) + Math.Sqrt((13.25 * 13.25) + (3.5 * 3.5)));
        Numbers.Close(both, tub.SideWallArea.SquareInches);
        TriangleMesh mesh = tub.Tessellate(Length.FromMillimeters(0.01));
        double inside = mesh.AreaOf(FixtureZoneKind.Floor).SquareMeters + mesh.AreaOf(FixtureZoneKind.Wall).SquareMeters;
        Numbers.Close(tub.InteriorArea.SquareMeters - tub.CoveOverestimate.SquareMeters, inside, 2e-4);
        Numbers.CanBeWritten(tub.Workings());
        Numbers.CanBeWritten(tub.CapacityWorkings(Length.Zero));

        // Mirror images coat alike, and the limit of no shift is the straight tub.
        Numbers.Close(tub.CoatedArea.SquareMeters, new RecessedBathtub(tape with { FloorShift = In(-1.5) }).CoatedArea.SquareMeters);
        Numbers.Close(new RecessedBathtub(Tapes.FiveFootTub()).CoatedArea.SquareMeters, new RecessedBathtub(tape with { FloorShift = In(1e-9) }).CoatedArea.SquareMeters, 1e-9);
        Numbers.Refuses("FloorShift", () => _ = new RecessedBathtub(tape with { FloorShift = In(2.1) }));
        Numbers.Refuses("FloorShift", () => _ = tape with { FloorShift = In(20) });
    }

    [Fact]
    [Evidence(Basis.Independent, "a half sphere: every corner on it, every middle of a triangle within the tolerance of it, the area short of 2πr² by less than the tolerance allows")]
    public void The_chord_tolerance_is_kept()
    {
        PedestalSinkMeasurements tape = Tapes.Sink() with { BowlLength = Length.FromMeters(0.4), BowlWidth = Length.FromMeters(0.4), BowlDepth = Length.FromMeters(0.2), Outline = PlanOutline.RoundedRectangle(Length.FromMeters(0.6), Length.FromMeters(0.5), Length.FromMeters(0.1)) };
        foreach (double tolerance in new[] { 5e-3, 1e-3, 1e-4 })
        {
            TriangleMesh mesh = new PedestalSink(tape).Tessellate(Length.FromMeters(tolerance));
            foreach (MeshTriangle triangle in mesh.Triangles.Where(triangle => triangle.Zone == FixtureZoneKind.Bowl))
            {
                (MeshPoint a, MeshPoint b, MeshPoint c) = (mesh.Vertices[triangle.A], mesh.Vertices[triangle.B], mesh.Vertices[triangle.C]);
                Numbers.Near(0.2, Radius(a.X, a.Y, a.Z), 1e-9);
                Assert.InRange(Radius((a.X + b.X + c.X) / 3, (a.Y + b.Y + c.Y) / 3, (a.Z + b.Z + c.Z) / 3), 0.2 - tolerance, 0.2);
            }

            Assert.InRange(mesh.AreaOf(FixtureZoneKind.Bowl).SquareMeters, 2 * Math.PI * 0.04 * (1 - (4 * tolerance / 0.2)), 2 * Math.PI * 0.04);
        }

        static double Radius(double x, double y, double z) => Math.Sqrt((x * x) + (y * y) + ((z - 0.2) * (z - 0.2)));
    }

    [Fact]
    [Evidence(Basis.Identity, "Euler: a tub without an apron is a disc with one open edge, whose length is the deck's outline; upside-down triangles change the sign of the volume and nothing else")]
    public void A_tub_is_a_disc()
    {
        RecessedBathtub tub = new(Tapes.FiveFootTub() with { ApronHeight = Length.Zero });
        TriangleMesh mesh = tub.Tessellate(Length.FromMillimeters(1));
        Assert.Equal(1, mesh.Topology.BoundaryLoops);
        Assert.Equal(1, mesh.Topology.EulerCharacteristic);
        Numbers.Close(2 * (60 + 30), mesh.Topology.BoundaryLength.Inches, 1e-9);
        Assert.Null(mesh.EnclosedVolume);
        Numbers.Close(mesh.Area.SquareMeters, mesh.Reversed().Area.SquareMeters);
        Numbers.Close(-mesh.SignedVolume.CubicMeters, mesh.Reversed().SignedVolume.CubicMeters);
        Assert.All(mesh.Triangles.Where(triangle => triangle.Zone == FixtureZoneKind.Floor), triangle =>
            Assert.True(Cross(mesh, triangle) > 0, "the floor faces up"));
        Numbers.Refuses("chordTolerance", () => tub.Tessellate(Length.Zero));
        Numbers.Refuses("chordTolerance", () => tub.Tessellate(Length.FromMeters(1)));
    }

    [Fact]
    [Evidence(Basis.Identity, "deck widths side by side make the overall size; a flange adds its strip on three sides and two ends to tape")]
    public void Deck_and_flange_add_up()
    {
        RecessedBathtubMeasurements tape = Tapes.FiveFootTub().WithDeck(In(4), In(3), In(3.5), In(3));
        Numbers.Close(60, tape.OverallLength.Inches);
        Numbers.Close(30, tape.OverallWidth.Inches);
        RecessedBathtub tub = new(tape);
        RecessedBathtub flanged = new(tape with { TilingFlangeHeight = In(1) });
        Numbers.Close(60 + 60, (flanged.CoatedArea - tub.CoatedArea).SquareInches, 1e-10);
        Numbers.Close(120, flanged.FlangeArea.SquareInches);
        Numbers.Close(2, (flanged.MaskedEdge - tub.MaskedEdge).Inches, 1e-10);
        Numbers.CanBeWritten(flanged.Workings());
        Assert.Equal(FixtureZoneKind.Flange, flanged.Zones[4].Kind);
        Numbers.Refuses("head", () => tape.WithDeck(In(-1), In(3), In(3), In(3)));
        Numbers.Refuses("TilingFlangeHeight", () => _ = tape with { TilingFlangeHeight = In(-1) });
    }

    /// <summary>∫ (depth − z) n_z dA over what lies below the mouth: the lid at z = depth adds nothing.</summary>
    internal static double Water(TriangleMesh mesh, double depth)
    {
        double volume = 0;
        foreach (MeshTriangle triangle in mesh.Triangles.Where(triangle => triangle.Zone is FixtureZoneKind.Floor or FixtureZoneKind.Wall or FixtureZoneKind.Bowl))
        {
            double middle = (mesh.Vertices[triangle.A].Z + mesh.Vertices[triangle.B].Z + mesh.Vertices[triangle.C].Z) / 3;
            volume += (depth - middle) * Cross(mesh, triangle) / 2;
        }

        return volume;
    }

    private static double Cross(TriangleMesh mesh, MeshTriangle triangle)
    {
        (MeshPoint a, MeshPoint b, MeshPoint c) = (mesh.Vertices[triangle.A], mesh.Vertices[triangle.B], mesh.Vertices[triangle.C]);
        return ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));
    }

    private static Length In(double inches) => Length.FromInches(inches);
}
