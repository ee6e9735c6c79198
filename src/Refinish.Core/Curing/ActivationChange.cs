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
    /// <summary>Makes a change.</summary>
    /// <param name="at">The temperature from which it holds, −40 to 300 °C.</param>
    /// <param name="activationEnergy">E_1 from there on, 0 to 200 kJ/mol.</param>
    /// <param name="autocatalyticActivationEnergy">E_2 from there on, 0 to 200 kJ/mol.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ActivationChange(Temperature at, MolarEnergy activationEnergy, MolarEnergy autocatalyticActivationEnergy)
    {
        At = Guard.Checked(at, CureReaction.Thermometer);
        ActivationEnergy = Guard.Checked(activationEnergy, CureReaction.Energies);
        AutocatalyticActivationEnergy = Guard.Checked(autocatalyticActivationEnergy, CureReaction.Energies);
    }

    /// <summary>The temperature from which it holds.</summary>
    public Temperature At { get; }

    /// <summary>E_1 from there on.</summary>
    public MolarEnergy ActivationEnergy { get; }

    /// <summary>E_2 from there on.</summary>
    public MolarEnergy AutocatalyticActivationEnergy { get; }

    internal double Kelvins => At.Kelvins;

    internal double Energy => ActivationEnergy.JoulesPerMole;

    internal double AutocatalyticEnergy => AutocatalyticActivationEnergy.JoulesPerMole;

    /// <summary>The energies and the temperature in one line.</summary>
    /// <returns>Text such as <c>30 kJ/mol and 35 kJ/mol from 40 °C</c>.</returns>
    public override string ToString() =>
        Measure.MolarEnergy.Format(ActivationEnergy.JoulesPerMole) + " and "
            + Measure.MolarEnergy.Format(AutocatalyticActivationEnergy.JoulesPerMole) + " from " + Measure.Temperature.Format(At.Kelvins);
}
