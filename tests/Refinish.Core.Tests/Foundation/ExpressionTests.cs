using System;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Foundation;

public class ExpressionTests
{
    private static readonly Expression X = Expression.Quantity("x", 2, Measure.Number);
    private static readonly Expression Film = Expression.Quantity("DFT", 30e-6, Measure.Film);
    private static readonly Expression Solids = Expression.Quantity("VS_mix", 0.4, Measure.Percent);

    [Fact]
    [Evidence(Basis.Independent, "arithmetic done by hand")]
    public void Evaluates_as_arithmetic_does()
    {
        Numbers.Close(75e-6, (Film / Solids).Evaluate());
        Numbers.Close(-3, (X - 5).Evaluate());
        Numbers.Close(-2, (-X).Evaluate());
        Numbers.Close(32, Expression.Power(X, 5).Evaluate());
        Numbers.Close(Math.Sqrt(2), Expression.Sqrt(X).Evaluate());
        Numbers.Close(2, Expression.Ln(Expression.Exp(X)).Evaluate());
        Numbers.Close(Math.PI / 4, Expression.Arctan(1).Evaluate());
        Numbers.Close(0.5, Expression.Sin(Expression.Arcsin(0.5)).Evaluate());
        Numbers.Close(3, Expression.Max(X, 3).Evaluate());
        Numbers.Close(2, Expression.Min(X, 3).Evaluate());
        Numbers.Close(3, Expression.Ceiling(X + 0.1).Evaluate());
        Numbers.Close(2, Expression.Floor(X + 0.9).Evaluate());
        Numbers.Close(6, Expression.Sum([X, X, X]).Evaluate());
        Assert.Equal(0, Expression.Sum([]).Evaluate());
        Numbers.Close(12.35, Expression.Round(12.345, Currency.Of("USD")).Evaluate());
    }

    [Fact]
    [Evidence(Basis.Independent, "closed forms: ∫ sin over 0 to π is 2; the root of x² = 2")]
    public void Integrates_and_solves()
    {
        Numbers.Close(2, Expression.Integral("θ", 0, Expression.Pi(), Expression.Sin).Evaluate(), 1e-14);
        Numbers.Close(Math.Sqrt(2), Expression.Solution("u", 0, 2, u => u * u, 2).Evaluate(), 1e-15);
    }

    [Theory]
    [InlineData("(x + 1) · x", "(2 + 1) × 2")]
    [Evidence(Basis.Contract, "parentheses only where they are needed")]
    public void Writes_products_of_sums(string symbols, string numbers)
    {
        Expression product = (X + 1) * X;
        Assert.Equal(symbols, product.Symbolic());
        Assert.Equal(numbers, product.Substituted(DisplayUnits.Si));
    }

    [Fact]
    [Evidence(Basis.Contract, "symbols, numbers with units, LaTeX")]
    public void Writes_formulas_in_three_ways()
    {
        Expression wet = Film * (1 + X) / Solids;
        Assert.Equal("DFT · (1 + x) / VS_mix", wet.Symbolic());
        Assert.Equal("30 µm × (1 + 2) / 40 %", wet.Substituted(DisplayUnits.Si));
        Assert.Equal("1.1811 mil × (1 + 2) / 40 %", wet.Substituted(DisplayUnits.UsCustomary));
        Assert.Equal("\\frac{\\mathit{DFT} \\cdot \\left(1 + x\\right)}{\\mathit{VS}_{\\mathrm{mix}}}", wet.SymbolicLatex());
        Assert.Equal("\\frac{30\\,\\mathrm{\\mu m} \\cdot \\left(1 + 2\\right)}{40\\,\\mathrm{\\%}}", wet.SubstitutedLatex(DisplayUnits.Si));
        Assert.Equal("x − (x − 1)", (X - (X - 1)).Symbolic());
        Assert.Equal("x / (x · x)", (X / (X * X)).Symbolic());
        Assert.Equal("(30 µm)²", Expression.Square(Film).Substituted(DisplayUnits.Si));
        Assert.Equal("√(x + 1)", Expression.Sqrt(X + 1).Symbolic());
        Assert.Equal("−x", (-X).Symbolic());
        Assert.Equal("x^0.5", Expression.Power(X, 0.5).Symbolic());
        Assert.Equal("∫[0 … π] sin(θ) dθ", Expression.Integral("θ", 0, Expression.Pi(), Expression.Sin).Symbolic());
        Assert.Equal("that u at which u · u = x", Expression.Solution("u", 0, 2, u => u * u, X).Symbolic());
        Assert.Equal("max(x; 3)", Expression.Max(X, 3).ToString());
        Assert.Equal("max(x; 3; x + 1)", Expression.Max([X, 3, X + 1]).ToString());
        Numbers.Close(3, Expression.Max([X, 3, X + 1]).Evaluate());
        Assert.Same(X, Expression.Max([X]));
        Assert.Equal("5 + (−3)", (5 + Expression.Number(-3)).Symbolic());
    }

    [Fact]
    [Evidence(Basis.Contract, "leaves refuse what is no number and need a symbol")]
    public void Refuses_leaves_that_mean_nothing()
    {
        Numbers.Refuses("value", () => Expression.Number(double.NaN));
        Numbers.Refuses("value", () => Expression.Quantity("x", double.PositiveInfinity, Measure.Number));
        Assert.Throws<ArgumentException>(() => Expression.Quantity(string.Empty, 1, Measure.Number));
    }
}
