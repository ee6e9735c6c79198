using System;

namespace Refinish.Estimating;

/// <summary>What one fixture of a job costs by itself, and its weight when shared costs are divided.</summary>
/// <example><code>
/// FixtureCost tub = new("tub-1", "bathtub", 300m, 2.6);   // weighed by its area in m²
/// </code></example>
public sealed record FixtureCost
{
    /// <summary>Makes an entry.</summary>
    /// <param name="id">Id of the fixture.</param>
    /// <param name="name">What people call it.</param>
    /// <param name="ownCost">Cost that this fixture alone causes, 0 to 10¹².</param>
    /// <param name="weight">Weight for what is shared, such as its area or 1 for each; 0 to 10⁶.</param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is no identity, or <paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public FixtureCost(string id, string name, decimal ownCost, double weight)
    {
        Id = Guard.Id(id);
        Name = Guard.Named(name);
        OwnCost = Money.Amount(ownCost, nameof(ownCost));
        Weight = Guard.Within(weight, Bounds.NotNegative(Measure.Number, 1e6));
    }

    /// <summary>Id of the fixture.</summary>
    public string Id { get; }

    /// <summary>What people call it.</summary>
    public string Name { get; }

    /// <summary>Cost that this fixture alone causes.</summary>
    public decimal OwnCost { get; }

    /// <summary>Weight for what is shared.</summary>
    public double Weight { get; }

    /// <summary>Name and own cost.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + Figures.Fixed((double)OwnCost, 2);
}
