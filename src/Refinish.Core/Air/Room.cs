using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// The room in which is sprayed, as a box: length × width × height, with the pressure and temperature of its air and what infiltrates
/// by itself.
/// </summary>
/// <remarks>Measure to the finished surfaces with the door shut. The volume of furniture and fixtures is not deducted.</remarks>
/// <example><code>
/// Room bathroom = new() { Length = Length.FromFeet(8), Width = Length.FromFeet(5), Height = Length.FromFeet(8) };
/// Volume volume = bathroom.Volume;   // 9.06 m³ = 320 ft³
/// </code></example>
public sealed record Room
{
    private static readonly Source Box = Source.Derived("volume and floor of a box");

    /// <summary>What is measured of a room, as a table.</summary>
    public static RecordInputs<Room> Inputs { get; } = new(
        record => record.Values,
        (record, values) => record with { Values = values },
        InputField.Of(nameof(Length), "length of the room", Bounds.Between(0.5, 20, Measure.Distance)),
        InputField.Of(nameof(Width), "width of the room", Bounds.Between(0.5, 20, Measure.Distance)),
        InputField.Of(nameof(Height), "floor to ceiling", Bounds.Between(1.5, 10, Measure.Distance)),
        InputField.Of(
            nameof(AirPressure), "pressure of the air", Bounds.Between(20e3, 110e3, Measure.Pressure), AirKernel.StandardPressure),
        InputField.Of(nameof(Infiltration), "air that comes in by itself", AirKernel.Airflows, 0),
        InputField.Of(nameof(AirTemperature), "temperature of the air", Bounds.Between(233.15, 333.15, Measure.Temperature)).OrUnknown());

    /// <summary>Values that are given one by one.</summary>
    public Room()
    {
    }

    /// <summary>Values by name.</summary>
    /// <param name="values">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <exception cref="ArgumentException">The argument is missing, the values are of other inputs, or one is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The volume is outside 2 to 500 m³.</exception>
    [SetsRequiredMembers]
    public Room(InputValues values) => Values = Inputs.Whole(values, nameof(values));

    private InputValues Values
    {
        get;
        init
        {
            field = value;

            // Not a number, and no fault, until all three are there.
            double floor = value.Number(nameof(Length)) * value.Number(nameof(Width));
            double height = value.Number(nameof(Height));
            if (floor * height is < 2 or > 500)
            {
                Guard.Rule(false, nameof(Height), height, Measure.Distance,
                    "with Length and Width a room of at least 2 m³ and at most 500 m³, not " + Measure.RoomVolume.Format(floor * height));
            }
        }
    }
    = Inputs.Empty;

    /// <summary>The room's length, 0.5 to 20 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or the volume is outside 2 to 500 m³.</exception>
    public required Length Length { get => Values.Length(); init => Values = Values.Set(value); }

    /// <summary>The room's width, 0.5 to 20 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or the volume is outside 2 to 500 m³.</exception>
    public required Length Width { get => Values.Length(); init => Values = Values.Set(value); }

    /// <summary>The room's height, floor to ceiling, 1.5 to 10 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or the volume is outside 2 to 500 m³.</exception>
    public required Length Height { get => Values.Length(); init => Values = Values.Set(value); }

    /// <summary>
    /// Pressure of the air in the room, 20 to 110 kPa; 101.325 kPa unless given. High up the same mass of vapour is a larger part
    /// of the air (about a fifth more at 1600 m), so give the real pressure there.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure AirPressure { get => Values.Pressure(); init => Values = Values.Set(value); }

    /// <summary>
    /// Air that comes in by itself through gaps and openings while no fan runs, 0 to 10 m³/s, and no flow between 0 and
    /// 0.0036 m³/h; none unless given. It counts as fresh air beside the fan's.
    /// </summary>
    /// <remarks>
    /// Give it only when it is measured, or for a room without a fan. A running fan draws its make-up air through the same gaps, and
    /// that air is in its flow already.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public VolumeFlow Infiltration { get => Values.VolumeFlow(); init => Values = Values.Set(value); }

    /// <summary>
    /// Temperature of the air, −40 to 60 °C; <see langword="null"/> when not known, and then nothing can be said about saturation.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature? AirTemperature { get => Values.MaybeTemperature(); init => Values = Values.SetOrClear(value); }

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
        Measure.Distance.Format(Length.Meters) + " × " + Measure.Distance.Format(Width.Meters) + " × "
        + Measure.Distance.Format(Height.Meters) + ", " + Measure.RoomVolume.Format(Volume.CubicMeters);

    private Num Floor(Trace? t = null) => t.Step("floor area", "A_floor", Measure.Area, Box, Section(t));

    private Num Whole(Trace? t = null) =>
        t.Step("volume of the room", "V", Measure.RoomVolume, Box, Section(t) * t.Given("H", Height.Meters, Measure.Distance));

    private Num Section(Trace? t) => t.Given("L", Length.Meters, Measure.Distance) * t.Given("W", Width.Meters, Measure.Distance);
}
