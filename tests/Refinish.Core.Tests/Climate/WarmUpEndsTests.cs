using System;
using System.Linq;
using Refinish.Climate;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Climate;

/// <summary>Fixtures that are warm or hot already, in rooms that keep them so or do not, and the ready data by material.</summary>
public class WarmUpEndsTests
{
    [Fact]
    [Evidence(Basis.Contract, "a fixture at its target in a room below it would cool again: no time, a check and what to do; in a room as warm as the target it stays")]
    public void A_warm_fixture_in_a_cold_room_gets_no_time()
    {
        foreach (double start in (double[])[18, 19, 40])
        {
            WarmUp cooling = WarmUpTests.Tub with { Start = Temperature.FromDegreesCelsius(start), Room = Temperature.FromDegreesCelsius(17) };
            Assert.False(cooling.IsAvailable);
            Assert.Null(cooling.Time);
            Assert.Null(cooling.TimeThroughout);
            Assert.Equal("Heat the room to 18 °C (64.4 °F).", Assert.Single(cooling.Checks).Remedy);
            Assert.StartsWith("no time can be given", cooling.ToString(), StringComparison.Ordinal);
            Numbers.CanBeWritten(cooling.Workings());
            Assert.Equal(TimeSpan.Zero, (cooling with { Room = cooling.Target }).Time);
        }

        WarmUp cold = WarmUpTests.Tub with { Room = Temperature.FromDegreesCelsius(15) };
        Assert.Null(cold.Time);
        Assert.False(cold.IsAvailable);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: the iron bath (τ = 136.08 kg × 460 / (9 × 2.2) = 52.69 min) at 40 °C in a room of 22 °C cools to 30 °C in τ ln(18/8) = 42.7 min; the acrylic shell, by symmetry, as it would warm from 10 to 20 °C in 28 °C")]
    public void A_hot_fixture_cools_to_the_highest_temperature()
    {
        WarmUp hot = WarmUpTests.Tub with { Start = Temperature.FromDegreesCelsius(40), Highest = Temperature.FromDegreesCelsius(30) };
        Numbers.Near(52.69 * Math.Log(18 / 8.0), hot.Time!.Value.TotalMinutes, 0.02);
        Numbers.Near(30, hot.TemperatureAfter(hot.Time.Value).DegreesCelsius, 1e-6);
        Assert.Equal("42.7 min from 40 °C to 30 °C in a room of 22 °C", hot.ToString());
        Numbers.CanBeWritten(hot.Workings());
        Assert.Equal(TimeSpan.Zero, (hot with { Start = Temperature.FromDegreesCelsius(30) }).Time);
        Assert.Equal(WarmUpTests.Tub.Time, (WarmUpTests.Tub with { Highest = Temperature.FromDegreesCelsius(30) }).Time);

        WarmUp shell = hot with { Material = FixtureThermalData.Acrylic, Mass = Mass.FromKilograms(15) };
        WarmUp mirrored = shell with { Start = Temperature.FromDegreesCelsius(10), Room = Temperature.FromDegreesCelsius(28), Target = Temperature.FromDegreesCelsius(20), Highest = null };
        Numbers.Close(mirrored.Time!.Value.TotalSeconds, shell.Time!.Value.TotalSeconds, 1e-9);
        Numbers.Close(mirrored.TimeThroughout!.Value.TotalSeconds, shell.TimeThroughout!.Value.TotalSeconds, 1e-9);
        Assert.True(shell.Time < shell.TimeThroughout);
        Numbers.CanBeWritten(shell.Workings());

        WarmUp stuffy = hot with { Room = Temperature.FromDegreesCelsius(29.95) };
        Assert.Null(stuffy.Time);
        Assert.Equal("Cool the room below 29.9 °C (85.82 °F).", stuffy.Checks[2].Remedy);
        WarmUp crossed = WarmUpTests.Tub with { Highest = Temperature.FromDegreesCelsius(17) };
        Assert.Null(crossed.Time);
        Assert.Equal(ComparisonOutcome.Beyond, crossed.Checks[1].Outcome);
        Numbers.CanBeWritten(stuffy.Workings());
        Numbers.CanBeWritten(crossed.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: with air behind, a thin wall of twice the thickness and mass takes as long as the half of it that air reaches from one side; one lump takes half as long, and draws 2 × 9 × 2.2 × 12 = 475.2 W at first")]
    public void Air_behind_warms_as_much_again()
    {
        WarmUp lump = WarmUpTests.Tub with { AirBehind = true };
        Numbers.Close(WarmUpTests.Tub.Time!.Value.TotalSeconds / 2, lump.Time!.Value.TotalSeconds, 1e-9);
        Numbers.Near(475.2, (double)lump.PowerAfter(TimeSpan.Zero).Watts, 1e-9);
        Numbers.CanBeWritten(lump.Workings());

        WarmUp half = WarmUpTests.Tub with { Material = FixtureThermalData.Acrylic, Mass = Mass.FromKilograms(15) };
        WarmUp whole = half with { AirBehind = true, Mass = Mass.FromKilograms(30), WallThickness = Length.FromMillimeters(12) };
        Numbers.Close(half.Time!.Value.TotalSeconds, whole.Time!.Value.TotalSeconds, 1e-9);
        Numbers.Close(half.TimeThroughout!.Value.TotalSeconds, whole.TimeThroughout!.Value.TotalSeconds, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "ready data for six of the materials, with where they come from; none made up for the others; density, thickness and the area of a bath give the mass within what baths weigh (about 100 to 180 kg of cast iron, from memory, unverified)")]
    public void Usual_data_stand_by_the_material()
    {
        Assert.Equal(
            ["enamelledCastIron", "enamelledSteel", "gelcoat", "acrylic", "vitreousChina", "ceramicTile"],
            FixtureMaterial.All.Where(material => material.Body is not null).Select(material => material.Id));
        Assert.Same(FixtureThermalData.CastIron, FixtureMaterial.EnamelledCastIron.Body!.Heat);
        Assert.Same(FixtureThermalData.GlassFibrePolyester, FixtureMaterial.Gelcoat.Body!.Heat);
        Assert.Same(FixtureThermalData.GlazedCeramic, FixtureMaterial.CeramicTile.Body!.Heat);
        MaterialBody iron = FixtureMaterial.EnamelledCastIron.Body;
        Assert.InRange(iron.Density.KilogramsPerCubicMeter * iron.UsualThickness.Meters * 2.6, 100, 180);
        Assert.Equal(SourceKind.FromMemory, iron.Source.Kind);
        Numbers.Refuses("UsualThickness", () => _ = iron with { UsualThickness = Length.FromMeters(0.6) });
        Numbers.Refuses("Density", () => _ = iron with { Density = Density.Zero });
        Numbers.Refuses("Highest", () => _ = WarmUpTests.Tub with { Highest = Temperature.FromDegreesCelsius(61) });
    }

    [Fact]
    [Evidence(Basis.Contract, "a fixture warmer than the room: dry now and for good when the room is above the dew point; the spread is lost where the room itself has less")]
    public void A_warm_fixture_keeps_only_the_rooms_spread()
    {
        WarmUp warm = WarmUpTests.Tub with { Start = Temperature.FromDegreesCelsius(30) };
        CondensationRisk damp = new(warm, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(90)));
        Assert.Equal(TimeSpan.Zero, damp.WetUntil);
        Assert.Null(damp.SpreadFrom);
        CondensationRisk dry = new(warm, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(50)));
        Assert.Equal(TimeSpan.Zero, dry.WetUntil);
        Assert.Equal(TimeSpan.Zero, dry.SpreadFrom);
        Numbers.CanBeWritten(damp.Workings());
        Numbers.CanBeWritten(dry.Workings());
    }
}
