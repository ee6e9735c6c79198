using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>What several fixtures are made of.</summary>
internal static class FixtureParts
{
    public static Shape<FixtureZoneKind> Zone { get; } = new WordShape<FixtureZoneKind>();

    public static OneOfShape<PlanOutline> Outline { get; } = new OneOfShape<PlanOutline>("planOutline")
        .Or("roundedRectangle", RoundedRectangle(), outline => !outline.IsEllipse)
        .Or("ellipse", Ellipse(), outline => outline.IsEllipse);

    public static ObjectShape<RectangularOpening> Opening { get; } = new Fields<RectangularOpening>("rectangularOpening")
        .With("length", Quantities.Tape, opening => opening.Length, out Slot<Length> length)
        .With("height", Quantities.Tape, opening => opening.Height, out Slot<Length> height)
        .Making(v => new RectangularOpening(length(v), height(v)));

    public static ObjectShape<CounterRun> Run { get; } = new Fields<CounterRun>("counterRun")
        .With("length", Quantities.Tape, run => run.Length, out Slot<Length> length)
        .With("depth", Quantities.Tape, run => run.Depth, out Slot<Length> depth)
        .Making(v => new CounterRun(length(v), depth(v)));

    public static ObjectShape<WallRun> Wall { get; } = new Fields<WallRun>("wallRun")
        .With("length", Quantities.Tape, wall => wall.Length, out Slot<Length> length)
        .With("height", Quantities.Tape, wall => wall.Height, out Slot<Length> height)
        .Making(v => new WallRun(length(v), height(v)));

    public static ObjectShape<WallRecess> Recess { get; } = new Fields<WallRecess>("wallRecess")
        .With("kind", new WordShape<WallRecessKind>(), recess => recess.Kind, out Slot<WallRecessKind> kind)
        .With("length", Quantities.Tape, recess => recess.Opening.Length, out Slot<Length> length)
        .With("height", Quantities.Tape, recess => recess.Opening.Height, out Slot<Length> height)
        .With("depth", Quantities.Tape, recess => recess.Depth, out Slot<Length> depth)
        .Making(v => new WallRecess(kind(v), length(v), height(v), depth(v)));

    private static ObjectShape<PlanOutline> RoundedRectangle() => new Fields<PlanOutline>("roundedRectangle")
        .With("length", Quantities.Tape, outline => outline.Length, out Slot<Length> length)
        .With("width", Quantities.Tape, outline => outline.Width, out Slot<Length> width)
        .With("cornerRadius", Quantities.Tape, outline => outline.CornerRadius, out Slot<Length> cornerRadius)
        .MakingTogether(
            () => PlanOutline.RoundedRectangle(Length.FromMeters(1), Length.FromMeters(1), Length.Zero),
            v => PlanOutline.RoundedRectangle(length(v), width(v), cornerRadius(v)));

    private static ObjectShape<PlanOutline> Ellipse() => new Fields<PlanOutline>("ellipse")
        .With("length", Quantities.Tape, outline => outline.Length, out Slot<Length> length)
        .With("width", Quantities.Tape, outline => outline.Width, out Slot<Length> width)
        .Making(v => PlanOutline.Ellipse(length(v), width(v)));
}
