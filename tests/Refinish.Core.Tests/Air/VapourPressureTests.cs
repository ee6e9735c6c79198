using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class VapourPressureTests
{
    private static readonly Pressure Atmosphere = Pressure.FromPascals(101325);

    [Fact]
    [Evidence(Basis.Independent, "eight pressures at 25 °C worked out by another program from the printed DIPPR coefficients, to whole pascals; the Antoine set of Poling agrees within 2.5 % where its range reaches 25 °C (2-butanone is the widest: 12 034 against 12 314 Pa; ATSDR's 90.6 mmHg is 12 079)")]
    public void Pressures_at_25_degrees()
    {
        Temperature at = Temperature.FromDegreesCelsius(25);
        int antoine = 0;
        foreach (Table.Row row in Table.Read("vapour_pressure_25c.csv").Rows)
        {
            VapourPressureFit dippr = VapourPressures.For(row["cas"]).Single(fit => fit.Form == VapourPressureForm.Dippr101);
            Numbers.Near(row.Number("pa"), dippr.PressureAt(at).Pascals, 0.51);
            foreach (VapourPressureFit fit in VapourPressures.For(row["cas"]).Where(fit => fit.Form == VapourPressureForm.Antoine && fit.Covers(at)))
            {
                Numbers.Close(row.Number("pa"), fit.PressureAt(at).Pascals, 0.025);
                antoine++;
            }
        }

        Assert.Equal(5, antoine);
    }

    [Fact]
    [Evidence(Basis.Cited, "normal boiling points of thirteen solvents, handbook values: the Antoine fits reach one atmosphere there, within 0.4 K")]
    public void Boiling_points()
    {
        foreach (Table.Row row in Table.Read("boiling_points.csv").Rows)
        {
            VapourPressureFit fit = VapourPressures.For(row["cas"]).Single(fit => fit.Form == VapourPressureForm.Antoine);
            double below = fit.PressureAt(Temperature.FromDegreesCelsius(row.Number("celsius") - 0.4)).Pascals;
            double above = fit.PressureAt(Temperature.FromDegreesCelsius(row.Number("celsius") + 0.4)).Pascals;
            Assert.True(below < 101325 && above > 101325, FormattableString.Invariant($"{row["name"]}: {below} to {above} Pa"));
        }
    }

    [Fact]
    [Evidence(Basis.Cited, "the same boiling points of the handbook: the temperature found for one atmosphere is within 0.4 K of them by Antoine and 0.8 K by DIPPR")]
    public void Temperature_of_one_atmosphere_is_the_boiling_point()
    {
        int compared = 0;
        foreach (Table.Row row in Table.Read("boiling_points.csv").Rows)
        {
            foreach (VapourPressureFit fit in VapourPressures.For(row["cas"]).Where(fit => !fit.Source.Section!.Contains("isomer")))
            {
                Numbers.Near(row.Number("celsius"), fit.FindTemperature(Atmosphere).DegreesCelsius, fit.Form == VapourPressureForm.Antoine ? 0.4 : 0.8);
                compared++;
            }
        }

        Assert.True(compared >= 18, FormattableString.Invariant($"{compared}"));
    }

    [Fact]
    [Evidence(Basis.Identity, "pressure of the temperature of a pressure is that pressure, over the range of every fit; the derivations hold; outside it is refused and not found")]
    public void Temperature_from_a_pressure_comes_back()
    {
        foreach (VapourPressureFit fit in VapourPressures.All)
        {
            double low = fit.PressureAt(fit.Minimum).Pascals;
            double high = fit.PressureAt(fit.Maximum).Pascals;
            for (int i = 0; i <= 20; i++)
            {
                Pressure pressure = Pressure.FromPascals(Math.Min(Math.Max(low * Math.Pow(high / low, i / 20.0), low), high));
                Numbers.Close(pressure.Pascals, fit.PressureAt(fit.FindTemperature(pressure)).Pascals, 1e-10);
                Assert.True(fit.TryFindTemperature(pressure, out Temperature found));
                Assert.Equal(fit.FindTemperature(pressure), found);
            }

            Numbers.CanBeWritten(fit.WorkingsOfTemperature(Pressure.FromPascals(Math.Sqrt(low * high))));
            Numbers.Refuses("vapourPressure", () => fit.FindTemperature(Pressure.FromPascals(low * 0.999)));
            Numbers.Refuses("vapourPressure", () => fit.FindTemperature(Pressure.FromPascals(high * 1.001)));
            Assert.False(fit.TryFindTemperature(Pressure.FromPascals(high * 1.001), out Temperature none));
            Assert.Equal(0, none.Kelvins);
        }
    }

    [Theory]
    [InlineData(150)]
    [InlineData(-80)]
    [Evidence(Basis.Contract, "no room is that hot or cold: refused with the range and the reason; a fit is refused with its own")]
    public void Saturation_outside_rooms_is_refused_with_the_reason(double celsius)
    {
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => _ = new SaturatedVapour(Solvents.Acetone, Temperature.FromDegreesCelsius(celsius), Atmosphere, VapourPressures.All));
        Assert.Contains("at least -40 °C and at most 60 °C, the temperatures at which a room can be", refused.Message.Replace('−', '-'), StringComparison.Ordinal);
        ArgumentOutOfRangeException fit = Assert.Throws<ArgumentOutOfRangeException>(
            () => VapourPressures.For("67-64-1")[0].PressureAt(Temperature.FromDegreesCelsius(celsius)));
        Assert.Contains("247.38 K", fit.Message, StringComparison.Ordinal);
        Assert.Contains("the range in which the fit holds", fit.Message, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "where no fit covers the temperature, what is given and where it holds is told")]
    public void What_is_not_known_says_why()
    {
        SaturatedVapour cold = new(Solvents.MethoxypropylAcetate, Temperature.FromDegreesCelsius(15), Atmosphere, VapourPressures.All);
        Assert.Contains("1-methoxy-2-propyl acetate, two points, 293.15 K to 418.95 K", cold.WhyUnknown!, StringComparison.Ordinal);
        Assert.Contains("293.15 K", cold.Compare("x", MassConcentration.FromGramsPerCubicMeter(1)).Source.ToString(), StringComparison.Ordinal);
        Assert.Equal("no vapour pressure is given for d-limonene", new SaturatedVapour(Solvents.Limonene, Temperature.FromDegreesCelsius(20), Atmosphere, VapourPressures.All).WhyUnknown);
        Assert.Null(new SaturatedVapour(Solvents.Acetone, Temperature.FromDegreesCelsius(20), Atmosphere, VapourPressures.All).WhyUnknown);
    }

    [Fact]
    [Evidence(Basis.Cited, "NIOSH Pocket Guide and National Academies, vapour pressures at 68 °F; which rows were read is in the table's header")]
    public void Pressures_of_the_pocket_guide()
    {
        foreach (Table.Row row in Table.Read("vapour_pressure_guide.csv").Rows)
        {
            VapourPressureFit fit = VapourPressures.For(row["cas"]).First(fit => fit.Covers(Temperature.FromDegreesFahrenheit(68)));
            Numbers.Close(row.Number("mmhg"), fit.PressureAt(Temperature.FromDegreesFahrenheit(68)).Pascals / 133.322387415, row.Number("tolerance_pct") / 100);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "the two forms of one substance agree within 11 % wherever both hold, within 3 % for eight tenths of it; they come from different handbooks (isopropanol at 8 °C is the widest)")]
    public void Two_handbooks_agree()
    {
        int pairs = 0;
        int close = 0;
        foreach (VapourPressureFit antoine in VapourPressures.All.Where(fit => fit.Form == VapourPressureForm.Antoine))
        {
            foreach (VapourPressureFit dippr in VapourPressures.For(antoine.CasNumber).Where(fit => fit.Form == VapourPressureForm.Dippr101 && fit.Substance == antoine.Substance && !fit.Source.Section!.StartsWith("Table 2-8, m-xylene, for", StringComparison.Ordinal)))
            {
                for (double part = 0; part <= 1; part += 0.1)
                {
                    Temperature at = Temperature.FromKelvins(antoine.Minimum.Kelvins + (part * (antoine.Maximum.Kelvins - antoine.Minimum.Kelvins)));
                    Numbers.Close(dippr.PressureAt(at).Pascals, antoine.PressureAt(at).Pascals, 0.11);
                    pairs++;
                    close += Math.Abs((antoine.PressureAt(at) / dippr.PressureAt(at)) - 1) < 0.03 ? 1 : 0;
                }
            }
        }

        Assert.True(pairs >= 100 && close >= 0.8 * pairs, FormattableString.Invariant($"{close} of {pairs}"));
    }

    [Fact]
    [Evidence(Basis.Identity, "every fit rises over its range, and refuses a tenth of a kelvin outside it")]
    public void Fits_rise_and_refuse()
    {
        foreach (VapourPressureFit fit in VapourPressures.All)
        {
            double before = 0;
            for (int i = 0; i <= 50; i++)
            {
                double pressure = fit.PressureAt(Temperature.FromKelvins(fit.Minimum.Kelvins + (i / 50.0 * (fit.Maximum.Kelvins - fit.Minimum.Kelvins)))).Pascals;
                Assert.True(pressure > before, fit.ToString());
                before = pressure;
            }

            Numbers.Refuses("temperature", () => fit.PressureAt(Temperature.FromKelvins(fit.Minimum.Kelvins - 0.1)));
            Numbers.Refuses("temperature", () => fit.PressureAt(Temperature.FromKelvins(fit.Maximum.Kelvins + 0.1)));
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 3804 Pa of toluene at 25 °C in 101 325 Pa are 37 543 ppm, and 3804·0.09214/(8.314462618·298.15) = 0.14139 kg/m³; 1 Pa is 0.03 %")]
    public void Saturation_follows_by_hand()
    {
        SaturatedVapour toluene = new(Solvents.Toluene, Temperature.FromDegreesCelsius(25), Atmosphere, [VapourPressures.For("108-88-3")[1]]);
        Numbers.Close(37543, toluene.VolumeFraction!.Value.PartsPerMillion, 3e-4);
        Numbers.Close(0.14139, toluene.Concentration!.Value.KilogramsPerCubicMeter, 3e-4);
        Numbers.CanBeWritten(toluene.Workings());
        foreach (Solvent solvent in Solvents.All)
        {
            Numbers.CanBeWritten(new SaturatedVapour(solvent, Temperature.FromDegreesCelsius(22), Atmosphere, VapourPressures.All).Workings());
        }

        // A chemical data page has about 5000 ppm for the methoxypropyl acetate at 25 °C; one figure.
        SaturatedVapour slow = new(Solvents.MethoxypropylAcetate, Temperature.FromDegreesCelsius(25), Atmosphere, VapourPressures.All);
        Numbers.Close(5000, slow.VolumeFraction!.Value.PartsPerMillion, 0.45);
    }

    [Fact]
    [Evidence(Basis.Contract, "n-butyl acetate at 20 °C is below Poling's range, so the second fit serves; where none covers the temperature, nothing is said")]
    public void The_first_fit_that_covers_serves()
    {
        SaturatedVapour butyl = new(Solvents.ButylAcetate, Temperature.FromDegreesCelsius(20), Atmosphere, VapourPressures.All);
        Assert.Equal(VapourPressureForm.Dippr101, butyl.Fit!.Form);
        Assert.Equal(VapourPressureForm.Antoine, new SaturatedVapour(Solvents.ButylAcetate, Temperature.FromDegreesCelsius(30), Atmosphere, VapourPressures.All).Fit!.Form);
        SaturatedVapour cold = new(Solvents.MethoxypropylAcetate, Temperature.FromDegreesCelsius(15), Atmosphere, VapourPressures.All);
        Assert.Null(cold.Fit);
        Assert.Null(cold.VapourPressure);
        Assert.Null(cold.VolumeFraction);
        Assert.Null(cold.Concentration);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, cold.Compare("x", MassConcentration.FromGramsPerCubicMeter(1)).Outcome);
        Numbers.CanBeWritten(cold.Workings());
        Assert.Null(new SaturatedVapour(Rooms.Solvent("unheard of", 100), Temperature.FromDegreesCelsius(20), Atmosphere, VapourPressures.All).Fit);
        Numbers.Refuses("temperature", () => _ = new SaturatedVapour(Solvents.Acetone, Temperature.FromDegreesCelsius(70), Atmosphere, VapourPressures.All));
    }

    [Fact]
    [Evidence(Basis.Contract, "a closed room that is given more than the air can hold says that the model does not hold; without a temperature nothing is judged")]
    public void A_study_says_when_it_goes_beyond_saturation()
    {
        Room warm = Rooms.Bathroom with { AirTemperature = Temperature.FromDegreesCelsius(20) };
        AirStudy little = Rooms.Study(warm, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 164, 0.4, 15));
        Assert.Equal(ComparisonOutcome.Within, little.Saturation.Single().Outcome);
        Numbers.CanBeWritten(little.Workings());

        // 1 kg of butyl acetate in 9 m³ is 110 g/m³; air at 20 °C holds about 52.
        AirStudy much = Rooms.Study(warm, Rooms.Fan(0, 2), Rooms.Coat(0, 6, 1000, 0.4, 15));
        Assert.Equal(ComparisonOutcome.Beyond, much.Saturation.Single().Outcome);
        Assert.Contains(much.Cautions, caution => caution.Sentence.StartsWith("The room model gives more vapour", StringComparison.Ordinal));
        Assert.Equal(ComparisonOutcome.CannotBeJudged, Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 164, 0.4, 15)).Saturation.Single().Outcome);
        AirStudy bare = new(warm, Rooms.Fan(100, 2), [Rooms.Coat(0, 6, 164, 0.4, 15)], TimeSpan.FromHours(8), LimitSets.Default, []);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, bare.Saturation.Single().Outcome);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; texts")]
    public void Refuses_what_cannot_be()
    {
        Source source = Source.Invented("test");
        Temperature low = Temperature.FromKelvins(280);
        Temperature high = Temperature.FromKelvins(300);
        Numbers.Refuses("maximum", () => VapourPressureFit.Antoine("x", "x", 9, 1000, -50, high, low, Standing.Supplied, source));
        Numbers.Refuses("c", () => VapourPressureFit.Antoine("x", "x", 7.11714, 1210.595, 229.664, low, high, Standing.Supplied, source));
        Numbers.Refuses("c", () => VapourPressureFit.Antoine("x", "x", 9, 1000, -290, low, high, Standing.Supplied, source));
        Numbers.Refuses("b", () => VapourPressureFit.Antoine("x", "x", 9, double.NaN, -50, low, high, Standing.Supplied, source));
        Numbers.Refuses("thereToo", () => VapourPressureFit.TwoPoints("x", "x", low, Pressure.FromPascals(100), high, Pressure.FromPascals(90), Standing.Supplied, source));
        VapourPressureFit points = VapourPressureFit.TwoPoints("x", "x", low, Pressure.FromPascals(100), high, Pressure.FromPascals(400), Standing.Supplied, source);
        Numbers.Close(100, points.PressureAt(low).Pascals);
        Numbers.Close(400, points.PressureAt(high).Pascals);
        Numbers.Close(200, points.PressureAt(Temperature.FromKelvins(2 / ((1 / 280.0) + (1 / 300.0)))).Pascals, 1e-9);
        Assert.Equal("x, two points, 280 K to 300 K", points.ToString());
    }
}
