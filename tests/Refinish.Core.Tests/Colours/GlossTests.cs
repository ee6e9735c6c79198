using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Colours;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Colours;

public class GlossTests
{
    [Theory]
    [InlineData(1.400, 57.0, 71.9, 96.6)]
    [InlineData(1.450, 69.2, 80.7, 98.0)]
    [InlineData(1.500, 82.0, 89.1, 99.0)]
    [InlineData(1.510, 84.7, 90.8, 99.2)]
    [InlineData(1.520, 87.3, 92.4, 99.3)]
    [InlineData(1.550, 95.4, 97.3, 99.8)]
    [InlineData(1.567, 100, 100, 100)]
    [InlineData(1.580, 103.6, 102.1, 100.2)]
    [InlineData(1.700, 137.6, 120.3, 101.2)]
    [Evidence(Basis.Independent, "gloss by refractive index calculated apart from the code from Fresnel's equations and the index of 1.567 of ISO 2813; the row of 1.400 is also that of the standard's table (from memory); one decimal")]
    public void Black_glass_reads_by_its_index(double index, double at20, double at60, double at85)
    {
        BlackGlass glass = new(index);
        Numbers.Near(at20, glass.Gloss(GlossAngle.Twenty), 0.0501);
        Numbers.Near(at60, glass.Gloss(GlossAngle.Sixty), 0.0501);
        Numbers.Near(at85, glass.Gloss(GlossAngle.EightyFive), 0.0501);
        Numbers.CanBeWritten(glass.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "ISO 2813:1997: index 1.567 is 100 at each angle; reflectances 0.04908, 0.10006, 0.61915 calculated apart from the code; at normal incidence tends to ((n − 1)/(n + 1))²")]
    public void The_standard_reads_a_hundred()
    {
        BlackGlass standard = new(1.567);
        Numbers.Near(0.04908, standard.Reflectance(GlossAngle.Twenty).DecimalFractions, 5e-6);
        Numbers.Near(0.10006, standard.Reflectance(GlossAngle.Sixty).DecimalFractions, 5e-6);
        Numbers.Near(0.61915, standard.Reflectance(GlossAngle.EightyFive).DecimalFractions, 5e-6);
        foreach (GlossAngle angle in new GlossAngle[] { GlossAngle.Twenty, GlossAngle.Sixty, GlossAngle.EightyFive })
        {
            Numbers.Close(100, standard.Gloss(angle));
        }

        Numbers.Close(Math.Pow(0.567 / 2.567, 2), GlossKernel.Reflectance(1.567, 0).Value);
        Assert.Equal("index 1.52: 92.4 GU at 60°", new BlackGlass(1.52).ToString());
    }

    [Fact]
    [Evidence(Basis.Cited, "gloss and sheen levels as printed by paintinfo.com: 1 max 5/max 10, 2 max 10/10-35, 3 10-25/10-35, 4 20-35/min 35, 5 35-70, 6 70-85, 7 more than 85")]
    public void Levels_are_as_printed_and_overlap()
    {
        Assert.Equal("level 3, eggshell, level 4, satin", Names(new() { At60 = 22, At85 = 35 }));
        Assert.Equal("level 1, flat, level 2, velvet", Names(new() { At60 = 4, At85 = 10 }));
        Assert.Equal("level 5, semi-gloss, level 6, gloss", Names(new() { At60 = 70 }));
        Assert.Equal("level 6, gloss", Names(new() { At60 = 85 }));
        Assert.Equal("level 7, high gloss", Names(new() { At60 = 85.1 }));
        Assert.Equal("level 3, eggshell", Names(new() { At60 = 15, At85 = 20 }));
        Assert.Equal(string.Empty, Names(new() { At60 = 15, At85 = 50 }));
        Assert.Equal("level 7, high gloss: 60° more than 85", GlossLevels.Painting[6].ToString());
        Assert.Equal("level 4, satin: 60° 20 to 35, 85° 35 or more", GlossLevels.Painting[3].ToString());

        static string Names(GlossReading reading) => string.Join(", ", reading.LevelsOf(GlossLevels.Painting).Select(level => level.Name));
    }

    [Fact]
    [Evidence(Basis.Contract, "a level that needs the 85° reading is open without it, never given; one that the 60° reading rules out is not open")]
    public void Without_sheen_the_low_levels_stay_open()
    {
        GlossReading reading = new() { At60 = 22 };
        Assert.Empty(reading.LevelsOf(GlossLevels.Painting));
        Assert.Equal(["level 3, eggshell", "level 4, satin"], reading.OpenLevelsOf(GlossLevels.Painting).Select(level => level.Name));
    }

    [Theory]
    [InlineData(71, GlossAngle.Twenty)]
    [InlineData(70, GlossAngle.Sixty)]
    [InlineData(10, GlossAngle.Sixty)]
    [InlineData(9.9, GlossAngle.EightyFive)]
    [Evidence(Basis.Contract, "angle choice of ISO 2813 and ASTM D523, from memory: above 70 at 60° use 20°, below 10 use 85°")]
    public void The_angle_follows_the_gloss(double gloss, GlossAngle angle) => Assert.Equal(angle, new GlossReading { At60 = gloss }.AngleToUse);

    [Property]
    [Evidence(Basis.Identity, "gloss rises with the index at every angle for clear solids up to 1.9 (at 85° it turns at 1.94); workings hold")]
    public void Gloss_rises_with_the_index(byte a)
    {
        double index = 1.2 + (a / 370.0);
        foreach (GlossAngle angle in new GlossAngle[] { GlossAngle.Twenty, GlossAngle.Sixty, GlossAngle.EightyFive })
        {
            Assert.True(new BlackGlass(index + 0.01).Gloss(angle) > new BlackGlass(index).Gloss(angle));
        }

        Numbers.CanBeWritten(new BlackGlass(index).Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges and text")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("refractiveIndex", () => _ = new BlackGlass(1));
        Numbers.Refuses("At60", () => _ = new GlossReading { At60 = -1 });
        Numbers.Refuses("At85", () => _ = new GlossReading { At60 = 1, At85 = double.NaN });
        Assert.Throws<ArgumentOutOfRangeException>(() => new BlackGlass(1.5).Gloss((GlossAngle)9));
        Assert.Equal("60°: 22 GU, 85°: 35 GU", new GlossReading { At60 = 22, At85 = 35 }.ToString());
        Assert.Equal(84, new GlossReading { At60 = 92, At20 = 84 }.At(GlossAngle.Twenty));
    }
}
