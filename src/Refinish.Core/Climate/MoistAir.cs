using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Climate;

/// <summary>
/// A state of humid air from a thermometer and a hygrometer: its vapour pressure, dew point, humidity ratio, density and enthalpy,
/// and its relative humidity at a colder or warmer surface.
/// </summary>
/// <remarks>
/// <para>Any two of the usual readings do: see <see cref="FromReadings(AirReading, AirReading, Pressure)"/>.</para>
/// <para>pw = RH · pws(T); the dew point is the temperature at which pws = pw; W = 0.621945 pw / (p − pw); v = 287.042 T (1 + 1.607858
/// W) / p; h = 1.006 t + W (2501 + 1.86 t) kJ/kg; the wet bulb is the temperature at which air of that wet bulb has this W. Formulas:
/// ASHRAE Handbook Fundamentals (2017), chapter 1, eqs. 5 and 6 (Hyland and Wexler) for pws, 12 and 22, 20, 26, 30, 33 and 35;
/// ideal-gas mixture, no enhancement factor.</para>
/// <para>Saturation is over liquid water above the triple point of water, 0.01 °C, and over ice at and below it. So a dew point below
/// 0.01 °C is a frost point, and relative humidity below it is that over ice; many hygrometers show it over (supercooled) water there,
/// which reads lower.</para>
/// <para>Range: −60 to 60 °C. The formulas for saturation reach from −100 to 200 °C, the dew point is looked for in all of that
/// range.</para>
/// </remarks>
/// <example><code>
/// MoistAir air = new(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(60));
/// Temperature dew = air.DewPoint;                                                            // 13.9 °C
/// Ratio atMetal = air.RelativeHumidityAt(Temperature.FromDegreesCelsius(16));                // 87 %
/// MoistAir heated = air.HeatedTo(Temperature.FromDegreesCelsius(26));                        // 26 °C, 47.2 % relative humidity, dew point 13.9 °C: the dew point stays
/// </code></example>
public sealed record MoistAir
{
    private static readonly Pressure SeaLevel = Pressure.FromPascals(101325);
    internal static readonly Bounds Thermometer = Bounds.Between(213.15, 333.15, Measure.Temperature);

    private static readonly string DewPointInRange =
        "a humidity whose dew point is at least " + Measure.Temperature.Format(ClimateKernel.Coldest) + ", where the formula for ice ends";

    internal static readonly Bounds Barometer = Bounds.Between(20e3, 110e3, Measure.Pressure);

    private readonly double dryBulb;
    private readonly double relativeHumidity;
    private readonly double pressure;

    // Follows from the three readings; every other result starts from it.
    private readonly double vapour;

    private static readonly Source Volumetric = ClimateKernel.Ashrae("eq. 26");
    private static readonly Source Ratios = ClimateKernel.Ashrae("eq. 20");
    private static readonly Source Densities = ClimateKernel.Ashrae("eq. 11");
    private static readonly Source Caloric = ClimateKernel.Ashrae("eq. 30");
    private static readonly Source WaterPerVolume = Source.Derived("mass of water per kg of dry air over the volume of that kg");

    /// <summary>Takes the readings of air at sea level, 101 325 Pa.</summary>
    /// <param name="dryBulb">Air temperature, −60 to 60 °C.</param>
    /// <param name="relativeHumidity">Relative humidity, more than 0 and at most 100 %, with a dew point of −100 °C or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MoistAir(Temperature dryBulb, Ratio relativeHumidity)
        : this(dryBulb, relativeHumidity, SeaLevel)
    {
    }

    /// <summary>Takes the readings.</summary>
    /// <param name="dryBulb">Air temperature, −60 to 60 °C.</param>
    /// <param name="relativeHumidity">Relative humidity, more than 0 and at most 100 %, with a dew point of −100 °C or more.</param>
    /// <param name="pressure">Absolute air pressure at the place (not reduced to sea level), 20 to 110 kPa.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MoistAir(Temperature dryBulb, Ratio relativeHumidity, Pressure pressure)
        : this(
            Guard.Within(dryBulb, Thermometer),
            Guard.Within(relativeHumidity, Bounds.Positive(Measure.Percent, 1)),
            Guard.Within(pressure, Barometer),
            nameof(relativeHumidity))
    {
    }

