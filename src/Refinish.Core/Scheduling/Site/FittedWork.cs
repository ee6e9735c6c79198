namespace Refinish.Scheduling;

/// <summary>
/// A schedule of a work that grew, in the order of one that was found before: it ends no later and has no more visits, so that nothing has
/// to be searched, and what was proved before still holds, since more rules let nothing end sooner and nobody come less often.
/// </summary>
internal sealed class FittedWork
{
    private readonly long paid;

    private FittedWork(SiteSchedule schedule, long paid, bool isDearer) => (Schedule, this.paid, IsDearer) = (schedule, paid, isDearer);

    public SiteSchedule Schedule { get; }

    /// <summary>Whether people wait more than before, so that a search might find it cheaper.</summary>
    public bool IsDearer { get; }

    /// <summary>
    /// The schedule; <see langword="null"/> where what was added does not fit in, or the work is not just another one that grew.
    /// </summary>
    public static FittedWork? Of(SiteWork work, StepModel model, Openings openings, SiteSchedule earlier)
    {
        if (!AddedWork.IsAddedTo(earlier.Work, work))
        {
            return null;
        }

        ListedOrder order = new(model, new StepOverlaps(model, null), null, AddedWork.Order(earlier, work));
        long most = PaidSpans.Of(earlier) + AddedWork.Ticks(work) - AddedWork.Ticks(earlier.Work);
        SiteTimes? best = null;
        long least = long.MaxValue;
        foreach (DaySet days in new[] { DaySet.All, AddedWork.DaysOf(earlier, openings) })
        {
            (long[] starts, long[] ends) = (new long[model.Count], new long[model.Count]);
            if (least > most && order.Run(work.Start.UtcTicks, earlier.Finish!.Value.UtcTicks, days, starts, ends)
                && SiteVisits.Count(model, starts, days) is int visits && visits <= earlier.Visits.Count)
            {
                SiteTimes times = CheaperTimes.Of(work, model, days, visits, starts, ends);
                long paid = PaidSpans.Of(times).Ticks;
                (best, least) = paid < least ? (times, paid) : (best, least);
            }
        }

        return best is null ? null : new FittedWork(
            new SiteSchedule(
                work, best, new ScheduleProof(earlier.FinishBound!.Value.UtcTicks, earlier.VisitsBound, earlier.LatestEnd?.UtcTicks),
                    nodes: 1)
            {
                IsFitted = true,
            },
            least,
            least > most);
    }

    /// <summary>
    /// Whether another schedule of the same work ends later, has more visits, or costs more hours of people where it has neither.
    /// </summary>
    public bool IsBetterThan(SiteSchedule other)
    {
        if (!other.IsPossible)
        {
            return true;
        }

        int visits = Schedule.Visits.Count.CompareTo(other.Visits.Count);
        int end = Schedule.Finish!.Value.CompareTo(other.Finish!.Value);
        (int first, int second) = Schedule.Work.Prefers == SchedulePreference.FewestVisits ? (visits, end) : (end, visits);
        return first != 0 ? first < 0 : second != 0 ? second < 0 : paid < PaidSpans.Of(other);
    }
}
