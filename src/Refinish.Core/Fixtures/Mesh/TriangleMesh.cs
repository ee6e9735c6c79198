using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A surface as triangles, from a fixture that was tessellated or from a scan. It does not change; every operation gives a new one.
/// </summary>
/// <remarks>
/// Area = Σ |(b − a) × (c − a)| / 2; volume by the divergence theorem, V = Σ a · (b × c) / 6, with the middle of the box as origin so that
/// few digits are lost. Source: derived; the tests hold it to closed solids, to triangulations in the tests and to two public meshes
/// measured elsewhere.
/// </remarks>
/// <example><code>
/// RecessedBathtub tub = new(tape);                           // the tub of RecessedBathtubMeasurements
/// TriangleMesh mesh = tub.Tessellate(Length.FromMillimeters(0.1));
/// double squareFeet = mesh.Area.SquareFeet;                  // 27.7 with drain and overflow closed
/// </code></example>
public sealed class TriangleMesh
{
    private readonly MeshPoint[] vertices;
    private readonly MeshTriangle[] triangles;

    /// <summary>Makes a mesh.</summary>
    /// <param name="vertices">The points, in metres.</param>
    /// <param name="triangles">The triangles; each corner is a place in <paramref name="vertices"/>.</param>
    /// <exception cref="ArgumentNullException">A list is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A coordinate is not finite or farther than 10⁹ m off, or a corner is no place in the list.
    /// </exception>
    public TriangleMesh(IEnumerable<MeshPoint> vertices, IEnumerable<MeshTriangle> triangles)
        : this([.. Guard.NotNull(vertices)], [.. Guard.NotNull(triangles)])
    {
        for (int i = 0; i < this.vertices.Length; i++)
        {
            MeshBox.InReach(this.vertices[i], nameof(vertices));
        }

        int last = this.vertices.Length - 1;
        foreach (MeshTriangle triangle in this.triangles)
        {
            Guard.Count(triangle.A, 0, last, nameof(triangles));
            Guard.Count(triangle.B, 0, last, nameof(triangles));
            Guard.Count(triangle.C, 0, last, nameof(triangles));
        }
    }

    private TriangleMesh(MeshPoint[] vertices, MeshTriangle[] triangles)
    {
        this.vertices = vertices;
        this.triangles = triangles;
        Vertices = Array.AsReadOnly(vertices);
        Triangles = Array.AsReadOnly(triangles);
    }

    /// <summary>The points, in metres.</summary>
    public IReadOnlyList<MeshPoint> Vertices { get; }

    /// <summary>The triangles.</summary>
    public IReadOnlyList<MeshTriangle> Triangles { get; }

    /// <summary>The area of all triangles.</summary>
    public Area Area => Area.FromSquareMeters(SumOver());

    /// <summary>
    /// The volume inside, whichever way the triangles face; <see langword="null"/> unless the mesh is closed and faces one way.
    /// </summary>
    public Volume? EnclosedVolume => Topology.EnclosesVolume ? Volume.FromCubicMeters(Math.Abs(Signed())) : null;

    /// <summary>
    /// The volume by the divergence theorem, without a check that the mesh is closed: negative where the triangles face inwards.
    /// </summary>
    public Volume SignedVolume => Volume.FromCubicMeters(Signed());

    /// <summary>The water that stands in the basins of the mesh up to a level, such as that of the overflow.</summary>
    /// <param name="level">The height of the water, in the heights of the mesh, −1000 to 1000 m.</param>
    /// <returns>The sum over all basins; <see langword="null"/> where none holds water up to this level.</returns>
    /// <remarks>
    /// V = Σ n_z A (level − mean z) over the triangles below the level. A piece of the surface counts as a basin when the level closes all
    /// of its open edges and it faces inwards, as the coated side of a basin does. One with a hole below the level, such as a drain that a
    /// scan left open, or with corners that were not welded holds none. Source: derived; the tests hold it to closed solids.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="level"/> is outside its range.</exception>
    public Volume? WaterBelow(Length level) =>
        MeshWater.Below(this, Guard.Within(level, Bounds.Between(-1000, 1000, Measure.Length))) is double water
            ? Volume.FromCubicMeters(water) : null;

