using System;

namespace Refinish.Fixtures;

/// <summary>Round bowls in space, their bottom at z = 0 unless it is said otherwise, over the turn of their mouth.</summary>
internal static class BowlSurface
{
    /// <summary>The inside of half an ellipsoid below a mouth, from the bottom up.</summary>
    public static SurfaceBand Inside(FixtureZoneKind zone, Func<double, MeshPoint> mouth, double depth) => new(zone, (turn, v) =>
    {
        MeshPoint edge = mouth(turn);
        double share = Math.Sin(v * Math.PI / 2);
        return new(edge.X * share, edge.Y * share, edge.Z - (depth * Math.Cos(v * Math.PI / 2)));
    });

    /// <summary>
    /// The inside of a spherical cap of mouth radius a and depth h, from the bottom up; it may be more than half a sphere.
    /// </summary>
    public static SurfaceBand InsideCap(FixtureZoneKind zone, double radius, double depth, double bottom) => new(zone, (turn, v) =>
    {
        double sphere = ((radius * radius) + (depth * depth)) / (2 * depth);
        double fall = v * 2 * Math.Atan(depth / radius);
        double reach = sphere * Math.Sin(fall);
        return new(reach * Math.Cos(turn), reach * Math.Sin(turn), bottom + (sphere * (1 - Math.Cos(fall))));
    });

    /// <summary>The same surface seen from its other side.</summary>
    public static SurfaceBand Outside(SurfaceBand inside) => new(inside.Zone, (turn, v) => inside.Map(turn, 1 - v));
}
