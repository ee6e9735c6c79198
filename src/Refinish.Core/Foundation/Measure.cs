using System;
using UnitsNet;

namespace Refinish;

/// <summary>
/// What kind of amount a number is, and the unit in which each <see cref="DisplayUnits"/> shows it. The number itself is always in the SI
/// base unit of its kind (metres, kilograms, seconds, kelvins and their products).
/// </summary>
/// <remarks>
/// Units and factors: NIST Special Publication 811 (2008), Appendix B; the US gallon is 231 cubic inches, NIST Handbook 44, Appendix C.
/// </remarks>
/// <example><code>
/// string film = Measure.Film.Format(30e-6, DisplayUnits.UsCustomary);   // "1.1811 mil"
/// </code></example>
public sealed class Measure : IEquatable<Measure>
{
    private const double Inch = 0.0254;
    private const double Foot = 0.3048;
    private const double UsGallon = 231 * Inch * Inch * Inch;
    private const double Pound = 0.45359237;
    private const double Btu = 1055.05585262;

    private static readonly Func<double, IQuantity> Metres = static si => UnitsNet.Length.FromMeters(si);
    private static readonly Func<double, IQuantity> SquareMetres = static si => UnitsNet.Area.FromSquareMeters(si);
    private static readonly Func<double, IQuantity> CubicMetres = static si => Volume.FromCubicMeters(si);
    private static readonly Func<double, IQuantity> Kilograms = static si => UnitsNet.Mass.FromKilograms(si);
    private static readonly Func<double, IQuantity> Dense = static si => UnitsNet.Density.FromKilogramsPerCubicMeter(si);
    private static readonly Func<double, IQuantity> Contained = static si => UnitsNet.MassConcentration.FromKilogramsPerCubicMeter(si);
    private static readonly Func<double, IQuantity> Flowing = static si => VolumeFlow.FromCubicMetersPerSecond(si);
    private static readonly Func<double, IQuantity> Molar = static si => UnitsNet.MolarMass.FromKilogramsPerMole(si);
    private static readonly Func<double, IQuantity> Moving = static si => UnitsNet.Speed.FromMetersPerSecond(si);
    private static readonly Func<double, IQuantity> Kelvins = static si => UnitsNet.Temperature.FromKelvins(si);
    private static readonly Func<double, IQuantity> Lasting = static si => Duration.FromSeconds(si);
    private static readonly Func<double, IQuantity> Repeated = static si => Frequency.FromHertz(si);
    private static readonly Func<double, IQuantity> Shared = static si => Ratio.FromDecimalFractions(si);

    private readonly Scale si;
    private readonly Scale us;
    private readonly int? decimals;

    private Measure(string kind, Scale si, Scale us, Func<double, IQuantity>? quantity = null, int? decimals = null)
    {
        Kind = kind;
        Quantity = quantity;
        this.si = si;
        this.us = us;
        this.decimals = decimals;
    }

    /// <summary>A tape measurement: mm or in.</summary>
    public static Measure Length { get; } = new("length", new("mm", 1e-3), new("in", Inch), Metres);

    /// <summary>A room dimension: m or ft.</summary>
    public static Measure Distance { get; } = new("distance", new("m", 1), new("ft", Foot), Metres);

    /// <summary>A film thickness: µm or mil.</summary>
    public static Measure Film { get; } = new("film thickness", new("µm", 1e-6), new("mil", Inch / 1000), Metres);

    /// <summary>A coated area: m² or ft².</summary>
    public static Measure Area { get; } = new("area", new("m²", 1), new("ft²", Foot * Foot), SquareMetres);

    /// <summary>A small area, as of a tile or an opening: cm² or in².</summary>
    public static Measure SmallArea { get; } = new("small area", new("cm²", 1e-4), new("in²", Inch * Inch), SquareMetres);

    /// <summary>A poured volume: mL or US fl oz.</summary>
    public static Measure Liquid { get; } = new("liquid volume", new("mL", 1e-6), new("US fl oz", UsGallon / 128), CubicMetres);

