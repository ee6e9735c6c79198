using System;
using System.Linq;
using static Refinish.Fixtures.FixtureMaterial;

namespace Refinish.Fixtures;

/// <summary>Sinks with rounded bowls and decks, sinks in a corner, tops with bowls of one piece.</summary>
internal static class ComposedSinks
{
    private static readonly FixtureMaterial[] Cast =
        [EnamelledCastIron, EnamelledSteel, VitreousChina, Acrylic, Gelcoat, CulturedMarble, SolidSurface];

    private static readonly Source Kitchen = Source.CommonPractice(
        "kitchen sinks of two bowls are 25 to 48 in long, most often 33 × 22 in, with bowls 7 to 12 in deep; guides for homeowners "
            + "print the same");
    private static readonly Source Corners = Source.CommonPractice("wash basins in corners are 11 to 24 in along each wall");
    private static readonly Source Vanities = Source.CommonPractice("vanity tops are 17 to 96 in long, 15 to 26 in deep, their splashes "
        + "2 to 6 in high");

    private static readonly Source Worn = Source.CommonPractice("what sits on a wash basin's or a kitchen sink's metal parts is "
        + "refitted, not coated");

    public static ComposedKind DoubleBowl { get; } = new(
        "doubleBowlSink", "double-bowl sink",
        Kitchened(new ComposedRows(Kitchen))
            .Length("SecondBowlLength", "length of the right bowl's mouth", 8, 28)
            .Length("SecondBowlWidth", "width of the right bowl's mouth", 10, 20)
            .Length("SecondBowlDepth", "depth of the right bowl", 4, 13)
            .Maybe("FrontHeight", "height of a front that shows", 4, 13).All,
        tape => KitchenSink(tape, ("left bowl", string.Empty), ("right bowl", "Second")))
    {
        Coated = "the deck with the divider, both bowls inside, and a front that shows; the corners of the rim are taken as square",
        NotCoated = [Strainers()],
        Materials = Cast,
        Clearing = "take off strainers or disposer flange and what stands in the deck; cut out all caulk under its rim",
        PuttingBack = "set strainers and what stands in the deck in sealant, caulk the joint to the counter",
        Size = ("Length", "Width"), };

    public static ComposedKind Farm { get; } = new(
        "farmSink", "farm sink",
        Kitchened(new ComposedRows(Kitchen)).Length("FrontHeight", "height of the apron front", 4, 13).All,
        tape => KitchenSink(tape, ("bowl", string.Empty)))
    {
        Coated = "the deck, the bowl inside, and the front that stands out of the cabinets; the corners of the rim are taken as square",
        NotCoated = [Strainers()],
        Materials = Cast,
        Clearing = "take off strainer or disposer flange; cut out all caulk between sink, counter and cabinet",
        PuttingBack = "set the strainer in sealant, caulk the joints to counter and cabinet", Size = ("Length", "Width"), };

    public static ComposedKind Corner { get; } = new(
        "cornerSink", "corner sink",
        new ComposedRows(Corners)
            .Length("LeftWall", "length along the left wall", 10, 26)
            .Length("RightWall", "length along the right wall", 10, 26)
            .LengthOrNone("LeftReturn", "left side, square to the left wall", 2, 16)
            .LengthOrNone("RightReturn", "right side, square to the right wall", 2, 16)
            .LengthOrNone("FrontBow", "how far the front is bowed out", 0.5, 7)
            .Length("BowlLength", "length of the bowl's mouth along the front", 7, 20)
            .Length("BowlWidth", "width of the bowl's mouth", 6, 16)
            .Length("BowlDepth", "depth of the bowl", 3, 9)
            .LengthOrNone("SkirtHeight", "height of the outside below the rim", 1.5, 10, ComposedRows.Details)
            .CountOrNone("FaucetHoles", "holes for faucets in the rim", 8)
            .Maybe("FaucetHoleDiameter", "diameter of a faucet hole", 0.9, 1.8)
            .LengthOrNone("DrainDiameter", "diameter of the drain", 1.2, 2.5, ComposedRows.Details)
            .LengthOrNone("OverflowDiameter", "diameter of the overflow", 0.4, 2, ComposedRows.Details).All,
        CornerSink)
    {
        Coated = "the rim, the bowl inside (half an ellipsoid) and the outside between the two walls; its column is a fixture by itself",
        NotCoated = [Strainers(),
            new("underside", null, "it does not show and traps overspray against the wall and the trap",
                Source.CommonPractice("undersides of basins are left"))],
        Materials = [VitreousChina, EnamelledCastIron, EnamelledSteel, Acrylic, Gelcoat, CulturedMarble, SolidSurface],
        Clearing = "look that it hangs fast on both walls; cut out all caulk along both walls",
        PuttingBack = "caulk the joints to both walls, refit what was taken off",
        Cautions = [Cautions.FixtureGivesWay], Size = ("LeftWall", "RightWall"), };

