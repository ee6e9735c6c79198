using System;
using System.Collections.Generic;

namespace Refinish.Tests.Fixtures;

/// <summary>An independent route to a basin's area and capacity: points sampled on the two outlines, joined level by level, triangles summed.</summary>
internal static class LoftMesh
{
    internal readonly record struct Outline(double Length, double Width, double Radius, double CentreX);

    /// <summary>Area of the walls and volume between the outlines, by triangles and by tetrahedra about the origin.</summary>
    public static (double Area, double Volume) Walls(Outline floor, Outline rim, double depth, int perCorner, int levels)
    {
        List<(double X, double Y)> low = Points(floor, perCorner);
        List<(double X, double Y)> high = Points(rim, perCorner);
        int n = low.Count;
        (double X, double Y, double Z)[] previous = Level(low, high, 0, depth);
        double area = 0;
        double volume = 0;
        for (int k = 1; k <= levels; k++)
        {
            (double X, double Y, double Z)[] next = Level(low, high, (double)k / levels, depth);
            for (int i = 0; i < n; i++)
            {
                int j = (i + 1) % n;
                Add(previous[i], previous[j], next[j]);
                Add(previous[i], next[j], next[i]);
            }

            previous = next;
        }

        // The lids, as fans about their own first point; the floor lies in z = 0 and holds no tetrahedron about the origin.
        for (int i = 1; i + 1 < n; i++)
        {
            volume += Triple(previous[0], previous[i], previous[i + 1]) / 6;
        }

        return (area, volume);

        void Add((double X, double Y, double Z) a, (double X, double Y, double Z) b, (double X, double Y, double Z) c)
        {
            double ux = b.X - a.X, uy = b.Y - a.Y, uz = b.Z - a.Z;
            double vx = c.X - a.X, vy = c.Y - a.Y, vz = c.Z - a.Z;
            double x = (uy * vz) - (uz * vy), y = (uz * vx) - (ux * vz), z = (ux * vy) - (uy * vx);
            area += Math.Sqrt((x * x) + (y * y) + (z * z)) / 2;
            volume += Triple(a, b, c) / 6;
        }
    }

    private static double Triple((double X, double Y, double Z) a, (double X, double Y, double Z) b, (double X, double Y, double Z) c) =>
        (a.X * ((b.Y * c.Z) - (b.Z * c.Y))) + (a.Y * ((b.Z * c.X) - (b.X * c.Z))) + (a.Z * ((b.X * c.Y) - (b.Y * c.X)));

    // Counter-clockwise from the end at +x; equal indices of the two outlines are joined by a straight ruling.
    private static List<(double X, double Y)> Points(Outline outline, int perCorner)
    {
        List<(double X, double Y)> points = [];
        (double X, double Y)[] signs = [(1, 1), (-1, 1), (-1, -1), (1, -1)];
        for (int corner = 0; corner < 4; corner++)
        {
            double x = outline.CentreX + (signs[corner].X * ((outline.Length / 2) - outline.Radius));
            double y = signs[corner].Y * ((outline.Width / 2) - outline.Radius);
            for (int i = 0; i <= perCorner; i++)
            {
                double angle = (corner + ((double)i / perCorner)) * Math.PI / 2;
                points.Add((x + (outline.Radius * Math.Cos(angle)), y + (outline.Radius * Math.Sin(angle))));
            }
        }

        return points;
    }

    private static (double X, double Y, double Z)[] Level(List<(double X, double Y)> low, List<(double X, double Y)> high, double share, double depth)
    {
        (double X, double Y, double Z)[] level = new (double X, double Y, double Z)[low.Count];
        for (int i = 0; i < level.Length; i++)
        {
            level[i] = (low[i].X + (share * (high[i].X - low[i].X)), low[i].Y + (share * (high[i].Y - low[i].Y)), share * depth);
        }

        return level;
    }
}
