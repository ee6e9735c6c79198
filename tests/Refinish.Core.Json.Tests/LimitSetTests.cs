using System;
using System.Linq;
using System.Text.Json.Nodes;
using Refinish.Air;
using Refinish.Jobs;
using Xunit;

namespace Refinish.Json.Tests;

public class LimitSetTests
{
    [Theory]
    [InlineData("osha")]
    [InlineData("niosh")]
    [InlineData("us")]
    [InlineData("eu")]
    [InlineData("uk")]
    public void A_set_is_named_by_its_identifier(string id) =>
        Assert.Equal(LimitSets.All.Single(set => set.Id == id), JobJson.Read(With(JsonValue.Create("generic/" + id))).Shop.Limits);

    [Fact]
    public void Every_set_is_written_whole_and_read_again()
    {
        foreach (LimitSet set in LimitSets.All)
        {
            Job job = Examples.Bathroom();
            job = job with { Shop = job.Shop with { Limits = set } };
            Assert.Equal(job, JobJson.Read(JobJson.Write(job)));
        }
    }

    [Fact]
    public void A_set_left_out_is_the_librarys_default() =>
        Assert.Equal(LimitSets.Default, JobJson.Read(With(null)).Shop.Limits);

    [Fact]
    public void A_set_that_nobody_knows_is_told_with_its_place()
    {
        RefinishJsonException refused = Assert.Throws<RefinishJsonException>(() => JobJson.Read(With(JsonValue.Create("generic/osa"))));
        JsonFault fault = Assert.Single(refused.Faults);
        Assert.Equal("$.shop.limits", fault.Path);
        Assert.Contains("generic/osha", fault.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_design_line_above_the_share_is_refused()
    {
        JsonNode set = JsonNode.Parse(JobJson.Write(Examples.Everything()))!["shop"]!["limits"]!.DeepClone();
        set["flammable"]!["share"]!["value"] = 5;
        RefinishJsonException refused = Assert.Throws<RefinishJsonException>(() => JobJson.Read(With(set)));
        Assert.Contains(refused.Faults, fault => fault.Path.StartsWith("$.shop", StringComparison.Ordinal) && fault.Sentence.Contains("8 %", StringComparison.Ordinal));
    }

    private static string With(JsonNode? limits)
    {
        JsonNode root = JsonNode.Parse(JobJson.Write(Examples.Bathroom()))!;
        JsonObject shop = root["shop"]!.AsObject();
        shop.Remove("limits");
        if (limits is not null)
        {
            shop["limits"] = limits;
        }

        return root.ToJsonString();
    }
}
