using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Climate;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Climate;

public class WarmUpTests
{
    private static readonly FixtureThermalData Iron460 = FixtureThermalData.CastIron with
    {
        SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(460),
        Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(50),
    };

    private static readonly WarmUp Tub = new()
    {
        Mass = Mass.FromPounds(300),
        Material = Iron460,
        WallThickness = Length.FromMillimeters(6),
        HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(9),
        Area = Area.FromSquareMeters(2.2),
        Start = Temperature.FromDegreesCelsius(10),
        Room = Temperature.FromDegreesCelsius(22),
        Target = Temperature.FromDegreesCelsius(18),
    };

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    [Theory]
    [InlineData(1.64, 9, 70.7)]
    [InlineData(2.2, 9, 52.7)]
    [InlineData(1.64, 18, 35.3)]
    [InlineData(2.2, 18, 26.3)]
    [Evidence(Basis.Independent, "derived by hand for a 300-lb bath with c = 460 J/(kg K): m c / (h A); three figures; no published source")]
    public void Time_constants_match(double area, double heatTransfer, double minutes)
    {
        WarmUp tub = Tub with { Area = Area.FromSquareMeters(area), HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(heatTransfer) };
        Numbers.Near(minutes, tub.TimeConstant!.Value.TotalMinutes, 0.1);
    }

    [Fact]
    [Evidence(Basis.Independent, "derived by hand: τ ln(12/4) = 57.9 min from 10 to 18 °C in a room of 22 °C; Bi 9 × 0.006 / 50 = 0.00108; m c ΔT from 10 to 20 °C of 136.08 kg = 626 kJ")]
    public void Iron_bath_takes_an_hour()
    {
        Numbers.Near(57.9, Tub.Time!.Value.TotalMinutes, 0.05);
        Numbers.Close(0.00108, Tub.BiotNumber, 1e-12);
        WarmUp twenty = Tub with { Target = Temperature.FromDegreesCelsius(20) };
        Numbers.Near(626, twenty.Heat.Kilojoules, 0.5);
        Assert.Equal("57.9 min from 10 °C to 18 °C in a room of 22 °C", Tub.ToString());
        Numbers.HoldsToKernel(Tub.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a Biot number of 0.1 or more gives no time and says so")]
    public void Thick_plastic_has_no_time()
    {
        WarmUp acrylic = Tub with { Material = FixtureThermalData.Acrylic, WallThickness = Length.FromMillimeters(5) };
        Assert.False(acrylic.IsAvailable);
        Assert.Null(acrylic.Time);
        Assert.Null(acrylic.TimeConstant);
        Assert.Null(acrylic.TemperatureAfter(TimeSpan.FromHours(1)));
        Assert.Equal(ComparisonOutcome.Beyond, acrylic.Checks[0].Outcome);
        Assert.NotNull(acrylic.Checks[0].Remedy);
        Assert.StartsWith("no time can be given", acrylic.ToString(), StringComparison.Ordinal);
        Numbers.HoldsToKernel(acrylic.Workings());

        FixtureThermalData one = Iron460 with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(1) };
        WarmUp atLimit = Tub with { Material = one, WallThickness = Length.FromMillimeters(10), HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10) };
        Numbers.Near(0.1, atLimit.BiotNumber, 1e-15);
        Assert.False(atLimit.IsAvailable);
    }

