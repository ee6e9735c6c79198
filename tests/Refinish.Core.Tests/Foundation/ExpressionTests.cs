using System;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Foundation;

public class ExpressionTests
{
    private static readonly Trace T = new();
    private static readonly Num X = T.Given("x", 2, Measure.Number);
    private static readonly Num Film = T.Given("DFT", 30e-6, Measure.Film);
    private static readonly Num Solids = T.Given("VS_mix", 0.4, Measure.Percent);

    [Fact]
    [Evidence(Basis.Independent, "arithmetic done by hand")]
    public void Evaluates_as_arithmetic_does()
    {
        Numbers.Close(75e-6, (Film / Solids).Value);
        Numbers.Close(-3, (X - 5).Value);
        Numbers.Close(-2, (-X).Value);
        Numbers.Close(32, Num.Power(X, 5).Value);
        Numbers.Close(Math.Sqrt(2), Num.Sqrt(X).Value);
        Numbers.Close(2, Num.Ln(Num.Exp(X)).Value);
        Numbers.Close(Math.PI / 4, Num.Arctan(1).Value);
        Numbers.Close(0.5, Num.Sin(Num.Arcsin(0.5)).Value);
        Numbers.Close(3, Num.Max(X, 3).Value);
        Numbers.Close(2, Num.Min(X, 3).Value);
        Numbers.Close(3, Num.Ceiling(X + 0.1).Value);
        Numbers.Close(2, Num.Floor(X + 0.9).Value);
        Numbers.Close(6, Num.Sum([X, X, X]).Value);
        Assert.Equal(0, Num.Sum([]).Value);
        Numbers.Close(12.35, (double)Amount.Round(12.345m, Currency.Of("USD")).Value);
    }

    [Fact]
    [Evidence(Basis.Independent, "closed form: ∫ sin over 0 to π is 2; what a solver found is handed on")]
    public void Integrates_and_solves()
    {
        Numbers.Close(2, Num.Integral("θ", 0, T.Pi(), Num.Sin).Value, 1e-14);
        Numbers.Close(Math.Sqrt(2), Num.Solution(Math.Sqrt(2), "u", u => u * u, T.Number(2)).Value, 1e-15);
    }

    [Theory]
    [InlineData("(x + 1) · x", "(2 + 1) × 2")]
    [Evidence(Basis.Contract, "parentheses only where they are needed")]
    public void Writes_products_of_sums(string symbols, string numbers)
    {
        Expression product = ((X + 1) * X).Formula;
        Assert.Equal(symbols, product.Symbolic());
        Assert.Equal(numbers, product.Substituted(DisplayUnits.Si));
    }

    [Fact]
    [Evidence(Basis.Contract, "symbols, numbers with units, LaTeX")]
    public void Writes_formulas_in_three_ways()
    {
        Expression wet = (Film * (1 + X) / Solids).Formula;
        Assert.Equal("DFT · (1 + x) / VS_mix", wet.Symbolic());
        Assert.Equal("30 µm × (1 + 2) / 40 %", wet.Substituted(DisplayUnits.Si));
        Assert.Equal("1.1811 mil × (1 + 2) / 40 %", wet.Substituted(DisplayUnits.UsCustomary));
        Assert.Equal("\\frac{\\mathit{DFT} \\cdot \\left(1 + x\\right)}{\\mathit{VS}_{\\mathrm{mix}}}", wet.SymbolicLatex());
        Assert.Equal("\\frac{30\\,\\mathrm{\\mu m} \\cdot \\left(1 + 2\\right)}{40\\,\\mathrm{\\%}}", wet.SubstitutedLatex(DisplayUnits.Si));
        Assert.Equal("x − (x − 1)", (X - (X - 1)).Formula.Symbolic());
        Assert.Equal("x / (x · x)", (X / (X * X)).Formula.Symbolic());
        Assert.Equal("(30 µm)²", Num.Square(Film).Formula.Substituted(DisplayUnits.Si));
        Assert.Equal("√(x + 1)", Num.Sqrt(X + 1).Formula.Symbolic());
        Assert.Equal("−x", (-X).Formula.Symbolic());
        Assert.Equal("x^0.5", Num.Power(X, 0.5).Formula.Symbolic());
        Assert.Equal("∫[0 … π] sin(θ) dθ", Num.Integral("θ", 0, T.Pi(), Num.Sin).Formula.Symbolic());
        Assert.Equal("that u at which u · u = x", Num.Solution(Math.Sqrt(2), "u", u => u * u, X).Formula.Symbolic());
        Assert.Equal("max(x; 3)", Num.Max(X, 3).Formula.ToString());
        Assert.Equal("max(x; 3; x + 1)", Num.Max([X, 3, X + 1]).Formula.ToString());
        Numbers.Close(3, Num.Max([X, 3, X + 1]).Value);
        Assert.Same(X.Formula, Num.Max([X]).Formula);
        Assert.Equal("5 + (−3)", (5 + T.Number(-3)).Formula.Symbolic());
    }

    [Fact]
    [Evidence(Basis.Contract, "leaves refuse what is no number")]
    public void Refuses_leaves_that_mean_nothing()
    {
        Numbers.Refuses("value", () => T.Number(double.NaN));
        Numbers.Refuses("value", () => T.Given("x", double.PositiveInfinity, Measure.Number));
    }

    [Fact]
    [Evidence(Basis.Contract, "each step once, in the order in which they are first needed")]
    public void A_step_is_noted_once()
    {
        static Num Twice(Trace? t) => t.Step("twice", "y", Measure.Number, Source.Derived("test"), 2 * t.Given("x", 3, Measure.Number));
        Workings workings = Trace.Of(
            "Test", t => t.Step("sum", "z", Measure.Number, Source.Derived("test"), Twice(t) + Twice(t)), Twice);
        Assert.Equal(["y = 2 · x = 2 × 3 = 6", "z = y + y = 6 + 6 = 12"], Array.ConvertAll([.. workings.Steps], step => step.ToString()));
    }

    [Fact]
    [Evidence(Basis.Contract, "without a trace a formula keeps no text")]
    public void Without_a_trace_there_is_no_formula()
    {
        Trace? none = null;
        Num sum = none.Step("sum", "z", Measure.Number, Source.Derived("test"), none.Given("x", 3, Measure.Number) + 1);
        Assert.False(sum.IsTraced);
        Assert.Equal(4, sum.Value);
        Assert.Equal("4", sum.Formula.Symbolic());
        Assert.Equal("π · x", (Num.Pi * X).Formula.Symbolic());
        Assert.Equal("x", (0 + X).Formula.Symbolic());
    }
}
