using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// Whether a liquid evaporates into the air of a room, in one of three forms: with a vapour pressure, not in the time of a job, or not
/// known. What is not known counts as volatile.
/// </summary>
/// <remarks>
/// "Not volatile" asks for a boiling point above 250 °C, the line of Directive 2004/42/EC, Article 2(5). Two other lines are not taken,
/// since a room feels them: California's low-vapour-pressure compounds begin at 0.1 mmHg at 20 °C or a boiling point of 216 °C (17 CCR
/// 94508), and the directive on solvents at 10 Pa; air over a liquid of 0.1 mmHg holds up to 130 ppm. What boils above 250 °C is not gone
/// for ever: it leaves the film over weeks and months.
/// </remarks>
/// <example><code>
/// Volatility coalescent = Volatility.NotVolatile(Temperature.FromDegreesCelsius(254), Source.Supplied("product data sheet"));
/// bool evaporates = coalescent.IsVolatile;   // false
/// double? pascals = Volatility.At20Celsius(Pressure.FromPascals(1067)).VapourPressure?.Pascals;   // 1067
/// </code></example>
public sealed record Volatility
{
    /// <summary>A higher boiling point is not volatile: 250 °C.</summary>
    internal const double Line = 250 + 273.15;

    private readonly double? vapourPressure;
    private readonly double? boilingPoint;

    private Volatility(double? vapourPressure, double? boilingPoint, Source? basis)
    {
        this.vapourPressure = vapourPressure;
        this.boilingPoint = boilingPoint;
        Basis = basis;
    }

    /// <summary>Nothing is known: it counts as volatile.</summary>
    public static Volatility Unknown { get; } = new(null, null, null);

    /// <summary>Vapour pressure at 20 °C; <see langword="null"/> when not given.</summary>
    public Pressure? VapourPressure => vapourPressure is double pressure ? Pressure.FromPascals(pressure) : null;

    /// <summary>Boiling point at 101.325 kPa of what is not volatile, above 250 °C; <see langword="null"/> for the other forms.</summary>
    public Temperature? BoilingPoint => boilingPoint is double kelvins ? Temperature.FromKelvins(kelvins) : null;

    /// <summary>What the boiling point rests on; <see langword="null"/> for the other forms.</summary>
    public Source? Basis { get; }

    /// <summary>Whether it counts as given off to the air.</summary>
    public bool IsVolatile => boilingPoint is null;

    /// <summary>It evaporates, with this vapour pressure.</summary>
    /// <param name="vapourPressure">At 20 °C, more than 0 and at most 101 325 Pa.</param>
    /// <returns>A volatile liquid.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="vapourPressure"/> is outside its range.</exception>
    public static Volatility At20Celsius(Pressure vapourPressure) =>
        new(Guard.Within(vapourPressure, Bounds.Positive(Measure.Pressure, 101325)), null, null);

    /// <summary>It stays in the film for the time of a job.</summary>
    /// <param name="boilingPoint">
    /// At 101.325 kPa, above 250 °C and at most 1000 °C; for one that breaks down before it boils, where it breaks down.
    /// </param>
    /// <param name="basis">Who says so.</param>
    /// <returns>A liquid that a study keeps in the film.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">
    /// <paramref name="boilingPoint"/> is outside its range: at 250 °C or below it is volatile.
    /// </exception>
    /// <exception cref="System.ArgumentNullException"><paramref name="basis"/> is missing.</exception>
    public static Volatility NotVolatile(Temperature boilingPoint, Source basis) => new(
        null, Guard.Within(boilingPoint, Bounds.Above(Line, 1273.15, Measure.Temperature)), Guard.NotNull(basis));

    /// <summary>The vapour pressure, or which of the other forms it is.</summary>
    /// <returns>Text such as <c>1067 Pa at 20 °C</c>, <c>not volatile, boils at 254 °C</c> or <c>not known</c>.</returns>
    public override string ToString() =>
        vapourPressure is double pressure ? Measure.Pressure.Format(pressure) + " at 20 °C"
        : boilingPoint is double kelvins ? "not volatile, boils at " + Measure.Temperature.Format(kelvins)
        : "not known";
}
