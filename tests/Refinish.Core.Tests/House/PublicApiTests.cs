using System;
using System.IO;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class PublicApiTests
{
    [Fact]
    [Evidence(Basis.Contract, "the public surface is on file: a change to it is a visible diff")]
    public void The_public_surface_is_the_one_on_file()
    {
        string now = PublicApi.Of(typeof(Measure).Assembly);
        string onFile = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "PublicApi.txt")).ReplaceLineEndings("\n");
        if (now != onFile)
        {
            string received = Path.Combine(AppContext.BaseDirectory, "PublicApi.received.txt");
            File.WriteAllText(received, now);
            Assert.Fail("The public surface changed. If that is meant, copy " + received + " over tests/Refinish.Core.Tests/PublicApi.txt and commit the difference.");
        }
    }
}
