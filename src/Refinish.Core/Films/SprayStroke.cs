using System;
using System.Globalization;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// One straight stroke of a gun: from where the trigger is pulled to where it is released, at one speed and with one aim.
/// </summary>
/// <remarks>
/// The places are those of the nozzle, in metres, in the frame of the fixture's mesh (z up). The aim points from the nozzle to the
/// surface.
/// </remarks>
/// <example><code>
/// SprayStroke along = new()
/// {
///     Start = new(-0.05, 0.3, 0.2), End = new(1.57, 0.3, 0.2), Aim = new(0, 0, -1),
///     Speed = Speed.FromCentimetersPerSecond(45),
/// };
/// double trigger = along.TriggerTime.TotalSeconds;   // 3.6
/// </code></example>
public sealed record SprayStroke
{
    /// <summary>Where the nozzle is when the trigger is pulled.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or farther than 10⁹ m off.</exception>
    public required MeshPoint Start { get; init => field = MeshBox.InReach(value, nameof(Start)); }

    /// <summary>Where the nozzle is when the trigger is released.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite or farther than 10⁹ m off.</exception>
    public required MeshPoint End { get; init => field = MeshBox.InReach(value, nameof(End)); }

    /// <summary>The direction in which the gun points, of any length but zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not finite, beyond 10⁹ or zero.</exception>
    public required MeshPoint Aim
    {
        get;
        init
        {
            MeshBox.InReach(value, nameof(Aim));
            Guard.Rule(value.Norm > 0, nameof(Aim), value.Norm, Measure.Number, "a direction that is not zero");
            field = value;
        }
    }

    /// <summary>Of the gun, 1 to 300 cm/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Speed Speed { get; init => field = Guard.Checked(value, StrokeSettings.Speeds); }

    /// <summary>How far the fan is turned about the aim from standing across the travel, −90° to 90°; 0 unless it is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Angle FanTurn { get; init => field = Guard.Checked(value, Bounds.Between(-Math.PI / 2, Math.PI / 2, Measure.Angle)); }

    /// <summary>From nozzle place to nozzle place.</summary>
    public Length Length => Length.FromMeters(LengthSi);

    /// <summary>How long the trigger is pulled: length over speed.</summary>
    public TimeSpan TriggerTime => Durations.FromSeconds(LengthSi / Speed.MetersPerSecond);

    internal double LengthSi => MeshPoint.Difference(End, Start).Norm;

    /// <summary>The stroke in one line, in metric units.</summary>
    /// <returns>Text such as <c>(0 mm, 300 mm, 200 mm) to (1524 mm, 300 mm, 200 mm) at 45 cm/s</c>.</returns>
    public override string ToString() =>
        string.Format(CultureInfo.InvariantCulture, "{0} to {1} at {2}", Start, End, Measure.Speed.Format(Speed.MetersPerSecond));
}
