using System;
using System.Collections.Generic;
using System.Threading;
using Refinish.Curing;

namespace Refinish.Scheduling;

/// <summary>
/// The way from a work to its schedule: first whether times and hours allow any; one group (a bathroom) by exact search; several groups one
/// after the other into the time that the earlier ones leave, in a few orders, with a bound from the crew's load and from each group alone;
/// an exact search for a proof where the whole is small. Then the visits, then less waiting within each of them.
/// </summary>
internal sealed class SiteSolver(SiteWork work, SearchEffort effort, IProgress<double>? progress, CancellationToken cancellation)
{
    // Invented limits that no work comes near: how long times without work, and how long a clock that hardly runs, are waited for.
    /// <summary>How long after the start of a work times that are not available, days asked for and single waits are looked at.</summary>
    internal const long LongestWait = 3650 * TimeSpan.TicksPerDay;

    private const int MostDays = 400 * 366;

    private readonly long start = work.Start.UtcTicks;
    private readonly Openings openings = new(work.Calendar, work.Start, MostDays);
    private long horizon;
    private int nodes;
    private double told;

    /// <summary>A schedule of the same work without some of its steps or lags; <see langword="null"/> when none is known.</summary>
    public SiteSchedule? Earlier { get; init; }

    public SiteSchedule Solve()
    {
        SiteCompiler compiler = new(work, openings);
        Tell(0);
        ConflictExplainer explainer = new(work, compiler, start, effort, cancellation);
        if (explainer.TooLong() is ScheduleConflict tooLong)
        {
            return Refused(tooLong);
        }

        StepModel model = compiler.Model();
        if (model.Contradicts())
        {
            return Refused(explainer.Times());
        }

        horizon = Horizon();
        openings.EndAfter((int)((horizon - start) / TimeSpan.TicksPerDay) + 30);
        if (explainer.LateRecords() is ScheduleConflict late)
        {
            return Refused(late);
        }

        FittedWork? fitted = Earlier is null ? null : FittedWork.Of(work, model, openings, Earlier);
        if (fitted is { IsDearer: false })
        {
            Tell(1);
            return fitted.Schedule;
        }

        List<List<int>> groups = compiler.Groups();
        SiteSchedule found = groups.Count == 1 ? One(model, explainer) : Many(model, groups, compiler, explainer);
        return fitted is null || !fitted.IsBetterThan(found) ? found : fitted.Schedule;
    }

    private SiteSchedule One(StepModel model, ConflictExplainer explainer)
    {
        SiteSearch search = new(model, start, cancellation);
        search.Run(horizon, effort.Nodes, first: false);
        return search.Best is null
            ? Refused(explainer.Why(null, horizon, search.IsComplete), search.Nodes)
            : Planned(model, search, search.Best, search.Bound);
    }

    private SiteSchedule Many(StepModel model, List<List<int>> groups, SiteCompiler compiler, ConflictExplainer explainer)
    {
        SiteGroups placing = new(work, compiler, model, groups, effort, start, horizon, done => Tell(0.9 * done), cancellation);
        bool placed = placing.Run();
        nodes += placing.Nodes;
        if (placing.Failed is List<int> failed)
        {
            return Refused(explainer.Why(failed, horizon, placing.FailureIsProved));
        }

        long[]? best = placed ? placing.Best : null;
        long end = placed ? placing.BestEnd : horizon + 1;
        long bound = placing.Bound;
        SiteSearch search = new(model, start, cancellation);
        if (end > bound && model.Count <= effort.StepsForProof)
        {
            search.Run(end - 1, effort.Nodes, first: false);
            best = search.Best ?? best;
            end = search.Best is null ? end : search.BestEnd;
            bound = Math.Max(bound, search.IsComplete ? end : Math.Min(end, search.Bound));
        }
        else if (end > bound)
        {
            (best, end) = Listed(model, end - 1) is (long[] starts, long[] ends) ? (starts, SiteSearch.Last(ends)) : (best, end);
        }

        return best is null ? Refused(ScheduleConflict.Unknown(), search.Nodes) : Planned(model, search, best, Math.Min(bound, end));
    }

