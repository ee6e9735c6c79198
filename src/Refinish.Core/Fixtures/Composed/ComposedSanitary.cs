using System;
using System.Linq;
using static Refinish.Fixtures.FixtureMaterial;

namespace Refinish.Fixtures;

/// <summary>Toilets, bidets and urinals from without, and the feet of a tub.</summary>
internal static class ComposedSanitary
{
    private static readonly FixtureMaterial[] China = [VitreousChina, EnamelledCastIron, Acrylic, Gelcoat];

    private static readonly Source Seats = Source.CommonPractice(
        "toilets are 14 to 19 in high at the rim, 13 to 16 in wide and 16 to 20 in from the front to the seat's bolts; bidets are alike");
    private static readonly Source Urinals = Source.CommonPractice("urinals on a wall are 12 to 24 in wide, 12 to 45 in high and stand "
        + "out 9 to 18 in");
    private static readonly Source Feet = Source.Invented("bands of feet and pads of tubs");

    private static readonly Source Flushed = Source.CommonPractice(
        "flushed insides are not coated: standing water, brushes, acid cleaners and limescale take a coat off; no document seen");

    public static ComposedKind Toilet { get; } = new(
        "toilet", "toilet",
        Outside(new ComposedRows(Seats))
            .Length("OpeningLength", "length of the opening in the rim", 8, 16)
            .Length("OpeningWidth", "width of the opening in the rim", 7, 12)
            .LengthOrNone("TankWidth", "width of the tank; 0 when it is in the wall", 12, 24)
            .LengthOrNone("TankDepth", "depth of the tank", 5, 11)
            .LengthOrNone("TankHeight", "height of the tank with its lid", 9, 24)
            .Maybe("ShelfLength", "length of the shelf between rim and tank", 1, 12)
            .Maybe("ShelfWidth", "width of that shelf", 6, 20).All,
        ToiletOutside)
    {
        Coated = "the rim's top, the outside from the rim to the foot, and the tank: front, sides and lid; seat and lid of the seat are "
            + "new parts",
        NotCoated =
        [
            new("inside of the bowl with the jets under its rim", FixtureZoneKind.Bowl,
                "it stands in water, is flushed, brushed and cleaned with acid, and a coat that lifts blocks the jets", Flushed),
            new("back of the tank and foot against the floor", null, "they do not show",
                Source.CommonPractice("what does not show is left")),
        ],
        Materials = China,
        Clearing = "shut the water off, flush, sponge the tank and the trap dry; take off seat, bolt caps and flush lever; clean and "
            + "disinfect inside and "
            + "outside before anybody sands; mask the opening of the rim and every jet; cut out all caulk at the floor",
        PuttingBack = "take the masking out of the rim, caulk the foot, refit lever, caps and seat; leave the water shut off and tag the valve with the day from which it may be opened",
        Cautions = [Cautions.SoiledFixture, Cautions.AcidAndBleach], Size = ("RimWidth", "RimLength"), StandsOnTheFloor = true, };

    public static ComposedKind Bidet { get; } = new(
        "bidet", "bidet",
        Outside(new ComposedRows(Seats))
            .Length("BowlLength", "length of the bowl's mouth", 8, 20)
            .Length("BowlWidth", "width of the bowl's mouth", 7, 13)
            .Length("BowlDepth", "depth of the bowl", 3, 8)
            .CountOrNone("FaucetHoles", "holes for faucets in the rim", 4)
            .Maybe("FaucetHoleDiameter", "diameter of a faucet hole", 0.9, 1.8)
            .LengthOrNone("DrainDiameter", "diameter of the drain", 1.2, 2.5, ComposedRows.Details)
            .LengthOrNone("OverflowDiameter", "diameter of the overflow", 0.4, 2, ComposedRows.Details).All,
        BidetOutside)
    {
        Coated = "rim, outside from the rim to the foot, and the bowl inside (half an ellipsoid), which is used like a wash basin",
        NotCoated = [new("spray jets under the rim", null, "a coat narrows and blocks them",
            Source.CommonPractice("jets are plugged, not coated"))],
        Materials = China,
        Clearing = "shut the water off; take off the spray, plug the jets; clean and disinfect before anybody sands; cut out all "
            + "caulk at floor and wall",
        PuttingBack = "take the plugs out of the jets, caulk the foot, refit what was taken off",
        Cautions = [Cautions.SoiledFixture, Cautions.AcidAndBleach], Size = ("RimWidth", "RimLength"), StandsOnTheFloor = true, };

