using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using OxyPlot;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Pictures.Drafting;

/// <summary>
/// Views of a fixture that is put together from parts, drawn from its mesh. A reading stands on a dimension line where it is the extent of
/// the whole or of a zone, and grows with it.
/// </summary>
internal static class ComposedDraft
{
    private const string Glass = "A bowl is drawn by its inside, as if what is before it were glass.";

    // Longer words find no room on a narrow page and stay in the key.
    private const int LongestLabel = 30;

    // Finer than a line is wide; coarse where only the extent counts.
    private static readonly Length Fine = Length.FromMillimeters(1);
    private static readonly Length Coarse = Length.FromMillimeters(20);

    public static Blueprint Of(ComposedFixture fixture, DisplayUnits units)
    {
        TriangleMesh mesh = fixture.Tessellate(Fine);
        MeshView[] all =
        [
            new("From above", mesh, p => new(p.X, -p.Y, p.Z)), new("From the front", mesh, p => new(p.X, -p.Z, -p.Y)),
            new("From below", mesh, p => new(p.X, p.Y, -p.Z)), new("From the left", mesh, p => new(-p.Y, -p.Z, -p.X)),
            new("From the right", mesh, p => new(p.Y, -p.Z, p.X)),
        ];
        HashSet<string> written = new(StringComparer.Ordinal);
        View[] views = [.. Chosen(fixture, all).Select(view => Drawn(fixture, view, all, written))];
        string[] bowls = fixture.Zones.Any(zone => zone.Kind == FixtureZoneKind.Bowl) ? [Glass] : [];
        return new Blueprint(
            views,
            [.. fixture.Taken.Where(reading => reading.Value != 0 && !written.Contains(reading.Name)).Select(
                reading => Told(fixture, reading, units))],
            ["Coated: " + fixture.Kind.Coated + ".", .. fixture.Kind.NotCoated.Select(Sentence), .. bowls, Words.PlacesAreUsual]);
    }

    // From above and from the front, and from where a zone is seen that they do not show.
    private static IEnumerable<MeshView> Chosen(ComposedFixture fixture, MeshView[] all)
    {
        List<MeshView> chosen = [.. all.Take(2).Where(view => fixture.Zones.Any(zone => view.Seen(zone.Kind) is not null))];
        chosen.AddRange(fixture.Zones.Where(zone => chosen.TrueForAll(view => view.Seen(zone.Kind) is null)).Select(
            zone => Best(all, zone.Kind)));
        return chosen.Distinct();
    }

    private static MeshView Best(IReadOnlyList<MeshView> views, FixtureZoneKind zone) =>
        views.OrderByDescending(view => view.Seen(zone)?.Size ?? 0).First();

    private static View Drawn(ComposedFixture fixture, MeshView view, MeshView[] all, HashSet<string> written)
    {
        DataPoint[][] lines = [.. view.Lines()];
        double left = lines.Min(line => line.Min(point => point.X));
        double top = lines.Min(line => line.Min(point => point.Y));
        View page = new(
            view.Name, lines.Max(line => line.Max(point => point.X)) - left,
            Math.Max(0.01, lines.Max(line => line.Max(point => point.Y)) - top));
        foreach (DataPoint[] line in lines)
        {
            page.Edge([.. line.Select(point => new DataPoint(point.X - left, point.Y - top))]);
        }

        foreach (FixtureZoneKind? part in fixture.Zones.Select(zone => (FixtureZoneKind?)zone.Kind).Prepend(null))
        {
            Measure(fixture, view, part, page, (left, top), written);
        }

        MeshView[] shown = [.. Chosen(fixture, all)];
        foreach (FixtureZone zone in fixture.Zones.Where(zone => Best(shown, zone.Kind) == view))
        {
            DataPoint at = view.Seen(zone.Kind)!.Value.At;
            page.Zone(zone.Kind, at.X - left, at.Y - top);
        }

        return page;
    }

    private static void Measure(
        ComposedFixture fixture, MeshView view, FixtureZoneKind? part, View page, (double X, double Y) corner, HashSet<string> written)
    {
        (double left, double top, double right, double bottom) = view.Extent(fixture.Tessellate(Coarse), part);
        bool whole = part is null;
        if (Measured(fixture, right - left, made => Across(view.Extent(made, part)), written) is InputField across)
        {
            page.Measured(
                whole ? Side.Top : Side.Bottom, left - corner.X, right - corner.X, (whole ? top : bottom) - corner.Y, Label(across),
                Length.FromMeters(right - left));
        }

        if (Measured(fixture, bottom - top, made => Down(view.Extent(made, part)), written) is InputField down)
        {
            page.Measured(
                whole ? Side.Right : Side.Left, top - corner.Y, bottom - corner.Y, (whole ? right : left) - corner.X, Label(down),
                Length.FromMeters(bottom - top));
        }
    }

    private static double Across((double Left, double Top, double Right, double Bottom) box) => box.Right - box.Left;

    private static double Down((double Left, double Top, double Right, double Bottom) box) => box.Bottom - box.Top;

    // A reading that happens to be as long as the extent of something else does not grow with it.
    private static InputField? Measured(ComposedFixture fixture, double extent, Func<TriangleMesh, double> of, HashSet<string> written)
    {
        const double More = 1e-3;
        foreach (InputField reading in fixture.Kind.Readings.Where(reading => reading.Measure.Equals(Refinish.Measure.Length)
            && Label(reading).Length <= LongestLabel && !written.Contains(reading.Name) && extent >= 0.02
                && Math.Abs(fixture.Value(reading.Name) - extent) < 1e-6))
        {
            foreach (double change in new[] { More, -More })
            {
                if (Changed(fixture, reading, extent + change) is ComposedFixture made
                    && Math.Abs(of(made.Tessellate(Coarse)) - extent - change) < 1e-6)
                {
                    written.Add(reading.Name);
                    return reading;
                }
            }
        }

        return null;
    }

    // What stands behind a comma explains and is for the key.
    private static string Label(InputField reading) => reading.Meaning.Split(',', ';')[0];

    private static ComposedFixture? Changed(ComposedFixture fixture, InputField reading, double metres)
    {
        try
        {
            return fixture.With(new TakenReading(reading.Name, Length.FromMeters(metres)));
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static string Sentence(UncoatedSurface surface) => char.ToUpperInvariant(surface.Name[0]) + surface.ToString().Substring(1)
        + ".";

    private static string Told(ComposedFixture fixture, TakenReading reading, DisplayUnits units)
    {
        string words = fixture.Kind.Readings.First(known => known.Name == reading.Name).Meaning;
        return string.Format(CultureInfo.InvariantCulture, "{0} {1}", words, reading.Measure.Format(reading.Value, units, 4));
    }
}
