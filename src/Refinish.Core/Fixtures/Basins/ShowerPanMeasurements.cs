using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a shower pan in an alcove: the floor, its own low walls with a ledge, and the curb along the front.</summary>
/// <remarks>The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by <see cref="ShowerPan"/>.</remarks>
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
    private readonly double floorLength;
    private readonly double floorWidth;
    private readonly double wallHeight;
    private readonly double ledgeWidth;
    private readonly double curbInsideHeight;
    private readonly double curbTopWidth;
    private readonly double curbOutsideHeight;
    private readonly double textureFactor = 1;
    private readonly double drainDiameter;
    private readonly double thresholdWidth;

    /// <summary>Length of the floor along the curb, inside the walls, 0.3 to 3 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorLength
    {
        get => Length.FromMeters(floorLength);
        init => floorLength = Guard.Within(value, Bounds.Between(0.3, 3, Measure.Length), nameof(FloorLength));
    }

    /// <summary>Width of the floor from the curb to the back, inside the walls, 0.3 to 3 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FloorWidth
    {
        get => Length.FromMeters(floorWidth);
        init => floorWidth = Guard.Within(value, Bounds.Between(0.3, 3, Measure.Length), nameof(FloorWidth));
    }

    /// <summary>Height of the pan's own upright walls at the back and both ends, 0 to 0.5 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallHeight
    {
        get => Length.FromMeters(wallHeight);
        init => wallHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.5), nameof(WallHeight));
    }

    /// <summary>Width of the level ledge on those walls, the same at back and ends, 0 to 0.3 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length LedgeWidth
    {
        get => Length.FromMeters(ledgeWidth);
        init => ledgeWidth = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.3), nameof(LedgeWidth));
    }

    /// <summary>Height of the curb above the floor, 0 to 0.5 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CurbInsideHeight
    {
        get => Length.FromMeters(curbInsideHeight);
        init => curbInsideHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.5), nameof(CurbInsideHeight));
    }

    /// <summary>Width of the curb's top, 0 to 0.4 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CurbTopWidth
    {
        get => Length.FromMeters(curbTopWidth);
        init => curbTopWidth = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.4), nameof(CurbTopWidth));
    }

    /// <summary>Height of the curb above the floor of the room, 0 to 0.6 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CurbOutsideHeight
    {
        get => Length.FromMeters(curbOutsideHeight);
        init => curbOutsideHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.6), nameof(CurbOutsideHeight));
    }

    /// <summary>Developed over flat area of a textured floor, 1 to 1.3; 1 unless it is set.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public double TextureFactor
    {
        get => textureFactor;
        init => textureFactor = Guard.Within(value, Bounds.Between(1, 1.3, Measure.Number), nameof(TextureFactor));
    }

    /// <summary>Diameter of the drain, 0 to 0.2 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter
    {
        get => Length.FromMeters(drainDiameter);
        init => drainDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.2), nameof(DrainDiameter));
    }

    /// <summary>Width of a level threshold strip on the floor of the room in front of the curb, 0 to 0.4 m; 0 unless it is set.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Length ThresholdWidth
    {
        get => Length.FromMeters(thresholdWidth);
        init => thresholdWidth = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.4), nameof(ThresholdWidth));
    }

    /// <summary>The floor in one line, in metric units.</summary>
    /// <returns>Text such as <c>floor 838.2 mm × 838.2 mm</c>.</returns>
    public override string ToString() =>
        string.Format(CultureInfo.InvariantCulture, "floor {0} × {1}", Measure.Length.Format(floorLength), Measure.Length.Format(floorWidth));

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        double narrow = Math.Min(floorLength, floorWidth);
        if (drainDiameter > narrow)
        {
            Guard.Rule(false, nameof(DrainDiameter), drainDiameter, Measure.Length, "at most " + Measure.Length.Format(narrow) + ", the floor's shorter side");
        }
    }
}
