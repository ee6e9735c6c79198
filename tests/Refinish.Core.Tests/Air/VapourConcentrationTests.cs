using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class VapourConcentrationTests
{
    private static readonly Temperature Room = Temperature.FromDegreesCelsius(20);
    private static readonly Pressure Atmosphere = Pressure.FromPascals(101325);

    [Theory]
    [InlineData(92.14, 3.77)]
    [InlineData(60.1, 2.46)]
    [InlineData(100.2, 4.10)]
    [Evidence(Basis.Cited, "NIOSH Pocket Guide, conversions of 1 ppm at 25 °C and 1 atm: toluene 3.77, isopropyl alcohol 2.46, 2-hexanone 4.10 mg/m³; half a printed digit")]
    public void Conversions_of_the_pocket_guide(double gramsPerMole, double milligrams) =>
        Numbers.Near(
            milligrams,
            VapourConcentration.AtReference(Ratio.FromPartsPerMillion(1), MolarMass.FromGramsPerMole(gramsPerMole)).Mass.MilligramsPerCubicMeter, 0.0051);

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.1000, Table Z-1, footnotes: 24.45 L/mol at 25 °C and 760 mmHg; the ideal gas is 24.465, 0.06 % more")]
    public void The_molar_volume_of_the_limits()
    {
        VapourConcentration one = VapourConcentration.AtReference(Ratio.FromPercent(1), MolarMass.FromGramsPerMole(100));
        Numbers.Close(24.45, 1 / one.Mass.GramsPerCubicMeter * 1000, 1e-3);
        Numbers.Close(0.01, one.ForLimits.DecimalFractions, 1e-3);
    }

    [Fact]
    [Evidence(Basis.Cited, "CCOHS, converting exposure limits: ppm = 62.4 (273.2 + t) (mg/m³) / (P · M), P in mmHg; inputs of the example of OSHA's calculations "
        + "appendix, allyl chloride, M 76.5, 0.188 mg in 60 L at 20 °C and 660 mmHg: 1.1354 ppm; the constants are rounded to 0.1 %")]
    public void Air_of_a_mountain_by_another_formula()
    {
        VapourConcentration sample = VapourConcentration.OfMass(
            MassConcentration.FromMilligramsPerCubicMeter(0.188 / 0.060), MolarMass.FromGramsPerMole(76.5), Room, Pressure.FromMillimetersOfMercury(660));
        Numbers.Close(62.4 * 293.2 * (0.188 / 0.060) / (660 * 76.5), sample.VolumeFraction.PartsPerMillion, 1e-3);
        Numbers.CanBeWritten(sample.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "OSHA Sampling and Analytical Methods, calculations appendix: a limit in mg/m³ is fixed whatever temperature and pressure, and ppm for it "
        + "are m/V · 24.46/M: 0.188 mg of allyl chloride (M 76.5) in 60 L at 20 °C and 660 mmHg; 24.46 against 24.45 is 0.04 %")]
    public void Figure_for_limits_by_the_rule_of_the_regulator()
    {
        double milligrams = 0.188 / 0.060;
        VapourConcentration sample = VapourConcentration.OfMass(
            MassConcentration.FromMilligramsPerCubicMeter(milligrams), MolarMass.FromGramsPerMole(76.5), Room, Pressure.FromMillimetersOfMercury(660));
        Numbers.Close(milligrams * 24.46 / 76.5, sample.ForLimits.PartsPerMillion, 5e-4);
    }

    [Fact]
    [Evidence(Basis.Cited, "the same rule in a study: the averages that are held against limits in ppm are the mass in the air of a closed room at 24.45 L/mol, at "
        + "sea level and at 84 kPa alike, warm or cold; the flammable limit is a part by volume and does feel the pressure")]
    public void A_study_compares_by_mass_wherever_the_room_is()
    {
        AirStudy low = Rooms.Study(Rooms.Of(10), Rooms.Fan(0, 1), Rooms.Coat(0, 6, 40, 0.4, 15));
        AirStudy high = Rooms.Study(
            Rooms.Of(10) with { AirPressure = Pressure.FromKilopascals(84), AirTemperature = Room }, Rooms.Fan(0, 1), Rooms.Coat(0, 6, 40, 0.4, 15));
        MolarMass molar = Solvents.ButylAcetate.MolarMass;
        foreach (AirStudy study in new[] { low, high })
        {
            SubstanceAir air = study.Substances[0];
            Numbers.Close(4 * 24.45e-3 / 116.16, air.Peak.DecimalFractions);
            VapourConcentration there = VapourConcentration.OfMass(
                air.PeakConcentration, molar, study.Room.AirTemperature ?? Temperature.FromDegreesCelsius(25), study.Room.AirPressure);
            Numbers.Close(air.Peak.DecimalFractions, there.ForLimits.DecimalFractions);
        }

        Numbers.Close(101.325 / 84, high.PeakFlammableFraction!.Value / low.PeakFlammableFraction!.Value);
    }

    [Fact]
    [Evidence(Basis.Identity, "volume to mass and back; warmed and lifted air keeps its part by volume; saturated vapour by both routes")]
    public void Round_trips()
    {
        Random random = new(3);
        for (int i = 0; i < 200; i++)
        {
            MolarMass molar = MolarMass.FromGramsPerMole(18 + (300 * random.NextDouble()));
            Temperature t = Temperature.FromDegreesCelsius(-40 + (190 * random.NextDouble()));
            Pressure p = Pressure.FromKilopascals(20 + (90 * random.NextDouble()));
            VapourConcentration first = VapourConcentration.OfVolume(Ratio.FromDecimalFractions(random.NextDouble() * 0.999), molar, t, p);
            VapourConcentration back = VapourConcentration.OfMass(first.Mass, molar, t, p);
            Numbers.Close(first.VolumeFraction.DecimalFractions, back.VolumeFraction.DecimalFractions);
            VapourConcentration moved = first.At(Room, Atmosphere).At(t, p);
            Assert.Equal(first, moved);
            Numbers.Close(
                first.Mass.KilogramsPerCubicMeter * t.Kelvins / p.Pascals,
                first.At(Room, Atmosphere).Mass.KilogramsPerCubicMeter * Room.Kelvins / Atmosphere.Pascals);
        }

        SaturatedVapour toluene = new(Solvents.Toluene, Room, Atmosphere, VapourPressures.All);
        Numbers.Close(
            toluene.Concentration!.Value.KilogramsPerCubicMeter,
            VapourConcentration.OfVolume(toluene.VolumeFraction!.Value, Solvents.Toluene.MolarMass, Room, Atmosphere).Mass.KilogramsPerCubicMeter);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; the text")]
    public void Refuses_what_cannot_be()
    {
        MolarMass molar = MolarMass.FromGramsPerMole(92.14);
        Ratio part = Ratio.FromPartsPerMillion(100);
        Numbers.Refuses("fraction", () => VapourConcentration.AtReference(Ratio.FromPercent(101), molar));
        Numbers.Refuses("fraction", () => VapourConcentration.AtReference(Ratio.FromPercent(-1), molar));
        Numbers.Refuses("molarMass", () => VapourConcentration.AtReference(part, MolarMass.Zero));
        Numbers.Refuses("temperature", () => VapourConcentration.OfVolume(part, molar, Temperature.FromDegreesCelsius(151), Atmosphere));
        Numbers.Refuses("pressure", () => VapourConcentration.OfVolume(part, molar, Room, Pressure.FromKilopascals(19)));
        Numbers.Refuses("mass", () => VapourConcentration.OfMass(MassConcentration.FromKilogramsPerCubicMeter(5), molar, Room, Atmosphere));
        Assert.Equal("100 ppm at 20 °C and 101325 Pa", VapourConcentration.OfVolume(part, molar, Room, Atmosphere).ToString());
    }
}
