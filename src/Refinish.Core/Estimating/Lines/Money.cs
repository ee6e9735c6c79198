using System;
using System.Runtime.CompilerServices;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>Bounds of amounts of money. Amounts are rounded by their <see cref="Currency"/>.</summary>
internal static class Money
{
    /// <summary>
    /// Beyond this amounts and quantities are refused. A decimal holds 7.9 × 10²⁸: the product of two of them, and one of them in
    /// thousandths over what a margin to fifteen figures leaves where it is asked first whether the result passes this line.
    /// </summary>
    public const decimal Largest = 1_000_000_000_000m;

    /// <summary>The same in a sentence.</summary>
    public const string LargestInWords = "10¹²";

    /// <summary>To the nearest multiple of a coin, halves up.</summary>
    public static Refinish.Amount ToCoin(Refinish.Amount amount, Refinish.Amount coin) =>
        Refinish.Amount.Floor((amount / coin) + 0.5m) * coin;

    /// <summary>A calculated number as money, rounded to the currency.</summary>
    public static Refinish.Amount Rounded(Num x, Currency currency) =>
        x.IsTraced ? Refinish.Amount.Round(new Refinish.Amount((decimal)x.Value, x.Formula), currency) : currency.Round(x.Value);

    /// <summary>A share as the decimal that was meant: fifteen figures, so that 7.25 % is 0.0725.</summary>
    public static decimal Fraction(Ratio value, Bounds bounds, string name) => (decimal)Guard.Within(value, bounds, name);

    public static decimal Amount(decimal value, string name, bool zeroAllowed = true)
    {
        Guard.Money(value, zeroAllowed, name);
        Guard.Rule(value <= Largest, name, (double)value, Measure.Number, "at most " + LargestInWords);
        return value;
    }

    /// <summary>A unit in which something can be bought or sold.</summary>
    public static LineUnit Sold(LineUnit unit, string what, [CallerMemberName] string name = "") => Guard.Defined(unit, name) != LineUnit.Money
        ? unit
        : throw new ArgumentException(name + " is Money; allowed: a unit of what is " + what + ".", name);

    /// <summary>Refuses an amount with more decimals than its currency has.</summary>
    public static void Fits(decimal amount, Currency currency, string name, string what)
    {
        if (!currency.Fits(amount))
        {
            Guard.Rule(false, name, (double)amount, Measure.Number, what + " with the decimals of " + currency.Code);
        }
    }

    public static decimal? Amount(decimal? value, string name) => value is decimal amount ? Amount(amount, name) : null;
}