    /// <summary>The box round all corners in use; <see langword="null"/> for a mesh without triangles.</summary>
    public MeshBox? Box
    {
        get
        {
            if (triangles.Length == 0)
            {
                return null;
            }

            MeshPoint low = new(double.MaxValue, double.MaxValue, double.MaxValue);
            MeshPoint high = new(double.MinValue, double.MinValue, double.MinValue);
            foreach (MeshTriangle triangle in triangles)
            {
                Widen(vertices[triangle.A]);
                Widen(vertices[triangle.B]);
                Widen(vertices[triangle.C]);
            }

            return new MeshBox(low, high);

            void Widen(MeshPoint p)
            {
                low = new(Math.Min(low.X, p.X), Math.Min(low.Y, p.Y), Math.Min(low.Z, p.Z));
                high = new(Math.Max(high.X, p.X), Math.Max(high.Y, p.Y), Math.Max(high.Z, p.Z));
            }
        }
    }

    /// <summary>How the triangles hang together; worked out anew at each call.</summary>
    public MeshTopology Topology => MeshEdges.Topology(vertices, triangles);

    /// <summary>The area of one zone.</summary>
    /// <param name="zone">The zone; <see langword="null"/> for the triangles that have none.</param>
    /// <returns>The area, 0 when the zone is not there.</returns>
    public Area AreaOf(FixtureZoneKind? zone) =>
        Area.FromSquareMeters(triangles.Where(triangle => triangle.Zone == zone).Sum(SquareMetres));

    /// <summary>The zones that are there, with their areas and mean slopes; triangles without a zone are left out.</summary>
    /// <returns>One entry for each zone.</returns>
    /// <remarks>The slope is that of the side the triangle faces, 0 to 180°.</remarks>
    public IReadOnlyList<FixtureZone> Zones()
    {
        SortedDictionary<FixtureZoneKind, (double Area, double Tilt)> sums = [];
        foreach (MeshTriangle triangle in triangles)
        {
            if (triangle.Zone is FixtureZoneKind zone)
            {
                double area = SquareMetres(triangle);
                sums.TryGetValue(zone, out (double Area, double Tilt) sum);
                sums[zone] = (sum.Area + area, sum.Tilt + (area * Slope(triangle)));
            }
        }

        return new ValueList<FixtureZone>(sums.Where(sum => sum.Value.Area > 0).Select(sum =>
            FixtureZone.Of(sum.Key, sum.Value.Area, Math.Min(Math.PI, sum.Value.Tilt / sum.Value.Area))));
    }

    /// <summary>
    /// The mesh with corners that lie within a tolerance of each other made one, and triangles that lose their area by it left out.
    /// </summary>
    /// <param name="tolerance">0 for corners that are the same to the last digit; up to 50 mm.</param>
    /// <returns>A mesh whose vertices are all in use.</returns>
    /// <remarks>Each corner goes to the first earlier one within the tolerance, so that no corner moves farther than it.</remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="tolerance"/> is outside its range.</exception>
    public TriangleMesh Welded(Length tolerance) =>
        MeshEdges.Welded(vertices, triangles, Guard.Within(tolerance, Bounds.NotNegative(Measure.Length, 0.05)));

    /// <summary>The part on the kept side of a plane; triangles across it are cut.</summary>
    /// <param name="plane">The plane.</param>
    /// <returns>What is kept; the cut stays open.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="plane"/> is missing.</exception>
    public TriangleMesh Cropped(MeshPlane plane) => MeshCrop.By(this, Guard.NotNull(plane));

