using System;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Tests.Fixtures;

/// <summary>
/// Fixtures of a nominal size, in inches; what the size does not say follows from plain proportions, invented for the tests.
/// </summary>
internal static class NominalFixtures
{
    public static IFixture Of(string kind, double along, double across, double height) => kind switch
    {
        "tub" => new RecessedBathtub(Tub(along - 7, across - 6.5, height - 1.25) with
        {
            OverallLength = Inch(along), OverallWidth = Inch(across), ApronHeight = Inch(height),
        }),
        "freestanding" => new FreestandingTub(Tapes.Freestanding() with
        {
            RimLength = Inch(along - 4), RimWidth = Inch(across - 4), RimCornerRadius = Inch((across - 4) / 2),
                FloorLength = Inch(along - 20), FloorWidth = Inch(across - 12),
            FloorCornerRadius = Inch((across - 12) / 2), HeadRun = Inch(8), FootRun = Inch(8), Depth = Inch(height - 2),
        }),
        "oval" => new OvalTub(Tapes.Oval() with
        {
            DeckLength = Inch(along), DeckWidth = Inch(across), ApronHeight = Inch(height), MouthLength = Inch(along - 8),
                MouthWidth = Inch(across - 8),
            FloorLength = Inch(along - 22), FloorWidth = Inch(across - 18), Depth = Inch(height - 2),
        }),
        "corner" => new CornerTub(Tapes.Corner() with
        {
            LeftWall = Inch(along), RightWall = Inch(across), LeftReturn = Inch(along / 2), RightReturn = Inch(across / 2),
                FrontHeight = Inch(height),
            MouthLength = Inch(along * 0.75), MouthWidth = Inch(along * 0.6), FloorLength = Inch(along * 0.55),
                FloorWidth = Inch(along * 0.42), Depth = Inch(height - 3),
        }),
        "pan" => new ShowerPan(Tapes.Pan() with
        {
            FloorLength = Inch(along - 3), FloorWidth = Inch(across - 5), WallHeight = Inch(height), CurbInsideHeight = Inch(height),
                CurbOutsideHeight = Inch(height + 1.5),
            CurbTopWidth = Inch(3), LedgeWidth = Inch(1.5),
        }),
        "pedestal" => new PedestalSink(Tapes.Sink() with
        {
            Outline = PlanOutline.RoundedRectangle(Inch(along), Inch(across), Inch(3)), BowlLength = Inch(along * 0.7),
                BowlWidth = Inch(across * 0.68),
            WallContact = Inch(along * 0.7), ColumnHeight = Inch(height - 8), SkirtHeight = Inch(5),
        }),
        "dropin" => new CounterSink(Tapes.DropIn() with
        {
            Outline = PlanOutline.RoundedRectangle(Inch(along), Inch(across), Inch(2)), MouthLength = Inch(along - 3),
                MouthWidth = Inch(across - 4), BowlDepth = Inch(height),
        }),
        "undermount" => new CounterSink(Tapes.Undermount() with { MouthLength = Inch(along), MouthWidth = Inch(across),
            BowlDepth = Inch(height) }),
        "vessel" => new CounterSink(Tapes.Vessel() with { MouthLength = Inch(along - 1), MouthWidth = Inch(along - 1),
            BowlDepth = Inch(height) }),
        "counter" => new FlatPanel(Tapes.Counter() with
        {
            Length = Inch(along), Width = Inch(across), ExposedEdge = Inch(along), EdgeHeight = Inch(height),
                BacksplashLength = Inch(along), CutOuts = [],
        }),
        "run" => new Countertop(Tapes.LCounter() with { Runs = [new CounterRun(Inch(along), Inch(across))], Thickness = Inch(height),
            CutOuts = [] }),
        "walls" or "low" => new TiledSurround(Tapes.Alcove() with
        {
            Walls = [new WallRun(Inch(across), Inch(height)), new WallRun(Inch(along), Inch(height)),
                new WallRun(Inch(across), Inch(height))],
        }),
        _ => throw new ArgumentException(kind + " is no kind of the table", nameof(kind)),
    };

    public static Length Inch(double inches) => Length.FromInches(inches);

    private static RecessedBathtubMeasurements Tub(double rim, double width, double depth) => Tapes.FiveFootTub() with
    {
        RimLength = Inch(rim), RimWidth = Inch(width), FloorLength = Inch(rim - 9), FloorWidth = Inch(width - 4), HeadRun = Inch(7),
            FootRun = Inch(2), Depth = Inch(depth),
    };
}
