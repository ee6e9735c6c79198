using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

/// <summary>Composed fixtures against sums by hand, in inches. The matrix over all fixtures and the meshes hold them as well.</summary>
public class ComposedFixtureTests
{
    private const double Pi = Math.PI;

    private static double Disc(double diameter) => Pi * diameter * diameter / 4;

    private static double Rounded(double length, double width, double radius) => (length * width) - ((4 - Pi) * radius * radius);

    private static double Area(ComposedFixture fixture, FixtureZoneKind zone) =>
        fixture.Zones.Single(one => one.Kind == zone).Area.SquareInches;

    private static double Patch(ComposedFixture fixture, string name) =>
        fixture.Patches.Single(patch => patch.Name == name).Area.SquareInches;

    private static ComposedFixture[] All(ComposedKind kind) => [.. ComposedTapes.Every().Where(fixture => fixture.Kind == kind)];

    [Fact]
    [Evidence(Basis.Independent, "by hand: rounded boxes without inset and cove; with them the corners are cones, by Pappus: 2πρ((r − T)φ + ρ(1 − cos φ)), T = ρ tan(φ/2)")]
    public void A_double_bowl_sink_follows_by_hand()
    {
        ComposedFixture box = All(ComposedKind.DoubleBowlSink)[1];
        double bowl = Rounded(15, 17, 2) + (9 * ((2 * 32) - ((8 - (2 * Pi)) * 2)));
        Numbers.Close(2 * bowl, Area(box, FixtureZoneKind.Bowl), 1e-9);
        Numbers.Close((36 * 22) - (2 * Rounded(15, 17, 2)), Area(box, FixtureZoneKind.Rim));
        Numbers.Close(36 * 10, Area(box, FixtureZoneKind.Front));
        Numbers.Close(2 * 9 * Rounded(15, 17, 2), box.WaterCapacity!.Value.CubicInches, 1e-9);
        Numbers.Close((2 * (36 + 22)) + 20, box.MaskedEdge.Inches);

        ComposedFixture coved = All(ComposedKind.DoubleBowlSink)[0];
        double bowls = Coved(14.5, 16, 3, 8, 0.75, 1) + Coved(12.5, 15, 3, 6, 0.75, 1) - (2 * Disc(3.5));
        Numbers.Close(bowls, Area(coved, FixtureZoneKind.Bowl), 1e-9);
        Numbers.Close((33 * 22) - Rounded(14.5, 16, 3) - Rounded(12.5, 15, 3) - (4 * Disc(1.375)), Area(coved, FixtureZoneKind.Rim));
        Numbers.Close((2 * (33 + 22)) + (2 * Pi * 3.5) + (4 * Pi * 1.375), coved.MaskedEdge.Inches);

        // Slices of the same bowls added up in Python, 200 000 of each; the library's cove over-reads what it takes off at the corners.
        Numbers.Close(42.37281, coved.WaterCapacity!.Value.Liters, 2e-4);
    }