    private MoistAir(double dryBulb, double relativeHumidity, double pressure, string humidityName)
    {
        this.dryBulb = dryBulb;
        this.relativeHumidity = relativeHumidity;
        this.pressure = pressure;
        vapour = PartialPressure().Value;

        // The factor lets a dew point of exactly −100 °C through, which comes back with a rounding error.
        Guard.Rule(vapour >= (1 - 1e-12) * ClimateKernel.LeastPressure, humidityName, relativeHumidity, Measure.Percent, DewPointInRange);
    }

    /// <summary>Air temperature.</summary>
    public Temperature DryBulb => Temperature.FromKelvins(dryBulb);

    /// <summary>Relative humidity; over ice at and below 0.01 °C.</summary>
    public Ratio RelativeHumidity => Ratio.FromDecimalFractions(relativeHumidity);

    /// <summary>Absolute air pressure.</summary>
    public Pressure Pressure => Pressure.FromPascals(pressure);

    /// <summary>Saturation pressure of water vapour at the air temperature, pws.</summary>
    public Pressure SaturationPressure => Pressure.FromPascals(Saturation().Value);

    /// <summary>Partial pressure of water vapour, pw = RH · pws.</summary>
    public Pressure VapourPressure => Pressure.FromPascals(vapour);

    /// <summary>Where the air would begin to give off water: the dew point, at and below 0.01 °C the frost point; −100 to 60 °C.</summary>
    public Temperature DewPoint => Temperature.FromKelvins(DewPointKelvins);

    /// <summary>Mass of water per mass of dry air.</summary>
    public Ratio HumidityRatio => Ratio.FromDecimalFractions(Mixing().Value);

    /// <summary>Volume of the humid air per mass of dry air.</summary>
    public SpecificVolume SpecificVolume => SpecificVolume.FromCubicMetersPerKilogram(Volume().Value);

    /// <summary>Mass of the humid air per volume, (1 + W) / v.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(Mass().Value);

    /// <summary>Mass of water vapour per volume of air, W / v.</summary>
    public Density AbsoluteHumidity => Density.FromKilogramsPerCubicMeter(WaterMass().Value);

    /// <summary>Enthalpy per mass of dry air, zero for dry air and liquid water at 0 °C.</summary>
    public SpecificEnergy Enthalpy => SpecificEnergy.FromJoulesPerKilogram(Heat().Value);

    /// <summary>
    /// What a wetted bulb in moving air settles at (the thermodynamic wet bulb, eq. 33); where water would freeze on it, what a bulb
    /// covered with ice settles at (eq. 35, at or below 0.01 °C).
    /// </summary>
    /// <remarks>
    /// A little below freezing both can be: water that has not frozen yet reads up to about 1 K higher than ice. See
    /// <see cref="IceBulb"/>.
    /// </remarks>
    public Temperature WetBulb => Temperature.FromKelvins(WetBulbKelvins);

    /// <summary>What a bulb covered with ice settles at, −100 to 0.01 °C; <see langword="null"/> where the ice would melt.</summary>
    public Temperature? IceBulb =>
        ClimateKernel.WetBulbOverIce(dryBulb, Mixing().Value, pressure) is var ice && double.IsNaN(ice)
            ? null
            : Temperature.FromKelvins(ice);

    internal double Kelvins => dryBulb;

    internal double Vapour => vapour;

    internal double DewPointKelvins => relativeHumidity == 1 ? dryBulb : ClimateKernel.DewPoint(vapour);

    private double WetBulbKelvins
    {
        get
        {
            if (relativeHumidity == 1)
            {
                return dryBulb;
            }

            double ratio = Mixing().Value;
            double water = ClimateKernel.WetBulbOverWater(dryBulb, ratio, pressure);
            return double.IsNaN(water) ? ClimateKernel.WetBulbOverIce(dryBulb, ratio, pressure) : water;
        }
    }

    /// <summary>Air at sea level, 101 325 Pa, from its temperature and its dew point, as some instruments show it.</summary>
    /// <param name="dryBulb">Air temperature, −60 to 60 °C.</param>
    /// <param name="dewPoint">Dew point (frost point at and below 0.01 °C), −100 °C to the air temperature.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range; a dew point is never above the air temperature.
    /// </exception>
    public static MoistAir FromDewPoint(Temperature dryBulb, Temperature dewPoint) => FromDewPoint(dryBulb, dewPoint, SeaLevel);

