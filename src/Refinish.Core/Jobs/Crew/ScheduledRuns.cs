using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using Refinish.Coverage;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Lays the runs over the schedule and carries leftovers from run to run.</summary>
internal static class ScheduledRuns
{
    public static List<ScheduledRun> Of(CrewSchedule schedule)
    {
        List<ScheduledRun> runs = [];
        foreach ((CoatRun run, ScheduledOperation operation) in schedule.Work.Runs.Select(run => (Run: run, In: schedule.TryFind(run.Id)))
            .Where(one => one.In is not null).Select(one => (one.Run, one.In!)).OrderBy(one => one.Item2.Start))
        {
            ScheduledRun? before = runs.FindLast(earlier => MayServe(earlier, run, operation));
            double left = before?.Cups.Excess.CubicMeters ?? 0;
            double need = run.Demand.Total.CubicMeters;

            // Less than what one would trouble to keep, and never the whole need, which a cup plan has to have.
            bool carries = left > 1e-6 && left < need;
            CupPlan cups = carries ? new CupPlan(Volume.FromCubicMeters(need - left), run.Demand.Gun.MeanRate, run.InCup, run.Cups.Rules) : run.Cups;
            runs.Add(new ScheduledRun(run, operation, carries ? before : null, carries ? left : 0, cups, WindowOf(schedule, run, operation)));
        }

        return runs;
    }

    // The last cup of the run before has to be used up within the share of its pot life, counted from the opening of the cans.
    private static bool MayServe(ScheduledRun earlier, CoatRun run, ScheduledOperation operation) =>
        earlier.Run.Layer.Product.Equals(run.Layer.Product)
        && earlier.Run.Layer.Reducer.Equals(run.Layer.Reducer, UnitsNet.Ratio.FromDecimalFractions(1e-12))
        && (run.InCup.PotLife is not TimeSpan life
            || (operation.End - earlier.Start).TotalSeconds <= life.TotalSeconds * run.Cups.Rules.PotLifeShare.DecimalFractions);

    private static SprayWindow WindowOf(CrewSchedule schedule, CoatRun run, ScheduledOperation operation) =>
        operation.Operation.Room is string room && schedule.Work.Courses.TryGetValue(room, out RoomCourse? course) && !course.IsHeld
            ? new SprayWindow(
                course.MoistAirAt(operation.Start), Temperature.FromKelvins(course.SurfaceAt(operation.Start)),
                run.Layer.Product.SprayLimits)
            : run.Window;
}
