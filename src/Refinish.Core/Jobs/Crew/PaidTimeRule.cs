namespace Refinish.Jobs;

/// <summary>Which hours of a visit the shop pays, and charges as cost. Travel is paid apart from it.</summary>
public enum PaidTimeRule
{
    /// <summary>
    /// Each person's own span from the first to the last operation of a visit, less breaks that the calendar leaves open: waiting on
    /// site is paid.
    /// </summary>
    OnSite,

    /// <summary>The hours worked only; waiting on site is not paid.</summary>
    Worked,

    /// <summary>The span on site, rounded up to whole half-days for each person and visit.</summary>
    HalfDays,
}
