using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// A spray gun as it is set for a coat: how much leaves it, how much of that lands, and how much of the time the trigger is pulled.
/// </summary>
/// <remarks>
/// Transfer efficiency is coating solids on the object per solids sprayed (South Coast air district, "Spray equipment transfer
/// efficiency"). Published figures: 0.25 for air-atomised guns (40 CFR 60.313, Table 1) and 0.65 as the level at which a high-volume
/// low-pressure gun qualifies in that district. A basin is not a flat panel: calibrate from the volume used and the dry film found.
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
    // Invented: an airbrush for pencil lines gives more than the least, 0.1 mL/min.
    private static readonly Bounds Rates = Bounds.Between(1e-7 / 60, 2e-3 / 60, Measure.FluidRate);

    /// <summary>What is given, as a table.</summary>
    public static RecordInputs<SprayGun> Inputs { get; } = new(
        record => record.Values,
        (record, values) => record with { Values = values },
        InputField.Of(nameof(FluidRate), "what leaves the gun while the trigger is pulled", Rates),
        InputField.Of(
            nameof(TransferEfficiency), "part of what leaves the gun that stays on the piece", Bounds.Between(0.05, 1, Measure.Percent)),
        InputField.Of(
            nameof(TriggerFraction), "part of the time for which the trigger is pulled", Bounds.Between(0.05, 1, Measure.Percent), 1));

    /// <summary>Values that are given one by one.</summary>
    public SprayGun()
    {
    }

    /// <summary>Values by name.</summary>
    /// <param name="values">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <exception cref="ArgumentException">The argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public SprayGun(InputValues values) => Values = Inputs.Whole(values, nameof(values));

    private InputValues Values { get; init; } = Inputs.Empty;

    /// <summary>Coating leaving the gun while the trigger is pulled, 0.1 mL/min to 2 L/min.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required VolumeFlow FluidRate { get => Values.VolumeFlow(); init => Values = Values.Set(value); }

    /// <summary>Part of the sprayed coating that lands, 5 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio TransferEfficiency { get => Values.Ratio(); init => Values = Values.Set(value); }

    /// <summary>Part of the clock time during which the trigger is pulled, 5 to 100 %; 100 % unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio TriggerFraction { get => Values.Ratio(); init => Values = Values.Set(value); }

    /// <summary>Coating leaving the gun per clock time: fluid rate times trigger fraction.</summary>
    public VolumeFlow MeanRate => VolumeFlow.FromCubicMetersPerSecond(FluidRate.CubicMetersPerSecond * TriggerFraction.DecimalFractions);

    /// <summary>Clock time to spray a volume.</summary>
    /// <param name="volume">Volume through the gun, 0 to 1 m³.</param>
    /// <returns>The time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan TimeToSpray(Volume volume) =>
        Durations.FromSeconds(Guard.Within(volume, Bounds.NotNegative(Measure.Liquid, 1)) / MeanRate.CubicMetersPerSecond);

    /// <summary>The setting in one line, in metric units.</summary>
    /// <returns>Text such as <c>150 mL/min, 60 % lands, trigger 40 % of the time</c>.</returns>
    public override string ToString() =>
        Measure.FluidRate.Format(FluidRate.CubicMetersPerSecond) + ", " + Measure.Percent.Format(TransferEfficiency.DecimalFractions)
        + " lands, trigger " + Measure.Percent.Format(TriggerFraction.DecimalFractions) + " of the time";
}
