using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class FloorTests
{
    private static readonly Assembly Library = typeof(Measure).Assembly;

    /// <summary>The floors of the house, as DEVELOPERS.md draws them.</summary>
    private static readonly Dictionary<string, int> Floors = new()
    {
        ["Refinish"] = 0,
        ["Refinish.Fixtures"] = 1,
        ["Refinish.Colours"] = 1,
        ["Refinish.Climate"] = 2,
        ["Refinish.Coatings"] = 3,
        ["Refinish.Substrates"] = 3,
        ["Refinish.Films"] = 4,
        ["Refinish.Curing"] = 4,
        ["Refinish.Inspection"] = 5,
        ["Refinish.Coverage"] = 5,
        ["Refinish.Air"] = 5,
        ["Refinish.Estimating"] = 6,
        ["Refinish.Scheduling"] = 6,
        ["Refinish.Jobs"] = 7,
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

    [Fact]
    [Evidence(Basis.Contract, "architecture: every namespace has its floor, and every floor is lived in")]
    public void Every_namespace_has_a_floor()
    {
        IEnumerable<string> lived = Library.GetTypes().Where(type => type.IsPublic).Select(type => type.Namespace!).Distinct();
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

    private static bool IsOurs(string? name) => name is not null && Floors.ContainsKey(name);
}
