using System;

namespace Refinish.Fixtures;

/// <summary>The formulas of <see cref="RuledBasin"/> in the same symbols, and the steps that more than one derivation rests on.</summary>
internal sealed class RuledBasinExpressions
{
    public static readonly Source Loft = Source.Derived("surface integral of a ruled loft between two rounded rectangles; level sections change evenly");
    public static readonly Source Prismoid = Source.Derived("prismoidal rule, exact because the level section is quadratic in the height");
    public static readonly Source Cove = Source.Derived("arc in place of two tangents, along the sharp floor line");

    private static readonly Source Line = Source.Derived("straight parts of the floor line and its four corners");

    private readonly RuledBasin basin;

    public RuledBasinExpressions(RuledBasin basin)
    {
        this.basin = basin;
        RimLength = Tape("L_t", basin.RimLength);
        RimWidth = Tape("W_t", basin.RimWidth);
        RimRadius = Tape("r_t", basin.RimRadius);
        FloorLength = Tape("L_f", basin.FloorLength);
        FloorWidth = Tape("W_f", basin.FloorWidth);
        FloorRadius = Tape("r_f", basin.FloorRadius);
        Depth = Tape("H", basin.Depth);
        HeadRun = Tape("d_h", basin.HeadRun);
        FootRun = Tape("d_f", basin.FootRun);
        Radius = Tape("ρ", basin.Cove);
        SideRun = new("run of the side walls", "d_w", (RimWidth - FloorWidth) / 2, basin.SideRun, Measure.Length, Loft);
        RadiusChange = new("growth of the corner radius from floor to rim", "Δr", RimRadius - FloorRadius, basin.RadiusChange, Measure.Length, Loft);
        Expression shift = Tape("s", basin.Shift);
        NearRun = basin.Shift == 0 ? SideRun : new("run of the side wall towards which the floor is shifted", "d_w1", SideRun.Result() - shift, basin.NearRun, Measure.Length, Loft);
        FarRun = basin.Shift == 0 ? SideRun : new("run of the other side wall", "d_w2", SideRun.Result() + shift, basin.FarRun, Measure.Length, Loft);
        NearSlope = basin.Shift == 0 ? Angle("slope of the side walls", "φ_w", SideRun.Result(), basin.SideRun) : Angle("slope of that side wall", "φ_w1", NearRun.Result(), basin.NearRun);
        FarSlope = basin.Shift == 0 ? NearSlope : Angle("slope of the other side wall", "φ_w2", FarRun.Result(), basin.FarRun);
        HeadSlope = Angle("slope of the head wall", "φ_h", HeadRun, basin.HeadRun);
        FootSlope = Angle("slope of the foot wall", "φ_f", FootRun, basin.FootRun);
    }

    public Expression RimLength { get; }

    public Expression RimWidth { get; }

    public Expression RimRadius { get; }

    public Expression FloorLength { get; }

    public Expression FloorWidth { get; }

    public Expression FloorRadius { get; }

    public Expression Depth { get; }

    public Expression HeadRun { get; }

    public Expression FootRun { get; }

    public Expression Radius { get; }

    public WorkingStep SideRun { get; }

    public WorkingStep RadiusChange { get; }

    public WorkingStep NearRun { get; }

    public WorkingStep FarRun { get; }

    public WorkingStep NearSlope { get; }

    public WorkingStep FarSlope { get; }

    /// <summary>The runs and slopes of the sides, once where both are alike.</summary>
    public WorkingStep[] SideSteps => basin.Shift == 0 ? [SideRun, NearSlope] : [SideRun, NearRun, FarRun, NearSlope, FarSlope];

    public WorkingStep HeadSlope { get; }

    public WorkingStep FootSlope { get; }

    public static Expression Tape(string symbol, double value) => Expression.Quantity(symbol, value, Measure.Length);

    public Expression RimArea() => PlaneShapes.RoundedRectangle(RimLength, RimWidth, RimRadius);

    public Expression FloorArea() => PlaneShapes.RoundedRectangle(FloorLength, FloorWidth, FloorRadius);

    public Expression Sides() => basin.Shift == 0
        ? ((RimLength - (2 * RimRadius)) + (FloorLength - (2 * FloorRadius))) * Slant(SideRun.Result())
        : Side(NearRun.Result()) + Side(FarRun.Result());

    /// <summary>Area times slope of the sides, from the step of their area where both are alike.</summary>
    public Expression SideTilt(WorkingStep sides) => basin.Shift == 0
        ? sides.Result() * NearSlope.Result()
        : (Side(NearRun.Result()) * NearSlope.Result()) + (Side(FarRun.Result()) * FarSlope.Result());

    public Expression End(Expression run) => ((RimWidth - (2 * RimRadius)) + (FloorWidth - (2 * FloorRadius))) / 2 * Slant(run);

    public WorkingStep CornerSlant() => Corner("√(H² + n²)", "J_s", Slant, basin.CornerSlant, Measure.Length);

    public WorkingStep CornerSlopedSlant() => Corner("φ √(H² + n²)", "J_φs", run => Slope(run) * Slant(run), basin.CornerSlopedSlant, Measure.Length);