    /// <summary>Air from its temperature and its dew point, as some instruments show it.</summary>
    /// <param name="dryBulb">Air temperature, −60 to 60 °C.</param>
    /// <param name="dewPoint">Dew point (frost point at and below 0.01 °C), −100 °C to the air temperature.</param>
    /// <param name="pressure">Absolute air pressure, 20 to 110 kPa.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range; a dew point is never above the air temperature.
    /// </exception>
    public static MoistAir FromDewPoint(Temperature dryBulb, Temperature dewPoint, Pressure pressure)
    {
        double t = Guard.Within(dryBulb, Thermometer);
        double dew = Guard.Within(dewPoint, Bounds.Between(ClimateKernel.Coldest, t, Measure.Temperature));
        double p = Guard.Within(pressure, Barometer);
        return new MoistAir(t, HumidityAt(ClimateKernel.SaturationPressure(dew), t), p, nameof(dewPoint));
    }

    /// <summary>Air at sea level, 101 325 Pa, from a psychrometer.</summary>
    /// <param name="dryBulb">Air temperature, −60 to 60 °C.</param>
    /// <param name="wetBulb">Wet bulb, at most the air temperature; at and below 0.01 °C the bulb is taken to be covered with ice.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or no air is so dry that a bulb gets that cold.
    /// </exception>
    public static MoistAir FromWetBulb(Temperature dryBulb, Temperature wetBulb) => FromWetBulb(dryBulb, wetBulb, SeaLevel);

    /// <summary>Air from a psychrometer.</summary>
    /// <param name="dryBulb">Air temperature, −60 to 60 °C.</param>
    /// <param name="wetBulb">Wet bulb, at most the air temperature; at and below 0.01 °C the bulb is taken to be covered with ice.</param>
    /// <param name="pressure">Absolute air pressure, 20 to 110 kPa.</param>
    /// <returns>The air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or no air is so dry that a bulb gets that cold.
    /// </exception>
    public static MoistAir FromWetBulb(Temperature dryBulb, Temperature wetBulb, Pressure pressure)
    {
        double t = Guard.Within(dryBulb, Thermometer);
        double wet = Guard.Within(wetBulb, Bounds.Between(ClimateKernel.Coldest, t, Measure.Temperature));
        double p = Guard.Within(pressure, Barometer);
        Num ratio = ClimateKernel.HumidityRatioOfWetBulb(t, wet, p, ClimateKernel.IsOverIce(wet));
        double vapour = ClimateKernel.VapourPressure(ratio, p).Value;
        Guard.Rule(vapour >= ClimateKernel.LeastPressure, nameof(wetBulb), wet, Measure.Temperature, "a wet bulb to which the driest air at the dry bulb can cool");
        return new MoistAir(t, HumidityAt(vapour, t), p, nameof(wetBulb));
    }

    /// <summary>Air at sea level, 101 325 Pa, from any two readings that do not say the same.</summary>
    /// <param name="first">One reading.</param>
    /// <param name="second">Another, in any order.</param>
    /// <returns>The air, with an air temperature of −60 to 60 °C.</returns>
    /// <exception cref="ArgumentNullException">A reading is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The pressure is outside its range, or the two readings do not fix the air or cannot both hold.
    /// </exception>
    public static MoistAir FromReadings(AirReading first, AirReading second) => FromReadings(first, second, SeaLevel);

