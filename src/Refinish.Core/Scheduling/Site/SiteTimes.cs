namespace Refinish.Scheduling;

/// <summary>
/// The settled times of a work: each step as early as it could be, which tells what drives it, and as it was put off within its day.
/// </summary>
/// <param name="Work">The work.</param>
/// <param name="Model">Its model.</param>
/// <param name="Days">The days on which is worked.</param>
/// <param name="Early">The earliest starts.</param>
/// <param name="Starts">The starts of the schedule.</param>
internal sealed record SiteTimes(SiteWork Work, StepModel Model, DaySet Days, long[] Early, long[] Starts)
{
    private ValueList<int>[]? people;

    /// <summary>The ends of the schedule.</summary>
    public long[] Ends { get; } = Model.Ends(Starts, Days);

    /// <summary>Who does each step; made once.</summary>
    public ValueList<int>[] People => people ??= CrewRoster.Of(this);
}
