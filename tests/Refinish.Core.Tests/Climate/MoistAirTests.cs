using System;
using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Climate;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Climate;

public class MoistAirTests
{
    private static MoistAir Air(double celsius, double percent, double? pascals = null) => new(
        Temperature.FromDegreesCelsius(celsius), Ratio.FromPercent(percent), Pressure.FromPascals(pascals ?? 101325));

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    private static MoistAir Any(NormalFloat a, NormalFloat b, NormalFloat c) =>
        Air(-60 + (120 * Part(a)), 1 + (99 * Part(b)), 20e3 + (90e3 * Part(c)));

    [Fact]
    [Evidence(Basis.Cited, "ASHRAE Handbook Fundamentals (2017), chapter 1, Tables 2 and 3; 300 ppm")]
    public void Saturation_pressures_match_the_tables()
    {
        foreach (Table.Row row in Table.Read("saturation_pressure.csv").Rows)
        {
            Numbers.Near(row.Number("pascal"), ClimateKernel.SaturationPressure(273.15 + row.Number("celsius")), row.Number("tolerance_pa"));
        }
    }

    [Theory]
    [InlineData(300, 3536.58941)]
    [Evidence(Basis.Cited, "IAPWS-IF97, Table 35: 0.353658941e-2 MPa at 300 K; 300 ppm, as between the two formulations above")]
    public void Saturation_pressure_agrees_with_the_steam_tables(double kelvins, double pascals) =>
        Numbers.Close(pascals, ClimateKernel.SaturationPressure(kelvins), 3e-4);

    [Fact]
    [Evidence(Basis.Cited, "ASHRAE Handbook Fundamentals (2017), chapter 1, Table 2, saturated air at 101 325 Pa")]
    public void Saturated_air_matches_the_table()
    {
        foreach (Table.Row row in Table.Read("humid_air_saturated.csv").Rows)
        {
            MoistAir air = Air(row.Number("celsius"), 100);
            Numbers.Close(row.Number("humidity_ratio"), air.HumidityRatio.DecimalFractions, row.Number("ratio_tolerance"));
            Numbers.Close(row.Number("enthalpy_j_kg"), air.Enthalpy.JoulesPerKilogram, row.Number("enthalpy_tolerance"));
        }
    }

    [Theory]
    [InlineData(30, 0.02, 95461, 0.940855374352943, 1.08411986348219, 81316)]
    [Evidence(Basis.Independent, "PsychroLib SI tests, commit 3066345dc8cf91bf59134147cf917f982c1fce13: humid air at 30 °C and W 0.02; 1e-9, enthalpy ± 1 J")]
    public void Volume_density_and_enthalpy_match(double celsius, double ratio, double pascals, double volume, double density, double enthalpy)
    {
        double vapour = ratio * pascals / (0.621945 + ratio);
        MoistAir air = Air(celsius, 100 * vapour / ClimateKernel.SaturationPressure(273.15 + celsius), pascals);
        Numbers.Close(ratio, air.HumidityRatio.DecimalFractions, 1e-12);
        Numbers.Close(volume, air.SpecificVolume.CubicMetersPerKilogram, 1e-9);
        Numbers.Close(density, air.Density.KilogramsPerCubicMeter, 1e-9);
        Numbers.Near(enthalpy, air.Enthalpy.JoulesPerKilogram, 1);
    }

    [Fact]
    [Evidence(Basis.Independent, "PsychroLib SI tests, same commit: W from a vapour pressure of 3169.7 Pa at 95 461 Pa = 0.0213603998047487")]
    public void Humidity_ratio_matches() => Numbers.Close(0.0213603998047487, ClimateKernel.HumidityRatio(3169.7, 95461).Value, 1e-12);

    [Fact]
    [Evidence(Basis.Independent, "PsychroLib (Python), dew point of 25 °C and 80 %: 21.309397163661785; builds differ in the ninth decimal, so 1e-8")]
    public void Dew_point_matches_another_library() => Numbers.Near(21.309397163661785, Air(25, 80).DewPoint.DegreesCelsius, 1e-8);

    [Theory]
    [InlineData(70, 65, 57, 1)]
    [InlineData(75, 35, 45, 1)]
    [Evidence(Basis.Cited, "spot values of trade charts, whole °F, read second-hand: 70 °F and 65 %, 75 °F and 35 %")]
    public void Dew_points_match_spot_values(double fahrenheit, double percent, double dew, double tolerance) => Numbers.Near(
        dew, new MoistAir(Temperature.FromDegreesFahrenheit(fahrenheit), Ratio.FromPercent(percent)).DewPoint.DegreesFahrenheit, tolerance);

    [Theory]
    [InlineData(16, 71, 11)]
    [InlineData(30, 55, 20)]
    [Evidence(Basis.Cited, "a paint-application note's chart (16 °C, 71 %: 11 °C) and a coatings glossary (30 °C, 55 %: 20 °C); whole °C")]
    public void Dew_points_match_spot_values_in_celsius(double celsius, double percent, double dew) =>
        Numbers.Near(dew, Air(celsius, percent).DewPoint.DegreesCelsius, 0.5);