    public static ComposedKind Vanity { get; } = new(
        "vanity", "vanity top with bowls",
        new ComposedRows(Vanities)
            .Length("Length", "length of the top", 16, 98)
            .Length("Depth", "depth of the top, from the face of the backsplash to the front", 14, 27)
            .Length("EdgeHeight", "height of the front edge", 0.5, 6, ComposedRows.Details)
            .Count("OpenEnds", "ends of the top that show", 0, 2)
            .Count("Bowls", "bowls of one piece with the top", 0, 3)
            .LengthOrNone("BowlLength", "length of a bowl's mouth", 9, 26)
            .LengthOrNone("BowlWidth", "width of a bowl's mouth", 8, 18)
            .LengthOrNone("BowlDepth", "depth of a bowl", 3, 9)
            .LengthOrNone("SplashHeight", "height of the splashes", 1.5, 8)
            .LengthOrNone("SplashThickness", "thickness of the splashes", 0.2, 1.6, ComposedRows.Details)
            .Count("SideSplashes", "splashes at the sides, loose pieces on the top", 0, 2)
            .CountOrNone("FaucetHoles", "holes for faucets in all", 18)
            .Maybe("FaucetHoleDiameter", "diameter of a faucet hole", 0.9, 1.8)
            .LengthOrNone("DrainDiameter", "diameter of a drain", 1.2, 2.5, ComposedRows.Details)
            .LengthOrNone("OverflowDiameter", "diameter of an overflow", 0.4, 2, ComposedRows.Details).All,
        VanityTop)
    {
        Coated = "top, front edge, ends that show, bowls inside (half ellipsoids), backsplash and side splashes; what a side splash "
            + "covers of the top is not counted",
        NotCoated = [Strainers(),
            new("hidden edges of the pieces", null, "the joints are caulked after the last coat, and caulk holds on the old surface",
                Source.CommonPractice("joints between pieces stay free of coating"))],
        Materials = [CulturedMarble, SolidSurface, Gelcoat, Acrylic, Laminate, CeramicTile, VitreousChina],
        Clearing = "see which splashes are loose pieces; cut out all caulk along walls, splashes and cabinet",
        PuttingBack = "set loose splashes and caulk the joints of all pieces, refit what was taken off", Size = ("Length", "Depth"), };

    private static UncoatedSurface Strainers() =>
        new("drain fitting, strainer and faucet", null, "metal that is turned, screwed and scoured sheds a coat", Worn);

    private static ComposedRows Kitchened(ComposedRows rows) => rows
        .Length("Length", "length over the rim", 20, 50)
        .Length("Width", "width over the rim, front to back", 14, 26)
        .Length("BowlLength", "length of the bowl's mouth", 8, 46)
        .Length("BowlWidth", "width of the bowl's mouth", 10, 20)
        .Length("BowlDepth", "depth of the bowl", 4, 13)
        .Length("BowlCornerRadius", "radius of the mouth's corners", 0.3, 6, ComposedRows.Details)
        .LengthOrNone("BowlInset", "how far the floor lies in from the mouth on every side", 0.1, 3, ComposedRows.Details)
        .LengthOrNone("CoveRadius", "radius between floor and walls", 0.1, 3, ComposedRows.Details)
        .LengthOrNone("DrainDiameter", "diameter of a drain", 1.4, 4.5, ComposedRows.Details)
        .CountOrNone("FaucetHoles", "holes in the deck", 8).Maybe("FaucetHoleDiameter", "diameter of a hole in the deck", 0.9, 2);

    private static void KitchenSink(Composition tape, params (string Name, string Prefix)[] bowls)
    {
        double length = tape.Of("Length");
        double width = tape.Of("Width");
        tape.Both("FaucetHoles", "FaucetHoleDiameter");
        double together = bowls.Sum(bowl => tape.Of(bowl.Prefix + "BowlLength"));
        tape.AtMost("BowlLength", length - together + tape.Of("BowlLength"), "what the rim's length leaves");
        Num mouths = Num.Sum(bowls.Select(bowl => PlaneShapes.RoundedRectangle(
            tape[bowl.Prefix + "BowlLength"], tape[bowl.Prefix + "BowlWidth"], tape["BowlCornerRadius"])));
        tape.Surface(
            bowls.Length > 1 ? "deck and divider" : "deck", FixtureZoneKind.Rim, (tape["Length"] * tape["Width"]) - mouths, 0,
            openings: tape.Discs("FaucetHoles", "FaucetHoleDiameter"));
        double x = -length / 2;
        foreach ((string name, string prefix) in bowls)
        {
            double cell = tape.Of(prefix + "BowlLength") + ((length - together) / bowls.Length);
            tape.RoundedBowl(name, Basin(tape, prefix), tape["DrainDiameter"], new(x + (cell / 2), 0, 0), cell, width);
            x += cell;
        }

        double front = tape.Of("FrontHeight");
        tape.Plate("front", FixtureZoneKind.Front, tape["Length"], tape["FrontHeight"], Plane.Front(-length / 2, -width / 2, -front));
        tape.Tape((2 * (tape["Length"] + tape["Width"])) + (2 * tape["FrontHeight"]));
        tape.Tape(bowls.Length * PlaneShapes.Circle(tape["DrainDiameter"]));
        tape.Tape(tape.Rings("FaucetHoles", "FaucetHoleDiameter"));
    }

