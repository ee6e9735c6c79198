using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A tub in the corner of a room: an oval basin in a deck of five sides, whose returns and front, straight or bowed, show.
/// </summary>
/// <remarks>
/// Deck = L R − (L − r)(R − l) / 2 + bow − mouth, with the walls L and R, the returns l and r square to them, and the bow as a circular
/// segment R² (α − sin α cos α) of half angle α = 2 arctan(2 s / c) over the front's chord c with rise s; front = (l + r + c or its
/// arc) × height. The basin as for an oval tub. Source: derived.
/// </remarks>
/// <example><code>
/// CornerTub tub = new(tape);                        // the tub of CornerTubMeasurements
/// double deck = tub.DeckArea.SquareFeet;            // 11.6
/// </code></example>
public sealed record CornerTub : IFixture
{
    private readonly SuperellipseBasin basin;
    private readonly double walls;
    private readonly double coated;
    private object? full;

    /// <summary>Works a tub out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public CornerTub(CornerTubMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
        basin = measurements.Basin;
        walls = basin.Walls().Value;
        Patches = PatchLedger.Present(
        [
            .. basin.Patches(walls, PlaneShapes.Disc(AcrossDrain(null)).Value, PlaneShapes.Disc(AcrossOverflow(null)).Value),
            new(Deck, FixtureZoneKind.Rim), new(Front, FixtureZoneKind.Apron, SurfacePatch.Upright),
        ]);
        coated = PatchLedger.Coated(Patches);
    }

    /// <summary>What the tape gave.</summary>
    public CornerTubMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => "corner tub " + Measure.Length.Format(Measurements.LeftWall.Meters)
        + " × " + Measure.Length.Format(Measurements.RightWall.Meters);

    /// <summary>Floor, walls, rim (the deck) and apron (returns and front).</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(coated);

    /// <summary>
    /// The deck at both walls, the foot of returns and front (their top when they are not coated), the two ends of the front, and the
    /// rings of drain and overflow.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Edge().Value);

    /// <summary>The water it holds up to the rim.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters((double)(full ??= basin.Water(basin.Depth).Value));

    /// <summary>The walls of the basin, overflow not taken off.</summary>
    public Area WallArea => Area.FromSquareMeters(walls);

    /// <summary>The floor, drain not taken off.</summary>
    public Area FloorArea => Area.FromSquareMeters(basin.FloorArea().Value);

    /// <summary>The level deck round the mouth.</summary>
    public Area DeckArea => Area.FromSquareMeters(Deck().Value);

    /// <summary>Returns and front.</summary>
    public Area FrontArea => Area.FromSquareMeters(Front().Value);

    /// <summary>Floor, walls, deck, returns and front.</summary>
    public IReadOnlyList<SurfacePatch> Patches { get; }

    /// <summary>The water up to a level below the rim, such as the overflow.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the depth.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) => Volume.FromCubicMeters(basin.Water(Level(freeboard)).Value);

    /// <summary>How the capacity up to a level below the rim follows.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the depth.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Workings CapacityWorkings(Length freeboard) => basin.Capacity(Level(freeboard));

    /// <inheritdoc/>
    /// <remarks>
    /// The mouth stands over the centroid of the straight deck, its length along the front; neither drain nor overflow is cut out.
    /// </remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        CornerPlan plan = Measurements.Plan;
        SuperellipseBasin shape = basin;
        double top = basin.Depth;
        double low = top - Measurements.FrontHeight.Meters;
        Tessellation mesh = new(chordTolerance);
        mesh.Add(plan.Breaks(basin), [.. basin.Bands(), SurfaceBand.Ruled(
            FixtureZoneKind.Rim, turn => shape.Point(true, turn), turn => plan.Towards(shape.Point(true, turn), top))]);
        mesh.Add([0, 1, 2, 3], SurfaceBand.Ruled(FixtureZoneKind.Apron, u => plan.AlongFront(u, top), u => plan.AlongFront(u, low)));
        return mesh.Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings() => PatchLedger.Write("Corner tub", Patches, [basin.MouthArea], [Edge], basin.Capacity(basin.Depth));

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(CornerTub? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>corner tub 1524 mm × 1524 mm: 4.2 m² coated, 300 L to the rim</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num Deck(Trace? t = null) => t.Area("deck", "A_deck", Measurements.Plan.Deck(t) - basin.MouthArea(t));

    private Num Front(Trace? t = null) => t.Area("returns and front", "A_front", Measurements.Plan.Front(t) * Down(t));

    private Num Edge(Trace? t = null) =>
        t.Edge(t.Tape("L", Measurements.LeftWall) + t.Tape("R", Measurements.RightWall) + Measurements.Plan.Front(t) + (2 * Down(t))
            + PlaneShapes.Circle(AcrossDrain(t)) + PlaneShapes.Circle(AcrossOverflow(t)));

    private Num Down(Trace? t) => t.Tape("h_a", Measurements.FrontHeight);

    private Num AcrossDrain(Trace? t) => t.Tape("D_d", Measurements.DrainDiameter);

    private Num AcrossOverflow(Trace? t) => t.Tape("D_o", Measurements.OverflowDiameter);

    private double Level(Length freeboard) => basin.Depth - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, basin.Depth));
}
