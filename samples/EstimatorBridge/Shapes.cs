using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>
/// A contractor's takeoff has three lengths; the library wants the tape. What the three leave open is taken in proportion to them, and the
/// proportions are invented: measure on site before anything is ordered.
/// </summary>
internal static class Shapes
{
    public const string Kinds = "tub, tile, counter, pan";

    public static IFixture Of(string kind, Length length, Length width, Length depth) => kind switch
    {
        "tub" => new RecessedBathtub(new RecessedBathtubMeasurements
        {
            OverallLength = length, OverallWidth = width, Depth = depth, ApronHeight = depth * 1.1,
            RimLength = length * 0.88, RimWidth = width * 0.78, RimCornerRadius = width * 0.2,
            FloorLength = length * 0.73, FloorWidth = width * 0.65, FloorCornerRadius = width * 0.16,
            HeadRun = length * 0.12, FootRun = length * 0.03, CoveRadius = depth * 0.19,
            DrainDiameter = Length.FromMillimeters(51), OverflowDiameter = Length.FromMillimeters(76),
        }),

        // Three walls: the back one as long as the alcove, the sides as wide; depth is the tiled height.
        "tile" => new TiledSurround(new TiledWallMeasurements
        {
            Walls = [new WallRun(length, depth), new WallRun(width, depth), new WallRun(width, depth)],
            TileLength = Length.FromMillimeters(108), TileWidth = Length.FromMillimeters(108),
            JointWidth = Length.FromMillimeters(3), JointDepth = Length.FromMillimeters(1.5), JointProfile = JointProfile.Sharp,
            Openings = [],
        }),

        // Depth is the front edge.
        "counter" => new FlatPanel(new FlatPanelMeasurements
        {
            Length = length, Width = width, ExposedEdge = length, EdgeHeight = depth,
            BacksplashLength = Length.Zero, BacksplashHeight = Length.Zero, BacksplashThickness = Length.Zero,
            CutOuts = [],
        }),

        // Depth is the height of the upstand.
        "pan" => new ShowerPan(new ShowerPanMeasurements
        {
            FloorLength = length, FloorWidth = width, WallHeight = depth, LedgeWidth = Length.FromMillimeters(30),
            CurbInsideHeight = depth, CurbTopWidth = Length.FromMillimeters(60), CurbOutsideHeight = depth,
            DrainDiameter = Length.FromMillimeters(90),
        }),
        _ => throw new RowException("kind", "'" + kind + "' is none of " + Kinds),
    };
}
