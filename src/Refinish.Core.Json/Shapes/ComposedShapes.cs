using System.Collections.Generic;
using Refinish.Fixtures;
using static Refinish.Json.Shapes.CommonShapes;

namespace Refinish.Json.Shapes;

/// <summary>Fixtures put together from parts: the kind and what was taken.</summary>
internal static class ComposedShapes
{
    public static ObjectShape<ComposedFixture> Fixture { get; } = new Fields<ComposedFixture>("composedFixture")
        .With("of", new NamedShape<ComposedKind>(ComposedKind.Kinds, it => it.Id), fixture => fixture.Kind, out Slot<ComposedKind> of)
        .With("taken", List(RoughShapes.Taken), it => it.Taken, out Slot<IReadOnlyList<TakenReading>> taken)
        .MakingTogether(StandIn, v => new ComposedFixture(of(v), taken(v)));

    private static ComposedFixture StandIn() => new(
        ComposedKind.ShowerCeiling,
        [new TakenReading("Length", UnitsNet.Length.FromMeters(1)), new TakenReading("Width", UnitsNet.Length.FromMeters(1))]);
}
