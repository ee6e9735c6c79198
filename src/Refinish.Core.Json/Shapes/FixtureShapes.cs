using System;
using System.Linq;
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
        .Of(TubShapes.Recessed, tub => new RecessedBathtub(tub), tub => tub.Measurements)
        .Of(TubShapes.Freestanding, tub => new FreestandingTub(tub), tub => tub.Measurements)
        .Of(TubShapes.Oval, tub => new OvalTub(tub), tub => tub.Measurements)
        .Of(TubShapes.Corner, tub => new CornerTub(tub), tub => tub.Measurements)
        .Of(BasinShapes.PedestalSink, sink => new PedestalSink(sink), sink => sink.Measurements)
        .Of(BasinShapes.CounterSink, sink => new CounterSink(sink), sink => sink.Measurements)
        .Of(BasinShapes.ShowerPan, pan => new ShowerPan(pan), pan => pan.Measurements)
        .Of(FlatShapes.Countertop, top => new Countertop(top), top => top.Measurements)
        .Of(FlatShapes.Panel, panel => new FlatPanel(panel), panel => panel.Measurements)
        .Of(FlatShapes.TiledWalls, tile => new TiledSurround(tile), tile => tile.Measurements)
        .Or("composed", ComposedShapes.Fixture)
        .Or("rough", RoughShapes.Fixture)
        .Or("zoned", ZonedShapes.Fixture);

    // A kind with a type of its own is written as its measurements, under the identifier that the library gives it.
    private static OneOfShape<IFixture> Of<T, TTape>(
        this OneOfShape<IFixture> kinds, ObjectShape<TTape> tape, Func<TTape, T> make, Func<T, TTape> measured)
        where T : IFixture
    {
        string id = FixtureKind.All.First(kind => kind.FixtureType == typeof(T)).Id;
        return kinds.Or(id, tape.Into(id, make, measured));
    }
}
