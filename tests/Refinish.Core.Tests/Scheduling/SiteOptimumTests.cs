using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;
using static Refinish.Tests.Scheduling.SiteWorks;

namespace Refinish.Tests.Scheduling;

public class SiteOptimumTests
{
    [Property(MaxTest = 200)]
    [Evidence(Basis.Independent, "small random works: every start on the hour within four days tried, each complete plan read by the verifier, earliest end and then fewest visits kept")]
    public void The_earliest_end_equals_brute_force(DoNotSize<int> seed)
    {
        SiteWork work = RandomSmall(seed.Item) with { Prefers = SchedulePreference.EarliestEnd };
        (DateTimeOffset? end, int visits) = BruteForce(work, null);
        SiteSchedule schedule = work.Solve();
        CheckRules(schedule);
        if (end is null)
        {
            Assert.True(!schedule.IsPossible || schedule.Finish > Last);
            return;
        }

        Assert.True(schedule.IsPossible, schedule.ToString());
        Assert.True(schedule.IsEarliest);
        if (end > Last)
        {
            // The last morning of an interrupted step lies beyond the starts that were tried; another order with a start out there may end
            // earlier.
            Assert.True(schedule.Finish <= end);
            return;
        }

        Assert.Equal(end, schedule.Finish);
        Assert.Equal(visits, schedule.Visits.Count);
        Assert.True(schedule.HasFewestVisits);
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Independent, "small random works: every start on the hour within four days tried; the fewest visits within a slack after the earliest end, and of those the earliest end")]
    public void The_fewest_visits_equal_brute_force(DoNotSize<int> seed)
    {
        SiteWork work = RandomSmall(seed.Item) with { VisitSlack = TimeSpan.FromDays(1) };
        (DateTimeOffset? earliest, _) = BruteForce(work, null);
        SiteSchedule schedule = work.Solve();
        CheckRules(schedule);
        if (earliest is null || Close(work, earliest.Value) + work.VisitSlack > Last)
        {
            return;
        }

        DateTimeOffset latest = Close(work, earliest.Value) + work.VisitSlack;
        Assert.Equal(latest, schedule.LatestEnd);
        (DateTimeOffset? end, int visits) = BruteForce(work, latest);
        Assert.Equal(visits, schedule.Visits.Count);
        Assert.Equal(end, schedule.Finish);
        Assert.True(schedule.HasFewestVisits);
        Assert.True(schedule.IsEarliest);
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Identity, "one room, seven days of slack: a start a minute later or earlier has the same number of visits, both proved")]
    public void A_minute_never_adds_a_visit(DoNotSize<int> seed)
    {
        SiteWork work = Bathroom(seed.Item, 10);
        SiteSchedule schedule = work.Solve();
        SiteSchedule later = (work with { Start = work.Start.AddMinutes(1) }).Solve();
        Assert.Equal(schedule.IsPossible, later.IsPossible);
        if (schedule.IsPossible)
        {
            Assert.True(schedule.HasFewestVisits);
            Assert.True(later.HasFewestVisits);
            Assert.Equal(schedule.Visits.Count, later.Visits.Count);
        }
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Identity, "one room: a work without one of its steps and that step's lags never needs more visits")]
    public void A_step_less_never_adds_a_visit(DoNotSize<int> seed)
    {
        SiteWork work = Bathroom(seed.Item, 9);
        SiteSchedule schedule = work.Solve();
        if (!schedule.IsPossible)
        {
            return;
        }

        foreach (SiteStep gone in work.Steps)
        {
            SiteSchedule less = (work with
            {
                Steps = [.. work.Steps.Where(step => step.Id != gone.Id)],
                Lags = [.. work.Lags.Where(lag => lag.Before != gone.Id && lag.After != gone.Id)],
            }).Solve();
            Assert.True(less.Visits.Count <= schedule.Visits.Count, gone.Id);
        }
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Independent, "random works of one and of several rooms: the list worked off in its order, placed here step by step without the search, is never better than the schedule")]
    public void Never_worse_than_the_list(DoNotSize<int> seed)
    {
        SiteWork work = RandomLarge(seed.Item) with { Crew = 1, Prefers = SchedulePreference.EarliestEnd };
        work = work with { Steps = [.. work.Steps.Select(step => step with { People = Math.Min(1, step.People) })],
            Lags = [.. work.Lags.Select(lag => new StepLag(lag.Before, lag.After, lag.Minimum, null, lag.Reason))] };
        SiteSchedule schedule = work.Solve(SearchEffort.Quick with { Nodes = 20, NodesPerGroup = 10, StepsForProof = 1 });
        if (WorkOff(work) is DateTimeOffset end)
        {
            Assert.True(schedule.Finish <= end, schedule.ToString());
            Assert.True((work with { Prefers = SchedulePreference.FewestVisits }).Solve().Visits.Count <= schedule.Visits.Count);
        }
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Independent, "random works of several bathrooms, crews, tools, times when steps cannot be done, and clocks: the verifier finds no breach, the proved bound is not above the end, twice the same work gives the same schedule")]
    public void No_rule_is_broken(DoNotSize<int> seed)
    {
        SiteWork work = OnClocks(RandomLarge(seed.Item), seed.Item);
        SiteSchedule schedule = work.Solve(SearchEffort.Standard with { Nodes = 300, NodesPerGroup = 60, Orders = 3 });
        if (!schedule.IsPossible)
        {
            Assert.NotEqual(string.Empty, schedule.Conflict!.ToString());
            return;
        }

        CheckRules(schedule);
        Assert.True(schedule.FinishBound <= schedule.Finish);
        Assert.True(schedule.VisitsBound <= schedule.Visits.Count);
        SiteSchedule again = work.Solve(SearchEffort.Standard with { Nodes = 300, NodesPerGroup = 60, Orders = 3 });
        Assert.Equal(schedule.Steps.Select(step => step.Start), again.Steps.Select(step => step.Start));
    }

    [Property(MaxTest = 200)]
    [Evidence(Basis.Identity, "the critical chain starts at the start of the work, each link is driven by the one before, and its times add up to the end")]
    public void The_chain_adds_up_to_the_end(DoNotSize<int> seed)
    {
        SiteSchedule schedule = OnClocks(RandomLarge(seed.Item), seed.Item)
            .Solve(SearchEffort.Standard with { Nodes = 300, NodesPerGroup = 60, Orders = 2 });
        if (!schedule.IsPossible)
        {
            return;
        }

        Assert.Equal(schedule.Finish, schedule.Find(schedule.CriticalChain[^1].Step).End);
        Assert.Equal(ChainLinkKind.Start, schedule.CriticalChain[0].Kind);
        DateTimeOffset at = schedule.Work.Start;
        for (int i = 0; i < schedule.CriticalChain.Count; i++)
        {
            ChainLink link = schedule.CriticalChain[i];
            PlannedStep step = schedule.Find(link.Step);
            if (i > 0)
            {
                Assert.Equal(schedule.CriticalChain[i - 1].Step, link.Driver);
                PlannedStep driver = schedule.Find(link.Driver!);
                at = link.Kind == ChainLinkKind.Window ? driver.Start - link.Between - step.Step.Duration : driver.End + link.Between;
            }

            Assert.Equal(step.Start, at + link.Wait);
        }
    }

    private static readonly DateTimeOffset Last = Monday.AddDays(4);

    private static void CheckRules(SiteSchedule schedule)
    {
        if (schedule.IsPossible)
        {
            Assert.Empty(SiteVerifier.Breaches(schedule));
            Assert.Empty(SiteVerifier.PeopleBreaches(schedule));
            Numbers.CanBeWritten(schedule.Workings());
            IReadOnlyList<WorkingStep> derived = schedule.Workings().Steps;
            for (int i = 0; i < schedule.Steps.Count; i++)
            {
                Numbers.Near((schedule.Steps[i].Start - schedule.Work.Start).TotalSeconds, derived.Single(step => step.Symbol == $"S_{i + 1}").Value, 1e-3);
                Numbers.Near((schedule.Steps[i].End - schedule.Work.Start).TotalSeconds, derived.Single(step => step.Symbol == $"E_{i + 1}").Value, 1e-3);
            }

            for (int i = 0; i < schedule.Visits.Count; i++)
            {
                Numbers.Near(schedule.Visits[i].Worked.TotalSeconds, derived.Single(step => step.Symbol == $"A_{i + 1}").Value, 1e-3);
            }
        }
    }

    // Steps in the order of the list, each at the first quarter of an hour at which all that stands already lets it; every number is a
    // quarter of an hour.
    private static DateTimeOffset? WorkOff(SiteWork work)
    {
        List<(SiteStep Step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> Pieces)> plan = [];
        DateTimeOffset from = work.Start;
        foreach (SiteStep step in work.Steps)
        {
            SiteWork sofar = work with { Steps = [.. plan.Select(one => one.Step), step],
                Lags = [.. work.Lags.Where(lag => lag.After == step.Id || plan.Exists(one => one.Step.Id == lag.After))] };
            bool placed = false;
            for (int quarter = 0; quarter < 4 * 24 * 30 && !placed; quarter++)
            {
                DateTimeOffset start = from.AddMinutes(15 * quarter);
                if (step.IsAttended && step.IsInterruptible && !IsOpen(work, step, start))
                {
                    continue;
                }

                plan.Add((step, step.IsAttended && step.IsInterruptible ? Pieces(work, step, start) : [(start, start + step.Duration)]));
                placed = SiteVerifier.Breaches(sofar, plan).Count == 0;
                if (!placed)
                {
                    plan.RemoveAt(plan.Count - 1);
                }
            }

            if (!placed)
            {
                return null;
            }

            // The next work starts no sooner than this one ends; waits run beside it.
            from = step.IsAttended ? plan[^1].Pieces[^1].Until : from;
        }

        return plan.Max(one => one.Pieces[^1].Until);
    }

    private static bool IsOpen(SiteWork work, SiteStep step, DateTimeOffset time) =>
        work.Calendar.Shifts.Any(shift =>
            shift.Day == time.DayOfWeek && time.TimeOfDay >= shift.Hours.From && time.TimeOfDay < shift.Hours.Until)
        && !work.Calendar.DaysOff.Contains(time.Date) && !step.Unavailable.Any(one => one.Start <= time && time < one.End);

    private static List<(DateTimeOffset From, DateTimeOffset Until)> Pieces(SiteWork work, SiteStep step, DateTimeOffset start)
    {
        List<(DateTimeOffset From, DateTimeOffset Until)> pieces = [];
        TimeSpan left = step.Duration;
        TimeSpan quarter = TimeSpan.FromMinutes(15);
        for (DateTimeOffset time = start; left > TimeSpan.Zero; time += quarter)
        {
            if (IsOpen(work, step, time))
            {
                if (pieces.Count > 0 && pieces[^1].Until == time)
                {
                    pieces[^1] = (pieces[^1].From, time + quarter);
                }
                else
                {
                    pieces.Add((time, time + quarter));
                }

                left -= quarter;
            }
        }

        return pieces;
    }

    // The close of the last four-hour shift that opens before a time, or the time itself if later.
    private static DateTimeOffset Close(SiteWork work, DateTimeOffset end)
    {
        DateTimeOffset open = new(end.Date.AddHours(8), end.Offset);
        while (open >= end || !IsWorked(work, open))
        {
            open = open.AddDays(-1);
        }

        return open.AddHours(4) > end ? open.AddHours(4) : end;
    }

    private static (DateTimeOffset? End, int Visits) BruteForce(SiteWork work, DateTimeOffset? latest)
    {
        (DateTimeOffset? End, int Visits) best = (null, 0);
        List<(SiteStep, IReadOnlyList<(DateTimeOffset, DateTimeOffset)>)> plan = [];
        List<IReadOnlyList<(DateTimeOffset, DateTimeOffset)>>[] choices = [.. work.Steps.Select(step => Choices(work, step).ToList())];
        void Try(int i)
        {
            if (i == work.Steps.Count)
            {
                if (SiteVerifier.Breaches(work, plan).Count > 0)
                {
                    return;
                }

                DateTimeOffset end = plan.Max(one => one.Item2[^1].Item2);
                int visits = Days(plan);
                if (best.End is null || (latest is null ? (end, visits).CompareTo((best.End.Value, best.Visits)) : (visits, end)
                    .CompareTo((best.Visits, best.End.Value))) < 0)
                {
                    best = (end, visits);
                }

                return;
            }

            foreach (IReadOnlyList<(DateTimeOffset, DateTimeOffset)> pieces in choices[i])
            {
                if (pieces[^1].Item2 <= (latest ?? best.End ?? DateTimeOffset.MaxValue))
                {
                    plan.Add((work.Steps[i], pieces));
                    if (PairsHold(work, plan) && (latest is null || best.End is null || Days(plan) <= best.Visits))
                    {
                        Try(i + 1);
                    }

                    plan.RemoveAt(plan.Count - 1);
                }
            }
        }

        Try(0);
        return best;
    }

    // Only to save time: whether the last step overlaps another in the hands of the one person, or breaks a lag.
    private static bool PairsHold(SiteWork work,
        List<(SiteStep Step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> Pieces)> plan)
    {
        (SiteStep step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> pieces) = plan[^1];
        for (int k = 0; k < plan.Count - 1; k++)
        {
            (SiteStep other, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> at) = plan[k];
            if (step.IsAttended && other.IsAttended && pieces[0].From < at[^1].Until && at[0].From < pieces[^1].Until)
            {
                return false;
            }

            foreach (StepLag lag in work.Lags)
            {
                TimeSpan? between = lag.Before == step.Id && lag.After == other.Id ? at[0].From - pieces[^1].Until
                    : lag.Before == other.Id && lag.After == step.Id ? pieces[0].From - at[^1].Until : null;
                if (between < lag.Minimum || between > lag.Maximum)
                {
                    return false;
                }
            }
        }

        return true;
    }

    private static int Days(List<(SiteStep Step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> Pieces)> plan) =>
        plan.Where(one => one.Step.IsAttended).SelectMany(one => one.Pieces.Select(piece => piece.From.Date)).Distinct().Count();

    // Whole-hour starts over four days; interruptible work goes on at 8:00 of the next working day, or of a later one, when that saves a
    // visit.
    private static IEnumerable<IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)>> Choices(SiteWork work, SiteStep step)
    {
        for (int hour = 0; hour < 96; hour++)
        {
            DateTimeOffset start = Monday.AddHours(hour);
            if (!step.IsAttended)
            {
                yield return [(start, start + step.Duration)];
            }
            else if (IsOpen(work, step, start))
            {
                if (!step.IsInterruptible)
                {
                    yield return [(start, start + step.Duration)];
                    continue;
                }

                foreach (IReadOnlyList<(DateTimeOffset, DateTimeOffset)> pieces in Going(work, step, start, (int)step.Duration.TotalHours))
                {
                    yield return pieces;
                }
            }
        }
    }

    // Hour by hour; after a night the work may go on on any of the next three working days.
    private static IEnumerable<IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)>> Going(SiteWork work, SiteStep step,
        DateTimeOffset start, int hours)
    {
        DateTimeOffset time = start;
        int left = hours;
        while (left > 0 && IsOpen(work, step, time))
        {
            time = time.AddHours(1);
            left--;
        }

        if (left == 0)
        {
            yield return [(start, time)];
            yield break;
        }

        DateTimeOffset next = time;
        while (next.Hour < 12 && !IsOpen(work, step, next))
        {
            next = next.AddHours(1);
        }

        List<DateTimeOffset> onwards = next.Hour < 12 ? [next] : [];
        for (DateTimeOffset day = new(time.Date.AddDays(1).AddHours(8), time.Offset); onwards.Count < 3
            && next.Hour >= 12; day = day.AddDays(1))
        {
            DateTimeOffset open = day;
            while (open.Hour < 12 && !IsOpen(work, step, open))
            {
                open = open.AddHours(1);
            }

            if (open.Hour < 12)
            {
                onwards.Add(open);
            }
        }

        foreach (DateTimeOffset later in onwards)
        {
            foreach (IReadOnlyList<(DateTimeOffset, DateTimeOffset)> rest in Going(work, step, later, left))
            {
                yield return [(start, time), .. rest];
            }
        }
    }

    private static bool IsWorked(SiteWork work, DateTimeOffset time) =>
        time.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday) && !work.Calendar.DaysOff.Contains(time.Date);
}
