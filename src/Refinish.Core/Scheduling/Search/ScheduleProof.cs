namespace Refinish.Scheduling;

/// <summary>
/// What a search proved: a time before which nothing ends, a number of visits below which nothing stays, and the limit of the end that was
/// allowed for fewer visits.
/// </summary>
internal readonly record struct ScheduleProof(long Finish, int Visits, long? LatestEnd);
