using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>How much of a material a job takes, as mixed volume with all losses.</summary>
public sealed record MaterialNeed
{
    private readonly double volume;

    /// <summary>Makes a need.</summary>
    /// <param name="item">Id of the product, component or material, as in the price book.</param>
    /// <param name="name">What people call it.</param>
    /// <param name="volume">Mixed volume, 0 to 1 m³.</param>
    /// <exception cref="ArgumentException"><paramref name="item"/> is no identity, or <paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> is outside its range.</exception>
    public MaterialNeed(string item, string name, Volume volume)
    {
        Item = Guard.Id(item, nameof(item));
        Name = Guard.Named(name, nameof(name));
        this.volume = Guard.Within(volume, Bounds.NotNegative(Measure.Capacity, 1), nameof(volume));
    }

    /// <summary>Id of the material.</summary>
    public string Item { get; }

    /// <summary>What people call it.</summary>
    public string Name { get; }

    /// <summary>Mixed volume.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    internal double CubicMeters => volume;

    /// <summary>Name and volume.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Measure.Capacity.Format(volume) + " of " + Name;
}