    public static ComposedKind Urinal { get; } = new(
        "urinal", "urinal",
        new ComposedRows(Urinals)
            .Length("Width", "width along the wall at the top", 10, 25)
            .Length("Projection", "how far it stands out from the wall at the top", 7, 20)
            .Length("Height", "height of the body", 11, 46)
            .Length("BaseWidth", "width along the wall at the bottom", 3, 25)
            .Length("BaseProjection", "how far it stands out at the bottom", 2, 20)
            .Length("OpeningWidth", "width of the opening in front", 8, 20)
            .Length("OpeningHeight", "height of the opening in front", 8, 40)
            .Factor("ProfileFactor", "developed over plain area of the outside", 1.5).All,
        UrinalOutside)
    {
        Coated = "the outside in front and at the sides, and the top; the body is taken as half an ellipse at each height, its opening "
            + "as an ellipse",
        NotCoated =
        [
            new("inside behind the opening, with the flushing rim and the trap", FixtureZoneKind.Bowl,
                "it is wetted, scaled and cleaned with acid every day", Flushed),
            new("underside", null, "it does not show", Source.CommonPractice("what does not show is left")),
        ],
        Materials = China,
        Clearing = "shut the water off; take off the flush pipe's rosette and the strainer; clean off scale, disinfect inside and "
            + "outside before anybody sands; "
            + "mask the opening; cut out all caulk along the wall",
        PuttingBack = "caulk the joint to the wall, refit rosette and strainer",
        Cautions = [Cautions.SoiledFixture, Cautions.AcidAndBleach, Cautions.FixtureGivesWay], Size = ("Width", "Height"), };

    public static ComposedKind TubFeet { get; } = new(
        "tubFeet", "feet of a tub",
        new ComposedRows(Feet)
            .Count("Feet", "how many feet", 1, 8)
            .Length("FootHeight", "height of a foot, along its middle", 2, 9)
            .Length("TopGirth", "girth of a foot under the tub", 4, 26)
            .Length("BottomGirth", "girth of a foot above floor or pad", 3, 20)
            .Factor("ReliefFactor", "developed over plain area of claws and leaves", 2)
            .LengthOrNone("PadDiameter", "diameter of a pad under a foot; 0 without", 1.5, 6)
            .LengthOrNone("PadHeight", "height of a pad", 0.2, 3).All,
        FeetAndPads)
    {
        Coated = "feet all round as cones by their girths, times what the relief adds, and pads: edge, and top round the foot; the tub "
            + "itself is a freestanding tub beside them",
        NotCoated = [new("face of a foot against the tub, and what stands on the floor", null,
            "paint in the joint lets a foot work loose", Source.CommonPractice("bearing faces stay bare"))],
        Materials = [EnamelledCastIron, EnamelledSteel],
        Clearing = "take the feet off one at a time only with the tub held by something that carries it, or coat them where they stand; "
            + "brush and degrease the castings; mask tub and floor",
        PuttingBack = "tighten the feet, see that the tub stands on all of them",
        Cautions = [Cautions.FixtureGivesWay], Size = ("TopGirth", "FootHeight"), Pieces = "Feet", };

    private static ComposedRows Outside(ComposedRows rows) => rows
        .Length("RimLength", "length over the rim, front to back", 12, 24)
        .Length("RimWidth", "width over the rim", 12, 17)
        .Length("RimHeight", "height of the rim above the foot", 12, 20)
        .Length("FootLength", "length of the foot at the floor", 7, 27)
        .Length("FootWidth", "width of the foot at the floor", 6, 16)
        .Factor("ProfileFactor", "developed over plain area of the outside", 1.5);