    /// <summary>The part inside a box; triangles across its sides are cut.</summary>
    /// <param name="box">The box.</param>
    /// <returns>What is kept; the cuts stay open.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="box"/> is missing.</exception>
    public TriangleMesh Cropped(MeshBox box)
    {
        Guard.NotNull(box);
        return Cropped(new MeshPlane(box.Lowest, new(1, 0, 0))).Cropped(new MeshPlane(box.Lowest, new(0, 1, 0))).Cropped(new MeshPlane(box.Lowest, new(0, 0, 1)))
            .Cropped(new MeshPlane(box.Highest, new(-1, 0, 0))).Cropped(new MeshPlane(box.Highest, new(0, -1, 0))).Cropped(new MeshPlane(box.Highest, new(0, 0, -1)));
    }

    /// <summary>
    /// The mesh with every triangle's zone given by the first rule that holds for it; <see langword="null"/> where none does.
    /// </summary>
    /// <param name="rules">The rules in order.</param>
    /// <returns>The same triangles with zones.</returns>
    /// <exception cref="ArgumentException">The list is missing, empty or holds an empty entry.</exception>
    public TriangleMesh Classified(IReadOnlyList<ZoneRule> rules)
    {
        ValueList<ZoneRule> list = Guard.List(rules, 1);
        MeshTriangle[] zoned = new MeshTriangle[triangles.Length];
        for (int i = 0; i < zoned.Length; i++)
        {
            MeshTriangle triangle = triangles[i];
            double slope = Slope(triangle);
            slope = Math.Min(slope, Math.PI - slope);
            double height = (vertices[triangle.A].Z + vertices[triangle.B].Z + vertices[triangle.C].Z) / 3;
            FixtureZoneKind? zone = null;
            for (int k = 0; k < list.Count && zone is null; k++)
            {
                zone = list[k].Holds(slope, height) ? list[k].Zone : null;
            }

            zoned[i] = triangle with { Zone = zone };
        }

        return new TriangleMesh(vertices, zoned);
    }

    /// <summary>The mesh with every triangle facing the other way.</summary>
    /// <returns>The same triangles, turned over.</returns>
    public TriangleMesh Reversed() =>
        new(vertices, Array.ConvertAll(triangles, static triangle => triangle with { B = triangle.C, C = triangle.B }));

    /// <summary>The counts and the area in one line, in metric units.</summary>
    /// <returns>Text such as <c>2048 triangles on 1060 vertices, 2.5724 m²</c>.</returns>
    public override string ToString() => $"{triangles.Length} triangles on {vertices.Length} vertices, {Measure.Area.Format(SumOver())}";

    /// <summary>Takes the arrays over without a copy; they are known to fit each other.</summary>
    internal static TriangleMesh Taking(MeshPoint[] vertices, MeshTriangle[] triangles) => new(vertices, triangles);

    internal static MeshPoint DoubleNormal(MeshPoint a, MeshPoint b, MeshPoint c) =>
        MeshPoint.Cross(MeshPoint.Difference(b, a), MeshPoint.Difference(c, a));

    internal double SquareMetres(MeshTriangle t) => DoubleNormal(vertices[t.A], vertices[t.B], vertices[t.C]).Norm / 2;

    /// <summary>The slope of the side that a triangle faces, 0 to π.</summary>
    internal double Slope(MeshTriangle t)
    {
        MeshPoint normal = DoubleNormal(vertices[t.A], vertices[t.B], vertices[t.C]);
        return Math.Atan2(Math.Sqrt((normal.X * normal.X) + (normal.Y * normal.Y)), normal.Z);
    }

    private double SumOver() => triangles.Sum(SquareMetres);

    private double Signed()
    {
        if (Box is not MeshBox box)
        {
            return 0;
        }

        MeshPoint middle = MeshPoint.Between(box.Lowest, box.Highest, 0.5);
        double volume = 0;
        foreach (MeshTriangle t in triangles)
        {
            MeshPoint a = MeshPoint.Difference(vertices[t.A], middle);
            volume += MeshPoint.Dot(a, MeshPoint.Cross(MeshPoint.Difference(vertices[t.B], middle), MeshPoint.Difference(vertices[t.C], middle)));
        }

        return volume / 6;
    }
}
