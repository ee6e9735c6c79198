using System.Collections.Generic;

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

internal sealed class NumberExpression(double value, string? name)
    : Expression(Guard.Within(value, Bounds.Between(double.MinValue, double.MaxValue, Measure.Number), nameof(value), nameof(value)))
{
    internal override int BindingIn(FormulaWriter writer) => Value < 0 ? Binding.Negative : Binding.Atom;

    internal override void WriteTo(FormulaWriter writer)
    {
        if (name is null)
        {
            writer.Number(Value);
        }
        else
        {
            writer.Symbol(name);
        }
    }
}

internal sealed class QuantityExpression(string symbol, double value, Measure measure)
    : Expression(Guard.Within(value, Bounds.Between(double.MinValue, double.MaxValue, measure), nameof(value), nameof(value)))
{
    internal override int BindingIn(FormulaWriter writer) => writer.System switch
    {
        null => Binding.Atom,
        DisplayUnits system when measure.Shown(Value, system) < 0 => Binding.Negative,
        DisplayUnits system => measure.Symbol(system).Length == 0 ? Binding.Atom : Binding.NumberWithUnit,
    };

    internal override void WriteTo(FormulaWriter writer)
    {
        if (writer.System is DisplayUnits system)
        {
            writer.Amount(Value, measure, system);
        }
        else
        {
            writer.Symbol(symbol);
        }
    }
}

/// <summary>The unknown of an integral or of an equation; it has a symbol and no value.</summary>
internal sealed class VariableExpression(string symbol) : Expression(double.NaN)
{
    internal override void WriteTo(FormulaWriter writer) => writer.Symbol(symbol);
}

internal sealed class OperationExpression(Operation operation, Expression left, Expression right, double value) : Expression(value)
{
    private bool IsNegation => operation == Operation.Subtract && left is NumberExpression { Value: 0 };

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

internal sealed class PowerExpression(Expression basis, Expression exponent, double value) : Expression(value)
{
    internal override int BindingIn(FormulaWriter writer) => Binding.Power;

    internal override void WriteTo(FormulaWriter writer) => writer.Power(basis, exponent);
}

internal sealed class FunctionExpression(string name, string latex, Expression argument, double value) : Expression(value)
{
    internal override void WriteTo(FormulaWriter writer) => writer.Function(name, latex, argument);
}

/// <summary>A function of two or more terms, such as the largest.</summary>
internal sealed class ListedExpression(string name, IReadOnlyList<Expression> terms, double value) : Expression(value)
{
    internal override void WriteTo(FormulaWriter writer) => writer.List(name, terms);
}

internal sealed class IntegralExpression(string symbol, Expression lower, Expression upper, Expression body, double value)
    : Expression(value)
{
    internal override int BindingIn(FormulaWriter writer) => Binding.Product;

    internal override void WriteTo(FormulaWriter writer) => writer.Integral(symbol, lower, upper, body);
}

/// <summary>A number that a solver found, written as the equation that it solves.</summary>
internal sealed class SolutionExpression(string symbol, Expression side, Expression target, double value) : Expression(value)
{
    internal override int BindingIn(FormulaWriter writer) => Binding.Sum;

    internal override void WriteTo(FormulaWriter writer) => writer.Equation(symbol, side, target);
}
