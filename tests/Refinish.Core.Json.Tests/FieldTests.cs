using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.Json.Nodes;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Json.Shapes;
using Refinish.Scheduling;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>No field is forgotten, and none is mixed up with another.</summary>
public class FieldTests
{
    /// <summary>Inputs that are written in another form than the property that gives them back.</summary>
    private static readonly Dictionary<string, string[]> Elsewhere = new()
    {
        ["CieLab"] = ["lightness", "a", "b"],
        ["Solvent"] = ["lowerFlammableLimit", "upperFlammableLimit", "flashPoint", "nonBurning", "vapourPressure", "boilingPoint", "notVolatile"],
        ["WallRecess"] = ["kind", "length", "height", "depth"],
        ["RoomClimate"] = ["air", "mean", "surface", "swing", "warmest", "log", "dewPoint"],
        ["SystemStep"] = ["step", "name", "materials", "source", "promoter", "layer", "additive", "rate"],
        ["FixtureOption"] = ["code", "additive", "rate", "loss", "quantity", "operation", "after"],
        ["OperationChange"] = ["id", "operation", "after", "lags"],
        ["MaterialNeed"] = ["item", "name", "volume", "amount", "density"],
    };

    /// <summary>Inputs that only a plan can make; a job that holds one is refused in writing.</summary>
    private static readonly string[] RefusedInWriting = ["StepLag.Clock", "Operation.ByFixture"];

    [Fact]
    public void Every_input_that_a_job_reaches_has_a_field()
    {
        Dictionary<Type, HashSet<string>> fields = [];
        foreach (IFieldsShape shape in Walk.Shapes(JobShapes.Job).OfType<IFieldsShape>())
        {
            fields.TryAdd(shape.Described, []);
            fields[shape.Described].UnionWith(shape.Fields.Select(field => field.Name));
        }

        int inputs = 0;
        foreach (Type type in Reached(typeof(Job)))
        {
            Assert.True(fields.TryGetValue(type, out HashSet<string>? known), type.Name + " has no shape.");
            foreach (string input in Inputs(type))
            {
                inputs++;
                Assert.True(known.Contains(input), type.Name + "." + input + " has no field.");
            }
        }

        Assert.InRange(inputs, 250, 1000);
    }

    [Fact]
    public void The_examples_use_every_field_of_every_kind()
    {
        HashSet<string> used = [.. Walk.Fields(JobShapes.Job, JsonNode.Parse(JobJson.Write(Examples.Everything())))
            .Where(found => found.Owner.ContainsKey(found.Field.Name))
            .Select(found => found.Shape.Name + "." + found.Field.Name)];
        string[] expected = [.. Walk.Shapes(JobShapes.Job).OfType<IFieldsShape>().SelectMany(shape =>
            shape.Fields.Select(field => shape.Name + "." + field.Name))];
        string[] unused = [.. expected.Where(name => !used.Contains(name)).Where(name => !name.Contains("Measurements.",
            StringComparison.Ordinal))];

        // Kinds that a job has one of: the others are in the test of clocks and sources.
        Assert.Equal(["discountByAmount.amount", "discountByAmount.mayUndercutMinimum", "discountByAmount.reason", "fixedClock.offset",
            "zoneClock.zone", "ellipse.length", "ellipse.width"],
            unused.Order(StringComparer.Ordinal).OrderBy(name => name.StartsWith('e')));
    }

    [Fact]
    public void Leaving_out_any_optional_field_gives_another_job()
    {
        Job whole = Examples.Everything();
        int optional = 0;
        foreach (Place[] places in Places(JobJson.Write(whole), required: false))
        {
            optional++;
            Assert.True(places.Any(place => !(JobJson.TryRead(Without(place), out Job? without, out _) && whole.Equals(without))),
                places[0].Path + " makes no difference.");
        }

        Assert.InRange(optional, 100, 1000);
    }

    [Fact]
    public void Leaving_out_any_required_field_is_the_one_fault_that_is_found()
    {
        int required = 0;
        foreach (Place[] places in Places(JobJson.Write(Examples.Everything()), required: true))
        {
            required++;
            string path = places[0].Path;
            Assert.False(JobJson.TryRead(Without(places[0]), out _, out IReadOnlyList<JsonFault> faults));
            Assert.True(faults is [{ Kind: JsonFaultKind.Missing } only] && only.Path == path, path + ": " + string.Join(" | ", faults));
        }

        Assert.InRange(required, 150, 1000);
    }

