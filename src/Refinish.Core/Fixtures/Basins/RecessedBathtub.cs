using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A bathtub set into an alcove: inside walls as an exact ruled loft from a rounded-rectangle floor to a rounded-rectangle mouth, a coved
/// floor line, a level deck, and an apron. Total = walls + floor + cove + deck + apron − drain − overflow.
/// </summary>
/// <remarks>
/// With index t at the mouth and f at the floor: sides (a_t + a_f) √(H² + d_w²), a = L − 2r; each end (b_t + b_f)/2 · √(H² + d²), b = W −
/// 2r; each corner (r_t + r_f)/2 · ∫₀^{π/2} √(H² + n(θ)²) dθ, n = Δr + (d − Δr) cos θ + (d_w − Δr) sin θ. The cove changes the area by −ρ
/// (2 tan(φ/2) − φ) and the capacity by −ρ² (tan(φ/2) − φ/2) per length of the sharp floor line; <see cref="CoveOverestimate"/> says how
/// much that over-reads at the corners (0.07 % of the inside of the tub below, about 4 % in the worst of 60 000 random tubs, with coves as
/// large as the corner). Capacity by the prismoidal rule, which is exact here. Source: derived; the tests hold it to triangulation, to
/// cones and to prisms. The drain is taken as a flat disc in the floor, the overflow as one in the foot wall; the deck is level and the
/// apron upright.
/// </remarks>
/// <example><code>
/// RecessedBathtub tub = new(tape);                                        // the five-foot tub of RecessedBathtubMeasurements
/// double squareFeet = tub.CoatedArea.SquareFeet;                          // 27.69
/// double gallons = tub.CapacityBelowRim(Length.FromInches(3)).UsGallons;  // 42.89
/// </code></example>
public sealed record RecessedBathtub : IFixture
{
    private static readonly Source Mean = Source.Derived("slope weighted by area over the patches of the zone");
    private static readonly Source Isoperimetric =
        Source.Derived("isoperimetric inequality over a plane mouth; a surface is no smaller than its projection");

    private static readonly Source Boxed = Source.Derived("a convex basin has no more surface than the box around it");

    private readonly RuledBasin basin;
    private readonly double cove;
    private readonly double coated;

