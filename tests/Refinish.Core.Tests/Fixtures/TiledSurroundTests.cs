using System;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class TiledSurroundTests
{
    private static TiledWallMeasurements Tape => Tapes.Alcove();

    [Theory]
    [InlineData(4.25, 4.25, 0.125, 0.0625, 1.0555, 1.0322, 0.0563, 0.507)]
    [InlineData(4.25, 4.25, 0.0625, 0.03125, 1.0286, 1.0164, 0.0288, 0.129)]
    [InlineData(12, 6, 0.125, 0.0625, 1.0303, 1.0174, 0.0305, 0.275)]
    [InlineData(2, 2, 0.125, 0.0625, 1.1107, 1.0652, 0.1142, 1.028)]
    [InlineData(1, 1, 0.125, 0.0625, 1.1975, 1.1198, 0.2099, 1.889)]
    [Evidence(Basis.Independent, "table of the design notes (derived there, four decimals; fill in in³/ft²); no published source")]
    public void Recess_factors_match_the_table(double length, double width, double joint, double depth, double sharp, double concave, double share, double fill)
    {
        TiledWallMeasurements tape = Tape with { TileLength = In(length), TileWidth = In(width), JointWidth = In(joint), JointDepth = In(depth) };
        TiledSurround walls = new(tape);
        Numbers.Near(sharp, walls.RecessFactor, 5e-5);
        Numbers.Near(concave, new TiledSurround(tape with { JointProfile = JointProfile.Concave }).RecessFactor, 1e-4);
        Numbers.Near(share, walls.JointShare.DecimalFractions, 5e-5);
        Numbers.Near(fill, walls.FlushFill.CubicInches / walls.FlatArea.SquareFeet, 5e-4);
    }

    [Fact]
    [Evidence(Basis.Independent, "alcove of 60 + 30 + 30 in, 60 in high: 50 ft² flat, 52.78 ft² developed in the design notes; edge by hand")]
    public void The_worked_alcove_comes_out()
    {
        TiledSurround walls = new(Tape);
        Numbers.Close(50, walls.FlatArea.SquareFeet);
        Numbers.Near(52.78, walls.CoatedArea.SquareFeet, 5e-3);
        Numbers.Close((2 * 120) + (2 * 60), walls.MaskedEdge.Inches);
        Assert.Null(walls.WaterCapacity);
        FixtureZone zone = Assert.Single(walls.Zones);
        Assert.Equal(FixtureZoneKind.Tile, zone.Kind);
        Numbers.Close(90, zone.SlopeFromHorizontal.Degrees);

        // A lower wall at the right: the step of 20 in is taped instead of 20 in of side.
        TiledSurround stepped = new(Tape with { Walls = [.. Tape.Walls, new(In(10), In(40))], Openings = [new(In(24), In(36))] });
        Numbers.Close((2 * 130) + 60 + 40 + 20 + 120, stepped.MaskedEdge.Inches);
        Numbers.Close((50 * 144) + 400 - 864, stepped.FlatArea.SquareInches);
        Numbers.CanBeWritten(stepped.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "a half-round joint (d = j/2) has arc πj/2 and section πj²/8; polygon of 200 000 chords for a shallower one")]
    public void The_arc_of_a_concave_joint_is_right()
    {
        TileJoint half = new(0.1, 0.1, 4e-3, 2e-3, JointProfile.Concave);
        double module = 0.104 * 0.104;
        Numbers.Close(Math.PI * 2e-3, half.Arc().Value);
        Numbers.Close(Math.PI * 16e-6 / 8 * 0.204 / module, half.FlushFillPerArea().Value);

        const double Width = 4e-3;
        const double Depth = 1.2e-3;
        double radius = ((Width * Width / 4) + (Depth * Depth)) / (2 * Depth);
        double length = 0;
        double section = 0;
        const int Chords = 200_000;
        (double X, double Y) previous = (-Width / 2, 0);
        for (int i = 1; i <= Chords; i++)
        {
            double x = (-Width / 2) + (Width * i / Chords);
            double y = Math.Sqrt((radius * radius) - (x * x)) - (radius - Depth);
            length += Math.Sqrt(Math.Pow(x - previous.X, 2) + Math.Pow(y - previous.Y, 2));
            section += (x - previous.X) * (y + previous.Y) / 2;
            previous = (x, y);
        }

        TileJoint shallow = new(0.1, 0.1, Width, Depth, JointProfile.Concave);
        Numbers.Close(length, shallow.Arc().Value, 1e-9);
        Numbers.Close(section * 0.204 / module, shallow.FlushFillPerArea().Value, 1e-9);
    }

    [Property]
    [Evidence(Basis.Identity, "the factor is at least 1, grows with depth, tends to 1 as the joint flattens; openings only take off; workings hold to the kernel")]
    public void Any_joint_obeys_the_laws(int seed)
    {
        Random random = new(seed);
        double joint = 0.5e-3 + (10e-3 * random.NextDouble());
        double depth = joint / 2 * random.NextDouble();
        TiledWallMeasurements tape = Tape with
        {
            TileLength = Length.FromMeters(0.02 + random.NextDouble()), TileWidth = Length.FromMeters(0.02 + random.NextDouble()),
            JointWidth = Length.FromMeters(joint), JointDepth = Length.FromMeters(depth), JointProfile = seed % 2 == 0 ? JointProfile.Sharp : JointProfile.Concave,
        };
        TiledSurround walls = new(tape);
        Assert.True(walls.RecessFactor >= 1, "a recess adds area");
        Assert.True(new TiledSurround(tape with { JointDepth = tape.JointDepth / 2 }).RecessFactor <= walls.RecessFactor, "a shallower joint adds less");
        Numbers.Near(1, new TiledSurround(tape with { JointDepth = tape.JointDepth / 1e6 }).RecessFactor, 1e-6);
        Numbers.Near(1, new TiledSurround(tape with { JointDepth = Length.Zero }).RecessFactor, 0);
        Numbers.Near(0, new TiledSurround(tape with { JointDepth = Length.Zero }).FlushFill.CubicMeters, 0);
        TiledSurround opened = new(tape with { Openings = [new(In(60 * random.NextDouble()), In(60 * random.NextDouble()))] });
        Assert.InRange(opened.CoatedArea.SquareMeters, 0, walls.CoatedArea.SquareMeters);
        Numbers.CanBeWritten(opened.Workings());
        Numbers.CanBeWritten(new TiledSurround(tape with { JointDepth = Length.Zero }).Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings and rules between two lengths")]
    public void Refuses_what_cannot_be()
    {
        Refuses("JointDepth", Tape with { JointDepth = In(0.07), JointProfile = JointProfile.Concave });
        Refuses("Openings", Tape with { Openings = [new(In(61), In(30))] });
        Refuses("Openings", Tape with { Openings = [new(In(60), In(60)), new(In(60), In(60)), new(In(30), In(30))] });
        Numbers.Refuses("TileLength", () => _ = Tape with { TileLength = Length.Zero });
        Numbers.Refuses("TileWidth", () => _ = Tape with { TileWidth = Length.Zero });
        Numbers.Refuses("JointWidth", () => _ = Tape with { JointWidth = Length.Zero });
        Numbers.Refuses("JointDepth", () => _ = Tape with { JointDepth = In(-1) });
        Numbers.Refuses("length", () => _ = new WallRun(Length.Zero, In(60)));
        Numbers.Refuses("height", () => _ = new WallRun(In(60), In(600)));
        Numbers.Refuses("length", () => _ = new RectangularOpening(Length.Zero, In(60)));
        Numbers.Refuses("height", () => _ = new RectangularOpening(In(60), Length.Zero));
        ArgumentOutOfRangeException profile = Assert.Throws<ArgumentOutOfRangeException>(() => _ = Tape with { JointProfile = (JointProfile)9 });
        Assert.Equal("JointProfile", profile.ParamName);
        Assert.Throws<ArgumentException>(() => _ = Tape with { Walls = [] });
        Assert.Throws<ArgumentNullException>(() => _ = Tape with { Openings = null! });
        Assert.Throws<ArgumentNullException>(() => new TiledSurround(null!));

        static void Refuses(string name, TiledWallMeasurements tape) => Numbers.Refuses(name, () => _ = new TiledSurround(tape));
    }

    private static Length In(double inches) => Length.FromInches(inches);
}
