using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>What a mesh has to be before it counts as a fixture: every triangle in one zone, once, and facing the coated side.</summary>
internal static class MeshZones
{
    public static readonly Source OpenEdges = Source.Derived("sum of the open edges of the mesh");

    // Slopes up to 45° look up, from 135° on down; a zone may hold a twentieth of either before it is taken for two (invented).
    private const double Up = Math.PI / 4;
    private const double SmallPart = 0.05;

    /// <summary>Refuses what no rule took.</summary>
    public static void CheckNothingLeft(TriangleMesh mesh, string name)
    {
        double whole = Guard.Within(mesh.Area, Bounds.Positive(Measure.Area, 1000), "mesh");
        double left = mesh.AreaOf(null).SquareMeters;
        int first = Array.FindIndex(mesh.Triangles.ToArray(), triangle => triangle.Zone is null);
        if (first >= 0)
        {
            MeshTriangle one = mesh.Triangles[first];
            throw new ArgumentException(
                name + " leave " + Figures.Fixed(mesh.Triangles.Count(triangle => triangle.Zone is null), 0) + " triangles without a zone, "
                + Measure.Area.Format(left) + " or " + Measure.Percent.Format(left / whole, DisplayUnits.Si, 3)
                    + " of the mesh; the first at "
                + mesh.Vertices[one.A] + ", " + Measure.Angle.Format(mesh.Slope(one), DisplayUnits.Si, 3)
                + " from level: crop them off, or add a rule that takes them.", name);
        }
    }

    /// <summary>Refuses a zone of which some looks up and some down.</summary>
    public static void CheckSides(TriangleMesh mesh, string name)
    {
        foreach (IGrouping<FixtureZoneKind, MeshTriangle> zone in mesh.Triangles.GroupBy(triangle => triangle.Zone!.Value))
        {
            double area = zone.Sum(mesh.SquareMetres);
            double up = zone.Where(triangle => mesh.Slope(triangle) <= Up).Sum(mesh.SquareMetres);
            double down = zone.Where(triangle => mesh.Slope(triangle) >= Math.PI - Up).Sum(mesh.SquareMetres);
            if (Math.Min(up, down) > SmallPart * area)
            {
                throw new ArgumentException(
                    name + " put " + Measure.Area.Format(up) + " that look up and " + Measure.Area.Format(down) + " that look down into "
                    + zone.Key.ToString("G") + ": their mean slope would be neither; tell them apart by height.", name);
            }
        }
    }

    /// <summary>Refuses triangles without a zone, that face another way than their neighbour, or that stand twice.</summary>
    public static void CheckFaces(TriangleMesh mesh, string name)
    {
        Refuse(mesh.Triangles.Count(triangle => triangle.Zone is null), "without a zone: classify the mesh first");
        MeshTopology topology = mesh.Topology;
        Refuse(topology.DuplicateTriangles, "that stand twice: their area would count twice");
        if (topology.MisorientedEdges > 0)
        {
            throw new ArgumentException(
                name + " has " + Figures.Fixed(topology.MisorientedEdges, 0) + " edges whose triangles face different ways: "
                + "which side is coated cannot be told.", name);
        }

        void Refuse(int count, string why)
        {
            if (count > 0)
            {
                throw new ArgumentException(name + " has " + Figures.Fixed(count, 0) + " triangles " + why + ".", name);
            }
        }
    }

    public static bool AreAlike(TriangleMesh? one, TriangleMesh? other) =>
        ReferenceEquals(one, other)
        || (one is not null && other is not null && one.Vertices.SequenceEqual(other.Vertices)
            && one.Triangles.SequenceEqual(other.Triangles));
}
