using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;

namespace Refinish.Scheduling;

/// <summary>
/// The way from a work to its schedule: first whether times, hours, crew and rooms allow any; one group (a bathroom) by exact search; several
/// groups one after the other into the time that the earlier ones leave, in a few orders, with a bound from the crew's load and from each group
/// alone; an exact search for a proof where the whole is small; then the fewest visits for the end that was found.
/// </summary>
internal sealed class SiteSolver(SiteWork work, SearchEffort effort, IProgress<double>? progress, CancellationToken cancellation)
{
    private readonly long start = work.Start.UtcTicks;
    private Openings openings = new(work.Calendar, work.Start);
    private long horizon;
    private int nodes;
    private double told;

    public SiteSchedule Solve()
    {
        SiteCompiler.Check(work);
        Tell(0);
        TimeSpan longest = work.Calendar.LongestShift;
        SiteStep[] tooLong = [.. work.Steps.Where(step => step.IsAttended && !step.IsInterruptible && step.Duration > longest)];
        if (tooLong.Length > 0)
        {
            return Refused(new ScheduleConflict(null, tooLong, [], [], true, longest));
        }

        TemporalConflict? times = CriticalPath.NetworkOf(
            [.. work.Steps.Select(step => new ScheduleStep(step.Name, step.Duration, step.IsAttended, step.IsInterruptible))], work.Lags).Conflict;
        if (times is not null)
        {
            return Refused(new ScheduleConflict(times, [], [], [], true, longest));
        }

        SetHorizon();
        List<List<int>> groups = SiteCompiler.Groups(work);
        return groups.Count == 1 ? One(groups[0]) : Many(groups);
    }

    private SiteSchedule One(List<int> steps)
    {
        StepModel model = SiteCompiler.Model(work, work.Lags, steps);
        SiteSearch search = Search(model, null, horizon, effort.Nodes);
        return search.Best is null ? Refused(Explain(steps, search.IsComplete)) : Planned(model, search.Best, search.Bound);
    }

    private SiteSchedule Many(List<List<int>> groups)
    {
        SiteGroups placing = new(work, groups, effort, openings, start, horizon, done => Tell(0.9 * done), cancellation);
        bool placed = placing.Run();
        nodes += placing.Nodes;
        if (placing.Failed is List<int> failed)
        {
            return Refused(Explain(failed, placing.FailureIsProved));
        }

        int[] all = [.. Enumerable.Range(0, work.Steps.Count)];
        StepModel model = SiteCompiler.Model(work, work.Lags, all);
        long[]? best = placed ? placing.Best : null;
        long end = placed ? placing.BestEnd : horizon + 1;
        long bound = placing.Bound;
        if (end > bound && work.Steps.Count <= effort.StepsForProof)
        {
            SiteSearch search = Search(model, null, end - 1, effort.Nodes);
            best = search.Best ?? best;
            end = search.Best is null ? end : search.BestEnd;
            bound = Math.Max(bound, search.IsComplete ? end : Math.Min(end, search.Bound));
        }

        return best is null ? Refused(new ScheduleConflict(null, [], [], [], false, work.Calendar.LongestShift)) : Planned(model, best, Math.Min(bound, end));
    }

    private SiteSchedule Planned(StepModel model, long[] starts, long bound)
    {
        long[] ends = Ends(model, openings, starts);
        Tell(0.95);
        SiteVisits visits = new(work, model, openings, effort, cancellation);
        visits.Improve(starts, ends);
        nodes += visits.Nodes;
        Tell(1);
        return new SiteSchedule(work, model, visits.Openings, visits.Starts, Ends(model, visits.Openings, visits.Starts), (bound, visits.Bound), nodes);
    }

    private SiteSchedule Refused(ScheduleConflict conflict)
    {
        Tell(1);
        return new SiteSchedule(work, conflict, nodes);
    }

    private ScheduleConflict Explain(List<int> steps, bool isProved)
    {
        TimeSpan longest = work.Calendar.LongestShift;
        if (!isProved)
        {
            return new ScheduleConflict(null, [], [], [], false, longest);
        }

        HashSet<string> names = new(steps.Select(i => work.Steps[i].Name), StringComparer.Ordinal);
        StepLag[] lags = [.. work.Lags.Where(lag => names.Contains(lag.Before))];
        bool certain = true;
        bool CanBeKept(IReadOnlyList<StepLag> kept)
        {
            SiteSearch search = new(SiteCompiler.Model(work, kept, steps), openings, start, null, cancellation);
            search.Run(horizon, effort.Nodes, first: true);
            certain &= search.Best is not null || search.IsComplete;
            return search.Best is not null;
        }

        ConflictFinder finder = new(CanBeKept);
        List<StepLag> core = finder.Core(lags);
        List<LagRelief> reliefs = [.. finder.Reliefs(lags, core)];
        return certain ? new ScheduleConflict(null, [], core, reliefs, true, longest) : new ScheduleConflict(null, [], [], [], true, longest);
    }

    private SiteSearch Search(StepModel model, List<(long From, long Until)>[]? taken, long limit, int most)
    {
        SiteSearch search = new(model, openings, start, taken, cancellation);
        search.Run(limit, most);
        nodes += search.Nodes;
        return search;
    }

    // All work one after the other with every wait in between, and two months to spare: whoever has to wait longer contradicts itself.
    private void SetHorizon()
    {
        long waits = work.Lags.Sum(lag => lag.Minimum.Ticks) + work.Steps.Sum(step => step.Clearing.Ticks + step.DustFree.Ticks + (step.IsAttended ? 0 : step.Duration.Ticks));
        long packed = openings.AfterWork(start, work.Steps.Sum(step => step.IsAttended ? step.Duration.Ticks : 0));
        horizon = packed + waits + (TimeSpan.TicksPerDay * (60 + (3L * work.Steps.Count)));
        openings = new Openings(work.Calendar, work.Start, null, (int)((horizon - start) / TimeSpan.TicksPerDay) + 30);
    }

    private void Tell(double done)
    {
        if (done >= told)
        {
            told = done;
            progress?.Report(done);
        }
    }

    internal static long[] Ends(StepModel model, Openings openings, long[] starts) =>
        [.. starts.Select((time, i) => model.Interruptible[i] ? openings.End(time, model.Duration[i]) : time + model.Duration[i])];
}
