using System;
using System.Collections.Generic;
using System.Linq;
using static Refinish.Fixtures.FixtureMaterial;

namespace Refinish.Fixtures;

/// <summary>Doors and drawer fronts of cabinets, window sills.</summary>
internal static class ComposedBoards
{
    private static readonly Source Doors = Source.CommonPractice("doors of cabinets are 8 to 48 in wide and 10 to 96 in high, drawer "
        + "fronts 4 to 15 in high");
    private static readonly Source Cups = Source.CommonPractice("cups of concealed hinges are 35 mm wide, on makers' drawings of "
        + "several makes; older and small ones 26 to 40 mm");
    private static readonly Source Sills = Source.CommonPractice("window sills are 12 to 120 in long and 2 to 14 in deep");
    private static readonly Source HiddenBacks = Source.CommonPractice("the back of a drawer front is screwed to its box");

    private static readonly FixtureMaterial[] Boards = [Laminate, Wood];

    public static ComposedKind CabinetDoors { get; } = new(
        "cabinetDoors", "cabinet doors",
        Board(new ComposedRows(Doors), 8, 98)
            .CountOrNone("HingeCups", "bored cups of hinges in a door", 6)
            .Maybe("CupDiameter", "diameter of a cup", 1, 1.6).All,
        Pieces)
    {
        Coated = "fronts, all edges, and backs where both faces are coated; doors of one size, several sizes are several entries",
        NotCoated =
        [
            new("cups and screw holes of hinges", null, "a coat makes hinges sit proud and screws bite in paint", Cups),
            new("glass, mesh and gaskets", null, "they are masked or taken out", Source.CommonPractice("inserts are masked or taken out")),
        ],
        Materials = Boards,
        Clearing = "number each door and its place, take it off its hinges, take hinges, handles and bumpers off; plug hinge cups and "
            + "screw holes; see what it is "
            + "made of: swollen board and loose laminate are repaired or left",
        PuttingBack = "take the plugs out, refit hinges, handles and bumpers, hang each door in its place and set it",
        Size = ("Length", "Width"), Pieces = "Pieces", };

    public static ComposedKind DrawerFronts { get; } = new(
        "drawerFronts", "drawer fronts", Board(new ComposedRows(Doors), 3, 48).All, Pieces)
    {
        Coated = "fronts, all edges, and backs where both faces are coated; fronts of one size, several sizes are several entries",
        NotCoated = [new("back of a front that stays on its box", null, "it does not show, and the box is in the way", HiddenBacks)],
        Materials = Boards,
        Clearing = "number each drawer and its place, take it out, unscrew the front from its box, take handles off and plug their holes",
        PuttingBack = "take the plugs out, screw the fronts on, refit handles, set each drawer in its place",
        Size = ("Length", "Width"), Pieces = "Pieces", };

    public static ComposedKind WindowSill { get; } = new(
        "windowSill", "window sill",
        new ComposedRows(Sills)
            .Length("Length", "length of the sill", 10, 122)
            .Length("Depth", "depth of the sill, from the frame to its front", 1.5, 16)
            .LengthOrNone("EdgeHeight", "height of the front edge", 0.4, 3, ComposedRows.Details)
            .Count("OpenEnds", "ends that show", 0, 2)
            .Maybe("ApronHeight", "height of a board below it", 1, 8).All,
        Sill)
    {
        Coated = "top, front edge, ends that show, and a board below",
        NotCoated = [new("window frame, sash and glass", null, "they move and are another surface",
            Source.CommonPractice("windows are masked"))],
        Materials = [CulturedMarble, SolidSurface, CeramicTile, Laminate, Gelcoat, Acrylic],
        Clearing = "take off curtains, blinds and what stands on it; dry it, and look for soft and black places at the frame; cut out "
            + "all caulk along frame and walls",
        PuttingBack = "caulk the joint to frame and walls so that condensation runs off, put blinds back",
        Cautions = [Cautions.SunAndCondensation, Cautions.WaterBehind], Size = ("Length", "Depth"), };

    private static ComposedRows Board(ComposedRows rows, double least, double greatest) => rows
        .Count("Pieces", "how many of this size", 1, 200)
        .Length("Length", "length of a piece", least, greatest)
        .Length("Width", "width of a piece", 3, 50)
        .Length("Thickness", "thickness of a piece", 0.4, 1.6, ComposedRows.Details)
        .Count("Faces", "faces that are coated: 1, or 2 with the back", 1, 2)
        .Angle("Slope", "how a face lies while it is sprayed, from level: 0° flat, 90° hung", 90)
        .Factor("ProfileFactor", "developed over plain area of a front with panels or grooves", 1.5);

