using System;
using System.Collections.Generic;
using OxyPlot;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>
/// Views of a corner tub: the deck with its walls along the page, the mouth turned with the front, and a cut each way through the
/// mouth.
/// </summary>
internal static class CornerTubDraft
{
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
        TubDrafts.Overflow(along, 0, mouth, (mouth + floor) / 2, tape.Depth.Meters, tape.OverflowDiameter, units);
        View across = Profile("Across the mouth", tape.MouthWidth.Meters, tape.FloorWidth.Meters, tape.Depth, tape.MouthWidth, tape.FloorWidth);
        List<string> further = [TubDrafts.Exponents(tape.MouthExponent, tape.FloorExponent)];
        if (tape.FrontHeight.Meters > 0)
        {
            further.Add(Words.Length("front and returns, height", tape.FrontHeight, units));
        }

        return new Blueprint([plan, along, across], further, [Words.PlacesAreUsual]);
    }

    private static View Profile(string name, double mouth, double floor, UnitsNet.Length depth, UnitsNet.Length mouthLength, UnitsNet.Length floorLength) => new View(name, mouth, depth.Meters)
        .Edge(TubDrafts.Inside(0, 0, mouth, depth.Meters, (mouth - floor) / 2, (mouth - floor) / 2, 0))
        .Measured(Side.Top, 0, mouth, 0, "mouth", mouthLength)
        .Measured(Side.Bottom, (mouth - floor) / 2, (mouth + floor) / 2, depth.Meters, "floor", floorLength);

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
