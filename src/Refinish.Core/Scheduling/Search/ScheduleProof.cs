namespace Refinish.Scheduling;

/// <summary>
/// What a search proved: a time before which nothing ends, a number of visits below which nothing stays, and the limit of the end that was
/// allowed for fewer visits.
/// </summary>
internal readonly struct ScheduleProof(long finish, int visits, long? latestEnd)
{
    public long Finish { get; } = finish;

    public int Visits { get; } = visits;

    public long? LatestEnd { get; } = latestEnd;
}
