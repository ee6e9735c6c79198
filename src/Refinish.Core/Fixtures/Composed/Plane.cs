using System;

namespace Refinish.Fixtures;

/// <summary>Where a flat rectangle lies: its first corner, the ways along its sides, and its slope; seen from the coated side it is
/// anticlockwise.</summary>
internal readonly record struct Plane(MeshPoint At, MeshPoint Along, MeshPoint Across, Num Slope)
{
    private static readonly MeshPoint X = new(1, 0, 0);
    private static readonly MeshPoint Y = new(0, 1, 0);
    private static readonly MeshPoint Z = new(0, 0, 1);

    public static Plane Level(double x, double y, double z) => new(new(x, y, z), X, Y, 0);

    /// <summary>An underside; its first side runs along y.</summary>
    public static Plane Underside(double x, double y, double z) => new(new(x, y, z), Y, X, Math.PI);

    /// <summary>Upright, seen from the front; from its lower left corner.</summary>
    public static Plane Front(double x, double y, double z) => new(new(x, y, z), X, Z, Math.PI / 2);

    /// <summary>Upright, seen from the left; along y from its far end towards the front.</summary>
    public static Plane Left(double x, double y, double z) => new(new(x, y, z), MeshPoint.Scaled(Y, -1), Z, Math.PI / 2);

    /// <summary>Upright, seen from the right; along y from its near end.</summary>
    public static Plane Right(double x, double y, double z) => new(new(x, y, z), Y, Z, Math.PI / 2);

    /// <summary>Rising from the front edge to the back by an angle.</summary>
    public static Plane Leaning(double x, double y, double z, Num slope) =>
        new(new(x, y, z), X, new(0, Math.Cos(slope.Value), Math.Sin(slope.Value)), slope);

    public Plane Shifted(MeshPoint by) => this with { At = MeshPoint.Sum(At, by) };

    public SurfaceBand Face(FixtureZoneKind zone, double along, double across)
    {
        MeshPoint u = MeshPoint.Scaled(Along, along);
        MeshPoint v = MeshPoint.Scaled(Across, across);
        return SurfaceBand.Face(zone, At, MeshPoint.Sum(At, u), MeshPoint.Sum(MeshPoint.Sum(At, u), v), MeshPoint.Sum(At, v));
    }
}
