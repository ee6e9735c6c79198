using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>A spot: at least three gauge readings within a circle of 4 cm, and their mean.</summary>
/// <remarks>
/// SSPC-PA 2 (2004 and later), section on spot measurements: three or more readings; an unusually high or low one that does not repeat
/// is discarded before.
/// </remarks>
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
        Place = Guard.Named(place);
        this.readings = new(Guard.List(readings, 3).Select(one =>
            Guard.Within(one, Bounds.NotNegative(Measure.Film, 10e-3), nameof(readings))));
    }

    /// <summary>Where it is.</summary>
    public string Place { get; }

    /// <summary>Gauge readings.</summary>
    public IReadOnlyList<Length> Readings => [.. readings.Select(one => Length.FromMeters(one))];

    /// <summary>Mean of the readings.</summary>
    public Length Mean => Length.FromMeters(MeanOf().Value);

    /// <summary>How the mean follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Spot, " + Place, MeanOf);

    /// <summary>The spot in one line, in metric units.</summary>
    /// <returns>Text such as <c>floor: 122 µm</c>.</returns>
    public override string ToString() => Place + ": " + Measure.Film.Format(Mean.Meters, DisplayUnits.Si, 3);

    private Num MeanOf(Trace? t = null) =>
        t.Step("spot mean", "d_m", Measure.Film, Standard, StatisticsKernel.Mean(readings, t, "d_", Measure.Film));
}