    private static double Coved(double length, double width, double radius, double depth, double inset, double cove)
    {
        double slant = Math.Sqrt((depth * depth) + (inset * inset));
        double slope = (Pi / 2) - Math.Atan(inset / depth);
        double reach = cove * Math.Tan(slope / 2);
        double straight = 2 * (length + width - (4 * radius));
        double floorRadius = radius - inset;
        double upright = straight * (slant - reach + (cove * slope) - reach);
        double cone = Pi * (slant - reach) * (radius + floorRadius + (reach * Math.Cos(slope)));
        double torus = 2 * Pi * cove * (((floorRadius - reach) * slope) + (cove * (1 - Math.Cos(slope))));
        double floor = Rounded(length - (2 * inset), width - (2 * inset), floorRadius);
        double ring = Pi * ((floorRadius * floorRadius) - ((floorRadius - reach) * (floorRadius - reach)));
        return upright + cone + torus + floor - ring;
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: a square of 17 in with a corner of 10 in cut off and a bow of 2 in (circular segment of radius (c²/4 + s²)/(2 s)); the bowl within the 1.061 % of Thomsen's formula")]
    public void A_corner_sink_follows_by_hand()
    {
        ComposedFixture sink = All(ComposedKind.CornerSink)[0];
        double radius = (50 + 4) / 4.0;
        double half = Math.Asin(Math.Sqrt(50) / radius);
        double plan = (17 * 17) - 50 + (radius * radius * (half - (Math.Sin(half) * Math.Cos(half))));
        Numbers.Close(plan - Disc(1.25) - (Pi * 13 * 10 / 4), Area(sink, FixtureZoneKind.Rim), 1e-11);
        Numbers.Close(4 * (14 + (2 * radius * half)), Area(sink, FixtureZoneKind.Outside), 1e-11);
        Numbers.Close(2.0 / 3 * Pi * 6.5 * 5 * 5, sink.WaterCapacity!.Value.CubicInches);
        const double P = 1.6075;
        double thomsen = 2 * Pi * Math.Pow((Math.Pow(6.5 * 5, P) + Math.Pow(6.5 * 5, P) + Math.Pow(25, P)) / 3, 1 / P);
        Numbers.Close(thomsen, Patch(sink, "bowl"), 0.01061);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: what a side splash covers comes off the top once")]
    public void A_vanity_follows_by_hand()
    {
        ComposedFixture vanity = All(ComposedKind.Vanity)[0];
        Numbers.Close((61 * 21) - (2 * Pi * 17 * 13 / 4) - (6 * Disc(1.25)) - (21 * 0.75), Area(vanity, FixtureZoneKind.Top));
        Numbers.Close((61 + 21) * 1.5, Area(vanity, FixtureZoneKind.Edge));
        Numbers.Close((61 * 4.75) + (21 * 4.75) + (4 * 0.75), Area(vanity, FixtureZoneKind.Backsplash));
        Numbers.Close(2 * 2.0 / 3 * Pi * 8.5 * 6.5 * 5.5, vanity.WaterCapacity!.Value.CubicInches);
        ComposedFixture plain = All(ComposedKind.Vanity)[1];
        Numbers.Close((31 * 19) + (31 + 38), plain.CoatedArea.SquareInches);
        Assert.Null(plain.WaterCapacity);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: the outside of a round rim over a round foot is a cone's frustum π (R + r) √(h² + (R − r)²); a tank is a box without back and bottom")]
    public void A_toilet_and_a_bidet_follow_by_hand()
    {
        ComposedFixture toilet = ComposedTapes.But(All(ComposedKind.Toilet)[0], ("RimLength", 14), ("FootLength", 9));
        double slant = Math.Sqrt((15 * 15) + (2.5 * 2.5));
        Numbers.Close(Pi * 11.5 * slant, Patch(toilet, "outside"), 1e-8);
        Numbers.Close(90 + (Math.Atan(2.5 / 15) * 180 / Pi),
            toilet.Patches.Single(patch => patch.Name == "outside").SlopeFromHorizontal.Degrees, 1e-8);
        Numbers.Close((1.1 * Pi * 11.5 * slant) + (15 * (18 + 16)), Area(toilet, FixtureZoneKind.Outside), 1e-8);
        Numbers.Close(Disc(14) - (Pi * 12 * 9.5 / 4) + 64, Area(toilet, FixtureZoneKind.Rim));
        Numbers.Close(18 * 8, Area(toilet, FixtureZoneKind.Top));
        Assert.DoesNotContain(toilet.Zones, zone => zone.Kind == FixtureZoneKind.Bowl);
        Assert.Null(toilet.WaterCapacity);

        // An oval one: sums over 2000 × 100 cells in Python.
        SurfacePatch oval = All(ComposedKind.Toilet)[0].Patches.Single(patch => patch.Name == "outside");
        Numbers.Close(754.89211, oval.Area.SquareInches, 1e-5);
        Numbers.Close(94.187846, oval.SlopeFromHorizontal.Degrees, 1e-5);

        ComposedFixture bidet = ComposedTapes.But(All(ComposedKind.Bidet)[0], ("RimLength", 14), ("FootLength", 9), ("BowlLength", 10));
        Numbers.Close(Disc(14) - Disc(10) - Disc(1.25), Area(bidet, FixtureZoneKind.Rim));
        Numbers.Close(Pi * 11.5 * slant, Area(bidet, FixtureZoneKind.Outside), 1e-8);
        Numbers.Close((2 * Pi * 25) - Disc(1.75) - Disc(1), Area(bidet, FixtureZoneKind.Bowl), 1e-8);
        Numbers.Close(2.0 / 3 * Pi * 125, bidet.WaterCapacity!.Value.CubicInches);
        Numbers.Close((Pi * 9) + (Pi * (1.75 + 1 + 1.25)), bidet.MaskedEdge.Inches, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: half a cylinder π r h under half a disc, its opening off; feet as frustums by their girths, (g₁ + g₂)/2 · √(h² + ((g₁ − g₂)/2π)²)")]
    public void A_urinal_and_feet_follow_by_hand()
    {
        ComposedFixture urinal = ComposedTapes.But(
            All(ComposedKind.Urinal)[0], ("Projection", 9), ("BaseWidth", 18), ("BaseProjection", 9));
        Numbers.Close((1.05 * Pi * 9 * 25) - (Pi * 13 * 14 / 4), Area(urinal, FixtureZoneKind.Outside), 1e-8);
        Numbers.Close(Pi * 81 / 2, Area(urinal, FixtureZoneKind.Top));
        Numbers.Close(90, urinal.Patches.Single(patch => patch.Name == "outside").SlopeFromHorizontal.Degrees, 1e-8);

        ComposedFixture feet = All(ComposedKind.TubFeet)[0];
        double foot = 11 * Math.Sqrt(25 + Math.Pow(6 / (2 * Pi), 2));
        double pads = Disc(3.5) - (64 / (4 * Pi)) + (Pi * 3.5 * 0.5);
        Numbers.Close(4 * ((1.3 * foot) + pads), feet.CoatedArea.SquareInches);
        Numbers.Close(4 * (14 + (Pi * 3.5)), feet.MaskedEdge.Inches);
        Numbers.Close(3 * 60, All(ComposedKind.TubFeet)[1].CoatedArea.SquareInches);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand, face by face; a seat that falls by 0.5 in over 15 in is steeper by arctan(0.5/15)")]
    public void A_shower_base_with_a_seat_follows_by_hand()
    {
        ComposedFixture shower = All(ComposedKind.ShowerBaseWithSeat)[0];
        Numbers.Close((44 * 32 * 1.05) - Disc(3.25), Area(shower, FixtureZoneKind.Floor));
        Numbers.Close(((44 + 32) * 3) + (15 * 1.75) + (32 * 1.5), Area(shower, FixtureZoneKind.Wall));
        Numbers.Close(44 * (3.5 + 3 + 5), Area(shower, FixtureZoneKind.Curb));
        Numbers.Close(32 * Math.Sqrt(225 + 0.25), Area(shower, FixtureZoneKind.Seat));
        Numbers.Close((32 * 17) + (15 * (17.25 + 1.5)), Area(shower, FixtureZoneKind.Front));
        Numbers.Close(Math.Atan(0.5 / 15), shower.Zones.Single(zone => zone.Kind == FixtureZoneKind.Seat).SlopeFromHorizontal.Radians);
        Numbers.Close(44 * 32 * 3, shower.WaterCapacity!.Value.CubicInches);
        Numbers.Close((2 * (44 + 15 + 32)) + 3 + 5 + (17 + 0.5 + 1.5) + 1.5 + (Pi * 3.25), shower.MaskedEdge.Inches);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: shelves cover their thickness of the wall, niches their mouths, the window itself, each once")]
    public void Panels_and_a_ceiling_follow_by_hand()
    {
        ComposedFixture panels = All(ComposedKind.PrefabricatedSurround)[0];
        double wall = (120 * 59 * 1.02) - (3 * 14) - (2 * 24) - (24 * 20) + (2 * 3 * 59) + (2 * ((2 * 10 * 2) + 24));
        Numbers.Close(wall, Area(panels, FixtureZoneKind.Wall));
        Numbers.Close(3 * 14 * 4, Area(panels, FixtureZoneKind.Top));
        Numbers.Close(3 * ((14 * 1) + (2 * 4 * 1) + (14 * 4)), Area(panels, FixtureZoneKind.Edge));
        Numbers.Close((2 * 126) + 118 + 88, panels.MaskedEdge.Inches);

        ComposedFixture ceiling = All(ComposedKind.ShowerCeiling)[0];
        FixtureZone over = Assert.Single(ceiling.Zones);
        Assert.Equal(FixtureZoneKind.Ceiling, over.Kind);
        Numbers.Close(180, over.SlopeFromHorizontal.Degrees);
        Numbers.Close((60 * 34) - (2 * Disc(5)) - 90, over.Area.SquareInches);
        Numbers.Close((2 * 94) + (2 * Pi * 5) + 38, ceiling.MaskedEdge.Inches);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: both faces and four edges of each door, two hinge cups of 35 mm off the back")]
    public void Doors_fronts_and_a_sill_follow_by_hand()
    {
        ComposedFixture doors = All(ComposedKind.CabinetDoors)[0];
        Numbers.Close((4 * 360 * 2.08) - (4 * 2 * Disc(35 / 25.4)), Area(doors, FixtureZoneKind.Front));
        Numbers.Close(4 * 78 * 0.75, Area(doors, FixtureZoneKind.Edge));
        Numbers.Close(90, doors.Zones[0].SlopeFromHorizontal.Degrees);
        Numbers.Close(8 * Pi * 35, doors.MaskedEdge.Millimeters);
        Assert.Equal("4 × cabinet doors 609.6 mm × 381 mm", doors.Description);

        ComposedFixture fronts = All(ComposedKind.DrawerFronts)[0];
        Numbers.Close(3 * ((18 * 6) + (48 * 0.75)), fronts.CoatedArea.SquareInches);
        Assert.Equal(0, fronts.Zones[0].SlopeFromHorizontal.Degrees);

        ComposedFixture sill = All(ComposedKind.WindowSill)[0];
        Numbers.Close((40 * 5) + (50 * 0.75) + (40 * 2.5), sill.CoatedArea.SquareInches);
        Numbers.Close((2 * 45) + 40 + 5, sill.MaskedEdge.Inches);
    }

    [Fact]
    [Evidence(Basis.Independent, "JCGM 100:2008, 5.1.2 by hand: ∂A/∂L = D + h, ∂A/∂D = L + 2 h, ∂A/∂h = L + 2 D, each ± 1/8 in")]
    public void The_tape_s_uncertainty_goes_through()
    {
        ComposedFixture sill = new(ComposedKind.WindowSill,
        [
            Eighth("Length", 40), Eighth("Depth", 5), Eighth("EdgeHeight", 0.75), new("OpenEnds", 2),
        ]);
        FixtureUncertainty spread = FixtureUncertainty.Of(sill, made => made, TapeReadings.Of(sill, ReadingSpread.Rectangular));
        double u = 0.125 / Math.Sqrt(3);
        double expected = u * Math.Sqrt((5.75 * 5.75) + (41.5 * 41.5) + (50 * 50));
        Numbers.Close(expected, spread.StandardUncertaintyOfArea.SquareInches, 1e-6);
        Assert.Equal(3, spread.Contributions.Count);

        static TakenReading Eighth(string name, double inches) => new(name, Length.FromInches(inches), Length.FromInches(0.125));
    }

    [Property(MaxTest = 30)]
    [Evidence(Basis.Identity, "a longer reading of a flat face makes more area, never less: length of a sill, a ceiling, a door")]
    public void Area_grows_with_length(int seed)
    {
        Random random = new(seed);
        foreach (ComposedKind kind in new[] { ComposedKind.WindowSill, ComposedKind.ShowerCeiling, ComposedKind.CabinetDoors })
        {
            double inches = 30 + (20 * random.NextDouble());
            double more = inches + 0.1 + random.NextDouble();
            ComposedFixture fixture = ComposedTapes.Of(kind);
            Assert.True(ComposedTapes.But(fixture, ("Length", more)).CoatedArea > ComposedTapes.But(
                fixture, ("Length", inches)).CoatedArea);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "each kind says what is coated, what is not and why, and has readings with ranges; kinds have identifiers of their own")]
    public void Every_kind_says_what_it_is()
    {
        Assert.Equal(14, ComposedKind.Kinds.Count);
        Assert.Equal(14, ComposedKind.Kinds.Select(kind => kind.Id).Distinct().Count());
        Assert.Equal(ComposedKind.Kinds, ComposedTapes.Every().Select(fixture => fixture.Kind).Distinct());
        foreach (ComposedKind kind in ComposedKind.Kinds)
        {
            Assert.Same(kind, ComposedKind.Of(kind.Id));
            Assert.True(kind.NotCoated.Count > 0, kind.Name);
            Assert.All(kind.NotCoated,
                surface => Assert.StartsWith(surface.Name + ": not coated, because ", surface.ToString(), StringComparison.Ordinal));
            Assert.All(kind.Readings, reading => Assert.True(reading.Least < reading.Greatest, reading.ToString()));
            Assert.All(kind.Readings.Where(reading => reading.Measure.Equals(Measure.Length)), reading =>
                Assert.Contains(FixtureKind.All.SelectMany(one => one.Readings), usual => usual.Fixture == kind.Id && usual.Name == reading.Name));
        }

        Assert.Contains("known: doubleBowlSink", Assert.Throws<ArgumentException>(() => ComposedKind.Of("sauna")).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "a bidet of 1.5 m is doubted and one of 3 m refused; inches typed as centimetres are one doubt")]
    public void Unusual_readings_are_doubted()
    {
        ComposedFixture bidet = ComposedTapes.Of(ComposedKind.Bidet);
        ComposedFixture odd = bidet.With(new TakenReading("RimLength", Length.FromMeters(1.5)));
        Doubt doubt = Assert.Single(new TapeDoubts("bidet", odd).Doubts);
        Assert.Equal("RimLength", doubt.Reading);
        Numbers.Refuses("RimLength", () => bidet.With(new TakenReading("RimLength", Length.FromMeters(3))));
        ComposedFixture centimetres = new(bidet.Kind, bidet.Taken.Select(reading => reading.Measure.Equals(Measure.Length)
            ? new TakenReading(reading.Name, Length.FromMeters(reading.Value / 2.54)) : reading));
        Assert.Equal(DoubtKind.Unit, Assert.Single(new TapeDoubts("bidet", centimetres).Doubts).Kind);
    }

    [Theory]
    [InlineData("doubleBowlSink", "BowlLength", 25)]
    [InlineData("doubleBowlSink", "BowlCornerRadius", 9)]
    [InlineData("doubleBowlSink", "BowlInset", 3.5)]
    [InlineData("doubleBowlSink", "CoveRadius", 2.5)]
    [InlineData("doubleBowlSink", "SecondBowlWidth", 23)]
    [InlineData("cornerSink", "BowlLength", 20)]
    [InlineData("cornerSink", "FrontBow", 8)]
    [InlineData("cornerSink", "LeftReturn", 18)]
    [InlineData("vanity", "BowlLength", 31)]
    [InlineData("vanity", "BowlDepth", 0)]
    [InlineData("toilet", "OpeningWidth", 15)]
    [InlineData("toilet", "TankDepth", 0)]
    [InlineData("toilet", "ShelfWidth", 0)]
    [InlineData("bidet", "OverflowDiameter", 5.5)]
    [InlineData("urinal", "OpeningHeight", 26)]
    [InlineData("tubFeet", "PadDiameter", 2)]
    [InlineData("showerBaseWithSeat", "SeatFall", 4)]
    [InlineData("showerBaseWithSeat", "UpstandHeight", 0.25)]
    [InlineData("showerBaseWithSeat", "WallHeight", 18)]
    [InlineData("prefabricatedSurround", "ShelfDepth", 0)]
    [InlineData("prefabricatedSurround", "WindowHeight", 60)]
    [InlineData("prefabricatedSurround", "ReturnWidth", 0)]
    [InlineData("showerCeiling", "LightDiameter", 40)]
    [InlineData("showerCeiling", "VentWidth", 0)]
    [InlineData("cabinetDoors", "CupDiameter", 0)]
    [InlineData("windowSill", "Depth", 0)]
    [Evidence(Basis.Contract, "lengths that cannot go together, and parts without their sizes, are refused by name")]
    public void What_cannot_go_together_is_refused(string kind, string reading, double inches)
    {
        ComposedFixture fixture = ComposedTapes.Of(ComposedKind.Of(kind));
        Numbers.Refuses(reading, () => fixture.With(new TakenReading(reading, Length.FromInches(inches))));
    }

    [Fact]
    [Evidence(Basis.Contract, "missing, unknown, double and mistyped readings are refused by name")]
    public void Readings_are_checked()
    {
        ComposedFixture sill = ComposedTapes.Of(ComposedKind.WindowSill);
        Assert.Contains("lacks Depth, EdgeHeight, OpenEnds", Assert.Throws<ArgumentException>(() =>
            new ComposedFixture(ComposedKind.WindowSill, [new("Length", Length.FromInches(40))])).Message, StringComparison.Ordinal);
        Assert.Contains("\"Height\", which a window sill does not have", Assert.Throws<ArgumentException>(() =>
            sill.With(new("Height", Length.FromInches(40)))).Message, StringComparison.Ordinal);
        Assert.Contains("Length twice", Assert.Throws<ArgumentException>(() =>
            new ComposedFixture(sill.Kind, [.. sill.Taken, new("Length", Length.FromInches(40))])).Message, StringComparison.Ordinal);
        Assert.Contains("it is a length", Assert.Throws<ArgumentException>(() => sill.With(new TakenReading("Length", 40))).Message,
            StringComparison.Ordinal);
        Numbers.Refuses("OpenEnds", () => sill.With(new TakenReading("OpenEnds", 1.5)));
        Numbers.Refuses("OpenEnds", () => sill.With(new TakenReading("OpenEnds", 3)));
        Assert.Throws<ArgumentException>(() => sill.Value("Height"));
        Assert.Throws<ArgumentNullException>(() => new ComposedFixture(null!, []));
        Assert.Equal(sill, ComposedTapes.Of(ComposedKind.WindowSill));
        Assert.NotEqual(sill, ComposedTapes.But(sill, ("Length", 41)));
    }
}
