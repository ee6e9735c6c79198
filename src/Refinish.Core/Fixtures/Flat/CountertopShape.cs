using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// The mesh of a <see cref="Countertop"/>: the line of the edge set inwards by the profile, mitred; the top between it and the backsplash,
/// or the walls.
/// </summary>
internal static class CountertopShape
{
    public static TriangleMesh Mesh(CountertopMeasurements tape, Tessellation mesh)
    {
        EdgeShape edge = tape.Edge;
        double reach = edge.Reach().Value;
        (List<MeshPoint> outer, List<MeshPoint> mitres, List<MeshPoint> wall) = Lines(tape);
        double[] breaks = [.. Enumerable.Range(0, outer.Count).Select(i => (double)i)];

        // The line runs with the room on its right, so that the coated side of ∂v × ∂u faces up and out.
        SurfaceBand top = SurfaceBand.Ruled(FixtureZoneKind.Top, u => Along(wall, u), u => Inset(u, reach, 0));
        double[] profile = edge.Breaks();
        List<SurfaceBand> bands = [];
        for (int i = 0; i + 1 < profile.Length; i++)
        {
            double low = profile[i];
            double high = profile[i + 1];
            if (high > low)
            {
                bands.Add(new(FixtureZoneKind.Edge, (u, v) =>
                {
                    (double inwards, double down) = edge.At(low + ((high - low) * v));
                    return Inset(u, inwards, -down);
                }));
            }
        }

        // An open end has an edge beside the top, not a strip of top.
        int first = tape.LeftEndIsOpen ? 1 : 0;
        int length = breaks.Length - first - (tape.RightEndIsOpen ? 1 : 0);
        mesh.Add([.. breaks.Skip(first).Take(length)], top).Add(breaks, [.. bands]);
        Splash(tape, mesh);
        return mesh.Mesh();

        MeshPoint Inset(double u, double by, double z)
        {
            MeshPoint line = Along(outer, u);
            MeshPoint mitre = Along(mitres, u);
            return new(line.X + (by * mitre.X), line.Y + (by * mitre.Y), z);
        }
    }

    private static MeshPoint Along(List<MeshPoint> line, double u)
    {
        int at = Math.Min(line.Count - 2, (int)Math.Floor(u));
        return MeshPoint.Between(line[at], line[at + 1], u - at);
    }

    // Each run goes from its corner along a direction d with its depth to the right-hand side r; the next run turns to that side.
    private static (List<MeshPoint> Outer, List<MeshPoint> Mitres, List<MeshPoint> Wall) Lines(CountertopMeasurements tape)
    {
        List<MeshPoint> outer = [];
        List<MeshPoint> mitres = [];
        List<MeshPoint> wall = [];
        MeshPoint start = new(0, 0, 0);
        MeshPoint d = new(1, 0, 0);
        MeshPoint r = new(0, -1, 0);
        int last = tape.Runs.Count - 1;
        double reach = tape.Edge.Reach().Value;
        double covered = tape.Covered;
        for (int i = 0; i <= last; i++)
        {
            double length = tape.Runs[i].Length.Meters;
            double depth = tape.Runs[i].Depth.Meters;
            MeshPoint end = At(start, d, length);
            if (i == 0)
            {
                MeshPoint top = tape.LeftEndIsOpen ? At(start, d, reach) : start;
                if (tape.LeftEndIsOpen)
                {
                    Add(start, d, At(top, r, covered));
                }

                Add(At(start, r, depth), tape.LeftEndIsOpen ? MeshPoint.Difference(d, r) : MeshPoint.Scaled(r, -1), At(top, r, covered));
            }

            if (i == last)
            {
                MeshPoint back = MeshPoint.Scaled(d, -1);
                MeshPoint top = tape.RightEndIsOpen ? At(end, d, -reach) : end;
                Add(At(end, r, depth), tape.RightEndIsOpen ? MeshPoint.Difference(back, r) : MeshPoint.Scaled(r, -1), At(top, r, covered));
                if (tape.RightEndIsOpen)
                {
                    Add(end, back, At(top, r, covered));
                }
            }
            else
            {
                // The corner turns in: both fronts go back towards their walls.
                Add(At(At(end, r, depth), d, -tape.Runs[i + 1].Depth.Meters), MeshPoint.Difference(d, r),
                    At(At(end, r, covered), d, -covered));
            }

            start = end;
            (d, r) = (r, MeshPoint.Scaled(d, -1));
        }

        return (outer, mitres, wall);

        void Add(MeshPoint line, MeshPoint mitre, MeshPoint atWall)
        {
            outer.Add(line);
            mitres.Add(mitre);
            wall.Add(atWall);
        }
    }

    private static MeshPoint At(MeshPoint from, MeshPoint direction, double length) => MeshPoint.Sum(from, MeshPoint.Scaled(direction, length));

    private static void Splash(CountertopMeasurements tape, Tessellation mesh)
    {
        double height = tape.BacksplashHeight.Meters;
        double deep = tape.BacksplashThickness.Meters;
        if (height == 0)
        {
            return;
        }

        MeshPoint d = new(1, 0, 0);
        MeshPoint r = new(0, -1, 0);
        MeshPoint start = new(0, 0, 0);
        const FixtureZoneKind Back = FixtureZoneKind.Backsplash;
        for (int i = 0; i < tape.Runs.Count; i++)
        {
            bool first = i == 0;
            bool last = i == tape.Runs.Count - 1;
            MeshPoint end = At(start, d, tape.Runs[i].Length.Meters);
            MeshPoint left = At(At(start, r, deep), d, first ? 0 : deep), right = At(At(end, r, deep), d, last ? 0 : -deep);
            mesh.AddFaces(
                SurfaceBand.Face(Back, left, right, Up(right), Up(left)),
                SurfaceBand.Face(Back, Up(left), Up(right), Up(end), Up(start)));
            if (first && tape.LeftEndIsOpen)
            {
                mesh.AddFaces(SurfaceBand.Face(Back, start, left, Up(left), Up(start)));
            }

            if (last && tape.RightEndIsOpen)
            {
                mesh.AddFaces(SurfaceBand.Face(Back, right, end, Up(end), Up(right)));
            }

            start = end;
            (d, r) = (r, MeshPoint.Scaled(d, -1));
        }

        MeshPoint Up(MeshPoint point) => point with { Z = height };
    }
}
