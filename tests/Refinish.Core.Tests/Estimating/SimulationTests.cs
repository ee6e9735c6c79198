using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Estimating;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Estimating;

public class SimulationTests
{
    private static readonly UncertainInput[] Factors =
    [
        new() { Name = "base", Distribution = new LognormalDistribution(Math.Log(100), 0.3), Group = "all" },
        new() { Name = "factor", Distribution = new LognormalDistribution(0, 0.4), Group = "all" },
    ];

    private static Simulation Product() => new(Factors, values => values[0] * values[1]);

    private static Ratio Share(double fraction) => Ratio.FromDecimalFractions(fraction);

    [Theory]
    [InlineData(SamplingMethod.Random, 0.02)]
    [InlineData(SamplingMethod.LatinHypercube, 0.01)]
    [InlineData(SamplingMethod.QuasiRandom, 0.002)]
    [Evidence(Basis.Independent, "closed form: the product is lognormal with µ ln 100 and σ .5: P10 52.688, P50 100, P90 189.795, mean 113.315, standard deviation 60.390")]
    public void A_product_of_lognormals(SamplingMethod sampling, double tolerance)
    {
        SimulationResult result = Product().Run(new SimulationOptions { Sampling = sampling, Seed = 3 });
        Numbers.Close(52.6884, result.P10, tolerance);
        Numbers.Close(100, result.P50, tolerance);
        Numbers.Close(189.795, result.P90, tolerance);
        Numbers.Close(113.3148, result.Mean, tolerance);
        Numbers.Close(60.3901, result.StandardDeviation, 2 * tolerance);
        Numbers.Near(0.1, result.ChanceAbove(189.795).DecimalFractions, tolerance);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [Evidence(Basis.Independent, "closed form: logs correlated by ρ make the product lognormal with σ² = .3² + .4² + 2 ρ .3 · .4")]
    public void Correlated_lognormals(double correlation)
    {
        SimulationResult result = Product().Run(new SimulationOptions { Correlation = Share(correlation), Seed = 4 });
        double deviation = Math.Sqrt(0.09 + 0.16 + (2 * correlation * 0.12));
        Numbers.Close(100 * Math.Exp(1.2815515655 * deviation), result.P90, 0.015);
        Numbers.Close(100 * Math.Exp(-1.2815515655 * deviation), result.P10, 0.015);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [Evidence(Basis.Independent, "sum of normals with equal correlation: variance Σσ² + ρ((Σσ)² − Σσ²)")]
    public void A_sum_of_correlated_normals(double correlation)
    {
        double[] deviations = [1, 2, 3, 0.5, 1.5];
        UncertainInput[] inputs = [.. deviations.Select((d, i) => new UncertainInput { Name = "task " + i, Distribution = new NormalDistribution(10, d), Group = "crew" })];
        SimulationResult result = new Simulation(inputs, values => values.Sum()).Run(new SimulationOptions { Correlation = Share(correlation) });
        double squares = deviations.Sum(d => d * d);
        double variance = squares + (correlation * (Math.Pow(deviations.Sum(), 2) - squares));
        Numbers.Near(50, result.Mean, 0.05);
        Numbers.Close(Math.Sqrt(variance), result.StandardDeviation, 0.01);
    }

    [Fact]
    [Evidence(Basis.Independent, "one triangular input 2, 4, 9 in slices: P10 3.183216, P50 4.816700, P90 7.129171, mean 5, standard deviation 1.471960")]
    public void One_input_in_slices_is_nearly_exact()
    {
        SimulationResult result = new Simulation([new() { Name = "hours", Distribution = new TriangularDistribution(2, 4, 9) }], values => values[0]).Run();
        Numbers.Near(3.183216, result.P10, 1e-4);
        Numbers.Near(4.816700, result.P50, 1e-4);
        Numbers.Near(7.129171, result.P90, 1e-4);
        Numbers.Near(5, result.Mean, 1e-6);
        Numbers.Near(1.471960, result.StandardDeviation, 1e-5);
    }

    [Theory]
    [InlineData(SamplingMethod.Random)]
    [InlineData(SamplingMethod.LatinHypercube)]
    [InlineData(SamplingMethod.QuasiRandom)]
    [Evidence(Basis.Contract, "one seed gives one result, digit for digit, whatever the number of threads; another seed another")]
    public void The_number_of_threads_does_not_matter(SamplingMethod sampling)
    {
        SimulationOptions options = new() { Trials = 20_001, Sampling = sampling, Seed = 99, Correlation = Share(0.3), Threads = 1 };
        SimulationResult one = Product().Run(options);
        foreach (int threads in (int[])[2, 3, 8, 0])
        {
            SimulationResult many = Product().Run(options with { Threads = threads });
            Assert.Equal(one.Mean, many.Mean);
            Assert.Equal(one.StandardDeviation, many.StandardDeviation);
            Assert.Equal(Enumerable.Range(0, 101).Select(p => one.Quantile(Ratio.FromPercent(p))), Enumerable.Range(0, 101).Select(p => many.Quantile(Ratio.FromPercent(p))));
        }

        Assert.NotEqual(one.Mean, Product().Run(options with { Seed = 100 }).Mean);
    }

    [Fact]
    [Evidence(Basis.Identity, "slices and quasi-random points bring the mean of a smooth sum closer than plain trials do")]
    public void Better_sampling_is_better()
    {
        UncertainInput[] inputs = [.. Enumerable.Range(0, 12).Select(i => new UncertainInput { Name = "task " + i, Distribution = new PertDistribution(1, 2, 5 + (i % 3)) })];
        Simulation sum = new(inputs, values => values.Sum());
        double exact = inputs.Sum(input => input.Distribution.Mean);
        double Error(SamplingMethod sampling) => Math.Sqrt(Enumerable.Range(1, 20)
            .Average(seed => Math.Pow(sum.Run(new SimulationOptions { Trials = 1024, Sampling = sampling, Seed = (ulong)seed }).Mean - exact, 2)));
        double plain = Error(SamplingMethod.Random);
        Assert.True(Error(SamplingMethod.LatinHypercube) < plain / 10);
        Assert.True(Error(SamplingMethod.QuasiRandom) < plain / 10);
    }

    [Fact]
    [Evidence(Basis.Independent, "with 80 inputs the Sobol dimensions run out; the mean of the sum stays right")]
    public void More_inputs_than_dimensions()
    {
        UncertainInput[] inputs = [.. Enumerable.Range(0, 81).Select(i => new UncertainInput { Name = "x" + i, Distribution = new UniformDistribution(0, 2) })];
        SimulationResult result = new Simulation(inputs, values => values.Sum()).Run(new SimulationOptions { Sampling = SamplingMethod.QuasiRandom });
        Numbers.Near(81, result.Mean, 0.05);
        Numbers.Close(Math.Sqrt(81.0 / 3), result.StandardDeviation, 0.02);
    }

    [Fact]
    [Evidence(Basis.Independent, "worked by hand: at medians 4 and 10 the model 3x + y; the triangular one reaches from P10 to P90, the exact one has no bar")]
    public void Tornado()
    {
        Simulation simulation = new(
            [
                new() { Name = "x", Distribution = new UniformDistribution(2, 6) },
                new() { Name = "y", Distribution = new NormalDistribution(10, 4) },
                new() { Name = "z", Distribution = new ExactValue(1) },
            ],
            values => (3 * values[0]) + values[1] + values[2]);
        IReadOnlyList<TornadoBar> bars = simulation.Tornado();
        Assert.Equal(["y", "x"], bars.Select(bar => bar.Name));
        Numbers.Close(8 * 1.2815515655, bars[0].Swing, 1e-9);
        Numbers.Close(3 * 3.2, bars[1].Swing, 1e-12);
        Numbers.Close((3 * 2.4) + 11, bars[1].AtP10, 1e-12);
    }

    [Fact]
    [Evidence(Basis.Contract, "a run can be stopped, tells how far it is, and hands on what the model throws")]
    public void Stops_and_reports()
    {
        Steps steps = new();
        Product().Run(new SimulationOptions { Trials = 50_000 }, steps);
        Assert.Equal(steps.Seen.Order(), steps.Seen);
        Assert.Equal(1, steps.Seen[^1]);
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Product().Run(new SimulationOptions(), cancellation: stop.Token));
        Assert.ThrowsAny<OperationCanceledException>(() => Product().Run(new SimulationOptions { Threads = 1 }, cancellation: stop.Token));
        Assert.Throws<InvalidOperationException>(() => new Simulation(Factors, _ => double.NaN).Run());
        Assert.Throws<InvalidTimeZoneException>(() => new Simulation(Factors, _ => throw new InvalidTimeZoneException()).Run());
    }

    [Property(MaxTest = 20)]
    [Evidence(Basis.Identity, "quantiles rise; the chance above a quantile is what is left; minimum and maximum are the ends")]
    public void Quantiles_are_ordered(PositiveInt seed, PositiveInt number)
    {
        SimulationResult result = Product().Run(new SimulationOptions { Trials = 1000, Seed = (ulong)seed.Get });
        double p = number.Get % 1000 / 1000.0;
        Assert.True(result.Quantile(Share(p)) <= result.Quantile(Share(p + 0.001)));
        Numbers.Near(1 - p, result.ChanceAbove(result.Quantile(Share(p))).DecimalFractions, 0.002);
        Assert.Equal(result.Minimum, result.Quantile(Share(0)));
        Assert.Equal(result.Maximum, result.Quantile(Share(1)));
        Assert.Equal(0, result.ChanceAbove(result.Maximum).DecimalFractions);
        Assert.Equal(1, result.ChanceAbove(result.Minimum - 1).DecimalFractions);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; text")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("Trials", () => _ = new SimulationOptions { Trials = 99 });
        Numbers.Refuses("Correlation", () => _ = new SimulationOptions { Correlation = Share(1.1) });
        Numbers.Refuses("Sampling", () => _ = new SimulationOptions { Sampling = (SamplingMethod)7 });
        Numbers.Refuses("Threads", () => _ = new SimulationOptions { Threads = -1 });
        Assert.Equal("100000 trials, LatinHypercube, seed 1, correlation 0 %", new SimulationOptions().ToString());
        SimulationResult result = new Simulation([new() { Name = "x", Distribution = new ExactValue(12.3456) }], values => values[0]).Run(new SimulationOptions { Trials = 100 });
        Assert.Equal("P10 12.35, P50 12.35, P80 12.35, P90 12.35", result.ToString());
    }

    private sealed class Steps : IProgress<double>
    {
        public List<double> Seen { get; } = [];

        public void Report(double value) => Seen.Add(value);
    }
}
