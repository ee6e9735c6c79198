using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Climate;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Climate;

public class AirReadingTests
{
    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    private static AirReading Reading(MoistAir air, AirReadingKind kind) => kind switch
    {
        AirReadingKind.DryBulb => AirReading.DryBulb(air.DryBulb),
        AirReadingKind.DewPoint => AirReading.DewPoint(air.DewPoint),
        AirReadingKind.HumidityRatio => AirReading.HumidityRatio(air.HumidityRatio),
        AirReadingKind.RelativeHumidity => AirReading.RelativeHumidity(air.RelativeHumidity),
        AirReadingKind.WetBulb => AirReading.WetBulb(air.WetBulb),
        AirReadingKind.Enthalpy => AirReading.Enthalpy(SpecificEnergy.FromJoulesPerKilogram(air.Enthalpy.JoulesPerKilogram)),
        _ => AirReading.SpecificVolume(air.SpecificVolume),
    };

    private static IEnumerable<(AirReadingKind First, AirReadingKind Second)> Pairs() =>
        from first in Enum.GetValues<AirReadingKind>()
        from second in Enum.GetValues<AirReadingKind>()
        where first != second && !Dependent(first, second)
        select (first, second);

    private static bool Dependent(AirReadingKind a, AirReadingKind b)
    {
        HashSet<AirReadingKind> pair = [a, b];
        return pair.SetEquals([AirReadingKind.DewPoint, AirReadingKind.HumidityRatio]) || pair.SetEquals([AirReadingKind.WetBulb, AirReadingKind.Enthalpy]);
    }

    [Theory]
    [InlineData(30, 25, 95461, 0.0192281274241096)]
    [InlineData(-1, -5, 95461, 0.00120399819933844)]
    [Evidence(Basis.Independent, "PsychroLib SI tests, commit 3066345dc8cf91bf59134147cf917f982c1fce13: W from dry and wet bulb at 95 461 Pa (500 m), above and below freezing; 300 ppm as there")]
    public void Humidity_ratio_of_a_wet_bulb_matches(double dry, double wet, double pascals, double ratio)
    {
        MoistAir air = MoistAir.FromWetBulb(C(dry), C(wet), Pressure.FromPascals(pascals));
        Numbers.Close(ratio, air.HumidityRatio.DecimalFractions, 3e-4);
        Numbers.Near(wet, air.WetBulb.DegreesCelsius, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Cited, "ASHRAE Handbook Fundamentals (2017), chapter 1, Example 1: 40 °C dry, 20 °C wet bulb, 101.325 kPa: W 6.5 g/kg, dew point 7 °C, 14 %, 56.7 kJ/kg, 0.896 m³/kg, read off the chart")]
    public void Chart_example_at_sea_level_matches()
    {
        MoistAir air = MoistAir.FromWetBulb(C(40), C(20));
        Numbers.Near(0.0065, air.HumidityRatio.DecimalFractions, 0.0001);
        Numbers.Near(7, air.DewPoint.DegreesCelsius, 0.5);
        Numbers.Near(14, air.RelativeHumidity.Percent, 0.5);
        Numbers.Near(56.7, air.Enthalpy.KilojoulesPerKilogram, 0.2);
        Numbers.Near(0.896, air.SpecificVolume.CubicMetersPerKilogram, 0.001);
    }

    [Fact]
    [Evidence(Basis.Cited, "the same example in inch-pound units: 100 °F, 65 °F, 14.696 psi: W 0.00523, dew point 40 °F, 13 %, 14.22 ft³/lb; the chart is of real moist air, which holds up to 1 % more water")]
    public void Chart_example_in_inch_pound_units_matches()
    {
        MoistAir air = MoistAir.FromWetBulb(Temperature.FromDegreesFahrenheit(100), Temperature.FromDegreesFahrenheit(65), Pressure.FromPoundsForcePerSquareInch(14.696));
        Numbers.Near(0.00523, air.HumidityRatio.DecimalFractions, 0.00006);
        Numbers.Near(40, air.DewPoint.DegreesFahrenheit, 1);
        Numbers.Near(13, air.RelativeHumidity.Percent, 0.5);
        Numbers.Near(14.22, air.SpecificVolume.CubicMetersPerKilogram * 16.018463, 0.01);
    }

