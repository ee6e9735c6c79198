using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>The concentration of a tracer gas in a room at a time.</summary>
public sealed record TracerReading
{
    private readonly double seconds;
    private readonly double fraction;

    /// <summary>Notes one concentration of the tracer and its time.</summary>
    /// <param name="time">From any zero that all readings share, 0 to 7 days.</param>
    /// <param name="concentration">Part of the air by volume, more than 0 and at most 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public TracerReading(TimeSpan time, Ratio concentration)
    {
        seconds = Guard.Within(time, Bounds.NotNegative(Measure.Minutes, 7 * 86400));
        fraction = Guard.Within(concentration, Bounds.Positive(Measure.PartsPerMillion, 1));
    }

    /// <summary>Time from the zero that all readings share.</summary>
    public TimeSpan Time => Durations.FromSeconds(seconds);

    /// <summary>Part of the air by volume.</summary>
    public Ratio Concentration => Ratio.FromDecimalFractions(fraction);

    internal double Seconds => seconds;

    internal double Fraction => fraction;

    /// <summary>Time and concentration.</summary>
    /// <returns>Text such as <c>5 min: 1200 ppm</c>.</returns>
    public override string ToString() => Measure.Minutes.Format(seconds) + ": " + Measure.PartsPerMillion.Format(fraction);
}
