using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>
/// What a tape measure gives for a freestanding tub with a rolled rim: the inside as of a recessed tub, the roll, the thickness of the
/// wall, the feet.
/// </summary>
/// <remarks>
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked
/// by <see cref="FreestandingTub"/>.
/// </remarks>
/// <example><code>
/// FreestandingTubMeasurements tape = new()
/// {
///     RimLength = Length.FromInches(55), RimWidth = Length.FromInches(25), RimCornerRadius = Length.FromInches(12.5),
///     FloorLength = Length.FromInches(40), FloorWidth = Length.FromInches(17), FloorCornerRadius = Length.FromInches(8.5),
///     Depth = Length.FromInches(17), HeadRun = Length.FromInches(7.5), FootRun = Length.FromInches(7.5), CoveRadius = Length.FromInches(3),
///     RollRadius = Length.FromInches(1.25), RollTurn = Angle.FromDegrees(270), WallThickness = Length.FromInches(0.5),
///     OutsideIsCoated = true, UndersideIsCoated = true, Feet = 4, FootPadDiameter = Length.FromInches(2),
///     DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
/// };
/// </code></example>
public sealed record FreestandingTubMeasurements
{
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<FreestandingTubMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(RimLength), "length of the mouth", 0.3, 2.5),
        InputField.Tape(nameof(RimWidth), "width of the mouth", 0.2, 1.5),
        InputField.Tape(nameof(RimCornerRadius), "corner radius of the mouth", 0, 0.75),
        InputField.Tape(nameof(FloorLength), "length of the floor", 0.1, 2.5),
        InputField.Tape(nameof(FloorWidth), "width of the floor", 0.1, 1.5),
        InputField.Tape(nameof(FloorCornerRadius), "corner radius of the floor", 0, 0.75),
        InputField.Tape(nameof(Depth), "depth", 0.1, 0.8),
        InputField.Tape(nameof(HeadRun), "run of the head wall", 0, 1.2),
        InputField.Tape(nameof(FootRun), "run of the foot wall", 0, 1.2),
        InputField.Tape(nameof(CoveRadius), "radius of the cove", 0, 0.3),
        InputField.Tape(nameof(RollRadius), "radius of the roll", 0.003, 0.1),
        InputField.Of(nameof(RollTurn), "how far the roll turns, from the mouth over the top and down the outside",
            Bounds.Between(Math.PI / 2, 3 * Math.PI / 2, Measure.Angle)),
        InputField.Tape(nameof(WallThickness), "thickness of the wall", 0.001, 0.1),
        InputField.Count(nameof(Feet), "how many feet it stands on", 0, 8),
        InputField.Tape(nameof(FootPadDiameter), "diameter of a foot's pad", 0, 0.3),
        InputField.Tape(nameof(DrainDiameter), "diameter of the drain", 0, 0.15),
        InputField.Tape(nameof(OverflowDiameter), "diameter of the overflow", 0, 0.15));

    /// <summary>Measurements that are given one by one.</summary>
    public FreestandingTubMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <param name="outsideIsCoated">Whether the outside is coated.</param>
    /// <param name="undersideIsCoated">Whether the underside is coated.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public FreestandingTubMeasurements(InputValues readings, bool outsideIsCoated, bool undersideIsCoated)
    {
        Tape = Inputs.Whole(readings, nameof(readings));
        OutsideIsCoated = outsideIsCoated;
        UndersideIsCoated = undersideIsCoated;
    }

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>Length of the mouth, inside the roll, 0.3 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the mouth, inside the roll, 0.2 to 1.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Corner radius of the mouth in plan, 0 to 0.75 m; half the width for a tub with round ends.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimCornerRadius { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the flat floor to where the walls begin, as if there were no cove, 0.1 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the flat floor to where the walls begin, as if there were no cove, 0.1 to 1.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Corner radius of the floor in plan, 0 to 0.75 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorCornerRadius { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Depth from the mouth straight down to the floor, 0.1 to 0.8 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Depth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How far the head runs out level from floor to mouth, 0 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length HeadRun { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How far the foot runs out level from floor to mouth, 0 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FootRun { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Radius of the rounding between floor and walls, 0 to 0.3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CoveRadius { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Radius of the rolled rim's tube, half of its thickness, 3 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RollRadius { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>
    /// How far the roll turns from the mouth over the top and down the outside, 90° to 270°; 180° for a half round, 270° for one that
    /// comes back under.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Angle RollTurn { get => Tape.Angle(); init => Tape = Tape.Set(value); }

    /// <summary>Thickness of the wall, by which the outside is larger than the inside, 1 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallThickness { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Whether the outside walls are coated.</summary>
    public required bool OutsideIsCoated { get; init; }

    /// <summary>Whether the bottom seen from below is coated too.</summary>
    public required bool UndersideIsCoated { get; init; }

    /// <summary>How many feet stand against the outside or the bottom, 0 to 8.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int Feet { get => Tape.Count(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the patch that a foot covers, 0 to 0.3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FootPadDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the overflow plate, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    internal RuledBasin Basin =>
        new(RimLength.Meters, RimWidth.Meters, RimCornerRadius.Meters, FloorLength.Meters, FloorWidth.Meters, FloorCornerRadius.Meters,
        Depth.Meters, HeadRun.Meters, FootRun.Meters, CoveRadius.Meters);

    /// <summary>The outside: everything larger by the wall, as deep as the inside, sharp below.</summary>
    internal RuledBasin Shell => new(
        RimLength.Meters + (2 * WallThickness.Meters), RimWidth.Meters + (2 * WallThickness.Meters),
            RimCornerRadius.Meters + WallThickness.Meters, FloorLength.Meters + (2 * WallThickness.Meters),
            FloorWidth.Meters + (2 * WallThickness.Meters), FloorCornerRadius.Meters + WallThickness.Meters, Depth.Meters, HeadRun.Meters,
            FootRun.Meters, 0);

    /// <summary>The mouth, the depth and the roll in one line, in metric units.</summary>
    /// <returns>Text such as <c>1397 mm × 635 mm × 431.8 mm inside, roll 31.75 mm</c>.</returns>
    public override string ToString() => $"{Shown(RimLength)} × {Shown(RimWidth)} × {Shown(Depth)} inside, roll {Shown(RollRadius)}";

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        Inside.CheckConsistency();
        AtMost(WallThickness.Meters, 2 * RollRadius.Meters, nameof(WallThickness), "the thickness of the roll");
        double bottom = Shell.FloorArea().Value;
        if (Feet * PlaneShapes.Disc(FootPadDiameter.Meters).Value > bottom)
        {
            Guard.Rule(false, nameof(FootPadDiameter), FootPadDiameter.Meters, Measure.Length,
                "so small that Feet of it cover no more than the bottom's " + Measure.Area.Format(bottom));
        }
    }

    // The same rules as for a recessed tub without deck and apron.
    private RecessedBathtubMeasurements Inside => new()
    {
        RimLength = RimLength, RimWidth = RimWidth, RimCornerRadius = RimCornerRadius, FloorLength = FloorLength, FloorWidth = FloorWidth, FloorCornerRadius = FloorCornerRadius,
        Depth = Depth, HeadRun = HeadRun, FootRun = FootRun, CoveRadius = CoveRadius, OverallLength = RimLength, OverallWidth = RimWidth, ApronHeight = Length.Zero,
        DrainDiameter = DrainDiameter, OverflowDiameter = OverflowDiameter, };
}
