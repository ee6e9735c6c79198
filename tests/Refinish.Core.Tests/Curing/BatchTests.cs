using System;
using System.Linq;
using System.Threading;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

public class BatchTests
{
    private static readonly CureReaction Law = new()
    {
        Factor = Frequency.FromHertz(3000),
        ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(48),
        AutocatalyticFactor = Frequency.FromHertz(1.2e5),
        AutocatalyticActivationEnergy = MolarEnergy.FromKilojoulesPerMole(52),
        AutocatalyticOrder = 1,
        Order = 2,
        Source = Source.Invented("an epoxy with an amine for these tests"),
    };

    private static readonly BatchExotherm Cup = new()
    {
        Reaction = Law,
        Mass = Mass.FromKilograms(0.5),
        SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(1800),
        HeatOfReaction = SpecificEnergy.FromKilojoulesPerKilogram(350),
        HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(7),
        Area = Area.FromSquareMeters(0.035),
        Start = C(25),
        Air = C(25),
        UsableTo = Ratio.FromPercent(20),
    };

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static double Part(NormalFloat x) => Math.Abs(x.Get) % 1;

    [Fact]
    [Evidence(Basis.Independent, "the same two equations integrated by MathNet.Numerics 5.0.0, RungeKutta.FourthOrder for vectors, 200 000 steps over six hours: peak, its time, conversion there, pot life")]
    public void Course_matches_another_integrator()
    {
        double rise = 350e3 / 1800;
        double loss = 7 * 0.035 / (0.5 * 1800);
        const int steps = 200000;
        const double seconds = 6 * 3600;
        Vector<double>[] other = RungeKutta.FourthOrder(
            Vector<double>.Build.Dense([0, 298.15]), 0, seconds, steps + 1,
            (t, y) =>
            {
                double rt = 8.31446261815324 * y[1];
                double rate = ((3000 * Math.Exp(-48000 / rt)) + (1.2e5 * Math.Exp(-52000 / rt) * y[0])) * (1 - y[0]) * (1 - y[0]);
                return Vector<double>.Build.Dense([rate, (rise * rate) - (loss * (y[1] - 298.15))]);
            });
        int peak = Enumerable.Range(0, steps).MaxBy(i => other[i][1]);
        int life = Enumerable.Range(0, steps).First(i => other[i][0] >= 0.2);
        BatchCourse course = Cup.Run();
        Numbers.Near(other[peak][1], course.Peak.Kelvins, 1e-5);
        Numbers.Near(peak * seconds / steps, course.PeakAfter.TotalSeconds, 0.2);
        Numbers.Near(other[peak][0], course.ConversionAtPeak.DecimalFractions, 1e-4);
        Numbers.Near(life * seconds / steps, course.PotLife!.Value.TotalSeconds, 0.2);
    }

    [Fact]
    [Evidence(Basis.Identity, "without loss of heat the peak is the start plus ΔH/c, 350/1.8 = 194.4 K by hand; critical self-heating R T²/E = 8.314 × 298.15² / 52000 = 14.2 K by hand")]
    public void Without_loss_all_heat_stays()
    {
        BatchCourse course = (Cup with { HeatTransfer = HeatTransferCoefficient.Zero }).Run();
        Numbers.Near(25 + (350 / 1.8), course.Peak.DegreesCelsius, 1e-3);
        Numbers.Near(194.4, Cup.AdiabaticRise.Kelvins, 0.05);
        Numbers.Near(14.2, Cup.CriticalSelfHeating!.Value.Kelvins, 0.05);
        Assert.Null((Cup with { HeatTransfer = HeatTransferCoefficient.Zero }).TimeConstant);
        Numbers.Close(0.5 * 1800 / (7 * 0.035), Cup.TimeConstant!.Value.TotalSeconds, 1e-6);
        Numbers.CanBeWritten(Cup.Workings());
    }

