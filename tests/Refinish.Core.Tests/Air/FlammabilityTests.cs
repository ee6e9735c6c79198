using System;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

/// <summary>Vapours that do not burn, liquids that are not volatile, and water in the air of a room.</summary>
public class FlammabilityTests
{
    private static readonly Source Sheet = Source.Invented("a safety data sheet, made up for the test");

    private static Solvent Inert(double grams = 100) => Rooms.Solvent("inert", grams) with { Flammability = Flammability.NonBurning(Sheet) };

    private static Solvent Coalescent => Rooms.Solvent("coalescent", 216, 0.6) with
    {
        Volatility = Volatility.NotVolatile(Temperature.FromDegreesCelsius(254), Sheet),
    };

    [Fact]
    [Evidence(Basis.Cited, "NIOSH Pocket Guide, toluene (UEL 7.1 %, LEL 1.1 %, 40 °F) and isopropyl alcohol (12.7 %, 2.0 %, 53 °F); OSHA chemical data, "
        + "ethylbenzene (6.7 %, 0.8 %, 55 °F); 62 FR 1494, IV, methylene chloride (12 and 19 %); NTP chemical repository, acetone (12.8 %, −18 °C)")]
    public void Limits_and_flash_points_are_the_printed_ones()
    {
        foreach ((Solvent solvent, double lower, double upper, double? fahrenheit) in new (Solvent, double, double, double?)[]
        {
            (Solvents.Toluene, 1.1, 7.1, 40), (Solvents.Isopropanol, 2.0, 12.7, 53), (Solvents.Ethylbenzene, 0.8, 6.7, 55),
            (Solvents.MethyleneChloride, 12, 19, null), (Solvents.Acetone, 2.5, 12.8, 0),
        })
        {
            Numbers.Close(lower, solvent.Flammability.Lower!.Value.Percent);
            Numbers.Close(upper, solvent.Flammability.Upper!.Value.Percent);
            Assert.Equal(fahrenheit is null, solvent.Flammability.FlashPoint is null);
            if (solvent.Flammability.FlashPoint is Temperature flash)
            {
                Numbers.Near(fahrenheit!.Value, flash.DegreesFahrenheit, 0.5);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "at its flash point a liquid's saturated vapour is about at its lower flammable limit: the vapour pressures of the "
        + "handbooks find the printed flash points of eight solvents within 7 K (5 K for the mean), by another route than the printed figure")]
    public void Flash_points_agree_with_limit_and_vapour_pressure()
    {
        double worst = 0;
        double sum = 0;
        int compared = 0;
        foreach (Solvent solvent in Solvents.All.Where(one => one.Flammability is { Lower: not null, FlashPoint: not null }))
        {
            Pressure atLimit = Pressure.FromPascals(101325 * solvent.Flammability.Lower!.Value.DecimalFractions);
            foreach (VapourPressureFit fit in VapourPressures.For(solvent.CasNumber))
            {
                if (fit.TryFindTemperature(atLimit, out Temperature found))
                {
                    double off = Math.Abs(found.Kelvins - solvent.Flammability.FlashPoint!.Value.Kelvins);
                    worst = Math.Max(worst, off);
                    sum += off;
                    compared++;
                    break;
                }
            }
        }

        Assert.True(compared >= 8, FormattableString.Invariant($"{compared}"));
        Assert.True(worst < 7 && sum / compared < 5, FormattableString.Invariant($"worst {worst}, mean {sum / compared}"));
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; the three forms and their texts")]
    public void Three_forms_of_each()
    {
        Assert.Equal("1.1 % to 7.1 %", Solvents.Toluene.Flammability.ToString());
        Assert.Equal("from 2 %", Flammability.Between(Ratio.FromPercent(2)).ToString());
        Assert.Equal("does not burn", Inert().Flammability.ToString());
        Assert.Equal("not known", Flammability.Unknown.ToString());
        Assert.True(Inert().Flammability is { IsKnown: true, IsNonBurning: true, Lower: null, Upper: null });
        Assert.False(Flammability.Unknown.IsKnown);
        Assert.False(Flammability.Unknown.IsNonBurning);
        Assert.Equal("not volatile, boils at 254 °C", Coalescent.Volatility.ToString());
        Assert.Equal("not known", Volatility.Unknown.ToString());
        Assert.Equal("900 Pa at 20 °C", Volatility.At20Celsius(Pressure.FromPascals(900)).ToString());
        Assert.True(Volatility.Unknown.IsVolatile);
        Numbers.Refuses("upperFlammableLimit", () => Flammability.Between(Ratio.FromPercent(2), Ratio.FromPercent(2)));
        Numbers.Refuses("upperFlammableLimit", () => Flammability.Between(Ratio.FromPercent(2), Ratio.FromPercent(101)));
        Numbers.Refuses("flashPoint", () => Flammability.Between(Ratio.FromPercent(2), null, Temperature.FromDegreesCelsius(301)));
        Assert.Throws<ArgumentNullException>(() => Flammability.NonBurning(null!));
        Assert.Throws<ArgumentNullException>(() => Volatility.NotVolatile(Temperature.FromDegreesCelsius(300), null!));
        Assert.Throws<ArgumentNullException>(() => _ = Solvents.Toluene with { Flammability = null! });
        Assert.Throws<ArgumentNullException>(() => _ = Solvents.Toluene with { Volatility = null! });
    }

    [Fact]
    [Evidence(Basis.Cited, "Directive 2004/42/EC, Article 2(5): an organic compound that boils at 250 °C or below is volatile, at 101.3 kPa")]
    public void What_boils_at_250_degrees_is_volatile()
    {
        Numbers.Refuses("boilingPoint", () => Volatility.NotVolatile(Temperature.FromDegreesCelsius(250), Sheet));
        Numbers.Refuses("boilingPoint", () => Volatility.NotVolatile(Temperature.FromDegreesCelsius(205), Sheet));
        Assert.False(Volatility.NotVolatile(Temperature.FromDegreesCelsius(250.1), Sheet).IsVolatile);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand in a closed room of 10 m³: of 40 g, 10 g burn, M 100 g/mol, limit 2 %: 10/100·24.45e-3/10/0.02 = 1.2225 % of it; "
        + "the 30 g that do not burn add nothing, and their 30/100·24.45e-3/10 = 733.5 ppm stay a question of breathing")]
    public void Only_what_burns_is_compared()
    {
        AirStudy study = Rooms.Study(
            Rooms.Of(10), Rooms.Fan(0, 1), Rooms.Coat(0, 6, 40, 0.4, 15, Rooms.Share(Rooms.Solvent("x", 100, 2), 25), Rooms.Share(Inert(), 75)));
        Numbers.Close(0.012225, study.PeakFlammableFraction!.Value.DecimalFractions);
        Numbers.Close(733.5, study.Substances[1].Peak.PartsPerMillion);
        Assert.Equal(ComparisonOutcome.Within, study.FlammableLimit.Outcome);
        Assert.Contains("of the substances that burn", study.FlammableLimit.Subject, StringComparison.Ordinal);
        Assert.Contains(study.Exposure, one => one.Solvent.Name == "inert" && one.Comparison.Outcome == ComparisonOutcome.CannotBeJudged);
        Assert.Contains(Cautions.NonBurningVapour, study.Cautions);
        Assert.Contains(Cautions.IgnitionSources, study.Cautions);
        Numbers.CanBeWritten(study.Workings());
        NearFieldStudy near = new(study, NearField.Hemisphere(Length.FromMeters(0.8), Speed.FromMetersPerSecond(0.1)));
        Assert.Contains("of the substances that burn", near.FlammableLimit.Subject, StringComparison.Ordinal);
        Numbers.CanBeWritten(near.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "a vapour that does not burn needs no air for its flammable limit and clears at once of it; the index over a limit of "
        + "breathing is the same as that of one that burns")]
    public void A_room_full_of_what_does_not_burn()
    {
        LimitSet limits = Rooms.Set(Rooms.Limit("inert", 50));
        AirStudy inert = new(Rooms.Bathroom, Rooms.Fan(100, 2), [Rooms.Coat(0, 6, 164, 0.4, 15, Rooms.Share(Inert(), 100))], TimeSpan.FromHours(8), limits);
        AirStudy burning = new(
            Rooms.Bathroom, Rooms.Fan(100, 2),
            [Rooms.Coat(0, 6, 164, 0.4, 15, Rooms.Share(Inert() with { Flammability = Flammability.Between(Ratio.FromPercent(1)) }, 100))],
            TimeSpan.FromHours(8), limits);
        Assert.Equal(0, inert.PeakFlammableFraction!.Value.DecimalFractions);
        Assert.Equal(ComparisonOutcome.Within, inert.FlammableLimit.Outcome);
        Assert.Equal(0, inert.AirflowForFlammableLimit!.Value.CubicMetersPerSecond);
        Assert.Equal(0, inert.SteadyAirflowForFlammableLimit!.Value.CubicMetersPerSecond);
        Assert.Equal(TimeSpan.Zero, inert.TimeToClear(Ratio.FromPercent(10)));
        Assert.True(burning.TimeToClear(Ratio.FromPercent(10)) > TimeSpan.Zero);
        Assert.Equal(burning.StrictestIndex, inert.StrictestIndex);
        Assert.Equal(burning.TimeToReEntry(), inert.TimeToReEntry());
        Assert.DoesNotContain(Cautions.LimitUnknown, inert.Cautions);
        Numbers.CanBeWritten(inert.Workings());

        // Nothing known stays what it was.
        AirStudy unknown = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 10, 0.4, 15, Rooms.Share(Rooms.Solvent("x", 100, null), 100)));
        Assert.Null(unknown.PeakFlammableFraction);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unknown.FlammableLimit.Outcome);
    }

    [Fact]
    [Evidence(Basis.Identity, "what is not volatile is put on and stays: nothing of it in the air or gone at any time, and the rest as if it were alone")]
    public void What_is_not_volatile_stays_in_the_film()
    {
        AirStudy study = Rooms.Study(
            Rooms.Bathroom, Rooms.Fan(100, 2),
            Rooms.Coat(0, 6, 200, 0.4, 15, Rooms.Share(Solvents.ButylAcetate, 80), Rooms.Share(Coalescent, 20)));
        AirStudy alone = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 160, 0.4, 15));
        Assert.Equal(Coalescent, Assert.Single(study.NotGivenOff));
        Assert.Equal(Solvents.ButylAcetate, Assert.Single(study.Substances).Solvent);
        Numbers.Close(alone.Substances[0].Peak.DecimalFractions, study.Substances[0].Peak.DecimalFractions);
        Numbers.Close(alone.PeakFlammableFraction!.Value.DecimalFractions, study.PeakFlammableFraction!.Value.DecimalFractions);
        foreach (double minutes in new[] { 0.0, 3, 6, 60, 6000 })
        {
            MassBalance balance = study.BalanceAt(Coalescent, TimeSpan.FromMinutes(minutes));
            Numbers.Near(40 * Math.Min(minutes / 6, 1), balance.InFilm.Grams, 1e-9);
            Assert.Equal(0, balance.InAir.Grams);
            Assert.Equal(0, balance.Removed.Grams);
        }

        Assert.Contains(Cautions.StaysInFilm, study.Cautions);
        Assert.Throws<ArgumentException>(() => study.ConcentrationAt(Coalescent, TimeSpan.Zero));
        Numbers.CanBeWritten(study.Workings());

        // A coat of nothing else gives off nothing.
        AirStudy none = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 200, 0.4, 15, Rooms.Share(Coalescent, 100)));
        Assert.Empty(none.Substances);
        Assert.Empty(none.Exposure);
        Assert.Equal(0, none.PeakFlammableFraction!.Value.DecimalFractions);
        Numbers.CanBeWritten(none.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "sheets of one substance that differ: it does not burn, or is not volatile, only where all say so")]
    public void Sheets_that_differ_are_taken_with_care()
    {
        Solvent burns = Inert() with { Flammability = Flammability.Between(Ratio.FromPercent(3)) };
        Solvent silent = Inert() with { Flammability = Flammability.Unknown };
        Assert.Equal(burns.Flammability, Merged(Inert(), burns).Flammability);
        Assert.Equal(Flammability.Unknown, Merged(Inert(), silent).Flammability);
        Assert.Equal(burns.Flammability, Merged(silent, burns).Flammability);
        Solvent stays = Inert() with { Volatility = Volatility.NotVolatile(Temperature.FromDegreesCelsius(300), Sheet) };
        Assert.True(Merged(stays, Inert()).Volatility.IsVolatile);

        static Solvent Merged(Solvent first, Solvent second) => Assert.Single(Rooms.Study(
            Rooms.Bathroom, Rooms.Fan(0, 1), Rooms.Coat(0, 6, 10, 0.4, 15, Rooms.Share(first, 100)), Rooms.Coat(9, 6, 10, 0.4, 15, Rooms.Share(second, 100))).Merged);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand in a closed room of 10 m³: 50 g of water are 5 g/m³ of air; it enters neither the flammable limit nor an index of "
        + "breathing, and no limit is asked for it")]
    public void Water_is_given_off_and_is_no_solvent()
    {
        SolventShare[] shares = [Rooms.Share(Solvents.Water, 50), Rooms.Share(Solvents.Isopropanol, 50)];
        AirStudy study = new(
            Rooms.Of(10) with { AirTemperature = Temperature.FromDegreesCelsius(20) }, Rooms.Fan(0, 1),
            [Rooms.Coat(0, 6, 100, 0.4, 15, shares)], TimeSpan.FromHours(8));
        AirStudy dry = Rooms.Study(Rooms.Of(10), Rooms.Fan(0, 1), Rooms.Coat(0, 6, 50, 0.4, 15, Rooms.Share(Solvents.Isopropanol, 100)));
        Numbers.Close(5, study.Substances[0].PeakConcentration.GramsPerCubicMeter);
        Numbers.Close(dry.PeakFlammableFraction!.Value.DecimalFractions, study.PeakFlammableFraction!.Value.DecimalFractions);
        Numbers.Close(dry.StrictestIndex!.Value, study.StrictestIndex!.Value);
        Assert.DoesNotContain(study.Exposure, one => one.Solvent.IsWater);
        Assert.DoesNotContain(Cautions.LimitUnknown, study.Cautions);
        Assert.DoesNotContain(Cautions.NonBurningVapour, study.Cautions);
        Assert.All(study.Saturation, one => Assert.Equal(ComparisonOutcome.Within, one.Outcome));
        Numbers.CanBeWritten(study.Workings());

        // 5 g/m³ are 5e-3/0.018015·8.314462618·293.15 = 676.5 Pa; 50 % of 2339.2 Pa are 1169.6: 78.92 %. ASHRAE's saturation at 20 °C, 4 digits.
        LimitComparison humid = study.Humidity(new MoistAir(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(50)))!;
        Numbers.Close(0.7892, humid.Value!.Value.Si, 2e-4);
        Assert.Equal(ComparisonOutcome.Within, humid.Outcome);
        Assert.Equal(
            ComparisonOutcome.Beyond, study.Humidity(new MoistAir(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(80)))!.Outcome);
        Assert.Null(dry.Humidity(new MoistAir(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(50))));
        PersonExposure person = new("sprayer", [new RoomStay(study, TimeSpan.Zero, TimeSpan.FromHours(1))], LimitSets.Default);
        Assert.DoesNotContain(person.Exposure, one => one.Solvent.IsWater);
        Assert.NotNull(person.StrictestLimit.Value);
        Numbers.CanBeWritten(person.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "the fraction of the flammable limit at 35 °C is 308.15/298.15 times that at 25 °C; a colder room is taken at 25 °C")]
    public void A_warm_room_is_taken_warm()
    {
        double At(double? celsius) => Rooms.Study(
            Rooms.Bathroom with { AirTemperature = celsius is double t ? Temperature.FromDegreesCelsius(t) : null }, Rooms.Fan(50, 2),
            Rooms.Coat(0, 6, 100, 0.4, 15)).PeakFlammableFraction!.Value.DecimalFractions;
        Numbers.Close(308.15 / 298.15, At(35) / At(null));
        Assert.Equal(At(null), At(25));
        Assert.Equal(At(null), At(10));
    }
}
