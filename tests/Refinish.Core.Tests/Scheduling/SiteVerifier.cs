using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Tests.Scheduling;

/// <summary>
/// Reads a schedule as a foreman would: every rule of the work, checked on clock times alone, minute by minute where people and tools are
/// shared.
/// It shares no code with the search.
/// </summary>
internal static class SiteVerifier
{
    public static List<string> Breaches(SiteWork work,
        IReadOnlyList<(SiteStep Step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> Pieces)> plan)
    {
        List<string> breaches = [];
        Dictionary<string, (DateTimeOffset Start, DateTimeOffset End)> times = plan.ToDictionary(one => one.Step.Id, one =>
            (one.Pieces[0].From, one.Pieces[^1].Until));
        if (plan.Count != work.Steps.Count)
        {
            breaches.Add("a step is missing");
        }

        foreach ((SiteStep step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> pieces) in plan)
        {
            CheckStep(work, step, pieces, breaches);
        }

        foreach (StepLag lag in work.Lags)
        {
            if (!Keeps(lag, times[lag.Before].End, times[lag.After].Start))
            {
                breaches.Add(lag + " is " + (times[lag.After].Start - times[lag.Before].End));
            }
        }

        foreach ((SiteStep a, _) in plan)
        {
            foreach ((SiteStep b, _) in plan)
            {
                if (a.Id != b.Id && a.Room is not null && a.Room == b.Room)
                {
                    CheckRoom(a, times[a.Id], b, times[b.Id], breaches);
                }
            }
        }

        CheckShared(work.Crew, work.Steps, step => step.People, times, "people", breaches);
        foreach (string tool in work.Steps.SelectMany(step => step.Tools).Distinct())
        {
            CheckShared(work.Tools.FirstOrDefault(one => one.Name == tool)?.Count ?? 1, work.Steps, step =>
                step.Tools.Contains(tool) ? 1 : 0, times, tool, breaches);
        }

        return breaches;
    }

    public static List<string> Breaches(SiteSchedule schedule) =>
        Breaches(schedule.Work,
            [.. schedule.Steps.Select(one =>
            (one.Step, (IReadOnlyList<(DateTimeOffset, DateTimeOffset)>)[.. one.Pieces.Select(piece => (piece.Start, piece.End))]))]);

    /// <summary>
    /// The people of a schedule: as many as each step takes, nobody twice at once, and the same turns in the days of each person.
    /// </summary>
    public static List<string> PeopleBreaches(SiteSchedule schedule)
    {
        List<string> breaches = [];
        foreach (PlannedStep one in schedule.Steps)
        {
            if (one.People.Count != one.Step.People || one.People.Distinct().Count() != one.People.Count
                || one.People.Any(person => person < 0 || person >= schedule.Work.Crew))
            {
                breaches.Add(one.Step.Id + " has the wrong people");
            }

            foreach (PlannedStep other in schedule.Steps.Where(other =>
                other.Step.Id != one.Step.Id && other.Start < one.End && one.Start < other.End))
            {
                if (one.People.Intersect(other.People).Any() && other.Step.Duration > TimeSpan.Zero && one.Step.Duration > TimeSpan.Zero)
                {
                    breaches.Add("somebody does " + one.Step.Id + " and " + other.Step.Id + " at once");
                }
            }
        }

        IEnumerable<(int, string, DateTimeOffset)> turns = schedule.Steps.Where(one => one.Step.IsAttended)
            .SelectMany(one => one.People.SelectMany(person => one.Pieces.Select(piece => (person, one.Step.Id, piece.Start))));
        IEnumerable<(int, string, DateTimeOffset)> listed = schedule.PersonDays.SelectMany(day =>
            day.Turns.Select(turn => (day.Person, turn.Step.Id, turn.Piece.Start)));
        if (!turns.Order().SequenceEqual(listed.Order()))
        {
            breaches.Add("the days of the people are not their turns");
        }

        foreach (PersonDay day in schedule.PersonDays)
        {
            if (day.Arrives != day.Turns.Min(turn => turn.Piece.Start) || day.Leaves != day.Turns.Max(turn => turn.Piece.End)
                || day.Worked != TimeSpan.FromTicks(day.Turns.Sum(turn => (turn.Piece.End - turn.Piece.Start).Ticks))
                    || day.Turns.Any(turn => turn.Piece.Start.Date != day.Date))
            {
                breaches.Add(day + " does not add up");
            }
        }

        return breaches;
    }

