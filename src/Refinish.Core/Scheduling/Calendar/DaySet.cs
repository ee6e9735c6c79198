namespace Refinish.Scheduling;

/// <summary>
/// Days on which may be worked, counted from the first day of <see cref="Openings"/>: all days, or some of the first sixty-four.
/// </summary>
internal readonly struct DaySet
{
    public const int Most = 64;

    private readonly ulong days;
    private readonly bool isLimited;

    private DaySet(ulong days)
    {
        this.days = days;
        isLimited = true;
        int last = -1;
        for (ulong rest = days; rest != 0; rest >>= 1)
        {
            last++;
        }

        Last = last;
    }

    public static DaySet All => default;

    public static DaySet Of(ulong days) => new(days);

    public bool IsAll => !isLimited;

    /// <summary>The last day; meaningless for all days.</summary>
    public int Last { get; }

    public bool Has(int day) => !isLimited || (day < Most && ((days >> day) & 1) != 0);

    /// <summary>Whether no later day belongs to the set.</summary>
    public bool IsPast(int day) => isLimited && day > Last;
}
