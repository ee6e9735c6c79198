using BenchmarkDotNet.Attributes;
using Refinish.Samples.CalendarExport;
using Refinish.Scheduling;

namespace Refinish.Benchmarks;

/// <summary>One bathroom (target: below 5 ms), one with two and three fixtures of their own coats, and fifty with one crew (target: below 2 s with a proved gap).</summary>
[MemoryDiagnoser]
public class ScheduleBenchmarks
{
    private readonly SiteWork one = Pension.Bathrooms(1);
    private readonly SiteWork twoFixtures = Pension.OneBathroom("tub", "sink");
    private readonly SiteWork threeFixtures = Pension.OneBathroom("tub", "sink", "surround");
    private readonly SiteWork fifty = Pension.Bathrooms(50);

    [Benchmark(Baseline = true)]
    public SiteSchedule Bathroom() => one.Solve();

    [Benchmark]
    public SiteSchedule TwoFixtures() => twoFixtures.Solve();

    [Benchmark]
    public SiteSchedule ThreeFixtures() => threeFixtures.Solve();

    [Benchmark]
    public SiteSchedule FiftyBathrooms() => fifty.Solve();
}