    [Fact]
    [Evidence(Basis.Cited, "dew-point chart of the painting trade: rows 75 to 90 % at 20 to 100 °F within 1 °F; elsewhere the chart is known to be off: low by up to 3.2 °F where hot and dry, high by up to 1.4 °F at 20 °F")]
    public void Dew_points_match_the_trade_chart()
    {
        foreach (Table.Row row in Table.Read("dew_point_chart.csv").Rows)
        {
            double humidity = row.Number("humidity_pct");
            for (int fahrenheit = 20; fahrenheit <= 120; fahrenheit += 10)
            {
                double printed = row.Number(fahrenheit.ToString(CultureInfo.InvariantCulture) + "_f");
                double dew = new MoistAir(Temperature.FromDegreesFahrenheit(fahrenheit), Ratio.FromPercent(humidity)).DewPoint.DegreesFahrenheit;
                if (humidity >= 75 && fahrenheit <= 100)
                {
                    Numbers.Near(printed, dew, 1);
                }
                else
                {
                    Assert.InRange(dew - printed, fahrenheit == 20 ? -1.4 : -1, 3.2);
                }
            }
        }
    }

    [Theory]
    [InlineData(22, 45, 9.515)]
    [InlineData(22, 60, 13.875)]
    [InlineData(20, 85, 17.40)]
    [InlineData(14, 75, 9.636)]
    [InlineData(25, 50, 13.85)]
    [Evidence(Basis.Independent, "Magnus formula with 17.62 and 243.12 °C, by hand; the two formulations differ by less than 0.03 K here")]
    public void Dew_points_agree_with_the_Magnus_formula(double celsius, double percent, double dew) =>
        Numbers.Near(dew, Air(celsius, percent).DewPoint.DegreesCelsius, 0.03);

    [Fact]
    [Evidence(Basis.Independent, "Magnus formula by hand: 8.71 g/m³ at 22 °C and 45 %; 22 °C and 60 % on metal of 16 °C is 87 %; 14 °C and 75 % heated to 20 °C is 51.3 %")]
    public void Absolute_humidity_and_humidity_elsewhere_match()
    {
        Numbers.Near(8.71, Air(22, 45).AbsoluteHumidity.GramsPerCubicMeter, 0.03);
        Numbers.Near(87, Air(22, 60).RelativeHumidityAt(Temperature.FromDegreesCelsius(16)).Percent, 0.5);
        Numbers.Near(51.3, Air(14, 75).HeatedTo(Temperature.FromDegreesCelsius(20)).RelativeHumidity.Percent, 0.1);
    }

    [Fact]
    [Evidence(Basis.Identity, "the two branches meet at the triple point: rising through it, 4e-6 Pa apart, and its dew point is found")]
    public void Branches_meet_at_the_triple_point()
    {
        double ice = Math.Exp(ClimateKernel.LogSaturationOverIce(273.16).Value);
        double water = Math.Exp(ClimateKernel.LogSaturationOverWater(273.16).Value);
        Assert.InRange(water - ice, 0, 1e-5);
        Numbers.Near(273.16, ClimateKernel.DewPoint((ice + water) / 2), 0);
        Numbers.CanBeWritten(Air(0.01, 100).Workings());
        Numbers.CanBeWritten(MoistAir.FromDewPoint(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(0.01)).Workings());
        Numbers.CanBeWritten(MoistAir.FromDewPoint(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(0.0100001)).Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "the dew point is the inverse of the saturation pressure over the whole range of the formulas, to 1e-9 K")]
    public void Dew_point_inverts_saturation_everywhere()
    {
        for (double t = 173.15; t <= 473.15; t += 0.0625)
        {
            Numbers.Near(t, ClimateKernel.DewPoint(ClimateKernel.SaturationPressure(t)), 1e-9);
        }
    }

    [Property]
    [Evidence(Basis.Identity, "dew point at most the air temperature; round trips through dew point and heating to 1e-9; densities by two routes; workings hold to the kernel")]
    public void States_are_consistent(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        MoistAir air = Any(a, b, c);
        Assert.True(air.DewPoint.Kelvins <= air.DryBulb.Kelvins);
        MoistAir back = MoistAir.FromDewPoint(air.DryBulb, air.DewPoint, air.Pressure);
        Numbers.Near(air.DewPoint.Kelvins, back.DewPoint.Kelvins, 1e-9);
        Numbers.Close(air.RelativeHumidity.DecimalFractions, back.RelativeHumidity.DecimalFractions, 1e-9);
        MoistAir warm = air.HeatedTo(Temperature.FromDegreesCelsius(60));
        Numbers.Close(air.VapourPressure.Pascals, warm.VapourPressure.Pascals, 1e-12);
        Numbers.Near(air.DewPoint.Kelvins, warm.DewPoint.Kelvins, 1e-9);
        Numbers.Close(air.RelativeHumidity.DecimalFractions, air.RelativeHumidityAt(air.DryBulb).DecimalFractions);

        // Ideal gas of both: p_w / (461.524 J/(kg K) T), with 461.524 = 8314.462618 / 18.015268 from the same chapter.
        Numbers.Close(air.VapourPressure.Pascals / (461.524 * air.DryBulb.Kelvins), air.AbsoluteHumidity.KilogramsPerCubicMeter, 1e-5);
        Numbers.CanBeWritten(air.Workings());
        Numbers.CanBeWritten(air.WorkingsAt(Temperature.FromDegreesCelsius(-20 + (80 * Part(a)))));
    }

