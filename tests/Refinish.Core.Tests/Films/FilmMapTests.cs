using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml.Linq;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Films;

public class FilmMapTests
{
    private static readonly StrokeSettings Long = SprayScene.Hand with { Overlap = Ratio.FromDecimalFractions(1.0 / 3), TriggerLead = Length.FromMeters(0.3) };

    [Fact]
    [Evidence(Basis.Independent, "closed form of parallel parabolic strokes: a panel one spacing wide has the mean, the extremes and the variation of StrokeOverlap")]
    public void Figures_of_a_panel_are_those_of_the_closed_form()
    {
        FanPattern pattern = SprayScene.Patterns[2];
        StrokeOverlap closed = new(SprayScene.Gun, pattern, Long);
        double spacing = closed.Spacing.Meters;
        StrokePlan plan = StrokePlan.OverPanel(SprayScene.Gun, pattern, Long, Length.FromMeters(0.3), Length.FromMeters(2));
        double from = plan.Strokes[plan.Strokes.Count / 2].Start.Y;
        FilmMap map = plan.SprayOnto(SprayScene.Panel(0, from, 0.3, from + spacing), Length.FromMillimeters(5), SprayScene.Limits);
        Numbers.Close(closed.MeanWetFilm.Meters, map.Whole.Mean.Meters, 1e-3);
        Numbers.Near(closed.MaximumOverMean.DecimalFractions, map.Whole.Maximum / map.Whole.Mean, 2e-3);
        Numbers.Near(closed.MinimumOverMean.DecimalFractions, map.Whole.Minimum / map.Whole.Mean, 5e-3);
        Numbers.Near(closed.Variation.DecimalFractions, map.Whole.Variation.DecimalFractions, 1e-3);
        FilmMapZone zone = Assert.Single(map.Zones);
        Assert.Equal(FixtureZoneKind.Top, zone.Zone);
        Numbers.Close(map.Balance.Landed.CubicMeters, zone.Mean.Meters * zone.Area.SquareMeters, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Identity, "two coats crossed: CV / √2 of one coat of the same pattern and twice the mean")]
    public void Crossed_coats_are_evener()
    {
        FanPattern pattern = SprayScene.Patterns[2];
        StrokeOverlap closed = new(SprayScene.Gun, pattern, Long);
        StrokePlan plan = StrokePlan.CrossedOverPanel(SprayScene.Gun, pattern, Long, Length.FromMeters(1.6), Length.FromMeters(1.6));
        double half = closed.Spacing.Meters / 2;
        FilmMap map = plan.SprayOnto(SprayScene.Panel(0.8 - half, 0.8 - half, 0.8 + half, 0.8 + half), Length.FromMillimeters(5), SprayScene.Limits);
        Numbers.Close(2 * closed.MeanWetFilm.Meters, map.Whole.Mean.Meters, 1e-3);
        Numbers.Near(closed.CrossedVariation.DecimalFractions, map.Whole.Variation.DecimalFractions, 1e-3);
    }