    /// <summary>The water a fixture holds: L or US gal.</summary>
    public static Measure Capacity { get; } = new("capacity", new("L", 1e-3), new("US gal", UsGallon), CubicMetres);

    /// <summary>The volume of a room: m³ or ft³.</summary>
    public static Measure RoomVolume { get; } = new("room volume", new("m³", 1), new("ft³", Foot * Foot * Foot), CubicMetres);

    /// <summary>What one part in a room's air amounts to per volume: 1/m³ or 1/ft³.</summary>
    public static Measure PerRoomVolume { get; } = new("per room volume", new("1/m³", 1), new("1/ft³", 1 / (Foot * Foot * Foot)));

    /// <summary>A weighed mass: g or oz.</summary>
    public static Measure Mass { get; } = new("mass", new("g", 1e-3), new("oz", Pound / 16), Kilograms);

    /// <summary>The mass of a fixture: kg or lb.</summary>
    public static Measure Weight { get; } = new("weight", new("kg", 1), new("lb", Pound), Kilograms);

    /// <summary>A density: g/mL or lb/US gal.</summary>
    public static Measure Density { get; } = new("density", new("g/mL", 1000), new("lb/US gal", Pound / UsGallon), Dense);

    /// <summary>A spreading rate: m²/L or ft²/US gal.</summary>
    public static Measure SpreadingRate { get; } = new("spreading rate", new("m²/L", 1000), new("ft²/US gal", Foot * Foot / UsGallon));

    /// <summary>A fluid rate at the gun: mL/min or US fl oz/min.</summary>
    public static Measure FluidRate { get; } =
        new("fluid rate", new("mL/min", 1e-6 / 60), new("US fl oz/min", UsGallon / 128 / 60), Flowing);

    /// <summary>An airflow: m³/h or ft³/min.</summary>
    public static Measure Airflow { get; } = new("airflow", new("m³/h", 1.0 / 3600), new("ft³/min", Foot * Foot * Foot / 60), Flowing);

    /// <summary>The speed of air in an opening, in a duct or about a person: m/s or ft/min.</summary>
    public static Measure AirSpeed { get; } = new("air speed", new("m/s", 1), new("ft/min", Foot / 60), Moving);

    /// <summary>How often the air of a room is replaced: air changes per hour.</summary>
    public static Measure AirChanges { get; } = new("air changes", new("1/h", 1.0 / 3600), new("1/h", 1.0 / 3600), Repeated);

    /// <summary>A temperature that is read from a thermometer: °C or °F.</summary>
    public static Measure Temperature { get; } = new("temperature", new("°C", 1, 273.15), new("°F", 5.0 / 9, 459.67 * 5 / 9), Kelvins);

    /// <summary>A thermodynamic temperature: K in both systems, for formulas that need it.</summary>
    public static Measure AbsoluteTemperature { get; } = new("thermodynamic temperature", new("K", 1), new("K", 1), Kelvins);

    /// <summary>A temperature difference: K or Δ°F.</summary>
    public static Measure TemperatureDifference { get; } =
        new("temperature difference", new("K", 1), new("Δ°F", 5.0 / 9), static si => TemperatureDelta.FromKelvins(si));

    /// <summary>A pressure: Pa in both systems.</summary>
    public static Measure Pressure { get; } = new("pressure", new("Pa", 1), new("Pa", 1), static si => UnitsNet.Pressure.FromPascals(si));

    /// <summary>Water in a mass of dry air: g/kg or grains per pound.</summary>
    public static Measure HumidityRatio { get; } = new("humidity ratio", new("g/kg", 1e-3), new("gr/lb", 1.0 / 7000), Shared);

    /// <summary>Water vapour in a volume of air: g/m³ or grains per cubic foot.</summary>
    public static Measure VapourDensity { get; } =
        new("water vapour in air", new("g/m³", 1e-3), new("gr/ft³", Pound / 7000 / (Foot * Foot * Foot)), Contained);

