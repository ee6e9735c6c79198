using UnitsNet;

namespace Refinish.Estimating;

/// <summary>Bounds of amounts of money. Amounts are rounded by their <see cref="Currency"/>.</summary>
internal static class Money
{
    /// <summary>Shares and quantities beyond this would overflow a decimal product.</summary>
    public const decimal Largest = 1_000_000_000m;

    /// <summary>A share as the decimal that was meant: fifteen figures, so that 7.25 % is 0.0725.</summary>
    public static decimal Fraction(Ratio value, Bounds bounds, string name) => (decimal)Guard.Within(value, bounds, name);

    public static decimal Amount(decimal value, string name, bool zeroAllowed = true)
    {
        Guard.Money(value, name, zeroAllowed);
        Guard.Rule(value <= Largest, name, (double)value, Measure.Number, "at most 1000000000");
        return value;
    }

    public static decimal? Amount(decimal? value, string name) => value is decimal amount ? Amount(amount, name) : null;
}
