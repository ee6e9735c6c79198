using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>One can: base, hardener or reducer, with the density that turns millilitres into grams.</summary>
public sealed record CoatingComponent
{
    internal static readonly Bounds Densities = Bounds.Between(500, 5000, Measure.Density);

    private readonly double density;

    /// <summary>Makes a component.</summary>
    /// <param name="name">Generic name, such as "primer base".</param>
    /// <param name="density">Density at room temperature, 0.5 to 5 g/mL.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> is outside its range.</exception>
    public CoatingComponent(string name, Density density)
    {
        Name = Guard.Named(name, nameof(name));
        this.density = Guard.Within(density, Densities, nameof(density));
    }

    /// <summary>Generic name.</summary>
    public string Name { get; }

    /// <summary>Density at room temperature.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(density);

    /// <summary>The name and the density.</summary>
    /// <returns>Text such as <c>primer base, 1.35 g/mL</c>.</returns>
    public override string ToString() => Name + ", " + Measure.Density.Format(density);
}
