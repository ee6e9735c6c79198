using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// Who stays out of a room with vapour in it, for how long, and who watches. One rule for all operations: coats, stripping and promoters,
/// and whatever else gives off enough to bring the closed room to the design line of flammability, a tenth of the lower limit by default.
/// </summary>
internal sealed class RoomWatch(WorkBuilder builder, SiteRoom room, RoomCourse course, RoomMemo memo)
{
    private static readonly Source WorkingDay = Source.Derived("a working day of the shop's calendar");

    private readonly VapourOrder order = new(builder, room.Id);

    /// <summary>Gives the operations of a room their clearing times and whoever stands by.</summary>
    public static void Over(WorkBuilder builder, SiteRoom room, RoomCourse course, RoomMemo memo) =>
        new RoomWatch(builder, room, course, memo).Over(_ => true);

    /// <summary>The same for what the caller added or replaced.</summary>
    public static void Over(WorkBuilder builder, SiteRoom room, RoomCourse course, IEnumerable<string> ids) =>
        new RoomWatch(builder, room, course, builder.Rooms[room.Id].Memo).Over(new HashSet<string>(ids, StringComparer.Ordinal).Contains);

    /// <summary>
    /// Whether only those who wear supplied air are in the room meanwhile. Grains are broadcast into a coat that was sprayed minutes ago.
    /// Stripping and promoters count however little they give off, since one leans into the fixture.
    /// </summary>
    public static bool KeepsOthersOut(Operation operation, Premises premises, LimitSet limits) =>
        operation.Sprays || operation.Clearing > TimeSpan.Zero || operation.Kind == WorkKind.Broadcast
        || (operation.Vapours.Count > 0 && operation.People > 0
            && premises.Rooms.FirstOrDefault(one => one.Id == operation.Room) is SiteRoom room
            && (WorkOrder.Of(operation.Kind).IsWatched || !IsLittle(operation, room, limits)));

    // All of it in the air of the closed room at once. A limit that is not known is not little, nor is a vapour that does not burn: how
    // much
    // of it harms, no flammable limit tells. Water and what is not volatile do not count.
    private static bool IsLittle(Operation operation, SiteRoom room, LimitSet limits)
    {
        double volume = room.Room.Volume.CubicMeters;
        double molar = AirKernel.FlammableMolarVolume(room.Room).Value;
        double sum = 0;
        foreach (Evaporation vapour in operation.Vapours)
        {
            foreach (SolventShare share in vapour.Solvents.Where(one => one.Solvent.Volatility.IsVolatile && !one.Solvent.IsWater))
            {
                if (share.Solvent.Flammability.Lower is not Ratio lower)
                {
                    return false;
                }

                double concentration = vapour.Mass.Kilograms * share.MassFraction.DecimalFractions / volume;
                sum += AirKernel.VolumeFraction(concentration, molar,
                    share.Solvent.MolarMass.KilogramsPerMole).Value / lower.DecimalFractions;
            }
        }

        return sum < limits.FlammableDesignLine.Fraction;
    }

    private void Over(Func<string, bool> which)
    {
        bool someone = builder.Shop.StandsBy && builder.Shop.Crew.Count > 1;
        (TimeSpan? Longest, string Name) worst = (TimeSpan.Zero, string.Empty);
        Operation[] attended = [.. builder.Operations.Where(operation => operation.Room == room.Id && operation.Beside is null && operation.People > 0)];
        foreach (string id in attended.Select(operation => operation.Id).Where(which))
        {
            int at = builder.Operations.FindIndex(operation => operation.Id == id);
            Operation operation = builder.Operations[at];
            if (!KeepsOthersOut(operation, builder.Work.Premises, builder.Shop.Limits))
            {
                continue;
            }

            operation = operation with { Cautions = [.. operation.Cautions.Concat(Watched(operation)).Distinct()] };
            builder.Operations[at] = operation;
            if (order.GivesOff(operation))
            {
                TimeSpan? clear = ClearingAfter(operation);
                worst = worst.Longest is null || (clear is TimeSpan time && time <= worst.Longest) ? worst : (clear, operation.Name);
                if (clear > operation.Clearing)
                {
                    builder.Operations[at] = operation with { Clearing = clear.Value };
                }
            }

            if (someone && !builder.Operations.Exists(one => one.Beside == id))
            {
                builder.Operations.Insert(at + 1, StandBy(operation));
            }
        }

        TimeSpan day = LongestDay();
        if (!(worst.Longest <= day))
        {
            builder.Objections.RemoveAll(one => one.Id == ObjectionKind.Flammability.ToString("G") + "/" + room.Id + "/clearing");
            builder.Objections.Add(new PlanObjection(ObjectionKind.Flammability, room.Id, "clearing", new LimitComparison(
                "time until the air of " + room.Name + " is clear after '" + worst.Name + "'"
                    + (worst.Longest is null ? ", more than 60 days" : string.Empty),
                (worst.Longest ?? TimeSpan.FromDays(60)).TotalSeconds,
                day.TotalSeconds,
                LimitSense.AtMost,
                Measure.Hours,
                WorkingDay,
                "a stronger exhaust with its make-up air, or less solvent at a time")
            {
                Digits = AirStudy.ScreeningDigits,
            }));
        }
    }

