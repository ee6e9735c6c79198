using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Text;
using Refinish.Films;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// The film as a drawing: zones at one scale, small squares in classed colours, figures as text. It brings its own paper, light or dark
/// as the reader's system asks.
/// </summary>
internal static class FilmMapSvg
{
    private const int Sheet = 960;
    private const int Margin = 28;
    private const int Inside = Sheet - (2 * Margin);
    private const int Square = 2;
    private const int LeastBlock = 280;
    private const double MostPixelsPerMetre = 750;
    private const int Caption = 62;

    public static void Write(FilmMap map, Stream stream, string title, DisplayUnits system)
    {
        List<FilmMapChart> charts = [];
        double widest = 1e-3;
        foreach (FilmMapZone zone in map.Zones)
        {
            FilmMapChart chart = FilmMapChart.Of(map.Mesh, zone.Zone);
            charts.Add(chart);
            widest = Math.Max(widest, chart.Width);
        }

        double scale = Math.Min(MostPixelsPerMetre, (Inside - (2 * Square)) / widest);
        StringBuilder body = new();
        int y = Heading(body, map, title, system);
        int x = Margin;
        int row = 0;
        for (int i = 0; i < charts.Count; i++)
        {
            int width = Math.Max(LeastBlock, (int)Math.Ceiling(charts[i].Width * scale) + Square);
            int height = Caption + (int)Math.Ceiling(charts[i].Height * scale) + Square;
            if (x > Margin && x + width > Sheet - Margin)
            {
                x = Margin;
                y += row + 26;
                row = 0;
            }

            Zone(body, map, charts[i], map.Zones[i], x, y, scale, system);
            x += width + 30;
            row = Math.Max(row, height);
        }

        y += row + 30;
        y = Ruler(body, y, scale, system);
        StringBuilder text = new();
        Line(text, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0} {1}\" width=\"{0}\" height=\"{1}\" role=\"img\" aria-label=\"{2}\">", Sheet, y, Xml.Escaped(title));
        Line(text, "<title>{0}</title>", Xml.Escaped(title));
        Styles(text);
        Line(text, "<rect class=\"paper\" width=\"{0}\" height=\"{1}\" rx=\"10\"/>", Sheet, y);
        text.Append(body).Append("</svg>\n");
        byte[] bytes = new UTF8Encoding(false).GetBytes(text.ToString());
        stream.Write(bytes, 0, bytes.Length);
    }

    private static void Styles(StringBuilder text)
    {
        text.Append("<style>\ntext{font-family:system-ui,\"Segoe UI\",\"DejaVu Sans\",Helvetica,Arial,sans-serif;fill:#22272e}\n")
            .Append(".h{font-size:21px;font-weight:600}.z{font-size:15px;font-weight:600}.n{font-size:13px}.s{font-size:12px}.q{fill:#57606a}\n")
            .Append(".paper{fill:#fbfaf7}.line{stroke:#57606a;stroke-width:1.5;fill:none}.edge{stroke:#8a8f98;stroke-width:0.75;fill:none}\n");
        for (int dark = 0; dark < 2; dark++)
        {
            if (dark == 1)
            {
                text.Append("@media (prefers-color-scheme:dark){text{fill:#e6e8eb}.q{fill:#aab2bd}.paper{fill:#15191e}.line{stroke:#aab2bd}\n");
            }

            for (int step = 0; step < FilmMapScale.Count; step++)
            {
                Line(text, ".c{0}{{fill:#{1:x6}}}", step, FilmMapScale.Colour(step, dark == 1));
            }
        }

        text.Append("}\n.m{stroke-width:1.4}.thin{stroke:#fff}.under{stroke:#7c2d12}.over{fill:#fff}\n</style>\n<defs>\n")
            .Append("<pattern id=\"thin\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\"><rect class=\"c1\" width=\"6\" height=\"6\"/><path class=\"m thin\" d=\"M0 6L6 0M-1 1L1 -1M5 7L7 5\"/></pattern>\n")
            .Append("<pattern id=\"under\" width=\"7\" height=\"7\" patternUnits=\"userSpaceOnUse\"><rect class=\"c2\" width=\"7\" height=\"7\"/><path class=\"m under\" d=\"M0 7L7 0M-1 1L1 -1M6 8L8 6\"/></pattern>\n")
            .Append("<pattern id=\"over\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\"><rect class=\"c11\" width=\"6\" height=\"6\"/><circle class=\"over\" cx=\"3\" cy=\"3\" r=\"1\"/></pattern>\n</defs>\n");
    }

    private static int Heading(StringBuilder text, FilmMap map, string title, DisplayUnits system)
    {
        int y = Margin + 20;
        Text(text, "h", Margin, y, title);
        y += 26;
        SprayBalance balance = map.Balance;
        Text(text, "n", Margin, y, string.Format(
            CultureInfo.InvariantCulture,
            "{0} strokes, {1} sprayed: {2} landed, {3} overspray. Whole: {4}",
            map.Plan.Strokes.Count, Liquid(balance.Sprayed), Liquid(balance.Landed), Liquid(balance.Overspray),
            Numbers(map.Whole, system)));
        y += 22;
        Text(text, "s q", Margin, y, "Wet film in " + Measure.Film.Symbol(system) + ". Hatched: under the minimum. Dotted: over the wet limit.");
        y += 16;
        return Legend(text, map.Limits, y, system);

        string Liquid(Volume volume) => Measure.Liquid.Format(volume.CubicMeters, system, 3);
    }

    private static int Legend(StringBuilder text, SprayFilmLimits limits, int y, DisplayUnits system)
    {
        int x = Margin;
        Swatch("bare", FilmMapScale.Bare, 54);
        Swatch("under " + Film(limits.Minimum.Meters / 2), FilmMapScale.Thin, 78);
        Swatch("to " + Film(limits.Minimum.Meters), FilmMapScale.Under, 66);
        x += 8;
        double step = (limits.WetLimit.Meters - limits.Minimum.Meters) / FilmMapScale.Steps;
        for (int k = 0; k < FilmMapScale.Steps; k++)
        {
            Swatch((k == 0 ? "from " : string.Empty) + Film(limits.Minimum.Meters + (k * step)), FilmMapScale.First + k, k == 0 ? 66 : 56);
        }

        x += 8;
        Swatch("over " + Film(limits.WetLimit.Meters), FilmMapScale.Over, 84);
        return y + 58;

        string Film(double metres) => Figures.Significant(Measure.Film.Shown(metres, system), 3);

        void Swatch(string words, int colour, int width)
        {
            Line(text, "<rect {0} x=\"{1}\" y=\"{2}\" width=\"{3}\" height=\"15\"/>", Fill(colour), x, y, width);
            Text(text, "s", x, y + 30, words);
            x += width;
        }
    }

    private static void Zone(StringBuilder text, FilmMap map, FilmMapChart chart, FilmMapZone zone, int x, int y, double scale, DisplayUnits system)
    {
        Line(
            text, "<text x=\"{0}\" y=\"{1}\"><tspan class=\"z\">{2}</tspan><tspan class=\"s q\" dx=\"8\">{3}, {4}</tspan></text>",
            x, y + 14, zone.Zone is FixtureZoneKind kind ? kind.ToString() : "No zone", chart.View,
            Xml.Escaped(Measure.Area.Format(zone.Area.SquareMeters, system, 3)));
        Text(text, "s", x, y + 32, Numbers(zone, system));
        Text(text, "s", x, y + 48, Fractions(zone));
        int columns = (int)Math.Ceiling(chart.Width * scale / Square) + 1;
        int rows = (int)Math.Ceiling(chart.Height * scale / Square) + 1;
        int[] steps = Squares(map, chart, columns, rows, scale / Square);
        StringBuilder[] paths = new StringBuilder[FilmMapScale.Count];
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns;)
            {
                int step = steps[(row * columns) + column];
                int end = column + 1;
                while (end < columns && steps[(row * columns) + end] == step)
                {
                    end++;
                }

                if (step >= 0)
                {
                    Line(paths[step] ??= new(), "M{0} {1}h{2}v{3}h-{2}z", column * Square, row * Square, (end - column) * Square, Square);
                }

                column = end;
            }
        }

        Line(text, "<g transform=\"translate({0} {1})\" shape-rendering=\"crispEdges\">", x, y + Caption);
        for (int step = 0; step < paths.Length; step++)
        {
            if (paths[step] is StringBuilder path)
            {
                Line(text, "<path {0} d=\"{1}\"/>", Fill(step), path.Replace("\n", string.Empty));
            }
        }

        text.Append("</g>\n");
    }

    /// <summary>The colour of each small square, −1 where the zone does not reach.</summary>
    private static int[] Squares(FilmMap map, FilmMapChart chart, int columns, int rows, double perMetre)
    {
        double[] sum = new double[columns * rows];
        double[] weight = new double[columns * rows];
        double[] atVertices = FilmMapPly.AtVertices(map, chart.Triangles);
        for (int i = 0; i < chart.Triangles.Count; i++)
        {
            MeshTriangle t = map.Mesh.Triangles[chart.Triangles[i]];
            double ax = chart.Corners[6 * i] * perMetre, ay = chart.Corners[(6 * i) + 1] * perMetre;
            double bx = chart.Corners[(6 * i) + 2] * perMetre, by = chart.Corners[(6 * i) + 3] * perMetre;
            double cx = chart.Corners[(6 * i) + 4] * perMetre, cy = chart.Corners[(6 * i) + 5] * perMetre;
            double area = ((bx - ax) * (cy - ay)) - ((by - ay) * (cx - ax));
            if (area == 0)
            {
                continue;
            }

            int right = (int)Math.Max(ax, Math.Max(bx, cx));
            int low = (int)Math.Max(ay, Math.Max(by, cy));
            for (int row = (int)Math.Min(ay, Math.Min(by, cy)); row <= low; row++)
            {
                for (int column = (int)Math.Min(ax, Math.Min(bx, cx)); column <= right; column++)
                {
                    double px = column + 0.5;
                    double py = row + 0.5;
                    double u = (((px - ax) * (cy - ay)) - ((py - ay) * (cx - ax))) / area;
                    double v = (((bx - ax) * (py - ay)) - ((by - ay) * (px - ax))) / area;
                    if (u >= 0 && v >= 0 && u + v <= 1)
                    {
                        Add(column, row, ((1 - u - v) * atVertices[t.A]) + (u * atVertices[t.B]) + (v * atVertices[t.C]));
                    }
                }
            }
        }

        void Add(int column, int row, double film)
        {
            int at = (Math.Min(rows - 1, row) * columns) + Math.Min(columns - 1, column);
            sum[at] += film;
            weight[at]++;
        }

        int[] steps = new int[sum.Length];
        for (int i = 0; i < steps.Length; i++)
        {
            steps[i] = weight[i] > 0 ? FilmMapScale.Step(sum[i] / weight[i], map.Limits) : -1;
        }

        return steps;
    }

    private static int Ruler(StringBuilder text, int y, double scale, DisplayUnits system)
    {
        double metres = system == DisplayUnits.UsCustomary ? 12 * 0.0254 : 0.2;
        int width = (int)Math.Round(metres * scale);
        Line(text, "<path class=\"line\" d=\"M{0} {1}v8h{2}v-8\"/>", Margin, y - 4, width);
        Text(text, "s", Margin + width + 10, y + 6, Measure.Length.Format(metres, system) + ", all zones at one scale");
        return y + 28;
    }

    private static string Numbers(FilmMapZone zone, DisplayUnits system) =>
        "mean " + Measure.Film.Format(zone.Mean.Meters, system, 3) + ", least " + Measure.Film.Format(zone.Minimum.Meters, system, 3)
        + ", most " + Measure.Film.Format(zone.Maximum.Meters, system, 3) + ", CV "
        + Measure.Percent.Format(zone.Variation.DecimalFractions, system, 2);

    private static string Fractions(FilmMapZone zone) =>
        Part(zone.UnderMinimum.DecimalFractions) + " under the minimum, " + Part(zone.OverLimit.DecimalFractions) + " over the wet limit";

    private static string Part(double fraction) => fraction is > 0 and < 1e-3 ? "under 0.1 %" : Measure.Percent.Format(Math.Round(fraction, 3), DisplayUnits.Si, 3);

    private static string Fill(int step) => step switch
    {
        FilmMapScale.Thin => "fill=\"url(#thin)\"",
        FilmMapScale.Under => "fill=\"url(#under)\"",
        FilmMapScale.Over => "fill=\"url(#over)\"",
        _ => "class=\"c" + step.ToString(CultureInfo.InvariantCulture) + "\"",
    };

    private static void Text(StringBuilder text, string style, int x, int y, string words) =>
        Line(text, "<text class=\"{0}\" x=\"{1}\" y=\"{2}\">{3}</text>", style, x, y, Xml.Escaped(words));

    private static void Line(StringBuilder text, string format, params object[] arguments) =>
        text.AppendFormat(CultureInfo.InvariantCulture, format, arguments).Append('\n');
}
