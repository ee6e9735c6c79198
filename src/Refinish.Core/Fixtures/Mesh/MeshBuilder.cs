using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Collects what a scan holds; it grows with what was read, whatever a header promised.</summary>
internal sealed class MeshBuilder(Length fileUnit)
{
    private readonly double unit = Guard.Within(fileUnit, Bounds.Between(1e-9, 1e3, Measure.Length));
    private readonly List<MeshPoint> points = [];
    private readonly List<MeshTriangle> triangles = [];

    public double Unit => unit;

    public int Points => points.Count;

    public int Triangles => triangles.Count;

    /// <summary>A point in file units; <see langword="false"/> when it is not finite.</summary>
    public bool TryAdd(double x, double y, double z)
    {
        MeshPoint point = new(x * unit, y * unit, z * unit);
        points.Add(point);
        return point.IsFinite;
    }

    /// <summary>A triangle of the last three points.</summary>
    public void AddLastThree() => triangles.Add(new(points.Count - 3, points.Count - 2, points.Count - 1, null));

    public void Add(int a, int b, int c) => triangles.Add(new(a, b, c, null));

    public TriangleMesh Mesh() => TriangleMesh.Taking(points.ToArray(), triangles.ToArray());

    /// <summary>Whether every corner from a triangle on is the place of a point; a file may name its points later than its faces.</summary>
    public bool CornersExist()
    {
        int count = points.Count;
        return triangles.TrueForAll(triangle => Exists(triangle.A) && Exists(triangle.B) && Exists(triangle.C));

        bool Exists(int corner) => corner >= 0 && corner < count;
    }
}
