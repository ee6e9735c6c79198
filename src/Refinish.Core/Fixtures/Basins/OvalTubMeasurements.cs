using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for an oval tub set into a level deck, with an apron along the front or none.</summary>
/// <remarks>
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by
/// <see cref="OvalTub"/>.
/// </remarks>
/// <example><code>
/// OvalTubMeasurements tape = new()
/// {
///     MouthLength = Length.FromInches(55), MouthWidth = Length.FromInches(25), MouthExponent = 2.6,
///     FloorLength = Length.FromInches(40), FloorWidth = Length.FromInches(17), FloorExponent = 2.4, Depth = Length.FromInches(17),
///     DeckLength = Length.FromInches(66), DeckWidth = Length.FromInches(36), ApronHeight = Length.FromInches(20),
///     DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
/// };
/// </code></example>
public sealed record OvalTubMeasurements
{
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<OvalTubMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(MouthLength), "length of the mouth", 0.3, 2.5),
        InputField.Tape(nameof(MouthWidth), "width of the mouth", 0.2, 2),
        InputField.Number(nameof(MouthExponent), "how square the mouth is, 2 for an ellipse", 2, 6),
        InputField.Tape(nameof(FloorLength), "length of the floor", 0.1, 2.5),
        InputField.Tape(nameof(FloorWidth), "width of the floor", 0.1, 2),
        InputField.Number(nameof(FloorExponent), "how square the floor is, 2 for an ellipse", 2, 6),
        InputField.Tape(nameof(Depth), "depth", 0.1, 0.8),
        InputField.Tape(nameof(DeckLength), "length of the deck", 0.3, 3),
        InputField.Tape(nameof(DeckWidth), "width of the deck", 0.2, 2.5),
        InputField.Tape(nameof(ApronHeight), "height of the apron", 0, 1),
        InputField.Tape(nameof(DrainDiameter), "diameter of the drain", 0, 0.15),
        InputField.Tape(nameof(OverflowDiameter), "diameter of the overflow", 0, 0.15));

    /// <summary>Measurements that are given one by one.</summary>
    public OvalTubMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public OvalTubMeasurements(InputValues readings) => Tape = Inputs.Whole(readings, nameof(readings));

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

    /// <summary>Length of the deck over all, 0.3 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DeckLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the deck over all, 0.2 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DeckWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of the front panel, 0 to 1 m; 0 when there is none or it is not coated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ApronHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the overflow plate, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    internal SuperellipseBasin Basin =>
        new(MouthLength.Meters / 2, MouthWidth.Meters / 2, MouthExponent, FloorLength.Meters / 2, FloorWidth.Meters / 2, FloorExponent,
        Depth.Meters);

    /// <summary>The mouth and the deck in one line, in metric units.</summary>
    /// <returns>Text such as <c>1397 mm × 635 mm × 431.8 mm in 1676.4 mm × 914.4 mm</c>.</returns>
    public override string ToString() =>
        $"{Shown(MouthLength)} × {Shown(MouthWidth)} × {Shown(Depth)} in {Shown(DeckLength)} × {Shown(DeckWidth)}";

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        AtMost(FloorLength.Meters, MouthLength.Meters, nameof(FloorLength), "MouthLength");
        AtMost(FloorWidth.Meters, MouthWidth.Meters, nameof(FloorWidth), "MouthWidth");
        AtMost(DrainDiameter.Meters, Math.Min(FloorLength.Meters, FloorWidth.Meters), nameof(DrainDiameter),
            "the floor's shorter side");
        AtMost(OverflowDiameter.Meters, Math.Min(Depth.Meters, FloorWidth.Meters), nameof(OverflowDiameter),
            "the wall above the floor");
        AtMost(MouthLength.Meters, DeckLength.Meters, nameof(MouthLength), "DeckLength");
        AtMost(MouthWidth.Meters, DeckWidth.Meters, nameof(MouthWidth), "DeckWidth");
    }
}
