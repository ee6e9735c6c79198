using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class MixtureIndexTests
{
    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.1000(d)(2)(i) and (ii), the regulation's example: B 500 of 1000 ppm, C 45 of 200, D 40 of 200: 0.500 + 0.225 + 0.200 = 0.925, within")]
    public void The_regulations_example()
    {
        MixtureIndex air = new([Reading("B", 500, 1000), Reading("C", 45, 200), Reading("D", 40, 200)]);
        Numbers.Close(0.925, air.Value!.Value);
        Assert.Equal([0.5, 0.225, 0.2], air.Readings.Select(reading => Math.Round(reading.OfLimit!.Value, 12)));
        Assert.Equal(ComparisonOutcome.Within, air.Comparison.Outcome);
        Assert.Equal("mixture index of the readings over OSHA PEL: 0.925; limit at most 1; 0.075 within", air.ToString());
        Assert.Equal(ExposureLimitKind.Twa8h, air.Kind);
        Assert.Contains(Cautions.ReadingIsAMoment, air.Cautions);
        Numbers.CanBeWritten(air.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "three of 40 % each are beyond together though each is within alone; a reading at its limit is an index of 1")]
    public void Each_within_and_together_beyond()
    {
        MixtureIndex air = new([Reading("B", 40, 100), Reading("C", 80, 200), Reading("D", 4, 10)]);
        Assert.All(air.Readings, reading => Assert.Equal(ComparisonOutcome.Within, reading.Comparison.Outcome));
        Assert.Equal(ComparisonOutcome.Beyond, air.Comparison.Outcome);
        Assert.NotNull(air.Comparison.Remedy);
        Numbers.Close(1, new MixtureIndex([Reading("B", 100, 100)]).Value!.Value);
    }

    [Fact]
    [Evidence(Basis.Identity, "a dust by mass and a vapour by volume add up as parts of their limits; 10 mg/m³ of 5 mg/m³ is 2")]
    public void Mass_and_volume_add_up()
    {
        ExposureLimit dust = Rooms.Limit("dust", 1) with { VolumeFraction = null, MassConcentration = MassConcentration.FromMilligramsPerCubicMeter(5) };
        ExposureReading reading = new(dust, MassConcentration.FromMilligramsPerCubicMeter(10));
        Numbers.Close(2, reading.OfLimit!.Value);
        MixtureIndex air = new([reading, Reading("B", 50, 100)]);
        Numbers.Close(2.5, air.Value!.Value);
        Numbers.CanBeWritten(air.Workings());
        Numbers.Close(10, reading.MassConcentration!.Value.MilligramsPerCubicMeter);
        Assert.Null(reading.VolumeFraction);
        Assert.Equal("limit", Assert.Throws<ArgumentException>(() => new ExposureReading(dust, Ratio.Zero)).ParamName);
        Assert.Equal("limit", Assert.Throws<ArgumentException>(() => new ExposureReading(Rooms.Limit("B", 1), MassConcentration.Zero)).ParamName);
    }

    [Fact]
    [Evidence(Basis.Contract, "not known is not a pass: without a limit the index cannot be judged, unless the others alone pass 1")]
    public void A_missing_limit_cannot_be_judged()
    {
        ExposureReading unknown = ExposureReading.WithoutLimit("x", "x", Ratio.FromPartsPerMillion(1));
        MixtureIndex air = new([Reading("B", 50, 100), unknown]);
        Assert.Null(air.Value);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, air.Comparison.Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unknown.Comparison.Outcome);
        Assert.Contains(Cautions.LimitUnknown, air.Cautions);
        Numbers.CanBeWritten(air.Workings());
        Assert.Equal(ComparisonOutcome.Beyond, new MixtureIndex([Reading("B", 150, 100), unknown]).Comparison.Outcome);
        Assert.Null(new MixtureIndex([unknown]).Kind);
        Assert.Empty(new MixtureIndex([unknown]).Workings().Steps);
    }

    [Fact]
    [Evidence(Basis.Identity, "the room study and the readings are one rule: eight-hour averages of a study, read as measured, give its index")]
    public void A_study_read_as_measured_gives_its_own_index()
    {
        AirStudy study = new(
            Rooms.Bathroom, Rooms.Fan(150, 3),
            [Rooms.Coat(0, 6, 164, 0.4, 15, Rooms.Share(Solvents.ButylAcetate, 60), Rooms.Share(Solvents.Acetone, 40))],
            TimeSpan.FromHours(8), LimitSets.Osha);
        MixtureIndex read = new([.. study.Exposure
            .Where(one => one.Limit is { Authority: "OSHA PEL", Kind: ExposureLimitKind.Twa8h })
            .Select(one => new ExposureReading(one.Limit!, Ratio.FromDecimalFractions(one.Comparison.Value!.Value.Si)))]);
        Numbers.Close(study.StrictestIndex!.Value, read.Value!.Value, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_does_not_add_up()
    {
        Numbers.Refuses("measured", () => _ = Reading("B", -1, 100));
        Refuses("twice", Reading("B", 1, 100), Reading("B", 2, 100));
        Refuses("different kinds", Reading("B", 1, 100), Reading("C", 1, 100, ExposureLimitKind.Stel15min));
        Refuses("not added up", Reading("B", 1, 100, ExposureLimitKind.Idlh));
        Refuses("not added up", Reading("B", 1, 100, ExposureLimitKind.BriefPeak));
        Assert.Throws<ArgumentException>(() => new MixtureIndex([]));

        static void Refuses(string words, params ExposureReading[] readings) =>
            Assert.Contains(words, Assert.Throws<ArgumentException>(() => new MixtureIndex(readings)).Message, StringComparison.Ordinal);
    }

    private static ExposureReading Reading(string name, double ppm, double limit, ExposureLimitKind kind = ExposureLimitKind.Twa8h) =>
        new(Rooms.Limit(name, limit, kind: kind), Ratio.FromPartsPerMillion(ppm));
}
