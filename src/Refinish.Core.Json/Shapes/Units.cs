using System;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>
/// The units that a document may use, each kind with its SI base unit first. Conversions are those of the units library, so that 1346 mm in
/// a document is the very number that the same words make in code. A bare "gal" or "fl oz" is refused: the US and the imperial one differ
/// by a fifth.
/// </summary>
internal static class Units
{
    // By the definition of ounce and foot (NIST Handbook 44, Appendix C): 1 lb = 0.453 592 37 kg, 1 ft = 0.3048 m.
    private const double OuncePerSquareFoot = 0.45359237 / 16 / (0.3048 * 0.3048);

    private static readonly double[] Decades = [1, 0.1, 1e-2, 1e-3, 1e-4, 1e-5, 0, 10, 100, 1000, 1e4, 1e5, 1e-6];

    public static UnitTable<Length> Length { get; } = new(
        "length",
        Decades,
        new("m", value => UnitsNet.Length.FromMeters(value), length => length.Meters),
        new("cm", value => UnitsNet.Length.FromCentimeters(value), length => length.Centimeters),
        new("mm", value => UnitsNet.Length.FromMillimeters(value), length => length.Millimeters),
        new("µm", value => UnitsNet.Length.FromMicrometers(value), length => length.Micrometers, "um", "μm"),
        new("ft", value => UnitsNet.Length.FromFeet(value), length => length.Feet),
        new("in", value => UnitsNet.Length.FromInches(value), length => length.Inches),
        new("mil", value => UnitsNet.Length.FromMils(value), length => length.Mils));

    public static UnitTable<Level> SoundLevel { get; } = new(
        "sound level", [90, 4, 100], new Unit<Level>("dB", value => Level.FromDecibels(value), level => level.Decibels));

    public static UnitTable<Area> Area { get; } = new(
        "area",
        Decades,
        new("m²", value => UnitsNet.Area.FromSquareMeters(value), area => area.SquareMeters, "m2"),
        new("cm²", value => UnitsNet.Area.FromSquareCentimeters(value), area => area.SquareCentimeters, "cm2"),
        new("mm²", value => UnitsNet.Area.FromSquareMillimeters(value), area => area.SquareMillimeters, "mm2"),
        new("ft²", value => UnitsNet.Area.FromSquareFeet(value), area => area.SquareFeet, "ft2"),
        new("in²", value => UnitsNet.Area.FromSquareInches(value), area => area.SquareInches, "in2"));

    public static UnitTable<Volume> Volume { get; } = new(
        "volume",
        Decades,
        new("m³", value => UnitsNet.Volume.FromCubicMeters(value), volume => volume.CubicMeters, "m3"),
        new("L", value => UnitsNet.Volume.FromLiters(value), volume => volume.Liters, "l"),
        new("mL", value => UnitsNet.Volume.FromMilliliters(value), volume => volume.Milliliters, "ml"),
        new("cm³", value => UnitsNet.Volume.FromCubicCentimeters(value), volume => volume.CubicCentimeters, "cm3"),
        new("ft³", value => UnitsNet.Volume.FromCubicFeet(value), volume => volume.CubicFeet, "ft3"),
        new("US gal", value => UnitsNet.Volume.FromUsGallons(value), volume => volume.UsGallons),
        new("US qt", value => UnitsNet.Volume.FromUsQuarts(value), volume => volume.UsQuarts),
        new("US pt", value => UnitsNet.Volume.FromUsPints(value), volume => volume.UsPints),
        new("US fl oz", value => UnitsNet.Volume.FromUsOunces(value), volume => volume.UsOunces),
        new("imp gal", value => UnitsNet.Volume.FromImperialGallons(value), volume => volume.ImperialGallons),
        new("imp fl oz", value => UnitsNet.Volume.FromImperialOunces(value), volume => volume.ImperialOunces));

    public static UnitTable<Mass> Mass { get; } = new(
        "mass",
        Decades,
        new("kg", value => UnitsNet.Mass.FromKilograms(value), mass => mass.Kilograms),
        new("g", value => UnitsNet.Mass.FromGrams(value), mass => mass.Grams),
        new("mg", value => UnitsNet.Mass.FromMilligrams(value), mass => mass.Milligrams),
        new("lb", value => UnitsNet.Mass.FromPounds(value), mass => mass.Pounds),
        new("oz", value => UnitsNet.Mass.FromOunces(value), mass => mass.Ounces));

