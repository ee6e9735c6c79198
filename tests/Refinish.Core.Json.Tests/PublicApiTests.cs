using System;
using System.IO;
using Refinish.Tests.House;
using Xunit;

namespace Refinish.Json.Tests;

public class PublicApiTests
{
    [Fact]
    public void The_public_surface_is_the_one_on_file()
    {
        string now = PublicApi.Of(typeof(JobJson).Assembly);
        string onFile = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "PublicApi.txt")).ReplaceLineEndings("\n");
        if (now != onFile)
        {
            string received = Path.Combine(AppContext.BaseDirectory, "PublicApi.received.txt");
            File.WriteAllText(received, now);
            Assert.Fail("The public surface changed. If that is meant, copy " + received
                + " over tests/Refinish.Core.Json.Tests/PublicApi.txt and commit the difference.");
        }
    }

    [Fact]
    public void The_public_surface_keeps_the_rules_of_the_house() =>
        Assert.Equal(string.Empty, string.Join("\n", SurfaceRules.Offences(typeof(JobJson).Assembly)));
}
