using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>The tape readings of this library's fixtures, all with the same ±, ready for <see cref="FixtureUncertainty"/>.</summary>
/// <remarks>Readings of 0, such as an apron that is not there, are left out: they were not taken.</remarks>
/// <example><code>
/// ShowerPan pan = new(tape);                                 // the pan of ShowerPanMeasurements
/// IReadOnlyList&lt;TapeReading&lt;ShowerPanMeasurements&gt;&gt; readings = TapeReadings.Of(tape, Length.FromMillimeters(2), ReadingSpread.Rectangular);
/// </code></example>
public static class TapeReadings
{
    /// <summary>The readings of a recessed bathtub.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <remarks>The floor's length is not among them: it follows from the mouth and the two runs.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<RecessedBathtubMeasurements>> Of(
        RecessedBathtubMeasurements tape, Length plusMinus, ReadingSpread spread) => Taken(tape,
        [
            new("RimLength", plusMinus, spread, static t => t.RimLength, static (t, x) => t with { RimLength = x, FloorLength = x - t.HeadRun - t.FootRun }),
            .. TubRows.Recessed.Taped(plusMinus, spread, "RimWidth", "RimCornerRadius", "FloorWidth", "FloorCornerRadius", "Depth"),
            new("HeadRun", plusMinus, spread, static t => t.HeadRun, static (t, x) => t with { HeadRun = x, FloorLength = t.RimLength - x - t.FootRun }),
            new("FootRun", plusMinus, spread, static t => t.FootRun, static (t, x) => t with { FootRun = x, FloorLength = t.RimLength - t.HeadRun - x }),
            .. TubRows.Recessed.Taped(plusMinus, spread, "CoveRadius", "OverallLength", "OverallWidth", "ApronHeight"),
        ]);

    /// <summary>The readings of a freestanding tub.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <remarks>The floor's length is not among them: it follows from the mouth and the two runs.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<FreestandingTubMeasurements>> Of(
        FreestandingTubMeasurements tape, Length plusMinus, ReadingSpread spread) => Taken(tape,
        [
            new("RimLength", plusMinus, spread, static t => t.RimLength, static (t, x) => t with { RimLength = x, FloorLength = x - t.HeadRun - t.FootRun }),
            .. TubRows.Freestanding.Taped(plusMinus, spread, "RimWidth", "RimCornerRadius", "FloorWidth", "FloorCornerRadius", "Depth"),
            new("HeadRun", plusMinus, spread, static t => t.HeadRun, static (t, x) => t with { HeadRun = x, FloorLength = t.RimLength - x - t.FootRun }),
            new("FootRun", plusMinus, spread, static t => t.FootRun, static (t, x) => t with { FootRun = x, FloorLength = t.RimLength - t.HeadRun - x }),
            .. TubRows.Freestanding.Taped(plusMinus, spread, "CoveRadius", "RollRadius", "WallThickness"),
        ]);

    /// <summary>The readings of an oval tub.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<OvalTubMeasurements>> Of(
        OvalTubMeasurements tape, Length plusMinus, ReadingSpread spread) => Taken(tape, plusMinus, spread, TubRows.Oval,
        "MouthLength", "MouthWidth", "FloorLength", "FloorWidth", "Depth", "DeckLength", "DeckWidth", "ApronHeight");

    /// <summary>The readings of a corner tub.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<CornerTubMeasurements>> Of(
        CornerTubMeasurements tape, Length plusMinus, ReadingSpread spread) => Taken(tape, plusMinus, spread, TubRows.Corner,
        "MouthLength", "MouthWidth", "FloorLength", "FloorWidth", "Depth", "LeftWall", "RightWall", "LeftReturn", "RightReturn",
        "FrontHeight");

    /// <summary>The readings of a pedestal sink.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<PedestalSinkMeasurements>> Of(
        PedestalSinkMeasurements tape, Length plusMinus, ReadingSpread spread) => Taken(tape, plusMinus, spread, SinkRows.Pedestal,
        "BowlLength", "BowlWidth", "BowlDepth", "SkirtHeight", "ColumnTopDiameter", "ColumnBaseDiameter", "ColumnHeight");

    /// <summary>The readings of a shower pan.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<ShowerPanMeasurements>> Of(
        ShowerPanMeasurements tape, Length plusMinus, ReadingSpread spread) => Taken(tape, plusMinus, spread, PanRows.Pan,
        "FloorLength", "FloorWidth", "WallHeight", "LedgeWidth", "CurbInsideHeight", "CurbTopWidth", "CurbOutsideHeight");

    /// <summary>The readings of a flat panel.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<FlatPanelMeasurements>> Of(
        FlatPanelMeasurements tape, Length plusMinus, ReadingSpread spread) => Taken(tape, plusMinus, spread, TopRows.Panel,
        "Length", "Width", "ExposedEdge", "EdgeHeight", "BacksplashLength", "BacksplashHeight", "BacksplashThickness");

    /// <summary>The lengths of a fixture that is put together from parts, each with the ± that it was taken with.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The lengths that were taken and are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fixture"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="spread"/> is not a named value.</exception>
    public static IReadOnlyList<TapeReading<ComposedFixture>> Of(ComposedFixture fixture, ReadingSpread spread) => Taken(
        Guard.NotNull(fixture, nameof(fixture)),
        [.. fixture.Taken.Where(reading => reading.Measure.Equals(Measure.Length)).Select(reading => new TapeReading<ComposedFixture>(
            reading.Name, Length.FromMeters(reading.PlusMinus), spread, made =>
                Length.FromMeters(made.Value(reading.Name)),
            (made, length) => made.With(new TakenReading(reading.Name, length, Length.FromMeters(reading.PlusMinus)))))]);

    private static ValueList<TapeReading<TTape>> Taken<TFixture, TTape>(
        TTape tape, Length plusMinus, ReadingSpread spread, KnownKind<TFixture, TTape> kind, params string[] names)
        where TFixture : class, IFixture
        where TTape : class => Taken(tape, [.. kind.Taped(plusMinus, spread, names)]);

    private static ValueList<TapeReading<T>> Taken<T>(T tape, params TapeReading<T>[] readings)
        where T : class
    {
        Guard.NotNull(tape, nameof(tape));
        return new(Array.FindAll(readings, reading => reading.Value(tape).Meters != 0));
    }
}
