using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A volatile liquid in a coating: what it is and what its vapour amounts to.</summary>
/// <example><code>
/// Solvent butylAcetate = Solvents.ButylAcetate;
/// double gramsPerMole = butylAcetate.MolarMass.GramsPerMole;   // 116.16
/// </code></example>
public sealed record Solvent
{
    private readonly double molarMass;
    private readonly double density;
    private readonly double? lowerFlammableLimit;
    private readonly double? vapourPressure;

    /// <summary>Generic chemical name.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name
    {
        get;
        init => field = Guard.Named(value, nameof(Name));
    }

    /// <summary>Chemical Abstracts Service registry number, the key by which exposure limits are looked up.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string CasNumber
    {
        get;
        init => field = Guard.Named(value, nameof(CasNumber));
    }

    /// <summary>Molar mass, more than 0 and at most 1000 g/mol.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required MolarMass MolarMass
    {
        get => MolarMass.FromKilogramsPerMole(molarMass);
        init => molarMass = Guard.Within(value, Bounds.Positive(Measure.MolarMass, 1), nameof(MolarMass));
    }

    /// <summary>Density of the liquid at room temperature, 0.5 to 2 g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density
    {
        get => Density.FromKilogramsPerCubicMeter(density);
        init => density = Guard.Within(value, Bounds.Between(500, 2000, Measure.Density), nameof(Density));
    }

    /// <summary>Lower flammable limit as a volume fraction of vapour in air; <see langword="null"/> when not known, which is not the same as none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 ppb to 100 %.</exception>
    public required Ratio? LowerFlammableLimit
    {
        get => lowerFlammableLimit is double limit ? Ratio.FromDecimalFractions(limit) : null;
        init => lowerFlammableLimit = value is Ratio limit
            ? Guard.Within(limit, Bounds.Between(1e-9, 1, Measure.Percent), nameof(LowerFlammableLimit))
            : null;
    }

    /// <summary>Vapour pressure at 20 °C, more than 0 and at most 101 325 Pa; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure? VapourPressure
    {
        get => vapourPressure is double pressure ? Pressure.FromPascals(pressure) : null;
        init => vapourPressure = value is Pressure pressure ? Guard.Within(pressure, Bounds.Positive(Measure.Pressure, 101325), nameof(VapourPressure)) : null;
    }

    /// <summary>Where the figures come from.</summary>
    public required Source Source
    {
        get;
        init => field = Guard.NotNull(value, nameof(Source));
    }

    /// <summary>The name and the registry number.</summary>
    /// <returns>Text such as <c>n-butyl acetate (123-86-4)</c>.</returns>
    public override string ToString() => Name + " (" + CasNumber + ")";
}
