using System;
using System.Collections.Generic;
using System.Linq;
using static Refinish.Fixtures.FixtureMaterial;

namespace Refinish.Fixtures;

/// <summary>Shower bases with a seat, wall panels, ceilings.</summary>
internal static class ComposedShowers
{
    private static readonly FixtureMaterial[] Plastic = [Acrylic, Gelcoat, CulturedMarble, SolidSurface];

    private static readonly Source Bases = Source.CommonPractice("shower bases are 30 to 72 in long and 30 to 48 in wide over all");
    private static readonly Source Panels = Source.CommonPractice("wall panels of tubs and showers go 54 to 96 in up, walls are 28 to "
        + "72 in long");
    private static readonly Source Ceilings = Source.CommonPractice("ceilings over showers and tubs are 28 to 96 in long and wide");
    private static readonly Source Seats = Source.Published(
        "2010 ADA Standards for Accessible Design, quoted second-hand",
        "610.3: seats of showers are 17 to 19 in high, and 610.3.1: their front is 15 to 16 in from the wall; the band begins and ends "
            + "where seats of homes do");

    public static ComposedKind BaseWithSeat { get; } = new(
        "showerBaseWithSeat", "shower base with a seat",
        new ComposedRows(Bases)
            .Length("FloorLength", "length of the floor, from the wall to the seat's front", 20, 62)
            .Length("FloorWidth", "width of the floor, from the back to the curb", 23, 60)
            .Length("WallHeight", "height of the walls of the base above the floor", 0.75, 8, ComposedRows.Details)
            .Length("CurbInsideHeight", "height of the curb inside", 0.75, 9, ComposedRows.Details)
            .Length("CurbTopWidth", "width of the curb", 1.2, 8, ComposedRows.Details)
            .Length("CurbOutsideHeight", "height of the curb outside", 1, 12, ComposedRows.Details)
            .Length("SeatDepth", "depth of the seat, from its front to the wall", 9, 20, Seats)
            .Length("SeatHeight", "height of the seat's front above the floor", 14, 22, Seats)
            .LengthOrNone("SeatFall", "how much the seat falls towards its front", 0.1, 1.5, ComposedRows.Details)
            .Maybe("UpstandHeight", "height of the upstand round the seat", 0.75, 12)
            .LengthOrNone("DrainDiameter", "diameter of the drain", 1.45, 5, ComposedRows.Details)
            .Factor("TextureFactor", "developed over plain area of the floor", 1.5).All,
        SeatedBase)
    {
        Coated = "floor, two walls, the curb's inside, top and outside, the seat, its front to the floor, its end to the room and its "
            + "upstand; the seat goes "
            + "across the whole width at one end",
        NotCoated = [new("drain", null, "its trim is metal and comes off", Source.CommonPractice("drain trim is taken off or renewed"))],
        Materials = [.. Plastic, EnamelledSteel, CeramicTile],
        Clearing = "take off door tracks or the curtain rod, grab bars and what lies on the seat; cut out all caulk along walls, seat "
            + "and floor",
        PuttingBack = "caulk the joints, refit bars and tracks",
        Cautions = [Cautions.FixtureGivesWay], Size = ("FloorLength", "FloorWidth"), StandsOnTheFloor = true, };

    public static ComposedKind Surround { get; } = new(
        "prefabricatedSurround", "prefabricated surround",
        new ComposedRows(Panels)
            .Length("BackLength", "length of the back panel", 28, 74)
            .LengthOrNone("SideLength", "length of a side panel; 0 for a back panel alone", 24, 62)
            .Length("Height", "height of the panels", 36, 100)
            .Count("Returns", "returns beside the opening in front", 0, 2)
            .Maybe("ReturnWidth", "width of a return", 0.75, 12)
            .CountOrNone("Shelves", "shelves alike", 20)
            .Maybe("ShelfLength", "length of a shelf along the wall", 3, 62)
            .Maybe("ShelfDepth", "how far a shelf stands out", 1.5, 9)
            .Maybe("ShelfThickness", "thickness of a shelf", 0.3, 3)
            .CountOrNone("Niches", "niches and soap dishes alike", 20)
            .Maybe("NicheLength", "length of a niche along the wall", 3, 40)
            .Maybe("NicheHeight", "height of a niche", 2, 40)
            .Maybe("NicheDepth", "depth of a niche", 0.75, 6)
            .Maybe("WindowLength", "length of a window", 8, 60)
            .Maybe("WindowHeight", "height of a window", 8, 60)
            .Factor("ProfileFactor", "developed over plain area of panels with a pattern", 1.3).All,
        WallPanels)
    {
        Coated = "back and side panels, returns, shelves all round, niches and soap dishes inside; the joint of two panels is in no "
            + "panel's area twice",
        NotCoated =
        [
            new("valve, spout, bars and the joints' caulk", null, "metal and caulk move and shed a coat",
                Source.CommonPractice("fittings come off, caulk is cut out")),
            new("window and its frame", null, "it is another surface with another coat", Source.CommonPractice("windows are masked")),
        ],
        Materials = Plastic.Append(CeramicTile).ToArray(),
        Clearing = "take off spout, handles, shower arm, rails and loose dishes, and cap the pipes; press on the panels for hollow "
            + "places; cut out all caulk in "
            + "the corners and along tub, floor, window and ceiling",
        PuttingBack = "caulk corners and the joints to tub, floor, window and ceiling; refit spout, handles, shower arm, rails and dishes",
        Size = ("BackLength", "Height"), };

