namespace Refinish.Air;

/// <summary>Over which time an exposure limit is meant.</summary>
public enum ExposureLimitKind
{
    /// <summary>A time-weighted average over an eight-hour working day (NIOSH: up to ten hours).</summary>
    Twa8h,

    /// <summary>An average over any fifteen minutes.</summary>
    Stel15min,

    /// <summary>Not to be exceeded at any time; held against the peak even where the source averages over some minutes.</summary>
    Ceiling,

    /// <summary>
    /// A maximum that may stand above the ceiling for some minutes once a shift (29 CFR 1910.1000, Table Z-2); held against the peak.
    /// That the ceiling may be passed for so long is not counted: the ceiling has its own row.
    /// </summary>
    BriefPeak,

    /// <summary>Immediately dangerous to life or health.</summary>
    Idlh,
}
