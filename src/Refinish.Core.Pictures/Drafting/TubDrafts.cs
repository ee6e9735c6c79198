using System.Collections.Generic;
using OxyPlot;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>Views of tubs. Where drain and overflow lie is not measured; they are drawn where they usually are.</summary>
internal static class TubDrafts
{
    public static Blueprint Of(RecessedBathtub tub, DisplayUnits units)
    {
        RecessedBathtubMeasurements tape = tub.Measurements;
        double length = tape.OverallLength.Meters;
        double width = tape.OverallWidth.Meters;
        double mouth = (length - tape.RimLength.Meters) / 2;
        double side = (width - tape.RimWidth.Meters) / 2;
        double floor = mouth + tape.HeadRun.Meters;
        double floorEnd = floor + tape.FloorLength.Meters;
        double floorSide = (width / 2) + tape.FloorShift.Meters - (tape.FloorWidth.Meters / 2);
        double drain = tape.DrainDiameter.Meters;
        double drainX = floorEnd - System.Math.Max(1.2 * drain, 0.1 * tape.FloorLength.Meters);
        double middle = (width / 2) + tape.FloorShift.Meters;

        View plan = new View("From above, apron side below", length, width)
            .Body(Shape.Rectangle(0, 0, length, width))
            .Hollow(Shape.Rectangle(mouth, side, tape.RimLength.Meters, tape.RimWidth.Meters, tape.RimCornerRadius.Meters))
            .Edge(Shape.Rectangle(floor, floorSide, tape.FloorLength.Meters, tape.FloorWidth.Meters, tape.FloorCornerRadius.Meters), closed: true)
            .Measured(Side.Top, 0, length, 0, "over all", tape.OverallLength)
            .Measured(Side.Top, mouth, mouth + tape.RimLength.Meters, width / 2, "mouth", tape.RimLength)
            .Measured(Side.Bottom, floor, floorEnd, width / 2, "floor", tape.FloorLength)
            .Measured(Side.Right, 0, width, length, "over all", tape.OverallWidth)
            .Measured(Side.Left, side, width - side, length / 3, "mouth", tape.RimWidth)
            .Measured(Side.Right, floorSide, floorSide + tape.FloorWidth.Meters, length * 2 / 3, "floor", tape.FloorWidth)
            .Zone(FixtureZoneKind.Rim, length / 2, side / 2)
            .Zone(FixtureZoneKind.Wall, mouth + (tape.HeadRun.Meters / 2), width / 2)
            .Zone(FixtureZoneKind.Floor, (floor + floorEnd) / 2, middle)
            .Point(mouth + (0.293 * tape.RimCornerRadius.Meters), side + (0.293 * tape.RimCornerRadius.Meters), Words.Length("corner of the mouth, radius", tape.RimCornerRadius, units), -135)
            .Point(floor + (0.293 * tape.FloorCornerRadius.Meters), floorSide + (0.293 * tape.FloorCornerRadius.Meters), Words.Length("corner of the floor, radius", tape.FloorCornerRadius, units), 45);
        if (drain > 0)
        {
            plan.Edge(Shape.Ellipse(drainX, middle, drain, drain), closed: true).Point(drainX, middle, Words.Length("drain, diameter", tape.DrainDiameter, units), 180);
        }

        View section = Section(tape.RimLength.Meters, tape.Depth.Meters, tape.HeadRun.Meters, tape.FootRun.Meters, tape.CoveRadius.Meters, mouth, length, tape.ApronHeight.Meters)
            .Measured(Side.Right, 0, tape.Depth.Meters, floorEnd, "depth", tape.Depth)
            .Measured(Side.Left, 0, tape.ApronHeight.Meters, 0, "apron", tape.ApronHeight)
            .Measured(Side.Bottom, mouth, floor, tape.Depth.Meters, "head run", tape.HeadRun)
            .Measured(Side.Bottom, floorEnd, floorEnd + tape.FootRun.Meters, tape.Depth.Meters, "foot run", tape.FootRun)
            .Zone(FixtureZoneKind.Apron, length - (mouth / 2), tape.ApronHeight.Meters * 0.8);
        Cove(section, floor, tape.Depth.Meters, tape.CoveRadius, units);
        Overflow(section, floorEnd + tape.FootRun.Meters, floorEnd, tape.Depth.Meters, tape.OverflowDiameter, units);

        List<string> further = [];
        if (tape.TilingFlangeHeight.Meters > 0)
        {
            further.Add(Words.Length("tiling flange along the walls, height", tape.TilingFlangeHeight, units));
        }

        if (tape.FloorShift.Meters != 0)
        {
            further.Add(Words.Length("floor off the middle of the mouth, towards the " + (tape.FloorShift.Meters > 0 ? "apron" : "wall") + ",", UnitsNet.Length.FromMeters(System.Math.Abs(tape.FloorShift.Meters)), units));
        }

        return new Blueprint([plan, section], further, [Words.FloorIsSharp, Words.PlacesAreUsual]);
    }

    private static View Section(double mouthLength, double depth, double head, double foot, double cove, double deck, double length, double apron)
    {
        View view = new("Along the tub, head left, foot right", length, System.Math.Max(depth, apron));
        if (apron > 0)
        {
            view.Hidden([new(0, 0), new(0, apron), new(length, apron), new(length, 0)]);
        }

        DataPoint a = new(deck, 0);
        DataPoint b = new(deck + head, depth);
        DataPoint c = new(deck + mouthLength - foot, depth);
        DataPoint d = new(deck + mouthLength, 0);
        DataPoint[] inside = cove > 0 ? [new(0, 0), a, .. Shape.Fillet(a, b, c, cove), .. Shape.Fillet(b, c, d, cove), d, new(length, 0)] : [new(0, 0), a, b, c, d, new(length, 0)];
        return view.Edge(inside);
    }

    private static void Cove(View view, double floor, double depth, UnitsNet.Length radius, DisplayUnits units)
    {
        if (radius.Meters > 0)
        {
            view.Point(floor + (radius.Meters * 0.25), depth - (radius.Meters * 0.12), Words.Length("cove, radius", radius, units), -45);
        }
    }

    // Seen from the side as the short line that its plate is, a third of the way down.
    private static void Overflow(View view, double top, double bottom, double depth, UnitsNet.Length diameter, DisplayUnits units)
    {
        double size = diameter.Meters;
        if (size <= 0)
        {
            return;
        }

        double y = System.Math.Min(depth / 3, depth - size);
        double X(double at) => top + ((bottom - top) * at / depth);
        view.Wall([new(X(y - (size / 2)), y - (size / 2)), new(X(y + (size / 2)), y + (size / 2))])
            .Point(X(y), y, Words.Length("overflow plate, diameter", diameter, units), 160);
    }
}
