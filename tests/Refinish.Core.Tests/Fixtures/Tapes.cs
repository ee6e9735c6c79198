using System;
using Refinish.Fixtures;
using UnitsNet;
using UnitsNet.Units;

namespace Refinish.Tests.Fixtures;

/// <summary>Tape measurements for the tests.</summary>
internal static class Tapes
{
    /// <summary>A five-foot tub, lengths in the given unit after conversion from inches; scale 1 is the worked tub.</summary>
    public static RecessedBathtubMeasurements FiveFootTub(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        RimLength = Inches(53, scale, unit), RimWidth = Inches(23.5, scale, unit), RimCornerRadius = Inches(6, scale, unit),
        FloorLength = Inches(44, scale, unit), FloorWidth = Inches(19.5, scale, unit), FloorCornerRadius = Inches(5, scale, unit),
        Depth = Inches(13.25, scale, unit), HeadRun = Inches(7, scale, unit), FootRun = Inches(2, scale, unit), CoveRadius = Inches(2.5, scale, unit),
        OverallLength = Inches(60, scale, unit), OverallWidth = Inches(30, scale, unit), ApronHeight = Inches(14.5, scale, unit),
        DrainDiameter = Inches(2, scale, unit), OverflowDiameter = Inches(3, scale, unit),
    };

    /// <summary>A tub that can be, from a seed: any proportions, inches.</summary>
    public static RecessedBathtubMeasurements AnyTub(int seed, double scale = 1)
    {
        Random random = new(seed);
        double rimWidth = Between(18, 36);
        double rimLength = rimWidth + Between(0, 40);
        double floorWidth = rimWidth - Between(0, 8);
        double headRun = Between(0, 12);
        double footRun = Between(0, 5);
        if (rimLength - headRun - footRun < 10)
        {
            headRun = footRun = 0;
        }

        double floorLength = rimLength - headRun - footRun;
        double floorRadius = Between(0, Math.Min(floorLength, floorWidth) / 2);
        double side = (rimWidth - floorWidth) / 2;
        double end = Math.Min(headRun, footRun);
        double rimRadius = Between(0, Math.Min(rimWidth / 2, floorRadius + end + side));
        double depth = Between(8, 24);
        double cove = Math.Min(11, Math.Min(depth, floorRadius)) * Between(0, 1);
        double drain = Math.Min(2, Math.Min(floorLength, floorWidth) - (2 * cove)) * Between(0, 1);
        double overflow = Math.Min(3, Math.Min(depth - cove, floorWidth)) * Between(0, 1);
        double deck = Between(0, 8);
        double apron = Between(0, 20);
        return new()
        {
            RimLength = Inches(rimLength), RimWidth = Inches(rimWidth), RimCornerRadius = Inches(rimRadius),
            FloorLength = Inches(floorLength), FloorWidth = Inches(floorWidth), FloorCornerRadius = Inches(floorRadius),
            Depth = Inches(depth), HeadRun = Inches(headRun), FootRun = Inches(footRun), CoveRadius = Inches(cove),
            OverallLength = Inches(rimLength + deck), OverallWidth = Inches(rimWidth + deck), ApronHeight = Inches(apron),
            ApronProfileFactor = 1.1, DrainDiameter = Inches(drain), OverflowDiameter = Inches(overflow),
        };

        double Between(double low, double high) => low + ((high - low) * random.NextDouble());

        Length Inches(double value) => Length.FromInches(value * scale);
    }

    public static PedestalSinkMeasurements Sink(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        Outline = PlanOutline.RoundedRectangle(Inches(24, scale, unit), Inches(19, scale, unit), Inches(4, scale, unit)),
        BowlLength = Inches(17, scale, unit), BowlWidth = Inches(13.5, scale, unit), BowlDepth = Inches(6, scale, unit),
        SkirtHeight = Inches(5, scale, unit), SkirtProfileFactor = 1.1, WallContact = Inches(16, scale, unit),
        ColumnTopDiameter = Inches(6, scale, unit), ColumnBaseDiameter = Inches(8, scale, unit), ColumnHeight = Inches(26, scale, unit), ColumnShare = Ratio.FromPercent(75),
        DrainDiameter = Inches(1.75, scale, unit), OverflowDiameter = Inches(1, scale, unit), FaucetHoleDiameter = Inches(1.25, scale, unit), FaucetHoles = 3,
    };

    public static TiledWallMeasurements Alcove(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        Walls = [new(Inches(30, scale, unit), Inches(60, scale, unit)), new(Inches(60, scale, unit), Inches(60, scale, unit)), new(Inches(30, scale, unit), Inches(60, scale, unit))],
        TileLength = Inches(4.25, scale, unit), TileWidth = Inches(4.25, scale, unit), JointWidth = Inches(0.125, scale, unit), JointDepth = Inches(0.0625, scale, unit), JointProfile = JointProfile.Sharp,
        Openings = [],
    };

    public static FlatPanelMeasurements Counter(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        Length = Inches(96, scale, unit), Width = Inches(25.5, scale, unit), ExposedEdge = Inches(96, scale, unit), EdgeHeight = Inches(1.5, scale, unit),
        BacksplashLength = Inches(96, scale, unit), BacksplashHeight = Inches(4, scale, unit), BacksplashThickness = Inches(0.75, scale, unit),
        CutOuts = [new(Inches(32, scale, unit), Inches(21, scale, unit))],
    };

    public static ShowerPanMeasurements Pan(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        FloorLength = Inches(33, scale, unit), FloorWidth = Inches(33, scale, unit), WallHeight = Inches(3, scale, unit), LedgeWidth = Inches(1.5, scale, unit),
        CurbInsideHeight = Inches(3, scale, unit), CurbTopWidth = Inches(4.5, scale, unit), CurbOutsideHeight = Inches(5, scale, unit), TextureFactor = 1.05, DrainDiameter = Inches(2, scale, unit),
    };

    /// <summary>One of each fixture.</summary>
    public static IFixture[] All(double scale = 1, LengthUnit unit = LengthUnit.Inch) =>
    [
        new RecessedBathtub(FiveFootTub(scale, unit)), new PedestalSink(Sink(scale, unit)), new TiledSurround(Alcove(scale, unit)),
        new FlatPanel(Counter(scale, unit)), new ShowerPan(Pan(scale, unit)),
    ];

    private static Length Inches(double value, double scale, LengthUnit unit) => Length.FromInches(value * scale).ToUnit(unit);
}
