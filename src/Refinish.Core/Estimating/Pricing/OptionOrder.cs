using System;

namespace Refinish.Estimating;

/// <summary>How much of an option the customer chose, and for which fixture.</summary>
/// <example><code>
/// OptionOrder floor = new("X-10", 1) { Fixture = "tub-1" };
/// </code></example>
public sealed record OptionOrder
{
    /// <summary>Orders one of an option.</summary>
    /// <param name="code">Code of an <see cref="OptionPrice"/>.</param>
    /// <exception cref="ArgumentException"><paramref name="code"/> is no identity: empty, too long, or with a '/'.</exception>
    public OptionOrder(string code) : this(code, 1)
    {
    }

    /// <summary>Orders an amount of an option.</summary>
    /// <param name="code">Code of an <see cref="OptionPrice"/>.</param>
    /// <param name="quantity">How many units of sale, more than 0 and at most 10⁹.</param>
    /// <exception cref="ArgumentException"><paramref name="code"/> is no identity: empty, too long, or with a '/'.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="quantity"/> is outside its range.</exception>
    public OptionOrder(string code, decimal quantity)
    {
        Code = Guard.Id(code);
        Quantity = Money.Amount(quantity, nameof(quantity), zeroAllowed: false);
    }

    /// <summary>Code of the option.</summary>
    public string Code { get; }

    /// <summary>How many units of sale.</summary>
    public decimal Quantity { get; }

    /// <summary>Id of the fixture that it is for; <see langword="null"/>, the job as a whole, when left out.</summary>
    /// <exception cref="ArgumentException">No identity: empty, too long, or with a '/'.</exception>
    public string? Fixture { get; init => field = value is null ? null : Guard.Id(value); }

    /// <summary>Code and quantity.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Figures.Significant((double)Quantity) + " × " + Code;
}
