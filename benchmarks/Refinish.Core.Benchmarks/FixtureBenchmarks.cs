using BenchmarkDotNet.Attributes;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>Each fixture's area from its measurements, and a tub as triangles.</summary>
[MemoryDiagnoser]
public class FixtureBenchmarks
{
    private static readonly RecessedBathtubMeasurements Recessed = new()
    {
        RimLength = In(53), RimWidth = In(23.5), RimCornerRadius = In(6), FloorLength = In(44), FloorWidth = In(19.5), FloorCornerRadius = In(5),
        Depth = In(13.25), HeadRun = In(7), FootRun = In(2), CoveRadius = In(2.5), OverallLength = In(60), OverallWidth = In(30), ApronHeight = In(14.5),
        DrainDiameter = In(2), OverflowDiameter = In(3),
    };

    private static readonly FreestandingTubMeasurements Free = new()
    {
        RimLength = In(55), RimWidth = In(25), RimCornerRadius = In(12.5), FloorLength = In(40), FloorWidth = In(17), FloorCornerRadius = In(8.5),
        Depth = In(17), HeadRun = In(7.5), FootRun = In(7.5), CoveRadius = In(3), RollRadius = In(1.25), RollTurn = Angle.FromDegrees(270), WallThickness = In(0.5),
        OutsideIsCoated = true, UndersideIsCoated = true, Feet = 4, FootPadDiameter = In(2), DrainDiameter = In(2), OverflowDiameter = In(3),
    };

    private static readonly OvalTubMeasurements OvalTape = new()
    {
        MouthLength = In(55), MouthWidth = In(25), MouthExponent = 2.6, FloorLength = In(40), FloorWidth = In(17), FloorExponent = 2.4, Depth = In(17),
        DeckLength = In(66), DeckWidth = In(36), ApronHeight = In(20), DrainDiameter = In(2), OverflowDiameter = In(3),
    };

    private static readonly CounterSinkMeasurements SinkTape = new()
    {
        Mounting = SinkMounting.Undermount, Shape = BowlShape.HalfEllipsoid, MouthLength = In(17), MouthWidth = In(13.5), BowlDepth = In(6), DrainDiameter = In(1.75), OverflowDiameter = In(1),
    };

    private static readonly CountertopMeasurements CounterTape = new()
    {
        Runs = [new(In(96), In(25.5)), new(In(72), In(25.5))], Thickness = In(1.5), Profile = EdgeProfile.Bullnose, LeftEndIsOpen = true, RightEndIsOpen = true,
        BacksplashHeight = In(4), BacksplashThickness = In(0.75), CutOuts = [new(In(32), In(21))],
    };

    private static readonly CornerTubMeasurements CornerTape = new()
    {
        MouthLength = In(48), MouthWidth = In(38), MouthExponent = 2.2, FloorLength = In(34), FloorWidth = In(26), FloorExponent = 2.2, Depth = In(17),
        LeftWall = In(60), RightWall = In(60), LeftReturn = In(30), RightReturn = In(30), FrontBow = In(5), FrontHeight = In(20), DrainDiameter = In(2), OverflowDiameter = In(3),
    };

    private static readonly PedestalSinkMeasurements PedestalTape = new()
    {
        Outline = PlanOutline.RoundedRectangle(In(24), In(19), In(4)), BowlLength = In(17), BowlWidth = In(13.5), BowlDepth = In(6), SkirtHeight = In(5), WallContact = In(16),
        ColumnTopDiameter = In(6), ColumnBaseDiameter = In(8), ColumnHeight = In(26), DrainDiameter = In(1.75), OverflowDiameter = In(1), FaucetHoleDiameter = In(1.25), FaucetHoles = 3,
    };

    private static readonly TiledWallMeasurements TileTape = new()
    {
        Walls = [new(In(30), In(60)), new(In(60), In(60)), new(In(30), In(60))], TileLength = In(4.25), TileWidth = In(4.25),
        JointWidth = In(0.125), JointDepth = In(0.0625), JointProfile = JointProfile.Concave, Openings = [new(In(24), In(30))], Recesses = [new(WallRecessKind.Niche, In(14), In(12), In(3.5))],
    };

    private static readonly ShowerPanMeasurements PanTape = new()
    {
        FloorLength = In(33), FloorWidth = In(33), WallHeight = In(3), LedgeWidth = In(1.5), CurbInsideHeight = In(3), CurbTopWidth = In(4.5), CurbOutsideHeight = In(5), DrainDiameter = In(2),
    };

    private static readonly FlatPanelMeasurements PanelTape = new()
    {
        Length = In(96), Width = In(25.5), ExposedEdge = In(96), EdgeHeight = In(1.5), BacksplashLength = In(96), BacksplashHeight = In(4), BacksplashThickness = In(0.75), CutOuts = [new(In(32), In(21))],
    };

    private static readonly RecessedBathtub Tub = new(Recessed);

    [Benchmark(Baseline = true)]
    public double RecessedTub() => new RecessedBathtub(Recessed).CoatedArea.SquareMeters;

    [Benchmark]
    public double FreestandingTub() => new FreestandingTub(Free).CoatedArea.SquareMeters;

    [Benchmark]
    public double OvalTub() => new OvalTub(OvalTape).CoatedArea.SquareMeters;

    [Benchmark]
    public double CounterSink() => new CounterSink(SinkTape).CoatedArea.SquareMeters;

    [Benchmark]
    public double Countertop() => new Countertop(CounterTape).CoatedArea.SquareMeters;

    [Benchmark]
    public double CornerTub() => new CornerTub(CornerTape).CoatedArea.SquareMeters;

    [Benchmark]
    public double PedestalSink() => new PedestalSink(PedestalTape).CoatedArea.SquareMeters;

    [Benchmark]
    public double TiledSurround() => new TiledSurround(TileTape).CoatedArea.SquareMeters;

    [Benchmark]
    public double ShowerPan() => new ShowerPan(PanTape).CoatedArea.SquareMeters;

    [Benchmark]
    public double FlatPanel() => new FlatPanel(PanelTape).CoatedArea.SquareMeters;

    [Benchmark]
    public TriangleMesh TubAtOneMillimetre() => Tub.Tessellate(Length.FromMillimeters(1));

    private static Length In(double inches) => Length.FromInches(inches);
}
