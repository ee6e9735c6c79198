using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Fixtures;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures.Drafting;

/// <summary>
/// One view of a mesh along an axis: the edges that are seen, and where on each zone a letter may stand. An edge is drawn where the surface
/// ends, turns away or bends by more than <see cref="Bend"/>; what lies behind another surface is left out.
/// </summary>
internal sealed class MeshView
{
    private const double Bend = 0.45;
    private const double EdgeOn = 0.02;
    private const double Same = 1e-3;
    private const double Piece = 0.02;

    private readonly MeshPoint[] points;
    private readonly (int A, int B, int C, FixtureZoneKind? Zone, MeshPoint Normal)[] front;
    private readonly MeshTriangle[] all;
    private readonly MeshPoint[] normals;
    private readonly Dictionary<FixtureZoneKind, (DataPoint, double)?> seen = [];
    private readonly Func<MeshPoint, MeshPoint> turned;

    /// <summary>Looks at a mesh.</summary>
    /// <param name="name">What the view is called.</param>
    /// <param name="mesh">The mesh.</param>
    /// <param name="turned">A point with x to the right, y downwards and z towards the viewer.</param>
    public MeshView(string name, TriangleMesh mesh, Func<MeshPoint, MeshPoint> turned)
    {
        Name = name;
        this.turned = turned;
        points = [.. mesh.Vertices.Select(turned)];
        all = [.. mesh.Triangles];
        normals = new MeshPoint[all.Length];
        List<(int, int, int, FixtureZoneKind?, MeshPoint)> facing = [];
        for (int i = 0; i < all.Length; i++)
        {
            MeshPoint normal = Normal(points[all[i].A], points[all[i].B], points[all[i].C]);
            normals[i] = normal;

            // y points down, so that what faces the viewer turns the other way round.
            if (normal.Z < -EdgeOn)
            {
                facing.Add((all[i].A, all[i].B, all[i].C, all[i].Zone, normal));
            }
        }

        front = [.. facing];
    }

    public string Name { get; }

    /// <summary>Where a letter may stand on a zone, and how large the zone is from here; <see langword="null"/> when it is not
    /// seen.</summary>
    public (DataPoint At, double Size)? Seen(FixtureZoneKind zone)
    {
        if (!seen.TryGetValue(zone, out (DataPoint, double)? known))
        {
            seen[zone] = known = Look(zone);
        }

        return known;
    }

    /// <summary>What the whole or a zone takes across and down, in the view's own metres; of another mesh as well.</summary>
    public (double Left, double Top, double Right, double Bottom) Extent(TriangleMesh mesh, FixtureZoneKind? zone)
    {
        MeshPoint[] own =
        [
            .. mesh.Triangles.Where(one => zone is null || one.Zone == zone)
                .SelectMany(one => new[] { one.A, one.B, one.C }).Distinct().Select(corner => turned(mesh.Vertices[corner])),
        ];
        return (own.Min(p => p.X), own.Min(p => p.Y), own.Max(p => p.X), own.Max(p => p.Y));
    }

    /// <summary>The edges that are seen, joined to lines.</summary>
    public IEnumerable<DataPoint[]> Lines()
    {
        Dictionary<(int Low, int High), List<int>> sides = [];
        for (int i = 0; i < all.Length; i++)
        {
            foreach ((int from, int to) in new[] { (all[i].A, all[i].B), (all[i].B, all[i].C), (all[i].C, all[i].A) })
            {
                (int, int) key = (Math.Min(from, to), Math.Max(from, to));
                if (!sides.TryGetValue(key, out List<int>? beside))
                {
                    sides[key] = beside = [];
                }

                beside.Add(i);
            }
        }

        return MeshLines.Joined(
            [.. sides.Where(side => IsDrawn(side.Value)).SelectMany(side => Pieces(points[side.Key.Low], points[side.Key.High]))]);
    }

    private static MeshPoint Normal(MeshPoint a, MeshPoint b, MeshPoint c)
    {
        MeshPoint cross = Space.DoubleNormal(a, b, c);
        double length = cross.Norm();
        return length == 0 ? default : new(cross.X / length, cross.Y / length, cross.Z / length);
    }

    private double Size(int a, int b, int c) =>
        Math.Abs(((points[b].X - points[a].X) * (points[c].Y - points[a].Y)) - (
            (points[b].Y - points[a].Y) * (points[c].X - points[a].X))) / 2;

    private (DataPoint At, double Size)? Look(FixtureZoneKind zone)
    {
        (int A, int B, int C)[] own =
            [.. front.Where(one => one.Zone == zone).Select(one => (one.A, one.B, one.C)).OrderByDescending(
                one => Size(one.A, one.B, one.C))];
        double size = own.Sum(one => Size(one.A, one.B, one.C));
        foreach ((int a, int b, int c) in own.Take(60))
        {
            MeshPoint p = points[a], q = points[b], r = points[c];
            MeshPoint middle = new((p.X + q.X + r.X) / 3, (p.Y + q.Y + r.Y) / 3, (p.Z + q.Z + r.Z) / 3);
            if (!Hidden(middle))
            {
                return (new DataPoint(middle.X, middle.Y), size);
            }
        }

        return null;
    }

    // Where the surface ends, or turns away, or bends; a face seen edge-on is its edge.
    private bool IsDrawn(List<int> beside)
    {
        int facing = beside.Count(i => normals[i].Z < -EdgeOn);
        if (facing == 0)
        {
            return beside.Exists(i => normals[i].Z <= EdgeOn) && (beside.Count == 1 || Bends(beside));
        }

        return facing == 1 || beside.Count != 2 || Bends(beside);
    }

    private bool Bends(List<int> beside)
    {
        MeshPoint one = normals[beside[0]];
        MeshPoint other = normals[beside[1]];
        return (one.X * other.X) + (one.Y * other.Y) + (one.Z * other.Z) < Math.Cos(Bend);
    }

    private IEnumerable<(DataPoint From, DataPoint To)> Pieces(MeshPoint from, MeshPoint to)
    {
        double across = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
        if (across < 1e-6)
        {
            yield break;
        }

        int count = Math.Min(40, (int)Math.Ceiling(across / Piece));
        DataPoint At(double share) => new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));
        int? start = null;
        for (int i = 0; i <= count; i++)
        {
            double share = (i + 0.5) / count;
            bool isSeen = i < count && !Hidden(new(
                from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share), from.Z + ((to.Z - from.Z) * share)));
            if (isSeen)
            {
                start ??= i;
            }
            else if (start is int first)
            {
                yield return (At((double)first / count), At((double)i / count));
                start = null;
            }
        }
    }

    private bool Hidden(MeshPoint point)
    {
        foreach ((int a, int b, int c, _, MeshPoint normal) in front)
        {
            MeshPoint p = points[a], q = points[b], r = points[c];
            if (Math.Max(p.Z, Math.Max(q.Z, r.Z)) > point.Z + Same && Turn(p, q, point) <= 0 && Turn(q, r, point) <= 0
                && Turn(r, p, point) <= 0)
            {
                double z = p.Z - (((normal.X * (point.X - p.X)) + (normal.Y * (point.Y - p.Y))) / normal.Z);
                if (z > point.Z + Same)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static double Turn(MeshPoint a, MeshPoint b, MeshPoint p) => ((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X));
}