    public static ComposedKind Ceiling { get; } = new(
        "showerCeiling", "ceiling of a shower",
        new ComposedRows(Ceilings)
            .Length("Length", "length of the ceiling", 26, 100)
            .Length("Width", "width of the ceiling", 24, 100)
            .CountOrNone("Lights", "round lights alike", 20)
            .Maybe("LightDiameter", "diameter of a light", 2, 16)
            .Maybe("VentLength", "length of the vent's opening", 4, 24)
            .Maybe("VentWidth", "width of the vent's opening", 4, 24).All,
        CeilingOver)
    {
        Coated = "the underside, all of it level; lights and vent come off it",
        NotCoated = [new("lights, vent and sprinkler", null, "they must stay free: heat, air and water pass through them",
            Source.CommonPractice("fittings are taken off by somebody qualified, or masked"))],
        Materials = [Acrylic, Gelcoat, CeramicTile, CulturedMarble, SolidSurface],
        Clearing = "switch the circuit off and have lights and vent taken off; look for water stains and soft places; cover floor, "
            + "fixtures and walls below; cut "
            + "out all caulk along the walls",
        PuttingBack = "caulk the joint to the walls, have lights and vent put back",
        Cautions = [Cautions.WetElectricity, Cautions.WaterBehind], Size = ("Length", "Width"), };

    private static void SeatedBase(Composition tape)
    {
        double length = tape.Of("FloorLength");
        double width = tape.Of("FloorWidth");
        double seat = tape.Of("SeatHeight");
        double curb = tape.Of("CurbInsideHeight");
        double foot = curb - tape.Of("CurbOutsideHeight");
        double fall = tape.Of("SeatFall");
        double depth = tape.Of("SeatDepth");
        double upstand = tape.Of("UpstandHeight");
        tape.AtMost("DrainDiameter", Math.Min(length, width) / 2, "half of the floor's shorter side");
        tape.AtMost("WallHeight", seat, "the height of the seat, at which the wall beside it ends");
        tape.AtMost("SeatFall", depth / 4, "a quarter of the seat's depth");
        Guard.Rule(fall <= upstand || upstand == 0, "UpstandHeight", upstand, Measure.Length,
            "0, or at least the SeatFall of " + Measure.Length.Format(fall));
        tape.Plate("floor", FixtureZoneKind.Floor, tape["FloorLength"], tape["FloorWidth"], Plane.Level(0, 0, 0), tape.Of("TextureFactor"),
            PlaneShapes.Disc(tape["DrainDiameter"]));
        tape.Plate("back wall", FixtureZoneKind.Wall, tape["FloorLength"], tape["WallHeight"], Plane.Front(0, width, 0));
        tape.Plate("end wall", FixtureZoneKind.Wall, tape["FloorWidth"], tape["WallHeight"], Plane.Right(0, 0, 0));
        tape.Plate("curb, inside", FixtureZoneKind.Curb, tape["FloorLength"], tape["CurbInsideHeight"], Rear(length, 0, 0));
        tape.Plate("curb, top", FixtureZoneKind.Curb, tape["FloorLength"], tape["CurbTopWidth"],
            Plane.Level(0, -tape.Of("CurbTopWidth"), curb));
        tape.Plate("curb, outside", FixtureZoneKind.Curb, tape["FloorLength"], tape["CurbOutsideHeight"],
            Plane.Front(0, -tape.Of("CurbTopWidth"), foot));
        Num slope = Num.Arctan(tape["SeatFall"] / tape["SeatDepth"]);
        Num slant = Num.Sqrt(Num.Square(tape["SeatDepth"]) + Num.Square(tape["SeatFall"]));
        tape.Plate("seat", FixtureZoneKind.Seat, slant, tape["FloorWidth"], Rising(length, seat, slope));
        tape.Plate("seat's front to the floor", FixtureZoneKind.Front, tape["FloorWidth"], tape["SeatHeight"],
            Plane.Left(length, width, 0));
        Num end = tape["SeatDepth"] * (tape["SeatHeight"] + (tape["SeatFall"] / 2) + tape["CurbOutsideHeight"] - tape["CurbInsideHeight"]);
        tape.Surface("seat's end to the room", FixtureZoneKind.Front, end, Math.PI / 2);
        SurfaceBand endFace = SurfaceBand.Face(
            FixtureZoneKind.Front, new(length, 0, foot), new(length + depth, 0, foot), new(length + depth, 0, seat + fall),
                new(length, 0, seat));
        tape.Draw(mesh => mesh.AddFaces(endFace));
        Upstand(tape, length, width, seat, fall, depth, upstand);
        Num level = Num.Min(tape["WallHeight"], tape["CurbInsideHeight"]);
        tape.Holds(tape["FloorLength"] * tape["FloorWidth"] * level);
        tape.Tape((2 * (tape["FloorLength"] + tape["SeatDepth"])) + (2 * tape["FloorWidth"]));
        Num seatEnd = tape["SeatHeight"] + tape["SeatFall"] + tape["CurbOutsideHeight"] - tape["CurbInsideHeight"];
        tape.Tape(tape["CurbTopWidth"] + tape["CurbOutsideHeight"] + seatEnd + PlaneShapes.Circle(tape["DrainDiameter"]));
    }

