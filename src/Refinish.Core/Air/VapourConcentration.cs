using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// A vapour in air as a part of its volume and as a mass in it, at a temperature and pressure that are named: the ideal gas, C = x · p ·
/// M/(R · T).
/// </summary>
/// <remarks>
/// A part by volume stays when the air is warmed or goes up a mountain, a mass in a cubic metre does not. US limits of exposure are masses:
/// OSHA holds its limits in mg/m³ fixed at whatever temperature and pressure, so that a limit in ppm is one at 25 °C and 760 mmHg (Sampling
/// and Analytical Methods, calculations appendix). <see cref="ForLimits"/> is that figure; <see cref="VolumeFraction"/> is what a meter
/// that counts molecules shows. At 84 kPa and 20 °C they differ by a fifth.
/// </remarks>
/// <example><code>
/// MolarMass toluene = MolarMass.FromGramsPerMole(92.14);
/// VapourConcentration high = VapourConcentration.OfMass(
///     MassConcentration.FromMilligramsPerCubicMeter(375), toluene, Temperature.FromDegreesCelsius(20), Pressure.FromKilopascals(84));
/// double inTheRoom = high.VolumeFraction.PartsPerMillion;   // 118.1
/// double forTheLimit = high.ForLimits.PartsPerMillion;   // 99.5
/// double milligrams = VapourConcentration.AtReference(Ratio.FromPartsPerMillion(1), toluene).Mass.MilligramsPerCubicMeter;   // 3.766
/// </code></example>
public sealed record VapourConcentration
{
    private readonly double fraction;
    private readonly double molarMass;
    private readonly double temperature;
    private readonly double pressure;

    private VapourConcentration(double fraction, double molarMass, double temperature, double pressure)
    {
        this.fraction = fraction;
        this.molarMass = molarMass;
        this.temperature = temperature;
        this.pressure = pressure;
    }

    /// <summary>The part of the air's volume.</summary>
    public Ratio VolumeFraction => Ratio.FromDecimalFractions(fraction);

    /// <summary>The mass in a volume of the air, as it is at <see cref="Temperature"/> and <see cref="Pressure"/>.</summary>
    public MassConcentration Mass => MassConcentration.FromKilogramsPerCubicMeter(InAir().Value);

    /// <summary>
    /// The volume fraction with which US limits in ppm are compared: the mass at 24.45 L/mol, whatever the state of the air.
    /// </summary>
    public Ratio ForLimits => Ratio.FromDecimalFractions(AgainstLimits().Value);

    /// <summary>Molar mass of the vapour.</summary>
    public MolarMass MolarMass => MolarMass.FromKilogramsPerMole(molarMass);

    /// <summary>Temperature of the air.</summary>
    public Temperature Temperature => Temperature.FromKelvins(temperature);

    /// <summary>Pressure of the air.</summary>
    public Pressure Pressure => Pressure.FromPascals(pressure);

    /// <summary>From a part by volume.</summary>
    /// <param name="fraction">0 to 100 %.</param>
    /// <param name="molarMass">More than 0 and at most 1000 g/mol.</param>
    /// <param name="temperature">−40 to 150 °C.</param>
    /// <param name="pressure">20 to 110 kPa.</param>
    /// <returns>The concentration.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static VapourConcentration OfVolume(Ratio fraction, MolarMass molarMass, Temperature temperature, Pressure pressure) => new(
        Guard.Within(fraction, Bounds.NotNegative(Measure.PartsPerMillion, 1)),
        Guard.Within(molarMass, Bounds.Positive(Measure.MolarMass, 1)), Kelvins(temperature), Pascals(pressure));

    /// <summary>From a mass in a volume of air.</summary>
    /// <param name="mass">0 or more; no more than the pure vapour, p · M/(R · T).</param>
    /// <param name="molarMass">More than 0 and at most 1000 g/mol.</param>
    /// <param name="temperature">−40 to 150 °C.</param>
    /// <param name="pressure">20 to 110 kPa.</param>
    /// <returns>The concentration.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static VapourConcentration OfMass(MassConcentration mass, MolarMass molarMass, Temperature temperature, Pressure pressure)
    {
        double molar = Guard.Within(molarMass, Bounds.Positive(Measure.MolarMass, 1));
        VapourConcentration air = new(0, molar, Kelvins(temperature), Pascals(pressure));
        double volume = air.Volume().Value;
        double kilograms = Guard.Within(mass, Bounds.NotNegative(Measure.MassConcentration, molar / volume).Because("the pure vapour"));
        return new(AirKernel.VolumeFraction(kilograms, volume, molar).Value, molar, air.temperature, air.pressure);
    }

    /// <summary>From a part by volume at 25 °C and 101.325 kPa, the state that limits of exposure name.</summary>
    /// <param name="fraction">0 to 100 %.</param>
    /// <param name="molarMass">More than 0 and at most 1000 g/mol.</param>
    /// <returns>The concentration.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static VapourConcentration AtReference(Ratio fraction, MolarMass molarMass) => OfVolume(
        fraction, molarMass, Temperature.FromKelvins(AirKernel.ReferenceTemperature), Pressure.FromPascals(AirKernel.StandardPressure));

    /// <summary>
    /// The same air brought to another temperature and pressure: the part by volume stays, the mass in a cubic metre changes.
    /// </summary>
    /// <param name="temperature">−40 to 150 °C.</param>
    /// <param name="pressure">20 to 110 kPa.</param>
    /// <returns>The concentration there.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public VapourConcentration At(Temperature temperature, Pressure pressure) =>
        new(fraction, molarMass, Kelvins(temperature), Pascals(pressure));

    /// <summary>How the mass and the figure for limits follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Vapour in air", Volume, InAir, AgainstLimits);

    /// <summary>The part by volume and the state of the air.</summary>
    /// <returns>Text such as <c>118 ppm at 20 °C and 84000 Pa</c>.</returns>
    public override string ToString() =>
        Measure.PartsPerMillion.Format(fraction, DisplayUnits.Si, 3) + " at " + Measure.Temperature.Format(temperature) + " and "
        + Measure.Pressure.Format(pressure);

    private Num Volume(Trace? t = null) => t.Step("molar volume of the air", "V_m", Measure.MolarVolume, AirKernel.IdealGas,
        t.Given("R", AirKernel.GasConstant, Measure.MolarEntropy) * t.Given("T", temperature, Measure.AbsoluteTemperature)
            / t.Given("p", pressure, Measure.Pressure));

    private Num InAir(Trace? t = null) => t.Step("mass in the air", "C", Measure.MassConcentration, AirKernel.IdealGas,
        Part(t) * t.Given("M", molarMass, Measure.MolarMass) / Volume(t));

    private Num AgainstLimits(Trace? t = null) => t.Step("for limits in ppm", "c", Measure.PartsPerMillion, AirKernel.GasLaw,
        Part(t) * t.Given("V_m0", AirKernel.MolarVolume, Measure.MolarVolume) / Volume(t));

    private Num Part(Trace? t) => t.Given("x", fraction, Measure.PartsPerMillion);

    private static double Kelvins(Temperature temperature) =>
        Guard.Within(temperature, Bounds.Between(233.15, 423.15, Measure.Temperature));

    private static double Pascals(Pressure pressure) => Guard.Within(pressure, Bounds.Between(20e3, 110e3, Measure.Pressure));
}
