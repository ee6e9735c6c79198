using System;
using System.Collections.Generic;
using Refinish.Fixtures;

namespace Refinish.Films;

/// <summary>
/// Halves the longest edge of every triangle in which it is longer than allowed, until none is left. Both neighbours of an edge get the
/// same middle, so that no gap opens through which a line of sight could pass.
/// </summary>
internal static class SprayMeshRefinement
{
    public static TriangleMesh To(TriangleMesh mesh, double longestEdge)
    {
        List<MeshPoint> points = [.. mesh.Vertices];
        List<MeshTriangle> triangles = [.. mesh.Triangles];
        double most = longestEdge * longestEdge;
        for (bool split = true; split;)
        {
            Dictionary<long, int> middles = [];
            foreach (MeshTriangle t in triangles)
            {
                double ab = Square(t.A, t.B);
                double bc = Square(t.B, t.C);
                double ca = Square(t.C, t.A);
                if (Math.Max(ab, Math.Max(bc, ca)) > most)
                {
                    (int from, int to) = ab >= bc && ab >= ca ? (t.A, t.B) : bc >= ca ? (t.B, t.C) : (t.C, t.A);
                    Halve(from, to);
                }
            }

            split = middles.Count > 0;
            List<MeshTriangle> finer = new(triangles.Count);
            foreach (MeshTriangle t in triangles)
            {
                int ab = Middle(t.A, t.B);
                int bc = Middle(t.B, t.C);
                int ca = Middle(t.C, t.A);
                int halved = (ab >= 0 ? 1 : 0) + (bc >= 0 ? 1 : 0) + (ca >= 0 ? 1 : 0);
                switch (halved)
                {
                    case 0: finer.Add(t);
                        break;
                    case 3: finer.Add(new(t.A, ab, ca, t.Zone));
                        finer.Add(new(ab, t.B, bc, t.Zone));
                        finer.Add(new(ca, bc, t.C, t.Zone));
                        finer.Add(new(ab, bc, ca, t.Zone));
                        break;
                    case 2:
                        // Turned so that the whole edge is the one from third to first.
                        (int a, int b, int c, int left, int right) = ca < 0 ? (t.A, t.B, t.C, ab, bc) : ab < 0 ? (t.B, t.C, t.A, bc, ca) : (t.C, t.A, t.B, ca, ab);
                        finer.Add(new(left, b, right, t.Zone));
                        if (Square(left, c) < Square(a, right))
                        {
                            finer.Add(new(a, left, c, t.Zone));
                            finer.Add(new(left, right, c, t.Zone));
                        }
                        else
                        {
                            finer.Add(new(a, left, right, t.Zone));
                            finer.Add(new(a, right, c, t.Zone));
                        }

                        break;
                    default:
                        (int from, int to, int apex, int middle) = ab >= 0 ? (t.A, t.B, t.C, ab) : bc >= 0 ? (t.B, t.C, t.A, bc) : (t.C, t.A, t.B, ca);
                        finer.Add(new(from, middle, apex, t.Zone));
                        finer.Add(new(middle, to, apex, t.Zone));
                        break;
                }
            }

            triangles = finer;

            void Halve(int a, int b)
            {
                long key = Key(a, b);
                if (!middles.ContainsKey(key))
                {
                    middles.Add(key, points.Count);
                    points.Add(MeshPoint.Between(points[Math.Min(a, b)], points[Math.Max(a, b)], 0.5));
                }
            }

            int Middle(int a, int b) => middles.TryGetValue(Key(a, b), out int place) ? place : -1;
        }

        return new TriangleMesh(points.ToArray(), triangles.ToArray());

        static long Key(int a, int b) => ((long)Math.Min(a, b) << 32) | (uint)Math.Max(a, b);

        double Square(int a, int b)
        {
            MeshPoint d = MeshPoint.Difference(points[a], points[b]);
            return MeshPoint.Dot(d, d);
        }
    }
}
