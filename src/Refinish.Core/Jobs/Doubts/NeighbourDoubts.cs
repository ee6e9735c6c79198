using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What stands together in one room: walls with the tub or pan they stand on, sinks with the counter they are let into.</summary>
internal static class NeighbourDoubts
{
    private const double Lip = 0.06;

    private static readonly Source WallLimit = Source.Invented(
        "round a tub or pan the back wall is as long as it to 50 mm less or 150 mm more; the side walls are as long as it is wide to 50 mm less or 500 mm more");

    private static readonly Source SinkLimit = Source.Invented("a counter is at least 25 mm deeper than the sink let into it");
    private static readonly Source HoleLimit =
        Source.Invented("a cut-out is at most 60 mm smaller than the bowl, and no larger than the rim that lies on it or than the bowl and 60 mm");

    public static IEnumerable<Doubt> Of(IReadOnlyList<FixtureJob> inside) => [.. Walls(inside), .. Sinks(inside)];

    private static IEnumerable<Doubt> Walls(IReadOnlyList<FixtureJob> inside)
    {
        (string Name, double Length, double Width, bool IsTub)[] bases = [.. inside.SelectMany(Bases)];
        foreach (FixtureJob entry in inside)
        {
            // Three walls that are not low go round something; two or five may go anywhere.
            if (bases.Length == 0 || FixtureKind.Measured(entry.Fixture) is not TiledSurround { Measurements: { Walls.Count: 3 } tape }
                || WallRows.IsLow(tape))
            {
                continue;
            }

            Doubt[]? least = null;
            foreach ((string name, double length, double width, bool isTub) in bases)
            {
                // The order of the walls says which is the back; where it was not kept, the longest is.
                foreach (int back in new[] { 1, LongestOf(tape) }.Distinct())
                {
                    Doubt[] missed = [.. Missed(entry.Id, tape, back, name, length, width)];

                    // Walls that fit a pan nowhere go round something that is not in the job, such as a tub that is left as it is.
                    missed = missed.Length == 3 && !isTub ? [] : missed;
                    least = least is null || missed.Length < least.Length ? missed : least;
                }
            }

            foreach (Doubt doubt in least!)
            {
                yield return doubt;
            }
        }
    }

    private static IEnumerable<Doubt> Missed(string about, TiledWallMeasurements tape, int back, string name, double length, double width)
    {
        for (int i = 0; i < 3; i++)
        {
            double found = tape.Walls[i].Length.Meters;
            double least = (i == back ? length : width) - 0.05;
            double greatest = i == back ? length + 0.15 : width + 0.5;
            if (found < least || found > greatest)
            {
                yield return new Doubt(
                    DoubtKind.Walls, about, "Walls[" + Figures.Fixed(i, 0) + "].Length",
                    "length of wall " + Figures.Fixed(i + 1, 0) + " beside the " + (i == back ? "length" : "width") + " of " + name,
                    "Measure the wall and what it stands on again.", WallLimit)
                {
                    Value = found, Least = least, Greatest = greatest,
                };
            }
        }
    }

    private static IEnumerable<(string Name, double Length, double Width, bool IsTub)> Bases(FixtureJob entry)
    {
        IFixture fixture = FixtureKind.Measured(entry.Fixture);
        return FixtureKind.Of(fixture) is { Walls: not WallBase.None } kind && kind.Footprint(fixture) is Footprint floor
            ? [(entry.Name, floor.Length, floor.Width, kind.Walls == WallBase.Tub)]
            : [];
    }

    private static double? Depth(IFixture top) => FixtureKind.Of(top)?.CounterDepth(top);

    private static int LongestOf(TiledWallMeasurements tape) =>
        Enumerable.Range(0, tape.Walls.Count).OrderByDescending(i => tape.Walls[i].Length.Meters).First();

    private static IEnumerable<Doubt> Sinks(IReadOnlyList<FixtureJob> inside)
    {
        FixtureJob[] let = [.. inside.Where(entry => FixtureKind.Measured(entry.Fixture) is CounterSink sink
            && sink.Measurements.Mounting != SinkMounting.Vessel)];
        IFixture[] tops = [.. inside.Select(entry => FixtureKind.Measured(entry.Fixture)).Where(fixture => Depth(fixture) is not null)];
        if (let.Length == 0 || tops.Length == 0)
        {
            yield break;
        }

        double deepest = tops.Max(top => Depth(top)!.Value) - 0.025;
        RectangularOpening[] holes = [.. tops.SelectMany(top => FixtureKind.Of(top)!.CutOuts(top))];
        foreach (FixtureJob entry in let)
        {
            CounterSinkMeasurements tape = ((CounterSink)FixtureKind.Measured(entry.Fixture)).Measurements;
            bool rim = tape is { Mounting: SinkMounting.DropIn, Outline: not null };
            Length narrow = Min(rim ? tape.Outline!.Length : tape.MouthLength, rim ? tape.Outline!.Width : tape.MouthWidth);
            if (narrow.Meters > deepest)
            {
                yield return new Doubt(
                    DoubtKind.CutOut, entry.Id, rim ? "Outline.Width" : "MouthWidth", "the sink, the way the counter is deep,",
                        "Measure the sink and the counter again.", SinkLimit)
                {
                    Value = narrow.Meters, Greatest = deepest,
                };
            }
            else if (holes.Length == let.Length && !holes.Any(hole => Takes(hole, tape)))
            {
                // With as many cut-outs as sinks, one of them is this one's.
                RectangularOpening near = holes.OrderBy(hole =>
                    Math.Abs(hole.Area.SquareMeters - (tape.MouthLength.Meters * tape.MouthWidth.Meters))).First();
                ((double least, double greatest), (double leastAcross, double greatestAcross)) = HoleFor(tape);
                double found = Long(near.Length, near.Height);
                bool along = found < least || found > greatest;
                yield return new Doubt(
                    DoubtKind.CutOut, entry.Id, "CutOuts", "the " + (along ? "longer" : "shorter")
                        + " side of the cut-out beside the sink", "Measure the cut-out and the sink again.", HoleLimit)
                {
                    Value = along ? found : Min(near.Length, near.Height).Meters,
                    Least = along ? least : leastAcross,
                    Greatest = along ? greatest : greatestAcross,
                };
            }
        }
    }

    private static bool Takes(RectangularOpening hole, CounterSinkMeasurements tape)
    {
        ((double Least, double Greatest) along, (double Least, double Greatest) across) = HoleFor(tape);
        double longer = Long(hole.Length, hole.Height);
        double shorter = Min(hole.Length, hole.Height).Meters;
        return longer >= along.Least && longer <= along.Greatest && shorter >= across.Least && shorter <= across.Greatest;
    }

    /// <summary>What the longer and the shorter side of the cut-out for a sink may be.</summary>
    private static ((double Least, double Greatest) Along, (double Least, double Greatest) Across) HoleFor(CounterSinkMeasurements tape)
    {
        PlanOutline? rim = tape.Mounting == SinkMounting.DropIn ? tape.Outline : null;
        double longer = Long(tape.MouthLength, tape.MouthWidth);
        double shorter = Min(tape.MouthLength, tape.MouthWidth).Meters;
        return rim is null
            ? ((longer - Lip, longer + Lip), (shorter - Lip, shorter + Lip))
            : ((longer - Lip, Long(rim.Length, rim.Width)), (shorter - Lip, Min(rim.Length, rim.Width).Meters));
    }

    private static double Long(Length one, Length other) => Math.Max(one.Meters, other.Meters);

    private static Length Min(Length one, Length other) => one.Meters <= other.Meters ? one : other;
}
