using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Colours;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Colours;

public class ColourDifferenceTests
{
    private static CieLab Any(NormalFloat a, NormalFloat b, NormalFloat c) => new(100 * (Math.Abs(a.Get) % 1), 128 * (b.Get % 1), 128 * (c.Get % 1));

    [Fact]
    [Evidence(Basis.Cited, "Sharma, Wu and Dalal (2005), Color Research and Application 30(1), Table 1: 34 pairs, four decimals, both ways")]
    public void Ciede2000_matches_the_published_pairs()
    {
        int pairs = 0;
        foreach (Table.Row row in Table.Read("ciede2000_pairs.csv").Rows)
        {
            CieLab one = new(row.Number("L1"), row.Number("a1"), row.Number("b1"));
            CieLab two = new(row.Number("L2"), row.Number("a2"), row.Number("b2"));
            ColourDifference there = new(one, two);
            ColourDifference back = new(two, one);
            Numbers.Near(row.Number("dE00"), there.Ciede2000, 0.5e-4 + 1e-9);
            Numbers.Near(row.Number("dE00"), back.Ciede2000, 0.5e-4 + 1e-9);
            Numbers.CanBeWritten(there.Workings());
            Numbers.CanBeWritten(back.Workings());
            pairs++;
        }

        Assert.Equal(34, pairs);
    }

    [Fact]
    [Evidence(Basis.Independent, "inputs of the tests of python-colormath and colour-science, values of an independent implementation; six decimals")]
    public void Differences_match_other_implementations()
    {
        foreach (Table.Row row in Table.Read("colour_differences.csv").Rows)
        {
            ColourDifference difference = new(
                new CieLab(row.Number("l1"), row.Number("a1"), row.Number("b1")), new CieLab(row.Number("l2"), row.Number("a2"), row.Number("b2")));
            Numbers.Near(row.Number("cie76"), difference.Cie76, 1e-6);
            Numbers.Near(row.Number("cie94_graphic"), difference.Cie94, 1e-6);
            Numbers.Near(row.Number("ciede2000"), difference.Ciede2000, 1e-6);
            Numbers.Near(row.Number("cie94_textile"), difference.Cie94Textile, 1e-6);
            Numbers.Near(row.Number("cmc21"), difference.Cmc21, 1e-6);
            Numbers.Near(row.Number("cmc11"), difference.Cmc11, 1e-6);
            Numbers.CanBeWritten(difference.Workings());
        }
    }

    [Property]
    [Evidence(Basis.Identity, "CIE 1976 and CIEDE2000 are symmetric, zero only for equal colours; ΔE*ab² = ΔL*² + ΔC*² + ΔH*²; workings hold to the kernel")]
    public void Differences_are_consistent(NormalFloat a, NormalFloat b, NormalFloat c, NormalFloat d, NormalFloat e, NormalFloat f)
    {
        CieLab one = Any(a, b, c);
        CieLab two = Any(d, e, f);
        ColourDifference there = new(one, two);
        ColourDifference back = new(two, one);
        Numbers.Close(there.Cie76, back.Cie76);
        Numbers.Near(there.Ciede2000, back.Ciede2000, 1e-9);
        Numbers.Near(there.DeltaHue, -back.DeltaHue, 1e-9);
        Assert.True(one == two || there.Ciede2000 > 0);
        Assert.Equal(0, new ColourDifference(one, one).Ciede2000);
        Assert.Equal(0, new ColourDifference(one, one).Cie94);
        double parts = (there.DeltaL * there.DeltaL) + (there.DeltaChroma * there.DeltaChroma) + (there.DeltaHue * there.DeltaHue);
        Numbers.Near(there.Cie76 * there.Cie76, parts, 1e-9 * (1 + parts));
        Numbers.CanBeWritten(there.Workings());
    }

    [Theory]
    [InlineData(5, 0, -5, 0, 10)]
    [InlineData(0, 0, 3, 4, 0)]
    [InlineData(3, 4, 0, 0, 0)]
    [InlineData(3, 4, -3, -4, 10)]
    [InlineData(1, 0, 0, 1, 1.4142135623730951)]
    [Evidence(Basis.Independent, "geometry by hand: the hue part of opposite hues of one chroma is the whole distance; a grey has none")]
    public void Hue_part_of_special_pairs(double a1, double b1, double a2, double b2, double hue)
    {
        ColourDifference difference = new(new CieLab(50, a1, b1), new CieLab(50, a2, b2));
        Numbers.Near(hue, Math.Abs(difference.DeltaHue), 1e-12);
        Numbers.CanBeWritten(difference.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "hue runs from red over yellow, green and blue")]
    public void Chroma_and_hue()
    {
        Assert.Equal(0, new CieLab(50, 10, 0).Hue.Degrees);
        Numbers.Near(90, new CieLab(50, 0, 10).Hue.Degrees, 1e-12);
        Numbers.Near(180, new CieLab(50, -10, 0).Hue.Degrees, 1e-12);
        Numbers.Near(270, new CieLab(50, 0, -10).Hue.Degrees, 1e-12);
        Numbers.Near(225, new CieLab(50, -10, -10).Hue.Degrees, 1e-12);
        Assert.Equal(0, default(CieLab).Hue.Degrees);
        Assert.Equal(5, new CieLab(50, 3, -4).Chroma);
        foreach (CieLab colour in new CieLab[] { default, new(50, 3, -4), new(50, -3, 4), new(50, 0, -4), new(50, 0, 4), new(50, 2, 0) })
        {
            Numbers.CanBeWritten(colour.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges, equality, text")]
    public void Refuses_and_prints()
    {
        Numbers.Refuses("lightness", () => _ = new CieLab(100.1, 0, 0));
        Numbers.Refuses("lightness", () => _ = new CieLab(-0.1, 0, 0));
        Numbers.Refuses("a", () => _ = new CieLab(50, 501, 0));
        Numbers.Refuses("b", () => _ = new CieLab(50, 0, double.NaN));
        Assert.Equal(new CieLab(50, 1, 2), new CieLab(50, 1, 2));
        Assert.Equal("L* 94.2, a* -0.6, b* 1.8", new CieLab(94.2, -0.6, 1.8).ToString());
        ColourDifference pair = new(new CieLab(50, 2.6772, -79.7751), new CieLab(50, 0, -82.7485));
        Assert.Equal("ΔE00 2.0425, ΔE*ab 4.0011", pair.ToString());
        Assert.Equal(pair, new ColourDifference(pair.Reference, pair.Sample));
    }
}
