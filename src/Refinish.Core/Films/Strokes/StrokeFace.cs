using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Films;

/// <summary>
/// Triangles of one zone that face nearly one way: what a person would spray with the gun held one way. Rows of strokes are laid over it:
/// a along the travel, b across it, c towards the gun.
/// </summary>
internal sealed class StrokeFace
{
    /// <summary>Eight directions round; a corner between two walls gets strokes of its own.</summary>
    private const int Directions = 8;

    /// <summary>Nearer than this no nozzle comes to a surface that it runs into.</summary>
    private const double Clearance = 0.05;

    /// <summary>A level zone with nothing in the middle third goes round and is sprayed side by side.</summary>
    private const double Hollow = 0.33;

    private readonly SprayFaces faces;
    private readonly List<int> members;
    private readonly MeshPoint normal;
    private readonly MeshPoint travel;
    private readonly MeshPoint across;

    private StrokeFace(SprayFaces faces, FixtureZoneKind? zone, string side, List<int> members)
    {
        this.faces = faces;
        this.members = members;
        Zone = zone;
        Side = side;
        MeshPoint sum = default;
        foreach (int i in members)
        {
            sum = MeshPoint.Sum(sum, MeshPoint.Scaled(new(faces.NormalX[i], faces.NormalY[i], faces.NormalZ[i]), faces.Area[i]));
        }

        normal = MeshPoint.Scaled(sum, 1 / sum.Norm);
        travel = Math.Abs(normal.Z) > 0.7 ? Longest() : Unit(MeshPoint.Cross(new(0, 0, 1), normal));
        across = MeshPoint.Cross(normal, travel);
    }

    public FixtureZoneKind? Zone { get; }

    public string Side { get; }

    public static List<StrokeFace> Of(SprayFaces faces, TriangleMesh mesh)
    {
        SortedDictionary<int, List<int>> groups = [];
        for (int i = 0; i < faces.Count; i++)
        {
            if (faces.Area[i] > 0)
            {
                int zone = mesh.Triangles[faces.Order[i]].Zone is FixtureZoneKind kind ? (int)kind : 999;
                double nz = faces.NormalZ[i];
                int facing = nz > 0.72 ? 0 : nz < -0.72 ? 1 : 2 + Direction(faces.NormalX[i], faces.NormalY[i]);
                int key = (zone * 16) + facing;
                groups[key] = groups.TryGetValue(key, out List<int>? members) ? members : [];
                groups[key].Add(i);
            }
        }

        List<StrokeFace> found = [];
        foreach (KeyValuePair<int, List<int>> group in groups)
        {
            FixtureZoneKind? zone = group.Key / 16 == 999 ? null : (FixtureZoneKind)(group.Key / 16);
            int facing = group.Key % 16;
            string side = facing == 0 ? "facing up"
                : facing == 1 ? "facing down"
                : "facing " + Figures.Fixed((facing - 2) * 360 / Directions, 0) + "°";
            List<int>[]? sides = facing > 1 ? null : Sides(faces, group.Value);
            if (sides is null)
            {
                found.Add(new(faces, zone, side, group.Value));
            }

            for (int k = 0; k < sides?.Length; k++)
            {
                if (sides[k].Count > 0)
                {
                    found.Add(new(faces, zone, side + ", side at " + Figures.Fixed(k * 90, 0) + "°", sides[k]));
                }
            }
        }

        return found;
    }

    /// <summary>Rows of strokes from edge to edge. An edge row runs <paramref name="inset"/> inside the edge.</summary>
    public List<SprayStroke> Strokes(FanPattern pattern, StrokeSettings hand, double overlap, double inset, bool crossed)
    {
        List<SprayStroke> strokes = [];
        double width = FanPatternKernel.Width(pattern.Width.Meters, hand.Distance.Meters, pattern.ReferenceDistance.Meters).Value;
        Rows(strokes, travel, across, width, width * (1 - overlap), inset * width, hand);
        if (crossed)
        {
            Rows(strokes, across, MeshPoint.Scaled(travel, -1), width, width * (1 - overlap), inset * width, hand);
        }

        return strokes;
    }

    private void Rows(List<SprayStroke> strokes, MeshPoint e, MeshPoint f, double width, double spacing, double inset, StrokeSettings hand)
    {
        double low = members.Min(i => Along(f, i));
        double high = members.Max(i => Along(f, i));
        double extent = high - low;
        int rows = extent <= Math.Max(2 * inset, 0.4 * width) ? 1 : (int)Math.Ceiling(((extent - (2 * inset)) / spacing) - 1e-9) + 1;
        for (int row = 0; row < rows; row++)
        {
            double b = rows == 1 ? (low + high) / 2 : low + inset + ((extent - (2 * inset)) * row / (rows - 1));
            Row(strokes, e, f, b, Math.Max(spacing, width / 3) / 2, hand, row % 2 == 1);
        }
    }

