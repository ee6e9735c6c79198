using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <summary>What is known of tubs.</summary>
internal static class TubRows
{
    /// <summary>What tubs are made of.</summary>
    public static readonly FixtureMaterial[] Materials =
    [
        FixtureMaterial.EnamelledCastIron, FixtureMaterial.EnamelledSteel, FixtureMaterial.Gelcoat, FixtureMaterial.Acrylic,
        FixtureMaterial.CulturedMarble, FixtureMaterial.SolidSurface, FixtureMaterial.VinylSheet, FixtureMaterial.Stone,
        FixtureMaterial.StainlessSteel, FixtureMaterial.GalvanisedSteel, FixtureMaterial.Concrete,
    ];

    public static readonly Source Outlet = Source.Published(
        "Municipal Code of Chicago, plumbing code",
            "18-29-407.2: waste outlets of bathtubs at least 1 1/2 in; the band begins at 1.45 in for what 38 mm rounds to");

    private static readonly Source Sizes =
        Source.CommonPractice("tubs are 4 to 6 ft long, 26 to 42 in wide and 12 to 22 in deep; bands widened to what is met");
    private static readonly Source Details = Source.Invented("bands of radii, runs, rolls and plates of tubs");
    private static readonly Source CoveLimit = Source.Invented("a cove of more than a third of the depth is rare");
    private static readonly Source DeckLimit =
        Source.Invented("rim and deck together take 1/2 to 20 in of the length and 1/2 to 16 in of the width of a recessed tub");
    private static readonly Source FloorLimit =
        Source.Derived("the floor of a tub does not lie below the floor of the room; 2 in are left for tile laid against the apron");

