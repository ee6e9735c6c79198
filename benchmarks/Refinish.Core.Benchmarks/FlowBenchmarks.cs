using System;
using BenchmarkDotNet.Attributes;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>The sag of a drying film over an hour: Gauss–Legendre on three panels beside a midpoint rule of a second.</summary>
[MemoryDiagnoser]
public class FlowBenchmarks
{
    private readonly DryingFilm film = new()
    {
        WetFilm = Length.FromMicrometers(75),
        Solids = Ratio.FromPercent(41),
        Viscosity = DynamicViscosity.FromPascalSeconds(0.25),
        SolventTime = TimeSpan.FromSeconds(60),
        Thickening = 16,
        Until = TimeSpan.FromHours(1),
        Slope = Angle.FromDegrees(90),
        Density = Density.FromGramsPerMilliliter(1.1),
        SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28),
        Wavelength = Length.FromMillimeters(3),
    };

    [Benchmark(Baseline = true)]
    public double Midpoint()
    {
        double sum = 0;
        for (int i = 0; i < 3600; i++)
        {
            double h = 75e-6 * (0.41 + (0.59 * Math.Exp(-(i + 0.5) / 60)));
            sum += h * h / (0.25 * Math.Exp(16 * ((75e-6 * 0.41 / h) - 0.41)));
        }

        return 1100 * 9.80665 / 2 * sum;
    }

    [Benchmark]
    public double Sag() => film.Sag.Meters;
}
