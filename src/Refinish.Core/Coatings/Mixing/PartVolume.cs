using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A volume of one can of a product, found by the identity of its component: poured, left over or taken.</summary>
/// <example><code>
/// PartVolume left = new("epoxy-primer-base", Volume.FromMilliliters(300));
/// double millilitres = left.Volume.Milliliters;   // 300
/// </code></example>
public sealed record PartVolume
{
    private readonly double volume;

    /// <summary>Makes a volume.</summary>
    /// <param name="component">Identity of the component.</param>
    /// <param name="volume">How much of it, 0 to 1000 L.</param>
    /// <exception cref="ArgumentException"><paramref name="component"/> is not an identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="volume"/> is outside its range.</exception>
    public PartVolume(string component, Volume volume)
    {
        Component = Guard.Id(component);
        this.volume = Guard.Within(volume, Bounds.NotNegative(Measure.Capacity, 1));
    }

    /// <summary>Identity of the component.</summary>
    public string Component { get; }

    /// <summary>Volume in the cup, this can alone.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    /// <summary>Volume and component.</summary>
    /// <returns>Text such as <c>300 mL epoxy-primer-base</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(volume) + " " + Component;
}
