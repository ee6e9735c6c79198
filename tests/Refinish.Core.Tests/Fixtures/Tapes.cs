using System;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;
using UnitsNet.Units;

namespace Refinish.Tests.Fixtures;

/// <summary>Tape measurements for the tests.</summary>
internal static class Tapes
{
    private static readonly Lazy<IFixture[]> Examples = new(() => Every());

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

    public static FreestandingTubMeasurements Freestanding(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        RimLength = Inches(55, scale, unit), RimWidth = Inches(25, scale, unit), RimCornerRadius = Inches(12.5, scale, unit),
        FloorLength = Inches(40, scale, unit), FloorWidth = Inches(17, scale, unit), FloorCornerRadius = Inches(8.5, scale, unit),
        Depth = Inches(17, scale, unit), HeadRun = Inches(7.5, scale, unit), FootRun = Inches(7.5, scale, unit), CoveRadius = Inches(3, scale, unit),
        RollRadius = Inches(1.25, scale, unit), RollTurn = Angle.FromDegrees(270), WallThickness = Inches(0.5, scale, unit),
        OutsideIsCoated = true, UndersideIsCoated = true, Feet = 4, FootPadDiameter = Inches(2, scale, unit),
        DrainDiameter = Inches(2, scale, unit), OverflowDiameter = Inches(3, scale, unit),
    };

    public static OvalTubMeasurements Oval(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        MouthLength = Inches(55, scale, unit), MouthWidth = Inches(25, scale, unit), MouthExponent = 2.6,
        FloorLength = Inches(40, scale, unit), FloorWidth = Inches(17, scale, unit), FloorExponent = 2.4, Depth = Inches(17, scale, unit),
        DeckLength = Inches(66, scale, unit), DeckWidth = Inches(36, scale, unit), ApronHeight = Inches(20, scale, unit),
        DrainDiameter = Inches(2, scale, unit), OverflowDiameter = Inches(3, scale, unit),
    };

    public static CornerTubMeasurements Corner(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        MouthLength = Inches(48, scale, unit), MouthWidth = Inches(38, scale, unit), MouthExponent = 2.2,
        FloorLength = Inches(34, scale, unit), FloorWidth = Inches(26, scale, unit), FloorExponent = 2.2, Depth = Inches(17, scale, unit),
        LeftWall = Inches(60, scale, unit), RightWall = Inches(60, scale, unit), LeftReturn = Inches(30, scale, unit), RightReturn = Inches(30, scale, unit),
        FrontHeight = Inches(20, scale, unit), DrainDiameter = Inches(2, scale, unit), OverflowDiameter = Inches(3, scale, unit),
    };

    public static CounterSinkMeasurements Vessel(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        Mounting = SinkMounting.Vessel, Shape = BowlShape.SphericalCap,
        MouthLength = Inches(16, scale, unit), MouthWidth = Inches(16, scale, unit), BowlDepth = Inches(5.5, scale, unit),
        WallThickness = Inches(0.5, scale, unit), BaseDiameter = Inches(3, scale, unit), DrainDiameter = Inches(1.75, scale, unit), OverflowDiameter = Length.Zero,
    };

    public static CounterSinkMeasurements Undermount(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        Mounting = SinkMounting.Undermount, Shape = BowlShape.HalfEllipsoid,
        MouthLength = Inches(17, scale, unit), MouthWidth = Inches(13.5, scale, unit), BowlDepth = Inches(6, scale, unit),
        DrainDiameter = Inches(1.75, scale, unit), OverflowDiameter = Inches(1, scale, unit),
    };

    public static CounterSinkMeasurements DropIn(double scale = 1, LengthUnit unit = LengthUnit.Inch) =>
        Undermount(scale, unit) with { Mounting = SinkMounting.DropIn, Outline = PlanOutline.RoundedRectangle(Inches(20, scale, unit), Inches(17, scale, unit), Inches(3, scale, unit)) };

