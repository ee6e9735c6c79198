using System;
using System.Linq;
using BenchmarkDotNet.Attributes;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>
/// A whole estimate and its 100 000 trials, by each way of sampling, beside the same number of triangular draws by the platform's own generator:
/// what a hand-written simulation of the hours alone would take.
/// </summary>
[MemoryDiagnoser]
public class EstimateBenchmarks
{
    private static readonly PriceBook Book = new()
    {
        Currency = Currency.Of("USD"),
        LabourRate = 30m,
        Burden = Ratio.FromPercent(22),
        OverheadPerHour = 9m,
        TravelPerTrip = 25m,
        DisposalPerJob = 10m,
        ConsumablesPerFixture = 35m,
        Materials = [new("topcoat", Volume.FromMilliliters(1183), 78m), new("topcoat", Volume.FromMilliliters(4732), 240m), new("primer", Volume.FromMilliliters(946), 52.35m)],
        TargetMargin = new Margin(Ratio.FromPercent(45)),
    };

    // 24 labour lines, as a bathroom with tub, sink and tile has.
    private static readonly EstimateRequest Job = new()
    {
        Labour = new LabourEstimate([.. LabourStandards.Generic.Select(standard => new LabourTask { Standard = standard,
            Area = Area.FromSquareMeters(7), Units = 2 })]),
        Materials = [new("topcoat", "topcoat", Volume.FromMilliliters(2490)), new("primer", "primer", Volume.FromMilliliters(927))],
        Fixtures = 3,
    };

    private static readonly EstimateUncertainty Doubts = new()
    {
        Quantities =
        [
            new QuantityFactor { Name = "taped area", Distribution = new TriangularDistribution(0.95, 1, 1.1), ScalesAreaLabour = true },
            QuantityFactor.Transfer(Ratio.FromPercent(60), new PertDistribution(0.45, 0.6, 0.7), ["topcoat", "primer"]),
        ],
        KitPrices = new TriangularDistribution(0.97, 1, 1.1),
    };

    private readonly PriceEstimate estimate = new(Book, Job);

    [Params(1, 2)]
    public int Threads { get; set; }

    [Benchmark]
    public decimal? Estimate() => new PriceEstimate(Book, Job).Total;

    [Benchmark]
    public double Plain() => Run(SamplingMethod.Random, 0);

    [Benchmark]
    public double LatinHypercube() => Run(SamplingMethod.LatinHypercube, 0);

    [Benchmark]
    public double QuasiRandom() => Run(SamplingMethod.QuasiRandom, 0);

    [Benchmark]
    public double Correlated() => Run(SamplingMethod.LatinHypercube, 50);

    [Benchmark(Baseline = true)]
    public double ByHand()
    {
        // Not for secrets, and the same numbers in every run.
#pragma warning disable CA5394
        Random random = new(1);
        double[] sums = new double[100_000];
        ThreePoint[] hours = [.. Job.Labour.Lines.Select(line => line.HourRange)];
        for (int i = 0; i < sums.Length; i++)
        {
            foreach (ThreePoint triple in hours)
            {
                double u = random.NextDouble();
                double range = triple.Maximum - triple.Minimum;
                double left = triple.Mode - triple.Minimum;
                sums[i] += u * range < left ? triple.Minimum + Math.Sqrt(u * range * left) : triple.Maximum - Math.Sqrt((1 - u) * range * (triple.Maximum - triple.Mode));
            }
        }
#pragma warning restore CA5394

        Array.Sort(sums);
        return sums[90_000];
    }

    private double Run(SamplingMethod sampling, double correlation) =>
        EstimateRange.Of(estimate, Doubts, new SimulationOptions { Sampling = sampling, Threads = Threads, Correlation = Ratio.FromPercent(correlation) }).Cost.P90;
}
