using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

/// <summary>Inputs within their ranges that a study has to bear: sheets that differ, very short sprays, tiny masses and limits, the cold.</summary>
public class AirLegalInputsTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand in a closed room of 10 m³: 10 g and 20 g at the lowest molar mass of 100 g/mol and the lowest limit of 1.5 % are 30/100 · 24.45e-3/10/0.015 of it; 30/100 · 24.45e-3/10 by volume")]
    public void Sheets_that_differ_give_the_careful_figures()
    {
        Solvent first = Rooms.Solvent("x", 104, 2) with { Volatility = Volatility.At20Celsius(Pressure.FromPascals(900)) };
        Solvent second = first with { Name = "x, technical", MolarMass = MolarMass.FromGramsPerMole(100), Flammability = Flammability.Unknown, Volatility = Volatility.Unknown, Source = Source.Invented("another sheet") };
        Solvent third = first with { Density = Density.FromGramsPerMilliliter(0.85), Flammability = Flammability.Between(Ratio.FromPercent(1.5)), Volatility = Volatility.At20Celsius(Pressure.FromPascals(1200)) };
        AirStudy study = Rooms.Study(
            Rooms.Of(10),
            Rooms.Fan(0, 1),
            Rooms.Coat(0, 6, 10, 0.4, 15, Rooms.Share(first, 100)),
            Rooms.Coat(9, 6, 15, 0.4, 15, Rooms.Share(second, 100)),
            Rooms.Coat(20, 6, 5, 0.4, 15, Rooms.Share(third, 100)));
        Solvent merged = Assert.Single(study.Merged);
        Assert.Equal("x", merged.Name);
        Assert.Equal(900, merged.Density.KilogramsPerCubicMeter);
        Assert.Equal(1200, merged.Volatility.VapourPressure!.Value.Pascals);
        Assert.Equal(SourceKind.Derived, merged.Source.Kind);
        Assert.Equal(merged, Assert.Single(study.Substances).Solvent);
        Numbers.Close(30 / 100.0 * 24.45e-3 / 10, study.Substances[0].Peak.DecimalFractions);
        Numbers.Close(30 / 100.0 * 24.45e-3 / 10 / 0.015, study.PeakFlammableFraction!.Value.DecimalFractions);

        // Looked up by registry number, whichever description is handed in.
        Assert.Equal(study.ConcentrationAt(first, TimeSpan.FromHours(1)), study.ConcentrationAt(third, TimeSpan.FromHours(1)));
        Workings workings = study.Workings();
        Assert.Contains(workings.Parts, part => part.Title == "x, of differing descriptions" && part.Steps.Count == 2);
        Numbers.CanBeWritten(workings);
        Numbers.CanBeWritten(new NearFieldStudy(study, NearField.Hemisphere(Length.FromMeters(0.8), Speed.FromMetersPerSecond(0.1))).Workings());

        // The order of the sheets matters for the name only.
        AirStudy turned = Rooms.Study(Rooms.Of(10), Rooms.Fan(0, 1), [.. study.Emissions.Reverse()]);
        Assert.Equal("x", Assert.Single(turned.Merged).Name);
        Numbers.Close(study.PeakFlammableFraction.Value.DecimalFractions, turned.PeakFlammableFraction!.Value.DecimalFractions, 1e-14);
    }

    [Fact]
    [Evidence(Basis.Contract, "sheets that agree, whether or not they are the same object, are nothing to tell about")]
    public void Sheets_that_agree_are_not_merged()
    {
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 10, 0.4, 15, Rooms.Share(Rooms.Solvent("x", 100), 100)), Rooms.Coat(9, 6, 15, 0.4, 15, Rooms.Share(Rooms.Solvent("x", 100), 100)));
        Assert.Empty(study.Merged);
    }

    [Fact]
    [Evidence(Basis.Identity, "a person's day through two rooms whose sheets differ takes the careful figures of both")]
    public void A_persons_rooms_share_the_careful_figures()
    {
        Solvent light = Rooms.Solvent("x", 90);
        Solvent heavy = Rooms.Solvent("x", 100);
        AirStudy one = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 10, 0.4, 15, Rooms.Share(heavy, 100)));
        AirStudy two = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 10, 0.4, 15, Rooms.Share(light, 100)));
        AirStudy lightOne = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 10, 0.4, 15, Rooms.Share(light, 100)));
        RoomStay later = new(two, TimeSpan.FromHours(1), TimeSpan.FromHours(2));
        LimitSet limits = Rooms.Set(Rooms.Limit("x", 50));
        PersonExposure person = new("helper", [new RoomStay(one, TimeSpan.Zero, TimeSpan.FromHours(1)), later], limits);
        PersonExposure careful = new("helper", [new RoomStay(lightOne, TimeSpan.Zero, TimeSpan.FromHours(1)), later], limits);
        Numbers.Close(careful.StrictestLimit.Value!.Value.Si, person.StrictestLimit.Value!.Value.Si, 1e-14);
        Numbers.CanBeWritten(person.Workings());
    }

    [Theory]
    [InlineData(1e-7)]
    [InlineData(0.001)]
    [InlineData(0.5)]
    [Evidence(Basis.Identity, "a spray far shorter than a second is a puff: with all of it flashing, mass over volume at its end, and then e^(−λt)")]
    public void A_spray_under_a_second_is_a_puff(double seconds)
    {
        TimeSpan spray = TimeSpan.FromTicks((long)(seconds * 1e7));
        SolventEmission puff = Rooms.Coat(5, 1, 100, 1, 15) with { SprayTime = spray };
        WipeEmission wipe = Rooms.Wipe(5, 1, 100, 2) with { WipeTime = spray };
        AirStudy study = Rooms.Study(Rooms.Of(10), Rooms.Fan(200, 2), puff);
        double changes = study.AirChangesPerHour / 3600;

        // Five minutes and the spray are added as seconds: the sum keeps the spray to within 1e-13 s, whichever way a host rounds.
        Numbers.Close(10, study.Substances[0].PeakConcentration.GramsPerCubicMeter, (2 * changes * seconds) + (1e-13 / seconds) + 1e-9);
        Numbers.Close(10 * Math.Exp(-changes * 600), study.ConcentrationAt(puff.Solvents[0].Solvent, TimeSpan.FromMinutes(15)).GramsPerCubicMeter,
            (2 * changes * seconds) + (1e-13 / seconds) + 1e-9);
        AirStudy both = Rooms.Study(Rooms.Of(10), Rooms.Fan(200, 2), puff, wipe, Rooms.Coat(7, 6, 100, 0.4, 15));
        Everything(both);
        Numbers.Refuses("SprayTime", () => _ = puff with { SprayTime = TimeSpan.Zero });
        Numbers.Refuses("WipeTime", () => _ = wipe with { WipeTime = TimeSpan.Zero });
    }

    [Theory]
    [InlineData(1)]
    [InlineData(1e-6)]
    [InlineData(1e-100)]
    [InlineData(1e-200)]
    [InlineData(1e-300)]
    [Evidence(Basis.Identity, "the room is linear: concentrations of tiny masses are those of usual ones in proportion, peaks and all, for 30 random studies of sprays, tails and wipes")]
    public void Tiny_masses_scale(double scale)
    {
        Random random = new(11);
        for (int i = 0; i < 30; i++)
        {
            Emission[] usual = Rooms.Mixed(random);
            Emission[] tiny = [.. usual.Select(emission => emission with { VolatileMass = Mass.FromKilograms(emission.VolatileMass.Kilograms * scale) })];
            AirStudy large = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 2), usual);
            AirStudy small = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 2), tiny);
            for (int j = 0; j < large.Substances.Count; j++)
            {
                SubstanceAir a = large.Substances[j];
                SubstanceAir b = small.Substances[j];
                Numbers.Close(a.PeakConcentration.KilogramsPerCubicMeter * scale, b.PeakConcentration.KilogramsPerCubicMeter, 1e-9);
                Numbers.Close(a.FifteenMinuteConcentration.KilogramsPerCubicMeter * scale, b.FifteenMinuteConcentration.KilogramsPerCubicMeter, 1e-9);
                Numbers.Close(a.EightHourConcentration.KilogramsPerCubicMeter * scale, b.EightHourConcentration.KilogramsPerCubicMeter, 1e-9);
            }

            Numbers.Close(large.PeakFlammableFraction!.Value.DecimalFractions * scale, small.PeakFlammableFraction!.Value.DecimalFractions, 1e-9);
            Everything(small);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "the least mass that a number can hold has lost its digits, but is borne")]
    public void The_least_mass_is_borne()
    {
        Emission[] usual = Rooms.Mixed(new Random(3));
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 2), [.. usual.Select(emission => emission with { VolatileMass = Mass.FromKilograms(double.Epsilon) })]);
        Assert.Equal(ComparisonOutcome.Within, study.FlammableLimit.Outcome);
        Assert.Equal(TimeSpan.Zero, study.TimeToClear(Ratio.FromPercent(10)));
        Assert.All(study.Exposure, exposure => Assert.NotEqual(ComparisonOutcome.Beyond, exposure.Comparison.Outcome));
        Assert.NotEmpty(study.Cautions);
        Numbers.CanBeWritten(study.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a part in a billion is the least flammable limit and is borne; less is refused")]
    public void The_least_flammable_limit_is_borne()
    {
        Solvent edge = Rooms.Solvent("edge", 100) with { Flammability = Flammability.Between(Ratio.FromPartsPerBillion(1)) };
        AirStudy study = new(Rooms.Bathroom, Rooms.Fan(100, 2), [Rooms.Coat(0, 6, 100, 0.4, 15, Rooms.Share(edge, 100))], TimeSpan.FromHours(8), Rooms.Set(Rooms.Limit("edge", 1e-9)));
        Assert.Equal(ComparisonOutcome.Beyond, study.FlammableLimit.Outcome);
        Everything(study);
        Numbers.Refuses("lowerFlammableLimit", () => Flammability.Between(Ratio.FromDecimalFractions(1e-320)));
        Numbers.Refuses("lowerFlammableLimit", () => Flammability.Between(Ratio.FromDecimalFractions(9e-10)));
        Numbers.Refuses("VolumeFraction", () => _ = Rooms.Limit("edge", 1e-300));
        Numbers.Refuses("MassConcentration", () => _ = Rooms.Limit("edge", 1) with { MassConcentration = MassConcentration.FromKilogramsPerCubicMeter(1e-320) });
    }

    [Theory]
    [InlineData(-40)]
    [InlineData(-25)]
    [InlineData(60)]
    [Evidence(Basis.Contract, "air from −40 to 60 °C is taken by the room, its saturated vapour and the limits of spraying alike")]
    public void Cold_air_is_taken_everywhere(double celsius)
    {
        MoistAir air = new(Temperature.FromDegreesCelsius(celsius), Ratio.FromPercent(50));
        Room room = Rooms.Bathroom with { AirTemperature = air.DryBulb, AirPressure = air.Pressure };
        AirStudy study = Rooms.Study(room, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 100, 0.4, 15));
        Assert.Single(study.Saturation);
        Everything(study);
        SprayLimits limits = new()
        {
            MinimumTemperature = air.DryBulb, MaximumTemperature = Temperature.FromDegreesCelsius(60), MaximumRelativeHumidity = Ratio.FromPercent(80), Source = Source.Invented("test"),
        };
        Assert.Equal(air.DryBulb, new SprayWindow(air, air.DryBulb, limits).Surface);
        Everything(Rooms.Study(room with { AirPressure = Pressure.FromKilopascals(20) }, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 100, 0.4, 15)));
        Numbers.Refuses("AirPressure", () => _ = room with { AirPressure = Pressure.FromKilopascals(19.9) });
        Numbers.Refuses("AirTemperature", () => _ = room with { AirTemperature = Temperature.FromDegreesCelsius(-41) });
    }

    [Fact]
    [Evidence(Basis.Contract, "a transfer efficiency of 100 % leaves no mist, and it is said; supplied air is named all the same")]
    public void All_that_lands_leaves_no_mist()
    {
        IsocyanateScreen screen = new()
        {
            Room = Rooms.Bathroom,
            Exhaust = Rooms.Fan(150, 3),
            CoatingMass = Mass.FromGrams(400),
            SprayTime = TimeSpan.FromMilliseconds(400),
            IsocyanateFraction = Ratio.FromPercent(12),
            TransferEfficiency = Ratio.FromPercent(100),
            AirborneFraction = Ratio.FromPercent(10),
            Limit = MassConcentration.FromMilligramsPerCubicMeter(0.5),
            LimitSource = Source.Invented("test"),
        };
        Assert.Equal(0, screen.AirborneMass.Grams);
        Assert.Equal(0, screen.HazardRatio);
        Assert.Contains("none, since all of it is said to land", screen.ToString(), StringComparison.Ordinal);
        Assert.Contains(Cautions.SuppliedAir, screen.Cautions);
        Numbers.CanBeWritten(screen.Workings());
        Assert.DoesNotContain("none", (screen with { TransferEfficiency = Ratio.FromPercent(99) }).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "the classes of 29 CFR 1910.134 Table 1 that reach a ratio, smallest factor first; all at 0, none above 10 000")]
    public void Classes_that_reach_a_ratio_come_smallest_first()
    {
        Assert.Equal(RespiratorClass.All.Count, RespiratorClass.AtLeast(0).Count);
        IReadOnlyList<RespiratorClass> some = RespiratorClass.AtLeast(25.5);
        Assert.Equal(50, some[0].AssignedProtectionFactor);
        Assert.Equal(some.Select(kind => kind.AssignedProtectionFactor).Order(), some.Select(kind => kind.AssignedProtectionFactor));
        Assert.Equal(RespiratorClass.All.Count(kind => kind.AssignedProtectionFactor >= 50), some.Count);
        Assert.All(RespiratorClass.AtLeast(10000), kind => Assert.Equal(10000, kind.AssignedProtectionFactor));
        Assert.Equal(2, RespiratorClass.AtLeast(10000).Count);
        Assert.Empty(RespiratorClass.AtLeast(10000.1));
        Numbers.Refuses("factor", () => RespiratorClass.AtLeast(double.NaN));
        Numbers.Refuses("factor", () => RespiratorClass.AtLeast(-1));
    }

    [Fact]
    [Evidence(Basis.Contract, "the federal list holds every row of the United States and no other; Oregon and the European Union stand in the whole list only")]
    public void The_federal_limits_are_a_list_of_their_own()
    {
        Assert.All(PublishedLimits.UnitedStates, limit => Assert.Equal("United States", limit.Jurisdiction));
        Assert.Equal(["EPA ECEL", "EPA STEL", "NIOSH IDLH", "NIOSH REL", "OSHA PEL"], PublishedLimits.UnitedStates.Select(limit => limit.Authority).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(PublishedLimits.All.Count(limit => limit.Jurisdiction == "United States"), PublishedLimits.UnitedStates.Count);
        Assert.True(PublishedLimits.UnitedStates.Count < PublishedLimits.All.Count);
    }

    // Every result can be asked for, and the derivation holds.
    private static void Everything(AirStudy study)
    {
        Assert.NotEmpty(study.Exposure);
        Assert.NotEmpty(study.Cautions);
        Assert.NotEmpty(study.StrictestLimit.Sentence(DisplayUnits.Si));
        Assert.NotEmpty(study.ShortTermLimit.Sentence(DisplayUnits.Si));
        Assert.NotNull(study.AirflowForFlammableLimit);
        Assert.NotNull(study.TimeToClear(Ratio.FromPercent(10)));
        Assert.NotEqual(TimeSpan.Zero, study.LastSprayEnds);
        Numbers.CanBeWritten(study.Workings());
    }
}
