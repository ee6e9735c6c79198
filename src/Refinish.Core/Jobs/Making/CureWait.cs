using System;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// Waits of coats and filler. In a room that is held they are plain times at that temperature; elsewhere they are hours of the data
/// sheet, counted on a
/// clock that follows the temperature.
/// </summary>
internal static class CureWait
{
    // The temperature at which filler data sheets give their times; the trade's doubling rule shifts them.
    private static readonly Temperature FillerReference = Temperature.FromDegreesCelsius(25);

    /// <summary>
    /// Identifier of the operation from whose end a coat hardens: the coat's own, or that of the operation of its product by which it
    /// cures.
    /// </summary>
    public static string CureOf(CoatRun run) => run.Layer.Product.Curing is CoatOperation cure ? CoatOperations.IdOf(run, cure) : run.Id;

    public static void Touch(WorkBuilder builder, CoatRun run, string after, RoomCourse course, string reason) =>
        After(builder, run, after, run.OnSurface.TouchDry, static times => times.TouchDry, null, course, reason);

    public static void Water(WorkBuilder builder, CoatRun run, string after, RoomCourse course, string reason) =>
        After(builder, run, after, run.OnSurface.WaterService, static times => times.WaterService, null, course, reason);

    /// <summary>Opening of a recoat window, after the last stroke, where the surface is coldest.</summary>
    public static void Opens(WorkBuilder builder, CoatRun under, CoatRun over, TimeSpan? latest, RoomCourse course) => After(
        builder, under, over.Id, under.OnSurface.RecoatOpens, static times => times.RecoatOpens, latest, course, Reason(under));

    /// <summary>Closing of a recoat window where it is warmest; none where the temperature is held or the window never closes.</summary>
    public static void Closes(WorkBuilder builder, CoatRun under, CoatRun over, TimeSpan between, RoomCourse course)
    {
        CureTimes times = CureLaw.Times(under.Layer.Product);
        if (course.IsHeld || times.RecoatCloses is not TimeSpan closes)
        {
            return;
        }

        // What lies between the two ends of the lag counts at the fastest rate that working hours know.
        EquivalentAge clock = ClockOf(under.Layer.Product, Closing, course.Warmer!);
        double rate = clock.Shift.RateFactor(Temperature.FromKelvins(course.WarmestOfBoth), times.ReferenceTemperature);
        double left = closes.TotalSeconds - (between.TotalSeconds * rate);
        builder.Wait(
            CureOf(under), over.Id, TimeSpan.Zero, CarefulTime.Down(Durations.FromSeconds(Math.Max(0, left))), Reason(under),
            clock);
    }

    /// <summary>The closing time of a window that closes.</summary>
    public static TimeSpan Closing(CureTimes times) => times.RecoatCloses!.Value;

    public static void Filler(
        WorkBuilder builder, string filled, string sanded, TimeSpan hard, RoomCourse course, double coldest, string reason)
    {
        TemperatureShift doubling = TemperatureShift.Doubling(2);
        if (course.IsHeld)
        {
            double rate = doubling.RateFactor(Temperature.FromKelvins(coldest), FillerReference);
            builder.Wait(filled, sanded, Durations.FromSeconds(hard.TotalSeconds / rate), null, reason);
        }
        else
        {
            builder.Wait(filled, sanded, hard, null, reason, new EquivalentAge(course.Surface!, doubling, FillerReference));
        }
    }

    private static void After(
        WorkBuilder builder,
        CoatRun run,
        string after,
        TimeSpan? held,
        Func<CureTimes, TimeSpan> stage,
        TimeSpan? latest,
        RoomCourse course,
        string reason)
    {
        if (course.IsHeld)
        {
            builder.Wait(CureOf(run), after, held, latest, reason);
        }
        else
        {
            CoatingProduct product = run.Layer.Product;
            builder.Wait(CureOf(run), after, stage(CureLaw.Times(product)), null, reason, ClockOf(product, stage, course.Surface!));
        }
    }

    // What the lag counts: the window itself is told by the clock, see ScheduledWindow.
    private static string Reason(CoatRun under) => "recoat window of " + under.Layer.Product.Name + ", from "
        + (under.Layer.Product.Curing is CoatOperation cure ? "the end of '" + cure.Name + "'" : "its last stroke")
            + " until the next cans are opened";

    /// <summary>
    /// The clock of a stage of a product at the temperatures of a surface: hours of the data sheet, none below its least temperature.
    /// </summary>
    public static EquivalentAge ClockOf(CoatingProduct product, Func<CureTimes, TimeSpan> stage, TemperatureHistory history) => new(
        history, CureLaw.Of(product, stage), CureLaw.Times(product).ReferenceTemperature, CureLaw.Range(product).Least);
}
