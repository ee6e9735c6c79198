using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a pedestal sink, or for a sink without its column.</summary>
/// <remarks>
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by
/// <see cref="PedestalSink"/>.
/// </remarks>
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
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<PedestalSinkMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(BowlLength), "length of the bowl", 0.1, 1.2),
        InputField.Tape(nameof(BowlWidth), "width of the bowl", 0.1, 1),
        InputField.Tape(nameof(BowlDepth), "depth of the bowl", 0.04, 0.4),
        InputField.Tape(nameof(SkirtHeight), "height of the skirt", 0, 0.6),
        InputField.Number(nameof(SkirtProfileFactor), "developed over upright area of the skirt", 1, 1.5, 1),
        InputField.Tape(nameof(WallContact), "length along the wall", 0, 3),
        InputField.Tape(nameof(ColumnTopDiameter), "diameter of the column at the top", 0.03, 0.6),
        InputField.Tape(nameof(ColumnBaseDiameter), "diameter of the column at the base", 0.03, 0.8),
        InputField.Tape(nameof(ColumnHeight), "height of the column", 0, 1.2),
        InputField.Of(nameof(ColumnShare), "part of the column that is coated", Bounds.NotNegative(Measure.Percent, 1), 1),
        InputField.Tape(nameof(DrainDiameter), "diameter of the drain", 0, 0.15),
        InputField.Tape(nameof(OverflowDiameter), "diameter of the overflow", 0, 0.1),
        InputField.Tape(nameof(FaucetHoleDiameter), "diameter of a faucet hole", 0, 0.1),
        InputField.Count(nameof(FaucetHoles), "how many faucet holes", 0, 8));

    /// <summary>Measurements that are given one by one.</summary>
    public PedestalSinkMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <param name="outline">The sink seen from above, over the rim.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public PedestalSinkMeasurements(InputValues readings, PlanOutline outline)
    {
        Tape = Inputs.Whole(readings, nameof(readings));
        Outline = outline;
    }

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>The sink seen from above, over the rim.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required PlanOutline Outline { get; init => field = Guard.NotNull(value); }

    /// <summary>Length of the bowl's mouth, 0.1 to 1.2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BowlLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of the bowl's mouth, 0.1 to 1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BowlWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Depth of the bowl at its lowest point, 0.04 to 0.4 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BowlDepth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of the outside below the rim that gets coated, 0 to 0.6 m; 0 for a sink let into a counter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length SkirtHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Developed over upright area of the outside, 1 to 1.5; 1 unless it is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double SkirtProfileFactor { get => Tape.Number(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the outline that stands against a wall, 0 to 3 m; it is taped and not coated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WallContact { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the column under the basin, 0.03 to 0.6 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ColumnTopDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the column at the floor, 0.03 to 0.8 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ColumnBaseDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of the column that shows, 0 to 1.2 m; 0 when there is none or it is not coated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length ColumnHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Share of the column's girth that gets coated, 0 to 100 %; all of it unless it is set (many are open at the back).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio ColumnShare { get => Tape.Ratio(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the drain, 0 to 0.15 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length DrainDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of the overflow, 0 to 0.1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length OverflowDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Diameter of one faucet hole in the rim, 0 to 0.1 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length FaucetHoleDiameter { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How many faucet holes there are, 0 to 8.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required int FaucetHoles { get => Tape.Count(); init => Tape = Tape.Set(value); }

    internal HalfEllipsoid Bowl => new(BowlLength.Meters / 2, BowlWidth.Meters / 2, BowlDepth.Meters);

    /// <summary>The outline and the bowl in one line, in metric units.</summary>
    /// <returns>Text such as <c>ellipse 560 mm × 460 mm, bowl 430 mm × 340 mm × 150 mm</c>.</returns>
    public override string ToString() => $"{Outline}, bowl {Shown(BowlLength)} × {Shown(BowlWidth)} × {Shown(BowlDepth)}";

    /// <summary>
    /// Rules between two lengths; each refusal names the one that cannot be. Nothing is put into words while all is well.
    /// </summary>
    internal void CheckConsistency()
    {
        // An ellipse that fits the box also fits every outline with rounded corners of at most half the shorter side.
        AtMost(BowlLength.Meters, Outline.Length.Meters, nameof(BowlLength), "the outline's length");
        AtMost(BowlWidth.Meters, Outline.Width.Meters, nameof(BowlWidth), "the outline's width");
        AtMost(WallContact.Meters, Outline.Perimeter.Meters, nameof(WallContact), "the outline's perimeter");
        double narrow = Math.Min(BowlLength.Meters, BowlWidth.Meters);
        AtMost(DrainDiameter.Meters, narrow / 2, nameof(DrainDiameter), "half of the bowl's narrower side");
        AtMost(OverflowDiameter.Meters, Math.Min(narrow / 2, BowlDepth.Meters), nameof(OverflowDiameter),
            "half of the bowl's narrower side and the bowl's depth");
        double rim = Outline.Area.SquareMeters - PlaneShapes.Ellipse(BowlLength.Meters, BowlWidth.Meters).Value;
        if (FaucetHoles * PlaneShapes.Disc(FaucetHoleDiameter.Meters).Value > rim)
        {
            Guard.Rule(false, nameof(FaucetHoleDiameter), FaucetHoleDiameter.Meters, Measure.Length,
                "so small that FaucetHoles of it fit the rim's " + Measure.SmallArea.Format(rim));
        }
    }
}