    // A clock may be off by the rounding of ticks.
    internal static bool Keeps(StepLag lag, DateTimeOffset end, DateTimeOffset start)
    {
        if (lag.Clock is null)
        {
            return start - end >= lag.Minimum && !(start - end > lag.Maximum);
        }

        // After the end of the record a least time may have been gained long ago; a most time cannot be judged there.
        DateTimeOffset known = lag.Clock.History.End ?? DateTimeOffset.MaxValue;
        if (start < end || end < lag.Clock.History.Start || end > known || (start > known && lag.Maximum is not null))
        {
            return false;
        }

        TimeSpan age = lag.Clock.Between(end, start < known ? start : known);
        TimeSpan rounding = TimeSpan.FromMilliseconds(1);
        return age >= lag.Minimum - rounding && !(age > lag.Maximum + rounding);
    }

    private static void CheckStep(SiteWork work, SiteStep step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> pieces,
        List<string> breaches)
    {
        if (pieces[0].From < work.Start)
        {
            breaches.Add(step.Name + " starts before the work");
        }

        if (TimeSpan.FromTicks(pieces.Sum(piece => (piece.Until - piece.From).Ticks)) != step.Duration)
        {
            breaches.Add(step.Name + " is not done for its time");
        }

        if (pieces.Count > 1 && !(step.IsInterruptible && step.IsAttended))
        {
            breaches.Add(step.Name + " is cut");
        }

        for (int i = 0; i < pieces.Count && step.IsAttended; i++)
        {
            (DateTimeOffset from, DateTimeOffset until) = pieces[i];
            WorkShift? shift = work.Calendar.Shifts.FirstOrDefault(one =>
                one.Day == from.DayOfWeek && from.TimeOfDay >= one.Hours.From && until.DateTime <= from.Date + one.Hours.Until);
            if (shift is null || work.Calendar.DaysOff.Contains(from.Date))
            {
                breaches.Add(step.Name + " is done out of hours, " + from);
            }
            else if (i + 1 < pieces.Count && until.DateTime != from.Date + shift.Hours.Until
                && !step.Unavailable.Any(one => one.Start <= until && until < one.End))
            {
                breaches.Add(step.Name + " stops before the end of the shift");
            }
            else if (i > 0 && from.TimeOfDay != shift.Hours.From && !step.Unavailable.Any(one => one.Start < from && from <= one.End))
            {
                breaches.Add(step.Name + " goes on later than it could");
            }
        }

        if (pieces.Any(piece => step.Unavailable.Any(one => one.Start < one.End && piece.From < one.End && one.Start < piece.Until)))
        {
            breaches.Add(step.Name + " is done when it cannot be");
        }
    }

    private static void CheckRoom(SiteStep a, (DateTimeOffset Start, DateTimeOffset End) of, SiteStep b,
        (DateTimeOffset Start, DateTimeOffset End) at, List<string> breaches)
    {
        if (a.Sprays && b.IsAttended && at.Start < of.End + (b.Sprays ? TimeSpan.Zero : a.Clearing) && of.Start < at.End)
        {
            breaches.Add(b.Name + " is in the room of " + a.Name + " while it sprays or clears");
        }

        if (b.RaisesDust && (a.Sprays || a.DustFree > TimeSpan.Zero) && at.Start < of.End + a.DustFree && of.Start < at.End)
        {
            breaches.Add(b.Name + " raises dust beside " + a.Name);
        }
    }

    private static void CheckShared(
        int most, IReadOnlyList<SiteStep> steps, Func<SiteStep, int> need, Dictionary<string, (DateTimeOffset Start, DateTimeOffset End)> times, string what, List<string> breaches)
    {
        foreach (SiteStep step in steps.Where(step => need(step) > 0))
        {
            DateTimeOffset now = times[step.Id].Start;
            int used = steps.Where(other => times[other.Id].Start <= now && now < times[other.Id].End).Sum(need);
            if (used > most)
            {
                breaches.Add("too few " + what + " at " + now);
            }
        }
    }
}
