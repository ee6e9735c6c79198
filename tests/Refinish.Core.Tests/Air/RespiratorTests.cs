using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Air;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Air;

public class RespiratorTests
{
    private static RespiratorClass Kind(string name) => RespiratorClass.All.Single(kind => kind.Name == name);

    private static LimitComparison Exposure(double? value, double? limit) =>
        new("vapour", value, limit, LimitSense.AtMost, Measure.MassConcentration, Source.Supplied("test"));

    private static RespiratorCheck Check(string name, double? value, double? limit, bool air = false, bool danger = false) =>
        new(Kind(name), Exposure(value, limit), air, danger);

    [Fact]
    [Evidence(Basis.Cited, "a published worked example of the hazard ratio: 8 mg/m³ over a limit of 1 mg/m³ is 8 (RESP-FIT, respfit.org.au, page of the hazard ratio); "
        + "a factor of 10 leaves no more than one tenth inside (ISHN, Know your APFs); use at most in factor times limit (29 CFR 1910.134(d)(3)(i)(B))")]
    public void The_ratio_of_a_published_example()
    {
        RespiratorCheck half = Check("air-purifying, half mask or filtering facepiece", 8e-6, 1e-6);
        Numbers.Close(8, half.HazardRatio!.Value);
        Numbers.Close(0.8, half.InsideOverLimit!.Value);
        Numbers.Close(10e-6, half.Comparison.Limit!.Value.Si);
        Assert.True(half.Reaches);
        RespiratorCheck quarter = Check("air-purifying, quarter mask", 8e-6, 1e-6);
        Numbers.Close(1.6, quarter.InsideOverLimit!.Value);
        Numbers.Close(-3e-6, quarter.Comparison.Margin!.Value.Si, 1e-9);
        Assert.False(quarter.Reaches);
        Numbers.CanBeWritten(half.Workings());
        Numbers.CanBeWritten(quarter.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.134 Table 1: 25 for loose hoods and facepieces, 1000 for hoods and helmets only with the maker's evidence (note 4); powered half mask 50, demand half mask 10")]
    public void A_loose_hood_has_25_unless_its_maker_shows_more()
    {
        RespiratorClass[] hoods = [Kind("powered air-purifying, hood or helmet"), Kind("supplied air, continuous flow, hood or helmet")];
        Assert.All(hoods, hood => Assert.Equal((25, (int?)1000), (hood.AssignedProtectionFactor, hood.FactorWithMakerEvidence)));
        Assert.All(RespiratorClass.All.Except(hoods), kind => Assert.Null(kind.FactorWithMakerEvidence));
        Assert.All(RespiratorClass.All.Where(kind => kind.Name.Contains("loose", StringComparison.Ordinal)), kind => Assert.Equal(25, kind.AssignedProtectionFactor));
        Assert.Equal(50, Kind("powered air-purifying, half mask").AssignedProtectionFactor);
        Assert.Equal(10, Kind("supplied air, demand, half mask").AssignedProtectionFactor);

        // By hand: 312 over 25 is 12.48, told as 12.
        RespiratorCheck hood = new(hoods[1], Exposure(312e-6, 1e-6), true, false);
        Numbers.Close(12.48, hood.InsideOverLimit!.Value);
        Assert.Equal("supplied air, continuous flow, hood or helmet: 25, 12 times too little (1000 only with the maker's test evidence)", hood.ToString());
    }

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.134(d)(2)(i): in immediately dangerous air only the self-contained and the supplied-air kind with an auxiliary bottle, both full facepiece and "
        + "pressure demand; OSHA letter of 4 November 2013: the bottle leaves the supplied-air kind at 1000")]
    public void Immediate_danger_leaves_two_kinds()
    {
        RespiratorClass[] left = [.. RespiratorClass.All.Where(kind => new RespiratorCheck(kind, Exposure(2e-6, 1e-6), false, true).Reaches)];
        Assert.Equal(["supplied air, pressure demand, full facepiece", "self-contained, pressure demand, full facepiece"], left.Select(kind => kind.Name));
        Assert.Equal([1000, 10000], left.Select(kind => kind.AssignedProtectionFactor));
        Assert.All(left, kind => Assert.NotNull(kind.ForImmediateDanger));
        Assert.Equal(RespiratorExclusion.NotForImmediateDanger, Check("self-contained, pressure demand, hood or helmet", 2e-6, 1e-6, danger: true).Exclusion);
        Assert.Contains("not listed for immediate danger", Check("air-purifying, full facepiece", 2e-6, 1e-6, true, true).ToString(), StringComparison.Ordinal);

        // Listed, and still too little for a ratio above its factor.
        Assert.False(Check("supplied air, pressure demand, full facepiece", 1001e-6, 1e-6, danger: true).Reaches);
    }

