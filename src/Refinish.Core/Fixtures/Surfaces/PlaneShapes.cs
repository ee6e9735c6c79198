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

    public static Num RoundedRectangle(Num length, Num width, Num radius) =>
        (length * width) - ((4 - PiBeside(length)) * Num.Square(radius));

    public static Num RoundedRectangleEdge(Num length, Num width, Num radius) =>
        (2 * (length + width)) - ((8 - (2 * PiBeside(length))) * radius);

    public static Num Disc(Num diameter) => Num.Pi * Num.Square(diameter) / 4;

    public static Num Circle(Num diameter) => Num.Pi * diameter;

    public static Num Ellipse(Num length, Num width) => Num.Pi * (length * width) / 4;

    /// <summary>Four quarter arcs: P = 4 ∫ √(a² sin²t + b² cos²t) dt over 0 … π/2.</summary>
    public static Num EllipseEdge(Num length, Num width) => 4 * Num.Integral("t", 0, PiBeside(length) / 2, t =>
        Num.Sqrt(Num.Square(length / 2 * Num.Sin(t)) + Num.Square(width / 2 * Num.Cos(t))));

    /// <summary>π, as a letter where it stands among the plain numbers of a formula of which a derivation is made.</summary>
    public static Num PiBeside(Num other) => other.IsTraced ? new Num(Math.PI, Num.Pi.Formula) : Num.Pi;
}
