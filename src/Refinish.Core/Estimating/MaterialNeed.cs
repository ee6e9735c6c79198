using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>How much of a material a job takes, as mixed volume with all losses.</summary>
public sealed record MaterialNeed
{
    private readonly double volume;

    /// <summary>Makes a need.</summary>
    /// <param name="item">Name of the material, as in the price book.</param>
    /// <param name="volume">Mixed volume, 0 to 1 m³.</param>
    /// <exception cref="ArgumentException"><paramref name="item"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> is outside its range.</exception>
    public MaterialNeed(string item, Volume volume)
    {
        Item = Guard.Named(item, nameof(item));
        this.volume = Guard.Within(volume, Bounds.NotNegative(Measure.Capacity, 1), nameof(volume));
    }

    /// <summary>Name of the material.</summary>
    public string Item { get; }

    /// <summary>Mixed volume.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    /// <summary>Item and volume.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Measure.Capacity.Format(volume) + " of " + Item;
}
