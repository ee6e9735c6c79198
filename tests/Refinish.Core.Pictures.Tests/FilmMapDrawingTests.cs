using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml.Linq;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Pictures.Drawing;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class FilmMapDrawingTests
{
    [Fact]
        public void Ply_can_be_read_back()
    {
        FilmMap map = FilmPictureTests.Map;
        using MemoryStream stream = new();
        new FilmMapDrawing(map, "tub").WritePly(stream);
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
            Assert.Equal(p.X, reader.ReadSingle(), 1e-6);
            Assert.Equal(p.Y, reader.ReadSingle(), 1e-6);
            Assert.Equal(p.Z, reader.ReadSingle(), 1e-6);
            highest = Math.Max(highest, reader.ReadSingle());
            reader.ReadBytes(3);
        }

        Assert.InRange(highest, map.Whole.Mean.Micrometers, map.Whole.Maximum.Micrometers + 1e-3);
        for (int i = 0; i < triangles; i++)
        {
            Assert.Equal(3, reader.ReadByte());
            Assert.Equal((map.Mesh.Triangles[i].A, map.Mesh.Triangles[i].B, map.Mesh.Triangles[i].C), (reader.ReadInt32(), reader.ReadInt32(), reader.ReadInt32()));
            Assert.Equal(map.WetFilm(i).Micrometers, reader.ReadSingle(), 1e-6 * (1 + map.WetFilm(i).Micrometers));
        }

        static int Count(string header, string word)
        {
            int at = header.IndexOf(word, StringComparison.Ordinal) + word.Length;
            return int.Parse(header[at..header.IndexOf('\n', at)], System.Globalization.CultureInfo.InvariantCulture);
        }
    }

    [Fact]
        public void Svg_is_a_drawing_with_text()
    {
        FilmMap map = FilmPictureTests.Map;
        foreach (DisplayUnits system in new[] { DisplayUnits.Si, DisplayUnits.UsCustomary })
        {
            using MemoryStream stream = new();
            new FilmMapDrawing(map, "A <tub> & \"more\"").WriteSvg(stream, system);
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

        Assert.Throws<ArgumentException>(() => new FilmMapDrawing(map, " "));
        Assert.Throws<ArgumentNullException>(() => new FilmMapDrawing(map, "tub").WritePly(null!));
    }

    [Fact]
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

        // A map halves what is longer than 20 mm; what is sprayed on it does not matter here.
        FilmMap map = FilmPictureTests.Map.Plan.SprayOnto(new TriangleMesh(points, triangles), Length.FromMillimeters(20), FilmPictureTests.Map.Limits);
        FilmMapChart chart = FilmMapChart.Of(map.Mesh, FixtureZoneKind.Wall);
        Assert.Equal("unrolled, seen from inside", chart.View);

        // Mean by area of the radius: 0.35 + 0.1²/12/0.35 = 0.3524 m.
        Assert.Equal(2 * Math.PI * 0.3524, chart.Width, 0.03 * 2 * Math.PI * 0.3524);
        Assert.Equal(Math.Sqrt((0.2 * 0.2) + (0.1 * 0.1)), chart.Height, 0.02 * Math.Sqrt((0.2 * 0.2) + (0.1 * 0.1)));
    }
}
