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
    public TriangleMesh TubAtOneMillimetre() => Tub.Tessellate(Length.FromMillimeters(1));

    private static Length In(double inches) => Length.FromInches(inches);
}
