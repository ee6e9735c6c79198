using System;
using System.Linq;
using System.Text.Json.Nodes;
using FsCheck.Xunit;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Curing;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>What is defined once and named elsewhere, names that were given or not, and what only a plan can make.</summary>
public class IdentifierTests
{
    [Fact]
    public void What_repeats_is_defined_once_and_named_by_its_identifier()
    {
        JsonNode root = JsonNode.Parse(JobJson.Write(Examples.Everything()))!;
        Assert.Equal("everything", (string)root["shop"]!["system"]!);
        Assert.All(root["fixtures"]!.AsArray(), fixture => Assert.Equal("slip-resistant-tub", (string)fixture!["system"]!));
        Assert.Equal(["everything", "slip-resistant-tub"],
            root["catalogue"]!["systems"]!.AsArray().Select(system => (string)system!["id"]!));
        Assert.Equal("epoxy-primer", (string)root["stock"]![0]!["product"]!);
        Assert.Equal("L-1", (string)root["changes"]![0]!["operation"]!["labour"]![0]!["standard"]!);
        Assert.Equal("67-63-0", (string)root["changes"]![0]!["operation"]!["vapours"]![0]!["solvents"]![0]!["solvent"]!);
    }

    /// <summary>Two products may have one identifier in different systems; the second stands where it is used.</summary>
    [Fact]
    public void Two_things_of_one_identifier_both_come_back()
    {
        CoatingProduct other = GenericCatalogue.EpoxyPrimer with { VolumeSolids = Ratio.FromPercent(37) };
        CoatingSystem system = new(
            "epoxy-urethane", "the same identifier",
                [SystemStep.Coat(new CoatingLayer(other, Length.FromMicrometers(30), 1, other.MinimumReducer))], null,
                Source.Invented("for a test"));
        Job job = Examples.Bathroom();
        job = job with
        {
            Fixtures = [job.Fixtures[0] with { System = system }, .. job.Fixtures.Skip(1)],
            Stock = [new OpenedKit(other, [.. other.Parts.Select(part => new PartVolume(part.Component.Id, Volume.FromMilliliters(25 * part.Parts)))], job.Start.AddDays(-3))],
        };
        string text = JobJson.Write(job);
        Job back = JobJson.Read(text);
        Assert.Equal(job, back);
        Assert.Equal(0.37, back.Stock[0].Product.VolumeSolids.DecimalFractions, 1e-12);
        Assert.Equal(text, JobJson.Write(back));
    }

    /// <summary>A data base may give the fields back in another order than they were written in.</summary>
    [Fact]
    public void The_order_of_fields_makes_no_difference()
    {
        JsonNode root = JsonNode.Parse(JobJson.Write(Examples.Everything()))!;
        Assert.Equal(Examples.Everything(), JobJson.Read(Reversed(root)!.ToJsonString()));

        static JsonNode? Reversed(JsonNode? node) => node switch
        {
            JsonObject owner => new JsonObject(owner.Reverse().Select(field => System.Collections.Generic.KeyValuePair.Create(field.Key,
                Reversed(field.Value)))),
            JsonArray list => new JsonArray([.. list.Select(Reversed)]),
            _ => node?.DeepClone(),
        };
    }

    [Fact]
    public void The_librarys_own_are_named_with_generic()
    {
        string text = FaultTests.Put(JobJson.Write(Examples.Bathroom()), "$.shop.system", "\"generic/cleared-plastic\"");
        Assert.Equal(GenericCatalogue.ClearedPlastic, JobJson.Read(text).Shop.System);
    }

    /// <summary>A shop that states no labour standards has the library's, and its work may name them.</summary>
    [Fact]
    public void Labour_may_name_a_standard_of_the_library_where_the_shop_states_none()
    {
        JsonNode root = JsonNode.Parse(JobJson.Write(Examples.Bathroom()))!;
        root["shop"]!.AsObject().Remove("labour");
        string code = Estimating.LabourStandards.Generic[0].Code;
        root["changes"] = JsonNode.Parse(
            "[{\"kind\":\"add\",\"operation\":{\"id\":\"own\",\"kind\":\"other\",\"instruction\":\"own work\",\"labour\":[{\"standard\":\""
                + code + "\",\"units\":2}]}}]");
        Assert.Equal(Estimating.LabourStandards.Generic[0], JobJson.Read(root.ToJsonString()).Changes[0].Operation!.Labour[0].Standard);
    }

    /// <summary>A name that was given and says the same as the identifier is not the same as none.</summary>
    [Fact]
    public void A_name_comes_back_given_or_not_given()
    {
        Job job = Examples.Least();
        Assert.Equal(job, JobJson.Read(JobJson.Write(job)));
        Assert.DoesNotContain("\"name\": \"least\"", JobJson.Write(job), StringComparison.Ordinal);
        Job named = job with { Name = "least", Fixtures = [job.Fixtures[0] with { Name = "tub" }] };
        Assert.Equal(named, JobJson.Read(JobJson.Write(named)));
    }

    /// <summary>The dew point of a log comes back to the last bit, above the first air as well.</summary>
    [Property(MaxTest = 300)]
    public void A_log_comes_back_with_its_dew_point(byte air, short dew, byte surface)
    {
        double warm = 10 + (air / 10.0);
        Temperature dewPoint = Temperature.FromDegreesCelsius(dew / 1000.0);
        RoomClimate climate = RoomClimate.Logged(
            new TemperatureHistory(Examples.Bathroom().Start,
                [new(TimeSpan.FromHours(40), Temperature.FromDegreesCelsius(warm)),
                new(TimeSpan.FromHours(1), Temperature.FromDegreesFahrenheit(66))], true),
            dewPoint,
            Temperature.FromDegreesCelsius(10 + (surface / 20.0)));
        Job job = Examples.Bathroom() with { Premises = new Premises { Id = "guesthouse", Rooms = [Examples.Room("bath-3", climate)] } };
        Assert.Equal(job,
            JobJson.Read(JobJson.Write(job, new JsonLayout { Units = dew % 2 == 0 ? DisplayUnits.Si : DisplayUnits.UsCustomary })));
    }

    [Fact]
    public void What_only_a_plan_can_make_is_refused_in_writing_and_named()
    {
        Job job = Examples.Bathroom();
        JobPlan plan = job.Plan();
        Operation taken = plan.Operations.First(operation => operation.ByFixture.Count > 0);
        Refused(job with { Changes = [OperationChange.Replace(taken.Id, taken with { Time = TimeSpan.FromHours(1) })] },
            "instructions by fixture");
        Assert.NotEmpty(JobJson.Write(job with { Changes = [OperationChange.Replace(taken.Id, taken with { ByFixture = [] })] }));

        EquivalentAge clock = new(new TemperatureHistory(job.Start, [new(TimeSpan.FromHours(1), Temperature.FromDegreesCelsius(20))],
            true), TemperatureShift.Doubling(2), Temperature.FromDegreesCelsius(25));
        StepLag lag = new("own", "bath-3/mask", TimeSpan.FromHours(1), null, "own", clock);
        Refused(job with { Changes = [OperationChange.Add(EveryFixture.Own("own"), null) with { Lags = [lag] }] }, "clock of its own");

        static void Refused(Job job, string words) =>
            Assert.Contains(words, Assert.Throws<NotSupportedException>(() => JobJson.Write(job)).Message, StringComparison.Ordinal);
    }
}
