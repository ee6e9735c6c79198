using System;
using System.Linq;
using BenchmarkDotNet.Attributes;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>
/// A day of one bathroom with ten sources, every result asked for, beside a fourth-order Runge–Kutta integration of the same room that gives one
/// substance at whole minutes and no maxima between them.
/// </summary>
[MemoryDiagnoser]
public class AirBenchmarks
{
    private const int Sources = 10;

    private readonly Room room = new() { Length = Length.FromFeet(8), Width = Length.FromFeet(5), Height = Length.FromFeet(8) };
    private readonly Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) };
    private readonly NearField near = NearField.Hemisphere(Length.FromMeters(0.8), Speed.FromMetersPerSecond(0.1));
    private Emission[] oneProduct = [];
    private Emission[] twoProducts = [];
    private Emission[] mixed = [];

    [GlobalSetup]
    public void Prepare()
    {
        SolventShare[] topcoat =
        [
            new(Solvents.ButylAcetate, Ratio.FromPercent(60)),
            new(Solvents.Xylene, Ratio.FromPercent(25)),
            new(Solvents.MethoxypropylAcetate, Ratio.FromPercent(15)),
        ];
        SolventShare[] primer =
        [
            new(Solvents.Butanone, Ratio.FromPercent(50)),
            new(Solvents.Xylene, Ratio.FromPercent(50)),
        ];
        SolventShare[] wipe = [new(Solvents.Acetone, Ratio.FromPercent(100))];
        oneProduct = [.. Enumerable.Range(0, Sources).Select(i => Coat(i, topcoat, 15, null))];
        twoProducts = [.. Enumerable.Range(0, Sources).Select(i => Coat(i, i < 4 ? primer : topcoat, i < 4 ? 10 : 15, null))];

        // Wipes, primer and a topcoat whose film has a slow tail: four film rates.
        mixed =
        [
            .. Enumerable.Range(0, Sources).Select(i => i < 2
                ? new WipeEmission
                {
                    Name = "wipe", Start = TimeSpan.FromMinutes(40 * i), WipeTime = TimeSpan.FromMinutes(5), VolatileMass = Mass.FromGrams(40),
                    Solvents = wipe, EvaporationTime = TimeSpan.FromMinutes(2),
                }
                : (Emission)Coat(i, i < 5 ? primer : topcoat, i < 5 ? 10 : 15, i < 5 ? null : new FilmTail(Ratio.FromPercent(20), TimeSpan.FromHours(3)))),
        ];
    }

    [Benchmark(Baseline = true)]
    public double OneProduct() => Everything(oneProduct);

    [Benchmark]
    public double TwoProducts() => Everything(twoProducts);

    [Benchmark]
    public double WipesPrimerAndTails() => Everything(mixed);

    /// <summary>The same day, with every comparison and caution written out.</summary>
    [Benchmark]
    public int Judged()
    {
        AirStudy study = new(room, fan, oneProduct, TimeSpan.FromHours(8));
        return study.Exposure.Count + study.Cautions.Count + (int)study.StrictestLimit.Outcome + (int)study.ShortTermLimit.Outcome;
    }

    [Benchmark]
    public double NearAndFar()
    {
        NearFieldStudy zones = new(new AirStudy(room, fan, oneProduct, TimeSpan.FromHours(8)), near);
        return zones.Substances.Sum(air => air.Near.Peak.DecimalFractions + air.Far.Peak.DecimalFractions);
    }

    [Benchmark]
    public double Fire() => new AirStudy(room, fan, oneProduct, TimeSpan.FromHours(8)).FlammableLimit.Value!.Value.Si;

    [Benchmark]
    public double RungeKuttaOfOneSubstance()
    {
        double volume = room.Volume.CubicMeters;
        double changes = fan.FreshAirFlow.CubicMetersPerSecond / volume;
        SolventEmission[] coats = [.. oneProduct.Cast<SolventEmission>()];
        Vector<double> Derivative(double time, Vector<double> state)
        {
            Vector<double> change = Vector<double>.Build.Dense(2);
            double flashing = 0;
            double landing = 0;
            foreach (SolventEmission coat in coats)
            {
                if (coat.Start.TotalSeconds <= time && time < coat.End.TotalSeconds)
                {
                    double rate = coat.VolatileMass.Kilograms / coat.SprayTime.TotalSeconds;
                    flashing += rate * coat.FlashFraction.DecimalFractions;
                    landing += rate * (1 - coat.FlashFraction.DecimalFractions);
                }
            }

            double leaving = state[0] / coats[0].FilmTimeConstant.TotalSeconds;
            change[0] = landing - leaving;
            change[1] = flashing + leaving - (changes * state[1]);
            return change;
        }

        return RungeKutta.FourthOrder(Vector<double>.Build.Dense(2), 0, 86400, 1441, Derivative).Max(state => state[1]) / volume;
    }

    private static SolventEmission Coat(int i, SolventShare[] solvents, double film, FilmTail? tail) => new()
    {
        Name = "coat",
        Start = TimeSpan.FromMinutes(40 * i),
        SprayTime = TimeSpan.FromMinutes(6),
        VolatileMass = Mass.FromGrams(100 + (7 * i)),
        Solvents = solvents,
        FlashFraction = Ratio.FromPercent(40),
        FilmTimeConstant = TimeSpan.FromMinutes(film),
        Tail = tail,
    };

    private double Everything(Emission[] emissions)
    {
        AirStudy study = new(room, fan, emissions, TimeSpan.FromHours(8));
        double sum = study.Substances.Sum(air => air.Peak.DecimalFractions + air.FifteenMinuteAverage.DecimalFractions + air.EightHourAverage.DecimalFractions);
        sum += study.FlammableLimit.Value?.Si ?? 0;
        sum += study.StrictestIndex ?? 0;
        sum += study.ShortTermIndex ?? 0;
        sum += study.TimeToReEntry()?.TotalSeconds ?? 0;
        return sum + study.TimeToClear(Ratio.FromPercent(1))?.TotalSeconds ?? 0;
    }
}