    /// <summary>Pieces of a material.</summary>
    public static UnitTable<double> Pieces { get; } = new("pieces", [1, 10], new Unit<double>("each", value => value, pieces => pieces));

    public static UnitTable<Density> Density { get; } = new(
        "density",
        [1000, .. Decades],
        new("kg/m³", value => UnitsNet.Density.FromKilogramsPerCubicMeter(value), density => density.KilogramsPerCubicMeter, "kg/m3"),
        new("g/mL", value => UnitsNet.Density.FromGramsPerMilliliter(value), density => density.GramsPerMilliliter, "g/ml", "g/cm³",
            "g/cm3"),
        new("kg/L", value => UnitsNet.Density.FromKilogramsPerLiter(value), density => density.KilogramsPerLiter, "kg/l"),
        new("g/L", value => UnitsNet.Density.FromGramsPerLiter(value), density => density.GramsPerLiter, "g/l"),
        new("lb/US gal", value => UnitsNet.Density.FromPoundsPerUSGallon(value), density => density.PoundsPerUSGallon),
        new("lb/ft³", value => UnitsNet.Density.FromPoundsPerCubicFoot(value), density => density.PoundsPerCubicFoot, "lb/ft3"));

    public static UnitTable<SpecificEntropy> SpecificHeat { get; } = new(
        "specific heat",
        [1000, .. Decades],
        new("J/(kg·K)", value => UnitsNet.SpecificEntropy.FromJoulesPerKilogramKelvin(value), heat =>
            heat.JoulesPerKilogramKelvin, "J/(kg K)"),
        new("Btu/(lb·°F)", value => UnitsNet.SpecificEntropy.FromBtusPerPoundFahrenheit(value), heat => heat.BtusPerPoundFahrenheit,
            "Btu/(lb degF)"));

    public static UnitTable<ThermalConductivity> Conductivity { get; } = new(
        "thermal conductivity",
        Decades,
        new("W/(m·K)", value => UnitsNet.ThermalConductivity.FromWattsPerMeterKelvin(value), conductivity =>
            conductivity.WattsPerMeterKelvin,
            "W/(m K)"),
        new("Btu/(h·ft·°F)", value => UnitsNet.ThermalConductivity.FromBtusPerHourFootFahrenheit(value),
            conductivity => conductivity.BtusPerHourFootFahrenheit, "Btu/(h ft degF)"));

    public static UnitTable<Ratio> Ratio { get; } = new(
        "ratio",
        [0.5, 0.1, 0.01, 0, 1],
        new("1", value => UnitsNet.Ratio.FromDecimalFractions(value), ratio => ratio.DecimalFractions),
        new("%", value => UnitsNet.Ratio.FromPercent(value), ratio => ratio.Percent),
        new("ppm", value => UnitsNet.Ratio.FromPartsPerMillion(value), ratio => ratio.PartsPerMillion));

    /// <summary>
    /// As in the library, a temperature read in °C or °F is kept to 1e-10 K, so that −20 °C and −4 °F are one temperature.
    /// </summary>
    public static UnitTable<Temperature> Temperature { get; } = new(
        "temperature",
        [293.15, 273.15, 303.15, 253.15],
        new("K", value => UnitsNet.Temperature.FromKelvins(value), temperature => temperature.Kelvins),
        new("°C", value => Kept(UnitsNet.Temperature.FromDegreesCelsius(value)), temperature => temperature.DegreesCelsius, "degC"),
        new("°F", value => Kept(UnitsNet.Temperature.FromDegreesFahrenheit(value)), temperature => temperature.DegreesFahrenheit, "degF"));

    public static UnitTable<TemperatureDelta> TemperatureDelta { get; } = new(
        "temperature difference",
        Decades,
        new("K", value => UnitsNet.TemperatureDelta.FromKelvins(value), difference => difference.Kelvins, "Δ°C", "delta degC"),
        new("Δ°F", value => UnitsNet.TemperatureDelta.FromDegreesFahrenheit(value), difference => difference.DegreesFahrenheit,
            "delta degF"));

