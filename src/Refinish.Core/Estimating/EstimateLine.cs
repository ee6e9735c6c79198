using System;
using System.Globalization;

namespace Refinish.Estimating;

/// <summary>One line of an estimate: amount = quantity × rate, rounded once to cents, halves away from zero.</summary>
/// <remarks>Quantity and rate are the numbers shown, so that anyone who multiplies them gets the amount.</remarks>
/// <example><code>
/// EstimateLine line = new("labour/L-10", LineCategory.Labour, "L-10", "set up the room", 0.79m, "h", 39.04m);
/// decimal amount = line.Amount;   // 30.84
/// </code></example>
public sealed record EstimateLine
{
    /// <summary>Makes a line.</summary>
    /// <param name="id">Identity, unique within an estimate: ids joined by '/', never a description or a position.</param>
    /// <param name="category">What the line is for.</param>
    /// <param name="code">Code of the step or item, as people see it.</param>
    /// <param name="description">What it is.</param>
    /// <param name="quantity">How much of <paramref name="unit"/>, at most 10⁹ in size.</param>
    /// <param name="unit">Unit of <paramref name="quantity"/>.</param>
    /// <param name="rate">Money for one unit; negative for a discount; at most 10⁹ in size.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is too large or <paramref name="category"/> is not a named value.</exception>
    public EstimateLine(string id, LineCategory category, string code, string description, decimal quantity, string unit, decimal rate)
    {
        Id = Guard.Named(id, nameof(id));
        Category = Guard.Defined(category, nameof(category));
        Code = Guard.Named(code, nameof(code));
        Description = Guard.Named(description, nameof(description));
        Unit = Guard.Named(unit, nameof(unit));
        Quantity = InRange(quantity, nameof(quantity));
        Rate = InRange(rate, nameof(rate));
        Amount = Money.Round(quantity * rate);
    }

    /// <summary>Identity, unique within an estimate, such as <c>labour/L-10</c> or <c>material/epoxy-primer/946.353</c>.</summary>
    public string Id { get; }

    /// <summary>What the line is for.</summary>
    public LineCategory Category { get; }

    /// <summary>The fixture that the line belongs to; <see langword="null"/>, the job as a whole, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Fixture
    {
        get;
        init => field = value is null ? null : Guard.Id(value, nameof(Fixture));
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
    public decimal Amount { get; }

    /// <summary>The line with its numbers.</summary>
    /// <returns>Text such as <c>L-10 set up the room: 0.79 h × 39.04 = 30.84</c>.</returns>
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
        string name = Code + " " + Description + " (" + Unit + ")";
        return new WorkingStep(name, symbol, Expression.RoundToCents(q * r), (double)Amount, money, source);
    }

    private static decimal InRange(decimal value, string name)
    {
        Guard.Rule(value is >= -Money.Largest and <= Money.Largest, name, (double)value, Measure.Number, "at most 1000000000 in size");
        return value;
    }
}
