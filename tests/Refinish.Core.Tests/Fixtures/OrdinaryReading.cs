using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Tests.Fixtures;

/// <summary>
/// Every reading of an ordinary fixture of each kind, from outside: what it is, and the fixture with another length in its place.
/// </summary>
internal sealed record OrdinaryReading(string Kind, string Path, Length Value, Func<Length, IFixture> With)
{
    public static IReadOnlyList<OrdinaryReading> All { get; } =
    [
        .. FixtureKind.All.Where(kind => kind.FixtureType.GetProperty("Measurements") is not null
            && kind.FixtureType != typeof(CounterSink) && kind.FixtureType != typeof(Countertop) && kind.FixtureType != typeof(TiledSurround))
            .SelectMany(kind => TapedOf(Tapes.Of(kind)!)),
        new("CounterSink", "MouthLength", Tapes.DropIn().MouthLength, x => new CounterSink(Tapes.DropIn() with { MouthLength = x })),
        new("CounterSink", "MouthWidth", Tapes.DropIn().MouthWidth, x => new CounterSink(Tapes.DropIn() with { MouthWidth = x })),
        new("CounterSink", "BowlDepth", Tapes.DropIn().BowlDepth, x => new CounterSink(Tapes.DropIn() with { BowlDepth = x })),
        new("CounterSink", "Outline.Length", Tapes.DropIn().Outline!.Length, x =>
            new CounterSink(Tapes.DropIn() with { Outline = Rim(x, Tapes.DropIn().Outline!.Width) })),
        new("CounterSink", "Outline.Width", Tapes.DropIn().Outline!.Width, x =>
            new CounterSink(Tapes.DropIn() with { Outline = Rim(Tapes.DropIn().Outline!.Length, x) })),
        .. Enumerable.Range(0, 2).SelectMany(Runs),
        new("Countertop", "Thickness", Tapes.LCounter().Thickness, x => new Countertop(Tapes.LCounter() with { Thickness = x })),
        new("Countertop", "BacksplashHeight", Tapes.LCounter().BacksplashHeight, x =>
            new Countertop(Tapes.LCounter() with { BacksplashHeight = x })),
        new("Countertop", "CutOuts[0].Length", Tapes.LCounter().CutOuts[0].Length,
            x => new Countertop(Tapes.LCounter() with { CutOuts = [new RectangularOpening(x, Tapes.LCounter().CutOuts[0].Height)] })),
        .. Enumerable.Range(0, 3).SelectMany(Walls),
        new("TiledSurround", "TileLength", Tapes.Alcove().TileLength, x => new TiledSurround(Tapes.Alcove() with { TileLength = x })),
        new("TiledSurround", "JointWidth", Tapes.Alcove().JointWidth, x => new TiledSurround(Tapes.Alcove() with { JointWidth = x })),
    ];

    /// <summary>The readings with their ± of an example of any kind, as the library lists them, and the fixture with another length.</summary>
    public static IReadOnlyList<OrdinaryReading> TapedOf(IFixture fixture)
    {
        object tape = fixture.GetType().GetProperty("Measurements")!.GetValue(fixture)!;
        return (IReadOnlyList<OrdinaryReading>)typeof(OrdinaryReading).GetMethod(nameof(Listed), BindingFlags.NonPublic | BindingFlags.Static)!
            .MakeGenericMethod(tape.GetType()).Invoke(null, [fixture.GetType(), tape])!;
    }

    private static IReadOnlyList<OrdinaryReading> Listed<T>(Type fixture, T tape)
        where T : class =>
        [.. Taken(fixture.Name, TapeReadings.Of(tape, Length.Zero, ReadingSpread.Rectangular), tape, made => Made(fixture, made))];

    private static IFixture Made(Type fixture, object tape)
    {
        try
        {
            return (IFixture)Activator.CreateInstance(fixture, tape)!;
        }
        catch (TargetInvocationException refusal)
        {
            throw new ArgumentException(refusal.InnerException!.Message, refusal.InnerException);
        }
    }

    private static PlanOutline Rim(Length length, Length width) =>
        PlanOutline.RoundedRectangle(length, width, Tapes.DropIn().Outline!.CornerRadius);

    private static IEnumerable<OrdinaryReading> Taken<T>(string kind, IReadOnlyList<TapeReading<T>> readings, T tape, Func<T,
        IFixture> make)
        where T : class => readings.Select(reading => new OrdinaryReading(kind, reading.Name, reading.Value(tape), x =>
            make(reading.With(tape, x))));

    private static IEnumerable<OrdinaryReading> Runs(int i)
    {
        IReadOnlyList<CounterRun> runs = Tapes.LCounter().Runs;
        string path = "Runs[" + (i == 0 ? "0" : "1") + "].";
        yield return new("Countertop", path + "Length", runs[i].Length,
            x => new Countertop(Tapes.LCounter() with { Runs = [.. runs.Select((run, j) => j == i ? new CounterRun(x, run.Depth)
                : run)] }));
        yield return new("Countertop", path + "Depth", runs[i].Depth,
            x => new Countertop(Tapes.LCounter() with { Runs = [.. runs.Select((run, j) => j == i ? new CounterRun(run.Length, x)
                : run)] }));
    }

    private static IEnumerable<OrdinaryReading> Walls(int i)
    {
        IReadOnlyList<WallRun> walls = Tapes.Alcove().Walls;
        string path = "Walls[" + (i == 0 ? "0" : i == 1 ? "1" : "2") + "].";
        yield return new("TiledSurround", path + "Length", walls[i].Length,
            x => new TiledSurround(Tapes.Alcove() with { Walls = [.. walls.Select((wall, j) => j == i ? new WallRun(x, wall.Height)
                : wall)] }));
        yield return new("TiledSurround", path + "Height", walls[i].Height,
            x => new TiledSurround(Tapes.Alcove() with { Walls = [.. walls.Select((wall, j) => j == i ? new WallRun(wall.Length, x)
                : wall)] }));
    }
}
