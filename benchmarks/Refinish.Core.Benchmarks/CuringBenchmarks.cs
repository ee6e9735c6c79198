using System;
using System.Linq;
using BenchmarkDotNet.Attributes;
using MathNet.Numerics.OdeSolvers;
using Refinish.Curing;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>
/// Equivalent age over a one-minute log of a week, made anew and already made; conversion over the same log; and one night's conversion beside MathNet's
/// fourth-order Runge–Kutta with steps of a second.
/// </summary>
[MemoryDiagnoser]
public class CuringBenchmarks
{
    private static readonly DateTimeOffset Start = new(2026, 3, 3, 17, 0, 0, TimeSpan.Zero);
    private static readonly Temperature Reference = Temperature.FromDegreesCelsius(25);
    private static readonly TemperatureShift Doubling = TemperatureShift.Doubling(2);
    private static readonly TemperatureShift Arrhenius = TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(55));

    private readonly CureReaction epoxy = new()
    {
        Factor = Frequency.FromHertz(3000),
        ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(48),
        AutocatalyticFactor = Frequency.FromHertz(1.2e5),
        AutocatalyticActivationEnergy = MolarEnergy.FromKilojoulesPerMole(52),
        AutocatalyticOrder = 1,
        Order = 2,
        Source = Source.Invented("an epoxy with an amine for the benchmark"),
    };

    private TemperatureHistory week = null!;
    private EquivalentAge age = null!;
    private ConversionCurve curve = null!;
    private ConversionCurve night = null!;

    [GlobalSetup]
    public void Prepare()
    {
        // Every minute another temperature.
        week = new TemperatureHistory(
            Start, Enumerable.Range(0, 7 * 24 * 60).Select(i => new TemperatureSegment(TimeSpan.FromMinutes(1), Temperature.FromDegreesCelsius(16 + (4 * Math.Sin(i / 229.0))))));
        age = new EquivalentAge(week, Arrhenius, Reference);
        curve = new ConversionCurve(epoxy, week, Start);
        night = new ConversionCurve(epoxy, TemperatureHistory.Constant(Start, Temperature.FromDegreesCelsius(16)), Start);
    }

    [Benchmark(Baseline = true)]
    public TimeSpan AgeOfAWeek() => age.Between(Start, Start.AddDays(7));

    [Benchmark]
    public TimeSpan AgeOfAWeekMadeAnewDoubling() => new EquivalentAge(week, Doubling, Reference).Between(Start, Start.AddDays(7));

    [Benchmark]
    public TimeSpan AgeOfAWeekMadeAnewArrhenius() => new EquivalentAge(week, Arrhenius, Reference).Between(Start, Start.AddDays(7));

    [Benchmark]
    public Ratio ConversionOfAWeek() => curve.ConversionAt(Start.AddDays(7));

    [Benchmark]
    public Ratio ConversionOfANight() => night.ConversionAt(Start.AddHours(14));

    [Benchmark]
    public double PeerConversionOfANight()
    {
        double rt = 8.31446261815324 * 289.15;
        double k1 = 3000 * Math.Exp(-48000 / rt);
        double k2 = 1.2e5 * Math.Exp(-52000 / rt);
        return RungeKutta.FourthOrder(0, 0, 14 * 3600, (14 * 3600) + 1, (t, a) => (k1 + (k2 * a)) * (1 - a) * (1 - a))[14 * 3600];
    }
}
