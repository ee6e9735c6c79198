using System;
using System.IO;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>
/// Documents that were written once and stay. They are no evidence that a number is right; they hold that what was stored can be read for ever and keeps
/// its meaning. They are never written again: a change of the format that they do not survive is a new version of the format.
/// </summary>
public class GoldenTests
{
    [Theory]
    [InlineData("job-1-guesthouse.json", "guesthouse")]
    [InlineData("job-1-guesthouse-us.json", "guesthouse")]
    [InlineData("job-1-everything.json", "everything")]
    [InlineData("job-1-least.json", "least")]
    public void A_job_stored_in_version_1_is_still_the_same_job(string file, string which) =>
        Assert.Equal(JobRoundTripTests.Named(which), JobJson.Read(Stored(file)));

    /// <summary>Another version of the library may plan it otherwise; then the differences are told. The job in it stays what it was.</summary>
    [Fact]
    public void A_plan_stored_in_version_1_can_still_be_read()
    {
        StoredPlan plan = PlanJson.Read(Stored("plan-1-guesthouse.json"));
        Assert.Equal(Scenario.Guesthouse(), plan.Plan.Job);
        Assert.Equal("0.1.0", plan.Library);
    }

    /// <summary>As a person would write it: what is usual left out, inches beside millimetres, plain spellings of the units.</summary>
    [Fact]
    public void A_job_written_by_hand_is_read_as_it_was_meant()
    {
        BathroomJob job = JobJson.Read(Stored("job-1-by-hand.json"));
        Fixtures.RecessedBathtub tub = Assert.IsType<Fixtures.RecessedBathtub>(Assert.Single(job.Fixtures).Fixture);
        Assert.Equal(53 * 0.0254, tub.Measurements.RimLength.Meters, 1e-12);
        Assert.Equal(0.337, tub.Measurements.Depth.Meters, 1e-12);
        Assert.Equal(600e-6, job.Batches.CupVolume.CubicMeters, 1e-12);
        Assert.Equal(1000 * Math.Pow(0.3048, 3) / 60, job.Site.Exhaust.LabelFlow.CubicMetersPerSecond, 1e-9);
        Assert.Equal(293.15, job.Site.Surface.Kelvins, 1e-9);
        Assert.Equal(1, job.Difficulty);
        Assert.NotEmpty(job.Labour);
        Assert.True(job.Plan().CoatedArea.SquareMeters > 1);
    }

    private static string Stored(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Golden", file));
}
