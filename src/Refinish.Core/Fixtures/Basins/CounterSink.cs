using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A sink on, in or under a counter: the bowl as half an ellipsoid or a cap of a sphere, with the rim and the outside that its mounting
/// shows.
/// </summary>
/// <remarks>
/// Half ellipsoid: 2π R_G(a²b², a²c², b²c²), V = ⅔ π a b c. Cap of mouth radius a and depth h: π (a² + h²), V = π h (3 a² + h²) / 6. The
/// outside of a vessel is a bowl of the same kind, larger all round by the wall; the patch it stands on is taken off. Source: elementary
/// for the cap; <see cref="Workings"/> names the rest.
/// </remarks>
/// <example><code>
/// CounterSink vessel = new(tape);                   // the cap of CounterSinkMeasurements
/// double bowl = vessel.BowlArea.SquareInches;       // 296.1
/// </code></example>
public sealed record CounterSink : IFixture
{
    private static readonly Source Cap = Source.Derived("elementary: cap of a sphere");
    private static readonly Source Slices = Source.Derived("slices of the bowl");

    private readonly double inside;
    private readonly double outside;
    private readonly double coated;

    /// <summary>Works a sink out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> or the outline of a drop-in sink is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public CounterSink(CounterSinkMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements);
        measurements.CheckConsistency();
        inside = Bowl().Value;
        outside = IsVessel ? Shell().Value : 0;
        Patches = PatchLedger.Present(
            new SurfacePatch(t => t is null ? inside : Bowl(t), FixtureZoneKind.Bowl, Slope, Error, openings: Holes.Value),
            new SurfacePatch(Rim, FixtureZoneKind.Rim),

            // The outside hangs under its own slope: as steep, seen from below.
            new SurfacePatch(
                t => t is null ? outside : Shell(t), FixtureZoneKind.Outside, (t, shell) => t.Pi() - Slope(t, shell, Wall), Error,
                openings: PlaneShapes.Disc(Base(null)).Value));
        coated = PatchLedger.Coated(Patches);
    }

    /// <summary>What the tape gave.</summary>
    public CounterSinkMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description =>
        (Measurements.Mounting switch { SinkMounting.Vessel => "vessel sink ", SinkMounting.DropIn => "drop-in sink ", _ =>
        "undermount sink " })
        + Measure.Length.Format(Measurements.MouthLength.Meters) + " × " + Measure.Length.Format(Measurements.MouthWidth.Meters);

    /// <summary>Bowl, rim and outside, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => field ??= PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(coated);

    /// <summary>
    /// The cut edge of an undermount sink, the outline of a drop-in sink, the base of a vessel; and the rings of drain and overflow.
    /// </summary>
    public Length MaskedEdge => Length.FromMeters(Mask().Value);

    /// <summary>The water the bowl holds up to the rim.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters(Water(Depth).Value);

    /// <summary>The inside of the bowl, drain and overflow not taken off.</summary>
    public Area BowlArea => Area.FromSquareMeters(inside);

    /// <summary>The rim; 0 for an undermount sink.</summary>
    public Area RimArea => Area.FromSquareMeters(Rim().Value);

    /// <summary>The outside of a vessel, the patch it stands on not taken off; 0 for the others.</summary>
    public Area OutsideArea => Area.FromSquareMeters(outside);

    /// <summary>Bowl, rim and outside.</summary>
    public IReadOnlyList<SurfacePatch> Patches { get; }

    private bool IsVessel => Measurements.Mounting == SinkMounting.Vessel;

    private bool IsCap => Measurements.Shape == BowlShape.SphericalCap;

    private double Error => IsCap ? 0 : HalfEllipsoid.Error;

    private double HalfLength => Measurements.MouthLength.Meters / 2;

    private double HalfWidth => Measurements.MouthWidth.Meters / 2;

    private double Depth => Measurements.BowlDepth.Meters;

    private double Wall => Measurements.WallThickness.Meters;

    private Num Holes => PlaneShapes.Disc(Drain(null)) + PlaneShapes.Disc(Overflow(null));

    /// <summary>The water up to a level below the rim, such as the overflow.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the bowl's depth.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) => Volume.FromCubicMeters(Water(Level(freeboard)).Value);

    /// <summary>How the capacity up to a level below the rim follows.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the bowl's depth.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Workings CapacityWorkings(Length freeboard) => WaterWorkings(Level(freeboard));

    /// <inheritdoc/>
    /// <remarks>Drain, overflow and the patch a vessel stands on are not cut out, so that a vessel is a closed body.</remarks>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        double depth = Depth;
        SurfaceBand bowl = Surface(FixtureZoneKind.Bowl, 0, 0);
        Tessellation mesh = new(chordTolerance);
        Func<double, MeshPoint> mouth = turn => PlanCurve.Ellipse(2 * HalfLength, 2 * HalfWidth, depth, turn);
        return Measurements.Mounting switch
        {
            SinkMounting.Vessel => mesh.Add(
                PlanCurve.Turn,
                bowl,
                SurfaceBand.Ruled(FixtureZoneKind.Rim, mouth, turn =>
                    PlanCurve.Ellipse(2 * (HalfLength + Wall), 2 * (HalfWidth + Wall), depth, turn)),
                BowlSurface.Outside(Surface(FixtureZoneKind.Outside, Wall, -Wall))).Mesh(),
            SinkMounting.DropIn => mesh.Add(
                Measurements.Outline!.Breaks(),
                bowl,
                SurfaceBand.Ruled(FixtureZoneKind.Rim, mouth, turn => Measurements.Outline!.Towards(turn, depth))).Mesh(),
            _ => mesh.Add(PlanCurve.Turn, bowl).Mesh(), };
    }

    /// <inheritdoc/>
    public Workings Workings()
    {
        Workings water = WaterWorkings(Depth);
        return PatchLedger.Write(
            "Counter sink", Patches, [], [Mask],
            Measurements.Mounting == SinkMounting.DropIn ? [Measurements.Outline!.Workings(), water] : [water]);
    }

    /// <summary>Whether two are measured alike.</summary>
    /// <param name="other">The other one.</param>
    /// <returns><see langword="true"/> when their measurements are equal.</returns>
    public bool Equals(CounterSink? other) => other is not null && Measurements.Equals(other.Measurements);

    /// <inheritdoc/>
    public override int GetHashCode() => Measurements.GetHashCode();

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>vessel sink 406.4 mm × 406.4 mm: 0.42 m² coated, 10.488 L to the rim</c>.</returns>
    public override string ToString() => PatchLedger.Told(this);

    private Num A(Trace? t, double more = 0) => t.Given("a", HalfLength + more, Measure.Length);

    private Num B(Trace? t, double more = 0) => t.Given("b", HalfWidth + more, Measure.Length);

    private Num H(Trace? t, double more = 0) => t.Given("h", Depth + more, Measure.Length);

    private Num Drain(Trace? t) => t.Tape("D_d", Measurements.DrainDiameter);

    private Num Overflow(Trace? t) => t.Tape("D_o", Measurements.OverflowDiameter);

    private Num Base(Trace? t) => t.Tape("D_b", Measurements.BaseDiameter);

    private HalfEllipsoid Ellipsoid(double more) => new(HalfLength + more, HalfWidth + more, Depth + more);

    private Num Bowl(Trace? t = null) => IsCap
        ? t.Step("bowl, a cap of a sphere", "S_bowl", Measure.Area, Cap, CapArea(t, 0))
        : t.Step("bowl, half an ellipsoid", "S_bowl", Measure.Area, HalfEllipsoid.Carlson, Ellipsoid(0).Area(t));

    private Num Shell(Trace? t = null) => IsCap
        ? t.Step("outside, a cap of a sphere", "S_out", Measure.Area, Cap, CapArea(t, Wall))
        : t.Step("outside, half an ellipsoid", "S_out", Measure.Area, HalfEllipsoid.Carlson, Ellipsoid(Wall).Area(t));

    private Num CapArea(Trace? t, double more) => Num.Pi * (Num.Square(A(t, more)) + Num.Square(H(t, more)));

    private Num Slope(Trace? t, Num area) => Slope(t, area, 0);

    // A cap up to the half angle ω = 2 arctan(h/a) from its pole: mean slope ∫ θ sin θ dθ / ∫ sin θ dθ.
    private Num Slope(Trace? t, Num area, double more)
    {
        Num half = 2 * Num.Arctan(H(t, more) / A(t, more));
        return IsCap ? (Num.Sin(half) - (half * Num.Cos(half))) / (1 - Num.Cos(half)) : Ellipsoid(more).Tilt(t) / area;
    }

    private Num Rim(Trace? t = null)
    {
        Num mouth = PlaneShapes.Ellipse(2 * A(t), 2 * B(t));
        return t.Area("rim", "A_rim", Measurements.Mounting switch
        {
            SinkMounting.Vessel => PlaneShapes.Ellipse(2 * A(t, Wall), 2 * B(t, Wall)) - mouth,
            SinkMounting.DropIn => t.Given("A_o", Measurements.Outline!.Area.SquareMeters, Measure.Area) - mouth,
            _ => 0,
        });
    }

    private Num Mask(Trace? t = null)
    {
        Num line = Measurements.Mounting switch
        {
            SinkMounting.Vessel => PlaneShapes.Circle(Base(t)),
            SinkMounting.DropIn => t.Tape("P_o", Measurements.Outline!.Perimeter), _ => PlaneShapes.EllipseEdge(2 * A(t), 2 * B(t)), };
        return t.Edge(line + PlaneShapes.Circle(Drain(t)) + PlaneShapes.Circle(Overflow(t)));
    }

    private Num Water(double level, Trace? t = null)
    {
        Num y = t.Given("y", level, Measure.Length);
        Num sphere = (Num.Square(A(t)) + Num.Square(H(t))) / (2 * H(t));
        return t.Step("water up to the level", "V", Measure.Capacity, Slices,
            IsCap ? Num.Pi * Num.Square(y) * ((3 * sphere) - y) / 3 : Ellipsoid(0).Capacity(y, t));
    }

    private Workings WaterWorkings(double level) => Trace.Of("Water in the bowl", t => Water(level, t));

    private SurfaceBand Surface(FixtureZoneKind zone, double more, double bottom) => IsCap
        ? BowlSurface.InsideCap(zone, HalfLength + more, Depth + more, bottom)
        : BowlSurface.Inside(zone, turn => PlanCurve.Ellipse(2 * (HalfLength + more), 2 * (HalfWidth + more), Depth, turn), Depth + more);

    private double Level(Length freeboard) => Depth - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, Depth));
}
