using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>One time of a data sheet's table and the temperature it holds at.</summary>
/// <example><code>
/// TabulatedTime cold = new(Temperature.FromDegreesCelsius(15), TimeSpan.FromHours(36));
/// </code></example>
public sealed record TabulatedTime
{
    /// <summary>Takes both.</summary>
    /// <param name="temperature">−20 to 60 °C.</param>
    /// <param name="time">More than 0, at most 60 days.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public TabulatedTime(Temperature temperature, TimeSpan time)
    {
        Temperature = Guard.Checked(temperature, TemperatureShift.Thermometer);
        Guard.Within(time, Bounds.Positive(Measure.Hours, 60 * 24 * 3600));
        Time = time;
    }

    /// <summary>The temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>The time.</summary>
    public TimeSpan Time { get; }

    internal double Kelvins => Temperature.Kelvins;

    /// <summary>Both in one line.</summary>
    /// <returns>Text such as <c>36 h at 15 °C</c>.</returns>
    public override string ToString() => Measure.Hours.Format(Time.TotalSeconds) + " at " + Measure.Temperature.Format(Temperature.Kelvins);
}
