using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Air;

namespace Refinish.Jobs;

/// <summary>What one person breathes on one day, through all rooms they are in, without any protection.</summary>
public sealed class DayExposure
{
    private readonly bool asksForAir;
    private readonly bool isImmediatelyDangerous;

    private DayExposure(string worker, DateTime day, PersonExposure exposure, IReadOnlyCollection<RoomAirPlan> rooms)
    {
        asksForAir = rooms.Any(room => room.AsksForAir);
        isImmediatelyDangerous = rooms.Any(room => room.IsImmediatelyDangerous);
        Worker = worker;
        Day = day;
        Exposure = exposure;
    }

    /// <summary>Identifier of the person.</summary>
    public string Worker { get; }

    /// <summary>The date by the clock of the site.</summary>
    public DateTime Day { get; }

    /// <summary>Eight-hour averages and mixture indices against the shop's limits.</summary>
    public PersonExposure Exposure { get; }

    /// <summary>Those that are beyond their limit or cannot be judged.</summary>
    public IReadOnlyList<ProtectionNeed> Protection => field ??= ProtectionNeed.Open(Exposure.Stays.Count == 0
        ? []
        : Exposure.Exposure.Select(one => one.Comparison).Concat([Exposure.StrictestLimit])
            .Select(comparison => new ProtectionNeed(Worker, comparison, asksForAir, isImmediatelyDangerous)));

    /// <summary>Person, day and index.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) + ": " + Exposure;

    internal static IEnumerable<DayExposure> Of(JobPlan plan)
    {
        if (plan.Found is not CrewSchedule schedule)
        {
            yield break;
        }

        Dictionary<string, RoomAirPlan> rooms = plan.Air.Where(room => room.Study is not null).ToDictionary(room => room.Room.Id, StringComparer.Ordinal);
        foreach (IGrouping<(DateTime Day, int Person), RoomPresence> day in RoomPresence.Of(schedule)
            .GroupBy(stay => (Day: stay.From.Date, stay.Person)).OrderBy(day => day.Key.Day).ThenBy(day => day.Key.Person))
        {
            List<RoomStay> stays = [];
            HashSet<RoomAirPlan> entered = [];
            foreach (RoomPresence stay in day.OrderBy(stay => stay.From))
            {
                if (rooms.TryGetValue(stay.Room, out RoomAirPlan? room) && stay.Until > room.Zero)
                {
                    entered.Add(room);
                    TimeSpan from = stay.From > room.Zero ? stay.From - room.Zero : TimeSpan.Zero;
                    stays.Add(new RoomStay(room.Study!, from, stay.Until - room.Zero));
                }
            }

            Worker worker = schedule.Work.Shop.Crew[day.Key.Person];
            yield return new DayExposure(worker.Id, day.Key.Day, new PersonExposure(worker.Name, stays, schedule.Work.Shop.Limits),
                entered);
        }
    }
}
