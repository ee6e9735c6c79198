using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Bathtubs and what a tape measures on them.</summary>
internal static class TubShapes
{
    public static ObjectShape<RecessedBathtubMeasurements> Recessed { get; } =
        new Fields<RecessedBathtubMeasurements>("recessedBathtubMeasurements")
        .With("rimLength", Quantities.Tape, tub => tub.RimLength, out Slot<Length> rimLength)
        .With("rimWidth", Quantities.Tape, tub => tub.RimWidth, out Slot<Length> rimWidth)
        .With("rimCornerRadius", Quantities.Tape, tub => tub.RimCornerRadius, out Slot<Length> rimCornerRadius)
        .With("floorLength", Quantities.Tape, tub => tub.FloorLength, out Slot<Length> floorLength)
        .With("floorWidth", Quantities.Tape, tub => tub.FloorWidth, out Slot<Length> floorWidth)
        .With("floorCornerRadius", Quantities.Tape, tub => tub.FloorCornerRadius, out Slot<Length> floorCornerRadius)
        .With("depth", Quantities.Tape, tub => tub.Depth, out Slot<Length> depth)
        .With("headRun", Quantities.Tape, tub => tub.HeadRun, out Slot<Length> headRun)
        .With("footRun", Quantities.Tape, tub => tub.FootRun, out Slot<Length> footRun)
        .With("coveRadius", Quantities.Tape, tub => tub.CoveRadius, out Slot<Length> coveRadius)
        .With("overallLength", Quantities.Tape, tub => tub.OverallLength, out Slot<Length> overallLength)
        .With("overallWidth", Quantities.Tape, tub => tub.OverallWidth, out Slot<Length> overallWidth)
        .With("apronHeight", Quantities.Tape, tub => tub.ApronHeight, out Slot<Length> apronHeight)
        .With("drainDiameter", Quantities.Tape, tub => tub.DrainDiameter, out Slot<Length> drainDiameter)
        .With("overflowDiameter", Quantities.Tape, tub => tub.OverflowDiameter, out Slot<Length> overflowDiameter)
        .Optional("apronProfileFactor", Scalars.Number, tub => tub.ApronProfileFactor,
            (tub, factor) => tub with { ApronProfileFactor = factor })
        .Optional("floorShift", Quantities.Tape, tub => tub.FloorShift, (tub, shift) => tub with { FloorShift = shift })
        .Optional("tilingFlangeHeight", Quantities.Tape, tub => tub.TilingFlangeHeight,
            (tub, height) => tub with { TilingFlangeHeight = height })
        .Making(v => new RecessedBathtubMeasurements
        {
            RimLength = rimLength(v),
            RimWidth = rimWidth(v),
            RimCornerRadius = rimCornerRadius(v),
            FloorLength = floorLength(v),
            FloorWidth = floorWidth(v),
            FloorCornerRadius = floorCornerRadius(v),
            Depth = depth(v),
            HeadRun = headRun(v),
            FootRun = footRun(v),
            CoveRadius = coveRadius(v),
            OverallLength = overallLength(v),
            OverallWidth = overallWidth(v),
            ApronHeight = apronHeight(v),
            DrainDiameter = drainDiameter(v),
            OverflowDiameter = overflowDiameter(v),
        });

    public static ObjectShape<FreestandingTubMeasurements> Freestanding { get; } =
        new Fields<FreestandingTubMeasurements>("freestandingTubMeasurements")
        .With("rimLength", Quantities.Tape, tub => tub.RimLength, out Slot<Length> rimLength)
        .With("rimWidth", Quantities.Tape, tub => tub.RimWidth, out Slot<Length> rimWidth)
        .With("rimCornerRadius", Quantities.Tape, tub => tub.RimCornerRadius, out Slot<Length> rimCornerRadius)
        .With("floorLength", Quantities.Tape, tub => tub.FloorLength, out Slot<Length> floorLength)
        .With("floorWidth", Quantities.Tape, tub => tub.FloorWidth, out Slot<Length> floorWidth)
        .With("floorCornerRadius", Quantities.Tape, tub => tub.FloorCornerRadius, out Slot<Length> floorCornerRadius)
        .With("depth", Quantities.Tape, tub => tub.Depth, out Slot<Length> depth)
        .With("headRun", Quantities.Tape, tub => tub.HeadRun, out Slot<Length> headRun)
        .With("footRun", Quantities.Tape, tub => tub.FootRun, out Slot<Length> footRun)
        .With("coveRadius", Quantities.Tape, tub => tub.CoveRadius, out Slot<Length> coveRadius)
        .With("rollRadius", Quantities.Tape, tub => tub.RollRadius, out Slot<Length> rollRadius)
        .With("rollTurn", Quantities.Angle, tub => tub.RollTurn, out Slot<Angle> rollTurn)
        .With("wallThickness", Quantities.Tape, tub => tub.WallThickness, out Slot<Length> wallThickness)
        .With("outsideIsCoated", Scalars.YesNo, tub => tub.OutsideIsCoated, out Slot<bool> outsideIsCoated)
        .With("undersideIsCoated", Scalars.YesNo, tub => tub.UndersideIsCoated, out Slot<bool> undersideIsCoated)
        .With("feet", Scalars.Count, tub => tub.Feet, out Slot<int> feet)
        .With("footPadDiameter", Quantities.Tape, tub => tub.FootPadDiameter, out Slot<Length> footPadDiameter)
        .With("drainDiameter", Quantities.Tape, tub => tub.DrainDiameter, out Slot<Length> drainDiameter)
        .With("overflowDiameter", Quantities.Tape, tub => tub.OverflowDiameter, out Slot<Length> overflowDiameter)
        .Making(v => new FreestandingTubMeasurements
        {
            RimLength = rimLength(v),
            RimWidth = rimWidth(v),
            RimCornerRadius = rimCornerRadius(v),
            FloorLength = floorLength(v),
            FloorWidth = floorWidth(v),
            FloorCornerRadius = floorCornerRadius(v),
            Depth = depth(v),
            HeadRun = headRun(v),
            FootRun = footRun(v),
            CoveRadius = coveRadius(v),
            RollRadius = rollRadius(v),
            RollTurn = rollTurn(v),
            WallThickness = wallThickness(v),
            OutsideIsCoated = outsideIsCoated(v),
            UndersideIsCoated = undersideIsCoated(v),
            Feet = feet(v),
            FootPadDiameter = footPadDiameter(v),
            DrainDiameter = drainDiameter(v),
            OverflowDiameter = overflowDiameter(v),
        });

