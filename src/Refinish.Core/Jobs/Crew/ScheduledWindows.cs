using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Curing;
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
        CoatingProduct product = run.Run.Layer.Product;
        CureTimes times = CureLaw.Times(product);
        RoomCourse? course = run.Operation.Operation.Room is string room && schedule.Work.Courses.TryGetValue(room, out RoomCourse? found) ? found : null;
        bool held = course is null or { IsHeld: true };
        ScheduledOperation cure = schedule.TryFind(CureWait.CureOf(run.Run)) ?? run.Operation;
        DateTimeOffset from = cure == run.Operation ? run.SprayingFrom : cure.Start;
        DateTimeOffset? opens = held
            ? cure.End + run.Run.OnSurface.RecoatOpens : At(product, Opening, course!, course!.Surface!, cure.End);
        DateTimeOffset? closes = times.RecoatCloses is null ? null
            : held ? from + run.Run.AtWarmest.RecoatCloses
            : At(product, CureWait.Closing, course!, course!.Warmer!, from);
        return new ScheduledWindow(
            ScheduledWindowKind.Recoat, cure, run.Run.Layer.Product.Name, schedule.Work.Shop.Calendar.Clock, opens, closes)
        {
            Next = Next(schedule, run.Operation),
            FirstStroke = from,
            Parts = held ? null : () => Parts(product, course!, (from, cure.End), opens is not null, closes is not null),
            IsOpenEnded = times.RecoatCloses is null,
        };
    }

    private static IReadOnlyList<Workings> Parts(
        CoatingProduct product, RoomCourse course, (DateTimeOffset First, DateTimeOffset Last) strokes, bool opens, bool closes) =>
    [
        .. opens ? [CureWait.ClockOf(product, Opening, course.Surface!)
            .WorkingsOfInstant(strokes.Last, Opening(CureLaw.Times(product)))] : (Workings[])[],
        .. closes ? [CureWait.ClockOf(product, CureWait.Closing, course.Warmer!)
            .WorkingsOfInstant(strokes.First, CureWait.Closing(CureLaw.Times(product)))] : (Workings[])[],
    ];

    private static TimeSpan Opening(CureTimes times) => times.RecoatOpens;

    private static DateTimeOffset? At(
        CoatingProduct product, Func<CureTimes, TimeSpan> stage, RoomCourse course, TemperatureHistory history, DateTimeOffset from) =>
        course.Covers(from) ? CureWait.ClockOf(product, stage, history).InstantOf(from, stage(CureLaw.Times(product))) : null;

    // The coat that follows on each of the fixtures.
    private static ValueList<string> Next(CrewSchedule schedule, ScheduledOperation operation) => new(
        operation.Operation.Fixtures
            .Select(fixture => schedule.Runs.FirstOrDefault(run => run.Start >= operation.End && run.Operation.Operation.Fixtures.Contains(fixture))?.Run.Id)
            .OfType<string>().Distinct());
}
