using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A fixture for which there is no type: parts with area and slope, the edge to be taped, the water it holds, and its shape as a mesh where
/// there is one.
/// </summary>
/// <remarks>
/// <para>What was measured twice has to agree: the parts with <see cref="MeasuredArea"/>, and zone by zone with <see cref="Mesh"/>, within
/// <see cref="AreaTolerance"/> and <see cref="SlopeTolerance"/>. Otherwise the fixture is refused and both figures are named.</para>
/// <para>For a scan or a model use <see cref="FromMesh"/>. A calculation of one's own from tape lengths ends in a fixture of this kind, and
/// <see cref="FixtureUncertainty"/> carries the ± of those lengths through it.</para>
/// </remarks>
/// <example><code>
/// ZonedFixture bench = new(
///     "shower bench",
///     [
///         new ZonePart("seat", FixtureZoneKind.Top, Area.FromSquareMeters(0.42), Angle.Zero),
///         new ZonePart("front", FixtureZoneKind.Wall, Area.FromSquareMeters(0.54), Angle.FromDegrees(90)),
///     ],
///     Length.FromMeters(3.6));
/// double squareMetres = bench.CoatedArea.SquareMeters;   // 0.96
/// </code></example>
public sealed record ZonedFixture : IFixture
{
    private const double Agreeing = 0.02;
    private const double AgreeingSlope = 5 * Math.PI / 180;
    private const int Most = 100;

    private static readonly Source Given = Source.Supplied("measured on the fixture");
    private static readonly Source Check = Source.Invented("two measurements of one area agree within 2 %, two of one slope within 5°");

    private readonly double edge;
    private readonly double? water;
    private readonly double? measured;
    private readonly TriangleMesh? mesh;

    /// <summary>Makes a fixture of parts.</summary>
    /// <param name="name">What it is, in a few words.</param>
    /// <param name="parts">What gets coated: 1 to 100 parts with names of their own.</param>
    /// <param name="maskedEdge">The edge to be taped, towards walls and floor and round openings, 0 to 1000 m.</param>
    /// <exception cref="ArgumentException">A text or the list is missing or empty, or two parts have one name.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or openings leave nothing of a part.</exception>
    public ZonedFixture(string name, IEnumerable<ZonePart> parts, Length maskedEdge)
    {
        Name = Guard.Named(name);
        ValueList<ZonePart> list = Guard.List(parts, 1);
        Guard.Count(list.Count, 1, Most, nameof(parts));
        HashSet<string> names = new(StringComparer.Ordinal);
        foreach (ZonePart part in list)
        {
            if (!names.Add(part.Name))
            {
                throw new ArgumentException("parts names '" + part.Name + "' twice.", nameof(parts));
            }

            Guard.Rule(part.Coated > 0, nameof(parts), part.OpeningArea.SquareMeters, Measure.Area,
                "openings of '" + part.Name + "' below its area, " + Measure.Area.Format(part.SquareMetres * part.DevelopedFactor));
        }

        Parts = list;
        edge = Guard.Within(maskedEdge, Bounds.NotNegative(Measure.Length, 1000));
    }

    /// <summary>How far two measurements of one area may differ: 2 % of the larger (invented).</summary>
    public static Ratio AreaTolerance => Ratio.FromDecimalFractions(Agreeing);

    /// <summary>How far the mean slope of a zone may differ between parts and mesh: 5° (invented).</summary>
    public static Angle SlopeTolerance => Angle.FromRadians(AgreeingSlope);

    /// <summary>What it is, in a few words.</summary>
    public string Name { get; }

    /// <summary>What gets coated, part by part, as it was given.</summary>
    public IReadOnlyList<ZonePart> Parts { get; }

    /// <inheritdoc/>
    public string Description => Name;

