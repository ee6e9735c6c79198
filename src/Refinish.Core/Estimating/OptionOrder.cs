using System;

namespace Refinish.Estimating;

/// <summary>How much of an option the customer chose.</summary>
public sealed record OptionOrder
{
    /// <summary>Makes an order.</summary>
    /// <param name="code">Code of an <see cref="OptionPrice"/>.</param>
    /// <param name="quantity">How many units, more than 0.</param>
    /// <exception cref="ArgumentException"><paramref name="code"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="quantity"/> is not more than 0 or too large.</exception>
    public OptionOrder(string code, decimal quantity = 1)
    {
        Code = Guard.Named(code, nameof(code));
        Quantity = Money.Amount(quantity, nameof(quantity), zeroAllowed: false);
    }

    /// <summary>Code of the option.</summary>
    public string Code { get; }

    /// <summary>How many units.</summary>
    public decimal Quantity { get; }

    /// <summary>Code and quantity.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Figures.Significant((double)Quantity) + " × " + Code;
}
