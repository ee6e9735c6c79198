using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Foundation;

public class ProvenanceTests
{
    [Theory]
    [Evidence(Basis.Contract, "what was recalled in part counts as recalled, whatever else was read; a reference that makes no remark has no standing")]
    [InlineData("NFPA 72 (2010)", "17.7.1.11, as quoted second-hand", Standing.SecondHand)]
    [InlineData("A sheet (public copy)", "equation 1", Standing.SecondHand)]
    [InlineData("40 CFR 59.104", "(a)(1), quoted in a guide; the equation is from memory", Standing.FromMemory)]
    [InlineData("29 CFR 1910.1000", "(d)(1)(i)", null)]
    public void A_reference_says_how_it_was_looked_up(string document, string section, Standing? standing) =>
        Assert.Equal(standing, Source.Published(document, section).Standing);

    [Fact]
    [Evidence(Basis.Contract, "only published documents are looked up; what is recalled or supplied says so by its kind")]
    public void Other_kinds_have_the_standing_of_their_kind()
    {
        Assert.Equal(Standing.FromMemory, Source.FromMemory("a law").Standing);
        Assert.Equal(Standing.Supplied, Source.Supplied("quoted price").Standing);
        Assert.Null(Source.Derived("quoted").Standing);
        Assert.Null(Source.CommonPractice("from memory").Standing);
        Assert.Null(Source.Invented("from memory").Standing);
    }

    [Fact]
    [Evidence(Basis.Contract, "each source once, in order; counted by hand")]
    public void Sources_are_told_once_and_by_kind()
    {
        Source read = Source.Published("29 CFR 1910.1000", "(d)(1)(i)");
        Source quoted = Source.Published("NFPA 72 (2010)", "17.7.1.11, second-hand");
        Source recalled = Source.Published("40 CFR 59.104", "(a)(1), from memory");
        Source invented = Source.Invented("an hour a tub");
        Provenance behind = new([read, invented, quoted, read, recalled, Source.Published("29 CFR 1910.1000", "(d)(1)(i)")]);
        Assert.Equal([read, invented, quoted, recalled], behind.Sources);
        Assert.Equal([read, quoted, recalled], behind.Of(SourceKind.Published));
        Assert.Equal("3 published (1 second-hand, 1 partly from memory), 1 invented", behind.ToString());
        Assert.Empty(behind.Of(SourceKind.Supplied));
    }
}
