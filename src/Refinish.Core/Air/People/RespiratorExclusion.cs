namespace Refinish.Air;

/// <summary>Why a respirator is out of the question whatever its factor.</summary>
public enum RespiratorExclusion
{
    /// <summary>Nothing but its factor decides.</summary>
    None,

    /// <summary>It only filters, and the air holds isocyanates.</summary>
    OnlyFilters,

    /// <summary>The air is immediately dangerous to life or health, and it is none of the two kinds listed for that.</summary>
    NotForImmediateDanger,
}