    [Property]
    [Evidence(Basis.Identity, "more humid air has the higher dew point; warmer air of one vapour pressure the lower relative humidity; a colder surface the higher")]
    public void Humidity_is_monotone(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        MoistAir air = Any(a, b, c);
        double more = air.RelativeHumidity.DecimalFractions + ((1 - air.RelativeHumidity.DecimalFractions) * 0.5) + 1e-9;
        if (more <= 1)
        {
            Assert.True(new MoistAir(air.DryBulb, Ratio.FromDecimalFractions(more), air.Pressure).DewPoint.Kelvins > air.DewPoint.Kelvins);
        }

        double warmer = Math.Min(60, air.DryBulb.DegreesCelsius + 0.5);
        Assert.True(air.HeatedTo(Temperature.FromDegreesCelsius(warmer)).RelativeHumidity.DecimalFractions <= air.RelativeHumidity.DecimalFractions);
        double surface = air.DryBulb.DegreesCelsius - (air.DryBulb.DegreesCelsius + 60) / 2;
        Assert.True(air.RelativeHumidityAt(Temperature.FromDegreesCelsius(surface)).DecimalFractions >= air.RelativeHumidity.DecimalFractions);
    }

    [Fact]
    [Evidence(Basis.Identity, "at its dew point the same air is saturated")]
    public void Air_can_be_cooled_to_its_dew_point_and_no_further()
    {
        MoistAir air = Air(22, 60);
        Numbers.Near(1, air.HeatedTo(air.DewPoint).RelativeHumidity.DecimalFractions, 1e-11);
        Numbers.Close(1, air.RelativeHumidityAt(air.DewPoint).DecimalFractions, 1e-11);
        Numbers.Refuses("temperature", () => _ = air.HeatedTo(Temperature.FromKelvins(air.DewPoint.Kelvins - 1e-6)));
        Numbers.Refuses("temperature", () => _ = air.HeatedTo(Temperature.FromDegreesCelsius(60.1)));
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstring")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("dryBulb", () => _ = Air(-60.01, 50));
        Numbers.Refuses("dryBulb", () => _ = Air(60.01, 50));
        Numbers.Refuses("relativeHumidity", () => _ = Air(20, 0));
        Numbers.Refuses("relativeHumidity", () => _ = Air(20, 100.001));
        Numbers.Refuses("relativeHumidity", () => _ = Air(20, 1e-5));
        Numbers.Refuses("pressure", () => _ = Air(20, 50, 19e3));
        Numbers.Refuses("pressure", () => _ = Air(20, 50, 111e3));
        Numbers.Refuses("dewPoint", () => _ = MoistAir.FromDewPoint(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(11)));
        Numbers.Refuses("dewPoint", () => _ = MoistAir.FromDewPoint(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(-101)));
        Numbers.Refuses("surface", () => _ = Air(20, 50).RelativeHumidityAt(Temperature.FromDegreesCelsius(61)));
        Assert.NotNull(MoistAir.FromDewPoint(Temperature.FromDegreesCelsius(10), Temperature.FromDegreesCelsius(-100)));
    }

    [Fact]
    [Evidence(Basis.Contract, "equal readings are equal whatever unit they were given in; text; the omitted pressure is the standard atmosphere")]
    public void Units_do_not_matter()
    {
        MoistAir metric = new(Temperature.FromDegreesCelsius(25), Ratio.FromPercent(50));
        MoistAir other = new(Temperature.FromKelvins(298.15), Ratio.FromDecimalFractions(0.5), Pressure.FromKilopascals(101.325));
        Assert.Equal(metric, other);
        Assert.Equal("22 °C, 60 % relative humidity, dew point 13.9 °C", Air(22, 60).ToString());
        Assert.Contains("that T_d at which exp(", metric.Workings().ToPlainText(DisplayUnits.Si), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "the kernel allocates nothing")]
    public void Kernel_does_not_allocate()
    {
        double sum = State(0);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            sum += State(i);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);

        static double State(int i)
        {
            double vapour = 0.5 * ClimateKernel.SaturationPressure(260 + (0.05 * i));
            double ratio = ClimateKernel.HumidityRatio(vapour, 101325).Value;
            return ClimateKernel.DewPoint(vapour) + ClimateKernel.SpecificVolume(290, ratio, 101325).Value
                + ClimateKernel.Enthalpy(290, ratio).Value;
        }
    }
}
