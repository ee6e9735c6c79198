using System.Collections.Generic;
using static Refinish.Fixtures.ClearingWords;

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

    public static FixtureKind Recessed { get; } = new KnownKind<RecessedBathtub, RecessedBathtubMeasurements>(
        RecessedBathtubMeasurements.Inputs, new Form<RecessedBathtubMeasurements>(
        "recessed bathtub",
        _ => true,
        new("OverallLength", 46, 74, Sizes),
        new("OverallWidth", 25, 48, Sizes),
        new("RimLength", 36, 72, Sizes)
        {
            Along = (t, x) => t with { RimLength = x, FloorLength = x - t.HeadRun - t.FootRun },
        },
        new("RimWidth", 17, 42, Sizes),
        new("RimCornerRadius", 0.5, 18, Details),
        new("FloorLength", 26, 64, Sizes),
        new("FloorWidth", 12, 36, Sizes),
        new("FloorCornerRadius", 0.5, 16, Details),
        new("Depth", 10, 24, Sizes),
        new("HeadRun", 0.25, 24, Details)
        {
            Along = (t, x) => t with { HeadRun = x, FloorLength = t.RimLength - x - t.FootRun },
        },
        new("FootRun", 0.25, 16, Details)
        {
            Along = (t, x) => t with { FootRun = x, FloorLength = t.RimLength - t.HeadRun - x },
        },
        new("CoveRadius", 0.4, 8, Details),
        new("ApronHeight", 11, 25, Sizes),
        new("DrainDiameter", 1.45, 3.5, Outlet),
        new("OverflowDiameter", 1.2, 4.5, Details),
        new("FloorShift", 0.1, 5, Details),
        new("TilingFlangeHeight", 0.4, 2.5, Details)))
    {
        Id = "recessedBathtub",
        Name = "recessed bathtub",
        Taped = _ =>
        [
            "RimLength", "RimWidth", "RimCornerRadius", "FloorWidth", "FloorCornerRadius", "Depth", "HeadRun", "FootRun", "CoveRadius",
            "OverallLength", "OverallWidth", "ApronHeight",
        ],
        RoughKinds = [RoughTubs.Recessed()],
        Walls = WallBase.Tub,
        TakenOff = tape => Basin(tape.DrainDiameter, tape.OverflowDiameter) + CutOut("along walls and floor"),
        Materials = Materials,
        Tape = tub => tub.Measurements,
        Make = tape => new RecessedBathtub(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(tape.OverallLength.Meters, tape.OverallWidth.Meters), GoTogether = GoTogether, };

    public static FixtureKind Freestanding { get; } = new KnownKind<FreestandingTub, FreestandingTubMeasurements>(
        FreestandingTubMeasurements.Inputs, new Form<FreestandingTubMeasurements>(
        "freestanding tub",
        _ => true,
        new("RimLength", 40, 76, Sizes)
        {
            Along = (t, x) => t with { RimLength = x, FloorLength = x - t.HeadRun - t.FootRun },
        },
        new("RimWidth", 18, 42, Sizes),
        new("RimCornerRadius", 3, 20, Details),
        new("FloorLength", 24, 64, Sizes),
        new("FloorWidth", 10, 34, Sizes),
        new("FloorCornerRadius", 1, 17, Details),
        new("Depth", 11, 26, Sizes),
        new("HeadRun", 0.25, 24, Details)
        {
            Along = (t, x) => t with { HeadRun = x, FloorLength = t.RimLength - x - t.FootRun },
        },
        new("FootRun", 0.25, 24, Details)
        {
            Along = (t, x) => t with { FootRun = x, FloorLength = t.RimLength - t.HeadRun - x },
        },
        new("CoveRadius", 0.5, 8, Details),
        new("RollRadius", 0.4, 2, Details),
        new("WallThickness", 0.08, 2.5, Details),
        new("FootPadDiameter", 0.8, 5, Details),
        new("DrainDiameter", 1.45, 3.5, Outlet),
        new("OverflowDiameter", 1.2, 4.5, Details)))
    {
        Id = "freestandingTub",
        Name = "freestanding tub",
        Taped = _ =>
        [
            "RimLength", "RimWidth", "RimCornerRadius", "FloorWidth", "FloorCornerRadius", "Depth", "HeadRun", "FootRun", "CoveRadius",
            "RollRadius", "WallThickness",
        ],
        RoughKinds = [RoughTubs.Freestanding(false), RoughTubs.Freestanding(true)],
        TakenOff = tape => Basin(tape.DrainDiameter, tape.OverflowDiameter) + "clear the floor round it; it has no joint to a wall",
        PutBack = _ => "put drain and overflow parts back in sealant where they were taken off",
        Materials = Materials,
        Tape = tub => tub.Measurements,
        Make = tape => new FreestandingTub(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(
            tape.RimLength.Meters + (4 * tape.RollRadius.Meters), tape.RimWidth.Meters + (4 * tape.RollRadius.Meters)),
        GoTogether = tape => [Cove(tape.CoveRadius.Meters, tape.Depth.Meters)], };

    public static FixtureKind Oval { get; } = new KnownKind<OvalTub, OvalTubMeasurements>(
        OvalTubMeasurements.Inputs, new Form<OvalTubMeasurements>(
        "oval tub",
        _ => true,
        new("DeckLength", 46, 90, Sizes),
        new("DeckWidth", 27, 66, Sizes),
        new("MouthLength", 38, 76, Sizes),
        new("MouthWidth", 18, 48, Sizes),
        new("FloorLength", 26, 64, Sizes),
        new("FloorWidth", 11, 40, Sizes),
        new("Depth", 11, 26, Sizes),
        new("ApronHeight", 11, 30, Sizes),
        new("DrainDiameter", 1.45, 3.5, Outlet),
        new("OverflowDiameter", 1.2, 4.5, Details)))
    {
        Id = "ovalTub",
        Name = "oval tub",
        Taped = _ =>
        [
            "MouthLength", "MouthWidth", "FloorLength", "FloorWidth", "Depth", "DeckLength", "DeckWidth", "ApronHeight",
        ],
        RoughKinds = [RoughTubs.Oval()],
        Walls = WallBase.Tub,
        TakenOff = tape => Basin(tape.DrainDiameter, tape.OverflowDiameter) + CutOut("along walls and floor"),
        Materials = Materials,
        Tape = tub => tub.Measurements,
        Make = tape => new OvalTub(tape), OnTheFloor = tape => Fixtures.Footprint.Of(tape.DeckLength.Meters, tape.DeckWidth.Meters), };

    public static FixtureKind Corner { get; } = new KnownKind<CornerTub, CornerTubMeasurements>(
        CornerTubMeasurements.Inputs, new Form<CornerTubMeasurements>(
        "corner tub",
        _ => true,
        new("LeftWall", 44, 84, Sizes),
        new("RightWall", 44, 84, Sizes),
        new("LeftReturn", 1, 48, Details),
        new("RightReturn", 1, 48, Details),
        new("FrontBow", 0.25, 24, Details),
        new("FrontHeight", 11, 30, Sizes),
        new("MouthLength", 36, 76, Sizes),
        new("MouthWidth", 24, 58, Sizes),
        new("FloorLength", 22, 60, Sizes),
        new("FloorWidth", 14, 48, Sizes),
        new("Depth", 11, 26, Sizes),
        new("DrainDiameter", 1.45, 3.5, Outlet),
        new("OverflowDiameter", 1.2, 4.5, Details)))
    {
        Id = "cornerTub",
        Name = "corner tub",
        Taped = _ =>
        [
            "MouthLength", "MouthWidth", "FloorLength", "FloorWidth", "Depth", "LeftWall", "RightWall", "LeftReturn", "RightReturn",
            "FrontHeight",
        ],
        RoughKinds = [RoughTubs.Corner()],
        TakenOff = tape => Basin(tape.DrainDiameter, tape.OverflowDiameter) + CutOut("along walls and floor"),
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
