using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using OxyPlot;
using Refinish.Fixtures;
using Refinish.Pictures.Drafting;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>A fixture as a technical drawing: its views at one scale with every measured length, and its zones with their areas.</summary>
/// <remarks>
/// Lengths stand on dimension lines; diameters, radii and what is too small for a line are numbered points with a key below; zones carry
/// letters. Where drain, overflow, holes and cut-outs lie is not measured: they are drawn where they usually are. Composed kinds are drawn
/// from their mesh; a <see cref="ZonedFixture"/> from its own, or, where it has none, as one square for each part. Any other kind that this
/// package does not know is described by its zones alone.
/// </remarks>
/// <example><code>
/// RecessedBathtubMeasurements tape = new()
/// {
///     RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
///     FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
///     Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2), CoveRadius = Length.FromInches(2.5),
///     OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
///     DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
/// };
/// string svg = new FixturePicture(new RecessedBathtub(tape), "bathtub").ToSvg(new PictureStyle { Units = DisplayUnits.UsCustomary });
/// </code></example>
public sealed class FixturePicture : Picture
{
    private readonly IFixture fixture;

    /// <summary>Pictures a fixture.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <param name="name">What the customer calls it.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    public FixturePicture(IFixture fixture, string name)
        : base(name) =>
        this.fixture = Given.NotNull(fixture, nameof(fixture));

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units)
    {
        Blueprint blueprint = FixtureDrafts.Of(fixture, units);
        IEnumerable<string> lengths = blueprint.Views
            .Select(view => view.Name + ": " + string.Join(", ", view.All.Select(dimension => dimension.Words + " " + Measure.Length.Format(dimension.Length, units, 4)).Concat(view.Points.Select(point => point.Words)).Distinct()) + ".");
        return (Assumed(units) ?? "Drawing with measured lengths.") + " " + string.Join(" ", lengths)
            + (blueprint.Further.Count > 0 ? " Further: " + string.Join(", ", blueprint.Further) + "." : string.Empty)
            + " Coated " + Measure.Area.Format(fixture.CoatedArea.SquareMeters, units, 4) + ": " + string.Join(", ", fixture.Zones.Select(zone => Zone(zone, units))) + ".";
    }

    private protected override void Draw(Page page)
    {
        page.Paragraph(
            "Coated area " + Measure.Area.Format(fixture.CoatedArea.SquareMeters, page.Units, 4) + ", edge to be taped " + Measure.Distance.Format(fixture.MaskedEdge.Meters, page.Units, 3)
            + (fixture.WaterCapacity is { } water
                ? ", would hold " + Measure.Capacity.Format(water.CubicMeters, page.Units, 3)
                + (fixture is ZonedFixture ? string.Empty : " to the rim") : string.Empty) + ".");
        if (Assumed(page.Units) is string assumed)
        {
            page.Paragraph(assumed);
        }

        Blueprint blueprint = FixtureDrafts.Of(fixture, page.Units);
        if (blueprint.Views.Count == 0)
        {
            page.Paragraph("There is no drawing for this kind of fixture; its zones are listed. As a ZonedFixture it is drawn.");
        }

        IReadOnlyList<FixtureZone> zones = fixture.Zones;
        char? Letter(FixtureZoneKind kind)
        {
            for (int i = 0; i < zones.Count; i++)
            {
                if (zones[i].Kind == kind)
                {
                    return (char)('A' + i);
                }
            }

            return null;
        }

        List<(string Words, Action<double, double>? Mark)> key = [];
        int number = 0;
        foreach (string words in BlueprintPainter.Draw(page, blueprint, Letter))
        {
            int own = ++number;
            key.Add((words, (x, y) => BlueprintPainter.NumberMark(page.Sheet, x, y, own)));
        }

        key.AddRange(blueprint.Further.Select(words => (words, (Action<double, double>?)null)));
        page.Y += 6;
        Key(page, key);
        page.Y += 4;
        page.SubHeading("Zones");
        Key(page, [.. zones.Select(zone => (Zone(zone, page.Units), (Action<double, double>?)((x, y) => Letterbox(page.Sheet, x, y, Letter(zone.Kind)))))]);
        page.Y += 4;
        foreach (string remark in blueprint.Remarks)
        {
            page.Note(remark);
        }
    }

    // Nobody takes an assumed length, or a square, for something that was measured.
    private string? Assumed(DisplayUnits units) => fixture switch
    {
        RoughFixture { IsMeasured: false } rough => string.Format(CultureInfo.InvariantCulture,
            "Drawn from {0} of {1} readings; the other lengths are assumed, its area may be {2}.", rough.Taken.Count,
            rough.Kind.Readings.Count, rough.AreaRange.Sentence(units)),
        ZonedFixture { Mesh: TriangleMesh mesh } => string.Format(
            CultureInfo.InvariantCulture, "Drawn from a mesh of {0} triangles.", mesh.Triangles.Count),
        ZonedFixture => "Drawn from areas alone: each part is a square of its own area.",
        _ => null,
    };

    private static string Zone(FixtureZone zone, DisplayUnits units) => string.Format(
        CultureInfo.InvariantCulture,
        "{0} {1}, {2}",
        zone.Kind.ToString("G").ToLowerInvariant(),
        Measure.Area.Format(zone.Area.SquareMeters, units, 3),
        Slope(zone.SlopeFromHorizontal, units));

    private static string Slope(UnitsNet.Angle slope, DisplayUnits units) => slope.Degrees switch
    {
        < 0.5 => "level",
        <= 89.5 => Measure.Angle.Format(slope.Radians, units, 2) + " from level",
        < 90.5 => "upright",
        < 179.5 => "looking down, " + Measure.Angle.Format(Math.PI - slope.Radians, units, 2) + " from level",
        _ => "looking straight down",
    };

    private static void Letterbox(Sheet sheet, double x, double y, char? letter)
    {
        sheet.Rectangle(x - 8, y - 8, 16, 16, Ink.Paper, Ink.Line);
        sheet.Text(x, y, letter?.ToString() ?? string.Empty, Ink.Line, Page.Small, HorizontalAlignment.Center, bold: true);
    }

    // In two columns where the page is wide enough, down the first one first.
    private static void Key(Page page, List<(string Words, Action<double, double>? Mark)> entries)
    {
        int columns = page.IsNarrow ? 1 : 2;
        int rows = (entries.Count + columns - 1) / columns;
        double width = page.Inside / columns;
        double top = page.Y;
        double deepest = top;
        for (int column = 0; column < columns; column++)
        {
            double x = page.Left + (column * width);
            double y = top;
            foreach ((string words, Action<double, double>? mark) in entries.Skip(column * rows).Take(rows))
            {
                mark?.Invoke(x + 9, y + 10);
                foreach (string line in TextWidths.Wrapped(words, Page.Small, width - 34))
                {
                    page.Sheet.Text(x + 26, y + 10, line, Ink.Line, Page.Small);
                    y += 17;
                }

                y += 5;
            }

            deepest = Math.Max(deepest, y);
        }

        page.Y = deepest;
    }
}
