using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>How a fixture's material takes up and conducts heat, each figure with where it comes from.</summary>
/// <remarks>
/// The ready values are generic. A thin coat of enamel or gelcoat is left out of account. Which of them a fixture has, its material says:
/// <see cref="FixtureMaterial.Body"/>.
/// </remarks>
/// <example><code>
/// FixtureThermalData iron = FixtureThermalData.CastIron;
/// double c = iron.SpecificHeat.JoulesPerKilogramKelvin;   // 530
/// </code></example>
public sealed record FixtureThermalData
{
    private readonly double specificHeat;
    private readonly double conductivity;

    /// <summary>Grey cast iron, as below enamel: 530 J/(kg K), 56 W/(m K).</summary>
    /// <remarks>Other tables give 450 to 460 J/(kg K), which warms an eighth sooner.</remarks>
    public static FixtureThermalData CastIron { get; } = FromGuide("cast iron", 530, 56);

    /// <summary>Mild steel, as below enamel: 480 J/(kg K), 45 W/(m K).</summary>
    public static FixtureThermalData Steel { get; } = FromGuide("steel", 480, 45);

    /// <summary>Glazed ceramic, for vitreous china and tile: 840 J/(kg K), 1.40 W/(m K).</summary>
    public static FixtureThermalData GlazedCeramic { get; } = FromGuide("glazed ceramic", 840, 1.40);

    /// <summary>Acrylic sheet (PMMA): 1500 J/(kg K), 0.18 W/(m K).</summary>
    public static FixtureThermalData Acrylic { get; } = new()
    {
        Name = "acrylic",
        SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(1500),
        SpecificHeatSource = Source.Published("EN 12524 (as reproduced in a table of building materials)", "PMMA"),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.18),
        ConductivitySource = Source.Published("EN ISO 10077-2:2003 (as reproduced in a table of conductivities)", "PMMA"), };

    /// <summary>Glass-fibre reinforced polyester, as below gelcoat: 1300 J/(kg K), 0.40 W/(m K).</summary>
    public static FixtureThermalData GlassFibrePolyester { get; } = new()
    {
        Name = "glass-fibre polyester",
        SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(1300),
        SpecificHeatSource = Source.FromMemory("specific heat of glass-fibre reinforced polyester, about 1200 to 1400 J/(kg K)"),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.40),
        ConductivitySource = Source.Published("EN ISO 10077-2:2003 (as reproduced in a table of conductivities)", "fibreglass, UP resin"),
    };

    /// <summary>What the material is called.</summary>
    /// <exception cref="System.ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Heat to warm a kilogram by a kelvin, more than 0 and at most 5000 J/(kg K).</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required SpecificEntropy SpecificHeat
    {
        get => SpecificEntropy.FromJoulesPerKilogramKelvin(specificHeat);
        init => specificHeat = Guard.Within(value, Bounds.Positive(Measure.SpecificHeat, 5000));
    }

    /// <summary>Where the specific heat comes from.</summary>
    public required Source SpecificHeatSource { get; init => field = Guard.NotNull(value); }

    /// <summary>Thermal conductivity, more than 0 and at most 500 W/(m K).</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required ThermalConductivity Conductivity
    {
        get => ThermalConductivity.FromWattsPerMeterKelvin(conductivity);
        init => conductivity = Guard.Within(value, Bounds.Positive(Measure.Conductivity, 500));
    }

    /// <summary>Where the conductivity comes from.</summary>
    public required Source ConductivitySource { get; init => field = Guard.NotNull(value); }

    /// <summary>The name and the two figures in one line.</summary>
    /// <returns>Text such as <c>cast iron: 530 J/(kg·K), 56 W/(m·K)</c>.</returns>
    public override string ToString() => Name + ": " + Measure.SpecificHeat.Format(specificHeat) + ", " + Measure.Conductivity.Format(conductivity);

    private static FixtureThermalData FromGuide(string material, double specificHeat, double conductivity)
    {
        Source guide = Source.Published("CIBSE Guide A (as reproduced in a table of conductivities)", "Table 3.36, " + material);
        return new FixtureThermalData
        {
            Name = material,
            SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(specificHeat),
            SpecificHeatSource = guide,
            Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(conductivity), ConductivitySource = guide, };
    }
}