    private SiteSchedule Planned(StepModel model, SiteSearch search, long[] starts, long bound)
    {
        long[] ends = model.Ends(starts, DaySet.All);
        long end = SiteSearch.Last(ends);
        long lowest = bound;
        bool few = work.Prefers == SchedulePreference.FewestVisits;
        long latest = few ? Math.Max(end, openings.LastClose(end)) + work.VisitSlack.Ticks : end;
        Tell(0.95);
        DaySet days = DaySet.All;
        int visits = SiteVisits.Count(model, starts, days);
        List<WorkDay> window = openings.Days(start, Math.Max(latest, start + 1));
        int least = Math.Min(visits, VisitBound.Of(model, window));
        if (least < visits && model.Count <= effort.StepsForProof)
        {
            SiteVisits fewer = new(model, search, effort.Nodes);
            fewer.Improve(window, least, visits, latest);
            least = fewer.Bound;
            if (fewer.Starts is not null)
            {
                (starts, days, visits) = (fewer.Starts, fewer.Days, fewer.Visits);
                ends = model.Ends(starts, days);
                end = SiteSearch.Last(ends);
                bound = fewer.IsEarliest ? end : Math.Min(bound, end);
            }
        }

        // What is not proved must at least not be worse than the list worked off.
        if (least < visits && Listed(model, latest) is (long[] Starts, long[] Ends) listed
            && SiteVisits.Count(model, listed.Starts, DaySet.All) < visits)
        {
            (starts, ends, days) = (listed.Starts, listed.Ends, DaySet.All);
            visits = SiteVisits.Count(model, starts, days);
            bound = Math.Min(lowest, SiteSearch.Last(ends));
        }

        SiteTimes times = CheaperTimes.Of(work, model, days, visits, starts, ends);
        Tell(1);
        return new SiteSchedule(work, times, new ScheduleProof(bound, least, few ? latest : null), nodes + search.Nodes);
    }

    private (long[] Starts, long[] Ends)? Listed(StepModel model, long latest)
    {
        (long[] starts, long[] ends) = (new long[model.Count], new long[model.Count]);
        return new ListedOrder(model, new StepOverlaps(model, null), null).Run(start, latest, DaySet.All, starts, ends) ? (starts, ends)
            : null;
    }

    private SiteSchedule Refused(ScheduleConflict conflict, int searched = 0)
    {
        Tell(1);
        return new SiteSchedule(work, conflict, nodes + searched);
    }

    // All work one after the other with every wait in between, after the last time that is not available, and two months to spare: whoever
    // has to wait longer contradicts itself.
    private long Horizon()
    {
        long waits = 0;
        long attended = 0;
        long from = start;
        for (int i = 0; i < work.Steps.Count; i++)
        {
            SiteStep step = work.Steps[i];
            waits += step.Clearing.Ticks + step.DustFree.Ticks + (step.IsAttended ? 0 : step.Duration.Ticks);
            attended += step.IsAttended ? step.Duration.Ticks : 0;
            for (int k = 0; k < step.Unavailable.Count; k++)
            {
                from = Math.Max(from, Math.Min(step.Unavailable[k].End.UtcTicks, start + LongestWait));
            }
        }

        for (int k = 0; k < work.Lags.Count; k++)
        {
            waits = Math.Min(10 * LongestWait, waits + RealTime(work.Lags[k]));
        }

        long packed = openings.AfterWork(from, attended, DaySet.All);
        long most = start + ((MostDays - 400) * TimeSpan.TicksPerDay);
        return Math.Min(most, Math.Min(packed, most) + waits + (TimeSpan.TicksPerDay * (60 + (3L * work.Steps.Count))));
    }

    // On a clock: until the record ends, and the whole age at its last rate.
    private long RealTime(StepLag lag)
    {
        if (lag.Clock is not EquivalentAge clock)
        {
            return lag.Minimum.Ticks;
        }

        long end = clock.History.Start.UtcTicks + clock.History.KnownTicks;
        long reached = clock.TicksOf(Math.Max(start, clock.History.LastHoldsOn ? end : start), lag.Minimum.TotalSeconds);
        return Math.Min(LongestWait, Math.Max(0, end - start) + (reached == long.MaxValue ? 0 : Math.Max(0, reached - end)));
    }

    private void Tell(double done)
    {
        if (done >= told)
        {
            told = done;
            progress?.Report(done);
        }
    }
}
