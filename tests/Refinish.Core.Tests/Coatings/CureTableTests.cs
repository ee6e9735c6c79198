using System;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class CureTableTests
{
    private static readonly CureTimes Warm = GenericCatalogue.AcrylicUrethaneTopcoat.Cure;

    private static readonly CureTimes Cold = Warm with
    {
        ReferenceTemperature = Celsius(15),
        PotLife = TimeSpan.FromHours(4.5),
        TouchDry = TimeSpan.FromHours(2),
        RecoatOpens = TimeSpan.FromMinutes(45),
        RecoatCloses = TimeSpan.FromHours(36),
        WaterService = TimeSpan.FromHours(48),
        FullCure = TimeSpan.FromDays(14),
    };

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);

    [Fact]
    [Evidence(Basis.Independent, "by hand: 36 h at 15 °C and 16 h at 25 °C, straight in 1/T, are 23.83 h at 20 °C; no published source")]
    public void Between_two_rows()
    {
        CureTable table = new([Warm, Cold]);
        CureTimes at = table.At(Celsius(20));
        Numbers.Near(23.83, at.RecoatCloses!.Value.TotalHours, 0.005);
        Numbers.Near(20, at.ReferenceTemperature.DegreesCelsius, 1e-9);
        Assert.Equal(TimeSpan.Zero, at.Induction);
        Numbers.CanBeWritten(table.Workings(Celsius(20)));
        Assert.Equal("2 temperatures, 15 °C to 25 °C", table.ToString());
    }

    [Property]
    [Evidence(Basis.Identity, "rows come back as they are; between them warmer is faster; the interpolated row is a data sheet that holds together, and its forecast at its own temperature is itself")]
    public void Rows_come_back_and_warmer_is_faster(byte where, byte further)
    {
        CureTable table = new([Cold, Warm]);
        Assert.Equal(Cold.PotLife, table.At(Celsius(15)).PotLife);
        Assert.Equal(Warm.FullCure, table.At(Celsius(25)).FullCure);
        double t = 15 + (where / 25.5);
        double later = t + ((25 - t) * further / 255.0);
        CureTimes one = table.At(Celsius(t));
        CureTimes two = table.At(Celsius(later));
        Assert.True(two.PotLife <= one.PotLife && two.WaterService <= one.WaterService);
        CureForecast forecast = new(one, Celsius(t));
        Assert.True(Math.Abs((forecast.PotLife!.Value - one.PotLife!.Value).TotalMilliseconds) < 1);
        Numbers.CanBeWritten(table.Workings(Celsius(t)));
    }

    [Fact]
    [Evidence(Basis.Contract, "outside the rows nothing is extrapolated; the nearest row is handed over as what it is")]
    public void Nothing_is_extrapolated()
    {
        CureTable table = new([Cold, Warm]);
        Numbers.Refuses("temperature", () => table.At(Celsius(14)));
        Numbers.Refuses("temperature", () => table.At(Celsius(25.1)));
        Assert.Equal(Cold, table.Near(Celsius(5)));
        Assert.Equal(Warm, table.Near(Celsius(30)));
        CoatingProduct product = GenericCatalogue.AcrylicUrethaneTopcoat with { CureTable = table };
        Assert.Equal(table.At(Celsius(20)), product.CureNear(Celsius(20)));
        Assert.Equal(Warm, GenericCatalogue.AcrylicUrethaneTopcoat.CureNear(Celsius(20)));
        Assert.Throws<ArgumentException>(() => new CureTable([Warm]));
        Assert.Throws<ArgumentException>(() => new CureTable([Warm, Cold with { RecoatCloses = null }]));
        Numbers.Refuses("rows", () => _ = new CureTable([Warm, Warm]));
    }
}
