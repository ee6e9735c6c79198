namespace Refinish.Scheduling;

/// <summary>
/// Of schedules that end alike and have as many visits, the one with the fewest hours of people on site: the one found, with less waiting,
/// or that with work on the latest days that the end allows, so that nobody waits for filler at night or comes for company on one day more.
/// The one found wins a draw.
/// </summary>
internal static class CheaperTimes
{
    public static SiteTimes Of(SiteWork work, StepModel model, DaySet days, int visits, long[] starts, long[] ends)
    {
        SiteTimes found = new(work, model, days, starts, LatestTimes.LessWaiting(model, days, starts, ends));
        if (visits < 2 || work.Crew < 2)
        {
            return found;
        }

        PaidSpans cost = PaidSpans.Of(found);
        if (!cost.MayBeFewer(visits) || LatestTimes.OnLaterDays(model, days, starts, ends) is not long[] later
            || SiteVisits.Count(model, later, days) > visits)
        {
            return found;
        }

        SiteTimes moved = new(work, model, days, later, LatestTimes.LessWaiting(model, days, later, model.Ends(later, days)));
        return PaidSpans.Of(moved).Ticks < cost.Ticks ? moved : found;
    }
}
