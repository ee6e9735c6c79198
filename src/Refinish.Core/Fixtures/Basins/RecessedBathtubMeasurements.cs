using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>
/// What a tape measure gives for a recessed bathtub: the mouth, the flat floor, how the two lie to each other, the deck and the apron.
/// </summary>
/// <remarks>
/// All lengths are level or upright, none along a slope. Head is the backrest, foot the drain end; the sides slope alike unless FloorShift
/// is set. The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is
/// checked by <see cref="RecessedBathtub"/>.
/// </remarks>
/// <example><code>
/// RecessedBathtubMeasurements tape = new()
/// {
///     RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
///     FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
///     Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2), CoveRadius = Length.FromInches(2.5),
///     OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
///     DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
/// };
/// </code></example>
public sealed record RecessedBathtubMeasurements
{
    /// <summary>
    /// How far the two runs may miss the difference of rim and floor length: four readings, each rounded by up to half a sixteenth of an
    /// inch.
    /// </summary>
    private const double TapeDivision = 4 * 0.0254 / 32;

    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<RecessedBathtubMeasurements> Inputs { get; } = new(
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
        InputField.Tape(nameof(OverallLength), "length over all", 0.3, 3),
        InputField.Tape(nameof(OverallWidth), "width over all", 0.2, 2),
        InputField.Tape(nameof(ApronHeight), "height of the apron", 0, 1),
        InputField.Number(nameof(ApronProfileFactor), "developed over flat area of the apron", 1, 1.3, 1),
        InputField.Tape(nameof(DrainDiameter), "diameter of the drain", 0, 0.15),
        InputField.Tape(nameof(OverflowDiameter), "diameter of the overflow", 0, 0.15),
        InputField.Tape(nameof(FloorShift), "shift of the floor", -0.3, 0.3, 0),
        InputField.Tape(nameof(TilingFlangeHeight), "height of the tiling flange", 0, 0.1, 0));

    /// <summary>Measurements that are given one by one.</summary>
    public RecessedBathtubMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public RecessedBathtubMeasurements(InputValues readings) => Tape = Inputs.Whole(readings, nameof(readings));

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>Length of the mouth, inside the rim, 0.3 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the mouth, inside the rim, 0.2 to 1.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Corner radius of the mouth in plan, 0 to 0.75 m.</summary>
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

    /// <summary>Depth from the rim straight down to the floor, 0.1 to 0.8 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Depth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How far the backrest runs out level from floor to rim, 0 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length HeadRun { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How far the drain end runs out level from floor to rim, 0 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FootRun { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Radius of the rounding between floor and walls, 0 to 0.3 m; 0 for a sharp line.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CoveRadius { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the whole tub over the deck, 0.3 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverallLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the whole tub over the deck, 0.2 to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverallWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of the front panel, 0 to 1 m; 0 when there is none or it is not coated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ApronHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Developed over flat area of the front panel, 1 to 1.3; 1 unless it is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double ApronProfileFactor { get => Tape.Number(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the overflow plate, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>
    /// How far the middle of the floor lies off the middle of the mouth towards the apron (positive) or the wall (negative), which makes
    /// one side wall steeper; −0.3 to 0.3 m, 0 unless it is set.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length FloorShift { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>
    /// Height of the upright tiling flange at both ends and the back, where it shows and is coated, 0 to 0.1 m; 0 unless it is set.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length TilingFlangeHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    internal RuledBasin Basin =>
        new(RimLength.Meters, RimWidth.Meters, RimCornerRadius.Meters, FloorLength.Meters, FloorWidth.Meters, FloorCornerRadius.Meters,
        Depth.Meters, HeadRun.Meters, FootRun.Meters, CoveRadius.Meters, FloorShift.Meters);

    /// <summary>The same tub with its overall size from the widths of the deck, side by side with the mouth.</summary>
    /// <param name="head">Deck at the backrest, 0 or more.</param>
    /// <param name="foot">Deck at the drain end, 0 or more.</param>
    /// <param name="apron">Deck at the apron, 0 or more.</param>
    /// <param name="wall">Deck at the long wall, 0 or more.</param>
    /// <returns>Measurements whose overall length and width are mouth and deck together.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A width is negative, or mouth and deck together are outside the range of the overall size.
    /// </exception>
    public RecessedBathtubMeasurements WithDeck(Length head, Length foot, Length apron, Length wall)
    {
        Bounds width = Bounds.NotNegative(Measure.Length, 1);
        double length = RimLength.Meters + Guard.Within(head, width) + Guard.Within(foot, width);
        double across = RimWidth.Meters + Guard.Within(apron, width) + Guard.Within(wall, width);
        return this with { OverallLength = Length.FromMeters(length), OverallWidth = Length.FromMeters(across) };
    }

