using System;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// How thick and how even the wet film is on one zone of a fixture, or on the whole of it; every triangle counts by its area.
/// </summary>
/// <example><code>
/// foreach (FilmMapZone zone in map.Zones)           // the map of StrokePlan
/// {
///     string line = zone.ToString();
/// }
/// </code></example>
public sealed record FilmMapZone
{
    private FilmMapZone()
    {
    }

    /// <summary>The zone; <see langword="null"/> for triangles without one, and for the whole fixture.</summary>
    public FixtureZoneKind? Zone { get; private init; }

    /// <summary>Area of the triangles.</summary>
    public Area Area { get; private init; }

    /// <summary>Mean wet film.</summary>
    public Length Mean { get; private init; }

    /// <summary>Wet film of the thinnest triangle.</summary>
    public Length Minimum { get; private init; }

    /// <summary>Wet film of the thickest triangle.</summary>
    public Length Maximum { get; private init; }

    /// <summary>Standard deviation over mean; 0 where nothing landed at all.</summary>
    public Ratio Variation { get; private init; }

    /// <summary>Part of the area below the least wet film, bare places included.</summary>
    public Ratio UnderMinimum { get; private init; }

    /// <summary>Part of the area above the wet limit.</summary>
    public Ratio OverLimit { get; private init; }

    /// <summary>Part of the area on which nothing landed.</summary>
    public Ratio Bare { get; private init; }

    /// <summary>The figures in one line, in metric units.</summary>
    /// <returns>Text such as <c>Floor: 71.4 µm wet on the mean, 60.1 µm to 92.3 µm, CV 9.2 %, 0 % under, 0 % over</c>.</returns>
    public override string ToString()
    {
        return (Zone is FixtureZoneKind zone ? zone.ToString() : "All") + ": " + Film(Mean) + " wet on the mean, "
            + Film(Minimum) + " to " + Film(Maximum) + ", CV " + Part(Variation) + ", " + Part(UnderMinimum) + " under, "
            + Part(OverLimit) + " over";

        static string Film(Length film) => Measure.Film.Format(film.Meters, DisplayUnits.Si, 3);

        static string Part(Ratio part) => Measure.Percent.Format(part.DecimalFractions, DisplayUnits.Si, 3);
    }

    /// <summary>
    /// The figures of the triangles for which <paramref name="belongs"/> holds; <see langword="null"/> when they have no area.
    /// </summary>
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
                under += film < limits.Minimum.Meters ? areas[i] : 0;
                over += film > limits.WetLimit.Meters ? areas[i] : 0;
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

        return new FilmMapZone
        {
            Zone = zone,
            Area = Area.FromSquareMeters(area),
            Mean = Length.FromMeters(mean),
            Minimum = Length.FromMeters(lowest),
            Maximum = Length.FromMeters(highest),
            Variation = Ratio.FromDecimalFractions(mean > 0 ? Math.Sqrt(squares / area) / mean : 0),
            UnderMinimum = Ratio.FromDecimalFractions(under / area),
            OverLimit = Ratio.FromDecimalFractions(over / area),
            Bare = Ratio.FromDecimalFractions(bare / area),
        };
    }
}
