using System;

namespace Refinish.Jobs;

/// <summary>One fixture of a quote, and what it weighs where costs are shared.</summary>
/// <example><code>
/// FixtureWeight tub = new("tub", "bathtub", 4.2);   // hours that it takes alone
/// </code></example>
public sealed record FixtureWeight
{
    /// <summary>Makes an entry.</summary>
    /// <param name="id">Identity of the fixture.</param>
    /// <param name="name">What the customer calls it.</param>
    /// <param name="weight">
    /// Weight for what is shared, 0 to 10⁶; a plan takes the hours of the fixture's work, as if it were done alone.
    /// </param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is no identity, or <paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="weight"/> is outside its range.</exception>
    public FixtureWeight(string id, string name, double weight)
    {
        Id = Guard.Id(id);
        Name = Guard.Named(name);
        Weight = Guard.Within(weight, Bounds.NotNegative(Measure.Number, 1e6));
    }

    /// <summary>Identity of the fixture.</summary>
    public string Id { get; }

    /// <summary>What the customer calls it.</summary>
    public string Name { get; }

    /// <summary>Weight for what is shared.</summary>
    public double Weight { get; }

    /// <summary>Name and weight.</summary>
    /// <returns>Text such as <c>bathtub, 4.2</c>.</returns>
    public override string ToString() => Name + ", " + Figures.Significant(Weight);
}
