using System;
using System.Linq;
using Refinish.Air;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class IsocyanateScreenTests
{
    private static readonly IsocyanateScreen Example = new()
    {
        Room = Rooms.Bathroom,
        Exhaust = Rooms.Fan(150, 3),
        CoatingMass = Mass.FromGrams(400),
        SprayTime = TimeSpan.FromMinutes(6),
        IsocyanateFraction = Ratio.FromPercent(12),
        TransferEfficiency = Ratio.FromPercent(55),
        AirborneFraction = Ratio.FromPercent(10),
        Limit = MassConcentration.FromMilligramsPerCubicMeter(0.5),
        LimitSource = Source.Invented("test"),
    };

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: 0.10 · 0.45 · 400 g · 0.12 = 2.16 g in 6 min into 50 cfm = 1.41584 m³/min is 254.26 mg/m³")]
    public void The_mist_follows_by_hand()
    {
        Numbers.Close(2.16, Example.AirborneMass.Grams);

        // The units library holds a cubic foot a minute to eleven figures only.
        double expected = 2160 / 6.0 / (50 * Math.Pow(0.3048, 3));
        Numbers.Close(expected, Example.Concentration.MilligramsPerCubicMeter, 1e-10);
        Numbers.Close(expected / 0.5, Example.HazardRatio!.Value, 1e-10);
        Assert.Equal(ComparisonOutcome.Beyond, Example.Comparison.Outcome);
        Numbers.CanBeWritten(Example.Workings());

        IsocyanateScreen closed = Example with { Exhaust = Rooms.Fan(0, 3) };
        Numbers.Close(2160 / 9.06, closed.Concentration.MilligramsPerCubicMeter);
        Numbers.CanBeWritten(closed.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.134(d)(3)(i)(A), Table 1: assigned protection factors, spot rows")]
    public void Protection_factors_are_those_of_table_1()
    {
        int Factor(string name) => RespiratorClass.All.Single(kind => kind.Name == name).AssignedProtectionFactor;
        Assert.Equal(10, Factor("air-purifying, half mask or filtering facepiece"));
        Assert.Equal(50, Factor("air-purifying, full facepiece"));
        Assert.Equal(1000, Factor("powered air-purifying, full facepiece"));
        Assert.Equal(50, Factor("supplied air, continuous flow, half mask"));
        Assert.Equal(1000, Factor("supplied air, pressure demand, full facepiece"));
        Assert.Equal(25, Factor("supplied air, continuous flow, loose-fitting facepiece"));
        Assert.Equal(10000, Factor("self-contained, pressure demand, full facepiece"));
        Assert.Equal(20, RespiratorClass.All.Count);
    }

    [Fact]
    [Evidence(Basis.Contract, "only kinds that supply air, only with enough protection, and none when nothing can be judged; supplied air is always said")]
    public void Only_supplied_air_with_enough_protection_is_named()
    {
        Assert.NotEmpty(Example.Respirators);
        Assert.All(Example.Respirators, kind => Assert.True(kind.SuppliesAir && kind.AssignedProtectionFactor >= Example.HazardRatio));
        Assert.DoesNotContain(Example.Respirators, kind => kind.AssignedProtectionFactor < 1000);
        Assert.Contains(Cautions.SuppliedAir, Example.Cautions);

        IsocyanateScreen unknown = Example with { Limit = null };
        Assert.Null(unknown.HazardRatio);
        Assert.Empty(unknown.Respirators);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unknown.Comparison.Outcome);
        Assert.Contains(Cautions.SuppliedAir, unknown.Cautions);
        Numbers.CanBeWritten(unknown.Workings());

        IsocyanateScreen faint = Example with { AirborneFraction = Ratio.FromPercent(0.001) };
        Assert.True(faint.HazardRatio < 1);
        Assert.All(faint.Respirators, kind => Assert.True(kind.SuppliesAir));
        Assert.Contains(Cautions.SuppliedAir, faint.Cautions);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("AirborneFraction", () => _ = Example with { AirborneFraction = Ratio.Zero });
        Numbers.Refuses("TransferEfficiency", () => _ = Example with { TransferEfficiency = Ratio.FromPercent(101) });
        Numbers.Refuses("IsocyanateFraction", () => _ = Example with { IsocyanateFraction = Ratio.FromPercent(120) });
        Numbers.Refuses("SprayTime", () => _ = Example with { SprayTime = TimeSpan.Zero });
        Numbers.Refuses("CoatingMass", () => _ = Example with { CoatingMass = Mass.Zero });
        Numbers.Refuses("Limit", () => _ = Example with { Limit = MassConcentration.Zero });
    }
}
