using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a tub in the corner of a room: a deck of five sides with an oval mouth in it.</summary>
/// <remarks>The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by <see cref="CornerTub"/>. The deck has its right angle in the corner of the room; its two returns stand square to the walls, and the front joins their ends, straight or bowed.</remarks>
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
    private readonly double mouthLength;
    private readonly double mouthWidth;
    private readonly double mouthExponent;
    private readonly double floorLength;
    private readonly double floorWidth;
    private readonly double floorExponent;
    private readonly double depth;
    private readonly double leftWall;
    private readonly double rightWall;
    private readonly double leftReturn;
    private readonly double rightReturn;
    private readonly double frontBow;
    private readonly double frontHeight;
    private readonly double drainDiameter;
    private readonly double overflowDiameter;

    /// <summary>Length of the mouth, 0.3 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MouthLength
    {
        get => Length.FromMeters(mouthLength);
        init => mouthLength = Guard.Within(value, Bounds.Between(0.3, 2.5, Measure.Length), nameof(MouthLength));
    }

    /// <summary>Width of the mouth, 0.2 to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MouthWidth
    {
        get => Length.FromMeters(mouthWidth);
        init => mouthWidth = Guard.Within(value, Bounds.Between(0.2, 2, Measure.Length), nameof(MouthWidth));
    }

    /// <summary>How square the mouth is: 2 for an ellipse, more for fuller corners, up to 6.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double MouthExponent
    {
        get => mouthExponent;
        init => mouthExponent = Guard.Within(value, Bounds.Between(2, 6, Measure.Number), nameof(MouthExponent));
    }

    /// <summary>Length of the floor, 0.1 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorLength
    {
        get => Length.FromMeters(floorLength);
        init => floorLength = Guard.Within(value, Bounds.Between(0.1, 2.5, Measure.Length), nameof(FloorLength));
    }

    /// <summary>Width of the floor, 0.1 to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorWidth
    {
        get => Length.FromMeters(floorWidth);
        init => floorWidth = Guard.Within(value, Bounds.Between(0.1, 2, Measure.Length), nameof(FloorWidth));
    }

    /// <summary>How square the floor is, 2 to 6.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double FloorExponent
    {
        get => floorExponent;
        init => floorExponent = Guard.Within(value, Bounds.Between(2, 6, Measure.Number), nameof(FloorExponent));
    }

    /// <summary>Depth from the rim straight down to the floor, 0.1 to 0.8 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Depth
    {
        get => Length.FromMeters(depth);
        init => depth = Guard.Within(value, Bounds.Between(0.1, 0.8, Measure.Length), nameof(Depth));
    }

    /// <summary>Length of the deck along the left wall, 0.5 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length LeftWall
    {
        get => Length.FromMeters(leftWall);
        init => leftWall = Guard.Within(value, Bounds.Between(0.5, 3, Measure.Length), nameof(LeftWall));
    }

    /// <summary>Length of the deck along the right wall, 0.5 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RightWall
    {
        get => Length.FromMeters(rightWall);
        init => rightWall = Guard.Within(value, Bounds.Between(0.5, 3, Measure.Length), nameof(RightWall));
    }

    /// <summary>Length of the side that stands square to the left wall, 0 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length LeftReturn
    {
        get => Length.FromMeters(leftReturn);
        init => leftReturn = Guard.Within(value, Bounds.NotNegative(Measure.Length, 3), nameof(LeftReturn));
    }

    /// <summary>Length of the side that stands square to the right wall, 0 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length RightReturn
    {
        get => Length.FromMeters(rightReturn);
        init => rightReturn = Guard.Within(value, Bounds.NotNegative(Measure.Length, 3), nameof(RightReturn));
    }

    /// <summary>How far the front bows out beyond the straight line, at its middle, 0 to 1 m; 0 unless it is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length FrontBow
    {
        get => Length.FromMeters(frontBow);
        init => frontBow = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1), nameof(FrontBow));
    }

    /// <summary>Height of returns and front that show, 0 to 1 m; 0 when they are not coated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FrontHeight
    {
        get => Length.FromMeters(frontHeight);
        init => frontHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1), nameof(FrontHeight));
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

    internal SuperellipseBasin Basin => new(mouthLength / 2, mouthWidth / 2, mouthExponent, floorLength / 2, floorWidth / 2, floorExponent, depth);

    internal CornerPlan Plan => new(leftWall, rightWall, leftReturn, rightReturn, frontBow);

    /// <summary>The walls and the mouth in one line, in metric units.</summary>
    /// <returns>Text such as <c>1219.2 mm × 965.2 mm × 431.8 mm in a corner of 1524 mm × 1524 mm</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} × {1} × {2} in a corner of {3} × {4}",
        Measure.Length.Format(mouthLength),
        Measure.Length.Format(mouthWidth),
        Measure.Length.Format(depth),
        Measure.Length.Format(leftWall),
        Measure.Length.Format(rightWall));

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        TapeRules.AtMost(floorLength, mouthLength, nameof(FloorLength), "MouthLength");
        TapeRules.AtMost(floorWidth, mouthWidth, nameof(FloorWidth), "MouthWidth");
        TapeRules.AtMost(drainDiameter, Math.Min(floorLength, floorWidth), nameof(DrainDiameter), "the floor's shorter side");
        TapeRules.AtMost(overflowDiameter, Math.Min(depth, floorWidth), nameof(OverflowDiameter), "the wall above the floor");

        // The left return stands square to the left wall, so it runs along the right one.
        TapeRules.AtMost(leftReturn, rightWall, nameof(LeftReturn), "RightWall");
        TapeRules.AtMost(rightReturn, leftWall, nameof(RightReturn), "LeftWall");
        TapeRules.AtMost(frontBow, Plan.Chord().Value / 2, nameof(FrontBow), "half of the front's straight length, a half round");
        double deck = Plan.Deck().Value;
        double mouth = Basin.MouthArea().Value;
        if (mouth > deck && frontBow == 0)
        {
            Guard.Rule(false, nameof(MouthLength), mouthLength, Measure.Length,
                "so short that the mouth (" + Measure.Area.Format(mouth) + ") fits the deck (" + Measure.Area.Format(deck) + ")");
        }
    }
}
