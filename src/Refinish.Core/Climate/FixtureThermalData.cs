using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Climate;

/// <summary>How a fixture's material takes up and conducts heat, each figure with where it comes from.</summary>
/// <remarks>
/// The ready values are generic. A thin coat of enamel or gelcoat is left out of account. Where no figure was found for a material there is none here;
/// give your own.
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
        ConductivitySource = Source.Published("EN ISO 10077-2:2003 (as reproduced in a table of conductivities)", "PMMA"),
    };

    /// <summary>Glass-fibre reinforced polyester, as below gelcoat: 1300 J/(kg K), 0.40 W/(m K).</summary>
    public static FixtureThermalData GlassFibrePolyester { get; } = new()
    {
        Name = "glass-fibre polyester",
        SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(1300),
        SpecificHeatSource = Source.FromMemory("specific heat of glass-fibre reinforced polyester, about 1200 to 1400 J/(kg K)"),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(0.40),
        ConductivitySource = Source.Published("EN ISO 10077-2:2003 (as reproduced in a table of conductivities)", "fibreglass, UP resin"),
    };

    /// <summary>Where the figures of <see cref="UsualThickness"/> come from.</summary>
    public static Source UsualThicknessSource { get; } =
        Source.FromMemory("usual wall thickness of a fixture by its material; measure where it counts");

    /// <summary>Where the figures of <see cref="DensityOf"/> come from.</summary>
    public static Source DensitySource { get; } = Source.FromMemory("usual density of what a fixture is made of");

    /// <summary>The ready data for a fixture's material: of the metal below enamel, of the laminate below gelcoat.</summary>
    /// <param name="material">What the fixture is made of.</param>
    /// <returns>The data; <see langword="null"/> when there are none here for the material.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="material"/> is not a named value.</exception>
    public static FixtureThermalData? For(FixtureMaterial material) => Guard.Defined(material, nameof(material)) switch
    {
        FixtureMaterial.EnamelledCastIron => CastIron,
        FixtureMaterial.EnamelledSteel => Steel,
        FixtureMaterial.Gelcoat => GlassFibrePolyester,
        FixtureMaterial.Acrylic => Acrylic,
        FixtureMaterial.VitreousChina or FixtureMaterial.CeramicTile => GlazedCeramic,
        _ => null,
    };

    /// <summary>Wall thickness that is usual for a fixture's material; see <see cref="UsualThicknessSource"/>.</summary>
    /// <param name="material">What the fixture is made of.</param>
    /// <returns>Cast iron 6 mm, steel 2 mm, gelcoat and acrylic 5 mm, china 10 mm, tile 8 mm; <see langword="null"/> for the
    /// others.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="material"/> is not a named value.</exception>
    public static Length? UsualThickness(FixtureMaterial material) => Guard.Defined(material, nameof(material)) switch
    {
        FixtureMaterial.EnamelledCastIron => Length.FromMillimeters(6),
        FixtureMaterial.EnamelledSteel => Length.FromMillimeters(2),
        FixtureMaterial.Gelcoat or FixtureMaterial.Acrylic => Length.FromMillimeters(5),
        FixtureMaterial.VitreousChina => Length.FromMillimeters(10),
        FixtureMaterial.CeramicTile => Length.FromMillimeters(8),
        _ => null,
    };

    /// <summary>
    /// Density that is usual for a fixture's material; see <see cref="DensitySource"/>. Times area and thickness it is the mass that has to
    /// warm.
    /// </summary>
    /// <param name="material">What the fixture is made of.</param>
    /// <returns>
    /// Cast iron 7200, steel 7850, glass-fibre polyester below gelcoat 1500, acrylic 1180, china and tile 2300 kg/m³;
    /// <see langword="null"/> for the others.
    /// </returns>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="material"/> is not a named value.</exception>
    public static Density? DensityOf(FixtureMaterial material) => Guard.Defined(material, nameof(material)) switch
    {
        FixtureMaterial.EnamelledCastIron => Density.FromKilogramsPerCubicMeter(7200),
        FixtureMaterial.EnamelledSteel => Density.FromKilogramsPerCubicMeter(7850),
        FixtureMaterial.Gelcoat => Density.FromKilogramsPerCubicMeter(1500),
        FixtureMaterial.Acrylic => Density.FromKilogramsPerCubicMeter(1180),
        FixtureMaterial.VitreousChina or FixtureMaterial.CeramicTile => Density.FromKilogramsPerCubicMeter(2300),
        _ => null,
    };

    /// <summary>What the material is called.</summary>
    /// <exception cref="System.ArgumentException">Empty.</exception>
    public required string Name
    {
        get;
        init => field = Guard.Named(value, nameof(Name));
    }

    /// <summary>Heat to warm a kilogram by a kelvin, more than 0 and at most 5000 J/(kg K).</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required SpecificEntropy SpecificHeat
    {
        get => SpecificEntropy.FromJoulesPerKilogramKelvin(specificHeat);
        init => specificHeat = Guard.Within(value, Bounds.Positive(Measure.SpecificHeat, 5000), nameof(SpecificHeat));
    }

    /// <summary>Where the specific heat comes from.</summary>
    public required Source SpecificHeatSource
    {
        get;
        init => field = Guard.NotNull(value, nameof(SpecificHeatSource));
    }

    /// <summary>Thermal conductivity, more than 0 and at most 500 W/(m K).</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required ThermalConductivity Conductivity
    {
        get => ThermalConductivity.FromWattsPerMeterKelvin(conductivity);
        init => conductivity = Guard.Within(value, Bounds.Positive(Measure.Conductivity, 500), nameof(Conductivity));
    }

    /// <summary>Where the conductivity comes from.</summary>
    public required Source ConductivitySource
    {
        get;
        init => field = Guard.NotNull(value, nameof(ConductivitySource));
    }

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
            Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(conductivity),
            ConductivitySource = guide,
        };
    }
}
