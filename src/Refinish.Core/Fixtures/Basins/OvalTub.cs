using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>An oval tub set into a level deck: a basin whose outline is a superellipse at mouth and floor, a deck, an apron.</summary>
/// <remarks>
/// Walls by quadrature of the ruled loft between the two outlines, below 1e-8 off; capacity by the prismoidal rule, exact for such a
/// basin. The floor line is taken sharp and the floor concentric with the mouth. Source: derived; the tests hold it to elliptic cones,
/// to the Gamma function and to triangulation.
/// </remarks>
/// <example><code>
/// OvalTub tub = new(tape);                          // the tub of OvalTubMeasurements
/// double gallons = tub.WaterCapacity!.Value.UsGallons;   // 62.8
/// </code></example>
public sealed record OvalTub : IFixture
{
    private readonly SuperellipseBasin basin;
    private readonly double walls;
    private readonly double coated;
    private object? full;

    /// <summary>Works a tub out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public OvalTub(OvalTubMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
        basin = measurements.Basin;
        walls = basin.Walls().Value;
        Patches = PatchLedger.Present(
        [
            .. basin.Patches(walls, PlaneShapes.Disc(AcrossDrain(null)).Value, PlaneShapes.Disc(AcrossOverflow(null)).Value),
            new(Deck, FixtureZoneKind.Rim), new(Apron, FixtureZoneKind.Apron, SurfacePatch.Upright),
        ]);
        coated = PatchLedger.Coated(Patches);
    }

    /// <summary>What the tape gave.</summary>
    public OvalTubMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => "oval tub " + Measure.Length.Format(Measurements.DeckLength.Meters)
        + " × " + Measure.Length.Format(Measurements.DeckWidth.Meters);

    /// <summary>Floor, walls, rim (the deck) and apron.</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(coated);

    /// <summary>
    /// The deck's three edges at the wall, the apron's foot and two ends (without an apron, the deck's front edge), and the rings of
    /// drain and overflow.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Edge().Value);

    /// <summary>The water it holds up to the rim.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters((double)(full ??= basin.Water(basin.Depth).Value));

    /// <summary>The walls, overflow not taken off.</summary>
    public Area WallArea => Area.FromSquareMeters(walls);

    /// <summary>The floor, drain not taken off.</summary>
    public Area FloorArea => Area.FromSquareMeters(basin.FloorArea().Value);

    /// <summary>The mouth.</summary>
    public Area MouthArea => Area.FromSquareMeters(basin.MouthArea().Value);

    /// <summary>The level deck round the mouth.</summary>
    public Area DeckArea => Area.FromSquareMeters(Deck().Value);

    /// <summary>Floor, walls, deck and apron.</summary>
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
    /// <remarks>The mouth stands in the middle of the deck; neither drain nor overflow is cut out.</remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        double x = Measurements.DeckLength.Meters / 2;
        double y = Measurements.DeckWidth.Meters / 2;
        double top = basin.Depth;
        SuperellipseBasin shape = basin;
        return new Tessellation(chordTolerance)
            .Add(PlanCurve.Eighths, [.. basin.Bands(), SurfaceBand.Ruled(
                FixtureZoneKind.Rim, turn => shape.Point(true, turn), turn => PlanCurve.Box(x, y, 2 / shape.MouthN, top, turn))])
            .AddFaces(SurfaceBand.Upright(FixtureZoneKind.Apron, x, y, -x, y, top - Measurements.ApronHeight.Meters, top)).Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings() => PatchLedger.Write("Oval tub", Patches, [basin.MouthArea], [Edge], basin.Capacity(basin.Depth));

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(OvalTub? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>oval tub 1676.4 mm × 914.4 mm: 3.1 m² coated, 237.7 L to the rim</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num Deck(Trace? t = null) => t.Area("deck", "A_deck", (Along(t) * Across(t)) - basin.MouthArea(t));

    private Num Apron(Trace? t = null) => t.Area("apron", "A_apron", Along(t) * Down(t));

    private Num Edge(Trace? t = null) =>
        t.Edge((2 * (Along(t) + Across(t) + Down(t))) + PlaneShapes.Circle(AcrossDrain(t)) + PlaneShapes.Circle(AcrossOverflow(t)));

    private Num Along(Trace? t) => t.Tape("L_o", Measurements.DeckLength);

    private Num Across(Trace? t) => t.Tape("W_o", Measurements.DeckWidth);

    private Num Down(Trace? t) => t.Tape("h_a", Measurements.ApronHeight);

    private Num AcrossDrain(Trace? t) => t.Tape("D_d", Measurements.DrainDiameter);

    private Num AcrossOverflow(Trace? t) => t.Tape("D_o", Measurements.OverflowDiameter);

    private double Level(Length freeboard) => basin.Depth - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, basin.Depth));
}
