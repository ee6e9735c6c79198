using System;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>A stage that a coat has to reach before something else is done.</summary>
internal enum CureStageOf
{
    Touch,
    Water,
}

/// <summary>
/// Waits of coats and filler. In a room that is held they are plain times at that temperature; elsewhere they are hours of the data sheet, counted on a
/// clock that follows the temperature.
/// </summary>
internal static class CureWait
{
    // The temperature at which filler data sheets give their times; the trade's doubling rule shifts them.
    private static readonly Temperature FillerReference = Temperature.FromDegreesCelsius(25);

    public static StepLag After(CoatRun run, string after, CureStageOf stage, RoomCourse course, string reason)
    {
        CureTimes times = run.Layer.Product.Cure;
        if (course.IsHeld)
        {
            TimeSpan? held = stage == CureStageOf.Touch ? run.OnSurface.TouchDry : run.OnSurface.WaterService;
            return new StepLag(run.Id, after, CarefulTime.Up(held ?? TimeSpan.Zero), null, reason);
        }

        return new StepLag(run.Id, after, stage == CureStageOf.Touch ? times.TouchDry : times.WaterService, null, reason) { Clock = ClockOf(times, course.Surface!) };
    }

    /// <summary>Opening of a recoat window, after the last stroke, where the surface is coldest.</summary>
    public static StepLag Opens(CoatRun under, CoatRun over, TimeSpan? latest, RoomCourse course)
    {
        string reason = Reason(under);
        if (course.IsHeld)
        {
            return new StepLag(under.Id, over.Id, CarefulTime.Up(under.OnSurface.RecoatOpens ?? TimeSpan.Zero), latest is TimeSpan most ? CarefulTime.Down(most) : null, reason);
        }

        CureTimes times = under.Layer.Product.Cure;
        return new StepLag(under.Id, over.Id, times.RecoatOpens, null, reason) { Clock = ClockOf(times, course.Surface!) };
    }

    /// <summary>Closing of a recoat window where it is warmest; <see langword="null"/> where the temperature is held or the window never closes.</summary>
    public static StepLag? Closes(CoatRun under, CoatRun over, TimeSpan duration, RoomCourse course)
    {
        CureTimes times = under.Layer.Product.Cure;
        if (course.IsHeld || times.RecoatCloses is not TimeSpan closes)
        {
            return null;
        }

        // Spraying both coats counts at the fastest rate that working hours know.
        double rate = TemperatureShift.Doubling(times.RatePerTenKelvin).RateFactor(Temperature.FromKelvins(course.WarmestOfBoth), times.ReferenceTemperature);
        double left = closes.TotalSeconds - ((under.SprayTime + duration).TotalSeconds * rate);
        return new StepLag(under.Id, over.Id, TimeSpan.Zero, CarefulTime.Down(Durations.FromSeconds(Math.Max(0, left))), Reason(under))
        {
            Clock = ClockOf(times, course.Warmer!),
        };
    }

    public static StepLag Filler(string filled, string sanded, TimeSpan hard, RoomCourse course, double coldest, string reason)
    {
        TemperatureShift doubling = TemperatureShift.Doubling(2);
        if (course.IsHeld)
        {
            double rate = doubling.RateFactor(Temperature.FromKelvins(coldest), FillerReference);
            return new StepLag(filled, sanded, CarefulTime.Up(Durations.FromSeconds(hard.TotalSeconds / rate)), null, reason);
        }

        return new StepLag(filled, sanded, hard, null, reason) { Clock = new EquivalentAge(course.Surface!, doubling, FillerReference) };
    }

    // What the lag counts: the window itself is told by the clock, see ScheduledWindow.
    private static string Reason(CoatRun under) => "recoat window of " + under.Layer.Product.Name + ", from its last stroke until the next cans are opened";

    /// <summary>The clock of a product at the temperatures of a surface: hours of the data sheet, none below its least temperature.</summary>
    public static EquivalentAge ClockOf(CureTimes times, TemperatureHistory history) =>
        new(history, TemperatureShift.Doubling(times.RatePerTenKelvin), times.ReferenceTemperature) { StopsBelow = times.MinimumTemperature };
}
