using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>How a coating thins with warmth, from two of the user's own measurements: ln ν straight against 1/T.</summary>
/// <remarks>
/// Andrade's form, fitted through both points and used only from 5 K below the colder to 5 K above the warmer one. No coefficient is
/// built in: paints differ too much for one, so without two measurements there is no correction. The 5 K are a policy of this library
/// (invented).
/// </remarks>
/// <example><code>
/// ViscosityCurve curve = new(
///     Temperature.FromDegreesCelsius(18), FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(32)),
///     Temperature.FromDegreesCelsius(26), FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(24)));
/// TimeSpan at22 = FlowCups.Ford4.TimeFor(curve.At(Temperature.FromDegreesCelsius(22)));   // 27.6 s
/// </code></example>
public sealed record ViscosityCurve
{
    private const double Reach = 5;
    private static readonly Source Andrade = Source.Derived("ln ν straight against 1/T through two measurements (Andrade's form)");
    private static readonly Bounds Thermometer = Bounds.Between(253.15, 333.15, Measure.Temperature);
    private static readonly Bounds Viscosities = Bounds.Between(1e-7, 1e-1, Measure.KinematicViscosity);

    private readonly double coldTemperature;
    private readonly double cold;
    private readonly double warmTemperature;
    private readonly double warm;

    /// <summary>Fits the curve.</summary>
    /// <param name="coldTemperature">The colder temperature, −20 to 60 °C.</param>
    /// <param name="cold">Viscosity there, 0.1 to 100 000 mm²/s.</param>
    /// <param name="warmTemperature">The warmer temperature, at least 2 K above.</param>
    /// <param name="warm">Viscosity there, at most that at the colder one.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the order is wrong.</exception>
    public ViscosityCurve(Temperature coldTemperature, KinematicViscosity cold, Temperature warmTemperature, KinematicViscosity warm)
    {
        this.coldTemperature = Guard.Within(coldTemperature, Thermometer);
        this.cold = Guard.Within(cold, Viscosities);
        this.warmTemperature = Guard.Within(warmTemperature, Thermometer);
        this.warm = Guard.Within(warm, Viscosities);
        Guard.Rule(this.warmTemperature >= this.coldTemperature + 2 - 1e-9, nameof(warmTemperature), this.warmTemperature, Measure.Temperature, "at least 2 K above coldTemperature");
        Guard.Rule(this.warm <= this.cold, nameof(warm), this.warm, Measure.KinematicViscosity, "at most the viscosity at coldTemperature");
    }

    /// <summary>Viscosity at another temperature.</summary>
    /// <param name="temperature">From 5 K below the colder to 5 K above the warmer measurement.</param>
    /// <returns>The viscosity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Farther off than that: measure again.</exception>
    public KinematicViscosity At(Temperature temperature) =>
        KinematicViscosity.FromSquareMetersPerSecond(Viscosity(Checked(temperature)).Value);

    /// <summary>How the viscosity at a temperature follows.</summary>
    /// <param name="temperature">From 5 K below the colder to 5 K above the warmer measurement.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Farther off than that.</exception>
    public Workings Workings(Temperature temperature)
    {
        double kelvins = Checked(temperature);
        return Trace.Of("Viscosity at another temperature", t => Viscosity(kelvins, t));
    }

    /// <summary>Both measurements in one line.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Measure.KinematicViscosity.Format(cold, DisplayUnits.Si, 4) + " at " + Measure.Temperature.Format(coldTemperature) + ", "
        + Measure.KinematicViscosity.Format(warm, DisplayUnits.Si, 4) + " at " + Measure.Temperature.Format(warmTemperature);

    private double Checked(Temperature temperature) =>
        Guard.Within(temperature, Bounds.Between(coldTemperature - Reach, warmTemperature + Reach, Measure.Temperature));

    private Num Viscosity(double kelvins, Trace? t = null)
    {
        Num first = 1 / t.Given("T_1", coldTemperature, Measure.AbsoluteTemperature);
        Num thick = t.Given("ν_1", cold, Measure.KinematicViscosity);
        return t.Step(
            "kinematic viscosity", "ν", Measure.KinematicViscosity, Andrade,
            thick * Num.Exp(
                Num.Ln(t.Given("ν_2", warm, Measure.KinematicViscosity) / thick)
                    * (first - (1 / t.Given("T", kelvins, Measure.AbsoluteTemperature)))
                / (first - (1 / t.Given("T_2", warmTemperature, Measure.AbsoluteTemperature)))));
    }
}
