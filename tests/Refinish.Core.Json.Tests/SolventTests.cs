using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using Refinish.Coatings;
using Refinish.Jobs;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>Whether a solvent burns and whether it evaporates, as a document says it.</summary>
public class SolventTests
{
    [Fact]
    public void Three_forms_of_each_come_back()
    {
        JsonObject plasticiser = Plasticiser(out JsonNode document);
        Assert.Null(plasticiser["lowerFlammableLimit"]);
        Assert.Equal("invented", (string)plasticiser["nonBurning"]!["kind"]!);
        Solvent read = Read(document);
        Assert.True(read.Flammability.IsNonBurning);
        Assert.False(read.Volatility.IsVolatile);

        Remove(plasticiser, "nonBurning", "notVolatile", "boilingPoint");
        Assert.Equal(Flammability.Unknown, Read(document).Flammability);
        Assert.Equal(Volatility.Unknown, Read(document).Volatility);

        plasticiser["lowerFlammableLimit"] = Percent(1.1);
        Assert.Null(Read(document).Flammability.Upper);
        plasticiser["upperFlammableLimit"] = Percent(7.1);
        plasticiser["flashPoint"] = JsonNode.Parse("""{"value":40,"unit":"°F"}""");
        Assert.Equal(7.1, Read(document).Flammability.Upper!.Value.Percent, 1e-12);
        Assert.Equal(40, Read(document).Flammability.FlashPoint!.Value.DegreesFahrenheit, 1e-9);
    }

    [Theory]
    [InlineData("lowerFlammableLimit", """{"value":1,"unit":"%"}""", "nonBurning stands beside lowerFlammableLimit")]
    [InlineData("upperFlammableLimit", """{"value":9,"unit":"%"}""", "upperFlammableLimit or flashPoint stands without lowerFlammableLimit")]
    [InlineData("vapourPressure", """{"value":90,"unit":"Pa"}""", "notVolatile and boilingPoint stand together, and without vapourPressure")]
    [InlineData("boilingPoint", "null", "notVolatile and boilingPoint stand together, and without vapourPressure")]
    public void Forms_that_exclude_each_other_are_refused(string field, string json, string names)
    {
        JsonObject plasticiser = Plasticiser(out JsonNode document);
        plasticiser[field] = JsonNode.Parse(json);
        Assert.False(JobJson.TryRead(document.ToJsonString(), out _, out IReadOnlyList<JsonFault> faults));
        JsonFault fault = Assert.Single(faults, each => each.Kind == JsonFaultKind.Contradiction);
        Assert.Contains(names, fault.Sentence, System.StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("boilingPoint", """{"value":205,"unit":"°C"}""", "more than 250 °C")]
    [InlineData("boilingPoint", """{"value":2000,"unit":"°C"}""", "at most 1000 °C")]
    public void Values_outside_their_range_are_told_at_their_place(string field, string json, string names)
    {
        JsonObject plasticiser = Plasticiser(out JsonNode document);
        plasticiser[field] = JsonNode.Parse(json);
        Assert.False(JobJson.TryRead(document.ToJsonString(), out _, out IReadOnlyList<JsonFault> faults));
        JsonFault fault = Assert.Single(faults);
        Assert.Equal(JsonFaultKind.OutOfRange, fault.Kind);
        Assert.EndsWith("." + field + ".value", fault.Path, System.StringComparison.Ordinal);
        Assert.Contains(names, fault.Sentence, System.StringComparison.Ordinal);
    }

    private static JsonObject Plasticiser(out JsonNode document)
    {
        document = JsonNode.Parse(JobJson.Write(Examples.Everything()))!;
        return (JsonObject)document["catalogue"]!["solvents"]!.AsArray().Single(one => (string)one!["casNumber"]! == "plasticiser")!;
    }

    private static Solvent Read(JsonNode document) => JobJson.Read(document.ToJsonString()).Shop.System.Layers
        .SelectMany(layer => layer.Product.Solvents).Select(share => share.Solvent).First(solvent => solvent.CasNumber == "plasticiser");

    private static JsonObject Percent(double value) => new() { ["value"] = value, ["unit"] = "%" };

    private static void Remove(JsonObject solvent, params string[] fields)
    {
        foreach (string field in fields)
        {
            solvent.Remove(field);
        }
    }
}
