using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Refinish.Substrates;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

public class PlanProvenanceTests
{
    // What stands on a plan without having been asked: choices that were not taken, and rules that did not speak.
    private static readonly HashSet<Type> NotUsed =
    [
        typeof(Job), typeof(Shop), typeof(Premises), typeof(SurveyPolicy), typeof(Refinish.Air.LimitSet), typeof(FixtureKind), typeof(DefectKind),
        typeof(FixtureMaterial), typeof(Refinish.Air.VapourPressureFit),
    ];

    [Fact]
    [Evidence(Basis.Independent, "a walk through the public properties of the guesthouse's plan, its inputs left aside, finds no source that its provenance lacks")]
    public void A_plan_tells_every_source_that_can_be_found_in_it()
    {
        JobPlan plan = Scenario.Guesthouse().Plan();
        HashSet<Source> told = [.. plan.Provenance.Sources];
        string[] missing = [.. Found(plan).Where(each => !told.Contains(each.Source)).Select(each => each.Where + ": " + each.Source).Distinct()];
        Assert.True(missing.Length == 0, string.Join("\n", missing));
        Assert.Equal(told.Count, plan.Provenance.Sources.Count);
    }

    [Fact]
    [Evidence(Basis.Contract, "the guesthouse's plan says that it rests on invented labour standards and on figures from memory, and counts each kind once")]
    public void A_plan_says_how_much_of_it_is_invented()
    {
        JobPlan plan = Scenario.Guesthouse().Plan();
        Provenance behind = plan.Provenance;
        Assert.Contains(behind.Of(SourceKind.Invented), source => source.Document.StartsWith("minutes of one person", StringComparison.Ordinal));
        Assert.NotEmpty(behind.Of(SourceKind.FromMemory));
        Assert.Contains(plan.Cautions[0].Caution.Source, behind.Sources);
        Assert.Equal(behind.Sources.Count, Enum.GetValues<SourceKind>().Sum(kind => behind.Of(kind).Count));
        Assert.Same(behind, plan.Provenance);
        Numbers.Refuses("kind", () => behind.Of((SourceKind)9));
    }

    private static List<(Source Source, string Where)> Found(JobPlan plan)
    {
        List<(Source, string)> found = [];
        HashSet<object> seen = [];
        Queue<(object Value, string Where)> open = new([(plan, "plan")]);
        while (open.Count > 0)
        {
            (object value, string where) = open.Dequeue();
            if (value is Source source)
            {
                found.Add((source, where));
            }
            else if (value is not string and not Provenance and not Workings && !NotUsed.Any(type => type.IsInstanceOfType(value)) && seen.Add(value))
            {
                foreach ((object part, string name) in Parts(value))
                {
                    open.Enqueue((part, where + "." + name));
                }
            }
        }

        return found;
    }

    private static IEnumerable<(object Part, string Name)> Parts(object value) => value is IEnumerable list
        ? list.Cast<object?>().OfType<object>().Select(item => (item, "item"))
        : value.GetType().Namespace?.StartsWith("Refinish", StringComparison.Ordinal) != true && !value.GetType().Name.StartsWith("KeyValuePair", StringComparison.Ordinal) ? []
        : value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0 && !property.PropertyType.IsPrimitive)
            .Select(property => (property.GetValue(value), property.Name)).Where(each => each.Item1 is not null).Select(each => (each.Item1!, each.Name));
}