    [Fact]
    [Evidence(Basis.Contract, "a room that is not warm enough gives no time and says so; a warm fixture needs none")]
    public void Cold_rooms_and_warm_fixtures()
    {
        WarmUp cold = Tub with { Room = Temperature.FromDegreesCelsius(18.05) };
        Assert.False(cold.IsAvailable);
        Assert.Null(cold.Time);
        Assert.NotNull(cold.TimeConstant);
        Assert.Equal("Heat the room above 18.1 °C (64.58 °F).", cold.Checks[1].Remedy);
        WarmUp warm = cold with { Start = Temperature.FromDegreesCelsius(19) };
        Assert.Equal(TimeSpan.Zero, warm.Time);
        Assert.Equal(0, warm.Heat.Joules);
        Numbers.HoldsToKernel(cold.Workings());
        Numbers.HoldsToKernel(warm.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "after the time the fixture has the target temperature; more mass never warms sooner; workings hold to the kernel")]
    public void Temperature_and_time_are_inverse(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        WarmUp tub = Tub with
        {
            Start = Temperature.FromDegreesCelsius(-10 + (20 * Part(a))),
            Target = Temperature.FromDegreesCelsius(11 + (9 * Part(b))),
            Mass = Mass.FromKilograms(1 + (500 * Part(c))),
        };
        Numbers.Near(tub.Target.Kelvins, tub.TemperatureAfter(tub.Time!.Value)!.Value.Kelvins, 1e-6);
        Assert.True((tub with { Mass = Mass.FromKilograms(tub.Mass.Kilograms + 1) }).Time > tub.Time);
        Numbers.HoldsToKernel(tub.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "CIBSE Guide A, Table 3.36 (reproduced): cast iron 56 W/(m K) and 530 J/(kg K), steel 45 and 480, glazed ceramic 1.40 and 840; EN ISO 10077-2:2003: PMMA 0.18, fibreglass 0.40 W/(m K); EN 12524: PMMA 1500 J/(kg K)")]
    public void Thermal_data_are_those_of_the_tables()
    {
        (FixtureThermalData Data, double Heat, double Conductivity)[] rows =
        [
            (FixtureThermalData.CastIron, 530, 56),
            (FixtureThermalData.Steel, 480, 45),
            (FixtureThermalData.GlazedCeramic, 840, 1.40),
            (FixtureThermalData.Acrylic, 1500, 0.18),
        ];
        foreach ((FixtureThermalData data, double heat, double conductivity) in rows)
        {
            Assert.Equal(heat, data.SpecificHeat.JoulesPerKilogramKelvin);
            Assert.Equal(conductivity, data.Conductivity.WattsPerMeterKelvin);
            Assert.Equal(SourceKind.Published, data.SpecificHeatSource.Kind);
            Assert.Equal(SourceKind.Published, data.ConductivitySource.Kind);
        }

        Assert.Equal(0.40, FixtureThermalData.GlassFibrePolyester.Conductivity.WattsPerMeterKelvin);
        Assert.Equal(SourceKind.FromMemory, FixtureThermalData.GlassFibrePolyester.SpecificHeatSource.Kind);
        Assert.Equal("cast iron: 530 J/(kg·K), 56 W/(m·K)", FixtureThermalData.CastIron.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstring")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("Mass", () => _ = Tub with { Mass = Mass.Zero });
        Numbers.Refuses("WallThickness", () => _ = Tub with { WallThickness = Length.FromMeters(1) });
        Numbers.Refuses("HeatTransfer", () => _ = Tub with { HeatTransfer = HeatTransferCoefficient.Zero });
        Numbers.Refuses("Area", () => _ = Tub with { Area = Area.Zero });
        Numbers.Refuses("Start", () => _ = Tub with { Start = Temperature.FromDegreesCelsius(-41) });
        Numbers.Refuses("Room", () => _ = Tub with { Room = Temperature.FromDegreesCelsius(61) });
        Numbers.Refuses("Target", () => _ = Tub with { Target = Temperature.FromDegreesCelsius(61) });
        Numbers.Refuses("SpecificHeat", () => _ = Iron460 with { SpecificHeat = SpecificEntropy.Zero });
        Numbers.Refuses("Conductivity", () => _ = Iron460 with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(501) });
        Numbers.Refuses("time", () => _ = Tub.TemperatureAfter(TimeSpan.FromHours(-1)));
        Assert.Equal(Tub, Tub with { Mass = Mass.FromKilograms(Tub.Mass.Kilograms) });
        Assert.Equal(3, Tub.Cautions.Count);
    }
}
