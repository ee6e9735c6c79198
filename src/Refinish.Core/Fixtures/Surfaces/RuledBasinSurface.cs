using System;

namespace Refinish.Fixtures;

/// <summary>
/// A <see cref="RuledBasin"/> in space: the mouth's middle at the origin of the plan, the floor at z = 0, the head towards −x. The cove
/// is the surface of a ball of radius ρ that rolls along floor and walls. With the tangent plane of the wall at the plan angle θ,
/// outward normal N and direction of travel τ, and T = ρ tan(φ/2), its middle runs at height ρ over P − T N − T′ τ, and it touches the
/// wall on the ruling at the height ρ (1 − cos φ), where it begins the wall. Its path turns there with the radius r_f − T − T″; where
/// that is negative the ball is too large for the corner and its surface would fold, so all arcs are set square to the floor line
/// instead, without T′.
/// </summary>
internal sealed class RuledBasinSurface(RuledBasin basin)
{
    private readonly double floorX = (basin.HeadRun - basin.FootRun) / 2;

    private readonly bool rolls = Rolls(basin);

    public MeshPoint Floor(double u) => PlanCurve.RoundedRectangle(basin.FloorLength, basin.FloorWidth, basin.FloorRadius, floorX, basin.Shift, 0, u);

    public MeshPoint Rim(double u) => PlanCurve.RoundedRectangle(basin.RimLength, basin.RimWidth, basin.RimRadius, 0, 0, basin.Depth, u);

    /// <summary>Floor, both halves of the cove, wall: from the middle of the floor outwards and up.</summary>
    public SurfaceBand[] Bands()
    {
        MeshPoint middle = new(floorX, basin.Shift, 0);
        SurfaceBand floor = SurfaceBand.Ruled(FixtureZoneKind.Floor, _ => middle, u => Cove(u, 0));
        SurfaceBand wall = SurfaceBand.Ruled(FixtureZoneKind.Wall, u => Cove(u, 1), Rim);
        return basin.Cove == 0
            ? [floor, wall]
            : [floor, new(FixtureZoneKind.Floor, (u, v) => Cove(u, v / 2)), new(FixtureZoneKind.Wall, (u, v) => Cove(u, (1 + v) / 2)), wall];
    }

    /// <summary>A point of the cove: share 0 on the floor, 1 on the wall.</summary>
    private MeshPoint Cove(double u, double share)
    {
        if (basin.Cove == 0)
        {
            return Floor(u);
        }

        (int corner, double angle, double along) = PlanCurve.Piece(u);
        MeshPoint start = Arc(corner, angle, share);
        return along == 0 ? start : MeshPoint.Between(start, Arc((corner + 1) % 4, angle, share), along);
    }

    /// <summary>Whether the ball fits every corner: r_f − T − T″ ≥ 0 at each of 65 angles.</summary>
    private static bool Rolls(RuledBasin basin)
    {
        for (int corner = 0; corner < 4 && basin.Cove > 0; corner++)
        {
            double end = (corner % 2 == 0 ? basin.HeadRun : basin.FootRun) - basin.RadiusChange;
            double side = (corner < 2 ? basin.NearRun : basin.FarRun) - basin.RadiusChange;
            for (int i = 0; i <= 64; i++)
            {
                double c = Math.Cos(i * Math.PI / 128);
                double s = Math.Sin(i * Math.PI / 128);
                double run = basin.RadiusChange + (end * c) + (side * s);
                double turn = (side * c) - (end * s);
                double slant = RuledBasin.Slant(run, basin.Depth).Value;
                double first = basin.Cove * ((run / slant) - 1) / basin.Depth;
                double second = basin.Cove * basin.Depth / (slant * slant * slant);
                double bend = (second * turn * turn) - (first * (run - basin.RadiusChange));
                if (basin.FloorRadius - (basin.Cove * RuledBasin.HalfTangent(run, basin.Depth).Value) - bend < 0)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private MeshPoint Arc(int corner, double angle, double share)
    {
        (double sx, double sy) = PlanCurve.Sign(corner);

        // The head lies at −x; a floor shifted towards +y leaves the shorter run there.
        double end = (sx < 0 ? basin.HeadRun : basin.FootRun) - basin.RadiusChange;
        double side = (sy > 0 ? basin.NearRun : basin.FarRun) - basin.RadiusChange;
        double c = Math.Cos(angle);
        double s = Math.Sin(angle);
        double run = basin.RadiusChange + (end * sx * c) + (side * sy * s);
        double turn = (side * sy * c) - (end * sx * s);
        double slope = RuledBasin.Slope(run, basin.Depth).Value;
        double tangent = basin.Cove * RuledBasin.HalfTangent(run, basin.Depth).Value;
        double rise = rolls ? -basin.Cove * (1 - Math.Cos(slope)) / basin.Depth * turn : 0;
        double fall = slope * share;
        double outward = (basin.Cove * Math.Sin(fall)) - tangent;
        double x = floorX + (sx * ((basin.FloorLength / 2) - basin.FloorRadius)) + (basin.FloorRadius * c);
        double y = basin.Shift + (sy * ((basin.FloorWidth / 2) - basin.FloorRadius)) + (basin.FloorRadius * s);
        return new(x + (outward * c) + (rise * s), y + (outward * s) - (rise * c), basin.Cove * (1 - Math.Cos(fall)));
    }
}
