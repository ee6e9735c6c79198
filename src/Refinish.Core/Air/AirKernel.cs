using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>What several calculations of air share, in SI, with or without a derivation.</summary>
internal static class AirKernel
{
    /// <summary>
    /// Molar volume of a gas at 25 °C and 760 mmHg by which US limits turn from ppm into mg/m³: 24.45 L/mol, 29 CFR 1910.1000 Table Z-1
    /// and NIOSH Pocket Guide.
    /// </summary>
    public const double MolarVolume = 24.45e-3;

    /// <summary>R, J/(mol·K): exact in the SI of 2019.</summary>
    public const double GasConstant = 8.314462618;

    public const double StandardPressure = 101325;

    public const double ReferenceTemperature = 298.15;

    /// <summary>What fans and gaps move: nothing, or from a millilitre a second on.</summary>
    internal static readonly Bounds Airflows = Bounds.NoneOrFrom(1e-6, Measure.Airflow, 10);

    internal static readonly Source GasLaw = Source.Published(
        "29 CFR 1910.1000, Table Z-1, footnotes", "24.45 L/mol at 25 °C and 760 mmHg; at other pressures by the ideal-gas law");

    internal static readonly Source IdealGas = Source.Derived("ideal gas, R = 8.314 462 618 J/(mol·K)");

    /// <summary>
    /// Molar volume for the fraction of the flammable limit: at the pressure of the room, and at its temperature where it is warmer than
    /// 25 °C. A colder room is taken at 25 °C, which is the careful side: the same mass is a larger part of warmer air.
    /// </summary>
    public static Num FlammableMolarVolume(Room room, Trace? t = null) => t.Step(
        "molar volume at the room's pressure, at 25 °C or warmer", "V_m", Measure.MolarVolume, GasLaw,
        t.Given("V_m0", MolarVolume, Measure.MolarVolume) * t.Given("p_0", StandardPressure, Measure.Pressure)
            / t.Given("p", room.AirPressure.Pascals, Measure.Pressure) * t.Given("T/T_0", Warmth(room), Measure.Number));

    /// <summary>Volume fraction of a vapour from its mass concentration: C · V_m / M.</summary>
    public static Num VolumeFraction(Num concentration, Num molarVolume, Num molarMass) => concentration * molarVolume / molarMass;

    /// <summary>The same at the molar volume by which limits are stated.</summary>
    public static Num FractionForLimits(Num concentration, Solvent solvent, Trace? t = null) => VolumeFraction(
        concentration, t.Given("V_m", MolarVolume, Measure.MolarVolume),
        t.Given("M", solvent.MolarMass.KilogramsPerMole, Measure.MolarMass));

    /// <summary>What the fan has to move for so much fresh air, beside the infiltration.</summary>
    public static Num FanFlow(Num freshAir, Num infiltration) => Num.Max(freshAir - infiltration, 0);

    // T/T₀ of a room warmer than 25 °C, otherwise 1.
    private static double Warmth(Room room) =>
        room.AirTemperature is UnitsNet.Temperature air && air.Kelvins > ReferenceTemperature ? air.Kelvins / ReferenceTemperature : 1;
}
