using System;

namespace Refinish.Estimating;

/// <summary>How much of an option the customer chose, and for which fixture.</summary>
/// <example><code>
/// OptionOrder floor = new() { Code = "X-10", Quantity = 1, Fixture = "tub-1" };
/// </code></example>
public sealed record OptionOrder
{
    /// <summary>Code of an <see cref="OptionPrice"/>.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public required string Code { get; init => field = Guard.Id(value); }

    /// <summary>How many units of sale, more than 0 and at most 10¹²; 1 when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public decimal Quantity { get; init => field = Money.Amount(value, nameof(Quantity), zeroAllowed: false); } = 1;

    /// <summary>Id of the fixture that it is for; <see langword="null"/>, the job as a whole, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Fixture { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>Code and quantity.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Figures.Significant((double)Quantity) + " × " + Code;
}
