using System;
using Points = (double A, double M, double B);

namespace Refinish.Fixtures;

/// <summary>The sinks and shower pans that can be quoted roughly. Lengths in metres.</summary>
internal static class RoughSinks
{
    public static RoughKind Pedestal() => new RoughKindBuilder("pedestalSink", "pedestal sink", typeof(PedestalSink))
        .Needed("OutlineLength", 0.3, 1)
        .Needed("OutlineWidth", 0.25, 0.75)
        .With(rows => Outlined(rows, (0.62, 0.71, 0.82), (0.55, 0.70, 0.80), (0.11, 0.15, 0.19), "Bowl"))
        .Usual("SkirtHeight", 0.08, 0.125, 0.20)
        .Number("SkirtProfileFactor", 1, 1.08, 1.2)
        .Share("WallContact", "OutlineLength", 0.5, 0.67, 1)
        .Usual("ColumnTopDiameter", 0.12, 0.155, 0.20)
        .Beyond("ColumnBaseDiameter", "ColumnTopDiameter", 0.02, 0.05, 0.10)
        .Usual("ColumnHeight", 0.58, 0.66, 0.72)
        .Number("ColumnShare", 0.6, 0.8, 1)
        .Usual("FaucetHoleDiameter", 0.03, 0.033, 0.038)
        .Count("FaucetHoles", 3, "three faucet holes unless it is said otherwise")
        .Making(k => new PedestalSink(new PedestalSinkMeasurements(k.For(PedestalSinkMeasurements.Inputs), Outline(k))));

    public static RoughKind DropIn() => new RoughKindBuilder("dropInSink", "drop-in sink", typeof(CounterSink))
        .Needed("OutlineLength", 0.3, 1.1)
        .Needed("OutlineWidth", 0.25, 0.75)
        .With(rows => Outlined(rows, (0.70, 0.84, 0.92), (0.62, 0.78, 0.90), (0.12, 0.155, 0.22), "Mouth"))
        .Making(k => Sink(k, SinkMounting.DropIn));

    public static RoughKind Undermount() => new RoughKindBuilder("undermountSink", "undermount sink", typeof(CounterSink))
        .Needed("MouthLength", 0.25, 0.9)
        .Needed("MouthWidth", 0.2, 0.6)
        .With(rows => Wet(rows, (0.12, 0.155, 0.22), "Mouth")).Making(k => Sink(k, SinkMounting.Undermount));

    public static RoughKind Vessel() => new RoughKindBuilder("vesselSink", "vessel sink", typeof(CounterSink))
        .Needed("MouthLength", 0.25, 0.8)
        .Needed("MouthWidth", 0.2, 0.6)
        .With(rows => Wet(rows, (0.10, 0.135, 0.17), "Mouth"))
        .Usual("WallThickness", 0.006, 0.012, 0.02)
        .Usual("BaseDiameter", 0.06, 0.09, 0.15)
        .Between(k => (0, Math.Min(k["MouthLength"], k["MouthWidth"]))).Making(k => Sink(k, SinkMounting.Vessel));

    public static RoughKind Pan() => new RoughKindBuilder("showerPan", "shower pan", typeof(ShowerPan))
        .Needed("OverallLength", 0.6, 2)
        .Needed("OverallWidth", 0.6, 1.6)
        .Share("FloorLength", "OverallLength", 0.84, 0.92, 0.97)
        .Between(k => (0.3, k["OverallLength"]))
        .Share("FloorWidth", "OverallWidth", 0.76, 0.85, 0.93)
        .Between(k => (0.3, k["OverallWidth"]))
        .Usual("WallHeight", 0.03, 0.075, 0.12)
        .Usual("LedgeWidth", 0.02, 0.038, 0.06)
        .Usual("CurbInsideHeight", 0.04, 0.075, 0.13)
        .Usual("CurbTopWidth", 0.06, 0.10, 0.14)
        .Beyond("CurbOutsideHeight", "CurbInsideHeight", 0.01, 0.045, 0.09)
        .Number("TextureFactor", 1, 1.03, 1.1)
        .Usual("DrainDiameter", 0.045, 0.08, 0.11)
        .Fixed("ThresholdWidth", 0, "no threshold strip unless it is said otherwise")
        .Making(k => new ShowerPan(new ShowerPanMeasurements(k.For(ShowerPanMeasurements.Inputs))));

    private static RoughKindBuilder Outlined(
        RoughKindBuilder rows, Points along, Points across, Points depth, string bowl) => rows
        .Share("OutlineCornerRadius", "OutlineWidth", 0.05, 0.2, 0.45)
        .Between(k => (0, Math.Min(k["OutlineLength"], k["OutlineWidth"]) / 2))
        .Share(bowl + "Length", "OutlineLength", along.A, along.M, along.B)
        .Between(k => (0.1, k["OutlineLength"]))
        .Share(bowl + "Width", "OutlineWidth", across.A, across.M, across.B)
        .Between(k => (0.1, k["OutlineWidth"])).With(more => Wet(more, depth, bowl));

    private static RoughKindBuilder Wet(RoughKindBuilder rows, Points depth, string bowl) => rows
        .Usual("BowlDepth", depth.A, depth.M, depth.B)
        .Between(k => (Math.Max(0.04, k.Or("OverflowDiameter", 0)), 0.4))
        .Usual("DrainDiameter", 0.04, 0.045, 0.05)
        .Between(k => (0, Math.Min(k[bowl + "Length"], k[bowl + "Width"]) / 2))
        .Usual("OverflowDiameter", 0, 0.025, 0.03)
        .Between(k => (0, Math.Min(Math.Min(k[bowl + "Length"], k[bowl + "Width"]) / 2, k["BowlDepth"])));

    private static CounterSink Sink(KnownReadings k, SinkMounting mounting) => new(
        new CounterSinkMeasurements(k.For(CounterSinkMeasurements.Inputs), mounting, BowlShape.HalfEllipsoid)
        {
            Outline = mounting == SinkMounting.DropIn ? Outline(k) : null,
        });

    private static PlanOutline Outline(KnownReadings k) =>
        PlanOutline.RoundedRectangle(k.Length("OutlineLength"), k.Length("OutlineWidth"), k.Length("OutlineCornerRadius"));
}
