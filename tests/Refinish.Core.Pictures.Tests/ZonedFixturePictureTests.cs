using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Samples.BathroomJob;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class ZonedFixturePictureTests
{
    private static readonly ZoneRule[] Rules =
    [
        new(FixtureZoneKind.Floor, Angle.Zero, Angle.FromDegrees(45), Length.FromMeters(-1), Length.FromMeters(0.2)),
        new(FixtureZoneKind.Rim, Angle.Zero, Angle.FromDegrees(30), Length.FromMeters(0.2), Length.FromMeters(1)),
        new(FixtureZoneKind.Apron, Angle.FromDegrees(89.9), Angle.FromDegrees(90), Length.FromMeters(-1), Length.FromMeters(1)),
        new(FixtureZoneKind.Wall, Angle.FromDegrees(30), Angle.FromDegrees(90), Length.FromMeters(-1), Length.FromMeters(1)),
    ];

    private static readonly Dictionary<string, ZonedFixture> Kinds = new()
    {
        ["tub from a mesh"] = ZonedFixture.FromMesh("tub", Scenario.Guesthouse().Fixtures[0].Fixture.Tessellate(Length.FromMillimeters(2)), Rules),
        ["ceiling from a mesh"] = ZonedFixture.FromMesh("ceiling", Ceiling(), [new(FixtureZoneKind.Outside, Angle.Zero, Angle.FromDegrees(90), Length.Zero, Length.FromMeters(3))]),
        ["parts"] = new ZonedFixture(
            "bench",
            [
                new ZonePart("seat", FixtureZoneKind.Top, Area.FromSquareMeters(0.42), Angle.Zero),
                new ZonePart("front", FixtureZoneKind.Wall, Area.FromSquareMeters(0.9), Angle.FromDegrees(90)) { DevelopedFactor = 1.1, OpeningArea = Area.FromSquareMeters(0.03) },
                new ZonePart("rear", FixtureZoneKind.Wall, Area.FromSquareMeters(0.3), Angle.FromDegrees(120)),
                new ZonePart("nosing", FixtureZoneKind.Edge, Area.FromSquareMeters(0.02), Angle.FromDegrees(90)),
            ],
            Length.FromMeters(3.6)),
    };

    public static TheoryData<string, int> Drawn
    {
        get
        {
            TheoryData<string, int> data = [];
            foreach (string kind in Kinds.Keys)
            {
                data.Add(kind, 900);
                data.Add(kind, 420);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Drawn))]
    public void Every_zone_has_its_area_and_its_letter_and_no_label_lies_on_another(string kind, int width)
    {
        ZonedFixture fixture = Kinds[kind];
        SvgFile file = new(new FixturePicture(fixture, kind).ToSvg(new PictureStyle { Width = width }));
        for (int i = 0; i < fixture.Zones.Count; i++)
        {
            Assert.True(file.Texts.Count(text => text.Words == ((char)('A' + i)).ToString()) >= 2, fixture.Zones[i].Kind + " stands in the key but in no view");
            Assert.Contains(fixture.Zones[i].Kind.ToString().ToLowerInvariant() + " " + Measure.Area.Format(fixture.Zones[i].Area.SquareMeters, DisplayUnits.Si, 3), file.AllWords, StringComparison.Ordinal);
        }

        file.HoldsTextsApart(width);

        Assert.Equal(kind == "parts" ? 0 : 2, file.Texts.Count(text => text.Words.StartsWith("From ", StringComparison.Ordinal) || text.Words.StartsWith("Side, ", StringComparison.Ordinal)));
        if (Environment.GetEnvironmentVariable("ZONED_OUT") is string folder)
        {
            File.WriteAllText(Path.Combine(folder, kind.Replace(' ', '-') + "-" + width + ".svg"), new FixturePicture(fixture, kind).ToSvg(new PictureStyle { Width = width }));
        }
    }

    [Fact]
    public void Sizes_slopes_and_what_it_is_drawn_from_are_told()
    {
        string tub = new SvgFile(new FixturePicture(Kinds["tub from a mesh"], "tub").ToSvg(new PictureStyle())).AllWords;
        Assert.Contains("length 1524 mm", tub, StringComparison.Ordinal);
        Assert.Contains("width 762 mm", tub, StringComparison.Ordinal);
        Assert.Contains("height 368 mm", tub, StringComparison.Ordinal);      // the apron's 14.5 in
        Assert.Contains("Drawn from a mesh of ", tub, StringComparison.Ordinal);
        string ceiling = new FixturePicture(Kinds["ceiling from a mesh"], "ceiling").Describe(DisplayUnits.Si);
        Assert.StartsWith("Drawn from a mesh of 4 triangles. From below: ", ceiling, StringComparison.Ordinal);

        // 1.2 m² straight down and 0.849 m² at 45° make a mean of 161.4°.
        Assert.Contains("outside 2.05 m², looking down, 19° from level", ceiling, StringComparison.Ordinal);
        string parts = new FixturePicture(Kinds["parts"], "bench").Describe(DisplayUnits.Si);
        Assert.StartsWith("Drawn from areas alone", parts, StringComparison.Ordinal);
        Assert.Contains("rear, 0.3 m² at 120°", parts, StringComparison.Ordinal);
        Assert.Contains("wall 1.26 m², looking down, 83° from level", parts, StringComparison.Ordinal);
    }

    private static TriangleMesh Ceiling() => new(
        [new(0, 0, 2.1), new(1.5, 0, 2.1), new(1.5, 0.8, 2.1), new(0, 0.8, 2.1), new(0, 1.2, 1.7), new(1.5, 1.2, 1.7)],
        [new(0, 2, 1, null), new(0, 3, 2, null), new(3, 5, 2, null), new(3, 4, 5, null)]);
}
