using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Climate;
using Refinish.Fixtures;
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

    internal static readonly WarmUp Tub = new()
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
        Numbers.Near(minutes, tub.TimeConstant.TotalMinutes, 0.1);
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
        Numbers.CanBeWritten(Tub.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "strictly below a Biot number of 0.1 one lump, from 0.1 on a plane wall; air behind halves the depth")]
    public void Biot_number_chooses_the_method()
    {
        Assert.Equal(WarmUpMethod.Lumped, Tub.Method);
        FixtureThermalData one = Iron460 with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(1) };
        WarmUp atLimit = Tub with { Material = one, WallThickness = Length.FromMillimeters(10), HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(10) };
        Numbers.Near(0.1, atLimit.BiotNumber, 1e-15);
        Assert.Equal(WarmUpMethod.Slab, atLimit.Method);
        Assert.Equal(WarmUpMethod.Lumped, (atLimit with { AirBehind = true }).Method);
        Numbers.Close(0.05, (atLimit with { AirBehind = true }).BiotNumber, 1e-12);
        Assert.Equal(Tub.Time, Tub.TimeThroughout);
    }

    [Theory]
    [InlineData(0.01, 0.0998, 1.0017)]
    [InlineData(0.1, 0.3111, 1.0161)]
    [InlineData(0.5, 0.6533, 1.0701)]
    [InlineData(1, 0.8603, 1.1191)]
    [InlineData(2, 1.0769, 1.1785)]
    [InlineData(5, 1.3138, 1.2403)]
    [InlineData(10, 1.4289, 1.2620)]
    [InlineData(100, 1.5552, 1.2731)]
    [Evidence(Basis.Cited, "one-term coefficients of the plane wall as heat-transfer textbooks print them (Cengel, Heat and Mass Transfer, Table 4-2; figures from memory); four decimals")]
    public void First_terms_match_the_textbook_table(double biot, double zeta, double coefficient)
    {
        double root = SlabKernel.Eigenvalue(biot, 1);
        Numbers.Near(zeta, root, 0.0001);
        Numbers.Near(coefficient, SlabKernel.Coefficient(root).Value, 0.0001);
    }

    [Fact]
    [Evidence(Basis.Identity, "every root satisfies ζ tan ζ = Bi and lies in its own bracket; at time zero the series sums to one; the short-time formula and the series meet to 1e-13")]
    public void Roots_and_series_are_right()
    {
        foreach (double biot in (double[])[0.001, 0.1, 0.3, 1, 7, 50, 1000, 25000])
        {
            for (int n = 1; n <= 60; n++)
            {
                double zeta = SlabKernel.Eigenvalue(biot, n);
                Assert.InRange(zeta, (n - 1) * Math.PI, (n - 0.5) * Math.PI);
                Numbers.Near(0, ((zeta * Math.Sin(zeta)) - (biot * Math.Cos(zeta))) / (zeta + biot), 1e-13);
            }

            Numbers.Near(SlabKernel.Face(biot, SlabKernel.ShortTime), SlabKernel.Face(biot, SlabKernel.ShortTime * (1 + 1e-12)), 1e-11);
            Numbers.Near(1, SlabKernel.Back(biot, SlabKernel.ShortTime * (1 + 1e-12)), 1e-12);
            Numbers.Near(1, SlabKernel.Face(biot, 0), 0);
        }
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(8)]
    [Evidence(Basis.Independent, "implicit finite differences in time (Crank–Nicolson) over 400 layers, written here; 1e-4 of the first difference")]
    public void Wall_matches_finite_differences(double biot)
    {
        const int layers = 400;
        const double step = 2e-4;
        double[] left = FiniteDifferences(biot, layers, step, 5000, out double back);
        for (int i = 500; i <= 5000; i += 500)
        {
            Numbers.Near(left[i], SlabKernel.Face(biot, i * step), 1e-4);
        }

        Numbers.Near(back, SlabKernel.Back(biot, 5000 * step), 1e-4);
    }

    [Fact]
    [Evidence(Basis.Independent, "an acrylic shell by hand, one-term solution: 15 kg, 6 mm, 2.2 m², h 9, Bi = 0.3, ζ = 0.5218, C = 1.0450; from 10 to 18 °C in 22 °C the face takes 19.2 min, the back 22.1 min")]
    public void Acrylic_warms_at_its_face_first()
    {
        WarmUp shell = Tub with { Material = FixtureThermalData.Acrylic, Mass = Mass.FromKilograms(15), WallThickness = Length.FromMillimeters(6) };
        Numbers.Close(0.3, shell.BiotNumber, 1e-12);
        Assert.Equal(WarmUpMethod.Slab, shell.Method);

        // Fo = ln(C cos ζ / (1/3)) / ζ², t = Fo τ Bi with τ = 15 × 1500 / (9 × 2.2) = 1136 s.
        double diffusion = 15 * 1500 / (9 * 2.2) * 0.3;
        Numbers.Near(diffusion * Math.Log(1.0450 * Math.Cos(0.5218) * 3) / (0.5218 * 0.5218) / 60, shell.Time!.Value.TotalMinutes, 0.02);
        Numbers.Near(diffusion * Math.Log(1.0450 * 3) / (0.5218 * 0.5218) / 60, shell.TimeThroughout!.Value.TotalMinutes, 0.02);
        Numbers.Near(18, shell.TemperatureAfter(shell.Time.Value).DegreesCelsius, 1e-6);
        Numbers.Near(18, shell.BackTemperatureAfter(shell.TimeThroughout.Value).DegreesCelsius, 1e-6);
        Numbers.CanBeWritten(shell.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "the series that is summed for a temperature is the one that the derivation writes out, at face and back")]
    public void Series_is_the_one_that_is_written()
    {
        WarmUp shell = Tub with
        {
            Material = FixtureThermalData.Acrylic, Mass = Mass.FromKilograms(15), WallThickness = Length.FromMillimeters(20),
        };
        IReadOnlyList<WorkingStep> steps = shell.Workings().Steps;
        foreach (string side in (string[])["face", "back"])
        {
            double fourier = Of("t_" + side) / Of("t_L");
            double sum = 0;
            foreach (WorkingStep factor in steps.Where(step => step.Name.StartsWith("coefficient", StringComparison.Ordinal)
                && step.Name.EndsWith(side, StringComparison.Ordinal)))
            {
                double zeta = Of(factor.Symbol.Replace(factor.Symbol[0], 'ζ'));
                sum += factor.Value * Math.Exp(-(zeta * zeta * fourier));
            }

            double biot = shell.BiotNumber;
            Numbers.Near(side == "face" ? SlabKernel.Face(biot, fourier) : SlabKernel.Back(biot, fourier), sum, 1e-13);
            Numbers.Near(1.0 / 3, sum, 1e-9);
        }

        double Of(string symbol) => steps.First(step => step.Symbol == symbol).Value;
    }

    [Fact]
    [Evidence(Basis.Independent, "lump by hand: 9 × 12 = 108 W/m² and × 2.2 m² = 237.6 W at the beginning, at 18 °C 9 × 4 = 36 W/m² and 79.2 W; 136.08 kg × 460 × 8 K = 500.8 kJ taken; a cooling one gives it back")]
    public void Heat_that_an_iron_bath_draws()
    {
        Numbers.Close(108, Tub.HeatFluxAfter(TimeSpan.Zero).WattsPerSquareMeter);
        Numbers.Close(237.6, (double)Tub.PowerAfter(TimeSpan.Zero).Watts);
        Numbers.Close(36, Tub.HeatFluxAfter(Tub.Time!.Value).WattsPerSquareMeter, 1e-6);
        Numbers.Close(79.2, (double)Tub.PowerAfter(Tub.Time.Value).Watts, 1e-6);
        Numbers.Near(500.8, Tub.HeatTakenAfter(Tub.Time.Value).Kilojoules, 0.05);
        Numbers.Close(Tub.Heat.Joules, Tub.HeatTakenAfter(Tub.Time.Value).Joules, 1e-6);
        Assert.Equal(0, Tub.HeatTakenAfter(TimeSpan.Zero).Joules);
        WarmUp cooling = Tub with { Start = Temperature.FromDegreesCelsius(34) };
        Numbers.Close(-237.6, (double)cooling.PowerAfter(TimeSpan.Zero).Watts);
        Numbers.Close(-Tub.HeatTakenAfter(TimeSpan.FromHours(1)).Joules, cooling.HeatTakenAfter(TimeSpan.FromHours(1)).Joules);
    }

    [Fact]
    [Evidence(Basis.Independent, "series summed outside: steel of 7832 kg/m³, 434 J/(kg K), 63.9 W/(m K), 40 mm, h 500 W/(m² K), from −20 °C in 60 °C, after 480 s 7318.7475 W/m² and 8 675 258 J/m²; the figures of Incropera and DeWitt's pipeline, chapter 5, from memory 7400 W/m² and 2.73e7 J/m over π m², one term of four digits")]
    public void Heat_that_a_steel_wall_draws()
    {
        WarmUp wall = new()
        {
            Mass = Mass.FromKilograms(7832 * 0.04),
            Material = FixtureThermalData.Steel with
            {
                SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(434), Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(63.9),
            },
            WallThickness = Length.FromMillimeters(40),
            HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(500),
            Area = Area.FromSquareMeters(1),
            Start = Temperature.FromDegreesCelsius(-20),
            Room = Temperature.FromDegreesCelsius(60),
            Target = Temperature.FromDegreesCelsius(20),
        };
        TimeSpan time = TimeSpan.FromMinutes(8);
        Numbers.Close(7318.7475, wall.HeatFluxAfter(time).WattsPerSquareMeter, 1e-7);
        Numbers.Near(7400, wall.HeatFluxAfter(time).WattsPerSquareMeter, 100);
        Numbers.Close(8675258.3574, wall.HeatTakenAfter(time).Joules, 1e-9);
        Numbers.Near(2.73e7, wall.HeatTakenAfter(time).Joules * Math.PI, 1e5);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(2000)]
    [Evidence(Basis.Identity, "heat is kept: what a wall has taken is Bi times the integral of what is left at its face, summed by Simpson's rule in the sixth root of Fo; short times and series meet")]
    public void A_wall_keeps_its_heat(double biot)
    {
        foreach (double fourier in (double[])[1e-6, 1e-3, SlabKernel.ShortTime, 0.05, 1])
        {
            const int panels = 2000;
            double end = Math.Sqrt(fourier);
            double sum = 0;
            for (int i = 0; i <= panels; i++)
            {
                double x = (double)i / panels;
                double u = end * x * x * x;
                sum += (i == 0 || i == panels ? 1 : i % 2 == 1 ? 4 : 2) * 2 * u * SlabKernel.Face(biot, u * u) * 3 * x * x;
            }

            Numbers.Close(biot * sum * end / panels / 3, SlabKernel.Taken(biot, fourier), 1e-7);
        }

        Numbers.Close(SlabKernel.Taken(biot, SlabKernel.ShortTime), SlabKernel.Taken(biot, SlabKernel.ShortTime * (1 + 1e-12)), 1e-9);
        Numbers.Close(1, SlabKernel.Taken(biot, 400));
    }

    [Property]
    [Evidence(Basis.Identity, "face before back, both rising; target reached at the time given; near a Biot number of 0.1 the wall takes 0.9 to 1.12 of the time of the lump; workings hold to the kernel")]
    public void Walls_are_consistent(NormalFloat a, NormalFloat b, NormalFloat c)
    {
        WarmUp wall = Tub with
        {
            Material = FixtureThermalData.Acrylic,
            WallThickness = Length.FromMillimeters(3 + (40 * Part(a))),
            Mass = Mass.FromKilograms(5 + (50 * Part(b))),
            Target = Temperature.FromDegreesCelsius(10.2 + (11 * Part(c))),
        };
        Assert.True(wall.Time <= wall.TimeThroughout);
        Numbers.Near(wall.Target.Kelvins, wall.TemperatureAfter(wall.Time!.Value).Kelvins, 1e-5);
        Numbers.Near(wall.Target.Kelvins, wall.BackTemperatureAfter(wall.TimeThroughout!.Value).Kelvins, 1e-5);
        Assert.True(wall.TemperatureAfter(wall.Time.Value).Kelvins >= wall.BackTemperatureAfter(wall.Time.Value).Kelvins);
        Numbers.CanBeWritten(wall.Workings());

        double conductivity = 9 * 0.006 / 0.1;
        FixtureThermalData edge = FixtureThermalData.Acrylic with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(conductivity) };
        FixtureThermalData beyond = edge with { Conductivity = ThermalConductivity.FromWattsPerMeterKelvin(conductivity * 1.001) };
        WarmUp asWall = Tub with { Material = edge, Target = Temperature.FromDegreesCelsius(14 + (6 * Part(c))) };
        WarmUp asLump = asWall with { Material = beyond };
        Assert.NotEqual(asWall.Method, asLump.Method);
        Assert.InRange(asWall.Time!.Value.TotalSeconds / asLump.Time!.Value.TotalSeconds, 0.9, 1.04);
        Assert.InRange(asWall.TimeThroughout!.Value.TotalSeconds / asLump.Time.Value.TotalSeconds, 1.0, 1.12);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: iron bath at 10 °C in air of 22 °C and 60 % (dew point 13.875 °C by Magnus): dry when it has that, τ ln(12/8.125) with τ 52.7 min = 20.5 min; 3 K more, τ ln(12/5.125) = 44.8 min; dry at once below pws(10)/pws(22) = 1228.0/2644.6 = 46.4 %")]
    public void Condensation_while_iron_lags()
    {
        CondensationRisk risk = new(Tub, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(60)));
        Numbers.Near(-3.875, risk.SpreadNow.Kelvins, 0.03);
        Numbers.Near(20.5, risk.WetUntil!.Value.TotalMinutes, 0.3);
        Numbers.Near(44.8, risk.SpreadFrom!.Value.TotalMinutes, 0.5);
        Numbers.Near(46.4, risk.DryBelow.Percent, 0.1);
        Numbers.Near(0, risk.SpreadAfter(risk.WetUntil.Value).Kelvins, 1e-6);
        Numbers.Near(3, risk.SpreadAfter(risk.SpreadFrom.Value).Kelvins, 1e-6);
        Assert.Equal(ComparisonOutcome.Beyond, risk.Checks[0].Outcome);
        Assert.Equal(ComparisonOutcome.Within, risk.Checks[1].Outcome);
        Assert.Contains("46.4 %", risk.Checks[0].Remedy, StringComparison.Ordinal);
        Assert.StartsWith("-3.89 K above dew point now; wet for 20.6 min", risk.ToString(), StringComparison.Ordinal);
        Numbers.CanBeWritten(risk.Workings());

        CondensationRisk dry = new(Tub, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(30)));
        Assert.Equal(TimeSpan.Zero, dry.WetUntil);
        Assert.Equal(TimeSpan.Zero, dry.SpreadFrom);
        Assert.Equal(ComparisonOutcome.Within, dry.Checks[0].Outcome);
        CondensationRisk damp = new(Tub, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(90)));
        Assert.Null(damp.SpreadFrom);
        Assert.NotNull(damp.WetUntil);
        Assert.Equal(ComparisonOutcome.Beyond, damp.Checks[1].Outcome);
        Assert.Contains("not in this air", damp.ToString(), StringComparison.Ordinal);
        Assert.Null(new CondensationRisk(Tub, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(100))).WetUntil);
        Numbers.CanBeWritten(damp.Workings());
        Numbers.Refuses("air", () => _ = new CondensationRisk(Tub, new MoistAir(Temperature.FromDegreesCelsius(21), Ratio.FromPercent(60))));
        Numbers.Refuses("spread", () => _ = new CondensationRisk(Tub, new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(60)), TemperatureDelta.FromKelvins(21)));
        Assert.Equal(3, dry.Cautions.Count);
    }

    [Fact]
    [Evidence(Basis.Contract, "a room that is not warm enough gives no time and says so; a warm fixture needs none")]
    public void Cold_rooms_and_warm_fixtures()
    {
        WarmUp cold = Tub with { Room = Temperature.FromDegreesCelsius(18.05) };
        Assert.False(cold.IsAvailable);
        Assert.Null(cold.Time);
        Assert.Equal(ComparisonOutcome.Within, Assert.Single((cold with { Start = Temperature.FromDegreesCelsius(19) }).Checks).Outcome);
        Assert.Equal("Heat the room above 18.1 °C (64.58 °F).", cold.Checks[0].Remedy);
        WarmUp warm = cold with { Start = Temperature.FromDegreesCelsius(19) };
        Assert.Equal(TimeSpan.Zero, warm.Time);
        Assert.Equal(0, warm.Heat.Joules);
        Numbers.CanBeWritten(cold.Workings());
        Numbers.CanBeWritten(warm.Workings());
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
        Numbers.Near(tub.Target.Kelvins, tub.TemperatureAfter(tub.Time!.Value).Kelvins, 1e-6);
        Assert.True((tub with { Mass = Mass.FromKilograms(tub.Mass.Kilograms + 1) }).Time > tub.Time);
        Numbers.CanBeWritten(tub.Workings());
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
        Numbers.Refuses("time", () => _ = Tub.HeatFluxAfter(TimeSpan.FromDays(61)));
        Numbers.Refuses("time", () => _ = Tub.PowerAfter(TimeSpan.FromHours(-1)));
        Numbers.Refuses("time", () => _ = Tub.HeatTakenAfter(TimeSpan.FromHours(-1)));
        Assert.Equal(Tub, Tub with { Mass = Mass.FromKilograms(Tub.Mass.Kilograms) });
        Assert.Equal(3, Tub.Cautions.Count);
    }

    // What is left of the first difference at the face, step by step; Thomas' algorithm on half layers at both ends.
    private static double[] FiniteDifferences(double biot, int layers, double step, int steps, out double back)
    {
        double dx = 1.0 / layers;
        double r = step / (dx * dx) / 2;
        double[] u = new double[layers + 1];
        Array.Fill(u, 1);
        double[] face = new double[steps + 1];
        face[0] = 1;
        double[] below = new double[layers + 1];
        double[] middle = new double[layers + 1];
        double[] above = new double[layers + 1];
        double[] right = new double[layers + 1];
        for (int k = 1; k <= steps; k++)
        {
            for (int i = 0; i <= layers; i++)
            {
                double lower = i == 0 ? u[1] : u[i - 1];
                double upper = i == layers ? u[i - 1] - (2 * dx * biot * u[i]) : u[i + 1];
                right[i] = u[i] + (r * (lower - (2 * u[i]) + upper));
                below[i] = i == 0 ? 0 : i == layers ? -2 * r : -r;
                above[i] = i == 0 ? -2 * r : i == layers ? 0 : -r;
                middle[i] = 1 + (2 * r) + (i == layers ? 2 * r * dx * biot : 0);
            }

            for (int i = 1; i <= layers; i++)
            {
                double m = below[i] / middle[i - 1];
                middle[i] -= m * above[i - 1];
                right[i] -= m * right[i - 1];
            }

            u[layers] = right[layers] / middle[layers];
            for (int i = layers - 1; i >= 0; i--)
            {
                u[i] = (right[i] - (above[i] * u[i + 1])) / middle[i];
            }

            face[k] = u[layers];
        }

        back = u[0];
        return face;
    }
}
