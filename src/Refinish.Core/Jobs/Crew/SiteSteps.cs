using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// Turns operations into steps for the site search: people with whoever stands by, and the hours in which each cannot be done.
/// </summary>
internal sealed class SiteSteps(WorkList work, IReadOnlyList<DayRequest> days)
{
    /// <summary>For how many days quiet hours are laid out; nobody plans loud work so far ahead.</summary>
    public const int QuietDays = 150;

    private readonly LocalClock clock = work.Shop.Calendar.Clock;
    private readonly Dictionary<(string Room, string Product), IReadOnlyList<TimeInterval>> windows = [];
    private readonly Dictionary<string, SprayLimits> conditions = new(StringComparer.Ordinal);
    private readonly List<DayRequest> asked = [];
    private IReadOnlyList<TimeInterval>? quiet;

    public List<PlanObjection> Objections { get; } = [];

    public List<SiteStep> Make()
    {
        HashSet<string> standing = new(work.Operations.Select(operation => operation.Beside).OfType<string>(), StringComparer.Ordinal);
        Dictionary<string, CoatRun> runs = work.Runs.ToDictionary(run => run.Id, StringComparer.Ordinal);
        foreach (CoatRun run in work.Runs)
        {
            foreach (CoatOperation operation in run.Layer.Product.Operations.Where(one => one.Conditions is not null))
            {
                conditions[CoatOperations.IdOf(run, operation)] = operation.Conditions!;
            }
        }

        foreach (string id in days.SelectMany(request => request.Operations).Where(id => !work.Operations.Any(operation => operation.Id == id)).Distinct())
        {
            Objections.Add(new PlanObjection(ObjectionKind.Schedule, id, "request", "A day is asked for the operation '" + id + "', which is not in the plan."));
        }

        LookAtDays();
        List<SiteStep> steps = [];
        foreach (Operation operation in work.Operations)
        {
            if (operation.Beside is null)
            {
                steps.Add(Step(operation, standing.Contains(operation.Id) ? 1 : 0, runs.TryGetValue(operation.Id, out CoatRun? run) ? run : null));
            }
        }

        return steps;
    }

    // Days on which nothing can be planned would keep every step from being done, and each would be told.
    private void LookAtDays()
    {
        DateTime first = clock.OnSite(work.Start).Date;
        DateTime last = clock.OnSite(work.Start.AddTicks(SiteSolver.LongestWait)).Date;
        for (int i = 0; i < days.Count; i++)
        {
            if (days[i].Days.Any(day => day >= first && day <= last))
            {
                asked.Add(days[i]);
                continue;
            }

            Objections.Add(new PlanObjection(
                ObjectionKind.Schedule, work.Premises.Id, "days/" + Figures.Fixed(i + 1, 0),
                "Asked for: " + days[i] + ". Days are looked at from " + DayRequest.Text(first) + ", when the work starts, to "
                    + DayRequest.Text(last) + ", and none of these is among them; the times are those without them. "
                    + "Ask for other days, or start later."));
        }
    }

    private SiteStep Step(Operation operation, int standingBy, CoatRun? run)
    {
        int people = operation.People + (operation.People > 0 ? standingBy : 0);
        if (people > work.Shop.Crew.Count)
        {
            Objections.Add(new PlanObjection(
                ObjectionKind.Schedule, operation.Id, "people",
                "'" + operation.Name + "' takes " + Figures.Fixed(people, 0) + " people and the crew has " + Figures.Fixed(work.Shop.Crew.Count, 0) + ". Bring more people or divide the work."));
            people = work.Shop.Crew.Count;
        }

        List<TimeInterval> unavailable = Unavailable(operation, people, run);
        SiteStep step = new()
        {
            Id = operation.Id,
            Name = operation.Name,
            Duration = operation.DurationAt(work.Premises.Difficulty),
            Room = operation.Room,
            People = people,
            IsInterruptible = operation.IsInterruptible,
            Sprays = RoomWatch.KeepsOthersOut(operation, work.Premises, work.Shop.Limits),
            Clearing = operation.Clearing,
            RaisesDust = operation.RaisesDust,
            DustFree = operation.DustFree,
            Tools = operation.Tools,
        };
        return unavailable.Count == 0 ? step : step with { Unavailable = unavailable };
    }

    private List<TimeInterval> Unavailable(Operation operation, int people, CoatRun? run)
    {
        List<TimeInterval> closed = [];
        if (people > 0)
        {
            closed.AddRange(work.Premises.Closed);
        }

        if (operation.IsLoud && people > 0 && work.Premises.QuietHours.Count > 0)
        {
            closed.AddRange(quiet ??= QuietHours());
        }

        if (run is not null && operation.Room is string room && work.Courses.TryGetValue(room, out RoomCourse? course) && !course.IsHeld)
        {
            CoatingProduct product = run.Layer.Product;
            if (!windows.TryGetValue((room, product.Id), out IReadOnlyList<TimeInterval>? window))
            {
                (Temperature least, Temperature most) = CureLaw.Range(product);
                window = course.Closed(product.SprayLimits, new CureRange(least.Kelvins, most.Kelvins));
                windows.Add((room, product.Id), window);
            }

            closed.AddRange(window);
        }

        if (conditions.TryGetValue(operation.Id, out SprayLimits? limits) && operation.Room is string here
            && work.Courses.TryGetValue(here, out RoomCourse? climate) && !climate.IsHeld)
        {
            closed.AddRange(climate.Closed(limits, new CureRange(limits.MinimumTemperature.Kelvins, limits.MaximumTemperature.Kelvins)));
        }

        foreach (DayRequest request in asked)
        {
            if (people > 0 && (request.Operations.Count == 0 || request.Operations.Contains(operation.Id)))
            {
                closed.AddRange(Outside(request));
            }
        }

        return closed;
    }

    private IEnumerable<TimeInterval> Outside(DayRequest request)
    {
        DateTimeOffset from = work.Start.AddDays(-2);
        foreach (DateTime day in request.Days)
        {
            DateTimeOffset begin = clock.WhenShowing(day);
            if (begin > from)
            {
                yield return new TimeInterval(from, begin);
            }

            from = clock.WhenShowing(day.AddDays(1));
        }

        // Beyond what any search looks at.
        DateTimeOffset end = from.AddYears(50);
        yield return new TimeInterval(from, end);
    }

    private List<TimeInterval> QuietHours()
    {
        DateTime first = clock.OnSite(work.Start).Date;
        IEnumerable<DateTime> nights = Enumerable.Range(0, QuietDays).Select(i => first.AddDays(i));
        List<TimeInterval> hours =
        [
            .. from day in nights
            from shift in work.Premises.QuietHours
            where shift.Day == day.DayOfWeek
            select new TimeInterval(clock.WhenShowing(day + shift.Hours.From), clock.WhenShowing(day + shift.Hours.Until)),
        ];

        DateTimeOffset last = clock.WhenShowing(first.AddDays(QuietDays));
        hours.Add(new TimeInterval(last, last.AddYears(50)));

        return hours;
    }
}
