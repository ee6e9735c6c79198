using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// A liquid in a coating, a cleaner or a stripper that is not solids: what it is, whether it evaporates and what its vapour amounts to.
/// </summary>
/// <example><code>
/// Solvent butylAcetate = Solvents.ButylAcetate;
/// double gramsPerMole = butylAcetate.MolarMass.GramsPerMole;   // 116.16
/// </code></example>
public sealed record Solvent
{
    internal const string Water = "7732-18-5";

    private readonly double molarMass;
    private readonly double density;

    /// <summary>Generic chemical name.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Chemical Abstracts Service registry number, the key by which exposure limits are looked up.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string CasNumber { get; init => field = Guard.Registry(value); }

    /// <summary>Molar mass, more than 0 and at most 1000 g/mol.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required MolarMass MolarMass
    {
        get => MolarMass.FromKilogramsPerMole(molarMass);
        init => molarMass = Guard.Within(value, Bounds.Positive(Measure.MolarMass, 1));
    }

    /// <summary>Density of the liquid at room temperature, 0.5 to 2 g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density
    {
        get => Density.FromKilogramsPerCubicMeter(density);
        init => density = Guard.Within(value, Bounds.Between(500, 2000, Measure.Density));
    }

    /// <summary>Whether its vapour burns in air: its limits, that it does not burn, or that nothing is known.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Flammability Flammability { get; init => field = Guard.NotNull(value); }

    /// <summary>Whether it evaporates: its vapour pressure, that it is not volatile, or, unless given, that nothing is known.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public Volatility Volatility { get; init => field = Guard.NotNull(value); }
    = Volatility.Unknown;

    /// <summary>
    /// Whether it is water, by the registry number: it evaporates and makes the air humid, and is no solvent, so that no limit of
    /// exposure is asked for.
    /// </summary>
    public bool IsWater => string.Equals(CasNumber, Water, StringComparison.Ordinal);

    /// <summary>Where the figures come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>The name and the registry number.</summary>
    /// <returns>Text such as <c>n-butyl acetate (123-86-4)</c>.</returns>
    public override string ToString() => Name + " (" + CasNumber + ")";
}