    // Grains fall into the coat's own vapour and mist.
    private static IEnumerable<Caution> Watched(Operation operation) =>
        operation.Kind == WorkKind.Broadcast ? [Cautions.SuppliedAir, Cautions.NeverAlone] : [Cautions.NeverAlone];

    // The air after an operation, with everything that may have been done in the room before it as late as the waits allow. The same once
    // more is not studied twice.
    private TimeSpan? ClearingAfter(Operation operation)
    {
        TimeSpan own = order.DurationOf(operation);
        List<(TimeSpan End, Operation Of)> placed =
            [(TimeSpan.Zero, operation), .. order.Before(operation).Select(one => (-one.Gap - own, one.Operation))];
        return memo.Clearing(
            [.. placed.Select(one => ((object?)order.RunOf(one.Of) ?? one.Of.Vapours, one.End, order.DurationOf(one.Of)))],
            () =>
            {
                TimeSpan first = placed.Min(one => one.End - order.DurationOf(one.Of));
                List<Emission> emissions = [.. placed.SelectMany(one => Emissions(one.Of, one.End - first))];
                Room air = RoomAir.RoomAt(room, course);
                return emissions.Count == 0
                    ? TimeSpan.Zero
                    : ClearingAfter(new AirStudy(air, room.Exhaust, emissions, TimeSpan.FromHours(8), builder.Shop.Limits), -first);
            });
    }

    // The later of the two lines that can be judged: the design line of flammability, and 1 on the index of the lowest eight-hour
    // limits. Nothing where neither can be; the study of the room and the condition on going back in say so.
    private static TimeSpan? ClearingAfter(AirStudy study, TimeSpan end)
    {
        if (study.AirChangesPerHour <= 0)
        {
            return null;
        }

        TimeSpan last = study.LastSprayEnds - end;
        TimeSpan? fire = study.Flammability.IsWhole ? study.TimeToClear(study.Limits.FlammableDesignLine.Share) : TimeSpan.Zero;
        TimeSpan? health = study.Strictest.IsWhole ? study.TimeToReEntry(1) : TimeSpan.Zero;
        return fire is TimeSpan one && health is TimeSpan other ? CarefulTime.Up(last + (one > other ? one : other)) : null;
    }

    private IEnumerable<Emission> Emissions(Operation operation, TimeSpan end)
    {
        if (order.RunOf(operation) is CoatRun run)
        {
            return RoomAir.Of(run, end - run.SprayTime, builder.Shop);
        }

        TimeSpan duration = order.DurationOf(operation);
        return operation.Vapours.SelectMany(vapour => RoomAir.Of(vapour, [(end - duration, duration)]));
    }

    private Operation StandBy(Operation operation) => WorkOrder.Begun(
        WorkKind.StandBy, operation.Id + "/" + WorkOrder.Key(WorkKind.StandBy), room.Id,
        "stand outside the room within sight or call of whoever works in it, watch the fan and the air supply, call for help; "
            + "do not go in without supplied air") with
    {
        Beside = operation.Id,
        Time = InSight(order.DurationOf(operation)),
        Cautions = [.. WorkCautions.Of(WorkKind.StandBy), .. operation.Cautions.Contains(Cautions.Sensitised) ? new[] { Cautions.Sensitised } : []],
        Source = Cautions.NeverAlone.Source,
    };

    // Longer work is objected to itself.
    private static TimeSpan InSight(TimeSpan time) => time <= StepLag.Longest ? time : StepLag.Longest;

    private TimeSpan LongestDay() => builder.Shop.Calendar.Shifts.GroupBy(shift => shift.Day)
        .Select(day => day.Max(shift => shift.Hours.Until) - day.Min(shift => shift.Hours.From)).DefaultIfEmpty().Max();
}
