using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>Edges, loops and welding of a mesh: which triangles share what.</summary>
internal static class MeshEdges
{
    public static MeshTopology Topology(MeshPoint[] vertices, MeshTriangle[] triangles)
    {
        int degenerate = 0;
        int duplicate = 0;
        int whole = 0;
        HashSet<(int, int, int)> seen = [];
        HashSet<int> used = [];
        Dictionary<(int Low, int High), (int Up, int Down)> edges = [];
        foreach (MeshTriangle t in triangles)
        {
            if (t.A == t.B || t.B == t.C || t.C == t.A || TriangleMesh.DoubleNormal(vertices[t.A], vertices[t.B], vertices[t.C]).Norm == 0)
            {
                degenerate++;
            }
            else if (!seen.Add(Sorted(t)))
            {
                duplicate++;
            }
            else
            {
                whole++;
                used.Add(t.A);
                used.Add(t.B);
                used.Add(t.C);
                Count(t.A, t.B);
                Count(t.B, t.C);
                Count(t.C, t.A);
            }
        }

        int open = 0;
        int crowded = 0;
        int turned = 0;
        double length = 0;
        Loops loops = new();
        foreach (KeyValuePair<(int Low, int High), (int Up, int Down)> edge in edges)
        {
            int faces = edge.Value.Up + edge.Value.Down;
            if (faces == 1)
            {
                open++;
                length += MeshPoint.Difference(vertices[edge.Key.High], vertices[edge.Key.Low]).Norm;
                loops.Join(edge.Key.Low, edge.Key.High);
            }
            else if (faces > 2)
            {
                crowded++;
            }
            else if (edge.Value.Up != 1)
            {
                turned++;
            }
        }

        return new MeshTopology(loops.Count, open, length, crowded, turned, degenerate, duplicate, used.Count - edges.Count + whole);

        void Count(int from, int to)
        {
            (int Low, int High) key = from < to ? (from, to) : (to, from);
            edges.TryGetValue(key, out (int Up, int Down) faces);
            edges[key] = from < to ? (faces.Up + 1, faces.Down) : (faces.Up, faces.Down + 1);
        }
    }

    /// <summary>The triangles by connected piece, in the order of their first ones.</summary>
    public static IEnumerable<MeshTriangle[]> Pieces(MeshTriangle[] triangles)
    {
        Loops loops = new();
        foreach (MeshTriangle t in triangles)
        {
            loops.Join(t.A, t.B);
            loops.Join(t.B, t.C);
        }

        return triangles.GroupBy(t => loops.Root(t.A)).Select(piece => piece.ToArray());
    }

    /// <summary>The corners of edges with one triangle only.</summary>
    public static IEnumerable<int> OpenVertices(MeshTriangle[] triangles)
    {
        HashSet<(int Low, int High)> open = [];
        foreach (MeshTriangle t in triangles)
        {
            Turn(t.A, t.B);
            Turn(t.B, t.C);
            Turn(t.C, t.A);
        }

        return open.SelectMany(edge => new[] { edge.Low, edge.High });

        void Turn(int from, int to)
        {
            (int, int) key = from < to ? (from, to) : (to, from);
            if (!open.Remove(key))
            {
                open.Add(key);
            }
        }
    }

    /// <summary>
    /// Corners within the tolerance become the first of them; a grid of cells as wide as the tolerance finds the near ones.
    /// </summary>
    public static TriangleMesh Welded(MeshPoint[] vertices, MeshTriangle[] triangles, double tolerance)
    {
        int[] place = new int[vertices.Length];
        List<MeshPoint> kept = new(vertices.Length / 2);
        Dictionary<(long, long, long), int> heads = [];
        List<int> next = [];
        for (int i = 0; i < vertices.Length; i++)
        {
            place[i] = -1;
        }

        // Only corners in use, in the order in which the triangles name them.
        List<MeshTriangle> welded = new(triangles.Length);
        foreach (MeshTriangle t in triangles)
        {
            MeshTriangle moved = new(Place(t.A), Place(t.B), Place(t.C), t.Zone);
            if (moved.A != moved.B && moved.B != moved.C && moved.C != moved.A)
            {
                welded.Add(moved);
            }
        }

        return TriangleMesh.Taking(kept.ToArray(), welded.ToArray());

        int Place(int vertex)
        {
            if (place[vertex] < 0)
            {
                MeshPoint point = vertices[vertex];
                (long X, long Y, long Z) cell = Cell(point, tolerance);
                int found = tolerance == 0 ? Same(cell, point) : Near(cell, point);
                if (found < 0)
                {
                    found = kept.Count;
                    kept.Add(point);
                    next.Add(heads.TryGetValue(cell, out int head) ? head : -1);
                    heads[cell] = found;
                }

                place[vertex] = found;
            }

            return place[vertex];
        }

        int Near((long X, long Y, long Z) cell, MeshPoint point)
        {
            int first = -1;
            for (long x = cell.X - 1; x <= cell.X + 1; x++)
            {
                for (long y = cell.Y - 1; y <= cell.Y + 1; y++)
                {
                    for (long z = cell.Z - 1; z <= cell.Z + 1; z++)
                    {
                        int found = Same((x, y, z), point);
                        first = found >= 0 && (first < 0 || found < first) ? found : first;
                    }
                }
            }

            return first;
        }

        int Same((long, long, long) cell, MeshPoint point)
        {
            int first = -1;
            for (int at = heads.TryGetValue(cell, out int head) ? head : -1; at >= 0; at = next[at])
            {
                first = MeshPoint.Difference(kept[at], point).Norm <= tolerance ? at : first;
            }

            return first;
        }
    }

    // Without a tolerance the cell is the point itself, −0 and 0 alike.
    private static (long X, long Y, long Z) Cell(MeshPoint p, double width) => width == 0
        ? (BitConverter.DoubleToInt64Bits(p.X + 0.0), BitConverter.DoubleToInt64Bits(p.Y + 0.0), BitConverter.DoubleToInt64Bits(p.Z + 0.0))
        : (Index(p.X / width), Index(p.Y / width), Index(p.Z / width));

    // A coordinate far beyond any room would not fit; such points share the outermost cell and are told apart by distance.
    private static long Index(double cells) => (long)Math.Max(-4e18, Math.Min(4e18, Math.Floor(cells)));

    private static (int Least, int Middle, int Greatest) Sorted(MeshTriangle t)
    {
        int low = Math.Min(t.A, Math.Min(t.B, t.C));
        int high = Math.Max(t.A, Math.Max(t.B, t.C));
        return (low, t.A ^ t.B ^ t.C ^ low ^ high, high);
    }

    /// <summary>What hangs together, by union and find.</summary>
    private sealed class Loops
    {
        private readonly Dictionary<int, int> parents = [];

        public int Count { get; private set; }

        public void Join(int a, int b)
        {
            int left = Root(a);
            int right = Root(b);
            if (left != right)
            {
                parents[left] = right;
                Count--;
            }
        }

        public int Root(int vertex)
        {
            if (!parents.TryGetValue(vertex, out int parent))
            {
                parents[vertex] = vertex;
                Count++;
                return vertex;
            }

            while (parent != vertex)
            {
                int above = parents[parent];
                parents[vertex] = above;
                vertex = parent;
                parent = above;
            }

            return vertex;
        }
    }
}
