using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

// What the fixtures that are not yet written on Num use; goes when they are.
internal static partial class PlaneShapes
{
    public static double RoundedRectangle(double length, double width, double radius) => RoundedRectangle((Num)length, width, radius).Value;

    public static double RoundedRectangleEdge(double length, double width, double radius) => RoundedRectangleEdge((Num)length, width, radius).Value;

    public static double Disc(double diameter) => Disc((Num)diameter).Value;

    public static double Circle(double diameter) => Circle((Num)diameter).Value;

    public static double Ellipse(double length, double width) => Ellipse((Num)length, width).Value;

    public static double EllipseEdge(double length, double width) => EllipseEdge((Num)length, width).Value;

    public static Expression RoundedRectangle(Expression length, Expression width, Expression radius) =>
        RoundedRectangle(In(length), In(width), In(radius)).Formula;

    public static Expression RoundedRectangleEdge(Expression length, Expression width, Expression radius) =>
        RoundedRectangleEdge(In(length), In(width), In(radius)).Formula;

    public static Expression Disc(Expression diameter) => Disc(In(diameter)).Formula;

    public static Expression Circle(Expression diameter) => Circle(In(diameter)).Formula;

    public static Expression Ellipse(Expression length, Expression width) => Ellipse(In(length), In(width)).Formula;

    public static Expression EllipseEdge(Expression length, Expression width) => EllipseEdge(In(length), In(width)).Formula;

    private static Num In(Expression x) => new(x.Value, x);
}

internal static partial class ZoneSteps
{
    public static WorkingStep Level(string zone, string symbol) => Trace.Of("slope", t => Level(t, zone, symbol)).Steps[0];

    public static WorkingStep Upright(string zone, string symbol) => Trace.Of("slope", t => Upright(t, zone, symbol)).Steps[0];
}

public sealed partial record SurfacePatch
{
    internal SurfacePatch(
        WorkingStep step, FixtureZoneKind zone, double slope, Expression? slopeFormula = null, double relativeError = 0, double factor = 1,
        double openings = 0)
        : this(
            t => t.Step(step.Name, step.Symbol, step.Measure, step.Source, new Num(step.Value, step.Formula)), zone,
            slopeFormula is null && slope == 0 ? null : slopeFormula is null && slope == Math.PI / 2 ? Upright
                : (t, _) => t is null ? slope : new Num(slope, slopeFormula ?? Expression.Quantity("φ", slope, Measure.Angle)),
            relativeError, factor, openings)
    {
    }

    internal Expression SlopeFormula => Slope(new Trace(), Step.Value).Formula;

    internal static SurfacePatch Of(
        Workings workings, string symbol, FixtureZoneKind zone, double slope, double relativeError = 0, double factor = 1, double openings = 0)
    {
        foreach (WorkingStep step in workings.AllSteps())
        {
            if (step.Symbol == symbol)
            {
                return new(step, zone, slope, null, relativeError, factor, openings);
            }
        }

        throw new InvalidOperationException("The derivation has no step " + symbol + ".");
    }
}

internal static partial class PatchLedger
{
    public static Workings Write(
        string title, IReadOnlyList<SurfacePatch> patches, double coated, IEnumerable<WorkingStep> before, IEnumerable<WorkingStep> after,
        IEnumerable<Workings>? parts = null) =>
        Write(title, patches, before.Select(Noted), after.Select(Noted), parts ?? []);

    private static Func<Trace, Num> Noted(WorkingStep step) =>
        t => t.Step(step.Name, step.Symbol, step.Measure, step.Source, new Num(step.Value, step.Formula));
}