    [Fact]
    [Evidence(Basis.Identity, "zones add up to the whole: area, volume, area under and over")]
    public void Zones_add_up()
    {
        FilmMap map = Tub();
        Numbers.Close(map.Whole.Area.SquareMeters, map.Zones.Sum(zone => zone.Area.SquareMeters));
        Numbers.Close(map.Balance.Landed.CubicMeters, map.Zones.Sum(zone => zone.Area.SquareMeters * zone.Mean.Meters), 1e-9);
        Numbers.Close(map.Whole.UnderMinimum.DecimalFractions * map.Whole.Area.SquareMeters, map.Zones.Sum(zone => zone.Area.SquareMeters * zone.UnderMinimum.DecimalFractions), 1e-9);
        Numbers.Close(map.Whole.OverLimit.DecimalFractions * map.Whole.Area.SquareMeters, map.Zones.Sum(zone => zone.Area.SquareMeters * zone.OverLimit.DecimalFractions), 1e-9);
        Assert.Equal(map.Whole.Minimum, map.Zones.Min(zone => zone.Minimum));
        Assert.All(map.Zones, zone => Assert.True(zone.Bare <= zone.UnderMinimum));
        Assert.Equal(map.Whole.Minimum.Meters, Enumerable.Range(0, map.Mesh.Triangles.Count).Min(i => map.WetFilm(i).Meters));
        Numbers.Refuses("triangle", () => map.WetFilm(map.Mesh.Triangles.Count));
        Assert.NotEmpty(map.Cautions);
        Assert.StartsWith("All: ", map.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Independent, "read back byte by byte after the header's own description (the PLY format as its authors published it, from memory)")]
    public void Ply_can_be_read_back()
    {
        FilmMap map = Tub();
        using MemoryStream stream = new();
        map.WritePly(stream);
        byte[] bytes = stream.ToArray();
        string header = Encoding.ASCII.GetString(bytes, 0, 1000);
        int start = header.IndexOf("end_header\n", StringComparison.Ordinal) + 11;
        Assert.StartsWith("ply\nformat binary_little_endian 1.0\n", header, StringComparison.Ordinal);
        int vertices = Count(header, "element vertex ");
        int triangles = Count(header, "element face ");
        Assert.Equal((map.Mesh.Vertices.Count, map.Mesh.Triangles.Count), (vertices, triangles));
        Assert.Equal(start + (19 * vertices) + (17 * triangles), bytes.Length);
        using BinaryReader reader = new(new MemoryStream(bytes, start, bytes.Length - start));
        double highest = 0;
        for (int i = 0; i < vertices; i++)
        {
            MeshPoint p = map.Mesh.Vertices[i];
            Numbers.Near(p.X, reader.ReadSingle(), 1e-6);
            Numbers.Near(p.Y, reader.ReadSingle(), 1e-6);
            Numbers.Near(p.Z, reader.ReadSingle(), 1e-6);
            highest = Math.Max(highest, reader.ReadSingle());
            reader.ReadBytes(3);
        }

        Assert.InRange(highest, map.Whole.Mean.Micrometers, map.Whole.Maximum.Micrometers + 1e-3);
        for (int i = 0; i < triangles; i++)
        {
            Assert.Equal(3, reader.ReadByte());
            Assert.Equal((map.Mesh.Triangles[i].A, map.Mesh.Triangles[i].B, map.Mesh.Triangles[i].C), (reader.ReadInt32(), reader.ReadInt32(), reader.ReadInt32()));
            Numbers.Near(map.WetFilm(i).Micrometers, reader.ReadSingle(), 1e-6 * (1 + map.WetFilm(i).Micrometers));
        }

        static int Count(string header, string word)
        {
            int at = header.IndexOf(word, StringComparison.Ordinal) + word.Length;
            return int.Parse(header[at..header.IndexOf('\n', at)], System.Globalization.CultureInfo.InvariantCulture);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "well-formed SVG, one heading a zone, figures as text, both colour schemes, nothing loaded from elsewhere, a title that needs escaping")]
    public void Svg_is_a_drawing_with_text()
    {
        FilmMap map = Tub();
        foreach (DisplayUnits system in new[] { DisplayUnits.Si, DisplayUnits.UsCustomary })
        {
            using MemoryStream stream = new();
            map.WriteSvg(stream, "A <tub> & \"more\"", system);
            string text = Encoding.UTF8.GetString(stream.ToArray());
            XElement svg = XDocument.Parse(text).Root!;
            XNamespace name = "http://www.w3.org/2000/svg";
            List<string> words = [.. svg.Descendants(name + "text").Select(element => element.Value)];
            Assert.Contains("A <tub> & \"more\"", words);
            foreach (FilmMapZone zone in map.Zones)
            {
                Assert.Contains(words, word => word.StartsWith(zone.Zone!.Value.ToString(), StringComparison.Ordinal));
            }

            Assert.Contains(words, word => word.Contains(system == DisplayUnits.Si ? "µm" : "mil", StringComparison.Ordinal));
            Assert.Contains("prefers-color-scheme:dark", text, StringComparison.Ordinal);
            Assert.DoesNotContain("href", text, StringComparison.Ordinal);
            Assert.DoesNotContain("<script", text, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentException>(() => map.WriteSvg(new MemoryStream(), " ", DisplayUnits.Si));
        Assert.Throws<ArgumentNullException>(() => map.WritePly(null!));
    }

    [Fact]
    [Evidence(Basis.Independent, "unrolled, the wall of a round tub has the length 2πr and the height of its slope, by hand")]
    public void A_round_wall_unrolls_to_its_length()
    {
        // A cone frustum open at both ends, facing inwards: radii 0.3 and 0.4 m, 0.2 m high.
        const int Sides = 240;
        List<MeshPoint> points = [];
        List<MeshTriangle> triangles = [];
        for (int i = 0; i < Sides; i++)
        {
            double turn = 2 * Math.PI * i / Sides;
            points.Add(new(0.3 * Math.Cos(turn), 0.3 * Math.Sin(turn), 0));
            points.Add(new(0.4 * Math.Cos(turn), 0.4 * Math.Sin(turn), 0.2));
            int a = 2 * i;
            int b = 2 * ((i + 1) % Sides);
            triangles.Add(new(a, a + 1, b, FixtureZoneKind.Wall));
            triangles.Add(new(b, a + 1, b + 1, FixtureZoneKind.Wall));
        }

        FilmMapChart chart = FilmMapChart.Of(SprayMeshRefinement.To(new TriangleMesh(points, triangles), 0.02), FixtureZoneKind.Wall);
        Assert.Equal("unrolled, seen from inside", chart.View);

        // Mean by area of the radius: 0.35 + 0.1²/12/0.35 = 0.3524 m.
        Numbers.Close(2 * Math.PI * 0.3524, chart.Width, 0.03);
        Numbers.Close(Math.Sqrt((0.2 * 0.2) + (0.1 * 0.1)), chart.Height, 0.02);
    }

    private static FilmMap Tub() =>
        SprayScene.Askew(SprayScene.Patterns[2], 12).SprayOnto(SprayScene.Tub.Tessellate(Length.FromMillimeters(10)), Length.FromMillimeters(40), SprayScene.Limits);
}
