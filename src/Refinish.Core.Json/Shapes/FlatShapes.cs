using System.Collections.Generic;
using Refinish.Fixtures;

namespace Refinish.Json.Shapes;

/// <summary>Countertops, panels and tiled walls and what a tape measures on them.</summary>
internal static class FlatShapes
{
    public static ObjectShape<CountertopMeasurements> Countertop { get; } = new Fields<CountertopMeasurements>("countertopMeasurements")
        .With("runs", CommonShapes.List(FixtureParts.Run), top => top.Runs, out Slot<IReadOnlyList<CounterRun>> runs)
        .With("profile", new WordShape<EdgeProfile>(), top => top.Profile, out Slot<EdgeProfile> profile)
        .With("leftEndIsOpen", Scalars.YesNo, top => top.LeftEndIsOpen, out Slot<bool> leftEndIsOpen)
        .With("rightEndIsOpen", Scalars.YesNo, top => top.RightEndIsOpen, out Slot<bool> rightEndIsOpen)
        .Readings(CountertopMeasurements.Inputs, out Slot<InputValues> readings)
        .With("cutOuts", CommonShapes.List(FixtureParts.Opening), top => top.CutOuts, out Slot<IReadOnlyList<RectangularOpening>> cutOuts)
        .Making(v => new CountertopMeasurements(readings(v), runs(v), profile(v), leftEndIsOpen(v), rightEndIsOpen(v), cutOuts(v)));

    public static ObjectShape<FlatPanelMeasurements> Panel { get; } = new Fields<FlatPanelMeasurements>("flatPanelMeasurements")
        .Readings(FlatPanelMeasurements.Inputs, out Slot<InputValues> readings)
        .With("cutOuts", CommonShapes.List(FixtureParts.Opening), panel => panel.CutOuts,
            out Slot<IReadOnlyList<RectangularOpening>> cutOuts)
        .Making(v => new FlatPanelMeasurements(readings(v), cutOuts(v)));

    public static ObjectShape<TiledWallMeasurements> TiledWalls { get; } = new Fields<TiledWallMeasurements>("tiledWallMeasurements")
        .With("walls", CommonShapes.List(FixtureParts.Wall), tile => tile.Walls, out Slot<IReadOnlyList<WallRun>> walls)
        .Readings(TiledWallMeasurements.Inputs, out Slot<InputValues> readings)
        .With("jointProfile", new WordShape<JointProfile>(), tile => tile.JointProfile, out Slot<JointProfile> jointProfile)
        .With("openings", CommonShapes.List(FixtureParts.Opening), tile => tile.Openings,
            out Slot<IReadOnlyList<RectangularOpening>> openings)
        .Optional("recesses", CommonShapes.List(FixtureParts.Recess), tile => tile.Recesses,
            (tile, recesses) => tile with { Recesses = recesses })
        .Making(v => new TiledWallMeasurements(readings(v), walls(v), jointProfile(v), openings(v)));
}
