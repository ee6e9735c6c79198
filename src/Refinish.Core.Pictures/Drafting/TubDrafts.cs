using System;
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
        double drainX = floorEnd - Math.Max(1.2 * drain, 0.1 * tape.FloorLength.Meters);
        double middle = (width / 2) + tape.FloorShift.Meters;

        View plan = new View("From above, apron side below", length, width)
            .Body(Shape.Rectangle(0, 0, length, width))
            .Hollow(Shape.Rectangle(mouth, side, tape.RimLength.Meters, tape.RimWidth.Meters, tape.RimCornerRadius.Meters))
            .Edge(Shape.Rectangle(floor, floorSide, tape.FloorLength.Meters, tape.FloorWidth.Meters, tape.FloorCornerRadius.Meters), closed: true)
            .Measured(Side.Top, 0, length, 0, "over all", tape.OverallLength)
            .Measured(Side.Top, mouth, mouth + tape.RimLength.Meters, width / 2, "mouth", tape.RimLength)
            .Measured(Side.Bottom, floor, floorEnd, width / 2, "floor", tape.FloorLength)
            .Measured(Side.Right, 0, width, length, "width over all", tape.OverallWidth)
            .Measured(Side.Left, side, width - side, length / 3, "mouth width", tape.RimWidth)
            .Measured(Side.Right, floorSide, floorSide + tape.FloorWidth.Meters, length * 2 / 3, "floor width", tape.FloorWidth)
            .Zone(FixtureZoneKind.Rim, length / 2, side / 2)
            .Zone(FixtureZoneKind.Flange, length / 4, 0)
            .Zone(FixtureZoneKind.Wall, mouth + (tape.HeadRun.Meters / 2), width / 2)
            .Zone(FixtureZoneKind.Floor, (floor + floorEnd) / 2, middle)
            .Point(mouth + (0.293 * tape.RimCornerRadius.Meters), side + (0.293 * tape.RimCornerRadius.Meters), Words.Length("corner of the mouth, radius", tape.RimCornerRadius, units), -135)
            .Point(floor + (0.293 * tape.FloorCornerRadius.Meters), floorSide + (0.293 * tape.FloorCornerRadius.Meters), Words.Length("corner of the floor, radius", tape.FloorCornerRadius, units), 45);
        if (drain > 0)
        {
            plan.Edge(Shape.Ellipse(drainX, middle, drain, drain), closed: true).Point(drainX, middle, Words.Length("drain, diameter", tape.DrainDiameter, units), 180);
        }

        View section = new View("Along the tub, head left, foot right", length, Math.Max(tape.Depth.Meters, tape.ApronHeight.Meters))
            .Hidden(Apron(length, tape.ApronHeight.Meters))
            .Edge([new(0, 0), .. Inside(mouth, 0, tape.RimLength.Meters, tape.Depth.Meters, tape.HeadRun.Meters, tape.FootRun.Meters, tape.CoveRadius.Meters), new(length, 0)])
            .Measured(Side.Right, 0, tape.Depth.Meters, floorEnd, "depth", tape.Depth)
            .Measured(Side.Left, 0, tape.ApronHeight.Meters, 0, "apron", tape.ApronHeight)
            .Measured(Side.Bottom, mouth, floor, tape.Depth.Meters, "head run", tape.HeadRun)
            .Measured(Side.Bottom, floorEnd, floorEnd + tape.FootRun.Meters, tape.Depth.Meters, "foot run", tape.FootRun)
            .Zone(FixtureZoneKind.Apron, length - (mouth / 2), tape.ApronHeight.Meters * 0.8);
        Cove(section, floor, tape.Depth.Meters, tape.CoveRadius, units);
        Overflow(section, 0, floorEnd + tape.FootRun.Meters, floorEnd, tape.Depth.Meters, tape.OverflowDiameter, units);

        List<string> further = [];
        if (tape.TilingFlangeHeight.Meters > 0)
        {
            further.Add(Words.Length("tiling flange along the walls, height", tape.TilingFlangeHeight, units));
        }

        if (tape.FloorShift.Meters != 0)
        {
            further.Add(Words.Length("floor off the middle of the mouth, towards the " + (tape.FloorShift.Meters > 0 ? "apron" : "wall") + ",", UnitsNet.Length.FromMeters(Math.Abs(tape.FloorShift.Meters)), units));
        }

        return new Blueprint([plan, section], further, [Words.FloorIsSharp, Words.PlacesAreUsual]);
    }

    public static Blueprint Of(FreestandingTub tub, DisplayUnits units)
    {
        FreestandingTubMeasurements tape = tub.Measurements;
        double roll = tape.RollRadius.Meters;
        double wall = tape.WallThickness.Meters;
        double edge = Math.Max(2 * roll, wall);
        double length = tape.RimLength.Meters + (2 * edge);
        double width = tape.RimWidth.Meters + (2 * edge);
        double floor = edge + tape.HeadRun.Meters;
        double floorEnd = floor + tape.FloorLength.Meters;
        double middle = width / 2;
        double floorSide = middle - (tape.FloorWidth.Meters / 2);
        double drain = tape.DrainDiameter.Meters;
        double drainX = floorEnd - Math.Max(1.2 * drain, 0.1 * tape.FloorLength.Meters);

        View plan = new View("From above, head left, foot right", length, width)
            .Body(Shape.Rectangle(edge - (2 * roll), edge - (2 * roll), tape.RimLength.Meters + (4 * roll), tape.RimWidth.Meters + (4 * roll), tape.RimCornerRadius.Meters + (2 * roll)))
            .Hollow(Shape.Rectangle(edge, edge, tape.RimLength.Meters, tape.RimWidth.Meters, tape.RimCornerRadius.Meters))
            .Edge(Shape.Rectangle(floor, floorSide, tape.FloorLength.Meters, tape.FloorWidth.Meters, tape.FloorCornerRadius.Meters), closed: true)
            .Measured(Side.Top, edge, length - edge, middle, "mouth", tape.RimLength)
            .Measured(Side.Left, edge, width - edge, length / 2, "mouth width", tape.RimWidth)
            .Measured(Side.Bottom, floor, floorEnd, middle, "floor", tape.FloorLength)
            .Measured(Side.Right, floorSide, width - floorSide, length / 2, "floor width", tape.FloorWidth)
            .Zone(FixtureZoneKind.Rim, length / 2, edge - roll)
            .Zone(FixtureZoneKind.Wall, edge + (tape.HeadRun.Meters / 2), middle)
            .Zone(FixtureZoneKind.Floor, (floor + floorEnd) / 2, middle)
            .Point(edge + (0.293 * tape.RimCornerRadius.Meters), edge + (0.293 * tape.RimCornerRadius.Meters), Words.Length("corner of the mouth, radius", tape.RimCornerRadius, units), -135)
            .Point(floor + (0.293 * tape.FloorCornerRadius.Meters), floorSide + (0.293 * tape.FloorCornerRadius.Meters), Words.Length("corner of the floor, radius", tape.FloorCornerRadius, units), 45);
        if (drain > 0)
        {
            plan.Edge(Shape.Ellipse(drainX, middle, drain, drain), closed: true).Point(drainX, middle, Words.Length("drain, diameter", tape.DrainDiameter, units), 180);
        }

        double turn = tape.RollTurn.Degrees;
        double depth = tape.Depth.Meters;
        View section = new View("Along the tub", length, roll + depth + wall)
            .Edge(Inside(edge, roll, tape.RimLength.Meters, depth, tape.HeadRun.Meters, tape.FootRun.Meters, tape.CoveRadius.Meters))
            .Edge([new(edge - wall, roll), new(floor - wall, roll + depth), new(floorEnd + wall, roll + depth), new(length - edge + wall, roll)])
            .Edge(Shape.Arc(edge - roll, roll, roll, roll, 0, -turn))
            .Edge(Shape.Arc(length - edge + roll, roll, roll, roll, 180, 180 + turn))
            .Measured(Side.Right, roll, roll + depth, floorEnd, "depth", tape.Depth)
            .Measured(Side.Bottom, edge, floor, roll + depth, "head run", tape.HeadRun)
            .Measured(Side.Bottom, floorEnd, floorEnd + tape.FootRun.Meters, roll + depth, "foot run", tape.FootRun)
            .Zone(FixtureZoneKind.Outside, edge + (tape.HeadRun.Meters * 0.3) - wall, roll + (depth * 0.62))
            .Point(edge - (2 * roll), roll, Words.Length("roll, radius of its tube", tape.RollRadius, units), 120)
            .Point(floor + (tape.FloorLength.Meters * 0.4), roll + depth, Words.Length("wall, thickness", tape.WallThickness, units), -90);
        Cove(section, floor, roll + depth, tape.CoveRadius, units);
        Overflow(section, roll, floorEnd + tape.FootRun.Meters, floorEnd, depth, tape.OverflowDiameter, units);
        List<string> further = ["the roll turns " + Measure.Angle.Format(tape.RollTurn.Radians, units, 3) + " from the mouth over the top"];
        if (tape.Feet > 0)
        {
            further.Add(Words.Length(Figures.Fixed(tape.Feet, 0) + (tape.Feet == 1 ? " foot, pad diameter" : " feet, pad diameter"), tape.FootPadDiameter, units));
        }

        return new Blueprint([plan, section], further, [Words.FloorIsSharp, Words.PlacesAreUsual]);
    }

    public static Blueprint Of(OvalTub tub, DisplayUnits units)
    {
        OvalTubMeasurements tape = tub.Measurements;
        double length = tape.DeckLength.Meters;
        double width = tape.DeckWidth.Meters;
        double mouth = tape.MouthLength.Meters;
        double floor = tape.FloorLength.Meters;
        View plan = new View("From above, front below", length, width)
            .Body(Shape.Rectangle(0, 0, length, width))
            .Hollow(Shape.Superellipse(length / 2, width / 2, mouth, tape.MouthWidth.Meters, tape.MouthExponent))
            .Edge(Shape.Superellipse(length / 2, width / 2, floor, tape.FloorWidth.Meters, tape.FloorExponent), closed: true)
            .Measured(Side.Top, 0, length, 0, "deck", tape.DeckLength)
            .Measured(Side.Top, (length - mouth) / 2, (length + mouth) / 2, width / 2, "mouth", tape.MouthLength)
            .Measured(Side.Bottom, (length - floor) / 2, (length + floor) / 2, width / 2, "floor", tape.FloorLength)
            .Measured(Side.Right, 0, width, length, "deck width", tape.DeckWidth)
            .Measured(Side.Left, (width - tape.MouthWidth.Meters) / 2, (width + tape.MouthWidth.Meters) / 2, length / 2, "mouth width", tape.MouthWidth)
            .Measured(Side.Right, (width - tape.FloorWidth.Meters) / 2, (width + tape.FloorWidth.Meters) / 2, length / 2, "floor width", tape.FloorWidth)
            .Zone(FixtureZoneKind.Rim, (length - mouth) / 4, width / 8)
            .Zone(FixtureZoneKind.Wall, (length / 2) - ((mouth + floor) / 4), width / 2)
            .Zone(FixtureZoneKind.Floor, length / 2, width / 2);
        Drain(plan, (length + floor) / 2, width / 2, floor, tape.DrainDiameter, units);
        View section = new View("Along the tub", length, Math.Max(tape.Depth.Meters, tape.ApronHeight.Meters))
            .Hidden(Apron(length, tape.ApronHeight.Meters))
            .Edge([new(0, 0), .. Inside((length - mouth) / 2, 0, mouth, tape.Depth.Meters, (mouth - floor) / 2, (mouth - floor) / 2, 0), new(length, 0)])
            .Measured(Side.Right, 0, tape.Depth.Meters, (length + floor) / 2, "depth", tape.Depth)
            .Measured(Side.Left, 0, tape.ApronHeight.Meters, 0, "apron", tape.ApronHeight)
            .Zone(FixtureZoneKind.Apron, length - ((length - mouth) / 4), tape.ApronHeight.Meters * 0.8);
        Overflow(section, 0, (length + mouth) / 2, (length + floor) / 2, tape.Depth.Meters, tape.OverflowDiameter, units);
        return new Blueprint([plan, section], [Exponents(tape.MouthExponent, tape.FloorExponent)], [Words.PlacesAreUsual]);
    }

    public static Blueprint Of(CornerTub tub, DisplayUnits units)
    {
        CornerTubMeasurements tape = tub.Measurements;
        double right = tape.RightWall.Meters;
        double left = tape.LeftWall.Meters;
        DataPoint a = new(right, left - tape.RightReturn.Meters);
        DataPoint b = new(tape.LeftReturn.Meters, 0);
        DataPoint[] front = Bowed(a, b, tape.FrontBow.Meters);
        double outX = Math.Max(right, Extreme(front, point => point.X));
        double outY = Math.Min(0, -Extreme(front, point => -point.Y));
        DataPoint[] deck = Moved([new(0, left), new(right, left), .. front, new(0, 0)], -outY);
        double height = left - outY;
        (double cx, double cy) = Middle(deck);
        double angle = Math.Atan2(a.Y - b.Y, a.X - b.X);
        DataPoint[] Turned(double length, double width, double exponent) => Rotated(Shape.Superellipse(cx, cy, length, width, exponent), cx, cy, angle);
        double mouth = tape.MouthLength.Meters;
        double floor = tape.FloorLength.Meters;
        View plan = new View("From above, corner of the room below left", outX, height)
            .Body(deck)
            .Hollow(Turned(mouth, tape.MouthWidth.Meters, tape.MouthExponent))
            .Edge(Turned(floor, tape.FloorWidth.Meters, tape.FloorExponent), closed: true)
            .Wall([new(0, -outY), new(0, height), new(right, height)])
            .Measured(Side.Left, -outY, height, 0, "left wall", tape.LeftWall)
            .Measured(Side.Bottom, 0, right, height, "right wall", tape.RightWall)
            .Measured(Side.Top, 0, tape.LeftReturn.Meters, -outY, "left return", tape.LeftReturn)
            .Measured(Side.Right, height - tape.RightReturn.Meters, height, right, "right return", tape.RightReturn)
            .Zone(FixtureZoneKind.Rim, right * 0.1, height - (left * 0.1))
            .Zone(FixtureZoneKind.Floor, cx, cy)
            .Zone(FixtureZoneKind.Wall, cx - ((mouth + floor) / 4 * Math.Cos(angle)), cy - ((mouth + floor) / 4 * Math.Sin(angle)));
        DataPoint middle = tape.FrontBow.Meters > 0 ? front[front.Length / 2] : new((a.X + b.X) / 2, (a.Y + b.Y) / 2);
        plan.Zone(FixtureZoneKind.Apron, (middle.X + a.X) / 2, ((middle.Y + a.Y) / 2) - outY);
        if (tape.FrontBow.Meters > 0)
        {
            plan.Hidden(Moved([a, b], -outY)).Point(middle.X, middle.Y - outY, Words.Length("front, bowed out by", tape.FrontBow, units), -45);
        }

        double drain = tape.DrainDiameter.Meters;
        if (drain > 0)
        {
            double away = (floor / 2) - Math.Max(1.2 * drain, 0.1 * floor);
            double x = cx + (away * Math.Cos(angle));
            double y = cy + (away * Math.Sin(angle));
            plan.Edge(Shape.Ellipse(x, y, drain, drain), closed: true).Point(x, y, Words.Length("drain, diameter", tape.DrainDiameter, units), 200);
        }

        View along = Profile("Along the mouth", mouth, floor, tape.Depth, tape.MouthLength, tape.FloorLength)
            .Measured(Side.Right, 0, tape.Depth.Meters, (mouth + floor) / 2, "depth", tape.Depth);
        Overflow(along, 0, mouth, (mouth + floor) / 2, tape.Depth.Meters, tape.OverflowDiameter, units);
        View across = Profile("Across the mouth", tape.MouthWidth.Meters, tape.FloorWidth.Meters, tape.Depth, tape.MouthWidth, tape.FloorWidth);
        List<string> further = [Exponents(tape.MouthExponent, tape.FloorExponent)];
        if (tape.FrontHeight.Meters > 0)
        {
            further.Add(Words.Length("front and returns, height", tape.FrontHeight, units));
        }

        return new Blueprint([plan, along, across], further, [Words.PlacesAreUsual]);
    }

    private static View Profile(string name, double mouth, double floor, UnitsNet.Length depth, UnitsNet.Length mouthLength, UnitsNet.Length floorLength) => new View(name, mouth, depth.Meters)
        .Edge(Inside(0, 0, mouth, depth.Meters, (mouth - floor) / 2, (mouth - floor) / 2, 0))
        .Measured(Side.Top, 0, mouth, 0, "mouth", mouthLength)
        .Measured(Side.Bottom, (mouth - floor) / 2, (mouth + floor) / 2, depth.Meters, "floor", floorLength);

    private static DataPoint[] Apron(double length, double height) => height > 0 ? [new(0, 0), new(0, height), new(length, height), new(length, 0)] : [];

    private static DataPoint[] Inside(double left, double top, double mouth, double depth, double head, double foot, double cove)
    {
        DataPoint a = new(left, top);
        DataPoint b = new(left + head, top + depth);
        DataPoint c = new(left + mouth - foot, top + depth);
        DataPoint d = new(left + mouth, top);
        return cove > 0 ? [a, .. Shape.Fillet(a, b, c, cove), .. Shape.Fillet(b, c, d, cove), d] : [a, b, c, d];
    }

    private static string Exponents(double mouth, double floor) =>
        "how square, from 2 for an ellipse to 6: mouth " + Figures.Significant(mouth, 3) + ", floor " + Figures.Significant(floor, 3);

    private static void Drain(View plan, double floorEnd, double middle, double floor, UnitsNet.Length diameter, DisplayUnits units)
    {
        double drain = diameter.Meters;
        if (drain > 0)
        {
            double x = floorEnd - Math.Max(1.2 * drain, 0.1 * floor);
            plan.Edge(Shape.Ellipse(x, middle, drain, drain), closed: true).Point(x, middle, Words.Length("drain, diameter", diameter, units), 180);
        }
    }

    private static void Cove(View view, double floor, double depth, UnitsNet.Length radius, DisplayUnits units)
    {
        if (radius.Meters > 0)
        {
            view.Point(floor + (radius.Meters * 0.25), depth - (radius.Meters * 0.12), Words.Length("cove, radius", radius, units), -45);
        }
    }

    // Seen from the side as the short line that its plate is, a third of the way down.
    private static void Overflow(View view, double rim, double top, double bottom, double depth, UnitsNet.Length diameter, DisplayUnits units)
    {
        double size = diameter.Meters;
        if (size <= 0)
        {
            return;
        }

        double y = Math.Min(depth / 3, depth - (size / 2));
        double X(double at) => top + ((bottom - top) * at / depth);
        view.Wall([new(X(y - (size / 2)), rim + y - (size / 2)), new(X(y + (size / 2)), rim + y + (size / 2))])
            .Point(X(y), rim + y, Words.Length("overflow plate, diameter", diameter, units), 160);
    }

    // From a to b, bowed to the right of that direction, as it is seen with y downwards, by an arc of a circle.
    private static DataPoint[] Bowed(DataPoint a, DataPoint b, double bow)
    {
        if (bow <= 0)
        {
            return [a, b];
        }

        const int count = 24;
        double dx = b.X - a.X;
        double dy = b.Y - a.Y;
        double chord = Math.Sqrt((dx * dx) + (dy * dy));
        double half = 2 * Math.Atan(2 * bow / chord);
        double radius = chord / (2 * Math.Sin(half));
        DataPoint[] points = new DataPoint[count + 1];
        for (int i = 0; i <= count; i++)
        {
            double angle = (((2.0 * i) / count) - 1) * half;
            double along = (chord / 2) + (radius * Math.Sin(angle));
            double away = bow - (radius * (1 - Math.Cos(angle)));
            points[i] = new DataPoint(a.X + (((dx * along) - (dy * away)) / chord), a.Y + (((dy * along) + (dx * away)) / chord));
        }

        return points;
    }

    private static double Extreme(DataPoint[] points, Func<DataPoint, double> of)
    {
        double most = double.MinValue;
        foreach (DataPoint point in points)
        {
            most = Math.Max(most, of(point));
        }

        return most;
    }

    private static DataPoint[] Moved(DataPoint[] points, double down) => Array.ConvertAll(points, point => new DataPoint(point.X, point.Y + down));

    private static DataPoint[] Rotated(DataPoint[] points, double x, double y, double angle)
    {
        double c = Math.Cos(angle);
        double s = Math.Sin(angle);
        return Array.ConvertAll(points, point => new DataPoint(x + ((point.X - x) * c) - ((point.Y - y) * s), y + ((point.X - x) * s) + ((point.Y - y) * c)));
    }

    // The centroid, by the shoelace formula.
    private static (double X, double Y) Middle(DataPoint[] points)
    {
        double area = 0;
        double x = 0;
        double y = 0;
        for (int i = 0; i < points.Length; i++)
        {
            DataPoint a = points[i];
            DataPoint b = points[(i + 1) % points.Length];
            double cross = (a.X * b.Y) - (b.X * a.Y);
            area += cross / 2;
            x += (a.X + b.X) * cross / 6;
            y += (a.Y + b.Y) * cross / 6;
        }

        return (x / area, y / area);
    }
}