    /// <summary>The density of air: kg/m³ or lb/ft³.</summary>
    public static Measure AirDensity { get; } = new("density of air", new("kg/m³", 1), new("lb/ft³", Pound / (Foot * Foot * Foot)), Dense);

    /// <summary>A volume of air per mass of dry air: m³/kg or ft³/lb.</summary>
    public static Measure SpecificVolume { get; } =
        new("specific volume", new("m³/kg", 1), new("ft³/lb", Foot * Foot * Foot / Pound), static si => UnitsNet.SpecificVolume.FromCubicMetersPerKilogram(si));

    /// <summary>An energy per mass: kJ/kg or Btu/lb.</summary>
    public static Measure SpecificEnergy { get; } =
        new("specific energy", new("kJ/kg", 1000), new("Btu/lb", Btu / Pound), static si => UnitsNet.SpecificEnergy.FromJoulesPerKilogram(si));

    /// <summary>A specific heat: J/(kg·K) or Btu/(lb·°F).</summary>
    public static Measure SpecificHeat { get; } =
        new("specific heat", new("J/(kg·K)", 1), new("Btu/(lb·°F)", Btu / Pound * 9 / 5), static si => SpecificEntropy.FromJoulesPerKilogramKelvin(si));

    /// <summary>A thermal conductivity: W/(m·K) or Btu/(h·ft·°F).</summary>
    public static Measure Conductivity { get; } =
        new("thermal conductivity", new("W/(m·K)", 1), new("Btu/(h·ft·°F)", Btu / 3600 / Foot * 9 / 5), static si => ThermalConductivity.FromWattsPerMeterKelvin(si));

    /// <summary>A heat-transfer coefficient: W/(m²·K) or Btu/(h·ft²·°F).</summary>
    public static Measure HeatTransfer { get; } =
        new("heat transfer", new("W/(m²·K)", 1), new("Btu/(h·ft²·°F)", Btu / 3600 / (Foot * Foot) * 9 / 5), static si => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(si));

    /// <summary>An amount of heat: kWh or Btu.</summary>
    public static Measure Heat { get; } = new("heat", new("kWh", 3.6e6), new("Btu", Btu), static si => Energy.FromJoules(si));

    /// <summary>An energy per amount of substance, as of activation: kJ/mol in both systems.</summary>
    public static Measure MolarEnergy { get; } =
        new("molar energy", new("kJ/mol", 1000), new("kJ/mol", 1000), static si => UnitsNet.MolarEnergy.FromJoulesPerMole(si));

    /// <summary>A molar entropy, as the gas constant: J/(mol·K) in both systems.</summary>
    public static Measure MolarEntropy { get; } =
        new("molar entropy", new("J/(mol·K)", 1), new("J/(mol·K)", 1), static si => UnitsNet.MolarEntropy.FromJoulesPerMoleKelvin(si));

    /// <summary>How fast a first-order change runs: per second in both systems.</summary>
    public static Measure Rate { get; } = new("rate", new("1/s", 1), new("1/s", 1), Repeated);

    /// <summary>A part of a whole, shown in per cent.</summary>
    public static Measure Percent { get; } = new("fraction", new("%", 0.01), new("%", 0.01), Shared);

    /// <summary>A pure number.</summary>
    public static Measure Number { get; } = new("number", new(string.Empty, 1), new(string.Empty, 1), Shared);

    /// <summary>Parts per million by volume in air.</summary>
    public static Measure PartsPerMillion { get; } = new("concentration by volume", new("ppm", 1e-6), new("ppm", 1e-6), Shared);

    /// <summary>Mass of a substance in a volume of air: mg/m³ in both systems.</summary>
    public static Measure MassConcentration { get; } = new("concentration by mass", new("mg/m³", 1e-6), new("mg/m³", 1e-6), Contained);

