using System;
using System.Globalization;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a pedestal sink, or for a sink without its column.</summary>
/// <remarks>The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by <see cref="PedestalSink"/>.</remarks>
/// <example><code>
/// PedestalSinkMeasurements tape = new()
/// {
///     Outline = PlanOutline.RoundedRectangle(Length.FromInches(24), Length.FromInches(19), Length.FromInches(4)),
///     BowlLength = Length.FromInches(17), BowlWidth = Length.FromInches(13.5), BowlDepth = Length.FromInches(6),
///     SkirtHeight = Length.FromInches(5), WallContact = Length.FromInches(16),
///     ColumnTopDiameter = Length.FromInches(6), ColumnBaseDiameter = Length.FromInches(8), ColumnHeight = Length.FromInches(26),
///     DrainDiameter = Length.FromInches(1.75), OverflowDiameter = Length.FromInches(1),
///     FaucetHoleDiameter = Length.FromInches(1.25), FaucetHoles = 3,
/// };
/// </code></example>
public sealed record PedestalSinkMeasurements
{
    private readonly double bowlLength;
    private readonly double bowlWidth;
    private readonly double bowlDepth;
    private readonly double skirtHeight;
    private readonly double skirtProfileFactor = 1;
    private readonly double wallContact;
    private readonly double columnTopDiameter;
    private readonly double columnBaseDiameter;
    private readonly double columnHeight;
    private readonly double columnShare = 1;
    private readonly double drainDiameter;
    private readonly double overflowDiameter;
    private readonly double faucetHoleDiameter;

    /// <summary>The sink seen from above, over the rim.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required PlanOutline Outline
    {
        get;
        init => field = Guard.NotNull(value, nameof(Outline));
    }

    /// <summary>Length of the bowl's mouth, 0.1 to 1.2 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BowlLength
    {
        get => Length.FromMeters(bowlLength);
        init => bowlLength = Guard.Within(value, Bounds.Between(0.1, 1.2, Measure.Length), nameof(BowlLength));
    }

    /// <summary>Width of the bowl's mouth, 0.1 to 1 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BowlWidth
    {
        get => Length.FromMeters(bowlWidth);
        init => bowlWidth = Guard.Within(value, Bounds.Between(0.1, 1, Measure.Length), nameof(BowlWidth));
    }

    /// <summary>Depth of the bowl at its lowest point, 0.04 to 0.4 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BowlDepth
    {
        get => Length.FromMeters(bowlDepth);
        init => bowlDepth = Guard.Within(value, Bounds.Between(0.04, 0.4, Measure.Length), nameof(BowlDepth));
    }

    /// <summary>Height of the outside below the rim that gets coated, 0 to 0.6 m; 0 for a sink let into a counter.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length SkirtHeight
    {
        get => Length.FromMeters(skirtHeight);
        init => skirtHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.6), nameof(SkirtHeight));
    }

    /// <summary>Developed over upright area of the outside, 1 to 1.5; 1 unless it is set.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public double SkirtProfileFactor
    {
        get => skirtProfileFactor;
        init => skirtProfileFactor = Guard.Within(value, Bounds.Between(1, 1.5, Measure.Number), nameof(SkirtProfileFactor));
    }

    /// <summary>Length of the outline that stands against a wall, 0 to 3 m; it is taped and not coated.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallContact
    {
        get => Length.FromMeters(wallContact);
        init => wallContact = Guard.Within(value, Bounds.NotNegative(Measure.Length, 3), nameof(WallContact));
    }

    /// <summary>Diameter of the column under the basin, 0.03 to 0.6 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ColumnTopDiameter
    {
        get => Length.FromMeters(columnTopDiameter);
        init => columnTopDiameter = Guard.Within(value, Bounds.Between(0.03, 0.6, Measure.Length), nameof(ColumnTopDiameter));
    }

    /// <summary>Diameter of the column at the floor, 0.03 to 0.8 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ColumnBaseDiameter
    {
        get => Length.FromMeters(columnBaseDiameter);
        init => columnBaseDiameter = Guard.Within(value, Bounds.Between(0.03, 0.8, Measure.Length), nameof(ColumnBaseDiameter));
    }

    /// <summary>Height of the column that shows, 0 to 1.2 m; 0 when there is none or it is not coated.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ColumnHeight
    {
        get => Length.FromMeters(columnHeight);
        init => columnHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1.2), nameof(ColumnHeight));
    }

    /// <summary>Share of the column's girth that gets coated, 0 to 100 %; all of it unless it is set (many are open at the back).</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio ColumnShare
    {
        get => Ratio.FromDecimalFractions(columnShare);
        init => columnShare = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1), nameof(ColumnShare));
    }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter
    {
        get => Length.FromMeters(drainDiameter);
        init => drainDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.15), nameof(DrainDiameter));
    }

    /// <summary>Diameter of the overflow, 0 to 0.1 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter
    {
        get => Length.FromMeters(overflowDiameter);
        init => overflowDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.1), nameof(OverflowDiameter));
    }

    /// <summary>Diameter of one faucet hole in the rim, 0 to 0.1 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FaucetHoleDiameter
    {
        get => Length.FromMeters(faucetHoleDiameter);
        init => faucetHoleDiameter = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.1), nameof(FaucetHoleDiameter));
    }

    /// <summary>How many faucet holes there are, 0 to 8.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int FaucetHoles
    {
        get;
        init => field = Guard.Count(value, 0, 8, nameof(FaucetHoles));
    }

    internal HalfEllipsoid Bowl => new(bowlLength / 2, bowlWidth / 2, bowlDepth);

    /// <summary>The outline and the bowl in one line, in metric units.</summary>
    /// <returns>Text such as <c>ellipse 560 mm × 460 mm, bowl 430 mm × 340 mm × 150 mm</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}, bowl {1} × {2} × {3}",
        Outline,
        Measure.Length.Format(bowlLength),
        Measure.Length.Format(bowlWidth),
        Measure.Length.Format(bowlDepth));

    /// <summary>Rules between two lengths; each refusal names the one that cannot be. Nothing is put into words while all is well.</summary>
    internal void CheckConsistency()
    {
        // An ellipse that fits the box also fits every outline with rounded corners of at most half the shorter side.
        AtMost(bowlLength, Outline.Length.Meters, nameof(BowlLength), "the outline's length");
        AtMost(bowlWidth, Outline.Width.Meters, nameof(BowlWidth), "the outline's width");
        AtMost(wallContact, Outline.Perimeter.Meters, nameof(WallContact), "the outline's perimeter");
        double narrow = Math.Min(bowlLength, bowlWidth);
        AtMost(drainDiameter, narrow / 2, nameof(DrainDiameter), "half of the bowl's narrower side");
        AtMost(overflowDiameter, Math.Min(narrow / 2, bowlDepth), nameof(OverflowDiameter), "half of the bowl's narrower side and the bowl's depth");
        double rim = Outline.Area.SquareMeters - PlaneShapes.Ellipse(bowlLength, bowlWidth).Value;
        if (FaucetHoles * PlaneShapes.Disc(faucetHoleDiameter).Value > rim)
        {
            Guard.Rule(false, nameof(FaucetHoleDiameter), faucetHoleDiameter, Measure.Length, "so small that FaucetHoles of it fit the rim's " + Measure.SmallArea.Format(rim));
        }
    }
}
