using System;
using Refinish.Numerics;

namespace Refinish.Fixtures;

/// <summary>
/// The lower half of an ellipsoid with half axes a, b in plan and c downwards, in SI. Area = 4 ∫₀^{π/2} ∫₀¹ √(p(φ)² (1 − u²) + a² b² u²) du
/// dφ with p(φ) = c √(b² cos²φ + a² sin²φ), which is 2π R_G(a²b², a²c², b²c²) with Carlson's symmetric elliptic integral R_G (u = cos θ of
/// its double integral); V = ⅔ π a b c.
/// </summary>
/// <remarks>
/// Source: NIST Digital Library of Mathematical Functions, §19.33(i) with 19.16.3 (from memory, unverified; the tests hold it to published
/// values, to spheroids and to Carlson's duplication). Error of the two 32-point rules: below 1e-10 for bowls no deeper than four times
/// their shorter half axis, below 1e-8 for any that the measurements allow.
/// </remarks>
internal readonly record struct HalfEllipsoid(double A, double B, double C)
{
    public static readonly Source Carlson = Source.FromMemory(
        "NIST Digital Library of Mathematical Functions, §19.33(i) with 19.16.3: the surface of an ellipsoid as Carlson's R_G, here its double integral");

    /// <summary>The stated relative error.</summary>
    public const double Error = 1e-8;

    public Num Area(Trace? t = null) =>
        4 * (t is null ? PlainArea() : Surface(Axes(t), t.Pi() / 2, Surface(Axes(null), Math.PI / 2, null).Value));

    /// <summary>Area times slope, in the angle θ because the slope bends sharply in u at the bottom.</summary>
    public Num Tilt(Trace? t = null) =>
        4 * (t is null ? PlainTilt() : Tilted(Axes(t), t.Pi() / 2, Tilted(Axes(null), Math.PI / 2, null).Value));

    /// <summary>Water up to a depth h above the bottom: V = π a b h² (3c − h) / (3c²).</summary>
    public Num Capacity(Num level, Trace? t = null)
    {
        (Num a, Num b, Num c) = Axes(t);
        return Num.Pi * a * b * Num.Square(level) * ((3 * c) - level) / (3 * Num.Square(c));
    }

    // The two double integrals as they are written, and in plain numbers for their thousand points; a test ties them.
    private static Num Surface((Num A, Num B, Num C) axes, Num quarter, double? found) => Num.Integral(
        "φ", 0, quarter, axes, static (in bowl, turn) => Num.Integral(
            "u", 0, 1, (Across: Num.Square(Across(bowl, turn)), Along: Num.Square(bowl.A * bowl.B)),
            static (in squares, u) => Num.Sqrt((squares.Across * (1 - Num.Square(u))) + (squares.Along * Num.Square(u)))),
        found);

    private double PlainArea() => Quadrature.GaussLegendre(
        Axes(null), static (in bowl, turn) => Quadrature.GaussLegendre(
            (Across: Num.Square(Across(bowl, turn)).Value, Along: Num.Square(bowl.A * bowl.B).Value),
            static (in squares, u) => Math.Sqrt((squares.Across * (1 - (u * u))) + (squares.Along * (u * u))), 0, 1),
        0, Math.PI / 2);

    private static Num Tilted((Num A, Num B, Num C) axes, Num quarter, double? found) => Num.Integral(
        "φ", 0, quarter, (Axes: axes, Quarter: quarter), static (in bowl, turn) => Num.Integral(
            "θ", 0, bowl.Quarter, (Across: Across(bowl.Axes, turn), Along: bowl.Axes.A * bowl.Axes.B),
            static (in normal, fall) =>
            {
                Num level = normal.Across * Num.Sin(fall);
                Num upright = normal.Along * Num.Cos(fall);
                return Num.Sqrt(Num.Square(level) + Num.Square(upright)) * Num.Arctan(level / upright) * Num.Sin(fall);
            }),
        found);

    private double PlainTilt() => Quadrature.GaussLegendre(
        Axes(null), static (in bowl, turn) => Quadrature.GaussLegendre(
            (Across: Across(bowl, turn).Value, Along: (bowl.A * bowl.B).Value),
            static (in normal, fall) =>
            {
                double sine = Math.Sin(fall);
                double level = normal.Across * sine;
                double upright = normal.Along * Math.Cos(fall);
                return Math.Sqrt((level * level) + (upright * upright)) * Math.Atan(level / upright) * sine;
            },
            0, Math.PI / 2),
        0, Math.PI / 2);

    private static Num Across((Num A, Num B, Num C) bowl, Num turn) =>
        bowl.C * Num.Sqrt(Num.Square(bowl.B * Num.Cos(turn)) + Num.Square(bowl.A * Num.Sin(turn)));

    private (Num A, Num B, Num C) Axes(Trace? t) =>
        (t.Given("a", A, Measure.Length), t.Given("b", B, Measure.Length), t.Given("c", C, Measure.Length));
}
