using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// Cuts a mesh along a plane. A triangle across it gives one or two triangles; the points on the cut are shared by the neighbours.
/// </summary>
internal static class MeshCrop
{
    public static TriangleMesh By(TriangleMesh mesh, MeshPlane plane)
    {
        IReadOnlyList<MeshPoint> vertices = mesh.Vertices;
        double[] heights = [.. vertices.Select(plane.Height)];

        List<MeshPoint> points = [];
        List<MeshTriangle> triangles = [];
        Dictionary<(int, int), int> places = [];
        foreach (MeshTriangle t in mesh.Triangles)
        {
            int above = (heights[t.A] >= 0 ? 1 : 0) + (heights[t.B] >= 0 ? 1 : 0) + (heights[t.C] >= 0 ? 1 : 0);
            if (above == 0)
            {
                continue;
            }

            if (above == 3)
            {
                triangles.Add(new(Whole(t.A), Whole(t.B), Whole(t.C), t.Zone));
                continue;
            }

            // Turned so that the one corner that differs from the other two comes first.
            bool alone = above == 1;
            (int first, int second, int third) = (heights[t.A] >= 0) == alone ? (t.A, t.B, t.C)
                : (heights[t.B] >= 0) == alone ? (t.B, t.C, t.A) : (t.C, t.A, t.B);
            int left = Cut(first, second);
            int right = Cut(first, third);
            if (alone)
            {
                triangles.Add(new(Whole(first), left, right, t.Zone));
            }
            else
            {
                triangles.Add(new(left, Whole(second), Whole(third), t.Zone));
                triangles.Add(new(left, Whole(third), right, t.Zone));
            }
        }

        return TriangleMesh.Taking(points.ToArray(), triangles.ToArray());

        int Whole(int vertex) => Place((vertex, vertex), vertices[vertex]);

        int Cut(int a, int b)
        {
            (int low, int high) = a < b ? (a, b) : (b, a);
            return Place((low, high), MeshPoint.Between(vertices[low], vertices[high], heights[low] / (heights[low] - heights[high])));
        }

        int Place((int, int) key, MeshPoint point)
        {
            if (!places.TryGetValue(key, out int place))
            {
                place = points.Count;
                points.Add(point);
                places[key] = place;
            }

            return place;
        }
    }
}
