using System;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Colours;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Colours;

public class ColourSpaceTests
{
    [Fact]
    [Evidence(Basis.Cited, "MATLAB documentation of xyz2lab: XYZ 0.25 0.40 0.10 is L*a*b* 69.4695 -48.0439 57.1259 for D65 (four decimals) and 69.4695 -49.5717 48.3864 for D50, whose white point it has to four digits (0.9642 0.8251), which moves a* by 0.002 and b* by 0.004")]
    public void Tristimulus_values_become_lab()
    {
        CieXyz colour = new(25, 40, 10);
        CieLab d65 = colour.ToLab(WhitePoint.D65);
        Numbers.Near(69.4695, d65.L, 5e-5);
        Numbers.Near(-48.0439, d65.A, 5e-5);
        Numbers.Near(57.1259, d65.B, 5e-5);
        CieLab d50 = colour.ToLab(WhitePoint.D50);
        Numbers.Near(-49.5717, d50.A, 0.0025);
        Numbers.Near(48.3864, d50.B, 0.004);
        Numbers.CanBeWritten(colour.Workings(WhitePoint.D65));
        Numbers.CanBeWritten(new CieXyz(0.2, 0.3, 0.1).Workings(WhitePoint.D50));
        Numbers.CanBeWritten(default(CieXyz).Workings(WhitePoint.D50));
    }

    [Fact]
    [Evidence(Basis.Cited, "documentation of colour-science, XYZ_to_Lab: 0.20654008 0.12197225 0.05136952 is 41.5278752 52.6385830 26.9231792 for D65 by its chromaticity, 0.3127 0.3290")]
    public void Tristimulus_values_become_lab_by_chromaticity()
    {
        WhitePoint white = new("D65 by chromaticity", 100 * 0.3127 / 0.3290, 100 * (1 - 0.3127 - 0.3290) / 0.3290, Source.Supplied("chromaticity"));
        CieLab colour = new CieXyz(20.654008, 12.197225, 5.136952).ToLab(white);
        // The page cuts its digits off and does not round them.
        Numbers.Near(41.5278752, colour.L, 1e-7);
        Numbers.Near(52.6385830, colour.A, 5e-7);
        Numbers.Near(26.9231792, colour.B, 5e-7);
    }

    [Property]
    [Evidence(Basis.Identity, "XYZ to L*a*b* and back, L*a*b* to LCh and back; the white is L* 100 and grey")]
    public void Spaces_undo_each_other(byte a, byte b, byte c)
    {
        CieXyz colour = new(a / 3.0, b / 2.56, c / 3.0);
        foreach (WhitePoint white in new WhitePoint[] { WhitePoint.D65, WhitePoint.D50, WhitePoint.D65TenDegrees, WhitePoint.D50TenDegrees })
        {
            CieLab lab = colour.ToLab(white);

            // At the edge of the gamut rounding may reach a hair below zero, which no surface has.
            if (white.ToXyz(lab) is CieXyz back)
            {
                Numbers.Near(colour.X, back.X, 1e-9);
                Numbers.Near(colour.Y, back.Y, 1e-9);
                Numbers.Near(colour.Z, back.Z, 1e-9);
            }
            else
            {
                Assert.True(a == 0 || b == 0 || c == 0);
            }

            Numbers.CanBeWritten(colour.Workings(white));
            CieLab round = lab.ToLch().ToLab();
            Numbers.Near(lab.A, round.A, 1e-9);
            Numbers.Near(lab.B, round.B, 1e-9);
            Numbers.CanBeWritten(lab.ToLch().Workings());
            CieLab top = new CieXyz(white.X, 100, white.Z).ToLab(white);
            Numbers.Close(100, top.L);
            Numbers.Near(0, top.Chroma, 1e-9);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "differences of the sRGB primaries as in the tests of the Unicolour library and recalculated from four-decimal L*a*b* (53.2408 80.0925 67.2032; 87.7347 -86.1827 83.1793; 32.2970 79.1875 -107.8602)")]
    public void Primaries_differ_as_published()
    {
        CieLab red = new(53.2408, 80.0925, 67.2032);
        CieLab green = new(87.7347, -86.1827, 83.1793);
        CieLab blue = new(32.2970, 79.1875, -107.8602);
        Numbers.Near(170.565257, new ColourDifference(red, green).Cie76, 2e-3);
        Numbers.Near(86.608245, new ColourDifference(red, green).Ciede2000, 2e-3);
        Numbers.Near(108.449110, new ColourDifference(red, green).Cmc11, 2e-3);
        Numbers.Near(105.146203, new ColourDifference(red, green).Cmc21, 2e-3);
        Numbers.Near(105.905000, new ColourDifference(green, blue).Cie94, 2e-3);
        Numbers.Near(98.259347, new ColourDifference(green, blue).Cie94Textile, 2e-3);
        Numbers.Near(100.565250, new ColourDifference(green, blue).Cmc11, 2e-3);
        Numbers.Near(73.359104, new ColourDifference(blue, red).Cmc21, 2e-3);
    }

    [Property]
    [Evidence(Basis.Identity, "equal colours differ by nothing; a heavier l weighs lightness less; workings hold for every branch of CMC")]
    public void Cmc_is_consistent(byte a, byte b, byte c)
    {
        CieLab one = new(a / 2.56, b - 127, c - 127);
        CieLab two = new(c / 2.56, a - 127, b - 127);
        ColourDifference difference = new(one, two);
        Assert.Equal(0, new ColourDifference(one, one).Cmc21);
        Assert.Equal(0, new ColourDifference(one, one).Cie94Textile);
        Assert.True(difference.Cmc21 <= difference.Cmc11 * (1 + 1e-12));
        Numbers.Close(difference.Cmc21, difference.Cmc(2, 1));
        Numbers.CanBeWritten(difference.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges, text, what no surface can be")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("y", () => _ = new CieXyz(0, -1, 0));
        Numbers.Refuses("Y", () => new CieXyz(100, 101, 100).ToLab(WhitePoint.D65));
        Numbers.Refuses("chroma", () => _ = new CieLch(50, -1, Angle.Zero));
        Numbers.Refuses("hue", () => _ = new CieLch(50, 1, Angle.FromDegrees(361)));
        Numbers.Refuses("lightness", () => new ColourDifference(default, default).Cmc(0, 1));
        Numbers.Refuses("x", () => _ = new WhitePoint("own", 0, 100, Source.Supplied("me")));
        Assert.Null(WhitePoint.D65.ToXyz(new CieLab(5, -100, 100)));
        Assert.Equal("D65, 2°: 95.047, 100, 108.883", WhitePoint.D65.ToString());
        Assert.Equal("X 25, Y 40, Z 10", new CieXyz(25, 40, 10).ToString());
        Assert.Equal("L* 50, C* 5, h 53.13°", new CieLab(50, 3, 4).ToLch().ToString());
    }
}
