using UnitsNet;
using static Refinish.Fixtures.ClearingWords;

namespace Refinish.Fixtures;

/// <summary>What is known of sinks.</summary>
internal static class SinkRows
{
    private static readonly FixtureMaterial[] Materials = [.. TubRows.Materials, FixtureMaterial.VitreousChina];

    private static readonly Source Sizes =
        Source.CommonPractice("pedestal sinks are 16 to 30 in wide and stand 30 to 36 in high; counter sinks have bowls of 10 to 33 in");
    private static readonly Source Details = Source.Invented("bands of skirts, columns, walls, radii and holes of sinks");

    public static FixtureKind Pedestal { get; } = new KnownKind<PedestalSink, PedestalSinkMeasurements>(
        PedestalSinkMeasurements.Inputs, new Form<PedestalSinkMeasurements>(
        "pedestal sink",
        _ => true,
        new("Outline.Length", "length of the outline", 14, 36, Sizes, t => t.Outline.Length, (t, x) =>
            t with { Outline = Outlined(t.Outline, length: x) }),
        new("Outline.Width", "width of the outline", 10, 26, Sizes, t => t.Outline.Width, (t, x) =>
            t with { Outline = Outlined(t.Outline, width: x) }),
        new("Outline.CornerRadius", "corner radius of the outline", 0.25, 12, Details, t => t.Outline.CornerRadius,
            (t, x) => t with { Outline = Outlined(t.Outline, radius: x) }),
        new("BowlLength", 10, 26, Sizes),
        new("BowlWidth", 7, 19, Sizes),
        new("BowlDepth", 3.5, 9, Sizes),
        new("SkirtHeight", 1.5, 12, Details),
        new("WallContact", 6, 60, Details),
        new("ColumnTopDiameter", 3.5, 14, Details),
        new("ColumnBaseDiameter", 4, 16, Details),
        new("ColumnHeight", 18, 34, Sizes),
        new("DrainDiameter", 1.2, 2.5, Details),
        new("OverflowDiameter", 0.4, 2, Details),
        new("FaucetHoleDiameter", 0.9, 1.8, Details)))
    {
        Id = "pedestalSink",
        Name = "pedestal sink",
        Taped = _ =>
        [
            "BowlLength", "BowlWidth", "BowlDepth", "SkirtHeight", "ColumnTopDiameter", "ColumnBaseDiameter", "ColumnHeight",
        ],
        RoughKinds = [RoughSinks.Pedestal()],
        IsReachedFromTheSide = true,
        TakenOff = tape => Basin(tape.DrainDiameter, tape.OverflowDiameter) + Faucet(tape.FaucetHoles > 0)
            + CutOut("along the wall and at the column"),
        Materials = Materials,
        Tape = sink => sink.Measurements,
        Make = tape => new PedestalSink(tape),
        OnTheFloor = tape => Fixtures.Footprint.Of(tape.Outline.Length.Meters, tape.Outline.Width.Meters), };

    public static FixtureKind Counter { get; } = new KnownKind<CounterSink, CounterSinkMeasurements>(
        CounterSinkMeasurements.Inputs, new Form<CounterSinkMeasurements>(
        "counter sink",
        _ => true,
        new("MouthLength", 9, 34, Sizes) { Change = WithMouth },
        new("MouthWidth", 8, 21, Sizes)
        {
            Change = (t, x) => t.Shape == BowlShape.SphericalCap ? WithMouth(t, x) : t with { MouthWidth = x },
        },
        new("BowlDepth", 3, 11, Sizes),
        new("Outline.Length", "length of the rim", 11, 36, Sizes, t => t.Outline?.Length ?? Length.Zero, (t, x) =>
            t with { Outline = Outlined(t.Outline!, length: x) }),
        new("Outline.Width", "width of the rim", 10, 24, Sizes, t => t.Outline?.Width ?? Length.Zero, (t, x) =>
            t with { Outline = Outlined(t.Outline!, width: x) }),
        new("Outline.CornerRadius", "corner radius of the rim", 0.25, 12, Details, t => t.Outline?.CornerRadius ?? Length.Zero,
            (t, x) => t with { Outline = Outlined(t.Outline!, radius: x) }),
        new("WallThickness", 0.15, 1.5, Details),
        new("BaseDiameter", 1.5, 12, Details),
        new("DrainDiameter", 1.2, 4, Details),
        new("OverflowDiameter", 0.4, 2, Details)))
    {
        Id = "counterSink",
        Name = "counter sink",
        Taped = tape => tape.Shape == BowlShape.SphericalCap
            ? ["MouthLength", "BowlDepth", "Outline.Length", "Outline.Width", "WallThickness"]
            : ["MouthLength", "MouthWidth", "BowlDepth", "Outline.Length", "Outline.Width", "WallThickness"],
        RoughKinds = [RoughSinks.DropIn(), RoughSinks.Undermount(), RoughSinks.Vessel()],
        IsReachedFromTheSide = true,
        OnTheFloor = _ => null,
        TakenOff = tape => Basin(tape.DrainDiameter, tape.OverflowDiameter) + CutOut(tape.Mounting switch
        {
            SinkMounting.Vessel => "under the foot of the bowl",
            SinkMounting.DropIn => "under its rim",
            _ => "between bowl and counter",
        }),
        Materials = Materials, Tape = sink => sink.Measurements, Make = tape => new CounterSink(tape), };

    // The mouth of a spherical cap is round: one reading stands for both.
    private static CounterSinkMeasurements WithMouth(CounterSinkMeasurements tape, Length x) =>
        tape.Shape == BowlShape.SphericalCap ? tape with { MouthLength = x, MouthWidth = x } : tape with { MouthLength = x };

    private static PlanOutline Outlined(PlanOutline old, Length? length = null, Length? width = null, Length? radius = null) =>
        old.IsEllipse
        ? PlanOutline.Ellipse(length ?? old.Length, width ?? old.Width)
        : PlanOutline.RoundedRectangle(length ?? old.Length, width ?? old.Width, radius ?? old.CornerRadius);
}
