namespace Refinish.Fixtures;

/// <summary>What is known of shower pans.</summary>
internal static class PanRows
{
    private static readonly Source Sizes =
        Source.CommonPractice("receptors are 30 to 72 in long and 30 to 48 in wide over all; the floor inside is up to 6 in less");
    private static readonly Source Details = Source.Invented("bands of the walls, ledges, thresholds and drains of pans");
    private static readonly Source Curb = Source.Published(
        "International Residential Code 2021, quoted second-hand",
        "P2709.1: a curb stands 2 to 9 in above the top of the drain; the band begins at 0.75 in for low thresholds");

    public static KnownKind<ShowerPan, ShowerPanMeasurements> Pan { get; } = new(new Form<ShowerPanMeasurements>(
        "shower pan",
        new("FloorLength", "length of the floor", 24, 74, Sizes, t => t.FloorLength, (t, x) => t with { FloorLength = x }),
        new("FloorWidth", "width of the floor", 23, 60, Sizes, t => t.FloorWidth, (t, x) => t with { FloorWidth = x }),
        new("WallHeight", "height of the walls", 0.75, 8, Details, t => t.WallHeight, (t, x) => t with { WallHeight = x }),
        new("LedgeWidth", "width of the ledge", 0.4, 4, Details, t => t.LedgeWidth, (t, x) => t with { LedgeWidth = x }),
        new("CurbInsideHeight", "height of the curb inside", 0.75, 9, Curb, t => t.CurbInsideHeight, (t, x) =>
            t with { CurbInsideHeight = x }),
        new("CurbTopWidth", "width of the curb", 1.2, 8, Details, t => t.CurbTopWidth, (t, x) => t with { CurbTopWidth = x }),
        new("CurbOutsideHeight", "height of the curb outside", 1, 12, Details, t => t.CurbOutsideHeight, (t, x) =>
            t with { CurbOutsideHeight = x }),
        new("DrainDiameter", "diameter of the drain", 1.45, 5, Details, t => t.DrainDiameter, (t, x) => t with { DrainDiameter = x }),
        new("ThresholdWidth", "width of the threshold", 1, 12, Details, t => t.ThresholdWidth, (t, x) => t with { ThresholdWidth = x })))
    {
        Materials = [.. TubRows.Materials, FixtureMaterial.VitreousChina, FixtureMaterial.CeramicTile],
        Tape = pan => pan.Measurements,
        Make = tape => new ShowerPan(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(
            tape.FloorLength.Meters + (2 * tape.LedgeWidth.Meters), tape.FloorWidth.Meters + tape.LedgeWidth.Meters
                + tape.CurbTopWidth.Meters),
    };
}
