using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>The viscosity of a lying film at a time after it was laid.</summary>
public sealed record ViscosityPoint
{
    /// <summary>Makes a point.</summary>
    /// <param name="time">Time since the film was laid, 0 to 7 days.</param>
    /// <param name="viscosity">Viscosity at slow shear, from 0.1 mPa·s to 10 000 Pa·s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ViscosityPoint(TimeSpan time, DynamicViscosity viscosity)
    {
        Guard.Within(time, Bounds.NotNegative(Measure.Seconds, 7 * 86400));
        Time = time;
        PascalSeconds = Guard.Within(viscosity, FlowRanges.Viscosity);
    }

    /// <summary>Time since the film was laid.</summary>
    public TimeSpan Time { get; }

    /// <summary>Viscosity at slow shear.</summary>
    public DynamicViscosity Viscosity => DynamicViscosity.FromPascalSeconds(PascalSeconds);

    internal double PascalSeconds { get; }

    /// <summary>The point in one line.</summary>
    /// <returns>Text such as <c>300 mPa·s after 60 s</c>.</returns>
    public override string ToString() =>
        Measure.DynamicViscosity.Format(PascalSeconds) + " after " + Measure.Seconds.Format(Time.TotalSeconds);
}
