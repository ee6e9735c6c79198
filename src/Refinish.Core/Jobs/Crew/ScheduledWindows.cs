using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>Lays recoat windows and open times over the schedule, by the clock of the site.</summary>
internal static class ScheduledWindows
{
    public static List<ScheduledWindow> Of(CrewSchedule schedule)
    {
        List<ScheduledWindow> windows = [.. schedule.Runs.Select(run => Recoat(schedule, run))];
        foreach (ScheduledOperation wipe in schedule.Operations.Where(operation => operation.Operation.Kind == WorkKind.Promote))
        {
            Procedure? wiped = schedule.Work.Procedures.FirstOrDefault(procedure =>
                procedure.Promoter is not null && wipe.Operation.Fixtures.Contains(procedure.Fixture.Id));
            if (wiped?.Promoter is AdhesionPromoter promoter)
            {
                windows.Add(new ScheduledWindow(ScheduledWindowKind.OpenTime, wipe, promoter.Name, schedule.Work.Shop.Calendar.Clock,
                    wipe.End + promoter.Flash, wipe.End + promoter.OpenTime)
                {
                    Next = Next(schedule, wipe),
                    FirstStroke = wipe.Start,
                });
            }
        }

        return [.. windows.OrderBy(window => window.LastStroke)];
    }

    private static ScheduledWindow Recoat(CrewSchedule schedule, ScheduledRun run)
    {
        CureTimes times = run.Run.Layer.Product.Cure;
        RoomCourse? course = run.Operation.Operation.Room is string room && schedule.Work.Courses.TryGetValue(room, out RoomCourse? found) ? found : null;
        bool held = course is null or { IsHeld: true };
        ScheduledOperation cure = schedule.TryFind(CureWait.CureOf(run.Run)) ?? run.Operation;
        DateTimeOffset from = cure == run.Operation ? run.SprayingFrom : cure.Start;
        DateTimeOffset? opens = held
            ? cure.End + run.Run.OnSurface.RecoatOpens : At(times, course!, course!.Surface!, cure.End, times.RecoatOpens);
        DateTimeOffset? closes = times.RecoatCloses is not TimeSpan most ? null
            : held ? from + run.Run.AtWarmest.RecoatCloses
            : At(times, course!, course!.Warmer!, from, most);
        return new ScheduledWindow(
            ScheduledWindowKind.Recoat, cure, run.Run.Layer.Product.Name, schedule.Work.Shop.Calendar.Clock, opens, closes)
        {
            Next = Next(schedule, run.Operation),
            FirstStroke = from,
            Parts = held ? null : () => Parts(times, course!, (from, cure.End), opens is not null, closes is not null),
            IsOpenEnded = times.RecoatCloses is null,
        };
    }

    private static IReadOnlyList<Workings> Parts(
        CureTimes times, RoomCourse course, (DateTimeOffset First, DateTimeOffset Last) strokes, bool opens, bool closes) =>
    [
        .. opens ? [CureWait.ClockOf(times, course.Surface!).WorkingsOfInstant(strokes.Last, times.RecoatOpens)] : (Workings[])[],
        .. closes ? [CureWait.ClockOf(times, course.Warmer!).WorkingsOfInstant(strokes.First, times.RecoatCloses!.Value)] : (Workings[])[],
    ];

    private static DateTimeOffset? At(CureTimes times, RoomCourse course, Curing.TemperatureHistory history, DateTimeOffset from, TimeSpan age) =>
        course.Covers(from) ? CureWait.ClockOf(times, history).InstantOf(from, age) : null;

    // The coat that follows on each of the fixtures.
    private static ValueList<string> Next(CrewSchedule schedule, ScheduledOperation operation) => new(
        operation.Operation.Fixtures
            .Select(fixture => schedule.Runs.FirstOrDefault(run => run.Start >= operation.End && run.Operation.Operation.Fixtures.Contains(fixture))?.Run.Id)
            .OfType<string>().Distinct());
}
