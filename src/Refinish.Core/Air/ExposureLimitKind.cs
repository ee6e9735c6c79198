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

    /// <summary>Immediately dangerous to life or health.</summary>
    Idlh,
}
