using System;
using System.Collections.Generic;
using Refinish.Fixtures;

namespace Refinish.Films;

/// <summary>
/// The triangles of a mesh as the kernels read them: centroids, unit normals and areas as columns, in the order of the tree that
/// answers lines of sight, so that <see cref="Block"/> neighbours lie close together. This is the only place that knows the mesh's own
/// form.
/// </summary>
internal sealed class SprayFaces
{
    /// <summary>Triangles that are weighed against a stroke together.</summary>
    public const int Block = 32;

    public SprayFaces(TriangleMesh mesh)
    {
        IReadOnlyList<MeshPoint> points = mesh.Vertices;
        IReadOnlyList<MeshTriangle> triangles = mesh.Triangles;
        Count = triangles.Count;
        double[] corners = new double[9 * Count];
        for (int i = 0; i < Count; i++)
        {
            MeshTriangle t = triangles[i];
            Put(points[t.A], 9 * i);
            Put(points[t.B], (9 * i) + 3);
            Put(points[t.C], (9 * i) + 6);
        }

        Tree = new SprayBvh(corners, Count);
        Order = Tree.Order;
        int padded = (Count + 3) & ~3;
        X = new double[padded];
        Y = new double[padded];
        Z = new double[padded];
        NormalX = new double[padded];
        NormalY = new double[padded];
        NormalZ = new double[padded];
        Area = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            MeshTriangle t = triangles[Order[i]];
            MeshPoint a = points[t.A];
            MeshPoint b = points[t.B];
            MeshPoint c = points[t.C];
            X[i] = (a.X + b.X + c.X) / 3;
            Y[i] = (a.Y + b.Y + c.Y) / 3;
            Z[i] = (a.Z + b.Z + c.Z) / 3;
            MeshPoint normal = TriangleMesh.DoubleNormal(a, b, c);
            double norm = normal.Norm;
            Area[i] = norm / 2;

            // A triangle without an area keeps a normal of zero, which faces nothing.
            double inverse = norm > 0 ? 1 / norm : 0;
            NormalX[i] = normal.X * inverse;
            NormalY[i] = normal.Y * inverse;
            NormalZ[i] = normal.Z * inverse;
        }

        Blocks = (Count + Block - 1) / Block;
        Balls = new double[4 * Blocks];
        for (int block = 0; block < Blocks; block++)
        {
            Enclose(block);
        }

        void Put(MeshPoint p, int at)
        {
            corners[at] = p.X;
            corners[at + 1] = p.Y;
            corners[at + 2] = p.Z;
        }
    }

    public int Count { get; }

    public int Blocks { get; }

    /// <summary>The place in the mesh of each triangle here.</summary>
    public int[] Order { get; }

    public double[] X { get; }

    public double[] Y { get; }

    public double[] Z { get; }

    public double[] NormalX { get; }

    public double[] NormalY { get; }

    public double[] NormalZ { get; }

    public double[] Area { get; }

    /// <summary>Middle and radius of a ball round the centroids of each block.</summary>
    public double[] Balls { get; }

    public SprayBvh Tree { get; }

    public int CountOf(int block) => Math.Min(Block, Count - (block * Block));

    private void Enclose(int block)
    {
        int first = block * Block;
        int end = first + CountOf(block);
        double lowX = double.MaxValue, lowY = double.MaxValue, lowZ = double.MaxValue;
        double highX = double.MinValue, highY = double.MinValue, highZ = double.MinValue;
        for (int i = first; i < end; i++)
        {
            lowX = Math.Min(lowX, X[i]);
            lowY = Math.Min(lowY, Y[i]);
            lowZ = Math.Min(lowZ, Z[i]);
            highX = Math.Max(highX, X[i]);
            highY = Math.Max(highY, Y[i]);
            highZ = Math.Max(highZ, Z[i]);
        }

        double x = (lowX + highX) / 2;
        double y = (lowY + highY) / 2;
        double z = (lowZ + highZ) / 2;
        double square = 0;
        for (int i = first; i < end; i++)
        {
            double dx = X[i] - x;
            double dy = Y[i] - y;
            double dz = Z[i] - z;
            square = Math.Max(square, (dx * dx) + (dy * dy) + (dz * dz));
        }

        Balls[4 * block] = x;
        Balls[(4 * block) + 1] = y;
        Balls[(4 * block) + 2] = z;
        Balls[(4 * block) + 3] = (Math.Sqrt(square) * (1 + 1e-9)) + 1e-9;
    }
}
