using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class LimitSetTests
{
    [Theory]
    [InlineData("123-86-4", ExposureLimitKind.Twa8h, 50, 241)]
    [InlineData("123-86-4", ExposureLimitKind.Stel15min, 150, 723)]
    [Evidence(Basis.Cited, "Directive (EU) 2019/1831, annex: n-butyl acetate 241 mg/m³, 50 ppm; short-term 723 mg/m³, 150 ppm")]
    public void European_limits_are_the_directives(string cas, ExposureLimitKind kind, double ppm, double milligrams)
    {
        ExposureLimit limit = LimitSets.EuropeanUnion.Exposure.Single(one => one.CasNumber == cas && one.Kind == kind);
        Numbers.Close(ppm, limit.VolumeFraction!.Value.PartsPerMillion);
        Numbers.Close(milligrams, limit.MassConcentration!.Value.MilligramsPerCubicMeter);
        Assert.Equal(Standing.Seen, limit.Standing);
    }

    [Fact]
    [Evidence(Basis.Independent, "the European pairs against each other: mg/m³ are at 20 °C and 101.3 kPa, 24.06 L/mol; what is remembered agrees with itself within its printed figures, 2 %")]
    public void European_pairs_agree_at_20_degrees()
    {
        int compared = 0;
        foreach (ExposureLimit limit in LimitSets.EuropeanUnion.Exposure)
        {
            if (limit.VolumeFraction is Ratio fraction && Solvents.All.FirstOrDefault(one => one.CasNumber == limit.CasNumber) is Solvent solvent)
            {
                Numbers.Close(limit.MassConcentration!.Value.MilligramsPerCubicMeter, fraction.PartsPerMillion * solvent.MolarMass.GramsPerMole / 24.06, 0.02);
                compared++;
            }
        }

        Assert.Equal(20, compared);
    }

    [Fact]
    [Evidence(Basis.Contract, "each set holds its own authorities only; every set, and every limit in it, says whose, where and as of when; identifiers are unique")]
    public void Each_set_says_whose_it_is()
    {
        Assert.All(LimitSets.Osha.Exposure, limit => Assert.Equal("OSHA PEL", limit.Authority));
        Assert.All(LimitSets.Niosh.Exposure, limit => Assert.StartsWith("NIOSH ", limit.Authority, StringComparison.Ordinal));
        Assert.All(LimitSets.EuropeanUnion.Exposure, limit => Assert.Equal("European Union", limit.Jurisdiction));
        Assert.All(LimitSets.UnitedKingdom.Exposure, limit => Assert.Equal(Standing.FromMemory, limit.Standing));
        Assert.Equal(LimitSets.All.Count, LimitSets.All.Select(set => set.Id).Distinct().Count());
        Assert.All(LimitSets.All, set => Assert.Equal(set, LimitSet.Checked(set, "set")));
        Assert.All(LimitSets.All, set => Assert.Contains(set.AsOf, set.ToString(), StringComparison.Ordinal));
        Assert.Equal([90.0, 85], LimitSets.Osha.Noise.Select(limit => limit.CriterionLevel.Decibels));
        Assert.Equal([80.0, 85, 87], LimitSets.EuropeanUnion.Noise.Select(limit => limit.CriterionLevel.Decibels));
        Assert.All(LimitSets.UnitedKingdom.Noise, limit => Assert.StartsWith("UK ", limit.Authority, StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "the default fills only the gaps of the United States: no European limit for what OSHA or NIOSH has one for")]
    public void The_default_fills_gaps_only()
    {
        string[] federal = [.. LimitSets.UnitedStates.Exposure.Select(limit => limit.CasNumber).Distinct()];
        ExposureLimit[] filled = [.. LimitSets.Default.Exposure.Where(limit => limit.Jurisdiction != "United States")];
        Assert.Equal(["100-51-6", "108-65-6", "28182-81-2", "5989-27-5"], filled.Select(limit => limit.CasNumber).Distinct().OrderBy(cas => cas, StringComparer.Ordinal));
        Assert.DoesNotContain(filled, limit => federal.Contains(limit.CasNumber));
        Assert.Equal(1, LimitSets.Default.PolyisocyanateMist!.MassConcentration!.Value.MilligramsPerCubicMeter);
        Assert.Equal(ExposureLimitKind.Ceiling, LimitSets.Default.PolyisocyanateMist.Kind);
        Assert.Null(LimitSets.EuropeanUnion.PolyisocyanateMist);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: of OSHA's 150 ppm and the European 50 ppm for n-butyl acetate the lower counts where both are joined, OSHA's where Europe only fills gaps; the index of 30 ppm is 0.2, 0.6, 0.6 and 0.2")]
    public void Joined_sets_take_the_stricter()
    {
        AirStudy study = SteadyDay(30);
        Numbers.Close(0.2, study.Against(LimitSets.Osha).StrictestIndex!.Value, 1e-6);
        Numbers.Close(0.6, study.Against(LimitSets.EuropeanUnion).StrictestIndex!.Value, 1e-6);
        LimitSet joined = LimitSets.Osha.JoinedWith(LimitSets.EuropeanUnion);
        Numbers.Close(0.6, study.Against(joined).StrictestIndex!.Value, 1e-6);
        Assert.Equal("OSHA and European Union", joined.Name);
        Assert.Equal(5, joined.Noise.Count);
        Assert.Equal(25, joined.Flammable!.Share.Percent, 1e-9);
        LimitSet filled = LimitSets.Osha.FilledFrom(LimitSets.EuropeanUnion);
        Numbers.Close(0.2, study.Against(filled).StrictestIndex!.Value, 1e-6);
        Assert.Contains(filled.Exposure, limit => limit.CasNumber == "108-65-6");
        Assert.Equal(LimitSets.Osha.Noise, filled.Noise);
        Assert.Equal(joined, joined.JoinedWith(joined) with { Id = joined.Id, Name = joined.Name });
    }

    [Fact]
    [Evidence(Basis.Contract, "comparisons name the limit's authority, place and date, or the set's; a substance without a limit is said to have none in that set")]
    public void Comparisons_name_the_set()
    {
        AirStudy osha = SteadyDay(30).Against(LimitSets.Osha);
        Assert.Equal("mixture index of 8-hour averages (OSHA)", osha.StrictestLimit.Subject);
        Assert.StartsWith("OSHA (United States; ", osha.StrictestLimit.Whose!, StringComparison.Ordinal);
        Assert.All(osha.Exposure, exposure => Assert.StartsWith("OSHA PEL (United States; ", exposure.Comparison.Whose!, StringComparison.Ordinal));
        Assert.Equal("OSHA (United States; from memory)", osha.FlammableLimit.Whose);
        Assert.StartsWith("International Mechanical Code (", osha.Against(LimitSets.EuropeanUnion).FlammableLimit.Whose!, StringComparison.Ordinal);
        AirStudy empty = osha.Against(Rooms.Set());
        ExposureComparison none = Assert.Single(empty.Exposure);
        Assert.Null(none.Limit);
        Assert.Equal("n-butyl acetate, 8-hour average, no limit in limits of a test", none.Comparison.Subject);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, none.Comparison.Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, empty.StrictestLimit.Outcome);
    }

    [Fact]
    [Evidence(Basis.Identity, "with the airflow that is said to be needed the peak is at the set's own share of the limit, and clearing ends at its design line")]
    public void The_share_of_the_set_is_the_one_that_counts()
    {
        LimitSet strict = LimitSets.UnitedStates with { Flammable = Line(8), FlammableDesign = Line(3) };
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(60, 2), Rooms.Coat(0, 6, 164, 0.4, 15)).Against(strict);
        Assert.Equal(0.08, study.FlammableLimit.Limit!.Value.Si, 1e-12);
        Assert.Equal(0.03, study.FlammableDesignLine.Limit!.Value.Si, 1e-12);
        Exhaust enough = Rooms.Fan(study.AirflowForFlammableLimit!.Value.CubicFeetPerMinute, 2);
        AirStudy held = new(study.Room, enough, study.Emissions, study.Shift, strict);
        Numbers.Close(0.08, held.PeakFlammableFraction!.Value.DecimalFractions, 1e-6);
        Assert.Contains("our insurer (invented)", study.FlammableLimit.Whose!, StringComparison.Ordinal);
        Numbers.CanBeWritten(study.Workings());
        Assert.Equal(8, (strict with { FlammableDesign = null }).FlammableDesignLine.Share.Percent, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; a design line above the limit is a contradiction and refused where the set is used")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("Share", () => _ = Line(0));
        Numbers.Refuses("Share", () => _ = Line(51));
        LimitSet upside = LimitSets.UnitedStates with { Flammable = Line(5), FlammableDesign = Line(10) };
        Numbers.Refuses("limits", () => _ = SteadyDay(30).Against(upside));
        Assert.Throws<ArgumentNullException>(() => _ = SteadyDay(30).Against(null!));
        Assert.Throws<ArgumentException>(() => _ = LimitSets.Osha with { Id = "a/b" });
        Assert.Throws<ArgumentException>(() => _ = LimitSets.Osha with { Name = " " });
        Assert.Throws<ArgumentNullException>(() => _ = LimitSets.Osha.JoinedWith(null!));
        Assert.Throws<ArgumentNullException>(() => _ = LimitSets.Osha.FilledFrom(null!));
    }

    private static FlammableShare Line(double percent) => FlammableShare.Quarter with { Share = Ratio.FromPercent(percent), Authority = "our insurer (invented)" };

    // One puff into a closed room: mass over volume for eight hours.
    private static AirStudy SteadyDay(double ppm) => Rooms.Study(
        Rooms.Of(10), Rooms.Fan(0, 1), Rooms.Coat(0, 1, ppm * 1e-6 * Solvents.ButylAcetate.MolarMass.KilogramsPerMole / 24.45e-3 * 10 * 1000, 1, 15));
}
