using Refinish.Fixtures;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Bathtubs and what a tape measures on them.</summary>
internal static class TubShapes
{
    public static ObjectShape<RecessedBathtubMeasurements> Recessed { get; } =
        new Fields<RecessedBathtubMeasurements>("recessedBathtubMeasurements")
        .Readings(RecessedBathtubMeasurements.Inputs, out Slot<InputValues> readings)
        .Making(v => new RecessedBathtubMeasurements(readings(v)));

    public static ObjectShape<FreestandingTubMeasurements> Freestanding { get; } =
        new Fields<FreestandingTubMeasurements>("freestandingTubMeasurements")
        .Readings(FreestandingTubMeasurements.Inputs, out Slot<InputValues> readings)
        .With("outsideIsCoated", YesNo, it => it.OutsideIsCoated, out Slot<bool> outsideIsCoated)
        .With("undersideIsCoated", YesNo, it => it.UndersideIsCoated, out Slot<bool> undersideIsCoated)
        .Making(v => new FreestandingTubMeasurements(readings(v), outsideIsCoated(v), undersideIsCoated(v)));

    public static ObjectShape<OvalTubMeasurements> Oval { get; } = new Fields<OvalTubMeasurements>("ovalTubMeasurements")
        .Readings(OvalTubMeasurements.Inputs, out Slot<InputValues> readings)
        .Making(v => new OvalTubMeasurements(readings(v)));

    public static ObjectShape<CornerTubMeasurements> Corner { get; } = new Fields<CornerTubMeasurements>("cornerTubMeasurements")
        .Readings(CornerTubMeasurements.Inputs, out Slot<InputValues> readings)
        .Making(v => new CornerTubMeasurements(readings(v)));
}
