using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a freestanding tub with a rolled rim: the inside as of a recessed tub, the roll, the thickness of the wall, the feet.</summary>
/// <remarks>The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by <see cref="FreestandingTub"/>.</remarks>
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
    private readonly double rollRadius;
    private readonly double rollTurn;
    private readonly double wallThickness;
    private readonly double footPadDiameter;
    private readonly double drainDiameter;
    private readonly double overflowDiameter;

    /// <summary>Length of the mouth, inside the roll, 0.3 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimLength
    {
        get => Length.FromMeters(rimLength);
        init => rimLength = Guard.Within(value, Bounds.Between(0.3, 2.5, Measure.Length), nameof(RimLength));
    }

    /// <summary>Width of the mouth, inside the roll, 0.2 to 1.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimWidth
    {
        get => Length.FromMeters(rimWidth);
        init => rimWidth = Guard.Within(value, Bounds.Between(0.2, 1.5, Measure.Length), nameof(RimWidth));
    }

    /// <summary>Corner radius of the mouth in plan, 0 to 0.75 m; half the width for a tub with round ends.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RimCornerRadius
    {
        get => Length.FromMeters(rimCornerRadius);
        init => rimCornerRadius = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.75), nameof(RimCornerRadius));
    }

    /// <summary>Length of the flat floor to where the walls begin, as if there were no cove, 0.1 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorLength
    {
        get => Length.FromMeters(floorLength);
        init => floorLength = Guard.Within(value, Bounds.Between(0.1, 2.5, Measure.Length), nameof(FloorLength));
    }

    /// <summary>Width of the flat floor to where the walls begin, as if there were no cove, 0.1 to 1.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorWidth
    {
        get => Length.FromMeters(floorWidth);
        init => floorWidth = Guard.Within(value, Bounds.Between(0.1, 1.5, Measure.Length), nameof(FloorWidth));
    }

    /// <summary>Corner radius of the floor in plan, 0 to 0.75 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorCornerRadius
    {
        get => Length.FromMeters(floorCornerRadius);
        init => floorCornerRadius = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.75), nameof(FloorCornerRadius));
    }

    /// <summary>Depth from the mouth straight down to the floor, 0.1 to 0.8 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Depth
    {
        get => Length.FromMeters(depth);
        init => depth = Guard.Within(value, Bounds.Between(0.1, 0.8, Measure.Length), nameof(Depth));
    }

    /// <summary>How far the head runs out level from floor to mouth, 0 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length HeadRun
    {
        get => Length.FromMeters(headRun);
        init => headRun = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1.2), nameof(HeadRun));
    }

    /// <summary>How far the foot runs out level from floor to mouth, 0 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FootRun
    {
        get => Length.FromMeters(footRun);
        init => footRun = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1.2), nameof(FootRun));
    }

    /// <summary>Radius of the rounding between floor and walls, 0 to 0.3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CoveRadius
    {
        get => Length.FromMeters(coveRadius);
        init => coveRadius = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.3), nameof(CoveRadius));
    }

    /// <summary>Radius of the rolled rim's tube, half of its thickness, 3 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RollRadius
    {
        get => Length.FromMeters(rollRadius);
        init => rollRadius = Guard.Within(value, Bounds.Between(0.003, 0.1, Measure.Length), nameof(RollRadius));
    }

    /// <summary>How far the roll turns from the mouth over the top and down the outside, 90° to 270°; 180° for a half round, 270° for one that comes back under.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Angle RollTurn
    {
        get => Angle.FromRadians(rollTurn);
        init => rollTurn = Guard.Within(value, Bounds.Between(Math.PI / 2, 3 * Math.PI / 2, Measure.Angle), nameof(RollTurn));
    }

    /// <summary>Thickness of the wall, by which the outside is larger than the inside, 1 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallThickness
    {
        get => Length.FromMeters(wallThickness);
        init => wallThickness = Guard.Within(value, Bounds.Between(0.001, 0.1, Measure.Length), nameof(WallThickness));
    }

    /// <summary>Whether the outside walls are coated.</summary>
    public required bool OutsideIsCoated { get; init; }

    /// <summary>Whether the bottom seen from below is coated too.</summary>
    public required bool UndersideIsCoated { get; init; }

    /// <summary>How many feet stand against the outside or the bottom, 0 to 8.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int Feet
    {
        get;
        init => field = Guard.Count(value, 0, 8, nameof(Feet));
    }

    /// <summary>Diameter of the patch that a foot covers, 0 to 0.3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FootPadDiameter
    {
        get => Length.FromMeters(footPadDiameter);
        init => footPadDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.3), nameof(FootPadDiameter));
    }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter
    {
        get => Length.FromMeters(drainDiameter);
        init => drainDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.15), nameof(DrainDiameter));
    }

    /// <summary>Diameter of the overflow plate, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter
    {
        get => Length.FromMeters(overflowDiameter);
        init => overflowDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.15), nameof(OverflowDiameter));
    }

    internal RuledBasin Basin => new(rimLength, rimWidth, rimCornerRadius, floorLength, floorWidth, floorCornerRadius, depth, headRun, footRun, coveRadius);

    /// <summary>The outside: everything larger by the wall, as deep as the inside, sharp below.</summary>
    internal RuledBasin Shell => new(
        rimLength + (2 * wallThickness), rimWidth + (2 * wallThickness), rimCornerRadius + wallThickness, floorLength + (2 * wallThickness), floorWidth + (2 * wallThickness), floorCornerRadius + wallThickness, depth, headRun, footRun, 0);

    /// <summary>The mouth, the depth and the roll in one line, in metric units.</summary>
    /// <returns>Text such as <c>1397 mm × 635 mm × 431.8 mm inside, roll 31.75 mm</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} × {1} × {2} inside, roll {3}",
        Measure.Length.Format(rimLength),
        Measure.Length.Format(rimWidth),
        Measure.Length.Format(depth),
        Measure.Length.Format(rollRadius));

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        Inside.CheckConsistency();
        TapeRules.AtMost(wallThickness, 2 * rollRadius, nameof(WallThickness), "the thickness of the roll");
        double bottom = Shell.FloorArea().Value;
        if (Feet * PlaneShapes.Disc(footPadDiameter).Value > bottom)
        {
            Guard.Rule(false, nameof(FootPadDiameter), footPadDiameter, Measure.Length, "so small that Feet of it cover no more than the bottom's " + Measure.Area.Format(bottom));
        }
    }

    // The same rules as for a recessed tub without deck and apron.
    private RecessedBathtubMeasurements Inside => new()
    {
        RimLength = RimLength, RimWidth = RimWidth, RimCornerRadius = RimCornerRadius, FloorLength = FloorLength, FloorWidth = FloorWidth, FloorCornerRadius = FloorCornerRadius,
        Depth = Depth, HeadRun = HeadRun, FootRun = FootRun, CoveRadius = CoveRadius, OverallLength = RimLength, OverallWidth = RimWidth, ApronHeight = Length.Zero,
        DrainDiameter = DrainDiameter, OverflowDiameter = OverflowDiameter,
    };
}
