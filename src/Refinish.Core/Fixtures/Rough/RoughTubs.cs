using System;
using Points = (double A, double M, double B);

namespace Refinish.Fixtures;

/// <summary>The tubs that can be quoted roughly. Lengths in metres.</summary>
internal static class RoughTubs
{
    private static readonly Source ApronHeights = Source.CommonPractice("a recessed tub's front stands 14 to 17 in (356 to 432 mm) high");

    public static RoughKind Recessed() => new RoughKindBuilder("recessedBathtub", "recessed bathtub", typeof(RecessedBathtub))
        .Needed("OverallLength", 1.1, 2.1)
        .Needed("OverallWidth", 0.6, 1.2)
        .Shift("FloorShift", "a floor in the middle of the mouth unless it is said otherwise")
        .Share("RimLength", "OverallLength", 0.84, 0.885, 0.93)
        .Between(k => (RimLeast(k), k["OverallLength"]))
        .Share("RimWidth", "OverallWidth", 0.70, 0.785, 0.86)
        .Between(k => (k.Or("FloorWidth", 0.2), k["OverallWidth"]))
        .With(rows => Basin(rows, (0.70, 0.83, 0.92), (0.55, 0.78, 0.95), (0.72, 0.83, 0.93), (0.28, 0.34, 0.46), (0.12, 0.255, 0.40)))
        .Share("FloorCornerRadius", "RimCornerRadius", 0.55, 0.83, 1)
        .Between(FloorCorner)
        .With(Openings)
        .Beyond("ApronHeight", "Depth", 0.01, 0.03, 0.09, ApronHeights)
        .Number("ApronProfileFactor", 1, 1.02, 1.08)
        .Fixed("TilingFlangeHeight", 0, "a tiling flange is behind the tile unless it is said otherwise")
        .Making(k => new RecessedBathtub(new RecessedBathtubMeasurements(k.For(RecessedBathtubMeasurements.Inputs))));

    public static RoughKind Freestanding(bool outside) => new RoughKindBuilder(
            outside ? "freestandingTubAllRound" : "freestandingTub",
            outside ? "freestanding tub, coated all round" : "freestanding tub, coated inside",
            typeof(FreestandingTub))
        .Needed("RimLength", 0.9, 2.1)
        .Needed("RimWidth", 0.45, 1.2)
        .With(rows => Basin(rows, (0.62, 0.73, 0.85), (0.45, 0.6, 0.85), (0.55, 0.68, 0.82), (0.36, 0.43, 0.52), (0.35, 0.45, 0.5)))
        .Share("FloorCornerRadius", "FloorWidth", 0.35, 0.45, 0.5)
        .Between(FloorCorner)
        .With(Openings)
        .Usual("RollRadius", 0.022, 0.032, 0.045)
        .Between(k => (k.Or("WallThickness", 0) / 2, 0.1))
        .Turn("RollTurn", 180, 240, 270)
        .Usual("WallThickness", 0.004, 0.008, 0.015, Source.Published(
            "ASME A112.19.1-2013", "4.2: cast iron at least 3 mm thick away from the edge; the band above it is invented"))
        .Between(k => (0.001, 2 * k["RollRadius"]))
        .Count("Feet", 4, "four feet unless it is said otherwise")
        .Usual("FootPadDiameter", 0.04, 0.05, 0.08)
        .Making(k => new FreestandingTub(new FreestandingTubMeasurements(k.For(FreestandingTubMeasurements.Inputs), outside, outside)));

    public static RoughKind Oval() => new RoughKindBuilder("ovalTub", "oval tub in a deck", typeof(OvalTub))
        .Needed("DeckLength", 1.1, 2.5)
        .Needed("DeckWidth", 0.6, 1.8)
        .Share("MouthLength", "DeckLength", 0.76, 0.84, 0.91)
        .Between(k => (k.Or("FloorLength", 0.3), k["DeckLength"]))
        .Share("MouthWidth", "DeckWidth", 0.62, 0.71, 0.83)
        .Between(k => (k.Or("FloorWidth", 0.2), k["DeckWidth"]))
        .With(rows => OvalBasin(rows, (0.36, 0.43, 0.52)))
        .Beyond("ApronHeight", "Depth", 0.02, 0.06, 0.12)
        .Making(k => new OvalTub(new OvalTubMeasurements(k.For(OvalTubMeasurements.Inputs))));

    public static RoughKind Corner() => new RoughKindBuilder("cornerTub", "corner tub", typeof(CornerTub))
        .Needed("LeftWall", 0.9, 2)
        .Needed("RightWall", 0.9, 2)
        .Share("LeftReturn", "RightWall", 0.35, 0.5, 0.65)
        .Share("RightReturn", "LeftWall", 0.35, 0.5, 0.65)
        .Usual("FrontBow", 0, 0.05, 0.2)
        .Between(k => (0, Diagonal(k["LeftWall"] - k["RightReturn"], k["RightWall"] - k["LeftReturn"]) / 2))
        .Share("MouthLength", "LeftWall", 0.70, 0.80, 0.90)
        .Between(k => (k.Or("FloorLength", 0.3), 2.5))
        .Share("MouthWidth", "RightWall", 0.52, 0.63, 0.70)
        .Between(k => (k.Or("FloorWidth", 0.2), 2))
        .With(rows => OvalBasin(rows, (0.38, 0.44, 0.55)))
        .Beyond("FrontHeight", "Depth", 0.02, 0.08, 0.15)
        .Making(k => new CornerTub(new CornerTubMeasurements(k.For(CornerTubMeasurements.Inputs))));

