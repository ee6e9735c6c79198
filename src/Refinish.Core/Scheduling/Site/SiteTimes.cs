namespace Refinish.Scheduling;

/// <summary>
/// The settled times of a work: each step as early as it could be, which tells what drives it, and as it was put off within its day.
/// </summary>
internal sealed class SiteTimes(SiteWork work, StepModel model, DaySet days, long[] early, long[] starts)
{
    private ValueList<int>[]? people;

    public SiteWork Work => work;

    public StepModel Model => model;

    public DaySet Days => days;

    /// <summary>The earliest starts.</summary>
    public long[] Early => early;

    /// <summary>The starts of the schedule.</summary>
    public long[] Starts => starts;

    /// <summary>The ends of the schedule.</summary>
    public long[] Ends { get; } = model.Ends(starts, days);

    /// <summary>Who does each step; made once.</summary>
    public ValueList<int>[] People => people ??= CrewRoster.Of(this);
}
