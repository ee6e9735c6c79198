using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>
/// Formulas are written on <c>Num</c>, once. What computes on plain doubles stands in <c>PlainDoubles.txt</c>: the type, why, and the
/// test class that holds it to a written formula or to a figure from outside.
/// </summary>
public class PlainDoublesTests
{
    private static readonly HashSet<string> Functions =
        ["Exp", "Log", "Log10", "Pow", "Sqrt", "Cbrt", "Sin", "Cos", "Tan", "Asin", "Acos", "Atan", "Atan2", "Sinh", "Cosh", "Tanh"];

    private static readonly Dictionary<string, string[]> Listed = File.ReadAllLines(
            Path.Combine(ReadmeTests.Root(), "tests", "Refinish.Core.Tests", "House", "PlainDoubles.txt"))
        .Where(line => line.Length > 0 && line[0] != '#').Select(line => line.Split('\t')).ToDictionary(row => row[0]);

    [PageFact]
    [Evidence(Basis.Contract, "every type that calls a function of Math on doubles is listed, and nothing else is; read from the compiled instructions")]
    public void Only_what_is_listed_computes_on_plain_doubles()
    {
        string[] found = [.. typeof(Currency).Assembly.GetTypes().SelectMany(IlReferences.Calls)
            .Where(call => call.Called.DeclaringType == typeof(Math) && Functions.Contains(call.Called.Name))
            .Select(call => Outermost(call.By.DeclaringType!))
            .Where(type => type.Namespace != "Refinish.Numerics" && type.Name != "Num")
            .Select(type => type.FullName!).Distinct().Order(StringComparer.Ordinal)];
        string[] missing = [.. found.Except(Listed.Keys)];
        string[] idle = [.. Listed.Keys.Except(found)];
        Assert.True(missing.Length == 0, "PlainDoubles.txt lacks: " + string.Join(" ", missing));
        Assert.True(idle.Length == 0, "PlainDoubles.txt lists, and they call no function of Math: " + string.Join(" ", idle));
    }

    [Fact]
    [Evidence(Basis.Contract, "the list gives a reason and a test class that exists")]
    public void Each_is_tied_to_a_test()
    {
        HashSet<string> classes = [.. typeof(PlainDoublesTests).Assembly.GetTypes().Where(HasTests).Select(type => type.Name)];
        Assert.All(Listed.Values, row =>
        {
            Assert.Equal(3, row.Length);
            Assert.NotEmpty(row[1]);
            Assert.All(row[2].Split(' '), test => Assert.Contains(test, classes));
        });
    }

    private static bool HasTests(Type type) => type.GetMethods(BindingFlags.Public | BindingFlags.Instance)
        .Any(method => method.GetCustomAttributes<FactAttribute>(inherit: true).Any());

    private static Type Outermost(Type type) => type.DeclaringType is { } outer ? Outermost(outer) : type;
}
