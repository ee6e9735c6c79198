using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;
using Refinish.Tests.Scheduling;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>What a plan costs to make, in counts that do not depend on the machine.</summary>
public class PlanEffortTests
{
    private static readonly Job Tub = InventedJobs.OccupiedHouse() with
    {
        Fixtures = [InventedJobs.OccupiedHouse().Fixtures[0] with { Options = [] }],
    };

    private static readonly Job ThreeRooms = Tub with
    {
        Premises = Tub.Premises with { Rooms = [.. new[] { "a", "b", "c" }.Select(room => InventedJobs.Bath(room, 22, 20))] },
        Fixtures = [.. new[] { "a", "b", "c" }.Select(room => Tub.Fixtures[0] with { Id = "tub-" + room, Room = room })],
    };

    [Fact]
    [Evidence(Basis.Contract, "a tub is planned while somebody types: under 880 kB on every host")]
    public void A_tub_takes_little_memory()
    {
        Assert.NotNull(Tub.Plan().Price);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Tub.Plan();
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 1, 880_000);
    }

    [Fact]
    [Evidence(Basis.Contract, "twenty alike rooms with one crew and gun, 600 operations in three rounds: what many rooms share is found once, so their schedule stays under 90 MB")]
    public void Many_rooms_take_memory_that_a_phone_has()
    {
        string[] rooms = [.. Enumerable.Range(0, 20).Select(i => "r" + i)];
        Job house = Tub with
        {
            Premises = Tub.Premises with { Rooms = [.. rooms.Select(room => Tub.Premises.Rooms[0] with { Id = room })] },
            Fixtures = [.. rooms.Select(room => Tub.Fixtures[0] with { Id = "tub-" + room, Room = room })],
        };
        long before = GC.GetAllocatedBytesForCurrentThread();
        JobPlan plan = house.Plan();
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 1, 90_000_000);
        Assert.Empty(SiteVerifier.Breaches(plan.Schedule!.Found));
    }

    [Fact]
    [Evidence(Basis.Contract, "one gun goes through three rooms, so the list is made more than once; the premises are searched twice at most")]
    public void Rounds_reuse_the_schedule_before()
    {
        CrewSchedule schedule = ThreeRooms.Plan().Schedule!;
        Assert.True(schedule.IsPossible);
        Assert.InRange(schedule.Effort.Rounds, 2, 5);
        Assert.InRange(schedule.Effort.Searches, 1, 2);
        Assert.Empty(SiteVerifier.Breaches(schedule.Found));
    }

    [Fact]
    [Evidence(Basis.Identity, "operations, waits, runs and clearing times of the last round are those of a list that is made at once with the same needs")]
    public void What_is_reused_is_what_would_be_made()
    {
        int rounds = 0;
        for (int seed = 0; seed < 60; seed++)
        {
            if (RandomJobs.Tame(seed).Plan().Schedule is not { IsPossible: true, Effort.Rounds: > 1 } schedule)
            {
                continue;
            }

            rounds++;
            WorkList work = schedule.Work;
            WorkList anew = new WorkList(work.Procedures, work.Premises, work.Shop, work.Start, work.Changes).With(work.Needs, reusing: false);
            Assert.Equal(anew.Operations.Select(Told), work.Operations.Select(Told));
            Assert.Equal(anew.Lags, work.Lags);
            Assert.Equal(anew.Runs.Select(run => (run.Id, run.Demand.Total.CubicMeters, run.Duration, run.VolatileMass.Kilograms)),
                work.Runs.Select(run => (run.Id, run.Demand.Total.CubicMeters, run.Duration, run.VolatileMass.Kilograms)));
            Assert.Equal(anew.Objections.Select(objection => objection.Id), work.Objections.Select(objection => objection.Id));
        }

        Assert.InRange(rounds, 5, 60);

        static (string Id, TimeSpan Time, TimeSpan Clearing, string Cautions) Told(Refinish.Jobs.Operation operation) =>
            (operation.Id, operation.DurationAt(1), operation.Clearing, string.Join("/", operation.Cautions.Select(caution => caution.Code)));
    }
}
