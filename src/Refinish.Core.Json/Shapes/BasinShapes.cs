using Refinish.Fixtures;

namespace Refinish.Json.Shapes;

/// <summary>Sinks and shower pans and what a tape measures on them.</summary>
internal static class BasinShapes
{
    public static ObjectShape<CounterSinkMeasurements> CounterSink { get; } = new Fields<CounterSinkMeasurements>("counterSinkMeasurements")
        .With("mounting", new WordShape<SinkMounting>(), it => it.Mounting, out Slot<SinkMounting> mounting)
        .With("shape", new WordShape<BowlShape>(), it => it.Shape, out Slot<BowlShape> shape)
        .Readings(CounterSinkMeasurements.Inputs, out Slot<InputValues> readings)
        .MaybeOf("outline", FixtureParts.Outline, it => it.Outline, (it, outline) => it with { Outline = outline })
        .Making(v => new CounterSinkMeasurements(readings(v), mounting(v), shape(v)));

    public static ObjectShape<PedestalSinkMeasurements> PedestalSink { get; } =
        new Fields<PedestalSinkMeasurements>("pedestalSinkMeasurements")
        .With("outline", FixtureParts.Outline, it => it.Outline, out Slot<PlanOutline> outline)
        .Readings(PedestalSinkMeasurements.Inputs, out Slot<InputValues> readings)
        .Making(v => new PedestalSinkMeasurements(readings(v), outline(v)));

    public static ObjectShape<ShowerPanMeasurements> ShowerPan { get; } = new Fields<ShowerPanMeasurements>("showerPanMeasurements")
        .Readings(ShowerPanMeasurements.Inputs, out Slot<InputValues> readings)
        .Making(v => new ShowerPanMeasurements(readings(v)));
}
