using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>A stretch of time at one temperature.</summary>
/// <example><code>
/// TemperatureSegment night = new(TimeSpan.FromHours(14), Temperature.FromDegreesCelsius(12));
/// </code></example>
public sealed record TemperatureSegment
{
    /// <summary>Makes a stretch.</summary>
    /// <param name="duration">How long it lasts, more than 0 and at most 10 years of 365 days.</param>
    /// <param name="temperature">The temperature, −20 to 60 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public TemperatureSegment(TimeSpan duration, Temperature temperature)
    {
        Guard.Within(duration, Bounds.Positive(Measure.Hours, 3650.0 * 24 * 3600));
        Duration = duration;
        Temperature = Guard.Checked(temperature, TemperatureShift.Thermometer);
    }

    /// <summary>How long it lasts.</summary>
    public TimeSpan Duration { get; }

    /// <summary>The temperature.</summary>
    public Temperature Temperature { get; }

    internal double Kelvins => Temperature.Kelvins;

    /// <summary>The duration and the temperature in one line.</summary>
    /// <returns>Text such as <c>14 h at 12 °C</c>.</returns>
    public override string ToString() =>
        Measure.Hours.Format(Duration.TotalSeconds) + " at " + Measure.Temperature.Format(Temperature.Kelvins);
}
