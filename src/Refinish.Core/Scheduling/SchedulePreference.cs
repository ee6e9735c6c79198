namespace Refinish.Scheduling;

/// <summary>What comes first when a schedule is chosen.</summary>
public enum SchedulePreference
{
    /// <summary>
    /// As few visits as can be, as long as the end stays within <see cref="SiteWork.VisitSlack"/>; of those the earliest end. Work that
    /// may be done a day later without another visit or a later end is, where that saves people hours on site.
    /// </summary>
    FewestVisits,

    /// <summary>
    /// The earliest end; of those as few visits as can be. Work that may be done a day later without another visit or a later end is, where
    /// that saves people hours on site.
    /// </summary>
    EarliestEnd,
}
