using System;

namespace Refinish.Estimating;

/// <summary>What one fixture of a job costs by itself, and its weight when shared costs are divided.</summary>
public sealed record FixtureCost
{
    /// <summary>Makes an entry.</summary>
    /// <param name="name">Which fixture.</param>
    /// <param name="ownCost">Cost that this fixture alone causes, at least 0.</param>
    /// <param name="weight">Weight for what is shared, such as its area or 1 for each; 0 to 10⁶.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public FixtureCost(string name, decimal ownCost, double weight = 1)
    {
        Name = Guard.Named(name, nameof(name));
        OwnCost = Money.Amount(ownCost, nameof(ownCost));
        Weight = Guard.Within(weight, Bounds.NotNegative(Measure.Number, 1e6), nameof(weight));
    }

    /// <summary>Which fixture.</summary>
    public string Name { get; }

    /// <summary>Cost that this fixture alone causes.</summary>
    public decimal OwnCost { get; }

    /// <summary>Weight for what is shared.</summary>
    public double Weight { get; }

    /// <summary>Name and own cost.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + Figures.Fixed((double)OwnCost, 2);
}
