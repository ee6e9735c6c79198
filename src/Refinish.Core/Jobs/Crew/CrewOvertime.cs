using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// The overtime of everybody on a schedule by the shop's rule, from what is paid for each day: hours worked, waiting as the shop pays it,
/// and travel. A visit counts for the day on which the person arrives.
/// </summary>
/// <remarks>Only this job is counted. What somebody works elsewhere on the same day or in the same week is not known here.</remarks>
public sealed class CrewOvertime
{
    /// <summary>Counts the overtime.</summary>
    /// <param name="schedule">A schedule that was found.</param>
    /// <exception cref="ArgumentNullException"><paramref name="schedule"/> is missing.</exception>
    public CrewOvertime(CrewSchedule schedule)
    {
        Shop shop = Guard.NotNull(schedule).Work.Shop;
        if (shop.Overtime is not OvertimeRule rule)
        {
            return;
        }

        People = new ValueList<OvertimeHours>(schedule.Visits
            .GroupBy(visit => visit.Worker, StringComparer.Ordinal)
            .OrderBy(person => person.Key, StringComparer.Ordinal)
            .Select(person => new OvertimeHours(rule, person.Key, 
                [.. person.Select(visit => new PaidDay(visit.Arrives.Date, visit.Paid + schedule.Work.TripTime))])));
        bool byPerson = shop.Crew.Any(worker => worker.Wage is not null);
        Premiums = new ValueList<PaidTime>(People
            .Select(person => person.AsPaidTime(byPerson ? shop.Crew.FirstOrDefault(worker => worker.Id == person.Worker)?.Wage : null))
            .OfType<PaidTime>());
    }

    /// <summary>The overtime of each person who comes; empty when the shop has no rule.</summary>
    public IReadOnlyList<OvertimeHours> People { get; } = ValueList<OvertimeHours>.Empty;

    /// <summary>What is paid on top of the wages, one entry for each person with overtime, at their wage.</summary>
    public IReadOnlyList<PaidTime> Premiums { get; } = ValueList<PaidTime>.Empty;

    /// <summary>How the overtime of each person follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => new("Overtime", [], [.. People.Select(person => person.Workings())]);

    /// <summary>The overtime of each person.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        People.Count == 0 ? "no overtime rule" : string.Join("; ", People.Select(person => person.ToString()));
}
