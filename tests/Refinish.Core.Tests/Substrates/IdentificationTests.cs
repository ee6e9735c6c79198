using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Fixtures;
using Refinish.Substrates;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Substrates;

public class IdentificationTests
{
    [Theory]
    [InlineData("enamelledCastIron", "I-01", "I-03", "I-10")]
    [InlineData("enamelledSteel", "I-01", "I-04", "I-11")]
    [InlineData("gelcoat", "I-02", "I-05", "I-07", "I-14")]
    [InlineData("acrylic", "I-02", "I-07", "I-13", "I-18")]
    [InlineData("culturedMarble", "I-02", "I-03", "I-21")]
    [InlineData("vitreousChina", "I-02", "I-04", "I-16")]
    [InlineData("ceramicTile", "I-02", "I-06", "I-20")]
    [InlineData("solidSurface", "I-03", "I-15")]
    [InlineData("laminate", "I-05", "I-17")]
    [InlineData("polyolefin", "I-02", "I-08", "I-13")]
    [Evidence(Basis.Independent, "common practice, no source: the signs by which the trade's map of substrates names each material single out that material")]
    public void Typical_signs_name_their_material(string expected, params string[] codes)
    {
        MaterialIdentification answer = new(codes);
        Assert.Equal(expected, answer.Candidates[0].Material.Id);
        Assert.True(answer.Candidates[0].IsConsistent);
        Assert.False(answer.Contradicts);
        Assert.EndsWith("signs, not proof", answer.ToString(), StringComparison.Ordinal);
        Assert.All(answer.Observed, sign => Assert.Equal(SourceKind.CommonPractice, sign.Source.Kind));
    }

    [Fact]
    [Evidence(Basis.Contract, "a magnet that sticks leaves two materials; the next aids are those that tell the two apart")]
    public void Says_what_to_try_next()
    {
        MaterialIdentification magnet = new(["I-01"]);
        Assert.Equal([FixtureMaterial.EnamelledCastIron, FixtureMaterial.EnamelledSteel], magnet.Consistent.Select(candidate => candidate.Material));
        Assert.Equal([IdentificationAid.Tap], magnet.Next);
        Assert.Empty(new MaterialIdentification(["I-01", "I-03"]).Next);
        Assert.Contains("to tell them apart: knock", magnet.ToText(), StringComparison.Ordinal);
        Assert.Contains("common practice, no source", magnet.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "what fits nothing is said to fit nothing; nothing observed names nothing; the cautions of scraping and solvent are always there")]
    public void Never_a_certainty()
    {
        MaterialIdentification odd = new(["I-01", "I-18"]);
        Assert.True(odd.Contradicts);
        Assert.Empty(odd.Consistent);
        Assert.Equal("agrees with no material: look for an old coat or a second material", odd.ToString());
        MaterialIdentification none = new([]);
        Assert.False(none.Contradicts);
        Assert.Empty(none.Consistent);
        Assert.Equal("nothing observed yet", none.ToString());
        Assert.Equal([Hazard.Lead, Hazard.SolventVapour], none.Cautions.Select(caution => caution.Hazard));
        Assert.All(none.Cautions, caution => Assert.Contains(caution.Sentence, none.ToText(), StringComparison.Ordinal));
    }

    [Property]
    [Evidence(Basis.Identity, "the order in which signs were noted does not matter; a further sign never makes more materials consistent that something already spoke for")]
    public void Order_does_not_matter(int seed)
    {
        Random random = new(seed);
        string[] codes = [.. MaterialSigns.Generic.Select(sign => sign.Code).Where(_ => random.Next(5) == 0)];
        MaterialIdentification answer = new(codes);
        MaterialIdentification other = new([.. codes.AsEnumerable().Reverse(), .. codes]);
        Assert.Equal(answer, other);
        Assert.Equal(answer.Candidates, other.Candidates);
        IEnumerable<FixtureMaterial> spoken = answer.Candidates.Where(candidate => candidate.For.Count > 0 && !candidate.IsConsistent).Select(candidate => candidate.Material);
        MaterialIdentification more = new([.. codes, MaterialSigns.Generic[random.Next(MaterialSigns.Generic.Count)].Code]);
        Assert.Empty(more.Consistent.Select(candidate => candidate.Material).Intersect(spoken));
    }

    [Fact]
    [Evidence(Basis.Contract, "unknown codes, signs on both sides and empty signs are refused; every material of a fixture is known, codes are unique")]
    public void Refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentException>(() => new MaterialIdentification(["I-99"]));
        Source own = Source.Supplied("own");
        FixtureMaterial[] acrylic = [FixtureMaterial.Acrylic];
        Assert.Throws<ArgumentException>(() => new MaterialSign("I-90", IdentificationAid.Tap, "both", acrylic, acrylic, own));
        Assert.Throws<ArgumentException>(() => new MaterialSign("I-90", IdentificationAid.Tap, "nothing", [], [], own));
        Assert.Throws<ArgumentException>(() => new MaterialSign("I-90", IdentificationAid.Tap, "x", [null!], [], own));
        Numbers.Refuses("aid", () => _ = new MaterialSign("I-90", (IdentificationAid)77, "x", acrylic, [], own));
        Assert.Equal(FixtureMaterial.All.Skip(1).Take(10), new MaterialIdentification([]).Candidates.Select(candidate => candidate.Material));
        Assert.Equal(MaterialSigns.Generic.Count, MaterialSigns.Generic.Select(sign => sign.Code).Distinct().Count());
        Assert.Equal(Enum.GetValues<IdentificationAid>(), MaterialSigns.Generic.Select(sign => sign.Aid).Distinct().Order().ToArray());
        MaterialSign stamp = new("I-90", IdentificationAid.Look, "the maker's mark says acrylic", acrylic, [], own);
        Assert.Equal(FixtureMaterial.Acrylic, new MaterialIdentification(["I-90"], [stamp, .. MaterialSigns.Generic]).Candidates[0].Material);
    }
}
