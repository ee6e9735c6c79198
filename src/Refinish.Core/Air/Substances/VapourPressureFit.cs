using System;
using System.Collections.Generic;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// The vapour pressure of a substance over a range of temperature, as data: a formula's coefficients, its range, its source. Outside
/// the range it is refused.
/// </summary>
/// <example><code>
/// VapourPressureFit acetone = VapourPressureFit.Antoine("67-64-1", "acetone", 9.2184, 1197.01, -45.09,
///     Temperature.FromKelvins(247.38), Temperature.FromKelvins(350.65), Standing.SecondHand, Source.Published("Poling, The Properties of Gases and Liquids, 5th ed.", "Appendix A"));
/// Pressure at20 = acetone.PressureAt(Temperature.FromDegreesCelsius(20));      // 24712 Pa
/// double boils = acetone.FindTemperature(Pressure.FromPascals(101325)).DegreesCelsius;   // 56.08
/// </code></example>
public sealed record VapourPressureFit
{
    private const string Range = "the range in which the fit holds; nothing is extrapolated";

    private readonly ValueList<double> coefficients;
    private readonly double minimum;
    private readonly double maximum;

    private VapourPressureFit(string casNumber, string substance, VapourPressureForm form, ValueList<double> coefficients, Temperature minimum, Temperature maximum, Standing standing, Source source)
    {
        CasNumber = Guard.Named(casNumber);
        Substance = Guard.Named(substance);
        Form = form;
        this.coefficients = coefficients;
        Bounds temperatures = Bounds.Between(100, 1000, Measure.AbsoluteTemperature);
        this.minimum = Guard.Within(minimum, temperatures);
        this.maximum = Guard.Within(maximum, temperatures);
        Guard.Rule(this.maximum > this.minimum, nameof(maximum), this.maximum, Measure.AbsoluteTemperature, "more than the minimum, ", this.minimum);
        Standing = Guard.Defined(standing);
        Source = Guard.NotNull(source);
    }

    /// <summary>Chemical Abstracts Service registry number.</summary>
    public string CasNumber { get; }

    /// <summary>The substance's name.</summary>
    public string Substance { get; }

    /// <summary>By which formula.</summary>
    public VapourPressureForm Form { get; }

    /// <summary>The lowest temperature for which it holds.</summary>
    public Temperature Minimum => Temperature.FromKelvins(minimum);

    /// <summary>The highest.</summary>
    public Temperature Maximum => Temperature.FromKelvins(maximum);

    /// <summary>How well the coefficients have been looked up.</summary>
    public Standing Standing { get; }

    /// <summary>Where they stand.</summary>
    public Source Source { get; }

    /// <summary>Antoine's equation, log₁₀ p = A − B/(T + C) in pascals and kelvins.</summary>
    /// <param name="casNumber">Chemical Abstracts Service registry number.</param>
    /// <param name="substance">The substance's name.</param>
    /// <param name="a">A.</param>
    /// <param name="b">B, in K.</param>
    /// <param name="c">C in K, at most 0; of coefficients for °C take 273.15 from it.</param>
    /// <param name="minimum">The lowest temperature for which it holds, 100 to 1000 K.</param>
    /// <param name="maximum">The highest, more than the lowest and at most 1000 K.</param>
    /// <param name="standing">How well the coefficients have been looked up.</param>
    /// <param name="source">Where they stand.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or T + C is not positive over the range.</exception>
    public static VapourPressureFit Antoine(string casNumber, string substance, double a, double b, double c, Temperature minimum, Temperature maximum, Standing standing, Source source)
    {
        VapourPressureFit fit = new(casNumber, substance, VapourPressureForm.Antoine, new ValueList<double>([Number(a, nameof(a)), Number(b, nameof(b)), Number(c, nameof(c))]), minimum, maximum, standing, source);
        Guard.Rule(c <= 0, nameof(c), c, Measure.TemperatureDifference,
            "at most 0: coefficients for kelvin; of those for °C take 273.15 from c");
        Guard.Rule(fit.minimum + c > 0, nameof(c), c, Measure.TemperatureDifference, "more than minus the lowest temperature");
        return fit;
    }