    public static UnitTable<Pressure> Pressure { get; } = new(
        "pressure",
        [101325, .. Decades],
        new("Pa", value => UnitsNet.Pressure.FromPascals(value), pressure => pressure.Pascals),
        new("hPa", value => UnitsNet.Pressure.FromHectopascals(value), pressure => pressure.Hectopascals),
        new("kPa", value => UnitsNet.Pressure.FromKilopascals(value), pressure => pressure.Kilopascals),
        new("mbar", value => UnitsNet.Pressure.FromMillibars(value), pressure => pressure.Millibars),
        new("bar", value => UnitsNet.Pressure.FromBars(value), pressure => pressure.Bars),
        new("mmHg", value => UnitsNet.Pressure.FromMillimetersOfMercury(value), pressure => pressure.MillimetersOfMercury),
        new("inHg", value => UnitsNet.Pressure.FromInchesOfMercury(value), pressure => pressure.InchesOfMercury),
        new("psi", value => UnitsNet.Pressure.FromPoundsForcePerSquareInch(value), pressure => pressure.PoundsForcePerSquareInch));

    public static UnitTable<VolumeFlow> VolumeFlow { get; } = new(
        "volume flow",
        [.. Decades, 1e-7],
        new("m³/s", value => UnitsNet.VolumeFlow.FromCubicMetersPerSecond(value), flow => flow.CubicMetersPerSecond, "m3/s"),
        new("m³/h", value => UnitsNet.VolumeFlow.FromCubicMetersPerHour(value), flow => flow.CubicMetersPerHour, "m3/h"),
        new("L/s", value => UnitsNet.VolumeFlow.FromLitersPerSecond(value), flow => flow.LitersPerSecond, "l/s"),
        new("L/min", value => UnitsNet.VolumeFlow.FromLitersPerMinute(value), flow => flow.LitersPerMinute, "l/min"),
        new("mL/min", value => UnitsNet.VolumeFlow.FromMillilitersPerMinute(value), flow => flow.MillilitersPerMinute, "ml/min"),
        new("ft³/min", value => UnitsNet.VolumeFlow.FromCubicFeetPerMinute(value), flow => flow.CubicFeetPerMinute, "ft3/min", "cfm"),
        new("US gal/min", value => UnitsNet.VolumeFlow.FromUsGallonsPerMinute(value), flow => flow.UsGallonsPerMinute),
        new("US fl oz/min", value => UnitsNet.VolumeFlow.FromUsGallonsPerMinute(value / 128), flow => flow.UsGallonsPerMinute * 128));

    public static UnitTable<Angle> Angle { get; } = new(
        "angle",
        Decades,
        new("rad", value => UnitsNet.Angle.FromRadians(value), angle => angle.Radians),
        new("°", value => UnitsNet.Angle.FromDegrees(value), angle => angle.Degrees, "deg"));

    public static UnitTable<MolarMass> MolarMass { get; } = new(
        "molar mass",
        Decades,
        new("kg/mol", value => UnitsNet.MolarMass.FromKilogramsPerMole(value), mass => mass.KilogramsPerMole),
        new("g/mol", value => UnitsNet.MolarMass.FromGramsPerMole(value), mass => mass.GramsPerMole, "g/eq"));

    public static UnitTable<MassConcentration> MassConcentration { get; } = new(
        "mass concentration",
        Decades,
        new("kg/m³", value => UnitsNet.MassConcentration.FromKilogramsPerCubicMeter(value), mass => mass.KilogramsPerCubicMeter, "kg/m3"),
        new("g/m³", value => UnitsNet.MassConcentration.FromGramsPerCubicMeter(value), mass => mass.GramsPerCubicMeter, "g/m3"),
        new("mg/m³", value => UnitsNet.MassConcentration.FromMilligramsPerCubicMeter(value), mass => mass.MilligramsPerCubicMeter, "mg/m3"),
        new("µg/m³", value => UnitsNet.MassConcentration.FromMicrogramsPerCubicMeter(value), mass => mass.MicrogramsPerCubicMeter, "ug/m3",
            "μg/m³"),
        new("g/L", value => UnitsNet.MassConcentration.FromGramsPerLiter(value), mass => mass.GramsPerLiter, "g/l"),
        new("lb/US gal", value => UnitsNet.MassConcentration.FromPoundsPerUSGallon(value), mass => mass.PoundsPerUSGallon));

    public static UnitTable<DynamicViscosity> DynamicViscosity { get; } = new(
        "dynamic viscosity",
        Decades,
        new("Pa·s", value => UnitsNet.DynamicViscosity.FromPascalSeconds(value), viscosity => viscosity.PascalSeconds, "Pa.s"),
        new("mPa·s", value => UnitsNet.DynamicViscosity.FromMillipascalSeconds(value), viscosity => viscosity.MillipascalSeconds, "mPa.s",
            "cP"));

