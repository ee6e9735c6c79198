using System;

namespace Refinish.Estimating;

/// <summary>A named part of what an option costs: the work, demolition, plumbing, tile, disposal.</summary>
public sealed record CostPart
{
    /// <summary>Makes a part.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="amount">The amount, at least 0.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="amount"/> is negative or too large.</exception>
    public CostPart(string name, decimal amount)
    {
        Name = Guard.Named(name);
        Amount = Money.Amount(amount, nameof(amount));
    }

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>The amount.</summary>
    public decimal Amount { get; }

    /// <summary>Name and amount.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + Figures.Fixed((double)Amount, 2);
}
