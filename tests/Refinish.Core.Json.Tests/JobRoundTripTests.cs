using System;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Xunit;

namespace Refinish.Json.Tests;

public class JobRoundTripTests
{
    [Theory]
    [InlineData(DisplayUnits.Si)]
    [InlineData(DisplayUnits.UsCustomary)]
    public void The_guesthouse_comes_back_equal_to_the_last_bit(DisplayUnits units)
    {
        BathroomJob job = Scenario.Guesthouse();
        BathroomJob back = JobJson.Read(JobJson.Write(job, new JsonLayout { Units = units }));
        Assert.Equal(job, back);
    }
}
