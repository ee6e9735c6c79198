using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What is known of sinks.</summary>
internal static class SinkRows
{
    private static readonly FixtureMaterial[] Materials = [.. TubRows.Materials, FixtureMaterial.VitreousChina];

    private static readonly Source Sizes =
        Source.CommonPractice("pedestal sinks are 16 to 30 in wide and stand 30 to 36 in high; counter sinks have bowls of 10 to 33 in");
    private static readonly Source Details = Source.Invented("bands of skirts, columns, walls, radii and holes of sinks");

    public static KnownKind<PedestalSink, PedestalSinkMeasurements> Pedestal { get; } = new(new Form<PedestalSinkMeasurements>(
        "pedestal sink",
        new("Outline.Length", "length of the outline", 14, 36, Sizes, t => t.Outline.Length, (t, x) =>
            t with { Outline = Outlined(t.Outline, length: x) }),
        new("Outline.Width", "width of the outline", 10, 26, Sizes, t => t.Outline.Width, (t, x) =>
            t with { Outline = Outlined(t.Outline, width: x) }),
        new("Outline.CornerRadius", "corner radius of the outline", 0.25, 12, Details, t => t.Outline.CornerRadius,
            (t, x) => t with { Outline = Outlined(t.Outline, radius: x) }),
        new("BowlLength", "length of the bowl", 10, 26, Sizes, t => t.BowlLength, (t, x) => t with { BowlLength = x }),
        new("BowlWidth", "width of the bowl", 7, 19, Sizes, t => t.BowlWidth, (t, x) => t with { BowlWidth = x }),
        new("BowlDepth", "depth of the bowl", 3.5, 9, Sizes, t => t.BowlDepth, (t, x) => t with { BowlDepth = x }),
        new("SkirtHeight", "height of the skirt", 1.5, 12, Details, t => t.SkirtHeight, (t, x) => t with { SkirtHeight = x }),
        new("WallContact", "length along the wall", 6, 60, Details, t => t.WallContact, (t, x) => t with { WallContact = x }),
        new("ColumnTopDiameter", "diameter of the column at the top", 3.5, 14, Details, t => t.ColumnTopDiameter, (t, x) =>
            t with { ColumnTopDiameter = x }),
        new("ColumnBaseDiameter", "diameter of the column at the base", 4, 16, Details, t => t.ColumnBaseDiameter, (t, x) =>
            t with { ColumnBaseDiameter = x }),
        new("ColumnHeight", "height of the column", 18, 34, Sizes, t => t.ColumnHeight, (t, x) => t with { ColumnHeight = x }),
        new("DrainDiameter", "diameter of the drain", 1.2, 2.5, Details, t => t.DrainDiameter, (t, x) => t with { DrainDiameter = x }),
        new("OverflowDiameter", "diameter of the overflow", 0.4, 2, Details, t => t.OverflowDiameter, (t, x) =>
            t with { OverflowDiameter = x }),
        new("FaucetHoleDiameter", "diameter of a faucet hole", 0.9, 1.8, Details, t => t.FaucetHoleDiameter, (t, x) =>
            t with { FaucetHoleDiameter = x })))
    {
        Materials = Materials,
        Tape = sink => sink.Measurements,
        Make = tape => new PedestalSink(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(tape.Outline.Length.Meters, tape.Outline.Width.Meters),
    };

    public static KnownKind<CounterSink, CounterSinkMeasurements> Counter { get; } = new(new Form<CounterSinkMeasurements>(
        "counter sink",
        new("MouthLength", "length of the mouth", 9, 34, Sizes, t => t.MouthLength, WithMouth),
        new("MouthWidth", "width of the mouth", 8, 21, Sizes, t => t.MouthWidth, (t, x) => t.Shape == BowlShape.SphericalCap
            ? WithMouth(t, x) : t with { MouthWidth = x }),
        new("BowlDepth", "depth of the bowl", 3, 11, Sizes, t => t.BowlDepth, (t, x) => t with { BowlDepth = x }),
        new("Outline.Length", "length of the rim", 11, 36, Sizes, t => t.Outline?.Length ?? Length.Zero, (t, x) =>
            t with { Outline = Outlined(t.Outline!, length: x) }),
        new("Outline.Width", "width of the rim", 10, 24, Sizes, t => t.Outline?.Width ?? Length.Zero, (t, x) =>
            t with { Outline = Outlined(t.Outline!, width: x) }),
        new("Outline.CornerRadius", "corner radius of the rim", 0.25, 12, Details, t => t.Outline?.CornerRadius ?? Length.Zero,
            (t, x) => t with { Outline = Outlined(t.Outline!, radius: x) }),
        new("WallThickness", "thickness of the wall", 0.15, 1.5, Details, t => t.WallThickness, (t, x) => t with { WallThickness = x }),
        new("BaseDiameter", "diameter of the base", 1.5, 12, Details, t => t.BaseDiameter, (t, x) => t with { BaseDiameter = x }),
        new("DrainDiameter", "diameter of the drain", 1.2, 4, Details, t => t.DrainDiameter, (t, x) => t with { DrainDiameter = x }),
        new("OverflowDiameter", "diameter of the overflow", 0.4, 2, Details, t => t.OverflowDiameter, (t, x) =>
            t with { OverflowDiameter = x })))
    {
        Materials = Materials,
        Tape = sink => sink.Measurements,
        Make = tape => new CounterSink(tape),
    };

    // The mouth of a spherical cap is round: one reading stands for both.
    private static CounterSinkMeasurements WithMouth(CounterSinkMeasurements tape, Length x) =>
        tape.Shape == BowlShape.SphericalCap ? tape with { MouthLength = x, MouthWidth = x } : tape with { MouthLength = x };

    private static PlanOutline Outlined(PlanOutline old, Length? length = null, Length? width = null, Length? radius = null) =>
        old.IsEllipse
        ? PlanOutline.Ellipse(length ?? old.Length, width ?? old.Width)
        : PlanOutline.RoundedRectangle(length ?? old.Length, width ?? old.Width, radius ?? old.CornerRadius);
}
