using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Json.Shapes;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>An app's own message that holds things of the library.</summary>
public sealed record Visit
{
    public required string Customer { get; init; }

    public required Job Job { get; init; }

    public IFixture? Fixture { get; init; }

    public RecessedBathtubMeasurements? Tape { get; init; }

    public Length Hose { get; init; }

    public Temperature? Van { get; init; }

    public IReadOnlyList<CoatingProduct> Stock { get; init; } = [];

    public Dictionary<string, Volume> Cans { get; init; } = [];
}

[JsonSerializable(typeof(Visit))]
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
public sealed partial class VisitContext : JsonSerializerContext;

public class ResolverTests
{
    private static readonly JsonSerializerOptions BySourceGenerator = With(VisitContext.Default);

    private static readonly JsonSerializerOptions ByReflection = With(new DefaultJsonTypeInfoResolver());

    private static readonly Visit Example = new()
    {
        Customer = "the old ferry (invented)",
        Job = Examples.Bathroom(),
        Fixture = new RecessedBathtub(Tapes.FiveFootTub()),
        Tape = Tapes.FiveFootTub(),
        Hose = Length.FromMeters(12),
        Van = Temperature.FromDegreesCelsius(4.5),
        Stock = [GenericCatalogue.EpoxyPrimer],
        Cans = new() { ["primer"] = Volume.FromMilliliters(750) },
    };

    public static TheoryData<string> Ways => ["source generator", "reflection"];

    [Theory]
    [MemberData(nameof(Ways))]
    public void An_apps_own_message_holds_jobs_fixtures_and_quantities(string way)
    {
        string json = JsonSerializer.Serialize(Example, Info(way));
        using JsonDocument document = JsonDocument.Parse(json);
        Assert.Equal("refinish/job", document.RootElement.GetProperty("job").GetProperty("format").GetString());
        Assert.Equal("recessedBathtub", document.RootElement.GetProperty("fixture").GetProperty("kind").GetString());
        Assert.Equal("{\"value\":4.5,\"unit\":\"°C\"}", document.RootElement.GetProperty("van").GetRawText());
        Visit back = JsonSerializer.Deserialize(json, Info(way))!;
        Assert.Equal(Example.Job, back.Job);
        Assert.Equal(Example.Fixture, back.Fixture);
        Assert.Equal(Example.Tape, back.Tape);
        Assert.Equal(Example.Stock, back.Stock);
        Assert.Equal(12, back.Hose.Meters);
        Assert.Equal(277.65, back.Van!.Value.Kelvins);
        Assert.Equal(750e-6, back.Cans["primer"].CubicMeters);
    }

