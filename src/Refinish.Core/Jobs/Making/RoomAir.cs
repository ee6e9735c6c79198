using System;
using Refinish.Air;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Emissions of operations as the study of the air takes them.</summary>
internal static class RoomAir
{
    // The design line below which a room counts as clear of flammable vapour; WAC 296-304-03009 (2), spray painting in ships.
    private static readonly Ratio Clear = Ratio.FromPercent(10);

    /// <summary>How long after the last stroke of one coat its vapour is below a tenth of its lower flammable limit; zero where that cannot be said, which the study of the room then objects to.</summary>
    public static TimeSpan ClearingAfter(CoatRun run, SiteRoom room, RoomCourse course, Shop shop)
    {
        if (run.VolatileMass.Kilograms <= 0 || room.Exhaust.FreshAirFlow.CubicMetersPerSecond <= 0)
        {
            return TimeSpan.Zero;
        }

        AirStudy study = new(RoomAt(room, course), room.Exhaust, [Of(run, TimeSpan.Zero, shop)], TimeSpan.FromHours(8), shop.ExposureLimits);
        return study.TimeToClear(Clear) is TimeSpan time && time <= TimeSpan.FromDays(60) ? CarefulTime.Up(time) : TimeSpan.Zero;
    }

    /// <summary>When the first vapour of a schedule is given off. Studies of several rooms count from one instant, so that a person's day can run through them.</summary>
    public static DateTimeOffset ZeroOf(CrewSchedule schedule)
    {
        DateTimeOffset zero = DateTimeOffset.MaxValue;
        foreach (ScheduledOperation operation in schedule.Operations)
        {
            if (operation.Operation.Vapours.Count > 0 && operation.Start < zero)
            {
                zero = operation.Start;
            }
        }

        foreach (ScheduledRun run in schedule.Runs)
        {
            if (run.Run.VolatileMass.Kilograms > 0 && run.SprayingFrom < zero)
            {
                zero = run.SprayingFrom;
            }
        }

        return zero;
    }

    public static SolventEmission Of(CoatRun run, TimeSpan start, Shop shop) => new()
    {
        Name = run.Id,
        Start = start,
        SprayTime = run.SprayTime,
        VolatileMass = run.VolatileMass,
        Solvents = run.Layer.Product.Solvents,
        FlashFraction = Ratio.FromDecimalFractions(1 - run.Demand.Gun.TransferEfficiency.DecimalFractions),
        FilmTimeConstant = shop.FilmTimeConstant,
    };

    public static WipeEmission Of(Evaporation vapour, TimeSpan start, TimeSpan duration) => new()
    {
        Name = vapour.Name,
        Start = start,
        WipeTime = duration > TimeSpan.Zero ? duration : TimeSpan.FromSeconds(1),
        VolatileMass = vapour.Mass,
        Solvents = vapour.Solvents,
        EvaporationTime = vapour.TimeConstant,
    };

    public static Room RoomAt(SiteRoom room, RoomCourse course) =>
        room.Room.AirTemperature is null ? room.Room with { AirTemperature = Temperature.FromKelvins(course.WarmestAir) } : room.Room;
}
