using System;
using System.Globalization;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Films;

/// <summary>How thick and how even the wet film is on one zone of a fixture, or on the whole of it; every triangle counts by its area.</summary>
/// <example><code>
/// foreach (FilmMapZone zone in map.Zones)           // the map of StrokePlan
/// {
///     string line = zone.ToString();
/// }
/// </code></example>
public sealed record FilmMapZone
{
    private readonly double area;
    private readonly double mean;
    private readonly double minimum;
    private readonly double maximum;
    private readonly double variation;
    private readonly double under;
    private readonly double over;
    private readonly double bare;

    private FilmMapZone(FixtureZoneKind? zone, double area, double mean, double minimum, double maximum, double variation, double under, double over, double bare)
    {
        Zone = zone;
        this.area = area;
        this.mean = mean;
        this.minimum = minimum;
        this.maximum = maximum;
        this.variation = variation;
        this.under = under;
        this.over = over;
        this.bare = bare;
    }

    /// <summary>The zone; <see langword="null"/> for triangles without one, and for the whole fixture.</summary>
    public FixtureZoneKind? Zone { get; }

    /// <summary>Area of the triangles.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>Mean wet film.</summary>
    public Length Mean => Length.FromMeters(mean);

    /// <summary>Wet film of the thinnest triangle.</summary>
    public Length Minimum => Length.FromMeters(minimum);

    /// <summary>Wet film of the thickest triangle.</summary>
    public Length Maximum => Length.FromMeters(maximum);

    /// <summary>Standard deviation over mean; 0 where nothing landed at all.</summary>
    public Ratio Variation => Ratio.FromDecimalFractions(variation);

    /// <summary>Part of the area below the least wet film, bare places included.</summary>
    public Ratio UnderMinimum => Ratio.FromDecimalFractions(under);

    /// <summary>Part of the area above the wet limit.</summary>
    public Ratio OverLimit => Ratio.FromDecimalFractions(over);

    /// <summary>Part of the area on which nothing landed.</summary>
    public Ratio Bare => Ratio.FromDecimalFractions(bare);

    /// <summary>The figures in one line, in metric units.</summary>
    /// <returns>Text such as <c>Floor: 71.4 µm wet on the mean, 60.1 µm to 92.3 µm, CV 9.2 %, 0 % under, 0 % over</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}: {1} wet on the mean, {2} to {3}, CV {4}, {5} under, {6} over",
        Zone is FixtureZoneKind zone ? zone.ToString() : "All",
        Measure.Film.Format(mean, DisplayUnits.Si, 3),
        Measure.Film.Format(minimum, DisplayUnits.Si, 3),
        Measure.Film.Format(maximum, DisplayUnits.Si, 3),
        Measure.Percent.Format(variation, DisplayUnits.Si, 3),
        Measure.Percent.Format(under, DisplayUnits.Si, 3),
        Measure.Percent.Format(over, DisplayUnits.Si, 3));

    /// <summary>The figures of the triangles for which <paramref name="belongs"/> holds; <see langword="null"/> when they have no area.</summary>
    internal static FilmMapZone? Of(FixtureZoneKind? zone, double[] films, double[] areas, SprayFilmLimits limits, Func<int, bool> belongs)
    {
        double area = 0, volume = 0, under = 0, over = 0, bare = 0;
        double lowest = double.MaxValue;
        double highest = 0;
        for (int i = 0; i < films.Length; i++)
        {
            if (areas[i] > 0 && belongs(i))
            {
                double film = films[i];
                area += areas[i];
                volume += film * areas[i];
                under += film < limits.MinimumSi ? areas[i] : 0;
                over += film > limits.WetLimitSi ? areas[i] : 0;
                bare += film == 0 ? areas[i] : 0;
                lowest = Math.Min(lowest, film);
                highest = Math.Max(highest, film);
            }
        }

        if (area == 0)
        {
            return null;
        }

        double mean = volume / area;
        double squares = 0;
        for (int i = 0; i < films.Length; i++)
        {
            if (areas[i] > 0 && belongs(i))
            {
                squares += (films[i] - mean) * (films[i] - mean) * areas[i];
            }
        }

        return new FilmMapZone(zone, area, mean, lowest, highest, mean > 0 ? Math.Sqrt(squares / area) / mean : 0, under / area, over / area, bare / area);
    }
}
