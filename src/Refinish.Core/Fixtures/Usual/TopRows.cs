using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;
using static Refinish.Fixtures.ClearingWords;

namespace Refinish.Fixtures;

/// <summary>What is known of counters and plain panels.</summary>
internal static class TopRows
{
    private static readonly FixtureMaterial[] Materials =
    [
        FixtureMaterial.Laminate, FixtureMaterial.CulturedMarble, FixtureMaterial.SolidSurface, FixtureMaterial.CeramicTile,
            FixtureMaterial.Gelcoat,
        FixtureMaterial.Acrylic, FixtureMaterial.Stone, FixtureMaterial.Concrete, FixtureMaterial.StainlessSteel, FixtureMaterial.Wood,
        FixtureMaterial.VinylSheet, FixtureMaterial.GalvanisedSteel,
    ];

    private static readonly Source Depths = Source.CommonPractice(
        "counters are 24 to 25.5 in deep from the wall in kitchens and 19 to 22.5 in over vanities; shelves of 12 in and peninsulas of 31 in are met along a wall");

    private static readonly Source Sizes =
        Source.CommonPractice("counters run up to 15 ft; an upstand is 3 to 6 in high, up to 24 in where it reaches the cabinets");
    private static readonly Source Sheets = Source.Published(
        "Unified Facilities Guide Specification 12320A, Cabinets and Countertops",
            "2.2.1, 2.2.2: cores of 3/4 in, solid sheet of 1/2 or 3/4 in; the band reaches to built-up edges of 4 in");

    private static readonly Source Details = Source.Invented("bands of edges, upstands and openings of counters and panels");
    private const string PutTopBack = "caulk the joints, put back what was taken off";
    private const double FrontShare = 0.5;

    private static readonly Source FrontLimit =
        Source.Invented("a counter along a wall shows its edge, and has its upstand where it has one, over half of its length or more");
    private static readonly Source CutOutLimit = Source.Invented("cut-outs of more than 40 % of a top are rare");

    public static FixtureKind Panel { get; } = new KnownKind<FlatPanel, FlatPanelMeasurements>(
        FlatPanelMeasurements.Inputs,
            new Form<FlatPanelMeasurements>("counter along a wall", AlongAWall, [.. PanelRows(12, 180, 12, 31, Depths)]),
        new Form<FlatPanelMeasurements>("plain panel or island", _ => true, [.. PanelRows(6, 160, 4, 72, Sizes)]))
    {
        Id = "flatPanel",
        Name = "flat panel",
        Taped = _ =>
        [
            "Length", "Width", "ExposedEdge", "EdgeHeight", "BacksplashLength", "BacksplashHeight", "BacksplashThickness",
        ],
        RoughKinds = [RoughFlats.Panel(), RoughFlats.Vanity()],
        TakenOff = tape => "take off what is fixed to it; " + Openings(tape.CutOuts) + CutOut("along its edges"),
        PutBack = _ => PutTopBack,
        Holes = tape => tape.CutOuts,
        Deepest = tape => AlongAWall(tape)
            ? tape.Width.Meters - (tape.BacksplashLength.Meters > 0 ? tape.BacksplashThickness.Meters : 0) : null,
        Materials = Materials,
        Tape = panel => panel.Measurements,
        Make = tape => new FlatPanel(tape),
        OnTheFloor = tape => AlongAWall(tape) ? Fixtures.Footprint.Of(tape.Length.Meters, tape.Width.Meters) : null,
        GoTogether = tape =>
        [
            CutOuts(tape.CutOuts, tape.Length.Meters * tape.Width.Meters),
            .. AlongAWall(tape) ? [Front("ExposedEdge", "edge that shows", tape.ExposedEdge, tape.Length),
                Front("BacksplashLength", "upstand", tape.BacksplashLength, tape.Length)] : Array.Empty<Proportion>(),
        ],
    };

