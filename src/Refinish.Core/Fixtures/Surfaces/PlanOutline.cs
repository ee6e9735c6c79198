using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>The outline of a fixture seen from above: a rounded rectangle or an ellipse.</summary>
/// <remarks>
/// Rounded rectangle: A = L W − (4 − π) r², P = 2 (L + W) − (8 − 2π) r. Ellipse: A = π L W / 4, P by quadrature of its arc.
/// </remarks>
/// <example><code>
/// PlanOutline basin = PlanOutline.RoundedRectangle(Length.FromInches(24), Length.FromInches(19), Length.FromInches(4));
/// double squareInches = basin.Area.SquareInches;   // 442.27
/// </code></example>
public sealed record PlanOutline
{
    private static readonly Bounds Sides = Bounds.Between(0.05, 3, Measure.Length);

    private readonly double length;
    private readonly double width;
    private readonly double radius;

    private PlanOutline(double length, double width, double radius, bool isEllipse)
    {
        this.length = length;
        this.width = width;
        this.radius = radius;
        IsEllipse = isEllipse;
    }

    /// <summary>Length over all.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Width over all.</summary>
    public Length Width => Length.FromMeters(width);

    /// <summary>Corner radius; 0 for an ellipse.</summary>
    public Length CornerRadius => Length.FromMeters(radius);

    /// <summary>Whether it is an ellipse.</summary>
    public bool IsEllipse { get; }

    /// <summary>The area inside.</summary>
    public Area Area => Area.FromSquareMeters(Inside().Value);

    /// <summary>The length around.</summary>
    public Length Perimeter => Length.FromMeters(Around().Value);

    /// <summary>A rectangle with rounded corners.</summary>
    /// <param name="length">Length over all, 0.05 to 3 m.</param>
    /// <param name="width">Width over all, 0.05 to 3 m.</param>
    /// <param name="cornerRadius">Corner radius, 0 to half of the shorter side.</param>
    /// <returns>The outline.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static PlanOutline RoundedRectangle(Length length, Length width, Length cornerRadius)
    {
        double l = Guard.Within(length, Sides);
        double w = Guard.Within(width, Sides);
        return new(l, w, Guard.Within(cornerRadius, Bounds.NotNegative(Measure.Length, Math.Min(l, w) / 2 * (1 + PlaneShapes.LastDigits))),
            false);
    }

    /// <summary>An ellipse.</summary>
    /// <param name="length">Length over all, 0.05 to 3 m.</param>
    /// <param name="width">Width over all, 0.05 to 3 m.</param>
    /// <returns>The outline.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static PlanOutline Ellipse(Length length, Length width) => new(Guard.Within(length, Sides), Guard.Within(width, Sides), 0, true);

    /// <summary>Its point towards an angle, at a height.</summary>
    internal MeshPoint Towards(double turn, double z) =>
        IsEllipse ? PlanCurve.Ellipse(length, width, z, turn) : PlanCurve.RoundedRectangleTowards(length, width, radius, z, turn);

    /// <summary>The angles between which it is smooth.</summary>
    internal double[] Breaks() => IsEllipse ? PlanCurve.Turn : PlanCurve.Breaks(length, width, radius);

    /// <summary>How area and perimeter follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Outline in plan", Inside, Around);

    /// <summary>The shape and its size in one line, in metric units.</summary>
    /// <returns>Text such as <c>ellipse 560 mm × 460 mm</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        IsEllipse ? "ellipse {0} × {1}" : "rounded rectangle {0} × {1}, r {2}",
        Measure.Length.Format(length),
        Measure.Length.Format(width),
        Measure.Length.Format(radius));

    private Num Inside(Trace? t = null) => t.Step("area of the outline", "A_o", Measure.Area, PlaneShapes.Elementary,
        IsEllipse ? PlaneShapes.Ellipse(L(t), W(t)) : PlaneShapes.RoundedRectangle(L(t), W(t), t.Given("r", radius, Measure.Length)));

    private Num Around(Trace? t = null) => t.Step("perimeter of the outline", "P_o", Measure.Length, PlaneShapes.Elementary,
        IsEllipse ? PlaneShapes.EllipseEdge(L(t), W(t))
            : PlaneShapes.RoundedRectangleEdge(L(t), W(t), t.Given("r", radius, Measure.Length)));

    private Num L(Trace? t) => t.Given("L", length, Measure.Length);

    private Num W(Trace? t) => t.Given("W", width, Measure.Length);
}
