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
                windows.Add(new ScheduledWindow(ScheduledWindowKind.OpenTime, wipe, promoter.Name, Next(schedule, wipe))
                {
                    FirstStroke = wipe.Start,
                    Opening = wipe.End + promoter.Flash,
                    Closing = wipe.End + promoter.OpenTime,
                    Opens = CarefulTime.Up(OnSite(schedule, wipe.End + promoter.Flash)),
                    Closes = CarefulTime.Down(OnSite(schedule, wipe.End + promoter.OpenTime)),
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
        return new ScheduledWindow(ScheduledWindowKind.Recoat, cure, run.Run.Layer.Product.Name, Next(schedule, run.Operation))
        {
            FirstStroke = from,
            Opening = opens,
            Closing = closes,
            Parts = held ? null : () => Parts(times, course!, (from, cure.End), opens is not null, closes is not null),
            Opens = opens is DateTimeOffset open ? CarefulTime.Up(OnSite(schedule, open)) : null,
            Closes = closes is DateTimeOffset to ? CarefulTime.Down(OnSite(schedule, to)) : null,
            IsOpenEnded = times.RecoatCloses is null,
        };
    }

    private static ValueList<Workings> Parts(
        CureTimes times, RoomCourse course, (DateTimeOffset First, DateTimeOffset Last) strokes, bool opens, bool closes)
    {
        List<Workings> parts = [];
        if (opens)
        {
            parts.Add(CureWait.ClockOf(times, course.Surface!).WorkingsOfInstant(strokes.Last, times.RecoatOpens));
        }

        if (closes)
        {
            parts.Add(CureWait.ClockOf(times, course.Warmer!).WorkingsOfInstant(strokes.First, times.RecoatCloses!.Value));
        }

        return new ValueList<Workings>(parts);
    }

    private static DateTimeOffset? At(CureTimes times, RoomCourse course, Curing.TemperatureHistory history, DateTimeOffset from, TimeSpan age) =>
        course.Covers(from) ? CureWait.ClockOf(times, history).InstantOf(from, age) : null;

    private static DateTimeOffset OnSite(CrewSchedule schedule, DateTimeOffset instant) => schedule.Work.Shop.Calendar.Clock.OnSite(instant);

    // The coat that follows on each of the fixtures.
    private static string[] Next(CrewSchedule schedule, ScheduledOperation operation) =>
    [
        .. operation.Operation.Fixtures
            .Select(fixture => schedule.Runs.FirstOrDefault(run => run.Start >= operation.End && run.Operation.Operation.Fixtures.Contains(fixture))?.Run.Id)
            .OfType<string>().Distinct(),
    ];
}
