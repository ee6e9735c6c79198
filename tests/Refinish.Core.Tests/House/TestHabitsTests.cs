using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class TestHabitsTests
{
    [Fact]
    [Evidence(Basis.Contract, "every test says what it rests on")]
    public void Every_test_names_its_evidence()
    {
        IEnumerable<string> bare = typeof(TestHabitsTests).Assembly.GetTypes()
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(method => method.GetCustomAttributes<FactAttribute>().Any() && method.GetCustomAttribute<EvidenceAttribute>() is not { Source.Length: > 10 })
            .Select(method => method.DeclaringType!.Name + "." + method.Name);
        Assert.Empty(bare);
    }

    [Fact]
    [Evidence(Basis.Contract, "records print through the invariant culture, so each writes its own text")]
    public void Every_public_record_writes_its_own_text()
    {
        IEnumerable<string> silent = typeof(Measure).Assembly.GetExportedTypes()
            .Where(type => !type.IsEnum && !type.IsInterface && !(type.IsAbstract && type.IsSealed))
            .Where(type => type.GetMethod("<Clone>$") is not null || (type.IsValueType && type.GetInterfaces().Any(contract => contract.Name == "IEquatable`1")))
            .Where(type => WrittenBy(type) is not { } writer || IsSynthesized(writer))
            .Select(type => type.FullName!);
        Assert.Empty(silent);
    }

    private static MethodInfo? WrittenBy(Type type)
    {
        MethodInfo writer = type.GetMethod(nameof(ToString), Type.EmptyTypes)!;
        return writer.DeclaringType == typeof(object) || writer.DeclaringType == typeof(ValueType) ? null : writer;
    }

    private static bool IsSynthesized(MethodInfo writer) =>
        writer.CustomAttributes.Any(attribute => attribute.AttributeType.Name == "CompilerGeneratedAttribute");
}
