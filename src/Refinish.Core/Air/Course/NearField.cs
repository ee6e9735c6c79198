using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// The air around the source and the person who bends over it: how large it is, through which surface it exchanges air with the rest of the
/// room, and how fast room air moves. Interzonal flow β = ½ · FSA · s.
/// </summary>
/// <remarks>
/// M. Nicas, "Estimating exposure intensity in an imperfectly mixed room", American Industrial Hygiene Association Journal 57 (1996)
/// 542–550: half of the free surface lets air in while the other half lets it out; from memory, and printed so in open exposure-model
/// descriptions. P. Baldwin and A. Maynard, "A survey of wind speeds in indoor workplaces", Annals of Occupational Hygiene 42 (1998)
/// 303–313: mean background 0.3 m/s, 85 % of the readings below it. A closed bathroom is at the calm end; a spray gun stirs the air. No
/// default is offered.
/// </remarks>
/// <example><code>
/// NearField overTheTub = NearField.Box(Length.FromMeters(1.5), Length.FromMeters(0.75), Length.FromMeters(0.8), Speed.FromMetersPerSecond(0.1));
/// VolumeFlow exchange = overTheTub.InterzonalFlow;      // 850.5 m³/h
/// </code></example>
public sealed record NearField
{
    internal static readonly Source Exchanging = Source.FromMemory("Nicas (1996), AIHA Journal 57:542–550: β = ½ · free surface area · random air speed");

    private static readonly Source Shape = Source.Derived("surface and volume of the shape, without the side that lies on the fixture");

    private readonly double surface;
    private readonly double volume;
    private readonly double speed;
    private readonly Func<Trace?, Num>? surfaceOf;
    private readonly Func<Trace?, Num>? volumeOf;

    /// <summary>Describes a near field of any shape.</summary>
    /// <param name="freeSurface">The surface through which it exchanges air, more than 0 and at most 100 m².</param>
    /// <param name="volume">Its volume, more than 0 and at most 100 m³.</param>
    /// <param name="randomAirSpeed">The speed of the air at that surface, more than 0 and at most 5 m/s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public NearField(Area freeSurface, Volume volume, Speed randomAirSpeed)
    {
        surface = Guard.Within(freeSurface, Bounds.Positive(Measure.Area, 100));
        this.volume = Guard.Within(volume, Bounds.Positive(Measure.RoomVolume, 100));
        speed = Guard.Within(randomAirSpeed, Bounds.Positive(Measure.AirSpeed, 5));
    }

    private NearField(Func<Trace?, Num> surfaceOf, Func<Trace?, Num> volumeOf, Speed randomAirSpeed)
        : this(Area.FromSquareMeters(surfaceOf(null).Value), Volume.FromCubicMeters(volumeOf(null).Value), randomAirSpeed)
    {
        this.surfaceOf = surfaceOf;
        this.volumeOf = volumeOf;
    }

    /// <summary>The surface through which it exchanges air.</summary>
    public Area FreeSurface => Area.FromSquareMeters(surface);

    /// <summary>Its volume.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    /// <summary>The speed of the air at that surface.</summary>
    public Speed RandomAirSpeed => Speed.FromMetersPerSecond(speed);

    /// <summary>The flow between it and the rest of the room, each way: β = ½ · FSA · s.</summary>
    public VolumeFlow InterzonalFlow => VolumeFlow.FromCubicMetersPerSecond(Exchange().Value);

    /// <summary>A half sphere over a surface, open all over.</summary>
    /// <param name="radius">0.1 to 2 m; an arm's length is about 0.8 m.</param>
    /// <param name="randomAirSpeed">The speed of the air at its surface, more than 0 and at most 5 m/s.</param>
    /// <returns>Surface 2πr², volume ⅔πr³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static NearField Hemisphere(Length radius, Speed randomAirSpeed)
    {
        double r = Guard.Within(radius, Bounds.Between(0.1, 2, Measure.Distance));
        return new NearField(t => 2 * t.Pi() * R(t) * R(t), t => 2 * t.Pi() * R(t) * R(t) * R(t) / 3, randomAirSpeed);

        Num R(Trace? t) => t.Given("r_N", r, Measure.Distance);
    }

    /// <summary>A box over a fixture, open at the top and on four sides.</summary>
    /// <param name="length">0.1 to 5 m.</param>
    /// <param name="width">0.1 to 5 m.</param>
    /// <param name="height">0.1 to 3 m.</param>
    /// <param name="randomAirSpeed">The speed of the air at its surface, more than 0 and at most 5 m/s.</param>
    /// <returns>Surface L·W + 2 (L + W) H, volume L·W·H.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static NearField Box(Length length, Length width, Length height, Speed randomAirSpeed)
    {
        double l = Guard.Within(length, Bounds.Between(0.1, 5, Measure.Distance));
        double w = Guard.Within(width, Bounds.Between(0.1, 5, Measure.Distance));
        double h = Guard.Within(height, Bounds.Between(0.1, 3, Measure.Distance));
        return new NearField(t => (L(t) * W(t)) + (2 * (L(t) + W(t)) * H(t)), t => L(t) * W(t) * H(t), randomAirSpeed);

        Num L(Trace? t) => t.Given("L_N", l, Measure.Distance);
        Num W(Trace? t) => t.Given("W_N", w, Measure.Distance);
        Num H(Trace? t) => t.Given("H_N", h, Measure.Distance);
    }

    /// <summary>Whether surface, volume and speed are the same; the shape that they came from does not count.</summary>
    /// <param name="other">The other.</param>
    /// <returns><see langword="true"/> when they are.</returns>
    public bool Equals(NearField? other) => other is not null && surface == other.surface && volume == other.volume && speed == other.speed;

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((((surface.GetHashCode() * 31) + volume.GetHashCode()) * 31) + speed.GetHashCode());

    /// <summary>How the interzonal flow follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Near field", [.. Trace.When(surfaceOf is not null, Surface, Inside), Exchange]);

    /// <summary>Volume and interzonal flow.</summary>
    /// <returns>Text such as <c>1.0723 m³, 723.82 m³/h each way</c>.</returns>
    public override string ToString() => Measure.RoomVolume.Format(volume) + ", " + Measure.Airflow.Format(InterzonalFlow.CubicMetersPerSecond) + " each way";

    private Num Surface(Trace t) => t.Step("free surface", "FSA", Measure.Area, Shape, surfaceOf!(t));

    private Num Inside(Trace t) => t.Step("volume of the near field", "V_N", Measure.RoomVolume, Shape, volumeOf!(t));

    private Num Exchange(Trace? t = null) => t.Step("flow between near field and room", "β", Measure.Airflow, Exchanging,
        t.Given("FSA", surface, Measure.Area) * t.Given("s", speed, Measure.AirSpeed) / 2);
}