    /// <summary>The strokes of one row, one for each stretch of surface beneath it.</summary>
    private void Row(List<SprayStroke> strokes, MeshPoint e, MeshPoint f, double b, double half, StrokeSettings hand, bool back)
    {
        List<(double A, double C, double Area)> beneath =
            [.. members.Where(i => Math.Abs(Along(f, i) - b) <= half).Select(i => (Along(e, i), Along(normal, i), faces.Area[i]))];
        beneath.Sort();
        double gap = Math.Max(0.06, 2 * hand.TriggerLead.Meters);
        for (int first = 0; first < beneath.Count;)
        {
            int end = first;
            double area = 0;
            double height = 0;
            do
            {
                area += beneath[end].Area;
                height += beneath[end].Area * beneath[end].C;
                end++;
            }
            while (end < beneath.Count && beneath[end].A - beneath[end - 1].A <= gap);

            double c = (height / area) + hand.Distance.Meters;
            double from = beneath[first].A - hand.TriggerLead.Meters;
            double to = beneath[end - 1].A + hand.TriggerLead.Meters;
            double middle = (from + to) / 2;
            MeshPoint At(double a) => MeshPoint.Sum(MeshPoint.Scaled(e, a), MeshPoint.Sum(MeshPoint.Scaled(f, b), MeshPoint.Scaled(normal, c)));

            // The nozzle stops before a wall that it would run into.
            double left = middle - Free(At(middle), MeshPoint.Scaled(e, -1), middle - from);
            double right = middle + Free(At(middle), e, to - middle);
            if (right - left > 0.02)
            {
                strokes.Add(new() { Start = At(back ? right : left), End = At(back ? left : right), Aim = MeshPoint.Scaled(normal, -1), Speed = hand.Speed });
            }

            first = end;
        }
    }

    /// <summary>How far a nozzle can move before something is nearer than the clearance.</summary>
    private double Free(MeshPoint from, MeshPoint way, double wanted)
    {
        int[] stack = new int[SprayBvh.Deepest + 4];
        bool Hits(double reach)
        {
            MeshPoint to = MeshPoint.Sum(from, MeshPoint.Scaled(way, reach + Clearance));
            return faces.Tree.Hidden(from.X, from.Y, from.Z, to.X, to.Y, to.Z, -1, stack);
        }

        if (!Hits(wanted))
        {
            return wanted;
        }

        double free = 0;
        double blocked = wanted;
        for (int i = 0; i < 12; i++)
        {
            double reach = (free + blocked) / 2;
            (free, blocked) = Hits(reach) ? (free, reach) : (reach, blocked);
        }

        return free;
    }

    /// <summary>The four sides of a level zone that goes round, or nothing when it does not.</summary>
    private static List<int>[]? Sides(SprayFaces faces, List<int> members)
    {
        (double lowX, double highX) = Ends(faces.X, members);
        (double lowY, double highY) = Ends(faces.Y, members);
        double halfX = Math.Max(1e-6, (highX - lowX) / 2);
        double halfY = Math.Max(1e-6, (highY - lowY) / 2);
        List<int>[] sides = [[], [], [], []];
        foreach (int i in members)
        {
            double x = (faces.X[i] - ((lowX + highX) / 2)) / halfX;
            double y = (faces.Y[i] - ((lowY + highY) / 2)) / halfY;
            if (Math.Max(Math.Abs(x), Math.Abs(y)) < Hollow)
            {
                return null;
            }

            sides[Math.Abs(x) >= Math.Abs(y) ? (x > 0 ? 0 : 2) : (y > 0 ? 1 : 3)].Add(i);
        }

        return sides;
    }

    private static (double Low, double High) Ends(double[] places, List<int> members) =>
        (members.Min(i => places[i]), members.Max(i => places[i]));

    private static int Direction(double x, double y)
    {
        int k = (int)Math.Round(Math.Atan2(y, x) / (2 * Math.PI) * Directions);
        return (k + Directions) % Directions;
    }

    private static MeshPoint Unit(MeshPoint p) => MeshPoint.Scaled(p, 1 / p.Norm);

    private double Along(MeshPoint axis, int i) => (axis.X * faces.X[i]) + (axis.Y * faces.Y[i]) + (axis.Z * faces.Z[i]);

    /// <summary>The longer of x and y over a level face, laid into its plane.</summary>
    private MeshPoint Longest()
    {
        (double lowX, double highX) = Ends(faces.X, members);
        (double lowY, double highY) = Ends(faces.Y, members);
        MeshPoint axis = highX - lowX >= highY - lowY ? new(1, 0, 0) : new(0, 1, 0);
        return Unit(MeshPoint.Difference(axis, MeshPoint.Scaled(normal, MeshPoint.Dot(axis, normal))));
    }
}
