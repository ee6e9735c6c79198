namespace Refinish.Fixtures;

/// <summary>The formulas of <see cref="HalfEllipsoid"/> in the same symbols, to be written out.</summary>
internal sealed class HalfEllipsoidExpressions(HalfEllipsoid bowl)
{
    private readonly Expression a = Expression.Quantity("a", bowl.A, Measure.Length);
    private readonly Expression b = Expression.Quantity("b", bowl.B, Measure.Length);
    private readonly Expression c = Expression.Quantity("c", bowl.C, Measure.Length);

    public Expression Area() => 4 * Expression.Integral("φ", 0, Expression.Pi() / 2, turn => Expression.Integral("u", 0, 1, u =>
        Expression.Sqrt((Expression.Square(Across(turn)) * (1 - Expression.Square(u))) + (Expression.Square(a * b) * Expression.Square(u)))));

    public Expression Tilt() => 4 * Expression.Integral("φ", 0, Expression.Pi() / 2, turn => Expression.Integral("θ", 0, Expression.Pi() / 2, fall =>
    {
        Expression level = Across(turn) * Expression.Sin(fall);
        Expression upright = a * b * Expression.Cos(fall);
        return Expression.Sqrt(Expression.Square(level) + Expression.Square(upright)) * Expression.Arctan(level / upright) * Expression.Sin(fall);
    }));

    public Expression Capacity(Expression level) =>
        Expression.Pi() * a * b * Expression.Square(level) * ((3 * c) - level) / (3 * Expression.Square(c));

    private Expression Across(Expression turn) =>
        c * Expression.Sqrt(Expression.Square(b * Expression.Cos(turn)) + Expression.Square(a * Expression.Sin(turn)));
}
