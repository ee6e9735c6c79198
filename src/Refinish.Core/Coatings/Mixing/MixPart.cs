using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>One can of a product and how many parts by volume of it go into the mix.</summary>
/// <remarks>
/// By weight a part is its volume times its density. Reading a ratio by volume on a scale puts the mix off by the ratio of the densities,
/// the commonest mixing fault; a sheet that prints its ratio by weight is entered with <see cref="ByMass"/>.
/// </remarks>
/// <example><code>
/// MixPart[] parts =
/// [
///     new(new CoatingComponent { Id = "resin", Name = "resin", Density = Density.FromGramsPerMilliliter(1.20) }, 4),
///     new(new CoatingComponent { Id = "hardener", Name = "hardener", Density = Density.FromGramsPerMilliliter(1.05) }, 1),
/// ];
/// CoatingProduct topcoat = GenericCatalogue.AcrylicUrethaneTopcoat with { Parts = parts };
/// double grams = topcoat.Per100OfFirst[1];   // 21.875, not 25
/// </code></example>
public sealed record MixPart
{
    // Invented: far beyond any two cans that are mixed, and a drop of catalyst in a drum is a hundred times the least.
    private static readonly Bounds Ratios = Bounds.Between(1e-6, 1e6, Measure.Number);

    /// <summary>Makes a part of a mix by volume, of which the data sheet prints no weights.</summary>
    /// <param name="component">What is in the can.</param>
    /// <param name="parts">Parts by volume, 0.000001 to 1 000 000; any number for a product in one part.</param>
    /// <exception cref="ArgumentNullException"><paramref name="component"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="parts"/> is outside its range.</exception>
    public MixPart(CoatingComponent component, double parts) : this(component, parts, null)
    {
    }

    /// <summary>Makes a part of a mix by volume.</summary>
    /// <param name="component">What is in the can.</param>
    /// <param name="parts">Parts by volume, 0.000001 to 1 000 000; any number for a product in one part.</param>
    /// <param name="statedPer100OfFirst">
    /// By weight to 100 of the first part as the data sheet prints it, more than 0 and at most 10 000; <see langword="null"/> when it
    /// prints none.
    /// </param>
    /// <exception cref="ArgumentNullException"><paramref name="component"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public MixPart(CoatingComponent component, double parts, double? statedPer100OfFirst)
    {
        Component = Guard.NotNull(component);
        Parts = Guard.Within(parts, Ratios);
        StatedPer100OfFirst = statedPer100OfFirst is double given
            ? Guard.Within(given, Bounds.Positive(Measure.Number, 1e4), nameof(statedPer100OfFirst)) : null;
    }

    /// <summary>The can: its density, solids, water and what reacts in it.</summary>
    public CoatingComponent Component { get; }

    /// <summary>Parts by volume.</summary>
    public double Parts { get; }

    /// <summary>
    /// By weight to 100 of the first part as the data sheet prints it beside the ratio by volume; <see langword="null"/> when it prints
    /// none. Only compared (<see cref="DataSheetCheck"/>), never used for pouring.
    /// </summary>
    public double? StatedPer100OfFirst { get; }

    /// <summary>Parts by volume of a ratio that the data sheet prints by weight, scaled so that the smallest is one part.</summary>
    /// <param name="byWeight">All parts of the product, each with its parts by weight.</param>
    /// <returns>The same cans with their parts by volume.</returns>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    public static IReadOnlyList<MixPart> ByMass(IEnumerable<MixPart> byWeight)
    {
        ValueList<MixPart> given = Guard.List(byWeight, 1);
        double smallest = given.Min(Volume);
        return new ValueList<MixPart>(given.Select(part =>
            new MixPart(part.Component, Volume(part) / smallest, part.StatedPer100OfFirst)));

        static double Volume(MixPart part) => part.Parts / part.Component.Density.KilogramsPerCubicMeter;
    }

    /// <summary>Parts and can.</summary>
    /// <returns>Text such as <c>4 primer base</c>.</returns>
    public override string ToString() => Figures.Significant(Parts, 4) + " " + Component.Name;
}
