using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A shower pan in an alcove: floor, upright walls at the back and both ends with a level ledge, and a curb along the front.
/// </summary>
/// <remarks>
/// Floor L W k − drain; walls (L + 2 W) h; ledge g (L + 2 g) + 2 g W; curb inside L h_i, top, outside and threshold (L + 2 g)(t + h_o +
/// w_t). Source: elementary plane geometry. The fall of the floor towards the drain is left out: at 1 in 48 it adds 0.02 %.
/// </remarks>
/// <example><code>
/// ShowerPan pan = new(tape);                        // the pan of ShowerPanMeasurements
/// double squareFeet = pan.CoatedArea.SquareFeet;    // 13.73
/// </code></example>
public sealed record ShowerPan : IFixture
{
    private static readonly Source Mean = Source.Derived("slope weighted by area over faces and top");

    private readonly double length;
    private readonly double width;
    private readonly double ledge;

    /// <summary>Works a pan out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public ShowerPan(ShowerPanMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
        length = measurements.FloorLength.Meters;
        width = measurements.FloorWidth.Meters;
        ledge = measurements.LedgeWidth.Meters;
    }

    /// <summary>What the tape gave.</summary>
    public ShowerPanMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => "shower pan, " + Measurements;

    /// <summary>Floor, walls, rim (the ledge) and curb, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= FixtureZone.Present(
        FixtureZone.Level(FixtureZoneKind.Floor, Floor().Value),
        FixtureZone.Upright(FixtureZoneKind.Wall, Walls().Value),
        FixtureZone.Level(FixtureZoneKind.Rim, Ledge().Value),
        FixtureZone.Of(FixtureZoneKind.Curb, Curb().Value, HasCurb ? CurbSlope().Value : 0));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Coated().Value);

    /// <summary>
    /// The ledge's back and two ends along the wall, the foot and two ends of curb and threshold, and the ring of the drain.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Edge().Value);

    /// <summary>The water it holds up to the lower of walls and curb; <see langword="null"/> for a pan without one of them.</summary>
    public Volume? WaterCapacity => Water().Value is > 0 and double water ? Volume.FromCubicMeters(water) : null;

    /// <summary>The floor, drain taken off.</summary>
    public Area FloorArea => Area.FromSquareMeters(Floor().Value);

    /// <summary>The upright walls inside.</summary>
    public Area WallArea => Area.FromSquareMeters(Walls().Value);

    /// <summary>The level ledge.</summary>
    public Area LedgeArea => Area.FromSquareMeters(Ledge().Value);

    /// <summary>The curb's inside, top and outside, with the threshold in front of it.</summary>
    public Area CurbArea => Area.FromSquareMeters(Curb().Value);

    /// <summary>Floor, walls, ledge, the curb's faces, its top and the threshold.</summary>
    public IReadOnlyList<SurfacePatch> Patches => field ??= PatchLedger.Present(
        new(
            t => t.Area("floor", "A_f", Along(t) * Across(t)), FixtureZoneKind.Floor, factor: Measurements.TextureFactor,
            openings: PlaneShapes.Disc(Drain(null)).Value),
        new(Walls, FixtureZoneKind.Wall, SurfacePatch.Upright),
        new(Ledge, FixtureZoneKind.Rim),
        new(Faces, FixtureZoneKind.Curb, SurfacePatch.Upright),
        new(t => t.Area("curb top", "A_top", Front(t) * Top(t)), FixtureZoneKind.Curb),
        new(t => t.Area("threshold", "A_thr", Front(t) * Threshold(t)), FixtureZoneKind.Curb));

    private bool HasCurb => Curb().Value > 0;

    /// <inheritdoc/>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        double x = length / 2;
        double f = Front().Value / 2;
        double h = Measurements.WallHeight.Meters;
        double c = Measurements.CurbInsideHeight.Meters;
        double t = -Measurements.CurbTopWidth.Meters;
        double foot = c - Measurements.CurbOutsideHeight.Meters;
        return new Tessellation(chordTolerance).AddFaces(
            SurfaceBand.Level(FixtureZoneKind.Floor, -x, 0, x, width, 0),
            SurfaceBand.Upright(FixtureZoneKind.Wall, -x, width, x, width, 0, h),
            SurfaceBand.Upright(FixtureZoneKind.Wall, -x, 0, -x, width, 0, h),
            SurfaceBand.Upright(FixtureZoneKind.Wall, x, width, x, 0, 0, h),
            SurfaceBand.Level(FixtureZoneKind.Rim, -f, width, f, width + ledge, h),
            SurfaceBand.Level(FixtureZoneKind.Rim, -f, 0, -x, width, h),
            SurfaceBand.Level(FixtureZoneKind.Rim, x, 0, f, width, h),
            SurfaceBand.Upright(FixtureZoneKind.Curb, x, 0, -x, 0, 0, c),
            SurfaceBand.Level(FixtureZoneKind.Curb, -f, t, f, 0, c),
            SurfaceBand.Upright(FixtureZoneKind.Curb, -f, t, f, t, foot, c),
            SurfaceBand.Level(FixtureZoneKind.Curb, -f, t - Measurements.ThresholdWidth.Meters, f, t, foot)).Mesh();
    }

    /// <inheritdoc/>
    public Workings Workings() => Trace.Of(
        "Shower pan",
        [
            Floor, t => ZoneSteps.Level(t, "Floor", "φ_floor"), Walls, t => ZoneSteps.Upright(t, "Wall", "φ_wall"),
            Ledge, t => ZoneSteps.Level(t, "Rim", "φ_rim"), Front, Faces, Curb, .. Trace.When(HasCurb, CurbSlope),
            Coated, Edge, .. Trace.When(WaterCapacity is not null, Water),
        ]);

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(ShowerPan? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is and what gets coated, in one line, in metric units.</summary>
    /// <returns>Text such as <c>shower pan, floor 838.2 mm × 838.2 mm: 1.3105 m² coated</c>.</returns>
    public override string ToString() => Description + ": " + Measure.Area.Format(CoatedArea.SquareMeters) + " coated";

    private Num Floor(Trace? t = null) => t.Area("zone Floor", "Z_floor",
        (Along(t) * Across(t) * t.Given("k_f", Measurements.TextureFactor, Measure.Number)) - PlaneShapes.Disc(Drain(t)));

    private Num Walls(Trace? t = null) => t.Area("zone Wall", "Z_wall", (Along(t) + (2 * Across(t))) * Wall(t));

    private Num Ledge(Trace? t = null) =>
        t.Area("ledge: zone Rim", "Z_rim", (Shelf(t) * (Along(t) + (2 * Shelf(t)))) + (2 * Shelf(t) * Across(t)));

    private Num Front(Trace? t = null) =>
        t.Step("length of the curb", "L_c", Measure.Length, PlaneShapes.Elementary, Along(t) + (2 * Shelf(t)));

    private Num Faces(Trace? t = null) => t.Area("curb, inside and outside", "A_face", (Along(t) * Inside(t)) + (Front(t) * Outside(t)));

    private Num Curb(Trace? t = null) => t.Area("zone Curb", "Z_curb", Faces(t) + (Front(t) * (Top(t) + Threshold(t))));

    // Faces upright, top level, weighted by area.
    private Num CurbSlope(Trace? t = null) =>
        t.Step("mean slope of zone Curb", "φ_curb", Measure.Angle, Mean, t.Pi() / 2 * Faces(t) / Curb(t));

    private Num Coated(Trace? t = null) => t.Area("coated area", "A", Floor(t) + Walls(t) + Ledge(t) + Curb(t));

    private Num Edge(Trace? t = null) =>
        t.Edge((2 * (Front(t) + Across(t) + Shelf(t) + Top(t) + Outside(t) + Threshold(t))) + PlaneShapes.Circle(Drain(t)));

    private Num Water(Trace? t = null) => t.Step("water up to the lower of walls and curb", "V", Measure.Capacity, PlaneShapes.Elementary,
        Along(t) * Across(t) * Num.Min(Wall(t), Inside(t)));

    private Num Along(Trace? t) => t.Given("L", length, Measure.Length);

    private Num Across(Trace? t) => t.Given("W", width, Measure.Length);

    private Num Shelf(Trace? t) => t.Given("g", ledge, Measure.Length);

    private Num Wall(Trace? t) => t.Tape("h_w", Measurements.WallHeight);

    private Num Inside(Trace? t) => t.Tape("h_i", Measurements.CurbInsideHeight);

    private Num Top(Trace? t) => t.Tape("t_c", Measurements.CurbTopWidth);

    private Num Threshold(Trace? t) => t.Tape("w_t", Measurements.ThresholdWidth);

    private Num Outside(Trace? t) => t.Tape("h_o", Measurements.CurbOutsideHeight);

    private Num Drain(Trace? t) => t.Tape("D_d", Measurements.DrainDiameter);
}
