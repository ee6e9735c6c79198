using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;

namespace Refinish.Pictures.Drafting;

/// <summary>Outlines in metres, x to the right and y down.</summary>
internal static class Shape
{
    private const int Corner = 18;

    public static DataPoint[] Rectangle(double left, double top, double width, double height, double radius = 0)
    {
        double right = left + width;
        double bottom = top + height;
        return Rounded([new(left, top), new(right, top), new(right, bottom), new(left, bottom)], Math.Min(radius, Math.Min(width, height) / 2), closed: true);
    }

    /// <summary>|2x/length|ⁿ + |2y/width|ⁿ = 1 about a centre.</summary>
    public static DataPoint[] Superellipse(double x, double y, double length, double width, double exponent)
    {
        const int count = 96;
        DataPoint[] points = new DataPoint[count];
        for (int i = 0; i < count; i++)
        {
            double angle = 2 * Math.PI * i / count;
            double c = Math.Cos(angle);
            double s = Math.Sin(angle);
            points[i] = new DataPoint(x + (Part(c) * length / 2), y + (Part(s) * width / 2));
        }

        return points;

        double Part(double value) => Math.Abs(value) < 1e-12 ? 0 : Math.Sign(value) * Math.Pow(Math.Abs(value), 2 / exponent);
    }

    public static DataPoint[] Ellipse(double x, double y, double length, double width) => Superellipse(x, y, length, width, 2);

    /// <summary>A line of corners, each rounded by an arc that touches both sides, as far as its sides reach.</summary>
    public static DataPoint[] Rounded(IReadOnlyList<DataPoint> corners, double radius, bool closed)
    {
        List<DataPoint> points = [];
        for (int i = 0; i < corners.Count; i++)
        {
            if (radius <= 0 || (!closed && (i == 0 || i == corners.Count - 1)))
            {
                points.Add(corners[i]);
                continue;
            }

            points.AddRange(Fillet(corners[(i + corners.Count - 1) % corners.Count], corners[i], corners[(i + 1) % corners.Count], radius));
        }

        return [.. points];
    }

    /// <summary>An arc of a radius that touches both sides of a corner.</summary>
    public static IEnumerable<DataPoint> Fillet(DataPoint before, DataPoint corner, DataPoint after, double radius)
    {
        (double ux, double uy, double u) = Unit(before.X - corner.X, before.Y - corner.Y);
        (double vx, double vy, double v) = Unit(after.X - corner.X, after.Y - corner.Y);
        double half = Math.Acos(Math.Max(-1, Math.Min(1, (ux * vx) + (uy * vy)))) / 2;
        double reach = half is > 1e-6 && half < (Math.PI / 2) - 1e-6 ? radius / Math.Tan(half) : 0;
        if (reach <= 0 || u == 0 || v == 0)
        {
            return [corner];
        }

        // Sides shorter than the arc's reach take the arc that they can.
        double most = Math.Min(u, v);
        double shown = Math.Min(reach, most);
        double r = shown * Math.Tan(half);
        (double bx, double by, _) = Unit(ux + vx, uy + vy);
        double away = r / Math.Sin(half);
        double cx = corner.X + (bx * away);
        double cy = corner.Y + (by * away);
        double start = Math.Atan2(corner.Y + (uy * shown) - cy, corner.X + (ux * shown) - cx);
        double turn = Math.Atan2(corner.Y + (vy * shown) - cy, corner.X + (vx * shown) - cx) - start;
        turn = turn > Math.PI ? turn - (2 * Math.PI) : turn < -Math.PI ? turn + (2 * Math.PI) : turn;
        return Enumerable.Range(0, Corner + 1).Select(i => start + (turn * i / Corner)).Select(angle => new DataPoint(cx + (r * Math.Cos(angle)), cy + (r * Math.Sin(angle))));
    }

    /// <summary>An arc about a centre, angles in degrees from the right, positive downwards.</summary>
    public static DataPoint[] Arc(double x, double y, double radiusX, double radiusY, double from, double to, int count = 32) =>
        [.. Enumerable.Range(0, count + 1).Select(i => (from + ((to - from) * i / count)) * Math.PI / 180).Select(angle => new DataPoint(x + (radiusX * Math.Cos(angle)), y + (radiusY * Math.Sin(angle))))];

    private static (double X, double Y, double Length) Unit(double x, double y)
    {
        double length = Math.Sqrt((x * x) + (y * y));
        return length == 0 ? (0, 0, 0) : (x / length, y / length, length);
    }
}
