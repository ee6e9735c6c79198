using System.Collections.Generic;
using System.Linq;
using BenchmarkDotNet.Attributes;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;

namespace Refinish.Benchmarks;

/// <summary>
/// One whole bathroom (three fixtures, four coats, air, price and handover; the target is below a millisecond), its stages one by one, a guesthouse of three
/// rooms, and how sure the price is.
/// </summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private static readonly SimulationOptions Trials = new() { Trials = 100 };

    private readonly Job job = Scenario.OneBathroom();
    private readonly Job guesthouse = Scenario.Guesthouse();
    private readonly JobPlan plan = Scenario.OneBathroom().Plan();
    private readonly Procedure[] procedures;
    private readonly WorkList work;
    private readonly CrewSchedule schedule;

    public PlanBenchmarks()
    {
        procedures = [.. plan.Planned];
        work = plan.Work!;
        schedule = plan.Schedule!;
    }

    [Benchmark(Baseline = true)]
    public JobPlan Plan() => job.Plan();

    [Benchmark]
    public Procedure[] Procedures() => [.. job.Fixtures.Select(fixture => new Procedure(fixture, job.Shop))];

    [Benchmark]
    public WorkList Work() => new(procedures, job.Premises, job.Shop, job.Start);

    [Benchmark]
    public CrewSchedule Schedule() => new(work);

    [Benchmark]
    public RoomAirPlan Air() => new(schedule, job.Premises.Rooms[0].Id);

    [Benchmark]
    public JobCosts Costs() => new(schedule);

    [Benchmark]
    public Handover Handover() => new(schedule);

    [Benchmark]
    public Workings Derivation() => plan.Workings();

    [Benchmark]
    public string InWords() => plan.Workings().ToPlainText(DisplayUnits.Si);

    [Benchmark]
    public IReadOnlyList<PlanObjection> FromScratch() => Scenario.OneBathroom().Plan().Objections;

    [Benchmark]
    public JobPlan ThreeRooms() => guesthouse.Plan();

    [Benchmark]
    public JobRange HundredTrials() => JobRange.Of(job, new JobUncertainty(), Trials);
}
