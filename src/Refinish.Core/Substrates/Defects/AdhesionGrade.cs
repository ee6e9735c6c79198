namespace Refinish.Substrates;

/// <summary>
/// Grade of a cross-cut tape test, 5B the best. Share of the lattice removed: 5B none, 4B less than 5 %, 3B 5 to 15 %,
/// 2B 15 to 35 %, 1B 35 to 65 %, 0B more than 65 %.
/// </summary>
/// <remarks>Source: ASTM D3359, method B; grades 5B to 3B seen second-hand, 2B to 0B from memory, unverified.</remarks>
public enum AdhesionGrade
{
    /// <summary>0B: more than 65 % removed.</summary>
    Grade0B,

    /// <summary>1B: 35 to 65 % removed.</summary>
    Grade1B,

    /// <summary>2B: 15 to 35 % removed.</summary>
    Grade2B,

    /// <summary>3B: 5 to 15 % removed.</summary>
    Grade3B,

    /// <summary>4B: less than 5 % removed.</summary>
    Grade4B,

    /// <summary>5B: nothing removed.</summary>
    Grade5B,
}
