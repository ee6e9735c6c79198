using System.Collections.Generic;
using BenchmarkDotNet.Attributes;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;

namespace Refinish.Benchmarks;

/// <summary>One whole bathroom: three fixtures, four coats, air, price and handover. The target is well under a millisecond.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private readonly Refinish.Jobs.BathroomJob job = Scenario.Guesthouse();
    private readonly BathroomPlan plan = Scenario.Guesthouse().Plan();

    [Benchmark(Baseline = true)]
    public BathroomPlan Plan() => job.Plan();

    [Benchmark]
    public Workings Derivation() => plan.Workings();

    [Benchmark]
    public string InWords() => plan.Workings().ToPlainText(DisplayUnits.Si);

    [Benchmark]
    public IReadOnlyList<PlanObjection> FromScratch() => Scenario.Guesthouse().Plan().Objections;
}
