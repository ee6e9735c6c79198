using System;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>A fixture of a quote with its coated area, by which shared costs are divided.</summary>
/// <example><code>
/// FixtureArea tub = new("tub", "bathtub", Area.FromSquareMeters(2.6));
/// </code></example>
public sealed record FixtureArea
{
    private readonly double area;

    /// <summary>Makes an entry.</summary>
    /// <param name="id">Identity of the fixture.</param>
    /// <param name="name">What the customer calls it.</param>
    /// <param name="area">Coated area, 0 to 10⁶ m².</param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is no identity, or <paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="area"/> is outside its range.</exception>
    public FixtureArea(string id, string name, Area area)
    {
        Id = Guard.Id(id, nameof(id));
        Name = Guard.Named(name, nameof(name));
        this.area = Guard.Within(area, Bounds.NotNegative(Measure.Area, 1e6), nameof(area));
    }

    /// <summary>Identity of the fixture.</summary>
    public string Id { get; }

    /// <summary>What the customer calls it.</summary>
    public string Name { get; }

    /// <summary>Coated area.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Name and area.</summary>
    /// <returns>Text such as <c>bathtub, 2.6 m²</c>.</returns>
    public override string ToString() => Name + ", " + Measure.Area.Format(area);

    internal double SquareMeters => area;
}