    // Its upper line is level, so that a seat that falls leaves less of it at the wall.
    private static void Upstand(Composition tape, double length, double width, double seat, double fall, double depth, double upstand)
    {
        if (upstand == 0)
        {
            return;
        }

        Num rest = tape["UpstandHeight"] - tape["SeatFall"];
        tape.Tape(rest);
        tape.Surface("upstand behind the seat", FixtureZoneKind.Wall,
            tape["SeatDepth"] * (tape["UpstandHeight"] - (tape["SeatFall"] / 2)), Math.PI / 2);
        tape.Surface("upstand at the seat's wall", FixtureZoneKind.Wall, tape["FloorWidth"] * rest, Math.PI / 2);
        double far = length + depth;
        double top = seat + upstand;
        List<SurfaceBand> faces =
        [
            SurfaceBand.Face(FixtureZoneKind.Wall, new(length, width, seat), new(far, width, seat + fall), new(far, width, top),
                new(length, width, top)),
        ];
        if (upstand > fall)
        {
            faces.Add(SurfaceBand.Upright(FixtureZoneKind.Wall, far, width, far, 0, seat + fall, top));
        }

        tape.Draw(mesh => mesh.AddFaces([.. faces]));
    }

    // Upright, seen from behind; from its lower corner at the right.
    private static Plane Rear(double x, double y, double z) => new(new(x, y, z), new(-1, 0, 0), new(0, 0, 1), Math.PI / 2);

    // Rising to the right from a line along y.
    private static Plane Rising(double x, double z, Num slope) =>
        new(new(x, 0, z), new(Math.Cos(slope.Value), 0, Math.Sin(slope.Value)), new(0, 1, 0), slope);

    private static void WallPanels(Composition tape)
    {
        double back = tape.Of("BackLength");
        double side = tape.Of("SideLength");
        double turn = tape.Of("ReturnWidth");
        double high = tape.Of("Height");
        tape.Both("Returns", "ReturnWidth");
        Guard.Rule(side > 0 || tape.Count("Returns") == 0, "Returns", tape.Of("Returns"), Measure.Number, "0 where there is no side panel");
        foreach ((string count, string size) in new[]
        {
            ("Shelves", "ShelfLength"), ("Shelves", "ShelfDepth"), ("Shelves", "ShelfThickness"),
            ("Niches", "NicheLength"), ("Niches", "NicheHeight"), ("Niches", "NicheDepth"),
        })
        {
            tape.Both(count, size);
        }

        tape.Both("WindowLength", "WindowHeight");
        double longest = Math.Max(back, side);
        tape.AtMost("ShelfLength", longest, "the longest panel");
        tape.AtMost("NicheLength", longest, "the longest panel");
        tape.AtMost("WindowLength", longest, "the longest panel");
        tape.AtMost("NicheHeight", high, "the height of the panels");
        tape.AtMost("WindowHeight", high, "the height of the panels");
        tape.AtMost("ShelfThickness", high, "the height of the panels");
        Num panels = tape["BackLength"] + (2 * tape["SideLength"]);
        Num window = tape["WindowLength"] * tape["WindowHeight"];
        Num covered = (tape["Shelves"] * tape["ShelfLength"] * tape["ShelfThickness"])
            + (tape["Niches"] * tape["NicheLength"] * tape["NicheHeight"]) + window;
        tape.Surface("panels", FixtureZoneKind.Wall, panels * tape["Height"], Math.PI / 2, factor: tape.Of("ProfileFactor"),
            openings: covered);
        List<SurfaceBand> walls = [SurfaceBand.Upright(FixtureZoneKind.Wall, 0, 0, back, 0, 0, high)];
        if (side > 0)
        {
            walls.Add(SurfaceBand.Upright(FixtureZoneKind.Wall, 0, -side, 0, 0, 0, high));
            walls.Add(SurfaceBand.Upright(FixtureZoneKind.Wall, back, 0, back, -side, 0, high));
        }

        tape.Draw(mesh => mesh.AddFaces([.. walls]));
        tape.Plates(
            "returns", FixtureZoneKind.Wall, tape["Returns"], tape["ReturnWidth"], tape["Height"],
                [Plane.Front(-turn, -side, 0), Plane.Front(back, -side, 0)]);
        Shelves(tape, back, high);
        Niches(tape, back);
        Num free = 2 * tape["Height"];
        tape.Tape((2 * (panels + (tape["Returns"] * tape["ReturnWidth"]))) + free + (2 * (tape["WindowLength"] + tape["WindowHeight"])));
    }

