using System;
using BenchmarkDotNet.Attributes;
using Refinish.Climate;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>One state of humid air with all its results: from a hygrometer, from a psychrometer, and from two readings that leave the
/// temperature open. No psychrometric library for .NET was found to stand beside it; the baseline is the state without its wet bulb.</summary>
[MemoryDiagnoser]
public class ClimateBenchmarks
{
    private static readonly Ratio Humidity = Ratio.FromPercent(55);
    private static readonly Pressure Place = Pressure.FromPascals(95461);
    private static readonly Temperature Dew = Temperature.FromDegreesCelsius(12);

    private readonly AirReading dew = AirReading.DewPoint(Dew);
    private readonly AirReading humid = AirReading.RelativeHumidity(Humidity);
    private double celsius = 20;

    [Benchmark(Baseline = true)]
    public double HygrometerAllButWetBulb() => Sum(new MoistAir(Temperature.FromDegreesCelsius(Next()), Humidity, Place));

    [Benchmark]
    public double Hygrometer()
    {
        MoistAir air = new(Temperature.FromDegreesCelsius(Next()), Humidity, Place);
        return Sum(air) + air.WetBulb.Kelvins;
    }

    [Benchmark]
    public double Psychrometer() => Sum(MoistAir.FromWetBulb(Temperature.FromDegreesCelsius(Next()), Dew, Place));

    [Benchmark]
    public double TwoReadings() => Sum(MoistAir.FromReadings(dew, humid, Place));

    private static double Sum(MoistAir air) => air.VapourPressure.Pascals + air.DewPoint.Kelvins + air.HumidityRatio.DecimalFractions
        + air.SpecificVolume.CubicMetersPerKilogram + air.Enthalpy.JoulesPerKilogram;

    // Never the same twice in a row, so that nothing is hoisted.
    private double Next() => celsius = celsius > 30 ? 20 : celsius + 0.01;
}
