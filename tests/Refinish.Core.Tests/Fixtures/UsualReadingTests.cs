using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

public class UsualReadingTests
{
    private static readonly UsualReading[] All = [.. FixtureKind.All.SelectMany(kind => kind.Readings)];

    [Fact]
    [Evidence(Basis.Contract, "every kind of fixture of the library is in the table, and every length of its record of measurements has a row; what is missing is named")]
    public void Every_kind_and_every_length_has_a_band()
    {
        Type[] kinds = [.. typeof(IFixture).Assembly.GetExportedTypes().Where(type => typeof(IFixture).IsAssignableFrom(type)
            && !type.IsInterface)
            .Where(type => type.GetProperty("Measurements") is not null)];
        Assert.Empty(kinds.Except(FixtureKind.All.Select(kind => kind.FixtureType)));
        List<string> missing = [];
        foreach (Type kind in kinds)
        {
            HashSet<string> named = [.. All.Where(reading => reading.Fixture == kind.Name).Select(reading => reading.Name)];
            missing.AddRange(Lengths(kind.GetProperty("Measurements")!.PropertyType, string.Empty).Where(name =>
                !named.Contains(name)).Select(name => kind.Name + "." + name));
        }

        Assert.Empty(missing);
        Assert.All(All, reading => Assert.True(reading.Least < reading.Greatest && reading.Least > Length.Zero,
            reading.ToString()));
        Assert.Equal("RecessedBathtub Depth: 254 mm to 609.6 mm",
            All.Single(reading => reading is { Fixture: "RecessedBathtub", Name: "Depth" }).ToString());
        Assert.Equal("counter along a wall", FixtureKind.ReadingsOf(new FlatPanel(Tapes.Counter()))[0].Form);
        Assert.Empty(FixtureKind.ReadingsOf(new Jobs.GrownFixture(new FlatPanel(Tapes.Counter()), 1)));
    }

    // The lengths of a record, of the records it holds and of those in its lists.
    private static IEnumerable<string> Lengths(Type record, string prefix)
    {
        foreach (PropertyInfo property in record.GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            Type type = property.PropertyType.IsGenericType && property.PropertyType.GetGenericTypeDefinition() == typeof(IReadOnlyList<>)
                ? property.PropertyType.GetGenericArguments()[0]
                : property.PropertyType;
            string name = prefix + property.Name;
            if (type == typeof(Length))
            {
                // Its name says that it is worked out.
                if (property.Name != "Perimeter")
                {
                    yield return name;
                }
            }
            else if (type.Namespace == record.Namespace && !type.IsEnum)
            {
                foreach (string inner in Lengths(type, name + "."))
                {
                    yield return inner;
                }
            }
        }
    }
}
