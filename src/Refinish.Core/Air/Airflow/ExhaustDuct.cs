using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// A round duct from the fan to the open: how fast the air is in it, v = 4Q/(πd²). Too fast and the fan loses its flow to friction; too
/// slow and overspray settles.
/// </summary>
/// <example><code>
/// // the fan of Exhaust
/// ExhaustDuct duct = new(fan.EffectiveFlow, Length.FromInches(8));
/// Speed inside = duct.Speed;      // 2.183 m/s
/// IReadOnlyList&lt;LimitComparison&gt; speeds = duct.Comparisons;
/// </code></example>
public sealed record ExhaustDuct
{
    private static readonly Source Continuity = Source.Derived("speed is flow over the section of the duct");

    private readonly double flow;
    private readonly double diameter;

    /// <summary>A duct with a flow.</summary>
    /// <param name="flow">The flow that the fan really moves, 0 to 10 m³/s.</param>
    /// <param name="diameter">Inside diameter, 0.03 to 1.5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ExhaustDuct(VolumeFlow flow, Length diameter)
    {
        this.flow = Guard.Within(flow, Bounds.NotNegative(Measure.Airflow, 10));
        this.diameter = Guard.Within(diameter, Bounds.Between(0.03, 1.5, Measure.Length));
    }

    /// <summary>The flow.</summary>
    public VolumeFlow Flow => VolumeFlow.FromCubicMetersPerSecond(flow);

    /// <summary>Inside diameter.</summary>
    public Length Diameter => Length.FromMeters(diameter);

    /// <summary>Section of the duct.</summary>
    public Area Section => Area.FromSquareMeters(Inside().Value);

    /// <summary>Speed of the air.</summary>
    public Speed Speed => Speed.FromMetersPerSecond(Moving().Value);

    /// <summary>The speed against what is usual for vapours, <see cref="AirSpeedGuide.VapourDuct"/>.</summary>
    public IReadOnlyList<LimitComparison> Comparisons =>
        AirSpeedGuide.VapourDuct.Compare(Moving().Value, "a narrower duct", "a wider duct, or a second one");

    /// <summary>How section and speed follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Exhaust duct", Inside, Moving);

    /// <summary>Diameter and speed.</summary>
    /// <returns>Text such as <c>200 mm: 2.2 m/s</c>.</returns>
    public override string ToString() => Measure.Length.Format(diameter) + ": " + Measure.AirSpeed.Format(Speed.MetersPerSecond);

    private Num Inside(Trace? t = null)
    {
        Num d = t.Given("d", diameter, Measure.Length);
        return t.Step("section of the duct", "A_duct", Measure.SmallArea, Continuity, Num.Pi * d * d / 4);
    }

    private Num Moving(Trace? t = null) =>
        t.Step("speed in the duct", "v_duct", Measure.AirSpeed, Continuity, t.Given("Q", flow, Measure.Airflow) / Inside(t));
}
