using System;
using Refinish.Jobs;
using Refinish.Tests.Jobs;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>What a shop brings is stored with its job and its plan.</summary>
public class BroughtJobTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_job_with_one_of_everything_brought_comes_back_the_same(bool us)
    {
        Job job = BroughtJob.Job();
        JsonLayout layout = JsonLayout.Default with { Units = us ? DisplayUnits.UsCustomary : DisplayUnits.Si };
        string text = JobJson.Write(job, layout);
        foreach (string id in new[]
            { "three-part-topcoat", "pressed-panel", "loose-inlay", "own-1", "house limits (invented)", "small grinder (invented)", "photographs", "zoned", "composed" })
        {
            Assert.Contains("\"" + id + "\"", text, StringComparison.Ordinal);
        }

        Job read = JobJson.Read(text);
        Assert.Equal(text, JobJson.Write(read, layout));
        Assert.Equal(job.Plan().Price!.Total, read.Plan().Price!.Total);
    }

    [Fact]
    public void Its_plan_is_read_again_and_holds()
    {
        JobPlan plan = BroughtJob.Job().Plan();
        Assert.Equal(plan.Price!.Total, PlanJson.Read(PlanJson.Write(plan)).Plan.Price!.Total);
    }
}
