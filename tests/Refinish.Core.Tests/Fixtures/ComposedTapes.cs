using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;
using UnitsNet.Units;

namespace Refinish.Tests.Fixtures;

/// <summary>One fixture of each composed kind, and of each variant that is put together differently. Sizes in inches, invented but
/// ordinary.</summary>
internal static class ComposedTapes
{
    private static readonly (string Kind, (string Name, double Value)[] Inches, (string Name, double Value)[] Numbers)[] All =
    [
        ("doubleBowlSink",
            [("Length", 33), ("Width", 22), ("BowlLength", 14.5), ("BowlWidth", 16), ("BowlDepth", 8), ("BowlCornerRadius", 3),
                ("BowlInset", 0.75),
                ("CoveRadius", 1), ("DrainDiameter", 3.5), ("FaucetHoleDiameter", 1.375), ("SecondBowlLength", 12.5),
                    ("SecondBowlWidth", 15),
                ("SecondBowlDepth", 6)],
            [("FaucetHoles", 4)]),
        ("doubleBowlSink",
            [("Length", 36), ("Width", 22), ("BowlLength", 15), ("BowlWidth", 17), ("BowlDepth", 9), ("BowlCornerRadius", 2),
                ("BowlInset", 0),
                ("CoveRadius", 0), ("DrainDiameter", 0), ("SecondBowlLength", 15), ("SecondBowlWidth", 17), ("SecondBowlDepth", 9),
                    ("FrontHeight", 10)],
            []),
        ("farmSink",
            [("Length", 30), ("Width", 20), ("BowlLength", 27), ("BowlWidth", 16), ("BowlDepth", 8.5), ("BowlCornerRadius", 2),
                ("BowlInset", 0.5),
                ("CoveRadius", 1), ("DrainDiameter", 3.5), ("FrontHeight", 9.5)],
            []),
        ("cornerSink",
            [("LeftWall", 17), ("RightWall", 17), ("LeftReturn", 7), ("RightReturn", 7), ("FrontBow", 2), ("BowlLength", 13),
                ("BowlWidth", 10),
                ("BowlDepth", 5), ("SkirtHeight", 4), ("FaucetHoleDiameter", 1.25), ("DrainDiameter", 1.75), ("OverflowDiameter", 1)],
            [("FaucetHoles", 1)]),
        ("cornerSink",
            [("LeftWall", 16), ("RightWall", 19), ("LeftReturn", 8), ("RightReturn", 6), ("FrontBow", 0), ("BowlLength", 11),
                ("BowlWidth", 8),
                ("BowlDepth", 4), ("SkirtHeight", 0), ("DrainDiameter", 1.75), ("OverflowDiameter", 0)],
            []),
        ("vanity",
            [("Length", 61), ("Depth", 21), ("EdgeHeight", 1.5), ("BowlLength", 17), ("BowlWidth", 13), ("BowlDepth", 5.5),
                ("SplashHeight", 4),
                ("SplashThickness", 0.75), ("FaucetHoleDiameter", 1.25), ("DrainDiameter", 1.75), ("OverflowDiameter", 1)],
            [("OpenEnds", 1), ("Bowls", 2), ("SideSplashes", 1), ("FaucetHoles", 6)]),
        ("vanity",
            [("Length", 31), ("Depth", 19), ("EdgeHeight", 1), ("BowlLength", 0), ("BowlWidth", 0), ("BowlDepth", 0), ("SplashHeight", 0),
                ("SplashThickness", 0), ("DrainDiameter", 0), ("OverflowDiameter", 0)],
            [("OpenEnds", 2), ("Bowls", 0), ("SideSplashes", 0)]),
        ("toilet",
            [("RimLength", 18.5), ("RimWidth", 14), ("RimHeight", 15), ("FootLength", 21), ("FootWidth", 9), ("OpeningLength", 12),
                ("OpeningWidth", 9.5), ("TankWidth", 18), ("TankDepth", 8), ("TankHeight", 15), ("ShelfLength", 8), ("ShelfWidth", 8)],
            [("ProfileFactor", 1.1)]),
        ("toilet",
            [("RimLength", 16.5), ("RimWidth", 14), ("RimHeight", 16), ("FootLength", 12), ("FootWidth", 9), ("OpeningLength", 11),
                ("OpeningWidth", 9),
                ("TankWidth", 0), ("TankDepth", 0), ("TankHeight", 0)],
            []),
        ("bidet",
            [("RimLength", 22), ("RimWidth", 14), ("RimHeight", 15), ("FootLength", 17), ("FootWidth", 9), ("BowlLength", 14),
                ("BowlWidth", 10),
                ("BowlDepth", 5), ("FaucetHoleDiameter", 1.25), ("DrainDiameter", 1.75), ("OverflowDiameter", 1)],
            [("FaucetHoles", 1)]),
        ("urinal",
            [("Width", 18), ("Projection", 14), ("Height", 25), ("BaseWidth", 9), ("BaseProjection", 7), ("OpeningWidth", 13),
                ("OpeningHeight", 14)],
            [("ProfileFactor", 1.05)]),
        ("tubFeet",
            [("FootHeight", 5), ("TopGirth", 14), ("BottomGirth", 8), ("PadDiameter", 3.5), ("PadHeight", 0.5)],
                [("Feet", 4), ("ReliefFactor", 1.3)]),
        ("tubFeet", [("FootHeight", 6), ("TopGirth", 10), ("BottomGirth", 10), ("PadDiameter", 0), ("PadHeight", 0)], [("Feet", 3)]),
        ("showerBaseWithSeat",
            [("FloorLength", 44), ("FloorWidth", 32), ("WallHeight", 3), ("CurbInsideHeight", 3.5), ("CurbTopWidth", 3),
                ("CurbOutsideHeight", 5),
                ("SeatDepth", 15), ("SeatHeight", 17), ("SeatFall", 0.5), ("UpstandHeight", 2), ("DrainDiameter", 3.25)],
            [("TextureFactor", 1.05)]),
        ("showerBaseWithSeat",
            [("FloorLength", 40), ("FloorWidth", 30), ("WallHeight", 4), ("CurbInsideHeight", 4), ("CurbTopWidth", 4),
                ("CurbOutsideHeight", 4),
                ("SeatDepth", 13), ("SeatHeight", 16), ("SeatFall", 0), ("DrainDiameter", 2)],
            []),
        ("prefabricatedSurround",
            [("BackLength", 60), ("SideLength", 30), ("Height", 59), ("ReturnWidth", 3), ("ShelfLength", 14), ("ShelfDepth", 4),
                ("ShelfThickness", 1),
                ("NicheLength", 6), ("NicheHeight", 4), ("NicheDepth", 2), ("WindowLength", 24), ("WindowHeight", 20)],
            [("Returns", 2), ("Shelves", 3), ("Niches", 2), ("ProfileFactor", 1.02)]),
        ("prefabricatedSurround", [("BackLength", 48), ("SideLength", 0), ("Height", 72)], [("Returns", 0)]),
        ("showerCeiling",
            [("Length", 60), ("Width", 34), ("LightDiameter", 5), ("VentLength", 10), ("VentWidth", 9)], [("Lights", 2)]),
        ("cabinetDoors",
            [("Length", 24), ("Width", 15), ("Thickness", 0.75), ("CupDiameter", 35 / 25.4)],
            [("Pieces", 4), ("Faces", 2), ("ProfileFactor", 1.08), ("HingeCups", 2), ("Slope", 90)]),
        ("drawerFronts", [("Length", 18), ("Width", 6), ("Thickness", 0.75)], [("Pieces", 3), ("Faces", 1), ("Slope", 0)]),
        ("windowSill", [("Length", 40), ("Depth", 5), ("EdgeHeight", 0.75), ("ApronHeight", 2.5)], [("OpenEnds", 2)]),
    ];