    [Theory]
    [InlineData(21, 17, 15, 0.5)]
    [Evidence(Basis.Cited, "a paint-application note with a chart: dry bulb 21 °C, wet bulb 17 °C, dew point 15 °C; whole °C, seen second-hand")]
    public void Dew_point_from_a_psychrometer_matches_the_trade_chart(double dry, double wet, double dew, double tolerance) =>
        Numbers.Near(dew, MoistAir.FromWetBulb(C(dry), C(wet)).DewPoint.DegreesCelsius, tolerance);

    [Fact]
    [Evidence(Basis.Independent, "Stull (2011), an empirical wet-bulb formula for sea level: 13.699 °C at 20 °C and 50 %; his stated error is −1 to +0.65 K, mean 0.3 K")]
    public void Wet_bulb_agrees_with_an_empirical_formula() =>
        Numbers.Near(13.699, new MoistAir(C(20), Ratio.FromPercent(50)).WetBulb.DegreesCelsius, 0.3);

    [Fact]
    [Evidence(Basis.Independent, "IAPWS-IF97 region 4, written out here from its published coefficients and held to its own verification values of Table 35 (0.353658941e-2, 2.63889776, 12.3443146 MPa): within 0.02 % from 0.01 to 60 °C")]
    public void Saturation_agrees_with_the_steam_tables_over_the_range()
    {
        Numbers.Close(3536.58941, SteamTables(300), 1e-8);
        Numbers.Close(2.63889776e6, SteamTables(500), 1e-8);
        Numbers.Close(12.3443146e6, SteamTables(600), 1e-8);
        for (double celsius = 0.01; celsius <= 60; celsius += 0.5)
        {
            Numbers.Close(SteamTables(celsius + 273.15), ClimateKernel.SaturationPressure(celsius + 273.15), 2e-4);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "sublimation pressure of IAPWS (2008), the three terms of its table 6 from memory, held to its own check value 8.94735 Pa at 230 K: within 0.05 % from −60 to 0 °C")]
    public void Saturation_over_ice_agrees_with_another_formulation()
    {
        Numbers.Near(8.94735, Sublimation(230), 0.00001);
        for (double celsius = -60; celsius <= 0; celsius += 0.5)
        {
            Numbers.Close(Sublimation(celsius + 273.15), ClimateKernel.SaturationPressure(celsius + 273.15), 5e-4);
        }
    }

    [Theory]
    [InlineData(-500, 107478, 18.2)]
    [InlineData(0, 101325, 15.0)]
    [InlineData(500, 95461, 11.8)]
    [InlineData(1000, 89875, 8.5)]
    [InlineData(10000, 26436, -50.0)]
    [Evidence(Basis.Cited, "ASHRAE Handbook Fundamentals (2017), chapter 1, Table 1, as in the PsychroLib tests; 1 Pa and 0.1 K")]
    public void Standard_atmosphere_matches_the_table(double metres, double pascals, double celsius)
    {
        StandardAtmosphere atmosphere = new(Length.FromMeters(metres));
        Numbers.Near(pascals, atmosphere.Pressure.Pascals, 1);
        Numbers.Near(celsius, atmosphere.Temperature.DegreesCelsius, 0.1);
        Numbers.CanBeWritten(atmosphere.Workings());
        Numbers.CanBeWritten(atmosphere.StationWorkings(Pressure.FromPascals(101325), C(celsius)));
    }

    [Fact]
    [Evidence(Basis.Independent, "PsychroLib SI tests, same commit: 101 226.5 Pa at 105 m and 17.19 °C are 102 484.0 Pa at sea level; 1 Pa")]
    public void Station_pressure_matches()
    {
        StandardAtmosphere place = new(Length.FromMeters(105));
        Numbers.Near(101226.5, place.StationPressure(Pressure.FromPascals(102484), C(17.19)).Pascals, 1);
        Assert.Equal("105 m: 100070 Pa", place.ToString());
        Numbers.Refuses("altitude", () => _ = new StandardAtmosphere(Length.FromMeters(11001)));
        Numbers.Refuses("seaLevel", () => _ = place.StationPressure(Pressure.FromPascals(80000), C(10)));
        Numbers.Refuses("outdoors", () => _ = place.StationPressure(Pressure.FromPascals(100000), C(70)));
    }

