using BenchmarkDotNet.Attributes;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>The typed wet film beside the bare arithmetic, and beside its derivation in words.</summary>
[MemoryDiagnoser]
public class FilmBenchmarks
{
    private readonly Length dry = Length.FromMicrometers(30);
    private readonly Ratio solids = Ratio.FromPercent(40);
    private readonly Ratio reducer = Ratio.FromPercent(10);
    private double bareDry = 30e-6;
    private double bareSolids = 0.4;
    private double bareReducer = 0.1;

    [Benchmark(Baseline = true)]
    public double Bare() => bareDry * (1 + bareReducer) / bareSolids;

    [Benchmark]
    public double Typed() => new WetFilm(dry, solids, reducer).Thickness.Meters;

    [Benchmark]
    public string InWords() => new WetFilm(dry, solids, reducer).Workings().ToPlainText(DisplayUnits.Si);

    [GlobalSetup]
    public void Vary()
    {
        // Fields that the compiler cannot fold.
        bareDry = dry.Meters;
        bareSolids = solids.DecimalFractions;
        bareReducer = reducer.DecimalFractions;
    }
}
