using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// How a gun is led: how far from the surface, how fast, with how much overlap, and how far past the edges the trigger is held.
/// </summary>
/// <remarks>
/// Usual figures are 150 to 250 mm, 50 % overlap, and 30 cm/s for air-atomised or 45 cm/s for high-volume low-pressure guns (common
/// practice, no source).
/// </remarks>
/// <example><code>
/// StrokeSettings hand = new()
/// {
///     Distance = Length.FromCentimeters(20), Speed = Speed.FromCentimetersPerSecond(45),
///     Overlap = Ratio.FromPercent(50), TriggerLead = Length.FromCentimeters(5),
/// };
/// </code></example>
public sealed record StrokeSettings
{
    internal static readonly Bounds Speeds = Bounds.Between(0.01, 3, Measure.Speed);

    /// <summary>From nozzle to surface, 50 mm to 1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Distance { get; init => field = Guard.Checked(value, Bounds.Between(0.05, 1, Measure.Length)); }

    /// <summary>Of the gun along a stroke, 1 to 300 cm/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Speed Speed { get; init => field = Guard.Checked(value, Speeds); }

    /// <summary>Part of the fan's width that covers the stroke before, 0 to 90 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio Overlap { get; init => field = Guard.Checked(value, Bounds.Between(0, 0.9, Measure.Percent)); }

    /// <summary>How far past the edge the trigger is pulled and released, 0 to 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length TriggerLead { get; init => field = Guard.Checked(value, Bounds.NotNegative(Measure.Length, 0.5)); }

    /// <summary>The settings in one line, in metric units.</summary>
    /// <returns>Text such as <c>200 mm away at 45 cm/s, 50 % overlap, trigger 50 mm past the edges</c>.</returns>
    public override string ToString() =>
        Measure.Length.Format(Distance.Meters) + " away at " + Measure.Speed.Format(Speed.MetersPerSecond) + ", "
            + Measure.Percent.Format(Overlap.DecimalFractions)
        + " overlap, trigger " + Measure.Length.Format(TriggerLead.Meters) + " past the edges";
}