    // Floor, runs, depth and the corner of the mouth of a ruled basin.
    private static RoughKindBuilder Basin(
        RoughKindBuilder rows, Points floor, Points head, Points across, Points depth, Points corner) => rows
        .Share("FloorLength", "RimLength", floor.A, floor.M, floor.B)
        .Between(k => (0.1, k["RimLength"] - k.Or("HeadRun", 0) - k.Or("FootRun", 0)))
        .ShareOfRest("HeadRun", "RimLength", "FloorLength", head.A, head.M, head.B)
        .Between(k => (0, Math.Max(0, k["RimLength"] - k["FloorLength"] - k.Or("FootRun", 0))))
        .ShareOfRest("FootRun", "RimLength", "FloorLength", 1 - head.B, 1 - head.M, 1 - head.A)
        .Closing("RimLength", "FloorLength", "HeadRun", "FootRun")
        .Share("FloorWidth", "RimWidth", across.A, across.M, across.B)
        .Between(k => (0.1, k["RimWidth"] - (2 * Math.Abs(k.Or("FloorShift", 0)))))
        .Usual("Depth", depth.A, depth.M, depth.B)
        .Between(k => (Math.Max(0.1, k.Or("CoveRadius", 0) + k.Or("OverflowDiameter", 0)), 0.8))
        .Share("RimCornerRadius", "RimWidth", corner.A, corner.M, corner.B)
        .Between(k => (0, Math.Min(Math.Min(k["RimLength"], k["RimWidth"]) / 2, k.Or("FloorCornerRadius", FloorCornerMost(k)) + Reach(k))));

    private static RoughKindBuilder Openings(RoughKindBuilder rows) => rows
        .Share("CoveRadius", "Depth", 0.05, 0.18, 0.33,
            Source.Invented("a cove of up to a third of the depth, as the doubts of the tape have it"))
        .Between(k => (0, Math.Min(k["FloorCornerRadius"], k["Depth"] - k.Or("OverflowDiameter", 0))))
        .Usual("DrainDiameter", 0.038, 0.05, 0.065)
        .Between(k => (0, Math.Min(k["FloorLength"], k["FloorWidth"]) - (2 * k["CoveRadius"])))
        .Usual("OverflowDiameter", 0.05, 0.075, 0.09).Between(k => (0, Math.Min(k["Depth"] - k["CoveRadius"], k["FloorWidth"])));

    private static RoughKindBuilder OvalBasin(RoughKindBuilder rows, Points depth) => rows
        .Number("MouthExponent", 2, 2.4, 3.2)
        .Share("FloorLength", "MouthLength", 0.60, 0.72, 0.84)
        .Between(k => (Math.Max(0.1, k.Or("DrainDiameter", 0)), k["MouthLength"]))
        .Share("FloorWidth", "MouthWidth", 0.56, 0.68, 0.82)
        .Between(k => (Math.Max(0.1, k.Or("DrainDiameter", 0)), k["MouthWidth"]))
        .Number("FloorExponent", 2, 2.4, 3.2)
        .Usual("Depth", depth.A, depth.M, depth.B)
        .Usual("DrainDiameter", 0.038, 0.05, 0.065)
        .Between(k => (0, Math.Min(k["FloorLength"], k["FloorWidth"])))
        .Usual("OverflowDiameter", 0.05, 0.075, 0.09).Between(k => (0, Math.Min(k["Depth"], k["FloorWidth"])));

    private static double RimLeast(KnownReadings k) => Math.Max(0.3, k.Or("FloorLength", 0.1) + k.Or("HeadRun", 0) + k.Or("FootRun", 0));

    // The corner of the floor stays inside the corner of the mouth, as the measurements of the tub check it.
    private static (double Low, double High) FloorCorner(KnownReadings k) => (
        Math.Max(k.Or("CoveRadius", 0), k["RimCornerRadius"] - Reach(k)), FloorCornerMost(k));

    private static double FloorCornerMost(KnownReadings k) => Math.Min(k["FloorLength"], k["FloorWidth"]) / 2;

    private static double Reach(KnownReadings k)
    {
        double end = Math.Max(0, Math.Min(k["HeadRun"], k["FootRun"]));
        double side = Math.Max(0, ((k["RimWidth"] - k["FloorWidth"]) / 2) - Math.Abs(k.Or("FloorShift", 0)));
        return end + side + Math.Sqrt(2 * end * side);
    }

    private static double Diagonal(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