    private static void Pieces(Composition tape)
    {
        bool cups = tape.Has("HingeCups");
        int count = tape.Count("Pieces");
        double length = tape.Of("Length");
        double width = tape.Of("Width");
        double step = length + 0.1;
        Num openings = 0;
        if (cups)
        {
            tape.Both("HingeCups", "CupDiameter");
            Guard.Rule(tape.Count("HingeCups") == 0 || tape.Count("Faces") == 2, "HingeCups", tape.Of("HingeCups"), Measure.Number,
                "0 where one face is coated: the cups are in the back");
            tape.AtMost("CupDiameter", Math.Min(length, width) / 2, "half of the door's shorter side");
            openings = tape["Pieces"] * tape.Discs("HingeCups", "CupDiameter");
            tape.Tape(tape["Pieces"] * tape.Rings("HingeCups", "CupDiameter"));
        }

        IEnumerable<Plane> Row(double y) => Enumerable.Range(0, count).Select(i => Plane.Leaning(i * step, y, 0, tape["Slope"]));
        tape.Plates("fronts", FixtureZoneKind.Front, tape["Pieces"], tape["Length"], tape["Width"], Row(0), tape.Of("ProfileFactor"));
        if (tape.Count("Faces") == 2)
        {
            tape.Plates("backs", FixtureZoneKind.Front, tape["Pieces"], tape["Length"], tape["Width"],
                Row(width + 0.1 + tape.Of("Thickness")), openings: openings);
        }

        // Two edges look up and down as far as a door leans, two stand upright: upright on the whole.
        Num around = 2 * (tape["Length"] + tape["Width"]);
        tape.Surface("edges", FixtureZoneKind.Edge, tape["Pieces"] * around * tape["Thickness"], Math.PI / 2);
        SurfaceBand[] edges = [.. Row(0).SelectMany(front => Edges(front, length, width, tape.Of("Thickness")))];
        tape.Draw(mesh => mesh.AddFaces(edges));
        if (tape.Count("Faces") == 1)
        {
            tape.Tape(tape["Pieces"] * around);
        }
    }

    // The four edges behind a face.
    private static IEnumerable<SurfaceBand> Edges(Plane front, double length, double width, double thickness)
    {
        MeshPoint behind = MeshPoint.Scaled(MeshPoint.Cross(front.Across, front.Along), thickness);
        MeshPoint a = front.At;
        MeshPoint b = MeshPoint.Sum(a, MeshPoint.Scaled(front.Along, length));
        MeshPoint c = MeshPoint.Sum(b, MeshPoint.Scaled(front.Across, width));
        MeshPoint d = MeshPoint.Sum(a, MeshPoint.Scaled(front.Across, width));
        foreach ((MeshPoint from, MeshPoint to) in new[] { (a, b), (b, c), (c, d), (d, a) })
        {
            yield return SurfaceBand.Face(FixtureZoneKind.Edge, from, MeshPoint.Sum(from, behind), MeshPoint.Sum(to, behind), to);
        }
    }

    private static void Sill(Composition tape)
    {
        double length = tape.Of("Length");
        double depth = tape.Of("Depth");
        double edge = -tape.Of("EdgeHeight");
        double apron = tape.Of("ApronHeight");
        tape.Plate("top", FixtureZoneKind.Top, tape["Length"], tape["Depth"], Plane.Level(0, 0, 0));
        tape.Plate("front edge", FixtureZoneKind.Edge, tape["Length"], tape["EdgeHeight"], Plane.Front(0, 0, edge));
        tape.Plates("ends", FixtureZoneKind.Edge, tape["OpenEnds"], tape["Depth"], tape["EdgeHeight"],
            [Plane.Right(length, 0, edge), Plane.Left(0, depth, edge)]);
        tape.Plate("board below", FixtureZoneKind.Front, tape["Length"], tape["ApronHeight"], Plane.Front(0, 0.02, edge - apron));
        Num below = apron > 0 ? tape["Length"] + (2 * tape["ApronHeight"]) : 0;
        tape.Tape((2 * (tape["Length"] + tape["Depth"])) + below);
    }
}