    private static void ToiletOutside(Composition tape)
    {
        tape.AtMost("OpeningLength", tape.Of("RimLength"), "the length over the rim");
        tape.AtMost("OpeningWidth", tape.Of("RimWidth"), "the width over the rim");
        Num opening = PlaneShapes.Ellipse(tape["OpeningLength"], tape["OpeningWidth"]);
        Body(tape, opening, tape.Of("OpeningLength"), tape.Of("OpeningWidth"));
        double width = tape.Of("TankWidth");
        double height = tape.Of("TankHeight");
        double depth = tape.Of("TankDepth");
        tape.Both("TankWidth", "TankDepth");
        tape.Both("TankWidth", "TankHeight");
        tape.Both("ShelfLength", "ShelfWidth");
        double back = tape.Of("RimLength") / 2;
        double rim = tape.Of("RimHeight");
        tape.Plate("shelf", FixtureZoneKind.Rim, tape["ShelfWidth"], tape["ShelfLength"],
            Plane.Level(-tape.Of("ShelfWidth") / 2, back, rim));
        double tank = back + tape.Of("ShelfLength");
        tape.Plate("tank, front", FixtureZoneKind.Outside, tape["TankWidth"], tape["TankHeight"], Plane.Front(-width / 2, tank, rim));
        tape.Plates(
            "tank, sides", FixtureZoneKind.Outside, 2, tape["TankDepth"], tape["TankHeight"],
            [Plane.Right(width / 2, tank, rim), Plane.Left(-width / 2, tank + depth, rim)]);
        tape.Plate("tank, lid", FixtureZoneKind.Top, tape["TankWidth"], tape["TankDepth"], Plane.Level(-width / 2, tank, rim + height));
        tape.Tape(PlaneShapes.EllipseEdge(tape["OpeningLength"], tape["OpeningWidth"]));
        tape.Tape(tape["TankWidth"] + (2 * tape["TankHeight"]));
    }

    private static void BidetOutside(Composition tape)
    {
        tape.AtMost("BowlLength", tape.Of("RimLength"), "the length over the rim");
        tape.AtMost("BowlWidth", tape.Of("RimWidth"), "the width over the rim");
        tape.Both("FaucetHoles", "FaucetHoleDiameter");
        tape.AtMost("BowlDepth", tape.Of("RimHeight"), "the height of the rim");
        tape.AtMost("DrainDiameter", tape.Of("BowlWidth") / 2, "half of the bowl's width");
        tape.AtMost("OverflowDiameter", tape.Of("BowlDepth"), "the bowl's depth");
        Body(
            tape, PlaneShapes.Ellipse(tape["BowlLength"], tape["BowlWidth"]), tape.Of("BowlLength"), tape.Of("BowlWidth"),
            tape.Discs("FaucetHoles", "FaucetHoleDiameter"));
        tape.EllipsoidBowl(
            "bowl", "BowlWidth", "BowlLength", "BowlDepth",
                PlaneShapes.Disc(tape["DrainDiameter"]) + PlaneShapes.Disc(tape["OverflowDiameter"]),
            new(0, 0, tape.Of("RimHeight")), PlanCurve.Turn);
        tape.Tape(PlaneShapes.Circle(tape["DrainDiameter"]) + PlaneShapes.Circle(tape["OverflowDiameter"])
            + tape.Rings("FaucetHoles", "FaucetHoleDiameter"));
    }

