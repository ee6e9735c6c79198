using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Scheduling;

public class SiteWorkTests
{
    private static readonly LocalClock Clock = LocalClock.Fixed(TimeSpan.FromHours(1));
    private static readonly DateTimeOffset Monday = new(2027, 3, 1, 8, 0, 0, TimeSpan.FromHours(1));
    private static readonly WorkCalendar Week = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock);

    [Fact]
    [Evidence(Basis.Independent, "by hand: 8–9 mask A, 9–10 spray A, the room is A's until 12; B is masked 10–11 and sprayed 11–12 meanwhile; A's second coat at 12, B's at 14 when its room is clear")]
    public void A_second_room_fills_the_time_in_which_the_first_clears()
    {
        SiteSchedule schedule = TwoRooms().Solve();
        Assert.Equal(Monday.AddHours(7), schedule.Finish);
        Assert.True(schedule.IsEarliest);
        Assert.Single(schedule.Visits);
        Assert.True(schedule.HasFewestVisits);
        Assert.Empty(SiteVerifier.Breaches(schedule));
        Assert.Equal(TimeSpan.FromHours(6), schedule.Visits[0].Worked);
        Numbers.HoldsToKernel(schedule.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: nobody may be in the room while it clears, so the sink in the same bathroom waits from 9 to 11 although the crew is free")]
    public void Work_in_the_same_room_waits_until_it_is_clear()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Steps =
            [
                Step("spray tub", 1, "bath") with { Sprays = true, Clearing = TimeSpan.FromHours(2) },
                Step("refit sink", 1, "bath"),
            ],
            Lags = [new("spray tub", "refit sink", TimeSpan.Zero, null, "tub first")],
        };
        SiteSchedule schedule = work.Solve();
        Assert.Equal(Monday.AddHours(3), schedule.Find("refit sink").Start);
        Assert.Equal(ChainLinkKind.Room, schedule.Find("refit sink").Driver.Kind);
        Assert.Equal(Monday.AddHours(3), schedule.Find("spray tub").RoomClear);
        Assert.Equal(["spray tub", "refit sink"], schedule.CriticalChain.Select(link => link.Step));
        Assert.Equal("refit sink: the room is not clear of spray tub for 2 h", schedule.CriticalChain[1].ToString());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: sanding the sink would fall on the wet tub until 14:00, so it is done before the tub is sprayed although the tub is listed first")]
    public void Dust_is_kept_from_wet_film()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Steps =
            [
                Step("spray tub", 1, "bath") with { Sprays = true, Clearing = TimeSpan.FromHours(1), DustFree = TimeSpan.FromHours(5) },
                Step("sand sink", 1, "bath") with { RaisesDust = true },
            ],
        };
        SiteSchedule schedule = work.Solve();
        Assert.Equal(Monday, schedule.Find("sand sink").Start);
        Assert.Equal(Monday.AddHours(2), schedule.Finish);
        Assert.Empty(SiteVerifier.Breaches(schedule));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 10 h of masking from Friday 8:00 goes on on Tuesday, because Monday is a day off; the coat follows at 9:00")]
    public void Weekends_and_days_off_are_kept()
    {
        SiteWork work = new()
        {
            Start = Monday.AddDays(4),
            Calendar = WorkCalendar.Weekdays(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock, [new DateTime(2027, 3, 8)]),
            Steps = [Step("mask", 10, "bath") with { IsInterruptible = true }, Step("prime", 1, "bath")],
            Lags = [new("mask", "prime", TimeSpan.Zero, null, "masked first")],
        };
        SiteSchedule schedule = work.Solve();
        Assert.Equal(Monday.AddDays(8).AddHours(2), schedule.Finish);
        Assert.Equal([Monday.AddDays(4), Monday.AddDays(8)], schedule.Visits.Select(visit => visit.Arrives));
        Assert.Equal(2, schedule.VisitsBound);
        Assert.Empty(SiteVerifier.Breaches(schedule));
        Numbers.HoldsToKernel(schedule.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 40 h after Monday 9:00 is Wednesday 1:00, so refit 8 to 10 and stand until 15:00. Polish could be on Tuesday at 8, but on Wednesday at 10 it costs no third visit and no time")]
    public void Visits_are_as_few_as_the_end_allows()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Steps = [Step("coat", 1, "bath"), Step("polish", 1, "bath"), Step("refit", 2, "bath"), Step("caulk stands", 5, "bath") with { People = 0 }],
            Lags =
            [
                new("coat", "refit", TimeSpan.FromHours(40), null, "cure"),
                new("coat", "polish", TimeSpan.FromHours(12), null, "hard enough to polish"),
                new("refit", "caulk stands", TimeSpan.Zero, TimeSpan.Zero, "stands at once"),
            ],
        };
        SiteSchedule schedule = work.Solve();
        Assert.Equal(Monday.AddDays(2).AddHours(7), schedule.Finish);
        Assert.Equal([Monday, Monday.AddDays(2)], schedule.Visits.Select(visit => visit.Arrives));
        Assert.Equal(Monday.AddDays(2).AddHours(2), schedule.Find("polish").Start);
        Assert.True(schedule.IsEarliest);
        Assert.True(schedule.HasFewestVisits);
        Assert.Empty(SiteVerifier.Breaches(schedule));
        Assert.Equal(["coat", "refit", "caulk stands"], schedule.CriticalChain.Select(link => link.Step));
        Numbers.HoldsToKernel(schedule.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: with two people two bathrooms of one-person steps run side by side; the gun is there once, so the second coat waits an hour; with two guns it does not")]
    public void People_and_tools_are_shared()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = Week,
            Crew = 2,
            Steps =
            [
                Step("A mask", 1, "A"), Step("A spray", 1, "A") with { Sprays = true, Tools = ["gun"] },
                Step("B mask", 1, "B"), Step("B spray", 1, "B") with { Sprays = true, Tools = ["gun"] },
            ],
            Lags = [new("A mask", "A spray", TimeSpan.Zero, null, "masked first"), new("B mask", "B spray", TimeSpan.Zero, null, "masked first")],
        };
        Assert.Equal(Monday.AddHours(3), work.Solve().Finish);
        Assert.Equal(Monday.AddHours(2), (work with { Tools = [new SiteTool("gun", 2)] }).Solve().Finish);
        Assert.Equal(Monday.AddHours(4), (work with { Crew = 1 }).Solve().Finish);
        Assert.Equal(ChainLinkKind.Tool, work.Solve().Steps.Single(step => step.Start == Monday.AddHours(2)).Driver.Kind);
    }

    [Property(MaxTest = 400)]
    [Evidence(Basis.Independent, "small random works: every start on the hour within four days tried, each complete plan read by the verifier, earliest end and then fewest visits kept")]
    public void The_optimum_equals_brute_force(DoNotSize<int> seed)
    {
        SiteWork work = RandomSmall(seed.Item);
        (DateTimeOffset? end, int visits) = BruteForce(work);
        SiteSchedule schedule = work.Solve();
        if (schedule.IsPossible)
        {
            Assert.Empty(SiteVerifier.Breaches(schedule));
            Numbers.HoldsToKernel(schedule.Workings());
            Assert.True(schedule.IsEarliest);
        }

        if (end is null)
        {
            Assert.True(!schedule.IsPossible || schedule.Finish > Monday.AddDays(4));
            return;
        }

        Assert.True(schedule.IsPossible, schedule.ToString());
        if (end > Monday.AddDays(4))
        {
            // The last morning of an interrupted step lies beyond the starts that were tried; another order with a start out there may end earlier.
            Assert.True(schedule.Finish <= end);
            return;
        }

        Assert.Equal(end, schedule.Finish);
        Assert.Equal(visits, schedule.Visits.Count);
        Assert.True(schedule.HasFewestVisits);
    }

    [Property(MaxTest = 150)]
    [Evidence(Basis.Independent, "random works of several bathrooms, crews and tools: the verifier finds no breach, the proved bound is not above the end, twice the same work gives the same schedule")]
    public void No_rule_is_broken(DoNotSize<int> seed)
    {
        SiteWork work = RandomLarge(seed.Item);
        SiteSchedule schedule = work.Solve(SearchEffort.Standard with { Nodes = 300, NodesPerGroup = 60, Orders = 3 });
        if (!schedule.IsPossible)
        {
            Assert.NotEqual(string.Empty, schedule.Conflict!.ToString());
            return;
        }

        Assert.Empty(SiteVerifier.Breaches(schedule));
        Assert.True(schedule.FinishBound <= schedule.Finish);
        Assert.True(schedule.VisitsBound <= schedule.Visits.Count);
        Numbers.HoldsToKernel(schedule.Workings());
        SiteSchedule again = work.Solve(SearchEffort.Standard with { Nodes = 300, NodesPerGroup = 60, Orders = 3 });
        Assert.Equal(schedule.Steps.Select(step => step.Start), again.Steps.Select(step => step.Start));
    }

    [Property(MaxTest = 100)]
    [Evidence(Basis.Identity, "the critical chain starts at the start of the work, each link is driven by the one before, and its times add up to the end")]
    public void The_chain_adds_up_to_the_end(DoNotSize<int> seed)
    {
        SiteSchedule schedule = RandomLarge(seed.Item).Solve(SearchEffort.Standard with { Nodes = 300, NodesPerGroup = 60, Orders = 2 });
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

    [Fact]
    [Evidence(Basis.Independent, "by hand: 10 to 12 h after a coat that ends by 17:00 is night; after a coat that ends at 9:00 on the same day it is 19:00. To reach 8:00 the next morning from 17:00 takes 15 h; to finish by 17:00 from 9:00 takes at most 7 h")]
    public void A_window_that_lies_at_night_is_named_with_what_would_do()
    {
        SiteWork work = new()
        {
            Start = Monday,
            Calendar = WorkCalendar.EveryDay(new WorkingHours(TimeSpan.FromHours(8), TimeSpan.FromHours(17)), Clock),
            Steps = [Step("prime", 1, "bath"), Step("topcoat", 1, "bath"), Step("mask", 1, "bath")],
            Lags = [new("prime", "topcoat", TimeSpan.FromHours(10), TimeSpan.FromHours(12), "recoat window of the primer"), new("mask", "prime", TimeSpan.Zero, null, "masked first")],
        };
        ScheduleConflict conflict = work.Solve().Conflict!;
        Assert.True(conflict.IsProved);
        Assert.Equal(["recoat window of the primer"], conflict.Lags.Select(lag => lag.Reason));
        Assert.Equal([(true, TimeSpan.FromHours(15)), (false, TimeSpan.FromHours(7))], conflict.Reliefs.Select(relief => (relief.OfMaximum, relief.Needed)));
        Assert.Contains("at most 15 h instead of 12 h", conflict.ToString(), StringComparison.Ordinal);
        foreach (LagRelief relief in conflict.Reliefs)
        {
            TimeSpan minute = TimeSpan.FromMinutes(1);
            Assert.True((work with { Lags = [Change(relief, TimeSpan.Zero), work.Lags[1]] }).Solve().IsPossible);
            Assert.False((work with { Lags = [Change(relief, relief.OfMaximum ? -minute : minute), work.Lags[1]] }).Solve().IsPossible);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "contradictions of every kind are results: a circle of lags, a step longer than a shift, two windows that the crew cannot both keep")]
    public void Contradictions_are_results()
    {
        SiteWork work = new() { Start = Monday, Calendar = Week, Steps = [Step("a", 1, null), Step("b", 1, null)], Lags = [new("a", "b", TimeSpan.Zero, null, "one"), new("b", "a", TimeSpan.Zero, null, "two")] };
        SiteSchedule circle = work.Solve();
        Assert.Equal(TimeSpan.FromHours(2), circle.Conflict!.Times!.Excess);
        Assert.Null(circle.Finish);
        Assert.Empty(circle.Workings().Steps);
        Assert.StartsWith("strip takes 10 h and the longest shift has 9 h", (work with { Steps = [Step("strip", 10, null)], Lags = [] }).Solve().ToString(), StringComparison.Ordinal);
        SiteSchedule crew = (work with
        {
            Steps = [Step("wipe", 1, null), Step("a", 2, null), Step("b", 2, null)],
            Lags = [new("wipe", "a", TimeSpan.Zero, TimeSpan.FromHours(1), "open time on a"), new("wipe", "b", TimeSpan.Zero, TimeSpan.FromHours(1), "open time on b")],
        }).Solve();
        Assert.Equal(["open time on a", "open time on b"], crew.Conflict!.Lags.Select(lag => lag.Reason).Order(StringComparer.Ordinal));
        Assert.Equal(TimeSpan.FromHours(2), crew.Conflict.Reliefs[0].Needed);
    }

    [Fact]
    [Evidence(Basis.Contract, "names, lags, people and tools that do not fit are refused; progress rises to one; a stopped search throws")]
    public void Refuses_what_cannot_be_and_can_be_stopped()
    {
        SiteWork work = TwoRooms();
        Assert.Throws<ArgumentException>(() => (work with { Steps = [work.Steps[0], work.Steps[0]], Lags = [] }).Solve());
        Assert.Throws<ArgumentException>(() => (work with { Lags = [new("A mask", "C", TimeSpan.Zero, null, "unknown")] }).Solve());
        Assert.Throws<ArgumentException>(() => (work with { Steps = [work.Steps[0] with { People = 2 }], Lags = [] }).Solve());
        Assert.Throws<ArgumentException>(() => (work with { Steps = [work.Steps[0] with { IsInterruptible = true }, work.Steps[1]], Lags = [new("A mask", "A first", TimeSpan.Zero, TimeSpan.FromHours(1), "open")] }).Solve());
        Assert.Throws<ArgumentException>(() => (work with { Tools = [new("gun", 1), new("gun", 2)] }).Solve());
        Assert.Throws<ArgumentException>(() => Step("x", 1, null) with { Tools = ["gun", "gun"] });
        Numbers.Refuses("Duration", () => _ = Step("x", -1, null));
        Numbers.Refuses("People", () => _ = Step("x", 1, null) with { People = 21 });
        Numbers.Refuses("Clearing", () => _ = Step("x", 1, null) with { Clearing = TimeSpan.FromHours(-1) });
        Numbers.Refuses("Crew", () => _ = work with { Crew = 0 });
        Numbers.Refuses("count", () => _ = new SiteTool("gun", 0));
        Numbers.Refuses("Nodes", () => _ = SearchEffort.Standard with { Nodes = 0 });
        List<double> told = [];
        work.Solve(progress: new Telling(told));
        Assert.Equal(told.Order(), told);
        Assert.Equal((0, 1), (told[0], told[^1]));
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => work.Solve(cancellation: stop.Token));
    }

    private static StepLag Change(LagRelief relief, TimeSpan by) => relief.OfMaximum
        ? new StepLag(relief.Lag.Before, relief.Lag.After, relief.Lag.Minimum, relief.Needed + by, relief.Lag.Reason)
        : new StepLag(relief.Lag.Before, relief.Lag.After, relief.Needed + by, relief.Lag.Maximum, relief.Lag.Reason);

    private static SiteStep Step(string name, double hours, string? room) => new() { Name = name, Duration = TimeSpan.FromHours(hours), Room = room };

    private static SiteWork TwoRooms()
    {
        List<SiteStep> steps = [];
        List<StepLag> lags = [];
        foreach (string room in new[] { "A", "B" })
        {
            SiteStep coat = Step(room + " first", 1, room) with { Sprays = true, Clearing = TimeSpan.FromHours(2) };
            steps.AddRange([Step(room + " mask", 1, room), coat, coat with { Name = room + " second" }]);
            lags.AddRange([new(room + " mask", room + " first", TimeSpan.Zero, null, "masked first"), new(room + " first", room + " second", TimeSpan.FromHours(1), TimeSpan.FromHours(8), "recoat window")]);
        }

        return new SiteWork { Start = Monday, Calendar = Week, Steps = steps, Lags = lags };
    }

    // Twenty numbers from one, the same on every platform.
    private static uint[] Draw(int seed)
    {
        ulong state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL);
        uint[] drawn = new uint[20];
        for (int i = 0; i < drawn.Length; i++)
        {
            state = unchecked((state * 6364136223846793005UL) + 1442695040888963407UL);
            drawn[i] = (uint)(state >> 33);
        }

        return drawn;
    }

    private static SiteWork RandomSmall(int seed)
    {
        uint[] s = Draw(seed);
        int count = 2 + (int)(s[0] % 3);
        List<SiteStep> steps = [.. Enumerable.Range(0, count).Select(i => s[10 + i]).Select((own, i) => Step("s" + i, 1 + (own / 3 % 3), own / 9 % 3 == 0 ? null : "room") with
        {
            People = own / 27 % 5 == 0 ? 0 : 1,
            IsInterruptible = own / 135 % 3 == 0,
            Sprays = own / 405 % 3 == 0,
            Clearing = TimeSpan.FromHours(own / 1215 % 3),
            RaisesDust = own / 3645 % 3 == 0,
            DustFree = TimeSpan.FromHours(own / 10935 % 4),
        })];
        List<StepLag> lags = [];
        for (int i = 0; i < Math.Min(3, s.Length - 1); i++)
        {
            int before = (int)(s[i] / 5 % count);
            int after = (int)((before + 1 + (s[i] / 77 % (count - 1))) % count);
            (before, after) = s[i] / 500 % 6 == 0 ? (before, after) : (Math.Min(before, after), Math.Max(before, after));
            double least = s[i] / 1000 % 5;
            bool most = s[i] % 2 == 0 && !(steps[before].IsInterruptible && steps[before].IsAttended);
            lags.Add(new StepLag("s" + before, "s" + after, TimeSpan.FromHours(least), most ? TimeSpan.FromHours(least + (s[i] / 10000 % 20)) : null, "lag " + i));
        }

        WorkingHours hours = new(TimeSpan.FromHours(8), TimeSpan.FromHours(12));
        DateTime[] off = s[0] / 7 % 2 == 0 ? [new DateTime(2027, 3, 2)] : [];
        return new SiteWork { Start = Monday, Calendar = WorkCalendar.Weekdays(hours, Clock, off), Steps = steps, Lags = lags };
    }

    private static SiteWork RandomLarge(int seed)
    {
        uint[] s = Draw(seed);
        List<SiteStep> steps = [];
        List<StepLag> lags = [];
        int rooms = 1 + (int)(s[0] % 4);
        int crew = 1 + (int)(s[0] / 4 % 2);
        for (int r = 0; r < rooms; r++)
        {
            for (int i = 0; i < 2 + (int)(s[r % s.Length] % 4); i++)
            {
                uint own = s[((5 * r) + i) % s.Length];
                steps.Add(Step("r" + r + "s" + i, 0.5 + (own % 8 * 0.5), "room " + r) with
                {
                    People = (int)(own / 8 % 7) switch { 0 => 0, 1 => crew, _ => 1 },
                    IsInterruptible = own / 56 % 3 == 0,
                    Sprays = own / 168 % 3 == 0,
                    Clearing = TimeSpan.FromHours(own / 504 % 3),
                    RaisesDust = own / 1512 % 4 == 0,
                    DustFree = TimeSpan.FromHours(own / 6048 % 5),
                    Tools = own / 168 % 3 == 0 ? ["gun"] : [],
                });
                if (i > 0)
                {
                    bool most = own % 3 == 0 && !(steps[^2].IsInterruptible && steps[^2].IsAttended);
                    double least = own / 100 % 4 * 0.5;
                    lags.Add(new StepLag(steps[^2].Name, steps[^1].Name, TimeSpan.FromHours(least), most ? TimeSpan.FromHours(least + 2 + (own / 1000 % 24)) : null, "lag " + lags.Count));
                }
            }
        }

        return new SiteWork { Start = Monday, Calendar = Week, Steps = steps, Lags = lags, Crew = crew };
    }

    private static (DateTimeOffset? End, int Visits) BruteForce(SiteWork work)
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
                int visits = plan.Where(one => one.Item1.IsAttended).SelectMany(one => one.Item2.Select(piece => piece.Item1.Date)).Distinct().Count();
                if (best.End is null || end < best.End || (end == best.End && visits < best.Visits))
                {
                    best = (end, visits);
                }

                return;
            }

            foreach (IReadOnlyList<(DateTimeOffset, DateTimeOffset)> pieces in choices[i])
            {
                if (best.End is null || pieces[^1].Item2 <= best.End)
                {
                    plan.Add((work.Steps[i], pieces));
                    if (PairsHold(work, plan))
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
    private static bool PairsHold(SiteWork work, List<(SiteStep Step, IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)> Pieces)> plan)
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
                TimeSpan? between = lag.Before == step.Name && lag.After == other.Name ? at[0].From - pieces[^1].Until
                    : lag.Before == other.Name && lag.After == step.Name ? pieces[0].From - at[^1].Until : null;
                if (between < lag.Minimum || between > lag.Maximum)
                {
                    return false;
                }
            }
        }

        return true;
    }

    // Whole-hour starts over four days; interruptible work goes on at 8:00 of the next working day, or of a later one, when that saves a visit.
    private static IEnumerable<IReadOnlyList<(DateTimeOffset From, DateTimeOffset Until)>> Choices(SiteWork work, SiteStep step)
    {
        for (int hour = 0; hour < 96; hour++)
        {
            DateTimeOffset start = Monday.AddHours(hour);
            if (!step.IsAttended)
            {
                yield return [(start, start + step.Duration)];
            }
            else if (start.Hour is >= 8 and < 12 && IsWorked(work, start))
            {
                DateTimeOffset close = start.AddHours(12 - start.Hour);
                if (start + step.Duration <= close)
                {
                    yield return [(start, start + step.Duration)];
                }
                else if (step.IsInterruptible)
                {
                    for (int next = 1; next < 4; next++)
                    {
                        DateTimeOffset morning = close.AddDays(next).AddHours(-4);
                        if (IsWorked(work, morning))
                        {
                            yield return [(start, close), (morning, morning + (step.Duration - (close - start)))];
                        }
                    }
                }
            }
        }
    }

    private static bool IsWorked(SiteWork work, DateTimeOffset time) =>
        time.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday) && !work.Calendar.DaysOff.Contains(time.Date);

    private sealed class Telling(List<double> told) : IProgress<double>
    {
        public void Report(double value) => told.Add(value);
    }
}
