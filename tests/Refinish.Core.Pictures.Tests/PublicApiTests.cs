using System;
using System.IO;
using Refinish.Tests.House;
using Xunit;

namespace Refinish.Pictures.Tests;

public class PublicApiTests
{
    [Fact]
    public void The_public_surface_is_the_one_on_file()
    {
        string now = PublicApi.Of(typeof(Picture).Assembly);
        if (now != File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "PublicApi.txt")).ReplaceLineEndings("\n"))
        {
            string received = Path.Combine(AppContext.BaseDirectory, "PublicApi.received.txt");
            File.WriteAllText(received, now);
            Assert.Fail("The public surface changed. If that is meant, copy " + received + " over tests/Refinish.Core.Pictures.Tests/PublicApi.txt and commit the difference.");
        }
    }

    [Fact]
    public void The_public_surface_keeps_the_rules_of_the_house() =>
        Assert.Equal(string.Empty, string.Join("\n", SurfaceRules.Offences(typeof(Picture).Assembly)));
}
