using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A sink on a column: the bowl as the lower half of an ellipsoid, the rim as the outline less the bowl's mouth, an upright outside, the
/// column as a cone's frustum.
/// </summary>
/// <remarks>
/// Bowl: 2π R_G(a²b², a²c², b²c²) with half axes a, b of the mouth and the depth c. Column: π/2 · (D₁ + D₂) √(h² + ((D₂ − D₁)/2)²) times
/// the share that is coated. The underside of the basin is not coated. Drain and overflow are taken as flat discs in the bowl, faucet holes
/// as discs in the rim. Without a column (height 0) and without a skirt it is a sink let into a counter, and the whole outline is taped.
/// Source: <see cref="Workings"/> names the source of each step; the tests hold the bowl to published areas of ellipsoids.
/// </remarks>
/// <example><code>
/// PedestalSink sink = new(tape);                   // the sink of PedestalSinkMeasurements
/// double bowl = sink.BowlArea.SquareInches;        // 313.67, drain and overflow not taken off
/// </code></example>
public sealed record PedestalSink : IFixture
{
    private static readonly Source Mean = Source.Derived("slope weighted by area over the half ellipsoid");
    private static readonly Source Slices = Source.Derived("slices of an ellipsoid");

    private readonly HalfEllipsoid bowl;
    private readonly double bowlArea;

