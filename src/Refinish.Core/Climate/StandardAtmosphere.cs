using System;
using UnitsNet;

namespace Refinish.Climate;

/// <summary>
/// The air pressure that goes with an altitude, for work away from the sea: p = 101 325 Pa (1 − 2.25577e-5 Z)^5.2559, t = 15 °C −
/// 0.0065 Z, Z in metres.
/// </summary>
/// <remarks>
/// Source: US Standard Atmosphere (1976) as in ASHRAE Handbook Fundamentals (2017), chapter 1, eqs. 3 and 4. The weather moves the
/// pressure a few per cent about it; a barometer on the spot, or a forecast's sea-level pressure through <see cref="StationPressure"/>,
/// is better.
/// </remarks>
/// <example><code>
/// StandardAtmosphere denver = new(Length.FromMeters(1609));
/// MoistAir air = MoistAir.FromWetBulb(Temperature.FromDegreesCelsius(21), Temperature.FromDegreesCelsius(14), denver.Pressure);
/// </code></example>
public sealed record StandardAtmosphere
{
    private static readonly Source PressureSource = ClimateKernel.Ashrae("eq. 3, US Standard Atmosphere");
    private static readonly Source TemperatureSource = ClimateKernel.Ashrae("eq. 4, US Standard Atmosphere");
    private static readonly Source Lapse = Source.Derived("half the standard lapse of 6.5 K in 1000 m");
    private static readonly Source Hydrostatic = Source.Derived("hydrostatic law of an ideal gas, 9.80665 m/s² and 287.042 J/(kg K)");

    private readonly double altitude;

    /// <summary>Takes the altitude.</summary>
    /// <param name="altitude">Above mean sea level, −500 to 11 000 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public StandardAtmosphere(Length altitude) => this.altitude = Guard.Within(altitude, Bounds.Between(-500, 11000, Measure.Distance));

    /// <summary>Above mean sea level.</summary>
    public Length Altitude => Length.FromMeters(altitude);

    /// <summary>Pressure of the standard atmosphere.</summary>
    public Pressure Pressure => Pressure.FromPascals(Pascals().Value);

    /// <summary>Temperature of the standard atmosphere out of doors.</summary>
    public Temperature Temperature => Temperature.FromKelvins(Kelvins().Value);

    /// <summary>The pressure at the place from that of a weather report, which is reduced to sea level.</summary>
    /// <param name="seaLevel">Reported pressure, 85 to 110 kPa.</param>
    /// <param name="outdoors">Temperature out of doors at the place, −60 to 60 °C.</param>
    /// <returns>p_sea exp(−g Z / (R T_m)), with T_m that of the middle of the air column down to the sea.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Pressure StationPressure(Pressure seaLevel, Temperature outdoors)
    {
        (double p, double t) = Reported(seaLevel, outdoors);
        return Pressure.FromPascals(Station(p, t).Value);
    }

    /// <summary>How the pressure and the temperature follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Standard atmosphere", Pascals, Kelvins);

    /// <summary>How the pressure at the place follows from a weather report's.</summary>
    /// <param name="seaLevel">Reported pressure, 85 to 110 kPa.</param>
    /// <param name="outdoors">Temperature out of doors at the place, −60 to 60 °C.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Workings StationWorkings(Pressure seaLevel, Temperature outdoors)
    {
        (double p, double t) = Reported(seaLevel, outdoors);
        return Trace.Of("Pressure at the place from a weather report", trace => Station(p, t, trace));
    }

    /// <summary>The altitude and the pressure in one line, in metric units.</summary>
    /// <returns>Text such as <c>500 m: 95461 Pa</c>.</returns>
    public override string ToString() => Measure.Distance.Format(altitude) + ": " + Measure.Pressure.Format(Pascals().Value);

    private static (double Pascals, double Kelvins) Reported(Pressure seaLevel, Temperature outdoors) => (
        Guard.Within(seaLevel, Bounds.Between(85e3, 110e3, Measure.Pressure)),
        Guard.Within(outdoors, MoistAir.Thermometer));

    private Num Pascals(Trace? t = null) =>
        t.Step("pressure", "p", Measure.Pressure, PressureSource, 101325 * Num.Power(1 - (2.25577e-5 * Height(t)), 5.2559));

    private Num Kelvins(Trace? t = null) => t.Step(
        "temperature out of doors", "T", Measure.Temperature, TemperatureSource,
        t.Given("T_0", ClimateKernel.CelsiusZero, Measure.AbsoluteTemperature) + 15 - (0.0065 * Height(t)));

    private Num Station(double seaLevel, double outdoors, Trace? t = null)
    {
        Num column = t.Step(
            "temperature of the middle of the air column", "T_m", Measure.AbsoluteTemperature, Lapse,
            t.Given("T", outdoors, Measure.AbsoluteTemperature) + (0.00325 * Height(t)));
        return t.Step(
            "pressure at the place", "p", Measure.Pressure, Hydrostatic,
            t.Given("p_sea", seaLevel, Measure.Pressure) * Num.Exp(-(9.80665 * Height(t) / (ClimateKernel.DryAirGasConstant * column))));
    }

    private Num Height(Trace? t) => t.Given("Z", altitude, Measure.Distance);
}
