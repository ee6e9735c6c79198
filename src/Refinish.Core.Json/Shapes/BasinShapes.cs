using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Sinks and shower pans and what a tape measures on them.</summary>
internal static class BasinShapes
{
    public static ObjectShape<CounterSinkMeasurements> CounterSink { get; } = new Fields<CounterSinkMeasurements>("counterSinkMeasurements")
        .With("mounting", new WordShape<SinkMounting>(), sink => sink.Mounting, out Slot<SinkMounting> mounting)
        .With("shape", new WordShape<BowlShape>(), sink => sink.Shape, out Slot<BowlShape> shape)
        .With("mouthLength", Quantities.Tape, sink => sink.MouthLength, out Slot<Length> mouthLength)
        .With("mouthWidth", Quantities.Tape, sink => sink.MouthWidth, out Slot<Length> mouthWidth)
        .With("bowlDepth", Quantities.Tape, sink => sink.BowlDepth, out Slot<Length> bowlDepth)
        .With("drainDiameter", Quantities.Tape, sink => sink.DrainDiameter, out Slot<Length> drainDiameter)
        .With("overflowDiameter", Quantities.Tape, sink => sink.OverflowDiameter, out Slot<Length> overflowDiameter)
        .MaybeOf("outline", FixtureParts.Outline, sink => sink.Outline, (sink, outline) => sink with { Outline = outline })
        .Optional("wallThickness", Quantities.Tape, sink => sink.WallThickness,
            (sink, thickness) => sink with { WallThickness = thickness })
        .Optional("baseDiameter", Quantities.Tape, sink => sink.BaseDiameter, (sink, diameter) => sink with { BaseDiameter = diameter })
        .Making(v => new CounterSinkMeasurements
        {
            Mounting = mounting(v),
            Shape = shape(v),
            MouthLength = mouthLength(v),
            MouthWidth = mouthWidth(v),
            BowlDepth = bowlDepth(v),
            DrainDiameter = drainDiameter(v),
            OverflowDiameter = overflowDiameter(v),
        });

    public static ObjectShape<PedestalSinkMeasurements> PedestalSink { get; } =
        new Fields<PedestalSinkMeasurements>("pedestalSinkMeasurements")
        .With("outline", FixtureParts.Outline, sink => sink.Outline, out Slot<PlanOutline> outline)
        .With("bowlLength", Quantities.Tape, sink => sink.BowlLength, out Slot<Length> bowlLength)
        .With("bowlWidth", Quantities.Tape, sink => sink.BowlWidth, out Slot<Length> bowlWidth)
        .With("bowlDepth", Quantities.Tape, sink => sink.BowlDepth, out Slot<Length> bowlDepth)
        .With("skirtHeight", Quantities.Tape, sink => sink.SkirtHeight, out Slot<Length> skirtHeight)
        .With("wallContact", Quantities.Tape, sink => sink.WallContact, out Slot<Length> wallContact)
        .With("columnTopDiameter", Quantities.Tape, sink => sink.ColumnTopDiameter, out Slot<Length> columnTopDiameter)
        .With("columnBaseDiameter", Quantities.Tape, sink => sink.ColumnBaseDiameter, out Slot<Length> columnBaseDiameter)
        .With("columnHeight", Quantities.Tape, sink => sink.ColumnHeight, out Slot<Length> columnHeight)
        .With("drainDiameter", Quantities.Tape, sink => sink.DrainDiameter, out Slot<Length> drainDiameter)
        .With("overflowDiameter", Quantities.Tape, sink => sink.OverflowDiameter, out Slot<Length> overflowDiameter)
        .With("faucetHoleDiameter", Quantities.Tape, sink => sink.FaucetHoleDiameter, out Slot<Length> faucetHoleDiameter)
        .With("faucetHoles", Scalars.Count, sink => sink.FaucetHoles, out Slot<int> faucetHoles)
        .Optional("skirtProfileFactor", Scalars.Number, sink => sink.SkirtProfileFactor,
            (sink, factor) => sink with { SkirtProfileFactor = factor })
        .Optional("columnShare", Quantities.Percent, sink => sink.ColumnShare, (sink, share) => sink with { ColumnShare = share })
        .Making(v => new PedestalSinkMeasurements
        {
            Outline = outline(v),
            BowlLength = bowlLength(v),
            BowlWidth = bowlWidth(v),
            BowlDepth = bowlDepth(v),
            SkirtHeight = skirtHeight(v),
            WallContact = wallContact(v),
            ColumnTopDiameter = columnTopDiameter(v),
            ColumnBaseDiameter = columnBaseDiameter(v),
            ColumnHeight = columnHeight(v),
            DrainDiameter = drainDiameter(v),
            OverflowDiameter = overflowDiameter(v),
            FaucetHoleDiameter = faucetHoleDiameter(v),
            FaucetHoles = faucetHoles(v),
        });

    public static ObjectShape<ShowerPanMeasurements> ShowerPan { get; } = new Fields<ShowerPanMeasurements>("showerPanMeasurements")
        .With("floorLength", Quantities.Tape, pan => pan.FloorLength, out Slot<Length> floorLength)
        .With("floorWidth", Quantities.Tape, pan => pan.FloorWidth, out Slot<Length> floorWidth)
        .With("wallHeight", Quantities.Tape, pan => pan.WallHeight, out Slot<Length> wallHeight)
        .With("ledgeWidth", Quantities.Tape, pan => pan.LedgeWidth, out Slot<Length> ledgeWidth)
        .With("curbInsideHeight", Quantities.Tape, pan => pan.CurbInsideHeight, out Slot<Length> curbInsideHeight)
        .With("curbTopWidth", Quantities.Tape, pan => pan.CurbTopWidth, out Slot<Length> curbTopWidth)
        .With("curbOutsideHeight", Quantities.Tape, pan => pan.CurbOutsideHeight, out Slot<Length> curbOutsideHeight)
        .With("drainDiameter", Quantities.Tape, pan => pan.DrainDiameter, out Slot<Length> drainDiameter)
        .Optional("textureFactor", Scalars.Number, pan => pan.TextureFactor, (pan, factor) => pan with { TextureFactor = factor })
        .Optional("thresholdWidth", Quantities.Tape, pan => pan.ThresholdWidth, (pan, width) => pan with { ThresholdWidth = width })
        .Making(v => new ShowerPanMeasurements
        {
            FloorLength = floorLength(v),
            FloorWidth = floorWidth(v),
            WallHeight = wallHeight(v),
            LedgeWidth = ledgeWidth(v),
            CurbInsideHeight = curbInsideHeight(v),
            CurbTopWidth = curbTopWidth(v),
            CurbOutsideHeight = curbOutsideHeight(v),
            DrainDiameter = drainDiameter(v),
        });
}
