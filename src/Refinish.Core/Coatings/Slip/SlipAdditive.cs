using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>Grains that are sprinkled into or stirred into a floor's coat: their size and density.</summary>
public sealed record SlipAdditive
{
    private readonly double diameter;
    private readonly double density;

    /// <summary>Makes an additive.</summary>
    /// <param name="id">
    /// Identity, such as "polymer-beads"; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </param>
    /// <param name="name">Generic name, such as "polymer beads".</param>
    /// <param name="diameter">Median diameter of the grains, 10 µm to 2 mm.</param>
    /// <param name="density">Density of a grain, not of the heap; 0.2 to 5 g/mL.</param>
    /// <param name="source">Where the figures come from.</param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is not an identity, or <paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public SlipAdditive(string id, string name, Length diameter, Density density, Source source)
    {
        Id = Guard.Id(id);
        Name = Guard.Named(name);
        this.diameter = Guard.Within(diameter, Bounds.Between(10e-6, 2e-3, Measure.Film));
        this.density = Guard.Within(density, Bounds.Between(200, 5000, Measure.Density));
        Source = Guard.NotNull(source);
    }

    /// <summary>Identity of the grains.</summary>
    public string Id { get; }

    /// <summary>Generic name.</summary>
    public string Name { get; }

    /// <summary>Median diameter of the grains.</summary>
    public Length Diameter => Length.FromMeters(diameter);

    /// <summary>Density of a grain.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(density);

    /// <summary>Where the figures come from.</summary>
    public Source Source { get; }

    /// <summary>Name and size.</summary>
    /// <returns>Text such as <c>polymer beads, 100 µm</c>.</returns>
    public override string ToString() => Name + ", " + Measure.Film.Format(diameter);
}
