using System;
using Refinish.Numerics;

namespace Refinish.Fixtures;

/// <summary>
/// Plane shapes in SI. L length, W width, r corner radius, D diameter:
/// rounded rectangle A = L W − (4 − π) r², P = 2 (L + W) − (8 − 2π) r; disc A = π D² / 4, P = π D.
/// </summary>
internal static class PlaneShapes
{
    public static readonly Source Elementary = Source.Derived("elementary plane geometry");

    /// <summary>How far a radius given in one unit may miss half of a side given in another.</summary>
    public const double LastDigits = 1e-12;

    public static double RoundedRectangle(double length, double width, double radius) => (length * width) - ((4 - Math.PI) * (radius * radius));

    public static Expression RoundedRectangle(Expression length, Expression width, Expression radius) =>
        (length * width) - ((4 - Expression.Pi()) * Expression.Square(radius));

    public static double RoundedRectangleEdge(double length, double width, double radius) => (2 * (length + width)) - ((8 - (2 * Math.PI)) * radius);

    public static Expression RoundedRectangleEdge(Expression length, Expression width, Expression radius) =>
        (2 * (length + width)) - ((8 - (2 * Expression.Pi())) * radius);

    public static double Disc(double diameter) => Math.PI * (diameter * diameter) / 4;

    public static Expression Disc(Expression diameter) => Expression.Pi() * Expression.Square(diameter) / 4;

    public static double Circle(double diameter) => Math.PI * diameter;

    public static Expression Circle(Expression diameter) => Expression.Pi() * diameter;

    public static double Ellipse(double length, double width) => Math.PI * (length * width) / 4;

    public static Expression Ellipse(Expression length, Expression width) => Expression.Pi() * (length * width) / 4;

    /// <summary>Four quarter arcs: P = 4 ∫ √(a² sin²t + b² cos²t) dt over 0 … π/2.</summary>
    public static double EllipseEdge(double length, double width) =>
        4 * Quadrature.GaussLegendre(
            (A: length / 2, B: width / 2),
            static (half, t) => Math.Sqrt(Square(half.A * Math.Sin(t)) + Square(half.B * Math.Cos(t))),
            0,
            Math.PI / 2);

    public static Expression EllipseEdge(Expression length, Expression width) =>
        4 * Expression.Integral("t", 0, Expression.Pi() / 2, t => Expression.Sqrt(
            Expression.Square(length / 2 * Expression.Sin(t)) + Expression.Square(width / 2 * Expression.Cos(t))));

    private static double Square(double x) => x * x;
}
