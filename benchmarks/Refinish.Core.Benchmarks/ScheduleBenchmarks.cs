using System.Linq;
using BenchmarkDotNet.Attributes;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using Refinish.Samples.CalendarExport;
using Refinish.Scheduling;

namespace Refinish.Benchmarks;

/// <summary>
/// The site search on the operations of real jobs: one bathroom with one, two and three fixtures (target: below 5 ms), and fifty bathrooms with one crew
/// (target: below 2 s with a proved gap).
/// </summary>
[MemoryDiagnoser]
public class ScheduleBenchmarks
{
    private readonly SiteWork one = Work(1);
    private readonly SiteWork twoFixtures = Work(2);
    private readonly SiteWork threeFixtures = Work(3);
    private readonly SiteWork fifty = Pension.Bathrooms(50).Plan().Schedule!.Site;

    [Benchmark(Baseline = true)]
    public SiteSchedule Bathroom() => one.Solve();

    [Benchmark]
    public SiteSchedule Quick() => one.Solve(SearchEffort.Quick);

    [Benchmark]
    public SiteSchedule TwoFixtures() => twoFixtures.Solve();

    [Benchmark]
    public SiteSchedule ThreeFixtures() => threeFixtures.Solve();

    [Benchmark]
    public SiteSchedule FiftyBathrooms() => fifty.Solve();

    private static SiteWork Work(int fixtures)
    {
        Job job = Scenario.OneBathroom();
        return (job with { Fixtures = [.. job.Fixtures.Take(fixtures)] }).Plan().Schedule!.Site;
    }
}
