using System;
using System.Globalization;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a sink on, in or under a counter.</summary>
/// <remarks>The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by <see cref="CounterSink"/>.</remarks>
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
    private readonly double mouthLength;
    private readonly double mouthWidth;
    private readonly double bowlDepth;
    private readonly double wallThickness;
    private readonly double baseDiameter;
    private readonly double drainDiameter;
    private readonly double overflowDiameter;

    /// <summary>How it sits at the counter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required SinkMounting Mounting
    {
        get;
        init => field = Guard.Defined(value, nameof(Mounting));
    }

    /// <summary>The shape of the bowl.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required BowlShape Shape
    {
        get;
        init => field = Guard.Defined(value, nameof(Shape));
    }

    /// <summary>Length of the bowl's mouth, 0.1 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MouthLength
    {
        get => Length.FromMeters(mouthLength);
        init => mouthLength = Guard.Within(value, Bounds.Between(0.1, 1.2, Measure.Length), nameof(MouthLength));
    }

    /// <summary>Width of the bowl's mouth, 0.1 to 1 m; the length again for a spherical cap.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MouthWidth
    {
        get => Length.FromMeters(mouthWidth);
        init => mouthWidth = Guard.Within(value, Bounds.Between(0.1, 1, Measure.Length), nameof(MouthWidth));
    }

    /// <summary>Depth of the bowl at its lowest point, 0.03 to 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BowlDepth
    {
        get => Length.FromMeters(bowlDepth);
        init => bowlDepth = Guard.Within(value, Bounds.Between(0.03, 0.5, Measure.Length), nameof(BowlDepth));
    }

    /// <summary>The rim seen from above, over all; needed for a drop-in sink, not used otherwise.</summary>
    public PlanOutline? Outline { get; init; }

    /// <summary>Thickness of a vessel's wall, which makes its level rim and its outside, 0 to 0.1 m; 0 for the other mountings.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length WallThickness
    {
        get => Length.FromMeters(wallThickness);
        init => wallThickness = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.1), nameof(WallThickness));
    }

    /// <summary>Diameter of the patch a vessel stands on, 0 to 0.5 m; 0 for the other mountings.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length BaseDiameter
    {
        get => Length.FromMeters(baseDiameter);
        init => baseDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.5), nameof(BaseDiameter));
    }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter
    {
        get => Length.FromMeters(drainDiameter);
        init => drainDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.15), nameof(DrainDiameter));
    }

    /// <summary>Diameter of the overflow, 0 to 0.1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter
    {
        get => Length.FromMeters(overflowDiameter);
        init => overflowDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.1), nameof(OverflowDiameter));
    }

    /// <summary>The mounting and the bowl in one line, in metric units.</summary>
    /// <returns>Text such as <c>Vessel, bowl 406.4 mm × 406.4 mm × 139.7 mm</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}, bowl {1} × {2} × {3}",
        Mounting,
        Measure.Length.Format(mouthLength),
        Measure.Length.Format(mouthWidth),
        Measure.Length.Format(bowlDepth));

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        double narrow = Math.Min(mouthLength, mouthWidth);
        AtMost(drainDiameter, narrow / 2, nameof(DrainDiameter), "half of the bowl's narrower side");
        AtMost(overflowDiameter, Math.Min(narrow / 2, bowlDepth), nameof(OverflowDiameter), "half of the bowl's narrower side and the bowl's depth");
        if (Shape == BowlShape.SphericalCap)
        {
            Guard.Rule(Math.Abs(mouthWidth - mouthLength) <= PlaneShapes.LastDigits, nameof(MouthWidth), mouthWidth, Measure.Length, "MouthLength (" + Measure.Length.Format(mouthLength) + ") for a spherical cap");
            AtMost(bowlDepth, mouthLength / 2 * (1 + PlaneShapes.LastDigits), nameof(BowlDepth), "half of the mouth; a deeper cap would overhang");
        }

        bool vessel = Mounting == SinkMounting.Vessel;
        AtMost(wallThickness, vessel ? 0.1 : 0, nameof(WallThickness), "0 unless it is a vessel");
        AtMost(baseDiameter, vessel ? narrow : 0, nameof(BaseDiameter), "the mouth's narrower side for a vessel, 0 otherwise");
        if (Mounting == SinkMounting.DropIn)
        {
            PlanOutline rim = Guard.NotNull(Outline, nameof(Outline));
            AtMost(mouthLength, rim.Length.Meters, nameof(MouthLength), "the outline's length");
            AtMost(mouthWidth, rim.Width.Meters, nameof(MouthWidth), "the outline's width");
        }
    }
}
