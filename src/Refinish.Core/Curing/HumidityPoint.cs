using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// One row of a <see cref="HumidityEffect"/>: at a relative humidity a step takes so many times as long as the data sheet says.
/// </summary>
/// <example><code>
/// HumidityPoint dry = new(Ratio.FromPercent(30), 1.5);
/// </code></example>
public sealed record HumidityPoint
{
    /// <summary>Takes both.</summary>
    /// <param name="humidity">Relative humidity, 0 to 100 %.</param>
    /// <param name="timeFactor">How many times as long, 0.1 to 20.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public HumidityPoint(Ratio humidity, double timeFactor)
    {
        Humidity = Guard.Checked(humidity, Bounds.NotNegative(Measure.Percent, 1));
        TimeFactor = Guard.Within(timeFactor, Bounds.Between(0.1, 20, Measure.Number));
    }

    /// <summary>Relative humidity.</summary>
    public Ratio Humidity { get; }

    /// <summary>How many times as long.</summary>
    public double TimeFactor { get; }

    internal double Fraction => Humidity.DecimalFractions;

    /// <summary>Both in one line.</summary>
    /// <returns>Text such as <c>× 1.5 at 30 %</c>.</returns>
    public override string ToString() =>
        "× " + Figures.Significant(TimeFactor) + " at " + Measure.Percent.Format(Humidity.DecimalFractions);
}
