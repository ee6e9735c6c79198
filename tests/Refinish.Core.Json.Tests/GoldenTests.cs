using System;
using System.IO;
using System.Linq;
using System.Text.Json.Nodes;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>
/// Documents that were written once and stay. They are no evidence that a number is right; they hold that what was stored can be read for
/// ever and keeps its meaning. They are never written again: a change of the format that they do not survive is a new version of the
/// format.
/// </summary>
public class GoldenTests
{
    /// <summary>A later library may add fields; whatever was stored has to be there, with the same value.</summary>
    [Theory]
    [InlineData("job-2-bathroom.json", DisplayUnits.Si)]
    [InlineData("job-2-bathroom-us.json", DisplayUnits.UsCustomary)]
    [InlineData("job-2-everything.json", DisplayUnits.Si)]
    [InlineData("job-2-least.json", DisplayUnits.Si)]
    public void What_a_job_of_version_2_holds_is_held_when_it_is_written_again(string file, DisplayUnits units)
    {
        JsonNode stored = JsonNode.Parse(Stored(file))!;
        JsonNode again = JsonNode.Parse(JobJson.Write(JobJson.Read(Stored(file)), new JsonLayout { Units = units }))!;
        Assert.InRange(Held("$", stored, again), 500, 10_000);
    }

    [Fact]
    public void The_same_job_stored_in_other_units_is_the_same_job() =>
        Assert.Equal(JobJson.Read(Stored("job-2-bathroom.json")), JobJson.Read(Stored("job-2-bathroom-us.json")));

    /// <summary>The numbers are those of the tests' invented bathroom on the day it was stored.</summary>
    [Fact]
    public void A_job_of_version_2_still_says_what_was_measured_and_agreed()
    {
        Job job = JobJson.Read(Stored("job-2-bathroom.json"));
        Assert.Equal(1.346, Assert.IsType<RecessedBathtub>(job.Fixtures[0].Fixture).Measurements.RimLength.Meters);
        Assert.Equal("bath-3", job.Fixtures[0].Room);
        Assert.Equal(new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1)), job.Start);
        Assert.Equal(new Chip(Length.FromMillimeters(18), Length.FromMillimeters(1.5)), job.Fixtures[0].Survey.Defects[0]);
        Assert.Equal(0.020, job.Fixtures[0].Options[0].Rate.KilogramsPerSquareMeter, 1e-15);
        Assert.Equal(30e-6, job.Shop.System.Layers[1].DryFilmPerCoat.Meters, 1e-15);
        Assert.Equal(3, job.Shop.System.Layers[1].Coats);
        Assert.Equal(2.5, job.Shop.System.Layers[1].Product.Cure.PotLife!.Value.TotalHours);
        Assert.Equal(293.15, job.Premises.Rooms[0].Climate.Surface.Kelvins);
        Assert.Equal(26m, job.Shop.Prices.LabourRate);
        Assert.Equal(1.1, job.Premises.Difficulty);
        Assert.Equal(2900m, job.Replacement!.Replacement.Parts[0].Amount);
    }

    /// <summary>
    /// Another version of the library may plan it otherwise; then the differences are told. The job in it stays what it was.
    /// </summary>
    [Fact]
    public void A_plan_stored_in_version_2_can_still_be_read()
    {
        StoredPlan plan = PlanJson.Read(Stored("plan-2-bathroom.json"));
        Assert.Equal(JobJson.Read(Stored("job-2-bathroom.json")), plan.Plan.Job);
        Assert.NotEmpty(plan.Library);
        Assert.Equal(3, plan.Plan.Procedures.Count);
    }

    /// <summary>
    /// As a person would write it: what is usual left out, inches beside millimetres, plain spellings of the units, things named by
    /// identifier.
    /// </summary>
    [Fact]
    public void A_job_written_by_hand_is_read_as_it_was_meant()
    {
        Job job = JobJson.Read(Stored("job-2-by-hand.json"));
        RecessedBathtub tub = Assert.IsType<RecessedBathtub>(Assert.Single(job.Fixtures).Fixture);
        Assert.Equal(53 * 0.0254, tub.Measurements.RimLength.Meters, 1e-12);
        Assert.Equal(0.337, tub.Measurements.Depth.Meters, 1e-12);
        Assert.Equal(1000 * Math.Pow(0.3048, 3) / 60, job.Premises.Rooms[0].Exhaust.LabelFlow.CubicMetersPerSecond, 1e-9);
        Assert.Equal(293.15, job.Premises.Rooms[0].Climate.Surface.Kelvins, 1e-9);
        Assert.Equal(1, job.Premises.Difficulty);
        Assert.Equal(Estimating.LabourStandards.Generic, job.Shop.Labour);
        Assert.Equal(GenericCatalogue.SilanePromoter, Assert.Single(job.Shop.System.Promoters));
        Assert.Equal("topcoat", job.Shop.System.Layers[0].Product.Id);
        Assert.Equal(Solvents.ButylAcetate, job.Shop.System.Layers[0].Product.Solvents[0].Solvent);
        Assert.True(job.Plan().CoatedArea.SquareMeters > 1);
    }

    /// <summary>How many values are held.</summary>
    private static int Held(string path, JsonNode? stored, JsonNode? again)
    {
        switch (stored, again)
        {
            case (JsonObject was, JsonObject now):
                return was.Sum(field => Held(path + "." + field.Key, field.Value, now[field.Key]));
            case (JsonArray was, JsonArray now):
                Assert.True(was.Count == now.Count, path);
                return was.Select((item, i) => Held(path + "[" + i + "]", item, now[i])).Sum();
            default:
                Assert.True(JsonNode.DeepEquals(stored, again), path + ": " + stored?.ToJsonString() + " became " + again?.ToJsonString());
                return 1;
        }
    }

    private static string Stored(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Golden", file));
}
