using System;

namespace Refinish.Fixtures;

/// <summary>A point of a mesh, in metres; z is up.</summary>
/// <param name="X">Along the fixture, in metres.</param>
/// <param name="Y">Across the fixture, in metres.</param>
/// <param name="Z">Upwards, in metres.</param>
/// <example><code>
/// MeshPoint corner = new(1.524, 0.762, 0.4);
/// string text = corner.ToString();   // "(1524 mm, 762 mm, 400 mm)"
/// </code></example>
public readonly record struct MeshPoint(double X, double Y, double Z)
{
    internal double Norm => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    /// <summary>Where a point can lie: farther off than any map reaches, near enough for areas and volumes to be numbers.</summary>
    internal static Bounds Reach { get; } = Bounds.Between(-1e9, 1e9, Measure.Length);

    internal bool IsInReach => Reach.Contains(X) && Reach.Contains(Y) && Reach.Contains(Z);

    /// <summary>The point in one line, in millimetres.</summary>
    /// <returns>Text such as <c>(1524 mm, 762 mm, 400 mm)</c>.</returns>
    public override string ToString() => $"({Measure.Length.Format(X)}, {Measure.Length.Format(Y)}, {Measure.Length.Format(Z)})";

    internal static MeshPoint Sum(MeshPoint a, MeshPoint b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    internal static MeshPoint Difference(MeshPoint a, MeshPoint b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    internal static MeshPoint Scaled(MeshPoint a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    internal static MeshPoint Between(MeshPoint a, MeshPoint b, double share) =>
        new(a.X + ((b.X - a.X) * share), a.Y + ((b.Y - a.Y) * share), a.Z + ((b.Z - a.Z) * share));

    internal static double Dot(MeshPoint a, MeshPoint b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);

    internal static MeshPoint Cross(MeshPoint a, MeshPoint b) =>
        new((a.Y * b.Z) - (a.Z * b.Y), (a.Z * b.X) - (a.X * b.Z), (a.X * b.Y) - (a.Y * b.X));
}
