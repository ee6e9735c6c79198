using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A shower pan in an alcove: floor, upright walls at the back and both ends with a level ledge, and a curb along the front.</summary>
/// <remarks>
/// Floor L W k − drain; walls (L + 2 W) h; ledge g (L + 2 g) + 2 g W; curb inside L h_i, top, outside and threshold (L + 2 g)(t + h_o + w_t). Source: elementary plane geometry.
/// The fall of the floor towards the drain is left out: at 1 in 48 it adds 0.02 %.
/// </remarks>
/// <example><code>
/// ShowerPan pan = new(tape);                        // the pan of ShowerPanMeasurements
/// double squareFeet = pan.CoatedArea.SquareFeet;    // 13.73
/// </code></example>
public sealed record ShowerPan : IFixture
{
    private readonly double length;
    private readonly double width;
    private readonly double ledge;

    /// <summary>Works a pan out.</summary>
    /// <param name="measurements">What the tape gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="measurements"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Two lengths cannot go together; the message names the one that cannot be.</exception>
    public ShowerPan(ShowerPanMeasurements measurements)
    {
        Measurements = Guard.NotNull(measurements, nameof(measurements));
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
    public IReadOnlyList<FixtureZone> Zones => FixtureZone.Present(
        FixtureZone.Level(FixtureZoneKind.Floor, Floor),
        FixtureZone.Upright(FixtureZoneKind.Wall, Walls),
        FixtureZone.Level(FixtureZoneKind.Rim, Ledge),
        FixtureZone.Of(FixtureZoneKind.Curb, Curb, CurbSlope));

    /// <inheritdoc/>
    public Area CoatedArea => Area.FromSquareMeters(Floor + Walls + Ledge + Curb);

    /// <summary>The ledge's back and two ends along the wall, the foot and two ends of curb and threshold, and the ring of the drain.</summary>
    public Length MaskedEdge => Length.FromMeters(Mask);

    /// <summary>The water it holds up to the lower of walls and curb; <see langword="null"/> for a pan without one of them.</summary>
    public Volume? WaterCapacity => Level > 0 ? Volume.FromCubicMeters(length * width * Level) : null;

    /// <summary>The floor, drain taken off.</summary>
    public Area FloorArea => Area.FromSquareMeters(Floor);

    /// <summary>The upright walls inside.</summary>
    public Area WallArea => Area.FromSquareMeters(Walls);

    /// <summary>The level ledge.</summary>
    public Area LedgeArea => Area.FromSquareMeters(Ledge);

    /// <summary>The curb's inside, top and outside, with the threshold in front of it.</summary>
    public Area CurbArea => Area.FromSquareMeters(Curb);

    private double Floor => (length * width * Measurements.TextureFactor) - PlaneShapes.Disc(Measurements.DrainDiameter.Meters);

    private double Walls => (length + (2 * width)) * Measurements.WallHeight.Meters;

    private double Ledge => (ledge * (length + (2 * ledge))) + (2 * ledge * width);

    private double Front => length + (2 * ledge);

    private double CurbFaces => (length * Measurements.CurbInsideHeight.Meters) + (Front * Measurements.CurbOutsideHeight.Meters);

    private double Curb => CurbFaces + (Front * (Measurements.CurbTopWidth.Meters + Measurements.ThresholdWidth.Meters));

    // Faces upright, top level, weighted by area.
    private double CurbSlope => Curb > 0 ? Math.PI / 2 * CurbFaces / Curb : 0;

    private double Level => Math.Min(Measurements.WallHeight.Meters, Measurements.CurbInsideHeight.Meters);

    private double Mask => (2 * (Front + width + ledge + Measurements.CurbTopWidth.Meters + Measurements.CurbOutsideHeight.Meters + Measurements.ThresholdWidth.Meters))
        + PlaneShapes.Circle(Measurements.DrainDiameter.Meters);

    /// <summary>Floor, walls, ledge, the curb's faces, its top and the threshold.</summary>
    public IReadOnlyList<SurfacePatch> Patches
    {
        get
        {
            Workings workings = Workings();
            Expression run = Tape("L_c", Front);
            return PatchLedger.Present(
                new SurfacePatch(Step("floor", "A_f", Tape("L", length) * Tape("W", width), length * width), FixtureZoneKind.Floor, 0, null, 0, Measurements.TextureFactor, PlaneShapes.Disc(Measurements.DrainDiameter.Meters)),
                SurfacePatch.Of(workings, "Z_wall", FixtureZoneKind.Wall, Math.PI / 2),
                SurfacePatch.Of(workings, "Z_rim", FixtureZoneKind.Rim, 0),
                SurfacePatch.Of(workings, "A_face", FixtureZoneKind.Curb, Math.PI / 2),
                new SurfacePatch(Step("curb top", "A_top", run * Tape("t_c", Measurements.CurbTopWidth.Meters), Front * Measurements.CurbTopWidth.Meters), FixtureZoneKind.Curb, 0),
                new SurfacePatch(Step("threshold", "A_thr", run * Tape("w_t", Measurements.ThresholdWidth.Meters), Front * Measurements.ThresholdWidth.Meters), FixtureZoneKind.Curb, 0));
        }
    }

    /// <inheritdoc/>
    public TriangleMesh Tessellate(Length chordTolerance)
    {
        double x = length / 2;
        double f = Front / 2;
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
    public Workings Workings()
    {
        Source plane = PlaneShapes.Elementary;
        Expression l = Tape("L", length);
        Expression w = Tape("W", width);
        Expression g = Tape("g", ledge);
        Expression wallHeight = Tape("h_w", Measurements.WallHeight.Meters);
        Expression inside = Tape("h_i", Measurements.CurbInsideHeight.Meters);
        Expression top = Tape("t_c", Measurements.CurbTopWidth.Meters);
        Expression threshold = Tape("w_t", Measurements.ThresholdWidth.Meters);
        Expression outside = Tape("h_o", Measurements.CurbOutsideHeight.Meters);
        Expression drain = Tape("D_d", Measurements.DrainDiameter.Meters);
        Expression texture = Expression.Quantity("k_f", Measurements.TextureFactor, Measure.Number);
        WorkingStep floor = Step("zone Floor", "Z_floor", (l * w * texture) - PlaneShapes.Disc(drain), Floor);
        WorkingStep walls = Step("zone Wall", "Z_wall", (l + (2 * w)) * wallHeight, Walls);
        WorkingStep rim = Step("ledge: zone Rim", "Z_rim", (g * (l + (2 * g))) + (2 * g * w), Ledge);
        WorkingStep front = new("length of the curb", "L_c", l + (2 * g), Front, Measure.Length, plane);
        WorkingStep faces = Step("curb, inside and outside", "A_face", (l * inside) + (front.Result() * outside), CurbFaces);
        WorkingStep curb = Step("zone Curb", "Z_curb", faces.Result() + (front.Result() * (top + threshold)), Curb);
        List<WorkingStep> steps =
        [
            floor, ZoneSteps.Level("Floor", "φ_floor"), walls, ZoneSteps.Upright("Wall", "φ_wall"), rim, ZoneSteps.Level("Rim", "φ_rim"), front, faces, curb,
        ];
        if (Curb > 0)
        {
            steps.Add(new("mean slope of zone Curb", "φ_curb", Expression.Pi() / 2 * faces.Result() / curb.Result(), CurbSlope, Measure.Angle, Source.Derived("slope weighted by area over faces and top")));
        }

        steps.Add(Step("coated area", "A", floor.Result() + walls.Result() + rim.Result() + curb.Result(), CoatedArea.SquareMeters));
        steps.Add(new(
            "edge to be taped",
            "P_mask",
            (2 * (front.Result() + w + g + top + outside + threshold)) + PlaneShapes.Circle(drain),
            Mask,
            Measure.Length,
            plane));
        if (WaterCapacity is Volume water)
        {
            steps.Add(new("water up to the lower of walls and curb", "V", l * w * Expression.Min(wallHeight, inside), water.CubicMeters, Measure.Capacity, plane));
        }

        return new Workings("Shower pan", steps);
    }

    /// <summary>What it is and what gets coated, in one line, in metric units.</summary>
    /// <returns>Text such as <c>shower pan, floor 838.2 mm × 838.2 mm: 1.3105 m² coated</c>.</returns>
    public override string ToString() => Description + ": " + Measure.Area.Format(CoatedArea.SquareMeters) + " coated";

    private static Expression Tape(string symbol, double value) => Expression.Quantity(symbol, value, Measure.Length);

    private static WorkingStep Step(string name, string symbol, Expression formula, double value) =>
        new(name, symbol, formula, value, Measure.Area, PlaneShapes.Elementary);
}
