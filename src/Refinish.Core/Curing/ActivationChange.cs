using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>Other activation energies of a <see cref="CureReaction"/> from a temperature on, as where another step of the reaction
/// governs.</summary>
/// <remarks>
/// The rate constants have no step there: k_i(T) = k_i(T_c) e^(E_i'/R (1/T_c − 1/T)) from T_c on, with k_i(T_c) by the energies below.
/// </remarks>
/// <example><code>
/// ActivationChange change = new(
///     Temperature.FromDegreesCelsius(40), MolarEnergy.FromKilojoulesPerMole(30), MolarEnergy.FromKilojoulesPerMole(35));
/// </code></example>
public sealed record ActivationChange
{
    private readonly double at;
    private readonly double energy;
    private readonly double autocatalyticEnergy;

    /// <summary>Makes a change.</summary>
    /// <param name="at">The temperature from which it holds, −40 to 300 °C.</param>
    /// <param name="activationEnergy">E_1 from there on, 0 to 200 kJ/mol.</param>
    /// <param name="autocatalyticActivationEnergy">E_2 from there on, 0 to 200 kJ/mol.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ActivationChange(Temperature at, MolarEnergy activationEnergy, MolarEnergy autocatalyticActivationEnergy)
    {
        this.at = Guard.Within(at, CureReaction.Thermometer);
        energy = Guard.Within(activationEnergy, CureReaction.Energies);
        autocatalyticEnergy = Guard.Within(autocatalyticActivationEnergy, CureReaction.Energies);
    }

    /// <summary>The temperature from which it holds.</summary>
    public Temperature At => Temperature.FromKelvins(at);

    /// <summary>E_1 from there on.</summary>
    public MolarEnergy ActivationEnergy => MolarEnergy.FromJoulesPerMole(energy);

    /// <summary>E_2 from there on.</summary>
    public MolarEnergy AutocatalyticActivationEnergy => MolarEnergy.FromJoulesPerMole(autocatalyticEnergy);

    internal double Kelvins => at;

    internal double Energy => energy;

    internal double AutocatalyticEnergy => autocatalyticEnergy;

    /// <summary>The energies and the temperature in one line.</summary>
    /// <returns>Text such as <c>30 kJ/mol and 35 kJ/mol from 40 °C</c>.</returns>
    public override string ToString() =>
        Measure.MolarEnergy.Format(energy) + " and " + Measure.MolarEnergy.Format(autocatalyticEnergy) + " from "
        + Measure.Temperature.Format(at);
}
