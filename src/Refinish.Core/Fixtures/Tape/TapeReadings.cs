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
    /// <summary>The readings of a fixture by its record of measurements, such as <see cref="RecessedBathtubMeasurements"/>.</summary>
    /// <typeparam name="TMeasurements">The record of measurements.</typeparam>
    /// <param name="tape">What the tape gave.</param>
    /// <param name="plusMinus">The ± of each reading.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The readings that are not 0, but for drains and other small holes of a basin.</returns>
    /// <remarks>The length of a tub's floor is not among them where it follows from the mouth and the two runs.</remarks>
    /// <exception cref="ArgumentNullException"><paramref name="tape"/> is missing.</exception>
    /// <exception cref="ArgumentException">No kind of fixture of this library is measured by such a record.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.
    /// </exception>
    public static IReadOnlyList<TapeReading<TMeasurements>> Of<TMeasurements>(
        TMeasurements tape, UnitsNet.Length plusMinus, ReadingSpread spread)
        where TMeasurements : class
    {
        Guard.NotNull(tape);
        IMeasured<TMeasurements> kind = FixtureKind.All.OfType<IMeasured<TMeasurements>>().FirstOrDefault(kind => kind.Measures(tape))
            ?? throw new ArgumentException(
                "tape is a " + typeof(TMeasurements).Name + ", by which no kind of fixture of this library is measured.", nameof(tape));
        return new ValueList<TapeReading<TMeasurements>>(kind.Taken(tape, plusMinus, spread));
    }

    /// <summary>The lengths of a fixture that is put together from parts, each with the ± that it was taken with.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <param name="spread">What the ± means.</param>
    /// <returns>The lengths that were taken and are not 0.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fixture"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="spread"/> is not a named value.</exception>
    public static IReadOnlyList<TapeReading<ComposedFixture>> Of(ComposedFixture fixture, ReadingSpread spread) =>
        new ValueList<TapeReading<ComposedFixture>>(Guard.NotNull(fixture).Taken
            .Where(reading => reading.Measure.Equals(Measure.Length) && reading.Value != 0)
            .Select(reading => new TapeReading<ComposedFixture>(
                reading.Name, UnitsNet.Length.FromMeters(reading.PlusMinus), spread,
                made => UnitsNet.Length.FromMeters(made.Value(reading.Name)),
                (made, length) => made.With(new TakenReading(reading.Name, length, UnitsNet.Length.FromMeters(reading.PlusMinus))))));
}
