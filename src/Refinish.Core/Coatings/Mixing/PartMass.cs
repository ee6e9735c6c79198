using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>What was weighed of one can of a product, or of its reducer, found by the identity of its component.</summary>
/// <example><code>
/// PartMass weighed = new("epoxy-primer-base", Mass.FromGrams(200));
/// double grams = weighed.Mass.Grams;   // 200
/// </code></example>
public sealed record PartMass
{
    private readonly double mass;

    /// <summary>Makes a mass.</summary>
    /// <param name="component">Identity of the component.</param>
    /// <param name="mass">How much of it, more than 0 and at most 100 kg.</param>
    /// <exception cref="ArgumentException"><paramref name="component"/> is not an identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mass"/> is outside its range.</exception>
    public PartMass(string component, Mass mass)
    {
        Component = Guard.Id(component);
        this.mass = Guard.Within(mass, Bounds.Positive(Measure.Mass, 100));
    }

    /// <summary>Identity of the component.</summary>
    public string Component { get; }

    /// <summary>Mass on the scale, this can alone.</summary>
    public Mass Mass => Mass.FromKilograms(mass);

    /// <summary>Mass and component.</summary>
    /// <returns>Text such as <c>200 g epoxy-primer-base</c>.</returns>
    public override string ToString() => Measure.Mass.Format(mass) + " " + Component;
}
