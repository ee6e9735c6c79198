using BenchmarkDotNet.Attributes;
using MathNet.Numerics.Distributions;
using Refinish.Inspection;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>Exact tolerance factors of five spots beside Howe's approximation, which is off in the third digit.</summary>
[MemoryDiagnoser]
public class ToleranceBenchmarks
{
    private readonly Ratio coverage = Ratio.FromPercent(90);
    private readonly Ratio confidence = Ratio.FromPercent(95);

    [Benchmark(Baseline = true)]
    public double Howe() => Normal.InvCDF(0, 1, 0.95) * System.Math.Sqrt(4 * (1 + (1.0 / 5)) / ChiSquared.InvCDF(4, 0.05));

    [Benchmark]
    public double ExactTwoSided() => FilmTolerance.FactorFor(5, coverage, confidence, ToleranceSide.Both);

    [Benchmark]
    public double ExactOneSided() => FilmTolerance.FactorFor(5, coverage, confidence, ToleranceSide.Lower);
}
