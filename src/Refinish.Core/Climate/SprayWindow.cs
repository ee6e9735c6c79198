using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Climate;

/// <summary>
/// Whether the conditions of air and surface lie within a product's limits now: each limit, how far off, and what would bring it within.
/// </summary>
/// <remarks>
/// <para>The spread of the surface above the dew point is what keeps water from settling under the film; ISO 8502-4 is the usual
/// reference for its 3 °C (seen second-hand, see <see cref="SprayLimits.MinimumSpreadAboveDewPoint"/>). Measure the surface where it is
/// coldest, and again while the work goes on.</para>
/// <para>An open window says only that these readings are within these limits; it says nothing about vapour, fire or exposure.</para>
/// </remarks>
/// <example><code>
/// MoistAir air = new(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(75));
/// SprayLimits limits = new()
/// {
///     MinimumTemperature = Temperature.FromDegreesCelsius(15),
///     MaximumTemperature = Temperature.FromDegreesCelsius(32),
///     MaximumRelativeHumidity = Ratio.FromPercent(85),
///     Source = Source.Supplied("product data sheet"),
/// };
/// SprayWindow window = new(air, Temperature.FromDegreesCelsius(16), limits);
/// bool open = window.IsOpen;                                        // false: the iron is only 0.6 K above the dew point
/// Temperature? needed = window.LeastSurfaceTemperature;             // 18.4 °C
/// Ratio humidity = window.GreatestRelativeHumidity;                 // 64 % would do as well
/// </code></example>
public sealed record SprayWindow
{
    private static readonly Source Difference = Source.Derived("difference of the two temperatures");
    private static readonly Source Comparison = Source.Derived("value against limit");

    /// <summary>Holds the readings against the limits.</summary>
    /// <param name="air">The air near the surface.</param>
    /// <param name="surface">Temperature of the surface at its coldest place, −60 to 60 °C.</param>
    /// <param name="limits">The product's limits.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The surface temperature is outside its range, or a minimum of the limits is above its maximum.
    /// </exception>
    public SprayWindow(MoistAir air, Temperature surface, SprayLimits limits)
    {
        Air = Guard.NotNull(air);
        Surface = Guard.Checked(surface, MoistAir.Thermometer);
        Limits = Guard.NotNull(limits);
        Limits.CheckOrder();
    }

    /// <summary>The air.</summary>
    public MoistAir Air { get; }

    /// <summary>The product's limits.</summary>
    public SprayLimits Limits { get; }

    /// <summary>Temperature of the surface.</summary>
    public Temperature Surface { get; }

    /// <summary>How far the surface is above the dew point; negative when water condenses on it.</summary>
    public TemperatureDelta SpreadAboveDewPoint => TemperatureDelta.FromKelvins(Spread().Value);

    /// <summary>Relative humidity of the air at the surface; above 100 % water condenses.</summary>
    public Ratio SurfaceRelativeHumidity => Ratio.FromDecimalFractions(Air.AtSurface(Surface.Kelvins).Value);

    /// <summary>
    /// The coldest surface that this air and these limits allow: dew point plus spread, and not below the minimum; <see langword="null"/>
    /// when that is above the maximum, so that only drier air helps.
    /// </summary>
    public Temperature? LeastSurfaceTemperature => NeededSurface <= Most ? Temperature.FromKelvins(NeededSurface) : null;

    /// <summary>
    /// The highest relative humidity, at the present air temperature, that the humidity limit and the spread at the present surface
    /// temperature allow.
    /// </summary>
    public Ratio GreatestRelativeHumidity => Ratio.FromDecimalFractions(Greatest().Value);

    /// <summary>
    /// The air temperature at which this air, with no water added or taken, comes down to the humidity limit (or has it now at a lower
    /// temperature); <see langword="null"/> when that is above the maximum temperature, so that only drying helps.
    /// </summary>
    public Temperature? AirTemperatureForHumidity => AirForHumidity is double t ? Temperature.FromKelvins(t) : null;

    /// <summary>
    /// The limits one by one: spread above dew point, relative humidity, lowest and highest air temperature, lowest and highest surface
    /// temperature, and lowest relative humidity where the product states one.
    /// </summary>
    public IReadOnlyList<LimitComparison> Checks => new ValueList<LimitComparison>(
    [
        Check("surface above dew point", Spread().Value, SpreadLimit, LimitSense.AtLeast, Measure.TemperatureDifference,
            SprayRemedies.Spread),
        Check("relative humidity of the air", Air.RelativeHumidity.DecimalFractions, HumidityLimit, LimitSense.AtMost, Measure.Percent, SprayRemedies.Humidity),
        Check("lowest air temperature", Air.Kelvins, Least, LimitSense.AtLeast, Measure.Temperature, SprayRemedies.ColdAir),
        Check("highest air temperature", Air.Kelvins, Most, LimitSense.AtMost, Measure.Temperature, SprayRemedies.HotAir),
        Check("lowest surface temperature", Surface.Kelvins, Least, LimitSense.AtLeast, Measure.Temperature, SprayRemedies.ColdSurface),
        Check("highest surface temperature", Surface.Kelvins, Most, LimitSense.AtMost, Measure.Temperature, SprayRemedies.HotSurface),
        .. LeastHumidity > 0
            ? [Check("lowest relative humidity of the air", Air.RelativeHumidity.DecimalFractions, LeastHumidity, LimitSense.AtLeast,
            Measure.Percent, SprayRemedies.DryAir)] : Array.Empty<LimitComparison>(),
    ]);