    public static ComposedFixture[] Every(double scale = 1, LengthUnit unit = LengthUnit.Inch) =>
        [.. All.Select(one => new ComposedFixture(ComposedKind.Of(one.Kind), Readings(one.Inches, one.Numbers, scale, unit)))];

    /// <summary>The first of a kind.</summary>
    public static ComposedFixture Of(ComposedKind kind) => Every().First(fixture => fixture.Kind == kind);

    /// <summary>A fixture with some lengths in inches in place of its own.</summary>
    public static ComposedFixture But(ComposedFixture fixture, params (string Name, double Inches)[] lengths) => lengths.Aggregate(
        fixture, (made, length) => made.With(new TakenReading(length.Name, Length.FromInches(length.Inches))));

    private static IEnumerable<TakenReading> Readings(
        (string Name, double Value)[] inches, (string Name, double Value)[] numbers, double scale, LengthUnit unit) => inches
        .Select(length => new TakenReading(
            length.Name, Length.FromInches(length.Value * scale).ToUnit(unit), Length.FromMillimeters(3).ToUnit(unit)))
        .Concat(numbers.Select(number => number.Name == "Slope"
            ? new TakenReading(number.Name, Angle.FromDegrees(number.Value)) : new TakenReading(number.Name, number.Value)));
}
