using System;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Foundation;

public class SourceTests
{
    [Fact]
    [Evidence(Basis.Contract, "every standing but the published one is named in the text")]
    public void A_source_names_its_standing()
    {
        Assert.Equal("29 CFR 1910.1000, (d)(2)(i)", Source.Published("29 CFR 1910.1000", "(d)(2)(i)").ToString());
        Assert.Equal("common practice, no source: wipe twice", Source.CommonPractice("wipe twice").ToString());
        Assert.Equal("from memory, unverified: a limit", Source.FromMemory("a limit").ToString());
        Assert.Equal("invented: a rate", Source.Invented("a rate").ToString());
        Assert.Equal("derived: algebra", Source.Derived("algebra").ToString());
        Assert.Equal("supplied: tape measure", Source.Supplied("tape measure").ToString());
        Assert.Equal(Source.Derived("algebra"), Source.Derived("algebra"));
        Assert.Throws<ArgumentException>(() => Source.Published("document", " "));
    }
}
