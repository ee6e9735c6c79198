using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// The temperature at which a film turns from rubber to glass, which rises as it cures: (T_g − T_g0) / (T_g∞ − T_g0) = λ α / (1 − (1 −
/// λ) α).
/// </summary>
/// <remarks>
/// A. T. DiBenedetto, Journal of Polymer Science B 25 (1987) 1949, in the form of J. P. Pascault and R. J. J. Williams (1990), where λ
/// is the ratio of the two steps of heat capacity (from memory). A film hardens in earnest when its T_g passes the room's temperature,
/// and hardly cures any further then.
/// </remarks>
/// <example><code>
/// GlassTransition glass = new(Temperature.FromDegreesCelsius(-20), Temperature.FromDegreesCelsius(90), 0.5);
/// Temperature half = glass.At(Ratio.FromPercent(50));                                      // 16.7 °C
/// Ratio? hard = glass.ConversionAt(Temperature.FromDegreesCelsius(20));                    // 53.3 %
/// </code></example>
public sealed record GlassTransition
{
    private static readonly Source Form = Source.Published("A. T. DiBenedetto, Journal of Polymer Science B 25 (1987)",
        "page 1949 (from memory)");

    /// <summary>Takes the two ends and the bend between them.</summary>
    /// <param name="uncured">T_g0 of the mix before it reacts, −150 to 300 °C.</param>
    /// <param name="cured">T_g∞ of the full cure, above <paramref name="uncured"/> and at most 400 °C.</param>
    /// <param name="lambda">λ, more than 0 and at most 1 (a straight line).</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public GlassTransition(Temperature uncured, Temperature cured, double lambda)
    {
        Uncured = Guard.Checked(uncured, Bounds.Between(123.15, 573.15, Measure.Temperature));
        Cured = Guard.Checked(cured, Bounds.Above(Uncured.Kelvins, 673.15, Measure.Temperature));
        Lambda = Guard.Within(lambda, Bounds.Positive(Measure.Number, 1));
    }

    /// <summary>T_g0 of the mix before it reacts.</summary>
    public Temperature Uncured { get; }

    /// <summary>T_g∞ of the full cure.</summary>
    public Temperature Cured { get; }

    /// <summary>λ, how much the curve sags.</summary>
    public double Lambda { get; }

    /// <summary>The glass transition at a conversion.</summary>
    /// <param name="conversion">0 to 100 %.</param>
    /// <returns>T_g.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature At(Ratio conversion) => Temperature.FromKelvins(Kelvins(Checked(conversion)).Value);

    /// <summary>The conversion at which the glass transition is at a temperature.</summary>
    /// <param name="temperature">Any temperature from −150 to 400 °C.</param>
    /// <returns>The conversion; <see langword="null"/> below T_g0 (glassy from the beginning) and above T_g∞ (never).</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? ConversionAt(Temperature temperature)
    {
        double t = Guard.Within(temperature, Bounds.Between(123.15, 673.15, Measure.Temperature));
        return t < Uncured.Kelvins || t > Cured.Kelvins ? null : Ratio.FromDecimalFractions(ConversionKelvins(t));
    }

    /// <summary>How the glass transition follows.</summary>
    /// <param name="conversion">0 to 100 %.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Workings Workings(Ratio conversion)
    {
        double alpha = Checked(conversion);
        return Trace.Of("Glass transition", t => Kelvins(alpha, t));
    }

    /// <summary>The two ends and λ in one line.</summary>
    /// <returns>Text such as <c>glass transition -20 °C to 90 °C, λ 0.5</c>.</returns>
    public override string ToString() =>
        "glass transition " + Measure.Temperature.Format(Uncured.Kelvins) + " to " + Measure.Temperature.Format(Cured.Kelvins) + ", λ "
            + Figures.Significant(Lambda);

    /// <summary>0 below T_g0, more than 1 above T_g∞, where no conversion is enough.</summary>
    internal double ConversionKelvins(double t)
    {
        double share = (t - Uncured.Kelvins) / (Cured.Kelvins - Uncured.Kelvins);
        return share <= 0 ? 0 : share > 1 ? 2 : share / (Lambda + ((1 - Lambda) * share));
    }

    private static double Checked(Ratio conversion) => Guard.Within(conversion, Bounds.NotNegative(Measure.Percent, 1));

    private Num Kelvins(double alpha, Trace? t = null)
    {
        Num a = t.Given("α", alpha, Measure.Percent);
        Num l = t.Given("λ", Lambda, Measure.Number);
        Num low = t.Given("T_g0", Uncured.Kelvins, Measure.AbsoluteTemperature);
        return t.Step(
            "glass transition", "T_g", Measure.Temperature, Form,
            low + ((t.Given("T_g∞", Cured.Kelvins, Measure.AbsoluteTemperature) - low) * l * a / (1 - ((1 - l) * a))));
    }
}
