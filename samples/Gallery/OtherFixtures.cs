using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Samples.Gallery;

/// <summary>One fixture of each kind that the guesthouse does not have. Lengths are invented.</summary>
internal static class OtherFixtures
{
    public static FreestandingTub Freestanding { get; } = new(new FreestandingTubMeasurements
    {
        RimLength = Length.FromInches(55), RimWidth = Length.FromInches(25), RimCornerRadius = Length.FromInches(12.5),
        FloorLength = Length.FromInches(40), FloorWidth = Length.FromInches(17), FloorCornerRadius = Length.FromInches(8.5),
        Depth = Length.FromInches(17), HeadRun = Length.FromInches(7.5), FootRun = Length.FromInches(7.5), CoveRadius = Length.FromInches(3),
        RollRadius = Length.FromInches(1.25), RollTurn = Angle.FromDegrees(270), WallThickness = Length.FromInches(0.5),
        OutsideIsCoated = true, UndersideIsCoated = true, Feet = 4, FootPadDiameter = Length.FromInches(2),
        DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
    });

    public static OvalTub Oval { get; } = new(new OvalTubMeasurements
    {
        MouthLength = Length.FromInches(55), MouthWidth = Length.FromInches(25), MouthExponent = 2.6,
        FloorLength = Length.FromInches(40), FloorWidth = Length.FromInches(17), FloorExponent = 2.4, Depth = Length.FromInches(17),
        DeckLength = Length.FromInches(66), DeckWidth = Length.FromInches(36), ApronHeight = Length.FromInches(20),
        DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
    });

    public static CornerTub Corner { get; } = new(new CornerTubMeasurements
    {
        MouthLength = Length.FromInches(48), MouthWidth = Length.FromInches(38), MouthExponent = 2.2,
        FloorLength = Length.FromInches(34), FloorWidth = Length.FromInches(26), FloorExponent = 2.2, Depth = Length.FromInches(17),
        LeftWall = Length.FromInches(60), RightWall = Length.FromInches(60), LeftReturn = Length.FromInches(30), RightReturn = Length.FromInches(30),
        FrontBow = Length.FromInches(6), FrontHeight = Length.FromInches(20), DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
    });

    public static CounterSink Vessel { get; } = new(new CounterSinkMeasurements
    {
        Mounting = SinkMounting.Vessel, Shape = BowlShape.SphericalCap,
        MouthLength = Length.FromInches(16), MouthWidth = Length.FromInches(16), BowlDepth = Length.FromInches(5.5),
        WallThickness = Length.FromInches(0.5), BaseDiameter = Length.FromInches(3),
        DrainDiameter = Length.FromInches(1.75), OverflowDiameter = Length.Zero,
    });

    public static ShowerPan Pan { get; } = new(new ShowerPanMeasurements
    {
        FloorLength = Length.FromInches(33), FloorWidth = Length.FromInches(33), WallHeight = Length.FromInches(3), LedgeWidth = Length.FromInches(1.5),
        CurbInsideHeight = Length.FromInches(3), CurbTopWidth = Length.FromInches(4.5), CurbOutsideHeight = Length.FromInches(5),
        DrainDiameter = Length.FromInches(2),
    });

    public static Countertop Counter { get; } = new(new CountertopMeasurements
    {
        Runs = [new(Length.FromInches(96), Length.FromInches(25.5)), new(Length.FromInches(72), Length.FromInches(25.5))],
        Thickness = Length.FromInches(1.5), Profile = EdgeProfile.Bullnose, LeftEndIsOpen = true, RightEndIsOpen = true,
        BacksplashHeight = Length.FromInches(4), BacksplashThickness = Length.FromInches(0.75),
        CutOuts = [new(Length.FromInches(32), Length.FromInches(21))],
    });

    public static FlatPanel Panel { get; } = new(new FlatPanelMeasurements
    {
        Length = Length.FromInches(96), Width = Length.FromInches(25.5),
        ExposedEdge = Length.FromInches(96), EdgeHeight = Length.FromInches(1.5),
        BacksplashLength = Length.FromInches(96), BacksplashHeight = Length.FromInches(4), BacksplashThickness = Length.FromInches(0.75),
        CutOuts = [new(Length.FromInches(32), Length.FromInches(21))],
    });
}