    /// <summary>Mass of a substance in a volume of coating: g/L or lb/US gal.</summary>
    public static Measure CoatingContent { get; } =
        new("content of a coating", new("g/L", 1), new("lb/US gal", Pound / UsGallon), Contained);

    /// <summary>A molar mass: g/mol in both systems.</summary>
    public static Measure MolarMass { get; } =
        new("molar mass", new("g/mol", 1e-3), new("g/mol", 1e-3), Molar);

    /// <summary>A molar volume: L/mol in both systems.</summary>
    public static Measure MolarVolume { get; } = new("molar volume", new("L/mol", 1e-3), new("L/mol", 1e-3));

    /// <summary>A kinematic viscosity: mm²/s (centistokes) in both systems.</summary>
    public static Measure KinematicViscosity { get; } =
        new("kinematic viscosity", new("mm²/s", 1e-6), new("mm²/s", 1e-6), static si => UnitsNet.KinematicViscosity.FromSquareMetersPerSecond(si));

    /// <summary>A dynamic viscosity: mPa·s (centipoise) in both systems.</summary>
    public static Measure DynamicViscosity { get; } =
        new("dynamic viscosity", new("mPa·s", 1e-3), new("mPa·s", 1e-3), static si => UnitsNet.DynamicViscosity.FromPascalSeconds(si));

    /// <summary>Mass spread over an area, as of grains on a floor: g/m² or oz/ft².</summary>
    public static Measure ArealMass { get; } =
        new("mass per area", new("g/m²", 1e-3), new("oz/ft²", Pound / 16 / (Foot * Foot)), static si => AreaDensity.FromKilogramsPerSquareMeter(si));

    /// <summary>Grains or marks on an area: 1/cm² or 1/in².</summary>
    public static Measure ArealCount { get; } = new("count per area", new("1/cm²", 1e4), new("1/in²", 1 / (Inch * Inch)));

    /// <summary>Mass of a substance that holds one mole of reactive groups: g/eq in both systems.</summary>
    public static Measure EquivalentWeight { get; } = new("equivalent weight", new("g/eq", 1e-3), new("g/eq", 1e-3), Molar);

    /// <summary>An amount of reactive groups: mol in both systems.</summary>
    public static Measure Equivalents { get; } = new("equivalents", new("mol", 1), new("mol", 1));

    /// <summary>A hydroxyl number: mg of potassium hydroxide per gram, in both systems.</summary>
    public static Measure HydroxylNumber { get; } = new("hydroxyl number", new("mg KOH/g", 1e-3), new("mg KOH/g", 1e-3));

    /// <summary>A very short time, as a cup takes to drain: seconds.</summary>
    public static Measure Seconds { get; } = new("time in seconds", new("s", 1), new("s", 1), Lasting);

    /// <summary>A short time: minutes.</summary>
    public static Measure Minutes { get; } = new("time", new("min", 60), new("min", 60), Lasting);

    /// <summary>A longer time: hours.</summary>
    public static Measure Hours { get; } = new("time in hours", new("h", 3600), new("h", 3600), Lasting);

    /// <summary>
    /// A service life or warranty term, shown in years and held in years (a calendar year has no fixed number of seconds).
    /// </summary>
    public static Measure Years { get; } = new("years", new("years", 1), new("years", 1));

    /// <summary>How fast a gun is moved: cm/s or in/s.</summary>
    public static Measure Speed { get; } = new("speed", new("cm/s", 0.01), new("in/s", Inch), Moving);

    /// <summary>The consistency of a power-law liquid: Pa·sⁿ, with n its index.</summary>
    public static Measure Consistency { get; } = new("consistency", new("Pa·sⁿ", 1), new("Pa·sⁿ", 1));

    /// <summary>A surface tension: mN/m, or dyn/cm which is the same.</summary>
    public static Measure SurfaceTension { get; } =
        new("surface tension", new("mN/m", 1e-3), new("dyn/cm", 1e-3), static si => ForcePerLength.FromNewtonsPerMeter(si));

