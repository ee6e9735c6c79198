using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>A spray gun as it is set for a coat: how much leaves it, how much of that lands, and how much of the time the trigger is pulled.</summary>
/// <remarks>
/// Transfer efficiency is coating solids on the object per solids sprayed (South Coast air district, "Spray equipment transfer efficiency").
/// Published figures: 0.25 for air-atomised guns (40 CFR 60.313, Table 1) and 0.65 as the level at which a high-volume low-pressure gun
/// qualifies in that district. A basin is not a flat panel: calibrate from the volume used and the dry film found.
/// </remarks>
/// <example><code>
/// SprayGun gun = new()
/// {
///     FluidRate = VolumeFlow.FromMillilitersPerMinute(150),
///     TransferEfficiency = Ratio.FromPercent(60),
///     TriggerFraction = Ratio.FromPercent(40),
/// };
/// TimeSpan coat = gun.TimeToSpray(Volume.FromMilliliters(300));   // 5 min: 2 min of trigger at 40 %
/// </code></example>
public sealed record SprayGun
{
    private readonly double fluidRate;
    private readonly double transferEfficiency;
    private readonly double triggerFraction = 1;

    /// <summary>Coating leaving the gun while the trigger is pulled, more than 0 and at most 2 L/min.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required VolumeFlow FluidRate
    {
        get => VolumeFlow.FromCubicMetersPerSecond(fluidRate);
        init => fluidRate = Guard.Within(value, Bounds.Positive(Measure.FluidRate, 2e-3 / 60), nameof(FluidRate));
    }

    /// <summary>Part of the sprayed coating that lands, 5 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio TransferEfficiency
    {
        get => Ratio.FromDecimalFractions(transferEfficiency);
        init => transferEfficiency = Guard.Within(value, Bounds.Between(0.05, 1, Measure.Percent), nameof(TransferEfficiency));
    }

    /// <summary>Part of the clock time during which the trigger is pulled, 5 to 100 %; 100 % unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio TriggerFraction
    {
        get => Ratio.FromDecimalFractions(triggerFraction);
        init => triggerFraction = Guard.Within(value, Bounds.Between(0.05, 1, Measure.Percent), nameof(TriggerFraction));
    }

    /// <summary>Coating leaving the gun per clock time: fluid rate times trigger fraction.</summary>
    public VolumeFlow MeanRate => VolumeFlow.FromCubicMetersPerSecond(fluidRate * triggerFraction);

    /// <summary>Clock time to spray a volume.</summary>
    /// <param name="volume">Volume through the gun, 0 to 1 m³.</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan TimeToSpray(Volume volume) =>
        TimeSpan.FromSeconds(Guard.Within(volume, Bounds.NotNegative(Measure.Liquid, 1), nameof(volume)) / (fluidRate * triggerFraction));

    /// <summary>The setting in one line, in metric units.</summary>
    /// <returns>Text such as <c>150 mL/min, 60 % lands, trigger 40 % of the time</c>.</returns>
    public override string ToString() =>
        Measure.FluidRate.Format(fluidRate) + ", " + Measure.Percent.Format(transferEfficiency) + " lands, trigger "
        + Measure.Percent.Format(triggerFraction) + " of the time";
}
