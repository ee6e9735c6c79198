using System;
using Refinish.Climate;
using Refinish.Curing;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

/// <summary>The numbers of docs/climate-and-cure.md, as they stand there, each by another route than the library's where one is short.</summary>
public class ClimateAndCureGuideTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 3, 17, 0, 0, TimeSpan.FromHours(-5));

    private static readonly CureReaction Epoxy = new()
    {
        Factor = Frequency.FromHertz(3000),
        ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(48),
        AutocatalyticFactor = Frequency.FromHertz(1.2e5),
        AutocatalyticActivationEnergy = MolarEnergy.FromKilojoulesPerMole(52),
        AutocatalyticOrder = 1,
        Order = 2,
        Source = Source.Invented("the guide's epoxy with an amine"),
    };

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    [Fact]
    [Evidence(Basis.Independent, "psychrometer constant by hand: p_w = p_ws(14 °C) − 0.000665 p (21 − 14), 1598 Pa at 14 °C: 1127 Pa at the sea (45.3 %), 1210 Pa at 83.4 kPa (48.6 %); half a per cent and 0.2 K for that approximation")]
    public void Altitude_moves_the_dew_point()
    {
        MoistAir sea = MoistAir.FromWetBulb(C(21), C(14));
        MoistAir high = MoistAir.FromWetBulb(C(21), C(14), new StandardAtmosphere(Length.FromMeters(1609)).Pressure);
        Numbers.Near(45.3, sea.RelativeHumidity.Percent, 0.6);
        Numbers.Near(48.6, high.RelativeHumidity.Percent, 0.6);
        Numbers.Near(45.8, sea.RelativeHumidity.Percent, 0.05);
        Numbers.Near(49.1, high.RelativeHumidity.Percent, 0.05);
        Numbers.Near(8.9, sea.DewPoint.DegreesCelsius, 0.05);
        Numbers.Near(9.9, high.DewPoint.DegreesCelsius, 0.05);
    }

    [Theory]
    [InlineData("iron", 136, 6, 66.7, 33.3)]
    [InlineData("steel", 34, 2, 15.1, 7.5)]
    [Evidence(Basis.Independent, "by hand: m c / (h A) ln 3; as printed in the guide")]
    public void Metals_warm_as_printed(string metal, double kilograms, double millimetres, double still, double fan)
    {
        FixtureThermalData material = metal == "iron" ? FixtureThermalData.CastIron : FixtureThermalData.Steel;
        double byHand = kilograms * material.SpecificHeat.JoulesPerKilogramKelvin / (9 * 2.2) * Math.Log(3) / 60;
        Numbers.Near(byHand, Fixture(material, kilograms, millimetres, 9).Time!.Value.TotalMinutes, 1e-6);
        Numbers.Near(still, byHand, 0.05);
        Numbers.Near(fan, Fixture(material, kilograms, millimetres, 18).Time!.Value.TotalMinutes, 0.05);
    }

    [Theory]
    [InlineData("acrylic", 15, 6, 9, 20.9, 23.8)]
    [InlineData("acrylic", 15, 6, 18, 10.3, 13.5)]
    [InlineData("fibre", 27, 8, 9, 32.6, 35.3)]
    [InlineData("fibre", 27, 8, 18, 16.3, 19.1)]
    [Evidence(Basis.Independent, "by hand: one-term solution with the root of ζ tan ζ = Bi by bisection here; as printed in the guide")]
    public void Plastics_warm_as_printed(string plastic, double kilograms, double millimetres, double transfer, double face, double back)
    {
        FixtureThermalData material = plastic == "acrylic" ? FixtureThermalData.Acrylic : FixtureThermalData.GlassFibrePolyester;
        WarmUp wall = Fixture(material, kilograms, millimetres, transfer);
        double low = 0;
        double high = 1.5;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = middle * Math.Tan(middle) < wall.BiotNumber ? (middle, high) : (low, middle);
        }

        double coefficient = 4 * Math.Sin(low) / ((2 * low) + Math.Sin(2 * low));
        double unit = kilograms * material.SpecificHeat.JoulesPerKilogramKelvin / (transfer * 2.2) * wall.BiotNumber / (low * low) / 60;
        Numbers.Near(unit * Math.Log(coefficient * Math.Cos(low) * 3), wall.Time!.Value.TotalMinutes, 0.02);
        Numbers.Near(unit * Math.Log(coefficient * 3), wall.TimeThroughout!.Value.TotalMinutes, 0.02);
        Numbers.Near(face, wall.Time.Value.TotalMinutes, 0.05);
        Numbers.Near(back, wall.TimeThroughout.Value.TotalMinutes, 0.05);
    }

    [Theory]
    [InlineData(10, 28.5, 50.7, 83.3)]
    [InlineData(20, 13.7, 76.8, 91.0)]
    [InlineData(30, 6.9, 89.3, 96.6)]
    [Evidence(Basis.Independent, "as printed in the guide; plain Euler steps of two seconds here, to the figures printed")]
    public void Conversions_are_as_printed(double celsius, double gel, double day, double week)
    {
        CureReaction law = Epoxy with { Diffusion = new DiffusionLimit { Steepness = 40, CriticalConversionAtZero = -1.5, CriticalConversionPerKelvin = 0.008 } };
        ConversionCurve curve = new(law, TemperatureHistory.Constant(Start, C(celsius)), Start);
        double rt = 8.31446261815324 * (celsius + 273.15);
        double critical = -1.5 + (0.008 * (celsius + 273.15));
        double alpha = 0;
        double gelled = double.NaN;
        double atDay = double.NaN;
        for (int i = 0; i < 7 * 86400 / 2; i++)
        {
            atDay = i == 86400 / 2 ? alpha : atDay;
            alpha += 2 * ((3000 * Math.Exp(-48000 / rt)) + (1.2e5 * Math.Exp(-52000 / rt) * alpha)) * (1 - alpha) * (1 - alpha) / (1 + Math.Exp(40 * (alpha - critical)));
            gelled = double.IsNaN(gelled) && alpha >= 1 / Math.Sqrt(3) ? (i + 1) * 2 / 3600.0 : gelled;
        }

        Numbers.Near(gelled, (curve.InstantOf(new GelPoint(4, 2).FloryStockmayer!.Value)!.Value - Start).TotalHours, 0.01);
        Numbers.Near(gel, gelled, 0.06);
        Numbers.Near(atDay * 100, curve.ConversionAt(Start.AddDays(1)).Percent, 0.02);
        Numbers.Near(day, atDay * 100, 0.06);
        Numbers.Near(alpha * 100, curve.ConversionAt(Start.AddDays(7)).Percent, 0.02);
        Numbers.Near(week, alpha * 100, 0.06);
    }

    [Theory]
    [InlineData(0.1, 0.012, 128, 65)]
    [InlineData(0.5, 0.035, 108, 165)]
    [InlineData(2, 0.088, 98, 188)]
    [InlineData(5, 0.16, 94, 197)]
    [Evidence(Basis.Independent, "as printed in the guide; plain Euler steps of a quarter second here")]
    public void Batches_are_as_printed(double kilograms, double area, double life, double peak)
    {
        BatchExotherm cup = new()
        {
            Reaction = Epoxy,
            Mass = Mass.FromKilograms(kilograms),
            SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(1800),
            HeatOfReaction = SpecificEnergy.FromKilojoulesPerKilogram(350),
            HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(7),
            Area = Area.FromSquareMeters(area),
            Start = C(25),
            Air = C(25),
            UsableTo = Ratio.FromPercent(20),
        };
        double alpha = 0;
        double kelvins = 298.15;
        double hottest = kelvins;
        double usable = double.NaN;
        for (int i = 0; i < 5 * 3600 * 4; i++)
        {
            double rt = 8.31446261815324 * kelvins;
            double rate = ((3000 * Math.Exp(-48000 / rt)) + (1.2e5 * Math.Exp(-52000 / rt) * alpha)) * (1 - alpha) * (1 - alpha);
            alpha += 0.25 * rate;
            kelvins += 0.25 * ((350e3 / 1800 * rate) - (7 * area / (kilograms * 1800) * (kelvins - 298.15)));
            hottest = Math.Max(hottest, kelvins);
            usable = double.IsNaN(usable) && alpha >= 0.2 ? (i + 1) * 0.25 / 60 : usable;
        }

        BatchCourse course = cup.Run();
        Numbers.Near(usable, course.PotLife!.Value.TotalMinutes, 0.05);
        Numbers.Near(hottest - 273.15, course.Peak.DegreesCelsius, 0.2);
        Numbers.Near(life, usable, 0.6);
        Numbers.Near(peak, hottest - 273.15, 0.6);
        Assert.True(course.RunsAway);
    }

    private static WarmUp Fixture(FixtureThermalData material, double kilograms, double millimetres, double transfer) => new()
    {
        Mass = Mass.FromKilograms(kilograms),
        Material = material,
        WallThickness = Length.FromMillimeters(millimetres),
        HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(transfer),
        Area = Area.FromSquareMeters(2.2),
        Start = C(10),
        Room = C(22),
        Target = C(18),
    };
}
