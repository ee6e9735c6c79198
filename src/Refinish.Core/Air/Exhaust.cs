using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// What the fan takes out of the room: the flow on its label, the part of it that is really moved through duct, filter and window,
/// and how badly the fresh air mixes. Fresh air that counts: F = Q_label · η / K.
/// </summary>
/// <remarks>
/// The mixing factor runs from 1 (perfect mixing) to 10 (poor): CDC, Guidelines for preventing the transmission of Mycobacterium
/// tuberculosis, MMWR 43(RR-13), 28 October 1994, notes to Table S3-1. Three is a common choice for a small room with one fan, without
/// a document. The delivered fraction of 60 % is invented; portable fans on a length of flexible duct commonly deliver half to two
/// thirds of their label. Measure the flow at the outlet where it matters, and give a delivered fraction of 100 % with it.
/// </remarks>
/// <example><code>
/// Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) };
/// VolumeFlow moved = fan.EffectiveFlow;      // 150 cfm
/// VolumeFlow counts = fan.FreshAirFlow;      // 50 cfm
/// </code></example>
public sealed record Exhaust
{
    internal static readonly Source Mixing = Source.Published("MMWR 43(RR-13), 28 October 1994", "Table S3-1, notes: mixing factor 1 (perfect) to 10 (poor)");

    private static readonly Source Delivered = Source.Derived("part of the label flow that is moved; 60 % unless given is invented");

    /// <summary>What is measured of a fan, as a table.</summary>
    public static RecordInputs<Exhaust> Inputs { get; } = new(
        record => record.Values,
        (record, values) => record with { Values = values },
        InputField.Of(nameof(LabelFlow), "flow on the label of the fan", AirKernel.Airflows),
        InputField.Of(nameof(DeliveredFraction), "part of the label flow that is moved", Bounds.Between(1e-4, 1, Measure.Percent), 0.6),
        InputField.Number(nameof(MixingFactor), "mixing factor", 1, 10, 3));

    /// <summary>Values that are given one by one.</summary>
    public Exhaust()
    {
    }

    /// <summary>Values by name.</summary>
    /// <param name="values">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <exception cref="ArgumentException">The argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public Exhaust(InputValues values) => Values = Inputs.Whole(values, nameof(values));

    private InputValues Values { get; init; } = Inputs.Empty;

    /// <summary>The flow on the fan's label, 0 to 10 m³/s (21 000 cfm); 0 when there is no fan, else at least 0.0036 m³/h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required VolumeFlow LabelFlow { get => Values.VolumeFlow(); init => Values = Values.Set(value); }

    /// <summary>Part of the label flow that is really moved, 0.01 to 100 %; 60 % unless given, which is invented.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio DeliveredFraction { get => Values.Ratio(); init => Values = Values.Set(value); }

    /// <summary>The mixing factor K, 1 to 10, from perfect to poor; 3 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double MixingFactor { get => Values.Number(); init => Values = Values.Set(value); }

    /// <summary>The flow really moved: label flow × delivered fraction.</summary>
    public VolumeFlow EffectiveFlow => VolumeFlow.FromCubicMetersPerSecond(Moved().Value);

    /// <summary>The flow of fresh air that counts in a well-mixed room: effective flow / K.</summary>
    public VolumeFlow FreshAirFlow => VolumeFlow.FromCubicMetersPerSecond(Fresh().Value);

    /// <summary>How the flows follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Exhaust", Moved, Fresh);

    /// <summary>The flows and the mixing factor.</summary>
    /// <returns>Text such as <c>424.75 m³/h on the label, 254.85 m³/h moved, mixing factor 3</c>.</returns>
    public override string ToString() =>
        Measure.Airflow.Format(LabelFlow.CubicMetersPerSecond) + " on the label, " + Measure.Airflow.Format(EffectiveFlow.CubicMetersPerSecond)
        + " moved, mixing factor " + Figures.Significant(MixingFactor, 4);

    private Num Moved(Trace? t = null) => t.Step("flow really moved", "Q", Measure.Airflow, Delivered,
        t.Given("Q_label", LabelFlow.CubicMetersPerSecond, Measure.Airflow) * t.Given("η", DeliveredFraction.DecimalFractions, Measure.Percent));

    private Num Fresh(Trace? t = null) =>
        t.Step("fresh air that counts", "F", Measure.Airflow, Mixing, Moved(t) / t.Given("K", MixingFactor, Measure.Number));
}
