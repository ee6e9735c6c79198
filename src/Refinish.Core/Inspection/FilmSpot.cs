using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>A spot: at least three gauge readings within a circle of 4 cm, and their mean.</summary>
/// <remarks>SSPC-PA 2 (2004 and later), section on spot measurements: three or more readings; an unusually high or low one that does not repeat is discarded before.</remarks>
/// <example><code>
/// FilmSpot floor = new("floor", [Length.FromMils(4.6), Length.FromMils(5.0), Length.FromMils(4.8)]);
/// Length mean = floor.Mean;                    // 4.8 mil
/// </code></example>
public sealed record FilmSpot
{
    private static readonly Source Standard = Source.Published("SSPC-PA 2 (2004 and later)", "spot measurement: mean of at least three readings within 4 cm");

    private readonly ValueList<double> readings;

    /// <summary>Makes a spot.</summary>
    /// <param name="place">Where it is.</param>
    /// <param name="readings">Gauge readings, at least three, each from 0 to 10 mm; the base reading already taken off.</param>
    /// <exception cref="ArgumentException">The place is empty or there are fewer than three readings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its range.</exception>
    public FilmSpot(string place, IEnumerable<Length> readings)
    {
        Place = Guard.Named(place, nameof(place));
        this.readings = new(Guard.List(readings, nameof(readings), 3).Select(one => Guard.Within(one, Bounds.NotNegative(Measure.Film, 10e-3), nameof(readings))));
    }

    /// <summary>Where it is.</summary>
    public string Place { get; }

    /// <summary>Gauge readings.</summary>
    public IReadOnlyList<Length> Readings => [.. readings.Select(one => Length.FromMeters(one))];

    /// <summary>Mean of the readings.</summary>
    public Length Mean => Length.FromMeters(Sum() / readings.Count);

    /// <summary>How the mean follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression sum = Expression.Sum(readings.Select((one, i) => Expression.Quantity("d_" + (i + 1).ToString(CultureInfo.InvariantCulture), one, Measure.Film)));
        return new Workings("Spot, " + Place, [new("spot mean", "d_m", sum / Expression.Quantity("n", readings.Count, Measure.Number), Mean.Meters, Measure.Film, Standard)]);
    }

    /// <summary>The spot in one line, in metric units.</summary>
    /// <returns>Text such as <c>floor: 122 µm</c>.</returns>
    public override string ToString() => Place + ": " + Measure.Film.Format(Mean.Meters, DisplayUnits.Si, 3);

    private double Sum()
    {
        double sum = 0;
        foreach (double one in readings)
        {
            sum += one;
        }

        return sum;
    }
}
