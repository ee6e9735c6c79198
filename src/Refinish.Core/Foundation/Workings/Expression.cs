using System;
using System.Collections.Generic;
using Refinish.Numerics;

namespace Refinish;

/// <summary>
/// A formula as a value: one definition that is both evaluated and written out, so that a derivation shown to a person cannot drift from
/// the number that was calculated. Evaluation is in SI base units.
/// </summary>
/// <remarks>
/// Leaves are made with <see cref="Number"/> and <see cref="Quantity"/>, joined by the operators and by the functions of this class. The
/// library's kernels do not evaluate expressions; they are plain arithmetic, and the tests hold each expression to its kernel.
/// </remarks>
/// <example><code>
/// Expression dry = Expression.Quantity("DFT", 30e-6, Measure.Film);
/// Expression solids = Expression.Quantity("VS", 0.40, Measure.Percent);
/// double wet = (dry / solids).Evaluate();                                 // 0.000075 m
/// string text = (dry / solids).Symbolic();                                // "DFT / VS"
/// string numbers = (dry / solids).Substituted(DisplayUnits.Si);             // "30 µm / 40 %"
/// </code></example>
public abstract class Expression
{
    private protected Expression(double value) => Value = value;

    /// <summary>How tightly the outermost operation binds when written; see <see cref="Binding"/>.</summary>
    internal virtual int BindingIn(FormulaWriter writer) => Binding.Atom;

    /// <summary>The value in SI base units.</summary>
    public double Value { get; }

    /// <summary>The value in SI base units.</summary>
    /// <returns>The number.</returns>
    public double Evaluate() => Value;

    /// <summary>The formula in symbols, as plain text.</summary>
    /// <returns>Text such as <c>DFT / VS</c>.</returns>
    public string Symbolic() => FormulaWriter.Write(this, FormulaStyle.Plain, null);

    /// <summary>The formula with its numbers and units put in, as plain text.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>30 µm / 40 %</c>.</returns>
    public string Substituted(DisplayUnits system) => FormulaWriter.Write(this, FormulaStyle.Plain, system);

    /// <summary>The formula in symbols, in LaTeX mathematics without delimiters.</summary>
    /// <returns>Text such as <c>\frac{DFT}{VS}</c>.</returns>
    public string SymbolicLatex() => FormulaWriter.Write(this, FormulaStyle.Latex, null);

    /// <summary>The formula with its numbers and units put in, in LaTeX mathematics without delimiters.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>LaTeX text.</returns>
    public string SubstitutedLatex(DisplayUnits system) => FormulaWriter.Write(this, FormulaStyle.Latex, system);

    /// <summary>The formula in symbols.</summary>
    /// <returns>See <see cref="Symbolic"/>.</returns>
    public override string ToString() => Symbolic();

    /// <summary>A fixed number of the formula, such as the 2 in πr/2.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The leaf.</returns>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static Expression Number(double value) => new NumberExpression(value, null);

    /// <summary>A quantity with its symbol, its value and its kind.</summary>
    /// <param name="symbol">The trade's symbol; an underscore starts a subscript, as in <c>V_A</c>.</param>
    /// <param name="value">The value in the SI base unit of <paramref name="measure"/>.</param>
    /// <param name="measure">What kind of amount it is.</param>
    /// <returns>The leaf.</returns>
    /// <exception cref="ArgumentException"><paramref name="symbol"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static Expression Quantity(string symbol, double value, Measure measure) =>
        new QuantityExpression(Guard.Named(symbol, nameof(symbol)), value, Guard.NotNull(measure, nameof(measure)));

    /// <summary>The circle number.</summary>
    /// <returns>A leaf that is written π.</returns>
    public static Expression Pi() => Num.Pi.Formula;

    /// <summary>The sum of several terms; zero for none.</summary>
    /// <param name="terms">The terms in order.</param>
    /// <returns>The sum.</returns>
    public static Expression Sum(IEnumerable<Expression> terms)
    {
        Expression? sum = null;
        foreach (Expression term in Guard.NotNull(terms, nameof(terms)))
        {
            sum = sum is null ? term : sum + term;
        }

        return sum ?? Number(0);
    }

    /// <summary>A power with a fixed or calculated exponent.</summary>
    /// <param name="basis">The base.</param>
    /// <param name="exponent">The exponent.</param>
    /// <returns>The power.</returns>
    public static Expression Power(Expression basis, Expression exponent) => Num.Power(In(basis), In(exponent)).Formula;

    /// <summary>A square.</summary>
    /// <param name="basis">The base.</param>
    /// <returns>The square.</returns>
    public static Expression Square(Expression basis) => Num.Square(In(basis)).Formula;

