using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// How cure slows to a crawl when the film turns glassy and molecules can no longer meet: the factor f_d = 1 / (1 + e^(C (α − α_c))),
/// with a critical conversion that rises with temperature, α_c = α_c0 + s T, T in kelvins.
/// </summary>
/// <remarks>
/// Form: C.-S. Chern and G. W. Poehlein, Polymer Engineering and Science 27 (1987) 788; the linear critical conversion as composite
/// practice fits it (both from memory). It is why an epoxy in a cold room stops short of full cure however long one waits.
/// </remarks>
/// <example><code>
/// DiffusionLimit glass = new() { Steepness = 40, CriticalConversionAtZero = -1.5, CriticalConversionPerKelvin = 0.008 };
/// Ratio critical = glass.CriticalConversion(Temperature.FromDegreesCelsius(20));       // 84.5 %
/// </code></example>
public sealed record DiffusionLimit
{
    private static readonly Source Form =
        Source.Published("C.-S. Chern and G. W. Poehlein, Polymer Engineering and Science 27 (1987)", "page 788 (from memory)");

    /// <summary>C: how sharply the reaction stops about the critical conversion, more than 0 and at most 500.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Steepness { get; init => field = Guard.Within(value, Bounds.Positive(Measure.Number, 500)); }

    /// <summary>α_c0: the critical conversion drawn out to 0 K, −10 to 2.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double CriticalConversionAtZero { get; init => field = Guard.Within(value, Bounds.Between(-10, 2, Measure.Number)); }

    /// <summary>s: how much the critical conversion rises with a kelvin, 0 to 0.1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double CriticalConversionPerKelvin
    {
        get;
        init => field = Guard.Within(value, Bounds.NotNegative(Measure.Number, 0.1));
    }

    /// <summary>The conversion at which the rate has fallen to half of what chemistry alone would do.</summary>
    /// <param name="temperature">−40 to 300 °C.</param>
    /// <returns>α_c; above 100 % when nothing slows the reaction at this temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio CriticalConversion(Temperature temperature) =>
        Ratio.FromDecimalFractions(Critical(Guard.Within(temperature, CureReaction.Thermometer)).Value);

    /// <summary>The three numbers in one line.</summary>
    /// <returns>Text such as <c>stops about -1.5 + 0.008 T, steepness 40</c>.</returns>
    public override string ToString() => "stops about " + Figures.Significant(CriticalConversionAtZero) + " + " + Figures.Significant(CriticalConversionPerKelvin)
        + " T, steepness " + Figures.Significant(Steepness);

    /// <summary>f_d = 1 / (1 + e^(C (α − α_c))), by parameters from a source.</summary>
    internal Num Limit(Num alpha, double kelvins, Source source, Trace? t = null)
    {
        Num critical = t.Step("critical conversion", "α_c", Measure.Percent, source, Critical(kelvins, t));
        return t.Step(
            "diffusion limit", "f_d", Measure.Number, Form,
            1 / (1 + Num.Exp(t.Given("C", Steepness, Measure.Number) * (alpha - critical))));
    }

    private Num Critical(double kelvins, Trace? t = null) => t.Given("α_c0", CriticalConversionAtZero, Measure.Number)
        + (t.Given("s", CriticalConversionPerKelvin, Measure.Number) * t.Given("T", kelvins, Measure.AbsoluteTemperature));
}
