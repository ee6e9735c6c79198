using System;
using System.Collections.Generic;
using System.Linq;
using System.Runtime.CompilerServices;
using Refinish.Numerics;

namespace Refinish;

/// <summary>
/// A number in SI and, while a derivation is being made, the formula that gave it. A formula is written once, with these: without a
/// <see cref="Trace"/> it is plain arithmetic that allocates nothing; with one it also tells how the number was reached.
/// </summary>
/// <remarks>
/// A number made from a <see cref="double"/> has no formula of its own. In the formula of another it appears as its digits.
/// </remarks>
internal readonly struct Num(double value, Expression? formula = null)
{
    private static readonly Expression Circle = new NumberExpression(Math.PI, "π");

    private readonly Expression? formula = formula;

    /// <summary>
    /// The circle number. It keeps its letter beside a number that has a formula: <c>Num.Pi * r</c> is written π · r. Where it meets a
    /// plain number first, as in <c>Num.Pi / 2</c>, take <see cref="Tracing.Pi"/>.
    /// </summary>
    public static Num Pi => Math.PI;

    /// <summary>The number, in SI base units.</summary>
    public double Value { get; } = value;

    /// <summary>Whether a derivation is being made.</summary>
    public bool IsTraced => formula is not null;

    /// <summary>The formula; the plain number where there is none.</summary>
    public Expression Formula => formula ?? (Value == Math.PI ? Circle : new NumberExpression(Value, null));

    public static implicit operator Num(double value) => new(value);

    /// <summary>A sum. A plain zero is not written, so that a loop may start from it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Num operator +(Num a, Num b) =>
        IsPlain(a, b) ? a.Value + b.Value : a.formula is null && a.Value == 0 ? b : Joined(Operation.Add, a, b, a.Value + b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Num operator -(Num a, Num b) => IsPlain(a, b) ? a.Value - b.Value : Joined(Operation.Subtract, a, b, a.Value - b.Value);

    public static Num operator -(Num a) => a.formula is null ? -a.Value : Joined(Operation.Subtract, 0, a, -a.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Num operator *(Num a, Num b) => IsPlain(a, b) ? a.Value * b.Value : Joined(Operation.Multiply, a, b, a.Value * b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Num operator /(Num a, Num b) => IsPlain(a, b) ? a.Value / b.Value : Joined(Operation.Divide, a, b, a.Value / b.Value);

    /// <summary>The sum of so many terms, each made from a state and its number, so that nothing is captured.</summary>
    public static Num Sum<T>(int count, T state, Func<T, int, Num> term)
    {
        Num sum = 0;
        for (int i = 0; i < count; i++)
        {
            sum += term(state, i);
        }

        return sum;
    }

    /// <summary>The sum of several terms; zero for none.</summary>
    public static Num Sum(IEnumerable<Num> terms)
    {
        Num sum = 0;
        foreach (Num term in terms)
        {
            sum += term;
        }

        return sum;
    }

    /// <summary>
    /// The same over a list, with what the terms need handed in, so that nothing is captured and nothing allocated. A term that is
    /// a plain 0 is left out.
    /// </summary>
    public static Num Sum<T, TState>(IReadOnlyList<T> items, TState state, Func<T, int, TState, Num> term)
    {
        Num sum = 0;
        for (int i = 0; i < items.Count; i++)
        {
            Num one = term(items[i], i, state);
            sum = one.Value == 0 && !one.IsTraced ? sum : sum + one;
        }

        return sum;
    }

    public static Num Square(Num x) => Raised(x, 2, x.Value * x.Value);

    /// <summary>A power; small whole ones are products, which cost far less than a power and are the same on every machine.</summary>
    public static Num Power(Num x, Num exponent) => Raised(x, exponent, exponent.Value switch
    {
        1 => x.Value,
        2 => x.Value * x.Value,
        3 => x.Value * x.Value * x.Value,
        4 => x.Value * x.Value * x.Value * x.Value,
        _ => Math.Pow(x.Value, exponent.Value),
    });

    public static Num Sqrt(Num x) => Of("√", "\\sqrt", x, Math.Sqrt(x.Value));

    public static Num Exp(Num x) => Of("exp", "\\exp", x, Math.Exp(x.Value));

    public static Num Ln(Num x) => Of("ln", "\\ln", x, Math.Log(x.Value));

    /// <summary>
    /// φ₁(x) = (exp(x) − 1) / x, which is 1 at zero: the mean of a first-order decay when x is minus the time in time constants.
    /// </summary>
    public static Num Phi1(Num x) => Of("φ₁", "\\varphi_1", x, PhiFunctions.Phi1(x.Value));

    /// <summary>φ₂(x) = (φ₁(x) − 1) / x, which is 1/2 at zero: what a first-order rise adds up to, per square of time.</summary>
    public static Num Phi2(Num x) => Of("φ₂", "\\varphi_2", x, PhiFunctions.Phi2(x.Value));

    public static Num Sin(Num x) => Of("sin", "\\sin", x, Math.Sin(x.Value));

    public static Num Cos(Num x) => Of("cos", "\\cos", x, Math.Cos(x.Value));

    public static Num Tan(Num x) => Of("tan", "\\tan", x, Math.Tan(x.Value));

    public static Num Arctan(Num x) => Of("arctan", "\\arctan", x, Math.Atan(x.Value));

    public static Num Arcsin(Num x) => Of("arcsin", "\\arcsin", x, Math.Asin(x.Value));

    /// <summary>The gamma function, Γ(n) = (n − 1)! between the whole numbers too.</summary>
    public static Num Gamma(Num x) => Of("Γ", "\\Gamma", x, Special.Gamma(x.Value));

    public static Num Sinh(Num x) => Of("sinh", "\\sinh", x, Math.Sinh(x.Value));

    public static Num Cosh(Num x) => Of("cosh", "\\cosh", x, Math.Cosh(x.Value));

    public static Num Tanh(Num x) => Of("tanh", "\\tanh", x, Math.Tanh(x.Value));

    public static Num Ceiling(Num x) => Of("roundup", "\\operatorname{roundup}", x, Math.Ceiling(x.Value));

    public static Num Floor(Num x) => Of("rounddown", "\\operatorname{rounddown}", x, Math.Floor(x.Value));

    public static Num Max(Num a, Num b) => Listed("max", a, b, Math.Max(a.Value, b.Value));

    public static Num Min(Num a, Num b) => Listed("min", a, b, Math.Min(a.Value, b.Value));

    /// <summary>The largest of several, at least one.</summary>
    public static Num Max(IReadOnlyList<Num> terms)
    {
        double largest = terms[0].Value;
        bool isTraced = false;
        foreach (Num term in terms)
        {
            largest = Math.Max(largest, term.Value);
            isTraced |= term.IsTraced;
        }

        return terms.Count == 1 ? terms[0]
            : new Num(largest, isTraced ? new ListedExpression("max", [.. terms.Select(term => term.Formula)], largest) : null);
    }

    /// <summary>A definite integral by the 32-point Gauss–Legendre rule.</summary>
    /// <param name="symbol">The variable of integration.</param>
    /// <param name="lower">The lower end.</param>
    /// <param name="upper">The upper end.</param>
    /// <param name="body">The integrand as a function of the variable.</param>
    public static Num Integral(string symbol, Num lower, Num upper, Func<Num, Num> body) =>
        Integral(symbol, lower, upper, body, static (in of, x) => of(x));

    /// <summary>The same for an integrand that is handed what it needs, so that no closure is made.</summary>
    /// <typeparam name="T">What the integrand needs.</typeparam>
    /// <param name="symbol">The variable of integration.</param>
    /// <param name="lower">The lower end.</param>
    /// <param name="upper">The upper end.</param>
    /// <param name="state">What the integrand needs.</param>
    /// <param name="body">The integrand as a function of that and the variable.</param>
    /// <param name="found">
    /// The value of an integral that is to be written, where it was found without a derivation; that spares a formula at each point.
    /// </param>
    public static Num Integral<T>(string symbol, Num lower, Num upper, in T state, Quadrature.Integrand<T, Num> body, double? found = null)
    {
        bool isWritten = found is not null || !IsPlain(lower, upper);
        double half = (upper.Value - lower.Value) / 2;
        double middle = (upper.Value + lower.Value) / 2;
        double sum = 0;
        (double[] abscissae, double[] weights) = Quadrature.Rule32;

        // A letter has no value: then one point tells that the integral is written.
        for (int i = 0; i < weights.Length && found is null && !double.IsNaN(sum); i++)
        {
            Num height = body(in state, middle + (half * abscissae[i]));
            sum += weights[i] * height.Value;
            isWritten |= height.IsTraced;
        }

        double value = found ?? (half * sum);
        return isWritten
            ? new Num(value, new IntegralExpression(symbol, lower.Formula, upper.Formula, body(in state, Variable(symbol)).Formula, value))
            : value;
    }

    /// <summary>A number that a solver found, written as the equation that it solves.</summary>
    /// <param name="found">What the solver found.</param>
    /// <param name="symbol">The unknown.</param>
    /// <param name="side">The function of the unknown.</param>
    /// <param name="target">What it has to reach.</param>
    public static Num Solution(double found, string symbol, Func<Num, Num> side, Num target) =>
        target.IsTraced ? new Num(found, new SolutionExpression(symbol, side(Variable(symbol)).Formula, target.Formula, found)) : found;

    /// <summary>Any other function of one number, by the name under which it is written.</summary>
    public static Num Function(string name, string latex, Func<double, double> function, Num x) => Of(name, latex, x, function(x.Value));

    private static bool IsPlain(Num a, Num b) => a.formula is null && b.formula is null;

    private static Num Variable(string symbol) => new(double.NaN, new VariableExpression(symbol));

    private static Num Joined(Operation operation, Num a, Num b, double value) =>
        new(value, new OperationExpression(operation, a.Formula, b.Formula, value));

    private static Num Raised(Num x, Num exponent, double value) =>
        IsPlain(x, exponent) ? value : new Num(value, new PowerExpression(x.Formula, exponent.Formula, value));

    private static Num Of(string name, string latex, Num x, double value) =>
        x.formula is null ? value : new Num(value, new FunctionExpression(name, latex, x.formula, value));

    private static Num Listed(string name, Num a, Num b, double value) =>
        IsPlain(a, b) ? value : new Num(value, new ListedExpression(name, [a.Formula, b.Formula], value));
}
