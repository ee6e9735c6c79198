using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Refinish.Curing;

namespace Refinish.Scheduling;

/// <summary>Finds out why a work has no schedule, and puts it into words with the names of its steps.</summary>
internal sealed class ConflictExplainer(SiteWork work, SiteCompiler compiler, long start, SearchEffort effort,
    CancellationToken cancellation)
{
    /// <summary>Steps in one go that are longer than any shift; none when there is no such step.</summary>
    public ScheduleConflict? TooLong()
    {
        TimeSpan longest = work.Calendar.LongestShift;
        SiteStep[] steps = [.. work.Steps.Where(step => step.IsAttended && !step.IsInterruptible && step.Duration > longest)];
        return steps.Length == 0 ? null : ScheduleConflict.OfLength(steps, longest);
    }

    /// <summary>Lags on a clock whose record begins after the work may; none when there is no such lag.</summary>
    public ScheduleConflict? LateRecords()
    {
        StepLag[] late = [.. work.Lags.Where(lag => lag.Clock is EquivalentAge clock && clock.History.Start > work.Start)];
        return late.Length == 0 ? null : ScheduleConflict.OfRecords(late, late: true, Sentence);
    }

    /// <summary>Durations and lags that contradict each other whatever the hours.</summary>
    public ScheduleConflict Times()
    {
        Dictionary<TimeConstraint, StepLag> made = [];
        return CriticalPath.NetworkOf(work.Steps, work.Lags, made).Conflict is TemporalConflict times
            ? ScheduleConflict.OfTimes(times, times.Bounds.Where(bound => made.ContainsKey(bound.Constraint))
                .Select(bound => made[bound.Constraint]).Distinct())
            : ScheduleConflict.OfLags([], [], Sentence);
    }

    /// <summary>Why some steps, or all, cannot be scheduled by a horizon.</summary>
    public ScheduleConflict Why(List<int>? steps, long horizon, bool isProved) =>
        Reason(steps, horizon, isProved) with { LookedUntil = new DateTimeOffset(horizon, TimeSpan.Zero) };

    private ScheduleConflict Reason(List<int>? steps, long horizon, bool isProved)
    {
        if (!isProved)
        {
            return ScheduleConflict.Unknown();
        }

        List<int> indices = steps ?? [.. Enumerable.Range(0, work.Steps.Count)];
        List<SiteStep> unplaced = [.. indices.Where(i => !FitsAlone(i, horizon)).Select(i => work.Steps[i])];
        if (unplaced.Count > 0)
        {
            return ScheduleConflict.OfPlace(unplaced);
        }

        HashSet<int> chosen = [.. indices];
        StepLag[] lags = [.. work.Lags.Where(lag => chosen.Contains(compiler.IndexOf(lag.Before)))];
        bool certain = true;
        bool CanBeKept(IReadOnlyList<StepLag> kept)
        {
            SiteSearch search = new(compiler.Model(kept, indices), start, cancellation);
            search.Run(horizon, effort.Nodes, first: true);
            certain &= search.Best is not null || search.IsComplete;
            return search.Best is not null;
        }

        ConflictFinder finder = new(CanBeKept);
        List<StepLag> core = finder.Core(lags);
        if (core.Exists(IsShort) && CanBeKept([.. lags.Select(Lengthened)]))
        {
            return ScheduleConflict.OfRecords([.. core.Where(IsShort)], late: false, Sentence);
        }

        List<LagRelief> reliefs = [.. finder.Reliefs(lags, core)];
        return certain ? ScheduleConflict.OfLags(core, reliefs, Sentence) : ScheduleConflict.OfLags([], [], Sentence);
    }

    private static bool IsShort(StepLag lag) => lag.Clock?.History.LastHoldsOn == false;

    private static StepLag Lengthened(StepLag lag)
    {
        if (!IsShort(lag))
        {
            return lag;
        }

        EquivalentAge clock = lag.Clock!;
        TemperatureHistory longer = new(clock.History.Start, clock.History.Segments, lastHoldsOn: true);
        return lag.With(new EquivalentAge(longer, clock.Shift, clock.Reference, clock.StopsBelow));
    }

    private bool FitsAlone(int i, long horizon)
    {
        SiteSearch search = new(compiler.Model([], [i]), start, cancellation);
        return search.MayHold(horizon);
    }

    private string Sentence(StepLag lag) =>
        lag.Sentence(work.Steps[compiler.IndexOf(lag.Before)].Name, work.Steps[compiler.IndexOf(lag.After)].Name);
}
