using System;
using Refinish.Numerics;

namespace Refinish.Fixtures;

/// <summary>
/// A basin whose level sections are rounded rectangles that change evenly from floor to rim (a ruled loft), in SI.
/// L, W, r with index t at the rim and f at the floor; H depth; d_h, d_f, d_w run of the walls at head, foot and sides; Δr = r_t − r_f;
/// s shift of the floor's middle across, which makes the sides' runs d_w − s and d_w + s;
/// ρ cove radius. At a corner the wall's run towards the plan angle θ is n(θ) = Δr + (d − Δr) cos θ + (d_w − Δr) sin θ,
/// and the surface element is r √(H² + n²) dθ times the height's share, so that each corner is one integral over θ and the height falls out exactly.
/// Sections are quadratic in the height, so the prismoidal rule gives the capacity exactly.
/// </summary>
/// <remarks>
/// Error of the 32-point rule: below 1e-10 of the corner for runs up to five depths (held by a test against finer rules).
/// The cove is taken per length of the sharp floor line, which over-reads by <see cref="CoveOverestimate"/>; the areas of the loft itself are exact.
/// </remarks>
internal readonly record struct RuledBasin(
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

    private const double QuarterTurn = Math.PI / 2;

    public double SideRun => (RimWidth - FloorWidth) / 2;

    /// <summary>The run of the side wall towards which the floor is shifted.</summary>
    public double NearRun => SideRun - Shift;

    /// <summary>The run of the other side wall.</summary>
    public double FarRun => SideRun + Shift;

    public double RadiusChange => RimRadius - FloorRadius;

    public double RimArea => PlaneShapes.RoundedRectangle(RimLength, RimWidth, RimRadius);

    public double FloorArea => PlaneShapes.RoundedRectangle(FloorLength, FloorWidth, FloorRadius);

    public double Sides => Side(NearRun) + Side(FarRun);

    public double Head => End(HeadRun);

    public double Foot => End(FootRun);

    /// <summary>∫ √(H² + n²) dθ over the head's and the foot's corner, the mean of both sides.</summary>
    public double CornerSlant => OverCorners(Slant);

    /// <summary>All four corners.</summary>
    public double Corners => (RimRadius + FloorRadius) * CornerSlant;

    public double Walls => Sides + Head + Foot + Corners;

    /// <summary>∫ φ dθ over the head's and the foot's corner.</summary>
    public double CornerSlope => OverCorners(Slope);

    /// <summary>∫ tan(φ/2) dθ.</summary>
    public double CornerTangent => OverCorners(HalfTangent);

    /// <summary>∫ φ² dθ.</summary>
    public double CornerSlopeSquared => OverCorners(SlopeSquared);

    /// <summary>∫ φ tan(φ/2) dθ.</summary>
    public double CornerSlopeTangent => OverCorners(SlopeTangent);

    /// <summary>∫ (1 − cos φ)(1 + tan²(φ/2)/2) dθ.</summary>
    public double CornerVersine => OverCorners(Versine);

    /// <summary>∫ φ √(H² + n²) dθ.</summary>
    public double CornerSlopedSlant => OverCorners(SlopedSlant);

    /// <summary>∮ φ ds along the sharp floor line.</summary>
    public double LineSlope => AlongFloor((Slope(NearRun, Depth) + Slope(FarRun, Depth)) / 2, Slope(HeadRun, Depth), Slope(FootRun, Depth), CornerSlope);

    /// <summary>∮ tan(φ/2) ds.</summary>
    public double LineTangent => AlongFloor((HalfTangent(NearRun, Depth) + HalfTangent(FarRun, Depth)) / 2, HalfTangent(HeadRun, Depth), HalfTangent(FootRun, Depth), CornerTangent);

    /// <summary>∮ φ² ds.</summary>
    public double LineSlopeSquared => AlongFloor((SlopeSquared(NearRun, Depth) + SlopeSquared(FarRun, Depth)) / 2, SlopeSquared(HeadRun, Depth), SlopeSquared(FootRun, Depth), CornerSlopeSquared);

    /// <summary>∮ φ tan(φ/2) ds.</summary>
    public double LineSlopeTangent => AlongFloor((SlopeTangent(NearRun, Depth) + SlopeTangent(FarRun, Depth)) / 2, SlopeTangent(HeadRun, Depth), SlopeTangent(FootRun, Depth), CornerSlopeTangent);

    /// <summary>What the cove adds to the sharp floor line's area, less than nothing: an arc ρ φ stands in for two tangents ρ tan(φ/2).</summary>
    public double CoveArea => Cove == 0 ? 0 : Cove * (LineSlope - (2 * LineTangent));

    /// <summary>What the cove adds to the sharp floor line's water: less than nothing.</summary>
    public double CoveVolume => Cove == 0 ? 0 : Cove * Cove * ((LineSlope / 2) - LineTangent);

    /// <summary>
    /// By how much <see cref="CoveArea"/> over-reads, because the cove at a corner turns on a smaller radius than the sharp floor line:
    /// ρ² ∫ (φ tan(φ/2) − (1 − cos φ)(1 + tan²(φ/2)/2)) dθ, by Pappus exact where the corner is a cone.
    /// </summary>
    public double CoveOverestimate => 2 * (Cove * Cove) * (CornerSlopeTangent - CornerVersine);

    /// <summary>Inside area, openings not taken off.</summary>
    public double Interior => Walls + FloorArea + CoveArea;

    /// <summary>
    /// Area times slope over walls and the wall's half of the cove, which has a mean of 3φ/4 over ρ φ / 2 and replaces a strip ρ tan(φ/2) at φ.
    /// </summary>
    public double WallTilt =>
        (Side(NearRun) * Slope(NearRun, Depth)) + (Side(FarRun) * Slope(FarRun, Depth)) + (Head * Slope(HeadRun, Depth)) + (Foot * Slope(FootRun, Depth))
        + ((RimRadius + FloorRadius) * CornerSlopedSlant)
        + (Cove * ((3 * LineSlopeSquared / 8) - LineSlopeTangent));

    /// <summary>Area times slope over the floor's half of the cove, a mean of φ/4 over ρ φ / 2; the floor itself is level.</summary>
    public double FloorTilt => Cove * LineSlopeSquared / 8;

    /// <summary>The least run of any wall, which makes the steepest wall and the widest cove; negative where a wall overhangs.</summary>
    public double LeastRun => Math.Min(
        Math.Min(LeastRunAt(HeadRun, NearRun), LeastRunAt(FootRun, NearRun)),
        Math.Min(LeastRunAt(HeadRun, FarRun), LeastRunAt(FootRun, FarRun)));

    /// <summary>How far the cove reaches on to the floor where it reaches farthest.</summary>
    public double CoveReach => Cove * HalfTangent(LeastRun, Depth);

    public double Section(double height)
    {
        double share = height / Depth;
        return PlaneShapes.RoundedRectangle(
            FloorLength + ((RimLength - FloorLength) * share),
            FloorWidth + ((RimWidth - FloorWidth) * share),
            FloorRadius + (RadiusChange * share));
    }

    /// <summary>Water up to a level above the cove.</summary>
    public double Capacity(double level) =>
        (level * (FloorArea + (4 * Section(level / 2)) + Section(level)) / 6) + CoveVolume;

    /// <summary>The slope of a wall of run n: φ = π/2 − arctan(n / H), which also holds for upright and overhanging walls.</summary>
    public static double Slope(double run, double depth) => QuarterTurn - Math.Atan(run / depth);

    public static double Slant(double run, double depth) => Math.Sqrt((depth * depth) + (run * run));

    public static double HalfTangent(double run, double depth) => (Slant(run, depth) - run) / depth;

    private static double SlopeSquared(double run, double depth) => Slope(run, depth) * Slope(run, depth);

    private static double SlopeTangent(double run, double depth) => Slope(run, depth) * HalfTangent(run, depth);

    private static double SlopedSlant(double run, double depth) => Slope(run, depth) * Slant(run, depth);

    private static double Versine(double run, double depth)
    {
        double tangent = HalfTangent(run, depth);
        return (1 - (run / Slant(run, depth))) * (1 + (tangent * tangent / 2));
    }

    private double End(double run) => (RimWidth - (2 * RimRadius) + (FloorWidth - (2 * FloorRadius))) / 2 * Slant(run, Depth);

    private double AlongFloor(double side, double head, double foot, double corners) =>
        (2 * (FloorLength - (2 * FloorRadius)) * side) + ((FloorWidth - (2 * FloorRadius)) * (head + foot)) + (2 * FloorRadius * corners);

    private double Side(double run) => (RimLength - (2 * RimRadius) + (FloorLength - (2 * FloorRadius))) / 2 * Slant(run, Depth);

    // Both sides are alike unless the floor is shifted; then each counts half.
    private double OverCorners(Func<double, double, double> integrand) => Shift == 0
        ? OverCorner(HeadRun, SideRun, integrand) + OverCorner(FootRun, SideRun, integrand)
        : (OverCorner(HeadRun, NearRun, integrand) + OverCorner(FootRun, NearRun, integrand) + OverCorner(HeadRun, FarRun, integrand) + OverCorner(FootRun, FarRun, integrand)) / 2;

    private double OverCorner(double endRun, double sideRun, Func<double, double, double> integrand) =>
        Quadrature.GaussLegendre(
            new Corner(RadiusChange, endRun - RadiusChange, sideRun - RadiusChange, Depth, integrand),
            static (corner, angle) => corner.At(angle),
            0,
            QuarterTurn);

    private double LeastRunAt(double endRun, double sideRun)
    {
        double end = endRun - RadiusChange;
        double side = sideRun - RadiusChange;
        return end < 0 && side < 0
            ? RadiusChange - Math.Sqrt((end * end) + (side * side))
            : Math.Min(endRun, sideRun);
    }

    private readonly record struct Corner(double RadiusChange, double EndShare, double SideShare, double Depth, Func<double, double, double> Integrand)
    {
        public double At(double angle) =>
            Integrand(RadiusChange + (EndShare * Math.Cos(angle)) + (SideShare * Math.Sin(angle)), Depth);
    }
}
