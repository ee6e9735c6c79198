using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>
/// What a tape measure gives for a shower pan in an alcove: the floor, its own low walls with a ledge, and the curb along the front.
/// </summary>
/// <remarks>
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by
/// <see cref="ShowerPan"/>.
/// </remarks>
/// <example><code>
/// ShowerPanMeasurements tape = new()
/// {
///     FloorLength = Length.FromInches(33), FloorWidth = Length.FromInches(33), WallHeight = Length.FromInches(3), LedgeWidth = Length.FromInches(1.5),
///     CurbInsideHeight = Length.FromInches(3), CurbTopWidth = Length.FromInches(4.5), CurbOutsideHeight = Length.FromInches(5),
///     DrainDiameter = Length.FromInches(2),
/// };
/// </code></example>
public sealed record ShowerPanMeasurements
{
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<ShowerPanMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(FloorLength), "length of the floor", 0.3, 3),
        InputField.Tape(nameof(FloorWidth), "width of the floor", 0.3, 3),
        InputField.Tape(nameof(WallHeight), "height of the walls", 0, 0.5),
        InputField.Tape(nameof(LedgeWidth), "width of the ledge", 0, 0.3),
        InputField.Tape(nameof(CurbInsideHeight), "height of the curb inside", 0, 0.5),
        InputField.Tape(nameof(CurbTopWidth), "width of the curb", 0, 0.4),
        InputField.Tape(nameof(CurbOutsideHeight), "height of the curb outside", 0, 0.6),
        InputField.Number(nameof(TextureFactor), "developed over flat area of the floor", 1, 1.3, 1),
        InputField.Tape(nameof(DrainDiameter), "diameter of the drain", 0, 0.2),
        InputField.Tape(nameof(ThresholdWidth), "width of the threshold", 0, 0.4, 0));

    /// <summary>Measurements that are given one by one.</summary>
    public ShowerPanMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public ShowerPanMeasurements(InputValues readings) => Tape = Inputs.Whole(readings, nameof(readings));

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>Length of the floor along the curb, inside the walls, 0.3 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the floor from the curb to the back, inside the walls, 0.3 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of the pan's own upright walls at the back and both ends, 0 to 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the level ledge on those walls, the same at back and ends, 0 to 0.3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length LedgeWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of the curb above the floor, 0 to 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CurbInsideHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the curb's top, 0 to 0.4 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CurbTopWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of the curb above the floor of the room, 0 to 0.6 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CurbOutsideHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Developed over flat area of a textured floor, 1 to 1.3; 1 unless it is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double TextureFactor { get => Tape.Number(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the drain, 0 to 0.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of a level threshold strip on the floor of the room in front of the curb, 0 to 0.4 m; 0 unless it is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length ThresholdWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>The floor in one line, in metric units.</summary>
    /// <returns>Text such as <c>floor 838.2 mm × 838.2 mm</c>.</returns>
    public override string ToString() => $"floor {Shown(FloorLength)} × {Shown(FloorWidth)}";

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        double narrow = Math.Min(FloorLength.Meters, FloorWidth.Meters);
        if (DrainDiameter.Meters > narrow)
        {
            Guard.Rule(false, nameof(DrainDiameter), DrainDiameter.Meters, Measure.Length,
                "at most " + Measure.Length.Format(narrow) + ", the floor's shorter side");
        }
    }
}