    [Fact]
    [Evidence(Basis.Identity, "a batch that loses its heat at once is a film: its pot life is the isothermal time to that conversion")]
    public void A_small_batch_lives_like_a_film()
    {
        DateTimeOffset start = new(2026, 3, 3, 17, 0, 0, TimeSpan.Zero);
        BatchExotherm drop = Cup with { Mass = Mass.FromGrams(2), HeatTransfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(500) };
        ConversionCurve film = new(Law, TemperatureHistory.Constant(start, C(25)), start);
        TimeSpan isothermal = film.InstantOf(Ratio.FromPercent(20))!.Value - start;
        BatchCourse course = drop.Run();
        Numbers.Close(isothermal.TotalSeconds, course.PotLife!.Value.TotalSeconds, 3e-4);
        Assert.False(course.RunsAway);
        Assert.Null(course.SelfHeating.Remedy);
        Assert.True(Cup.Run().PotLife < isothermal);
    }

    [Property(MaxTest = 30)]
    [Evidence(Basis.Identity, "more mass in the same cup never lives longer nor stays cooler; warmer air neither; the peak never passes start or air plus the rise; the same input gives the same course")]
    public void Larger_and_warmer_batches_live_shorter(NormalFloat a, NormalFloat b)
    {
        BatchExotherm batch = Cup with { Mass = Mass.FromKilograms(0.05 + (2 * Part(a))), Start = C(15 + (15 * Part(b))), Air = C(15 + (15 * Part(b))) };
        BatchCourse course = batch.Run();
        BatchCourse larger = (batch with { Mass = batch.Mass * 1.5 }).Run();
        BatchCourse warmer = (batch with { Start = C(batch.Start.DegreesCelsius + 3), Air = C(batch.Air.DegreesCelsius + 3) }).Run();
        Assert.True(larger.PotLife <= course.PotLife && larger.Peak.Kelvins >= course.Peak.Kelvins);
        Assert.True(warmer.PotLife < course.PotLife && warmer.Peak.Kelvins > course.Peak.Kelvins);
        Assert.True(course.Peak.Kelvins <= batch.Start.Kelvins + batch.AdiabaticRise.Kelvins + 1e-6);
        Assert.Equal(course.Peak, batch.Run().Peak);
        Assert.Equal(course.PotLife, batch.Run().PotLife);
    }