    public static ObjectShape<OvalTubMeasurements> Oval { get; } = new Fields<OvalTubMeasurements>("ovalTubMeasurements")
        .With("mouthLength", Quantities.Tape, tub => tub.MouthLength, out Slot<Length> mouthLength)
        .With("mouthWidth", Quantities.Tape, tub => tub.MouthWidth, out Slot<Length> mouthWidth)
        .With("mouthExponent", Scalars.Number, tub => tub.MouthExponent, out Slot<double> mouthExponent)
        .With("floorLength", Quantities.Tape, tub => tub.FloorLength, out Slot<Length> floorLength)
        .With("floorWidth", Quantities.Tape, tub => tub.FloorWidth, out Slot<Length> floorWidth)
        .With("floorExponent", Scalars.Number, tub => tub.FloorExponent, out Slot<double> floorExponent)
        .With("depth", Quantities.Tape, tub => tub.Depth, out Slot<Length> depth)
        .With("deckLength", Quantities.Tape, tub => tub.DeckLength, out Slot<Length> deckLength)
        .With("deckWidth", Quantities.Tape, tub => tub.DeckWidth, out Slot<Length> deckWidth)
        .With("apronHeight", Quantities.Tape, tub => tub.ApronHeight, out Slot<Length> apronHeight)
        .With("drainDiameter", Quantities.Tape, tub => tub.DrainDiameter, out Slot<Length> drainDiameter)
        .With("overflowDiameter", Quantities.Tape, tub => tub.OverflowDiameter, out Slot<Length> overflowDiameter)
        .Making(v => new OvalTubMeasurements
        {
            MouthLength = mouthLength(v),
            MouthWidth = mouthWidth(v),
            MouthExponent = mouthExponent(v),
            FloorLength = floorLength(v),
            FloorWidth = floorWidth(v),
            FloorExponent = floorExponent(v),
            Depth = depth(v),
            DeckLength = deckLength(v),
            DeckWidth = deckWidth(v),
            ApronHeight = apronHeight(v),
            DrainDiameter = drainDiameter(v),
            OverflowDiameter = overflowDiameter(v),
        });

    public static ObjectShape<CornerTubMeasurements> Corner { get; } = new Fields<CornerTubMeasurements>("cornerTubMeasurements")
        .With("mouthLength", Quantities.Tape, tub => tub.MouthLength, out Slot<Length> mouthLength)
        .With("mouthWidth", Quantities.Tape, tub => tub.MouthWidth, out Slot<Length> mouthWidth)
        .With("mouthExponent", Scalars.Number, tub => tub.MouthExponent, out Slot<double> mouthExponent)
        .With("floorLength", Quantities.Tape, tub => tub.FloorLength, out Slot<Length> floorLength)
        .With("floorWidth", Quantities.Tape, tub => tub.FloorWidth, out Slot<Length> floorWidth)
        .With("floorExponent", Scalars.Number, tub => tub.FloorExponent, out Slot<double> floorExponent)
        .With("depth", Quantities.Tape, tub => tub.Depth, out Slot<Length> depth)
        .With("leftWall", Quantities.Tape, tub => tub.LeftWall, out Slot<Length> leftWall)
        .With("rightWall", Quantities.Tape, tub => tub.RightWall, out Slot<Length> rightWall)
        .With("leftReturn", Quantities.Tape, tub => tub.LeftReturn, out Slot<Length> leftReturn)
        .With("rightReturn", Quantities.Tape, tub => tub.RightReturn, out Slot<Length> rightReturn)
        .With("frontHeight", Quantities.Tape, tub => tub.FrontHeight, out Slot<Length> frontHeight)
        .With("drainDiameter", Quantities.Tape, tub => tub.DrainDiameter, out Slot<Length> drainDiameter)
        .With("overflowDiameter", Quantities.Tape, tub => tub.OverflowDiameter, out Slot<Length> overflowDiameter)
        .Optional("frontBow", Quantities.Tape, tub => tub.FrontBow, (tub, bow) => tub with { FrontBow = bow })
        .Making(v => new CornerTubMeasurements
        {
            MouthLength = mouthLength(v),
            MouthWidth = mouthWidth(v),
            MouthExponent = mouthExponent(v),
            FloorLength = floorLength(v),
            FloorWidth = floorWidth(v),
            FloorExponent = floorExponent(v),
            Depth = depth(v),
            LeftWall = leftWall(v),
            RightWall = rightWall(v),
            LeftReturn = leftReturn(v),
            RightReturn = rightReturn(v),
            FrontHeight = frontHeight(v),
            DrainDiameter = drainDiameter(v),
            OverflowDiameter = overflowDiameter(v),
        });
}
