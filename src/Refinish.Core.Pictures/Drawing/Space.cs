using System;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drawing;

/// <summary>Points of a mesh as vectors.</summary>
internal static class Space
{
    public static double Norm(this MeshPoint a) => Math.Sqrt(Dot(a, a));

    public static MeshPoint Sum(MeshPoint a, MeshPoint b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static MeshPoint Difference(MeshPoint a, MeshPoint b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static MeshPoint Scaled(MeshPoint a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    public static double Dot(MeshPoint a, MeshPoint b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    public static MeshPoint Cross(MeshPoint a, MeshPoint b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));

    /// <summary>Square to a triangle, as long as twice its area.</summary>
    public static MeshPoint DoubleNormal(MeshPoint a, MeshPoint b, MeshPoint c) => Cross(Difference(b, a), Difference(c, a));
}
