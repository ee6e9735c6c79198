using System.Collections.Generic;
using Refinish.Fixtures;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Countertops, panels and tiled walls and what a tape measures on them.</summary>
internal static class FlatShapes
{
    public static ObjectShape<CountertopMeasurements> Countertop { get; } = new Fields<CountertopMeasurements>("countertopMeasurements")
        .With("runs", List(FixtureParts.Run), it => it.Runs, out Slot<IReadOnlyList<CounterRun>> runs)
        .With("profile", new WordShape<EdgeProfile>(), it => it.Profile, out Slot<EdgeProfile> profile)
        .With("leftEndIsOpen", YesNo, it => it.LeftEndIsOpen, out Slot<bool> leftEndIsOpen)
        .With("rightEndIsOpen", YesNo, it => it.RightEndIsOpen, out Slot<bool> rightEndIsOpen)
        .Readings(CountertopMeasurements.Inputs, out Slot<InputValues> readings)
        .With("cutOuts", List(FixtureParts.Opening), it => it.CutOuts, out Slot<IReadOnlyList<RectangularOpening>> cutOuts)
        .Making(v => new CountertopMeasurements(readings(v), runs(v), profile(v), leftEndIsOpen(v), rightEndIsOpen(v), cutOuts(v)));

    public static ObjectShape<FlatPanelMeasurements> Panel { get; } = new Fields<FlatPanelMeasurements>("flatPanelMeasurements")
        .Readings(FlatPanelMeasurements.Inputs, out Slot<InputValues> readings)
        .With("cutOuts", List(FixtureParts.Opening), it => it.CutOuts, out Slot<IReadOnlyList<RectangularOpening>> cutOuts)
        .Making(v => new FlatPanelMeasurements(readings(v), cutOuts(v)));

    public static ObjectShape<TiledWallMeasurements> TiledWalls { get; } = new Fields<TiledWallMeasurements>("tiledWallMeasurements")
        .With("walls", List(FixtureParts.Wall), it => it.Walls, out Slot<IReadOnlyList<WallRun>> walls)
        .Readings(TiledWallMeasurements.Inputs, out Slot<InputValues> readings)
        .With("jointProfile", new WordShape<JointProfile>(), it => it.JointProfile, out Slot<JointProfile> jointProfile)
        .With("openings", List(FixtureParts.Opening), it => it.Openings, out Slot<IReadOnlyList<RectangularOpening>> openings)
        .Optional("recesses", List(FixtureParts.Recess), it => it.Recesses, (it, recesses) => it with { Recesses = recesses })
        .Making(v => new TiledWallMeasurements(readings(v), walls(v), jointProfile(v), openings(v)));
}