    /// <summary>The parts gathered by the zone they belong to.</summary>
    public IReadOnlyList<FixtureZone> Zones => PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Coated);

    /// <inheritdoc/>
    public Length MaskedEdge => Length.FromMeters(edge);

    /// <summary>
    /// The water it holds, more than 0 and at most 10 m³; none unless given. <see cref="TriangleMesh.WaterBelow"/> gives it for a basin.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume? WaterCapacity
    {
        get => water is double volume ? Volume.FromCubicMeters(volume) : null;
        init => water = value is Volume given ? Guard.Within(given, Bounds.Positive(Measure.Capacity, 10), nameof(WaterCapacity)) : null;
    }

    /// <summary>The coated area where it was measured as a whole too; what the parts coat has to agree with it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// It differs from the sum of the parts by more than <see cref="AreaTolerance"/>.
    /// </exception>
    public Area? MeasuredArea
    {
        get => measured is double area ? Area.FromSquareMeters(area) : null;
        init
        {
            if (value is Area given)
            {
                double area = Guard.Within(given, Bounds.Positive(Measure.Area), nameof(MeasuredArea));
                Guard.Rule(Agree(area, Coated), nameof(MeasuredArea), area, Measure.Area,
                    "within 2 % of the parts together, " + Measure.Area.Format(Coated));
                measured = area;
            }
            else
            {
                measured = null;
            }
        }
    }

    /// <summary>
    /// The shape; none unless given. Every triangle has a zone and faces the coated side, and each zone agrees with its parts in plain area
    /// and in slope.
    /// </summary>
    /// <exception cref="ArgumentException">A triangle has no zone, or triangles face different ways, or stand twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A zone differs from its parts.</exception>
    public TriangleMesh? Mesh { get => mesh; init => mesh = value is null ? null : Agreed(value); }

    /// <summary>One patch for each part.</summary>
    public IReadOnlyList<SurfacePatch> Patches => new ValueList<SurfacePatch>(Parts.Select((part, i) => part.Patch(i + 1)));

    private double Coated => Parts.Sum(part => part.Coated);

    /// <summary>Makes a fixture of a scan or a model: rules give the triangles their zones, open edges are the edge to be taped.</summary>
    /// <param name="name">What it is, in a few words.</param>
    /// <param name="mesh">
    /// The coated surface alone, z upwards, facing the coated side. Crop what is not coated off, weld a scan, and turn it with
    /// <see cref="TriangleMesh.Reversed"/> when it faces away.
    /// </param>
    /// <param name="rules">Which slope and height belong to which zone; the first that holds counts.</param>
    /// <returns>A fixture with one part for each zone; it holds no water until <see cref="WaterCapacity"/> is given.</returns>
    /// <remarks>
    /// Corners that are the same to the last digit are joined first, so that a plain STL file has edges that can be told open.
    /// </remarks>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">
    /// The list of rules is empty, a triangle fits no rule, triangles face different ways or stand twice, or a zone looks up and down.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The mesh has no area, or more than a fixture may have, or a floor that looks down.
    /// </exception>
    public static ZonedFixture FromMesh(string name, TriangleMesh mesh, IReadOnlyList<ZoneRule> rules)
    {
        TriangleMesh zoned = Guard.NotNull(mesh).Welded(Length.Zero).Classified(rules);
        MeshZones.CheckNothingLeft(zoned, nameof(rules));
        MeshZones.CheckFaces(zoned, nameof(mesh));
        MeshZones.CheckSides(zoned, nameof(rules));
        Source source = Source.Derived("sum over " + Figures.Fixed(zoned.Triangles.Count, 0) + " triangles of the mesh");
        return new ZonedFixture(
            name,
            zoned.Zones().Select(zone => new ZonePart(
                zone.Kind.ToString("G").ToLowerInvariant(), zone.Kind, zone.Area, zone.SlopeFromHorizontal) { Source = source }),
            zoned.Topology.BoundaryLength)
        {
            Mesh = zoned, };
    }

    /// <inheritdoc/>
    /// <remarks>
    /// The mesh as it is, however fine the tolerance. Without one each part is a square of its plain area, set at its slope and beside the
    /// part before it: areas and slopes hold, where the parts lie and how long they are does not.
    /// </remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        Tessellation squares = new(chordTolerance);
        return mesh ?? squares.AddFaces(PartSquares.Of(Parts)).Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings()
    {
        List<Func<Trace, Num>> after =
        [
            t => t.Step("edge to be taped", "P_mask", Measure.Length, mesh is null ? Given : MeshZones.OpenEdges,
                t.Given("p", edge, Measure.Length)),
        ];
        if (water is double volume)
        {
            after.Add(t => t.Step("water it holds", "V", Measure.Capacity, Given, t.Given("v", volume, Measure.Capacity)));
        }

        if (measured is double whole)
        {
            after.Add(t => t.Step("parts against the area measured as a whole", "k_A", Measure.Number, Check,
                t.Given("A", Coated, Measure.Area) / t.Given("A_whole", whole, Measure.Area)));
        }

        return PatchLedger.Write("Fixture by zones", Patches, [], [.. after]);
    }

    /// <summary>Whether two fixtures have the same name, parts, edge, capacity, measured area and mesh.</summary>
    /// <param name="other">The fixture to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(ZonedFixture? other) =>
        other is not null && Name == other.Name && Parts.Equals(other.Parts) && edge.Equals(other.edge) && water.Equals(other.water)
        && measured.Equals(other.measured) && MeshZones.AreAlike(mesh, other.mesh);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((StringComparer.Ordinal.GetHashCode(Name) * 31) + Parts.GetHashCode());

    /// <summary>The name, what gets coated and the capacity in one line, in metric units.</summary>
    /// <returns>Text such as <c>shower bench: 0.96 m² coated</c>.</returns>
    public override string ToString() =>
        $"{Name}: {Measure.Area.Format(Coated)}"
        + $" coated{(water is double volume ? ", holds " + Measure.Capacity.Format(volume) : string.Empty)}";

    private static bool Agree(double one, double other) => Math.Abs(one - other) <= Agreeing * Math.Max(one, other);

    private TriangleMesh Agreed(TriangleMesh given)
    {
        MeshZones.CheckFaces(given, nameof(Mesh));
        IReadOnlyList<FixtureZone> zones = given.Zones();
        foreach (FixtureZone zone in zones)
        {
            ZonePart[] own = [.. Parts.Where(part => part.Kind == zone.Kind)];
            double plain = own.Sum(part => part.SquareMetres);
            string words = zone.Kind.ToString("G") + " of the parts, ";
            Guard.Rule(Agree(zone.Area.SquareMeters, plain), nameof(Mesh), zone.Area.SquareMeters, Measure.Area,
                "within 2 % of " + words + Measure.Area.Format(plain));
            double slope = own.Sum(part => part.SquareMetres * part.Radians) / plain;
            Guard.Rule(Math.Abs(zone.SlopeFromHorizontal.Radians - slope) <= AgreeingSlope, nameof(Mesh), zone.SlopeFromHorizontal.Radians,
                Measure.Angle, "within 5° of " + words + Measure.Angle.Format(slope, figures: 4));
        }

        foreach (ZonePart part in Parts)
        {
            Guard.Rule(zones.Any(zone => zone.Kind == part.Kind), nameof(Mesh), 0, Measure.Area,
                "an area of " + part.Kind.ToString("G") + ", to which '" + part.Name + "' belongs");
        }

        return given;
    }
}
