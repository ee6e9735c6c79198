using System;

namespace Refinish.Fixtures;

/// <summary>The formulas of <see cref="SuperellipseBasin"/> in the same symbols, and the patches of an oval basin.</summary>
internal sealed class SuperellipseBasinExpressions
{
    private static readonly Source Loft = Source.Derived("surface integral of a ruled loft between two superellipses, in octants");

    private readonly SuperellipseBasin basin;
    private readonly Expression depth;
    private readonly Octant[] octants;

    public SuperellipseBasinExpressions(SuperellipseBasin basin)
    {
        this.basin = basin;
        Expression a = Tape("a_t", basin.MouthA), b = Tape("b_t", basin.MouthB), p = 2 / Expression.Quantity("n_t", basin.MouthN, Measure.Number);
        Expression c = Tape("a_f", basin.FloorA), d = Tape("b_f", basin.FloorB), g = 2 / Expression.Quantity("n_f", basin.FloorN, Measure.Number);
        depth = Tape("H", basin.Depth);
        octants = [new(a, b, p, c, d, g), new(b, a, p, d, c, g)];
    }

    /// <summary>Floor and walls, drain and overflow taken off.</summary>
    public SurfacePatch[] Patches(double drain, double overflow)
    {
        WorkingStep floor = Outline("floor", "A_f", basin.FloorA, basin.FloorB, basin.FloorN, basin.FloorArea);
        double walls = basin.Walls;
        WorkingStep wall = Area("walls", "A_wall", Walls((at, v) => Element(at, v)), walls);
        Expression slope = Walls((at, v) => Element(at, v) * Slope(at, v)) / wall.Result();
        return
        [
            new(floor, FixtureZoneKind.Floor, 0, null, 0, 1, drain),
            new(wall, FixtureZoneKind.Wall, basin.WallTilt / walls, slope, SuperellipseBasin.Error, 1, overflow),
        ];
    }

    public WorkingStep Mouth() => Outline("mouth", "A_t", basin.MouthA, basin.MouthB, basin.MouthN, basin.MouthArea);

    /// <summary>Up to a level above the floor.</summary>
    public Workings Water(double level)
    {
        Expression h = Tape("h", level);
        WorkingStep low = Area("section at the floor", "A_0", Section(0), basin.Section(0));
        WorkingStep middle = Area("section at half the level", "A_1", Section(h / depth / 2), basin.Section(level / basin.Depth / 2));
        WorkingStep surface = Area("section at the water", "A_2", Section(h / depth), basin.Section(level / basin.Depth));
        WorkingStep water = new("water up to the level", "V", h * (low.Result() + (4 * middle.Result()) + surface.Result()) / 6, basin.Capacity(level), Measure.Capacity, RuledBasinExpressions.Prismoid);
        return new Workings("Water in the basin", [low, middle, surface, water]);
    }

    public SurfaceBand[] Bands()
    {
        SuperellipseBasin shape = basin;
        MeshPoint middle = new(0, 0, 0);
        return
        [
            SurfaceBand.Ruled(FixtureZoneKind.Floor, _ => middle, turn => shape.Point(false, turn)),
            SurfaceBand.Ruled(FixtureZoneKind.Wall, turn => shape.Point(false, turn), turn => shape.Point(true, turn)),
        ];
    }

    private static WorkingStep Area(string name, string symbol, Expression formula, double value) => new(name, symbol, formula, value, Measure.Area, Loft);

    private static WorkingStep Outline(string name, string symbol, double a, double b, double n, double value)
    {
        Expression square = Expression.Quantity("n", n, Measure.Number);
        Expression formula = 4 * Tape("a", a) * Tape("b", b) * Expression.Square(Expression.Gamma(1 + (1 / square))) / Expression.Gamma(1 + (2 / square));
        return new(name, symbol, formula, value, Measure.Area, Source.Derived("area of a superellipse by the gamma function"));
    }

    private static Expression Tape(string symbol, double value) => Expression.Quantity(symbol, value, Measure.Length);

    private static Expression Mix(Expression floor, Expression mouth, Expression share) => floor + ((mouth - floor) * share);

    private Expression Walls(Func<Curve, Expression, Expression> integrand) =>
        4 * (Over(octants[0], at => Expression.Integral("v", 0, 1, v => integrand(at, v))) + Over(octants[1], at => Expression.Integral("v", 0, 1, v => integrand(at, v))));

    private Expression Section(Expression share) => 4 * (Over(octants[0], at => Sweep(at, share)) + Over(octants[1], at => Sweep(at, share)));

    private static Expression Sweep(Curve at, Expression share) =>
        ((Mix(at.FloorX, at.X, share) * Mix(at.FloorDy, at.Dy, share)) - (Mix(at.FloorY, at.Y, share) * Mix(at.FloorDx, at.Dx, share))) / 2;

    private Expression Element(Curve at, Expression v)
    {
        Expression dx = Mix(at.FloorDx, at.Dx, v), dy = Mix(at.FloorDy, at.Dy, v);
        return Expression.Sqrt((Expression.Square(depth) * (Expression.Square(dx) + Expression.Square(dy))) + Expression.Square(Run(at, dx, dy)));
    }

    private Expression Slope(Curve at, Expression v)
    {
        Expression dx = Mix(at.FloorDx, at.Dx, v), dy = Mix(at.FloorDy, at.Dy, v);
        return (Expression.Pi() / 2) - Expression.Arctan(Run(at, dx, dy) / (depth * Expression.Sqrt(Expression.Square(dx) + Expression.Square(dy))));
    }

    private static Expression Run(Curve at, Expression dx, Expression dy) => (dy * (at.X - at.FloorX)) - (dx * (at.Y - at.FloorY));

    private static Expression Over(Octant octant, Func<Curve, Expression> integrand) => Expression.Integral("q", 0, 1, q =>
        integrand(octant.At(Expression.Pi() / 4 * Expression.Power(q, SuperellipseBasin.Smoothing)))
            * (Expression.Pi() / 4 * SuperellipseBasin.Smoothing * Expression.Power(q, SuperellipseBasin.Smoothing - 1)));

    private sealed record Curve(Expression X, Expression Y, Expression Dx, Expression Dy, Expression FloorX, Expression FloorY, Expression FloorDx, Expression FloorDy);

    private sealed record Octant(Expression A, Expression B, Expression P, Expression C, Expression D, Expression G)
    {
        public Curve At(Expression angle)
        {
            Expression cos = Expression.Cos(angle), sin = Expression.Sin(angle);
            Expression cp = Expression.Power(cos, P), sp = Expression.Power(sin, P), cg = Expression.Power(cos, G), sg = Expression.Power(sin, G);
            return new(
                A * cp, B * sp, -(A * P * cp * sin / cos), B * P * sp * cos / sin,
                C * cg, D * sg, -(C * G * cg * sin / cos), D * G * sg * cos / sin);
        }
    }
}