    /// <summary>Equation 101 of the DIPPR data, ln p = C1 + C2/T + C3 ln T + C4 T^C5 in pascals and kelvins.</summary>
    /// <param name="casNumber">Chemical Abstracts Service registry number.</param>
    /// <param name="substance">The substance's name.</param>
    /// <param name="c1">C1.</param>
    /// <param name="c2">C2.</param>
    /// <param name="c3">C3.</param>
    /// <param name="c4">C4.</param>
    /// <param name="c5">C5.</param>
    /// <param name="minimum">The lowest temperature for which it holds, 100 to 1000 K.</param>
    /// <param name="maximum">The highest, more than the lowest and at most 1000 K.</param>
    /// <param name="standing">How well the coefficients have been looked up.</param>
    /// <param name="source">Where they stand.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static VapourPressureFit Dippr101(string casNumber, string substance, double c1, double c2, double c3, double c4, double c5, Temperature minimum, Temperature maximum, Standing standing, Source source) =>
        new(casNumber, substance, VapourPressureForm.Dippr101, new ValueList<double>([Number(c1, nameof(c1)), Number(c2, nameof(c2)), Number(c3, nameof(c3)), Number(c4, nameof(c4)), Number(c5, nameof(c5))]), minimum, maximum, standing, source);

    /// <summary>
    /// Two tabulated points with ln p straight in 1/T between them, which is the Clausius–Clapeyron line; it holds between the points
    /// only.
    /// </summary>
    /// <param name="casNumber">Chemical Abstracts Service registry number.</param>
    /// <param name="substance">The substance's name.</param>
    /// <param name="colder">The lower temperature, 100 to 1000 K.</param>
    /// <param name="there">Vapour pressure there, more than 0 and at most 10 MPa.</param>
    /// <param name="warmer">The higher temperature, at most 1000 K.</param>
    /// <param name="thereToo">Vapour pressure there, more than the other and at most 10 MPa.</param>
    /// <param name="standing">How well the points have been looked up.</param>
    /// <param name="source">Where they stand.</param>
    /// <returns>The fit.</returns>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static VapourPressureFit TwoPoints(string casNumber, string substance, Temperature colder, Pressure there, Temperature warmer, Pressure thereToo, Standing standing, Source source)
    {
        double low = Guard.Within(there, Bounds.Positive(Measure.Pressure, 1e7));
        double high = Guard.Within(thereToo, Bounds.Above(low, 1e7, Measure.Pressure));
        return new(casNumber, substance, VapourPressureForm.TwoPoints, new ValueList<double>([colder.Kelvins, low, warmer.Kelvins, high]), colder, warmer, standing, source);
    }

    /// <summary>Whether a temperature is within the range.</summary>
    /// <param name="temperature">Any temperature.</param>
    /// <returns><see langword="true"/> when <see cref="PressureAt"/> answers.</returns>
    public bool Covers(Temperature temperature) => Math.Round(temperature.Kelvins, 10) is double kelvins && kelvins >= minimum && kelvins <= maximum;

    /// <summary>The vapour pressure.</summary>
    /// <param name="temperature">Within the fit's range.</param>
    /// <returns>The pressure.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="temperature"/> is outside the fit's range.</exception>
    public Pressure PressureAt(Temperature temperature) =>
        Pressure.FromPascals(Kernel(Guard.Within(
            temperature, Bounds.Between(minimum, maximum, Measure.AbsoluteTemperature).Because(Range))).Value);

    /// <summary>The temperature at which the vapour pressure is this: at the pressure of the air the boiling point.</summary>
    /// <param name="vapourPressure">Between the vapour pressures at both ends of the fit's range.</param>
    /// <returns>The temperature, within the fit's range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The fit does not reach <paramref name="vapourPressure"/> within its range.</exception>
    public Temperature FindTemperature(Pressure vapourPressure) =>
        Temperature.FromKelvins(Inverse(Guard.Within(vapourPressure, Reached.Because(Range))));

    /// <summary>The same for a vapour pressure that the fit may not reach.</summary>
    /// <param name="vapourPressure">Any pressure.</param>
    /// <param name="temperature">The temperature; 0 K when it is not found.</param>
    /// <returns>Whether the fit reaches the pressure within its range.</returns>
    public bool TryFindTemperature(Pressure vapourPressure, out Temperature temperature)
    {
        bool found = Reached.Contains(vapourPressure.Pascals);
        temperature = Temperature.FromKelvins(found ? Inverse(vapourPressure.Pascals) : 0);
        return found;
    }