    /// <summary>A square root.</summary>
    /// <param name="x">The radicand.</param>
    /// <returns>The root.</returns>
    public static Expression Sqrt(Expression x) => Num.Sqrt(In(x)).Formula;

    /// <summary>The exponential function.</summary>
    /// <param name="x">The exponent.</param>
    /// <returns>e to the x.</returns>
    public static Expression Exp(Expression x) => Num.Exp(In(x)).Formula;

    /// <summary>The natural logarithm.</summary>
    /// <param name="x">The argument.</param>
    /// <returns>ln x.</returns>
    public static Expression Ln(Expression x) => Num.Ln(In(x)).Formula;

    /// <summary>
    /// φ₁(x) = (exp(x) − 1) / x, which is 1 at zero: the mean of a first-order decay when x is minus the time in time constants.
    /// </summary>
    /// <param name="x">The argument.</param>
    /// <returns>φ₁(x), evaluated without loss of digits near zero.</returns>
    public static Expression Phi1(Expression x) => Num.Phi1(In(x)).Formula;

    /// <summary>φ₂(x) = (φ₁(x) − 1) / x, which is 1/2 at zero: what a first-order rise adds up to, per square of time.</summary>
    /// <param name="x">The argument.</param>
    /// <returns>φ₂(x), evaluated without loss of digits near zero.</returns>
    public static Expression Phi2(Expression x) => Num.Phi2(In(x)).Formula;

    /// <summary>The sine of an angle in radians.</summary>
    /// <param name="x">The angle.</param>
    /// <returns>sin x.</returns>
    public static Expression Sin(Expression x) => Num.Sin(In(x)).Formula;

    /// <summary>The cosine of an angle in radians.</summary>
    /// <param name="x">The angle.</param>
    /// <returns>cos x.</returns>
    public static Expression Cos(Expression x) => Num.Cos(In(x)).Formula;

    /// <summary>The tangent of an angle in radians.</summary>
    /// <param name="x">The angle.</param>
    /// <returns>tan x.</returns>
    public static Expression Tan(Expression x) => Num.Tan(In(x)).Formula;

    /// <summary>The angle in radians whose tangent is given.</summary>
    /// <param name="x">The tangent.</param>
    /// <returns>arctan x.</returns>
    public static Expression Arctan(Expression x) => Num.Arctan(In(x)).Formula;

    /// <summary>The angle in radians whose sine is given.</summary>
    /// <param name="x">The sine, −1 to 1.</param>
    /// <returns>arcsin x.</returns>
    public static Expression Arcsin(Expression x) => Num.Arcsin(In(x)).Formula;

    /// <summary>The gamma function, Γ(n) = (n − 1)! between the whole numbers too.</summary>
    /// <param name="x">The argument, more than 0.</param>
    /// <returns>Γ(x).</returns>
    public static Expression Gamma(Expression x) => Num.Gamma(In(x)).Formula;

    /// <summary>The hyperbolic sine.</summary>
    /// <param name="x">The argument.</param>
    /// <returns>sinh x.</returns>
    public static Expression Sinh(Expression x) => Num.Sinh(In(x)).Formula;

    /// <summary>The hyperbolic cosine.</summary>
    /// <param name="x">The argument.</param>
    /// <returns>cosh x.</returns>
    public static Expression Cosh(Expression x) => Num.Cosh(In(x)).Formula;

    /// <summary>The hyperbolic tangent.</summary>
    /// <param name="x">The argument.</param>
    /// <returns>tanh x.</returns>
    public static Expression Tanh(Expression x) => Num.Tanh(In(x)).Formula;

    /// <summary>The next whole number upwards.</summary>
    /// <param name="x">The argument.</param>
    /// <returns>⌈x⌉.</returns>
    public static Expression Ceiling(Expression x) => Num.Ceiling(In(x)).Formula;

    /// <summary>The next whole number downwards.</summary>
    /// <param name="x">The argument.</param>
    /// <returns>⌊x⌋.</returns>
    public static Expression Floor(Expression x) => Num.Floor(In(x)).Formula;

    /// <summary>Rounded to the decimals of a currency, halves away from zero: the rule for money in this library.</summary>
    /// <param name="x">The amount.</param>
    /// <param name="currency">The currency.</param>
    /// <returns>The rounded amount.</returns>
    /// <exception cref="System.ArgumentNullException"><paramref name="currency"/> is missing.</exception>
    public static Expression Round(Expression x, Currency currency)
    {
        Guard.NotNull(currency, nameof(currency));

        // Through decimal, so that 12.345 rounds as the decimal that a price list means by it.
        return Amount.Round(new Amount((decimal)x.Value, x), currency).Formula;
    }