    /// <summary>The mouth and the overall size in one line, in metric units.</summary>
    /// <returns>Text such as <c>1346.2 mm × 596.9 mm × 336.55 mm inside 1524 mm × 762 mm</c>.</returns>
    public override string ToString() =>
        $"{Shown(RimLength)} × {Shown(RimWidth)} × {Shown(Depth)} inside {Shown(OverallLength)} × {Shown(OverallWidth)}";

    /// <summary>
    /// Rules between two lengths; each refusal names the one that cannot be. Nothing is put into words while all is well.
    /// </summary>
    internal void CheckConsistency()
    {
        AtMost(FloorLength.Meters, RimLength.Meters, nameof(FloorLength), "RimLength");
        AtMost(FloorWidth.Meters, RimWidth.Meters, nameof(FloorWidth), "RimWidth");
        AtMost(RimCornerRadius.Meters, HalfOf(Math.Min(RimLength.Meters, RimWidth.Meters)), nameof(RimCornerRadius),
            "half of the rim's shorter side");
        AtMost(FloorCornerRadius.Meters, HalfOf(Math.Min(FloorLength.Meters, FloorWidth.Meters)), nameof(FloorCornerRadius),
            "half of the floor's shorter side");

        double runs = HeadRun.Meters + FootRun.Meters;
        double difference = RimLength.Meters - FloorLength.Meters;
        if (Math.Abs(runs - difference) > TapeDivision)
        {
            Guard.Rule(
                false,
                nameof(HeadRun),
                HeadRun.Meters,
                Measure.Length,
                "HeadRun + FootRun, here " + Measure.Length.FormatBoth(runs, 5) + ", as long as RimLength − FloorLength, here "
                    + Measure.Length.FormatBoth(difference, 5) + ", within " + Measure.Length.FormatBoth(TapeDivision)
                    + ", the rounding of four readings; measure one of the four again");
        }

        // The corner of the floor stays inside the corner of the rim: n(θ) ≥ 0, solved for r_t.
        double end = Math.Min(HeadRun.Meters, FootRun.Meters);
        double side = Basin.SideRun().Value - Math.Abs(FloorShift.Meters);
        if (side < 0)
        {
            Guard.Rule(false, nameof(FloorShift), FloorShift.Meters, Measure.Length,
                "at most " + Measure.Length.Format(Basin.SideRun().Value) + " either way, half of RimWidth − FloorWidth");
        }

        AtMost(RimCornerRadius.Meters,
            FloorCornerRadius.Meters + end + side + Math.Sqrt(2 * end * side) + PlaneShapes.LastDigits, nameof(RimCornerRadius),
            "what keeps the floor's corner inside the rim's");

        AtMost(CoveRadius.Meters, Depth.Meters, nameof(CoveRadius), "Depth");
        double reach = Basin.CoveReach;
        AtMost(CoveRadius.Meters, CoveRadius.Meters == 0
            ? 0 : FloorCornerRadius.Meters * (CoveRadius.Meters / reach) * (1 + PlaneShapes.LastDigits), nameof(CoveRadius),
            "FloorCornerRadius over the tangent of half the steepest wall's slope, else the cove cannot turn the floor's corner");
        AtMost(RimLength.Meters, OverallLength.Meters, nameof(RimLength), "OverallLength");
        AtMost(RimWidth.Meters, OverallWidth.Meters, nameof(RimWidth), "OverallWidth");
        AtMost(DrainDiameter.Meters, Math.Min(FloorLength.Meters, FloorWidth.Meters) - (2 * reach), nameof(DrainDiameter),
            "the flat of the floor between the coves");
        AtMost(OverflowDiameter.Meters, Math.Min(Depth.Meters - CoveRadius.Meters, FloorWidth.Meters), nameof(OverflowDiameter),
            "the foot wall above the cove");
    }

    private static double HalfOf(double side) => side / 2 * (1 + PlaneShapes.LastDigits);
}