    private static RuledBasin Basin(Composition tape, string prefix)
    {
        double length = tape.Of(prefix + "BowlLength");
        double width = tape.Of(prefix + "BowlWidth");
        double inset = tape.Of("BowlInset");
        double radius = tape.Of("BowlCornerRadius");
        double depth = tape.Of(prefix + "BowlDepth");
        tape.AtMost(prefix + "BowlWidth", tape.Of("Width"), "the width over the rim");
        tape.AtMost("BowlCornerRadius", Math.Min(length, width) / 2, "half of the bowl's shorter side");
        tape.AtMost("BowlInset", radius, "the radius of the mouth's corners");
        tape.AtMost("CoveRadius", Math.Min(radius - inset, depth / 2), "what the corners leave at the floor, and half of the depth");
        tape.AtMost("DrainDiameter", Math.Min(length, width) - (2 * inset), "the floor's shorter side");
        return new RuledBasin(
            length, width, radius, length - (2 * inset), width - (2 * inset), radius - inset, depth, inset, inset, tape.Of("CoveRadius"));
    }

    private static void CornerSink(Composition tape)
    {
        double left = tape.Of("LeftWall");
        double right = tape.Of("RightWall");
        tape.Both("FaucetHoles", "FaucetHoleDiameter");
        tape.AtMost("LeftReturn", right, "the length along the right wall");
        tape.AtMost("RightReturn", left, "the length along the left wall");
        CornerPlan plan = new(left, right, tape.Of("LeftReturn"), tape.Of("RightReturn"), tape.Of("FrontBow"));
        tape.AtMost("FrontBow", plan.Chord().Value / 2, "half of the straight line across the front");
        SuperellipseBasin mouth = new(tape.Of("BowlLength") / 2, tape.Of("BowlWidth") / 2, 2, 1, 1, 2, 1);
        Guard.Rule(
            plan.Holds(mouth), "BowlLength", tape.Of("BowlLength"), Measure.Length,
            "a bowl that, with its BowlWidth, lies inside the rim over the middle of its straight plan");
        tape.AtMost("DrainDiameter", Math.Min(tape.Of("BowlLength"), tape.Of("BowlWidth")) / 2, "half of the bowl's narrower side");
        tape.AtMost("OverflowDiameter", tape.Of("BowlDepth"), "the bowl's depth");
        tape.Surface(
            "rim", FixtureZoneKind.Rim, plan.Deck(tape.Trace) - PlaneShapes.Ellipse(tape["BowlLength"], tape["BowlWidth"]), 0,
            openings: tape.Discs("FaucetHoles", "FaucetHoleDiameter"));
        tape.EllipsoidBowl(
            "bowl", "BowlLength", "BowlWidth", "BowlDepth",
                PlaneShapes.Disc(tape["DrainDiameter"]) + PlaneShapes.Disc(tape["OverflowDiameter"]),
            default, plan.Breaks(mouth), FixtureZoneKind.Rim, point => plan.Towards(point, 0));
        tape.Surface("outside", FixtureZoneKind.Outside, plan.Front(tape.Trace) * tape["SkirtHeight"], Math.PI / 2);
        double low = -tape.Of("SkirtHeight");
        if (low < 0)
        {
            SurfaceBand skirt = SurfaceBand.Ruled(FixtureZoneKind.Outside, u => plan.AlongFront(u, 0), u => plan.AlongFront(u, low));
            tape.Draw(mesh => mesh.Add([0, 1, 2, 3], skirt));
        }

        tape.Tape(tape["LeftWall"] + tape["RightWall"] + plan.Front(tape.Trace) + (2 * tape["SkirtHeight"]));
        tape.Tape(PlaneShapes.Circle(tape["DrainDiameter"]) + PlaneShapes.Circle(tape["OverflowDiameter"])
            + tape.Rings("FaucetHoles", "FaucetHoleDiameter"));
    }

