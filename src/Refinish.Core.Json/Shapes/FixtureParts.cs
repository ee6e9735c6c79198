using Refinish.Fixtures;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;

namespace Refinish.Json.Shapes;

/// <summary>What several fixtures are made of.</summary>
internal static class FixtureParts
{
    public static Shape<FixtureZoneKind> Zone { get; } = new WordShape<FixtureZoneKind>();

    public static OneOfShape<PlanOutline> Outline { get; } = new OneOfShape<PlanOutline>("planOutline")
        .Or("roundedRectangle", RoundedRectangle(), outline => !outline.IsEllipse)
        .Or("ellipse", Ellipse(), outline => outline.IsEllipse);

    public static ObjectShape<RectangularOpening> Opening { get; } = new Fields<RectangularOpening>("rectangularOpening")
        .With("length", Tape, it => it.Length, out Slot<Length> length)
        .With("height", Tape, it => it.Height, out Slot<Length> height)
        .Making(v => new RectangularOpening(length(v), height(v)));

    public static ObjectShape<CounterRun> Run { get; } = new Fields<CounterRun>("counterRun")
        .With("length", Tape, it => it.Length, out Slot<Length> length)
        .With("depth", Tape, it => it.Depth, out Slot<Length> depth)
        .Making(v => new CounterRun(length(v), depth(v)));

    public static ObjectShape<WallRun> Wall { get; } = new Fields<WallRun>("wallRun")
        .With("length", Tape, it => it.Length, out Slot<Length> length)
        .With("height", Tape, it => it.Height, out Slot<Length> height)
        .Making(v => new WallRun(length(v), height(v)));

    public static ObjectShape<WallRecess> Recess { get; } = new Fields<WallRecess>("wallRecess")
        .With("kind", new WordShape<WallRecessKind>(), it => it.Kind, out Slot<WallRecessKind> kind)
        .With("length", Tape, it => it.Opening.Length, out Slot<Length> length)
        .With("height", Tape, it => it.Opening.Height, out Slot<Length> height)
        .With("depth", Tape, it => it.Depth, out Slot<Length> depth)
        .Making(v => new WallRecess(kind(v), length(v), height(v), depth(v)));

    private static ObjectShape<PlanOutline> RoundedRectangle() => new Fields<PlanOutline>("roundedRectangle")
        .With("length", Tape, it => it.Length, out Slot<Length> length)
        .With("width", Tape, it => it.Width, out Slot<Length> width)
        .With("cornerRadius", Tape, it => it.CornerRadius, out Slot<Length> cornerRadius)
        .MakingTogether(
            () => PlanOutline.RoundedRectangle(Length.FromMeters(1), Length.FromMeters(1), Length.Zero),
            v => PlanOutline.RoundedRectangle(length(v), width(v), cornerRadius(v)));

    private static ObjectShape<PlanOutline> Ellipse() => new Fields<PlanOutline>("ellipse")
        .With("length", Tape, it => it.Length, out Slot<Length> length)
        .With("width", Tape, it => it.Width, out Slot<Length> width)
        .Making(v => PlanOutline.Ellipse(length(v), width(v)));
}
