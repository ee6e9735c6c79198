using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// The most vapour that air over a pure liquid can hold: p_sat/p by volume, p_sat·M/(R·T) by mass. Over a mixture or a film it holds
/// less, so this is a cap. A room model that goes beyond it no longer describes the room.
/// </summary>
/// <remarks>Where no fit of the substance covers the temperature the results are <see langword="null"/>: nothing is extrapolated.</remarks>
/// <example><code>
/// SaturatedVapour xylene = new(Solvents.Xylene, Temperature.FromDegreesCelsius(20), Pressure.FromPascals(101325), VapourPressures.All);
/// Ratio? most = xylene.VolumeFraction;
/// </code></example>
public sealed record SaturatedVapour
{
    private static readonly Bounds Rooms =
        Bounds.Between(233.15, 333.15, Measure.Temperature)
            .Because("the temperatures at which a room can be; ask the fit itself for others");

    private readonly double temperature;
    private readonly double airPressure;
    private readonly VapourPressureFit? fit;

    /// <summary>Looks up and calculates.</summary>
    /// <param name="solvent">The substance, known by its registry number.</param>
    /// <param name="temperature">−40 to 60 °C.</param>
    /// <param name="airPressure">20 to 110 kPa.</param>
    /// <param name="fits">Vapour pressures to choose from; the first that covers the temperature counts.</param>
    /// <exception cref="ArgumentException">The list holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public SaturatedVapour(Solvent solvent, Temperature temperature, Pressure airPressure, IReadOnlyList<VapourPressureFit> fits)
    {
        Solvent = Guard.NotNull(solvent);
        this.temperature = Guard.Within(temperature, Rooms);
        this.airPressure = Guard.Within(airPressure, Bounds.Between(20e3, 110e3, Measure.Pressure));
        foreach (VapourPressureFit candidate in Guard.NotNull(fits))
        {
            if (candidate is null)
            {
                throw new ArgumentException(nameof(fits) + " holds an empty entry.", nameof(fits));
            }

            if (fit is null && string.Equals(candidate.CasNumber, solvent.CasNumber, StringComparison.Ordinal) && candidate.Covers(temperature))
            {
                fit = candidate;
            }
        }

        WhyUnknown = fit is null ? Missing(solvent, fits) : null;
    }

    /// <summary>The substance.</summary>
    public Solvent Solvent { get; }

    /// <summary>Temperature of liquid and air.</summary>
    public Temperature Temperature => Temperature.FromKelvins(temperature);

    /// <summary>Pressure of the air.</summary>
    public Pressure AirPressure => Pressure.FromPascals(airPressure);

    /// <summary>The fit that served; <see langword="null"/> when none covers the temperature.</summary>
    public VapourPressureFit? Fit => fit;

    /// <summary>
    /// Why nothing is known at this temperature: no vapour pressure is given for the substance, or those given hold elsewhere, with their
    /// ranges; <see langword="null"/> when one serves.
    /// </summary>
    public string? WhyUnknown { get; }

    /// <summary>Vapour pressure; <see langword="null"/> when no fit covers the temperature.</summary>
    public Pressure? VapourPressure => fit is null ? null : Pressure.FromPascals(Saturated().Value);

    /// <summary>
    /// Most vapour by volume, p_sat/p; above 100 % the liquid boils. <see langword="null"/> when no fit covers the temperature.
    /// </summary>
    public Ratio? VolumeFraction => fit is null ? null : Ratio.FromDecimalFractions(ByVolume().Value);

    /// <summary>Most vapour by mass; <see langword="null"/> when no fit covers the temperature.</summary>
    public MassConcentration? Concentration => fit is null ? null : MassConcentration.FromKilogramsPerCubicMeter(ByMass().Value);

    /// <summary>A concentration against the most there can be.</summary>
    /// <param name="subject">What is compared, in words.</param>
    /// <param name="concentration">The concentration, 0 or more.</param>
    /// <returns>The comparison; it cannot be judged when no fit covers the temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="concentration"/> is negative.</exception>
    public LimitComparison Compare(string subject, MassConcentration concentration) =>
        Against(subject, Guard.Within(concentration, Bounds.NotNegative(Measure.MassConcentration)), Concentration?.KilogramsPerCubicMeter,
            fit?.Source ?? Source.Supplied(WhyUnknown!));

    /// <summary>How the pressure and the fractions follow; nothing but the temperature when no fit covers it.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => fit is null
        ? Trace.Of("Saturated vapour of " + Solvent.Name + ": no vapour pressure that covers the temperature", Unknown)
        : Trace.Of("Saturated vapour of " + Solvent.Name, Saturated, ByVolume, ByMass);

    /// <summary>The substance, the temperature and the most there can be.</summary>
    /// <returns>Text such as <c>toluene at 20 °C: at most 28700 ppm</c>.</returns>
    public override string ToString() =>
        Solvent.Name + " at " + Measure.Temperature.Format(temperature) + ": "
        + (VolumeFraction is Ratio most ? "at most " + Measure.PartsPerMillion.Format(most.DecimalFractions, DisplayUnits.Si, 3)
            : WhyUnknown);

    internal static LimitComparison Against(string subject, double value, double? limit, Source source) => new(
        subject, value, limit, LimitSense.AtMost, Measure.MassConcentration, source,
        value > limit ? "the room model does not hold there: evaporation stops before; take the saturated value as the most" : null)
    {
        Digits = AirStudy.ScreeningDigits,
    };

    private static string Missing(Solvent solvent, IReadOnlyList<VapourPressureFit> fits)
    {
        string ranges = string.Join(
            "; ",
            fits.Where(one => string.Equals(one.CasNumber, solvent.CasNumber, StringComparison.Ordinal)).Select(one => one.ToString()));
        return ranges.Length == 0
            ? "no vapour pressure is given for " + solvent.Name
            : "no vapour pressure that covers the temperature; given: " + ranges;
    }

    private Num Unknown(Trace t) => t.Step("temperature", "T", Measure.AbsoluteTemperature, Source.Supplied(WhyUnknown!), Kelvins(t));

    private Num Saturated(Trace? t = null) => t.Step("vapour pressure", "p_sat", Measure.Pressure, fit!.Source, fit.Kernel(Kelvins(t), t));

    private Num ByVolume(Trace? t = null) => t.Step(
        "most by volume", "c_sat", Measure.PartsPerMillion, AirKernel.IdealGas, Saturated(t) / t.Given("p", airPressure, Measure.Pressure));

    private Num ByMass(Trace? t = null) => t.Step("most by mass", "C_sat", Measure.MassConcentration, AirKernel.IdealGas,
        Saturated(t) * t.Given("M", Solvent.MolarMass.KilogramsPerMole, Measure.MolarMass)
            / (t.Given("R", AirKernel.GasConstant, Measure.MolarEntropy) * Kelvins(t)));

    private Num Kelvins(Trace? t) => t.Given("T", temperature, Measure.AbsoluteTemperature);
}
