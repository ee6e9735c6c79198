using System;
using BenchmarkDotNet.Attributes;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>A Kubelka–Munk film over an old colour: the typed value beside the hyperbolic form written out.</summary>
[MemoryDiagnoser]
public class HidingBenchmarks
{
    private readonly PaintOptics paint = new(ReciprocalLength.FromInverseMillimeters(5), ReciprocalLength.FromInverseMillimeters(80));
    private readonly Length film = Length.FromMicrometers(40);
    private readonly Ratio old = Ratio.FromPercent(20);

    [Benchmark(Baseline = true)]
    public double Bare()
    {
        double a = 1 + (5e3 / 80e3);
        double b = Math.Sqrt((a * a) - 1);
        double c = b / Math.Tanh(b * 80e3 * film.Meters);
        return (1 - (0.2 * (a - c))) / (a - 0.2 + c);
    }

    [Benchmark]
    public double Typed() => new HidingFilm(paint, film, old).Reflectance.DecimalFractions;

    [Benchmark]
    public double FilmThatHides() => new HidingThickness(paint).DryFilm.Meters;
}
