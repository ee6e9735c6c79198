using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// The labour of a schedule: tasks by standard, and time that is paid beyond them, each at the wage of whoever does it where wages differ.
/// </summary>
internal sealed class CrewLabour(CrewSchedule schedule)
{
    private readonly Shop shop = schedule.Work.Shop;
    private readonly bool byPerson = schedule.Work.Shop.Crew.Any(worker => worker.Wage is not null);

    public List<LabourTask> Tasks()
    {
        List<LabourTask> tasks = [];
        if (LabourStandards.For(WorkKind.Travel, shop.Labour) is LabourStandard travel)
        {
            foreach (IGrouping<string, PersonVisit> person in schedule.Visits.GroupBy(visit => byPerson ? visit.Worker : string.Empty, StringComparer.Ordinal))
            {
                // Each trip is one of its own: fixed hours count for each.
                tasks.Add(Paid(new LabourTask { Standard = travel, Area = Area.Zero, Units = 1, Times = person.Count(), Id = "travel" },
                    person.Key));
            }
        }

        foreach (ScheduledOperation operation in schedule.Operations)
        {
            double stretch = Stretch(operation);
            foreach (string worker in operation.People)
            {
                foreach (LabourTask task in operation.Operation.Labour)
                {
                    LabourTask here = At(operation.Operation, task);
                    tasks.Add(Paid(stretch == 1 ? here : here with { Stretch = stretch }, worker));
                }
            }
        }

        return tasks;
    }

    public List<PaidTime> PaidTime()
    {
        List<PaidTime> paid = [];
        foreach (ScheduledOperation operation in schedule.Operations)
        {
            if (operation.Operation.Kind == WorkKind.StandBy)
            {
                Add(paid, null, "stand-by", "standing by while a coat is sprayed", operation.Pieces.Sum(piece => piece.Length.Ticks),
                    operation.People.Count > 0 ? operation.People[0] : string.Empty);
            }
            else if (operation.Operation.Time > TimeSpan.Zero && operation.Operation.HoursAt(1) <= 0)
            {
                foreach (string worker in operation.People)
                {
                    Add(paid, operation.Operation, Own(operation.Operation.Id), operation.Operation.Name,
                        operation.Pieces.Sum(piece => piece.Length.Ticks), worker);
                }
            }
        }

        foreach (PersonVisit visit in schedule.Visits)
        {
            Add(paid, null, "waiting", shop.Paid == PaidTimeRule.HalfDays
                ? "paid up to half-days" : "waiting on site", (visit.Paid - visit.Worked).Ticks, visit.Worker);
        }

        return paid;
    }

    // An identity without '/' that no other operation and no time of the library's own has.
    private static string Own(string operation) => "operation." + operation.Replace("%", "%25").Replace("/", "%2F");

    private static string? FixtureOf(Operation operation) => operation.Fixtures.Count == 1 ? operation.Fixtures[0] : null;

    // What is paid is the time on the clock, in whole minutes, and not what the standards come to.
    private double Stretch(ScheduledOperation operation)
    {
        double hours = operation.Operation.HoursAt(schedule.Work.Premises.Difficulty);
        return hours > 0 ? operation.Pieces.Sum(piece => piece.Length.Ticks) / (hours * TimeSpan.TicksPerHour) : 1;
    }

    private LabourTask Paid(LabourTask task, string worker) =>
        task with { Worker = worker.Length == 0 ? null : worker, Wage = WageOf(worker) };

    // Repairs belong to their fixture, all other work to its room: whether a room holds one fixture or two must not move a line.
    private static LabourTask At(Operation operation, LabourTask task) =>
        task.Standard.Repairs is not null && (task.Fixture ?? FixtureOf(operation)) is string fixture
        ? task with { Fixture = fixture, Room = operation.Room }
        : task with { Fixture = null, Room = operation.Room };

    // A wage that is that of the price book is no other wage.
    private decimal? WageOf(string worker) =>
        byPerson ? shop.Crew.FirstOrDefault(one => one.Id == worker)?.Wage ?? shop.Prices.LabourRate : null;

    private void Add(List<PaidTime> paid, Operation? operation, string id, string description, long ticks, string worker)
    {
        if (ticks <= 0)
        {
            return;
        }

        string? person = worker.Length == 0 ? null : worker;
        int at = paid.FindIndex(one => one.Id == id && one.Worker == person);
        at = at < 0 ? paid.Count : at;
        TimeSpan before = TimeSpan.Zero;
        if (at < paid.Count)
        {
            before = paid[at].Time;
            paid.RemoveAt(at);
        }

        paid.Insert(at, new PaidTime
        {
            Id = id,
            Description = description,
            Time = before + TimeSpan.FromTicks(ticks),
            Wage = WageOf(worker),
            Worker = person,
            Fixture = operation is null ? null : FixtureOf(operation),
            Room = operation?.Room,
            Operation = operation?.Id,
        });
    }
}