    /// <summary>
    /// Air from any two readings that do not say the same. Not taken are two of one kind, dew point with humidity ratio (at a known
    /// pressure they are the same reading), and wet bulb with enthalpy (their lines on a psychrometric chart all but coincide).
    /// </summary>
    /// <param name="first">One reading.</param>
    /// <param name="second">Another, in any order.</param>
    /// <param name="pressure">Absolute air pressure, 20 to 110 kPa. <see cref="StandardAtmosphere"/> tells it from the altitude.</param>
    /// <returns>The air, with an air temperature of −60 to 60 °C.</returns>
    /// <exception cref="ArgumentNullException">A reading is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The pressure is outside its range, or the two readings do not fix the air or cannot both hold.
    /// </exception>
    /// <example><code>
    /// MoistAir air = MoistAir.FromReadings(
    ///     AirReading.DewPoint(Temperature.FromDegreesCelsius(12)), AirReading.RelativeHumidity(Ratio.FromPercent(50)));
    /// Temperature dryBulb = air.DryBulb;                               // 22.97 °C
    /// </code></example>
    public static MoistAir FromReadings(AirReading first, AirReading second, Pressure pressure)
    {
        (AirSolution solution, double p) = Readings(first, second, pressure);
        (double t, double vapour) = solution.Solve();
        if (double.IsNaN(t))
        {
            string allowed = "a reading that can hold together with " + first + " in air of −60 °C to 60 °C";
            Guard.Rule(false, nameof(second), second.Value, second.Measure, allowed);
        }

        return new MoistAir(t, HumidityAt(vapour, t), p, nameof(second));
    }

    /// <summary>
    /// How the air temperature and the relative humidity follow from two readings at sea level, 101 325 Pa, and every result from
    /// those.
    /// </summary>
    /// <param name="first">One reading.</param>
    /// <param name="second">Another, in any order.</param>
    /// <returns>The derivation, with that of the air as its part.</returns>
    /// <exception cref="ArgumentNullException">A reading is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="FromReadings(AirReading, AirReading, Pressure)"/>.</exception>
    public static Workings WorkingsFromReadings(AirReading first, AirReading second) => WorkingsFromReadings(first, second, SeaLevel);

    /// <summary>How the air temperature and the relative humidity follow from two readings, and every result from those.</summary>
    /// <param name="first">One reading.</param>
    /// <param name="second">Another, in any order.</param>
    /// <param name="pressure">Absolute air pressure, 20 to 110 kPa.</param>
    /// <returns>The derivation, with that of the air as its part.</returns>
    /// <exception cref="ArgumentNullException">A reading is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="FromReadings(AirReading, AirReading, Pressure)"/>.</exception>
    public static Workings WorkingsFromReadings(AirReading first, AirReading second, Pressure pressure) =>
        Readings(first, second, pressure).Solution.Workings(FromReadings(first, second, pressure));

    /// <summary>
    /// Relative humidity of this same air where it touches a surface, pw / pws(surface). Above 100 % water condenses there.
    /// </summary>
    /// <param name="surface">Temperature of the surface, −60 to 60 °C.</param>
    /// <returns>The relative humidity at the surface; over ice at and below 0.01 °C.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside −60 to 60 °C.</exception>
    public Ratio RelativeHumidityAt(Temperature surface) => Ratio.FromDecimalFractions(AtSurface(Guard.Within(surface, Thermometer)).Value);

    /// <summary>How the relative humidity at a surface follows.</summary>
    /// <param name="surface">Temperature of the surface, −60 to 60 °C.</param>
    /// <returns>The derivation, with that of the air as its part.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside −60 to 60 °C.</exception>
    public Workings WorkingsAt(Temperature surface)
    {
        double ts = Guard.Within(surface, Thermometer);
        return Trace.Of("Air at a surface", [Workings()], trace => AtSurface(ts, trace));
    }

    /// <summary>
    /// The same air brought to another temperature with no water added or taken: the vapour pressure and the dew point stay, the
    /// relative humidity changes. Dry electric heat does this; an unvented burner does not, it adds water.
    /// </summary>
    /// <param name="temperature">The new air temperature, from the dew point (or −60 °C) to 60 °C.</param>
    /// <returns>The air at that temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Outside the range: below its dew point air gives off water and is no longer the same air.
    /// </exception>
    public MoistAir HeatedTo(Temperature temperature)
    {
        Bounds range = Bounds.Between(Math.Max(Thermometer.Minimum, DewPointKelvins), Thermometer.Maximum, Measure.Temperature);
        double t = Guard.Within(temperature, range);
        return new MoistAir(t, HumidityAt(vapour, t), pressure, nameof(temperature));
    }

    /// <summary>How every result follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Humid air", PartialPressure, Dew, Mixing, Volume, Mass, WaterMass, Heat, Bulb, FrozenBulb);

