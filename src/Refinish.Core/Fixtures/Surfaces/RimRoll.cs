using System;

namespace Refinish.Fixtures;

/// <summary>
/// A rolled rim in SI: part of a tube of radius a that turns by t from the mouth (its inner line) over the top and down the outside, swept round a mouth of perimeter P.
/// The tube's middle runs at P + 2π a (Steiner), and by Pappus S = a t (P + 2π a) − 2π a² sin t.
/// </summary>
/// <remarks>
/// Exact for a smooth convex mouth. With χ the angle from the crown, −π/2 at the mouth to e = t − π/2 outside, dS = a (P_c + 2π a sin χ) dχ and the slope is |χ|,
/// so that area × slope = a (P_c (π²/8 + e²/2) + 2π a (sin e − e cos e − 1)). Source: Pappus's and Steiner's theorems, derived.
/// </remarks>
internal readonly record struct RimRoll(double Perimeter, double Radius, double Turn)
{
    public static readonly Source Pappus = Source.Derived("Pappus's theorem along a line offset by Steiner's formula");

    public double MiddleLine => Perimeter + (2 * Math.PI * Radius);

    public double Area => (Radius * Turn * MiddleLine) - (2 * Math.PI * (Radius * Radius) * Math.Sin(Turn));

    /// <summary>The line where it ends outside.</summary>
    public double OuterLine => MiddleLine - (2 * Math.PI * Radius * Math.Cos(Turn));

    public double Slope => Radius * ((MiddleLine * ((Math.PI * Math.PI / 8) + (End * End / 2))) + (2 * Math.PI * Radius * (Math.Sin(End) - (End * Math.Cos(End)) - 1))) / Area;

    private double End => Turn - (Math.PI / 2);

    public SurfacePatch Patch()
    {
        Expression p = Expression.Quantity("P", Perimeter, Measure.Length);
        Expression a = Expression.Quantity("a", Radius, Measure.Length);
        Expression t = Expression.Quantity("t", Turn, Measure.Angle);
        Expression pi = Expression.Pi();
        Expression line = p + (2 * pi * a);
        Expression end = t - (pi / 2);
        WorkingStep area = new("rolled rim", "S_roll", (a * t * line) - (2 * pi * Expression.Square(a) * Expression.Sin(t)), Area, Measure.Area, Pappus);
        Expression tilt = a * ((line * ((Expression.Square(pi) / 8) + (Expression.Square(end) / 2))) + (2 * pi * a * (Expression.Sin(end) - (end * Expression.Cos(end)) - 1)));
        return new(area, FixtureZoneKind.Rim, Slope, tilt / area.Result());
    }

    /// <summary>The surface over the parameter of a mouth, from the mouth outwards; normal gives the outward direction in plan.</summary>
    public SurfaceBand Band(Func<double, MeshPoint> mouth, Func<double, double> normal)
    {
        double radius = Radius;
        double turn = Turn;
        return new(FixtureZoneKind.Rim, (u, v) =>
        {
            MeshPoint at = mouth(u);
            double angle = normal(u);
            double outward = radius * (1 - Math.Cos(turn * v));
            return new(at.X + (outward * Math.Cos(angle)), at.Y + (outward * Math.Sin(angle)), at.Z + (radius * Math.Sin(turn * v)));
        });
    }
}
