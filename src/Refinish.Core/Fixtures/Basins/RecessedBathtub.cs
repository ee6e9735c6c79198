using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A bathtub set into an alcove: inside walls as an exact ruled loft from a rounded-rectangle floor to a rounded-rectangle mouth,
/// a coved floor line, a level deck, and an apron. Total = walls + floor + cove + deck + apron − drain − overflow.
/// </summary>
/// <remarks>
/// With index t at the mouth and f at the floor: sides (a_t + a_f) √(H² + d_w²), a = L − 2r; each end (b_t + b_f)/2 · √(H² + d²), b = W − 2r;
/// each corner (r_t + r_f)/2 · ∫₀^{π/2} √(H² + n(θ)²) dθ, n = Δr + (d − Δr) cos θ + (d_w − Δr) sin θ. The cove changes the area by
/// −ρ (2 tan(φ/2) − φ) and the capacity by −ρ² (tan(φ/2) − φ/2) per length of the sharp floor line; <see cref="CoveOverestimate"/> says how much that over-reads at the corners
/// (0.07 % of the inside of the tub below, about 4 % in the worst of 60 000 random tubs, with coves as large as the corner).
/// Capacity by the prismoidal rule, which is exact here. Source: derived; the tests hold it to triangulation, to cones and to prisms.
/// The drain is taken as a flat disc in the floor, the overflow as one in the foot wall; the deck is level and the apron upright.
/// </remarks>
/// <example><code>
/// RecessedBathtub tub = new(tape);                                        // the five-foot tub of RecessedBathtubMeasurements
/// double squareFeet = tub.CoatedArea.SquareFeet;                          // 27.69
/// double gallons = tub.CapacityBelowRim(Length.FromInches(3)).UsGallons;  // 42.89
/// </code></example>
public sealed record RecessedBathtub : IFixture
{
    private readonly RuledBasin basin;
    private readonly double coated;

