using System;
using System.Collections.Generic;
using Refinish.Fixtures;

namespace Refinish.Tests.Fixtures;

/// <summary>Meshes of known solids, made point by point and without the library's own tessellation: they face inwards, as a coated basin does.</summary>
internal static class BowlMesh
{
    /// <summary>A surface of revolution from the axis at the bottom (0) to the rim (1); radius and height by the caller.</summary>
    public static TriangleMesh Turned(Func<double, double> radius, Func<double, double> height, int around, int up)
    {
        List<MeshPoint> points = [new(0, 0, height(0))];
        List<MeshTriangle> triangles = [];
        for (int k = 1; k <= up; k++)
        {
            double t = (double)k / up;
            for (int i = 0; i < around; i++)
            {
                double angle = 2 * Math.PI * i / around;
                points.Add(new(radius(t) * Math.Cos(angle), radius(t) * Math.Sin(angle), height(t)));
            }
        }

        int At(int k, int i) => k == 0 ? 0 : 1 + ((k - 1) * around) + (i % around);
        for (int i = 0; i < around; i++)
        {
            triangles.Add(new(0, At(1, i), At(1, i + 1), null));
            for (int k = 1; k < up; k++)
            {
                triangles.Add(new(At(k, i), At(k + 1, i), At(k + 1, i + 1), null));
                triangles.Add(new(At(k, i), At(k + 1, i + 1), At(k, i + 1), null));
            }
        }

        return new TriangleMesh(points, triangles);
    }

    /// <summary>The lower part of an ellipsoid of half widths a and b, up to a height above its lowest point.</summary>
    public static TriangleMesh Cap(double across, double deep, double height, int around = 400, int up = 400)
    {
        double last = Math.Acos(1 - (height / deep));
        return Turned(t => across * Math.Sin(t * last), t => deep * (1 - Math.Cos(t * last)), around, up);
    }

    /// <summary>An open box whose floor lies at height 0.</summary>
    public static TriangleMesh Box(double length, double width, double depth)
    {
        MeshPoint[] points =
        [
            new(0, 0, 0), new(length, 0, 0), new(length, width, 0), new(0, width, 0),
            new(0, 0, depth), new(length, 0, depth), new(length, width, depth), new(0, width, depth),
        ];
        List<MeshTriangle> triangles = [];
        Face(0, 1, 2, 3);
        Face(0, 4, 5, 1);
        Face(1, 5, 6, 2);
        Face(2, 6, 7, 3);
        Face(3, 7, 4, 0);
        return new TriangleMesh(points, triangles);

        void Face(int a, int b, int c, int d)
        {
            triangles.Add(new(a, b, c, null));
            triangles.Add(new(a, c, d, null));
        }
    }

    /// <summary>Two meshes as one, the second moved along x.</summary>
    public static TriangleMesh Beside(TriangleMesh one, TriangleMesh other, double shift)
    {
        int start = one.Vertices.Count;
        List<MeshPoint> points = [.. one.Vertices];
        List<MeshTriangle> triangles = [.. one.Triangles];
        foreach (MeshPoint point in other.Vertices)
        {
            points.Add(new(point.X + shift, point.Y, point.Z));
        }

        foreach (MeshTriangle t in other.Triangles)
        {
            triangles.Add(new(t.A + start, t.B + start, t.C + start, t.Zone));
        }

        return new TriangleMesh(points, triangles);
    }
}