    public static FixtureKind Counter { get; } = new KnownKind<Countertop, CountertopMeasurements>(
        CountertopMeasurements.Inputs, new Form<CountertopMeasurements>(
        "countertop",
        _ => true,
        new("Runs.Length", "length of run {0}, the longest", 18, 180, Sizes, LongestRun, (t, i) => t.Runs[i].Length, WithRunLength),
        new("Runs.Length", "length of run {0}", 6, 180, Sizes, OtherRuns, (t, i) => t.Runs[i].Length, WithRunLength),
        new("Runs.Depth", "depth of run {0}", 12, 31, Depths, t => Places(t.Runs.Count), (t, i) => t.Runs[i].Depth,
            (t, i, x) => t with { Runs = ReadingRow<CountertopMeasurements>.Put(t.Runs, i, new CounterRun(t.Runs[i].Length, x)) }),
        new("Thickness", 0.4, 4, Sheets),
        new("EdgeRadius", 0.04, 1.5, Details),
        new("BacksplashHeight", 2, 24, Sizes),
        new("BacksplashThickness", 0.2, 2, Sheets),
        new("CutOuts.Length", "length of cut-out {0}", 1.2, 50, Details, t => Places(t.CutOuts.Count), (t, i) => t.CutOuts[i].Length,
            (t, i, x) => t with { CutOuts = ReadingRow<CountertopMeasurements>.Put(t.CutOuts, i,
                new RectangularOpening(x, t.CutOuts[i].Height)) }),
        new("CutOuts.Height", "width of cut-out {0}", 1.2, 50, Details, t => Places(t.CutOuts.Count), (t, i) => t.CutOuts[i].Height,
            (t, i, x) => t with { CutOuts = ReadingRow<CountertopMeasurements>.Put(t.CutOuts, i,
                new RectangularOpening(t.CutOuts[i].Length, x)) })))
    {
        Id = "countertop",
        Name = "countertop",
        RoughKinds = [RoughFlats.Straight(), RoughFlats.Angled()],
        TakenOff = tape => Openings(tape.CutOuts) + CutOut("along walls and splash"),
        PutBack = _ => PutTopBack,
        Holes = tape => tape.CutOuts,
        Deepest = tape => tape.Runs.Max(run => run.Depth.Meters) - tape.Covered,
        Materials = Materials,
        Tape = counter => counter.Measurements,
        Make = tape => new Countertop(tape),
        OnTheFloor = tape =>
            new Footprint(tape.Runs.Max(run => run.Length.Meters), tape.Runs.Min(run => run.Depth.Meters), tape.Gross().Value),
        GoTogether = tape => [CutOuts(tape.CutOuts, tape.Gross().Value)], };

    // An island shows its edge all round; a plain panel shows none, and has no upstand and no cut-out.
    private static bool AlongAWall(FlatPanelMeasurements tape) =>
        tape.BacksplashLength.Meters > 0
        || (tape.ExposedEdge.Meters > 0 ? tape.ExposedEdge.Meters <= (tape.Length.Meters + (2 * tape.Width.Meters)) * (1
            + PlaneShapes.LastDigits) : tape.CutOuts.Count > 0);

    private static IEnumerable<ReadingRow<FlatPanelMeasurements>> PanelRows(double shortest, double longest, double narrowest,
        double widest, Source width) =>
    [
        new("Length", shortest, longest, Sizes),
        new("Width", narrowest, widest, width),
        new("ExposedEdge", 6, 420, Sizes),
        new("EdgeHeight", 0.4, 5, Sheets),
        new("BacksplashLength", 6, 260, Sizes),
        new("BacksplashHeight", 2, 24, Sizes),
        new("BacksplashThickness", 0.2, 2, Sheets),
        new("CutOuts.Length", "length of cut-out {0}", 1.2, 50, Details, t => Places(t.CutOuts.Count), (t, i) => t.CutOuts[i].Length,
            (t, i, x) => t with { CutOuts = ReadingRow<FlatPanelMeasurements>.Put(t.CutOuts, i,
                new RectangularOpening(x, t.CutOuts[i].Height)) }),
        new("CutOuts.Height", "width of cut-out {0}", 1.2, 50, Details, t => Places(t.CutOuts.Count), (t, i) => t.CutOuts[i].Height,
            (t, i, x) => t with { CutOuts = ReadingRow<FlatPanelMeasurements>.Put(t.CutOuts, i,
                new RectangularOpening(t.CutOuts[i].Length, x)) }),
    ];

    // One that is not there is no doubt.
    private static Proportion Front(string reading, string words, Length found, Length length) => new(
        reading + "/Length", "length of the " + words + " beside the length", found.Meters == 0 ? length.Meters : found.Meters,
            FrontShare * length.Meters, null,
        Measure.Length, FrontLimit, "Measure the length of the " + words + " again.");

    private static Proportion CutOuts(IReadOnlyList<RectangularOpening> cutOuts, double gross) => new(
        "CutOuts", "all cut-outs", RectangularOpening.AreaOf(cutOuts).Value, null, 0.4 * gross, Measure.Area, CutOutLimit,
            "Measure the cut-outs again.");

    private static CountertopMeasurements WithRunLength(CountertopMeasurements tape, int i, Length x) =>
        tape with { Runs = ReadingRow<CountertopMeasurements>.Put(tape.Runs, i, new CounterRun(x, tape.Runs[i].Depth)) };

    private static IEnumerable<int> LongestRun(CountertopMeasurements tape) =>
        Places(tape.Runs.Count).OrderByDescending(i => tape.Runs[i].Length.Meters).Take(1);

    private static IEnumerable<int> OtherRuns(CountertopMeasurements tape) => Places(tape.Runs.Count).Except(LongestRun(tape));

    private static IEnumerable<int> Places(int count) => Enumerable.Range(0, count);
}