    public WorkingStep CornerSlopeTangent() =>
        Corner("φ tan(φ/2)", "J_φτ", run => Slope(run) * HalfTangent(run), basin.CornerSlopeTangent, Measure.Number);

    public WorkingStep CornerVersine() => Corner(
        "(1 − cos φ)(1 + tan²(φ/2)/2)",
        "J_v",
        run => (1 - Expression.Cos(Slope(run))) * (1 + (Expression.Square(HalfTangent(run)) / 2)),
        basin.CornerVersine,
        Measure.Number);

    /// <summary>By how much the cove's change over-reads at the corners.</summary>
    public WorkingStep CoveExcess(WorkingStep slopeTangent, WorkingStep versine) => new(
        "over-reading of the cove at the corners",
        "ε_cove",
        2 * Expression.Square(Radius) * (slopeTangent.Result() - versine.Result()),
        basin.CoveOverestimate,
        Measure.Area,
        Source.Derived("Pappus, second order in the cove radius, exact for conical corners"));

    /// <summary>∫ and ∮ of φ and of tan(φ/2): what area and water of the cove rest on.</summary>
    public WorkingStep[] CoveLines()
    {
        WorkingStep slope = Corner("φ", "J_φ", Slope, basin.CornerSlope, Measure.Number);
        WorkingStep tangent = Corner("tan(φ/2)", "J_τ", HalfTangent, basin.CornerTangent, Measure.Number);
        return
        [
            slope,
            Along("φ", "M_φ", static angle => angle, slope, basin.LineSlope),
            tangent,
            Along("tan(φ/2)", "M_τ", static angle => Expression.Tan(angle / 2), tangent, basin.LineTangent),
        ];
    }

    /// <summary>∫ and ∮ of φ² and of φ tan(φ/2): what the mean slopes rest on.</summary>
    public WorkingStep[] TiltLines(WorkingStep slopeTangent)
    {
        WorkingStep squared = Corner("φ²", "J_φφ", run => Expression.Square(Slope(run)), basin.CornerSlopeSquared, Measure.Number);
        return
        [
            squared,
            Along("φ²", "M_φφ", Expression.Square, squared, basin.LineSlopeSquared),
            Along("φ tan(φ/2)", "M_φτ", static angle => angle * Expression.Tan(angle / 2), slopeTangent, basin.LineSlopeTangent),
        ];
    }

    public Expression Section(Expression height)
    {
        Expression share = height / Depth;
        return PlaneShapes.RoundedRectangle(
            FloorLength + ((RimLength - FloorLength) * share),
            FloorWidth + ((RimWidth - FloorWidth) * share),
            FloorRadius + (RadiusChange.Result() * share));
    }

    private Expression Slant(Expression run) => Expression.Sqrt(Expression.Square(Depth) + Expression.Square(run));

    private Expression Slope(Expression run) => (Expression.Pi() / 2) - Expression.Arctan(run / Depth);

    private Expression HalfTangent(Expression run) => Expression.Tan(Slope(run) / 2);

    private WorkingStep Angle(string name, string symbol, Expression run, double value) =>
        new(name, symbol, Slope(run), RuledBasin.Slope(value, basin.Depth), Measure.Angle, Loft);

    private WorkingStep Corner(string what, string symbol, Func<Expression, Expression> integrand, double value, Measure measure) => new(
        "head's and foot's corner: integrals of " + what,
        symbol,
        OverCorners(integrand),
        value,
        measure,
        Loft);

    private WorkingStep Along(string what, string symbol, Func<Expression, Expression> function, WorkingStep corners, double value) => new(
        "along the floor line: integral of " + what,
        symbol,
        (basin.Shift == 0
            ? 2 * (FloorLength - (2 * FloorRadius)) * function(NearSlope.Result())
            : (FloorLength - (2 * FloorRadius)) * (function(NearSlope.Result()) + function(FarSlope.Result())))
            + ((FloorWidth - (2 * FloorRadius)) * (function(HeadSlope.Result()) + function(FootSlope.Result())))
            + (2 * FloorRadius * corners.Result()),
        value,
        Measure.Length,
        Line);

    private Expression Side(Expression run) => ((RimLength - (2 * RimRadius)) + (FloorLength - (2 * FloorRadius))) / 2 * Slant(run);

    private Expression OverCorners(Func<Expression, Expression> integrand) => basin.Shift == 0
        ? OverCorner(HeadRun, SideRun.Result(), integrand) + OverCorner(FootRun, SideRun.Result(), integrand)
        : (OverCorner(HeadRun, NearRun.Result(), integrand) + OverCorner(FootRun, NearRun.Result(), integrand)
            + OverCorner(HeadRun, FarRun.Result(), integrand) + OverCorner(FootRun, FarRun.Result(), integrand)) / 2;

    // n(θ) = Δr + (d − Δr) cos θ + (d_w − Δr) sin θ, the wall's run towards the plan angle θ.
    private Expression OverCorner(Expression endRun, Expression side, Func<Expression, Expression> integrand)
    {
        Expression change = RadiusChange.Result();
        return Expression.Integral("θ", 0, Expression.Pi() / 2, angle => integrand(
            change + ((endRun - change) * Expression.Cos(angle)) + ((side - change) * Expression.Sin(angle))));
    }
}
