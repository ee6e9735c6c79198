using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>How a gun is led: how far from the surface, how fast, with how much overlap, and how far past the edges the trigger is held.</summary>
/// <remarks>
/// Usual figures are 150 to 250 mm, 50 % overlap, and 30 cm/s for air-atomised or 45 cm/s for high-volume low-pressure guns (common practice, no source).
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

    private readonly double distance;
    private readonly double speed;
    private readonly double overlap;
    private readonly double triggerLead;

    /// <summary>From nozzle to surface, 50 mm to 1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Distance
    {
        get => Length.FromMeters(distance);
        init => distance = Guard.Within(value, Bounds.Between(0.05, 1, Measure.Length), nameof(Distance));
    }

    /// <summary>Of the gun along a stroke, 1 to 300 cm/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Speed Speed
    {
        get => Speed.FromMetersPerSecond(speed);
        init => speed = Guard.Within(value, Speeds, nameof(Speed));
    }

    /// <summary>Part of the fan's width that covers the stroke before, 0 to 90 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio Overlap
    {
        get => Ratio.FromDecimalFractions(overlap);
        init => overlap = Guard.Within(value, Bounds.Between(0, 0.9, Measure.Percent), nameof(Overlap));
    }

    /// <summary>How far past the edge the trigger is pulled and released, 0 to 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length TriggerLead
    {
        get => Length.FromMeters(triggerLead);
        init => triggerLead = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.5), nameof(TriggerLead));
    }

    internal double DistanceSi => distance;

    internal double SpeedSi => speed;

    internal double OverlapSi => overlap;

    internal double TriggerLeadSi => triggerLead;

    /// <summary>The settings in one line, in metric units.</summary>
    /// <returns>Text such as <c>200 mm away at 45 cm/s, 50 % overlap, trigger 50 mm past the edges</c>.</returns>
    public override string ToString() =>
        Measure.Length.Format(distance) + " away at " + Measure.Speed.Format(speed) + ", " + Measure.Percent.Format(overlap)
        + " overlap, trigger " + Measure.Length.Format(triggerLead) + " past the edges";
}
