using System;
using Refinish.Numerics;

namespace Refinish.Fixtures;

/// <summary>
/// The lower half of an ellipsoid with half axes a, b in plan and c downwards, in SI.
/// Area = 4 ∫₀^{π/2} ∫₀¹ √(p(φ)² (1 − u²) + a² b² u²) du dφ with p(φ) = c √(b² cos²φ + a² sin²φ), which is 2π R_G(a²b², a²c², b²c²)
/// with Carlson's symmetric elliptic integral R_G (u = cos θ of its double integral); V = ⅔ π a b c.
/// </summary>
/// <remarks>
/// Source: NIST Digital Library of Mathematical Functions, §19.33(i) with 19.16.3 (from memory, unverified; the tests hold it to published values, to spheroids and to Carlson's duplication).
/// Error of the two 32-point rules: below 1e-10 for bowls no deeper than four times their shorter half axis, below 1e-8 for any that the measurements allow.
/// </remarks>
internal readonly record struct HalfEllipsoid(double A, double B, double C)
{
    public static readonly Source Carlson = Source.FromMemory("NIST Digital Library of Mathematical Functions, §19.33(i) with 19.16.3: the surface of an ellipsoid as Carlson's R_G, here its double integral");

    /// <summary>The stated relative error.</summary>
    public const double Error = 1e-8;

    private const double QuarterTurn = Math.PI / 2;

    public double Area => 4 * Quadrature.GaussLegendre(
        this,
        static (bowl, turn) => Quadrature.GaussLegendre(
            (Across: Square(bowl.Across(turn)), Along: Square(bowl.A * bowl.B)),
            static (squares, u) => Math.Sqrt((squares.Across * (1 - (u * u))) + (squares.Along * (u * u))),
            0,
            1),
        0,
        QuarterTurn);

    /// <summary>Area times slope, in the angle θ because the slope bends sharply in u at the bottom.</summary>
    public double Tilt => 4 * Quadrature.GaussLegendre(
        this,
        static (bowl, turn) => Quadrature.GaussLegendre(
            (Across: bowl.Across(turn), Along: bowl.A * bowl.B),
            static (normal, fall) =>
            {
                double level = normal.Across * Math.Sin(fall);
                double upright = normal.Along * Math.Cos(fall);
                return Math.Sqrt(Square(level) + Square(upright)) * Math.Atan(level / upright) * Math.Sin(fall);
            },
            0,
            QuarterTurn),
        0,
        QuarterTurn);

    /// <summary>Water up to a depth h above the bottom: V = π a b h² (3c − h) / (3c²).</summary>
    public double Capacity(double level) => Math.PI * A * B * (level * level) * ((3 * C) - level) / (3 * (C * C));

    private double Across(double turn) => C * Math.Sqrt(Square(B * Math.Cos(turn)) + Square(A * Math.Sin(turn)));

    private static double Square(double x) => x * x;
}
