using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using Refinish.Jobs;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>
/// Which public types a whole job takes in or gives out, and why the others exist without it. A new type is either reached, or gets a line with a reason in
/// <c>StandsAlone.txt</c>: a twin of something that a job already has cannot come in unseen.
/// </summary>
public class ReachedTests
{
    private const BindingFlags Members = BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly;
    private const BindingFlags Factories = BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly Assembly Library = typeof(Job).Assembly;
    private static readonly Type[] Public = [.. Library.GetExportedTypes().Where(type => type.Assembly == Library)];

    [Fact]
    [Evidence(Basis.Contract, "a public type that no job reaches is listed with the reason why it stands alone")]
    public void Every_type_that_no_job_reaches_is_listed_with_a_reason()
    {
        HashSet<string> reached = [.. Reached().Select(type => type.FullName!)];
        HashSet<string> listed = [.. Listed().Select(line => line.Type)];
        string[] unlisted = [.. Public.Select(type => type.FullName!).Where(name => !reached.Contains(name) && !listed.Contains(name)).Order(StringComparer.Ordinal)];
        Assert.True(unlisted.Length == 0, "No job reaches these types, and StandsAlone.txt gives no reason for them:\n" + string.Join("\n", unlisted));
    }

    [Fact]
    [Evidence(Basis.Contract, "the list of types that stand alone holds none that a job reaches and none that is gone")]
    public void Every_listed_type_is_there_and_is_not_reached()
    {
        HashSet<string> reached = [.. Reached().Select(type => type.FullName!)];
        HashSet<string> there = [.. Public.Select(type => type.FullName!)];
        string[] wrong = [.. Listed().Select(line => line.Type).Where(name => reached.Contains(name) || !there.Contains(name))];
        Assert.True(wrong.Length == 0, "StandsAlone.txt lists these types, and a job reaches them or they are gone:\n" + string.Join("\n", wrong));
    }

    [Fact]
    [Evidence(Basis.Contract, "every listed type stands once, in order, with a reason of more than two words")]
    public void The_list_is_in_order_and_gives_reasons()
    {
        (string Type, string Reason)[] lines = [.. Listed()];
        Assert.Equal(lines.Select(line => line.Type).Distinct().Order(StringComparer.Ordinal), lines.Select(line => line.Type));
        Assert.All(lines, line => Assert.True(line.Reason.Split(' ').Length > 2, line.Type + " has no reason"));
    }

    [Fact]
    [Evidence(Basis.Contract, "the walk reaches the parts of a job that lie deepest, and not a science that no job calls")]
    public void The_walk_goes_through_lists_nullables_base_classes_subclasses_and_interfaces()
    {
        HashSet<Type> reached = Reached();
        Assert.Contains(typeof(Refinish.Fixtures.PedestalSink), reached);
        Assert.Contains(typeof(Refinish.Substrates.WornPatch), reached);
        Assert.Contains(typeof(Refinish.Coatings.Solvent), reached);
        Assert.Contains(typeof(Refinish.Scheduling.ChainLink), reached);
        Assert.Contains(typeof(Refinish.Air.RespiratorClass), reached);
        Assert.DoesNotContain(typeof(Refinish.Estimating.WeibullFit), reached);
        Assert.DoesNotContain(typeof(Refinish.Inspection.PencilTest), reached);
    }

    private static IEnumerable<(string Type, string Reason)> Listed() => File
        .ReadAllLines(Path.Combine(ReadmeTests.Root(), "tests", "Refinish.Core.Tests", "House", "StandsAlone.txt"))
        .Where(line => line.Length > 0 && line[0] != '#')
        .Select(line => line.Split('\t'))
        .Select(cells => (cells[0], cells.Length > 1 ? cells[1] : string.Empty));

    private static HashSet<Type> Reached()
    {
        Type[] doors = [typeof(Job), typeof(JobPlan), typeof(JobRange)];
        HashSet<Type> reached = [.. doors];
        Queue<Type> open = new(doors);
        while (open.Count > 0)
        {
            Type type = open.Dequeue();
            foreach (Type part in Parts(type))
            {
                if (Public.Contains(part) && reached.Add(part))
                {
                    open.Enqueue(part);
                }
            }
        }

        return reached;
    }

    // What a caller gives in or gets out; a base class or an interface also stands for everything that can be in its place.
    private static IEnumerable<Type> Parts(Type type)
    {
        IEnumerable<Type> inOut = type.GetProperties(Members).Select(property => property.PropertyType)
            .Concat(type.GetConstructors(Members).SelectMany(Taken))
            .Concat(type.GetMethods(Members).Where(method => !method.IsSpecialName && method.Name != "Equals").SelectMany(method => Taken(method).Append(method.ReturnType)))
            .Concat(type.GetMethods(Factories).Where(method => !method.IsSpecialName && method.ReturnType == type).SelectMany(Taken));
        IEnumerable<Type> standIns = type.IsSealed ? [] : Public.Where(type.IsAssignableFrom);
        return inOut.Concat(standIns).Concat(type.BaseType is Type parent ? [parent] : []).SelectMany(Unwrapped);
    }

    // A list, a nullable or an array stands for what it holds.
    private static IEnumerable<Type> Unwrapped(Type type) =>
        type.IsArray ? Unwrapped(type.GetElementType()!) : type.IsGenericType ? type.GetGenericArguments().SelectMany(Unwrapped) : [type];

    private static IEnumerable<Type> Taken(MethodBase method) => method.GetParameters().Select(parameter => parameter.ParameterType);
}