    /// <summary>The readings and the dew point in one line, in metric units.</summary>
    /// <returns>Text such as <c>22 °C, 60 % relative humidity, dew point 13.9 °C</c>.</returns>
    public override string ToString() =>
        Measure.Temperature.Format(dryBulb, DisplayUnits.Si, 4) + ", " + Measure.Percent.Format(relativeHumidity, DisplayUnits.Si, 3)
        + " relative humidity, dew point " + Measure.Temperature.Format(DewPointKelvins, DisplayUnits.Si, 3);

    private static (AirSolution Solution, double Pressure) Readings(AirReading first, AirReading second, Pressure pressure)
    {
        Guard.NotNull(first);
        Guard.NotNull(second);
        double p = Guard.Within(pressure, Barometer);
        AirSolution solution = new(first, second, p);
        if (solution.IsDependent)
        {
            Guard.Rule(false, nameof(second), second.Value, second.Measure, "a reading that tells something else than the " + first.Name);
        }

        return (solution, p);
    }

    // A state at its own dew point comes out at 1 to within rounding; the callers have checked that it is not beyond.
    private static double HumidityAt(double vapourPressure, double t) => Math.Min(1, vapourPressure / ClimateKernel.SaturationPressure(t));

    /// <summary>pw / pws at a surface.</summary>
    internal Num AtSurface(double kelvins, Trace? t = null) => t.Step(
        "relative humidity at the surface", "RH_s", Measure.Percent, ClimateKernel.Ideal,
        t.Given("p_w", vapour, Measure.Pressure)
            / ClimateKernel.SaturationStep(t, "saturation pressure at the surface", "p_ws,s", "T_s", kelvins));

    internal Num Saturation(Trace? t = null) =>
        ClimateKernel.SaturationStep(t, "saturation pressure at the air temperature", "p_ws", "T", dryBulb);

    private Num PartialPressure(Trace? t = null) => t.Step(
        "vapour pressure", "p_w", Measure.Pressure, ClimateKernel.Ideal, t.Given("RH", relativeHumidity, Measure.Percent) * Saturation(t));

    private Num Dew(Trace t) => ClimateKernel.DewPointStep(t, "dew point", "T_d", PartialPressure(t), DewPointKelvins);

    private Num Mixing(Trace? t = null) => t.Step(
        "humidity ratio", "W", Measure.HumidityRatio, Ratios,
        ClimateKernel.HumidityRatio(t.Given("p_w", vapour, Measure.Pressure), Barometric(t)));

    private Num Barometric(Trace? t) => t.Given("p", pressure, Measure.Pressure);

    // The ratio as a plain number, where it stands beside a one.
    private Num Bare(Trace? t) => t.Given("W", Mixing(t).Value, Measure.Number);

    private Num Volume(Trace? t = null) => t.Step(
        "specific volume", "v", Measure.SpecificVolume, Volumetric,
        ClimateKernel.SpecificVolume(t.Given("T", dryBulb, Measure.AbsoluteTemperature), Bare(t), Barometric(t)));

    private Num Mass(Trace? t = null) =>
        t.Step("density of the humid air", "ρ", Measure.AirDensity, Densities, (1 + Mixing(t)) / Volume(t));

    private Num WaterMass(Trace? t = null) =>
        t.Step("absolute humidity", "d_v", Measure.VapourDensity, WaterPerVolume, Mixing(t) / Volume(t));

    private Num Heat(Trace? t = null) => t.Step(
        "enthalpy per kg of dry air, J/kg", "h", Measure.SpecificEnergy, Caloric,
        ClimateKernel.Enthalpy(t.Given("T", dryBulb, Measure.AbsoluteTemperature), Bare(t), t));

    private Num Bulb(Trace t) => ClimateKernel.WetBulbStep(t, "wet bulb", "T_wb", dryBulb, Mixing(t), pressure, WetBulbKelvins);

    private Num FrozenBulb(Trace t) => IceBulb is Temperature ice && ice.Kelvins != WetBulbKelvins
        ? ClimateKernel.WetBulbStep(t, "bulb covered with ice", "T_ice", dryBulb, Mixing(t), pressure, ice.Kelvins)
        : default;
}
