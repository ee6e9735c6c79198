using System;

namespace Refinish;

/// <summary>Who has to know of a caution. The owner of the shop reads what concerns the crew.</summary>
[Flags]
public enum Audience
{
    /// <summary>Nobody; no caution may concern nobody.</summary>
    None = 0,

    /// <summary>Who does the work or stands by.</summary>
    Crew = 1,

    /// <summary>Who orders the work and answers for the premises.</summary>
    Customer = 2,

    /// <summary>Who lives in the building or uses the fixture.</summary>
    Occupant = 4,
}