    private static void VanityTop(Composition tape)
    {
        double length = tape.Of("Length");
        double depth = tape.Of("Depth");
        double height = tape.Of("SplashHeight");
        double thick = tape.Of("SplashThickness");
        int bowls = tape.Count("Bowls");
        int sides = tape.Count("SideSplashes");
        foreach (string reading in new[] { "BowlLength", "BowlWidth", "BowlDepth" })
        {
            tape.Both("Bowls", reading);
        }

        tape.Both("FaucetHoles", "FaucetHoleDiameter");
        tape.AtMost("DrainDiameter", tape.Of("BowlWidth") / 2, "half of a bowl's width");
        tape.AtMost("OverflowDiameter", tape.Of("BowlDepth"), "a bowl's depth");
        Guard.Rule(height > 0 || thick == 0, "SplashThickness", thick, Measure.Length, "0 where SplashHeight is 0");
        Guard.Rule(sides == 0 || height > 0, "SideSplashes", sides, Measure.Number, "0 where SplashHeight is 0");
        tape.AtMost("BowlLength", (length - (sides * thick)) / Math.Max(1, bowls), "the share of the top's length that each bowl has");
        tape.AtMost("BowlWidth", depth, "the depth of the top");
        tape.Surface(
            "top", FixtureZoneKind.Top,
            (tape["Length"] * tape["Depth"]) - (tape["Bowls"] * PlaneShapes.Ellipse(tape["BowlLength"], tape["BowlWidth"])), 0,
            openings: tape.Discs("FaucetHoles", "FaucetHoleDiameter") + (tape["SideSplashes"] * tape["Depth"] * tape["SplashThickness"]));
        for (int i = 0; i < bowls; i++)
        {
            double cell = length / bowls;
            tape.EllipsoidBowl(
                bowls == 1 ? "bowl" : "bowl " + Figures.Fixed(i + 1, 0), "BowlLength", "BowlWidth", "BowlDepth",
                PlaneShapes.Disc(tape["DrainDiameter"]) + PlaneShapes.Disc(tape["OverflowDiameter"]), new((i + 0.5) * cell, depth / 2, 0),
                Composition.CornerTurns(tape.Of("BowlLength"), tape.Of("BowlWidth"), cell, depth), FixtureZoneKind.Top,
                    point => PlanCurve.RoundedRectangleTowards(cell, depth, 0, 0, Math.Atan2(point.Y, point.X)));
        }

        if (bowls == 0)
        {
            SurfaceBand top = SurfaceBand.Level(FixtureZoneKind.Top, 0, 0, length, depth, 0);
            tape.Draw(mesh => mesh.AddFaces(top));
        }

        double edge = -tape.Of("EdgeHeight");
        tape.Plate("front edge", FixtureZoneKind.Edge, tape["Length"], tape["EdgeHeight"], Plane.Front(0, 0, edge));
        tape.Plates("ends", FixtureZoneKind.Edge, tape["OpenEnds"], tape["Depth"], tape["EdgeHeight"],
            [Plane.Right(length, 0, edge), Plane.Left(0, depth, edge)]);
        tape.Plate("backsplash, face", FixtureZoneKind.Backsplash, tape["Length"], tape["SplashHeight"], Plane.Front(0, depth, 0));
        tape.Plate("backsplash, top", FixtureZoneKind.Backsplash, tape["Length"], height > 0 ? tape["SplashThickness"] : 0,
            Plane.Level(0, depth, height));
        double inner = length - thick;
        tape.Plates("side splashes, face", FixtureZoneKind.Backsplash, tape["SideSplashes"], tape["Depth"], tape["SplashHeight"],
            [Plane.Left(inner, depth, 0), Plane.Right(thick, 0, 0)]);
        tape.Plates("side splashes, top", FixtureZoneKind.Backsplash, tape["SideSplashes"], tape["SplashThickness"], tape["Depth"],
            [Plane.Level(inner, 0, height), Plane.Level(0, 0, height)]);
        tape.Plates("side splashes, front end", FixtureZoneKind.Backsplash, tape["SideSplashes"], tape["SplashThickness"],
            tape["SplashHeight"], [Plane.Front(inner, 0, 0), Plane.Front(0, 0, 0)]);
        tape.Tape((2 * tape["Length"]) + (2 * tape["Depth"]) + (2 * tape["SplashHeight"]));
        tape.Tape(tape["Bowls"] * (PlaneShapes.Circle(tape["DrainDiameter"]) + PlaneShapes.Circle(tape["OverflowDiameter"])));
        tape.Tape(tape.Rings("FaucetHoles", "FaucetHoleDiameter"));
    }
}
