using System;
using System.Collections.Generic;
using System.Linq;

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
    public static IReadOnlyList<TapeReading<RecessedBathtubMeasurements>> Of(RecessedBathtubMeasurements tape, UnitsNet.Length plusMinus, ReadingSpread spread) => Taken(
        tape,
        new("RimLength", plusMinus, spread, static t => t.RimLength, static (t, x) => t with { RimLength = x, FloorLength = x - t.HeadRun - t.FootRun }),
        new("RimWidth", plusMinus, spread, static t => t.RimWidth, static (t, x) => t with { RimWidth = x }),
        new("RimCornerRadius", plusMinus, spread, static t => t.RimCornerRadius, static (t, x) => t with { RimCornerRadius = x }),
        new("FloorWidth", plusMinus, spread, static t => t.FloorWidth, static (t, x) => t with { FloorWidth = x }),
        new("FloorCornerRadius", plusMinus, spread, static t => t.FloorCornerRadius, static (t, x) => t with { FloorCornerRadius = x }),
        new("Depth", plusMinus, spread, static t => t.Depth, static (t, x) => t with { Depth = x }),
        new("HeadRun", plusMinus, spread, static t => t.HeadRun, static (t, x) => t with { HeadRun = x, FloorLength = t.RimLength - x - t.FootRun }),
        new("FootRun", plusMinus, spread, static t => t.FootRun, static (t, x) => t with { FootRun = x, FloorLength = t.RimLength - t.HeadRun - x }),
        new("CoveRadius", plusMinus, spread, static t => t.CoveRadius, static (t, x) => t with { CoveRadius = x }),
        new("OverallLength", plusMinus, spread, static t => t.OverallLength, static (t, x) => t with { OverallLength = x }),
        new("OverallWidth", plusMinus, spread, static t => t.OverallWidth, static (t, x) => t with { OverallWidth = x }),
        new("ApronHeight", plusMinus, spread, static t => t.ApronHeight, static (t, x) => t with { ApronHeight = x }));

    /// <summary>The readings of a freestanding tub.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <remarks>The floor's length is not among them: it follows from the mouth and the two runs.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<FreestandingTubMeasurements>> Of(FreestandingTubMeasurements tape, UnitsNet.Length plusMinus, ReadingSpread spread) => Taken(
        tape,
        new("RimLength", plusMinus, spread, static t => t.RimLength, static (t, x) => t with { RimLength = x, FloorLength = x - t.HeadRun - t.FootRun }),
        new("RimWidth", plusMinus, spread, static t => t.RimWidth, static (t, x) => t with { RimWidth = x }),
        new("RimCornerRadius", plusMinus, spread, static t => t.RimCornerRadius, static (t, x) => t with { RimCornerRadius = x }),
        new("FloorWidth", plusMinus, spread, static t => t.FloorWidth, static (t, x) => t with { FloorWidth = x }),
        new("FloorCornerRadius", plusMinus, spread, static t => t.FloorCornerRadius, static (t, x) => t with { FloorCornerRadius = x }),
        new("Depth", plusMinus, spread, static t => t.Depth, static (t, x) => t with { Depth = x }),
        new("HeadRun", plusMinus, spread, static t => t.HeadRun, static (t, x) => t with { HeadRun = x, FloorLength = t.RimLength - x - t.FootRun }),
        new("FootRun", plusMinus, spread, static t => t.FootRun, static (t, x) => t with { FootRun = x, FloorLength = t.RimLength - t.HeadRun - x }),
        new("CoveRadius", plusMinus, spread, static t => t.CoveRadius, static (t, x) => t with { CoveRadius = x }),
        new("RollRadius", plusMinus, spread, static t => t.RollRadius, static (t, x) => t with { RollRadius = x }),
        new("WallThickness", plusMinus, spread, static t => t.WallThickness, static (t, x) => t with { WallThickness = x }));

    /// <summary>The readings of an oval tub.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<OvalTubMeasurements>> Of(OvalTubMeasurements tape, UnitsNet.Length plusMinus, ReadingSpread spread) => Taken(
        tape,
        new("MouthLength", plusMinus, spread, static t => t.MouthLength, static (t, x) => t with { MouthLength = x }),
        new("MouthWidth", plusMinus, spread, static t => t.MouthWidth, static (t, x) => t with { MouthWidth = x }),
        new("FloorLength", plusMinus, spread, static t => t.FloorLength, static (t, x) => t with { FloorLength = x }),
        new("FloorWidth", plusMinus, spread, static t => t.FloorWidth, static (t, x) => t with { FloorWidth = x }),
        new("Depth", plusMinus, spread, static t => t.Depth, static (t, x) => t with { Depth = x }),
        new("DeckLength", plusMinus, spread, static t => t.DeckLength, static (t, x) => t with { DeckLength = x }),
        new("DeckWidth", plusMinus, spread, static t => t.DeckWidth, static (t, x) => t with { DeckWidth = x }),
        new("ApronHeight", plusMinus, spread, static t => t.ApronHeight, static (t, x) => t with { ApronHeight = x }));

    /// <summary>The readings of a corner tub.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<CornerTubMeasurements>> Of(CornerTubMeasurements tape, UnitsNet.Length plusMinus, ReadingSpread spread) => Taken(
        tape,
        new("MouthLength", plusMinus, spread, static t => t.MouthLength, static (t, x) => t with { MouthLength = x }),
        new("MouthWidth", plusMinus, spread, static t => t.MouthWidth, static (t, x) => t with { MouthWidth = x }),
        new("FloorLength", plusMinus, spread, static t => t.FloorLength, static (t, x) => t with { FloorLength = x }),
        new("FloorWidth", plusMinus, spread, static t => t.FloorWidth, static (t, x) => t with { FloorWidth = x }),
        new("Depth", plusMinus, spread, static t => t.Depth, static (t, x) => t with { Depth = x }),
        new("LeftWall", plusMinus, spread, static t => t.LeftWall, static (t, x) => t with { LeftWall = x }),
        new("RightWall", plusMinus, spread, static t => t.RightWall, static (t, x) => t with { RightWall = x }),
        new("LeftReturn", plusMinus, spread, static t => t.LeftReturn, static (t, x) => t with { LeftReturn = x }),
        new("RightReturn", plusMinus, spread, static t => t.RightReturn, static (t, x) => t with { RightReturn = x }),
        new("FrontHeight", plusMinus, spread, static t => t.FrontHeight, static (t, x) => t with { FrontHeight = x }));

    /// <summary>The readings of a pedestal sink.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<PedestalSinkMeasurements>> Of(PedestalSinkMeasurements tape, UnitsNet.Length plusMinus, ReadingSpread spread) => Taken(
        tape,
        new("BowlLength", plusMinus, spread, static t => t.BowlLength, static (t, x) => t with { BowlLength = x }),
        new("BowlWidth", plusMinus, spread, static t => t.BowlWidth, static (t, x) => t with { BowlWidth = x }),
        new("BowlDepth", plusMinus, spread, static t => t.BowlDepth, static (t, x) => t with { BowlDepth = x }),
        new("SkirtHeight", plusMinus, spread, static t => t.SkirtHeight, static (t, x) => t with { SkirtHeight = x }),
        new("ColumnTopDiameter", plusMinus, spread, static t => t.ColumnTopDiameter, static (t, x) => t with { ColumnTopDiameter = x }),
        new("ColumnBaseDiameter", plusMinus, spread, static t => t.ColumnBaseDiameter, static (t, x) => t with { ColumnBaseDiameter = x }),
        new("ColumnHeight", plusMinus, spread, static t => t.ColumnHeight, static (t, x) => t with { ColumnHeight = x }));

    /// <summary>The readings of a shower pan.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<ShowerPanMeasurements>> Of(ShowerPanMeasurements tape, UnitsNet.Length plusMinus, ReadingSpread spread) => Taken(
        tape,
        new("FloorLength", plusMinus, spread, static t => t.FloorLength, static (t, x) => t with { FloorLength = x }),
        new("FloorWidth", plusMinus, spread, static t => t.FloorWidth, static (t, x) => t with { FloorWidth = x }),
        new("WallHeight", plusMinus, spread, static t => t.WallHeight, static (t, x) => t with { WallHeight = x }),
        new("LedgeWidth", plusMinus, spread, static t => t.LedgeWidth, static (t, x) => t with { LedgeWidth = x }),
        new("CurbInsideHeight", plusMinus, spread, static t => t.CurbInsideHeight, static (t, x) => t with { CurbInsideHeight = x }),
        new("CurbTopWidth", plusMinus, spread, static t => t.CurbTopWidth, static (t, x) => t with { CurbTopWidth = x }),
        new("CurbOutsideHeight", plusMinus, spread, static t => t.CurbOutsideHeight, static (t, x) => t with { CurbOutsideHeight = x }));

    /// <summary>The readings of a flat panel.</summary>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.</exception>
    public static IReadOnlyList<TapeReading<FlatPanelMeasurements>> Of(FlatPanelMeasurements tape, UnitsNet.Length plusMinus, ReadingSpread spread) => Taken(
        tape,
        new("Length", plusMinus, spread, static t => t.Length, static (t, x) => t with { Length = x }),
        new("Width", plusMinus, spread, static t => t.Width, static (t, x) => t with { Width = x }),
        new("ExposedEdge", plusMinus, spread, static t => t.ExposedEdge, static (t, x) => t with { ExposedEdge = x }),
        new("EdgeHeight", plusMinus, spread, static t => t.EdgeHeight, static (t, x) => t with { EdgeHeight = x }),
        new("BacksplashLength", plusMinus, spread, static t => t.BacksplashLength, static (t, x) => t with { BacksplashLength = x }),
        new("BacksplashHeight", plusMinus, spread, static t => t.BacksplashHeight, static (t, x) => t with { BacksplashHeight = x }),
        new("BacksplashThickness", plusMinus, spread, static t => t.BacksplashThickness, static (t, x) => t with { BacksplashThickness = x }));

    /// <summary>The lengths of a fixture that is put together from parts, each with the ± that it was taken with.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The lengths that were taken and are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fixture"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="spread"/> is not a named value.</exception>
    public static IReadOnlyList<TapeReading<ComposedFixture>> Of(ComposedFixture fixture, ReadingSpread spread) => Taken(
        Guard.NotNull(fixture, nameof(fixture)),
        [.. fixture.Taken.Where(reading => reading.Measure.Equals(Measure.Length)).Select(reading => new TapeReading<ComposedFixture>(
            reading.Name, UnitsNet.Length.FromMeters(reading.PlusMinus), spread, made =>
                UnitsNet.Length.FromMeters(made.Value(reading.Name)),
            (made, length) => made.With(new TakenReading(reading.Name, length, UnitsNet.Length.FromMeters(reading.PlusMinus)))))]);

    private static ValueList<TapeReading<T>> Taken<T>(T tape, params TapeReading<T>[] readings)
        where T : class
    {
        Guard.NotNull(tape, nameof(tape));
        return new(Array.FindAll(readings, reading => reading.Value(tape).Meters != 0));
    }
}
