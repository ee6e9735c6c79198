using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for an oval tub set into a level deck, with an apron along the front or none.</summary>
/// <remarks>The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by <see cref="OvalTub"/>.</remarks>
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
    private readonly double mouthLength;
    private readonly double mouthWidth;
    private readonly double mouthExponent;
    private readonly double floorLength;
    private readonly double floorWidth;
    private readonly double floorExponent;
    private readonly double depth;
    private readonly double deckLength;
    private readonly double deckWidth;
    private readonly double apronHeight;
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

    /// <summary>Length of the deck over all, 0.3 to 3 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DeckLength
    {
        get => Length.FromMeters(deckLength);
        init => deckLength = Guard.Within(value, Bounds.Between(0.3, 3, Measure.Length), nameof(DeckLength));
    }

    /// <summary>Width of the deck over all, 0.2 to 2.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DeckWidth
    {
        get => Length.FromMeters(deckWidth);
        init => deckWidth = Guard.Within(value, Bounds.Between(0.2, 2.5, Measure.Length), nameof(DeckWidth));
    }

    /// <summary>Height of the front panel, 0 to 1 m; 0 when there is none or it is not coated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ApronHeight
    {
        get => Length.FromMeters(apronHeight);
        init => apronHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1), nameof(ApronHeight));
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

    /// <summary>The mouth and the deck in one line, in metric units.</summary>
    /// <returns>Text such as <c>1397 mm × 635 mm × 431.8 mm in 1676.4 mm × 914.4 mm</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} × {1} × {2} in {3} × {4}",
        Measure.Length.Format(mouthLength),
        Measure.Length.Format(mouthWidth),
        Measure.Length.Format(depth),
        Measure.Length.Format(deckLength),
        Measure.Length.Format(deckWidth));

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        TapeRules.AtMost(floorLength, mouthLength, nameof(FloorLength), "MouthLength");
        TapeRules.AtMost(floorWidth, mouthWidth, nameof(FloorWidth), "MouthWidth");
        TapeRules.AtMost(drainDiameter, Math.Min(floorLength, floorWidth), nameof(DrainDiameter), "the floor's shorter side");
        TapeRules.AtMost(overflowDiameter, Math.Min(depth, floorWidth), nameof(OverflowDiameter), "the wall above the floor");
        TapeRules.AtMost(mouthLength, deckLength, nameof(MouthLength), "DeckLength");
        TapeRules.AtMost(mouthWidth, deckWidth, nameof(MouthWidth), "DeckWidth");
    }
}
