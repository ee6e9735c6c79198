using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Json.Shapes;
using Refinish.Scheduling;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using Refinish.Tests.Substrates;
using UnitsNet;
using UnitsNet.Units;
using Xunit;

namespace Refinish.Json.Tests;

public class JobRoundTripTests
{
    public static TheoryData<string> Jobs => ["bathroom", "everything", "least"];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_job_comes_back_equal_in_either_system_of_units_and_either_layout(string which)
    {
        Job job = Examples.Named(which);
        foreach (DisplayUnits units in Enum.GetValues<DisplayUnits>())
        {
            foreach (bool indented in (bool[])[true, false])
            {
                Assert.Equal(job, JobJson.Read(JobJson.Write(job, new JsonLayout { Units = units, IsIndented = indented })));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Writing_what_was_read_gives_the_same_text(string which)
    {
        string text = JobJson.Write(Examples.Named(which));
        Assert.Equal(text, JobJson.Write(JobJson.Read(text)));
    }

    [Fact]
    public void Text_bytes_streams_and_writers_say_the_same()
    {
        Job job = Examples.Bathroom();
        string text = JobJson.Write(job);
        using MemoryStream stream = new();
        JobJson.Write(stream, job);
        Assert.Equal(text, Encoding.UTF8.GetString(stream.ToArray()));
        stream.Position = 0;
        Assert.Equal(job, JobJson.Read(stream));
        Assert.Equal(job, JobJson.Read(stream.ToArray().AsMemory()));
        Assert.True(JobJson.TryRead(stream.ToArray().AsMemory(), out Job? read, out IReadOnlyList<JsonFault> faults));
        Assert.Equal(job, read);
        Assert.Empty(faults);

        using MemoryStream part = new();
        using (Utf8JsonWriter json = new(part))
        {
            json.WriteStartArray();
            JobJson.Write(json, job, DisplayUnits.UsCustomary);
            json.WriteEndArray();
        }

        using JsonDocument outer = JsonDocument.Parse(part.ToArray());
        Assert.Equal(job, JobJson.Read(outer.RootElement[0].GetRawText()));
    }

    /// <summary>
    /// One of each kind and variant, measured in inches and in millimetres, and scaled so that the numbers are not round.
    /// </summary>
    [Theory]
    [InlineData(LengthUnit.Inch, 1)]
    [InlineData(LengthUnit.Millimeter, 1)]
    [InlineData(LengthUnit.Millimeter, 0.9731)]
    public void Every_kind_of_fixture_comes_back_equal(LengthUnit unit, double scale)
    {
        IFixture[] fixtures = Tapes.Every(scale, unit);
        foreach (IFixture fixture in fixtures)
        {
            Assert.Equal(fixture, Back(FixtureShapes.Fixture, fixture));
        }
    }

    [Fact]
    public void Every_registered_kind_has_a_shape_under_its_identifier()
    {
        foreach (FixtureKind kind in FixtureKind.All)
        {
            IFixture example = Tapes.Of(kind) ?? throw new InvalidOperationException(kind.Id + " lacks an example in Tapes.Every");
            string? text = null;
            Exception? missing = Record.Exception(() => text = Text(FixtureShapes.Fixture, example));
            Assert.True(missing is null, kind.Id + " lacks a JSON shape in FixtureShapes: " + missing?.Message);
            using JsonDocument document = JsonDocument.Parse(text!);
            string written = document.RootElement.GetProperty(example is ComposedFixture ? "of" : "kind").GetString()!;
            Assert.True(written == kind.Id, kind.Id + " is written as " + written);
            Assert.Equal(example, Back(FixtureShapes.Fixture, example));
        }
    }

    [Fact]
    public void Every_kind_of_rough_fixture_comes_back_equal()
    {
        foreach (RoughKind kind in RoughKind.Kinds)
        {
            double[] inches = kind.Id switch
            {
                "cornerTub" or "tiledSurround" => [59.7, 59.9],
                "showerPan" => [36.1, 39.3],
                "countertop" => [96.1],
                "cornerCountertop" => [96.1, 72.3],
                "recessedBathtub" or "freestandingTub" or "freestandingTubAllRound" or "ovalTub" or "flatPanel" => [59.7, 29.9],
                _ => [22.3, 16.3],
            };
            RoughFixture rough = RoughFixture.Of(kind, kind.Needed.Zip(inches, (name, length) =>
                new TakenReading(name, UnitsNet.Length.FromInches(length), RoughFixture.SaidPlusMinus)));
            IFixture back = Back(FixtureShapes.Fixture, rough);
            Assert.Equal(rough, back);
            Assert.Equal(rough.CoatedArea.SquareMeters, back.CoatedArea.SquareMeters);
        }

        Assert.All(EveryFixture.Rough, rough => Assert.Equal(rough, Back(FixtureShapes.Fixture, rough)));
    }

    [Fact]
    public void A_fixture_of_zones_comes_back_equal_to_the_last_bit_and_its_mesh_takes_three_lines()
    {
        ZonedFixture zoned = EveryFixture.Zoned;
        Assert.Equal(zoned, Back(FixtureShapes.Fixture, zoned));
        Assert.Equal(zoned with { Mesh = null }, Back(FixtureShapes.Fixture, zoned with { Mesh = null }));
        string text = Text(FixtureShapes.Fixture, zoned);
        Assert.Contains("\"triangles\": [0,1,2,0,0,2,3,0,3,2,4,1,3,4,5,1]", text, StringComparison.Ordinal);
        Assert.Contains("0.3333333333333333,1E-17", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"measuredArea\":{\"value\":0.471", "\"measuredArea\":{\"value\":0.6", "measuredArea is 0.6 m²; allowed: within 2 % of the parts together")]
    [InlineData("1E-17", "0.3", "mesh is 0.28389 m²; allowed: within 2 % of Floor of the parts, 0.23333 m²")]
    [InlineData("1,3,4,5,1]", "1,3,4,5,2]", "triangles names zone 2; there are 2")]
    [InlineData("1,3,4,5,1]", "1,3,4,5]", "triangles has 15 numbers; allowed: three places in vertices and one in zones")]
    [InlineData("1,3,4,5,1]", "1,3,4,6,1]", "triangles is 6 (a count); allowed: at least 0 and at most 5")]
    [InlineData("\"vertices\":[0,0,0,", "\"vertices\":[0,0,", "vertices has 17 numbers; allowed: x, y and z of each point")]
    public void A_mesh_that_contradicts_its_parts_or_itself_is_a_fault(string was, string now, string sentence)
    {
        string text = Document.Write(FixtureShapes.Fixture, EveryFixture.Zoned, JsonLayout.Default with { IsIndented = false });
        Assert.Contains(was, text, StringComparison.Ordinal);
        RefinishJsonException refused = Assert.Throws<RefinishJsonException>(() => Document.Read(FixtureShapes.Fixture, () => JsonDocument.Parse(text.Replace(was, now, StringComparison.Ordinal))));
        Assert.Contains(refused.Faults, fault => fault.Sentence.Contains(sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void Another_mesh_is_one_change_of_its_points_and_not_thousands()
    {
        ZonedFixture before = EveryFixture.Zoned with { Mesh = null, MeasuredArea = null };
        Job Of(ZonedFixture fixture) => Examples.Bathroom() with { Fixtures = [EveryFixture.Of(fixture, 1)] };
        ZonedFixture near = EveryFixture.Zoned with { MeasuredArea = null };
        ZonedFixture moved = near with { Mesh = new TriangleMesh(near.Mesh!.Vertices.Select(point => point with { X = point.X + 0.001 }), near.Mesh.Triangles) };
        Assert.EndsWith(".fixture.mesh.vertices", Assert.Single(InputComparer.Compare(Of(near), Of(moved), DisplayUnits.Si)).Path, StringComparison.Ordinal);
        Assert.EndsWith(".fixture.mesh", Assert.Single(InputComparer.Compare(Of(before), Of(near), DisplayUnits.Si)).Path, StringComparison.Ordinal);
    }

    [Fact]
    public void A_large_scan_is_written_and_read_and_a_huge_one_is_refused()
    {
        TriangleMesh Grid(int side) => new(
            [.. Enumerable.Range(0, (side + 1) * (side + 1)).Select(i => new MeshPoint(i % (side + 1) * 0.7 / side, i / (side + 1) * 0.3 / side, 0.01 / 3))],
            [.. Enumerable.Range(0, side * side).Select(i => (i / side * (side + 1)) + (i % side)).SelectMany(a => (MeshTriangle[])
                [new(a, a + 1, a + side + 2, FixtureZoneKind.Top), new(a, a + side + 2, a + side + 1, FixtureZoneKind.Top)])]);
        ZonedFixture Top(int side) => new("top", [new ZonePart("top", FixtureZoneKind.Top, UnitsNet.Area.FromSquareMeters(0.21), UnitsNet.Angle.Zero)], Length.Zero) { Mesh = Grid(side) };
        Assert.Equal(Top(150), Back(FixtureShapes.Fixture, Top(150)));
        string refused = Assert.Throws<NotSupportedException>(() => Text(FixtureShapes.Fixture, Top(320))).Message;
        Assert.Contains("A mesh of 204800 triangles is not written into JSON; at most 200000", refused, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_kind_of_defect_comes_back_equal()
    {
        Assert.Equal(2, Examples.Defects.Select(defect => defect.Kind).Where(kind => kind.IsOwn).Distinct().Count());
        Assert.All(Examples.Defects, defect => Assert.Equal(defect, Back(DefectShapes.Defect, defect)));
        foreach (DefectKind kind in DefectKind.All)
        {
            Defect[] examples = Array.FindAll(DefectExamples.Every, defect => defect.Kind == kind);
            Assert.True(examples.Length > 0, kind.Code + " lacks an example in DefectExamples.Every");
            Assert.True(DefectShapes.Defect.Variants.Any(variant => variant.Kind.Equals(kind.Code, StringComparison.OrdinalIgnoreCase)),
                kind.Code + " lacks a JSON shape in DefectShapes");
            Assert.All(examples, example => Assert.Equal(example, Back(DefectShapes.Defect, example)));
        }
    }

    [Fact]
    public void Every_kind_of_clock_and_source_comes_back_equal()
    {
        LocalClock[] clocks = [LocalClock.Fixed(TimeSpan.FromHours(-3.5)), Examples.Everything().Shop.Calendar.Clock,
            LocalClock.Of(TimeZoneInfo.Utc), LocalClock.Of(TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna"))];
        Assert.All(clocks, clock => Assert.Equal(clock, Back(CalendarShapes.Clock, clock)));
        Source[] sources = [Source.Published("a", "b"), Source.Derived("a"), Source.CommonPractice("a"), Source.FromMemory("a"),
            Source.Invented("a"), Source.Supplied("a")];
        Assert.Equal(Enum.GetValues<SourceKind>().Length, sources.Select(source => source.Kind).Distinct().Count());
        Assert.All(sources, source => Assert.Equal(source, Back(CommonShapes.Source, source)));
    }

    [Fact]
    public void Every_kind_of_discount_and_payment_comes_back_equal()
    {
        Discount[] discounts = [Discount.Of(12.5m), Discount.Of(12.5m) with { Reason = "a", MayUndercutMinimum = true }, Discount.Of(Ratio.FromPercent(7.25)), Discount.Of(0m)];
        Assert.All(discounts, discount => Assert.Equal(discount, Back(QuoteShapes.Discount, discount)));
        Assert.All(Examples.Terms().Payments, stage => Assert.Equal(stage, Back(QuoteShapes.Stage, stage)));
        Assert.All((DepositLimit[])[new(null, 5m, Source.Invented("a")), new(Ratio.FromPercent(5), null, Source.Invented("a"))],
            limit => Assert.Equal(limit, Back(QuoteShapes.Deposit, limit)));
    }

    [Fact]
    public void Every_named_value_comes_back()
    {
        Assert.All(FixtureMaterial.All, value => Assert.Equal(value, Back(MaterialShapes.Material, value)));
        Assert.Equal("\"enamelledCastIron\"", Text(MaterialShapes.Material, FixtureMaterial.EnamelledCastIron));
        Assert.All(DefectKind.All.Append(DefectKind.Own("own")), value => Assert.Equal(value, Back(DefectKindShape.Kind, value)));
        AllWords(DefectShapes.Adhesion);
        Assert.Equal("\"3B\"", Text(DefectShapes.Adhesion, Substrates.AdhesionGrade.Grade3B));

        static void AllWords<T>(Shape<T> shape)
            where T : struct, Enum =>
            Assert.All(Enum.GetValues<T>(), value => Assert.Equal(value, Back(shape, value)));
    }

    [Fact]
    public void What_someone_made_up_has_no_form_in_json_and_says_so()
    {
        Job job = Examples.Bathroom();
        FixtureJob own = job.Fixtures[0] with { Fixture = new OwnFixture() };
        string refused = Assert.Throws<NotSupportedException>(() => JobJson.Write(job with { Fixtures = [own] })).Message;
        Assert.Contains("OwnFixture", refused, StringComparison.Ordinal);
        Assert.Contains("into a ZonedFixture, which has one", refused, StringComparison.Ordinal);

        TimeZoneInfo zone = TimeZoneInfo.CreateCustomTimeZone("ferry time", TimeSpan.FromMinutes(77), "ferry time", "ferry time");
        Shop shop = job.Shop with { Calendar = WorkCalendar.EveryDay(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)),
            LocalClock.Of(zone)) };
        Assert.Contains("ferry time", Assert.Throws<NotSupportedException>(() => JobJson.Write(job with { Shop = shop })).Message,
            StringComparison.Ordinal);
    }

    private static string Text<T>(Shape<T> shape, T value) => Document.Write(shape, value, JsonLayout.Default);

    private static T Back<T>(Shape<T> shape, T value) => Document.Read(shape, () => JsonDocument.Parse(Text(shape, value)));

    private sealed class OwnFixture : IFixture
    {
        public string Description => "own";

        public IReadOnlyList<FixtureZone> Zones => [];

        public UnitsNet.Area CoatedArea => UnitsNet.Area.Zero;

        public UnitsNet.Length MaskedEdge => UnitsNet.Length.Zero;

        public UnitsNet.Volume? WaterCapacity => null;

        public IReadOnlyList<SurfacePatch> Patches => [];

        public Workings Workings() => Examples.Bathroom().Fixtures[0].Fixture.Workings();

        public TriangleMesh Tessellate(UnitsNet.Length chordTolerance) => throw new NotSupportedException();
    }
}