    [Fact]
    public void What_may_be_null_may_be_null()
    {
        Visit back = JsonSerializer.Deserialize(JsonSerializer.Serialize(Example with { Fixture = null, Tape = null, Van = null },
            Info("source generator")), Info("source generator"))!;
        Assert.Null(back.Fixture);
        Assert.Null(back.Tape);
        Assert.Null(back.Van);
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void A_fault_has_the_path_of_the_whole_message(string way)
    {
        string json = FaultTests.Put(JsonSerializer.Serialize(Example, Info(way)), "$.job.fixtures[0].fixture.rimLength.value", "9346");
        RefinishJsonException refused = Assert.Throws<RefinishJsonException>(() => JsonSerializer.Deserialize(json, Info(way)));
        Assert.Equal("$.job.fixtures[0].fixture.rimLength.value", Assert.Single(refused.Faults).Path);
        Assert.StartsWith("$.job.fixtures[0].fixture.rimLength.value: rimLength is 9346 mm", refused.Message, StringComparison.Ordinal);

        string second = FaultTests.Put(JsonSerializer.Serialize(Example, Info(way)), "$.cans.primer.unit", "\"gal\"");
        Assert.Equal("$.cans.primer.unit",
            Assert.Single(Assert.Throws<RefinishJsonException>(() => JsonSerializer.Deserialize(second, Info(way))).Faults).Path);
    }

    [Fact]
    public void A_fixture_of_another_kind_cannot_stand_where_one_kind_is_asked_for()
    {
        string pan = JsonSerializer.Serialize<IFixture>(new ShowerPan(Tapes.Pan()), ByReflection);
        Assert.IsType<ShowerPan>(JsonSerializer.Deserialize<IFixture>(pan, ByReflection));
        RefinishJsonException refused = Assert.Throws<RefinishJsonException>(() => JsonSerializer.Deserialize<RecessedBathtub>(pan,
            ByReflection));
        Assert.Equal(("$.kind", JsonFaultKind.UnknownKind), (Assert.Single(refused.Faults).Path, refused.Faults[0].Kind));
        Assert.Equal(pan, JsonSerializer.Serialize(new ShowerPan(Tapes.Pan()), ByReflection));
        Assert.Equal("{\"kind\":\"looseTiles\",\"count\":3}", JsonSerializer.Serialize(new LooseTiles(3), ByReflection));
    }

    [Fact]
    public void Units_can_be_chosen_for_an_app()
    {
        JsonSerializerOptions us = new();
        us.TypeInfoResolverChain.Insert(0, RefinishJson.ResolverFor(DisplayUnits.UsCustomary));
        us.TypeInfoResolverChain.Add(new DefaultJsonTypeInfoResolver());
        Assert.Equal("{\"value\":60,\"unit\":\"in\"}", JsonSerializer.Serialize(Length.FromInches(60), us));
        Assert.Equal("[{\"value\":60,\"unit\":\"in\"}]", JsonSerializer.Serialize<Length[]>([Length.FromInches(60)], us));
        Assert.Equal(1.524, JsonSerializer.Deserialize<Length>("{\"value\":1524,\"unit\":\"mm\"}", us).Meters);
    }

    [Fact]
    public void A_plan_goes_out_as_its_document_and_comes_in_as_a_stored_plan()
    {
        JobPlan plan = Examples.Bathroom().Plan();
        string json = JsonSerializer.Serialize(plan, ByReflection);
        StoredPlan stored = JsonSerializer.Deserialize<StoredPlan>(json, ByReflection)!;
        Assert.True(stored.Agrees);
        Assert.Equal(plan.Job, stored.Plan.Job);
        Assert.Equal(json, JsonSerializer.Serialize(stored, ByReflection));
        Assert.Throws<NotSupportedException>(() => JsonSerializer.Deserialize<JobPlan>(json, ByReflection));
    }

    [Fact]
    public void Every_type_that_a_job_reaches_and_every_quantity_is_served()
    {
        ShapeResolver resolver = (ShapeResolver)RefinishJson.Resolver;
        JsonSerializerOptions options = With(new DefaultJsonTypeInfoResolver());
        Type[] expected =
        [
            .. Walk.Shapes(JobShapes.Job).OfType<IFieldsShape>().Select(shape => shape.Described).Where(type =>
                type != typeof(Estimating.ThreePoint) && type != typeof(Catalogue)),
            .. typeof(Defect).Assembly.GetExportedTypes().Where(type => type.IsSubclassOf(typeof(Defect))
                || (typeof(IFixture).IsAssignableFrom(type))),
            typeof(Length), typeof(Area), typeof(Volume), typeof(Mass), typeof(Density), typeof(Ratio), typeof(Temperature),
                typeof(TemperatureDelta), typeof(Pressure),
            typeof(VolumeFlow), typeof(Angle), typeof(MolarMass), typeof(MassConcentration), typeof(DynamicViscosity), typeof(Speed),
                typeof(SpreadingRate), typeof(Length?),
        ];
        Assert.All(expected, type => Assert.NotNull(resolver.GetTypeInfo(type, options)));
        Assert.Null(resolver.GetTypeInfo(typeof(string), options));
    }

    private static JsonTypeInfo<Visit> Info(string way) =>
        (JsonTypeInfo<Visit>)(way == "reflection" ? ByReflection : BySourceGenerator).GetTypeInfo(typeof(Visit));

    private static JsonSerializerOptions With(IJsonTypeInfoResolver own)
    {
        JsonSerializerOptions options = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };
        options.TypeInfoResolverChain.Insert(0, RefinishJson.Resolver);
        options.TypeInfoResolverChain.Add(own);
        return options;
    }
}