    /// <summary>How a temperature follows from a vapour pressure.</summary>
    /// <param name="vapourPressure">Between the vapour pressures at both ends of the fit's range.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The fit does not reach <paramref name="vapourPressure"/> within its range.</exception>
    public Workings WorkingsOfTemperature(Pressure vapourPressure)
    {
        double pascals = Guard.Within(vapourPressure, Reached.Because(Range));
        return Trace.Of("Temperature at which " + Substance + " has a vapour pressure", t => t.Step(
            "temperature", "T", Measure.AbsoluteTemperature, Source, Solved(pascals, t)));
    }

    /// <summary>The substance, the formula and the range.</summary>
    /// <returns>Text such as <c>acetone, Antoine, 247.38 K to 350.65 K</c>.</returns>
    public override string ToString() =>
        Substance + ", " + (Form switch { VapourPressureForm.Antoine => "Antoine", VapourPressureForm.Dippr101 => "DIPPR 101", _ => "two points" })
        + ", " + Measure.AbsoluteTemperature.Format(minimum) + " to " + Measure.AbsoluteTemperature.Format(maximum);

    private Bounds Reached => Bounds.Between(Kernel(minimum).Value, Kernel(maximum).Value, Measure.Pressure);

    // Rounding may put an end of the range a digit beyond it.
    private double Inverse(double pascals) => Math.Min(Math.Max(Solved(pascals).Value, minimum), maximum);

    private Num Solved(double pascals, Trace? t = null)
    {
        Num p = t.Given("p", pascals, Measure.Pressure);
        return Form switch
        {
            VapourPressureForm.Antoine =>
                (Coefficient("B", 1, t) / (Coefficient("A", 0, t) - (Num.Ln(p) / Num.Ln(t.Number(10))))) - Coefficient("C", 2, t),
            VapourPressureForm.Dippr101 => t is null ? Found(pascals) : Shown(Found(pascals), p, t),
            _ => 1 / ((1 / Colder(t)) - (Num.Ln(p / There(t)) / Num.Ln(ThereToo(t) / There(t)) * ((1 / Colder(t)) - (1 / Warmer(t))))),
        };
    }

    private double Found(double pascals) => Roots.Rising(
        (this, Math.Log(pascals)), static (state, kelvins) => Math.Log(state.Item1.Kernel(kelvins).Value) - state.Item2, minimum, maximum);

    // Apart, because what the side of the equation captures is made on entry.
    private Num Shown(double found, Num p, Trace t) => Num.Solution(found, "T", kelvins => Kernel(kelvins, t), p);

    internal Num Kernel(Num kelvins, Trace? t = null) => Form switch
    {
        VapourPressureForm.Antoine =>
            Num.Power(10, Coefficient("A", 0, t) - (Coefficient("B", 1, t) / (kelvins + Coefficient("C", 2, t)))),
        VapourPressureForm.Dippr101 => Num.Exp(
            Coefficient("C_1", 0, t) + (Coefficient("C_2", 1, t) / kelvins) + (Coefficient("C_3", 2, t) * Num.Ln(kelvins))
            + (Coefficient("C_4", 3, t) * Num.Power(kelvins, Coefficient("C_5", 4, t)))),
        _ => There(t) * Num.Exp(
            Num.Ln(ThereToo(t) / There(t)) * (((1 / Colder(t)) - (1 / kelvins)) / ((1 / Colder(t)) - (1 / Warmer(t))))),
    };

    private Num Colder(Trace? t) => t.Given("T_1", coefficients[0], Measure.AbsoluteTemperature);

    private Num There(Trace? t) => t.Given("p_1", coefficients[1], Measure.Pressure);

    private Num Warmer(Trace? t) => t.Given("T_2", coefficients[2], Measure.AbsoluteTemperature);

    private Num ThereToo(Trace? t) => t.Given("p_2", coefficients[3], Measure.Pressure);

    private Num Coefficient(string symbol, int i, Trace? t) => t.Given(symbol, coefficients[i], Measure.Number);

    private static double Number(double value, string name) => Guard.Within(value, Bounds.Between(-1e6, 1e6, Measure.Number), name);
}
