using Refinish.Fixtures;

namespace Refinish.Json.Shapes;

/// <summary>
/// The ten kinds of fixture, one put together from parts, one of which only some readings are known, and one of zones that has no kind.
/// </summary>
internal static class FixtureShapes
{
    /// <summary>
    /// A fixture is written as its kind and, beside it, its measurements; a composed and a rough one as the kind they are of and what was
    /// taken.
    /// </summary>
    public static OneOfShape<IFixture> Fixture { get; } = new OneOfShape<IFixture>("fixture")
        {
            Instead = "put what it coats into a " + nameof(ZonedFixture) + ", which has one",
        }
        .Or("recessedBathtub", TubShapes.Recessed.Into("recessedBathtub", tub => new RecessedBathtub(tub), tub => tub.Measurements))
        .Or("freestandingTub", TubShapes.Freestanding.Into("freestandingTub", tub => new FreestandingTub(tub), tub => tub.Measurements))
        .Or("ovalTub", TubShapes.Oval.Into("ovalTub", tub => new OvalTub(tub), tub => tub.Measurements))
        .Or("cornerTub", TubShapes.Corner.Into("cornerTub", tub => new CornerTub(tub), tub => tub.Measurements))
        .Or("pedestalSink", BasinShapes.PedestalSink.Into("pedestalSink", sink => new PedestalSink(sink), sink => sink.Measurements))
        .Or("counterSink", BasinShapes.CounterSink.Into("counterSink", sink => new CounterSink(sink), sink => sink.Measurements))
        .Or("showerPan", BasinShapes.ShowerPan.Into("showerPan", pan => new ShowerPan(pan), pan => pan.Measurements))
        .Or("countertop", FlatShapes.Countertop.Into("countertop", top => new Countertop(top), top => top.Measurements))
        .Or("flatPanel", FlatShapes.Panel.Into("flatPanel", panel => new FlatPanel(panel), panel => panel.Measurements))
        .Or("tiledSurround", FlatShapes.TiledWalls.Into("tiledSurround", tile => new TiledSurround(tile), tile => tile.Measurements))
        .Or("composed", ComposedShapes.Fixture)
        .Or("rough", RoughShapes.Fixture)
        .Or("zoned", ZonedShapes.Fixture);
}
