using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class FloorTests
{
    private static readonly Assembly Library = typeof(Measure).Assembly;

    /// <summary>The floors of the house, as DEVELOPERS.md draws them.</summary>
    private static readonly Dictionary<string, int> Floors = new()
    {
        ["Refinish.Numerics"] = 0,
        ["Refinish"] = 1,
        ["Refinish.Fixtures"] = 2,
        ["Refinish.Colours"] = 2,
        ["Refinish.Climate"] = 3,
        ["Refinish.Coatings"] = 4,
        ["Refinish.Substrates"] = 4,
        ["Refinish.Films"] = 5,
        ["Refinish.Curing"] = 5,
        ["Refinish.Inspection"] = 6,
        ["Refinish.Coverage"] = 6,
        ["Refinish.Air"] = 6,
        ["Refinish.Estimating"] = 7,
        ["Refinish.Scheduling"] = 7,
        ["Refinish.Jobs"] = 8,
    };

    [Fact]
    [Evidence(Basis.Contract, "architecture: a room uses only rooms on floors below it; read from the compiled instructions")]
    public void No_room_uses_a_room_beside_or_above_it()
    {
        List<string> breaches = [];
        int read = 0;
        foreach (Type type in Library.GetTypes().Where(type => IsOurs(type.Namespace)))
        {
            foreach (Type used in IlReferences.Of(type).Where(used => used.Assembly == Library && IsOurs(used.Namespace)))
            {
                read++;
                if (used.Namespace != type.Namespace && Floors[used.Namespace!] >= Floors[type.Namespace!])
                {
                    breaches.Add(type.FullName + " uses " + used.FullName);
                }
            }
        }

        Assert.True(read > 500, "The reader of instructions found next to nothing.");
        Assert.Empty(breaches.Distinct());
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("DEVELOPERS.md")]
    [Evidence(Basis.Contract, "the tables of floors are those of the test")]
    public void The_page_has_the_same_floors(string page)
    {
        string text = File.ReadAllText(Path.Combine(ReadmeTests.Root(), page));
        Assert.Equal(
            Floors.Where(room => room.Value > 0 || page == "DEVELOPERS.md").OrderBy(room => room.Key, StringComparer.Ordinal),
            Regex.Matches(text, @"^\| (\d) \| ((?:`Refinish[\w.]*`(?: \([^)]*\))?(?:, )?)+) \|", RegexOptions.Multiline).Cast<Match>()
                .SelectMany(row => Regex.Matches(row.Groups[2].Value, "`(Refinish[\\w.]*)`").Cast<Match>()
                    .Select(room => new KeyValuePair<string, int>(room.Groups[1].Value, int.Parse(row.Groups[1].Value, CultureInfo.InvariantCulture))))
                .Where(room => room.Value > 0 || page == "DEVELOPERS.md").OrderBy(room => room.Key, StringComparer.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "architecture: every namespace has its floor, and every floor is lived in")]
    public void Every_namespace_has_a_floor()
    {
        IEnumerable<string> lived = Library.GetTypes().Select(type => type.Namespace ?? string.Empty)
            .Where(name => name.StartsWith("Refinish", StringComparison.Ordinal)).Distinct();
        Assert.Equal(Floors.Keys.Order(StringComparer.Ordinal), lived.Order(StringComparer.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "dependencies: UnitsNet, MathNet.Numerics and the framework, nothing else")]
    public void The_library_refers_to_nothing_but_its_two_dependencies()
    {
        IEnumerable<string> foreign = Library.GetReferencedAssemblies().Select(name => name.Name!)
            .Where(name => !name.StartsWith("System", StringComparison.Ordinal) && name is not ("netstandard" or "UnitsNet" or "MathNet.Numerics"));
        Assert.Empty(foreign);
    }

    [Fact]
    [Evidence(Basis.Contract, "architecture: the numerics room is internal, and only it refers to MathNet.Numerics")]
    public void Only_the_numerics_room_refers_to_the_library_of_numerics()
    {
        Assert.DoesNotContain(Library.GetTypes(), type => type.IsPublic && type.Namespace == "Refinish.Numerics");
        string[] users = [.. Library.GetTypes()
            .Where(type => IlReferences.Of(type).Any(used => used.Assembly.GetName().Name == "MathNet.Numerics"))
            .Select(type => type.Namespace!).Distinct()];
        Assert.Equal(["Refinish.Numerics"], users);
    }

    private static bool IsOurs(string? name) => name is not null && Floors.ContainsKey(name);
}
