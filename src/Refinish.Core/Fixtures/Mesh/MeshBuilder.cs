using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Collects what a scan holds; it grows with what was read, whatever a header promised.</summary>
internal sealed class MeshBuilder(Length fileUnit)
{
    public const string OutOfReach = "a coordinate is not finite or farther than 1e9 m off";

    private readonly double unit = Guard.Within(fileUnit, Bounds.Between(1e-9, 1e3, Measure.Length));
    private readonly Pieces<MeshPoint> points = new();
    private readonly Pieces<MeshTriangle> triangles = new();
    private int lastCorner = -1;

    public double Unit => unit;

    public int Points => points.Count;

    public int Triangles => triangles.Count;

    /// <summary>A point in file units; <see langword="false"/> when a coordinate is not a number within 1e9 m.</summary>
    public bool TryAdd(double x, double y, double z)
    {
        MeshPoint point = new(x * unit, y * unit, z * unit);
        points.Add(point);
        return point.IsInReach;
    }

    /// <summary>A triangle of the last three points.</summary>
    public void AddLastThree() => Add(points.Count - 3, points.Count - 2, points.Count - 1);

    /// <summary>A triangle by the places of its corners, none below zero.</summary>
    public void Add(int a, int b, int c)
    {
        lastCorner = Math.Max(lastCorner, Math.Max(a, Math.Max(b, c)));
        triangles.Add(new(a, b, c, null));
    }

    public TriangleMesh Mesh() => TriangleMesh.Taking(points.ToArray(), triangles.ToArray());

    /// <summary>Whether every corner of a triangle is the place of a point; a file may name its points later than its faces.</summary>
    public bool CornersExist() => lastCorner < points.Count;

    /// <summary>
    /// A list that grows piece by piece, so that what was read is copied once, into an array of its length, and not at every doubling.
    /// </summary>
    private sealed class Pieces<T>
    {
        private const int LongestPiece = 1 << 15;

        private readonly List<T[]> full = [];
        private T[] last = new T[16];
        private int inLast;

        public int Count { get; private set; }

        public void Add(T item)
        {
            if (inLast == last.Length)
            {
                full.Add(last);
                last = new T[Math.Min(2 * inLast, LongestPiece)];
                inLast = 0;
            }

            last[inLast++] = item;
            Count++;
        }

        public T[] ToArray()
        {
            T[] whole = new T[Count];
            int at = 0;
            foreach (T[] piece in full)
            {
                piece.CopyTo(whole, at);
                at += piece.Length;
            }

            Array.Copy(last, 0, whole, at, inLast);
            return whole;
        }
    }
}