    /// <summary>Rim and outside down to the foot; the shape stands over the middle of its foot.</summary>
    private static void Body(Composition tape, Num opening, double openingLength, double openingWidth, Num holes = default)
    {
        double high = tape.Of("RimHeight");
        SuperellipseBasin body = new(
            tape.Of("RimWidth") / 2, tape.Of("RimLength") / 2, 2, tape.Of("FootWidth") / 2, tape.Of("FootLength") / 2, 2, high);
        tape.Surface("rim", FixtureZoneKind.Rim, PlaneShapes.Ellipse(tape["RimLength"], tape["RimWidth"]) - opening, 0, openings: holes);
        SurfaceBand rim = SurfaceBand.Ruled(
            FixtureZoneKind.Rim, turn => new(openingWidth / 2 * Math.Cos(turn), openingLength / 2 * Math.Sin(turn), high),
                turn => body.Point(true, turn));
        tape.Shell("outside", body, PlanCurve.Turn, tape.Of("ProfileFactor"), default, rim);
        tape.Tape(PlaneShapes.EllipseEdge(tape["FootLength"], tape["FootWidth"]));
    }

    private static void UrinalOutside(Composition tape)
    {
        tape.AtMost("OpeningWidth", tape.Of("Width"), "the width along the wall");
        tape.AtMost("OpeningHeight", tape.Of("Height"), "the height of the body");
        double high = tape.Of("Height");
        SuperellipseBasin body = new(
            tape.Of("Width") / 2, tape.Of("Projection"), 2, tape.Of("BaseWidth") / 2, tape.Of("BaseProjection"), 2, high);
        tape.Surface("top", FixtureZoneKind.Top, PlaneShapes.Ellipse(tape["Width"], 2 * tape["Projection"]) / 2, 0);
        SurfaceBand top = SurfaceBand.Ruled(
            FixtureZoneKind.Top, turn => body.Point(true, turn) with { Y = 0 }, turn => body.Point(true, turn));
        double[] half = [Math.PI, 3 * Math.PI / 2, 2 * Math.PI];
        tape.Shell("outside", body, half, tape.Of("ProfileFactor"), PlaneShapes.Ellipse(tape["OpeningWidth"], tape["OpeningHeight"]), top);
        Num side = Num.Sqrt(Num.Square(tape["Height"]) + Num.Square((tape["Width"] - tape["BaseWidth"]) / 2));
        tape.Tape(tape["Width"] + (2 * side) + (PlaneShapes.EllipseEdge(tape["BaseWidth"], 2 * tape["BaseProjection"]) / 2));
        tape.Tape(PlaneShapes.EllipseEdge(tape["OpeningWidth"], tape["OpeningHeight"]));
    }

    private static void FeetAndPads(Composition tape)
    {
        bool pads = tape.Of("PadDiameter") > 0;
        double pad = tape.Of("PadHeight");
        Guard.Rule(pads || pad == 0, "PadHeight", pad, Measure.Length, "0 where PadDiameter is 0");
        double foot = tape.Of("BottomGirth") / Math.PI;
        Guard.Rule(!pads || tape.Of("PadDiameter") >= foot, "PadDiameter", tape.Of("PadDiameter"), Measure.Length,
            "0, or at least as wide as the foot on it, " + Measure.Length.Format(foot));
        double spacing = 2 * Math.Max(tape.Of("TopGirth") / Math.PI, Math.Max(foot, tape.Of("PadDiameter")));
        tape.Frustums("feet", FixtureZoneKind.Foot, tape["Feet"], tape["BottomGirth"], tape["TopGirth"], tape["FootHeight"],
            tape.Of("ReliefFactor"), pad, spacing);
        Num round = PlaneShapes.Circle(tape["PadDiameter"]);
        if (pads)
        {
            Num stands = Num.Square(tape["BottomGirth"]) / (4 * tape.Trace.Pi());
            tape.Surface("pads, top", FixtureZoneKind.Foot, tape["Feet"] * (PlaneShapes.Disc(tape["PadDiameter"]) - stands), 0);
            tape.Rings(FixtureZoneKind.Foot, tape.Count("Feet"), foot, tape.Of("PadDiameter"), pad, spacing);
            if (pad > 0)
            {
                tape.Frustums("pads, edge", FixtureZoneKind.Foot, tape["Feet"], round, round, tape["PadHeight"], 1, 0, spacing);
            }
        }

        tape.Tape(tape["Feet"] * (tape["TopGirth"] + (pads ? round : tape["BottomGirth"])));
    }
}