    /// <summary>Fluidity added up over time, the integral of 1/η: 1/Pa in both systems.</summary>
    public static Measure Fluidity { get; } = new("fluidity over time", new("1/Pa", 1), new("1/Pa", 1));

    /// <summary>How fast a wet film creeps: µm/s or mil/s.</summary>
    public static Measure FilmSpeed { get; } = new("speed of a film", new("µm/s", 1e-6), new("mil/s", Inch / 1000), Moving);

    /// <summary>Volume of a film that flows past a line per width of the line: mm²/s or in²/s.</summary>
    public static Measure FilmFlux { get; } = new("flow per width", new("mm²/s", 1e-6), new("in²/s", Inch * Inch));

    /// <summary>An acceleration: m/s² or ft/s².</summary>
    public static Measure Acceleration { get; } =
        new("acceleration", new("m/s²", 1), new("ft/s²", Foot), static si => UnitsNet.Acceleration.FromMetersPerSecondSquared(si));

    /// <summary>A wave number, 2π over the wavelength: 1/mm or 1/in.</summary>
    public static Measure WaveNumber { get; } = new("wave number", new("1/mm", 1000), new("1/in", 1 / Inch));

    /// <summary>Light absorbed or scattered per thickness of film: 1/µm or 1/mil.</summary>
    public static Measure PerFilm { get; } = new("absorption or scattering", new("1/µm", 1e6), new("1/mil", 1000 / Inch));

    /// <summary>Specular gloss, in gloss units: black glass of refractive index 1.567 reads 100.</summary>
    public static Measure Gloss { get; } = new("gloss", new("GU", 1), new("GU", 1));

    /// <summary>An A-weighted sound level, or a difference of two: decibels.</summary>
    public static Measure SoundLevel { get; } = new("sound level", new("dB", 1), new("dB", 1), static si => Level.FromDecibels(si));

    /// <summary>An angle: degrees.</summary>
    public static Measure Angle { get; } =
        new("angle", new("°", Math.PI / 180), new("°", Math.PI / 180), static si => UnitsNet.Angle.FromRadians(si));

    /// <summary>What kind of amount this is, in words.</summary>
    public string Kind { get; }

    /// <summary>An amount of money, written with the decimals of its currency.</summary>
    /// <param name="currency">The currency.</param>
    /// <returns>A measure whose number is the amount in that currency.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="currency"/> is missing.</exception>
    public static Measure Money(Currency currency)
    {
        Guard.NotNull(currency);
        return new("money", new(currency.Code, 1), new(currency.Code, 1), decimals: currency.Decimals);
    }

    /// <summary>The symbol of the unit in which this kind of amount is shown.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>The symbol; empty for a pure number.</returns>
    public string Symbol(DisplayUnits system) => ScaleOf(system).Symbol;

    /// <summary>The number that is shown.</summary>
    /// <param name="si">The amount in the SI base unit of its kind.</param>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>The same amount in the unit of <see cref="Symbol"/>.</returns>
    public double Shown(double si, DisplayUnits system)
    {
        Scale scale = ScaleOf(system);
        return (si - scale.Zero) / scale.Factor;
    }

    /// <summary>The amount as text in metric units, to five significant figures.</summary>
    /// <param name="si">The amount in the SI base unit of its kind.</param>
    /// <returns>Text such as <c>73.3 µm</c>.</returns>
    public string Format(double si) => Format(si, DisplayUnits.Si, 5);

    /// <summary>The amount as text with its unit, to five significant figures.</summary>
    /// <param name="si">The amount in the SI base unit of its kind.</param>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>2.8858 mil</c>.</returns>
    public string Format(double si, DisplayUnits system) => Format(si, system, 5);

