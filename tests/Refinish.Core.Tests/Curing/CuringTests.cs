using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

public class CuringTests
{
    private static readonly CureTimes Times = new()
    {
        ReferenceTemperature = C(25),
        MinimumTemperature = C(10),
        MaximumTemperature = C(35),
        Induction = TimeSpan.FromMinutes(15),
        PotLife = TimeSpan.FromMinutes(120),
        TouchDry = TimeSpan.FromHours(1),
        RecoatOpens = TimeSpan.FromHours(2),
        RecoatCloses = TimeSpan.FromHours(6),
        WaterService = TimeSpan.FromHours(24),
        FullCure = TimeSpan.FromDays(7),
        Source = Source.Invented("times for these tests"),
    };

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    [Theory]
    [InlineData(50, 10, 0.4846)]
    [InlineData(50, 25, 1.4106)]
    [InlineData(50, 30, 1.9674)]
    [InlineData(50, 40, 3.7068)]
    [InlineData(55, 10, 0.4507)]
    [InlineData(55, 25, 1.4600)]
    [InlineData(55, 30, 2.1051)]
    [InlineData(55, 40, 4.2257)]
    [InlineData(60, 10, 0.4192)]
    [InlineData(60, 25, 1.5111)]
    [InlineData(60, 30, 2.2525)]
    [InlineData(60, 40, 4.8172)]
    [InlineData(51.216, 30, 2)]
    [Evidence(Basis.Independent, "Arrhenius' law against 20 °C by hand, four decimals; 51.216 kJ/mol doubles from 20 to 30 °C")]
    public void Arrhenius_factors_match(double kilojoules, double celsius, double factor) => Numbers.Near(
        factor, TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(kilojoules)).RateFactor(C(celsius), C(20)), 0.6e-4);

    [Theory]
    [InlineData(15, 240)]
    [InlineData(32, 73.9)]
    [InlineData(25, 120)]
    [Evidence(Basis.Independent, "doubling for ten kelvins by hand: a pot life of 120 min at 25 °C")]
    public void Pot_life_follows_the_rule(double celsius, double minutes) =>
        Numbers.Near(minutes, new CureForecast(Times, C(celsius)).PotLife!.Value.TotalMinutes, 0.05);

    [Theory]
    [InlineData(15, 259.2)]
    [InlineData(32, 72.1)]
    [Evidence(Basis.Independent, "Arrhenius' law with 55 kJ/mol by hand: a pot life of 120 min at 25 °C")]
    public void Pot_life_follows_Arrhenius(double celsius, double minutes)
    {
        CureForecast forecast = new(Times, C(celsius), TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(55)));
        Numbers.Near(minutes, forecast.PotLife!.Value.TotalMinutes, 0.05);
        Numbers.CanBeWritten(forecast.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "doubling by hand: 24 h at 25 °C is 29.5 h at 22 °C, 7 d is 8.6 d")]
    public void Times_at_the_site()
    {
        CureForecast forecast = new(Times, C(22));
        Assert.True(forecast.IsAvailable);
        Numbers.Near(29.5, forecast.WaterService!.Value.TotalHours, 0.05);
        Numbers.Near(8.6, forecast.FullCure!.Value.TotalDays, 0.05);
        Numbers.Close(forecast.RecoatOpens!.Value.TotalHours * 3, forecast.RecoatCloses!.Value.TotalHours, 1e-9);
        Numbers.Close(forecast.TouchDry!.Value.TotalHours / 4, forecast.Induction!.Value.TotalHours, 1e-9);
        Assert.Equal("at 22 °C: recoat from 2.5 h, water from 29.6 h", forecast.ToString());
        Numbers.CanBeWritten(forecast.Workings());
        Assert.Equal(10, forecast.Workings().Steps.Count);
        Assert.Single(forecast.Cautions);
        Assert.Equal(forecast, new CureForecast(Times, Temperature.FromKelvins(295.15)));
    }

    [Theory]
    [InlineData(9.99, 0)]
    [InlineData(35.01, 1)]
    [Evidence(Basis.Contract, "outside the product's range there are no times and the comparison says so; nothing is extrapolated")]
    public void Nothing_is_extrapolated(double celsius, int failing)
    {
        CureForecast forecast = new(Times, C(celsius));
        Assert.False(forecast.IsAvailable);
        Assert.Equal(ComparisonOutcome.Beyond, forecast.Checks[failing].Outcome);
        Assert.NotNull(forecast.Checks[failing].Remedy);
        Assert.Null(forecast.RateFactor);
        Assert.Null(forecast.Induction);
        Assert.Null(forecast.PotLife);
        Assert.Null(forecast.TouchDry);
        Assert.Null(forecast.RecoatOpens);
        Assert.Null(forecast.RecoatCloses);
        Assert.Null(forecast.WaterService);
        Assert.Null(forecast.FullCure);
        Assert.EndsWith("outside the product's temperature range, no times", forecast.ToString(), StringComparison.Ordinal);
        Numbers.CanBeWritten(forecast.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a one-part product with an open window has neither pot life nor closing time, nor a caution about batches")]
    public void One_part_products()
    {
        CureForecast forecast = new(Times with { PotLife = null, RecoatCloses = null }, C(20));
        Assert.Null(forecast.PotLife);
        Assert.Null(forecast.RecoatCloses);
        Assert.NotNull(forecast.RecoatOpens);
        Assert.Empty(forecast.Cautions);
        Numbers.CanBeWritten(forecast.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "hotter never cures slower; factors multiply along a chain of temperatures; one at the reference; workings hold to the kernel")]
    public void Hotter_never_cures_slower(NormalFloat a, NormalFloat b, NormalFloat c, bool arrhenius)
    {
        TemperatureShift shift = arrhenius
            ? TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(100 * Part(c)))
            : TemperatureShift.Doubling(1 + (3 * Part(c)));
        Temperature one = C(-20 + (80 * Part(a)));
        Temperature two = C(-20 + (80 * Part(b)));
        double factor = shift.RateFactor(one, two);
        Assert.Equal(1, shift.RateFactor(one, one));
        Assert.True(one.Kelvins >= two.Kelvins ? factor >= 1 : factor <= 1);
        Numbers.Close(1, factor * shift.RateFactor(two, one), 1e-12);
        Numbers.Close(factor, shift.RateFactor(one, C(25)) * shift.RateFactor(C(25), two), 1e-12);
        Numbers.CanBeWritten(shift.Workings(one, two));
        double hot = Math.Max(10, Math.Min(35, one.DegreesCelsius));
        double cold = Math.Max(10, Math.Min(hot, two.DegreesCelsius));
        Assert.True(new CureForecast(Times, C(hot), shift).FullCure <= new CureForecast(Times, C(cold), shift).FullCure);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges, equality, text")]
    public void Refuses_and_prints()
    {
        Numbers.Refuses("ratePerTenKelvin", () => _ = TemperatureShift.Doubling(0.99));
        Numbers.Refuses("ratePerTenKelvin", () => _ = TemperatureShift.Doubling(4.01));
        Numbers.Refuses("activationEnergy", () => _ = TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(-1)));
        Numbers.Refuses("activationEnergy", () => _ = TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(201)));
        Numbers.Refuses("at", () => _ = TemperatureShift.Doubling(2).RateFactor(C(-21), C(20)));
        Numbers.Refuses("reference", () => _ = TemperatureShift.Doubling(2).RateFactor(C(20), C(61)));
        Numbers.Refuses("site", () => _ = new CureForecast(Times, C(61)));
        Numbers.Refuses("TouchDry", () => _ = new CureForecast(Times with { TouchDry = TimeSpan.FromHours(25) }, C(20)));
        Assert.Throws<ArgumentNullException>(() => new CureForecast(null!, C(20)));
        TemperatureShift rule = TemperatureShift.Doubling(2);
        Assert.Equal(rule, TemperatureShift.Doubling(2));
        Assert.Equal("rate × 2 for ten kelvins", rule.ToString());
        Assert.Equal(2, rule.RatePerTenKelvin);
        Assert.Null(rule.ActivationEnergy);
        TemperatureShift law = TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(55));
        Assert.Equal("Arrhenius, 55 kJ/mol", law.ToString());
        Assert.Null(law.RatePerTenKelvin);
        Assert.Equal(55, law.ActivationEnergy!.Value.KilojoulesPerMole);
        Assert.Equal(1, TemperatureShift.Arrhenius(MolarEnergy.Zero).RateFactor(C(5), C(30)));
    }
}
