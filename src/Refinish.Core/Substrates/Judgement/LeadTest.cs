namespace Refinish.Substrates;

/// <summary>What is known about lead in the surface that will be disturbed.</summary>
public enum LeadTest
{
    /// <summary>Nobody has tested it.</summary>
    NotTested,

    /// <summary>Tested by a recognised method: no lead-based coating found.</summary>
    Negative,

    /// <summary>Tested: lead is there.</summary>
    Positive,
}
