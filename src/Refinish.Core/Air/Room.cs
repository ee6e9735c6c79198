using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>The room in which is sprayed, as a box: length × width × height, with the pressure and temperature of its air and what infiltrates by itself.</summary>
/// <remarks>Measure to the finished surfaces with the door shut. The volume of furniture and fixtures is not deducted.</remarks>
/// <example><code>
/// Room bathroom = new(Length.FromFeet(8), Length.FromFeet(5), Length.FromFeet(8));
/// Volume volume = bathroom.Volume;   // 9.06 m³ = 320 ft³
/// </code></example>
public sealed record Room
{
    private static readonly Source Box = Source.Derived("volume and floor of a box");

    private readonly double length;
    private readonly double width;
    private readonly double height;
    private readonly double pressure = AirKernel.StandardPressure;
    private readonly double infiltration;
    private readonly double? temperature;

    /// <summary>Describes a room.</summary>
    /// <param name="length">0.5 to 20 m.</param>
    /// <param name="width">0.5 to 20 m.</param>
    /// <param name="height">Floor to ceiling, 1.5 to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the volume is outside 2 to 500 m³.</exception>
    public Room(Length length, Length width, Length height)
    {
        this.length = Guard.Within(length, Bounds.Between(0.5, 20, Measure.Distance));
        this.width = Guard.Within(width, Bounds.Between(0.5, 20, Measure.Distance));
        this.height = Guard.Within(height, Bounds.Between(1.5, 10, Measure.Distance));
        double volume = Whole().Value;
        Guard.Rule(volume is >= 2 and <= 500, nameof(Volume), volume, Measure.RoomVolume, "at least 2 m³ and at most 500 m³");
    }

    /// <summary>The room's length.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>The room's width.</summary>
    public Length Width => Length.FromMeters(width);

    /// <summary>The room's height.</summary>
    public Length Height => Length.FromMeters(height);

    /// <summary>
    /// Pressure of the air in the room, 20 to 110 kPa; 101.325 kPa unless given. High up the same mass of vapour is a larger part
    /// of the air (about a fifth more at 1600 m), so give the real pressure there.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure AirPressure
    {
        get => Pressure.FromPascals(pressure);
        init => pressure = Guard.Within(value, Bounds.Between(20e3, 110e3, Measure.Pressure));
    }

    /// <summary>
    /// Air that comes in by itself through gaps and openings while no fan runs, 0 to 10 m³/s; none unless given. It counts as fresh air beside the fan's.
    /// </summary>
    /// <remarks>
    /// Give it only when it is measured, or for a room without a fan. A running fan draws its make-up air through the same gaps, and that air is in its flow already.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public VolumeFlow Infiltration
    {
        get => VolumeFlow.FromCubicMetersPerSecond(infiltration);
        init => infiltration = Guard.Within(value, Bounds.NotNegative(Measure.Airflow, 10));
    }

    /// <summary>
    /// Temperature of the air, −40 to 60 °C; <see langword="null"/> when not known, and then nothing can be said about saturation.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature? AirTemperature
    {
        get => temperature is double kelvins ? Temperature.FromKelvins(kelvins) : null;
        init => temperature = value is Temperature given
            ? Guard.Within(given, Bounds.Between(233.15, 333.15, Measure.Temperature), nameof(AirTemperature))
            : null;
    }

    /// <summary>The volume of the room.</summary>
    public Volume Volume => Volume.FromCubicMeters(Whole().Value);

    /// <summary>The area of the floor.</summary>
    public Area FloorArea => Area.FromSquareMeters(Floor().Value);

    /// <summary>How the volume and the floor area follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Room", Floor, Whole);

    /// <summary>The dimensions and the volume.</summary>
    /// <returns>Text such as <c>2.4384 m × 1.524 m × 2.4384 m, 9.0614 m³</c>.</returns>
    public override string ToString() =>
        Measure.Distance.Format(length) + " × " + Measure.Distance.Format(width) + " × " + Measure.Distance.Format(height)
        + ", " + Measure.RoomVolume.Format(Volume.CubicMeters);

    private Num Floor(Trace? t = null) => t.Step("floor area", "A_floor", Measure.Area, Box, Section(t));

    private Num Whole(Trace? t = null) =>
        t.Step("volume of the room", "V", Measure.RoomVolume, Box, Section(t) * t.Given("H", height, Measure.Distance));

    private Num Section(Trace? t) => t.Given("L", length, Measure.Distance) * t.Given("W", width, Measure.Distance);
}
