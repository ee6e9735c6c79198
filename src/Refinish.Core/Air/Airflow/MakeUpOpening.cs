using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// The opening through which as much clean air comes in as the fan takes out: how large it has to be for a speed of air, and how fast
/// the air is in the one there is. A = Q/v. An opening that is too small starves the fan, and a gas appliance nearby may draw its flue
/// gas in.
/// </summary>
/// <example><code>
/// // the fan of Exhaust
/// MakeUpOpening opening = new(fan.EffectiveFlow, Speed.FromFeetPerMinute(500), Area.FromSquareMeters(0.03));
/// Area needed = opening.Needed;      // 0.0279 m²
/// </code></example>
public sealed record MakeUpOpening
{
    private static readonly Source Continuity = Source.Derived("as much air in as out, 29 CFR 1910.94(c)(7)(i): area is flow over speed");

    private readonly double flow;
    private readonly double speed;
    private readonly double? given;

    /// <summary>An opening for a flow.</summary>
    /// <param name="flow">The flow that the fan really moves, more than 0 and at most 10 m³/s.</param>
    /// <param name="speed">The speed that the air may have in it, 0.1 to 10 m/s; see <see cref="AirSpeedGuide.MakeUpOpening"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MakeUpOpening(VolumeFlow flow, Speed speed) : this(flow, speed, null)
    {
    }

    /// <summary>An opening for a flow.</summary>
    /// <param name="flow">The flow that the fan really moves, more than 0 and at most 10 m³/s.</param>
    /// <param name="speed">The speed that the air may have in it, 0.1 to 10 m/s; see <see cref="AirSpeedGuide.MakeUpOpening"/>.</param>
    /// <param name="given">Free area of the opening that there is, more than 0 and at most 10 m²; <see langword="null"/> for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MakeUpOpening(VolumeFlow flow, Speed speed, Area? given)
    {
        this.flow = Guard.Within(flow, Bounds.Positive(Measure.Airflow, 10));
        this.speed = Guard.Within(speed, Bounds.Between(0.1, 10, Measure.AirSpeed));
        this.given = given is Area area ? Guard.Within(area, Bounds.Positive(Measure.SmallArea, 10), nameof(given)) : null;
    }

    /// <summary>The flow.</summary>
    public VolumeFlow Flow => VolumeFlow.FromCubicMetersPerSecond(flow);

    /// <summary>The speed that the air may have.</summary>
    public Speed Speed => Speed.FromMetersPerSecond(speed);

    /// <summary>Free area of the opening that there is; <see langword="null"/> unless given.</summary>
    public Area? Given => given is double area ? Area.FromSquareMeters(area) : null;

    /// <summary>The free area that the speed asks for.</summary>
    public Area Needed => Area.FromSquareMeters(Free().Value);

    /// <summary>The speed of the air in the opening that there is; <see langword="null"/> when it is not measured.</summary>
    public Speed? GivenSpeed => given is null ? null : Speed.FromMetersPerSecond(Moving().Value);

    /// <summary>The opening that there is against the one needed; it cannot be judged when it is not measured.</summary>
    public LimitComparison Comparison => new(
        "free area of the make-up opening", given, Free().Value, LimitSense.AtLeast, Measure.SmallArea, Continuity,
        given < Free().Value ? "open more, across the room from the fan" : null);

    /// <summary>What to warn of.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.MakeUpAir]);

    /// <summary>How area and speed follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Make-up opening", [Free, .. Trace.When(given is not null, Moving)]);

    /// <summary>The area needed and the one there is.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Comparison.ToString();

    private Num Free(Trace? t = null) =>
        t.Step("free area needed", "A", Measure.SmallArea, Continuity, Through(t) / t.Given("v", speed, Measure.AirSpeed));

    private Num Moving(Trace? t = null) => t.Step(
        "speed in the opening that there is", "v_open", Measure.AirSpeed, Continuity,
        Through(t) / t.Given("A_open", given!.Value, Measure.SmallArea));

    private Num Through(Trace? t) => t.Given("Q", flow, Measure.Airflow);
}
