using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A sink on, in or under a counter: the bowl as half an ellipsoid or a cap of a sphere, with the rim and the outside that its mounting shows.</summary>
/// <remarks>
/// Half ellipsoid: 2π R_G(a²b², a²c², b²c²), V = ⅔ π a b c. Cap of mouth radius a and depth h: π (a² + h²), V = π h (3 a² + h²) / 6.
/// The outside of a vessel is a bowl of the same kind, larger all round by the wall; the patch it stands on is taken off. Source: elementary for the cap; <see cref="Workings"/> names the rest.
/// </remarks>
/// <example><code>
/// CounterSink vessel = new(tape);                   // the cap of CounterSinkMeasurements
/// double bowl = vessel.BowlArea.SquareInches;       // 296.1
/// </code></example>
public sealed record CounterSink : IFixture
{
    private readonly double inside;
    private readonly double outside;

    /// <summary>Works a sink out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> or the outline of a drop-in sink is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public CounterSink(CounterSinkMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements, nameof(measurements));
        measurements.CheckConsistency();
        inside = AreaOf(0);
        outside = IsVessel ? AreaOf(Wall) : 0;
    }

    /// <summary>What the tape gave.</summary>
    public CounterSinkMeasurements Measurements { get; }

    /// <inheritdoc/>
    public string Description => (Measurements.Mounting switch { SinkMounting.Vessel => "vessel sink ", SinkMounting.DropIn => "drop-in sink ", _ => "undermount sink " })
        + Measure.Length.Format(Measurements.MouthLength.Meters) + " × " + Measure.Length.Format(Measurements.MouthWidth.Meters);

    /// <summary>Bowl, rim and outside, as far as they are there.</summary>
    public IReadOnlyList<FixtureZone> Zones => PatchLedger.Zones(Patches);

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Coated);

    /// <summary>The cut edge of an undermount sink, the outline of a drop-in sink, the base of a vessel; and the rings of drain and overflow.</summary>
    public Length MaskedEdge => Length.FromMeters(EdgeLine + PlaneShapes.Circle(Measurements.DrainDiameter.Meters) + PlaneShapes.Circle(Measurements.OverflowDiameter.Meters));

    /// <summary>The water the bowl holds up to the rim.</summary>
    public Volume? WaterCapacity => Volume.FromCubicMeters(Water(Depth));

    /// <summary>The inside of the bowl, drain and overflow not taken off.</summary>
    public Area BowlArea => Area.FromSquareMeters(inside);

    /// <summary>The rim; 0 for an undermount sink.</summary>
    public Area RimArea => Area.FromSquareMeters(Rim);

    /// <summary>The outside of a vessel, the patch it stands on not taken off; 0 for the others.</summary>
    public Area OutsideArea => Area.FromSquareMeters(outside);

    /// <summary>Bowl, rim and outside.</summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            double error = IsCap ? 0 : HalfEllipsoid.Error;
            SurfacePatch bowl = new(Bowl("bowl", "S_bowl", 0, inside), FixtureZoneKind.Bowl, SlopeOf(0), SlopeFormula(0, inside), error, 1, PlaneShapes.Disc(Measurements.DrainDiameter.Meters) + PlaneShapes.Disc(Measurements.OverflowDiameter.Meters));
            SurfacePatch rim = new(new("rim", "A_rim", RimFormula(), Rim, Measure.Area, PlaneShapes.Elementary), FixtureZoneKind.Rim, 0);
            if (!IsVessel)
            {
                return PatchLedger.Present(bowl, rim);
            }

            // The outside hangs under its own slope: as steep, seen from below.
            SurfacePatch shell = new(Bowl("outside", "S_out", Wall, outside), FixtureZoneKind.Outside, Math.PI - SlopeOf(Wall), Expression.Pi() - SlopeFormula(Wall, outside), error, 1, PlaneShapes.Disc(Measurements.BaseDiameter.Meters));
            return PatchLedger.Present(bowl, rim, shell);
        }
    }

    private bool IsVessel => Measurements.Mounting == SinkMounting.Vessel;

    private bool IsCap => Measurements.Shape == BowlShape.SphericalCap;

    private double A => Measurements.MouthLength.Meters / 2;

    private double B => Measurements.MouthWidth.Meters / 2;

    private double Depth => Measurements.BowlDepth.Meters;

    private double Wall => Measurements.WallThickness.Meters;

    private double Mouth => PlaneShapes.Ellipse(2 * A, 2 * B);

    private double Rim => Measurements.Mounting switch
    {
        SinkMounting.Vessel => PlaneShapes.Ellipse(2 * (A + Wall), 2 * (B + Wall)) - Mouth,
        SinkMounting.DropIn => Measurements.Outline!.Area.SquareMeters - Mouth,
        _ => 0,
    };

    private double EdgeLine => Measurements.Mounting switch
    {
        SinkMounting.Vessel => PlaneShapes.Circle(Measurements.BaseDiameter.Meters),
        SinkMounting.DropIn => Measurements.Outline!.Perimeter.Meters,
        _ => PlaneShapes.EllipseEdge(2 * A, 2 * B),
    };

    private double Coated => inside + Rim + outside
        - PlaneShapes.Disc(Measurements.DrainDiameter.Meters) - PlaneShapes.Disc(Measurements.OverflowDiameter.Meters) - PlaneShapes.Disc(Measurements.BaseDiameter.Meters);

    /// <summary>The water up to a level below the rim, such as the overflow.</summary>
    /// <param name="freeboard">From the rim down to the water; 0 up to the bowl's depth.</param>
    /// <returns>The capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="freeboard"/> is outside its range.</exception>
    public Volume CapacityBelowRim(Length freeboard) => Volume.FromCubicMeters(Water(Level(freeboard)));

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
        Func<double, MeshPoint> mouth = turn => PlanCurve.Ellipse(2 * A, 2 * B, depth, turn);
        return Measurements.Mounting switch
        {
            SinkMounting.Vessel => mesh.Add(
                PlanCurve.Turn,
                bowl,
                SurfaceBand.Ruled(FixtureZoneKind.Rim, mouth, turn => PlanCurve.Ellipse(2 * (A + Wall), 2 * (B + Wall), depth, turn)),
                BowlSurface.Outside(Surface(FixtureZoneKind.Outside, Wall, -Wall))).Mesh(),
            SinkMounting.DropIn => mesh.Add(
                Measurements.Outline!.Breaks(),
                bowl,
                SurfaceBand.Ruled(FixtureZoneKind.Rim, mouth, turn => Measurements.Outline!.Towards(turn, depth))).Mesh(),
            _ => mesh.Add(PlanCurve.Turn, bowl).Mesh(),
        };
    }

    /// <inheritdoc/>
    public Workings Workings()
    {
        Expression line = Measurements.Mounting switch
        {
            SinkMounting.Vessel => PlaneShapes.Circle(Tape("D_b", Measurements.BaseDiameter.Meters)),
            SinkMounting.DropIn => Measurements.Outline!.Workings().Steps[1].Result(),
            _ => PlaneShapes.EllipseEdge(2 * Tape("a", A), 2 * Tape("b", B)),
        };
        Expression edge = line + PlaneShapes.Circle(Tape("D_d", Measurements.DrainDiameter.Meters)) + PlaneShapes.Circle(Tape("D_o", Measurements.OverflowDiameter.Meters));
        List<Workings> parts = [WaterWorkings(Depth)];
        if (Measurements.Mounting == SinkMounting.DropIn)
        {
            parts.Insert(0, Measurements.Outline!.Workings());
        }

        return PatchLedger.Write("Counter sink", Patches, Coated, [], [new("edge to be taped", "P_mask", edge, MaskedEdge.Meters, Measure.Length, PlaneShapes.Elementary)], parts);
    }

    /// <summary>What it is, what gets coated and what it holds, in one line, in metric units.</summary>
    /// <returns>Text such as <c>vessel sink 406.4 mm × 406.4 mm: 0.42 m² coated, 10.488 L to the rim</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}: {1} coated, {2} to the rim",
        Description,
        Measure.Area.Format(Coated),
        Measure.Capacity.Format(Water(Depth)));

    private static Expression Tape(string symbol, double value) => Expression.Quantity(symbol, value, Measure.Length);

    private HalfEllipsoid Ellipsoid(double more) => new(A + more, B + more, Depth + more);

    private double AreaOf(double more) => IsCap ? Math.PI * (((A + more) * (A + more)) + ((Depth + more) * (Depth + more))) : Ellipsoid(more).Area;

    // A cap up to the half angle ω = 2 arctan(h/a) from its pole: mean slope ∫ θ sin θ dθ / ∫ sin θ dθ.
    private double SlopeOf(double more)
    {
        if (!IsCap)
        {
            return Ellipsoid(more).Tilt / AreaOf(more);
        }

        double half = 2 * Math.Atan((Depth + more) / (A + more));
        return (Math.Sin(half) - (half * Math.Cos(half))) / (1 - Math.Cos(half));
    }

    private Expression SlopeFormula(double more, double area)
    {
        if (!IsCap)
        {
            return new HalfEllipsoidExpressions(Ellipsoid(more)).Tilt() / Expression.Quantity("S", area, Measure.Area);
        }

        Expression half = 2 * Expression.Arctan(Tape("h", Depth + more) / Tape("a", A + more));
        return (Expression.Sin(half) - (half * Expression.Cos(half))) / (1 - Expression.Cos(half));
    }

    private WorkingStep Bowl(string name, string symbol, double more, double value) => IsCap
        ? new(name + ", a cap of a sphere", symbol, Expression.Pi() * (Expression.Square(Tape("a", A + more)) + Expression.Square(Tape("h", Depth + more))), value, Measure.Area, Source.Derived("elementary: cap of a sphere"))
        : new(name + ", half an ellipsoid", symbol, new HalfEllipsoidExpressions(Ellipsoid(more)).Area(), value, Measure.Area, HalfEllipsoid.Carlson);

    private Expression RimFormula()
    {
        Expression mouth = PlaneShapes.Ellipse(2 * Tape("a", A), 2 * Tape("b", B));
        return Measurements.Mounting switch
        {
            SinkMounting.Vessel => PlaneShapes.Ellipse(2 * Tape("a", A + Wall), 2 * Tape("b", B + Wall)) - mouth,
            SinkMounting.DropIn => Measurements.Outline!.Workings().Steps[0].Result() - mouth,
            _ => 0,
        };
    }

    private double Water(double level)
    {
        if (!IsCap)
        {
            return Ellipsoid(0).Capacity(level);
        }

        double sphere = ((A * A) + (Depth * Depth)) / (2 * Depth);
        return Math.PI * (level * level) * ((3 * sphere) - level) / 3;
    }

    private Workings WaterWorkings(double level)
    {
        Expression h = Tape("y", level);
        Expression depth = Tape("h", Depth);
        Expression sphere = (Expression.Square(Tape("a", A)) + Expression.Square(depth)) / (2 * depth);
        Expression formula = IsCap ? Expression.Pi() * Expression.Square(h) * ((3 * sphere) - h) / 3 : new HalfEllipsoidExpressions(Ellipsoid(0)).Capacity(h);
        return new("Water in the bowl", [new("water up to the level", "V", formula, Water(level), Measure.Capacity, Source.Derived("slices of the bowl"))]);
    }

    private SurfaceBand Surface(FixtureZoneKind zone, double more, double bottom) => IsCap
        ? BowlSurface.InsideCap(zone, A + more, Depth + more, bottom)
        : BowlSurface.Inside(zone, turn => PlanCurve.Ellipse(2 * (A + more), 2 * (B + more), Depth, turn), Depth + more);

    private double Level(Length freeboard) => Depth - Guard.Within(freeboard, Bounds.NotNegative(Measure.Length, Depth), nameof(freeboard));
}
