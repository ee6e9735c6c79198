using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>How reactions quicken with warmth, as a law that can be passed about: a fixed factor for ten kelvins, or Arrhenius' law.</summary>
/// <remarks>
/// <para>Fixed factor: k(T)/k(T_ref) = Q^((T − T_ref)/10 K). The trade's rule of thumb is Q = 2; systems seen lie between about 1.5 and 2.5 (second-hand, no standard).</para>
/// <para>Arrhenius: k(T)/k(T_ref) = exp(E/R (1/T_ref − 1/T)). Doubling from 20 to 30 °C is E = 51.2 kJ/mol.</para>
/// <para>Neither law knows a product's limits: below its least temperature an epoxy may stop short of curing altogether. <see cref="CureForecast"/> keeps to the limits.</para>
/// </remarks>
/// <example><code>
/// TemperatureShift rule = TemperatureShift.Doubling(2);
/// double factor = rule.RateFactor(Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(25));   // 0.5: takes twice as long
/// TemperatureShift law = TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(55));
/// </code></example>
public sealed record TemperatureShift
{
    internal static readonly Bounds Thermometer = Bounds.Between(253.15, 333.15, Measure.Temperature);

    private static readonly Source Rule = Source.CommonPractice("a fixed factor of the reaction rate for ten kelvins, 2 unless the data sheet tells otherwise");
    private static readonly Source Law = Source.Derived("Arrhenius' law with the gas constant of the SI (2019)");

    private readonly double ratePerTenKelvin;
    private readonly double activationEnergy;

    private TemperatureShift(double ratePerTenKelvin, double activationEnergy)
    {
        this.ratePerTenKelvin = ratePerTenKelvin;
        this.activationEnergy = activationEnergy;
    }

    /// <summary>The factor for ten kelvins; <see langword="null"/> for Arrhenius' law, where it depends on the temperature.</summary>
    public double? RatePerTenKelvin => IsArrhenius ? null : ratePerTenKelvin;

    /// <summary>The activation energy of Arrhenius' law; <see langword="null"/> for the fixed factor.</summary>
    public MolarEnergy? ActivationEnergy => IsArrhenius ? MolarEnergy.FromJoulesPerMole(activationEnergy) : null;

    internal Source Source => IsArrhenius ? Law : Rule;

    private bool IsArrhenius => ratePerTenKelvin == 0;

    /// <summary>The fixed factor for ten kelvins.</summary>
    /// <param name="ratePerTenKelvin">By which factor reactions quicken with ten kelvins more, 1 to 4.</param>
    /// <returns>The law.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 4.</exception>
    public static TemperatureShift Doubling(double ratePerTenKelvin) =>
        new(Guard.Within(ratePerTenKelvin, Bounds.Between(1, 4, Measure.Number), nameof(ratePerTenKelvin)), 0);

    /// <summary>Arrhenius' law.</summary>
    /// <param name="activationEnergy">Activation energy, 0 to 200 kJ/mol; epoxies and urethanes lie about 40 to 70 kJ/mol.</param>
    /// <returns>The law.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 200 kJ/mol.</exception>
    public static TemperatureShift Arrhenius(MolarEnergy activationEnergy) =>
        new(0, Guard.Within(activationEnergy, Bounds.NotNegative(Measure.MolarEnergy, 200e3), nameof(activationEnergy)));

    /// <summary>How much faster reactions run at one temperature than at another.</summary>
    /// <param name="at">The temperature asked for, −20 to 60 °C.</param>
    /// <param name="reference">The temperature compared with, −20 to 60 °C.</param>
    /// <returns>The ratio of the rates: 1 at the reference, above 1 when warmer. Times divide by it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside −20 to 60 °C.</exception>
    public double RateFactor(Temperature at, Temperature reference) =>
        Factor(Guard.Within(at, Thermometer, nameof(at)), Guard.Within(reference, Thermometer, nameof(reference)));

    /// <summary>How a rate factor follows.</summary>
    /// <param name="at">The temperature asked for, −20 to 60 °C.</param>
    /// <param name="reference">The temperature compared with, −20 to 60 °C.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside −20 to 60 °C.</exception>
    public Workings Workings(Temperature at, Temperature reference) => new(
        "Rate of reaction against temperature",
        [FactorStep("T", Guard.Within(at, Thermometer, nameof(at)), Guard.Within(reference, Thermometer, nameof(reference)))]);

    /// <summary>The law in one line.</summary>
    /// <returns>Text such as <c>rate × 2 for ten kelvins</c>.</returns>
    public override string ToString() => IsArrhenius
        ? "Arrhenius, " + Measure.MolarEnergy.Format(activationEnergy)
        : "rate × " + Figures.Significant(ratePerTenKelvin) + " for ten kelvins";

    /// <summary>
    /// The rates of many stretches. The logarithm of the law is linear in T or in 1/T, and a log moves little from line to line: near the last exponential
    /// taken, seven terms of its series give the next to the last digit.
    /// </summary>
    internal void Factors(ValueList<double> kelvins, double reference, double[] rates)
    {
        double scale = IsArrhenius ? activationEnergy / CuringKernel.GasConstant : Math.Log(ratePerTenKelvin) / 10;
        double origin = IsArrhenius ? 1 / reference : reference;
        bool arrhenius = IsArrhenius;
        double anchor = double.NaN;
        double anchored = 0;
        for (int i = 0; i < rates.Length; i++)
        {
            double t = kelvins[i];
            double x = arrhenius ? scale * (origin - (1 / t)) : scale * (t - origin);
            double d = x - anchor;

            // The first term left out is d⁷/5040, below 2e-18. NaN takes the other branch.
            if (Math.Abs(d) < 0.01)
            {
                rates[i] = anchored * (1 + (d * (1 + (d * (0.5 + (d * ((1.0 / 6) + (d * ((1.0 / 24) + (d * ((1.0 / 120) + (d * (1.0 / 720)))))))))))));
            }
            else
            {
                anchor = x;
                anchored = Math.Exp(x);
                rates[i] = anchored;
            }
        }
    }

    internal double Factor(double t, double reference) =>
        IsArrhenius ? CuringKernel.Arrhenius(activationEnergy, t, reference) : CuringKernel.PowerLaw(ratePerTenKelvin, t, reference);

    internal WorkingStep FactorStep(string temperatureSymbol, double t, double reference) =>
        new("rate against the reference", "f", Formula(temperatureSymbol, t, reference), Factor(t, reference), Measure.Number, Source);

    internal Expression Formula(string temperatureSymbol, double t, double reference)
    {
        // A difference of thermometer readings in one system, an absolute temperature in the other.
        Measure measure = IsArrhenius ? Measure.AbsoluteTemperature : Measure.Temperature;
        Expression at = Expression.Quantity(temperatureSymbol, t, measure);
        Expression from = Expression.Quantity("T_ref", reference, measure);
        return IsArrhenius
            ? Expression.Exp(
                Expression.Quantity("E_a", activationEnergy, Measure.MolarEnergy) / Expression.Quantity("R", CuringKernel.GasConstant, Measure.MolarEntropy)
                    * ((1 / from) - (1 / at)))
            : Expression.Power(
                Expression.Quantity("Q", ratePerTenKelvin, Measure.Number),
                (at - from) / Expression.Quantity("10 K", 10, Measure.TemperatureDifference));
    }
}