    public static CountertopMeasurements LCounter(double scale = 1, LengthUnit unit = LengthUnit.Inch) => new()
    {
        Runs = [new(Inches(96, scale, unit), Inches(25.5, scale, unit)), new(Inches(72, scale, unit), Inches(25.5, scale, unit))],
        Thickness = Inches(1.5, scale, unit), Profile = EdgeProfile.Square, LeftEndIsOpen = true, RightEndIsOpen = true,
        BacksplashHeight = Inches(4, scale, unit), BacksplashThickness = Inches(0.75, scale, unit), CutOuts = [new(Inches(32, scale, unit), Inches(21, scale, unit))],
    };

    public static TiledWallMeasurements RecessedAlcove(double scale = 1, LengthUnit unit = LengthUnit.Inch) => Alcove(scale, unit) with
    {
        Recesses =
        [
            new(WallRecessKind.Niche, Inches(14, scale, unit), Inches(12, scale, unit), Inches(3.5, scale, unit)),
            new(WallRecessKind.Window, Inches(24, scale, unit), Inches(30, scale, unit), Inches(4, scale, unit)),
            new(WallRecessKind.SoapDish, Inches(6, scale, unit), Inches(6, scale, unit), Inches(2, scale, unit)),
        ],
    };

    /// <summary>One of each fixture, and of each variant that is computed differently.</summary>
    public static IFixture[] Every(double scale = 1, LengthUnit unit = LengthUnit.Inch) =>
    [
        .. All(scale, unit),
        new RecessedBathtub(FiveFootTub(scale, unit) with { FloorShift = Inches(1.5, scale, unit), TilingFlangeHeight = Inches(1, scale, unit), ApronProfileFactor = 1.05 }),
        new FreestandingTub(Freestanding(scale, unit)), new FreestandingTub(Freestanding(scale, unit) with { OutsideIsCoated = false, UndersideIsCoated = false, CoveRadius = Length.Zero, RollTurn = Angle.FromDegrees(180) }),
        new OvalTub(Oval(scale, unit)), new CornerTub(Corner(scale, unit)), new CornerTub(Corner(scale, unit) with { FrontBow = Inches(5, scale, unit) }),
        new CounterSink(Vessel(scale, unit)), new CounterSink(Undermount(scale, unit)), new CounterSink(DropIn(scale, unit)),
        new Countertop(LCounter(scale, unit)),
        new Countertop(LCounter(scale, unit) with { Profile = EdgeProfile.Bullnose, RightEndIsOpen = false }),
        new Countertop(LCounter(scale, unit) with { Profile = EdgeProfile.Eased, EdgeRadius = Inches(0.5, scale, unit), BacksplashHeight = Length.Zero, Runs = [new(Inches(96, scale, unit), Inches(25.5, scale, unit))] }),
        new Countertop(LCounter(scale, unit) with { Profile = EdgeProfile.Ogee, Runs = [new(Inches(72, scale, unit), Inches(25.5, scale, unit)), new(Inches(96, scale, unit), Inches(25.5, scale, unit)), new(Inches(60, scale, unit), Inches(30, scale, unit))] }),
        new TiledSurround(RecessedAlcove(scale, unit)), new ShowerPan(Pan(scale, unit) with { ThresholdWidth = Inches(4, scale, unit) }),
        .. ComposedTapes.Every(scale, unit),
    ];

    /// <summary>The first example of a kind; none where it was forgotten.</summary>
    public static IFixture? Of(FixtureKind kind) => kind.FixtureType == typeof(ZonedFixture)
        ? new ZonedFixture("ledge", [new ZonePart("top", FixtureZoneKind.Top, Area.FromSquareMeters(0.3), Angle.Zero)], Length.FromMeters(2))
        : Examples.Value.FirstOrDefault(fixture => FixtureKind.Of(fixture)?.Id == kind.Id);

    private static Length Inches(double value, double scale, LengthUnit unit) => Length.FromInches(value * scale).ToUnit(unit);
}