    /// <summary>Whether every check is within its limit. Not a statement about anything that is not among <see cref="Checks"/>.</summary>
    public bool IsOpen => Checks.All(check => check.Outcome == ComparisonOutcome.Within);

    /// <summary>What goes with warming or drying the room; empty when the window is open.</summary>
    public IReadOnlyList<Caution> Cautions => IsOpen ? ValueList<Caution>.Empty : Refinish.Cautions.ForHeating;

    internal double Least => Limits.MinimumTemperature.Kelvins;

    internal double Most => Limits.MaximumTemperature.Kelvins;

    internal double LeastHumidity => Limits.MinimumRelativeHumidity.DecimalFractions;

    internal double HumidityLimit => Limits.MaximumRelativeHumidity.DecimalFractions;

    internal double NeededSurface => Needed().Value;

    // The driest air in which the present surface has its spread, at the present air temperature.
    internal double HumidityForSpread => ForSpread().Value;

    internal double? AirForHumidity =>
        Air.Vapour / HumidityLimit <= ClimateKernel.SaturationPressure(Most) ? ClimateKernel.DewPoint(Air.Vapour / HumidityLimit) : null;

    private double SpreadLimit => Limits.MinimumSpreadAboveDewPoint.Kelvins;

    /// <summary>How the spread, the humidity at the surface, what is needed and the margins follow.</summary>
    /// <returns>The derivation, with that of the air as its part.</returns>
    public Workings Workings() => Trace.Of(
        "Spray window", [Air.Workings()],
        Spread, t => Air.AtSurface(Surface.Kelvins, t), Needed, Greatest, Heated, t => t.Margins(Checks, "x", "limit", Comparison));

    /// <summary>Whether the window is open and which limits are not met, in metric units.</summary>
    /// <returns>Text such as <c>closed: surface above dew point: 0.56 K; limit at least 3 K; 2.44 K beyond</c>.</returns>
    public override string ToString() => IsOpen
        ? "open: every reading within its limit"
        : "closed: " + string.Join(". ", Checks.Where(check => check.Outcome != ComparisonOutcome.Within).Select(check => check.Sentence(DisplayUnits.Si)));

    private Num Spread(Trace? t = null) =>
        t.Step("surface above dew point", "ΔT", Measure.TemperatureDifference, Difference, At(t) - Dew(t));

    private Num Needed(Trace? t = null) => t.Step(
        "coldest surface allowed", "T_s,min", Measure.Temperature, Limits.Source,
        Num.Max(Dew(t) + LeastSpread(t), t.Given("T_min", Least, Measure.Temperature)));

    private Num Greatest(Trace? t = null) => t.Step(
        "highest relative humidity allowed", "RH_needed", Measure.Percent, ClimateKernel.Ideal, Num.Min(Dampest(t), ForSpread(t)));

    private Num ForSpread(Trace? t = null)
    {
        Num highest = t.Step(
            "highest dew point allowed at this surface", "T_d,max", Measure.Temperature, Limits.Source, At(t) - LeastSpread(t));
        return ClimateKernel.SaturationStep(t, "vapour pressure allowed at this surface", "p_w,max", "T_d,max", highest.Value)
            / Air.Saturation(t);
    }

    private Num Heated(Trace t) => AirForHumidity is double heated
        ? ClimateKernel.DewPointStep(
            t, "air temperature that brings the humidity to its limit", "T_RH",
            t.Given("p_w", Air.Vapour, Measure.Pressure) / Dampest(t), heated)
        : default;

    private Num At(Trace? t) => t.Given("T_s", Surface.Kelvins, Measure.Temperature);

    private Num Dew(Trace? t) => t.Given("T_d", Air.DewPointKelvins, Measure.Temperature);

    private Num LeastSpread(Trace? t) => t.Given("ΔT_min", SpreadLimit, Measure.TemperatureDifference);

    private Num Dampest(Trace? t) => t.Given("RH_max", HumidityLimit, Measure.Percent);

    private LimitComparison Check(string subject, double value, double limit, LimitSense sense, Measure measure, Func<SprayWindow, string> remedy)
    {
        bool within = sense == LimitSense.AtLeast ? value >= limit : value <= limit;
        return new LimitComparison(subject, value, limit, sense, measure, Limits.Source, within ? null : remedy(this));
    }
}
