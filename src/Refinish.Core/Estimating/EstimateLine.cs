using System;
using System.Globalization;

namespace Refinish.Estimating;

/// <summary>One line of an estimate: amount = quantity × rate, rounded once to cents, halves away from zero.</summary>
/// <remarks>Quantity and rate are the numbers shown, so that anyone who multiplies them gets the amount.</remarks>
/// <example><code>
/// decimal amount = new EstimateLine("L-10", "setup and masking", 0.79m, "h", 39.04m).Amount;   // 30.84
/// </code></example>
public sealed record EstimateLine
{
    /// <summary>Makes a line.</summary>
    /// <param name="code">Code of the step or item.</param>
    /// <param name="description">What it is.</param>
    /// <param name="quantity">How much of <paramref name="unit"/>, at most 10⁹ in size.</param>
    /// <param name="unit">Unit of <paramref name="quantity"/>.</param>
    /// <param name="rate">Money for one unit; negative for a discount; at most 10⁹ in size.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is too large.</exception>
    public EstimateLine(string code, string description, decimal quantity, string unit, decimal rate)
    {
        Code = Guard.Named(code, nameof(code));
        Description = Guard.Named(description, nameof(description));
        Unit = Guard.Named(unit, nameof(unit));
        Guard.Rule(Math.Abs(quantity) <= Money.Largest, nameof(quantity), (double)quantity, Measure.Number, "at most 1000000000 in size");
        Guard.Rule(Math.Abs(rate) <= Money.Largest, nameof(rate), (double)rate, Measure.Number, "at most 1000000000 in size");
        Quantity = quantity;
        Rate = rate;
    }

    /// <summary>Code of the step or item.</summary>
    public string Code { get; }

    /// <summary>What it is.</summary>
    public string Description { get; }

    /// <summary>How much.</summary>
    public decimal Quantity { get; }

    /// <summary>Unit of the quantity.</summary>
    public string Unit { get; }

    /// <summary>Money for one unit.</summary>
    public decimal Rate { get; }

    /// <summary>Quantity × rate, rounded once.</summary>
    public decimal Amount => Money.Round(Quantity * Rate);

    /// <summary>The line with its numbers.</summary>
    /// <returns>Text such as <c>L-10 setup and masking: 0.79 h × 39.04 = 30.84</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} {1}: {2} {3} × {4} = {5:0.00}",
        Code,
        Description,
        Figures.Significant((double)Quantity, 12),
        Unit,
        Figures.Significant((double)Rate, 12),
        Amount);

    internal WorkingStep Step(string symbol, Measure money, Source source)
    {
        Expression q = Expression.Quantity("q", (double)Quantity, Measure.Number);
        Expression r = Expression.Quantity("r", (double)Rate, money);
        return new WorkingStep(Code + " " + Description + " (" + Unit + ")", symbol, Expression.RoundToCents(q * r), (double)Amount, money, source);
    }
}
