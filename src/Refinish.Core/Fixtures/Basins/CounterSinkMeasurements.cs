using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a sink on, in or under a counter.</summary>
/// <remarks>
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by
/// <see cref="CounterSink"/>.
/// </remarks>
/// <example><code>
/// CounterSinkMeasurements tape = new()
/// {
///     Mounting = SinkMounting.Vessel, Shape = BowlShape.SphericalCap,
///     MouthLength = Length.FromInches(16), MouthWidth = Length.FromInches(16), BowlDepth = Length.FromInches(5.5),
///     WallThickness = Length.FromInches(0.5), BaseDiameter = Length.FromInches(3),
///     DrainDiameter = Length.FromInches(1.75), OverflowDiameter = Length.Zero,
/// };
/// </code></example>
public sealed record CounterSinkMeasurements
{
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<CounterSinkMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(MouthLength), "length of the mouth", 0.1, 1.2),
        InputField.Tape(nameof(MouthWidth), "width of the mouth", 0.1, 1),
        InputField.Tape(nameof(BowlDepth), "depth of the bowl", 0.03, 0.5),
        InputField.Tape(nameof(WallThickness), "thickness of the wall", 0, 0.1, 0),
        InputField.Tape(nameof(BaseDiameter), "diameter of the base", 0, 0.5, 0),
        InputField.Tape(nameof(DrainDiameter), "diameter of the drain", 0, 0.15),
        InputField.Tape(nameof(OverflowDiameter), "diameter of the overflow", 0, 0.1));

    /// <summary>Measurements that are given one by one.</summary>
    public CounterSinkMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <param name="mounting">How it sits at the counter.</param>
    /// <param name="shape">The shape of the bowl.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public CounterSinkMeasurements(InputValues readings, SinkMounting mounting, BowlShape shape)
    {
        Tape = Inputs.Whole(readings, nameof(readings));
        Mounting = mounting;
        Shape = shape;
    }

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>How it sits at the counter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required SinkMounting Mounting { get; init => field = Guard.Defined(value); }

    /// <summary>The shape of the bowl.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required BowlShape Shape { get; init => field = Guard.Defined(value); }

    /// <summary>Length of the bowl's mouth, 0.1 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MouthLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the bowl's mouth, 0.1 to 1 m; the length again for a spherical cap.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MouthWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Depth of the bowl at its lowest point, 0.03 to 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BowlDepth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>The rim seen from above, over all; needed for a drop-in sink, not used otherwise.</summary>
    public PlanOutline? Outline { get; init; }

    /// <summary>Thickness of a vessel's wall, which makes its level rim and its outside, 0 to 0.1 m; 0 for the other mountings.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length WallThickness { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the patch a vessel stands on, 0 to 0.5 m; 0 for the other mountings.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length BaseDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the overflow, 0 to 0.1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>The mounting and the bowl in one line, in metric units.</summary>
    /// <returns>Text such as <c>Vessel, bowl 406.4 mm × 406.4 mm × 139.7 mm</c>.</returns>
    public override string ToString() => $"{Mounting}, bowl {Shown(MouthLength)} × {Shown(MouthWidth)} × {Shown(BowlDepth)}";

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        double narrow = Math.Min(MouthLength.Meters, MouthWidth.Meters);
        AtMost(DrainDiameter.Meters, narrow / 2, nameof(DrainDiameter), "half of the bowl's narrower side");
        AtMost(OverflowDiameter.Meters, Math.Min(narrow / 2, BowlDepth.Meters), nameof(OverflowDiameter),
            "half of the bowl's narrower side and the bowl's depth");
        if (Shape == BowlShape.SphericalCap)
        {
            Guard.Rule(Math.Abs(MouthWidth.Meters - MouthLength.Meters) <= PlaneShapes.LastDigits, nameof(MouthWidth), MouthWidth.Meters,
                Measure.Length, "MouthLength (" + Measure.Length.Format(MouthLength.Meters) + ") for a spherical cap");
            AtMost(BowlDepth.Meters, MouthLength.Meters / 2 * (1 + PlaneShapes.LastDigits), nameof(BowlDepth),
                "half of the mouth; a deeper cap would overhang");
        }

        bool vessel = Mounting == SinkMounting.Vessel;
        AtMost(WallThickness.Meters, vessel ? 0.1 : 0, nameof(WallThickness), "0 unless it is a vessel");
        AtMost(BaseDiameter.Meters, vessel ? narrow : 0, nameof(BaseDiameter), "the mouth's narrower side for a vessel, 0 otherwise");
        if (Mounting == SinkMounting.DropIn)
        {
            PlanOutline rim = Guard.NotNull(Outline);
            AtMost(MouthLength.Meters, rim.Length.Meters, nameof(MouthLength), "the outline's length");
            AtMost(MouthWidth.Meters, rim.Width.Meters, nameof(MouthWidth), "the outline's width");
        }
    }
}
