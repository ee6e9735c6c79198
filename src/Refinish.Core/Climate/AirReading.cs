using System;
using UnitsNet;

namespace Refinish.Climate;

/// <summary>
/// One reading of humid air with its kind. Any two that do not say the same fix the air at a known pressure: see
/// <see cref="MoistAir.FromReadings(AirReading, AirReading, UnitsNet.Pressure)"/>.
/// </summary>
/// <example><code>
/// MoistAir air = MoistAir.FromReadings(
///     AirReading.DryBulb(Temperature.FromDegreesCelsius(21)),
///     AirReading.WetBulb(Temperature.FromDegreesCelsius(17)));
/// Temperature dew = air.DewPoint;                                     // 14.7 °C
/// </code></example>
public sealed record AirReading
{
    private static readonly Bounds Cold = Bounds.Between(ClimateKernel.Coldest, MoistAir.Thermometer.Maximum, Measure.Temperature);

    private AirReading(AirReadingKind kind, double value)
    {
        Kind = kind;
        Value = value;
    }

    /// <summary>What was read.</summary>
    public AirReadingKind Kind { get; }

    /// <summary>The number in the SI base unit of <see cref="Measure"/>.</summary>
    public double Value { get; }

    /// <summary>What kind of amount it is.</summary>
    public Measure Measure => Description.Measure;

    /// <summary>Air temperature.</summary>
    /// <param name="temperature">−60 to 60 °C.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static AirReading DryBulb(Temperature temperature) =>
        new(AirReadingKind.DryBulb, Guard.Within(temperature, MoistAir.Thermometer));

    /// <summary>Dew point, or frost point at and below 0.01 °C.</summary>
    /// <param name="temperature">−100 to 60 °C.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static AirReading DewPoint(Temperature temperature) => new(AirReadingKind.DewPoint, Guard.Within(temperature, Cold));

    /// <summary>Mass of water per mass of dry air.</summary>
    /// <param name="ratio">More than 0, at most 500 kg/kg (reached only where the pressure is little above that of steam).</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static AirReading HumidityRatio(Ratio ratio) =>
        new(AirReadingKind.HumidityRatio, Guard.Within(ratio, Bounds.Positive(Measure.HumidityRatio, 500)));

    /// <summary>Relative humidity.</summary>
    /// <param name="humidity">More than 0, at most 100 %.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static AirReading RelativeHumidity(Ratio humidity) =>
        new(AirReadingKind.RelativeHumidity, Guard.Within(humidity, Bounds.Positive(Measure.Percent, 1)));

    /// <summary>Wet bulb of a sling or aspirated psychrometer; at and below 0.01 °C the bulb is taken to be covered with ice.</summary>
    /// <param name="temperature">−100 to 60 °C.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static AirReading WetBulb(Temperature temperature) => new(AirReadingKind.WetBulb, Guard.Within(temperature, Cold));

    /// <summary>Enthalpy per mass of dry air.</summary>
    /// <param name="enthalpy">−100 to 2 000 000 kJ/kg.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static AirReading Enthalpy(SpecificEnergy enthalpy) =>
        new(AirReadingKind.Enthalpy, Guard.Within(enthalpy, Bounds.Between(-1e5, 2e9, Measure.SpecificEnergy)));

    /// <summary>Volume of the humid air per mass of dry air.</summary>
    /// <param name="volume">More than 0, at most 5000 m³/kg.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static AirReading SpecificVolume(SpecificVolume volume) =>
        new(AirReadingKind.SpecificVolume, Guard.Within(volume, Bounds.Positive(Measure.SpecificVolume, 5000)));

    /// <summary>The kind and the number in metric units.</summary>
    /// <returns>Text such as <c>wet bulb 17 °C</c>.</returns>
    public override string ToString() => Name + " " + Measure.Format(Value);

    internal string Name => Description.Name;

    internal string Symbol => Description.Symbol;

    private (string Name, string Symbol, Measure Measure) Description => Kind switch
    {
        AirReadingKind.DryBulb => ("dry bulb", "T", Measure.Temperature),
        AirReadingKind.DewPoint => ("dew point", "T_d", Measure.Temperature),
        AirReadingKind.HumidityRatio => ("humidity ratio", "W", Measure.HumidityRatio),
        AirReadingKind.RelativeHumidity => ("relative humidity", "RH", Measure.Percent),
        AirReadingKind.WetBulb => ("wet bulb", "T_wb", Measure.Temperature),
        AirReadingKind.Enthalpy => ("enthalpy", "h", Measure.SpecificEnergy),
        _ => ("specific volume", "v", Measure.SpecificVolume),
    };
}
