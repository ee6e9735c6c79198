using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class SubstancesTests
{
    [Fact]
    [Evidence(Basis.Contract, "the usual solvents and hazards of the trade are there, each once, and an unknown one is null, not harmless; water has no limit")]
    public void The_usual_ones_are_there()
    {
        string[] expected = ["67-64-1", "78-93-3", "123-86-4", "141-78-6", "1330-20-7", "108-88-3", "108-65-6", "75-09-2", "822-06-0", "28182-81-2", "7664-39-3", "14808-60-7", "7439-92-1"];
        Assert.All(expected, cas => Assert.NotNull(Substances.Find(cas)));
        Assert.Equal(Substances.All.Count, Substances.All.Select(substance => substance.CasNumber).Distinct().Count());
        Assert.Null(Substances.Find("no such number"));
        foreach (Substance substance in Substances.All.Where(substance => substance.CasNumber is not ("25550-14-5" or "7732-18-5")))
        {
            Assert.NotEmpty(substance.Limits);
            Assert.Equal(PublishedLimits.For(substance.CasNumber), substance.Limits);
        }

        Assert.Contains(Substances.Find("75-09-2")!.Law, fact => fact.Date.StartsWith("8 May 2024", StringComparison.Ordinal));
        Assert.NotEmpty(Substances.Find("822-06-0")!.Law);
    }

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.1000 Table Z-2, toluene: 200 ppm, ceiling 300 ppm, 500 ppm for one period of 10 minutes; HDI ceiling over 10 minutes, HF over 15 (NIOSH)")]
    public void Brief_peaks_and_periods()
    {
        ExposureLimit peak = PublishedLimits.For("108-88-3").Single(limit => limit.Kind == ExposureLimitKind.BriefPeak);
        Assert.Equal(500, peak.VolumeFraction!.Value.PartsPerMillion, 9);
        Assert.Equal(TimeSpan.FromMinutes(10), peak.Period);
        Assert.Equal(TimeSpan.FromMinutes(10), PublishedLimits.For("822-06-0").Single(limit => limit.Kind == ExposureLimitKind.Ceiling).Period);
        Assert.Equal(TimeSpan.FromMinutes(15), PublishedLimits.For("7664-39-3").Single(limit => limit.Kind == ExposureLimitKind.Ceiling).Period);
        Numbers.Refuses("Period", () => _ = peak with { Period = TimeSpan.Zero });
    }

    [Fact]
    [Evidence(Basis.Identity, "a blend's shares add up to one, and as half of a larger one to a half; a study with it says that a part cannot be judged")]
    public void Naphtha_is_a_flagged_blend()
    {
        Numbers.Close(1, Solvents.AromaticNaphtha.Sum(share => share.MassFraction.DecimalFractions));
        Numbers.Close(0.5, Solvents.PartOf(Solvents.AromaticNaphtha, Ratio.FromPercent(50)).Sum(share => share.MassFraction.DecimalFractions));
        Assert.Equal(SourceKind.FromMemory, Solvents.AromaticNaphthaSource.Kind);
        SolventShare[] shares = [.. Solvents.PartOf(Solvents.AromaticNaphtha, Ratio.FromPercent(40)), Rooms.Share(Solvents.ButylAcetate, 60)];
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 2), Rooms.Coat(0, 6, 60, 0.4, 15, shares));
        Assert.Contains(study.Exposure, exposure => exposure.Solvent == Solvents.Ethyltoluene && exposure.Limit is null && exposure.Comparison.Outcome == ComparisonOutcome.CannotBeJudged);
        Assert.Null(study.StrictestIndex);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, study.StrictestLimit.Outcome);
        Numbers.Refuses("part", () => Solvents.PartOf(Solvents.AromaticNaphtha, Ratio.Zero));
    }

    [Fact]
    [Evidence(Basis.Contract, "each comparison carries its limit, so that a list groups by authority and kind; the subject is short")]
    public void Comparisons_carry_their_limit()
    {
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 2), Rooms.Coat(0, 6, 60, 0.4, 15, Rooms.Share(Solvents.Xylene, 50), Rooms.Share(Solvents.Toluene, 50)));
        Assert.Equal(["NIOSH IDLH", "NIOSH REL", "OSHA PEL"], study.Exposure.Select(exposure => exposure.Limit!.Authority).Distinct().OrderBy(name => name, StringComparer.Ordinal));
        ExposureComparison brief = study.Exposure.Single(exposure => exposure.Solvent == Solvents.Xylene && exposure.Limit!.Kind == ExposureLimitKind.Stel15min);
        Assert.Equal("xylene, mixed isomers, 15-minute average, NIOSH REL", brief.Comparison.Subject);
        Assert.Equal(brief.Limit!.Source, brief.Comparison.Source);
        Assert.Equal(study.Substances[0].FifteenMinuteAverage.DecimalFractions, brief.Comparison.Value?.Si);
        ExposureComparison peak = study.Exposure.Single(exposure => exposure.Limit!.Kind == ExposureLimitKind.BriefPeak);
        Assert.Equal(study.Substances[1].Peak.DecimalFractions, peak.Comparison.Value?.Si);
    }
}
