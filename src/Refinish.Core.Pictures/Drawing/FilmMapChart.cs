using System;
using System.Collections.Generic;
using Refinish.Films;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// One zone laid flat. A zone that faces one way on the whole is seen square on; one that goes round is unrolled: across by the way
/// round at its mean distance from the middle, upwards by the way up its mean slope. Lengths are true along the middle of the drawing,
/// elsewhere nearly.
/// </summary>
internal sealed class FilmMapChart
{
    /// <summary>A zone faces one way when the mean of its normals is at least this long.</summary>
    private const double OneWay = 0.6;

    /// <summary>Directions round the middle.</summary>
    private const int Round = 180;

    /// <summary>Steps of height over which the slope is averaged.</summary>
    private const int Rise = 64;

    /// <summary>Flatter than this a slope would be drawn too high.</summary>
    private const double Flattest = 0.25;

    private FilmMapChart(FixtureZoneKind? zone, string view, List<int> triangles, double[] corners)
    {
        Zone = zone;
        View = view;
        Triangles = triangles;
        Corners = corners;
        double lowX = double.MaxValue, lowY = double.MaxValue, highX = double.MinValue, highY = double.MinValue;
        for (int i = 0; i < corners.Length; i += 2)
        {
            lowX = Math.Min(lowX, corners[i]);
            highX = Math.Max(highX, corners[i]);
            lowY = Math.Min(lowY, corners[i + 1]);
            highY = Math.Max(highY, corners[i + 1]);
        }

        // The drawing's y runs downwards.
        for (int i = 0; i < corners.Length; i += 2)
        {
            corners[i] -= lowX;
            corners[i + 1] = highY - corners[i + 1];
        }

        Width = highX - lowX;
        Height = highY - lowY;
    }

    public FixtureZoneKind? Zone { get; }

    /// <summary>How it is seen, in words.</summary>
    public string View { get; }

    public List<int> Triangles { get; }

    /// <summary>x and y of three corners for each of <see cref="Triangles"/>, in metres from the upper left.</summary>
    public double[] Corners { get; }

    public double Width { get; }

    public double Height { get; }

    public static FilmMapChart Of(TriangleMesh mesh, FixtureZoneKind? zone)
    {
        List<int> triangles = [];
        double area = 0;
        MeshPoint middle = default;
        MeshPoint facing = default;
        for (int i = 0; i < mesh.Triangles.Count; i++)
        {
            if (mesh.Triangles[i].Zone == zone)
            {
                triangles.Add(i);
                Face face = new(mesh, i);
                area += face.Area;
                middle = Space.Sum(middle, Space.Scaled(face.Middle, face.Area));
                facing = Space.Sum(facing, face.Normal);
            }
        }

        MeshPoint normal = new(facing.X / area / 2, facing.Y / area / 2, facing.Z / area / 2);
        return normal.Norm() >= OneWay
            ? Seen(mesh, zone, triangles, Space.Scaled(normal, 1 / normal.Norm()))
            : Unrolled(mesh, zone, triangles, new(middle.X / area, middle.Y / area, middle.Z / area));
    }

    private static FilmMapChart Seen(TriangleMesh mesh, FixtureZoneKind? zone, List<int> triangles, MeshPoint normal)
    {
        bool fromAbove = normal.Z > 0.7;
        MeshPoint right = fromAbove ? new(1, 0, 0) : Space.Cross(new(0, 0, 1), normal);
        right = right.Norm() > 1e-9 ? Space.Scaled(right, 1 / right.Norm()) : new(1, 0, 0);
        MeshPoint up = fromAbove ? new(0, 1, 0) : Space.Cross(normal, right);
        double[] corners = new double[6 * triangles.Count];
        for (int i = 0; i < triangles.Count; i++)
        {
            MeshTriangle t = mesh.Triangles[triangles[i]];
            Put(0, t.A);
            Put(1, t.B);
            Put(2, t.C);

            void Put(int corner, int vertex)
            {
                corners[(6 * i) + (2 * corner)] = Space.Dot(mesh.Vertices[vertex], right);
                corners[(6 * i) + (2 * corner) + 1] = Space.Dot(mesh.Vertices[vertex], up);
            }
        }

        return new FilmMapChart(zone, fromAbove ? "from above" : "square on", triangles, corners);
    }