    /// <summary>The amount as text in metric units.</summary>
    /// <param name="si">The amount in the SI base unit of its kind.</param>
    /// <param name="figures">Significant figures, 1 to 15; money has the decimals of its currency.</param>
    /// <returns>Text such as <c>73.3 µm</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="figures"/> is outside 1 to 15.</exception>
    public string Format(double si, int figures) => Format(si, DisplayUnits.Si, figures);

    /// <summary>The amount as text with its unit, in the invariant culture.</summary>
    /// <param name="si">The amount in the SI base unit of its kind.</param>
    /// <param name="system">Metric or US customary.</param>
    /// <param name="figures">Significant figures, 1 to 15; money has the decimals of its currency.</param>
    /// <returns>Text such as <c>73.3 µm</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="figures"/> is outside 1 to 15.</exception>
    public string Format(double si, DisplayUnits system, int figures)
    {
        Guard.Count(figures, 1, 15);
        return Joined(FormatNumber(si, system, figures), Symbol(system));
    }

    /// <summary>Whether the other measure shows the same kind of amount in the same units.</summary>
    /// <param name="other">The measure to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(Measure? other) =>
        ReferenceEquals(this, other)
        || (other is not null && Kind == other.Kind && si.Equals(other.si) && us.Equals(other.us) && decimals == other.decimals);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Measure);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Kind + si.Symbol);

    /// <summary>The kind of amount and its metric unit.</summary>
    /// <returns>Text such as <c>film thickness in µm</c>.</returns>
    public override string ToString() => si.Symbol.Length == 0 ? Kind : Kind + " in " + si.Symbol;

    /// <summary>The quantity of the units library for a number in SI; missing for a kind which that library lacks.</summary>
    internal Func<double, IQuantity>? Quantity { get; }

    /// <summary>The number in SI of a quantity, which has to be of this kind.</summary>
    internal double Si(IQuantity value, string name) =>
        Quantity?.Invoke(0) is IQuantity of && of.QuantityInfo == value.QuantityInfo
            ? value is Temperature temperature ? Guard.Kelvins(temperature) : value.As(of.Unit)
            : throw new ArgumentException(
                name + " was given as a quantity of the kind " + value.QuantityInfo.Name + "; it is of the kind " + Kind + ".", name);

    /// <summary>In both systems, for a remedy that is a sentence and cannot know its reader's units.</summary>
    internal string FormatBoth(double si, int digits = 3) => Format(si, DisplayUnits.Si, digits) + " (" + Format(si, DisplayUnits.UsCustomary, digits) + ")";

    /// <summary>As <see cref="Format(double, DisplayUnits, int)"/>, rounded up: what something has to reach.</summary>
    internal string FormatAtLeast(double si, DisplayUnits system, int digits) => Joined(Figures.Significant(Shown(si, system), digits, up: true), Symbol(system));

    /// <summary>As <see cref="Format(double, DisplayUnits, int)"/>, rounded down: what something may not exceed.</summary>
    internal string FormatAtMost(double si, DisplayUnits system, int digits) => Joined(Figures.Significant(Shown(si, system), digits, up: false), Symbol(system));

    /// <summary>A number that is already in the unit shown.</summary>
    internal string Joined(double shown, DisplayUnits system) => Joined(Figures.Significant(shown), Symbol(system));

    internal string FormatNumber(double value, DisplayUnits system, int figures = 6)
    {
        double shown = Shown(value, system);
        return decimals is int places ? Figures.Fixed(shown, places) : Figures.Significant(shown, figures);
    }

    internal string FormatLatex(double value, DisplayUnits system, int figures = 6)
    {
        double shown = Shown(value, system);
        return decimals is int places ? Figures.Fixed(shown, places) : Figures.SignificantLatex(shown, figures);
    }

    private static string Joined(string number, string symbol) =>
        symbol.Length == 0 ? number : symbol == "°" ? number + symbol : number + " " + symbol;

    private Scale ScaleOf(DisplayUnits system) => system == DisplayUnits.UsCustomary ? us : si;

    private readonly record struct Scale(string Symbol, double Factor, double Zero = 0);
}
