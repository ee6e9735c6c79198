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

    [Fact]
    [Evidence(Basis.Contract, "a caution has a sentence, a decider and a source")]
    public void A_caution_says_who_decides()
    {
        Caution caution = new(Hazard.Lead, "Test the old enamel for lead before sanding.", "local code", Source.CommonPractice("lead test first"));
        Assert.Equal("Test the old enamel for lead before sanding. Decided by: local code.", caution.ToString());
        Assert.Throws<ArgumentException>(() => new Caution(Hazard.Lead, string.Empty, "local code", Source.CommonPractice("lead test first")));
        Numbers.Refuses("hazard", () => _ = new Caution((Hazard)77, "Sentence.", "local code", Source.CommonPractice("lead test first")));
    }
}
