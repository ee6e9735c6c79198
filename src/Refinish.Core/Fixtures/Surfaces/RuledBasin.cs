using System;
using System.Linq;
using Refinish.Numerics;

namespace Refinish.Fixtures;

/// <summary>
/// A basin whose level sections are rounded rectangles that change evenly from floor to rim (a ruled loft), in SI. L, W, r with index t at
/// the rim and f at the floor; H depth; d_h, d_f, d_w run of the walls at head, foot and sides; Δr = r_t − r_f; s shift of the floor's
/// middle across, which makes the sides' runs d_w − s and d_w + s; ρ cove radius. At a corner the wall's run towards the plan angle θ is
/// n(θ) = Δr + (d − Δr) cos θ + (d_w − Δr) sin θ, and the surface element is r √(H² + n²) dθ times the height's share, so that each corner
/// is one integral over θ and the height falls out exactly. Sections are quadratic in the height, so the prismoidal rule gives the capacity
/// exactly.
/// </summary>
/// <remarks>
/// Error of the 32-point rule: below 1e-10 of the corner for runs up to five depths (held by a test against finer rules). The cove is taken
/// per length of the sharp floor line, which over-reads by <see cref="CoveOverestimate"/>; the areas of the loft itself are exact.
/// </remarks>
internal readonly partial record struct RuledBasin(
    double RimLength,
    double RimWidth,
    double RimRadius,
    double FloorLength,
    double FloorWidth,
    double FloorRadius,
    double Depth,
    double HeadRun,
    double FootRun,
    double Cove,
    double Shift = 0)
{
    /// <summary>The stated relative error of the 32-point rule at the corners.</summary>
    public const double CornerError = 1e-10;

    public static readonly Source Loft =
        Source.Derived("surface integral of a ruled loft between two rounded rectangles; level sections change evenly");
    public static readonly Source Prismoid = Source.Derived("prismoidal rule, exact because the level section is quadratic in the height");
    public static readonly Source CoveArc = Source.Derived("arc in place of two tangents, along the sharp floor line");

    private static readonly (double Weight, double Cos, double Sin)[] Angles =
    [
        .. Quadrature.Rule32.Weights
            .Zip(Quadrature.Rule32.Abscissae, static (weight, x) => (Weight: weight, Angle: (Math.PI / 4) + (Math.PI / 4 * x)))
            .Select(static at => (at.Weight, Math.Cos(at.Angle), Math.Sin(at.Angle))),
    ];

    private static readonly Source Line = Source.Derived("straight parts of the floor line and its four corners");
    private static readonly Source Excess = Source.Derived("Pappus, second order in the cove radius, exact for conical corners");

    /// <summary>The run of the side wall towards which the floor is shifted.</summary>
    public double NearRun => Near().Value;

    /// <summary>The run of the other side wall.</summary>
    public double FarRun => Far().Value;

    public double RadiusChange => Growth().Value;

    public Num RimArea(Trace? t = null) => PlaneShapes.RoundedRectangle(TopLength(t), TopWidth(t), TopRadius(t));

    public Num RimEdge(Trace? t = null) => PlaneShapes.RoundedRectangleEdge(TopLength(t), TopWidth(t), TopRadius(t));

    public Num FloorEdge(Trace? t = null) => PlaneShapes.RoundedRectangleEdge(BottomLength(t), BottomWidth(t), BottomRadius(t));

    /// <summary>Inside the sharp floor line.</summary>
    public Num FloorArea(Trace? t = null) => PlaneShapes.RoundedRectangle(BottomLength(t), BottomWidth(t), BottomRadius(t));

    public Num Sides(Trace? t = null) => Shift == 0 ? Along(t) * Slant(SideRun(t), Height(t)) : Side(Near(t), t) + Side(Far(t), t);

    public Num Head(Trace? t = null) => End(HeadEnd(t), t);

    public Num Foot(Trace? t = null) => End(FootEnd(t), t);

    /// <summary>Sides, ends and corners down to the sharp floor line.</summary>
    public Num Walls(Trace? t = null) => Sides(t) + Head(t) + Foot(t) + (BothRadii(t) * OverCorners(t, Slant));

    /// <summary>Area times slope of these walls.</summary>
    public Num WallTilt(Trace? t = null) =>
        SideTilt(Sides(t), t) + (Head(t) * HeadSlope(t)) + (Foot(t) * FootSlope(t)) + (BothRadii(t) * OverCorners(t, SlopedSlant));

    public Num SideRun(Trace? t = null) => t.Step("run of the side walls", "d_w", Measure.Length, Loft, (TopWidth(t) - BottomWidth(t)) / 2);

    public Num Growth(Trace? t = null) =>
        t.Step("growth of the corner radius from floor to rim", "Δr", Measure.Length, Loft, TopRadius(t) - BottomRadius(t));

    /// <summary>The slope of a side wall, of the one towards which the floor is shifted where it is.</summary>
    public Num NearSlope(Trace? t = null) => Shift == 0
        ? t.Step("slope of the side walls", "φ_w", Measure.Angle, Loft, Slope(SideRun(t), Height(t)))
        : t.Step("slope of that side wall", "φ_w1", Measure.Angle, Loft, Slope(Near(t), Height(t)));

    public Num FarSlope(Trace? t = null) => Shift == 0
        ? NearSlope(t) : t.Step("slope of the other side wall", "φ_w2", Measure.Angle, Loft, Slope(Far(t), Height(t)));

    public Num HeadSlope(Trace? t = null) => t.Step("slope of the head wall", "φ_h", Measure.Angle, Loft, Slope(HeadEnd(t), Height(t)));

    public Num FootSlope(Trace? t = null) => t.Step("slope of the foot wall", "φ_f", Measure.Angle, Loft, Slope(FootEnd(t), Height(t)));

    /// <summary>∫ √(H² + n²) dθ over the head's and the foot's corner, the mean of both sides.</summary>
    public Num CornerSlant(Trace? t = null) =>
        t.Step("head's and foot's corner: integrals of √(H² + n²)", "J_s", Measure.Length, Loft, OverCorners(t, Slant));

    /// <summary>∫ φ √(H² + n²) dθ.</summary>
    public Num CornerSlopedSlant(Trace? t = null) => t.Step(
        "head's and foot's corner: integrals of φ √(H² + n²)", "J_φs", Measure.Length, Loft,
        OverCorners(t, SlopedSlant));

    /// <summary>∮ φ ds along the sharp floor line.</summary>
    public Num LineSlope(Trace? t = null)
    {
        Num corners = t.Step("head's and foot's corner: integrals of φ", "J_φ", Measure.Number, Loft, OverCorners(t, Slope));
        return t.Step("along the floor line: integral of φ", "M_φ", Measure.Length, Line, AlongFloor(t, static slope => slope, corners));
    }

    /// <summary>∮ tan(φ/2) ds.</summary>
    public Num LineTangent(Trace? t = null)
    {
        Num corners = t.Step("head's and foot's corner: integrals of tan(φ/2)", "J_τ", Measure.Number, Loft, OverCorners(t, HalfTangent));
        return t.Step(
            "along the floor line: integral of tan(φ/2)", "M_τ", Measure.Length, Line,
            AlongFloor(t, static slope => Num.Tan(slope / 2), corners));
    }

    /// <summary>∮ φ² ds.</summary>
    public Num LineSlopeSquared(Trace? t = null)
    {
        Num corners = t.Step(
            "head's and foot's corner: integrals of φ²", "J_φφ", Measure.Number, Loft,
            OverCorners(t, static (run, depth) => Num.Square(Slope(run, depth))));
        return t.Step("along the floor line: integral of φ²", "M_φφ", Measure.Length, Line, AlongFloor(t, Num.Square, corners));
    }

    /// <summary>∫ φ tan(φ/2) dθ.</summary>
    public Num CornerSlopeTangent(Trace? t = null) => t.Step(
        "head's and foot's corner: integrals of φ tan(φ/2)", "J_φτ", Measure.Number, Loft,
        OverCorners(t, SlopeTangent));

    /// <summary>∮ φ tan(φ/2) ds.</summary>
    public Num LineSlopeTangent(Trace? t = null) => t.Step(
        "along the floor line: integral of φ tan(φ/2)", "M_φτ", Measure.Length, Line,
        AlongFloor(t, static slope => slope * Num.Tan(slope / 2), CornerSlopeTangent(t)));

    /// <summary>
    /// What the cove adds to the sharp floor line's area, less than nothing: an arc ρ φ stands in for two tangents ρ tan(φ/2).
    /// </summary>
    public Num CoveArea(Trace? t = null) => IsSharp(t) ? 0 : CoveRadius(t) * (LineSlope(t) - (2 * LineTangent(t)));

    /// <summary>What the cove adds to the sharp floor line's water: less than nothing.</summary>
    public Num CoveVolume(Trace? t = null) => IsSharp(t) ? 0 : Num.Square(CoveRadius(t)) * ((LineSlope(t) / 2) - LineTangent(t));

    /// <summary>
    /// By how much <see cref="CoveArea"/> over-reads, because the cove at a corner turns on a smaller radius than the sharp floor line: ρ²
    /// ∫ (φ tan(φ/2) − (1 − cos φ)(1 + tan²(φ/2)/2)) dθ, by Pappus exact where the corner is a cone.
    /// </summary>
    public Num CoveOverestimate(Trace? t = null)
    {
        Num tangent = CornerSlopeTangent(t);
        Num versine = t.Step(
            "head's and foot's corner: integrals of (1 − cos φ)(1 + tan²(φ/2)/2)", "J_v", Measure.Number, Loft,
            OverCorners(t, static (run, depth) => (1 - Num.Cos(Slope(run, depth))) * (1 + (Num.Square(HalfTangent(run, depth)) / 2))));
        return t.Step(
            "over-reading of the cove at the corners", "ε_cove", Measure.Area, Excess, 2 * Num.Square(CoveRadius(t)) * (tangent - versine));
    }

    /// <summary>The inside of the box over the mouth.</summary>
    public Num Box(Trace? t = null) => (TopLength(t) * TopWidth(t)) + (2 * (TopLength(t) + TopWidth(t)) * Height(t));

    /// <summary>Area times slope over the sides, from their own area where both are alike.</summary>
    public Num SideTilt(Num sides, Trace? t = null) => Shift == 0
        ? sides * NearSlope(t) : (Side(Near(t), t) * NearSlope(t)) + (Side(Far(t), t) * FarSlope(t));

    /// <summary>
    /// Area times slope over the wall's half of the cove, which has a mean of 3φ/4 over ρ φ / 2 and replaces a strip ρ tan(φ/2) at φ.
    /// </summary>
    public Num WallCoveTilt(Trace? t = null) => CoveRadius(t) * ((3 * LineSlopeSquared(t) / 8) - LineSlopeTangent(t));

    /// <summary>Area times slope over the floor's half of the cove, a mean of φ/4 over ρ φ / 2; the floor itself is level.</summary>
    public Num FloorTilt(Trace? t = null) => CoveRadius(t) * LineSlopeSquared(t) / 8;

    /// <summary>
    /// How far the cove reaches on to the floor where it reaches farthest: at the least run of any wall, which makes the steepest.
    /// </summary>
    public double CoveReach
    {
        get
        {
            double least = Math.Min(
                Math.Min(LeastRunAt(HeadRun, NearRun), LeastRunAt(FootRun, NearRun)),
                Math.Min(LeastRunAt(HeadRun, FarRun), LeastRunAt(FootRun, FarRun)));
            return Cove * HalfTangent(least, Depth).Value;
        }
    }

    /// <summary>Water up to a level above the cove.</summary>
    public Num Water(Num level, Trace? t = null)
    {
        Num floor = t.Step("section at the floor", "A_0", Measure.Area, PlaneShapes.Elementary, FloorArea(t));
        Num middle = t.Step("section at half the level", "A_1", Measure.Area, Loft, Section(level / 2, t));
        Num surface = t.Step("section at the water", "A_2", Measure.Area, Loft, Section(level, t));
        Num cove = t.Step("change by the cove", "V_cove", Measure.Capacity, CoveArc, CoveVolume(t));
        return t.Step("water up to the level", "V", Measure.Capacity, Prismoid, (level * (floor + (4 * middle) + surface) / 6) + cove);
    }

    /// <summary>How the water up to a level above the cove follows.</summary>
    public Workings Capacity(double level)
    {
        RuledBasin basin = this;
        return Trace.Of("Water in the basin", [.. RunsAndSlopes, t => basin.Water(t.Given("h", level, Measure.Length), t)]);
    }

    /// <summary>The slope of a wall of run n: φ = π/2 − arctan(n / H), which also holds for upright and overhanging walls.</summary>
    public static Num Slope(Num run, Num depth) => (PlaneShapes.PiBeside(depth) / 2) - Num.Arctan(run / depth);

    public static Num Slant(Num run, Num depth) => Num.Sqrt(Num.Square(depth) + Num.Square(run));

    /// <summary>tan(φ/2).</summary>
    public static Num HalfTangent(Num run, Num depth) => Num.Tan(Slope(run, depth) / 2);

    private static Num SlopedSlant(Num run, Num depth) => Slope(run, depth) * Slant(run, depth);

    private static Num SlopeTangent(Num run, Num depth)
    {
        Num slope = Slope(run, depth);
        return slope * Num.Tan(slope / 2);
    }

    private Num Section(Num height, Trace? t)
    {
        Num share = height / Height(t);
        return PlaneShapes.RoundedRectangle(
            BottomLength(t) + ((TopLength(t) - BottomLength(t)) * share),
            BottomWidth(t) + ((TopWidth(t) - BottomWidth(t)) * share),
            BottomRadius(t) + (Growth(t) * share));
    }

    private Num Near(Trace? t = null) => Shift == 0
        ? SideRun(t)
        : t.Step("run of the side wall towards which the floor is shifted", "d_w1", Measure.Length, Loft, SideRun(t) - Aside(t));

    private Num Far(Trace? t = null) => Shift == 0
        ? SideRun(t) : t.Step("run of the other side wall", "d_w2", Measure.Length, Loft, SideRun(t) + Aside(t));

    private Num End(Num run, Trace? t) =>
        ((TopWidth(t) - (2 * TopRadius(t))) + (BottomWidth(t) - (2 * BottomRadius(t)))) / 2 * Slant(run, Height(t));

    private Num Side(Num run, Trace? t) => Along(t) / 2 * Slant(run, Height(t));

    private Num Along(Trace? t) => (TopLength(t) - (2 * TopRadius(t))) + (BottomLength(t) - (2 * BottomRadius(t)));

    private Num BothRadii(Trace? t) => TopRadius(t) + BottomRadius(t);

    private Num AlongFloor(Trace? t, Func<Num, Num> function, Num corners)
    {
        Num length = BottomLength(t) - (2 * BottomRadius(t));
        Num sides = Shift == 0 ? 2 * length * function(NearSlope(t)) : length * (function(NearSlope(t)) + function(FarSlope(t)));
        return sides
            + ((BottomWidth(t) - (2 * BottomRadius(t))) * (function(HeadSlope(t)) + function(FootSlope(t))))
            + (2 * BottomRadius(t) * corners);
    }

    // Both sides are alike unless the floor is shifted; then each counts half.
    private Num OverCorners(Trace? t, Func<Num, Num, Num> integrand)
    {
        Num near = OverCorner(HeadEnd(t), Near(t), integrand, t) + OverCorner(FootEnd(t), Near(t), integrand, t);
        return Shift == 0 ? near : (near + OverCorner(HeadEnd(t), Far(t), integrand, t) + OverCorner(FootEnd(t), Far(t), integrand, t)) / 2;
    }

    // n(θ) = Δr + (d − Δr) cos θ + (d_w − Δr) sin θ, the wall's run towards the plan angle θ.
    private Num OverCorner(Num end, Num side, Func<Num, Num, Num> integrand, Trace? t) => t is null
        ? PlainCorner(end.Value, side.Value, integrand)
        : Corner(
            (Growth(t), end, side, Height(t), integrand), t.Pi() / 2,
            Corner((RadiusChange, end.Value, side.Value, Depth, integrand), Math.PI / 2, null).Value);

    private static Num Corner(
        (Num Change, Num End, Num Side, Num Depth, Func<Num, Num, Num> Integrand) corner, Num quarter, double? found) =>
        Num.Integral(
            "θ", 0, quarter, corner, static (in at, angle) => at.Integrand(
                at.Change + ((at.End - at.Change) * Num.Cos(angle)) + ((at.Side - at.Change) * Num.Sin(angle)), at.Depth),
            found);

    // The same rule at angles whose cosines and sines are known; a test ties it to what is written.
    private double PlainCorner(double end, double side, Func<Num, Num, Num> integrand)
    {
        double change = RadiusChange;
        double sum = 0;
        foreach ((double weight, double cos, double sin) in Angles)
        {
            sum += weight * integrand(change + ((end - change) * cos) + ((side - change) * sin), Depth).Value;
        }

        return Math.PI / 4 * sum;
    }

    private double LeastRunAt(double endRun, double sideRun)
    {
        double end = endRun - RadiusChange;
        double side = sideRun - RadiusChange;
        return end < 0 && side < 0 ? RadiusChange - Math.Sqrt((end * end) + (side * side)) : Math.Min(endRun, sideRun);
    }

    // Spares a fixture without a cove its integrals; a derivation writes them all the same.
    private bool IsSharp(Trace? t) => t is null && Cove == 0;

    private Num TopLength(Trace? t) => t.Given("L_t", RimLength, Measure.Length);

    private Num TopWidth(Trace? t) => t.Given("W_t", RimWidth, Measure.Length);

    private Num TopRadius(Trace? t) => t.Given("r_t", RimRadius, Measure.Length);

    private Num BottomLength(Trace? t) => t.Given("L_f", FloorLength, Measure.Length);

    private Num BottomWidth(Trace? t) => t.Given("W_f", FloorWidth, Measure.Length);

    private Num BottomRadius(Trace? t) => t.Given("r_f", FloorRadius, Measure.Length);

    private Num Height(Trace? t) => t.Given("H", Depth, Measure.Length);

    private Num HeadEnd(Trace? t) => t.Given("d_h", HeadRun, Measure.Length);

    private Num FootEnd(Trace? t) => t.Given("d_f", FootRun, Measure.Length);

    private Num CoveRadius(Trace? t) => t.Given("ρ", Cove, Measure.Length);

    private Num Aside(Trace? t) => t.Given("s", Shift, Measure.Length);
}