    /// <summary>The larger of two.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    /// <returns>max(a, b).</returns>
    public static Expression Max(Expression a, Expression b) => Num.Max(In(a), In(b)).Formula;

    /// <summary>The largest of several.</summary>
    /// <param name="terms">The terms in order, at least one.</param>
    /// <returns>max(a; b; …), or the term itself when there is one.</returns>
    /// <exception cref="ArgumentException">There is no term.</exception>
    public static Expression Max(IEnumerable<Expression> terms)
    {
        ValueList<Expression> list = Guard.List(terms, nameof(terms), 1);
        return Num.Max([.. System.Linq.Enumerable.Select(list, In)]).Formula;
    }

    /// <summary>The smaller of two.</summary>
    /// <param name="a">One.</param>
    /// <param name="b">The other.</param>
    /// <returns>min(a, b).</returns>
    public static Expression Min(Expression a, Expression b) => Num.Min(In(a), In(b)).Formula;

    /// <summary>A definite integral, evaluated by the same 32-point Gauss–Legendre rule as the kernels.</summary>
    /// <param name="symbol">The variable of integration.</param>
    /// <param name="lower">The lower end.</param>
    /// <param name="upper">The upper end.</param>
    /// <param name="body">The integrand as a function of the variable.</param>
    /// <returns>The integral.</returns>
    /// <exception cref="ArgumentException"><paramref name="symbol"/> is empty.</exception>
    public static Expression Integral(string symbol, Expression lower, Expression upper, Func<Expression, Expression> body) =>
        Num.Integral(Guard.Named(symbol, nameof(symbol)), In(lower), In(upper), x => In(Guard.NotNull(body, nameof(body))(x.Formula))).Formula;

    /// <summary>The number at which a rising function reaches a target: written as an equation to be solved.</summary>
    /// <param name="symbol">The unknown.</param>
    /// <param name="lower">A number below the solution, in SI.</param>
    /// <param name="upper">A number above the solution, in SI.</param>
    /// <param name="rising">The function of the unknown.</param>
    /// <param name="target">What it has to reach.</param>
    /// <returns>The solution, found within its bracket to the last digit of a double.</returns>
    /// <exception cref="ArgumentException"><paramref name="symbol"/> is empty.</exception>
    public static Expression Solution(string symbol, double lower, double upper, Func<Expression, Expression> rising, Expression target) =>
        new SolutionExpression(
            Guard.Named(symbol, nameof(symbol)),
            rising(new VariableExpression(symbol)),
            target,
            Roots.Rising((rising, Goal: target.Value), static (given, x) => given.rising(Number(x)).Value - given.Goal, lower, upper));

    internal static Expression Function(string name, string latex, Func<double, double> function, Expression x) =>
        Num.Function(name, latex, function, In(x)).Formula;

    private static Num In(Expression x) => new(Guard.NotNull(x, nameof(x)).Value, x);

    /// <summary>A plain number as a leaf.</summary>
    /// <param name="value">Any finite number.</param>
    public static implicit operator Expression(double value) => Number(value);

    /// <summary>A sum.</summary>
    /// <param name="left">The first term.</param>
    /// <param name="right">The second term.</param>
    /// <returns>The sum.</returns>
    public static Expression operator +(Expression left, Expression right) => (In(left) + In(right)).Formula;

    /// <summary>A difference.</summary>
    /// <param name="left">The first term.</param>
    /// <param name="right">What is taken away.</param>
    /// <returns>The difference.</returns>
    public static Expression operator -(Expression left, Expression right) => (In(left) - In(right)).Formula;

    /// <summary>A negated value.</summary>
    /// <param name="value">What is negated.</param>
    /// <returns>The negative.</returns>
    public static Expression operator -(Expression value) => (-In(value)).Formula;

    /// <summary>A product.</summary>
    /// <param name="left">The first factor.</param>
    /// <param name="right">The second factor.</param>
    /// <returns>The product.</returns>
    public static Expression operator *(Expression left, Expression right) => (In(left) * In(right)).Formula;

    /// <summary>A quotient.</summary>
    /// <param name="left">What is divided.</param>
    /// <param name="right">What it is divided by.</param>
    /// <returns>The quotient.</returns>
    public static Expression operator /(Expression left, Expression right) => (In(left) / In(right)).Formula;

    internal abstract void WriteTo(FormulaWriter writer);
}
