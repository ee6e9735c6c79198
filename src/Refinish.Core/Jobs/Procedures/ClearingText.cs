using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What is taken off a fixture before work and put back after it, by its kind: nobody looks for a drain in a tiled wall.</summary>
internal static class ClearingText
{
    /// <summary>The instruction for clearing.</summary>
    public static string Of(IFixture fixture) => RoughFixture.Behind(fixture) switch
    {
        RecessedBathtub tub => Basin(tub.Measurements.DrainDiameter, tub.Measurements.OverflowDiameter) + CutOut("along walls and floor"),
        CornerTub tub => Basin(tub.Measurements.DrainDiameter, tub.Measurements.OverflowDiameter) + CutOut("along walls and floor"),
        OvalTub tub => Basin(tub.Measurements.DrainDiameter, tub.Measurements.OverflowDiameter) + CutOut("along walls and floor"),
        FreestandingTub tub => Basin(tub.Measurements.DrainDiameter, tub.Measurements.OverflowDiameter)
            + "clear the floor round it; it has no joint to a wall",
        ShowerPan pan => Basin(pan.Measurements.DrainDiameter, Length.Zero)
            + "take off door tracks or a curtain rod on the curb; " + CutOut("along walls and floor"),
        PedestalSink sink => Basin(sink.Measurements.DrainDiameter, sink.Measurements.OverflowDiameter)
            + (sink.Measurements.FaucetHoles > 0 ? "take off the faucet or lift it free; " : string.Empty)
            + CutOut("along the wall and at the column"),
        CounterSink sink => Basin(sink.Measurements.DrainDiameter, sink.Measurements.OverflowDiameter)
            + CutOut(sink.Measurements.Mounting switch
            {
                SinkMounting.Vessel => "under the foot of the bowl",
                SinkMounting.DropIn => "under its rim",
                _ => "between bowl and counter",
            }),
        Countertop top => Openings(top.Measurements.CutOuts) + CutOut("along walls and splash"),
        FlatPanel panel => "take off what is fixed to it; " + Openings(panel.Measurements.CutOuts) + CutOut("along its edges"),
        TiledSurround => "take off spout, handles, shower arm, rails and dishes, and cap the pipes; "
            + CutOut("in the corners and along tub, floor and ceiling"),
        ZonedFixture own => (own.WaterCapacity is null ? string.Empty : "take off drain and overflow parts; ")
            + "take off what is fixed to it and comes off" + (own.MaskedEdge > Length.Zero ? "; " + CutOut("round it") : string.Empty),
        ComposedFixture made => Basin(Taken(made, "DrainDiameter"), Taken(made, "OverflowDiameter"))
            + (Taken(made, "FaucetHoleDiameter") > Length.Zero ? "take off the faucet or lift it free; " : string.Empty)
                + made.Kind.Clearing,
        _ => "take off what is fixed to it and comes off; " + CutOut("round it"),
    };

    /// <summary>The instruction for putting back.</summary>
    public static string Back(IFixture fixture) => RoughFixture.Behind(fixture) switch
    {
        FreestandingTub => "put drain and overflow parts back in sealant where they were taken off",
        TiledSurround => "caulk corners and the joints to tub, floor and ceiling; refit spout, handles, shower arm, rails and dishes",
        ZonedFixture { MaskedEdge.Meters: 0 } => "put back what was taken off",
        ComposedFixture made => made.Kind.PuttingBack,
        Countertop or FlatPanel => "caulk the joints, put back what was taken off",
        _ => "caulk the joints, refit the hardware",
    };

    private static string Basin(Length drain, Length overflow) => (drain > Length.Zero, overflow > Length.Zero) switch
    {
        (true, true) => "take off drain trim, stopper and overflow plate; ",
        (true, false) => "take off drain trim and stopper; ",
        (false, true) => "take off the overflow plate; ",
        _ => string.Empty,
    };

    private static Length Taken(ComposedFixture made, string reading) =>
        Length.FromMeters(made.Taken.FirstOrDefault(one => one.Name == reading)?.Value ?? 0);

    private static string Openings(IReadOnlyList<RectangularOpening> cutOuts) =>
        cutOuts.Count > 0 ? "take out what sits in the cut-outs, or free its rim and lift it; " : string.Empty;

    private static string CutOut(string where) => "cut out all caulk " + where;
}
