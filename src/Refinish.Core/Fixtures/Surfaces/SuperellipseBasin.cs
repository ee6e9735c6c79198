using System;
using Refinish.Numerics;

namespace Refinish.Fixtures;

/// <summary>
/// A basin whose level outline is a superellipse |x/a|ⁿ + |y/b|ⁿ = 1 at the mouth (index t) and at the floor (f), joined by straight
/// rulings between points of equal parameter: x = a cos^(2/n) τ, y = b sin^(2/n) τ. H depth; all in SI. Outline A = 4 a b Γ(1 + 1/n)² / Γ(1
/// + 2/n), closed. Walls = 8 octants of ∫∫ √(H² (x′² + y′²) + (x′ Δy − y′ Δx)²) dv dτ with x′ = (1 − v) x′_f + v x′_t, Δ = mouth − floor;
/// section = ∫ (x y′ − y x′) dτ / 2.
/// </summary>
/// <remarks>
/// x′ and y′ are not smooth where the outline meets an axis, so each octant runs over q with τ = π q¹² / 4, which makes the integrand
/// smooth there. Error of the two 32-point rules: below 1e-8 of the walls for exponents from 2 to 6 (held by a test against finer rules).
/// Sections are quadratic in the height, so the prismoidal rule is exact. Source: derived; the tests hold it to elliptic cones, to the
/// Gamma function and to triangulation.
/// </remarks>
internal readonly record struct SuperellipseBasin(
    double MouthA, double MouthB, double MouthN, double FloorA, double FloorB, double FloorN, double Depth)
{
    public const double Error = 1e-8;

    /// <summary>The power that smooths the ends of an octant.</summary>
    public const int Smoothing = 12;

    public static readonly Source Loft = Source.Derived("surface integral of a ruled loft between two superellipses, in octants");
    private static readonly Source ByGamma = Source.Derived("area of a superellipse by the gamma function");

    public Num MouthArea(Trace? t = null) => t.Step("mouth", "A_t", Measure.Area, ByGamma, Outline(MouthA, MouthB, MouthN, t));

    public Num FloorArea(Trace? t = null) => t.Step("floor", "A_f", Measure.Area, ByGamma, Outline(FloorA, FloorB, FloorN, t));

    public Num Walls(Trace? t = null) => t.Step("walls", "A_wall", Measure.Area, Loft, OverOctants(t, 0, t is null
        ? static (half, _, at) => Quadrature.GaussLegendre(new Strip(at, half.Depth), static (in strip, v) => strip.Element(v, false), 0, 1)
        : static (half, _, at) => Num.Integral("v", 0, 1, (half.Depth, at), static (in of, v) => Element(of.Depth, of.at, v))));

    /// <summary>Area times slope of the walls.</summary>
    public Num WallTilt(Trace? t = null) => OverOctants(t, 0, t is null
        ? static (half, _, at) => Quadrature.GaussLegendre(new Strip(at, half.Depth), static (in strip, v) => strip.Element(v, true), 0, 1)
        : static (half, _, at) => Num.Integral(
            "v", 0, 1, (half.Depth, at), static (in of, v) => Element(of.Depth, of.at, v) * Slope(of.Depth, of.at, v)));

    /// <summary>Water up to a level above the floor.</summary>
    public Num Water(Num level, Trace? t = null)
    {
        Num depth = t.Given("H", Depth, Measure.Length);
        Num low = t.Step("section at the floor", "A_0", Measure.Area, Loft, Section(0, t));
        Num middle = t.Step("section at half the level", "A_1", Measure.Area, Loft, Section(level / depth / 2, t));
        Num surface = t.Step("section at the water", "A_2", Measure.Area, Loft, Section(level / depth, t));
        return t.Step("water up to the level", "V", Measure.Capacity, RuledBasin.Prismoid, level * (low + (4 * middle) + surface) / 6);
    }

    /// <summary>How the water up to a level above the floor follows.</summary>
    public Workings Capacity(double level)
    {
        SuperellipseBasin basin = this;
        return Trace.Of("Water in the basin", t => basin.Water(t.Given("h", level, Measure.Length), t));
    }

    /// <summary>Floor and walls, of which the area was found already.</summary>
    public SurfacePatch[] Patches(double walls, double drain, double overflow)
    {
        SuperellipseBasin basin = this;
        return
        [
            new(FloorArea, FixtureZoneKind.Floor, openings: drain),
            new(
                t => t is null ? walls : basin.Walls(t), FixtureZoneKind.Wall, (t, area) => basin.WallTilt(t) / area, Error,
                openings: overflow),
        ];
    }

    public SurfaceBand[] Bands()
    {
        SuperellipseBasin shape = this;
        MeshPoint middle = new(0, 0, 0);
        return
        [
            SurfaceBand.Ruled(FixtureZoneKind.Floor, _ => middle, turn => shape.Point(false, turn)),
            SurfaceBand.Ruled(FixtureZoneKind.Wall, turn => shape.Point(false, turn), turn => shape.Point(true, turn)),
        ];
    }

    /// <summary>A point of the mouth or the floor by the angle of its parameter.</summary>
    public MeshPoint Point(bool mouth, double turn)
    {
        (double a, double b, double n, double z) = mouth ? (MouthA, MouthB, MouthN, Depth) : (FloorA, FloorB, FloorN, 0);
        double c = Math.Cos(turn);
        double s = Math.Sin(turn);
        return new(a * Math.Sign(c) * Math.Pow(Math.Abs(c), 2 / n), b * Math.Sign(s) * Math.Pow(Math.Abs(s), 2 / n), z);
    }

    private static Num Outline(double a, double b, double n, Trace? t)
    {
        Num power = t.Given("n", n, Measure.Number);
        return 4 * t.Given("a", a, Measure.Length) * t.Given("b", b, Measure.Length)
            * Num.Square(Num.Gamma(1 + (1 / power))) / Num.Gamma(1 + (2 / power));
    }

    // The level section at a share of the depth.
    private Num Section(Num share, Trace? t) => OverOctants(t, share, static (_, v, at) =>
        ((Mix(at.FloorX, at.X, v) * Mix(at.FloorDy, at.Dy, v)) - (Mix(at.FloorY, at.Y, v) * Mix(at.FloorDx, at.Dx, v))) / 2);

    private Num OverOctants(Trace? t, Num share, Func<Half, Num, Ruling, Num> integrand)
    {
        Num a = t.Given("a_t", MouthA, Measure.Length), b = t.Given("b_t", MouthB, Measure.Length);
        Num c = t.Given("a_f", FloorA, Measure.Length), d = t.Given("b_f", FloorB, Measure.Length);
        Num p = 2 / t.Given("n_t", MouthN, Measure.Number), g = 2 / t.Given("n_f", FloorN, Measure.Number);
        Num depth = t.Given("H", Depth, Measure.Length);
        return 4 * (Over(new(a, b, p, c, d, g, depth), share, integrand) + Over(new(b, a, p, d, c, g, depth), share, integrand));
    }

    private static Num Over(Half octant, Num share, Func<Half, Num, Ruling, Num> integrand) =>
        Num.Integral("q", 0, 1, (octant, share, integrand), static (in of, q) => of.integrand(of.octant, of.share, of.octant.At(q))
            * (PlaneShapes.PiBeside(q) / 4 * Smoothing * Num.Power(q, Smoothing - 1)),
            octant.Depth.IsTraced ? Over(octant.Plain(), share.Value, integrand).Value : null);

    private static Num Element(Num depth, in Ruling at, Num v)
    {
        Num dx = Mix(at.FloorDx, at.Dx, v), dy = Mix(at.FloorDy, at.Dy, v);
        return Num.Sqrt((Num.Square(depth) * (Num.Square(dx) + Num.Square(dy))) + Num.Square(Run(at, dx, dy)));
    }

    private static Num Slope(Num depth, in Ruling at, Num v)
    {
        Num dx = Mix(at.FloorDx, at.Dx, v), dy = Mix(at.FloorDy, at.Dy, v);
        return (PlaneShapes.PiBeside(depth) / 2) - Num.Arctan(Run(at, dx, dy) / (depth * Num.Sqrt(Num.Square(dx) + Num.Square(dy))));
    }

    private static Num Run(in Ruling at, Num dx, Num dy) => (dy * (at.X - at.FloorX)) - (dx * (at.Y - at.FloorY));

    private static Num Mix(Num floor, Num mouth, Num share) => floor + ((mouth - floor) * share);

    /// <summary>Both outlines and their derivatives at one parameter.</summary>
    internal readonly record struct Ruling(Num X, Num Y, Num Dx, Num Dy, Num FloorX, Num FloorY, Num FloorDx, Num FloorDy);

    /// <summary>A ruling in plain numbers, for the thousand points of an octant; a test ties its element to what is written.</summary>
    private readonly struct Strip(in Ruling at, Num depth)
    {
        private readonly double depth = depth.Value;
        private readonly double x = (at.X - at.FloorX).Value;
        private readonly double y = (at.Y - at.FloorY).Value;
        private readonly double floorDx = at.FloorDx.Value;
        private readonly double floorDy = at.FloorDy.Value;
        private readonly double moreDx = (at.Dx - at.FloorDx).Value;
        private readonly double moreDy = (at.Dy - at.FloorDy).Value;

        public double Element(double v, bool isTilted)
        {
            double dx = floorDx + (moreDx * v);
            double dy = floorDy + (moreDy * v);
            double run = (dy * x) - (dx * y);
            double along = (dx * dx) + (dy * dy);
            double element = Math.Sqrt((depth * depth * along) + (run * run));
            return isTilted ? element * ((Math.PI / 2) - Math.Atan(run / (depth * Math.Sqrt(along)))) : element;
        }
    }

    /// <summary>The octant next to the first axis, P and G the exponents 2/n of mouth and floor.</summary>
    internal readonly record struct Half(Num A, Num B, Num P, Num FloorA, Num FloorB, Num G, Num Depth)
    {
        public Half Plain() => new(A.Value, B.Value, P.Value, FloorA.Value, FloorB.Value, G.Value, Depth.Value);

        public Ruling At(Num q)
        {
            Num angle = PlaneShapes.PiBeside(q) / 4 * Num.Power(q, Smoothing);
            Num cos = Num.Cos(angle), sin = Num.Sin(angle);
            Num cp = Num.Power(cos, P), sp = Num.Power(sin, P), cg = Num.Power(cos, G), sg = Num.Power(sin, G);
            return new(
                A * cp, B * sp, -(A * P * cp * sin / cos), B * P * sp * cos / sin,
                FloorA * cg, FloorB * sg, -(FloorA * G * cg * sin / cos), FloorB * G * sg * cos / sin);
        }
    }
}
