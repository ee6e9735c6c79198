using System.Linq;
using BenchmarkDotNet.Attributes;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>A thousand wet films: the typed value beside the bare arithmetic, and one derivation in words.</summary>
[MemoryDiagnoser]
public class FilmBenchmarks
{
    private const int Films = 1000;

    private readonly double[] bare = [.. Enumerable.Range(1, Films).Select(i => i * 1e-7)];
    private readonly Length[] typed = [.. Enumerable.Range(1, Films).Select(i => Length.FromMeters(i * 1e-7))];
    private readonly Ratio solids = Ratio.FromPercent(40);
    private readonly Ratio reducer = Ratio.FromPercent(10);

    [Benchmark(Baseline = true, OperationsPerInvoke = Films)]
    public double Bare()
    {
        double sum = 0;
        foreach (double dry in bare)
        {
            sum += dry * (1 + 0.1) / 0.4;
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Films)]
    public double Typed()
    {
        double sum = 0;
        foreach (Length dry in typed)
        {
            sum += new WetFilm(dry, solids, reducer).Thickness.Meters;
        }

        return sum;
    }

    [Benchmark]
    public string InWords() => new WetFilm(typed[300], solids, reducer).Workings().ToPlainText(DisplayUnits.Si);
}