    /// <summary>Works a bathtub out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public RecessedBathtub(RecessedBathtubMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements, nameof(measurements));
        measurements.CheckConsistency();
        basin = measurements.Basin;
        double cove = basin.CoveArea;
        coated = FloorZone(cove) + WallZone(basin.Walls, cove) + Deck + Apron + Flange;
    }

    /// <summary>What the tape gave.</summary>
    public RecessedBathtubMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => "recessed bathtub " + Measure.Length.Format(Measurements.OverallLength.Meters) + " × " + Measure.Length.Format(Measurements.OverallWidth.Meters);

    /// <summary>Floor, walls, rim (the deck), apron and tiling flange; half of the cove belongs to the floor and half to the walls.</summary>
    public IReadOnlyList<FixtureZone> Zones
    {
        get
        {
            double cove = basin.CoveArea;
            double floor = FloorZone(cove);
            double wall = WallZone(basin.Walls, cove);
            return FixtureZone.Present(
                FixtureZone.Of(FixtureZoneKind.Floor, floor, basin.FloorTilt / floor),
                FixtureZone.Of(FixtureZoneKind.Wall, wall, WallTilt / wall),
                FixtureZone.Level(FixtureZoneKind.Rim, Deck),
                FixtureZone.Upright(FixtureZoneKind.Apron, Apron),
                FixtureZone.Upright(FixtureZoneKind.Flange, Flange));
        }
    }

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(coated);

    /// <summary>The deck's three edges at the tile, the apron's foot and two ends (without an apron, the deck's front edge), the flange's two ends, and the rings of drain and overflow.</summary>
    public Length MaskedEdge => Length.FromMeters(
        (2 * (Measurements.OverallLength.Meters + Measurements.OverallWidth.Meters + Measurements.ApronHeight.Meters + Measurements.TilingFlangeHeight.Meters))
        + PlaneShapes.Circle(Measurements.DrainDiameter.Meters)
        + PlaneShapes.Circle(Measurements.OverflowDiameter.Meters));

    /// <summary>The water it holds up to the rim; a tub's label usually gives it to the overflow, see <see cref="CapacityBelowRim"/>.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters(basin.Capacity(basin.Depth));

    /// <summary>The floor inside the sharp floor line, drain not taken off.</summary>
    public Area FloorArea => Area.FromSquareMeters(basin.FloorArea);

    /// <summary>Both side walls between the corners.</summary>
    public Area SideWallArea => Area.FromSquareMeters(basin.Sides);

    /// <summary>The backrest between the corners.</summary>
    public Area HeadWallArea => Area.FromSquareMeters(basin.Head);

    /// <summary>The drain end between the corners, overflow not taken off.</summary>
    public Area FootWallArea => Area.FromSquareMeters(basin.Foot);

    /// <summary>The four rounded corners.</summary>
    public Area CornerWallArea => Area.FromSquareMeters(basin.Corners);

    /// <summary>Sides, head, foot and corners down to the sharp floor line.</summary>
    public Area WallArea => Area.FromSquareMeters(basin.Walls);

    /// <summary>What the cove changes: zero or negative, because it cuts the sharp line short.</summary>
    public Area CoveCorrection => Area.FromSquareMeters(basin.CoveArea);

    /// <summary>By how much the area over-reads because the cove is taken along the sharp floor line: the stated error of <see cref="CoatedArea"/>, to second order in the cove radius.</summary>
    public Area CoveOverestimate => Area.FromSquareMeters(basin.CoveOverestimate);

    /// <summary>The whole inside, drain and overflow not taken off.</summary>
    public Area InteriorArea => Area.FromSquareMeters(basin.Interior);

    /// <summary>No basin of this capacity and mouth has less: the larger of the half-sphere of equal capacity, (18 π V²)^(1/3), and the mouth itself.</summary>
    public Area LeastInteriorArea => Area.FromSquareMeters(Math.Max(HalfSphere, basin.RimArea));

    /// <summary>No basin inside the box over the mouth has more: L_t W_t + 2 (L_t + W_t) H.</summary>
    public Area GreatestInteriorArea => Area.FromSquareMeters(
        (basin.RimLength * basin.RimWidth) + (2 * (basin.RimLength + basin.RimWidth) * basin.Depth));

    /// <summary>The level deck round the mouth.</summary>
    public Area DeckArea => Area.FromSquareMeters(Deck);

    /// <summary>The front panel.</summary>
    public Area ApronArea => Area.FromSquareMeters(Apron);

    /// <summary>The tiling flange, where it shows.</summary>
    public Area FlangeArea => Area.FromSquareMeters(Flange);

    /// <summary>Drain and overflow together.</summary>
    public Area OpeningArea => Area.FromSquareMeters(Drain + Overflow);

    internal RuledBasin Basin => basin;

    internal double Deck => (Measurements.OverallLength.Meters * Measurements.OverallWidth.Meters) - basin.RimArea;

    internal double Apron => Measurements.OverallLength.Meters * Measurements.ApronHeight.Meters * Measurements.ApronProfileFactor;

    internal double Flange => (Measurements.OverallLength.Meters + (2 * Measurements.OverallWidth.Meters)) * Measurements.TilingFlangeHeight.Meters;

    internal double Drain => PlaneShapes.Disc(Measurements.DrainDiameter.Meters);

    internal double Overflow => PlaneShapes.Disc(Measurements.OverflowDiameter.Meters);

    internal double WallTilt => basin.WallTilt - (Overflow * RuledBasin.Slope(basin.FootRun, basin.Depth));

    private double HalfSphere
    {
        get
        {
            double water = basin.Capacity(basin.Depth);
            return Math.Pow(18 * Math.PI * (water * water), 1.0 / 3);
        }
    }

    /// <summary>The water up to a level below the rim, such as the overflow: the practitioner's own check of the tape against the tub's label.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the depth less the cove radius.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) => Volume.FromCubicMeters(basin.Capacity(Level(freeboard)));

    /// <summary>Floor, side walls, ends, corners, the cove's change (negative, half floor and half wall), deck, apron and flange.</summary>
    public IReadOnlyList<SurfacePatch> Patches => RecessedBathtubShape.Patches(this);

    /// <inheritdoc/>
    /// <remarks>
    /// The cove is drawn as the surface of a ball that rolls along floor and walls, exactly, so that the mesh has less area than the patches by
    /// <see cref="CoveOverestimate"/> (to second order in the cove radius). A ball too large for a corner would fold its surface there; then the arcs stand square
    /// to the floor line, and the mesh of such a corner can be off by about 1 % of the inside (1.4 % in the worst of 60 random tubs). The mouth stands in the middle of the deck and the drain in the middle of the floor;
    /// neither drain nor overflow is cut out.
    /// </remarks>
    public TriangleMesh Tessellate(Length chordTolerance) => RecessedBathtubShape.Mesh(this, new Tessellation(chordTolerance));

    /// <inheritdoc/>
    public Workings Workings() => RecessedBathtubWorkings.Of(this);

    /// <summary>How the capacity up to a level below the rim follows.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the depth less the cove radius.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Workings CapacityWorkings(Length freeboard) => RecessedBathtubWorkings.Capacity(basin, Level(freeboard));

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>recessed bathtub 1524 mm × 762 mm: 2.5724 m² coated, 219.8 L to the rim</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}: {1} coated, {2} to the rim",
        Description,
        Measure.Area.Format(coated),
        Measure.Capacity.Format(basin.Capacity(basin.Depth)));

    private double FloorZone(double cove) => basin.FloorArea + (cove / 2) - Drain;

    private double WallZone(double walls, double cove) => walls + (cove / 2) - Overflow;

    // Above the cove, so that all of the cove is under water.
    private double Level(Length freeboard) =>
        basin.Depth - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, basin.Depth - basin.Cove), nameof(freeboard));
}
