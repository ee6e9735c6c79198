using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Between which areas a rough fixture may lie, and which open reading is worth taking next.</summary>
/// <remarks>
/// Least and greatest are searched for over all open readings at once, each in turn at the ends, the middle and the quarters of its band
/// until none widens the range; a search and no proof. The tests hold it to a thousand fixtures drawn within the bands of each kind.
/// </remarks>
/// <example><code>
/// AreaRange range = RoughFixture.RecessedBathtub(Length.FromInches(60), Length.FromInches(30)).AreaRange;
/// double squareFeet = range.Likely.SquareFeet;
/// </code></example>
public sealed record AreaRange
{
    private readonly double least;
    private readonly double likely;
    private readonly double greatest;

    internal AreaRange(double least, double likely, double greatest, IEnumerable<OpenReading> readings)
    {
        this.least = least;
        this.likely = likely;
        this.greatest = greatest;
        Readings = new ValueList<OpenReading>(readings
            .OrderByDescending(reading => reading.NarrowingSquareMeters)
            .ThenBy(reading => reading.Name, System.StringComparer.Ordinal));
    }

    /// <summary>Least area.</summary>
    public Area Least => Area.FromSquareMeters(least);

    /// <summary>Area with every open reading at its most likely value.</summary>
    public Area Likely => Area.FromSquareMeters(likely);

    /// <summary>Greatest area.</summary>
    public Area Greatest => Area.FromSquareMeters(greatest);

    /// <summary>The open readings, the one whose taking narrows the range most first.</summary>
    public IReadOnlyList<OpenReading> Readings { get; }

    /// <summary>The reading whose taking narrows the range most; <see langword="null"/> when none narrows it.</summary>
    public OpenReading? Next => Readings.Count > 0 && Readings[0].NarrowingSquareMeters > 0 ? Readings[0] : null;

    /// <summary>Least, most likely and greatest area in one line, in metric units.</summary>
    /// <returns>Text such as <c>2.1 m² to 3.4 m², most likely 2.6 m²</c>.</returns>
    public override string ToString() => Sentence(DisplayUnits.Si);

    /// <summary>Least, most likely and greatest area in one line.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>2.1 m² to 3.4 m², most likely 2.6 m²</c>.</returns>
    public string Sentence(DisplayUnits system) => Measure.Area.Format(least, system, 3) + " to " + Measure.Area.Format(greatest, system, 3)
        + ", most likely " + Measure.Area.Format(likely, system, 3);
}