    /// <summary>Works a sink out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public PedestalSink(PedestalSinkMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
        bowl = measurements.Bowl;
        bowlArea = bowl.Area().Value;
    }

    /// <summary>What the tape gave.</summary>
    public PedestalSinkMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description =>
        (HasColumn ? "pedestal sink " : "sink ") + Measure.Length.Format(Measurements.Outline.Length.Meters) + " × "
        + Measure.Length.Format(Measurements.Outline.Width.Meters);

    /// <summary>Bowl, rim, outside and column, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= FixtureZone.Present(
        FixtureZone.Of(FixtureZoneKind.Bowl, BowlZone().Value, BowlSlope().Value),
        FixtureZone.Level(FixtureZoneKind.Rim, Rim().Value),
        FixtureZone.Upright(FixtureZoneKind.Outside, Skirt().Value),
        FixtureZone.Of(FixtureZoneKind.Column, Column().Value, ColumnSlope().Value));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Coated().Value);

    /// <summary>
    /// The edge at the wall (the whole outline when there is no skirt), the coated girth of the column at the floor, and every hole.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Mask().Value);

    /// <summary>The water the bowl holds up to the rim: ⅔ π a b c.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters(Water(bowl.C).Value);

    /// <summary>The inside of the bowl, drain and overflow not taken off.</summary>
    public Area BowlArea => Area.FromSquareMeters(bowlArea);

    /// <summary>The rim round the bowl, faucet holes taken off.</summary>
    public Area RimArea => Area.FromSquareMeters(Rim().Value);

    /// <summary>The outside below the rim, the wall's side left out.</summary>
    public Area OutsideArea => Area.FromSquareMeters(Skirt().Value);

    /// <summary>The coated share of the column.</summary>
    public Area ColumnArea => Area.FromSquareMeters(Column().Value);

    private bool HasColumn => Measurements.ColumnHeight.Meters > 0;

    /// <summary>Bowl, rim, the outside (the wall's side counted as an opening) and column.</summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            double k = Measurements.SkirtProfileFactor;
            return field ??= PatchLedger.Present(
                new SurfacePatch(
                    Inside, FixtureZoneKind.Bowl, (t, area) => bowl.Tilt(t) / area, HalfEllipsoid.Error, openings: Openings(null).Value),
                new SurfacePatch(t => t.Area("rim", "A_rim", Ring(t)), FixtureZoneKind.Rim, openings: Holes(null).Value),
                new SurfacePatch(
                    t => t.Area("outside, all round", "A_out", Around(t) * SkirtHeight(t)), FixtureZoneKind.Outside, SurfacePatch.Upright,
                    factor: k, openings: (Contact(null) * SkirtHeight(null) * k).Value),
                new SurfacePatch(Column, FixtureZoneKind.Column, (t, _) => ColumnSlope(t)));
        }
    }

    /// <inheritdoc/>
    /// <remarks>
    /// The bowl's mouth stands in the middle of the outline, the outside goes all round, the column hangs below the bowl.
    /// </remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        PlanOutline outline = Measurements.Outline;
        double depth = bowl.C;
        double low = depth - Measurements.SkirtHeight.Meters;
        Func<double, MeshPoint> mouth = turn =>
            PlanCurve.Ellipse(Measurements.BowlLength.Meters, Measurements.BowlWidth.Meters, depth, turn);
        Func<double, MeshPoint> edge = turn => outline.Towards(turn, depth);
        Tessellation mesh = new(chordTolerance);
        mesh.Add(
            outline.Breaks(),
            BowlSurface.Inside(FixtureZoneKind.Bowl, mouth, depth),
            SurfaceBand.Ruled(FixtureZoneKind.Rim, mouth, edge),
            SurfaceBand.Ruled(FixtureZoneKind.Outside, edge, turn => outline.Towards(turn, low)));
        if (HasColumn)
        {
            double foot = -Measurements.ColumnHeight.Meters;
            double share = Measurements.ColumnShare.DecimalFractions;
            mesh.Add(
                [0, share * Math.PI / 2, share * Math.PI, share * 3 * Math.PI / 2, share * 2 * Math.PI],
                SurfaceBand.Ruled(FixtureZoneKind.Column, turn => PlanCurve.Circle(Measurements.ColumnTopDiameter.Meters, 0, turn), turn =>
                    PlanCurve.Circle(Measurements.ColumnBaseDiameter.Meters, foot, turn)));
        }

        return mesh.Mesh();
    }

    /// <summary>The water up to a level below the rim, such as the overflow.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the bowl's depth.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) => Volume.FromCubicMeters(Water(Level(freeboard)).Value);

    /// <inheritdoc/>
    public Workings Workings() => Trace.Of(
        "Pedestal sink", [Measurements.Outline.Workings(), WaterWorkings(bowl.C)], BowlZone, BowlSlope, Rim,
        t => ZoneSteps.Level(t, "Rim", "φ_rim"), Skirt, t => ZoneSteps.Upright(t, "Outside", "φ_out"), Column, ColumnSlope, Coated, Mask);

    /// <summary>How the capacity up to a level below the rim follows.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the bowl's depth.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Workings CapacityWorkings(Length freeboard) => WaterWorkings(Level(freeboard));

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(PedestalSink? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>pedestal sink 609.6 mm × 482.6 mm: 0.86786 m² coated, 11.815 L to the rim</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num Inside(Trace? t = null) =>
        t is null ? bowlArea : t.Step("bowl, half an ellipsoid", "S_bowl", Measure.Area, HalfEllipsoid.Carlson, bowl.Area(t));

    private Num Openings(Trace? t) => PlaneShapes.Disc(Drain(t)) + PlaneShapes.Disc(Overflow(t));

    private Num BowlZone(Trace? t = null) => t.Area("zone Bowl, drain and overflow taken off", "Z_bowl", Inside(t) - Openings(t));

    private Num BowlSlope(Trace? t = null) => t.Step("mean slope of zone Bowl", "φ_bowl", Measure.Angle, Mean, bowl.Tilt(t) / Inside(t));

    private Num Ring(Trace? t) => t.Given("A_o", Measurements.Outline.Area.SquareMeters, Measure.Area)
        - PlaneShapes.Ellipse(t.Tape("L_b", Measurements.BowlLength), t.Tape("W_b", Measurements.BowlWidth));

    private Num Holes(Trace? t) => HoleCount(t) * PlaneShapes.Disc(Hole(t));

    private Num Rim(Trace? t = null) => t.Area("zone Rim", "Z_rim", Ring(t) - Holes(t));

    private Num Skirt(Trace? t = null) => t.Area("zone Outside", "Z_out",
        (Around(t) - Contact(t)) * SkirtHeight(t) * t.Given("k_s", Measurements.SkirtProfileFactor, Measure.Number));

    private Num Column(Trace? t = null) => HasColumn
        ? t.Area("zone Column, a frustum", "Z_col", Num.Pi * (Top(t) + Foot(t)) / 2 * Slant(t) * Share(t)) : 0;

    // A column that narrows towards the floor leans over: more than upright.
    private Num ColumnSlope(Trace? t = null) => HasColumn
        ? t.Step("slope of zone Column", "φ_col", Measure.Angle, PlaneShapes.Elementary, 2 * Num.Arctan((Slant(t) - Taper(t)) / High(t)))
        : 0;

    private Num Coated(Trace? t = null)
    {
        Num upper = BowlZone(t) + Rim(t) + Skirt(t);
        return t.Area("coated area", "A", HasColumn ? upper + Column(t) : upper);
    }

    private Num Mask(Trace? t = null)
    {
        Num edge = Measurements.SkirtHeight.Meters > 0 ? Contact(t) : Around(t);
        edge = HasColumn ? edge + (PlaneShapes.Circle(Foot(t)) * Share(t)) : edge;
        return t.Edge(edge + PlaneShapes.Circle(Drain(t)) + PlaneShapes.Circle(Overflow(t)) + (HoleCount(t) * PlaneShapes.Circle(Hole(t))));
    }

    private Num Water(double level, Trace? t = null) => t.Step("water up to the level", "V", Measure.Capacity, Slices,
        bowl.Capacity(t.Given("h", level, Measure.Length), t));

    private Workings WaterWorkings(double level) => Trace.Of("Water in the bowl", t => Water(level, t));

    private double Level(Length freeboard) => bowl.C - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, bowl.C));

    private Num Slant(Trace? t) => Num.Sqrt(Num.Square(High(t)) + Num.Square(Taper(t)));

    private Num Taper(Trace? t) => (Foot(t) - Top(t)) / 2;

    private Num Around(Trace? t) => t.Tape("P_o", Measurements.Outline.Perimeter);

    private Num Contact(Trace? t) => t.Tape("L_w", Measurements.WallContact);

    private Num SkirtHeight(Trace? t) => t.Tape("h_s", Measurements.SkirtHeight);

    private Num Drain(Trace? t) => t.Tape("D_d", Measurements.DrainDiameter);

    private Num Overflow(Trace? t) => t.Tape("D_o", Measurements.OverflowDiameter);

    private Num Hole(Trace? t) => t.Tape("D_h", Measurements.FaucetHoleDiameter);

    private Num HoleCount(Trace? t) => t.Given("n_h", Measurements.FaucetHoles, Measure.Number);

    private Num Top(Trace? t) => t.Tape("D_1", Measurements.ColumnTopDiameter);

    private Num Foot(Trace? t) => t.Tape("D_2", Measurements.ColumnBaseDiameter);

    private Num High(Trace? t) => t.Tape("h_c", Measurements.ColumnHeight);

    private Num Share(Trace? t) => t.Given("s_c", Measurements.ColumnShare.DecimalFractions, Measure.Percent);
}
