using System;
using System.Collections.Generic;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// What is known here about one thing that this trade puts into the air: the liquid it comes from, its vapour pressure, its limits, the
/// law about it. What is missing is not known, which is never the same as harmless.
/// </summary>
/// <example><code>
/// Substance? toluene = Substances.Find("108-88-3");
/// IReadOnlyList&lt;ExposureLimit&gt;? limits = toluene?.Limits;
/// </code></example>
public sealed record Substance
{
    /// <summary>Chemical Abstracts Service registry number.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string CasNumber { get; init => field = Guard.Named(value); }

    /// <summary>Generic name.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Where it comes from in this trade and what it does to a person, in a sentence or two.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Note { get; init => field = Guard.Named(value); }

    /// <summary>Molar mass, density, flammability and volatility; <see langword="null"/> for a dust, a mist or a gas.</summary>
    public required Solvent? Liquid { get; init; }

    /// <summary>Its vapour pressure over ranges of temperature; empty when not known here.</summary>
    public required IReadOnlyList<VapourPressureFit> VapourPressures { get; init => field = Guard.List(value); }

    /// <summary>Its limits; empty when none is known here.</summary>
    public required IReadOnlyList<ExposureLimit> Limits { get; init => field = Guard.List(value); }

    /// <summary>Dated facts of law about it.</summary>
    public required IReadOnlyList<LegalFact> Law { get; init => field = Guard.List(value); }

    /// <summary>Name and registry number.</summary>
    /// <returns>Text such as <c>toluene (108-88-3)</c>.</returns>
    public override string ToString() => Name + " (" + CasNumber + ")";
}
