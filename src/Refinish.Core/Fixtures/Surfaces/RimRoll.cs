using System;

namespace Refinish.Fixtures;

/// <summary>
/// A rolled rim in SI: part of a tube of radius a that turns by t from the mouth (its inner line) over the top and down the outside,
/// swept round a mouth of perimeter P. The tube's middle runs at P + 2π a (Steiner), and by Pappus S = a t (P + 2π a) − 2π a² sin t.
/// </summary>
/// <remarks>
/// Exact for a smooth convex mouth. With χ the angle from the crown, −π/2 at the mouth to e = t − π/2 outside, dS = a (P_c + 2π a sin
/// χ) dχ and the slope is |χ|, so that area × slope = a (P_c (π²/8 + e²/2) + 2π a (sin e − e cos e − 1)). Source: Pappus's and
/// Steiner's theorems, derived.
/// </remarks>
internal readonly record struct RimRoll(double Perimeter, double Radius, double Turn)
{
    public static readonly Source Pappus = Source.Derived("Pappus's theorem along a line offset by Steiner's formula");

    public Num Area(Trace? t = null) => (Tube(t) * Turned(t) * MiddleLine(t)) - (2 * t.Pi() * Num.Square(Tube(t)) * Num.Sin(Turned(t)));

    /// <summary>The line where it ends outside.</summary>
    public Num OuterLine(Trace? t = null) => MiddleLine(t) - (2 * t.Pi() * Tube(t) * Num.Cos(Turned(t)));

    /// <summary>Area times slope.</summary>
    public Num Tilt(Trace? t = null)
    {
        Num end = Turned(t) - (t.Pi() / 2);
        return Tube(t) * ((MiddleLine(t) * ((Num.Square(t.Pi()) / 8) + (Num.Square(end) / 2)))
            + (2 * t.Pi() * Tube(t) * (Num.Sin(end) - (end * Num.Cos(end)) - 1)));
    }

    public SurfacePatch Patch()
    {
        RimRoll roll = this;
        return new(
            t => t.Step("rolled rim", "S_roll", Measure.Area, Pappus, roll.Area(t)), FixtureZoneKind.Rim, (t, area) => roll.Tilt(t) / area);
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

    private Num MiddleLine(Trace? t) => t.Given("P", Perimeter, Measure.Length) + (2 * t.Pi() * Tube(t));

    private Num Tube(Trace? t) => t.Given("a", Radius, Measure.Length);

    private Num Turned(Trace? t) => t.Given("t", Turn, Measure.Angle);
}