    private readonly record struct Place(JsonObject Owner, string Field, string Path);

    /// <summary>For each field of each shape the places where it stands, all in one tree: parsing is slower than taking out and putting back.</summary>
    private static Place[][] Places(string text, bool required) =>
        [.. Walk.Fields(JobShapes.Job, JsonNode.Parse(text))
            .Where(found => found.Field.IsRequired == required && found.Owner.ContainsKey(found.Field.Name))
            .GroupBy(found => found.Shape.Name + "." + found.Field.Name)
            .Select(group => group.Select(found => new Place(found.Owner, found.Field.Name, found.Path)).ToArray())];

    /// <summary>The document without one field, which is put back where it stood.</summary>
    private static string Without(Place place)
    {
        int index = place.Owner.IndexOf(place.Field);
        JsonNode? value = place.Owner[index];
        place.Owner.RemoveAt(index);
        string text = place.Owner.Root.ToJsonString();
        place.Owner.Insert(index, place.Field, value);
        return text;
    }

    private static IEnumerable<Type> Reached(Type root)
    {
        Assembly core = root.Assembly;
        HashSet<Type> seen = [root];
        Queue<Type> open = new([root]);
        while (open.TryDequeue(out Type? type))
        {
            if (type.IsInterface || type.IsAbstract)
            {
                foreach (Type derived in core.GetExportedTypes().Where(each => !each.IsAbstract && type.IsAssignableFrom(each)))
                {
                    Add(derived);
                }

                continue;
            }

            if (IsRecord(type))
            {
                yield return type;
            }

            foreach (Type input in InputTypes(type))
            {
                Add(input);
            }
        }

        void Add(Type type)
        {
            Type bare = Nullable.GetUnderlyingType(type) ?? type;
            if (bare.IsGenericType)
            {
                foreach (Type argument in bare.GetGenericArguments())
                {
                    Add(argument);
                }
            }
            else if (bare.Assembly == core && !bare.IsEnum && bare != typeof(SpreadingRate)
                && bare != typeof(Currency) && bare != typeof(Estimating.MaterialAmount)
                && seen.Add(bare))
            {
                open.Enqueue(bare);
            }
        }
    }

    private static readonly Type[] ToldByOthers =
    [
        typeof(MeshPoint), typeof(MeshTriangle), typeof(Estimating.Margin), typeof(LocalClock), typeof(RoughKind), typeof(ComposedKind),
        typeof(InputValues), typeof(Coatings.Flammability),
        typeof(Coatings.Volatility),
    ];

    // A fixture is made of its measurements, a margin of a ratio, and a clock of one of three things; a kind of rough or composed
    // fixture is one of the library's; points and triangles stand in the lists of their mesh; values of inputs are fields of their record. Whether a solvent burns and evaporates is told by fields of
    // the solvent.
    private static bool IsRecord(Type type) =>
        !ToldByOthers.Contains(type) && !typeof(IFixture).IsAssignableFrom(type);

    private static IEnumerable<Type> InputTypes(Type type) => Settable(type).Select(property => property.PropertyType)
        .Concat(Makers(type).SelectMany(maker => maker.GetParameters())
            .Where(parameter => !RefusedInWriting.Contains(type.Name + "." + char.ToUpperInvariant(parameter.Name![0]) + parameter.Name[1..]))
            .Select(parameter => parameter.ParameterType));

    private static IEnumerable<string> Inputs(Type type) => Elsewhere.TryGetValue(type.Name, out string[]? elsewhere)
        ? elsewhere
        : Settable(type).Select(property =>
            Json(property.Name)).Concat(Makers(type).Take(1).SelectMany(maker => maker.GetParameters()).Select(parameter =>
            Json(parameter.Name!)));

    private static IEnumerable<PropertyInfo> Settable(Type type) => type.GetProperties()
        .Where(property => property.SetMethod is { IsPublic: true } && !RefusedInWriting.Contains(type.Name + "." + property.Name));

    // Types without a public constructor are made by factories of their own type.
    private static IEnumerable<MethodBase> Makers(Type type)
    {
        ConstructorInfo[] constructors = [.. type.GetConstructors().Where(constructor =>
            !constructor.GetParameters().Any(parameter => parameter.ParameterType == type))];
        return constructors.Length > 0 && !type.IsEnum
            ? constructors
            : type.GetMethods(BindingFlags.Public | BindingFlags.Static).Where(method => method.ReturnType == type
                && !method.IsSpecialName);
    }

    private static string Json(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