    [Property]
    [Evidence(Basis.Identity, "a class reaches exactly when the ratio is at most its factor and nothing excludes it; units do not matter; more vapour never needs less; isocyanates never a filter")]
    public void A_factor_reaches_up_to_itself(PositiveInt a, PositiveInt b, bool air, bool danger)
    {
        double limit = 1e-7 * (1 + (b.Get % 1000));
        double ratio = (a.Get % 30000) / 2.0;
        foreach (RespiratorClass kind in RespiratorClass.All)
        {
            RespiratorCheck check = new(kind, Exposure(ratio * limit, limit), air, danger);
            RespiratorCheck scaled = new(kind, new LimitComparison("index", ratio, 1, LimitSense.AtMost, Measure.Number, Source.Supplied("test")), air, danger);
            Numbers.Near(scaled.InsideOverLimit!.Value, check.InsideOverLimit!.Value, 1e-12 * ratio);
            bool excluded = (danger && kind.ForImmediateDanger is null) || (air && !kind.SuppliesAir);
            Assert.Equal(excluded, check.Exclusion != RespiratorExclusion.None);
            Assert.Equal(!excluded && ratio <= kind.AssignedProtectionFactor, scaled.Reaches);
            RespiratorCheck more = new(kind, Exposure(ratio * limit * 1.5, limit), air, danger);
            Assert.True(check.Reaches || !more.Reaches || ratio == 0);
            Numbers.CanBeWritten(check.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "the common kinds are rows of the table in order of factor; a mist excludes every filter and says by how much a hood falls short")]
    public void Common_kinds_and_the_mist()
    {
        Assert.Equal(8, RespiratorClass.Common.Count);
        Assert.Equal(RespiratorClass.Common.Select(kind => kind.AssignedProtectionFactor).OrderBy(factor => factor), RespiratorClass.Common.Select(kind => kind.AssignedProtectionFactor));
        IsocyanateScreen screen = new()
        {
            Room = Rooms.Bathroom, Exhaust = Rooms.Fan(150, 3), CoatingMass = UnitsNet.Mass.FromGrams(400), SprayTime = TimeSpan.FromMinutes(6),
            IsocyanateFraction = UnitsNet.Ratio.FromPercent(12), TransferEfficiency = UnitsNet.Ratio.FromPercent(55), AirborneFraction = UnitsNet.Ratio.FromPercent(10),
            Limit = UnitsNet.MassConcentration.FromMilligramsPerCubicMeter(0.5), LimitSource = Source.Invented("test"),
        };

        // By hand: 254.26 mg/m³ over 0.5 is 508.5, over 25 is 20.3.
        Assert.All(screen.Checks.Where(check => !check.Respirator.SuppliesAir), check => Assert.Equal(RespiratorExclusion.OnlyFilters, check.Exclusion));
        Numbers.Near(20.34, screen.Checks.Single(check => check.Respirator.Name == "supplied air, continuous flow, hood or helmet").InsideOverLimit!.Value, 0.01);
        Assert.Equal(screen.Respirators.Where(RespiratorClass.Common.Contains), screen.Checks.Where(check => check.Reaches).Select(check => check.Respirator));
    }

    [Fact]
    [Evidence(Basis.Contract, "what is not known cannot be judged and never reaches; bad input is refused")]
    public void Refuses_what_cannot_be()
    {
        foreach ((double? value, double? limit) in new (double?, double?)[] { (null, 1e-6), (1e-6, null), (null, null) })
        {
            RespiratorCheck check = Check("self-contained, pressure demand, full facepiece", value, limit);
            Assert.Null(check.HazardRatio);
            Assert.Equal(ComparisonOutcome.CannotBeJudged, check.Comparison.Outcome);
            Assert.False(check.Reaches);
            Assert.Empty(check.Workings().AllSteps());
            Assert.EndsWith("cannot be judged", check.ToString(), StringComparison.Ordinal);
        }

        Numbers.Refuses("exposure", () => Check("air-purifying, full facepiece", -1e-6, 1e-6));
        Numbers.Refuses("exposure", () => Check("air-purifying, full facepiece", 1e-6, 0));
        Assert.Throws<ArgumentNullException>(() => new RespiratorCheck(null!, Exposure(1e-6, 1e-6), false, false));
        Assert.Throws<ArgumentNullException>(() => new RespiratorCheck(RespiratorClass.All[0], null!, false, false));
        Assert.Throws<ArgumentException>(() => new RespiratorCheck(
            RespiratorClass.All[0], new LimitComparison("oxygen", 0.2, 0.195, LimitSense.AtLeast, Measure.Percent, Source.Supplied("test")), false, false));
    }
}