    private static void Shelves(Composition tape, double back, double high)
    {
        int count = tape.Count("Shelves");
        double length = tape.Of("ShelfLength");
        double depth = tape.Of("ShelfDepth");
        double thick = tape.Of("ShelfThickness");
        double x = (back - length) / 2;
        double[] heights = [.. Enumerable.Range(1, count).Select(i => high * i / (count + 1))];
        Num n = tape["Shelves"];
        tape.Plates("shelves, top", FixtureZoneKind.Top, n, tape["ShelfLength"], tape["ShelfDepth"],
            heights.Select(z => Plane.Level(x, -depth, z + thick)));
        tape.Plates("shelves, front", FixtureZoneKind.Edge, n, tape["ShelfLength"], tape["ShelfThickness"],
            heights.Select(z => Plane.Front(x, -depth, z)));
        tape.Plates(
            "shelves, ends", FixtureZoneKind.Edge, 2 * n, tape["ShelfDepth"], tape["ShelfThickness"],
            heights.SelectMany(z => new[] { Plane.Left(x, 0, z), Plane.Right(x + length, -depth, z) }));
        tape.Plates("shelves, underside", FixtureZoneKind.Edge, n, tape["ShelfDepth"], tape["ShelfLength"],
            heights.Select(z => Plane.Underside(x, -depth, z)));
    }

    // A flank above looks down as much as the one below looks up: upright on the whole. They are drawn beside the wall.
    private static void Niches(Composition tape, double back)
    {
        Num l = tape["NicheLength"];
        Num h = tape["NicheHeight"];
        tape.Surface("niches, inside", FixtureZoneKind.Wall, tape["Niches"] * ((2 * (l + h) * tape["NicheDepth"]) + (l * h)), Math.PI / 2);
        double length = tape.Of("NicheLength");
        double depth = tape.Of("NicheDepth");
        for (int i = 0; i < tape.Count("Niches"); i++)
        {
            WallRecess niche = new(
                WallRecessKind.Niche, UnitsNet.Length.FromMeters(length), UnitsNet.Length.FromMeters(tape.Of("NicheHeight")),
                    UnitsNet.Length.FromMeters(depth));
            SurfaceBand[] faces = [
                .. niche.Draw(back + tape.Of("ReturnWidth") + 0.1 + (i * (length + 0.1))).Select(
                    face => face with { Zone = FixtureZoneKind.Wall })];
            tape.Draw(mesh => mesh.AddFaces(faces));
        }
    }

    private static void CeilingOver(Composition tape)
    {
        tape.Both("Lights", "LightDiameter");
        tape.Both("VentLength", "VentWidth");
        double longer = Math.Max(tape.Of("Length"), tape.Of("Width"));
        double shorter = Math.Min(tape.Of("Length"), tape.Of("Width"));
        tape.AtMost("LightDiameter", shorter, "the ceiling's shorter side");
        Guard.Rule(Math.Max(tape.Of("VentLength"), tape.Of("VentWidth")) <= longer, "VentLength", tape.Of("VentLength"), Measure.Length,
            "a vent that fits the ceiling");
        Num vent = tape["VentLength"] * tape["VentWidth"];
        tape.Plate("ceiling", FixtureZoneKind.Ceiling, tape["Width"], tape["Length"], Plane.Underside(0, 0, 0), openings:
            tape.Discs("Lights", "LightDiameter") + vent);
        tape.Tape((2 * (tape["Length"] + tape["Width"])) + tape.Rings("Lights", "LightDiameter")
            + (2 * (tape["VentLength"] + tape["VentWidth"])));
    }
}
