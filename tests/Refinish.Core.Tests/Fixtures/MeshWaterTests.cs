using System;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class MeshWaterTests
{
    [Fact]
    [Evidence(Basis.Cited, "D. Jones, Compute fluid volumes in vertical tanks (2006), as given in the tests of github CalebBell/fluids: cap of a sphere of diameter 1 and height 0.7 has surface 2.199114857512855 and volume 0.4105014400690663; a mesh of 400 × 400 is off by its chords, 1e-4")]
    public void A_cap_of_a_sphere_holds_what_a_tank_head_holds()
    {
        TriangleMesh cap = BowlMesh.Cap(0.5, 0.5, 0.7);
        Numbers.Close(2.199114857512855, cap.Area.SquareMeters, 1e-4);
        Numbers.Close(0.4105014400690663, Litres(cap, 0.7) / 1000, 1e-4);
    }

    [Theory]
    [InlineData(1, 6.283185307179586)]
    [InlineData(0.999, 6.278996936093318)]
    [InlineData(1.5, 8.459109081729984)]
    [Evidence(Basis.Cited, "ellipsoidal tank head of diameter 2 and depth a, surface as given in the tests of github CalebBell/fluids; volume 2/3 π R² a, exact")]
    public void An_ellipsoidal_bowl_has_its_surface_and_its_volume(double depth, double surface)
    {
        TriangleMesh bowl = BowlMesh.Cap(1, depth, depth);
        Numbers.Close(surface, bowl.Area.SquareMeters, 1e-4);
        Numbers.Close(2.0 / 3 * Math.PI * depth * 1000, Litres(bowl, depth), 1e-4);
    }

    [Fact]
    [Evidence(Basis.Identity, "closed forms: a box holds l w h at any level, a cone's frustum π h (R² + R r + r²)/3 with a wall of π (R + r) √((R − r)² + h²), two bowls the sum; halving the mesh quarters the error")]
    public void Boxes_frusta_and_double_bowls_hold_their_closed_forms()
    {
        TriangleMesh box = BowlMesh.Box(1.5, 0.7, 0.4);
        Numbers.Close((1.5 * 0.7) + (2 * 2.2 * 0.4), box.Area.SquareMeters);
        Numbers.Close(1.5 * 0.7 * 0.4 * 1000, Litres(box, 0.4));
        Numbers.Close(1.5 * 0.7 * 0.123 * 1000, Litres(box, 0.123));

        double frustum = Math.PI * 0.5 * ((0.3 * 0.3) + (0.3 * 0.2) + (0.2 * 0.2)) / 3;
        double wall = Math.PI * 0.5 * Math.Sqrt(0.01 + 0.25);
        double ErrorOf(int around)
        {
            TriangleMesh bucket = BowlMesh.Turned(t => t < 0.5 ? 0.4 * t : 0.2 + (0.2 * (t - 0.5)), t => t < 0.5 ? 0 : t - 0.5, around, 20);
            Numbers.Close(wall + (Math.PI * 0.04), bucket.Area.SquareMeters, 40.0 / (around * around));
            return frustum - (Litres(bucket, 0.5) / 1000);
        }

        Assert.InRange(ErrorOf(64) / ErrorOf(128), 3.9, 4.1);
        Assert.InRange(ErrorOf(128), 0, 1e-3 * frustum);

        TriangleMesh two = BowlMesh.Beside(box, BowlMesh.Box(0.4, 0.3, 0.2), 2);
        Numbers.Close((1.5 * 0.7 * 0.2 * 1000) + 24, Litres(two, 0.2));

        // Above the rim of the second only the first still holds water.
        Numbers.Close(1.5 * 0.7 * 0.3 * 1000, Litres(two, 0.3));
    }

    [Fact]
    [Evidence(Basis.Independent, "capacities of tape fixtures by their own closed forms and quadratures, against the water in their meshes; tolerance: 1 % of the inside where coves meet corners, 1e-3 elsewhere (docs/fixtures.md)")]
    public void The_mesh_of_a_fixture_holds_what_its_tape_says()
    {
        (IFixture Fixture, double Relative)[] basins =
        [
            (new RecessedBathtub(Tapes.FiveFootTub()), 1e-2), (new OvalTub(Tapes.Oval()), 1e-3), (new CornerTub(Tapes.Corner()), 1e-3),
            (new CounterSink(Tapes.Vessel()), 2e-3),
        ];
        foreach ((IFixture fixture, double relative) in basins)
        {
            TriangleMesh mesh = fixture.Tessellate(Length.FromMillimeters(0.2));
            double rim = mesh.Box!.Highest.Z;
            Volume? water = mesh.WaterBelow(Length.FromMeters(rim)) ?? mesh.WaterBelow(Length.FromMeters(rim - 1e-6));
            Assert.NotNull(water);
            Numbers.Close(fixture.WaterCapacity!.Value.Liters, water.Value.Liters, relative);
        }
    }

    [Property(MaxTest = 50)]
    [Evidence(Basis.Identity, "water rises with the level, by no more than the mouth's area")]
    public bool Water_rises_with_the_level(byte first, byte second)
    {
        double low = 0.01 + (0.48 * Math.Min(first, second) / 255.0);
        double high = 0.01 + (0.48 * Math.Max(first, second) / 255.0);
        TriangleMesh bowl = BowlMesh.Cap(0.5, 0.5, 0.5, 40, 20);
        double more = (Litres(bowl, high) - Litres(bowl, low)) / 1000;
        return more >= -1e-12 && more <= (Math.PI * 0.25 * (high - low)) + 1e-12;
    }

    [Fact]
    [Evidence(Basis.Contract, "no water where none would stay: above the rim, below the floor, outside of a shell, through a hole, in triangles that are not welded")]
    public void What_holds_no_water_says_so()
    {
        TriangleMesh box = BowlMesh.Box(1, 1, 0.5);
        Assert.Null(box.WaterBelow(Length.FromMeters(0.6)));
        Assert.Null(box.WaterBelow(Length.FromMeters(-0.1)));
        Assert.Null(box.Reversed().WaterBelow(Length.FromMeters(0.4)));
        Assert.Null(new TriangleMesh(box.Vertices, System.Linq.Enumerable.Skip(box.Triangles, 1)).WaterBelow(Length.FromMeters(0.4)));
        TriangleMesh loose = StlReader.Read(new System.IO.MemoryStream(ScanFiles.BinaryStl(box)), Length.FromMillimeters(1));
        Assert.Null(loose.WaterBelow(Length.FromMeters(0.4)));
        Numbers.Close(400, Litres(loose.Welded(Length.Zero), 0.4), 1e-6);
        Numbers.Refuses("level", () => box.WaterBelow(Length.FromMeters(1001)));
    }

    private static double Litres(TriangleMesh mesh, double level) => mesh.WaterBelow(Length.FromMeters(level))!.Value.Liters;
}
