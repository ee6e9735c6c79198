using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using Refinish.Curing;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// The climate of one room laid over the days of a job: temperatures by the clock, and the extremes within working hours.
/// </summary>
internal sealed class RoomCourse
{
    // Ninety days: the longest wait that a data sheet may give is sixty.
    public const int Days = 90;

    private readonly RoomClimate climate;
    private readonly TemperatureHistory? air;
    private readonly double below;

    public RoomCourse(RoomClimate climate, DateTimeOffset start, WorkCalendar calendar)
    {
        this.climate = climate;
        below = climate.SurfaceKelvins - climate.Air.Kelvins;
        if (climate.Kind == RoomClimateKind.Held)
        {
            ColdestAir = WarmestAir = climate.Air.Kelvins;
            return;
        }

        DateTimeOffset local = calendar.Clock.OnSite(start);
        DateTimeOffset midnight = new(local.Date, local.Offset);
        air = climate.Log ?? Swing(midnight);
        Surface = Shifted(air, below);
        Warmer = below > 0 ? Surface : air;
        (ColdestAir, WarmestAir) = Extremes(calendar);
    }

    public bool IsHeld => air is null;

    /// <summary>Temperature of the coldest surface by the clock; <see langword="null"/> when held.</summary>
    public TemperatureHistory? Surface { get; }

    /// <summary>The warmer of air and surface by the clock; <see langword="null"/> when held.</summary>
    public TemperatureHistory? Warmer { get; }

    /// <summary>Air in working hours at its coldest, in kelvins.</summary>
    public double ColdestAir { get; }

    /// <summary>Air in working hours at its warmest, in kelvins.</summary>
    public double WarmestAir { get; }

    public double ColdestSurface => ColdestAir + below;

    public double WarmestOfBoth => Math.Max(WarmestAir, WarmestAir + below);

    public bool Covers(DateTimeOffset instant) => air is null || (instant >= air.Start && (air.End is not DateTimeOffset end || instant < end));

    public double AirAt(DateTimeOffset instant) => air is null ? climate.Air.Kelvins : air.At(Nearest(instant)).Kelvins;

    public double SurfaceAt(DateTimeOffset instant) => AirAt(instant) + below;

    public MoistAir MoistAirAt(DateTimeOffset instant) => air is null ? climate.Air : AirOf(AirAt(instant));

    public MoistAir AirOf(double kelvins) => IsHeld && kelvins == climate.Air.Kelvins
        ? climate.Air
        : MoistAir.FromDewPoint(
            Temperature.FromKelvins(kelvins), Temperature.FromKelvins(Math.Min(kelvins, climate.DewPointKelvins)), climate.Air.Pressure);

    /// <summary>The stretches of the course in which a spray window is closed; joined where they meet.</summary>
    public IReadOnlyList<TimeInterval> Closed(SprayLimits limits, CureRange cure)
    {
        List<TimeInterval> closed = [];
        if (air is null)
        {
            return closed;
        }

        DateTimeOffset? since = null;
        DateTimeOffset at = air.Start;
        foreach (TemperatureSegment segment in air.Segments)
        {
            double t = segment.Temperature.Kelvins;
            if (!IsOpen(limits, cure, t, t + below))
            {
                since ??= at;
            }
            else if (since is DateTimeOffset from)
            {
                closed.Add(new TimeInterval(from, at));
                since = null;
            }

            at += segment.Duration;
        }

        if (since is DateTimeOffset last)
        {
            closed.Add(new TimeInterval(last, at));
        }

        // A swing is laid out for so many days only, and a log is not known beyond its end; what holds on goes on as it ends.
        if (climate.Kind == RoomClimateKind.Daily || !air.LastHoldsOn || since is not null)
        {
            closed.Add(new TimeInterval(at, at.AddYears(50)));
        }

        return closed;
    }

    private bool IsOpen(SprayLimits limits, CureRange cure, double t, double surface)
    {
        double dew = Math.Min(t, climate.DewPointKelvins);
        double humidity = ClimateKernel.SaturationPressure(dew) / ClimateKernel.SaturationPressure(t);
        double least = Math.Max(limits.MinimumTemperature.Kelvins, cure.Least);
        double most = Math.Min(limits.MaximumTemperature.Kelvins, cure.Most);
        return surface - dew >= limits.MinimumSpreadAboveDewPoint.Kelvins && humidity <= limits.MaximumRelativeHumidity.DecimalFractions
            && humidity >= limits.MinimumRelativeHumidity.DecimalFractions
            && Math.Min(t, surface) >= least && Math.Max(t, surface) <= most;
    }

    private DateTimeOffset Nearest(DateTimeOffset instant) =>
        instant < air!.Start ? air.Start : air.End is DateTimeOffset end && instant >= end ? end.AddTicks(-1) : instant;

    private TemperatureHistory Swing(DateTimeOffset midnight)
    {
        double mean = climate.Air.Kelvins;
        double[] day = new double[24];
        for (int hour = 0; hour < 24; hour++)
        {
            day[hour] = mean + (climate.SwingKelvins * Math.Cos(2 * Math.PI * (hour + 0.5 - climate.Warmest.TotalHours) / 24));
        }

        TemperatureSegment[] hours = new TemperatureSegment[24 * (Days + 1)];
        for (int i = 0; i < hours.Length; i++)
        {
            hours[i] = i < 24 ? new TemperatureSegment(TimeSpan.FromHours(1), Temperature.FromKelvins(day[i])) : hours[i - 24];
        }

        return new TemperatureHistory(midnight, hours, true);
    }

    private static TemperatureHistory Shifted(TemperatureHistory history, double by)
    {
        if (by == 0)
        {
            return history;
        }

        Dictionary<TemperatureSegment, TemperatureSegment> made = history.Segments.Distinct().ToDictionary(
            segment => segment, segment => new TemperatureSegment(segment.Duration, Temperature.FromKelvins(segment.Temperature.Kelvins + by)));
        return new TemperatureHistory(history.Start, [.. history.Segments.Select(segment => made[segment])], history.LastHoldsOn);
    }

    private (double Coldest, double Warmest) Extremes(WorkCalendar calendar)
    {
        double coldest = double.PositiveInfinity;
        double warmest = double.NegativeInfinity;
        DateTimeOffset at = air!.Start;
        foreach (TemperatureSegment segment in air.Segments)
        {
            if (IsWorking(calendar, at, at + segment.Duration))
            {
                coldest = Math.Min(coldest, segment.Temperature.Kelvins);
                warmest = Math.Max(warmest, segment.Temperature.Kelvins);
            }

            at += segment.Duration;
        }

        return double.IsInfinity(coldest) ? (air.Segments[0].Temperature.Kelvins, air.Segments[0].Temperature.Kelvins) : (coldest, warmest);
    }

    // A stretch of a day or more is taken to hold working hours.
    private static bool IsWorking(WorkCalendar calendar, DateTimeOffset from, DateTimeOffset until)
    {
        if (until - from >= TimeSpan.FromDays(1))
        {
            return true;
        }

        DateTimeOffset start = calendar.Clock.OnSite(from);
        double first = start.TimeOfDay.TotalHours;
        double last = first + (until - from).TotalHours;
        foreach (WorkShift shift in calendar.Shifts)
        {
            double open = shift.Hours.From.TotalHours;
            double close = shift.Hours.Until.TotalHours;
            if ((shift.Day == start.DayOfWeek && first < close && last > open) || (shift.Day == start.AddDays(1).DayOfWeek && first < close + 24 && last > open + 24))
            {
                return true;
            }
        }

        return false;
    }
}