    private static FilmMapChart Unrolled(TriangleMesh mesh, FixtureZoneKind? zone, List<int> triangles, MeshPoint middle)
    {
        double[] area = new double[Round];
        double[] radius = new double[Round];
        double[] riseArea = new double[Rise];
        double[] steep = new double[Rise];
        double low = double.MaxValue;
        double high = double.MinValue;
        double inwards = 0;
        foreach (int triangle in triangles)
        {
            MeshTriangle t = mesh.Triangles[triangle];
            low = Math.Min(low, Math.Min(mesh.Vertices[t.A].Z, Math.Min(mesh.Vertices[t.B].Z, mesh.Vertices[t.C].Z)));
            high = Math.Max(high, Math.Max(mesh.Vertices[t.A].Z, Math.Max(mesh.Vertices[t.B].Z, mesh.Vertices[t.C].Z)));
        }

        double step = Math.Max(high - low, 1e-9) / Rise;
        foreach (int triangle in triangles)
        {
            Face face = new(mesh, triangle);
            double dx = face.Middle.X - middle.X;
            double dy = face.Middle.Y - middle.Y;
            int bin = Direction(Math.Atan2(dy, dx));
            area[bin] += face.Area;
            radius[bin] += face.Area * Math.Sqrt((dx * dx) + (dy * dy));
            inwards -= (face.Normal.X * dx) + (face.Normal.Y * dy);
            int rise = Math.Min(Rise - 1, (int)((face.Middle.Z - low) / step));
            riseArea[rise] += face.Area;
            steep[rise] += Math.Sqrt((face.Normal.X * face.Normal.X) + (face.Normal.Y * face.Normal.Y)) / 2;
        }

        // The seam lies in the middle of the longest gap, or at the low end of x.
        int seam = Gap(area, out int gap);
        double[] way = new double[Round + 1];
        double last = 0;
        for (int k = 0; k < Round; k++)
        {
            int bin = (seam + k) % Round;
            double r = area[bin] > 0 ? radius[bin] / area[bin] : 0;
            double sweep = r * 2 * Math.PI / Round;
            double outwards = r > 0 && last > 0 ? r - last : 0;
            way[k + 1] = way[k] + Math.Sqrt((sweep * sweep) + (outwards * outwards));
            last = r;
        }

        // A step of height without a centroid is as steep as the last one that had some; those before the first as steep as that.
        double[] climb = new double[Rise + 1];
        int known = 0;
        while (known < Rise - 1 && riseArea[known] == 0)
        {
            known++;
        }

        for (int k = 0; k < Rise; k++)
        {
            known = riseArea[k] > 0 ? k : known;
            climb[k + 1] = climb[k] + (step / Math.Max(Flattest, riseArea[known] > 0 ? steep[known] / riseArea[known] : 1));
        }

        double[] corners = new double[6 * triangles.Count];
        for (int i = 0; i < triangles.Count; i++)
        {
            MeshTriangle t = mesh.Triangles[triangles[i]];
            double home = Turn(new Face(mesh, triangles[i]).Middle);
            Put(0, t.A);
            Put(1, t.B);
            Put(2, t.C);

            void Put(int corner, int vertex)
            {
                MeshPoint p = mesh.Vertices[vertex];
                double turn = Turn(p);

                // A triangle across the seam stays whole, on the side of its middle.
                turn += turn - home > Round / 2 ? -Round : turn - home < -Round / 2 ? Round : 0;
                double u = Along(way, turn);
                corners[(6 * i) + (2 * corner)] = inwards > 0 ? -u : u;
                corners[(6 * i) + (2 * corner) + 1] = Along(climb, (p.Z - low) / step);
            }
        }

        return new FilmMapChart(zone, inwards > 0 ? "unrolled, seen from inside" : "unrolled, seen from outside", triangles, corners);

        double Turn(MeshPoint p)
        {
            double turn = ((Math.Atan2(p.Y - middle.Y, p.X - middle.X) + Math.PI) / (2 * Math.PI) * Round) - seam;
            return turn < 0 ? turn + Round : turn;
        }
    }

    private static int Direction(double angle) => Math.Min(Round - 1, (int)((angle + Math.PI) / (2 * Math.PI) * Round));

    private static int Gap(double[] area, out int longest)
    {
        longest = 0;
        int middle = 0;
        int length = 0;
        for (int k = 0; k < 2 * Round; k++)
        {
            length = area[k % Round] > 0 ? 0 : length + 1;
            if (length > longest && length <= Round)
            {
                longest = length;
                middle = k - (length / 2);
            }
        }

        // One empty direction is a gap between two triangles, not in the zone.
        return longest > 2 ? middle % Round : 0;
    }

    private static double Along(double[] sums, double at)
    {
        int steps = sums.Length - 1;
        int k = Math.Max(0, Math.Min(steps - 1, (int)Math.Floor(at)));
        return sums[k] + ((at - k) * (sums[k + 1] - sums[k]));
    }

    private readonly struct Face
    {
        public Face(TriangleMesh mesh, int triangle)
        {
            MeshTriangle t = mesh.Triangles[triangle];
            MeshPoint a = mesh.Vertices[t.A];
            MeshPoint b = mesh.Vertices[t.B];
            MeshPoint c = mesh.Vertices[t.C];
            Normal = Space.DoubleNormal(a, b, c);
            Area = Normal.Norm() / 2;
            Middle = Space.Scaled(Space.Sum(a, Space.Sum(b, c)), 1.0 / 3);
        }

        public MeshPoint Normal { get; }

        public double Area { get; }

        public MeshPoint Middle { get; }
    }
}