    public static KnownKind<RecessedBathtub, RecessedBathtubMeasurements> Recessed { get; } = new(new Form<RecessedBathtubMeasurements>(
        "recessed bathtub",
        new("OverallLength", "length over all", 46, 74, Sizes, t => t.OverallLength, (t, x) => t with { OverallLength = x }),
        new("OverallWidth", "width over all", 25, 48, Sizes, t => t.OverallWidth, (t, x) => t with { OverallWidth = x }),
        new("RimLength", "length of the mouth", 36, 72, Sizes, t => t.RimLength, (t, x) => t with { RimLength = x }),
        new("RimWidth", "width of the mouth", 17, 42, Sizes, t => t.RimWidth, (t, x) => t with { RimWidth = x }),
        new("RimCornerRadius", "corner radius of the mouth", 0.5, 18, Details, t => t.RimCornerRadius, (t, x) =>
            t with { RimCornerRadius = x }),
        new("FloorLength", "length of the floor", 26, 64, Sizes, t => t.FloorLength, (t, x) => t with { FloorLength = x }),
        new("FloorWidth", "width of the floor", 12, 36, Sizes, t => t.FloorWidth, (t, x) => t with { FloorWidth = x }),
        new("FloorCornerRadius", "corner radius of the floor", 0.5, 16, Details, t => t.FloorCornerRadius, (t, x) =>
            t with { FloorCornerRadius = x }),
        new("Depth", "depth", 10, 24, Sizes, t => t.Depth, (t, x) => t with { Depth = x }),
        new("HeadRun", "run of the head wall", 0.25, 24, Details, t => t.HeadRun, (t, x) => t with { HeadRun = x }),
        new("FootRun", "run of the foot wall", 0.25, 16, Details, t => t.FootRun, (t, x) => t with { FootRun = x }),
        new("CoveRadius", "radius of the cove", 0.4, 8, Details, t => t.CoveRadius, (t, x) => t with { CoveRadius = x }),
        new("ApronHeight", "height of the apron", 11, 25, Sizes, t => t.ApronHeight, (t, x) => t with { ApronHeight = x }),
        new("DrainDiameter", "diameter of the drain", 1.45, 3.5, Outlet, t => t.DrainDiameter, (t, x) => t with { DrainDiameter = x }),
        new("OverflowDiameter", "diameter of the overflow", 1.2, 4.5, Details, t => t.OverflowDiameter, (t, x) =>
            t with { OverflowDiameter = x }),
        new("FloorShift", "shift of the floor", 0.1, 5, Details, t => t.FloorShift, (t, x) => t with { FloorShift = x }),
        new("TilingFlangeHeight", "height of the tiling flange", 0.4, 2.5, Details, t => t.TilingFlangeHeight, (t, x) =>
            t with { TilingFlangeHeight = x })))
    {
        Materials = Materials,
        Tape = tub => tub.Measurements,
        Make = tape => new RecessedBathtub(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(tape.OverallLength.Meters, tape.OverallWidth.Meters),
        GoTogether = GoTogether,
    };

    public static KnownKind<FreestandingTub, FreestandingTubMeasurements> Freestanding { get; } = new(new Form<FreestandingTubMeasurements>(
        "freestanding tub",
        new("RimLength", "length of the mouth", 40, 76, Sizes, t => t.RimLength, (t, x) => t with { RimLength = x }),
        new("RimWidth", "width of the mouth", 18, 42, Sizes, t => t.RimWidth, (t, x) => t with { RimWidth = x }),
        new("RimCornerRadius", "corner radius of the mouth", 3, 20, Details, t => t.RimCornerRadius, (t, x) =>
            t with { RimCornerRadius = x }),
        new("FloorLength", "length of the floor", 24, 64, Sizes, t => t.FloorLength, (t, x) => t with { FloorLength = x }),
        new("FloorWidth", "width of the floor", 10, 34, Sizes, t => t.FloorWidth, (t, x) => t with { FloorWidth = x }),
        new("FloorCornerRadius", "corner radius of the floor", 1, 17, Details, t => t.FloorCornerRadius, (t, x) =>
            t with { FloorCornerRadius = x }),
        new("Depth", "depth", 11, 26, Sizes, t => t.Depth, (t, x) => t with { Depth = x }),
        new("HeadRun", "run of the head wall", 0.25, 24, Details, t => t.HeadRun, (t, x) => t with { HeadRun = x }),
        new("FootRun", "run of the foot wall", 0.25, 24, Details, t => t.FootRun, (t, x) => t with { FootRun = x }),
        new("CoveRadius", "radius of the cove", 0.5, 8, Details, t => t.CoveRadius, (t, x) => t with { CoveRadius = x }),
        new("RollRadius", "radius of the roll", 0.4, 2, Details, t => t.RollRadius, (t, x) => t with { RollRadius = x }),
        new("WallThickness", "thickness of the wall", 0.08, 2.5, Details, t => t.WallThickness, (t, x) => t with { WallThickness = x }),
        new("FootPadDiameter", "diameter of a foot's pad", 0.8, 5, Details, t => t.FootPadDiameter, (t, x) =>
            t with { FootPadDiameter = x }),
        new("DrainDiameter", "diameter of the drain", 1.45, 3.5, Outlet, t => t.DrainDiameter, (t, x) => t with { DrainDiameter = x }),
        new("OverflowDiameter", "diameter of the overflow", 1.2, 4.5, Details, t => t.OverflowDiameter, (t, x) =>
            t with { OverflowDiameter = x })))
    {
        Materials = Materials,
        Tape = tub => tub.Measurements,
        Make = tape => new FreestandingTub(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(
            tape.RimLength.Meters + (4 * tape.RollRadius.Meters), tape.RimWidth.Meters + (4 * tape.RollRadius.Meters)),
        GoTogether = tape => [Cove(tape.CoveRadius.Meters, tape.Depth.Meters)],
    };

    public static KnownKind<OvalTub, OvalTubMeasurements> Oval { get; } = new(new Form<OvalTubMeasurements>(
        "oval tub",
        new("DeckLength", "length of the deck", 46, 90, Sizes, t => t.DeckLength, (t, x) => t with { DeckLength = x }),
        new("DeckWidth", "width of the deck", 27, 66, Sizes, t => t.DeckWidth, (t, x) => t with { DeckWidth = x }),
        new("MouthLength", "length of the mouth", 38, 76, Sizes, t => t.MouthLength, (t, x) => t with { MouthLength = x }),
        new("MouthWidth", "width of the mouth", 18, 48, Sizes, t => t.MouthWidth, (t, x) => t with { MouthWidth = x }),
        new("FloorLength", "length of the floor", 26, 64, Sizes, t => t.FloorLength, (t, x) => t with { FloorLength = x }),
        new("FloorWidth", "width of the floor", 11, 40, Sizes, t => t.FloorWidth, (t, x) => t with { FloorWidth = x }),
        new("Depth", "depth", 11, 26, Sizes, t => t.Depth, (t, x) => t with { Depth = x }),
        new("ApronHeight", "height of the apron", 11, 30, Sizes, t => t.ApronHeight, (t, x) => t with { ApronHeight = x }),
        new("DrainDiameter", "diameter of the drain", 1.45, 3.5, Outlet, t => t.DrainDiameter, (t, x) => t with { DrainDiameter = x }),
        new("OverflowDiameter", "diameter of the overflow", 1.2, 4.5, Details, t => t.OverflowDiameter, (t, x) =>
            t with { OverflowDiameter = x })))
    {
        Materials = Materials,
        Tape = tub => tub.Measurements,
        Make = tape => new OvalTub(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(tape.DeckLength.Meters, tape.DeckWidth.Meters),
    };

    public static KnownKind<CornerTub, CornerTubMeasurements> Corner { get; } = new(new Form<CornerTubMeasurements>(
        "corner tub",
        new("LeftWall", "length along the left wall", 44, 84, Sizes, t => t.LeftWall, (t, x) => t with { LeftWall = x }),
        new("RightWall", "length along the right wall", 44, 84, Sizes, t => t.RightWall, (t, x) => t with { RightWall = x }),
        new("LeftReturn", "left return", 1, 48, Details, t => t.LeftReturn, (t, x) => t with { LeftReturn = x }),
        new("RightReturn", "right return", 1, 48, Details, t => t.RightReturn, (t, x) => t with { RightReturn = x }),
        new("FrontBow", "bow of the front", 0.25, 24, Details, t => t.FrontBow, (t, x) => t with { FrontBow = x }),
        new("FrontHeight", "height of the front", 11, 30, Sizes, t => t.FrontHeight, (t, x) => t with { FrontHeight = x }),
        new("MouthLength", "length of the mouth", 36, 76, Sizes, t => t.MouthLength, (t, x) => t with { MouthLength = x }),
        new("MouthWidth", "width of the mouth", 24, 58, Sizes, t => t.MouthWidth, (t, x) => t with { MouthWidth = x }),
        new("FloorLength", "length of the floor", 22, 60, Sizes, t => t.FloorLength, (t, x) => t with { FloorLength = x }),
        new("FloorWidth", "width of the floor", 14, 48, Sizes, t => t.FloorWidth, (t, x) => t with { FloorWidth = x }),
        new("Depth", "depth", 11, 26, Sizes, t => t.Depth, (t, x) => t with { Depth = x }),
        new("DrainDiameter", "diameter of the drain", 1.45, 3.5, Outlet, t => t.DrainDiameter, (t, x) => t with { DrainDiameter = x }),
        new("OverflowDiameter", "diameter of the overflow", 1.2, 4.5, Details, t => t.OverflowDiameter, (t, x) =>
            t with { OverflowDiameter = x })))
    {
        Materials = Materials,
        Tape = tub => tub.Measurements,
        Make = tape => new CornerTub(tape),
        OnTheFloor = tape => new Footprint(
            System.Math.Max(tape.LeftWall.Meters, tape.RightWall.Meters), System.Math.Min(tape.LeftWall.Meters, tape.RightWall.Meters),
            (tape.LeftWall.Meters * tape.RightWall.Meters)
                - ((tape.LeftWall.Meters - tape.RightReturn.Meters) * (tape.RightWall.Meters - tape.LeftReturn.Meters) / 2)),
    };

    private static IEnumerable<Proportion> GoTogether(RecessedBathtubMeasurements tape)
    {
        yield return Cove(tape.CoveRadius.Meters, tape.Depth.Meters);
        yield return Deck("length", tape.OverallLength.Meters - tape.RimLength.Meters, 20 * 0.0254);
        yield return Deck("width", tape.OverallWidth.Meters - tape.RimWidth.Meters, 16 * 0.0254);
        if (tape.ApronHeight.Meters > 0)
        {
            yield return new Proportion(
                "Depth/ApronHeight", "depth beside the height of the apron", tape.Depth.Meters, null, tape.ApronHeight.Meters
                    + (2 * 0.0254), Measure.Length,
                FloorLimit, "Measure the depth and the height of the apron again.");
        }
    }

    private static Proportion Deck(string side, double deck, double greatest) => new(
        side == "length" ? "OverallLength/RimLength" : "OverallWidth/RimWidth", "rim and deck along the " + side, deck, 0.5 * 0.0254,
            greatest, Measure.Length,
        DeckLimit, "Measure the " + side + " over all and the " + side + " of the mouth again.");

    private static Proportion Cove(double radius, double depth) => new(
        "CoveRadius/Depth", "radius of the cove beside the depth", radius, null, depth / 3, Measure.Length, CoveLimit,
            "Measure the cove with a radius gauge.");
}