    public static UnitTable<Speed> Speed { get; } = new(
        "speed",
        Decades,
        new("m/s", value => UnitsNet.Speed.FromMetersPerSecond(value), speed => speed.MetersPerSecond),
        new("cm/s", value => UnitsNet.Speed.FromCentimetersPerSecond(value), speed => speed.CentimetersPerSecond),
        new("in/s", value => UnitsNet.Speed.FromInchesPerSecond(value), speed => speed.InchesPerSecond),
        new("ft/min", value => UnitsNet.Speed.FromFeetPerMinute(value), speed => speed.FeetPerMinute));

    public static UnitTable<SpreadingRate> SpreadingRate { get; } = new(
        "spreading rate",
        [1e4, .. Decades],
        new("m²/m³", Refinish.SpreadingRate.FromSquareMetersPerCubicMeter, rate => rate.SquareMetersPerCubicMeter, "m2/m3"),
        new("m²/L", Refinish.SpreadingRate.FromSquareMetersPerLiter, rate => rate.SquareMetersPerLiter, "m2/L", "m2/l", "m²/l"),
        new("ft²/US gal", Refinish.SpreadingRate.FromSquareFeetPerUsGallon, rate => rate.SquareFeetPerUsGallon, "ft2/US gal"));

    public static UnitTable<AreaDensity> AreaDensity { get; } = new(
        "mass per area",
        Decades,
        new("kg/m²", value => UnitsNet.AreaDensity.FromKilogramsPerSquareMeter(value), mass => mass.KilogramsPerSquareMeter, "kg/m2"),
        new("g/m²", value => UnitsNet.AreaDensity.FromGramsPerSquareMeter(value), mass => mass.GramsPerSquareMeter, "g/m2"),
        new("oz/ft²", value => UnitsNet.AreaDensity.FromKilogramsPerSquareMeter(value * OuncePerSquareFoot),
            mass => mass.KilogramsPerSquareMeter / OuncePerSquareFoot, "oz/ft2"));

    public static UnitTable<ForcePerLength> SurfaceTension { get; } = new(
        "surface tension",
        [0.03, .. Decades],
        new("N/m", value => ForcePerLength.FromNewtonsPerMeter(value), tension => tension.NewtonsPerMeter),
        new("mN/m", value => ForcePerLength.FromMillinewtonsPerMeter(value), tension => tension.MillinewtonsPerMeter),
        new("dyn/cm", value => ForcePerLength.FromMillinewtonsPerMeter(value), tension => tension.MillinewtonsPerMeter));

    public static UnitTable<ReciprocalLength> Scattering { get; } = new(
        "scattering",
        [1e5, .. Decades],
        new("1/m", value => ReciprocalLength.FromInverseMeters(value), scattering => scattering.InverseMeters),
        new("1/µm", value => ReciprocalLength.FromInverseMeters(value * 1e6), scattering => scattering.InverseMeters / 1e6, "1/um", "1/μm"),
        new("1/mil", value => ReciprocalLength.FromInverseMils(value), scattering => scattering.InverseMils));

    /// <summary>The library gives this one as a number in 1/Pa.</summary>
    public static UnitTable<double> Fluidity { get; } = new("fluidity", [100, 1], new Unit<double>("1/Pa", value => value, value => value));

    /// <summary>The library gives this one as a number, in the unit in which data sheets print it.</summary>
    public static UnitTable<double> HydroxylNumber { get; } = new("hydroxyl number", [100, 1],
        new Unit<double>("mg KOH/g", value => value, value => value));

    /// <summary>Spans of time, kept to the tick of 100 ns.</summary>
    public static UnitTable<TimeSpan> Duration { get; } = new(
        "time",
        [3600, 60, 0, 86400, 6 * 3600, 1, 30 * 86400],
        Time("s", TimeSpan.TicksPerSecond),
        Time("min", TimeSpan.TicksPerMinute),
        Time("h", TimeSpan.TicksPerHour),
        Time("d", TimeSpan.TicksPerDay));

    private static Temperature Kept(Temperature temperature) => UnitsNet.Temperature.FromKelvins(Math.Round(temperature.Kelvins, 10));

    private static Unit<TimeSpan> Time(string symbol, long ticks) =>
        new(symbol, value => Span(value, ticks), span => (double)span.Ticks / ticks);

    private static TimeSpan Span(double value, long ticks)
    {
        double exact = Math.Round(value * ticks);
        return Math.Abs(exact) < 9e18
            ? TimeSpan.FromTicks((long)exact)
            : throw new ArgumentOutOfRangeException(nameof(value), "value is too large; allowed: up to 28 000 years.");
    }
}
