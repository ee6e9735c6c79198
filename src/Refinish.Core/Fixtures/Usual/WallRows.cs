using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static Refinish.Fixtures.ClearingWords;
using Tape = Refinish.Fixtures.TiledWallMeasurements;

namespace Refinish.Fixtures;

/// <summary>What is known of tiled walls.</summary>
internal static class WallRows
{
    private static readonly Source Heights =
        Source.CommonPractice("tile round a tub or a shower goes 48 to 96 in up, from half-high walls to high ceilings");
    private static readonly Source LowHeights =
        Source.CommonPractice("low tile, as behind a counter, is 4 to 24 in high; a wainscot goes up to 60 in");
    private static readonly Source Lengths =
        Source.CommonPractice("the longest tiled wall is 28 in, that of a small shower, to 14 ft; a return may be as short as a tile");
    private static readonly Source Tiles = Source.CommonPractice("wall tile goes from mosaic of 3/4 in to slabs of 5 ft");
    private static readonly Source Joints = Source.Published(
        "ANSI A108.02, quoted second-hand",
            "4.3.8: a grout joint is in no case narrower than 1/16 in; the band begins at 1 mm, which is met on older walls, and ends at 1/2 in");

    private const double SideShare = 0.45;

    private static readonly Source SideLimit =
        Source.Invented("of three walls round a tub or shower, a side wall of less than 45 % of the other is rare");
    private static readonly Source Details = Source.Invented("bands of joints' depths, openings and recesses of tiled walls");

    public static FixtureKind Surround { get; } = new KnownKind<TiledSurround, Tape>(
        Tape.Inputs, new Form<Tape>("low tile, a third as high as it is long or less", IsLow, [.. Rows(1.5, 60, LowHeights)]),
        new Form<Tape>("tiled surround", _ => true, [.. Rows(36, 112, Heights)]))
    {
        Id = "tiledSurround",
        Name = "tiled surround",
        RoughKinds = [RoughFlats.Alcove()],
        OnTheFloor = _ => null,
        TakenOff = _ => "take off spout, handles, shower arm, rails and dishes, and cap the pipes; "
            + CutOut("in the corners and along tub, floor and ceiling"),
        PutBack = _ => "caulk corners and the joints to tub, floor and ceiling; refit spout, handles, shower arm, rails and dishes",
        Materials =
        [
            FixtureMaterial.CeramicTile, FixtureMaterial.CulturedMarble, FixtureMaterial.SolidSurface, FixtureMaterial.Gelcoat,
                FixtureMaterial.Acrylic,
            FixtureMaterial.Laminate, FixtureMaterial.VinylSheet, FixtureMaterial.Stone, FixtureMaterial.PaintedWallboard,
        ],
        Tape = walls => walls.Measurements, Make = tape => new TiledSurround(tape), GoTogether = Sides, };

    /// <summary>Whether the tile is low for its length: a ratio, so that a unit typed wrongly does not change the answer.</summary>
    public static bool IsLow(Tape tape) => tape.Walls.Max(wall => wall.Height.Meters) * 3 <= tape.Walls.Max(wall => wall.Length.Meters);

    // Of three walls the two besides the longest face each other.
    private static IEnumerable<Proportion> Sides(Tape tape)
    {
        if (tape.Walls.Count == 3 && !IsLow(tape))
        {
            double[] sides = [.. Others(tape).Select(i => tape.Walls[i].Length.Meters).OrderBy(length => length)];
            yield return new Proportion(
                "Walls", "shorter side wall beside the other", sides[0], SideShare * sides[1], null, Measure.Length, SideLimit,
                    "Measure the side walls again.");
        }
    }

    private static IEnumerable<ReadingRow<Tape>> Rows(double lowest, double highest, Source heights) =>
    [
        new("Walls.Length", "length of wall {0}, the longest", 28, 168, Lengths, Longest, (t, i) => t.Walls[i].Length, WithLength),
        new("Walls.Length", "length of wall {0}", 2, 168, Lengths, Others, (t, i) => t.Walls[i].Length, WithLength),
        new("Walls.Height", "height of wall {0}", lowest, highest, heights, t => Places(t.Walls.Count), (t, i) => t.Walls[i].Height,
            (t, i, x) => t with { Walls = ReadingRow<Tape>.Put(t.Walls, i, new WallRun(t.Walls[i].Length, x)) }),
        new("TileLength", 0.7, 62, Tiles),
        new("TileWidth", 0.4, 62, Tiles),
        new("JointWidth", 1 / 25.4, 0.5, Joints),
        new("JointDepth", 0.1 / 25.4, 0.25, Details),
        new("Openings.Length", "length of opening {0}", 0.75, 84, Details, t => Places(t.Openings.Count), (t, i) => t.Openings[i].Length,
            (t, i, x) => t with { Openings = ReadingRow<Tape>.Put(t.Openings, i, new RectangularOpening(x, t.Openings[i].Height)) }),
        new("Openings.Height", "height of opening {0}", 0.75, 84, Details, t => Places(t.Openings.Count), (t, i) => t.Openings[i].Height,
            (t, i, x) => t with { Openings = ReadingRow<Tape>.Put(t.Openings, i, new RectangularOpening(t.Openings[i].Length, x)) }),
        new("Recesses.Opening.Length", "length of recess {0}", 3, 84, Details, t => Places(t.Recesses.Count), (t, i) =>
            t.Recesses[i].Opening.Length,
            (t, i, x) => WithRecess(t, i, x, t.Recesses[i].Opening.Height, t.Recesses[i].Depth)),
        new("Recesses.Opening.Height", "height of recess {0}", 3, 84, Details, t => Places(t.Recesses.Count), (t, i) =>
            t.Recesses[i].Opening.Height,
            (t, i, x) => WithRecess(t, i, t.Recesses[i].Opening.Length, x, t.Recesses[i].Depth)),
        new("Recesses.Depth", "depth of recess {0}", 0.75, 14, Details, t => Places(t.Recesses.Count), (t, i) => t.Recesses[i].Depth,
            (t, i, x) => WithRecess(t, i, t.Recesses[i].Opening.Length, t.Recesses[i].Opening.Height, x)),
    ];

    private static Tape WithLength(Tape tape, int i, Length x) =>
        tape with { Walls = ReadingRow<Tape>.Put(tape.Walls, i, new WallRun(x, tape.Walls[i].Height)) };

    private static Tape WithRecess(Tape tape, int i, Length length, Length height, Length depth) =>
        tape with { Recesses = ReadingRow<Tape>.Put(tape.Recesses, i, new WallRecess(tape.Recesses[i].Kind, length, height, depth)) };

    private static IEnumerable<int> Longest(Tape tape) => Places(tape.Walls.Count).OrderByDescending(i =>
        tape.Walls[i].Length.Meters).Take(1);

    private static IEnumerable<int> Others(Tape tape) => Places(tape.Walls.Count).Except(Longest(tape));

    private static IEnumerable<int> Places(int count) => Enumerable.Range(0, count);
}
