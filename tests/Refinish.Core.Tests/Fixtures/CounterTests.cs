using System;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class CounterTests
{
    [Fact]
    [Evidence(Basis.Cited, "cap of a sphere: lateral area 2.199114857512855 and volume 0.4105014400690663 for D 1, h 0.7 (tests of the fluids library of C. Bell, commit 091070e, after Jones 2006)")]
    public void Caps_match_the_tank_heads()
    {
        // A head of diameter 1 and height 0.7 of a sphere of diameter 1: its opening has the radius √(0.7 · 0.3).
        double mouth = Math.Sqrt(0.7 * 0.3);
        Numbers.Close(2.199114857512855, Math.PI * ((mouth * mouth) + 0.49), 1e-14);

        // The same sphere from below: a shallow cap of height 0.3 holds what is left of the ball.
        CounterSink cap = new(Tapes.Vessel() with { MouthLength = Length.FromMeters(2 * mouth), MouthWidth = Length.FromMeters(2 * mouth), BowlDepth = Length.FromMeters(0.3) });
        Numbers.Close(Math.PI - 2.199114857512855, cap.BowlArea.SquareMeters, 1e-12);
        Numbers.Close((Math.PI / 6) - 0.4105014400690663, cap.WaterCapacity!.Value.CubicMeters, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Independent, "worked cap a 8, h 5.5 in: 296.10 in², 640.03 in³, and half ellipsoid 8.5 × 6.75 × 6 in: 313.666 in², 721.0 in³ (design notes); rims and edges by hand")]
    public void Worked_sinks_come_out()
    {
        CounterSink vessel = new(Tapes.Vessel());
        Numbers.Near(296.10, vessel.BowlArea.SquareInches, 5e-3);
        Numbers.Near(640.03, vessel.WaterCapacity!.Value.CubicInches, 5e-3);
        Numbers.Close(Math.PI * ((8.5 * 8.5) - 64), vessel.RimArea.SquareInches, 1e-10);
        Numbers.Close(Math.PI * ((8.5 * 8.5) + 36), vessel.OutsideArea.SquareInches, 1e-10);
        Numbers.Close((3 + 1.75) * Math.PI, vessel.MaskedEdge.Inches, 1e-10);
        CounterSink under = new(Tapes.Undermount());
        Numbers.Near(313.666, under.BowlArea.SquareInches, 5e-4);
        Numbers.Near(721.0, under.WaterCapacity!.Value.CubicInches, 0.05);
        Numbers.Near(0, under.RimArea.SquareInches, 0);
        CounterSink drop = new(Tapes.DropIn());
        Numbers.Close((20 * 17) - ((4 - Math.PI) * 9) - (Math.PI * 8.5 * 6.75), drop.RimArea.SquareInches, 1e-10);
        Numbers.Close(drop.RimArea.SquareInches, (drop.CoatedArea - under.CoatedArea).SquareInches, 1e-10);

        // 1 rad is the mean slope of a half sphere.
        CounterSink half = new(Tapes.Vessel() with { BowlDepth = In(8) });
        Numbers.Close(1, half.Zones[0].SlopeFromHorizontal.Radians);
        Numbers.CanBeWritten(vessel.CapacityWorkings(In(1)));
        Numbers.CanBeWritten(under.CapacityWorkings(In(1)));
        Assert.StartsWith("vessel sink 406.4 mm × 406.4 mm: ", vessel.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand in plan, all from the walls: an L of 96 and 72 by 25.5 in is 25.234 ft² (also in the design notes), less a strip of 3/4 in along both walls below the splash, its corner once; the splash's faces meet in the corner, 3/4 in before each wall, and its top is the strip again")]
    public void The_worked_counter_comes_out()
    {
        Countertop counter = new(Tapes.LCounter());
        double strip = (0.75 * 96) + (0.75 * (72 - 0.75));
        Numbers.Near(25.234, counter.TopArea.SquareFeet + (strip / 144), 5e-4);
        Numbers.Close((95.25 * 24.75) + ((71.25 - 24.75) * 24.75), counter.TopArea.SquareInches, 1e-10);
        Numbers.Near(1.750, counter.EdgeArea.SquareFeet, 5e-4);
        Numbers.Close(117 + 51, counter.EdgeLength.Inches);
        double splash = ((95.25 + 71.25) * 4) + strip + (2 * 4 * 0.75);
        Numbers.Close(splash, counter.BacksplashArea.SquareInches, 1e-10);
        Numbers.Close(((96 * 25.5) + (46.5 * 25.5)) - 672 + (168 * 1.5) + (166.5 * 4) + 6, counter.CoatedArea.SquareInches, 1e-10);
        Assert.StartsWith("L-shaped countertop 2438.4 mm × 647.7 mm + 1828.8 mm × 647.7 mm, Square edge: ", counter.ToString(), StringComparison.Ordinal);
        Assert.Null(counter.WaterCapacity);
        Numbers.Close(168 + 168 + 8 + 106, counter.MaskedEdge.Inches, 1e-10);
    }

    [Theory]
    [InlineData(EdgeProfile.Square)]
    [InlineData(EdgeProfile.Bullnose)]
    [Evidence(Basis.Independent, "the same counter measured by its floor plan between the faces of the splash: a thicker splash moves the faces into the room; top, faces and the strip between walls and faces are those of that smaller plan")]
    public void A_thicker_splash_covers_more_of_the_top(EdgeProfile profile)
    {
        foreach (double thick in new[] { 0, 0.5, 2 })
        {
            Countertop counter = new(Tapes.LCounter() with { Profile = profile, BacksplashThickness = In(thick), LeftEndIsOpen = false, RightEndIsOpen = false });
            double reach = profile == EdgeProfile.Bullnose ? 0.75 : 0;

            // Two rectangles between the faces and the line where the profile begins.
            double depth = 25.5 - thick - reach;
            Numbers.Close(((96 - thick) * depth) + ((72 - thick - depth) * depth), counter.TopArea.SquareInches, 1e-10);
            double walls = (96 + 72 - (2 * thick)) * 4;
            double cap = (96 * thick) + ((72 - thick) * thick);
            Numbers.Close(walls + cap, counter.BacksplashArea.SquareInches, 1e-10);
        }

        Numbers.Refuses("BacksplashThickness", () => _ = new Countertop(Tapes.LCounter() with { Runs = [new(In(96), In(4))], CutOuts = [], BacksplashThickness = In(3.9), Profile = EdgeProfile.Bullnose }));
        Numbers.Refuses("CutOuts", () => _ = new Countertop(Tapes.LCounter() with { CutOuts = [new(In(32), In(25))] }));
    }

    [Theory]
    [InlineData(EdgeProfile.Square, 0)]
    [InlineData(EdgeProfile.Eased, 0.5)]
    [InlineData(EdgeProfile.Bullnose, 0)]
    [InlineData(EdgeProfile.Ogee, 0)]
    [Evidence(Basis.Independent, "length, reach and first moment of each profile summed over 200 000 chords in this test; a square counter all round by revolution of corners: mitred strips summed")]
    public void Profiles_match_their_chords(EdgeProfile profile, double radius)
    {
        EdgeShape shape = new(profile, 1.5, radius);
        double length = 0;
        double moment = 0;
        double tilt = 0;
        const int Chords = 200_000;
        (double X, double Z) previous = shape.At(0);
        double reach = previous.X;
        for (int i = 1; i <= Chords; i++)
        {
            (double x, double z) = shape.At((double)i / Chords);
            double chord = Math.Sqrt(Math.Pow(x - previous.X, 2) + Math.Pow(z - previous.Z, 2));
            length += chord;
            moment += chord * (x + previous.X) / 2;
            tilt += chord * Math.Atan2(z - previous.Z, previous.X - x);
            previous = (x, z);
        }

        Numbers.Close(length, shape.Developed().Value, 1e-9);
        Numbers.Near(moment, shape.Moment().Value, 1e-9);
        Numbers.Near(reach, shape.Reach().Value, 1e-12);
        Numbers.Near(1.5, previous.Z, 1e-12);
        Numbers.Close(tilt / length, shape.Slope().Value, 1e-5);
    }

    [Fact]
    [Evidence(Basis.Contract, "impossible shapes name the measurement; ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        CountertopMeasurements tape = Tapes.LCounter();
        Refuses("EdgeRadius", tape with { EdgeRadius = In(0.5) });
        Refuses("EdgeRadius", tape with { Profile = EdgeProfile.Eased, EdgeRadius = In(2) });
        Refuses("Runs", tape with { Runs = [new(In(20), In(25)), new(In(72), In(25))] });
        Refuses("Runs", tape with { Runs = [.. tape.Runs, .. tape.Runs] });
        Refuses("CutOuts", tape with { CutOuts = [new(In(100), In(20))] });
        Assert.Throws<ArgumentException>(() => _ = tape with { Runs = [] });
        CounterSinkMeasurements sink = Tapes.Vessel();
        Numbers.Refuses("MouthWidth", () => _ = new CounterSink(sink with { MouthWidth = In(15) }));
        Numbers.Refuses("BowlDepth", () => _ = new CounterSink(sink with { BowlDepth = In(9) }));
        Numbers.Refuses("WallThickness", () => _ = new CounterSink(Tapes.Undermount() with { WallThickness = In(1) }));
        Numbers.Refuses("BaseDiameter", () => _ = new CounterSink(Tapes.Undermount() with { BaseDiameter = In(1) }));
        Numbers.Refuses("DrainDiameter", () => _ = new CounterSink(sink with { MouthLength = In(5), MouthWidth = In(5), BowlDepth = In(2), DrainDiameter = In(3), BaseDiameter = In(1) }));
        Assert.Throws<ArgumentNullException>(() => new CounterSink(Tapes.Undermount() with { Mounting = SinkMounting.DropIn }));
        Numbers.Refuses("MouthLength", () => _ = new CounterSink(Tapes.DropIn() with { Outline = PlanOutline.Ellipse(In(16), In(17)) }));
        Numbers.Refuses("depth", () => _ = new WallRecess(WallRecessKind.Niche, In(10), In(10), Length.Zero));
        Numbers.Refuses("Recesses", () => _ = new TiledSurround(Tapes.Alcove() with { Recesses = [new(WallRecessKind.Niche, In(70), In(10), In(3))] }));

        static void Refuses(string name, CountertopMeasurements counter) => Numbers.Refuses(name, () => _ = new Countertop(counter));
    }

    [Fact]
    [Evidence(Basis.Independent, "niche 14 × 12 × 3.5, window 24 × 30 × 4, dish 6 × 6 × 2 in by hand: mouths off, flanks and backs on, dish without joints; a threshold of 4 in on a front of 36")]
    public void Recesses_and_threshold_by_hand()
    {
        TiledSurround plain = new(Tapes.Alcove());
        TiledSurround walls = new(Tapes.RecessedAlcove());
        double tiled = 7200 - 168 - 720 - 36 + (2 * 26 * 3.5) + 168 + (2 * 54 * 4);
        Numbers.Close(tiled, walls.FlatArea.SquareInches, 1e-10);
        Numbers.Close((tiled * plain.RecessFactor) + 36 + (2 * 12 * 2), walls.CoatedArea.SquareInches, 1e-10);
        Numbers.Close(plain.MaskedEdge.Inches + 108, walls.MaskedEdge.Inches, 1e-10);
        ShowerPan pan = new(Tapes.Pan());
        ShowerPan wide = new(Tapes.Pan() with { ThresholdWidth = In(4) });
        Numbers.Close(36 * 4, (wide.CoatedArea - pan.CoatedArea).SquareInches, 1e-10);
        Numbers.Close(8, (wide.MaskedEdge - pan.MaskedEdge).Inches, 1e-10);
    }

    private static Length In(double inches) => Length.FromInches(inches);
}
