using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Scheduling;

namespace Refinish.Tests.Scheduling;

/// <summary>
/// Reads a schedule as a foreman would: every rule of the work, checked on clock times alone, minute by minute where people and tools are shared.
/// It shares no code with the search.
/// </summary>
internal static class SiteVerifier
{
    public static List<string> Breaches(SiteWork work, IReadOnlyList<(SiteStep Step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> Pieces)> plan)
    {
        List<string> breaches = [];
        Dictionary<string, (DateTimeOffset Start, DateTimeOffset End)> times = plan.ToDictionary(one => one.Step.Name, one => (one.Pieces[0].From, one.Pieces[^1].Until));
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
            TimeSpan between = times[lag.After].Start - times[lag.Before].End;
            if (between < lag.Minimum || between > lag.Maximum)
            {
                breaches.Add(lag + " is " + between);
            }
        }

        foreach ((SiteStep a, _) in plan)
        {
            foreach ((SiteStep b, _) in plan)
            {
                if (a.Name != b.Name && a.Room is not null && a.Room == b.Room)
                {
                    CheckRoom(a, times[a.Name], b, times[b.Name], breaches);
                }
            }
        }

        CheckShared(work.Crew, work.Steps, step => step.People, times, "people", breaches);
        foreach (string tool in work.Steps.SelectMany(step => step.Tools).Distinct())
        {
            CheckShared(work.Tools.FirstOrDefault(one => one.Name == tool)?.Count ?? 1, work.Steps, step => step.Tools.Contains(tool) ? 1 : 0, times, tool, breaches);
        }

        return breaches;
    }

    public static List<string> Breaches(SiteSchedule schedule) =>
        Breaches(schedule.Work, [.. schedule.Steps.Select(one => (one.Step, (IReadOnlyList<(DateTimeOffset, DateTimeOffset)>)[.. one.Pieces.Select(piece => (piece.Start, piece.End))]))]);

    private static void CheckStep(SiteWork work, SiteStep step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> pieces, List<string> breaches)
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
            WorkShift? shift = work.Calendar.Shifts.FirstOrDefault(one => one.Day == from.DayOfWeek && from.TimeOfDay >= one.Hours.From && until.DateTime <= from.Date + one.Hours.Until);
            if (shift is null || work.Calendar.DaysOff.Contains(from.Date))
            {
                breaches.Add(step.Name + " is done out of hours, " + from);
            }
            else if (i + 1 < pieces.Count && until.DateTime != from.Date + shift.Hours.Until)
            {
                breaches.Add(step.Name + " stops before the end of the shift");
            }
        }
    }

    private static void CheckRoom(SiteStep a, (DateTimeOffset Start, DateTimeOffset End) of, SiteStep b, (DateTimeOffset Start, DateTimeOffset End) at, List<string> breaches)
    {
        if (a.Sprays && b.IsAttended && at.Start < of.End + a.Clearing && of.Start < at.End)
        {
            breaches.Add(b.Name + " is in the room of " + a.Name + " while it sprays or clears");
        }

        if (b.RaisesDust && (a.Sprays || a.DustFree > TimeSpan.Zero) && at.Start < of.End + a.DustFree && of.Start < at.End)
        {
            breaches.Add(b.Name + " raises dust beside " + a.Name);
        }
    }

    private static void CheckShared(int most, IReadOnlyList<SiteStep> steps, Func<SiteStep, int> need, Dictionary<string, (DateTimeOffset Start, DateTimeOffset End)> times, string what, List<string> breaches)
    {
        foreach (SiteStep step in steps.Where(step => need(step) > 0))
        {
            DateTimeOffset now = times[step.Name].Start;
            int used = steps.Where(other => times[other.Name].Start <= now && now < times[other.Name].End).Sum(need);
            if (used > most)
            {
                breaches.Add("too few " + what + " at " + now);
            }
        }
    }
}
