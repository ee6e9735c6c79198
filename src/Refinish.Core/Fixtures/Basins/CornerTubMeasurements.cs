using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a tub in the corner of a room: a deck of five sides with an oval mouth in it.</summary>
/// <remarks>
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by
/// <see cref="CornerTub"/>. The deck has its right angle in the corner of the room; its two returns stand square to the walls, and the
/// front joins their ends, straight or bowed.
/// </remarks>
/// <example><code>
/// CornerTubMeasurements tape = new()
/// {
///     MouthLength = Length.FromInches(48), MouthWidth = Length.FromInches(38), MouthExponent = 2.2,
///     FloorLength = Length.FromInches(34), FloorWidth = Length.FromInches(26), FloorExponent = 2.2, Depth = Length.FromInches(17),
///     LeftWall = Length.FromInches(60), RightWall = Length.FromInches(60), LeftReturn = Length.FromInches(30), RightReturn = Length.FromInches(30),
///     FrontHeight = Length.FromInches(20), DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
/// };
/// </code></example>
public sealed record CornerTubMeasurements
{
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<CornerTubMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(MouthLength), "length of the mouth", 0.3, 2.5),
        InputField.Tape(nameof(MouthWidth), "width of the mouth", 0.2, 2),
        InputField.Number(nameof(MouthExponent), "how square the mouth is, 2 for an ellipse", 2, 6),
        InputField.Tape(nameof(FloorLength), "length of the floor", 0.1, 2.5),
        InputField.Tape(nameof(FloorWidth), "width of the floor", 0.1, 2),
        InputField.Number(nameof(FloorExponent), "how square the floor is, 2 for an ellipse", 2, 6),
        InputField.Tape(nameof(Depth), "depth", 0.1, 0.8),
        InputField.Tape(nameof(LeftWall), "length along the left wall", 0.5, 3),
        InputField.Tape(nameof(RightWall), "length along the right wall", 0.5, 3),
        InputField.Tape(nameof(LeftReturn), "left return", 0, 3),
        InputField.Tape(nameof(RightReturn), "right return", 0, 3),
        InputField.Tape(nameof(FrontBow), "bow of the front", 0, 1, 0),
        InputField.Tape(nameof(FrontHeight), "height of the front", 0, 1),
        InputField.Tape(nameof(DrainDiameter), "diameter of the drain", 0, 0.15),
        InputField.Tape(nameof(OverflowDiameter), "diameter of the overflow", 0, 0.15));

    /// <summary>Measurements that are given one by one.</summary>
    public CornerTubMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public CornerTubMeasurements(InputValues readings) => Tape = Inputs.Whole(readings, nameof(readings));

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>Length of the mouth, 0.3 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MouthLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the mouth, 0.2 to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MouthWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How square the mouth is: 2 for an ellipse, more for fuller corners, up to 6.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double MouthExponent { get => Tape.Number(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the floor, 0.1 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the floor, 0.1 to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How square the floor is, 2 to 6.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double FloorExponent { get => Tape.Number(); init => Tape = Tape.Set(value); }

    /// <summary>Depth from the rim straight down to the floor, 0.1 to 0.8 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Depth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the deck along the left wall, 0.5 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length LeftWall { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the deck along the right wall, 0.5 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RightWall { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the side that stands square to the left wall, 0 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length LeftReturn { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the side that stands square to the right wall, 0 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RightReturn { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How far the front bows out beyond the straight line, at its middle, 0 to 1 m; 0 unless it is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length FrontBow { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of returns and front that show, 0 to 1 m; 0 when they are not coated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FrontHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the overflow plate, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    internal SuperellipseBasin Basin =>
        new(MouthLength.Meters / 2, MouthWidth.Meters / 2, MouthExponent, FloorLength.Meters / 2, FloorWidth.Meters / 2, FloorExponent,
        Depth.Meters);

    internal CornerPlan Plan => new(LeftWall.Meters, RightWall.Meters, LeftReturn.Meters, RightReturn.Meters, FrontBow.Meters);

    /// <summary>The walls and the mouth in one line, in metric units.</summary>
    /// <returns>Text such as <c>1219.2 mm × 965.2 mm × 431.8 mm in a corner of 1524 mm × 1524 mm</c>.</returns>
    public override string ToString() =>
        $"{Shown(MouthLength)} × {Shown(MouthWidth)} × {Shown(Depth)} in a corner of {Shown(LeftWall)} × {Shown(RightWall)}";

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        AtMost(FloorLength.Meters, MouthLength.Meters, nameof(FloorLength), "MouthLength");
        AtMost(FloorWidth.Meters, MouthWidth.Meters, nameof(FloorWidth), "MouthWidth");
        AtMost(DrainDiameter.Meters, Math.Min(FloorLength.Meters, FloorWidth.Meters), nameof(DrainDiameter),
            "the floor's shorter side");
        AtMost(OverflowDiameter.Meters, Math.Min(Depth.Meters, FloorWidth.Meters), nameof(OverflowDiameter),
            "the wall above the floor");

        // The left return stands square to the left wall, so it runs along the right one.
        AtMost(LeftReturn.Meters, RightWall.Meters, nameof(LeftReturn), "RightWall");
        AtMost(RightReturn.Meters, LeftWall.Meters, nameof(RightReturn), "LeftWall");
        AtMost(FrontBow.Meters, Plan.Chord().Value / 2, nameof(FrontBow), "half of the front's straight length, a half round");
        double deck = Plan.Deck().Value;
        double mouth = Basin.MouthArea().Value;
        if (mouth > deck && FrontBow.Meters == 0)
        {
            Guard.Rule(false, nameof(MouthLength), MouthLength.Meters, Measure.Length,
                "so short that the mouth (" + Measure.Area.Format(mouth) + ") fits the deck (" + Measure.Area.Format(deck) + ")");
        }
    }
}