    /// <summary>Works a bathtub out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public RecessedBathtub(RecessedBathtubMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
        basin = measurements.Basin;
        cove = basin.CoveArea().Value;
        coated = Coated().Value;
    }

    /// <summary>What the tape gave.</summary>
    public RecessedBathtubMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => "recessed bathtub " + Measure.Length.Format(Measurements.OverallLength.Meters)
        + " × " + Measure.Length.Format(Measurements.OverallWidth.Meters);

    /// <summary>
    /// Floor, walls, rim (the deck), apron and tiling flange; half of the cove belongs to the floor and half to the walls.
    /// </summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= FixtureZone.Present(
        FixtureZone.Of(FixtureZoneKind.Floor, FloorZone().Value, FloorSlope().Value),
        FixtureZone.Of(FixtureZoneKind.Wall, WallZone().Value, WallSlope().Value),
        FixtureZone.Level(FixtureZoneKind.Rim, Deck().Value),
        FixtureZone.Upright(FixtureZoneKind.Apron, Apron().Value),
        FixtureZone.Upright(FixtureZoneKind.Flange, Flange().Value));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(coated);

    /// <summary>
    /// The deck's three edges at the tile, the apron's foot and two ends (without an apron, the deck's front edge), the flange's two ends,
    /// and the rings of drain and overflow.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Edge().Value);

    /// <summary>
    /// The water it holds up to the rim; a tub's label usually gives it to the overflow, see <see cref="CapacityBelowRim"/>.
    /// </summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters(Full);

    /// <summary>The floor inside the sharp floor line, drain not taken off.</summary>
    public Area FloorArea => Area.FromSquareMeters(Floor().Value);

    /// <summary>Both side walls between the corners.</summary>
    public Area SideWallArea => Area.FromSquareMeters(basin.SideWalls().Value);

    /// <summary>The backrest between the corners.</summary>
    public Area HeadWallArea => Area.FromSquareMeters(basin.HeadWall().Value);

    /// <summary>The drain end between the corners, overflow not taken off.</summary>
    public Area FootWallArea => Area.FromSquareMeters(basin.FootWall().Value);

    /// <summary>The four rounded corners.</summary>
    public Area CornerWallArea => Area.FromSquareMeters(basin.CornerWalls().Value);

    /// <summary>Sides, head, foot and corners down to the sharp floor line.</summary>
    public Area WallArea => Area.FromSquareMeters(Walls().Value);

    /// <summary>What the cove changes: zero or negative, because it cuts the sharp line short.</summary>
    public Area CoveCorrection => Area.FromSquareMeters(cove);

    /// <summary>
    /// By how much the area over-reads because the cove is taken along the sharp floor line: the stated error of <see cref="CoatedArea"/>,
    /// to second order in the cove radius.
    /// </summary>
    public Area CoveOverestimate => Area.FromSquareMeters(basin.CoveOverestimate().Value);

    /// <summary>The whole inside, drain and overflow not taken off.</summary>
    public Area InteriorArea => Area.FromSquareMeters(Inside().Value);

    /// <summary>
    /// No basin of this capacity and mouth has less: the larger of the half-sphere of equal capacity, (18 π V²)^(1/3), and the mouth
    /// itself.
    /// </summary>
    public Area LeastInteriorArea => Area.FromSquareMeters(Least().Value);

    /// <summary>No basin inside the box over the mouth has more: L_t W_t + 2 (L_t + W_t) H.</summary>
    public Area GreatestInteriorArea => Area.FromSquareMeters(Greatest().Value);

    /// <summary>The level deck round the mouth.</summary>
    public Area DeckArea => Area.FromSquareMeters(Deck().Value);

    /// <summary>The front panel.</summary>
    public Area ApronArea => Area.FromSquareMeters(Apron().Value);

    /// <summary>The tiling flange, where it shows.</summary>
    public Area FlangeArea => Area.FromSquareMeters(Flange().Value);

    /// <summary>Drain and overflow together.</summary>
    public Area OpeningArea => Area.FromSquareMeters(Openings().Value);

    private double Full => basin.Water(basin.Depth).Value;

    private bool HasFlange => Measurements.TilingFlangeHeight > Length.Zero;

    /// <summary>
    /// The water up to a level below the rim, such as the overflow: the practitioner's own check of the tape against the tub's label.
    /// </summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the depth less the cove radius.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) => Volume.FromCubicMeters(basin.Water(Level(freeboard)).Value);

    /// <summary>Floor, side walls, ends, corners, the cove's change (negative, half floor and half wall), deck, apron and flange.</summary>
    public IReadOnlyList<SurfacePatch> Patches => field ??= PatchLedger.Present(
        [
            new(Floor, FixtureZoneKind.Floor, openings: Drain().Value),
            .. basin.WallPatches(Overflow().Value),
            new(
                t => t.Step("floor's half of the cove's change", "A_cove/2", Measure.Area, RuledBasin.CoveArc, Cove(t) / 2),
                FixtureZoneKind.Floor, relativeError: RuledBasin.CornerError),
            new(
                t => t.Step("wall's half of the cove's change", "A_cove/2", Measure.Area, RuledBasin.CoveArc, Cove(t) / 2),
                FixtureZoneKind.Wall, relativeError: RuledBasin.CornerError),
            new(Deck, FixtureZoneKind.Rim),
            new(
                t => t.Area("apron", "A_apron", AlongDeck(t) * DownApron(t)), FixtureZoneKind.Apron,
                SurfacePatch.Upright, factor: Measurements.ApronProfileFactor),
            new(Flange, FixtureZoneKind.Flange, SurfacePatch.Upright),
        ]);

    /// <inheritdoc/>
    /// <remarks>
    /// The cove is drawn as the surface of a ball that rolls along floor and walls, exactly, so that the mesh has less area than the
    /// patches by <see cref="CoveOverestimate"/> (to second order in the cove radius). A ball too large for a corner would fold its surface
    /// there; then the arcs stand square to the floor line, and the mesh of such a corner can be off by about 1 % of the inside (1.4 % in
    /// the worst of 60 random tubs). The mouth stands in the middle of the deck and the drain in the middle of the floor; neither drain nor
    /// overflow is cut out.
    /// </remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        Tessellation mesh = new(chordTolerance);
        RuledBasinSurface inside = new(basin);
        double length = Measurements.OverallLength.Meters;
        double width = Measurements.OverallWidth.Meters;
        double x = length / 2;
        double y = width / 2;
        double top = basin.Depth;
        double foot = top - Measurements.ApronHeight.Meters;
        double crown = top + Measurements.TilingFlangeHeight.Meters;
        SurfaceBand deck = SurfaceBand.Ruled(
            FixtureZoneKind.Rim, inside.Rim, u => PlanCurve.RoundedRectangle(length, width, 0, 0, 0, top, u));
        mesh.Add(PlanCurve.Pieces, [.. inside.Bands(), deck]);

        // The apron stands at +y, towards the room; the flange faces the tub.
        mesh.AddFaces(SurfaceBand.Face(FixtureZoneKind.Apron, new(x, y, foot), new(-x, y, foot), new(-x, y, top), new(x, y, top)));
        if (crown > top)
        {
            mesh.AddFaces(
                SurfaceBand.Face(FixtureZoneKind.Flange, new(x, -y, top), new(-x, -y, top), new(-x, -y, crown), new(x, -y, crown)),
                SurfaceBand.Face(FixtureZoneKind.Flange, new(-x, -y, top), new(-x, y, top), new(-x, y, crown), new(-x, -y, crown)),
                SurfaceBand.Face(FixtureZoneKind.Flange, new(x, y, top), new(x, -y, top), new(x, -y, crown), new(x, y, crown)));
        }

        return mesh.Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings() => Trace.Of(
        "Recessed bathtub",
        [basin.Capacity(basin.Depth)],
        [
            .. basin.RunsAndSlopes, Walls, Floor, Mouth, Cove, basin.CoveOverestimate, Inside, Least, Greatest, Openings, FloorZone,
            basin.CornerSlopedSlant, basin.LineSlopeSquared, basin.LineSlopeTangent, FloorSlope, WallZone, WallSlope,
            Deck, t => ZoneSteps.Level(t, "Rim", "φ_rim"), Apron, t => ZoneSteps.Upright(t, "Apron", "φ_apron"),
            .. Trace.When(HasFlange, Flange, t => ZoneSteps.Upright(t, "Flange", "φ_flange")), Coated, Edge,
        ]);

    /// <summary>How the capacity up to a level below the rim follows.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the depth less the cove radius.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Workings CapacityWorkings(Length freeboard) => basin.Capacity(Level(freeboard));

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(RecessedBathtub? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>recessed bathtub 1524 mm × 762 mm: 2.5724 m² coated, 219.8 L to the rim</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num Walls(Trace? t = null) =>
        t.Area("walls down to the sharp floor line", "A_wall", basin.SideWalls(t) + basin.HeadWall(t) + basin.FootWall(t)
            + basin.CornerWalls(t));

    private Num Floor(Trace? t = null) => t.Area("floor inside the sharp floor line", "A_f", basin.FloorArea(t));

    private Num Mouth(Trace? t = null) => t.Area("mouth", "A_t", basin.RimArea(t));

    private Num Cove(Trace? t) => t is null
        ? cove : t.Step("change by the cove", "A_cove", Measure.Area, RuledBasin.CoveArc, basin.CoveArea(t));

    private Num Inside(Trace? t = null) => t.Area("whole inside", "A_in", Walls(t) + Floor(t) + Cove(t));

    private Num Least(Trace? t = null)
    {
        Num halfSphere = Num.Power(18 * t.Pi() * Num.Square(t.Given("V", Full, Measure.Capacity)), t.Number(1) / 3);
        return t.Step("least inside of that capacity and mouth", "A_min", Measure.Area, Isoperimetric, Num.Max(halfSphere, Mouth(t)));
    }

    private Num Greatest(Trace? t = null) => t.Step("inside of the box over the mouth", "A_max", Measure.Area, Boxed, basin.Box(t));

    private Num Drain(Trace? t = null) => t.Area("drain", "A_d", PlaneShapes.Disc(AcrossDrain(t)));

    private Num Overflow(Trace? t = null) => t.Area("overflow", "A_o", PlaneShapes.Disc(AcrossOverflow(t)));

    private Num Openings(Trace? t = null) => t.Area("openings", "A_open", Drain(t) + Overflow(t));

    private Num FloorZone(Trace? t = null) =>
        t.Area("zone Floor, with its half of the cove", "Z_floor", Floor(t) + (Cove(t) / 2) - Drain(t));

    private Num FloorSlope(Trace? t = null) =>
        t.Step("mean slope of zone Floor", "φ_floor", Measure.Angle, Mean, basin.FloorTilt(t) / FloorZone(t));

    private Num WallZone(Trace? t = null) =>
        t.Area("zone Wall, with its half of the cove", "Z_wall", Walls(t) + (Cove(t) / 2) - Overflow(t));

    private Num WallSlope(Trace? t = null) => t.Step("mean slope of zone Wall", "φ_wall", Measure.Angle, Mean,
        (basin.SideTilt(basin.SideWalls(t), t) + (basin.HeadWall(t) * basin.HeadSlope(t)) + (basin.FootWall(t) * basin.FootSlope(t))
            + basin.CornerTilt(t) + basin.WallCoveTilt(t) - (Overflow(t) * basin.FootSlope(t))) / WallZone(t));

    private Num Deck(Trace? t = null) => t.Area("deck, level: zone Rim", "A_deck", (AlongDeck(t) * AcrossDeck(t)) - Mouth(t));

    private Num Apron(Trace? t = null) => t.Area(
        "apron, upright: zone Apron", "A_apron", AlongDeck(t) * DownApron(t) * t.Given("k_a", Measurements.ApronProfileFactor, Measure.Number));

    private Num Flange(Trace? t = null) =>
        t.Area("tiling flange at both ends and the back: zone Flange", "A_flange", (AlongDeck(t) + (2 * AcrossDeck(t))) * UpFlange(t));

    private Num Coated(Trace? t = null)
    {
        Num zones = FloorZone(t) + WallZone(t) + Deck(t) + Apron(t);
        return t.Area("coated area", "A", HasFlange ? zones + Flange(t) : zones);
    }

    private Num Edge(Trace? t = null) => t.Edge((2 * (AlongDeck(t) + AcrossDeck(t) + DownApron(t) + (HasFlange ? UpFlange(t) : 0)))
            + PlaneShapes.Circle(AcrossDrain(t)) + PlaneShapes.Circle(AcrossOverflow(t)));

    private Num AlongDeck(Trace? t) => t.Tape("L_o", Measurements.OverallLength);

    private Num AcrossDeck(Trace? t) => t.Tape("W_o", Measurements.OverallWidth);

    private Num DownApron(Trace? t) => t.Tape("h_a", Measurements.ApronHeight);

    private Num UpFlange(Trace? t) => t.Tape("h_t", Measurements.TilingFlangeHeight);

    private Num AcrossDrain(Trace? t) => t.Tape("D_d", Measurements.DrainDiameter);

    private Num AcrossOverflow(Trace? t) => t.Tape("D_o", Measurements.OverflowDiameter);

    // Above the cove, so that all of the cove is under water.
    private double Level(Length freeboard) =>
        basin.Depth - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, basin.Depth - basin.Cove));
}
