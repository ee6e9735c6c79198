using System.Collections.Generic;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Countertops, panels and tiled walls and what a tape measures on them.</summary>
internal static class FlatShapes
{
    public static ObjectShape<CountertopMeasurements> Countertop { get; } = new Fields<CountertopMeasurements>("countertopMeasurements")
        .With("runs", CommonShapes.List(FixtureParts.Run), top => top.Runs, out Slot<IReadOnlyList<CounterRun>> runs)
        .With("thickness", Quantities.Tape, top => top.Thickness, out Slot<Length> thickness)
        .With("profile", new WordShape<EdgeProfile>(), top => top.Profile, out Slot<EdgeProfile> profile)
        .With("leftEndIsOpen", Scalars.YesNo, top => top.LeftEndIsOpen, out Slot<bool> leftEndIsOpen)
        .With("rightEndIsOpen", Scalars.YesNo, top => top.RightEndIsOpen, out Slot<bool> rightEndIsOpen)
        .With("backsplashHeight", Quantities.Tape, top => top.BacksplashHeight, out Slot<Length> backsplashHeight)
        .With("backsplashThickness", Quantities.Tape, top => top.BacksplashThickness, out Slot<Length> backsplashThickness)
        .With("cutOuts", CommonShapes.List(FixtureParts.Opening), top => top.CutOuts, out Slot<IReadOnlyList<RectangularOpening>> cutOuts)
        .Optional("edgeRadius", Quantities.Tape, top => top.EdgeRadius, (top, radius) => top with { EdgeRadius = radius })
        .Making(v => new CountertopMeasurements
        {
            Runs = runs(v),
            Thickness = thickness(v),
            Profile = profile(v),
            LeftEndIsOpen = leftEndIsOpen(v),
            RightEndIsOpen = rightEndIsOpen(v),
            BacksplashHeight = backsplashHeight(v),
            BacksplashThickness = backsplashThickness(v),
            CutOuts = cutOuts(v),
        });

    public static ObjectShape<FlatPanelMeasurements> Panel { get; } = new Fields<FlatPanelMeasurements>("flatPanelMeasurements")
        .With("length", Quantities.Tape, panel => panel.Length, out Slot<Length> length)
        .With("width", Quantities.Tape, panel => panel.Width, out Slot<Length> width)
        .With("exposedEdge", Quantities.Tape, panel => panel.ExposedEdge, out Slot<Length> exposedEdge)
        .With("edgeHeight", Quantities.Tape, panel => panel.EdgeHeight, out Slot<Length> edgeHeight)
        .With("backsplashLength", Quantities.Tape, panel => panel.BacksplashLength, out Slot<Length> backsplashLength)
        .With("backsplashHeight", Quantities.Tape, panel => panel.BacksplashHeight, out Slot<Length> backsplashHeight)
        .With("backsplashThickness", Quantities.Tape, panel => panel.BacksplashThickness, out Slot<Length> backsplashThickness)
        .With("cutOuts", CommonShapes.List(FixtureParts.Opening), panel => panel.CutOuts,
            out Slot<IReadOnlyList<RectangularOpening>> cutOuts)
        .Making(v => new FlatPanelMeasurements
        {
            Length = length(v),
            Width = width(v),
            ExposedEdge = exposedEdge(v),
            EdgeHeight = edgeHeight(v),
            BacksplashLength = backsplashLength(v),
            BacksplashHeight = backsplashHeight(v),
            BacksplashThickness = backsplashThickness(v),
            CutOuts = cutOuts(v),
        });

    public static ObjectShape<TiledWallMeasurements> TiledWalls { get; } = new Fields<TiledWallMeasurements>("tiledWallMeasurements")
        .With("walls", CommonShapes.List(FixtureParts.Wall), tile => tile.Walls, out Slot<IReadOnlyList<WallRun>> walls)
        .With("tileLength", Quantities.Tape, tile => tile.TileLength, out Slot<Length> tileLength)
        .With("tileWidth", Quantities.Tape, tile => tile.TileWidth, out Slot<Length> tileWidth)
        .With("jointWidth", Quantities.Tape, tile => tile.JointWidth, out Slot<Length> jointWidth)
        .With("jointDepth", Quantities.Tape, tile => tile.JointDepth, out Slot<Length> jointDepth)
        .With("jointProfile", new WordShape<JointProfile>(), tile => tile.JointProfile, out Slot<JointProfile> jointProfile)
        .With("openings", CommonShapes.List(FixtureParts.Opening), tile => tile.Openings,
            out Slot<IReadOnlyList<RectangularOpening>> openings)
        .Optional("recesses", CommonShapes.List(FixtureParts.Recess), tile => tile.Recesses,
            (tile, recesses) => tile with { Recesses = recesses })
        .Making(v => new TiledWallMeasurements
        {
            Walls = walls(v),
            TileLength = tileLength(v),
            TileWidth = tileWidth(v),
            JointWidth = jointWidth(v),
            JointDepth = jointDepth(v),
            JointProfile = jointProfile(v),
            Openings = openings(v),
        });
}