    [Fact]
    [Evidence(Basis.Contract, "a large batch runs away and says so; a warm mix in cold air is hottest at the start; refusals, cancellation, text")]
    public void Runaway_is_flagged()
    {
        BatchCourse large = (Cup with { Mass = Mass.FromKilograms(5), Area = Area.FromSquareMeters(0.16) }).Run();
        Assert.True(large.RunsAway);
        Assert.NotNull(large.SelfHeating.Remedy);
        Assert.EndsWith(", runs away", large.ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(large.Cautions);
        BatchCourse cooling = (Cup with { Mass = Mass.FromGrams(5), Start = C(40), Air = C(5) }).Run();
        Assert.Equal(TimeSpan.Zero, cooling.PeakAfter);
        Numbers.Near(40, cooling.Peak.DegreesCelsius, 1e-9);
        CureReaction flat = Law with { ActivationEnergy = MolarEnergy.Zero, AutocatalyticActivationEnergy = MolarEnergy.Zero, Factor = Frequency.FromHertz(1e-4), AutocatalyticFactor = Frequency.Zero };
        Assert.Null((Cup with { Reaction = flat }).Run().RunsAway);
        Assert.Null((Cup with { Reaction = flat }).CriticalSelfHeating);
        Assert.Throws<OperationCanceledException>(() => Cup.Run(new CancellationToken(true)));
        Numbers.Refuses("UsableTo", () => _ = (Cup with { FirstConversion = Ratio.FromPercent(30) }).Run());
        Numbers.Refuses("Mass", () => _ = Cup with { Mass = Mass.Zero });
        Numbers.Refuses("HeatOfReaction", () => _ = Cup with { HeatOfReaction = SpecificEnergy.Zero });
        Numbers.Refuses("SpecificHeat", () => _ = Cup with { SpecificHeat = SpecificEntropy.FromJoulesPerKilogramKelvin(400) });
        Assert.Equal("0.5 kg at 25 °C in air of 25 °C, rise without loss 194.44 K", Cup.ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: (500 g / 100 g)^−0.2 = 0.725; b from 100 g 8 min and 500 g 5.8 min = −ln(0.725)/ln 5 = 0.2")]
    public void Mass_shortens_pot_life_by_a_power()
    {
        MassEffect effect = new(Mass.FromGrams(100), 0.2);
        Numbers.Near(0.725 * 8, effect.PotLife(TimeSpan.FromMinutes(8), Mass.FromGrams(500))!.Value.TotalMinutes, 0.005);
        Numbers.CanBeWritten(effect.Workings(TimeSpan.FromMinutes(8), Mass.FromGrams(500)));
        Assert.Null(effect.PotLife(TimeSpan.FromMinutes(8), Mass.FromGrams(501)));
        Assert.Null(effect.PotLife(TimeSpan.FromMinutes(8), Mass.FromGrams(19)));
        MassEffect fitted = MassEffect.FromTwoBatches(Mass.FromGrams(100), TimeSpan.FromMinutes(8), Mass.FromGrams(500), TimeSpan.FromMinutes(5.8));
        Numbers.Near(0.2, fitted.Exponent, 0.0005);
        Numbers.Near(5.8, fitted.PotLife(TimeSpan.FromMinutes(8), Mass.FromGrams(500))!.Value.TotalMinutes, 1e-6);
        Numbers.Near(2.5, fitted.Heaviest.Kilograms, 1e-12);
        Assert.Equal("pot life × (m / 0.1 kg)^-0.2", effect.ToString());
        Numbers.Refuses("exponent", () => _ = new MassEffect(Mass.FromGrams(100), -0.1));
        Numbers.Refuses("other", () => _ = MassEffect.FromTwoBatches(Mass.FromGrams(100), TimeSpan.FromMinutes(8), Mass.FromGrams(101), TimeSpan.FromMinutes(5.8)));
        Numbers.Refuses("otherPotLife", () => _ = MassEffect.FromTwoBatches(Mass.FromGrams(100), TimeSpan.FromMinutes(8), Mass.FromGrams(500), TimeSpan.FromMinutes(9)));
    }

    [Fact]
    [Evidence(Basis.Independent, "straight between rows by hand: 1.3 at 40 % between 1.6 at 30 % and 1 at 50 %; unknown and outside the table are never one")]
    public void Humidity_is_a_table_or_unknown()
    {
        HumidityEffect effect = new(
            [new HumidityPoint(Ratio.FromPercent(30), 1.6), new HumidityPoint(Ratio.FromPercent(50), 1), new HumidityPoint(Ratio.FromPercent(80), 0.7)], Source.Invented("for this test"));
        Numbers.Near(1.3, effect.FactorAt(Ratio.FromPercent(40))!.Value, 1e-12);
        Numbers.Near(2.6, effect.TimeAt(TimeSpan.FromHours(2), Ratio.FromPercent(40))!.Value.TotalHours, 1e-9);
        Numbers.Near(0.7, effect.FactorAt(Ratio.FromPercent(80))!.Value, 1e-12);
        Numbers.CanBeWritten(effect.Workings(Ratio.FromPercent(63)));
        Assert.Null(effect.FactorAt(Ratio.FromPercent(29)));
        Assert.Null(effect.FactorAt(Ratio.FromPercent(81)));
        Assert.Equal(ComparisonOutcome.Beyond, effect.Check(Ratio.FromPercent(29)).Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, effect.Check(Ratio.FromPercent(81)).Outcome);
        Assert.Equal(ComparisonOutcome.Within, effect.Check(Ratio.FromPercent(60)).Outcome);
        Assert.Null(HumidityEffect.Unknown.FactorAt(Ratio.FromPercent(50)));
        Assert.Null(HumidityEffect.Unknown.TimeAt(TimeSpan.FromHours(2), Ratio.FromPercent(50)));
        Assert.Equal(ComparisonOutcome.CannotBeJudged, HumidityEffect.Unknown.Check(Ratio.FromPercent(50)).Outcome);
        Assert.False(HumidityEffect.Unknown.IsKnown);
        Assert.Empty(HumidityEffect.Unknown.Workings(Ratio.FromPercent(50)).Steps);
        Assert.Equal("effect of humidity not known", HumidityEffect.Unknown.ToString());
        Numbers.Refuses("points", () => _ = new HumidityEffect([new(Ratio.FromPercent(50), 1), new(Ratio.FromPercent(50), 2)], effect.Source));
        Numbers.Refuses("timeFactor", () => _ = new HumidityPoint(Ratio.FromPercent(50), 0));
        Numbers.Refuses("humidity", () => _ = effect.FactorAt(Ratio.FromPercent(101)));
    }
}
