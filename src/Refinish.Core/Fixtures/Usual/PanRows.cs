using UnitsNet;
using static Refinish.Fixtures.ClearingWords;

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

    public static FixtureKind Pan { get; } = new KnownKind<ShowerPan, ShowerPanMeasurements>(
        ShowerPanMeasurements.Inputs, new Form<ShowerPanMeasurements>(
        "shower pan",
        _ => true,
        new("FloorLength", 24, 74, Sizes),
        new("FloorWidth", 23, 60, Sizes),
        new("WallHeight", 0.75, 8, Details),
        new("LedgeWidth", 0.4, 4, Details),
        new("CurbInsideHeight", 0.75, 9, Curb),
        new("CurbTopWidth", 1.2, 8, Details),
        new("CurbOutsideHeight", 1, 12, Details),
        new("DrainDiameter", 1.45, 5, Details),
        new("ThresholdWidth", 1, 12, Details)))
    {
        Id = "showerPan",
        Name = "shower pan",
        Taped = _ =>
        [
            "FloorLength", "FloorWidth", "WallHeight", "LedgeWidth", "CurbInsideHeight", "CurbTopWidth", "CurbOutsideHeight",
        ],
        RoughKinds = [RoughSinks.Pan()],
        Walls = WallBase.Pan,
        TakenOff = tape => Basin(tape.DrainDiameter, Length.Zero) + "take off door tracks or a curtain rod on the curb; "
            + CutOut("along walls and floor"),
        Materials = [.. TubRows.Materials, FixtureMaterial.VitreousChina, FixtureMaterial.CeramicTile],
        Tape = pan => pan.Measurements,
        Make = tape => new ShowerPan(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(
            tape.FloorLength.Meters + (2 * tape.LedgeWidth.Meters), tape.FloorWidth.Meters + tape.LedgeWidth.Meters
                + tape.CurbTopWidth.Meters),
    };
}