    [Property]
    [Evidence(Basis.Identity, "every pair of readings that fixes the air gives both readings back to 1e-9, in either order, and the air temperature to 2e-8 K (a reading is kept to 1e-10 K, and a wet bulb moves the air temperature up to a hundredfold); −20 to 60 °C, 5 to 100 %, 20 to 110 kPa; workings hold to the kernel")]
    public void Any_two_readings_give_the_air_back(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        MoistAir air = new(C(-20 + (80 * Part(a))), Ratio.FromPercent(5 + (95 * Part(b))), Pressure.FromPascals(20e3 + (90e3 * Part(c))));
        foreach ((AirReadingKind first, AirReadingKind second) in Pairs())
        {
            MoistAir back = MoistAir.FromReadings(Reading(air, first), Reading(air, second), air.Pressure);
            string pair = first + ", " + second + ": " + air + " came back as " + back;
            Assert.True(Math.Abs(air.DryBulb.Kelvins - back.DryBulb.Kelvins) <= 2e-8, pair);
            foreach (AirReadingKind kind in (AirReadingKind[])[first, second])
            {
                AirReading given = Reading(air, kind);
                Assert.True(Math.Abs(given.Value - Reading(back, kind).Value) <= 1e-9 * Math.Max(1, given.Value), pair);
            }
        }

        (AirReadingKind one, AirReadingKind two) = Pairs().ElementAt((int)(Part(b) * 37.99));
        Numbers.CanBeWritten(MoistAir.WorkingsFromReadings(Reading(air, one), Reading(air, two), air.Pressure));
        Numbers.CanBeWritten(air.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "dew point ≤ wet bulb ≤ dry bulb, ice bulb at most 0.01 °C and never above the wet bulb; drier air has the lower wet bulb; both bulbs are inverses of the humidity ratio")]
    public void Bulbs_lie_between_dew_point_and_dry_bulb(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        MoistAir air = new(C(-60 + (120 * Part(a))), Ratio.FromPercent(1 + (99 * Part(b))), Pressure.FromPascals(20e3 + (90e3 * Part(c))));
        Assert.InRange(air.WetBulb.Kelvins, air.DewPoint.Kelvins - 1e-9, air.DryBulb.Kelvins);
        MoistAir drier = new(air.DryBulb, air.RelativeHumidity * 0.9, air.Pressure);
        Assert.True(drier.WetBulb.Kelvins < air.WetBulb.Kelvins);
        if (air.IceBulb is Temperature ice)
        {
            Assert.True(ice.Kelvins <= 273.16 && ice.Kelvins <= air.WetBulb.Kelvins);
            Numbers.Near(air.HumidityRatio.DecimalFractions, MoistAir.FromWetBulb(air.DryBulb, ice, air.Pressure).HumidityRatio.DecimalFractions, 1e-11);
        }
        else
        {
            Assert.True(air.WetBulb.Kelvins > 273.16);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "a wet bulb is kept to 1e-10 K; one kelvin of it is 1006 × 101 325 / (0.622 × 2.501e6) = 65.5 Pa of vapour where air is dry, so that the vapour pressure comes back to 1e-8 Pa (1e-9 of it where it is large) at every humidity")]
    public void A_wet_bulb_gives_the_driest_air_back()
    {
        foreach (double celsius in (double[])[-60, -40, -20, -1, 0, 5, 20, 40, 60])
        {
            foreach (double percent in (double[])[0.001, 0.01, 0.3, 1, 5, 40, 99])
            {
                if (percent / 100 * ClimateKernel.SaturationPressure(celsius + 273.15) > 1.01 * ClimateKernel.LeastPressure)
                {
                    MoistAir air = new(C(celsius), Ratio.FromPercent(percent));
                    double given = air.VapourPressure.Pascals;
                    Numbers.Near(given, MoistAir.FromWetBulb(air.DryBulb, air.WetBulb).VapourPressure.Pascals, Math.Max(1e-8, 1e-9 * given));
                }
            }
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "readings that say the same, that cannot hold together, or lie outside are refused by name")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("second", () => _ = MoistAir.FromReadings(AirReading.DryBulb(C(20)), AirReading.DryBulb(C(21))));
        Numbers.Refuses("second", () => _ = MoistAir.FromReadings(AirReading.DewPoint(C(10)), AirReading.HumidityRatio(Ratio.FromDecimalFractions(0.008))));
        Numbers.Refuses("second", () => _ = MoistAir.FromReadings(AirReading.Enthalpy(SpecificEnergy.FromKilojoulesPerKilogram(50)), AirReading.WetBulb(C(18))));
        Numbers.Refuses("second", () => _ = MoistAir.FromReadings(AirReading.DryBulb(C(20)), AirReading.DewPoint(C(21))));
        Numbers.Refuses("second", () => _ = MoistAir.FromReadings(AirReading.DewPoint(C(15)), AirReading.WetBulb(C(14))));
        Numbers.Refuses("second", () => _ = MoistAir.FromReadings(AirReading.DewPoint(C(40)), AirReading.RelativeHumidity(Ratio.FromPercent(5))));
        Numbers.Refuses("second", () => _ = MoistAir.FromReadings(AirReading.DryBulb(C(30)), AirReading.Enthalpy(SpecificEnergy.FromKilojoulesPerKilogram(20))));
        Numbers.Refuses("second", () => _ = MoistAir.FromReadings(AirReading.DryBulb(C(30)), AirReading.SpecificVolume(SpecificVolume.FromCubicMetersPerKilogram(0.8))));
        Numbers.Refuses("wetBulb", () => _ = MoistAir.FromWetBulb(C(20), C(20.1)));
        Numbers.Refuses("wetBulb", () => _ = MoistAir.FromWetBulb(C(40), C(5)));
        Numbers.Refuses("pressure", () => _ = MoistAir.FromWetBulb(C(20), C(15), Pressure.FromPascals(10)));
        Numbers.Refuses("temperature", () => _ = AirReading.DewPoint(C(-101)));
        Numbers.Refuses("humidity", () => _ = AirReading.RelativeHumidity(Ratio.FromPercent(101)));
        Numbers.Refuses("ratio", () => _ = AirReading.HumidityRatio(Ratio.Zero));
        Numbers.Refuses("volume", () => _ = AirReading.SpecificVolume(SpecificVolume.Zero));
        Numbers.Refuses("enthalpy", () => _ = AirReading.Enthalpy(SpecificEnergy.FromKilojoulesPerKilogram(-101)));
        Assert.Throws<ArgumentNullException>(() => MoistAir.FromReadings(null!, AirReading.DryBulb(C(20))));
        Assert.Equal("wet bulb 17 °C", AirReading.WetBulb(C(17)).ToString());
        Assert.Equal(AirReading.WetBulb(C(17)), AirReading.WetBulb(Temperature.FromDegreesFahrenheit(62.6)));
    }

    [Fact]
    [Evidence(Basis.Contract, "the wet bulb allocates nothing")]
    public void Kernel_does_not_allocate()
    {
        double sum = ClimateKernel.WetBulbOverWater(300, 0.008, 101325);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            sum += ClimateKernel.WetBulbOverWater(280 + (0.03 * i), 0.004, 101325);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    private static double SteamTables(double kelvins)
    {
        double[] n =
        [
            0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
            0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
        ];
        double theta = kelvins + (n[8] / (kelvins - n[9]));
        double a = (theta * theta) + (n[0] * theta) + n[1];
        double b = (n[2] * theta * theta) + (n[3] * theta) + n[4];
        double c = (n[5] * theta * theta) + (n[6] * theta) + n[7];
        return 1e6 * Math.Pow(2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c))), 4);
    }

    private static double Sublimation(double kelvins)
    {
        double theta = kelvins / 273.16;
        double sum = (-0.212144006e2 * Math.Pow(theta, 0.333333333e-2)) + (0.273203819e2 * Math.Pow(theta, 0.120666667e1)) - (0.610598130e1 * Math.Pow(theta, 0.170333333e1));
        return 611.657 * Math.Exp(sum / theta);
    }
}
