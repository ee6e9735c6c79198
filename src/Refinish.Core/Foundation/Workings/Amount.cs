using System;

namespace Refinish;

/// <summary>
/// What <see cref="Num"/> is for numbers, for money: an exact decimal and, while a derivation is being made, the formula that gave it.
/// </summary>
internal readonly struct Amount(decimal value, Expression? formula = null)
{
    private readonly Expression? formula = formula;

    /// <summary>The amount.</summary>
    public decimal Value { get; } = value;

    /// <summary>The formula; the plain number where there is none.</summary>
    public Expression Formula => formula ?? new NumberExpression((double)Value, null);

    public static implicit operator Amount(decimal value) => new(value);

    /// <summary>A sum. A plain zero is not written, so that a loop may start from it.</summary>
    public static Amount operator +(Amount a, Amount b) =>
        a.formula is null && a.Value == 0 ? b : Joined(Operation.Add, a, b, a.Value + b.Value);

    public static Amount operator -(Amount a, Amount b) => Joined(Operation.Subtract, a, b, a.Value - b.Value);

    public static Amount operator *(Amount a, Amount b) => Joined(Operation.Multiply, a, b, a.Value * b.Value);

    public static Amount operator /(Amount a, Amount b) => Joined(Operation.Divide, a, b, a.Value / b.Value);

    /// <summary>Rounded to the decimals of a currency, halves away from zero.</summary>
    public static Amount Round(Amount x, Currency currency) => Of("round", x, currency.Round(x.Value));

    public static Amount Ceiling(Amount x) => Of("roundup", x, Currency.CoinsUp(x.Value, 1));

    public static Amount Floor(Amount x) => Of("rounddown", x, Currency.CoinsDown(x.Value, 1));

    public static Amount Max(Amount a, Amount b) => Listed("max", a, b, Math.Max(a.Value, b.Value));

    public static Amount Min(Amount a, Amount b) => Listed("min", a, b, Math.Min(a.Value, b.Value));

    /// <summary>The amount among the numbers of a formula that is not in money.</summary>
    public Num ToNum() => new((double)Value, formula);

    private static Amount Joined(Operation operation, Amount a, Amount b, decimal value) =>
        new(value, a.formula is null && b.formula is null ? null : new OperationExpression(operation, a.Formula, b.Formula, (double)value));

    private static Amount Of(string name, Amount x, decimal value) =>
        new(value, x.formula is null ? null : new FunctionExpression(name, "\\operatorname{" + name + "}", x.formula, (double)value));

    private static Amount Listed(string name, Amount a, Amount b, decimal value) =>
        new(value, a.formula is null && b.formula is null ? null : new ListedExpression(name, [a.Formula, b.Formula], (double)value));
}
