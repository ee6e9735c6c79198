using System;
using Refinish.Numerics;

namespace Refinish;

/// <summary>How tightly written formulas bind; parentheses are set where a looser one stands inside a tighter one.</summary>
internal static class Binding
{
    /// <summary>A negative number: fine in front, in need of parentheses after any sign.</summary>
    public const int Negative = 5;
    public const int Sum = 10;
    public const int Product = 20;

    /// <summary>A number with its unit: fine as a factor or below a fraction bar, in need of parentheses under a power.</summary>
    public const int NumberWithUnit = 25;
    public const int Power = 40;
    public const int Atom = 50;
}

internal enum Operation
{
    Add,
    Subtract,
    Multiply,
    Divide,
}

internal sealed class NumberExpression(double value, string? name) : Expression
{
    private readonly double value = Guard.Within(value, Bounds.Between(double.MinValue, double.MaxValue, Measure.Number), nameof(value));

    public override double Evaluate() => value;

    internal override int BindingIn(FormulaWriter writer) => value < 0 ? Binding.Negative : Binding.Atom;

    internal override void WriteTo(FormulaWriter writer)
    {
        if (name is null)
        {
            writer.Number(value);
        }
        else
        {
            writer.Symbol(name);
        }
    }
}

internal sealed class QuantityExpression(string symbol, double value, Measure measure) : Expression
{
    private readonly double value = Guard.Within(value, Bounds.Between(double.MinValue, double.MaxValue, measure), nameof(value));

    public override double Evaluate() => value;

    internal override int BindingIn(FormulaWriter writer) => writer.System switch
    {
        null => Binding.Atom,
        DisplayUnits system when measure.Shown(value, system) < 0 => Binding.Negative,
        DisplayUnits system => measure.Symbol(system).Length == 0 ? Binding.Atom : Binding.NumberWithUnit,
    };

    internal override void WriteTo(FormulaWriter writer)
    {
        if (writer.System is DisplayUnits system)
        {
            writer.Amount(value, measure, system);
        }
        else
        {
            writer.Symbol(symbol);
        }
    }
}

/// <summary>The unknown of an integral or of an equation; it has a symbol and no value.</summary>
internal sealed class VariableExpression(string symbol) : Expression
{
    public override double Evaluate() => throw new InvalidOperationException("The variable " + symbol + " has no value outside its integral or equation.");

    internal override void WriteTo(FormulaWriter writer) => writer.Symbol(symbol);
}

internal sealed class OperationExpression(Operation operation, Expression left, Expression right) : Expression
{
    private readonly Expression left = Guard.NotNull(left, nameof(left));
    private readonly Expression right = Guard.NotNull(right, nameof(right));

    private bool IsNegation => operation == Operation.Subtract && left is NumberExpression && left.Evaluate() == 0;

    public override double Evaluate() => operation switch
    {
        Operation.Add => left.Evaluate() + right.Evaluate(),
        Operation.Subtract => left.Evaluate() - right.Evaluate(),
        Operation.Multiply => left.Evaluate() * right.Evaluate(),
        _ => left.Evaluate() / right.Evaluate(),
    };

    internal override int BindingIn(FormulaWriter writer) => operation switch
    {
        Operation.Add or Operation.Subtract => Binding.Sum,
        Operation.Divide when writer.Style == FormulaStyle.Latex => Binding.NumberWithUnit,
        _ => Binding.Product,
    };

    internal override void WriteTo(FormulaWriter writer)
    {
        switch (operation)
        {
            case Operation.Add:
                writer.Infix(left, " + ", right, Binding.Negative, Binding.Sum);
                break;
            case Operation.Subtract when IsNegation:
                writer.Text("−").Nested(right, Binding.Product);
                break;
            case Operation.Subtract:
                writer.Infix(left, " − ", right, Binding.Negative, Binding.Sum + 1);
                break;
            case Operation.Multiply:
                writer.Infix(left, writer.Times, right, Binding.Product, Binding.Product);
                break;
            default:
                writer.Fraction(left, right);
                break;
        }
    }
}

internal sealed class PowerExpression(Expression basis, Expression exponent) : Expression
{
    private readonly Expression basis = Guard.NotNull(basis, nameof(basis));
    private readonly Expression exponent = Guard.NotNull(exponent, nameof(exponent));

    // A square is a product, as the kernels write it.
    public override double Evaluate() =>
        exponent is NumberExpression && exponent.Evaluate() == 2
            ? basis.Evaluate() * basis.Evaluate()
            : Math.Pow(basis.Evaluate(), exponent.Evaluate());

    internal override int BindingIn(FormulaWriter writer) => Binding.Power;

    internal override void WriteTo(FormulaWriter writer) => writer.Power(basis, exponent);
}

internal sealed class FunctionExpression(string name, string latex, Func<double, double> function, Expression argument) : Expression
{
    private readonly Expression argument = Guard.NotNull(argument, nameof(argument));

    public override double Evaluate() => function(argument.Evaluate());

    internal override void WriteTo(FormulaWriter writer) => writer.Function(name, latex, argument);
}

/// <summary>A function of two or more terms that may be taken two by two, such as the largest.</summary>
internal sealed class PairExpression(string name, Func<double, double, double> function, Expression[] terms) : Expression
{
    private readonly ValueList<Expression> terms = Guard.List(terms, nameof(terms), 2);

    public override double Evaluate()
    {
        double result = terms[0].Evaluate();
        for (int i = 1; i < terms.Count; i++)
        {
            result = function(result, terms[i].Evaluate());
        }

        return result;
    }

    internal override void WriteTo(FormulaWriter writer) => writer.List(name, terms);
}

internal sealed class IntegralExpression(string symbol, Expression lower, Expression upper, Func<Expression, Expression> body) : Expression
{
    private readonly Expression lower = Guard.NotNull(lower, nameof(lower));
    private readonly Expression upper = Guard.NotNull(upper, nameof(upper));

    public override double Evaluate() => Quadrature.GaussLegendre(x => body(Number(x)).Evaluate(), lower.Evaluate(), upper.Evaluate());

    internal override int BindingIn(FormulaWriter writer) => Binding.Product;

    internal override void WriteTo(FormulaWriter writer) => writer.Integral(symbol, lower, upper, body(new VariableExpression(symbol)));
}

internal sealed class SolutionExpression(string symbol, double lower, double upper, Func<Expression, Expression> rising, Expression target) : Expression
{
    private readonly Expression target = Guard.NotNull(target, nameof(target));

    public override double Evaluate() =>
        Roots.Rising((rising, Goal: target.Evaluate()), static (given, x) => given.rising(Number(x)).Evaluate() - given.Goal, lower, upper);

    internal override int BindingIn(FormulaWriter writer) => Binding.Sum;

    internal override void WriteTo(FormulaWriter writer) => writer.Equation(symbol, rising(new VariableExpression(symbol)), target);
}
