using System;
using System.Collections;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Reflection;
using Refinish.Fixtures;
using Refinish.Pictures.Drafting;
using Refinish.Samples.BathroomJob;
using Refinish.Samples.Gallery;
using Refinish.Tests.Fixtures;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class FixturePictureTests
{
    private static readonly Dictionary<string, IFixture> Kinds = new()
    {
        ["recessed"] = Scenario.Guesthouse().Fixtures[0].Fixture,
        ["recessed, all set"] = new RecessedBathtub(((RecessedBathtub)Scenario.Guesthouse().Fixtures[0].Fixture).Measurements with { FloorShift = Length.FromMillimeters(-11), TilingFlangeHeight = Length.FromMillimeters(27) }),
        ["pedestal"] = Scenario.Guesthouse().Fixtures[1].Fixture,
        ["sink without column"] = new PedestalSink(((PedestalSink)Scenario.Guesthouse().Fixtures[1].Fixture).Measurements with { ColumnHeight = Length.Zero, Outline = PlanOutline.Ellipse(Length.FromMillimeters(553), Length.FromMillimeters(457)), WallContact = Length.Zero, FaucetHoles = 3 }),
        ["tiled"] = Scenario.Guesthouse().Fixtures[2].Fixture,
        ["tiled, uneven"] = new TiledSurround(new TiledWallMeasurements
        {
            Walls = [new(Length.FromMillimeters(812), Length.FromMillimeters(1400)), new(Length.FromMillimeters(1531), Length.FromMillimeters(2010)), new(Length.FromMillimeters(823), Length.FromMillimeters(1203))],
            TileLength = Length.FromMillimeters(198), TileWidth = Length.FromMillimeters(97), JointWidth = Length.FromMillimeters(4), JointDepth = Length.FromMillimeters(1.2), JointProfile = JointProfile.Concave,
            Openings = [new(Length.FromMillimeters(161), Length.FromMillimeters(112))],
            Recesses = [new(WallRecessKind.Niche, Length.FromMillimeters(356), Length.FromMillimeters(305), Length.FromMillimeters(89)), new(WallRecessKind.SoapDish, Length.FromMillimeters(152), Length.FromMillimeters(109), Length.FromMillimeters(43))],
        }),
        ["freestanding"] = OtherFixtures.Freestanding,
        ["oval"] = OtherFixtures.Oval,
        ["corner"] = OtherFixtures.Corner,
        ["corner, straight front"] = new CornerTub(OtherFixtures.Corner.Measurements with { FrontBow = Length.Zero, LeftWall = Length.FromMillimeters(1600) }),
        ["vessel"] = OtherFixtures.Vessel,
        ["drop-in"] = new CounterSink(new CounterSinkMeasurements
        {
            Mounting = SinkMounting.DropIn, Shape = BowlShape.HalfEllipsoid, MouthLength = Length.FromMillimeters(431), MouthWidth = Length.FromMillimeters(327), BowlDepth = Length.FromMillimeters(158),
            Outline = PlanOutline.RoundedRectangle(Length.FromMillimeters(522), Length.FromMillimeters(443), Length.FromMillimeters(61)), DrainDiameter = Length.FromMillimeters(44), OverflowDiameter = Length.FromMillimeters(23),
        }),
        ["undermount"] = new CounterSink(new CounterSinkMeasurements
        {
            Mounting = SinkMounting.Undermount, Shape = BowlShape.HalfEllipsoid, MouthLength = Length.FromMillimeters(431), MouthWidth = Length.FromMillimeters(327), BowlDepth = Length.FromMillimeters(158),
            DrainDiameter = Length.FromMillimeters(44), OverflowDiameter = Length.FromMillimeters(23),
        }),
        ["pan"] = new ShowerPan(OtherFixtures.Pan.Measurements with { ThresholdWidth = Length.FromMillimeters(103) }),
        ["counter, L"] = OtherFixtures.Counter,
        ["counter, straight"] = new Countertop(OtherFixtures.Counter.Measurements with { Runs = [new(Length.FromMillimeters(1811), Length.FromMillimeters(617))], Profile = EdgeProfile.Eased, EdgeRadius = Length.FromMillimeters(6), CutOuts = [] }),
        ["counter, U"] = new Countertop(OtherFixtures.Counter.Measurements with
        {
            Runs = [new(Length.FromMillimeters(1811), Length.FromMillimeters(617)), new(Length.FromMillimeters(2713), Length.FromMillimeters(634)), new(Length.FromMillimeters(1402), Length.FromMillimeters(581))],
            LeftEndIsOpen = false, BacksplashHeight = Length.Zero, BacksplashThickness = Length.Zero,
        }),
        ["panel"] = OtherFixtures.Panel,
    };

    static FixturePictureTests()
    {
        foreach (ComposedFixture fixture in ComposedTapes.Every())
        {
            Kinds.Add(fixture.Kind.Name + " " + Kinds.Count.ToString(CultureInfo.InvariantCulture), fixture);
        }

        // Kinds without a variant of their own above are drawn by their first example.
        foreach (FixtureKind kind in FixtureKind.All.Where(kind => kind.FixtureType.GetProperty("Measurements") is not null
            && !Kinds.Values.Any(fixture => fixture.GetType() == kind.FixtureType)))
        {
            Kinds.Add(kind.Id, Tapes.Of(kind)!);
        }
    }

    public static TheoryData<string, int, DisplayUnits> Drawn
    {
        get
        {
            TheoryData<string, int, DisplayUnits> data = [];
            foreach (string kind in Kinds.Keys)
            {
                data.Add(kind, 720, DisplayUnits.Si);
                data.Add(kind, 320, DisplayUnits.UsCustomary);
                if (Kinds[kind] is not ComposedFixture)
                {
                    data.Add(kind, 1200, DisplayUnits.UsCustomary);
                }
            }

            return data;
        }
    }

    [Fact]
    public void Every_registered_kind_has_a_drawing_that_draws_something()
    {
        foreach (FixtureKind kind in FixtureKind.All)
        {
            IFixture example = Tapes.Of(kind) ?? throw new InvalidOperationException(kind.Id + " lacks an example in Tapes.Every");
            Blueprint drawn = FixtureDrafts.Of(example, DisplayUnits.Si);
            Assert.True(drawn.Views.Count > 0, kind.Id + " lacks a drawing in FixtureDrafts");
            Assert.All(drawn.Views, view => Assert.True(view.Outlines.Count > 0, kind.Id + " draws nothing in the view " + view.Name));
        }
    }

    [Theory]
    [MemberData(nameof(Drawn))]
    public void Every_measured_length_is_written(string kind, int width, DisplayUnits units)
    {
        IFixture fixture = Kinds[kind];
        string words = new SvgFile(new FixturePicture(fixture, kind).ToSvg(new PictureStyle { Width = width, Units = units })).AllWords;
        Length[] lengths = fixture is ComposedFixture made
            ? [.. made.Taken.Where(reading => reading.Measure.Equals(Measure.Length) && reading.Value > 0).Select(reading => Length.FromMeters(reading.Value))]
            : [.. Lengths(fixture.GetType().GetProperty("Measurements")!.GetValue(fixture)!).Where(length => Math.Abs(length.Meters) > 0)];
        Assert.True(lengths.Length >= 2);
        Assert.All(lengths, length =>
        {
            // Four figures of the reader's unit, by arithmetic of its own.
            double shown = units == DisplayUnits.Si ? Math.Abs(length.Meters) * 1000 : Math.Abs(length.Meters) / 0.0254;
            int digits = (int)Math.Floor(Math.Log10(shown)) + 1;
            string text = Math.Round(shown, Math.Max(0, 4 - digits)).ToString("0.########", CultureInfo.InvariantCulture) + (units == DisplayUnits.Si ? " mm" : " in");
            Assert.Contains(" " + text, words, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_rough_fixture_is_drawn_as_its_most_likely_shape()
    {
        foreach (RoughFixture rough in new[]
        {
            RoughFixture.RecessedBathtub(Length.FromInches(60), Length.FromInches(30)), RoughFixture.CornerTub(Length.FromInches(60), Length.FromInches(60)),
            RoughFixture.PedestalSink(Length.FromInches(24), Length.FromInches(19)), RoughFixture.TiledSurround(Length.FromInches(60), Length.FromInches(60)),
        })
        {
            SvgFile likely = new(new FixturePicture(rough.Likely, "rough").ToSvg(new PictureStyle()));
            SvgFile drawn = new(new FixturePicture(rough, "rough").ToSvg(new PictureStyle()));
            Assert.Equal(likely.Elements("path").Count(), drawn.Elements("path").Count());
            Assert.Contains("Drawn from 2 of ", drawn.AllWords, StringComparison.Ordinal);
            Assert.StartsWith("Drawn from 2 of ", drawn.Description, StringComparison.Ordinal);
            Assert.DoesNotContain("Drawn from", likely.AllWords, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Drawn))]
    public void Labels_numbers_and_letters_keep_apart(string kind, int width, DisplayUnits units)
    {
        SvgFile file = new(new FixturePicture(Kinds[kind], kind).ToSvg(new PictureStyle { Width = width, Units = units }));
        file.HoldsTextsApart(width);
    }

    [Theory]
    [MemberData(nameof(Drawn))]
    public void Every_zone_has_its_area_and_its_letter_in_a_view(string kind, int width, DisplayUnits units)
    {
        IFixture fixture = Kinds[kind];
        SvgFile file = new(new FixturePicture(fixture, kind).ToSvg(new PictureStyle { Width = width, Units = units }));
        for (int i = 0; i < fixture.Zones.Count; i++)
        {
            string letter = ((char)('A' + i)).ToString();
            Assert.True(file.Texts.Count(text => text.Words == letter) >= 2, fixture.Zones[i].Kind + " stands in the key but in no view");
            Assert.Contains(fixture.Zones[i].Kind.ToString().ToLowerInvariant() + " " + Measure.Area.Format(fixture.Zones[i].Area.SquareMeters, units, 3), file.AllWords, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("over all 1524 mm", 1524, "mouth 1346 mm", 1346)]
    [InlineData("over all 1524 mm", 1524, "floor 1118 mm", 1118)]
    public void Dimension_lines_are_as_long_as_their_lengths_at_one_scale(string one, double length, string other, double otherLength)
    {
        SvgFile file = new(new FixturePicture(Kinds["recessed"], "tub").ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        Assert.Equal(length / otherLength, Line(file, one) / Line(file, other), 0.002);
    }

    [Fact]
    public void Upright_dimension_lines_have_the_scale_of_the_level_ones()
    {
        SvgFile file = new(new FixturePicture(Kinds["recessed"], "tub").ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        Assert.Equal(762.0 / 1524, Line(file, "width over all 762 mm") / Line(file, "over all 1524 mm"), 0.002);
        Assert.Equal(337.0 / 1524, Line(file, "depth 337 mm") / Line(file, "over all 1524 mm"), 0.002);
    }

    [Fact]
    public void The_outline_is_the_tub_s_own()
    {
        SvgFile file = new(new FixturePicture(Kinds["recessed"], "tub").ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        double scale = Line(file, "over all 1524 mm") / 1524;
        (double X, double Y)[][] closed = [.. file.Paths(Paint.Line).Where(points => points.Length >= 4).OrderByDescending(points => points.Max(point => point.X) - points.Min(point => point.X))];
        Assert.Equal(762 * scale, closed[0].Max(point => point.Y) - closed[0].Min(point => point.Y), 0.5);

        // The mouth's corner is a quarter circle: its area is short of the rectangle's by (4 − π) r².
        (double X, double Y)[] mouth = closed.First(points => points.Length > 20 && Math.Abs(points.Max(point => point.X) - points.Min(point => point.X) - (1346 * scale)) < 1);
        double area = Math.Abs(mouth.Select((point, i) => (point.X * mouth[(i + 1) % mouth.Length].Y) - (mouth[(i + 1) % mouth.Length].X * point.Y)).Sum()) / 2 / (scale * scale);
        Assert.Equal((1346 * 597) - ((4 - Math.PI) * 152 * 152), area, 0.002 * 1346 * 597);
    }

    [Fact]
    public void A_kind_that_is_not_known_is_described_by_its_zones()
    {
        SvgFile file = new(new FixturePicture(new Bench(), "bench").ToSvg());
        Assert.Contains("no drawing for this kind", file.AllWords, StringComparison.Ordinal);
        Assert.Contains("top 0.75 m²", file.AllWords, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void A_name_is_needed(string name) => Assert.Throws<ArgumentException>(() => new FixturePicture(OtherFixtures.Panel, name));

    [Fact]
    public void A_long_name_with_signs_that_XML_reserves_wraps_and_stays_text()
    {
        string name = "Bath & basin <of the \"old\" ferry> " + string.Concat(Enumerable.Repeat("Donaudampfschifffahrts", 6)) + "\u0001\uD800";
        SvgFile file = new(new FixturePicture(OtherFixtures.Panel, name).ToSvg(new PictureStyle { Width = 320 }));
        Assert.StartsWith("Bath & basin <of the \"old\" ferry>", file.Title, StringComparison.Ordinal);
        Assert.Contains('\uFFFD', file.Title);
        Assert.All(file.Texts, text => Assert.True(text.Box.Right <= 321, text.ToString()));
    }

    // The dimension line runs through the middle of its label.
    private static double Line(SvgFile file, string label)
    {
        SvgText text = file.Text(label);
        return file.Paths(Paint.Blue).Where(points => points.Length == 2)
            .Where(points => text.IsUpright ? Math.Abs(points[0].X - points[1].X) < 0.01 : Math.Abs(points[0].Y - points[1].Y) < 0.01)
            .Where(points => text.IsUpright
                ? Math.Abs(points[0].X - (text.X - (0.36 * text.Size))) < 0.6 && points.Min(point => point.Y) < text.Y && points.Max(point => point.Y) > text.Y
                : Math.Abs(points[0].Y - text.Middle) < 0.6 && points.Min(point => point.X) < text.X && points.Max(point => point.X) > text.X)
            .Select(points => Math.Abs(points[0].X - points[1].X) + Math.Abs(points[0].Y - points[1].Y))
            .Single();
    }

    private static IEnumerable<Length> Lengths(object tape)
    {
        foreach (PropertyInfo property in tape.GetType().GetProperties().Where(property => property.GetIndexParameters().Length == 0))
        {
            object? value = property.GetValue(tape);
            if (value is Length length && property.Name != "Perimeter")
            {
                yield return length;
            }
            else if (value is IEnumerable list and not string)
            {
                foreach (Length inner in list.Cast<object>().SelectMany(Lengths))
                {
                    yield return inner;
                }
            }
            else if (value is PlanOutline or RectangularOpening)
            {
                foreach (Length inner in Lengths(value))
                {
                    yield return inner;
                }
            }
        }
    }

    private sealed class Bench : IFixture
    {
        public string Description => "bench";

        public IReadOnlyList<FixtureZone> Zones { get; } = [new(FixtureZoneKind.Top, Area.FromSquareMeters(0.75), Angle.FromDegrees(0))];

        public Area CoatedArea => Area.FromSquareMeters(0.75);

        public Length MaskedEdge => Length.FromMeters(3.5);

        public Volume? WaterCapacity => null;

        public IReadOnlyList<SurfacePatch> Patches => [];

        public TriangleMesh Tessellate(Length chordTolerance) => throw new NotSupportedException();

        public Workings Workings() => throw new NotSupportedException();
    }
}
