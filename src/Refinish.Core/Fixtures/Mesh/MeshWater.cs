using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>The water that stands in the basins of a mesh up to a level.</summary>
internal static class MeshWater
{
    // A nanometre, as for the seams of a tessellation: cut points lie on the level but for rounding.
    private const double Rounding = 1e-9;

    /// <summary>
    /// The column of water over each triangle below the level, summed over each connected piece; a piece counts when all of its open edges
    /// lie at the level, and when more of it looks up than down, so that it is the inside of something.
    /// </summary>
    public static double? Below(TriangleMesh mesh, double level)
    {
        TriangleMesh wet = mesh.Cropped(new MeshPlane(new(0, 0, level), new(0, 0, -1)));
        double Depth(int vertex) => level - wet.Vertices[vertex].Z;
        MeshTriangle[] under = [.. wet.Triangles.Where(t => Math.Max(Depth(t.A), Math.Max(Depth(t.B), Depth(t.C))) > Rounding)];
        double water = 0;
        foreach (MeshTriangle[] piece in MeshEdges.Pieces(under))
        {
            MeshTopology topology = MeshEdges.Topology([.. wet.Vertices], piece);
            double column = piece.Sum(t =>
                TriangleMesh.DoubleNormal(wet.Vertices[t.A], wet.Vertices[t.B],
                    wet.Vertices[t.C]).Z / 2 * (Depth(t.A) + Depth(t.B) + Depth(t.C)) / 3);
            bool isWhole = topology.NonManifoldEdges + topology.MisorientedEdges + topology.DuplicateTriangles == 0;
            if (isWhole && column > 0 && MeshEdges.OpenVertices(piece).All(vertex => Depth(vertex) <= Rounding))
            {
                water += column;
            }
        }

        return water > 0 ? water : null;
    }
}
