using System;

namespace Refinish.Fixtures;

/// <summary>A strip of surface over 0 ≤ v ≤ 1 along an outline parameter u: point = Map(u, v). The coated side is ∂v × ∂u.</summary>
internal sealed record SurfaceBand(FixtureZoneKind Zone, Func<double, double, MeshPoint> Map)
{
    /// <summary>Straight rulings from one curve to another.</summary>
    public static SurfaceBand Ruled(FixtureZoneKind zone, Func<double, MeshPoint> from, Func<double, MeshPoint> to) =>
        new(zone, (u, v) => MeshPoint.Between(from(u), to(u), v));

    /// <summary>A flat four-cornered face; seen from the coated side, a to d run anticlockwise.</summary>
    public static SurfaceBand Face(FixtureZoneKind zone, MeshPoint a, MeshPoint b, MeshPoint c, MeshPoint d) =>
        Ruled(zone, u => MeshPoint.Between(a, d, u), u => MeshPoint.Between(b, c, u));

    /// <summary>A level rectangle seen from above.</summary>
    public static SurfaceBand Level(FixtureZoneKind zone, double x0, double y0, double x1, double y1, double z) =>
        Face(zone, new(x0, y0, z), new(x1, y0, z), new(x1, y1, z), new(x0, y1, z));

    /// <summary>An upright rectangle on the line from (x0, y0) to (x1, y1), seen with that line running from left to right.</summary>
    public static SurfaceBand Upright(FixtureZoneKind zone, double x0, double y0, double x1, double y1, double low, double high) =>
        Face(zone, new(x0, y0, low), new(x1, y1, low), new(x1, y1, high), new(x0, y0, high));
}
