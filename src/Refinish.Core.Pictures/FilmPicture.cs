using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using OxyPlot;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>
/// How the wet film of a spray build is spread over thickness, zone by zone, against its two limits. Where on the fixture it is thin or
/// thick, <see cref="FilmMapDrawing"/> draws.
/// </summary>
/// <remarks>
/// Every triangle of the mesh counts by its area. All zones have one scale of thickness; each is as high as its own fullest bar.
/// </remarks>
/// <example><code>
/// string svg = new FilmPicture(map, "tub, two coats").ToSvg();     // the map of StrokePlan
/// </code></example>
public sealed class FilmPicture : Picture
{
    private readonly FilmMap map;

    /// <summary>Pictures a film map.</summary>
    /// <param name="map">The map.</param>
    /// <param name="name">What was sprayed.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public FilmPicture(FilmMap map, string name)
        : base("How even the wet film is", Given.Named(name, nameof(name))) =>
        this.map = Given.NotNull(map, nameof(map));

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units) =>
        "Wet film against at least " + Film(map.Limits.Minimum.Meters, units) + " and at most " + Film(map.Limits.WetLimit.Meters, units) + ". "
        + string.Join(" ", map.Zones.Select(zone => Name(zone) + ": " + Numbers(zone, units) + ".")) + " All: " + Numbers(map.Whole, units) + ".";

    private protected override void Draw(Page page)
    {
        page.Paragraph("All zones: " + Numbers(map.Whole, page.Units) + ".");
        double limit = map.Limits.WetLimit.Meters;
        (double Film, double Area, FixtureZoneKind? Zone)[] triangles = [.. Triangles()];

        // Up to where all but a thousandth of the area lies; what is beyond is counted in the last bar.
        double most = Math.Max(limit * 1.3, Percentile(triangles, 0.999));
        double step = Chart.Step(0, Measure.Film.Shown(most, page.Units), page.IsNarrow ? 30 : 48);
        double bin = step * most / Measure.Film.Shown(most, page.Units);
        int count = (int)Math.Ceiling((most / bin) - 1e-9);
        double end = count * bin;
        for (int i = 0; i < map.Zones.Count; i++)
        {
            FilmMapZone zone = map.Zones[i];
            double[] shares = new double[count];
            foreach ((double film, double area, _) in triangles.Where(triangle => triangle.Zone == zone.Zone))
            {
                shares[Math.Min(count - 1, (int)(film / bin))] += area / zone.Area.SquareMeters;
            }

            bool last = i == map.Zones.Count - 1;
            page.SubHeading(Name(zone) + ", " + Measure.Area.Format(zone.Area.SquareMeters, page.Units, 3));
            page.Note(Numbers(zone, page.Units));
            Histogram(page, shares, bin, end, i == 0, last);
        }

        page.Note("Share of each zone's area by wet film in " + Measure.Film.Symbol(page.Units) + ", bars of " + Figures.Significant(step, 3) + ". Hatched: under the least film; hatched the other way: over the wet limit."
            + (triangles.Any(triangle => triangle.Film > end) ? " The last bar holds what is thicker." : string.Empty));
        page.Warnings(map.Cautions.Take(1).Select(caution => caution.ToString()));
    }

    private void Histogram(Page page, double[] shares, double bin, double end, bool labelled, bool axis)
    {
        double least = map.Limits.Minimum.Meters;
        double limit = map.Limits.WetLimit.Meters;
        double most = Math.Max(shares.Max(), 1e-9);
        double head = labelled ? 20 : 4;
        double shown = Measure.Film.Shown(end, page.Units);
        Chart chart = new(
            Chart.Scale(0, shown, Chart.Round(0, shown, page.IsNarrow ? 6 : 10).Select(at => (at, axis ? Figures.Significant(at, 4) : string.Empty))),
            Chart.Hidden(0, most),
            new OxyThickness(8, head, 8, axis ? 26 : 8));
        chart.Add((sheet, at) =>
        {
            double X(double metres) => at(Measure.Film.Shown(metres, page.Units), 0).X;
            double bottom = at(0, 0).Y;
            double top = at(0, most).Y;
            for (int k = 0; k < shares.Length; k++)
            {
                double y = at(0, shares[k]).Y;

                // A bar that a limit runs through is drawn in two parts.
                foreach ((double from, double to) in Parts(k * bin, (k + 1) * bin, least, limit))
                {
                    bool under = to <= least * (1 + 1e-9);
                    bool over = from >= limit * (1 - 1e-9);
                    OxyColor line = under || over ? Ink.Vermillion : Ink.Blue;
                    double left = X(from);
                    double width = X(to) - left;
                    if (bottom - y < 0.3)
                    {
                        continue;
                    }

                    sheet.Rectangle(left, y, width, bottom - y, under || over ? Ink.VermillionTint : Ink.BlueTint, OxyColors.Transparent);
                    if (under || over)
                    {
                        sheet.Hatch(left, y, width, bottom - y, line, 6, falling: over);
                    }

                    sheet.Rectangle(left, y, width, bottom - y, OxyColors.Transparent, line, 0.8);
                }
            }

            foreach ((double at2, string words, bool isLeast) in new[] { (least, "least " + Film(least, page.Units), true), (limit, "wet limit " + Film(limit, page.Units), false) })
            {
                sheet.Line(X(at2), top - (labelled ? 6 : 2), X(at2), bottom, Ink.Line, 1.6, isLeast ? [6, 3] : null);
                if (labelled)
                {
                    bool fits = !isLeast || X(limit) - X(least) > TextWidths.Of(words, Page.Small) + 16;
                    sheet.Text(X(at2) + (fits ? 4 : -4), top - 11, words, Ink.Line, Page.Small, fits ? HorizontalAlignment.Left : HorizontalAlignment.Right);
                }
            }
        });
        chart.Draw(page, (page.IsNarrow ? 58 : 66) + head + (axis ? 26 : 8));
    }

    private static IEnumerable<(double From, double To)> Parts(double from, double to, double least, double limit)
    {
        double at = from;
        foreach (double cut in new[] { least, limit })
        {
            if (cut > at * (1 + 1e-9) && cut < to * (1 - 1e-9))
            {
                yield return (at, cut);
                at = cut;
            }
        }

        yield return (at, to);
    }

    private IEnumerable<(double Film, double Area, FixtureZoneKind? Zone)> Triangles()
    {
        IReadOnlyList<MeshTriangle> triangles = map.Mesh.Triangles;
        for (int i = 0; i < triangles.Count; i++)
        {
            MeshPoint a = map.Mesh.Vertices[triangles[i].A];
            MeshPoint b = map.Mesh.Vertices[triangles[i].B];
            MeshPoint c = map.Mesh.Vertices[triangles[i].C];
            yield return (map.WetFilm(i).Meters, Space.DoubleNormal(a, b, c).Norm() / 2, triangles[i].Zone);
        }
    }

    private static double Percentile((double Film, double Area, FixtureZoneKind? Zone)[] triangles, double share)
    {
        double left = triangles.Sum(triangle => triangle.Area) * share;
        foreach ((double film, double area, _) in triangles.OrderBy(triangle => triangle.Film))
        {
            left -= area;
            if (left <= 0)
            {
                return film;
            }
        }

        return triangles.Max(triangle => triangle.Film);
    }

    private static string Name(FilmMapZone zone) => zone.Zone is FixtureZoneKind kind ? kind.ToString("G") : "No zone";

    private static string Film(double metres, DisplayUnits units) => Measure.Film.Format(metres, units, 3);

    private static string Numbers(FilmMapZone zone, DisplayUnits units) => string.Format(
        CultureInfo.InvariantCulture,
        "mean {0}, coefficient of variation {1}; {2} of the area under the least film, {3} over the wet limit",
        Film(zone.Mean.Meters, units),
        Measure.Percent.Format(zone.Variation.DecimalFractions, units, 2),
        Part(zone.UnderMinimum.DecimalFractions),
        Part(zone.OverLimit.DecimalFractions));

    private static string Part(double share) => share is > 0 and < 1e-3 ? "under 0.1 %" : Measure.Percent.Format(Math.Round(share, 3), DisplayUnits.Si, 3);
}
