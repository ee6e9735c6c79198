using System;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>The counters, panels and tiled walls that can be quoted roughly. Lengths in metres.</summary>
internal static class RoughFlats
{
    private static readonly Source CounterDepth =
        Source.CommonPractice("a kitchen counter is 24 to 26 in (610 to 660 mm) deep, mostly 25.5 in");
    private static readonly Source Splash = Source.CommonPractice("a counter's upstand is mostly 4 in (100 mm) high");
    private static readonly Source Edge = Source.CommonPractice("a counter's edge is mostly 1.5 in (38 mm) high");
    private static readonly Source Tile = Source.CommonPractice("bathroom wall tile is mostly 4.25 in (108 mm) square, newer tile larger");

    public static RoughKind Straight() => new RoughKindBuilder("countertop", "straight counter with a sink, one end open",
        typeof(Countertop))
        .Needed("Run1Length", 0.9, 6)
        .Usual("Run1Depth", 0.58, 0.645, 0.67, CounterDepth)
        .Between(k => (Math.Max(0.1, k.Or("CutOutDepth", 0) + k.Or("BacksplashThickness", 0)), 3))
        .With(Counter).Making(k => Top(k, Run(k, "Run1")));

    public static RoughKind Angled() => new RoughKindBuilder("cornerCountertop", "counter round a corner with a sink, one end open",
        typeof(Countertop))
        .Needed("Run1Length", 1.5, 6)
        .Needed("Run2Length", 1.5, 6)
        .Usual("Run1Depth", 0.58, 0.645, 0.67, CounterDepth)
        .Between(k => (Math.Max(0.1, k.Or("CutOutDepth", 0) + k.Or("BacksplashThickness", 0)), 3))
        .Share("Run2Depth", "Run1Depth", 0.95, 1, 1.05).With(Counter).Making(k => Top(k, Run(k, "Run1"), Run(k, "Run2")));

    public static RoughKind Panel() => new RoughKindBuilder("flatPanel", "plain panel", typeof(FlatPanel))
        .Needed("Length", 0.2, 6)
        .Needed("Width", 0.15, 2.5)
        .Share("ExposedEdge", "Length", 0, 1, 2)
        .Between(k => (0, 2 * (k["Length"] + k["Width"])))
        .Usual("EdgeHeight", 0.015, 0.025, 0.04)
        .Fixed("BacksplashLength", 0, "a plain panel has no upstand unless it is said otherwise")
        .Usual("BacksplashHeight", 0.09, 0.10, 0.15, Splash)
        .Usual("BacksplashThickness", 0.01, 0.019, 0.025)
        .Fixed("CutOutLength", 0, "a plain panel has no cut-out unless it is said otherwise")
        .Usual("CutOutDepth", 0.30, 0.36, 0.42).Between(k => (0.01, k["Width"] - k["BacksplashThickness"])).Making(Flat);

    public static RoughKind Vanity() => new RoughKindBuilder("vanityTop", "vanity top with upstand and one sink", typeof(FlatPanel))
        .Needed("Length", 0.45, 3)
        .Needed("Width", 0.4, 0.8)
        .Share("ExposedEdge", "Length", 0.95, 1.2, 1.9)
        .Between(k => (0, 2 * (k["Length"] + k["Width"])))
        .Usual("EdgeHeight", 0.02, 0.038, 0.05, Edge)
        .Share("BacksplashLength", "Length", 0.95, 1, 1.6)
        .Between(k => (0, 2 * (k["Length"] + k["Width"])))
        .Usual("BacksplashHeight", 0.07, 0.10, 0.15, Splash)
        .Usual("BacksplashThickness", 0.01, 0.019, 0.025)
        .Usual("CutOutLength", 0.33, 0.43, 0.52)
        .Between(k => (0, k["Length"]))
        .Usual("CutOutDepth", 0.26, 0.34, 0.40).Between(k => (0, k["Width"] - k["BacksplashThickness"])).Making(Flat);

    public static RoughKind Alcove() => new RoughKindBuilder("tiledSurround", "tiled walls of an alcove", typeof(TiledSurround))
        .Needed("BackWallLength", 0.6, 3)
        .Needed("TileHeight", 0.3, 3)
        .Share("LeftWallLength", "BackWallLength", 0.45, 0.52, 0.64)
        .Share("RightWallLength", "LeftWallLength", 0.95, 1, 1.1)
        .Usual("TileLength", 0.10, 0.108, 0.3, Tile)
        .Share("TileWidth", "TileLength", 0.5, 1, 1, Tile)
        .Usual("JointWidth", 0.0015, 0.003, 0.005)
        .Share("JointDepth", "JointWidth", 0.1, 0.4, 0.7)
        .Between(k => (0, 0.015))
        .Fixed("WindowLength", 0, "no window unless it is said otherwise")
        .Usual("WindowHeight", 0.5, 0.75, 0.9).Between(k => (0.01, k["TileHeight"])).Making(Walls);

    private static RoughKindBuilder Counter(RoughKindBuilder rows) => rows
        .Usual("Thickness", 0.019, 0.038, 0.042, Edge)
        .Usual("BacksplashHeight", 0.09, 0.10, 0.15, Splash)
        .Usual("BacksplashThickness", 0.01, 0.019, 0.025)
        .Usual("CutOutLength", 0.4, 0.72, 0.84)
        .Between(k => (0, k["Run1Length"]))
        .Usual("CutOutDepth", 0.36, 0.5, 0.56).Between(k => (0, k["Run1Depth"] - k["BacksplashThickness"]));

    private static CounterRun Run(KnownReadings k, string run) => new(k.Length(run + "Length"), k.Length(run + "Depth"));

    private static Countertop Top(KnownReadings k, params CounterRun[] runs) => new(new CountertopMeasurements(
        k.For(CountertopMeasurements.Inputs), runs, EdgeProfile.Square, false, true, CutOut(k, "CutOutLength", "CutOutDepth")));

    private static FlatPanel Flat(KnownReadings k) => new(
        new FlatPanelMeasurements(k.For(FlatPanelMeasurements.Inputs), CutOut(k, "CutOutLength", "CutOutDepth")));

    private static TiledSurround Walls(KnownReadings k)
    {
        Length height = k.Length("TileHeight");
        return new TiledSurround(new TiledWallMeasurements(
            k.For(TiledWallMeasurements.Inputs),
            [new(k.Length("LeftWallLength"), height), new(k.Length("BackWallLength"), height), new(k.Length("RightWallLength"), height)],
            JointProfile.Sharp, CutOut(k, "WindowLength", "WindowHeight")));
    }

    // An opening without a length or without a height is none.
    private static RectangularOpening[] CutOut(KnownReadings k, string length, string height) =>
        k[length] > 0 && k[height] > 0 ? [new RectangularOpening(k.Length(length), k.Length(height))] : [];
}
