using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a recessed bathtub: the mouth, the flat floor, how the two lie to each other, the deck and the apron.</summary>
/// <remarks>
/// All lengths are level or upright, none along a slope. Head is the backrest, foot the drain end; the sides slope alike unless FloorShift is set.
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by <see cref="RecessedBathtub"/>.
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
    /// <summary>How far the two runs may miss the difference of rim and floor length: four readings, each rounded by up to half a sixteenth of an inch.</summary>
    private const double TapeDivision = 4 * 0.0254 / 32;

    private readonly double rimLength;
    private readonly double rimWidth;
    private readonly double rimCornerRadius;
    private readonly double floorLength;
    private readonly double floorWidth;
    private readonly double floorCornerRadius;
    private readonly double depth;
    private readonly double headRun;
    private readonly double footRun;
    private readonly double coveRadius;
    private readonly double overallLength;
    private readonly double overallWidth;
    private readonly double apronHeight;
    private readonly double apronProfileFactor = 1;
    private readonly double drainDiameter;
    private readonly double overflowDiameter;
    private readonly double floorShift;
    private readonly double tilingFlangeHeight;

    /// <summary>Length of the mouth, inside the rim, 0.3 to 2.5 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimLength
    {
        get => Length.FromMeters(rimLength);
        init => rimLength = Guard.Within(value, Bounds.Between(0.3, 2.5, Measure.Length), nameof(RimLength));
    }

    /// <summary>Width of the mouth, inside the rim, 0.2 to 1.5 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimWidth
    {
        get => Length.FromMeters(rimWidth);
        init => rimWidth = Guard.Within(value, Bounds.Between(0.2, 1.5, Measure.Length), nameof(RimWidth));
    }

    /// <summary>Corner radius of the mouth in plan, 0 to 0.75 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimCornerRadius
    {
        get => Length.FromMeters(rimCornerRadius);
        init => rimCornerRadius = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.75), nameof(RimCornerRadius));
    }

    /// <summary>Length of the flat floor to where the walls begin, as if there were no cove, 0.1 to 2.5 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorLength
    {
        get => Length.FromMeters(floorLength);
        init => floorLength = Guard.Within(value, Bounds.Between(0.1, 2.5, Measure.Length), nameof(FloorLength));
    }

    /// <summary>Width of the flat floor to where the walls begin, as if there were no cove, 0.1 to 1.5 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorWidth
    {
        get => Length.FromMeters(floorWidth);
        init => floorWidth = Guard.Within(value, Bounds.Between(0.1, 1.5, Measure.Length), nameof(FloorWidth));
    }

    /// <summary>Corner radius of the floor in plan, 0 to 0.75 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorCornerRadius
    {
        get => Length.FromMeters(floorCornerRadius);
        init => floorCornerRadius = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.75), nameof(FloorCornerRadius));
    }

    /// <summary>Depth from the rim straight down to the floor, 0.1 to 0.8 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Depth
    {
        get => Length.FromMeters(depth);
        init => depth = Guard.Within(value, Bounds.Between(0.1, 0.8, Measure.Length), nameof(Depth));
    }

    /// <summary>How far the backrest runs out level from floor to rim, 0 to 1.2 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length HeadRun
    {
        get => Length.FromMeters(headRun);
        init => headRun = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1.2), nameof(HeadRun));
    }

    /// <summary>How far the drain end runs out level from floor to rim, 0 to 1.2 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FootRun
    {
        get => Length.FromMeters(footRun);
        init => footRun = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1.2), nameof(FootRun));
    }

    /// <summary>Radius of the rounding between floor and walls, 0 to 0.3 m; 0 for a sharp line.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CoveRadius
    {
        get => Length.FromMeters(coveRadius);
        init => coveRadius = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.3), nameof(CoveRadius));
    }

    /// <summary>Length of the whole tub over the deck, 0.3 to 3 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverallLength
    {
        get => Length.FromMeters(overallLength);
        init => overallLength = Guard.Within(value, Bounds.Between(0.3, 3, Measure.Length), nameof(OverallLength));
    }

    /// <summary>Width of the whole tub over the deck, 0.2 to 2 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverallWidth
    {
        get => Length.FromMeters(overallWidth);
        init => overallWidth = Guard.Within(value, Bounds.Between(0.2, 2, Measure.Length), nameof(OverallWidth));
    }

    /// <summary>Height of the front panel, 0 to 1 m; 0 when there is none or it is not coated.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ApronHeight
    {
        get => Length.FromMeters(apronHeight);
        init => apronHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1), nameof(ApronHeight));
    }

    /// <summary>Developed over flat area of the front panel, 1 to 1.3; 1 unless it is set.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public double ApronProfileFactor
    {
        get => apronProfileFactor;
        init => apronProfileFactor = Guard.Within(value, Bounds.Between(1, 1.3, Measure.Number), nameof(ApronProfileFactor));
    }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter
    {
        get => Length.FromMeters(drainDiameter);
        init => drainDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.15), nameof(DrainDiameter));
    }

    /// <summary>Diameter of the overflow plate, 0 to 0.15 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter
    {
        get => Length.FromMeters(overflowDiameter);
        init => overflowDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.15), nameof(OverflowDiameter));
    }

    /// <summary>How far the middle of the floor lies off the middle of the mouth towards the apron (positive) or the wall (negative), which makes one side wall steeper; −0.3 to 0.3 m, 0 unless it is set.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Length FloorShift
    {
        get => Length.FromMeters(floorShift);
        init => floorShift = Guard.Within(value, Bounds.Between(-0.3, 0.3, Measure.Length), nameof(FloorShift));
    }

    /// <summary>Height of the upright tiling flange at both ends and the back, where it shows and is coated, 0 to 0.1 m; 0 unless it is set.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Length TilingFlangeHeight
    {
        get => Length.FromMeters(tilingFlangeHeight);
        init => tilingFlangeHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.1), nameof(TilingFlangeHeight));
    }

    internal RuledBasin Basin => new(rimLength, rimWidth, rimCornerRadius, floorLength, floorWidth, floorCornerRadius, depth, headRun, footRun, coveRadius, floorShift);

    /// <summary>The same tub with its overall size from the widths of the deck, side by side with the mouth.</summary>
    /// <param name="head">Deck at the backrest, 0 or more.</param>
    /// <param name="foot">Deck at the drain end, 0 or more.</param>
    /// <param name="apron">Deck at the apron, 0 or more.</param>
    /// <param name="wall">Deck at the long wall, 0 or more.</param>
    /// <returns>Measurements whose overall length and width are mouth and deck together.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">A width is negative, or mouth and deck together are outside the range of the overall size.</exception>
    public RecessedBathtubMeasurements WithDeck(Length head, Length foot, Length apron, Length wall)
    {
        Bounds width = Bounds.NotNegative(Measure.Length, 1);
        double length = rimLength + Guard.Within(head, width, nameof(head)) + Guard.Within(foot, width, nameof(foot));
        double across = rimWidth + Guard.Within(apron, width, nameof(apron)) + Guard.Within(wall, width, nameof(wall));
        return this with { OverallLength = Length.FromMeters(length), OverallWidth = Length.FromMeters(across) };
    }

    /// <summary>The mouth and the overall size in one line, in metric units.</summary>
    /// <returns>Text such as <c>1346.2 mm × 596.9 mm × 336.55 mm inside 1524 mm × 762 mm</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} × {1} × {2} inside {3} × {4}",
        Measure.Length.Format(rimLength),
        Measure.Length.Format(rimWidth),
        Measure.Length.Format(depth),
        Measure.Length.Format(overallLength),
        Measure.Length.Format(overallWidth));

    /// <summary>Rules between two lengths; each refusal names the one that cannot be. Nothing is put into words while all is well.</summary>
    internal void CheckConsistency()
    {
        TapeRules.AtMost(floorLength, rimLength, nameof(FloorLength), "RimLength");
        TapeRules.AtMost(floorWidth, rimWidth, nameof(FloorWidth), "RimWidth");
        TapeRules.AtMost(rimCornerRadius, HalfOf(Math.Min(rimLength, rimWidth)), nameof(RimCornerRadius), "half of the rim's shorter side");
        TapeRules.AtMost(floorCornerRadius, HalfOf(Math.Min(floorLength, floorWidth)), nameof(FloorCornerRadius), "half of the floor's shorter side");

        double runs = headRun + footRun;
        double difference = rimLength - floorLength;
        if (Math.Abs(runs - difference) > TapeDivision)
        {
            Guard.Rule(
                false,
                nameof(HeadRun),
                headRun,
                Measure.Length,
                "HeadRun + FootRun, here " + Measure.Length.FormatBoth(runs, 5) + ", as long as RimLength − FloorLength, here " + Measure.Length.FormatBoth(difference, 5) + ", within " + Measure.Length.FormatBoth(TapeDivision) + ", the rounding of four readings; measure one of the four again");
        }

        // The corner of the floor stays inside the corner of the rim: n(θ) ≥ 0, solved for r_t.
        double end = Math.Min(headRun, footRun);
        double side = Basin.SideRun().Value - Math.Abs(floorShift);
        if (side < 0)
        {
            Guard.Rule(false, nameof(FloorShift), floorShift, Measure.Length, "at most " + Measure.Length.Format(Basin.SideRun().Value) + " either way, half of RimWidth − FloorWidth");
        }

        TapeRules.AtMost(rimCornerRadius, floorCornerRadius + end + side + Math.Sqrt(2 * end * side) + PlaneShapes.LastDigits, nameof(RimCornerRadius), "what keeps the floor's corner inside the rim's");

        TapeRules.AtMost(coveRadius, depth, nameof(CoveRadius), "Depth");
        double reach = Basin.CoveReach;
        TapeRules.AtMost(coveRadius, coveRadius == 0 ? 0 : floorCornerRadius * (coveRadius / reach) * (1 + PlaneShapes.LastDigits), nameof(CoveRadius), "FloorCornerRadius over the tangent of half the steepest wall's slope, else the cove cannot turn the floor's corner");
        TapeRules.AtMost(rimLength, overallLength, nameof(RimLength), "OverallLength");
        TapeRules.AtMost(rimWidth, overallWidth, nameof(RimWidth), "OverallWidth");
        TapeRules.AtMost(drainDiameter, Math.Min(floorLength, floorWidth) - (2 * reach), nameof(DrainDiameter), "the flat of the floor between the coves");
        TapeRules.AtMost(overflowDiameter, Math.Min(depth - coveRadius, floorWidth), nameof(OverflowDiameter), "the foot wall above the cove");
    }

    private static double HalfOf(double side) => side / 2 * (1 + PlaneShapes.LastDigits);
}
