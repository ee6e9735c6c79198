using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>A fixture of one's own: its parts, and its mesh where it has one.</summary>
internal static class ZonedShapes
{
    /// <summary>About 12 MB of text; a larger scan stays in a file of its own, and its zones without it in the job.</summary>
    public const int MostTriangles = 200_000;

    public static ObjectShape<ZonePart> Part { get; } = new Fields<ZonePart>("zonePart")
        .With("name", Scalars.Text, it => it.Name, out Slot<string> name)
        .With("kind", FixtureParts.Zone, it => it.Kind, out Slot<FixtureZoneKind> kind)
        .With("area", Quantities.Area, it => it.Area, out Slot<Area> area)
        .With("slopeFromHorizontal", Quantities.Angle, it => it.SlopeFromHorizontal, out Slot<Angle> slope)
        .Optional("developedFactor", Number, it => it.DevelopedFactor, (it, factor) => it with { DevelopedFactor = factor })
        .Optional("openingArea", Quantities.Area, it => it.OpeningArea, (it, openings) => it with { OpeningArea = openings })
        .Optional("source", CommonShapes.Source, it => it.Source, (it, source) => it with { Source = source })
        .Making(v => new ZonePart(name(v), kind(v), area(v), slope(v)));

    /// <summary>Plain numbers, all in metres, so that a mesh reads back to the last bit and takes few lines.</summary>
    public static ObjectShape<TriangleMesh> Mesh { get; } = new Fields<TriangleMesh>("triangleMesh")
        .With("vertices", new ListShape<double>(Number, isPacked: true), Coordinates, out Slot<IReadOnlyList<double>> vertices)
        .With("zones", List(FixtureParts.Zone), Kinds, out Slot<IReadOnlyList<FixtureZoneKind>> zones)
        .With("triangles", new ListShape<int>(Count, isPacked: true), Corners, out Slot<IReadOnlyList<int>> triangles)
        .MakingTogether(() => new TriangleMesh([], []), v => Made(vertices(v), zones(v), triangles(v)));

    public static ObjectShape<ZonedFixture> Fixture { get; } = new Fields<ZonedFixture>("zonedFixture")
        .With("name", Scalars.Text, it => it.Name, out Slot<string> called)
        .With("parts", List(Part), it => it.Parts, out Slot<IReadOnlyList<ZonePart>> parts)
        .With("maskedEdge", Quantities.Distance, it => it.MaskedEdge, out Slot<Length> edge)
        .Maybe("waterCapacity", Quantities.Capacity, it => it.WaterCapacity, (it, water) => it with { WaterCapacity = water })
        .WithOr("measuredArea", Quantities.Area.OrNull(), it => it.MeasuredArea, null, out Slot<Area?> measured)
        .WithOr("mesh", Mesh.OrNull(), it => it.Mesh, null, out Slot<TriangleMesh?> mesh)
        .MakingTogether(
            () => new ZonedFixture(
                "stand-in", [new ZonePart("stand-in", FixtureZoneKind.Top, Area.FromSquareMeters(1), Angle.Zero)], Length.Zero),
            v => new ZonedFixture(called(v), parts(v), edge(v)) { MeasuredArea = measured(v), Mesh = mesh(v) });

    private static IReadOnlyList<double> Coordinates(TriangleMesh mesh) =>
        [.. mesh.Vertices.SelectMany(point => (double[])[point.X, point.Y, point.Z])];

    private static IReadOnlyList<FixtureZoneKind> Kinds(TriangleMesh mesh) =>
        [.. mesh.Triangles.Select(triangle => triangle.Zone).OfType<FixtureZoneKind>().Distinct()];

    private static IReadOnlyList<int> Corners(TriangleMesh mesh)
    {
        if (mesh.Triangles.Count > MostTriangles)
        {
            throw new NotSupportedException(
                "A mesh of " + Text(mesh.Triangles.Count) + " triangles is not written into JSON; at most "
                + Text(MostTriangles) + ". Keep the scan in a file of its own and write the fixture with Mesh = null.");
        }

        Dictionary<FixtureZoneKind,
            int> places = Kinds(mesh).Select((kind, i) => (kind, i)).ToDictionary(pair => pair.kind, pair => pair.i);
        List<int> corners = new(4 * mesh.Triangles.Count);
        foreach (MeshTriangle triangle in mesh.Triangles)
        {
            corners.AddRange([triangle.A, triangle.B, triangle.C, triangle.Zone is FixtureZoneKind zone ? places[zone] : -1]);
        }

        return corners;
    }

    private static TriangleMesh Made(IReadOnlyList<double> vertices, IReadOnlyList<FixtureZoneKind> zones, IReadOnlyList<int> triangles)
    {
        Whole(vertices.Count, 3, int.MaxValue, nameof(vertices), "x, y and z of each point");
        Whole(triangles.Count, 4, 4 * MostTriangles, nameof(triangles), "three places in vertices and one in zones for each triangle");
        List<MeshTriangle> made = new(triangles.Count / 4);
        for (int i = 0; i < triangles.Count; i += 4)
        {
            int zone = triangles[i + 3];
            if (zone < -1 || zone >= zones.Count)
            {
                throw new ArgumentException(
                    "triangles names zone " + Text(zone) + "; there are " + Text(zones.Count) + ", counted from 0, and -1 is none.",
                    nameof(triangles));
            }

            made.Add(new(triangles[i], triangles[i + 1], triangles[i + 2], zone < 0 ? null : zones[zone]));
        }

        return new TriangleMesh(Enumerable.Range(0, vertices.Count / 3).Select(i =>
            new MeshPoint(vertices[3 * i], vertices[(3 * i) + 1], vertices[(3 * i) + 2])), made);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Whole(int count, int each, int most, string name, string words)
    {
        if (count % each != 0 || count > most)
        {
            throw new ArgumentException(
                name + " has " + Text(count) + " numbers; allowed: " + words
                + (most < int.MaxValue ? ", at most " + Text(most) + " numbers." : "."), name);
        }
    }
}
