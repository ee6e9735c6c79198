using System;
using BenchmarkDotNet.Attributes;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Benchmarks;

/// <summary>Demand and mix of a bathroom (target below 50 µs) and batches out of cups (target below 1 ms), beside the bare arithmetic of the same quantities.</summary>
[MemoryDiagnoser]
public class CoverageBenchmarks
{
    private static readonly CoatedSurface[] Surfaces =
    [
        new("tub", Area.FromSquareMeters(2.6)), new("sink", Area.FromSquareMeters(0.7), Ratio.FromPercent(45)), new("surround", Area.FromSquareMeters(4.5)),
    ];

    private readonly SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60) };

    private readonly ApplicationLosses losses = new()
    {
        EdgeOverspray = Ratio.FromPercent(8), Residue = Ratio.FromPercent(5), HoldUp = Volume.FromMilliliters(40),
    };

    private readonly CupRules one = new() { Cups = [Cup(600, 5, 50)] };
    private readonly CupRules three = new() { Cups = [Cup(1000, 10, 150), Cup(600, 5, 50), Cup(200, 2, 20)], Residue = Volume.FromMilliliters(6) };
    private readonly CupRules ounces = new() { Cups = [Cup(600, 5, 50), new(Volume.FromUsOunces(16), Volume.FromUsOunces(0.5), Volume.FromUsOunces(2))] };
    private readonly Volume need = Volume.FromMilliliters(2347);
    private readonly VolumeFlow use = VolumeFlow.FromMillilitersPerMinute(60);
    private readonly TimeSpan pot = TimeSpan.FromHours(2.5);
    private double[] areas = [2.6, 0.7, 4.5];
    private double[] efficiencies = [0.6, 0.45, 0.6];

    [Benchmark(Baseline = true)]
    public double BareQuantity()
    {
        double sum = 0;
        for (int i = 0; i < areas.Length; i++)
        {
            sum += areas[i] * 30e-6 * 1.1 / 0.48 / efficiencies[i];
        }

        return 3 * ((sum / 0.92) + 40e-6) / 0.95;
    }

    [Benchmark]
    public double QuantityAndMix()
    {
        Takeoff takeoff = new(Surfaces, GenericCatalogue.EpoxyUrethaneSystem, gun, losses);
        double grams = 0;
        foreach (CoatDemand coat in takeoff.Coats)
        {
            PouredMix mix = new(coat.Layer.Product, coat.Total, coat.Layer.Reducer);
            grams += mix.Parts[mix.Parts.Count - 1].Scale.Grams;
        }

        return grams + takeoff.Lines.Count;
    }

    [Benchmark]
    public double AsApplied() => new MixedCoating(GenericCatalogue.AcrylicUrethaneTopcoat, Ratio.FromPercent(10)).Voc!.Regulatory.GramsPerLiter;

    [Benchmark]
    public double OneCoat() => new CoatDemand(Surfaces, GenericCatalogue.EpoxyUrethaneSystem.Layers[0], gun, losses).Total.CubicMeters;

    [Benchmark]
    public int EqualBatches() => new CupPlan(need, use, pot, TimeSpan.Zero, one with { EqualBatches = true }).Batches.Count;

    [Benchmark]
    public int BatchesOfOneCup() => new CupPlan(need, use, pot, TimeSpan.Zero, one).Batches.Count;

    [Benchmark]
    public int BatchesOfThreeCups() => new CupPlan(need, use, pot, TimeSpan.Zero, three).Batches.Count;

    [Benchmark]
    public int BatchesOfMixedUnits() => new CupPlan(need, use, pot, TimeSpan.Zero, ounces).Batches.Count;

    [GlobalSetup]
    public void Vary()
    {
        // Fields that the compiler cannot fold.
        areas = [.. areas];
        efficiencies = [.. efficiencies];
    }

    private static MixingCup Cup(double capacity, double graduation, double smallest) =>
        new(Volume.FromMilliliters(capacity), Volume.FromMilliliters(graduation), Volume.FromMilliliters(smallest));
}
