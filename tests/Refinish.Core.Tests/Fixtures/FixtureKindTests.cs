using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using Refinish.Fixtures;
using Refinish.Tests.House;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Fixtures;

/// <summary>What must be there for a kind of fixture follows from its registration. JSON and pictures have such a test of their own.</summary>
public class FixtureKindTests
{
    private static readonly string[] Pages = [.. new[] { "fixtures.md", "own-fixtures.md" }
        .SelectMany(page => File.ReadAllLines(Path.Combine(ReadmeTests.Root(), "docs", page)))];

    public static TheoryData<string> Kinds => [.. FixtureKind.All.Select(kind => kind.Id)];

    [Fact]
    [Evidence(Basis.Contract, "every type of fixture has a registration, but for the rough one, which stands for another; ids are unique and shared with no rough kind of another fixture")]
    public void Every_type_of_fixture_is_registered()
    {
        IEnumerable<Type> types = typeof(IFixture).Assembly.GetExportedTypes()
            .Where(type => typeof(IFixture).IsAssignableFrom(type) && !type.IsAbstract && type != typeof(RoughFixture));
        Assert.Empty(types.Except(FixtureKind.All.Select(kind => kind.FixtureType)).Select(type => type.Name + " is not registered in FixtureKind.All"));
        Assert.Equal(FixtureKind.All.Count, FixtureKind.All.Select(kind => kind.Id).Distinct().Count());
        Assert.Equal(RoughKind.Kinds, FixtureKind.All.SelectMany(kind => kind.RoughKinds));
        Assert.All(FixtureKind.All, kind => Assert.All(kind.RoughKinds, rough => Assert.Equal(kind.FixtureType, rough.FixtureType)));
        RoughFixture rough = RoughFixture.ShowerPan(UnitsNet.Length.FromInches(36), UnitsNet.Length.FromInches(48));
        Assert.Equal("showerPan: shower pan", FixtureKind.Of(rough)!.Id + ": " + FixtureKind.Of(rough));
        Assert.Null(FixtureKind.Of(new Jobs.GrownFixture(rough, 1)));
        Assert.Throws<ArgumentNullException>(() => FixtureKind.Of(null!));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    [Evidence(Basis.Contract, "what must be there for a kind: an example, bands, materials, rough forms, what is taken off and put back, its row in the documentation; what is missing is named")]
    public void Nothing_is_missing(string id)
    {
        FixtureKind kind = FixtureKind.All.Single(one => one.Id == id);
        IFixture? example = Tapes.Of(kind);
        Assert.True(example is not null, id + " lacks an example in Tapes.Every");
        PropertyInfo? measured = kind.FixtureType.GetProperty("Measurements");
        bool hasLengths = kind.FixtureType != typeof(ZonedFixture);
        List<string> lacks = [];
        Has(kind.Name.Length > 2, "a name");
        Has(!hasLengths || kind.Materials.Count > 0, "materials");
        Has(!hasLengths || kind.Readings.Count > 0, "bands of its readings");
        Has(measured is null || kind.RoughKinds.Count > 0, "a rough kind");
        Has(kind.Clearing(example!).Length > 10, "what is taken off it");
        Has(kind.PuttingBack(example!).Length > 10, "what is put back");
        Has(Pages.Any(line => line.StartsWith("| ", StringComparison.Ordinal) && line.Contains("`" + Documented(kind) + "`", StringComparison.Ordinal))
            || (!hasLengths && Pages.Any(line => line.Contains("`ZonedFixture`", StringComparison.Ordinal))), "its row in docs/fixtures.md");
        if (measured is not null)
        {
            Has(OrdinaryReading.TapedOf(example!).Count > 0, "readings with a ±");
        }

        Assert.True(lacks.Count == 0, id + " lacks " + string.Join(", ", lacks));

        void Has(bool isThere, string part)
        {
            if (!isThere)
            {
                lacks.Add(part);
            }
        }
    }

    // A composed kind stands in the table by the name of its property.
    private static string Documented(FixtureKind kind) => kind.FixtureType != typeof(ComposedFixture)
        ? kind.FixtureType.Name
        : typeof(ComposedKind).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .First(property => property.GetValue(null) is ComposedKind own && own.Id == kind.Id).Name;
}
